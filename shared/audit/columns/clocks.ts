import type { NumericField } from '../fields';
import type { ReadNumbers } from './values';

/** Moments of a run in the order they happen. */
const ORDER = ['injected', 'stripped', 'fertilisedAt'] as const satisfies readonly NumericField[];
const LATER = ['hatchedAt', 'feedingAt'] as const satisfies readonly NumericField[];

type Numbers = Partial<Record<NumericField, Float64Array>>;
type Read = Partial<Record<NumericField, ReadNumbers>>;

const onTheDay = (clock: number, day: number): number => (clock < 1 ? Math.floor(day) + clock : clock);

/**
 * Clock times kept apart from the date: each goes on the date of the row and past midnight when it is earlier than the one before.
 * A hatch or first feed with a clock time only could be any of several days, so it is left out.
 */
export function joinClocks(numbers: Numbers, read: Read): void {
  const { date } = numbers;
  for (const name of LATER) if (read[name]?.isClock) delete numbers[name];
  const clocked = ORDER.filter((name) => read[name]?.isClock);
  if (clocked.length === 0) return;
  if (!date) { for (const name of clocked) delete numbers[name]; return; }
  for (const name of clocked) { const list = numbers[name]; if (list) numbers[name] = list.slice(); }
  for (let i = 0; i < date.length; i++) {
    let before = date[i] ?? NaN;
    for (const name of ORDER) {
      const list = numbers[name];
      const value = list?.[i];
      if (!list || value === undefined || Number.isNaN(value)) continue;
      let joined = onTheDay(value, before);
      if (clocked.includes(name) && name !== 'injected' && joined < before) joined += 1;
      list[i] = joined;
      if (!Number.isNaN(joined)) before = joined;
    }
  }
}
