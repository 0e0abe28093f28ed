import type { RecordTable, Spot } from '../../table';
import { formulaAt } from '../../read/sheetCells';
import { robustOfPicked } from '../figures/statistics';
import { plain } from '../show';

/** A cell of a table by its record and column. */
export interface At {
  readonly record: number;
  readonly column: number;
}
/** Something that does not fit, and the cells that could be the reason, each with how likely. */
export interface Suspicion {
  readonly rule: string;
  readonly weight: number;
  readonly cells: readonly (At & { readonly share: number; readonly meant?: number | undefined })[];
  /** What is wrong, without naming the cell to blame. */
  readonly sentence: string;
  readonly severity?: 'impossible' | 'unlikely' | 'look';
}
/** The likeliest single cell behind all that it explains. */
export interface Blamed {
  readonly at: At;
  readonly main: Suspicion;
  readonly also: readonly At[];
  /** Cells that could be to blame nearly as well. */
  readonly or: readonly At[];
  readonly meant: number | undefined;
}

const keyOf = ({ record, column }: At): string => `${record} ${column}`;
const LEAST_SHARE = 0.12;
const NEARLY = 0.75;

/**
 * One fault, one finding: takes the cell that explains most of what does not fit, then goes on with what is
 * left.
 */
export function blame(suspicions: readonly Suspicion[]): Blamed[] {
  const blamed: Blamed[] = [];
  const groups = grouped(suspicions);
  for (const group of groups) {
    let open = [...group];
    while (open.length > 0) {
      const scores = scored(open);
      const [best] = [...scores].sort((a, b) => b[1].score - a[1].score);
      if (!best) break;
      const [key, { at, score }] = best;
      const mine = open.filter(({ cells }) =>
        cells.some((cell) => keyOf(cell) === key && cell.share >= LEAST_SHARE),
      );
      const taken = mine.length > 0 ? mine : [open[0] as Suspicion];
      blamed.push(blamedBy(at, key, score, taken, scores));
      open = open.filter((one) => !taken.includes(one));
    }
  }
  return blamed;
}

function blamedBy(at: At, key: string, score: number, taken: readonly Suspicion[], scores: Scores): Blamed {
  const main = [...taken].sort((a, b) => b.weight - a.weight)[0] as Suspicion;
  const or = main.cells.filter(
    (cell) => keyOf(cell) !== key && (scores.get(keyOf(cell))?.score ?? 0) >= NEARLY * score,
  );
  const meant = taken
    .flatMap(({ cells }) => cells.filter((cell) => keyOf(cell) === key && cell.meant !== undefined))
    .map((cell) => cell.meant)[0];
  return { at, main, also: main.cells.filter((cell) => keyOf(cell) !== key), or, meant };
}

type Scores = ReadonlyMap<string, { readonly at: At; readonly score: number }>;
function scored(open: readonly Suspicion[]): Scores {
  const scores = new Map<string, { at: At; score: number }>();
  for (const { cells, weight } of open)
    for (const cell of cells) {
      const key = keyOf(cell);
      const before = scores.get(key)?.score ?? 0;
      scores.set(key, {
        at: { record: cell.record, column: cell.column },
        score: before + weight * cell.share,
      });
    }
  return scores;
}

/** Suspicions that share a cell belong together; apart they are judged apart. */
function grouped(suspicions: readonly Suspicion[]): Suspicion[][] {
  const home = new Map<string, Suspicion[]>();
  for (const one of suspicions) {
    const mine = new Set(one.cells.flatMap((cell) => home.get(keyOf(cell)) ?? []));
    const found = [...mine, one];
    const lists = new Set(
      one.cells.flatMap((cell) => (home.has(keyOf(cell)) ? [home.get(keyOf(cell))] : [])),
    );
    const joined = [...new Set([...lists].flatMap((list) => list ?? []).concat(found))];
    for (const member of joined) for (const cell of member.cells) home.set(keyOf(cell), joined);
  }
  return [...new Set(home.values())];
}

/** Middle and spread of the positive numbers of a column on a logarithmic scale. */
export interface OwnScale {
  readonly middle: number;
  readonly spread: number;
  readonly n: number;
}
const scales = new WeakMap<RecordTable, Map<number, OwnScale>>();
export function logScale(table: RecordTable, column: number): OwnScale {
  const cache = scales.get(table) ?? new Map<number, OwnScale>();
  scales.set(table, cache);
  let own = cache.get(column);
  if (!own) {
    const list = table.columns[column]?.plain ?? new Float64Array(0);
    own = robustOfPicked(list.length, (i) => {
      const value = list[i] ?? NaN;
      return value > 0 ? Math.log10(value) : NaN;
    });
    cache.set(column, own);
  }
  return own;
}

/** How far a number stands from the others of its column, in spreads of the column; 0 where nothing is known. */
export function oddness(table: RecordTable, { record, column }: At): number {
  const value = table.columns[column]?.plain[record] ?? NaN;
  const own = logScale(table, column);
  if (!(value > 0) || own.n < 5) return 0;
  return Math.abs(Math.log10(value) - own.middle) / Math.max(own.spread, 0.02);
}

/** Which records have a formula in the column; asked for once, where every line of it is looked at. */
export function formulasIn(table: RecordTable, column: number): (record: number) => boolean {
  const { rows } = table;
  if (rows) {
    const formulas = rows.sheet.columns[rows.columns[column]?.column ?? -1]?.formulas;
    if (!formulas || formulas.length === 0) return () => false;
    return (record) => formulas[rows.body[record] ?? -1] !== undefined;
  }
  return (record) => {
    const spot = table.columns[column]?.spot(record);
    return spot !== undefined && formulaAt(spot.sheet, spot.position, spot.column) !== undefined;
  };
}
/** A formula is never the typing error itself. */
export const isComputed = (table: RecordTable, { record, column }: At): boolean =>
  formulasIn(table, column)(record);

export const spotOf = (table: RecordTable, at: At): Spot | undefined =>
  table.columns[at.column]?.spot(at.record);

const digitsOf = (value: number): string => String(Number(Math.abs(value).toPrecision(9))).replace('.', '');
/** Is one number the other with a slip of the hand: zeros, mark, two digits turned, one digit wrong, a sign? */
export function isSlip(seen: number, meant: number): boolean {
  if (!Number.isFinite(seen) || !Number.isFinite(meant) || seen === meant || meant === 0) return false;
  return (
    Math.abs(seen + meant) < 1e-9 * Math.abs(meant) ||
    isPowerApart(seen, meant) ||
    isDigitApart(digitsOf(seen), digitsOf(meant))
  );
}
const MOST_NOUGHTS = 3;
function isPowerApart(seen: number, meant: number): boolean {
  const power = Math.log10(Math.abs(seen / meant));
  const noughts = Math.abs(Math.round(power));
  return Math.abs(power - Math.round(power)) < 0.004 && noughts !== 0 && noughts <= MOST_NOUGHTS;
}
/** One digit another, or two turned round. */
function isDigitApart(a: string, b: string): boolean {
  if (a.length !== b.length || a.length > 9) return false;
  const apart = [...a].flatMap((digit, i) => (digit === b[i] ? [] : [i]));
  if (apart.length === 1) return a.length > 1;
  const [i = 0, j = 0] = apart;
  return apart.length === 2 && a[i] === b[j] && a[j] === b[i];
}

/** A number of a column as a sentence shows it: as it stands in the cell. */
export const shownAt = (table: RecordTable, at: At): string => {
  const value = table.columns[at.column]?.plain[at.record] ?? NaN;
  return plain(value, 9);
};
export const headingAt = (table: RecordTable, column: number): string =>
  table.columns[column]?.header || table.mapping[column]?.column || '';
