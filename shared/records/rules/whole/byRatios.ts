// Long: one rule a ratio, all of one shape.
import type { RecordTable } from '../../table';
import { fieldSpec } from '../../fields';
import type { NumericField } from '../../fields';
import { at, near } from '../../meaning/sampled';
import { plain } from '../show';
import { boundsOf, robust, robustOfSome } from '../figures/statistics';
import type { At, Suspicion } from './suspect';
import { headingAt, isComputed, isSlip, logScale, oddness, shownAt } from './suspect';

/** Two numbers of a line whose ratio is a habit of the farm or a law of the fish. */
interface Pair {
  readonly over: NumericField;
  readonly under: NumericField;
  /** What no farm goes beyond, in the fields' own units: common practice and biology, wide on purpose. */
  readonly bounds?: readonly [number, number];
}
const PAIRS: readonly Pair[] = [
  { over: 'hormoneVolume', under: 'femaleWeight' },
  { over: 'doseFirst', under: 'femaleWeight' },
  { over: 'doseSecond', under: 'femaleWeight' },
  { over: 'doseSecond', under: 'doseFirst' },
  { over: 'eggWeight', under: 'femaleWeight', bounds: [3, 400] },
  { over: 'eggs', under: 'eggWeight', bounds: [250, 2500] },
  { over: 'eggs', under: 'eggVolume' },
  { over: 'eggs', under: 'femaleWeight' },
  { over: 'hatched', under: 'eggs', bounds: [0, 1.02] },
  { over: 'fry', under: 'hatched', bounds: [0, 1.02] },
  { over: 'fingerlings', under: 'fry', bounds: [0, 1.02] },
  { over: 'feed', under: 'biomass' },
  { over: 'amount', under: 'sold' },
  { over: 'materialDose', under: 'volume' },
  { over: 'treatAmount', under: 'volume' },
  { over: 'sampleWeight', under: 'sampleCount' },
  { over: 'biomass', under: 'fish' },
  { over: 'degreeHours', under: 'latency' },
  { over: 'femaleAfter', under: 'femaleWeight', bounds: [0.5, 1.02] },
  { over: 'temperatureHigh', under: 'temperatureLow' },
  { over: 'eggsDead', under: 'eggs', bounds: [0, 1.02] },
];

/** What a failed spawning leaves little of. */
const OUTCOMES: ReadonlySet<string> = new Set([
  'hatched',
  'fry',
  'fingerlings',
  'fertilised',
  'sampleGood',
  'fertilisedShare',
  'hatchShare',
  'survival',
  'alive',
  'stocked',
]);
const isOutcome = (table: RecordTable, column: number): boolean =>
  OUTCOMES.has(table.mapping[column]?.field ?? '');
const FAILED = 0.9;

const MOST_FOUND = 400;
const LEAST = 5;
const LEAST_SPREAD = 0.035;
/** Factor by which a ratio must be off before it is named, however alike the others are. */
const LEAST_OFF = Math.log10(1.6);
const RAW_LEAST_OFF = Math.log10(1.9);

interface Judged {
  readonly a: number;
  readonly b: number;
  readonly middle: number;
  readonly spread: number;
  readonly n: number;
}

const NONE = new Float64Array(0);
const MOST_ROWS = 1500;
const logRatio = (over: Float64Array, under: Float64Array, i: number): number => {
  const [x, y] = [over[i] ?? NaN, under[i] ?? NaN];
  return x > 0 && y > 0 ? Math.log10(x / y) : NaN;
};

function ratioOf(table: RecordTable, a: number, b: number): Judged | undefined {
  const [over, under] = [table.columns[a]?.plain, table.columns[b]?.plain];
  if (!over || !under) return undefined;
  const step = Math.max(1, Math.floor(over.length / MOST_ROWS));
  const some = new Float64Array(Math.ceil(over.length / step));
  for (let i = 0; i < some.length; i++) some[i] = logRatio(over, under, i * step);
  const own = robust(some);
  const [middle, spread, n] = [own.middle, own.spread, own.n * step];
  return n < LEAST ? undefined : { a, b, middle, spread: Math.max(spread, LEAST_SPREAD), n };
}

/** A spawning that failed is no fault of writing: only a whole power of ten stands out. */
const mayHaveFailed = (table: RecordTable, low: number, off: number): boolean =>
  isOutcome(table, low) && Math.abs(off) < FAILED;
function suspectsOf(table: RecordTable, judged: Judged, weight: number, leastOff: number): Suspicion[] {
  const { a, b, middle, spread, n } = judged;
  const limit = Math.max(leastOff, (4.5 + 14 / n) * spread);
  const found: Suspicion[] = [];
  const [low, high] = boundsOf(middle, limit);
  const [over = NONE, under = NONE] = [table.columns[a]?.plain, table.columns[b]?.plain];
  for (let record = 0; record < table.length && found.length < MOST_FOUND; record++) {
    const ratio = at(over, record) / at(under, record);
    if (ratio > low && ratio < high) continue;
    const off = logRatio(over, under, record) - middle;
    if (!(Math.abs(off) > limit) || mayHaveFailed(table, off < 0 ? a : b, off)) continue;
    if (isExplained(table, a, b, record)) continue;
    found.push({
      rule: 'WHOLE.RATIO',
      weight,
      cells: sharesOf(table, { record, column: a }, { record, column: b }, 10 ** middle),
      sentence: sentence(table, judged, record, off),
    });
  }
  // More than one line in six: then the farm has no such habit.
  return found.length > Math.max(1, n / 6) ? [] : found;
}

/** A ration that was changed: what is out of proportion follows from a third number of the line, as it always does. */
const isExplained = (table: RecordTable, a: number, b: number, record: number): boolean =>
  table.links.some(
    ({ kind, result, inputs, factor, holds, tried }) =>
      kind === 'product' &&
      holds >= LEAST_TOLD * tried &&
      ((result === a && inputs.includes(b)) || (result === b && inputs.includes(a))) &&
      near(
        at(table.columns[result]?.plain, record),
        inputs.reduce((made, column) => made * at(table.columns[column]?.plain, record), factor),
        TOLD_SLACK,
      ),
  );
const [LEAST_TOLD, TOLD_SLACK] = [0.8, 0.01];

function sentence(table: RecordTable, { a, b, middle, n }: Judged, record: number, off: number): string {
  const [x, y] = [a, b].map((column) => table.columns[column]?.plain[record] ?? NaN);
  const times = 10 ** Math.abs(off);
  return `"${headingAt(table, a)}" ${plain(x ?? NaN, 9)} with "${headingAt(table, b)}" ${plain(y ?? NaN, 9)}: ${plain(times, 2)} times ${off > 0 ? 'more' : 'less'} of it than in the other ${n - 1} lines, whose middle is ${plain(10 ** middle, 3)} to one.`;
}

function sharesOf(table: RecordTable, over: At, under: At, ratio: number): Suspicion['cells'] {
  const value = (at: At): number => table.columns[at.column]?.plain[at.record] ?? NaN;
  const meant = [value(under) * ratio, value(over) / ratio];
  const weights = [over, under].map((at, i) => {
    const slip = isNearSlip(value(at), meant[i] ?? NaN) ? 2 : 1;
    return isComputed(table, at) ? 0.02 : (0.6 + Math.min(12, oddness(table, at))) * slip;
  });
  const sum = weights.reduce((x, y) => x + y, 0);
  return [over, under].map((at, i) => ({
    ...at,
    share: (weights[i] ?? 0) / sum,
    meant: slipTo(value(at), meant[i] ?? NaN),
  }));
}
const POWERS = [-3, -2, -1, 1, 2, 3] as const;
const isNearSlip = (seen: number, meant: number): boolean =>
  slipTo(seen, meant) !== undefined || isSlip(seen, meant);
/** The value one slip of a power of ten away, where it comes near what would fit. */
function slipTo(seen: number, meant: number): number | undefined {
  const power = POWERS.find((p) => Math.abs(Math.log10(seen / meant) - p) < 0.15);
  return power === undefined ? undefined : Number((seen / 10 ** power).toPrecision(6));
}

const columnOf = (table: RecordTable, field: NumericField): number =>
  table.mapping.findIndex((one) => one.field === field && !one.isRepeated && one.confidence >= 0.5);

/** Ratios that mean something. */
export function ownRatios(table: RecordTable): Suspicion[] {
  return PAIRS.flatMap(({ over, under }): Suspicion[] => {
    const [a, b] = [columnOf(table, over), columnOf(table, under)];
    if (a < 0 || b < 0) return [];
    const judged = ratioOf(table, a, b);
    return judged && judged.spread < 0.25 ? suspectsOf(table, judged, 1.3, LEAST_OFF) : [];
  });
}

/** What no farm and no fish goes beyond, whatever the others do. */
export function beyondNature(table: RecordTable): Suspicion[] {
  return PAIRS.flatMap((pair): Suspicion[] => {
    const { over, under, bounds } = pair;
    const [a, b] = [columnOf(table, over), columnOf(table, under)];
    const [x, y] = [table.numbers[over], table.numbers[under]];
    if (!bounds || a < 0 || b < 0 || !x || !y) return [];
    const { beyond, n } = outside(x, y, bounds);
    if (beyond.length === 0 || beyond.length > Math.max(1, 0.3 * n)) return [];
    const { middle } = robustOfSome(x.map((v, i) => v / at(y, i)));
    return beyond.map((record) =>
      unnatural(table, pair, { record, column: a }, { record, column: b }, middle),
    );
  });
}
/** Lines whose ratio no fish has, and in how many there is one. */
function outside(
  x: Float64Array,
  y: Float64Array,
  [low, high]: readonly [number, number],
): { readonly beyond: readonly number[]; readonly n: number } {
  const beyond: number[] = [];
  let n = 0;
  for (let record = 0; record < x.length && beyond.length < MOST_FOUND; record++) {
    const ratio = at(x, record) / at(y, record);
    if (!Number.isFinite(ratio)) continue;
    n++;
    if (ratio < low || ratio > high) beyond.push(record);
  }
  return { beyond, n };
}
function unnatural(table: RecordTable, { over, under }: Pair, a: At, b: At, middle: number): Suspicion {
  const said = (one: At): string => `"${headingAt(table, one.column)}" ${shownAt(table, one)}`;
  return {
    rule: 'WHOLE.NATURE',
    weight: 1.6,
    severity: 'impossible',
    cells: sharesOf(table, a, b, middle > 0 ? rawRatio(table, a.column, b.column, middle, a.record) : 1),
    sentence: `${said(a)} with ${said(b)}: that cannot be of one ${fieldSpec(over).noun} and ${fieldSpec(under).noun}.`,
  };
}
/** The middle ratio in the numbers as typed. */
const rawRatio = (table: RecordTable, a: number, b: number, middle: number, record: number): number => {
  const [over, under] = [table.mapping[a], table.mapping[b]];
  const raw = (table.columns[a]?.plain[record] ?? NaN) / (table.columns[b]?.plain[record] ?? NaN);
  const own =
    (table.numbers[over?.field as NumericField]?.[record] ?? NaN) /
    (table.numbers[under?.field as NumericField]?.[record] ?? NaN);
  return Number.isFinite(raw / own) ? middle * (raw / own) : middle;
};

/** Money is paid as people can. */
const LOOSE = new Set<string>([
  'paid',
  'due',
  'deposit',
  'dueRunning',
  'balance',
  'income',
  'expense',
  'dead',
  'sold',
  'deadRunning',
  'deadTotal',
  'days',
]);
const MOST = 16;
const LEAST_MOVING = 8;
/** Two columns that move together line by line, whatever they mean. */
export function twinColumns(table: RecordTable): Suspicion[] {
  const usable = table.columns
    .map((_, column) => column)
    .filter((column) => {
      const field = table.mapping[column]?.field;
      const isText = field !== undefined && fieldSpec(field).kind !== 'number';
      if (field && LOOSE.has(field)) return false;
      return !isText && !table.mapping[column]?.isRepeated && logScale(table, column).n >= LEAST_MOVING;
    })
    .slice(0, MOST);
  return usable.flatMap((a, i) =>
    usable.slice(i + 1).flatMap((b): Suspicion[] => {
      const judged = ratioOf(table, a, b);
      if (!judged || judged.n < LEAST_MOVING || judged.spread > 0.09) return [];
      const own = Math.min(logScale(table, a).spread, logScale(table, b).spread);
      return own > 1.6 * judged.spread ? suspectsOf(table, judged, 1, RAW_LEAST_OFF) : [];
    }),
  );
}
