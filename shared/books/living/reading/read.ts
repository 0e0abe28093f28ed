// Long: one reader for each table of the book, side by side with its columns.
import type { Cell } from '../../../base/values';
import { isError } from '../../../base/values';
import { VERDICTS, verdictOf, verdictText } from '../../../maths/verdict';
import type { Verdict } from '../../../maths/verdict';
import { VAT_STAGES } from '../../../season/figures/stages';
import { MORNING } from '../../../season/problem';
import { BATCH_STATES } from '../../../season/types';
import type { Allocation, BatchState, BatchStay, PlanFinding, SeasonBatch } from '../../../season/types';
import { PRICE_FIELDS, SETUP_FIELDS } from '../workings/setupFields';
import { planUnder, typedUnder } from '../keyed';
import type { OrderLine, OrderLines } from './orderLines';
import { orderLinesOf } from './orderLines';
import { figuresOf, spreadsOf } from './readFigures';
import type { BookInput } from './readFigures';
import { dayOf, isYes, numberIn, ownOf, setupOf, textIn } from './sheetReading';
import { BOOK_LANGUAGES } from '../../words';
import { sheetInEnglish, wordsOfSheets } from '../../words/inEnglish';
import type { BookWords } from '../../words/words';
import { ownSheetName, quotedIn } from '../../words/words';
import type { Entry, ReadSheet } from './sheetReading';
import * as columns from '../columns';
import type { BookPlan } from '../layout';
import { SHEETS } from '../layout';
import type { SheetKey } from '../layout';
import { ODDS, PROFITS } from '../pages/money';
import type { Range } from '../../../maths/quantiles';
import { CANNOT, SAID, SAID_OF_NOTHING } from '../pages/today';
import type { ColumnsOf } from '../table';
import { doubtOf, meant } from './typedCells';
import type { TypedActuals, TypedLine } from './typed';
import { openKeys } from './typed';

/** Sheets without which a book cannot be read; Notes and the other workings can be made again. */
const READ: readonly SheetKey[] = [
  'today',
  'orders',
  'batches',
  'calendar',
  'vats',
  'counts',
  'money',
  'setup',
  'brood',
  'figures',
  'workings',
  'shares',
  'tasks',
];
const NAMES: readonly string[] = READ.map((key) => SHEETS[key]);
/** The language the book of a suffix is written in; undefined for English. */
export const wordsOfBook = (there: readonly string[], suffix: string): BookWords | undefined =>
  wordsOfSheets(there, NAMES, suffix);
/** The sheets of a book that are needed, by the names they have in the language it is written in. */
export function bookSheetNames(suffix: string, there: readonly string[] = []): readonly string[] {
  const words = wordsOfBook(there, suffix);
  return NAMES.map((name) => `${words ? ownSheetName(words, name) : name}${suffix}`);
}

/** A book is known though so many of its sheets are not there or were renamed, which reading then says. */
const MOST_MISSING = 5;
/** What stands behind the sheet names of each book in a workbook, the one that stands first in it first. */
export function booksIn(sheetNames: readonly string[]): readonly string[] {
  const names = new Set(sheetNames);
  const stems = NAMES.flatMap((name) => [
    name,
    ...Object.values(BOOK_LANGUAGES).map((words) => ownSheetName(words, name)),
  ]);
  const suffixes = sheetNames.flatMap((name) =>
    stems.flatMap((stem) => (name.startsWith(stem) ? [name.slice(stem.length)] : [])),
  );
  return [...new Set(suffixes)].filter(
    (suffix) => bookSheetNames(suffix, sheetNames).filter((name) => !names.has(name)).length <= MOST_MISSING,
  );
}

/** A book as it stands in cells. `input` is what readOrderBook checks, without the batches that may still move. */
export interface BookRead {
  readonly kind: 'read';
  readonly input: BookInput;
  readonly plan: BookPlan;
  readonly typed: TypedActuals;
  /** Sentences about lines that are gone from one table and still stand in another. */
  readonly missing: readonly string[];
}
export type BookReading = BookRead | { readonly kind: 'unreadable'; readonly faults: readonly string[] };

type Line<K extends string> = Readonly<Partial<Record<K, Entry>>>;
const entry = (cell: Cell | undefined): Entry =>
  cell === null || cell === undefined || cell === '' || isError(cell) ? undefined : cell;

/** A row that holds most of the headings of a table, with the one it is known by. */
function isHeading<K extends string>(row: readonly Cell[], of: ColumnsOf<K>, key: K): boolean {
  if (!row.includes(of[key].title)) return false;
  const titles = (Object.keys(of) as K[]).map((k) => of[k].title);
  const least = Math.ceil(titles.filter(Boolean).length * 0.6);
  return titles.filter((title) => row.includes(title)).length >= least;
}
const headingOf = ({ values }: ReadSheet, of: ColumnsOf<string>, key: string) =>
  values.find((row) => isHeading(row, of, key));

/**
 * Lines of a table under its headings, wherever rows or columns were put in: from the row that holds most of
 * them to the next heading. A heading is taken once; the second of two tables of one sheet comes after the
 * first.
 */
function linesOf<K extends string>(
  sheet: ReadSheet,
  of: ColumnsOf<K>,
  key: NoInfer<K>,
): { readonly line: Line<K>; readonly row: number }[] | undefined {
  const { values } = sheet;
  const own = ownOf(sheet);
  const names = columns.nameKeysOf(of);
  const keys = Object.keys(of) as K[];
  const titles = keys.map((k) => of[k].title);
  const head = values.findIndex((row) => isHeading(row, of, key));
  const heading = values[head];
  if (!heading) return undefined;
  const places = keys.map((k) => [k, heading.indexOf(of[k].title)] as const).filter(([, at]) => at >= 0);
  const isChecked = CHECKED.has(of);
  const lines: { readonly line: Line<K>; readonly row: number }[] = [];
  for (let row = head + 1; row < values.length; row++) {
    const cells = values[row] ?? [];
    const line = Object.fromEntries(
      places.map(([k, at]) => {
        const cell = entry(names.has(k) ? own[row]?.[at] : cells[at]);
        return [k, isChecked ? cell : meant(of[k], cell)];
      }),
    ) as Line<K>;
    if (endsBefore(cells, values[row + 1], titles, Math.min(...places.map(([, at]) => at)))) break;
    lines.push({ line, row: row - head });
  }
  return lines;
}
/** Tables whose entries readOrderBook reads itself, a column as a whole. */
const CHECKED: ReadonlySet<object> = new Set([
  columns.ORDERS,
  columns.VATS,
  columns.FEMALES,
  columns.MALES,
  columns.BOOKED,
]);
const ALL_TITLES: readonly (readonly string[])[] = Object.values(columns)
  .filter((of): of is typeof columns.ORDERS => typeof of === 'object' && !Array.isArray(of))
  .map((of) => Object.values(of).map(({ title }) => title));
const isHeadingOfOther = (row: readonly Cell[] | undefined, own: readonly string[]): boolean =>
  row !== undefined &&
  ALL_TITLES.some(
    (titles) =>
      titles.join() !== own.join() &&
      titles.filter((title) => title !== '' && row.includes(title)).length >= titles.length * 0.6,
  );
/** A text this long under the first heading of a table is a note below it, not a name. */
const NOTE = 60;
/** A table ends at the title of the next one, at a note below it, or in two empty rows. */
export function endsBefore(
  cells: readonly Cell[],
  next: readonly Cell[] | undefined,
  titles: readonly string[],
  left: number,
): boolean {
  const filled = cells.flatMap((c) => entry(c) ?? []);
  const isEmpty = !next || next.every((c) => entry(c) === undefined);
  if (filled.length === 0) return isEmpty;
  return isHeadingOfOther(next, titles) || (filled.length === 1 && textIn(entry(cells[left])).length > NOTE);
}

interface Sheets {
  readonly at: (key: SheetKey) => ReadSheet;
  readonly orders: OrderLines;
}
const tableOf = <K extends string>(
  { at }: Pick<Sheets, 'at'>,
  sheet: SheetKey,
  of: ColumnsOf<K>,
  key: NoInfer<K>,
): Line<K>[] =>
  (linesOf(at(sheet), of, key) ?? []).map(({ line }) => line).filter((line) => line[key] !== undefined);

const numberOr = (value: Entry, otherwise: number): number => numberIn(value) ?? otherwise;

/** Every text of another sheet that may name an order. */
const mentionsOf = (sheets: Pick<Sheets, 'at'>): unknown[] => [
  ...tableOf(sheets, 'shares', columns.SHARES, 'order').map(({ order }) => order),
  ...tableOf(sheets, 'tasks', columns.TASK_LIST, 'order').map(({ order }) => order),
  ...(linesOf(sheets.at('counts'), columns.LOG, 'what') ?? []).flatMap(({ line }) => [line.order, line.note]),
  ...tableOf(sheets, 'money', columns.BOOKED, 'order').map(({ order }) => order),
];
const orderInput = (line: OrderLine) => ({
  key: line.key,
  name: line.buyerName,
  product: line.product,
  number: line.number,
  grams: line.grams,
  due: line.due,
  price: line.price,
  forBreeding: isYes(line.breeding),
  cancelled: isYes(line.cancelled),
});

/** As plans name it. */
const namesIn = ({ name, buyerName }: OrderLine) =>
  name === buyerName ? { name } : { name, buyer: buyerName };

const vatsOf = (sheets: Sheets) =>
  tableOf(sheets, 'vats', columns.VATS, 'vat')
    .filter((v) => v.litres !== undefined || v.eggs !== undefined)
    .map((v) => ({
      name: textIn(v.vat),
      litres: v.litres,
      holds: VAT_STAGES.filter((stage) => isYes(v[stage])),
      outFrom: v.outFrom,
      outUntil: v.outUntil,
    }));

const fishOf = (line: Line<'family' | 'lastUsed' | 'goneOn'>) => ({
  family: textIn(line.family) || undefined,
  lastUsed: line.lastUsed,
  goneOn: line.goneOn,
});

const stateOf = (value: Entry): SeasonBatch['state'] =>
  BATCH_STATES.find((state) => state === value) ?? 'planned';

type Count = Pick<SeasonBatch['counts'][number], 'stage' | 'number'>;
type Log = Line<keyof typeof columns.LOG>;
const countsOf = (log: readonly Log[]): SeasonBatch['counts'] =>
  log.flatMap((line) =>
    line.what === 'counted' && numberIn(line.at) !== undefined && numberIn(line.number) !== undefined
      ? [
          {
            at: numberOr(line.at, 0),
            stage: (line.stage ?? 'fish') as SeasonBatch['counts'][number]['stage'],
            number: numberOr(line.number, 0),
          },
        ]
      : [],
  );
const eventsOf = (log: readonly Log[], { nameOf }: OrderLines): SeasonBatch['events'] =>
  log.flatMap((line) =>
    line.what !== undefined && line.what !== 'counted' && numberIn(line.at) !== undefined
      ? [
          {
            at: numberOr(line.at, 0),
            kind: line.what as SeasonBatch['events'][number]['kind'],
            number: numberOr(line.number, 0),
            order: nameOf(textIn(line.order)) || undefined,
            paid: numberIn(line.paid),
            note: textIn(line.note) || undefined,
          },
        ]
      : [],
  );

/** Counts of the tables of samples and counts, each at the hour its batch reached the step. */
function tableCounts(
  eggs: Line<keyof typeof columns.EGG_COUNTS> | undefined,
  fry: Line<keyof typeof columns.FRY_COUNTS> | undefined,
  clock: Pick<SeasonBatch, 'stripAt' | 'hatchEndAt' | 'firstFeedAt' | 'weanedAt'>,
): SeasonBatch['counts'] {
  const list: readonly (readonly [SeasonBatch['counts'][number]['stage'], Entry, number])[] = [
    ['eggs', eggs?.eggs, clock.stripAt],
    ['larvae', fry?.hatched, clock.hatchEndAt],
    ['feeding', fry?.larvae, clock.firstFeedAt],
    ['weaned', fry?.weaned, clock.weanedAt],
  ];
  return list.flatMap(([stage, value, at]) => {
    const number = numberIn(value);
    return number === undefined ? [] : [{ at, stage, number }];
  });
}

/** A weighing counts with its day alone. */
function weighedOf(line: Line<keyof typeof columns.FRY_COUNTS> | undefined): Pick<SeasonBatch, 'weighed'> {
  const [grams, on] = [numberIn(line?.weight), dayOf(line?.weighed)];
  return grams !== undefined && grams > 0 && on !== undefined ? { weighed: { grams, on } } : {};
}

/** What the planning knew of the log; a book of an earlier version does not say. */
function knownOf(work: Line<columns.WorkingKey> | undefined): Pick<SeasonBatch, 'known'> {
  const [eggs, counted, lost, sold] = [
    work?.eggsKnown,
    work?.countedThen,
    work?.lostThen,
    work?.soldThen,
  ].map((value) => numberIn(value));
  if (eggs === undefined || counted === undefined || lost === undefined || sold === undefined) return {};
  return { known: { eggs, counted, lost, sold } };
}

/** A count of the tables that the log holds too, to the fish. */
export const isSameCount = (a: Count, b: Count): boolean =>
  a.stage === b.stage && Math.abs(a.number - b.number) < 0.5;

function batchesOf(sheets: Sheets): SeasonBatch[] {
  const lines = tableOf(sheets, 'batches', columns.BATCHES, 'batch').filter((b) => b.strip !== undefined);
  const workings = tableOf(sheets, 'workings', columns.WORKINGS, 'batch');
  const pairs = tableOf(sheets, 'batches', columns.PAIRS, 'female');
  const log = tableOf(sheets, 'counts', columns.LOG, 'what');
  const eggs = tableOf(sheets, 'counts', columns.EGG_COUNTS, 'batch');
  const fry = tableOf(sheets, 'counts', columns.FRY_COUNTS, 'batch');
  return lines.map((line): SeasonBatch => {
    const name = textIn(line.batch);
    const by = <L extends { readonly batch?: Entry }>(list: readonly L[]): L[] =>
      list.filter((l) => textIn(l.batch) === name);
    const [work] = by(workings);
    const number = (key: columns.WorkingKey): number => numberOr(work?.[key], NaN);
    const own = by(pairs);
    const really = (key: 'injected' | 'stripped', otherwise: number): number =>
      Math.min(...own.flatMap((p) => numberIn(p[key]) ?? []), Infinity) === Infinity
        ? otherwise
        : Math.min(...own.flatMap((p) => numberIn(p[key]) ?? []));
    const clock = {
      temperature: number('water'),
      latencyHours: number('latency'),
      injectAt: really('injected', number('inject')),
      checkAt: number('look'),
      stripAt: really('stripped', numberOr(line.strip, NaN)),
      lateAt: number('late'),
      hatchAt: number('hatchAt'),
      hatchEndAt: number('hatchEnd'),
      firstFeedAt: number('feed'),
      feedFrom: number('fedFrom'),
      weanedAt: number('weaned') + MORNING,
    };
    const counts = countsOf(by(log));
    const more = tableCounts(by(eggs)[0], by(fry)[0], clock).filter(
      (count) => !counts.some((one) => isSameCount(one, count)),
    );
    return {
      ...clock,
      name,
      state: stateOf(line.state),
      pairs: own.map((p) => ({
        female: textIn(p.female),
        male: textIn(p.male),
        kilograms: numberOr(p.kilograms, 0),
      })),
      males: [...new Set(own.map((p) => textIn(p.male)))],
      hormone: number('hormone'),
      eggs: numberOr(line.toSet, number('eggs')),
      larvae: number('larvae'),
      feeding: number('feeding'),
      weaned: number('fry'),
      promised: numberOr(line.promised, 0),
      extra: numberOr(line.extra, 0),
      leavesOn: number('leaves'),
      counts: [...counts, ...more].sort((a, b) => a.at - b.at),
      ...weighedOf(by(fry)[0]),
      events: eventsOf(by(log), sheets.orders),
      alive: numberIn(work?.standing),
      ...knownOf(work),
    };
  });
}

function allocationsOf(sheets: Sheets, batches: readonly SeasonBatch[]): Allocation[] {
  return tableOf(sheets, 'shares', columns.SHARES, 'order').map((share): Allocation => {
    const batch = batches.find(({ name }) => name === textIn(share.batch));
    const feeding = numberOr(share.part, 0) * (batch?.feeding ?? 0);
    return {
      batch: textIn(share.batch),
      order: sheets.orders.nameOf(textIn(share.order)),
      on: numberOr(share.on, NaN),
      ageDays: numberOr(share.age, NaN),
      grams: numberOr(share.gramsThen, NaN),
      fish: numberOr(share.fishThen, 0),
      feeding,
      stage: textIn(share.stage) === 'nursing' ? 'nursing' : 'fry',
    };
  });
}

const staysOf = (sheets: Sheets): BatchStay[] =>
  tableOf(sheets, 'vats', columns.STAYS, 'stage').map((stay) => ({
    batch: textIn(stay.batch),
    vat: textIn(stay.vat),
    stage: textIn(stay.stage) as BatchStay['stage'],
    from: numberOr(stay.from, NaN),
    to: numberOr(stay.to, NaN),
    cleanAt: numberOr(stay.clean, NaN),
    fish: numberOr(stay.fish, 0),
    perLitre: numberOr(stay.perLitre, 0),
  }));

/** The cell under a heading, and the one so many steps right of a label. */
const under = ({ values }: ReadSheet, label: string): Entry => {
  const row = values.findIndex((cells) => cells.includes(label));
  return row < 0 ? undefined : entry(values[row + 1]?.[values[row]?.indexOf(label) ?? -1]);
};
const beside = ({ values }: ReadSheet, label: string, steps: number): Entry => {
  const row = values.find((cells) => cells.includes(label));
  return row && entry(row[row.indexOf(label) + steps]);
};
const verdictIn = (value: Entry): Verdict => VERDICTS.find((word) => verdictText(word) === value) ?? 'cannot';

function findingsOf({ values }: ReadSheet): PlanFinding[] {
  const from = values.findIndex((cells) => cells.includes(SAID));
  if (from < 0) return [];
  const found: PlanFinding[] = [];
  for (const cells of values.slice(from + 1)) {
    const text = textIn(entry(cells[1]));
    if (text === '') break;
    const isCannot = text.startsWith(CANNOT);
    if (!SAID_OF_NOTHING.includes(text))
      found.push({
        kind: isCannot ? 'cannot' : 'care',
        about: 'season',
        message: isCannot ? text.slice(CANNOT.length) : text,
      });
  }
  return found;
}

/** Books written before they showed it have none. */
function profitIn(money: ReturnType<Sheets['at']>): { readonly profit?: Range } {
  const [p10, p50, p90] = PROFITS.map(([label]) => numberIn(beside(money, label, 2)));
  return p10 === undefined || p50 === undefined || p90 === undefined ? {} : { profit: { p10, p50, p90 } };
}

function planOf(sheets: Sheets, plannedOn: number): BookPlan {
  const batches = batchesOf(sheets);
  const orders = sheets.orders.lines;
  const today = sheets.at('today');
  const money = sheets.at('money');
  const gain = numberIn(beside(money, ODDS.gain, 2));
  const solvent = numberIn(beside(money, ODDS.solvent, 2));
  const allocations = allocationsOf(sheets, batches);
  return {
    plannedOn,
    batches,
    allocations,
    stays: staysOf(sheets),
    orders: orders.flatMap((line) => {
      const certainty = numberIn(line.certainty);
      const { name } = line;
      if (certainty === undefined) return [];
      return [
        {
          order: { ...orderInput(line), ...namesIn(line) } as unknown as BookPlan['orders'][number]['order'],
          batches: allocations.filter((a) => a.order === name).map(({ batch }) => batch),
          delivered: numberOr(line.delivered, 0),
          promise: numberOr(line.promise, 0),
          hope: numberOr(line.hope, 0),
          range: { p10: NaN, p50: numberOr(line.hope, 0), p90: NaN },
          certainty,
          verdict: verdictOf(certainty),
          expected: numberOr(line.expected, 0),
          parents: NaN,
        },
      ];
    }),
    findings: findingsOf(today),
    promise: numberOr(under(today, 'PROMISE'), 0),
    hope: numberOr(under(today, 'HOPE FOR'), 0),
    verdict: verdictIn(under(today, 'ALL ORDERS')),
    odds: gain === undefined || solvent === undefined ? undefined : { gain, solvent, ...profitIn(money) },
  };
}

/** Lines of a table with what was typed in them; the rest of a line only says which it is. */
const typedLines = <K extends string>(
  sheets: Sheets,
  sheet: SheetKey,
  of: ColumnsOf<K>,
  key: NoInfer<K>,
): TypedLine[] =>
  tableOf(sheets, sheet, of, key).filter((line) =>
    openKeys(of).some((k) => line[k] !== undefined),
  ) as TypedLine[];

function typedOf(sheets: Sheets): TypedActuals {
  const tasks = linesOf(sheets.at('tasks'), columns.TASK_LIST, 'task') ?? [];
  const calendar = linesOf(sheets.at('calendar'), columns.CALENDAR, 'what') ?? [];
  const taskAt = new Map(tasks.map(({ line, row }) => [row, line]));
  return {
    pairs: typedLines(sheets, 'batches', columns.PAIRS, 'female'),
    eggs: typedLines(sheets, 'counts', columns.EGG_COUNTS, 'batch'),
    fry: typedLines(sheets, 'counts', columns.FRY_COUNTS, 'batch'),
    calendar: calendar.flatMap(({ line, row }): TypedLine[] => {
      const task = taskAt.get(row);
      return line.done === undefined && line.by === undefined
        ? []
        : [
            {
              batch: task?.batch ?? line.batch,
              task: task?.task,
              order: task?.order,
              later: task?.later,
              done: line.done,
              by: line.by,
            },
          ];
    }),
    shopping: typedLines(sheets, 'money', columns.SHOPPING, 'week'),
    log: (linesOf(sheets.at('counts'), columns.LOG, 'what') ?? [])
      .map(({ line }) => line)
      .filter((line) => Object.values(line).some((v) => v !== undefined)) as TypedLine[],
  };
}

function inputOf(sheets: Sheets): BookInput {
  const figures = figuresOf(sheets.at('figures'));
  return {
    ...setupOf(sheets.at('setup')),
    orders: sheets.orders.lines.map(orderInput),
    vats: vatsOf(sheets),
    females: tableOf(sheets, 'brood', columns.FEMALES, 'female').map((f) => ({
      tag: textIn(f.female),
      kilograms: f.kilograms,
      ...fishOf(f),
    })),
    males: tableOf(sheets, 'brood', columns.MALES, 'male').map((m) => ({
      tag: textIn(m.male),
      ...fishOf(m),
    })),
    booked: tableOf(sheets, 'money', columns.BOOKED, 'amount').map((b) => ({
      date: b.date,
      what: textIn(b.what) || 'paid',
      amount: b.amount,
      ...(textIn(b.batch) ? { batch: textIn(b.batch) } : {}),
      ...(textIn(b.order) ? { order: sheets.orders.givenOf(textIn(b.order)) || undefined } : {}),
    })),
    assumptions: figures,
    spreads: spreadsOf(sheets.at('figures'), figures),
  };
}

/** Tables without which something typed would be lost, each by the heading it is found by. */
const NEEDED = [
  ['orders', columns.ORDERS, 'order'],
  ['batches', columns.BATCHES, 'batch'],
  ['batches', columns.PAIRS, 'female'],
  ['calendar', columns.CALENDAR, 'what'],
  ['vats', columns.VATS, 'vat'],
  ['vats', columns.STAYS, 'stage'],
  ['counts', columns.EGG_COUNTS, 'batch'],
  ['counts', columns.FRY_COUNTS, 'batch'],
  ['counts', columns.LOG, 'what'],
  ['money', columns.SHOPPING, 'week'],
  ['money', columns.BOOKED, 'amount'],
  ['brood', columns.FEMALES, 'female'],
  ['brood', columns.MALES, 'male'],
  ['workings', columns.WORKINGS, 'batch'],
  ['shares', columns.SHARES, 'order'],
  ['tasks', columns.TASK_LIST, 'task'],
] as const;
/** Headings of later editions: an older book does not have them. */
const LATER_HEADINGS: ReadonlySet<string> = new Set([columns.ORDERS.buyer.title]);

/** Tables whose headings are gone, and headings of columns people type into that were overwritten. */
function lostHeadings({ at }: Pick<Sheets, 'at'>, suffix: string): string[] {
  const said = NEEDED.flatMap(([sheet, of, key]): string[] => {
    const table = of as ColumnsOf<string>;
    const name = `${SHEETS[sheet]}${suffix}`;
    const heading = headingOf(at(sheet), table, key);
    if (!heading)
      return [
        `The headings of “${name}” are not where they were written. Bring them back, or fill in the form by hand.`,
      ];
    return openKeys(table)
      .map((one) => table[one]?.title ?? '')
      .filter((title) => title !== '' && !LATER_HEADINGS.has(title) && !heading.includes(title))
      .map(
        (title) =>
          `The heading “${title}” of “${name}” is not where it was written. Bring it back, or what stands below it would be lost.`,
      );
  });
  return [...new Set(said)];
}

/**
 * A book read back from its sheets, in whatever language it was written: everything typed, the plan it shows, what
 * nobody but the book holds.
 */
export function readBook(sheets: readonly ReadSheet[], suffix: string): BookReading {
  const words = wordsOfBook(
    sheets.map(({ name }) => name),
    suffix,
  );
  if (!words) return readEnglish(sheets, suffix);
  const english = Object.values(SHEETS);
  const reading = readEnglish(
    sheets.map((sheet) => sheetInEnglish(sheet, words, english, suffix)),
    suffix,
  );
  const said = (sentences: readonly string[]): string[] => sentences.map((one) => quotedIn(words, one));
  return reading.kind === 'read'
    ? { ...reading, missing: said(reading.missing) }
    : { ...reading, faults: said(reading.faults) };
}

function readEnglish(sheets: readonly ReadSheet[], suffix: string): BookReading {
  const sheetOf = (key: SheetKey): ReadSheet | undefined =>
    sheets.find(({ name }) => name === `${SHEETS[key]}${suffix}`);
  const missing = READ.filter((key) => sheetOf(key) === undefined).map(
    (key) =>
      `There is no sheet “${SHEETS[key]}${suffix}” in this workbook. The book needs it to be planned again.`,
  );
  if (missing.length > 0) return { kind: 'unreadable', faults: missing };
  const at: Sheets['at'] = (key) => sheetOf(key) ?? { name: '', values: [] };
  const lost = lostHeadings({ at }, suffix);
  if (lost.length > 0) return { kind: 'unreadable', faults: lost };
  const all = linesOf(at('orders'), columns.ORDERS, 'order') ?? [];
  const orders = orderLinesOf(
    all.map(({ line }) => line),
    mentionsOf({ at }),
  );
  const found: Sheets = { at, orders };
  const input = inputOf(found);
  const plannedOn = dayOf(input.plannedOn as Entry) ?? 0;
  const byKey = new Map(orders.lines.map(({ key, name }) => [key, name]));
  const read = planOf(found, plannedOn);
  const plan = { ...read, findings: planUnder(read, byKey).findings };
  const typed = typedUnder(typedOf(found), orders.keys);
  const said = [...missingOf(plan, suffix), ...missingSetup(found, suffix), ...doubtsOf(found, suffix)];
  return { kind: 'read', input, plan, typed, missing: said };
}

/** Questions of Setup whose words were overwritten: their answers are not found. */
const missingSetup = ({ at }: Sheets, suffix: string): string[] =>
  [...SETUP_FIELDS, ...PRICE_FIELDS]
    .filter(({ label }) => !at('setup').values.some((cells) => cells.includes(label)))
    .map(
      ({ label }) =>
        `“${SHEETS.setup}${suffix}” has no “${label}” any more. The usual value is taken for it.`,
    );

/** Typed entries of numbers and days that cannot be read: they do not count, and that is said. */
function doubtsOf(sheets: Sheets, suffix: string): string[] {
  const of = <K extends string>(sheet: SheetKey, table: ColumnsOf<K>, key: NoInfer<K>): string[] =>
    (linesOf(sheets.at(sheet), table, key) ?? []).flatMap(({ line }) =>
      openKeys(table).flatMap((k) => {
        const doubt = k === 'done' ? undefined : doubtOf(table[k], line[k]);
        return doubt === undefined
          ? []
          : [`“${SHEETS[sheet]}${suffix}”, “${table[k].title}”: ${doubt} Until then it does not count.`];
      }),
    );
  const whose = (sheet: SheetKey, list: readonly { readonly order?: Entry }[]): string[] =>
    list.flatMap(({ order }) => {
      const doubt = sheets.orders.doubtOf(textIn(order));
      return doubt === undefined
        ? []
        : [`“${SHEETS[sheet]}${suffix}”: ${doubt} Until then it counts for none of them.`];
    });
  return [
    ...whose('counts', tableOf(sheets, 'counts', columns.LOG, 'what')),
    ...whose('money', tableOf(sheets, 'money', columns.BOOKED, 'amount')),
    ...of('counts', columns.EGG_COUNTS, 'batch'),
    ...of('counts', columns.FRY_COUNTS, 'batch'),
    ...of('counts', columns.LOG, 'what'),
    ...of('batches', columns.PAIRS, 'female'),
  ].slice(0, MOST_DOUBTS);
}
/** So many are read. */
const MOST_DOUBTS = 8;

/** Batches whose vats are still told but whose own line was deleted. */
function missingOf({ batches, stays }: BookPlan, suffix: string): string[] {
  const known = new Set(batches.map(({ name }) => name));
  const gone = [...new Set(stays.map(({ batch }) => batch))].filter(
    (name) => name !== '' && !known.has(name),
  );
  return gone.map(
    (name) =>
      `${name} has vats on “${SHEETS.vats}${suffix}” but no line on “${SHEETS.batches}${suffix}” any more. Bring its line back (undo, or an older copy), or it is planned as if it had never been.`,
  );
}
export type { BatchState };
