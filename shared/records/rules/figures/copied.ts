// Long: one rule with its sentences; it would not read better in pieces.
import type { NumericField } from '../../fields';
import { fieldSpec, NUMERIC_FIELDS } from '../../fields';
import type { RecordTable } from '../../table';
import { placeOf } from '../../table';
import type { TableRule, TableVerdict } from '../rule';
import { capitalNoun, shown } from '../show';
import { mix } from './statistics';

/**
 * Measured anew each time, and fine enough that the same value does not come again and again. Numbers that
 * rest on a weekly sample are left out.
 */
const MEASURED = NUMERIC_FIELDS.filter(
  (name) =>
    fieldSpec(name).isMeasured &&
    !['fish', 'weight', 'feed', 'stocked', 'alive', 'startWeight', 'oxygen'].includes(name),
);
const SHORTEST_RUN = 5;
const LEAST_FOR_COLUMN = 8;
/** A run of equal values is reported when chance would make one in fewer than this many such tables. */
const RARE = 0.0005;

interface Run {
  readonly from: number;
  readonly length: number;
  readonly value: number;
}

/** Stretches of equal values long enough to be looked at, blanks between them passed over. */
function longRuns(values: Float64Array): {
  readonly runs: readonly Run[];
  readonly n: number;
  readonly isOne: boolean;
} {
  const runs: Run[] = [];
  let [from, length, value, n, changes] = [0, 0, NaN, 0, 0];
  for (let i = 0; i <= values.length; i++) {
    const next = values[i] ?? Infinity;
    if (Number.isNaN(next)) continue;
    if (next === value) {
      length++;
      n++;
      continue;
    }
    if (length >= SHORTEST_RUN) runs.push({ from, length, value });
    if (i === values.length) break;
    from = i;
    length = 1;
    value = next;
    n++;
    changes++;
  }
  return { runs, n, isOne: changes === 1 };
}

/**
 * How often the next value equals the one before, outside long stretches: from neighbours and from how often
 * each value occurs.
 */
function chanceOfRepeat(values: Float64Array, long: readonly Run[], n: number): number {
  const counts = new Map<number, number>();
  let [inside, repeats, before] = [0, 0, NaN];
  const starts = new Map(long.map(({ from, length }) => [from, length]));
  let skip = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] ?? NaN;
    if (Number.isNaN(value)) continue;
    if (skip === 0) skip = starts.get(i) ?? 0;
    if (skip > 0) {
      skip--;
      before = NaN;
      continue;
    }
    if (value === before) repeats++;
    counts.set(value, (counts.get(value) ?? 0) + 1);
    before = value;
    inside++;
  }
  if (inside < 4) return 1 / Math.max(n, 1);
  const byFrequency = [...counts.values()].reduce((sum, count) => sum + (count / inside) ** 2, 0);
  return Math.max(byFrequency, (repeats + 1) / (inside + 1));
}

function copied(table: RecordTable): readonly TableVerdict[] | string {
  return MEASURED.flatMap((name) => {
    const values = table.numbers[name];
    if (!values) return [];
    const { runs, n, isOne } = longRuns(values);
    const [only] = runs;
    if (!only) return [];
    if (isOne) return n >= LEAST_FOR_COLUMN ? [wholeColumn(name, only, n)] : [];
    const chance = chanceOfRepeat(values, runs, n);
    return runs
      .filter(({ length, value }) => n * chance ** (length - 1) <= RARE && value !== 0 && value !== 1)
      .map((run) => copiedVerdict(table, name, run));
  });
}

function copiedVerdict(table: RecordTable, name: NumericField, run: Run): TableVerdict {
  const last = table.spot(run.from + run.length - 1, name);
  return {
    record: run.from + 1,
    field: name,
    related: last ? [last] : [],
    seen: `${shown(name, run.value)}, ${run.length} times`,
    expected: 'values that differ a little',
    sentence: `${capitalNoun(name)} is ${shown(name, run.value)} in ${run.length} rows one after the other${last ? `, down to ${placeOf(last).cell}` : ''}: copied down instead of measured?`,
  };
}

const wholeColumn = (name: NumericField, { value, from }: Run, n: number): TableVerdict => ({
  record: from,
  field: name,
  severity: 'look',
  seen: `${shown(name, value)} in all ${n} rows`,
  expected: 'values that differ a little',
  sentence: `${capitalNoun(name)} is ${shown(name, value)} in all ${n} rows: a figure assumed, not measured.`,
});

/** Digits that a row's measured values carry together, below which two rows may be alike by chance. */
const LEAST_DIGITS = 9;
/** Digits people wrote, trailing zeros left out; six decimals at most. */
function digitsOf(value: number): number {
  let rest = Math.round(Math.abs(value) * 1e6);
  if (rest === 0) return 0;
  while (rest % 10 === 0) rest /= 10;
  let digits = 0;
  for (; rest >= 1; rest /= 10) digits++;
  return digits;
}

const ALIKE = NUMERIC_FIELDS.filter((name) => fieldSpec(name).kind === 'number');

interface List {
  readonly list: Float64Array;
  readonly isMeasured: boolean;
}
const sameNumbers = (lists: readonly List[], a: number, b: number): boolean =>
  lists.every(({ list }) => Object.is(list[a], list[b]));

function rowHash(lists: readonly List[], record: number): { readonly hash: number; readonly digits: number } {
  let [hash, digits] = [1, 0];
  for (const { list, isMeasured } of lists) {
    const value = list[record] ?? NaN;
    hash = mix(hash, value);
    if (isMeasured && digits < LEAST_DIGITS && !Number.isNaN(value)) digits += digitsOf(value);
  }
  return { hash, digits };
}

function repeated(table: RecordTable): readonly TableVerdict[] | string {
  const lists = ALIKE.flatMap((name): List[] => {
    const list = table.numbers[name];
    return list ? [{ list, isMeasured: fieldSpec(name).isMeasured ?? false }] : [];
  });
  if (lists.filter(({ isMeasured }) => isMeasured).length < 2) return 'fewer than two measured columns';
  const seen = new Map<number, number>();
  const found: TableVerdict[] = [];
  for (let i = 0; i < table.length; i++) {
    const { hash, digits } = rowHash(lists, i);
    if (digits < LEAST_DIGITS) continue;
    const before = seen.get(hash);
    if (before === undefined || !sameNumbers(lists, before, i)) {
      seen.set(hash, i);
      continue;
    }
    const first = table.home(before);
    found.push({
      record: i,
      spot: table.home(i),
      related: [first],
      seen: `the same numbers as row ${placeOf(first).cell.replace(/\D/g, '')}`,
      expected: 'numbers of its own',
      sentence: `Every number of this record is the same as in the one at ${placeOf(first).cell}: entered twice, or copied and not filled in?`,
    });
  }
  return found;
}

const runs = (
  perGram: readonly number[],
  weights: readonly number[] = perGram.map((_, i) => 121 + 7 * i),
): readonly (readonly (string | number)[])[] => [
  ['Run', 'Egg weight (g)', 'Eggs per gram'],
  ...perGram.map((value, i) => [`R${i + 1}`, weights[i] ?? 0, value]),
];
const varied = [655, 690, 712, 668, 701, 683, 720, 676];

export const copiedRules: readonly TableRule[] = [
  {
    id: 'COLUMN.COPIED',
    scope: 'table',
    severity: 'unlikely',
    title: 'Copied down, not measured',
    needs: MEASURED.map((name) => [name]),
    check: copied,
    checks:
      'Five or more equal measured values in a row, when equal neighbours are otherwise ' +
      'too rare for that; and measured columns that hold one value throughout.',
    why: 'A copied value looks like a careful measurement and hides that none was made.',
    sources: ['PRACTICE'],
    examples: [
      {
        sheets: { Runs: runs([...varied, 694, 694, 694, 694, 694, 694, 694]) },
        says: '7 rows one after the other',
        because: 'Seven times 694 after eight different counts.',
      },
      {
        sheets: { Runs: runs([700, 700, 700, 700, 700, 700, 700, 700]) },
        says: 'assumed, not measured',
        because: 'The same in every row.',
      },
      { sheets: { Runs: runs([...varied, 694, 694, 701]) }, because: 'Two alike can be chance.' },
    ],
  },
  {
    id: 'ROW.REPEATED',
    scope: 'table',
    severity: 'impossible',
    title: 'A row entered twice',
    needs: [
      ['eggWeight', 'eggsPerGram'],
      ['eggs', 'hatched'],
      ['eggs', 'hatchShare'],
      ['startWeight', 'endWeight'],
      ['weight', 'feed'],
      ['ph', 'phAfter'],
      ['hatched', 'fry'],
    ],
    check: repeated,
    checks:
      'Records whose every number is the same as in an earlier one, when together they ' +
      'carry nine digits or more.',
    why: 'A run counted twice raises every average it is in.',
    sources: ['PRACTICE'],
    examples: [
      {
        sheets: {
          Runs: [
            ['Run', 'Egg weight (g)', 'Eggs per gram', 'Eggs'],
            ['R1', 121.5, 655, 79_583],
            ['R2', 134.2, 690, 92_598],
            ['R3', 121.5, 655, 79_583],
          ],
        },
        says: 'same as in the one at A2',
        because: 'R3 is R1 again.',
      },
      {
        sheets: {
          Runs: [
            ['Run', 'Egg weight (g)', 'Eggs per gram', 'Eggs'],
            ['R1', 121.5, 655, 79_583],
            ['R2', 134.2, 690, 92_598],
            ['R3', 118.9, 701, 83_349],
          ],
        },
        because: 'Three different runs.',
      },
    ],
  },
];
