import type { Link } from './links';
import type { Sampled } from './sampled';
import { at, isNear, LEAST_HOLDING, LEAST_ROWS, SAMPLE } from './sampled';

const NICE = [
  1,
  10,
  100,
  1000,
  1e4,
  1e5,
  1e6,
  0.1,
  0.01,
  0.001,
  1e-4,
  1e-5,
  1e-6,
  7,
  1 / 7,
  24,
  1 / 24,
  60,
  1 / 60,
];
const niceFactor = (value: number): number | undefined =>
  NICE.find((nice) => Math.abs(value / nice - 1) < 0.004);

interface Fit {
  readonly factor: number;
  readonly holds: number;
  readonly tried: number;
}

const RATIOS = new Float64Array(2 * SAMPLE + 2);
/** One factor that turns the made numbers into the seen ones in most rows. */
function fitFactor(result: Sampled, made: Float64Array): Fit | undefined {
  const { seen } = result;
  let n = 0;
  let tried = 0;
  for (let i = 0; i < seen.length; i++) {
    const ratio = at(seen, i) / at(made, i);
    if (ratio > 0 && n < RATIOS.length && at(made, i) > 0) RATIOS[n++] = ratio;
    if (!Number.isNaN(at(seen, i) + at(made, i))) tried++;
  }
  if (n < LEAST_ROWS) return undefined;
  const middle = at(RATIOS.subarray(0, n).sort(), n >> 1);
  const factor = niceFactor(middle) ?? middle;
  const holds = holdsWith(result, made, factor, tried - LEAST_HOLDING * tried);
  return holds < 0 ? undefined : { factor, holds, tried };
}
/** Rows in which the factor fits; -1 once there are more misses than `enough`. */
function holdsWith(result: Sampled, made: Float64Array, factor: number, enough: number): number {
  let [holds, misses] = [0, 0];
  for (let i = 0; i < made.length; i++) {
    if (Number.isNaN(at(result.seen, i) + at(made, i))) continue;
    if (isNear(result, i, factor * at(made, i), 0.006)) holds++;
    else if (++misses > enough) return -1;
  }
  return holds;
}

/** Fewer kinds of numbers are rates or a mark. */
const LEAST_KINDS = 3;
export const varies = (list: ArrayLike<number>): boolean => {
  let [least, most] = [Infinity, -Infinity];
  const kinds = new Set<number>();
  for (let i = 0; i < list.length; i++) {
    const x = list[i] ?? NaN;
    if (Number.isNaN(x)) continue;
    least = Math.min(least, x);
    most = Math.max(most, x);
    if (kinds.size < LEAST_KINDS) kinds.add(x);
  }
  return kinds.size >= LEAST_KINDS && most > 1.03 * least;
};

/** One or two numbers all the way down, no power of ten: a price, a ration, the litres of a vat. */
export const isRate = (list: ArrayLike<number>): boolean => {
  const kinds = new Set<number>();
  for (let i = 0; i < list.length && kinds.size < LEAST_KINDS; i++) {
    const x = list[i] ?? NaN;
    if (!Number.isNaN(x)) kinds.add(x);
  }
  return kinds.size < LEAST_KINDS && [...kinds].every((x) => x > 0 && !Number.isInteger(Math.log10(x)));
};

/** Lines from which on a factor of any size is no chance. */
const LEAST_SURE = 6;
const isExact = ({ factor, holds, tried }: Link): boolean =>
  NICE.includes(factor) && tried >= LEAST_SURE && holds >= 0.85 * tried;

/** `rates` hardly vary: they may be one of two factors, and only so that the product is exactly theirs. */
export function products(
  sampled: readonly Sampled[],
  usable: readonly number[],
  rates: readonly number[] = [],
): Link[] {
  const links: Link[] = [];
  const first = sampled[usable[0] ?? 0];
  if (!first) return [];
  const made = new Float64Array(first.seen.length);
  const times = (a: number, b: number): Link[] => {
    for (let i = 0; i < made.length; i++) made[i] = at(sampled[a]?.seen, i) * at(sampled[b]?.seen, i);
    return productsOf(sampled, usable, made, a < b ? [a, b] : [b, a]);
  };
  for (const a of usable) {
    for (const b of usable) if (b > a) links.push(...times(a, b));
    for (const b of rates) links.push(...times(a, b).filter(isExact));
  }
  return links;
}
function productsOf(
  sampled: readonly Sampled[],
  usable: readonly number[],
  made: Float64Array,
  inputs: readonly [number, number],
): Link[] {
  const links: Link[] = [];
  for (const result of usable) {
    const seen = sampled[result];
    if (inputs.includes(result) || !seen) continue;
    const fit = fitFactor(seen, made);
    if (fit && isProduct(fit) && (isNice(fit) || inputs.every((one) => isWide(sampled[one]))))
      links.push({ kind: 'product', result, inputs, signs: [1, 1], isRunning: false, ...fit });
  }
  return links;
}
const isNice = ({ factor }: Fit): boolean => niceFactor(factor) !== undefined;
const LEAST_WIDTH = 1.25;
/** Water that is a degree warmer or colder explains nothing beside a factor that may be anything. */
function isWide(one: Sampled | undefined): boolean {
  const sorted = Array.from(one?.seen.filter((x) => x > 0) ?? []).sort((a, b) => a - b);
  const tail = Math.floor(sorted.length / 10);
  return (sorted[sorted.length - 1 - tail] ?? NaN) >= LEAST_WIDTH * (sorted[tail] ?? NaN);
}
function isProduct({ factor, holds, tried }: Fit): boolean {
  if (tried < LEAST_ROWS || holds < LEAST_HOLDING * tried) return false;
  return niceFactor(factor) !== undefined || isSure({ holds, tried });
}
const isSure = ({ holds, tried }: Pick<Fit, 'holds' | 'tried'>): boolean =>
  tried >= LEAST_SURE && holds >= 0.8 * tried;

export function parts(sampled: readonly Sampled[], usable: readonly number[]): Link[] {
  const links: Link[] = [];
  for (const a of usable)
    for (const result of usable) {
      const [made, seen] = [sampled[a], sampled[result]];
      if (a === result || !made || !seen) continue;
      const fit = fitFactor(seen, made.seen);
      if (!fit || !isSure(fit) || Math.abs(fit.factor - 1) < 1e-9) continue;
      links.push({ kind: 'part', result, inputs: [a], signs: [1], isRunning: false, ...fit });
    }
  return links;
}
