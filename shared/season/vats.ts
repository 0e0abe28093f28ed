import type { ProblemVat } from './problem';

/** A vat taken from one time to another by a run; cleaning follows. */
export interface Stay {
  readonly from: number;
  readonly to: number;
  readonly run: number;
}

/** Stays of each vat, ascending; they never overlap, so ends ascend too. */
export type Occupancy = Stay[][];

/** First stay that ends after `from`, cleaning included. */
function firstAfter(stays: readonly Stay[], from: number, cleaning: number): number {
  let low = 0;
  let high = stays.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((stays[middle]?.to ?? Infinity) + cleaning > from) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** A little over a millionth of a day: ends that meet exactly do not clash. */
const SLACK = 1e-6;
/** Stages of one run follow each other in a vat without cleaning between. */
export function isFree(
  stays: readonly Stay[],
  from: number,
  to: number,
  run: number,
  cleaning: number,
): boolean {
  let i = firstAfter(stays, from + SLACK, 0);
  const before = stays[i - 1];
  if (before && before.run !== run && before.to + cleaning > from + SLACK) return false;
  for (; i < stays.length; i++) {
    const stay = stays[i];
    if (!stay) break;
    const gap = stay.run === run ? 0 : cleaning;
    if (stay.from >= to + gap - SLACK) return true;
    if (stay.to > from + SLACK) return false;
  }
  return true;
}

export function addStay(stays: Stay[], stay: Stay): void {
  let i = stays.length;
  while (i > 0 && (stays[i - 1]?.from ?? -Infinity) > stay.from) i--;
  stays.splice(i, 0, stay);
}
export const removeRun = (occupancy: Occupancy, run: number): void => {
  for (const stays of occupancy)
    for (let i = stays.length - 1; i >= 0; i--) if (stays[i]?.run === run) stays.splice(i, 1);
};

const ENOUGH = 1e-9;
/** Up to this many free vats every combination is weighed. */
const ALL_COMBINATIONS = 9;

/**
 * Vats that together hold the litres: with few free ones the least water that suffices (fewest vats, then
 * those that can do least else); with many the largest first, then the last one exchanged for the smallest
 * that still does. `free` are places in `vats`.
 */
export function chooseVats(
  vats: readonly ProblemVat[],
  free: readonly number[],
  litres: number,
): number[] | undefined {
  const size = (i: number): number => vats[i]?.litres ?? 0;
  const total = free.reduce((sum, i) => sum + size(i), 0);
  if (total < litres * (1 - ENOUGH)) return undefined;
  return free.length <= ALL_COMBINATIONS ? leastWater(vats, free, litres) : largestFirst(size, free, litres);
}

const bitsOf = (n: number): number => (n & 1) + ((n >> 1) & 1) + ((n >> 2) & 1);
function leastWater(vats: readonly ProblemVat[], free: readonly number[], litres: number): number[] {
  let best = 0;
  let bestCost = Infinity;
  for (let set = 1; set < 1 << free.length; set++) {
    let sum = 0;
    let extra = 0;
    for (let k = 0; k < free.length; k++) {
      if ((set & (1 << k)) === 0) continue;
      const vat = vats[free[k] ?? -1];
      sum += vat?.litres ?? 0;
      extra += 1 + bitsOf(vat?.holds ?? 0) / 4;
    }
    const cost = sum + extra * 1e-3;
    if (sum >= litres * (1 - ENOUGH) && cost < bestCost) {
      best = set;
      bestCost = cost;
    }
  }
  return free.filter((_, k) => (best & (1 << k)) !== 0);
}

function largestFirst(size: (i: number) => number, free: readonly number[], litres: number): number[] {
  const bySize = [...free].sort((a, b) => size(b) - size(a) || a - b);
  const taken: number[] = [];
  let left = litres;
  for (const [k, i] of bySize.entries()) {
    if (size(i) < left * (1 - ENOUGH)) {
      taken.push(i);
      left -= size(i);
      continue;
    }
    const rest = bySize.slice(k).filter((j) => size(j) >= left * (1 - ENOUGH));
    taken.push(rest.at(-1) ?? i);
    break;
  }
  return taken;
}
