import type { Numbers } from './sampled';
import { at } from './sampled';
import { varies } from './products';

/** A column that is the time between two moments of its line, as hours, minutes or days. */
export interface Span {
  readonly result: number;
  readonly from: number;
  readonly to: number;
  /** Parts of a day: 24, 1440 or 1. */
  readonly factor: number;
  readonly share: number;
}

const ROWS = 200;
const LEAST_ROWS = 4;
const LEAST_HOLDING = 0.7;
const LONGEST_DAYS = 200;
/** Hours are often rounded to the half, minutes to the whole, days to the day. */
const UNITS: readonly (readonly [factor: number, slack: number])[] = [
  [24, 0.3],
  [1440, 1.6],
  [1, 0.6],
];

const isClock = (x: number): boolean => x >= 0 && x < 1;
/** Days from one moment to the next; across midnight where only the hour is said. */
function daysBetween(from: number, to: number): number {
  if (Number.isNaN(from) || Number.isNaN(to)) return NaN;
  if (isClock(from) !== isClock(to)) return (((to - from) % 1) + 1) % 1;
  return isClock(from) ? (to - from + 1) % 1 : to - from;
}

function shareOf(spans: Float64Array, stated: Numbers, factor: number, slack: number): number {
  let [tried, holds] = [0, 0];
  for (let i = 0; i < spans.length; i++) {
    const [span, said] = [spans[i] ?? NaN, at(stated, i)];
    if (Number.isNaN(span) || Number.isNaN(said) || span > LONGEST_DAYS) continue;
    tried++;
    if (said > 0 && Math.abs(said - factor * span) <= slack) holds++;
  }
  return tried < LEAST_ROWS ? 0 : holds / tried;
}

/** Found by trying: `moments` hold serials or shares of a day, `numbers` the columns as typed. */
export function findSpans(moments: ReadonlyMap<number, Float64Array>, numbers: readonly Numbers[]): Span[] {
  const best = new Map<number, Span>();
  const varying = numbers.flatMap((stated, result) =>
    !moments.has(result) &&
    varies(Array.from({ length: Math.min(ROWS, stated.length) }, (_, i) => at(stated, i)))
      ? [{ stated, result }]
      : [],
  );
  for (const [from, a] of moments)
    for (const [to, b] of moments) {
      if (from === to) continue;
      const spans = Float64Array.from({ length: Math.min(ROWS, a.length) }, (_, i) =>
        daysBetween(at(a, i), at(b, i)),
      );
      for (const { stated, result } of varying)
        for (const [factor, slack] of UNITS) {
          const share = shareOf(spans, stated, factor, slack);
          if (share >= LEAST_HOLDING && share > (best.get(result)?.share ?? 0))
            best.set(result, { result, from, to, factor, share });
        }
    }
  return [...best.values()];
}
