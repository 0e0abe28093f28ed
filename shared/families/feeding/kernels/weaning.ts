import { larvaeLeft } from '../../care/kernels/losses';
import { cystsNeeded } from './cystsNeeded';

export interface WeaningPlan {
  readonly larvae: number;
  readonly days: number;
  readonly naupliiPerLarva: number;
  readonly survival: number;
  /** Days of live food alone from first feeding. */
  readonly liveOnly: number;
  /** Days over which dry feed takes over. */
  readonly mixed: number;
  readonly naupliiPerGram: number;
  readonly harvest: number;
}

export interface WeaningDay {
  readonly day: number;
  readonly larvae: number;
  readonly live: number;
  readonly dry: number;
  readonly nauplii: number;
  readonly cysts: number;
}

/**
 * Share of the day's food that is live: all of it at first, then falling on a straight line to none.
 * Example: 5 days alone and 6 mixed: day 5 → 1, day 8 → 0.5, day 11 → 0.
 */
export const liveShare = (day: number, liveOnly: number, mixed: number): number =>
  day <= liveOnly ? 1 : mixed === 0 ? 0 : Math.max(0, 1 - (day - liveOnly) / mixed);

/**
 * Live food and dry feed day by day from first feeding, with the cysts to hatch for each day.
 *
 * Live food alone for 5 days (HECHT13), half live and half dry on day 8 (CHEP11); the straight line between
 * is common practice. Most deaths in the first four days of food. In: numbers, days, shares. Out: one row a day.
 * Example: 50,000 larvae at 100 nauplii, 230,600 per g, all caught: day 1 takes 21.68 g of cysts.
 */
export const weaningTable = (plan: WeaningPlan): readonly WeaningDay[] =>
  Array.from({ length: plan.days }, (_, i) => {
    const day = i + 1;
    const larvae = Math.round(plan.larvae * larvaeLeft(plan.survival, plan.days, i));
    const live = liveShare(day, plan.liveOnly, plan.mixed);
    const nauplii = larvae * plan.naupliiPerLarva * live;
    return {
      day,
      larvae,
      live,
      dry: 1 - live,
      nauplii,
      cysts: cystsNeeded(larvae, plan.naupliiPerLarva * live, plan.naupliiPerGram, plan.harvest),
    };
  });
