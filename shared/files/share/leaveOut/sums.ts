import type { Near } from '../../../base/near';

/**
 * Which sums over left-out cells may stay: those from which no combination of what stays gives a single one of
 * them, or two together. Sums are vectors over the cells they cover; a combination that covers one or two cells
 * alone would give them away (the differencing attack on statistical tables; Denning, Cryptography and Data
 * Security, 1982, chapter 6; from memory).
 */

export const FEWEST = 3;
const MOST_SUMS = 60;
const PRIME = 1_000_003;

const inverse = (x: number): number => {
  let [a, b, u, v] = [x, PRIME, 1, 0];
  while (a > 1) {
    const q = Math.floor(a / b);
    [a, b] = [b, a % b];
    [u, v] = [v, u - q * v];
  }
  return ((u % PRIME) + PRIME) % PRIME;
};

/** Rows reduced as they come, modulo a prime. */
class RowSpace {
  private readonly rows: { readonly pivot: number; readonly row: Int32Array }[] = [];

  private reduced(vector: readonly number[]): Int32Array {
    const left = Int32Array.from(vector);
    for (const { pivot, row } of this.rows) {
      const factor = left[pivot] ?? 0;
      if (factor === 0) continue;
      for (let i = 0; i < left.length; i++) {
        const value = ((left[i] ?? 0) - factor * (row[i] ?? 0)) % PRIME;
        left[i] = value < 0 ? value + PRIME : value;
      }
    }
    return left;
  }
  add(vector: readonly number[]): void {
    const left = this.reduced(vector);
    const pivot = left.findIndex((x) => x !== 0);
    if (pivot < 0) return;
    const scale = inverse(left[pivot] ?? 1);
    this.rows.push({ pivot, row: left.map((x) => (x * scale) % PRIME) });
  }
  holds(vector: readonly number[]): boolean {
    return this.reduced(vector).every((x) => x === 0);
  }
}

/** Cells that every sum covers together or not at all, with the sums that cover them. */
function classesOf(supports: readonly ReadonlySet<number>[]): { size: number; members: number[] }[] {
  const patterns = new Map<number, string>();
  for (const [i, support] of supports.entries())
    for (const cell of support) patterns.set(cell, `${patterns.get(cell) ?? ''},${i}`);
  const classes = new Map<string, { size: number; members: number[] }>();
  for (const pattern of patterns.values()) {
    const known = classes.get(pattern);
    if (known) known.size++;
    else classes.set(pattern, { size: 1, members: pattern.slice(1).split(',').map(Number) });
  }
  return [...classes.values()];
}

function isSafe(supports: readonly ReadonlySet<number>[]): boolean {
  const classes = classesOf(supports);
  const space = new RowSpace();
  for (const i of supports.keys()) space.add(classes.map(({ members }) => (members.includes(i) ? 1 : 0)));
  const small = classes.flatMap(({ size }, at) => (size < FEWEST ? [{ size, at }] : []));
  const unit = (...at: readonly number[]): number[] => classes.map((_, i) => (at.includes(i) ? 1 : 0));
  if (small.some(({ at }) => space.holds(unit(at)))) return false;
  const single = small.filter(({ size }) => size === 1);
  return !single.some((a, i) => single.slice(i + 1).some((b) => space.holds(unit(a.at, b.at))));
}

/** The sums let through so far. */
export class SafeSums {
  private readonly supports: ReadonlySet<number>[] = [];
  /** For each set of cells, the kinds of figures given of it. */
  private readonly kinds = new Map<string, Set<string>>();
  private readonly keys = new Map<ReadonlySet<number>, string>();

  private keyOf(support: ReadonlySet<number>): string {
    let key = this.keys.get(support);
    if (key === undefined) this.keys.set(support, (key = [...support].sort((a, b) => a - b).join()));
    return key;
  }

  /** May this sum stay too? When it may, it counts from now on. */
  admit(support: ReadonlySet<number>, kind: string): boolean {
    if (support.size < FEWEST) return false;
    const key = this.keyOf(support);
    const kinds = this.kinds.get(key);
    if (kinds) {
      if (kinds.has(kind)) return true;
      // As many figures as cells could be solved for the cells.
      if (kinds.size >= support.size - 2) return false;
      kinds.add(kind);
      return true;
    }
    if (this.supports.length >= MOST_SUMS || !isSafe([...this.supports, support])) return false;
    this.supports.push(support);
    this.kinds.set(key, new Set([kind]));
    return true;
  }
}

const run = (from: number, size: number): Set<number> =>
  new Set(Array.from({ length: size }, (_, i) => from + i));
/** Is the last of so many sums over cells of their own let through? */
const lastOf = (count: number): boolean => {
  const sums = new SafeSums();
  let last = false;
  for (let i = 0; i < count; i++) last = sums.admit(run(i * FEWEST, FEWEST), 'SUM');
  return last;
};
export const NEAR: readonly Near[] = [
  {
    number: 'cells a sum must cover',
    value: FEWEST,
    below: () => new SafeSums().admit(run(0, 2), 'SUM'),
    above: () => new SafeSums().admit(run(0, 3), 'SUM'),
    answers: [false, true],
  },
  {
    number: 'different sums that may stay',
    value: MOST_SUMS,
    below: () => lastOf(60),
    above: () => lastOf(61),
    answers: [true, false],
  },
];
