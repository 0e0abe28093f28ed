import type { Near } from '../../base/near';
import type { CellError } from '../../base/values';
import { isError } from '../../base/values';
import type { Line } from './near';
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

export const NEAR: readonly Near[] = [
  {
    number: 'most of the gas that leaves while a dose mixes',
    value: MIXING_LOSS,
    below: () =>
      said([
        [0, 5.4],
        [1, 8.16],
      ]),
    above: () =>
      said([
        [0, 5.4],
        [1, 8.24],
      ]),
    answers: ['readAgain high', 'readAgain unexpected'],
  },
  {
    number: 'chance of organic acids from which the water counts as brown',
    value: BROWN,
    below: () => isBrown(dosed(6.68)),
    above: () => isBrown(dosed(6.62)),
    answers: [false, true],
  },
  {
    number: 'share of the weight beyond either end of a stated range',
    value: STATED,
    below: () => lowestAfter([0.6, 5.6], [0.6, 5.84]) > 6.045,
    above: () => lowestAfter([0.6, 5.6], [0.6, 5.88]) > 6.045,
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
    above: () => mayReach(7.3, 6.12),
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
