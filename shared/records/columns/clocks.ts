import type { NumericField } from '../fields';
import type { ReadNumbers } from './cells/values';

/** Moments of a run in the order they happen. */
const ORDER = ['injected', 'stripped', 'fertilisedAt'] as const satisfies readonly NumericField[];
const LATER = ['hatchedAt', 'feedingAt'] as const satisfies readonly NumericField[];

type Numbers = Partial<Record<NumericField, Float64Array>>;
type Read = Partial<Record<NumericField, ReadNumbers>>;

const onTheDay = (clock: number, day: number): number => (clock < 1 ? Math.floor(day) + clock : clock);

/** Moments of one row put on its date, each past midnight when it is earlier than the one before. */
function joinRow(numbers: Numbers, clocked: readonly NumericField[], row: number, day: number): void {
  let before = day;
  for (const name of ORDER) {
    const list = numbers[name];
    const value = list?.[row] ?? NaN;
    if (!list || Number.isNaN(value)) continue;
    const joined = onTheDay(value, before);
    list[row] = clocked.includes(name) && name !== 'injected' && joined < before ? joined + 1 : joined;
    if (!Number.isNaN(joined)) before = list[row] ?? before;
  }
}

/**
 * Clock times kept apart from the date go on the date of the row. A hatch or first feed with a clock time
 * only could be any of several days, so it is left out.
 */
export function joinClocks(numbers: Numbers, read: Read): void {
  const { date } = numbers;
  for (const name of LATER) if (read[name]?.isClock) delete numbers[name];
  const clocked = ORDER.filter((name) => read[name]?.isClock);
  for (const name of clocked) {
    const list = numbers[name];
    if (date && list) numbers[name] = list.slice();
    else delete numbers[name];
  }
  if (date && clocked.length > 0)
    for (let row = 0; row < date.length; row++) joinRow(numbers, clocked, row, date[row] ?? NaN);
}
