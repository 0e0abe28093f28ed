// Long: one rule with its sentences; it would not read better in pieces.
import type { NumericField } from '../../fields';
import { fieldSpec } from '../../fields';
import type { RecordTable } from '../../table';
import type { TableRule, TableVerdict } from '../rule';
import { capitalNoun, plain, shown, shownWorkedOut } from '../show';
import { robust } from '../figures/statistics';

/** Fewer own values than this say nothing about what is usual here. */
const LEAST = 10;
/** Deviations from the own middle; wider for few values, whose spread is itself uncertain. */
const FAR = 6;
const EXTRA_FOR_FEW = 30;

/** What a farm does alike from run to run; what grows along a table by nature is judged by other rules. */
const JUDGED: readonly NumericField[] = [
  'femaleWeight',
  'hormoneDose',
  'hormoneVolume',
  'temperature',
  'latency',
  'eggWeight',
  'eggsPerGram',
  'eggs',
  'eggYield',
  'fertilised',
  'fertilisedShare',
  'incubationTemperature',
  'incubationHours',
  'hatched',
  'hatchShare',
  'fry',
  'fingerlings',
  'survival',
  'growthRate',
  'ration',
  'conversion',
  'ph',
  'phAfter',
  'oxygen',
];
/** Judged for whole powers of ten only. */
const SCALED_TOO: readonly NumericField[] = [
  'startWeight',
  'endWeight',
  'weight',
  'feed',
  'stocked',
  'alive',
  'fish',
  'materialDose',
  'volume',
];
const isScaled = (name: NumericField): boolean => fieldSpec(name).isScaled ?? false;

const scaled = (values: Float64Array, isLog: boolean): Float64Array =>
  isLog ? values.map((x) => (x > 0 ? Math.log10(x) : NaN)) : values;
/** A spread of nothing would make any difference far: the last digit people write is taken as the least. */
const leastSpread = (name: NumericField, isLog: boolean): number =>
  isLog
    ? 0.012
    : fieldSpec(name).quantity.unit === 'share'
      ? 0.02
      : fieldSpec(name).quantity.unit === 'pH'
        ? 0.1
        : 0.4;

const OUTCOMES: ReadonlySet<NumericField> = new Set([
  'fertilised',
  'fertilisedShare',
  'hatched',
  'hatchShare',
  'fry',
  'fingerlings',
  'survival',
]);

interface Own {
  readonly middle: number;
  readonly spread: number;
  readonly n: number;
  readonly isLog: boolean;
  readonly values: Float64Array;
}
/** Two rules ask for the same figures. */
const known = new WeakMap<RecordTable, Map<NumericField, Own | undefined>>();
function ownOf(table: RecordTable, name: NumericField): Own | undefined {
  const cache = known.get(table) ?? new Map<NumericField, Own | undefined>();
  known.set(table, cache);
  if (!cache.has(name)) cache.set(name, freshOwn(table, name));
  return cache.get(name);
}

function freshOwn(table: RecordTable, name: NumericField): Own | undefined {
  const values = table.numbers[name];
  if (!values) return undefined;
  const isLog = isScaled(name);
  const all = scaled(values, isLog);
  const { middle, spread, n } = robust(all);
  return n < LEAST
    ? undefined
    : { middle, spread: Math.max(spread, leastSpread(name, isLog)), n, isLog, values: all };
}

export interface StandingTable {
  readonly off: number;
  readonly limit: number;
  readonly low: number;
  readonly high: number;
  readonly middle: number;
  readonly n: number;
}

/**
 * Where a value stands among others: robust deviations from their middle, on logarithms where all are above 0
 * and they spread by factors. NaN among them is left out.
 */
export function standingOf(
  value: number,
  others: readonly number[],
  isLog: boolean,
  least = 1e-9,
): StandingTable {
  const to = (x: number): number => (isLog ? Math.log10(x) : x);
  const { middle, spread, n } = robust(others.map(to));
  const width = Math.max(spread, isLog ? 0.012 : Math.max(least, Math.abs(middle) * 0.01));
  const limit = FAR + EXTRA_FOR_FEW / Math.max(n, 1);
  return {
    off: Math.abs(to(value) - middle) / width,
    limit,
    low: back(middle - limit * width, isLog),
    high: back(middle + limit * width, isLog),
    middle: back(middle, isLog),
    n,
  };
}

const back = (value: number, isLog: boolean): number => (isLog ? 10 ** value : value);

function far(table: RecordTable): readonly TableVerdict[] | string {
  const found: TableVerdict[] = [];
  let judged = 0;
  for (const name of JUDGED) {
    const own = ownOf(table, name);
    if (!own) continue;
    judged++;
    const limit = FAR + EXTRA_FOR_FEW / own.n;
    for (let i = 0; i < own.values.length; i++) {
      const off = Math.abs((own.values[i] ?? NaN) - own.middle) / own.spread;
      // A spawning may fail: few is no fault of writing.
      const isFailure = OUTCOMES.has(name) && (own.values[i] ?? NaN) < own.middle;
      if (off > limit)
        found.push({ ...farVerdict(table, name, own, i, limit), ...(isFailure ? { severity: 'look' } : {}) });
    }
  }
  return judged === 0 ? `fewer than ${LEAST} values in every column` : found;
}

function farVerdict(
  table: RecordTable,
  name: NumericField,
  { middle, spread, n, isLog }: Own,
  record: number,
  limit: number,
): TableVerdict {
  const value = table.numbers[name]?.[record] ?? NaN;
  const [low, high] = [back(middle - limit * spread, isLog), back(middle + limit * spread, isLog)];
  return {
    record,
    field: name,
    seen: shown(name, value),
    expected: `${shownWorkedOut(name, Math.max(low, isLog || middle > 0 ? 0 : low))} to ${shownWorkedOut(name, high)}`,
    sentence: `${capitalNoun(name)} of ${shown(name, value)} is far from this farm's own ${n} values, whose middle is ${shownWorkedOut(name, back(middle, isLog))}.`,
  };
}

/** Spread of the own values, in powers of ten, up to which a slip of a whole power of ten stands out. */
const TIGHT = 0.14;
const POWERS = [-3, -2, -1, 1, 2, 3] as const;

function powers(table: RecordTable): readonly TableVerdict[] | string {
  const found: TableVerdict[] = [];
  let judged = 0;
  for (const name of [...JUDGED, ...SCALED_TOO]) {
    if (!isScaled(name)) continue;
    const own = ownOf(table, name);
    if (!own || own.spread > TIGHT) continue;
    judged++;
    const near = Math.max(0.12, 2.5 * own.spread);
    for (let i = 0; i < own.values.length; i++) {
      const off = (own.values[i] ?? NaN) - own.middle;
      // Too near the middle for any power of ten, as nearly all are.
      if (!(Math.abs(off) >= 1 - near)) continue;
      const power = POWERS.find((p) => Math.abs(off - p) <= near);
      if (power === undefined || Math.abs(off) < FAR * own.spread) continue;
      const value = table.numbers[name]?.[i] ?? NaN;
      const meant = value / 10 ** power;
      const times = `${plain(10 ** Math.abs(power), 4)} times too ${power > 0 ? 'much' : 'little'}`;
      found.push({
        record: i,
        field: name,
        seen: shown(name, value),
        expected: `about ${shownWorkedOut(name, 10 ** own.middle)}`,
        proposal: shown(name, meant),
        sentence: `${capitalNoun(name)} of ${shown(name, value)} looks ${times}: the middle of ${own.n} own values is ${shownWorkedOut(name, 10 ** own.middle)}, and ${shown(name, meant)} would fit.`,
      });
    }
  }
  return judged === 0 ? `no column with at least ${LEAST} values that lie close together` : found;
}

const column = (header: string, values: readonly number[]): readonly (readonly (string | number)[])[] => [
  ['Run', header],
  ...values.map((value, i) => [`R${i + 1}`, value]),
];
const perGram = [655, 690, 712, 668, 701, 683, 720, 676, 694, 707, 661, 688];
const hatch = [0.61, 0.66, 0.58, 0.63, 0.6, 0.65, 0.62, 0.59, 0.64, 0.61, 0.67, 0.63];

export const historyRules: readonly TableRule[] = [
  {
    id: 'HISTORY.FAR',
    scope: 'table',
    severity: 'unlikely',
    title: "Far from the farm's own history",
    needs: JUDGED.map((name) => [name]),
    check: far,
    checks: `Each value against the middle of its own column: more than ${FAR} robust deviations away (median and median absolute deviation, on logarithms for weights and counts), from ${LEAST} values on.`,
    why:
      'What is usual on this farm is the best yardstick there is; a run that far off ' +
      'deserves a second look, right or wrong.',
    sources: ['PRACTICE'],
    examples: [
      {
        sheets: { Runs: column('Hatch %', [...hatch, 0.04]) },
        says: '13 values',
        because: '4 % where 58 to 67 % is usual.',
      },
      { sheets: { Runs: column('Hatch %', hatch) }, because: 'All alike.' },
      { sheets: { Runs: column('Hatch %', [0.61, 0.66, 0.04]) }, because: 'Three values say nothing.' },
    ],
  },
  {
    id: 'SLIP.HISTORY',
    scope: 'table',
    severity: 'unlikely',
    title: "Ten or a thousand times the farm's own values",
    needs: [...JUDGED, ...SCALED_TOO].filter(isScaled).map((name) => [name]),
    check: powers,
    checks:
      'Values that lie a whole power of ten from the middle of a column whose values lie close together.',
    why: 'A point left out, or grams in a column of kilograms, where nothing else in the row gives it away.',
    sources: ['PRACTICE'],
    examples: [
      {
        sheets: { Runs: column('Eggs per gram', [...perGram, 69.5]) },
        says: '10 times too little',
        because: '695 with its point one place left.',
      },
      { sheets: { Runs: column('Eggs per gram', perGram) }, because: 'All alike.' },
    ],
  },
];
