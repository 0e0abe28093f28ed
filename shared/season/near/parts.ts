import type { Near } from '../../base/near';
import { assumed } from '../../families/assumptions';
import { temperatureOn } from '../figures/clock';
import { productOf } from '../figures/product';
import { safetyOf, shareFor } from '../batches/chance/safety';
import { shareSpreadOf } from '../figures/spreads';
import { chooseFemales } from '../parents';
import { chooseVats, isFree } from '../vats';
import { TODAY, smallBook, smallPlan } from './small';

/** Days, water and fish of a plan, each from its own few figures. */

const daysFor = (grams: number): unknown => {
  const product = productOf({ name: 'Pond', product: 'fry', grams }, assumed({}));
  return typeof product === 'string' ? product : product.rearingDays;
};
const nursed = (grams: number): unknown => {
  const product = productOf({ name: 'Pond', product: 'fingerlings', grams }, assumed({ nurseryGrowth: 3 }));
  return typeof product === 'string' ? product : product.nurseryDays;
};
/** Hours of the day at which fish of an order leave a vat, of all its stages. */
const leaves = (product: string): unknown =>
  smallPlan({ orders: [{ name: 'Pond', product, number: 3000, due: TODAY + 80 }] }).stays.map(
    ({ to, stage }) => `${stage} ${(24 * (to - Math.floor(to))).toFixed(1)}`,
  );
/** Water expected on days of March, where February has 24, March 26 and April 28 °C. */
const march = (day: number): number =>
  Math.round(1000 * temperatureOn([24, 24, 26, 28, 28, 28, 28, 28, 28, 28, 28, 26], 46_081 + day)) / 1000;
const rounded = (spread: { readonly runs: number; readonly season: number }): readonly number[] =>
  [spread.runs, spread.season].map((x) => Math.round(x * 1e4) / 1e4);
/** How much hatch varies where nothing, or this deviation between runs, is known of it. */
const hatchVaries = (mean: number, runs?: number): readonly number[] =>
  rounded(
    shareSpreadOf(
      { spreads: runs === undefined ? {} : { hatch: { runs, season: 0 } } },
      assumed({ hatch: mean }),
      'hatch',
    ),
  );
/** Vats chosen of these, by their litres. */
const chosenOf = (litres: readonly number[], need: number): readonly number[] | undefined =>
  chooseVats(
    litres.map((l, i) => ({ name: `V${i}`, litres: l, holds: 7 })),
    litres.map((_, i) => i),
    need,
  )?.map((i) => litres[i] ?? 0);
/** Females chosen of these, by the eggs they give. */
const strippedOf = (eggs: readonly number[], need: number): readonly number[] =>
  chooseFemales(
    eggs.map((e, i) => ({ tag: `F${i}`, eggs: e, kilograms: 1, family: '', used: [] })),
    eggs.map((_, i) => i),
    need,
    5,
    false,
  ).map((i) => eggs[i] ?? 0);
/** Share of the expected fry that a run of two females, lost once in fifty, is planned with. */
const plannedWith = (certainty: number): number =>
  shareFor(safetyOf(smallBook({ certainty, lost: 0.02 }), assumed({})), 'fry', 2);
const SMALL_VATS = [500, 300, 300, 150, 150, 150, 150, 150, 150];
const FEMALES = [500, 300, 300, 150, 150, 150, 150, 150, 150, 150];

export const NEAR: readonly Near[] = [
  {
    number: 'Share of runs that are not lost for which one is planned at most',
    value: 0.99,
    below: () => plannedWith(0.967) > plannedWith(0.985),
    above: () => plannedWith(0.973) > plannedWith(0.985),
    answers: [true, false],
  },
  {
    number: 'Days at least from first food to fry',
    value: 7,
    // 0.0025 g at 16.5 % a day: six days give 0.00673 g, eight 0.00936 g.
    below: () => daysFor(0.0067),
    above: () => daysFor(0.0093),
    answers: [7, 8],
  },
  {
    number: 'Part of a day by which fish may fall short of their weight',
    value: 0.01,
    // e^(0.165 × 10.0095) and e^(0.165 × 10.0105) times 0.0025 g.
    below: () => daysFor(0.0130371),
    above: () => daysFor(0.0130393),
    answers: [10, 11],
  },
  {
    number: 'Days from first food to fry, at the most',
    value: 40,
    // 0.0025 g at 16.5 % a day: 39 days give 1.556 g, 42 days 2.554 g.
    below: () => daysFor(1.55),
    above: () => daysFor(2.55),
    answers: [
      39,
      'Pond: fry of 2.55 g would take 42 days from first feed. Order them as fingerlings, or lighter.',
    ],
  },
  {
    number: 'Days of nursing, at the most',
    value: 120,
    // 0.0181 g when weaned, at 3 % a day in place of 13: 115 days give 0.57 g, 125 days 0.77 g.
    below: () => nursed(0.57),
    above: () => nursed(0.765),
    answers: [
      115,
      'Pond: fingerlings of 0.765 g would take 125 days of nursing. That is growing out, which is not planned here.',
    ],
  },
  {
    number: 'Hour at which fish leave and are moved',
    value: 8,
    below: () => leaves('fry'),
    above: () => leaves('fingerlings'),
    answers: [
      ['eggs 23.2', 'fry 8.0'],
      ['fry 8.0', 'eggs 23.2', 'nursing 8.0'],
    ],
  },
  {
    number: 'Day of a month on which its water is as typed',
    value: 15,
    below: () => march(15),
    above: () => march(17),
    answers: [25.933, 26.067],
  },
  {
    number: 'Usual deviation between runs, of the widest a share can have',
    value: 0.3,
    below: () => hatchVaries(0.5),
    above: () => hatchVaries(0.6),
    answers: [
      [0.15, 0.1],
      [0.147, 0.098],
    ],
  },
  {
    number: 'Usual deviation between seasons, of the widest a share can have',
    value: 0.2,
    below: () => hatchVaries(0.5),
    above: () => hatchVaries(0.8),
    answers: [
      [0.15, 0.1],
      [0.12, 0.08],
    ],
  },
  {
    number: 'Widest deviation that is drawn, of the widest a share can have',
    value: 0.95,
    below: () => hatchVaries(0.5, 0.474),
    above: () => hatchVaries(0.5, 0.478),
    answers: [
      [0.474, 0],
      [0.475, 0],
    ],
  },
  {
    number: 'Days by which two stays in a vat may overlap by rounding',
    value: 1e-6,
    below: () => isFree([{ from: 1, to: 10 + 0.95e-6, run: 1 }], 10, 20, 2, 0),
    above: () => isFree([{ from: 1, to: 10 + 1.05e-6, run: 1 }], 10, 20, 2, 0),
    answers: [true, false],
  },
  {
    number: 'Share of the water that may lack by rounding',
    value: 1e-9,
    below: () => chosenOf([1000], 1000 * (1 + 0.95e-9)),
    above: () => chosenOf([1000], 1000 * (1 + 1.05e-9)),
    answers: [[1000], undefined],
  },
  {
    number: 'Free vats of which every set is weighed',
    value: 9,
    below: () => chosenOf(SMALL_VATS, 600),
    above: () => chosenOf([...SMALL_VATS, 150], 600),
    answers: [
      [300, 300],
      [500, 150],
    ],
  },
  {
    number: 'Rested females of which every set is weighed',
    value: 10,
    below: () => strippedOf(FEMALES, 600),
    above: () => strippedOf([...FEMALES, 150], 600),
    answers: [
      [300, 300],
      [500, 150],
    ],
  },
  {
    number: 'Share of the eggs that may lack by rounding',
    value: 1e-9,
    below: () => strippedOf([110, 100], 110 * (1 + 0.95e-9)),
    above: () => strippedOf([110, 100], 110 * (1 + 1.05e-9)),
    answers: [[110], [110, 100]],
  },
];
