import { cystsNeeded } from '../families/feeding/kernels/cystsNeeded';
import { dailyFeed } from '../families/feeding/kernels/dailyFeed';
import { dryShareAt, foodIntake } from '../families/feeding/kernels/metabolism';
import { larvaeLeft } from '../families/care/kernels/losses';
import { mondayOf } from '../units/dates';
import type { Assumed } from '../families/assumptions';
import { kilogramsFromGrams, milligramsFromGrams } from '../units/convert';
import type { OrderBook } from './orderBook';
import type { Product } from './product';
import { preparationNamed } from '../families/preparations';
import type { BatchFeeding, Goods, SeasonBatch, SeasonPurchase } from './types';

/** Share of the day's food that is live: alone, then half, then none. */
const liveShare = (day: number, a: Assumed): number =>
  day < a.liveDays ? 1 : day < a.liveDays + a.weaningDays ? 0.5 : 0;

/** Share of body weight a fish can eat in a day, dry (CONC98); no cap beyond the weights it was measured at. */
const eatenAt = (grams: number): number => {
  const dry = dryShareAt(milligramsFromGrams(Math.max(LIGHTEST, Math.min(HEAVIEST, grams))));
  return foodIntake(milligramsFromGrams(Math.max(LIGHTEST, Math.min(HEAVIEST, grams)) * dry)) * dry;
};
const LIGHTEST = 0.0006;
const HEAVIEST = 150;
const FEED_DRY = 0.9;

/**
 * Hormone for females of so many kilograms, in the unit of its preparation: a ready-made solution by the dose
 * of the book's figures, every other by its own.
 */
export function hormoneFor(book: OrderBook, a: Assumed, kilograms: number): number {
  const preparation = preparationNamed(book.preparation);
  return kilograms * (preparation && !preparation.isSolution ? preparation.dose : a.hormoneDose);
}
export const hormoneUnit = ({ preparation }: Pick<OrderBook, 'preparation'>): string =>
  preparationNamed(preparation)?.unit ?? 'mL';

/** Larvae at first food of a batch that are grown for one day of leaving. */
export interface FedGroup {
  readonly feedFrom: number;
  readonly feeding: number;
  readonly due: number;
}
/** What a group eats, day by day from its first full day of feeding until it is fetched. */
export function feedingOf(run: FedGroup, product: Product, a: Assumed): Omit<BatchFeeding, 'batch'>[] {
  const days = run.due - run.feedFrom;
  const [, , fry = 1, next = 1] = product.survivals;
  return Array.from({ length: Math.max(0, days) }, (_, i) => {
    const reared = Math.min(i, product.rearingDays);
    const nursed = product.nurseryDays > 0 ? Math.min(i - reared, product.nurseryDays) : 0;
    // Fish that wait for their buyer are fed as before but counted as no longer dying.
    const fish =
      run.feeding *
      larvaeLeft(fry, product.rearingDays, reared) *
      (product.nurseryDays > 0 ? next ** (nursed / product.nurseryDays) : 1);
    const grams = a.startWeight * Math.exp((a.fryGrowth * reared + a.nurseryGrowth * (i - reared)) / 100);
    const live = liveShare(i, a);
    // At most what fish of that weight can eat; bagged feed is 90 % dry.
    const ration = Math.min(
      i < product.rearingDays ? a.fryRation : a.nurseryRation,
      eatenAt(grams) / FEED_DRY,
    );
    return {
      date: run.feedFrom + i,
      fish,
      grams,
      cysts: live > 0 ? cystsNeeded(fish, a.naupliiPerLarva * live, a.naupliiPerGram, a.naupliiHarvest) : 0,
      dry: dailyFeed(fish, grams, ration * (1 - live)),
    };
  });
}

interface Use {
  readonly item: Goods;
  readonly on: number;
  readonly amount: number;
}
const usesOf = (runs: readonly SeasonBatch[], feeding: readonly BatchFeeding[]): Use[] => [
  ...runs.map((run): Use => ({ item: 'hormone', on: Math.floor(run.injectAt), amount: run.hormone })),
  // Cysts are set to hatch the day before they are fed.
  ...feeding
    .filter(({ cysts }) => cysts > 0)
    .map((row): Use => ({ item: 'cysts', on: row.date - 1, amount: kilogramsFromGrams(row.cysts) })),
  ...feeding
    .filter(({ dry }) => dry > 0)
    .map((row): Use => ({ item: 'dry feed', on: row.date, amount: kilogramsFromGrams(row.dry) })),
];

/** Goods by the week in which they must be ordered, so that each is there when it is used. */
export function purchasesOf(
  book: OrderBook,
  runs: readonly SeasonBatch[],
  feeding: readonly BatchFeeding[],
): SeasonPurchase[] {
  const lead: Record<Goods, number> = {
    hormone: book.leadDays.hormone,
    cysts: book.leadDays.cysts,
    'dry feed': book.leadDays.feed,
  };
  const price: Record<Goods, number> = {
    hormone: book.prices.hormonePerMillilitre,
    cysts: book.prices.cystsPerKilogram,
    'dry feed': book.prices.feedPerKilogram,
  };
  const byWeek = new Map<string, SeasonPurchase>();
  for (const { item, on, amount } of usesOf(runs, feeding)) {
    const week = mondayOf(Math.max(book.plannedOn, on - lead[item]));
    const key = `${item} ${week}`;
    const before = byWeek.get(key);
    byWeek.set(key, {
      week,
      item,
      unit: item === 'hormone' ? hormoneUnit(book) : 'kg',
      amount: (before?.amount ?? 0) + amount,
      cost: (before?.cost ?? 0) + amount * price[item],
      usedFrom: Math.min(before?.usedFrom ?? Infinity, on),
    });
  }
  return [...byWeek.values()].sort((a, b) => a.week - b.week || a.item.localeCompare(b.item, 'en'));
}
