import type { BookDay, DayBatch, DayStay } from '../../../../shared/books/living/reading/day';

/** Which batch a vat holds, by the book. */

/** Days before the planned hour at which fish may already be in, and after it at which they may still be. */
const EARLY = 0.5;
const LATE = 3;

export const standingIn = (book: BookDay | undefined, vat: string, now: number): DayStay | undefined =>
  book?.stays
    .filter((stay) => stay.vat === vat && stay.from - EARLY <= now && now < stay.to + LATE)
    .sort((a, b) => Number(b.from <= now) - Number(a.from <= now) || b.from - a.from)[0];

/** Every vat that holds the same batch now; only where none does by the plan, those it may still or already be in. */
export function vatsOfBatch(book: BookDay, batch: string, now: number): readonly string[] {
  const planned = book.stays.filter((stay) => stay.batch === batch && stay.from <= now && now < stay.to);
  return planned.length > 0
    ? [...new Set(planned.map(({ vat }) => vat))]
    : book.vats.filter((vat) => standingIn(book, vat, now)?.batch === batch);
}

export const batchNamed = (book: BookDay | undefined, name: string): DayBatch | undefined =>
  book?.batches.find((batch) => batch.name === name);

/** Days after the hatch, whole; before it undefined. */
export const ageOf = (batch: DayBatch | undefined, now: number): number | undefined =>
  batch?.hatch === undefined || batch.hatch > now ? undefined : Math.floor(now - batch.hatch);
