import { mondayOf } from '../../units/dates';
import type { Assumed } from '../../families/assumptions';
import { dayLines } from '../../run/lines';
import { kilogramsFromGrams } from '../../units/convert';
import type { OrderBook } from '../book/orderBook';
import type { Product } from './product';
import { preparationNamed } from '../../families/preparations';
import type { BatchFeeding, Goods, SeasonBatch, SeasonPurchase } from '../types';

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
/** What a group eats, by the lines of a day, from its first full day of feeding until it is fetched. */
export function feedingOf(run: FedGroup, product: Product, a: Assumed): Omit<BatchFeeding, 'batch'>[] {
  const [, , fry = 1] = product.survivals;
  const group = {
    ...a,
    fedFrom: run.feedFrom,
    leaves: run.due,
    feeding: run.feeding,
    rearing: product.rearingDays,
    fry: run.feeding * fry,
    nursing: product.nurseryDays,
    // What a weighing says is in the figures already.
    grown: a.fryGrowth,
    growing: a.fryGrowth,
  };
  return Array.from({ length: Math.max(0, run.due - run.feedFrom) }, (_, day) => {
    const lines = dayLines.open({ ...group, day });
    return {
      date: lines.number('date'),
      fish: lines.number('fishNow'),
      grams: lines.number('gramsNow'),
      cysts: lines.number('cysts'),
      dry: lines.number('dry'),
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
