import { weightAfter } from '../../growth/kernels/specificGrowth';
import { dailyFeed } from './dailyFeed';

export interface FeedPlan {
  readonly fish: number;
  readonly weight: number;
  readonly days: number;
  readonly growth: number;
  /** Share of the fish alive at the end of the days. */
  readonly survival: number;
  readonly meals: number;
  /** g in one bag. */
  readonly bag: number;
  /** Share of body weight per day at a weight; NaN where the ration is not known. */
  readonly rationAt: (weight: number) => number;
}

export interface FeedDay {
  readonly day: number;
  readonly fish: number;
  readonly weight: number;
  readonly ration: number;
  readonly perMeal: number;
  readonly fed: number;
  readonly bags: number;
}

/**
 * Feed day by day: whole fish left, mean weight, ration, and the running total in bags.
 *
 * Day 1 starts with all fish at the first weight. Deaths at an even daily rate, survival^((d − 1)/days);
 * growth at a steady specific rate; ration from the weight of the morning. bags = bags opened so far.
 * Source: DEFINITION (growth RICKER79). Example: 1,000 fish of 2 g, 5 %: day 1 is 100 g.
 */
export const feedTable = ({
  fish,
  weight,
  days,
  growth,
  survival,
  meals,
  bag,
  rationAt,
}: FeedPlan): readonly FeedDay[] => {
  const table: FeedDay[] = [];
  let fed = 0;
  for (let day = 1; day <= days; day++) {
    const left = Math.round(fish * survival ** ((day - 1) / days));
    const mean = weightAfter(weight, growth, day - 1);
    const ration = dailyFeed(left, mean, rationAt(mean));
    fed += ration;
    table.push({
      day,
      fish: left,
      weight: mean,
      ration,
      perMeal: ration / meals,
      fed,
      bags: Math.ceil(fed / bag - 1e-9),
    });
  }
  return table;
};
