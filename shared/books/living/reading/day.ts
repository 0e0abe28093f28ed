// Long: one reader of the book's sheets for a day: each block of it stands alone, read from the top down.
import type { Cell } from '../../../base/values';
import { isError } from '../../../base/values';
import { ASSUMPTIONS } from '../../../families/assumptions';
import { TASKS } from '../../../run/lines';
import type { TaskKey } from '../../../run/lines';
import { BATCH_STATES } from '../../../season/types';
import { addressOf } from '../../../sheet/formula/address';
import { isMomentCell } from '../../../units/dates';
import { readTypedNumber } from '../../../units/typedNumber';
import * as columns from '../columns';
import { withBuyer } from '../keyed';
import { SHEETS } from '../layout';
import type { SheetKey } from '../layout';
import type { ColumnsOf } from '../table';
import { VATS_TODAY } from '../pages/today';
import type { WithOwn } from '../../words/inEnglish';
import { sheetInEnglish, wordsOfSheets } from '../../words/inEnglish';
import type { BookWords } from '../../words/words';
import { ownSheetName, sayIn } from '../../words/words';
import { meant } from './typedCells';

/**
 * What a day asks out of a book as its sheets stand now: tasks with the cell each is ticked off in, vats with
 * what they hold, orders, and the places where a fact may be written. Tables are found by their headings.
 */

/** Cells of a sheet as a host hands them over; top and left are the place of the first, from 0. */
export interface DaySheet extends WithOwn {
  readonly name: string;
  readonly top: number;
  readonly left: number;
  readonly values: readonly (readonly Cell[])[];
}
/** A cell that may be filled: what must stand in it, and what comes. */
export interface CellChange {
  readonly address: string;
  readonly from: Cell;
  readonly to: Cell;
}

export interface BookTask {
  readonly batch: string;
  readonly task: TaskKey | undefined;
  /** The key of its order; '' for work of the batch as a whole. */
  readonly order: string;
  readonly at: number;
  readonly what: string;
  readonly amount: number | undefined;
  readonly unit: string;
  readonly isDone: boolean;
  readonly sheet: string;
  readonly row: number;
  /** The cell it is ticked off in. */
  readonly tick: string;
}
export interface DayStay {
  readonly vat: string;
  readonly batch: string;
  readonly stage: string;
  readonly from: number;
  readonly to: number;
  /** At the beginning, as planned. */
  readonly fish: number | undefined;
  /** Of today by the book's own formulas, where they were calculated. */
  readonly now: { readonly fish: number; readonly feed: number | undefined } | undefined;
}
export interface DayBatch {
  readonly name: string;
  readonly state: string;
  readonly inject: number | undefined;
  readonly strip: number | undefined;
  readonly hatch: number | undefined;
  readonly feed: number | undefined;
  readonly leaves: number | undefined;
  /** One fish as it was weighed last. */
  readonly weighed: { readonly at: number; readonly grams: number } | undefined;
}
/** What the season takes for granted of growth: grams, percent a day, days. */
export interface DayGrowth {
  readonly start: number;
  readonly rearing: number;
  readonly nursing: number;
  readonly rearingDays: number;
}
export interface DayOrder {
  /** What other sheets call it; the name of its buyer in books that know no keys. */
  readonly key: string;
  /** Of the buyer; the key where no name stands there. */
  readonly name: string;
  readonly due: number | undefined;
  readonly number: number;
  readonly delivered: number;
  readonly expected: number | undefined;
  readonly promise: number | undefined;
  /** Fish expected on the day of planning. */
  readonly planned: number | undefined;
  readonly isCancelled: boolean;
}
/** A line of the log. */
export interface DayFact {
  readonly at: number;
  readonly batch: string;
  readonly what: string;
  readonly number: number;
  readonly stage: string;
}
export interface BookDay {
  readonly suffix: string;
  readonly tasks: readonly BookTask[];
  readonly vats: readonly string[];
  readonly stays: readonly DayStay[];
  readonly batches: readonly DayBatch[];
  readonly orders: readonly DayOrder[];
  /** The log of counts, deaths and sales, as it stands. */
  readonly log: readonly DayFact[];
  /** Of every pair, each once. */
  readonly females: readonly string[];
  /** Undefined where the sheet of figures is gone. */
  readonly growth: DayGrowth | undefined;
  /** Checks that do not hold; undefined where they were not calculated. */
  readonly broken: number | undefined;
}

const KEYS = [
  'today',
  'orders',
  'batches',
  'calendar',
  'vats',
  'tasks',
  'promises',
  'counts',
  'figures',
] as const satisfies SheetKey[];
const DAY_NAMES: readonly string[] = KEYS.map((key) => SHEETS[key]);
/** `there`: names of the sheets of the workbook, which tell the language of its book. */
const wordsOf = (there: readonly string[], suffix: string): BookWords | undefined =>
  wordsOfSheets(there, DAY_NAMES, suffix);
export const daySheetNames = (suffix: string, there: readonly string[] = []): readonly string[] => {
  const words = wordsOf(there, suffix);
  return DAY_NAMES.map((name) => `${words ? ownSheetName(words, name) : name}${suffix}`);
};
export const sheetNameOf = (key: SheetKey, suffix: string, there: readonly string[] = []): string => {
  const words = wordsOf(there, suffix);
  return `${words ? ownSheetName(words, SHEETS[key]) : SHEETS[key]}${suffix}`;
};
const ENGLISH_NAMES: readonly string[] = Object.values(SHEETS);
/** A sheet of a book read by its headings, in whatever language it stands; its name stays. */
const readable = (sheet: DaySheet, words: BookWords | undefined, suffix: string): DaySheet =>
  words ? { ...sheetInEnglish(sheet, words, ENGLISH_NAMES, suffix), name: sheet.name } : sheet;
/** A sheet that facts are written into. */
export interface PlaceSheet {
  readonly sheet: DaySheet;
  readonly words: BookWords | undefined;
}
export const placeSheet = (sheet: DaySheet, suffix: string, there: readonly string[]): PlaceSheet => {
  const words = wordsOf(there, suffix);
  return { sheet: readable(sheet, words, suffix), words };
};

interface FoundLine<K extends string> {
  /** Row on the sheet, from 0. */
  readonly row: number;
  readonly at: (key: K) => Cell;
  /** The same as it is meant: numbers and days that stand there as text are read as everywhere else. */
  readonly meant: (key: K) => Cell;
  readonly address: (key: K) => string | undefined;
}
const text = (cell: Cell | undefined): string =>
  cell === null || cell === undefined || isError(cell) ? '' : String(cell).trim();
const number = (cell: Cell | undefined): number | undefined => (typeof cell === 'number' ? cell : undefined);
const isFilled = (cell: Cell | undefined): boolean => text(cell) !== '';

/** Lines below the headings of a table, wherever it stands; none when the headings are gone. */
export function linesUnder<K extends string>(
  sheet: DaySheet | undefined,
  of: ColumnsOf<K>,
  key: NoInfer<K>,
): FoundLine<K>[] {
  if (!sheet) return [];
  const keys = Object.keys(of) as K[];
  const titles = keys.map((k) => of[k].title).filter(Boolean);
  const head = sheet.values.findIndex(
    (row) =>
      row.includes(of[key].title) &&
      titles.filter((title) => row.includes(title)).length >= titles.length * 0.6,
  );
  const heading = sheet.values[head];
  if (!heading) return [];
  const places = new Map(keys.map((k) => [k, heading.indexOf(of[k].title)]));
  const names = columns.nameKeysOf(of);
  return sheet.values.slice(head + 1).map((cells, i) => {
    const row = sheet.top + head + 1 + i;
    const own = sheet.own?.[head + 1 + i] ?? cells;
    const place = (k: K): number => places.get(k) ?? -1;
    const at = (k: K): Cell => (place(k) < 0 ? null : ((names.has(k) ? own : cells)[place(k)] ?? null));
    return {
      row,
      at,
      meant: (k) => {
        const cell = at(k);
        return typeof cell === 'string' ? (meant(of[k], cell) ?? null) : cell;
      },
      address: (k) => (place(k) < 0 ? undefined : addressOf(row, sheet.left + place(k))),
    };
  });
}

const TASK_OF = new Map(Object.entries(TASKS).map(([key, { at }]) => [at.label, key as TaskKey] as const));

function tasksOf(
  calendar: DaySheet | undefined,
  list: DaySheet | undefined,
  orders: readonly DayOrder[],
): BookTask[] {
  const buyers = new Map(orders.map(({ key, name }) => [key, name]));
  const about = linesUnder(list, columns.TASK_LIST, 'task');
  return linesUnder(calendar, columns.CALENDAR, 'what').flatMap((line, i): BookTask[] => {
    const [date, hour] = [line.at('date'), number(line.at('hour')) ?? 0];
    const tick = line.address('done');
    const order = text(about[i]?.at('order'));
    if (!isMomentCell(date) || tick === undefined || !isFilled(line.at('what'))) return [];
    return [
      {
        batch: text(line.at('batch')),
        task: TASK_OF.get(text(about[i]?.at('task'))),
        order,
        at: Math.floor(date) + (hour % 1),
        what: withBuyer(text(line.at('what')), order, buyers.get(order) ?? ''),
        amount: number(line.at('amount')),
        unit: text(line.at('unit')),
        isDone: isFilled(line.at('done')),
        sheet: calendar?.name ?? '',
        row: line.row,
        tick,
      },
    ];
  });
}

function staysOf(vats: DaySheet | undefined, today: DaySheet | undefined): DayStay[] {
  const now = linesUnder(today, VATS_TODAY, 'vat');
  return linesUnder(vats, columns.STAYS, 'stage').flatMap((line): DayStay[] => {
    const [from, to] = [line.at('from'), line.at('to')];
    if (!isMomentCell(from) || !isMomentCell(to)) return [];
    const [vat, batch] = [text(line.at('vat')), text(line.at('batch'))];
    const live = now.find((one) => text(one.at('vat')) === vat && text(one.at('batch')) === batch);
    const fish = number(live?.at('fish'));
    return [
      {
        vat,
        batch,
        stage: text(line.at('stage')),
        from,
        to,
        fish: number(line.at('fish')),
        now: fish === undefined ? undefined : { fish, feed: number(live?.at('dry')) },
      },
    ];
  });
}

const isState = (word: string): boolean =>
  word === 'planned' || (BATCH_STATES as readonly string[]).includes(word);
function weighedOf(counts: DaySheet | undefined, batch: string): DayBatch['weighed'] {
  const line = linesUnder(counts, columns.FRY_COUNTS, 'batch').find((one) => text(one.at('batch')) === batch);
  const [grams, at] = [number(line?.meant('weight')), number(line?.meant('weighed'))];
  return grams === undefined || at === undefined ? undefined : { grams, at };
}
const batchesOf = (sheet: DaySheet | undefined, counts: DaySheet | undefined): DayBatch[] =>
  linesUnder(sheet, columns.BATCHES, 'batch').flatMap((line): DayBatch[] => {
    const strip = number(line.meant('strip'));
    // Lines of the second table stand under the same headings; what stands there is no state.
    if (!isFilled(line.at('batch')) || !isState(text(line.at('state')))) return [];
    return [
      {
        name: text(line.at('batch')),
        state: text(line.at('state')),
        inject: number(line.at('inject')),
        strip,
        hatch: number(line.at('hatchAt')),
        feed: number(line.at('feed')),
        leaves: number(line.at('leaves')),
        weighed: weighedOf(counts, text(line.at('batch'))),
      },
    ];
  });

/** Figures stand beside their names. */
function growthOf(figures: DaySheet | undefined): DayGrowth | undefined {
  const figure = (key: 'startWeight' | 'fryGrowth' | 'nurseryGrowth' | 'rearingDays'): number | undefined => {
    const { label } = ASSUMPTIONS[key];
    const row = figures?.values.find((cells) => cells.includes(label));
    const cell = row?.[row.indexOf(label) + 1];
    const typed = typeof cell === 'string' ? readTypedNumber(cell) : undefined;
    return typed?.kind === 'number' ? typed.value : number(cell);
  };
  const [start, rearing, nursing, rearingDays] = [
    figure('startWeight'),
    figure('fryGrowth'),
    figure('nurseryGrowth'),
    figure('rearingDays'),
  ];
  return start === undefined || rearing === undefined || nursing === undefined || rearingDays === undefined
    ? undefined
    : { start, rearing, nursing, rearingDays };
}

const ordersOf = (sheet: DaySheet | undefined, promises: DaySheet | undefined): DayOrder[] => {
  const planned = new Map(
    linesUnder(promises, columns.PROMISES, 'order').map((line) => [
      text(line.at('order')),
      number(line.at('planned')),
    ]),
  );
  return linesUnder(sheet, columns.ORDERS, 'order').flatMap((line): DayOrder[] => {
    const wanted = number(line.meant('number'));
    if (!isFilled(line.at('order')) || wanted === undefined) return [];
    const key = text(line.at('order'));
    return [
      {
        key,
        // Books written before keys know an order by its buyer alone.
        name: text(line.at('buyer')) || key,
        due: number(line.meant('due')),
        number: wanted,
        delivered: number(line.at('delivered')) ?? 0,
        expected: number(line.at('expected')),
        promise: number(line.at('promise')),
        planned: planned.get(key),
        isCancelled: /^(yes|oui|true|1)$/i.test(text(line.at('cancelled'))),
      },
    ];
  });
};

const factsOf = (counts: DaySheet | undefined): DayFact[] =>
  linesUnder(counts, columns.LOG, 'what').flatMap((line): DayFact[] => {
    const [at, amount] = [line.meant('at'), number(line.meant('number'))];
    if (!isMomentCell(at) || amount === undefined) return [];
    return [
      {
        at,
        batch: text(line.at('batch')),
        what: text(line.at('what')),
        number: amount,
        stage: text(line.at('stage')),
      },
    ];
  });

/** The first sheet says how many checks do not hold: all, so many, or that nothing was calculated. */
function brokenOf(today: DaySheet | undefined, words: BookWords | undefined): number | undefined {
  const broken = words ? sayIn(words, BROKEN) : BROKEN;
  const isSaid = (said: string): boolean =>
    said === '● all hold' || (/^× \d+ /.test(said) && said.endsWith(broken));
  const cell = today?.values.flat().find((one) => isSaid(text(one)));
  if (cell === undefined) return undefined;
  return Number(/\d+/.exec(text(cell))?.[0] ?? 0);
}
const BROKEN = ' do not hold';

/** `sheets`: those of `daySheetNames`, as they stand. */
export function dayOfBook(sheets: readonly DaySheet[], suffix: string): BookDay {
  const there = sheets.map(({ name }) => name);
  const words = wordsOf(there, suffix);
  const sheet = (key: (typeof KEYS)[number]): DaySheet | undefined => {
    const found = sheets.find(({ name }) => name === sheetNameOf(key, suffix, there));
    return found && readable(found, words, suffix);
  };
  const vats = linesUnder(sheet('vats'), columns.VATS, 'vat').flatMap((line) =>
    typeof line.meant('litres') === 'number' && typeof line.at('eggs') !== 'number'
      ? [text(line.at('vat'))]
      : [],
  );
  const stays = staysOf(sheet('vats'), sheet('today'));
  const orders = ordersOf(sheet('orders'), sheet('promises'));
  return {
    suffix,
    tasks: tasksOf(sheet('calendar'), sheet('tasks'), orders),
    // Lines of the second table have moments where the first has vats' water.
    vats: [...new Set([...vats.filter(Boolean), ...stays.map(({ vat }) => vat)])],
    stays,
    batches: batchesOf(sheet('batches'), sheet('counts')),
    growth: growthOf(sheet('figures')),
    orders,
    log: factsOf(sheet('counts')),
    females: [
      ...new Set(
        linesUnder(sheet('batches'), columns.PAIRS, 'female').map((line) => text(line.at('female'))),
      ),
    ].filter(Boolean),
    broken: brokenOf(sheet('today'), words),
  };
}

/** A fact for the log of the sheet Counts, by column. */
export type LogFact = Readonly<Partial<Record<keyof typeof columns.LOG, Cell>>>;

/** The cells of the first open line of the log, filled; undefined when its headings are gone. */
export function logChanges(
  counts: DaySheet,
  fact: LogFact,
  words?: BookWords,
): readonly CellChange[] | undefined {
  const said = (key: keyof typeof columns.LOG, cell: Cell): Cell =>
    words && typeof cell === 'string' && !columns.nameKeysOf(columns.LOG).has(key)
      ? sayIn(words, cell)
      : cell;
  const keys = Object.keys(columns.LOG) as (keyof typeof columns.LOG)[];
  const lines = linesUnder(counts, columns.LOG, 'what');
  const open = lines.find((line) => keys.every((key) => !isFilled(line.at(key))));
  const addressIn = (key: (typeof keys)[number]): string | undefined => {
    if (open) return open.address(key);
    // What is read ends with the last filled row: the line below it is open.
    const [last] = lines.slice(-1);
    const above = last?.address(key) ?? headAddress(counts, key);
    return above?.replace(/\d+$/, (row) => String(Number(row) + 1));
  };
  const changes = keys.flatMap((key): CellChange[] => {
    const address = addressIn(key);
    const to = fact[key];
    return address === undefined || to === undefined || to === null
      ? []
      : [{ address, from: null, to: said(key, to) }];
  });
  return changes.length > 0 ? changes : undefined;
}
function headAddress(sheet: DaySheet, key: keyof typeof columns.LOG): string | undefined {
  const titles = Object.values(columns.LOG).map(({ title }) => title);
  const head = sheet.values.findIndex((row) => titles.every((title) => row.includes(title)));
  const column = sheet.values[head]?.indexOf(columns.LOG[key].title) ?? -1;
  return head < 0 || column < 0 ? undefined : addressOf(sheet.top + head, sheet.left + column);
}

/** The hour a batch's fish were really injected or stripped, for every pair that has none yet. */
export const pairChanges = (
  batches: DaySheet,
  batch: string,
  key: 'injected' | 'stripped',
  at: number,
): readonly CellChange[] =>
  linesUnder(batches, columns.PAIRS, 'female').flatMap((line): CellChange[] => {
    const address = line.address(key);
    return address !== undefined && text(line.at('batch')) === batch && !isFilled(line.at(key))
      ? [{ address, from: null, to: at }]
      : [];
  });

/** Eggs looked at and alive, in the line of a batch; what stood there is replaced. */
export const lookChanges = (
  counts: DaySheet,
  batch: string,
  looked: number,
  alive: number,
): readonly CellChange[] => {
  const line = linesUnder(counts, columns.EGG_COUNTS, 'batch').find((one) => text(one.at('batch')) === batch);
  return (['looked', 'alive'] as const).flatMap((key): CellChange[] => {
    const address = line?.address(key);
    return address === undefined
      ? []
      : [{ address, from: line?.at(key) ?? null, to: { looked, alive }[key] }];
  });
};

/** Weight and eggs in the samples of a batch, where none stand yet. */
export const sampleChanges = (
  counts: DaySheet,
  batch: string,
  samples: readonly { readonly grams: number; readonly eggs: number }[],
): readonly CellChange[] => {
  const line = linesUnder(counts, columns.EGG_COUNTS, 'batch').find((one) => text(one.at('batch')) === batch);
  const keys = [
    ['g1', 'n1'],
    ['g2', 'n2'],
    ['g3', 'n3'],
  ] as const;
  if (!line || keys.flat().some((key) => isFilled(line.at(key)))) return [];
  return samples.slice(0, keys.length).flatMap(({ grams, eggs }, i): CellChange[] => {
    const [g, n] = keys[i] ?? ['g1', 'n1'];
    const [gramsAt, eggsAt] = [line.address(g), line.address(n)];
    return gramsAt === undefined || eggsAt === undefined
      ? []
      : [
          { address: gramsAt, from: null, to: grams },
          { address: eggsAt, from: null, to: eggs },
        ];
  });
};

/**
 * Eggs of all females of a batch weighed together, where none was weighed by herself: each line of the batch takes
 * its part by the weight of the female.
 */
export const eggGramChanges = (batches: DaySheet, batch: string, grams: number): readonly CellChange[] => {
  const pairs = linesUnder(batches, columns.PAIRS, 'female').filter((one) => text(one.at('batch')) === batch);
  if (pairs.some((one) => isFilled(one.at('grams')))) return [];
  const weights = pairs.map((one) => number(one.meant('kilograms')) ?? 0);
  const all = weights.reduce((sum, one) => sum + one, 0);
  return pairs.flatMap((one, i): CellChange[] => {
    const address = one.address('grams');
    const part = all > 0 ? (weights[i] ?? 0) / all : 1 / pairs.length;
    return address === undefined ? [] : [{ address, from: null, to: grams * part }];
  });
};

/** Larvae counted after the hatch; what stood there is replaced. */
export const larvaeChanges = (counts: DaySheet, batch: string, hatched: number): readonly CellChange[] => {
  const line = linesUnder(counts, columns.FRY_COUNTS, 'batch').find((one) => text(one.at('batch')) === batch);
  const address = line?.address('hatched');
  return address === undefined ? [] : [{ address, from: line?.at('hatched') ?? null, to: hatched }];
};

/** Weight of one fish of a batch and the day it was weighed; what stood there is replaced. */
export const fishWeightChanges = (
  counts: DaySheet,
  batch: string,
  grams: number,
  at: number,
): readonly CellChange[] => {
  const line = linesUnder(counts, columns.FRY_COUNTS, 'batch').find((one) => text(one.at('batch')) === batch);
  return (['weight', 'weighed'] as const).flatMap((key): CellChange[] => {
    const address = line?.address(key);
    return address === undefined
      ? []
      : [{ address, from: line?.at(key) ?? null, to: { weight: grams, weighed: Math.floor(at) }[key] }];
  });
};

/** Weight of a female of a batch, in kilograms, in place of the one planned with. */
export const weightChanges = (
  batches: DaySheet,
  female: string,
  kilograms: number,
): readonly CellChange[] => {
  const line = linesUnder(batches, columns.PAIRS, 'female').findLast(
    (one) => text(one.at('female')).toLowerCase() === female.toLowerCase(),
  );
  const address = line?.address('kilograms');
  return address === undefined ? [] : [{ address, from: line?.at('kilograms') ?? null, to: kilograms }];
};
