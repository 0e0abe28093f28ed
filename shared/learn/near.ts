import type { Near } from '../base/near';
import type { NumericField } from '../records/fields';
import type { RunRecord, RunValues } from '../records/schema';
import { observe } from './observe';
import { femalesByRun } from './observe/females';

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

export const NEAR: readonly Near[] = [
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
