import type { Near } from '../../../base/near';

/**
 * Loss a day as a share of the fish alive, from printed survivals at an even rate: hatch to day 3 up to 6 to 8 %;
 * from day 7 good trials 0.3 to 1.6, ordinary 2 to 4, bad 6 to 10 (MAKERERE, KAWAMURA17, KISANGANI). The limits
 * are drawn here from these, no source. Days count from the hatch; the first full day of food lies on day 3, in
 * cool water later.
 */
export const FIRST_FOOD = 3; // d after hatch
/** Days after the first day of food on which larvae that never learned to eat still die. */
export const STARVING_DAYS = 3;
export const EARLY_MOST = 0.08; // share a day
export const USUAL_MOST = 0.015; // share a day
export const LOOK_FROM = 0.02; // share a day
export const ACT_FROM = 0.04; // share a day

export type LossCode = 'usual' | 'look' | 'act';
/** Most that is usual in a day, and the least, as shares of the fish alive. */
export const usualLoss = (daysAfterHatch: number, firstFood = FIRST_FOOD): readonly [number, number] =>
  daysAfterHatch <= firstFood
    ? [0.02, EARLY_MOST]
    : daysAfterHatch < firstFood + STARVING_DAYS + 1
      ? [0.015, ACT_FROM]
      : [0.003, USUAL_MOST];

/** What a day's loss means. `before` is the loss of the day before: a doubling counts as much as a high number. */
export function lossCode(
  share: number,
  daysAfterHatch: number,
  before: number | undefined,
  firstFood = FIRST_FOOD,
): LossCode {
  const [, most] = usualLoss(daysAfterHatch, firstFood);
  if (most >= ACT_FROM) return share > most ? 'act' : 'usual';
  const isDoubled = before !== undefined && before > 0 && share >= 2 * before && share > USUAL_MOST;
  if (share >= ACT_FROM || (isDoubled && share >= LOOK_FROM)) return 'act';
  return share > USUAL_MOST || isDoubled ? 'look' : 'usual';
}

/**
 * Deaths of larvae, counted in later days: as many die on the first full day of food as on 4.6 later ones, on
 * each of the three after it as on 2.6. With 75 % alive after 12 days that is 6.3, 3.6 and 1.4 % a day: the whole
 * from print (HLREAR94), when they die from the days of heavy loss in a related species, 5 to 8 after the hatch
 * (KISANGANI), and from the limits above; the weights are drawn here, no source.
 */
const FIRST_DAY_MORE = 3.6;
const NEXT_DAYS_MORE = 1.6;
/** In: days from the first full day of food. Out: days of later deaths. Example: 4 → 12.4. */
export const deathDays = (days: number): number =>
  days + FIRST_DAY_MORE * Math.min(1, days) + NEXT_DAYS_MORE * Math.max(0, Math.min(STARVING_DAYS, days - 1));
/** The same as a formula over a cell or a line. */
export const deathDaysText = (days: string): string =>
  `(${days}+${FIRST_DAY_MORE}*MIN(1,${days})+${NEXT_DAYS_MORE}*MAX(0,MIN(${STARVING_DAYS},${days}-1)))`;
/** Share of larvae alive on a day, of a share alive at the end. Example: 0.75 after 12 days, day 1 → 0.937. */
export const larvaeLeft = (atEnd: number, end: number, day: number): number =>
  atEnd ** (deathDays(day) / deathDays(end));

/** What dies on a day of food, of the fish alive, when 75 % are left after 12. */
const lossOn = (day: number): string =>
  `${(100 * (1 - larvaeLeft(0.75, 12, day) / larvaeLeft(0.75, 12, day - 1))).toFixed(1)} %`;

export const NEAR: readonly Near[] = [
  {
    number: 'loss a day that is still usual',
    value: USUAL_MOST,
    below: () => lossCode(0.015, 10, undefined),
    above: () => lossCode(0.015001, 10, undefined),
    answers: ['usual', 'look'],
  },
  {
    number: 'loss a day that needs an act',
    value: ACT_FROM,
    below: () => lossCode(0.039999, 10, undefined),
    above: () => lossCode(0.04, 10, undefined),
    answers: ['look', 'act'],
  },
  {
    number: 'loss a day in the first three days',
    value: EARLY_MOST,
    below: () => lossCode(0.08, 2, undefined),
    above: () => lossCode(0.080001, 2, undefined),
    answers: ['usual', 'act'],
  },
  {
    number: 'last of the early days',
    value: FIRST_FOOD,
    below: () => lossCode(0.05, 3, undefined),
    above: () => lossCode(0.05, 3.1, undefined),
    answers: ['usual', 'act'],
  },
  {
    number: 'loss a day in the three days after the first of food',
    value: ACT_FROM,
    below: () => lossCode(0.04, 5, undefined),
    above: () => lossCode(0.040001, 5, undefined),
    answers: ['usual', 'act'],
  },
  {
    number: 'days after the first of food on which larvae that never ate still die',
    value: STARVING_DAYS,
    below: () => lossCode(0.03, 6, undefined),
    above: () => lossCode(0.03, 7, undefined),
    answers: ['usual', 'look'],
  },
  {
    number: 'a loss that has doubled',
    value: LOOK_FROM,
    below: () => lossCode(0.019999, 10, 0.009),
    above: () => lossCode(0.02, 10, 0.009),
    answers: ['look', 'act'],
  },
  {
    number: 'times the loss of the day before that counts as a doubling',
    value: 2,
    below: () => lossCode(0.03, 10, 0.0151),
    above: () => lossCode(0.03, 10, 0.0149),
    answers: ['look', 'act'],
  },
  // With 75 % alive after 12 days 6.3, 3.6 and 1.4 % die a day: on the first of food, after it and later.
  {
    number: 'days of later deaths that the first of food has more',
    value: FIRST_DAY_MORE,
    below: () => lossOn(1),
    above: () => lossOn(2),
    answers: ['6.3 %', '3.6 %'],
  },
  {
    number: 'days of later deaths that each of the next three has more',
    value: NEXT_DAYS_MORE,
    below: () => lossOn(4),
    above: () => lossOn(5),
    answers: ['3.6 %', '1.4 %'],
  },
];
