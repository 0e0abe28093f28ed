// Long: one search for what columns of numbers have to do with each other, before anything is known of them
/**
 * A relation found by trying: the result follows from the inputs in most rows.
 * product: result = factor × a × b; share of counts is one too. part: result = factor × a.
 * sum: result = Σ sign × input; with `isRunning` the result of the row above is one of the terms.
 * carry: the result of a row is the input of the row above.
 */
export interface Link {
  readonly kind: 'product' | 'part' | 'sum' | 'carry';
  readonly result: number;
  readonly inputs: readonly number[];
  readonly signs: readonly number[];
  readonly factor: number;
  readonly isRunning: boolean;
  readonly holds: number;
  readonly tried: number;
}

export type Numbers = ArrayLike<number>;
const at = (list: Numbers | undefined, i: number): number => list?.[i] ?? NaN;

const LEAST_ROWS = 4;
const SAMPLE = 40;
const LEAST_HOLDING = 0.66;

/** How nearly a typed number must follow: half a unit of its last written digit, or a part in two hundred. */
export function roundingOf(value: number): number {
  const text = String(Math.abs(value));
  const point = text.indexOf('.');
  return point < 0 ? 0.51 : 0.51 * 10 ** -(text.length - point - 1);
}
/** A number that ends in zeros may have been rounded to them. */
const zerosOf = (value: number): number => {
  if (!Number.isInteger(value) || value === 0) return 0;
  let step = 1;
  while (value % (step * 10) === 0 && step < 1e6) step *= 10;
  return step > 1 ? 0.51 * step : 0;
};

export const near = (seen: number, expected: number, slack = 0.006): boolean =>
  Math.abs(seen - expected) <=
  Math.max(slack * Math.abs(expected), roundingOf(seen), Math.min(zerosOf(seen), 0.03 * Math.abs(expected)));

/** Rows spread over the table, those with most numbers first. */
function sampleRows(columns: readonly Numbers[], length: number): number[] {
  const step = Math.max(1, Math.floor(length / SAMPLE));
  const rows: number[] = [];
  for (let i = 0; i < length; i += step) if (columns.some((list) => !Number.isNaN(at(list, i)))) rows.push(i);
  return rows;
}

const median = (list: number[]): number => list.sort((a, b) => a - b)[list.length >> 1] ?? NaN;

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

/** One factor that turns the made numbers into the seen ones in most rows. */
function fitFactor(seen: readonly number[], made: readonly number[]): Fit | undefined {
  const ratios: number[] = [];
  for (let i = 0; i < seen.length; i++) {
    const [s, m] = [seen[i] ?? NaN, made[i] ?? NaN];
    if (s > 0 && m > 0) ratios.push(s / m);
  }
  if (ratios.length < LEAST_ROWS) return undefined;
  const middle = median([...ratios]);
  const factor = niceFactor(middle) ?? middle;
  let [holds, tried] = [0, 0];
  for (let i = 0; i < seen.length; i++) {
    const [s, m] = [seen[i] ?? NaN, made[i] ?? NaN];
    if (Number.isNaN(s) || Number.isNaN(m)) continue;
    tried++;
    if (near(s, factor * m)) holds++;
  }
  return { factor, holds, tried };
}

const varies = (list: readonly number[]): boolean => {
  const kept = list.filter((x) => !Number.isNaN(x));
  const least = Math.min(...kept);
  return new Set(kept).size >= 3 && Math.max(...kept) > 1.03 * least;
};

// eslint-disable-next-line complexity -- guards against holes in typed lists count as branches
function products(sampled: readonly (readonly number[])[], usable: readonly number[]): Link[] {
  const links: Link[] = [];
  for (const a of usable)
    for (const b of usable) {
      if (b <= a) continue;
      const [la, lb] = [sampled[a] ?? [], sampled[b] ?? []];
      const made = la.map((x, i) => x * (lb[i] ?? NaN));
      for (const result of usable) {
        if (result === a || result === b) continue;
        const seen = sampled[result] ?? [];
        const fit = fitFactor(seen, made);
        if (!fit || fit.tried < LEAST_ROWS || fit.holds < LEAST_HOLDING * fit.tried) continue;
        const isNice = niceFactor(fit.factor) !== undefined;
        if (!isNice && (fit.tried < 6 || fit.holds < 0.8 * fit.tried)) continue;
        links.push({ kind: 'product', result, inputs: [a, b], signs: [1, 1], isRunning: false, ...fit });
      }
    }
  return links;
}

function parts(sampled: readonly (readonly number[])[], usable: readonly number[]): Link[] {
  const links: Link[] = [];
  for (const a of usable)
    for (const result of usable) {
      if (a === result) continue;
      const [made, seen] = [sampled[a] ?? [], sampled[result] ?? []];
      const fit = fitFactor(seen, made);
      if (!fit || fit.tried < 6 || fit.holds < 0.8 * fit.tried || Math.abs(fit.factor - 1) < 1e-9) continue;
      links.push({ kind: 'part', result, inputs: [a], signs: [1], isRunning: false, ...fit });
    }
  return links;
}

/** Rows of one sum: do the signed terms give the result? */
// eslint-disable-next-line complexity -- guards against holes in typed lists count as branches
function sumFit(
  sampled: readonly (readonly number[])[],
  result: number,
  terms: readonly (readonly [number, number])[],
  before: readonly number[] | undefined,
  enough: number,
): { readonly holds: number; readonly tried: number } {
  const seen = sampled[result] ?? [];
  let [holds, tried, misses] = [0, 0, 0];
  for (let i = 0; i < seen.length; i++) {
    const s = seen[i] ?? NaN;
    if (Number.isNaN(s)) continue;
    let made = 0;
    let said = 0;
    if (before) {
      const b = before[i] ?? NaN;
      if (Number.isNaN(b)) continue;
      made = b;
    }
    for (const [column, sign] of terms) {
      const x = sampled[column]?.[i] ?? NaN;
      if (Number.isNaN(x)) continue;
      said++;
      made += sign * x;
    }
    if (said === 0) continue;
    tried++;
    if (near(s, made, 1e-4)) holds++;
    else if (++misses > enough) break;
  }
  return { holds, tried };
}

const MOST_TERMS = 7;
const digits = (n: number, length: number): number[] => {
  const list: number[] = [];
  for (let rest = n; list.length < length; rest = Math.floor(rest / 3)) list.push((rest % 3) - 1);
  return list;
};

/** Signed sums of the columns next to the result, all combinations of so few. */
function bestSum(
  sampled: readonly (readonly number[])[],
  result: number,
  near7: readonly number[],
  before: readonly number[] | undefined,
): Link | undefined {
  let best: Link | undefined;
  let bestWorth = 0;
  const rows = (sampled[result] ?? []).filter((x) => !Number.isNaN(x)).length;
  const allowed = Math.floor((1 - LEAST_HOLDING) * rows);
  for (let n = 0; n < 3 ** near7.length; n++) {
    const signs = digits(n, near7.length);
    const terms = near7.flatMap((column, i) => (signs[i] ? [[column, signs[i] ?? 0] as const] : []));
    const size = terms.length;
    if (size < (before ? 1 : 2) || !terms.some(([, sign]) => sign > 0) === (before === undefined)) continue;
    const { holds, tried } = sumFit(sampled, result, terms, before, allowed);
    if (tried < LEAST_ROWS || holds < LEAST_HOLDING * tried) continue;
    const worth = holds - 0.4 * size;
    if (worth <= bestWorth) continue;
    bestWorth = worth;
    best = {
      kind: 'sum',
      result,
      inputs: terms.map(([column]) => column),
      signs: terms.map(([, sign]) => sign),
      factor: 1,
      isRunning: before !== undefined,
      holds,
      tried,
    };
  }
  return best;
}

/** A total over a block of neighbouring columns, right before or right after it. */
function blockSum(
  sampled: readonly (readonly number[])[],
  usable: readonly number[],
  result: number,
): Link | undefined {
  const place = usable.indexOf(result);
  const rows = (sampled[result] ?? []).filter((x) => !Number.isNaN(x)).length;
  const allowed = Math.floor((1 - LEAST_HOLDING) * rows);
  for (const step of [-1, 1])
    for (let size = Math.min(60, usable.length - 1); size >= 2; size--) {
      const block = Array.from({ length: size }, (_, i) => usable[place + step * (i + 1)]);
      if (block.some((one) => one === undefined)) continue;
      const terms = (block as number[]).map((column) => [column, 1] as const);
      const { holds, tried } = sumFit(sampled, result, terms, undefined, allowed);
      if (tried >= LEAST_ROWS && holds >= LEAST_HOLDING * tried)
        return {
          kind: 'sum',
          result,
          inputs: terms.map(([column]) => column),
          signs: terms.map(() => 1),
          factor: 1,
          isRunning: false,
          holds,
          tried,
        };
    }
  return undefined;
}

function sums(
  columns: readonly Numbers[],
  sampled: readonly (readonly number[])[],
  usable: readonly number[],
  /** Columns with a few numbers only: they may be terms of a sum. */
  rare: readonly number[],
  first: number,
): Link[] {
  const head = Math.min(SAMPLE, columns[usable[0] ?? 0]?.length ?? 0);
  // Running sums need rows that follow each other.
  const inOrder = columns.map((list) => Array.from({ length: head }, (_, i) => at(list, i + first)));
  return usable.flatMap((result): Link[] => {
    const around = [...usable, ...rare]
      .filter((column) => column !== result)
      .sort((a, b) => Math.abs(a - result + 0.1) - Math.abs(b - result + 0.1))
      .slice(0, MOST_TERMS);
    const plain =
      bestSum(sampled, result, around, undefined) ??
      (usable.length > MOST_TERMS ? blockSum(sampled, usable, result) : undefined);
    const before = [NaN, ...(inOrder[result] ?? []).slice(0, -1)];
    const running = bestSum(inOrder, result, around.slice(0, 4), before);
    return [plain, running].filter((one) => one !== undefined);
  });
}

function carries(columns: readonly Numbers[], usable: readonly number[], length: number): Link[] {
  const links: Link[] = [];
  for (const result of usable)
    for (const from of usable) {
      if (result === from) continue;
      let [holds, tried] = [0, 0];
      for (let i = 1; i < Math.min(length, SAMPLE); i++) {
        const [now, before] = [at(columns[result], i), at(columns[from], i - 1)];
        if (Number.isNaN(now) || Number.isNaN(before)) continue;
        tried++;
        if (now === before) holds++;
      }
      if (
        tried < LEAST_ROWS ||
        holds < LEAST_HOLDING * tried ||
        !varies(Array.from(columns[result] ?? []).slice(0, 200))
      )
        continue;
      if (isSame(columns[result], columns[from], length)) continue;
      links.push({
        kind: 'carry',
        result,
        inputs: [from],
        signs: [1],
        factor: 1,
        isRunning: true,
        holds,
        tried,
      });
    }
  return links;
}
const isSame = (a: Numbers | undefined, b: Numbers | undefined, length: number): boolean => {
  let same = 0;
  for (let i = 0; i < Math.min(length, SAMPLE); i++) if (at(a, i) === at(b, i)) same++;
  return same > 0.8 * Math.min(length, SAMPLE);
};

const MOST_COLUMNS = 26;

/** Everything found by trying; of links to one result the tightest first. `columns` hold NaN where nothing is said. */
export function findLinks(columns: readonly Numbers[], length: number): Link[] {
  if (length < LEAST_ROWS) return [];
  const rows = sampleRows(columns, length);
  const sampled = columns.map((list) => rows.map((i) => at(list, i)));
  const usable = sampled
    .map((list, i) => ({ i, n: list.filter((x) => !Number.isNaN(x)).length, list }))
    .filter(({ n, list }) => n >= LEAST_ROWS && list.some((x) => x !== 0 && !Number.isNaN(x)))
    .map(({ i }) => i);
  const rare = sampled.flatMap((list, i) => (!usable.includes(i) && list.some((x) => x > 0) ? [i] : []));
  const changing = usable.filter((i) => varies(sampled[i] ?? []));
  const few = changing.slice(0, MOST_COLUMNS);
  return [
    ...products(sampled, few),
    ...sums(columns, sampled, usable.slice(0, 80), rare, 0),
    ...carries(columns, few, length),
    ...parts(sampled, few),
  ].sort((a, b) => b.holds / b.tried - a.holds / a.tried);
}
