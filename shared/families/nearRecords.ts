import type { Near } from '../base/near';
import type { Cell, Grid } from '../base/values';
import { isError, isGrid } from '../base/values';
import type { Arg } from '../functions/invoke';
import { invoke } from '../functions/invoke';
import { feedGrain } from './care/records/feedSize';
import { ammoniaCheck } from './care/records/trials';
import { sampleSlip } from './counting/records/slips';
import { cashWeeksFunction } from './money/records/cash';
import { seasonOdds } from './money/records/odds';
import { aerationPH, driftTable } from './water/records/aeration';
import { bufferKit } from './water/records/buffer/bufferKit';
import { bufferOutcome } from './water/records/buffer/bufferOutcome';
import { bufferSteps } from './water/records/buffer/bufferSteps';
import { bufferRange } from './water/records/phOnly';
import { vatRectangle } from './water/records/vats';

/** What a cell with a function shows on either side of a number; no bundle holds this file. */
type Fn = Parameters<typeof invoke>[0];
const asked = (fn: Fn, ...args: readonly Arg[]): Cell | Grid => invoke(fn, args);
/** The sentence of an error, or the first answer. */
function shown(fn: Fn, ...args: readonly Arg[]): unknown {
  const got = asked(fn, ...args);
  const first = isGrid(got) ? got.flat().find(isError) : got;
  if (isError(first)) return first.message;
  return isGrid(got) ? got.length : first;
}
/** A named column of the first row of an answer with headings, or without. */
const cellOf = (fn: Fn, column: number, ...args: readonly Arg[]): unknown => {
  const got = asked(fn, ...args);
  const cell = isGrid(got) ? got.at(-1)?.at(column) : got;
  return typeof cell === 'number' ? Number(cell.toPrecision(4)) : cell;
};

/** The verdict on so much total ammonia at pH 8 and 27 °C. */
const ammonia = (total: number): unknown => cellOf(ammoniaCheck, 1, total, 8, 27);
const feed = (grams: number): boolean => JSON.stringify(asked(feedGrain, grams)).includes('Live food first');
const NAMES = { total: 'lot', sizes: 'sizes', unit: 'g', thousandfold: 'kilograms' };
const slip = (lot: number, last: number): string | undefined =>
  sampleSlip(lot, [1, 1, 1], [10, 10, last], NAMES)?.message;
const paidOn = (date: number): unknown => shown(cashWeeksFunction, [[date]], [[100]]);
const varies = (spread: number): unknown => shown(seasonOdds, 4, 60_000, 0.5, spread);
const tableOf = (hours: number): unknown =>
  shown(driftTable, 6.5, 1, 26, null, 'gentle', null, 0, 0, 'µS/cm', 420, hours, 0.1);
const salty = (grams: number): unknown => shown(aerationPH, 7, 1, 25, null, 0, grams, 'g/L');
/** What water of pH 6 asks for whose kit tells of so little alkalinity. */
const byKit = (alkalinity: number): unknown => cellOf(bufferKit, 4, 1000, 6, 7, alkalinity, 26);
const parts = (ph: number, material: string): unknown =>
  shown(bufferSteps, 1000, ph, 7.3, 0.05, 26, material, 1, null, 1);
const direction = (ph: number): unknown => cellOf(bufferOutcome, -1, 1000, 5, ph, 0.5);
const first = (ph: number, origin: string, meter: string): unknown =>
  cellOf(bufferRange, 5, 1000, ph, 7, 25, 'soda ash', 1, origin, meter);
const deep = (depth: number): unknown => shown(vatRectangle, 200, 100, depth);

export const NEAR: readonly Near[] = [
  {
    number: 'Grams below which a fish is a larva that lives on live food',
    value: 0.01,
    below: () => feed(0.0096),
    above: () => feed(0.0104),
    answers: [true, false],
  },
  {
    number: 'mg/L of ammonia nitrogen of first harm',
    value: 0.05,
    below: () => ammonia(0.79),
    above: () => ammonia(0.84),
    answers: ['good', 'harmful'],
  },
  {
    number: 'mg/L of ammonia nitrogen that grown fish bear',
    value: 0.34,
    below: () => ammonia(5.4),
    above: () => ammonia(5.7),
    answers: ['harmful', 'deadly'],
  },
  {
    number: 'Times the number in other samples that is hardly one unit',
    value: 10,
    below: () => slip(100, 95),
    above: () => slip(100, 105),
    answers: [
      undefined,
      'sizes, row 3: 105 per g, while the other samples are near 10. Was this one typed in ' +
        'another unit, or a count in the wrong row?',
    ],
  },
  {
    number: 'Times a lot that its samples are, from which a slip of a thousand alone is told',
    value: 2,
    below: () => slip(1.35, 10),
    above: () => slip(1.65, 10),
    answers: [
      'lot: 1.35 g is less than the samples together, 3 g. That looks like kilograms: multiply it by 1000.',
      'lot: 1.65 g is less than the samples together, 3 g. That looks like kilograms: multiply it ' +
        'by 1000; or were the two typed the wrong way round, or a sample weighed with its dish?',
    ],
  },
  {
    number: 'First day of a payment, 1 January 2000',
    value: 36_526,
    below: () => paidOn(36_525),
    above: () => paidOn(36_526),
    answers: ['dates: expected a date from 2000-01-01 to 2099-12-31, got 36525.', 2],
  },
  {
    number: 'Last day of a payment, 31 December 2099',
    value: 73_050,
    below: () => paidOn(73_050),
    above: () => paidOn(73_051),
    answers: [2, 'dates: expected a date from 2000-01-01 to 2099-12-31, got 73051.'],
  },
  {
    number: 'Widest deviation of a share, of the most it can have',
    value: 0.95,
    below: () => varies(0.47),
    above: () => varies(0.48),
    answers: [1, 'spreads, row 1: expected less than 0.475, the most a share of 0.5 can vary, got 0.48.'],
  },
  {
    number: 'Rows of a table through the hours, at the most',
    value: 1000,
    below: () => tableOf(95),
    above: () => tableOf(105),
    answers: [952, 'every: 1050 rows are too many, 1000 are the most. Take a longer time between rows.'],
  },
  {
    number: 'Ionic strength the method holds for',
    value: 0.5,
    below: () => typeof salty(28.8),
    above: () => salty(29.5),
    answers: [
      'number',
      'dissolved: more salt than the method holds for (ionic strength 0.5, about 29 g/L of salt).',
    ],
  },
  {
    number: 'pH once aired below which water asks for product',
    value: 6.5,
    below: () => byKit(0.015),
    above: () => byKit(0.03),
    answers: ['dose', 'air first'],
  },
  {
    number: 'pH no part-dose passes while it is freshly mixed',
    value: 7.5,
    below: () => parts(6.2, 'hydrated lime'),
    above: () => parts(6.5, 'soda ash'),
    answers: [5, 4],
  },
  {
    number: 'pH units below the target that air may do',
    value: 0.5,
    below: () => first(4.6, 'unknown', 'good'),
    above: () => first(4.62, 'unknown', 'good'),
    answers: ['dose', 'air first'],
  },
  {
    number: 'Chance that air may do, from which it comes first',
    value: 0.05,
    below: () => first(4.48, 'well', 'cheap'),
    above: () => first(4.51, 'well', 'cheap'),
    answers: ['dose', 'air first'],
  },
  {
    number: 'pH units that a dosed water moves by and yet stays about there',
    value: 0.1,
    below: () => direction(7.3),
    above: () => direction(7.302),
    answers: ['pH stays about there.', 'pH sinks again as carbon dioxide comes in from the air.'],
  },
  {
    number: 'Centimetres of the shallowest water in a vat',
    value: 3,
    below: () => deep(2.5),
    above: () => deep(3.5),
    answers: [
      'depth: expected a number from 3 to 10000 cm, got 2.5. That looks like metres: 2.5 m is 250 cm.',
      70,
    ],
  },
];
