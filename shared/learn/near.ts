import type { Near } from '../base/near';
import type { NumericField } from '../records/fields';
import type { RunRecord, RunValues } from '../records/schema';
import { observe } from './observe';
import { femalesByRun } from './observe/females';
import { trendsOf } from './trends';

/** What learning takes or leaves changes at numbers somebody chose; no bundle holds this file. */
const record = (row: number, plain: Readonly<Partial<Record<NumericField, number>>>): RunRecord => ({
  sheet: 'Runs',
  row,
  findings: [],
  values: Object.fromEntries(
    Object.entries({ date: 46_000, ...plain }).map(([field, value]) => [
      field,
      { value, sheet: 'Runs', cell: `A${row}` },
    ]),
  ) as RunValues,
});
/** How many figures of a kind are taken from one line. */
const taken = (rate: string, plain: Readonly<Partial<Record<NumericField, number>>>): number =>
  observe([record(5, plain)]).observations.filter((one) => one.rate === rate).length;
const females = (second: number, together = 1): number =>
  femalesByRun(
    [100, second].map((eggWeight, i) => record(5 + i, { femaleWeight: 1, eggWeight, females: together })),
  ).length;

/** What is learned of fish by their weight at the start: the rate they speak of. */
const speaksOf = (startWeight: number): string =>
  observe([record(5, { startWeight, endWeight: 2 * startWeight, days: 20 })])
    .observations.map(({ rate }) => rate)
    .join(' ');
/** Eggs a share of fertilised ones counts for, where nobody wrote how many were looked at. */
const lookedAt = (plain: Readonly<Partial<Record<NumericField, number>>>): number | undefined =>
  observe([record(5, { fertilisedShare: 0.8, ...plain })]).observations.find(
    ({ rate }) => rate === 'fertilisation',
  )?.n;
/** Hatch by water temperature of runs at 26.2 °C and one more. */
const classes = (temperature: number): string =>
  trendsOf(
    [26.2, temperature].map((t, i) =>
      record(5 + i, { date: 46_000 + i, eggs: 1000, hatched: 600, incubationTemperature: t }),
    ),
  )
    .views.find(({ by }) => by === 'temperature')
    ?.groups.map(({ name }) => name)
    .join(', ') ?? '';
/** Hatch expected of a month in which so many of 1000 eggs hatched, where the farm hatches 600. */
const expectedOf = (hatched: number): number =>
  Math.round(
    1000 *
      (trendsOf([
        ...[1, 2, 3, 4].map((i) => record(4 + i, { date: 46_000 + i, eggs: 1000, hatched: 600 })),
        record(9, { date: 46_040, eggs: 1000, hatched }),
      ])
        .views.find(({ by }) => by === 'month')
        ?.groups.find(({ runs }) => runs === 1)?.expected ?? NaN),
  ) / 1000;

export const NEAR: readonly Near[] = [
  {
    number: 'Grams from which on fish are nursed',
    value: 0.05,
    below: () => speaksOf(0.048),
    above: () => speaksOf(0.052),
    answers: ['fryGrowth', 'nurseryGrowth'],
  },
  {
    number: 'Grams beyond which fish are grown on',
    value: 5,
    below: () => speaksOf(4.5),
    above: () => speaksOf(5.5),
    answers: ['nurseryGrowth', ''],
  },
  {
    number: 'Eggs looked at where only a share is written down',
    value: 100,
    below: () => lookedAt({}),
    above: () => lookedAt({ sampleSize: 150 }),
    answers: [100, 150],
  },
  {
    number: 'Width of a class of temperatures, °C',
    value: 1,
    below: () => classes(26.8),
    above: () => classes(27.3),
    answers: ['26 to 27 °C', '26 to 27 °C, 27 to 28 °C'],
  },
  {
    number: 'Spread within a farm, of that between farms',
    value: 0.5,
    below: () => expectedOf(500),
    above: () => expectedOf(700),
    answers: [0.548, 0.647],
  },
  {
    number: 'Spreads of farms from the literature beyond which a value is in another unit: eggs in a gram',
    value: 8,
    // 669 × e^(8 × 0.25) = 4,943.
    below: () => taken('eggsPerGram', { eggsPerGram: 4900 }),
    above: () => taken('eggsPerGram', { eggsPerGram: 5000 }),
    answers: [1, 0],
  },
  {
    number: 'Largest number a count can be',
    value: 1e9,
    below: () => taken('hatch', { eggs: 0.95e9, hatched: 1e8 }),
    above: () => taken('hatch', { eggs: 1.05e9, hatched: 1e8 }),
    answers: [1, 0],
  },
  {
    number: 'Share of her weight no female gives as eggs',
    value: 1,
    below: () => taken('eggShare', { eggWeight: 990, femaleWeight: 1 }),
    above: () => taken('eggShare', { eggWeight: 1010, femaleWeight: 1 }),
    answers: [1, 0],
  },
  {
    number: 'Difference on logarithms up to which rows of a run were filled in from one weighing',
    value: 1e-6,
    below: () => females(100.000_095),
    above: () => females(100.000_105),
    answers: [0, 1],
  },
  {
    number: 'Females of a row, above which it says nothing of one of them',
    value: 1,
    below: () => females(120, 1),
    above: () => females(120, 2),
    answers: [1, 0],
  },
];
