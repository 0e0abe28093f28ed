import type { Link } from './links';
import type { Numbers, Sampled } from './sampled';
import { at, isNear, LEAST_HOLDING, LEAST_ROWS, SAMPLE, sampledFrom } from './sampled';

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
const LEAST_MOVES = 2;
/** Digits of a number to the base of three: 0 leaves a term out, 1 adds it, 2 takes it away. */
const SIGNS = [0, 1, -1] as const;

/** Signed sums of the columns next to the result, all combinations of so few. */
class SumSearch {
  private best: Link | undefined;
  private bestWorth = 0;
  private readonly made: Float64Array;
  /** Of each term as it is tried. */
  private readonly signs: number[] = [];
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
    this.from(0, 0, 0, 0);
    return this.best;
  }

  /** Sets the sign of one term after the other; the sum is kept up to date on the way. */
  private from(term: number, bits: number, plus: number, minus: number): void {
    if (term === this.terms.columns.length) {
      this.look(bits, plus, minus);
      return;
    }
    const values = this.terms.values[term] ?? this.made;
    for (const sign of SIGNS) {
      this.signs[term] = sign;
      if (sign === 0) {
        this.from(term + 1, bits, plus, minus);
        continue;
      }
      this.add(values, sign);
      this.from(term + 1, bits | (1 << term), plus + (sign === 1 ? 1 : 0), minus + (sign === 1 ? 0 : 1));
      this.add(values, -sign);
    }
  }
  private add(values: Float64Array, sign: number): void {
    const { made } = this;
    for (let i = 0; i < made.length; i++) made[i] = (made[i] ?? 0) + sign * (values[i] ?? 0);
  }

  /** A sum that goes on by nothing in nearly every line says nothing of a column that hardly changes. */
  private moves(): boolean {
    const { before, made } = this;
    return (
      before === undefined ||
      made.filter((x, i) => Math.abs(x - (before[i] ?? NaN)) > 1e-9).length >= LEAST_MOVES
    );
  }

  private look(bits: number, plus: number, minus: number): void {
    const size = plus + minus;
    if (size < (this.before ? 1 : 2) || (this.before === undefined && plus === 0)) return;
    const found = holding(this.seen, this.made, this.terms.said, bits, this.allowed);
    const worth = found ? found.holds - 0.4 * size : 0;
    if (!found || worth <= this.bestWorth || !this.moves()) return;
    this.bestWorth = worth;
    const used = this.terms.columns.map((column, i) => [column, this.signs[i] ?? 0] as const);
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
  return filled >= 0.7 * said && !isCounted(before);
}
/** 1, 2, 3 down the lines: numbers of lines add nothing up. */
export function isCounted(list: Numbers): boolean {
  let [steps, ones, last] = [0, 0, NaN];
  for (let i = 0; i < list.length; i++) {
    const x = at(list, i);
    if (Number.isNaN(x)) continue;
    if (!Number.isNaN(last)) steps++;
    if (Math.abs(x - last - 1) < 1e-9) ones++;
    last = x;
  }
  return steps >= 3 && ones >= 0.85 * steps;
}

const middleOf = ({ seen }: Sampled): number => {
  const kept = Array.from(seen.filter((x) => x > 0)).sort((a, b) => a - b);
  return kept[kept.length >> 1] ?? NaN;
};
/** What is left of fish lies near the fish there were, however many columns stand between. */
function withNearest(
  around: number[],
  usable: readonly number[],
  result: number,
  sampled: readonly Sampled[],
): void {
  if (usable.length <= MOST_TERMS + 1) return;
  const own = middleOf(
    sampled[result] ?? {
      seen: new Float64Array(0),
      rounding: new Float64Array(0),
      zeros: new Float64Array(0),
      n: 0,
    },
  );
  let best: { readonly column: number; readonly off: number } | undefined;
  for (const column of usable) {
    const one = sampled[column];
    if (!one || column === result) continue;
    const off = Math.abs(Math.log(middleOf(one) / own));
    if (off < (best?.off ?? 0.7)) best = { column, off };
  }
  if (best && !around.includes(best.column)) around.splice(MOST_TERMS - 1, 1, best.column);
}

export function sums(
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
    withNearest(around, [...usable, ...rare], result, sampled);
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
