/**
 * Feed for one day: number of fish × mean weight × ration.
 * In: fish, g, share of body weight per day. Out: g. Source: DEFINITION. Example: 1,000 fish of 2 g at 5 % →
 * 100 g.
 */
export const dailyFeed = (fish: number, weight: number, ration: number): number => fish * weight * ration;
