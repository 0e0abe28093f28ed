import type { Near } from '../../base/near';
import { literatureBells } from './kernels/belief';
import { limitedTranslation } from './kernels/limitedTranslation';

/** How far farms are believed changes at numbers somebody chose; no bundle holds this file. */
const wide = literatureBells(0, 1)[1];

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
];
