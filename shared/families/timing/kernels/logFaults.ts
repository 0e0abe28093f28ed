import { celsiusFromFahrenheit, HOURS_PER_DAY } from '../../../units/convert';

/** What can be wrong with a kept temperature log, as facts; the sentences are made elsewhere. */
export type LogFault =
  | { readonly kind: 'order' | 'midnight' | 'repeat'; readonly index: number }
  | { readonly kind: 'gap'; readonly index: number; readonly hours: number }
  | { readonly kind: 'jump'; readonly index: number; readonly degrees: number; readonly minutes: number }
  | { readonly kind: 'clock' | 'notATime' | 'notANumber' | 'noReading' | 'zero'; readonly index: number }
  | { readonly kind: 'fahrenheit'; readonly index: number; readonly celsius: number }
  | { readonly kind: 'impossible'; readonly index: number };

/** Readings of water that fish live in. */
export const COLDEST = 0;
export const WARMEST = 45;
/**
 * Water in a tank does not change faster; a probe lifted out of it does. °C per hour, common practice, no
 * source.
 */
const FASTEST_CHANGE = 4;

/** First fault of time order, undefined when times ascend. */
export function orderFault(
  times: readonly number[],
): Extract<LogFault, { kind: 'order' | 'midnight' | 'repeat' }> | undefined {
  for (let i = 1; i < times.length; i++) {
    const step = (times[i] ?? NaN) - (times[i - 1] ?? NaN);
    if (step > 0) continue;
    // A step back of less than a day is what is left when the date is not moved on after midnight.
    return { kind: step === 0 ? 'repeat' : step > -1 ? 'midnight' : 'order', index: i };
  }
  return undefined;
}

const timeFault = (
  time: number | undefined,
  before: number | undefined,
  index: number,
): LogFault | undefined => {
  if (time === undefined || !Number.isFinite(time)) return { kind: 'notATime', index };
  if (time < 1) return { kind: 'clock', index };
  const order = before === undefined ? undefined : orderFault([before, time]);
  return order && { ...order, index };
};

const readingFault = (reading: number | undefined, index: number): LogFault | undefined => {
  if (reading === undefined) return { kind: 'noReading', index };
  if (!Number.isFinite(reading)) return { kind: 'notANumber', index };
  if (reading === 0) return { kind: 'zero', index };
  if (reading >= COLDEST && reading <= WARMEST) return undefined;
  const celsius = celsiusFromFahrenheit(reading);
  return reading > WARMEST && celsius <= WARMEST
    ? { kind: 'fahrenheit', index, celsius }
    : { kind: 'impossible', index };
};

interface Reading {
  readonly time: number;
  readonly value: number;
}

/** A silence or a leap between two good readings. */
function stepFaults(before: Reading, now: Reading, index: number, longestHours: number): LogFault[] {
  const step = (now.time - before.time) * HOURS_PER_DAY;
  const degrees = now.value - before.value;
  return [
    ...(step > longestHours * (1 + 1e-9) ? [{ kind: 'gap', index, hours: step } as const] : []),
    ...(step <= 2 && Math.abs(degrees) > FASTEST_CHANGE * Math.max(step, 0.5)
      ? [{ kind: 'jump', index, degrees, minutes: step * 60 } as const]
      : []),
  ];
}

/** Every fault of a log. undefined is a blank cell, NaN a cell that holds no number. */
export function logFaults(
  times: readonly (number | undefined)[],
  readings: readonly (number | undefined)[],
  longestHours: number,
): LogFault[] {
  const faults: LogFault[] = [];
  let lastTime: number | undefined;
  let last: Reading | undefined;
  for (const [index, time] of times.entries()) {
    const value = readings[index];
    const wrongTime = timeFault(time, lastTime, index);
    const wrongReading = readingFault(value, index);
    faults.push(...[wrongTime, wrongReading].filter((fault) => fault !== undefined));
    if (wrongTime || time === undefined) continue;
    lastTime = time;
    if (wrongReading || value === undefined) continue;
    const now = { time, value };
    if (last) faults.push(...stepFaults(last, now, index, longestHours));
    last = now;
  }
  return faults;
}
