import type { Near } from '../../base/near';
import type { CellError } from '../../base/values';
import { isError } from '../../base/values';
import type { Beside, Line } from './near';
import { answered, said } from './near';
import { bufferCurve, bufferFit, FIT_ERRORS } from './records/buffer/bufferFit';
import type { MeterName } from './titration/beliefs';
import {
  LEAPS_AFTER,
  STATED,
  STATED_CURVE,
  STATED_FIT,
  STATED_UNSHOWN,
  STEP_ERROR,
} from './titration/nextDose';
import { BROWN } from './titration/posterior';
import { MIXING_LOSS } from './titration/segments';

/** Cases beside the numbers by which a range is stated, a reading believed, a water taken for brown. */

const AIRED = 'aired';
const rested = (ph: number): readonly Line[] => [
  [0, 5.1],
  [0, ph, AIRED],
  [0, ph, AIRED],
];
/** Two part-doses, the pair read after each. */
const dosed = (ph: number): readonly Line[] => [...rested(5.6), [1.5, 6.4, '', 6.4], [1, ph, '', ph]];
/** The readings are looked at for as much acid as brown water may hold. */
const isBrown = (lines: readonly Line[]): boolean =>
  answered(lines)?.cloud.sites.some((sites) => sites === 0.18 || sites === 0.36) ?? false;
const lowest = (ph: number): number => answered(rested(ph))?.after.low ?? NaN;
/** The same after part-doses to water of pH 5.2, each with the pair read after it. */
const lowestAfter = (...parts: readonly (readonly [grams: number, ph: number])[]): number =>
  answered([...rested(5.2), ...parts.map(([grams, ph]): Line => [grams, ph, '', ph])])?.after.low ?? NaN;
const lowestOfLime = (ph: number): number =>
  answered(rested(ph), { material: 'hydrated lime' })?.after.low ?? NaN;
/** How far the stated range reaches above its middle after two or three part-doses of which the last reads a pH. */
const room = (lines: readonly Line[]): number => {
  const { high = NaN, likely = NaN } = answered(lines)?.after ?? {};
  return high - likely;
};
const thrice = (ph: number): readonly Line[] => [
  ...rested(5.4),
  [1, 5.8, '', 5.8],
  [1, 6.1, '', 6.1],
  [1, ph, '', ph],
];
const THREE = {
  volume: 1000,
  doses: [0, 2, 4],
  temperature: 25,
  material: 'soda ash',
  purity: 1,
  origin: 'unknown',
  alkalinity: undefined,
  conductivity: 0,
  events: undefined,
  again: undefined,
  at: undefined,
  dosesAre: 'running totals',
  bufferRead: undefined,
  bufferValue: 7,
} as const;
/** Half way up the curve the pH may be as high as that, by three readings of which the last is given. */
const mayReach = (most: number, ph: number): boolean => {
  const found = bufferCurve.compute({ ...THREE, readings: [5.2, 5.7, ph], meter: 'good', highest: 7.5 });
  return !isError(found) && Number((found as readonly { readonly high: number }[])[6]?.high) > most;
};
/** The vat may hold so much alkalinity, meq/L, by three readings of which the last is given. */
const mayHold = (alkalinity: number, ph: number, meter: MeterName): boolean => {
  const found = bufferFit.compute({ ...THREE, readings: [5.2, 5.7, ph], meter }) as
    { readonly alkalinityHigh: number } | CellError;
  return !isError(found) && found.alkalinityHigh > alkalinity;
};

/** Water of a well, half a gram given, and the pH read after it. */
const wellDosed = (ph: number): string =>
  said(
    [
      [0, 5.6],
      [0.5, ph],
    ],
    { origin: 'well' },
  );
/** The next dose, in thousandths of a mmol/L. */
const next = (lines: readonly Line[], beside?: Beside): number =>
  Math.round(1e6 * (answered(lines, beside)?.dose ?? NaN)) / 1000;
/** The next dose of aerated water that an hour of air has led from one pH to another. */
const airedOnce = (from: number, to: number): number =>
  next(
    [
      [0, from],
      [0, to, AIRED],
    ],
    { origin: 'aerated' },
  );
/** pH that untouched water comes to under air, most likely. */
const airedTo = (beside: Beside): number =>
  Math.round(1000 * (answered([[0, 6.4]], beside)?.aired.likely ?? NaN)) / 1000;
/** How far above its middle the next reading may lie, in thousandths of a pH. */
const above = (beside: Beside): number => {
  const { high = NaN, likely = NaN } = answered(rested(5.6), beside)?.after ?? {};
  return Math.round(1000 * (high - likely));
};

export const NEAR: readonly Near[] = [
  {
    number: 'errors of a reading by which two of a rough meter agree',
    value: 3,
    below: () => said([[0, 4.4, '', 4.6]], { meter: 'cheap' }),
    above: () => said([[0, 4.4, '', 4.68]], { meter: 'cheap' }),
    answers: ['dose limited', 'waitSettle differ'],
  },
  {
    number: 'gas of water that counts as aired, log10 atm below nothing',
    value: 3,
    below: () => said([[0, 6.3]]),
    above: () => said([[0, 6.3]], { origin: 'aerated' }),
    answers: ['airFirst airMayDo', 'airFirst stillMoving'],
  },
  {
    number: 'error that a check in a buffer leaves, pH',
    value: 0.035,
    below: () => next(rested(5.6), { bufferRead: 7 }),
    above: () => next(rested(5.8), { bufferRead: 7.1 }),
    answers: [11.101, 10.554],
  },
  {
    number: 'µS/cm that go with a meq/L of alkalinity',
    value: 80,
    below: () => airedTo({ conductivity: 4 }),
    above: () => airedTo({ conductivity: 16 }),
    answers: [6.586, 6.968],
  },
  {
    number: 'standard errors to either end of a range that holds 90 of 100',
    value: 1.645,
    below: () => above({}),
    above: () => above({ material: 'hydrated lime' }),
    answers: [284, 258],
  },
  {
    number: 'error of a reading that three kinds of site leave unsaid, pH',
    value: 0.1,
    below: () => next(dosed(6.6), { origin: 'peat' }),
    above: () => next(dosed(6.55), { origin: 'peat' }),
    answers: [11.578, 12.858],
  },
  {
    number: 'least spread of the gas that air leaves, log10',
    value: 0.13,
    below: () => airedOnce(5.4, 5.55),
    above: () => airedOnce(6, 6.15),
    answers: [11.82, 9.377],
  },
  {
    number: 'most of the gas that leaves while a dose mixes',
    value: MIXING_LOSS,
    below: () => wellDosed(6.27),
    above: () => wellDosed(6.31),
    answers: ['airFirst airMayDo', 'readAgain unexpected'],
  },
  {
    number: 'chance of organic acids from which the water counts as brown',
    value: BROWN,
    below: () => isBrown(dosed(6.648)),
    above: () => isBrown(dosed(6.64)),
    answers: [false, true],
  },
  {
    number: 'share of the weight beyond either end of a stated range',
    value: STATED,
    below: () => lowestAfter([0.6, 5.6], [0.6, 5.858]) > 6.045,
    above: () => lowestAfter([0.6, 5.6], [0.6, 5.86]) > 6.045,
    answers: [false, true],
  },
  {
    number: 'share of the weight below what is stated of a first dose, in water nobody called brown',
    value: STATED_UNSHOWN[0],
    below: () => lowest(5.64) > 5.96,
    above: () => lowest(5.68) > 5.96,
    answers: [false, true],
  },
  {
    number: 'the same of a second dose',
    value: STATED_UNSHOWN[1],
    below: () => lowestAfter([0.8, 5.72]) > 6.02,
    above: () => lowestAfter([0.8, 5.76]) > 6.02,
    answers: [false, true],
  },
  {
    number: 'error of a step that the model leaves out, pH',
    value: STEP_ERROR.clear,
    below: () => lowest(5.12) > 5.43,
    above: () => lowest(5.16) > 5.43,
    answers: [false, true],
  },
  {
    number: 'the same for a base without carbon',
    value: STEP_ERROR.bare,
    below: () => lowestOfLime(5.32) > 5.545,
    above: () => lowestOfLime(5.36) > 5.545,
    answers: [false, true],
  },
  {
    number: 'the same upwards once acids may be used up',
    value: STEP_ERROR.leap,
    below: () => room(thrice(6.6)) > 0.345,
    above: () => room(thrice(6.4)) > 0.345,
    answers: [false, true],
  },
  {
    number: 'part-doses after which acids may be used up',
    value: LEAPS_AFTER,
    below: () => room(dosed(6.62)) > 0.325,
    above: () => room(thrice(6.6)) > 0.325,
    answers: [false, true],
  },
  {
    number: 'share of the weight beyond either end of what a fit says',
    value: STATED_FIT,
    below: () => mayHold(0.02, 6.22, 'good'),
    above: () => mayHold(0.02, 6.24, 'good'),
    answers: [true, false],
  },
  {
    number: 'share of the weight beyond either end of a curve',
    value: STATED_CURVE,
    below: () => mayReach(7.3, 6.08),
    above: () => mayReach(7.3, 6.0825),
    answers: [false, true],
  },
  {
    number: 'errors of a reading for a fit: good meter',
    value: FIT_ERRORS.good.noise,
    below: () => mayHold(0.025, 6.16, 'good'),
    above: () => mayHold(0.025, 6.2, 'good'),
    answers: [true, false],
  },
  {
    number: 'errors of a reading for a fit: meter of one decimal',
    value: FIT_ERRORS.cheap.noise,
    below: () => mayHold(0.025, 6.16, 'cheap'),
    above: () => mayHold(0.025, 6.2, 'cheap'),
    answers: [true, false],
  },
];
