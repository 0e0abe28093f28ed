// Long: one list of cases, each with the small book it needs
import { runNow } from '../../base/steps';
import type { Near } from '../../base/near';
import { planBatches, planBatchesSteps } from '../batches';
import { shortSteps } from '../batches/answer/short';
import { unsureSteps } from '../batches/chance/unsure';
import { surerSteps } from '../batches/chance/surer';
import { batchProblemOf } from '../batches/problem';
import { search } from '../batches/search/search';
import { femalesForNineSteps, readOneOrder } from '../one';
import type { SeasonPlan, TriedChange } from '../types';
import { TODAY, many, smallBook, smallPlan } from './small';

/** What a plan says of orders that are short or unsure, and how far it says it is. */

const LITTLE = { looks: 10, mostTries: 1, seed: 1, sequences: 1 };
const order = (number: number, changes: object = {}): object => ({
  name: 'Pond',
  product: 'fry',
  number,
  due: TODAY + 68,
  ...changes,
});
/** So many females of a kilogram, and as many males. */
const fish = (count: number): object => ({
  females: many(count, (i) => ({ tag: `F${i}`, kilograms: 1 })),
  males: many(count, (i) => ({ tag: `M${i}` })),
});
const vats = many(12, (i) => ({ name: `V${i}`, litres: 1000 }));

const triedIn = (changes: object, way: string): boolean => {
  const book = smallBook(changes);
  return runNow(shortSteps(book, search(batchProblemOf(book).problem, LITTLE), LITTLE)).tried.includes(way);
};
const anyHour = (staff: object): boolean =>
  triedIn({ staff: { stripFrom: 0, stripTo: 24, ...staff } }, 'stripping on any day at any hour');
const lessSure = (certainty: number): boolean => triedIn({ certainty }, 'planning them at 70 % instead');

/** What helps most where three females are too few for an order that is paid this little a fish. */
function helpsFirst(price: number): TriedChange | undefined {
  const orders = [order(3000, { price: 1 }), order(100_000, { name: 'Lake', price })];
  const book = smallBook({ orders, certainty: 0.5, ...fish(3), vats });
  const found = search(batchProblemOf(book).problem, LITTLE);
  return runNow(shortSteps(book, found, { ...LITTLE, looks: 100 })).changes[0];
}
/** What makes an order surer that eight females bring in half of all seasons. */
function surerBy(number: number): string | undefined {
  const book = smallBook({ orders: [order(number)], ...fish(8), vats: [...vats, ...vats.map(renamed)] });
  const found = search(batchProblemOf(book, 'mean').problem, LITTLE);
  return runNow(unsureSteps(book, found, { looks: 1000, mostTries: 10, seed: 1 }))[1]?.message;
}
const renamed = ({ name, litres }: (typeof vats)[number]): object => ({ name: `${name} b`, litres });

/** Fish planned for each order where the last of them is given some more. */
function planned(orders: number, number: number): readonly (readonly number[])[] {
  const book = smallBook({
    orders: many(orders, (i) =>
      order(number + 700 * i, {
        name: `O${i}`,
        product: i % 2 === 1 ? 'fry' : 'fingerlings',
        due: TODAY + (i % 2 === 1 ? 68 : 96) + 2 * i,
      }),
    ),
    ...{ females: many(12, (i) => ({ tag: `F${i}`, kilograms: 0.5 + 0.05 * i })) },
    males: many(12, (i) => ({ tag: `M${i}` })),
    vats: vats.slice(0, 6),
  });
  const schedule = runNow(surerSteps(book, search(batchProblemOf(book).problem, LITTLE)));
  return [...schedule.batches.values()].map(({ shares }) => shares.map((share) => Math.round(share.fish)));
}

/** A batch stripped this morning of which eggs, larvae or feeding larvae were counted at noon. */
const standing = (stage: string, number: number): object => {
  const strip = TODAY + 0.25;
  const clock = {
    temperature: 27,
    latencyHours: 12,
    injectAt: strip - 0.5,
    checkAt: strip,
    stripAt: strip,
    lateAt: strip + 0.1,
    hatchAt: strip + 0.9,
    hatchEndAt: strip + 1.2,
    firstFeedAt: strip + 2.7,
    feedFrom: TODAY + 3,
    weanedAt: TODAY + 15.3,
  };
  return {
    orders: [order(20_000, { due: TODAY + 17 })],
    batches: [
      {
        name: 'B1',
        eggs: 80_000,
        clock,
        pairs: [{ female: 'F1', male: 'M1', kilograms: 1 }],
        counts: [{ at: TODAY + 0.5, stage, number }],
        stays: [
          { vat: 'V1', stage: 'eggs', from: strip, to: strip + 2.7 },
          { vat: 'V1', stage: 'fry', from: strip + 2.7, to: TODAY + 17.3 },
        ],
      },
    ],
  };
};
const given = (stage: string): readonly number[] =>
  smallPlan(standing(stage, 20_000)).allocations.map((one) => one.fish);
/** Fish of a poor season, where three batches in ten are lost. */
const poor = (stage: string, number: number): number =>
  Math.round(smallPlan({ ...standing(stage, number), lost: 0.3 }, { draws: 300 }).fish.p10);

/** How far planning says it is, step by step, where chance makes an order unsure. */
const shown = (step: number): number | undefined => {
  const book = smallBook({ orders: [order(60_000)], ...fish(6), lost: 0.3 });
  const shares = [...planBatchesSteps(book, { draws: 100, effort: LITTLE })];
  const share = shares[step];
  return share === undefined ? undefined : Math.round(1000 * share) / 1000;
};
/** Vats that the eggs of a female of this weight are spread over where many stand free. */
const eggVats = (kilograms: number): number =>
  smallPlan({
    orders: [order(300)],
    females: [{ tag: 'F1', kilograms }],
    vats: many(40, (i) => ({ name: `V${i}`, litres: 20 })),
  }).stays.filter(({ stage }) => stage === 'eggs').length;

function oneOrder(wanted: number): { readonly number: number | undefined } {
  const read = readOneOrder({
    wanted,
    wantedOn: TODAY + 68,
    plannedOn: TODAY,
    females: 1,
    femaleWeight: 1,
    males: 2,
    vats: 40,
    vatLitres: 20_000,
    temperature: 27,
  });
  if ('faults' in read) throw new Error('The form must be one.');
  const plan = planBatches(read.book, { draws: 0, explains: false });
  return { number: runNow(femalesForNineSteps(read.book, plan)) };
}
/** Females for nine runs in ten, where the two of the plan bring the order this often. */
const nineOf = (certainty: number): number | undefined => {
  const book = smallBook({ orders: [order(9000)] });
  const plan = smallPlan({ orders: [order(9000)] });
  const sure = plan.orders.map((one) => ({ ...one, certainty }));
  const known: SeasonPlan = { ...plan, canBeMet: true, orders: sure };
  return runNow(femalesForNineSteps(book, known));
};

export const NEAR: readonly Near[] = [
  {
    number: 'Days of a week on which all can be stripped',
    value: 7,
    below: () => anyHour({ weekdays: [1, 2, 3, 4, 5, 6] }),
    above: () => anyHour({}),
    answers: [true, false],
  },
  {
    number: 'Hours in which there is nothing left to win by stripping at any hour',
    value: 24,
    below: () => anyHour({ stripTo: 23 }),
    above: () => anyHour({}),
    answers: [true, false],
  },
  {
    number: 'Hours in which there is nothing left to win by injecting at any hour',
    value: 24,
    below: () => anyHour({ injectTo: 23 }),
    above: () => anyHour({}),
    answers: [true, false],
  },
  {
    number: 'Certainty above which less of it is tried',
    value: 0.7,
    below: () => lessSure(0.69),
    above: () => lessSure(0.71),
    answers: [false, true],
  },
  {
    number: 'Share of the worth of all orders by which a change must help',
    value: 0.002,
    below: () => helpsFirst(0.00058),
    above: () => helpsFirst(0.00062),
    answers: [
      { what: 'three more females of 1.0 kg and three more unrelated males', gain: 30_555 },
      { what: 'one more female of 1.0 kg', gain: 10_185 },
    ],
  },
  {
    number: 'Share of seasons by which a change must make an order surer',
    value: 0.04,
    below: () => surerBy(49_000),
    above: () => surerBy(49_200),
    answers: [
      'Ask for 52 %, or promise the smaller number.',
      'What makes it surer: one more female of 1.0 kg (80 % of seasons); two more females of 1.0 kg and ' +
        'two more unrelated males (80 % of seasons). Or ask for 52 %, or promise the smaller number.',
    ],
  },
  {
    number: 'Part of an order planned on top where it is not sure',
    value: 0.1,
    below: () => planned(2, 2000),
    above: () => planned(5, 5000),
    answers: [
      [[2700, 3740]],
      [
        [5700, 7100, 7040],
        [8500, 7800],
      ],
    ],
  },
  {
    number: 'Stages a batch is past when its larvae feed, for what it may promise',
    value: 2,
    below: () => given('larvae'),
    above: () => given('feeding'),
    answers: [[3443], [9784]],
  },
  {
    number: 'Stages a batch is past when it is lost no more',
    value: 2,
    below: () => poor('larvae', 60_000),
    above: () => poor('feeding', 50_000),
    answers: [0, 24_263],
  },
  {
    number: 'Share of planning done when the search is',
    value: 0.5,
    below: () => shown(0),
    above: () => shown(1),
    answers: [0.25, 0.65],
  },
  {
    number: 'Share of planning that is giving more to unsure orders',
    value: 0.1,
    below: () => shown(0),
    above: () => shown(1),
    answers: [0.25, 0.65],
  },
  {
    number: 'Share of planning that is searching anew',
    value: 0.2,
    below: () => shown(1),
    above: () => shown(5),
    answers: [0.65, 0.805],
  },
  {
    number: 'Times the water of fish at their closest that they are spread over',
    value: 2,
    below: () => eggVats(1),
    above: () => eggVats(2),
    answers: [8, 15],
  },
  {
    number: 'Females that may be added to one run',
    value: 30,
    below: () => oneOrder(145_000).number,
    above: () => oneOrder(150_000).number,
    answers: [31, undefined],
  },
  {
    number: 'Share of runs that is nine in ten',
    value: 0.9,
    below: () => nineOf(0.89),
    above: () => nineOf(0.91),
    answers: [3, 2],
  },
];
