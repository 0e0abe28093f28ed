import { asOf, livingBook, LivingPages } from '../../../shared/books/living';
import type { BookRead } from '../../../shared/books/living';
import type { Table } from '../../../shared/books/living/table';
import { planBatches } from '../../../shared/season/batches';
import type { OrderBook } from '../../../shared/season/book/orderBook';
import type { SeasonPlan } from '../../../shared/season/types';
import type { WorkbookModel } from '../../../shared/sheet/workbook/model';
import { checked } from '../../season/support/support';
import type { Values } from './support';
import { readBack, typeInto } from './support';

/**
 * A season half lived, in which every entry of an order book and every column people type into holds something:
 * batches that are over, lost, growing, and still planned; a buyer who comes twice and one who gave up; counts,
 * sales, deaths, ticks and money.
 */
export const LIVED = {
  hatchery: 'Reed Bank Hatchery',
  plannedOn: '2027-01-10',
  orders: [
    { name: 'Mill pond', product: 'fry', number: 4000, due: '2027-02-20', price: 0.05 },
    { name: 'Lake farms', product: 'fingerlings', number: 7000, due: '2027-03-10', price: 0.12, grams: 2 },
    { name: 'Mill pond', product: 'fry', number: 3000, due: '2027-03-20', price: 0.05 },
    { name: 'New lines', product: 'fingerlings', number: 1200, due: '2027-04-18', forBreeding: true },
    { name: 'Island cages', product: 'fry', number: 2500, due: '2027-04-24', price: 0.045, cancelled: true },
    { name: 'Pond club', product: 'fingerlings', number: 5000, due: '2027-05-29', price: 0.125 },
  ],
  vats: [
    { name: 'Trough 1', litres: 400, holds: ['eggs', 'fry'] },
    { name: 'Trough 2', litres: 450, holds: ['eggs', 'fry'] },
    ...Array.from({ length: 5 }, (_, i) => ({ name: `Round ${i + 1}`, litres: 900 + 150 * i })),
    { name: 'Old tank', litres: 700, outFrom: '2027-02-01', outUntil: '2027-04-30' },
  ],
  females: Array.from({ length: 9 }, (_, i) => ({
    tag: `F${i + 1}`,
    kilograms: 1.05 + 0.1 * i,
    ...(i % 4 === 3 ? {} : { family: `line ${i % 3}` }),
    ...(i === 2 ? { lastUsed: '2026-12-20' } : {}),
    ...(i === 8 ? { goneOn: '2027-03-01' } : {}),
  })),
  males: Array.from({ length: 8 }, (_, i) => ({ tag: `M${i + 1}`, family: `line ${(i + 1) % 3}` })),
  staff: {
    stripFrom: '6:00',
    stripTo: '11:30',
    injectFrom: '16:00',
    injectTo: '23:00',
    weekdays: [1, 2, 3, 4, 5, 6],
    daysOff: ['2027-02-14', '2027-04-02'],
    femalesPerDay: 5,
  },
  temperatures: [25, 26, 27, 27.5, 28, 27.5, null, null, 27, 26.5, 26, 25],
  eggShares: [0.1, 0.11, 0.12, null, 0.13, null, null, null, null, null, null, 0.09],
  preparation: 'own-species pituitary',
  restDays: 70,
  cleaningDays: 1,
  holdDays: 4,
  leadDays: { hormone: 12, cysts: 16, feed: 6 },
  spare: 0.1,
  certainty: 0.75,
  lost: 0.05,
  leastParents: 6,
  prices: {
    cystsPerKilogram: 64,
    feedPerKilogram: 2.1,
    hormonePerMillilitre: 3.4,
    male: 8,
    perRun: 35,
    perVatDay: 0.45,
    perMonth: 280,
    atHand: 1700,
  },
  assumptions: { hatch: 0.55, frySurvival: 0.62 },
  spreads: { hatch: { runs: 0.12, season: 0.05 }, eggs: { females: 0.35, runs: 0.2, season: 0.1 } },
  water: { ph: 5.9, phWanted: 7.2, alkalinity: 0.3, material: 'baking soda' },
  seed: 11,
} as const;

const QUICK = {
  draws: 120,
  explains: false,
  effort: { looks: 8000, mostTries: 10, seed: 5, sequences: 1 },
} as const;
export const TODAY = 46_448; // 2 March 2027

type Lines = Readonly<Record<string, string | number>>;
/** Cells of some lines of a table, by the keys of its columns. */
const cellsOf = <K extends string>(
  table: Table<K>,
  lines: readonly (readonly [line: number, values: Readonly<Partial<Record<K, string | number>>>])[],
): Values =>
  Object.fromEntries(
    lines.flatMap(([line, values]) =>
      Object.entries(values as Lines).map(([key, value]) => [
        `${table.letters[key as K]}${table.first + line}`,
        value,
      ]),
    ),
  );
const typed = (model: WorkbookModel, table: Table<string>, values: Values): WorkbookModel =>
  typeInto(model, table.title, values);

export interface LivedBook {
  /** The season as it was planned first, and its workbook. */
  readonly first: { readonly book: OrderBook; readonly plan: SeasonPlan; readonly model: WorkbookModel };
  /** The same workbook with what was typed until TODAY, and as it is read. */
  readonly typed: WorkbookModel;
  readonly read: BookRead;
  /** Planned again on TODAY, and written. */
  readonly book: OrderBook;
  readonly plan: SeasonPlan;
  readonly model: WorkbookModel;
}

function typedInto(model: WorkbookModel, { tables: t, rows }: LivingPages, plan: SeasonPlan): WorkbookModel {
  const fedOf = (i: number): number => plan.batches[i]?.feedFrom ?? NaN;
  const stripOf = (i: number): number => plan.batches[i]?.stripAt ?? NaN;
  const [b1, b2, b3] = plan.batches.map(({ name }) => name);
  const pairOf = (name: string | undefined): number => rows.pairs.findIndex(({ batch }) => batch === name);
  const log: readonly Partial<Record<keyof typeof t.log.letters, string | number>>[] = [
    { at: fedOf(0) + 0.4, batch: b1 ?? '', what: 'counted', number: 14_000, stage: 'feeding', by: 'Ama' },
    { at: fedOf(0) + 5.3, batch: b1 ?? '', what: 'died', number: 350, note: 'air was off for an hour' },
    { at: 46_437.4, batch: b1 ?? '', what: 'sold', number: 4000, order: 'O1', paid: 200, by: 'Kofi' },
    { at: 46_439.4, batch: b1 ?? '', what: 'released', number: 800 },
    { at: 46_440.5, batch: b2 ?? '', what: 'lost', number: 0, note: 'pump stood still, no hatch' },
    { note: 'A remark that belongs to no batch' },
  ];
  const ticks = rows.tasks.flatMap(({ batch, task }, i) =>
    batch === b1 && ['fill', 'inject', 'strip', 'hatch', 'firstFeed'].includes(task) ? [i] : [],
  );
  let next = typed(
    model,
    t.log,
    cellsOf(
      t.log,
      log.map((values, i) => [i, values] as const),
    ),
  );
  next = typed(
    next,
    t.calendar,
    cellsOf(
      t.calendar,
      ticks.map((at, i) => [at, i % 2 ? { done: 'left out' } : { done: 'done', by: 'Kofi' }] as const),
    ),
  );
  next = typed(
    next,
    t.pairs,
    cellsOf(t.pairs, [
      [
        pairOf(b1),
        {
          injected: stripOf(0) - 0.45,
          stripped: stripOf(0) + 0.02,
          grams: 118.5,
          alive: 82,
          remark: 'calm, round belly',
        },
      ],
      [pairOf(b1) + (rows.pairs[pairOf(b1) + 1]?.batch === b1 ? 1 : 0), { kilograms: 1.32 }],
    ]),
  );
  next = typed(
    next,
    t.eggs,
    cellsOf(t.eggs, [
      [
        0,
        {
          ph: 7.1,
          alkalinity: 0.6,
          g1: 1.02,
          g2: 0.98,
          g3: 1.1,
          n1: 690,
          n2: 701,
          n3: 760,
          looked: 100,
          alive: 83,
        },
      ],
    ]),
  );
  next = typed(
    next,
    t.fry,
    cellsOf(t.fry, [
      [
        0,
        {
          hatched: 17_500,
          litres: 400,
          ml1: 500,
          ml2: 500,
          ml3: 450,
          l1: 19,
          l2: 17,
          l3: 15,
          weaned: 9200,
          weight: 0.11,
          weighed: fedOf(0) + 6,
          remark: 'even',
        },
      ],
    ]),
  );
  next = typed(
    next,
    t.batches,
    cellsOf(t.batches, [
      [1, { state: 'lost' }],
      [2, b3 === undefined ? {} : { state: 'fixed' }],
    ]),
  );
  next = typed(next, t.shopping, cellsOf(t.shopping, [[1, { done: 'bought' }]]));
  next = typed(
    next,
    t.booked,
    cellsOf(t.booked, [
      [0, { date: 46_410, amount: -64, what: 'cysts', batch: b1 ?? '' }],
      [1, { date: 46_437, amount: 40, what: 'part of an order in advance', order: 'O2' }],
    ]),
  );
  return typed(
    next,
    t.orders,
    cellsOf(t.orders, [
      [5, { number: 5500 }],
      [6, { buyer: 'Canal co-op', product: 'fry', number: 1500, due: 46_520, price: 0.05 }],
    ]),
  );
}

let made: LivedBook | undefined;
/** Planned twice and written twice: worked out once for all tests of a file. */
export function livedBook(): LivedBook {
  if (made) return made;
  const book = checked(LIVED);
  const plan = planBatches(book, QUICK);
  const model = livingBook(book, plan);
  const changed = typedInto(model, new LivingPages(book, plan), plan);
  const read = readBack(changed);
  const bookNow = checked(asOf(read, TODAY));
  const planNow = planBatches(bookNow, QUICK);
  made = {
    first: { book, plan, model },
    typed: changed,
    read,
    book: bookNow,
    plan: planNow,
    model: livingBook(bookNow, planNow, read.typed),
  };
  return made;
}
