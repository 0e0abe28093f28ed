import type { Range } from '../../../maths/quantiles';
import { rangeOf } from '../../../maths/quantiles';
import type { OrderBook } from '../../book/orderBook';
import type { MoneyEntry, SeasonPlan } from '../../types';

/** Profit and cash over drawn seasons. */

interface Sale {
  readonly due: number;
  readonly price: number;
  readonly drawn: Float64Array;
}
/** A sale, with what all that is fixed before it comes to: as a sum, and at its lowest on the way. */
interface Move extends Omit<Sale, 'due'> {
  readonly before: number;
  readonly lowest: number;
}
const NOTHING: Omit<Sale, 'due'> = { price: 0, drawn: new Float64Array() };

/** The money of a season by date, on one day the sales first; what is the same in every season is summed once. */
function movesOf(
  fixed: readonly { readonly date: number; readonly amount: number }[],
  sales: readonly Sale[],
): Move[] {
  const all = [
    ...sales.map((sale) => ({ date: sale.due, amount: 0, sale })),
    ...fixed.map(({ date, amount }) => ({ date, amount, sale: undefined })),
  ].sort((a, b) => a.date - b.date);
  const moves: Move[] = [];
  let [before, lowest] = [0, 0];
  for (const { amount, sale } of all) {
    before += amount;
    lowest = Math.min(lowest, before);
    if (!sale) continue;
    moves.push({ before, lowest, drawn: sale.drawn, price: sale.price });
    [before, lowest] = [0, 0];
  }
  return [...moves, { ...NOTHING, before, lowest }];
}

/** Profit and the lowest balance of drawn seasons: costs as planned, sales as drawn, on the day of each order. */
export function moneyOdds(
  book: OrderBook,
  entries: readonly MoneyEntry[],
  sales: readonly Sale[],
  draws: number,
): SeasonPlan['odds'] {
  if (draws === 0) return undefined;
  const kept = entries
    .filter((e) => e.isBooked || e.what !== 'sales')
    .map(({ date, amount }) => ({ date, amount }));
  const base = kept.reduce((sum, { amount }) => sum + amount, 0);
  const moves = movesOf(kept, sales);
  const profit = new Float64Array(draws);
  const least = new Float64Array(draws);
  for (let d = 0; d < draws; d++) {
    let [balance, low, sold] = [book.prices.atHand, book.prices.atHand, 0];
    for (const { before, lowest, drawn, price } of moves) {
      low = Math.min(low, balance + lowest);
      const money = (drawn[d] ?? 0) * price;
      sold += money;
      balance += before + money;
      low = Math.min(low, balance);
    }
    profit[d] = base + sold;
    least[d] = low;
  }
  const share = (list: Float64Array, from: number): number =>
    list.reduce((n, x) => n + (x >= from ? 1 : 0), 0) / draws;
  const [gain, solvent] = [share(profit, 0), share(least, 0)];
  const ranged = (list: Float64Array): Range => rangeOf(list.sort());
  return { profit: ranged(profit), least: ranged(least), gain, solvent };
}
