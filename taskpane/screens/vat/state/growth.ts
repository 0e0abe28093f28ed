import type { BookDay } from '../../../../shared/books/living/reading/day';
import type { GrowthData } from '../../../pane/pictures/types';
import type { PaneState } from '../../../pane/keeping/state';
import type { VatFish } from './cards';
import { batchNamed, standingIn } from './standing';

/** The weight of a batch's fish as planned, and as it was weighed. */

/** Grams so many days after the first full day of feeding; the book's own figures, before anything was weighed. */
const plannedGrams = (
  { start, rearing, nursing, rearingDays }: NonNullable<BookDay['growth']>,
  days: number,
): number =>
  start * Math.exp((rearing * Math.min(days, rearingDays) + nursing * Math.max(0, days - rearingDays)) / 100);
const fedFrom = (feed: number): number => Math.floor(feed + 0.5);

/** Grams of one fish planned for a moment; undefined before it is fed. */
export function plannedAt(
  book: BookDay | undefined,
  name: string | undefined,
  at: number,
): number | undefined {
  const feed = name === undefined ? undefined : batchNamed(book, name)?.feed;
  if (!book?.growth || feed === undefined || at < fedFrom(feed)) return undefined;
  return plannedGrams(book.growth, Math.floor(at) - fedFrom(feed));
}

/** The first full day of food lies between these days after the hatch. */
const FOOD_DAYS = [1, 12] as const;
/** The fish in a vat this morning, as the day's line of the book counts their age. */
export function fishHere({ today: { book }, vat: { vat }, now }: PaneState): VatFish | undefined {
  const stay = book && standingIn(book, vat, now);
  const { hatch, feed } = batchNamed(book, stay?.batch ?? '') ?? {};
  if (!stay || hatch === undefined || hatch > now) return undefined;
  const food = feed === undefined ? FOOD_DAYS[0] : Math.floor(fedFrom(feed) - hatch);
  return {
    alive: stay.now?.fish ?? stay.fish,
    age: Math.max(0, Math.floor(Math.floor(now) - hatch)),
    food: Math.max(FOOD_DAYS[0], Math.min(FOOD_DAYS[1], food)),
  };
}

/** No longer than this is drawn beyond today. */
const MOST_DAYS = 60;

export function growthOf({ today: { book }, vat: { lines }, now }: PaneState, name: string): GrowthData {
  const batch = batchNamed(book, name);
  const { growth } = book ?? {};
  if (!book || !growth || batch?.feed === undefined) return { planned: [], weighed: [] };
  const from = fedFrom(batch.feed);
  const days = Math.max(1, Math.min(MOST_DAYS, Math.floor(batch.leaves ?? from + growth.rearingDays) - from));
  const noted = lines.flatMap(({ what, value, at, vat }) =>
    what === 'fishWeight' && value !== null && standingIn(book, vat, at)?.batch === name
      ? [{ at: Math.floor(at), grams: value }]
      : [],
  );
  const { weighed } = batch;
  const isNoted = noted.some(({ at }) => at === Math.floor(weighed?.at ?? now));
  return {
    planned: Array.from({ length: days + 1 }, (_, i) => ({ at: from + i, grams: plannedGrams(growth, i) })),
    weighed: [...(weighed && !isNoted ? [weighed] : []), ...noted].sort((a, b) => a.at - b.at),
  };
}
