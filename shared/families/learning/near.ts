import type { Near } from '../../base/near';
import { isError, isGrid } from '../../base/values';
import { invoke } from '../../functions/invoke';
import { literatureBells } from './kernels/belief';
import { limitedTranslation } from './kernels/limitedTranslation';
import { rateMean, ratePooled } from './records/pooled';

/** How far farms are believed changes at numbers somebody chose; no bundle holds this file. */
const wide = literatureBells(0, 1)[1];

/** What nine of ten make of a farm whose mean lies about one half, so many logits off; without, what is usual. */
const pooled = (spread?: number): number => {
  // A prior of 0.5 is spread by 0.3 over half the root of the runs it is worth.
  const prior = spread === undefined ? [] : [0.5, (0.3 / (0.5 * spread)) ** 2];
  const got = invoke(ratePooled, [[[9]], [[10]], ...prior]);
  return Number(isGrid(got) ? got.at(-1)?.[0] : NaN);
};
/** A value of so much against a published 100. */
const isTyped = (mean: number): boolean => ![invoke(rateMean, [[[mean]], 100])].flat(2).some(isError);

export const NEAR: readonly Near[] = [
  {
    number:
      'Standard errors, times the root of the weight of the belief, that literature may pull the own mean',
    value: 0.65,
    below: () => limitedTranslation(0.64, 1, 1) === 0.64,
    above: () => limitedTranslation(0.66, 1, 1) === 0.66,
    answers: [true, false],
  },
  {
    number: 'Share of farms that are unlike the published ones',
    value: 0.1,
    below: () => (wide?.weight ?? 0) > 0.099,
    above: () => (wide?.weight ?? 0) > 0.101,
    answers: [true, false],
  },
  {
    number: 'How many times wider the means of unlike farms lie',
    value: 3,
    below: () => (wide?.sd ?? 0) > 2.99,
    above: () => (wide?.sd ?? 0) > 3.01,
    answers: [true, false],
  },
  {
    number: 'Logits that a farm of which nothing is known lies off one half',
    value: 1.5,
    below: () => pooled() > pooled(1.49),
    above: () => pooled() > pooled(1.51),
    answers: [true, false],
  },
  {
    number: 'Times the published value that was hardly typed in its unit',
    value: 10,
    below: () => isTyped(990),
    above: () => isTyped(1010),
    answers: [true, false],
  },
];
