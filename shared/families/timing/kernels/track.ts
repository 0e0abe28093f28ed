import { HOURS_PER_DAY } from '../../../units/convert';
import type { RateCurve } from './rateCurve';
import { highest, hoursToReach, lowest, piecesBetween, rateAt, sumBetween } from './rateCurve';

/**
 * A temperature log turned into development done: between two readings the temperature runs in a straight
 * line, the rate is read from the curve, and rate × time is summed exactly (piecewise trapezoids). Before the
 * first reading its temperature is held; after the last one the expected temperature takes over. Cutting the
 * log anywhere therefore changes nothing.
 */
export interface Track {
  readonly curve: RateCurve;
  /** Days, ascending, no two alike. */
  readonly times: readonly number[];
  readonly temperatures: readonly number[];
  /** Development done at each reading, counted from the first one. */
  readonly done: readonly number[];
  /**
   * Readings outside the curve, by index. They count as the curve's end here and are refused when a question
   * touches them.
   */
  readonly strays: readonly number[];
  /** Longest silence between two readings, h: most logs need no search for gaps. */
  readonly widest: number;
}

const clamp = (curve: RateCurve, t: number): number => Math.min(Math.max(t, lowest(curve)), highest(curve));

export function makeTrack(
  curve: RateCurve,
  times: readonly number[],
  temperatures: readonly number[],
): Track {
  const inside = temperatures.map((t) => clamp(curve, t));
  const done = [0];
  let widest = 0;
  for (let i = 1; i < times.length; i++) {
    const hours = ((times[i] ?? NaN) - (times[i - 1] ?? NaN)) * HOURS_PER_DAY;
    widest = Math.max(widest, hours);
    done.push((done[i - 1] ?? NaN) + sumBetween(curve, inside[i - 1] ?? NaN, inside[i] ?? NaN, hours));
  }
  const strays = temperatures.flatMap((t, i) => (t === inside[i] ? [] : [i]));
  return { curve, times, temperatures: inside, done, strays, widest };
}

/** Index of the last item at or below `limit` in an ascending list, −1 when all are above. */
function lastUpTo(list: readonly number[], limit: number): number {
  let low = -1;
  let high = list.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((list[middle] ?? Infinity) <= limit) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Index of the last reading at or before `time`, −1 when all are later. */
export const readingBefore = ({ times }: Track, time: number): number => lastUpTo(times, time);

const at = (list: readonly number[], i: number): number => list[i] ?? NaN;

/** Hours from reading i to the next one. */
const stepHours = ({ times }: Track, i: number): number => (at(times, i + 1) - at(times, i)) * HOURS_PER_DAY;

/** Development done at a time, counted from the first reading (negative before it). */
export function doneAt(track: Track, time: number, expected: number): number {
  const i = readingBefore(track, time);
  const last = track.times.length - 1;
  if (i < 0)
    return -rateAt(track.curve, at(track.temperatures, 0)) * (at(track.times, 0) - time) * HOURS_PER_DAY;
  if (i === last)
    return (
      at(track.done, last) + rateAt(track.curve, expected) * (time - at(track.times, last)) * HOURS_PER_DAY
    );
  const a = at(track.temperatures, i);
  const share = (time - at(track.times, i)) / (at(track.times, i + 1) - at(track.times, i));
  return (
    at(track.done, i) +
    sumBetween(track.curve, a, a + (at(track.temperatures, i + 1) - a) * share, stepHours(track, i) * share)
  );
}

/** When `wanted` is done, counted from the first reading. */
export function timeWhen(track: Track, wanted: number, expected: number): number {
  const last = track.times.length - 1;
  const first = at(track.times, 0);
  if (wanted <= 0) return first + wanted / rateAt(track.curve, at(track.temperatures, 0)) / HOURS_PER_DAY;
  const i = lastUpTo(track.done, wanted);
  const left = wanted - at(track.done, i);
  if (i === last) return at(track.times, last) + left / rateAt(track.curve, expected) / HOURS_PER_DAY;
  return (
    at(track.times, i) +
    hoursToReach(
      piecesBetween(
        track.curve,
        at(track.temperatures, i),
        at(track.temperatures, i + 1),
        stepHours(track, i),
      ),
      left,
    ) /
      HOURS_PER_DAY
  );
}

/** First stray reading that a question over [from, to] would use, −1 for none. */
export function strayWithin(track: Track, from: number, to: number): number {
  const low = Math.max(0, readingBefore(track, from));
  const high = readingBefore(track, to);
  const reached =
    high >= 0 && at(track.times, high) === to ? high : Math.min(high + 1, track.times.length - 1);
  return track.strays.find((i) => i >= low && i <= reached) ?? -1;
}

/**
 * First silence longer than `longestHours` inside [from, to], as the index of the reading before it; −1 for
 * none.
 */
export function gapWithin(track: Track, from: number, to: number, longestHours: number): number {
  const { times } = track;
  if (track.widest <= longestHours * (1 + 1e-9)) return -1;
  for (let i = Math.max(0, readingBefore(track, from)); i + 1 < times.length && at(times, i) < to; i++)
    if ((at(times, i + 1) - at(times, i)) * HOURS_PER_DAY > longestHours * (1 + 1e-9)) return i;
  return -1;
}
