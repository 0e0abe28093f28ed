import type { Assumed } from '../../families/assumptions';
import { runLines } from '../../run/lines';
import type { BatchWeighing } from '../types';

/** Lines that say how fish grow, and how they grew to their weighing. */
interface Grown {
  readonly feedFrom: number;
  readonly weighed?: BatchWeighing | undefined;
}

/**
 * The figures of a batch from its weighing on, by the lines of a run: the start weight from which fish that
 * always grew as they do now would weigh the same. Days before the weighing are not told by them. Without a
 * weighing, or with one too early to tell, the figures of the book.
 */
export function assumedOf(a: Assumed, { feedFrom, weighed }: Grown): Assumed {
  if (!weighed) return a;
  const lines = runLines.open({
    ...a,
    // First food on the morning of its first full day, so that the line finds that day.
    wasFeed: feedFrom,
    weighedGrams: weighed.grams,
    weighedOn: weighed.on,
  });
  const day = lines.number('weighedDay');
  if (!Number.isFinite(day)) return a;
  const fryGrowth = lines.number('growing');
  return { ...a, fryGrowth, startWeight: weighed.grams / Math.exp((fryGrowth * day) / 100) };
}
