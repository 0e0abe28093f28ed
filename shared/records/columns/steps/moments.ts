import type { FieldName } from '../../fields';
import { findSpans } from '../../meaning/spans';
import type { CellRun, ColumnContent } from '../cells/content';
import type { DateOrder } from '../cells/dates';
import type { Looked } from './looked';
import { scoreIn } from './looked';
import type { DecimalMark } from '../cells/numbers';
import type { ReadValue } from '../cells/values';
import { readNumbers } from '../cells/values';

/** How the other columns of a table write numbers and dates. */
export interface Elsewhere {
  readonly decimal: DecimalMark | undefined;
  readonly order: DateOrder | undefined;
}

const FROM: Readonly<Partial<Record<FieldName, FieldName>>> = {
  injected: 'latency',
  injectedFirst: 'latency',
  stripped: 'incubationHours',
  fertilisedAt: 'incubationHours',
  startTime: 'minutes',
};
const SPAN_WEIGHS = 2;
/** Lines enough to know what two moments have to do with each other. */
const LINES = 200;
const headOf = (run: CellRun): CellRun => (run.length <= LINES ? run : { ...run, length: LINES });
/** A column that is the time between two moments of its line is named by the moment it begins with. */
export function bySpans(
  looked: readonly Looked[],
  plain: readonly Float64Array[],
  elsewhere: Elsewhere,
): void {
  const moments = new Map(
    looked.flatMap(({ unread: { run }, content }, i) =>
      content.filled > 0 && content.dates + content.clocks >= 0.6 * content.filled
        ? [[i, readNumbers(headOf(run), momentReading(content, elsewhere)).values] as const]
        : [],
    ),
  );
  if (moments.size < 2) return;
  for (const { result, from, share, factor } of findSpans(moments, plain)) {
    const [one, begun] = [looked[result], looked[from]?.candidates[0]?.field];
    const candidate = one && scoreIn(one, factor === 1 ? 'days' : ((begun && FROM[begun]) ?? 'minutes'));
    if (!one || !candidate) continue;
    candidate.score += SPAN_WEIGHS * share;
    candidate.because = 'it is the time between two moments of its line';
    one.candidates.sort((a, b) => b.score - a.score);
  }
}
/** Hours from the first of two clocks to the second that stand beside each other, by what is done between them. */
const BETWEEN: readonly { first: FieldName; second: FieldName; hours: readonly [number, number] }[] = [
  { first: 'injected', second: 'stripped', hours: [5, 26] },
  { first: 'startTime', second: 'endTime', hours: [0.03, 4.9] },
];
const CLOCKS_WEIGH = 1.2;
/**
 * Of two clocks side by side the second comes nearly the same time after the first in each line: eggs are stripped
 * half a day after the injection, a bath ends within the hour.
 */
export function byClocks(looked: readonly Looked[], elsewhere: Elsewhere): void {
  const clocks = looked.flatMap(({ unread: { run }, content }, i) =>
    content.clocks >= 0.7 * content.filled
      ? [{ i, values: readNumbers(headOf(run), momentReading(content, elsewhere)).values }]
      : [],
  );
  for (const [at, a] of clocks.entries()) {
    const b = clocks[at + 1];
    if (b?.i !== a.i + 1) continue;
    const pair = BETWEEN.find(({ hours }) => comeWithin(a.values, b.values, hours));
    if (!pair) continue;
    speakForClock(looked[a.i], pair.first);
    speakForClock(looked[b.i], pair.second);
  }
}
function comeWithin(from: Float64Array, to: Float64Array, [least, most]: readonly [number, number]): boolean {
  const told = Array.from(from, (begun, i) => (24 * ((((to[i] ?? NaN) - begun) % 1) + 1)) % 24).filter(
    (hours) => !Number.isNaN(hours),
  );
  return told.length >= 4 && told.filter((h) => h >= least && h <= most).length >= 0.8 * told.length;
}
function speakForClock(one: Looked | undefined, field: FieldName): void {
  const candidate = one && scoreIn(one, field);
  if (!one || !candidate) return;
  candidate.score += CLOCKS_WEIGH;
  candidate.because = 'of the clock beside it';
  one.candidates.sort((a, b) => b.score - a.score);
}
const momentReading = (content: ColumnContent, elsewhere: Elsewhere): ReadValue => ({
  field: 'clock',
  unit: undefined,
  decimal: '.',
  order: content.order ?? elsewhere.order ?? 'day first',
});

/** The only dates of a table, right at its left, are the dates of its lines, unless words clearly say of what else. */
export function byOnlyDate(looked: readonly Looked[]): void {
  const dated = looked.flatMap(({ content }, i) =>
    content.filled >= 2 && content.dates >= 0.8 * content.filled ? [i] : [],
  );
  const [only] = dated;
  if (only === undefined || dated.length > 1 || only > 2) return;
  const one = looked[only];
  const date = one && scoreIn(one, 'date');
  if (!one || !date || (one.candidates[0]?.words ?? 0) >= 0.9) return;
  date.score += 1.2;
  date.because = 'it is the only column of dates';
  one.candidates.sort((a, b) => b.score - a.score);
}
