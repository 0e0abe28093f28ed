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
  const size = Math.abs(value);
  if (Number.isInteger(size)) return 0.51;
  // Most are written with up to three decimals; the text of the number says it for the others.
  for (let [power, step] = [10, 0.1]; power <= 1000; power *= 10, step /= 10)
    if (Math.abs(size * power - Math.round(size * power)) < 1e-9 * power * Math.max(1, size))
      return 0.51 * step;
  const text = String(size);
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

/** The sampled numbers of a column, with how nearly each must be met. */
interface Sampled {
  readonly seen: Float64Array;
  readonly rounding: Float64Array;
  readonly zeros: Float64Array;
  readonly n: number;
}
function sampledFrom(seen: Float64Array): Sampled {
  return {
    seen,
    rounding: seen.map(roundingOf),
    zeros: seen.map(zerosOf),
    n: seen.reduce((n, x) => (Number.isNaN(x) ? n : n + 1), 0),
  };
}
const isNear = ({ seen, rounding, zeros }: Sampled, i: number, expected: number, slack: number): boolean => {
  const size = Math.abs(expected);
  const off = Math.abs((seen[i] ?? NaN) - expected);
  return off <= slack * size || off <= (rounding[i] ?? 0) || off <= Math.min(zeros[i] ?? 0, 0.03 * size);
};

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
    const [s, m] = [seen[i] ?? NaN, made[i] ?? NaN];
    if (s > 0 && m > 0 && n < RATIOS.length) RATIOS[n++] = s / m;
    if (!Number.isNaN(s) && !Number.isNaN(m)) tried++;
  }
  if (n < LEAST_ROWS) return undefined;
  const middle = RATIOS.subarray(0, n).sort()[n >> 1] ?? NaN;
  const factor = niceFactor(middle) ?? middle;
  const enough = tried - LEAST_HOLDING * tried;
  let holds = 0;
  let misses = 0;
  for (let i = 0; i < seen.length; i++) {
    const m = made[i] ?? NaN;
    if (Number.isNaN(seen[i] ?? NaN) || Number.isNaN(m)) continue;
    if (isNear(result, i, factor * m, 0.006)) holds++;
    else if (++misses > enough) return undefined;
  }
  return { factor, holds, tried };
}

const varies = (list: ArrayLike<number>): boolean => {
  let [least, most] = [Infinity, -Infinity];
  const kinds = new Set<number>();
  for (let i = 0; i < list.length; i++) {
    const x = list[i] ?? NaN;
    if (Number.isNaN(x)) continue;
    least = Math.min(least, x);
    most = Math.max(most, x);
    if (kinds.size < 3) kinds.add(x);
  }
  return kinds.size >= 3 && most > 1.03 * least;
};

function products(sampled: readonly Sampled[], usable: readonly number[]): Link[] {
  const links: Link[] = [];
  const made = new Float64Array(sampled[usable[0] ?? 0]?.seen.length ?? 0);
  for (const a of usable)
    for (const b of usable) {
      if (b <= a) continue;
      const [la, lb] = [sampled[a]?.seen, sampled[b]?.seen];
      for (let i = 0; i < made.length; i++) made[i] = (la?.[i] ?? NaN) * (lb?.[i] ?? NaN);
      for (const result of usable) {
        const seen = sampled[result];
        if (result === a || result === b || !seen) continue;
        const fit = fitFactor(seen, made);
        if (fit && isProduct(fit))
          links.push({ kind: 'product', result, inputs: [a, b], signs: [1, 1], isRunning: false, ...fit });
      }
    }
  return links;
}
function isProduct({ factor, holds, tried }: Fit): boolean {
  if (tried < LEAST_ROWS || holds < LEAST_HOLDING * tried) return false;
  return niceFactor(factor) !== undefined || (tried >= 6 && holds >= 0.8 * tried);
}

function parts(sampled: readonly Sampled[], usable: readonly number[]): Link[] {
  const links: Link[] = [];
  for (const a of usable)
    for (const result of usable) {
      const [made, seen] = [sampled[a], sampled[result]];
      if (a === result || !made || !seen) continue;
      const fit = fitFactor(seen, made.seen);
      if (!fit || fit.tried < 6 || fit.holds < 0.8 * fit.tried || Math.abs(fit.factor - 1) < 1e-9) continue;
      links.push({ kind: 'part', result, inputs: [a], signs: [1], isRunning: false, ...fit });
    }
  return links;
}

interface Terms {
  readonly columns: readonly number[];
  /** Numbers of each term, 0 where nothing is said. */
  readonly values: readonly Float64Array[];
  /** In each row, a bit for every term that says something. */
  readonly said: Uint8Array;
}
function termsOf(sampled: readonly Sampled[], columns: readonly number[], rows: number): Terms {
  const said = new Uint8Array(rows);
  const values = columns.map((column, bit) => {
    const { seen } = sampled[column] ?? { seen: new Float64Array(rows) };
    for (let i = 0; i < rows; i++) if (!Number.isNaN(seen[i] ?? NaN)) said[i] = (said[i] ?? 0) | (1 << bit);
    return seen.map((x) => (Number.isNaN(x) ? 0 : x));
  });
  return { columns, values, said };
}

interface Holding {
  readonly holds: number;
  readonly tried: number;
}
/** Rows in which the sum gives the result; `bits` are the terms of the sum. Gives up after `enough` misses. */
function holding(
  result: Sampled,
  made: Float64Array,
  said: Uint8Array,
  bits: number,
  enough: number,
): Holding | undefined {
  let [holds, tried] = [0, 0];
  for (let i = 0; i < made.length; i++) {
    const m = made[i] ?? NaN;
    if (((said[i] ?? 0) & bits) === 0 || Number.isNaN(result.seen[i] ?? NaN) || Number.isNaN(m)) continue;
    tried++;
    if (isNear(result, i, m, 1e-4)) holds++;
    else if (tried - holds > enough) return undefined;
  }
  return tried < LEAST_ROWS || holds < LEAST_HOLDING * tried ? undefined : { holds, tried };
}

const MOST_TERMS = 7;
/** Digits of a number to the base of three: 0 leaves a term out, 1 adds it, 2 takes it away. */
const SIGNS = [0, 1, -1] as const;

/** Signed sums of the columns next to the result, all combinations of so few. */
class SumSearch {
  private best: Link | undefined;
  private bestWorth = 0;
  private readonly made: Float64Array;
  private readonly allowed: number;

  constructor(
    private readonly result: number,
    private readonly seen: Sampled,
    private readonly terms: Terms,
    private readonly before: Float64Array | undefined,
  ) {
    this.made = before ? before.slice() : new Float64Array(seen.seen.length);
    this.allowed = Math.floor((1 - LEAST_HOLDING) * seen.n);
  }

  run(): Link | undefined {
    this.from(0, 0, 0, 0, []);
    return this.best;
  }

  /** Sets the sign of one term after the other; the sum is kept up to date on the way. */
  private from(term: number, bits: number, plus: number, minus: number, signs: readonly number[]): void {
    if (term === this.terms.columns.length) {
      this.look(bits, plus, minus, signs);
      return;
    }
    const values = this.terms.values[term] ?? this.made;
    for (const sign of SIGNS) {
      if (sign === 0) {
        this.from(term + 1, bits, plus, minus, [...signs, 0]);
        continue;
      }
      this.add(values, sign);
      this.from(term + 1, bits | (1 << term), plus + (sign === 1 ? 1 : 0), minus + (sign === 1 ? 0 : 1), [
        ...signs,
        sign,
      ]);
      this.add(values, -sign);
    }
  }
  private add(values: Float64Array, sign: number): void {
    const { made } = this;
    for (let i = 0; i < made.length; i++) made[i] = (made[i] ?? 0) + sign * (values[i] ?? 0);
  }

  private look(bits: number, plus: number, minus: number, signs: readonly number[]): void {
    const size = plus + minus;
    if (size < (this.before ? 1 : 2) || (this.before === undefined && plus === 0)) return;
    const found = holding(this.seen, this.made, this.terms.said, bits, this.allowed);
    const worth = found ? found.holds - 0.4 * size : 0;
    if (!found || worth <= this.bestWorth) return;
    this.bestWorth = worth;
    const used = this.terms.columns.map((column, i) => [column, signs[i] ?? 0] as const);
    const kept = used.filter(([, sign]) => sign !== 0);
    this.best = {
      kind: 'sum',
      result: this.result,
      inputs: kept.map(([column]) => column),
      signs: kept.map(([, sign]) => sign),
      factor: 1,
      isRunning: this.before !== undefined,
      ...found,
    };
  }
}

/** A total over a block of neighbouring columns, right before or right after it. */
function blockSum(sampled: readonly Sampled[], usable: readonly number[], result: number): Link | undefined {
  const place = usable.indexOf(result);
  const seen = sampled[result];
  if (!seen) return undefined;
  const allowed = Math.floor((1 - LEAST_HOLDING) * seen.n);
  let best: Link | undefined;
  for (const step of [-1, 1]) {
    const made = new Float64Array(seen.seen.length);
    const said = new Uint8Array(made.length);
    const inputs: number[] = [];
    for (let size = 1; size <= Math.min(60, usable.length - 1); size++) {
      const column = usable[place + step * size];
      const term = column === undefined ? undefined : sampled[column];
      if (column === undefined || !term) break;
      inputs.push(column);
      for (let i = 0; i < made.length; i++) {
        const x = term.seen[i] ?? NaN;
        if (Number.isNaN(x)) continue;
        made[i] = (made[i] ?? 0) + x;
        said[i] = 1;
      }
      const found = size < 2 ? undefined : holding(seen, made, said, 1, allowed);
      if (!found) continue;
      best = {
        kind: 'sum',
        result,
        inputs: [...inputs],
        signs: inputs.map(() => 1),
        factor: 1,
        isRunning: false,
        ...found,
      };
    }
    if (best) return best;
  }
  return undefined;
}

/** A sum that goes on has something to go on from in most lines. */
function goesOn(before: Float64Array): boolean {
  let [said, filled] = [0, 0];
  for (const x of before) {
    if (Number.isNaN(x)) continue;
    said++;
    if (x !== 0) filled++;
  }
  return filled >= 0.7 * said;
}

function sums(
  columns: readonly Numbers[],
  sampled: readonly Sampled[],
  usable: readonly number[],
  /** Columns with a few numbers only: they may be terms of a sum. */
  rare: readonly number[],
): Link[] {
  const head = Math.min(SAMPLE, columns[usable[0] ?? 0]?.length ?? 0);
  // Running sums need rows that follow each other.
  const inOrder = columns.map((list) =>
    sampledFrom(Float64Array.from({ length: head }, (_, i) => at(list, i))),
  );
  return usable.flatMap((result): Link[] => {
    const around = [...usable, ...rare]
      .filter((column) => column !== result)
      .sort((a, b) => Math.abs(a - result + 0.1) - Math.abs(b - result + 0.1))
      .slice(0, MOST_TERMS);
    const [seen, next] = [sampled[result], inOrder[result]];
    if (!seen || !next) return [];
    const plain =
      new SumSearch(result, seen, termsOf(sampled, around, seen.seen.length), undefined).run() ??
      (usable.length > MOST_TERMS ? blockSum(sampled, usable, result) : undefined);
    const before = Float64Array.from([NaN, ...next.seen.slice(0, -1)]);
    const running = goesOn(before)
      ? new SumSearch(result, next, termsOf(inOrder, around.slice(0, 4), head), before).run()
      : undefined;
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
        !varies(Array.from({ length: Math.min(200, length) }, (_, i) => at(columns[result], i)))
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
  const sampled = columns.map((list) => sampledFrom(Float64Array.from(rows, (i) => at(list, i))));
  const usable = sampled.flatMap(({ n, seen }, i) =>
    n >= LEAST_ROWS && seen.some((x) => x !== 0 && !Number.isNaN(x)) ? [i] : [],
  );
  const isUsable = new Set(usable);
  const rare = sampled.flatMap(({ seen }, i) => (!isUsable.has(i) && seen.some((x) => x > 0) ? [i] : []));
  const few = usable.filter((i) => varies(sampled[i]?.seen ?? [])).slice(0, MOST_COLUMNS);
  return [
    ...products(sampled, few),
    ...sums(columns, sampled, usable.slice(0, 80), rare),
    ...carries(columns, few, length),
    ...parts(sampled, few),
  ].sort((a, b) => b.holds / b.tried - a.holds / a.tried);
}
