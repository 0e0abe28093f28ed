import { mondayOf } from '../../../units/dates';

export interface DatedAmount {
  readonly date: number;
  readonly amount: number;
}
export interface CashWeek {
  readonly begins: number;
  readonly moneyIn: number;
  readonly moneyOut: number;
  readonly balance: number;
}

const WEEK = 7;
/**
 * Money in and out by week, Monday to Sunday, with the balance at the end of each week; weeks without any are
 * kept. In: dated amounts (in positive, out negative), money at hand before the first. Out: one row a week.
 * Source: DEFINITION. Example: 100 at hand, −80 in the first week, +200 in the third → balances 20, 20, 220.
 */
export function cashWeeks(amounts: readonly DatedAmount[], atHand: number): CashWeek[] {
  if (amounts.length === 0) return [];
  const first = mondayOf(Math.min(...amounts.map(({ date }) => date)));
  const last = mondayOf(Math.max(...amounts.map(({ date }) => date)));
  const weeks = Array.from({ length: (last - first) / WEEK + 1 }, () => ({ moneyIn: 0, moneyOut: 0 }));
  for (const { date, amount } of amounts) {
    const week = weeks[(mondayOf(date) - first) / WEEK];
    if (!week) continue;
    if (amount >= 0) week.moneyIn += amount;
    else week.moneyOut -= amount;
  }
  let balance = atHand;
  return weeks.map(({ moneyIn, moneyOut }, i) => ({
    begins: first + WEEK * i,
    moneyIn,
    moneyOut,
    balance: (balance += moneyIn - moneyOut),
  }));
}

/** The least that is at hand at the end of any week; money to find beforehand is what it lies below 0. */
export const leastBalance = (weeks: readonly CashWeek[], atHand: number): number =>
  weeks.reduce((least, { balance }) => Math.min(least, balance), atHand);
