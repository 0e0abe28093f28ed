// Long: one record declares a card at the vat: its fields, its answer, the lines it writes.
import { findFunction } from '../../../../shared/catalogue';
import { invoke } from '../../../../shared/functions/invoke';
import type { Cell, Grid } from '../../../../shared/base/values';
import type { LogLine } from '../../../../shared/dosing/log';
import { isError, isGrid } from '../../../../shared/base/values';
import { grouped } from '../../../pane/values/show';
import type { Words } from '../../../words/en';
import type { BookEntry } from './notebook';

export const CARD_IDS = [
  'dose',
  'water',
  'feed',
  'dead',
  'weigh',
  'eggs',
  'look',
  'fry',
  'grow',
  'salt',
  'formalin',
  'hand',
  'mark',
] as const;
export type CardId = (typeof CARD_IDS)[number];

export interface CardField {
  readonly key: string;
  readonly unit: string;
  readonly kind: 'number' | 'whole' | 'text';
  readonly min?: number;
  readonly max?: number;
  readonly isOptional?: boolean;
  readonly initial?: string;
  /** Names of the book to choose from. */
  readonly from?: 'orders' | 'females';
  /** Stays as typed for the next reading: the cup, the vat's water. */
  readonly stays?: boolean;
}
/** What is read of the fields; a field left empty is not in it. */
export type Values = Readonly<Record<string, number>>;

export interface CardAnswer {
  readonly big: string;
  readonly small: readonly string[];
  readonly tone: 'plain' | 'good' | 'warning' | 'bad';
}
export interface LineDraft {
  /** Key of a figure; the words of the line come from it. */
  readonly what: string;
  readonly value: number | null;
  readonly unit: string;
  readonly note?: string;
  /** What stands in other columns of the log. */
  readonly entry?: Partial<LogLine>;
  /** What the season's book takes of it; without one, the vat log takes the line. */
  readonly entries?: readonly BookEntry[];
  /** It stands in the vat log too, whatever the book takes. */
  readonly isLogged?: boolean;
}
export interface CardContext {
  readonly words: Words;
  /** Numbers of earlier lines of this vat, by what they are, with their moment. */
  readonly earlier: (what: string) => readonly { readonly at: number; readonly value: number }[];
  readonly now: number;
  readonly text: (key: string) => string;
  /** Grams of one fish of this vat today, as the season's book plans it. */
  readonly planned?: number;
  /** The fish of this vat by the season's book. */
  readonly fish?: VatFish;
}
export interface VatFish {
  readonly alive: number | undefined;
  /** Whole days since the hatch, this morning. */
  readonly age: number;
  /** First full day of food, in days since the hatch. */
  readonly food: number;
}
export interface Card {
  readonly fields: readonly CardField[];
  /** undefined while something is missing. */
  readonly answer: (values: Values, context: CardContext) => CardAnswer | undefined;
  readonly lines: (values: Values, context: CardContext) => readonly LineDraft[];
  /** Minutes to wait, when the card starts a clock. */
  readonly minutes?: (values: Values) => number | undefined;
  /** A field that is not needed on its own, but one of these is. */
  readonly oneOf?: readonly string[];
}

const number = (key: string, unit: string, more: Partial<CardField> = {}): CardField => ({
  key,
  unit,
  kind: 'number',
  ...more,
});
const whole = (key: string, unit: string, more: Partial<CardField> = {}): CardField => ({
  key,
  unit,
  kind: 'whole',
  min: 0,
  ...more,
});

/** Calls a sheet function as a cell would; its columns by place. */
function call(id: string, args: readonly (Cell | Grid)[]): readonly Cell[] {
  const fn = findFunction(`SPAWN.${id}`);
  if (!fn) throw new Error(`no function ${id}`);
  const value = invoke(fn, args);
  return isGrid(value) ? (value[0] ?? []) : [value];
}
const column = (numbers: readonly (number | undefined)[]): Grid =>
  numbers.filter((n): n is number => n !== undefined).map((n) => [n]);

/** The sentence of the function when it refuses, in the place of an answer. */
const refused = (cells: readonly Cell[]): CardAnswer | undefined => {
  const error = cells.find(isError);
  return error && { big: error.error, small: [error.message ?? ''], tone: 'warning' };
};
const percent = (share: Cell): string =>
  typeof share === 'number' ? `${grouped(share * 100, share > 0.1 ? 0 : 1)} %` : '';
const many = (n: Cell | undefined): string => (typeof n === 'number' ? grouped(Math.round(n)) : '');
const fine = (n: Cell | undefined, digits = 1): string => (typeof n === 'number' ? grouped(n, digits) : '');

const eggsOf = (v: Values): readonly Cell[] => {
  const pairs = [1, 2, 3].flatMap((i) => {
    const [grams, count] = [v[`sample${i}`], v[`count${i}`]];
    return grams !== undefined && count !== undefined ? [{ grams, count }] : [];
  });
  return call('EGGS.BYWEIGHT', [
    v.total ?? null,
    column(pairs.map(({ grams }) => grams)),
    column(pairs.map(({ count }) => count)),
  ]);
};
const cupsOf = (v: Values): readonly number[] =>
  [1, 2, 3, 4].flatMap((i) => {
    const count = v[`cup${i}`];
    return count === undefined ? [] : [count];
  });
const fryOf = (v: Values): readonly Cell[] => {
  const cups = cupsOf(v);
  return call('LARVAE.BYVOLUME', [v.litres ?? null, column(cups.map(() => v.cup)), column(cups)]);
};

/** A count with its interval; the functions hand it over as number, lower end, upper end. */
function counted(
  cells: readonly Cell[],
  big: (n: string) => string,
  isThin: boolean,
  { words: { vat } }: CardContext,
): CardAnswer {
  const [n, low, high] = cells;
  const range = typeof low === 'number' && typeof high === 'number';
  return (
    refused(cells.slice(0, 1)) ?? {
      big: big(many(n)),
      small: [
        ...(range ? [vat.says.between(many(low), many(high))] : []),
        ...(isThin ? [vat.says.more] : []),
      ],
      tone: isThin ? 'warning' : 'plain',
    }
  );
}

const sameDay = (a: number, b: number): boolean => Math.floor(a) === Math.floor(b);
const sum = (list: readonly { readonly value: number }[]): number =>
  list.reduce((all, { value }) => all + value, 0);

const TONES: Readonly<Record<string, CardAnswer['tone']>> = { usual: 'plain', look: 'warning', act: 'bad' };
interface DeadToday {
  readonly alive: number;
  readonly age: number;
  readonly food: number | null;
  readonly today: number;
  readonly yesterday: number | undefined;
}
/** Usual for that age, or a reason to worry: what the function says, in the words of the pane. */
function deadVerdict(
  { alive, age, food, today, yesterday }: DeadToday,
  { says }: Words['vat'],
): Pick<CardAnswer, 'small' | 'tone'> {
  const cells = call('DEATHS.EXPECTED', [alive, age, today, yesterday ?? null, food]);
  const refusal = refused(cells);
  if (refusal) return refusal;
  const [from, to, share, code] = cells;
  return {
    small: [
      says.deadVerdict[code === 'look' || code === 'act' ? code : 'usual'],
      `${says.deadShare(percent(share ?? null))}; ${says.deadUsual(many(from), many(to), age)}`,
    ],
    tone: TONES[String(code)] ?? 'plain',
  };
}
/** The share of the vat, and where the age is known what it means; what is typed counts before the book. */
function deadOf(
  v: Values,
  counted: Pick<DeadToday, 'today' | 'yesterday'>,
  { words: { vat }, fish }: CardContext,
): Pick<CardAnswer, 'small' | 'tone'> {
  const alive = Math.round(v.stocked ?? fish?.alive ?? 0);
  if (alive < 1) return { small: [], tone: 'plain' };
  if (v.age !== undefined) return deadVerdict({ ...counted, alive, age: v.age, food: null }, vat);
  if (fish) return deadVerdict({ ...counted, alive, age: fish.age, food: fish.food }, vat);
  const share = counted.today / alive;
  return { small: share <= 1 ? [vat.says.deadShare(percent(share))] : [], tone: 'plain' };
}

function deadAnswer(v: Values, context: CardContext): CardAnswer | undefined {
  const { words, now } = context;
  if (v.dead === undefined) return undefined;
  const before = context.earlier('dead');
  const today = sum(before.filter(({ at }) => sameDay(at, now))) + v.dead;
  const lines = before.filter(({ at }) => sameDay(at, now - 1));
  const yesterday = lines.length > 0 ? sum(lines) : undefined;
  const { says } = words.vat;
  const { small, tone } = deadOf(v, { today, yesterday }, context);
  return {
    big: says.dead(many(v.dead), many(today)),
    small: [...small, ...(yesterday === undefined ? [] : [says.deadBefore(many(yesterday))])],
    tone,
  };
}

function waterAnswer(v: Values, { words }: CardContext): CardAnswer | undefined {
  const typed = Object.keys(v);
  if (typed.length === 0) return undefined;
  const heat = v.temperature === undefined ? [] : call('TEMPERATURE.CHECK', [v.temperature, 'larvae']);
  const air =
    v.oxygen === undefined || v.temperature === undefined
      ? []
      : call('OXYGEN.PERCENT', [v.oxygen, v.temperature]);
  const verdict = heat.find((cell) => typeof cell === 'string' && cell !== '');
  return {
    big: typeof verdict === 'string' ? verdict : words.vat.says.water(String(typed.length)),
    small: [
      ...(air.length > 0 && typeof air[0] === 'number' ? [words.vat.says.oxygen(percent(air[0]))] : []),
      ...[...heat, ...air].flatMap((cell) => (isError(cell) && cell.message ? [cell.message] : [])),
    ],
    // No verdict but a refusal: beyond what larvae live in.
    tone: heat.some(isError)
      ? 'warning'
      : typeof verdict === 'string' && /^good/i.test(verdict)
        ? 'good'
        : 'plain',
  };
}

const meals = (v: Values): number => v.meals ?? 4;
const feedOf = (v: Values): readonly Cell[] =>
  call('FEED.DAILY', [v.fish ?? null, v.grams ?? null, v.ration === undefined ? null : v.ration / 100]);

/** Fewer fish than this say little of the mean (rule of thumb; no source). */
const LEAST_WEIGHED = 30;
const fishGrams = (grams: number): string => grouped(grams, grams < 0.1 ? 4 : grams < 10 ? 2 : 1);

/** Days for which a count says how many are there; fish die, and an older one would promise too many (no source). */
const COUNT_HOLDS = 2;

export const CARDS: Readonly<Record<Exclude<CardId, 'dose' | 'mark'>, Card>> = {
  water: {
    fields: [
      number('temperature', '°C', { min: 0, max: 45, isOptional: true }),
      number('ph', 'pH', { min: 3, max: 12, isOptional: true }),
      number('oxygen', 'mg/L', { min: 0, max: 30, isOptional: true }),
    ],
    oneOf: ['temperature', 'ph', 'oxygen'],
    answer: waterAnswer,
    lines: (v) =>
      ['temperature', 'ph', 'oxygen'].flatMap((what) => {
        const value = v[what];
        return value === undefined
          ? []
          : [{ what, value, unit: { temperature: '°C', oxygen: 'mg/L' }[what] ?? '' }];
      }),
  },
  feed: {
    fields: [
      whole('fish', '', { min: 1, stays: true }),
      number('grams', 'g', { min: 0.0005, max: 30_000, stays: true }),
      number('ration', '%', { min: 0, max: 100, stays: true }),
      whole('meals', '', { min: 1, max: 24, initial: '4', stays: true }),
    ],
    answer: (v, { words: { vat } }) => {
      if (v.fish === undefined || v.grams === undefined || v.ration === undefined) return undefined;
      const day = feedOf(v);
      const [grams] = day;
      if (typeof grams !== 'number') return refused(day);
      return {
        big: vat.says.feed(fine(grams / meals(v), grams < 10 ? 2 : 0)),
        small: [vat.says.feedDay(fine(grams, grams < 10 ? 2 : 0), String(meals(v)))],
        tone: 'plain',
      };
    },
    lines: (v) => {
      const [grams] = feedOf(v);
      return [{ what: 'feed', value: typeof grams === 'number' ? grams / meals(v) : null, unit: 'g' }];
    },
  },
  dead: {
    // Fish and age are known where a season's book stands; what is typed counts before it.
    fields: [
      whole('dead', ''),
      whole('stocked', '', { min: 1, isOptional: true, stays: true }),
      whole('age', 'd', { max: 200, isOptional: true }),
    ],
    answer: deadAnswer,
    lines: (v) => [{ what: 'dead', value: v.dead ?? null, unit: '' }],
  },
  weigh: {
    fields: [
      number('weight', 'kg', { min: 0.05, max: 30 }),
      number('rate', 'mL/kg', { min: 0.01, max: 5, initial: '0.5', stays: true }),
      { key: 'female', unit: '', kind: 'text', isOptional: true, from: 'females' },
    ],
    answer: (v, { words: { vat } }) => {
      if (v.weight === undefined || v.rate === undefined) return undefined;
      const cells = call('HORMONE.VOLUME', [v.weight, v.rate]);
      return (
        refused(cells) ?? {
          big: vat.says.hormone(fine(cells[0], 2)),
          small: [vat.says.hormoneNote],
          tone: 'plain',
        }
      );
    },
    lines: (v, { text }) => {
      const [ml] = call('HORMONE.VOLUME', [v.weight ?? null, v.rate ?? null]);
      return [
        { what: 'weight', value: v.weight ?? null, unit: 'kg', note: text('female') },
        { what: 'hormone', value: typeof ml === 'number' ? ml : null, unit: 'mL' },
      ];
    },
  },
  eggs: {
    fields: [
      number('total', 'g', { min: 0.01, max: 100_000 }),
      ...[1, 2, 3].flatMap((i) => [
        number(`sample${i}`, 'g', { min: 0.001, max: 10_000, isOptional: i > 1 }),
        whole(`count${i}`, '', { isOptional: i > 1 }),
      ]),
    ],
    answer: (v, context) =>
      v.total === undefined || v.sample1 === undefined || v.count1 === undefined
        ? undefined
        : counted(eggsOf(v), context.words.vat.says.eggs, v.count3 === undefined, context),
    lines: (v) => {
      const [n] = eggsOf(v);
      return [
        { what: 'eggGrams', value: v.total ?? null, unit: 'g' },
        { what: 'eggs', value: typeof n === 'number' ? Math.round(n) : null, unit: '' },
      ];
    },
  },
  look: {
    fields: [whole('good', ''), whole('seen', '', { min: 1 })],
    answer: (v, { words: { vat } }) => {
      if (v.good === undefined || v.seen === undefined) return undefined;
      const cells = call('FERTILISATION.SHARE', [v.good, v.seen]);
      const [share, low, high] = cells;
      return (
        refused(cells.slice(0, 1)) ?? {
          big: vat.says.share(percent(share ?? null)),
          small: [vat.says.between(percent(low ?? null), percent(high ?? null))],
          tone: 'plain',
        }
      );
    },
    lines: (v) => [
      { what: 'good', value: v.good ?? null, unit: '' },
      { what: 'seen', value: v.seen ?? null, unit: '' },
    ],
  },
  fry: {
    fields: [
      number('litres', 'L', { min: 0.1, max: 1e6, stays: true }),
      number('cup', 'mL', { min: 1, max: 1e6, stays: true }),
      ...[1, 2, 3, 4].map((i) => whole(`cup${i}`, '', { isOptional: i > 1 })),
    ],
    answer: (v, context) =>
      v.litres === undefined || v.cup === undefined || v.cup1 === undefined
        ? undefined
        : counted(fryOf(v), context.words.vat.says.fry, cupsOf(v).length < 3, context),
    lines: (v) => {
      const [n] = fryOf(v);
      return [{ what: 'fry', value: typeof n === 'number' ? Math.round(n) : null, unit: '' }];
    },
  },
  grow: {
    fields: [whole('sampleFish', '', { min: 1 }), number('sampleGrams', 'g', { min: 0.0005, max: 1e6 })],
    answer: (v, { words: { vat }, planned }) => {
      if (v.sampleFish === undefined || v.sampleGrams === undefined) return undefined;
      const grams = v.sampleGrams / v.sampleFish;
      return {
        big: vat.says.oneFish(fishGrams(grams)),
        small: [
          ...(planned === undefined ? [] : [vat.says.onePlanned(fishGrams(planned))]),
          ...(v.sampleFish < LEAST_WEIGHED ? [vat.says.moreFish(LEAST_WEIGHED)] : []),
        ],
        tone: v.sampleFish < LEAST_WEIGHED ? 'warning' : 'plain',
      };
    },
    lines: (v) => [
      {
        what: 'fishWeight',
        value: v.sampleFish && v.sampleGrams ? Number((v.sampleGrams / v.sampleFish).toPrecision(4)) : null,
        unit: 'g',
        note: `${v.sampleFish ?? ''} × ${v.sampleGrams ?? ''} g`,
      },
    ],
  },
  salt: {
    fields: [
      number('litres', 'L', { min: 0.1, max: 1e6, stays: true }),
      number('strength', 'g/L', { min: 0.1, max: 300, stays: true }),
      whole('minutes', 'min', { min: 1, max: 1440, isOptional: true, stays: true }),
    ],
    answer: (v, { words: { vat } }) => {
      if (v.litres === undefined || v.strength === undefined) return undefined;
      const cells = call('SALT.DOSE', [v.litres, v.strength]);
      return (
        refused(cells) ?? {
          big: vat.says.salt(fine(cells[0], 0)),
          small: [vat.says.saltNote],
          tone: 'warning',
        }
      );
    },
    lines: (v) => {
      const [grams] = call('SALT.DOSE', [v.litres ?? null, v.strength ?? null]);
      return [{ what: 'salt', value: typeof grams === 'number' ? grams : null, unit: 'g' }];
    },
    minutes: (v) => v.minutes,
  },
  formalin: {
    fields: [
      number('litres', 'L', { min: 0.1, max: 1e6, stays: true }),
      number('strength', 'mg/L', { min: 1, max: 10_000, stays: true }),
      whole('minutes', 'min', { min: 1, max: 1440, initial: '15', stays: true }),
    ],
    answer: (v, { words: { vat } }) => {
      if (v.litres === undefined || v.strength === undefined || v.minutes === undefined) return undefined;
      const cells = call('FORMALIN.VOLUME', [v.litres, v.strength, 'eggs', v.minutes]);
      return (
        refused(cells) ?? {
          big: vat.says.formalin(fine(cells[0], 2)),
          small: [vat.says.formalinNote],
          tone: 'warning',
        }
      );
    },
    lines: (v) => {
      const [millilitres] = call('FORMALIN.VOLUME', [
        v.litres ?? null,
        v.strength ?? null,
        'eggs',
        v.minutes ?? null,
      ]);
      return [{ what: 'formalin', value: typeof millilitres === 'number' ? millilitres : null, unit: 'mL' }];
    },
    minutes: (v) => v.minutes,
  },
  hand: {
    fields: [
      whole('number', '', { min: 1 }),
      { key: 'buyer', unit: '', kind: 'text', isOptional: true, from: 'orders' },
      number('paid', '', { min: 0, isOptional: true }),
    ],
    answer: (v, { words: { vat }, earlier, now }) => {
      if (v.number === undefined) return undefined;
      const counts = earlier('fry').filter(({ at }) => now - at <= COUNT_HOLDS);
      const last = counts.at(-1);
      const gone = last ? sum(earlier('handed').filter(({ at }) => at >= last.at)) : 0;
      const rest = last ? last.value - gone - v.number : undefined;
      return {
        big: vat.says.hand(
          many(v.number),
          rest !== undefined && rest >= 0 ? vat.says.handLeft(many(rest)) : '',
        ),
        small: [],
        tone: rest !== undefined && rest < 0 ? 'warning' : 'plain',
      };
    },
    lines: (v, { text }) => [{ what: 'handed', value: v.number ?? null, unit: '', note: text('buyer') }],
  },
};

export const isPadCard = (id: CardId | undefined): id is keyof typeof CARDS =>
  id !== undefined && id !== 'dose' && id !== 'mark';
