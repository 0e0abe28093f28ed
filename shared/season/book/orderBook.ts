// Long: the form of the order book, one field a line.
import * as z from 'zod';
import { assumptionSchema } from '../../families/assumptions';
import { DEFAULT_PREPARATION, preparationWord } from '../../families/preparations';
import { MATERIALS, PREPARATIONS, PRODUCTS } from '../../run/fields';
import type { FieldLimits } from './fields';
import { dayOf, hourOr, listOf, maybeDay, maybeNumber, nameOf, numberOf, numberOr, oneOf } from './fields';
import { settleTable } from '../../units/typedLists';
import { crossFaults } from './crossFaults';
import { withOrderKeys } from './orderKeys';
import { openNames, withPlanNames } from './orderNames';
import { batchSchema, bookedSchema, earlierSchema, outSchema } from './living';
import { VAT_STAGES } from '../figures/stages';
import { MOST_CERTAIN } from '../types';

export { VAT_STAGES } from '../figures/stages';
export type { VatStageKey } from '../figures/stages';

const money = { min: 0, max: 1e9 } as const;
const GRAMS = { min: 0.005, max: 100, unit: 'g' } as const;
const LITRES = { min: 10, max: 200_000, unit: 'L' } as const;
const KILOGRAMS = { min: 0.1, max: 15, unit: 'kg' } as const;
const share = { min: 0, max: 1, unit: 'share (80 % is 0.8)' } as const;
const days = (max: number) => ({ min: 0, max, unit: 'd', whole: true }) as const;

/** A group of entries that may be left out as a whole. */
const part = <T extends z.ZodType>(group: T) => z.preprocess((value) => value ?? {}, group);

const order = z.strictObject({
  /** Neutral, for every sheet but the one of orders; left out, the next of O1, O2 … */
  key: nameOf('Key of the order', 20).optional(),
  name: nameOf('Name of the order'),
  /** Who it is for; left out, the name says it. Plans put key and buyer into the name where a buyer comes twice. */
  buyer: nameOf('Buyer').optional(),
  product: oneOf('What is ordered', PRODUCTS),
  number: numberOf('Fish ordered', { min: 1, max: 5_000_000, unit: 'fish', whole: true }),
  /** Mean weight wanted; left out, what the usual days of rearing give. */
  grams: maybeNumber('Weight of a fish', {
    ...GRAMS,
    slip: (g) => (g > GRAMS.max ? 'That is no fry or fingerling.' : undefined),
  }),
  due: dayOf('Due on'),
  /** Price of one fish. */
  price: maybeNumber('Price of a fish', money),
  /** The fish are to become brood fish: their parents must be many. */
  forBreeding: z.boolean().default(false),
  /** The buyer no longer wants it; what he took already stays in the book. */
  cancelled: z.boolean().default(false),
});

const vat = z.strictObject({
  name: nameOf('Name of the vat', 30),
  litres: numberOf('Water in the vat', LITRES),
  holds: listOf('What the vat holds', oneOf('What the vat holds', VAT_STAGES), 1, VAT_STAGES.length).default([
    ...VAT_STAGES,
  ]),
  ...outSchema,
});

const fish = {
  tag: nameOf('Tag', 30),
  /** Fish of one family are brothers and sisters. */
  family: z
    .string()
    .trim()
    .max(30, { error: () => 'Family: at most 30 characters.' })
    .optional(),
  lastUsed: maybeDay('Last used on'),
  /** Dead or sold on that day: used no more. */
  goneOn: maybeDay('Gone on'),
};
const female = z.strictObject({
  ...fish,
  kilograms: numberOf('Weight of a female', {
    ...KILOGRAMS,
    slip: (w) =>
      w > 100 ? `That looks like grams: ${w} g is ${Number((w / 1000).toPrecision(12))} kg.` : undefined,
  }),
});
const male = z.strictObject(fish);

const staff = z.strictObject({
  stripFrom: hourOr('Stripping from', 6),
  stripTo: hourOr('Stripping until', 20),
  injectFrom: hourOr('Injecting from', 0),
  injectTo: hourOr('Injecting until', 24),
  /** 1 Monday … 7 Sunday. */
  weekdays: listOf(
    'Days people strip on',
    numberOf('Day of the week', { min: 1, max: 7, whole: true }),
    1,
    7,
  ).default([1, 2, 3, 4, 5, 6, 7]),
  daysOff: listOf('Days off', dayOf('Day off'), 0, 366).default([]),
  femalesPerDay: numberOr('Females that can be stripped in a day', 10, { min: 1, max: 200, whole: true }),
});

const prices = z.strictObject({
  cystsPerKilogram: numberOr('Price of cysts', 0, { ...money, unit: 'a kg' }),
  feedPerKilogram: numberOr('Price of dry feed', 0, { ...money, unit: 'a kg' }),
  hormonePerMillilitre: numberOr('Price of hormone', 0, { ...money, unit: 'a mL' }),
  male: numberOr('A male that is used up', 0, money),
  perRun: numberOr('Wages and other costs of a run', 0, money),
  perVatDay: numberOr('Water and power of a vat for a day', 0, money),
  perMonth: numberOr('Rent, wages and wear of a month', 0, money),
  atHand: numberOr('Money at hand', 0, { min: -1e12, max: 1e12 }),
});

const deviation = (label: string, most: number) => numberOf(label, { min: 0, max: most });
const shareSpread = (label: string) =>
  z
    .strictObject({
      runs: deviation(`${label}, spread between runs`, 0.5),
      season: deviation(`${label}, spread between seasons`, 0.5),
    })
    .optional();
/**
 * Standard deviations of what varies: shares between runs and seasons, eggs as those of their logarithm. Left
 * out, the usual ones.
 */
const spreads = z.strictObject({
  hatch: shareSpread('Hatch'),
  yolkSurvival: shareSpread('Yolk larvae'),
  frySurvival: shareSpread('Fry'),
  nurserySurvival: shareSpread('Nursing'),
  eggs: z
    .strictObject({
      females: deviation('Eggs, spread between females', 2),
      runs: deviation('Eggs, spread between runs', 2),
      season: deviation('Eggs, spread between seasons', 2),
    })
    .optional(),
});

/** The water the vats are filled with, as last measured; the sheet for dosing starts from it. */
const fillWater = z.strictObject({
  ph: maybeNumber('pH of the water', { min: 3, max: 11 }),
  phWanted: numberOr('pH wanted', 7, { min: 5, max: 9 }),
  alkalinity: maybeNumber('Alkalinity of the water', { min: 0, max: 20, unit: 'meq/L' }),
  material: oneOf('What raises the pH', MATERIALS).default('soda ash'),
});

/**
 * An order book: what is promised, what there is to make it with. Dates may be serials or 2027-03-31, hours
 * numbers or 7:30.
 */
export const orderBookSchema = z
  .strictObject({
    hatchery: nameOf('Hatchery').default('My hatchery'),
    /** Today: nothing is planned before it. */
    plannedOn: dayOf('Planned on'),
    orders: listOf('Orders', order, 1, 1000),
    vats: listOf('Vats', vat, 1, 500),
    females: listOf('Females', female, 0, 500),
    males: listOf('Males', male, 0, 500),
    /** Batches that stand or are too near to move, in full. */
    batches: listOf('Batches', batchSchema, 0, 1000).default([]),
    /** Names of batches the book had before. */
    earlier: listOf('Earlier batches', earlierSchema, 0, 5000).default([]),
    /** Money paid and received since the season began. */
    booked: listOf('Money paid and received', bookedSchema, 0, 20_000).default([]),
    staff: part(staff),
    /** Expected water at night for each month from January; null where nobody knows. */
    temperatures: z
      .array(
        maybeNumber('Water of the month', {
          min: 10,
          max: 40,
          unit: '°C',
          slip: (t) => (t > 45 ? 'That looks like °F.' : undefined),
        }).nullable(),
        { error: () => 'Water by month: expected twelve temperatures.' },
      )
      .length(12, {
        error: () =>
          'Water by month: expected twelve temperatures, January to December; leave unknown months empty.',
      }),
    /**
     * Egg weight of body weight for each month from January; null, or left out, is the figure for the whole
     * year.
     */
    eggShares: z
      .array(
        maybeNumber('Egg weight of body weight in a month', {
          min: 0.001,
          max: 0.3,
          unit: 'share (10 % is 0.1)',
        }).nullable(),
        { error: () => 'Egg weight by month: expected twelve shares.' },
      )
      .length(12, {
        error: () =>
          'Egg weight by month: expected twelve shares, January to December; leave unknown months empty.',
      })
      .optional(),
    /** An older book may say "pituitary"; the list knows that word. */
    preparation: z.preprocess(
      preparationWord,
      oneOf('Hormone preparation', PREPARATIONS).default(DEFAULT_PREPARATION),
    ),
    /** Days before a female is stripped again. */
    restDays: numberOr('Rest of a female', 90, { ...days(730) }),
    /** Catfish males give milt once; elsewhere they rest as long as the females. */
    malesSurvive: z.boolean().default(false),
    cleaningDays: numberOr('Cleaning and refilling a vat', 2, days(60)),
    /** Fish may be ready this long before they are fetched. */
    holdDays: numberOr('Days fish may wait for their buyer', 5, days(60)),
    leadDays: part(
      z.strictObject({
        hormone: numberOr('Delivery of hormone', 14, days(180)),
        cysts: numberOr('Delivery of cysts', 14, days(180)),
        feed: numberOr('Delivery of feed', 7, days(180)),
      }),
    ),
    /** Planned on top of every order against bad luck: 0.2 is a fifth more. */
    spare: numberOr('Spare', 0, { min: 0, max: 3, unit: 'share (20 % is 0.2)' }),
    /** How sure it must be that an order is met: sizes females, water and spare of batches. */
    certainty: numberOr('How sure it must be', 0.8, { ...share, min: 0.5, max: MOST_CERTAIN }),
    /** Runs lost altogether (power, pump, disease). Common practice, no source. */
    lost: numberOr('Runs lost altogether', 0.03, { ...share, max: 0.9 }),
    /** For orders of future brood fish. */
    leastParents: numberOr('Parents that must count, for brood fish', 50, { min: 0, max: 1000 }),
    prices: part(prices),
    assumptions: assumptionSchema.default({}),
    spreads: part(spreads),
    water: part(fillWater),
    seed: numberOr('Seed', 1, { min: 0, max: 4294967295, whole: true }),
  })
  .superRefine((book, context) => {
    for (const { path, message } of [...crossFaults(book), ...openNames(withOrderKeys(book))])
      context.addIssue({ code: 'custom', path, message });
  });

export type OrderBook = z.output<typeof orderBookSchema>;
export type OrderBookInput = z.input<typeof orderBookSchema>;
export type BookedOrder = OrderBook['orders'][number];

export interface BookFault {
  readonly field: string;
  readonly message: string;
}

/** Columns of numbers, in which "1,2" and "1.2" are told apart by the whole column. */
const NUMBER_COLUMNS: Readonly<Record<string, Readonly<Record<string, FieldLimits>>>> = {
  orders: { grams: GRAMS, price: money },
  vats: { litres: LITRES },
  females: { kilograms: KILOGRAMS },
};
const isRow = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;
function settledInput(input: unknown): unknown {
  if (!isRow(input)) return input;
  const tables = Object.entries(NUMBER_COLUMNS).flatMap(([list, fields]) => {
    const rows: unknown = input[list];
    return Array.isArray(rows) && rows.every(isRow)
      ? [[list, settleTable(rows, Object.keys(fields), fields)] as const]
      : [];
  });
  return { ...input, ...Object.fromEntries(tables) };
}

/** An entry under a name that nothing here asks for. */
const notAsked = (keys: readonly string[]): string =>
  `${keys.map((key) => `“${key}”`).join(', ')}: not asked for here. Take it out, or write it under the name it has in the form of an order book.`;

/** The order book checked, or one sentence for each entry that cannot be used. */
export function readOrderBook(
  input: unknown,
): { readonly book: OrderBook } | { readonly faults: readonly BookFault[] } {
  const result = orderBookSchema.safeParse(settledInput(input));
  if (result.success) return { book: withPlanNames(withOrderKeys(result.data)) };
  return {
    faults: result.error.issues.map((issue) => ({
      field: issue.path.join('.'),
      message: issue.code === 'unrecognized_keys' ? notAsked(issue.keys) : issue.message,
    })),
  };
}
