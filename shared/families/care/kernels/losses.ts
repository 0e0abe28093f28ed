import type { Near } from '../../../base/near';

/**
 * Loss a day as a share of the fish alive, from printed survivals at an even rate: hatch to day 3 up to 6 to 8 %;
 * from day 7 good trials 0.3 to 1.6, ordinary 2 to 4, bad 6 to 10 (MAKERERE, KAWAMURA17, KISANGANI). The limits
 * are drawn here from these, no source.
 */
export const EARLY_DAYS = 3; // d after hatch
export const EARLY_MOST = 0.08; // share a day
export const USUAL_MOST = 0.015; // share a day
export const LOOK_FROM = 0.02; // share a day
export const ACT_FROM = 0.04; // share a day

export type LossCode = 'usual' | 'look' | 'act';
/** What a day's loss means. `before` is the loss of the day before: a doubling counts as much as a high number. */
export function lossCode(share: number, daysAfterHatch: number, before: number | undefined): LossCode {
  const isEarly = daysAfterHatch <= EARLY_DAYS;
  if (isEarly) return share > EARLY_MOST ? 'act' : 'usual';
  const isDoubled = before !== undefined && before > 0 && share >= 2 * before && share > USUAL_MOST;
  if (share >= ACT_FROM || (isDoubled && share >= LOOK_FROM)) return 'act';
  return share > USUAL_MOST || isDoubled ? 'look' : 'usual';
}
/** Usual span of a day's loss at an age, shares. */
export const usualLoss = (daysAfterHatch: number): readonly [number, number] =>
  daysAfterHatch <= EARLY_DAYS
    ? [0.02, EARLY_MOST]
    : daysAfterHatch < 7
      ? [0.015, ACT_FROM]
      : [0.003, USUAL_MOST];

export const NEAR: readonly Near[] = [
  {
    number: 'loss a day that is still usual',
    value: USUAL_MOST,
    below: () => lossCode(USUAL_MOST, 10, undefined),
    above: () => lossCode(USUAL_MOST + 1e-6, 10, undefined),
    answers: ['usual', 'look'],
  },
  {
    number: 'loss a day that needs an act',
    value: ACT_FROM,
    below: () => lossCode(ACT_FROM - 1e-6, 10, undefined),
    above: () => lossCode(ACT_FROM, 10, undefined),
    answers: ['look', 'act'],
  },
  {
    number: 'loss a day in the first three days',
    value: EARLY_MOST,
    below: () => lossCode(EARLY_MOST, 2, undefined),
    above: () => lossCode(EARLY_MOST + 1e-6, 2, undefined),
    answers: ['usual', 'act'],
  },
  {
    number: 'last of the early days',
    value: EARLY_DAYS,
    below: () => lossCode(0.05, EARLY_DAYS, undefined),
    above: () => lossCode(0.05, EARLY_DAYS + 0.1, undefined),
    answers: ['usual', 'act'],
  },
  {
    number: 'a loss that has doubled',
    value: LOOK_FROM,
    below: () => lossCode(LOOK_FROM - 1e-6, 10, 0.009),
    above: () => lossCode(LOOK_FROM, 10, 0.009),
    answers: ['look', 'act'],
  },
];
