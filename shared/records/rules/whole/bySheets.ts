// Long: keys of tables, relations found between them, what breaks them
import { dayParts } from '../../../units/dates';
import type { NumericField } from '../../fields';
import { columnOf } from '../../table';
import type { RecordTable, Spot } from '../../table';
import { isCounted } from '../../meaning/sums';
import { fold } from '../../words/fold';
import { monthOf } from '../../words/lexicon';
import { plain } from '../show';
import type { BookRule, SheetExample, TableVerdict } from '../rule';
import { isDated } from './byMoments';
import { headingAt, isComputed, isSlip, oddness, spotOf } from './suspect';

/** What the lines of a table are called by one of its columns: names, days or months. */
interface Keys {
  readonly table: RecordTable;
  readonly column: number;
  readonly kind: 'name' | 'day' | 'month';
  readonly records: ReadonlyMap<string, readonly number[]>;
  readonly isUnique: boolean;
}

const LONGEST_NAME = 24;
const LEAST_KEYS = 3;
const MOST_ROWS = 20_000;
const MOST_KEYS = 6;

function keysFrom(
  table: RecordTable,
  column: number,
  kind: Keys['kind'],
  keyOf: (record: number) => string | undefined,
): Keys | undefined {
  const records = new Map<string, number[]>();
  let filled = 0;
  for (let record = 0; record < table.length; record++) {
    const key = keyOf(record);
    if (key === undefined) continue;
    filled++;
    const list = records.get(key);
    if (list) list.push(record);
    else records.set(key, [record]);
  }
  return records.size < LEAST_KEYS || filled < 0.6 * table.length
    ? undefined
    : { table, column, kind, records, isUnique: records.size >= 0.97 * filled };
}

const NAMED = new Set(['run', 'serial', 'vat', 'female', 'male', 'receipt']);
function nameAt(table: RecordTable, column: number): (record: number) => string | undefined {
  const { run } = table.columns[column] ?? {};
  const isNumbered = NAMED.has(table.mapping[column]?.field ?? '');
  return (record) => {
    const cell = run?.cellAt(record);
    if (typeof cell === 'number') return isNumbered && Number.isInteger(cell) ? String(cell) : undefined;
    if (typeof cell !== 'string' || cell.length > LONGEST_NAME) return undefined;
    return fold(cell) || undefined;
  };
}
const monthKey = (month: number): string | undefined => (month > 0 ? `month ${month}` : undefined);

function keysOf(table: RecordTable): Keys[] {
  if (table.length > MOST_ROWS) return [];
  return table.columns
    .flatMap(({ moments, run }, column): (Keys | undefined)[] => {
      const values = moments?.values;
      if (values && values.some(isDated)) {
        const at = (record: number): number => values[record] ?? NaN;
        return [
          keysFrom(table, column, 'day', (r) => (isDated(at(r)) ? `day ${Math.floor(at(r))}` : undefined)),
          keysFrom(table, column, 'month', (r) =>
            isDated(at(r)) ? monthKey(dayParts(at(r)).month) : undefined,
          ),
        ];
      }
      const name = nameAt(table, column);
      const months = keysFrom(table, column, 'month', (r) => {
        const cell = run.cellAt(r);
        return typeof cell === 'string'
          ? monthKey(monthOf(cell.trim().split(/[\s.'/-]/)[0] ?? ''))
          : undefined;
      });
      return months ? [months] : [keysFrom(table, column, 'name', name)];
    })
    .filter((one) => one !== undefined)
    .slice(0, MOST_KEYS);
}

/** Names that stand in both tables, most of one of them. */
function common(a: Keys, b: Keys): string[] {
  if (a.kind !== b.kind) return [];
  const shared = [...a.records.keys()].filter((key) => b.records.has(key));
  const enough = 0.6 * Math.min(a.records.size, b.records.size);
  return shared.length >= Math.max(LEAST_KEYS, enough) ? shared : [];
}

const valueOf = (table: RecordTable, column: number, record: number): number =>
  table.columns[column]?.plain[record] ?? NaN;
const sumOf = (table: RecordTable, column: number, records: readonly number[]): number => {
  let [sum, said] = [0, 0];
  for (const record of records) {
    const x = valueOf(table, column, record);
    if (Number.isNaN(x)) continue;
    sum += x;
    said++;
  }
  return said === 0 ? NaN : sum;
};

interface Pair {
  readonly key: string;
  readonly a: number;
  readonly b: number;
}
interface Agreement {
  readonly from: Keys;
  readonly to: Keys;
  readonly a: number;
  readonly b: number;
  readonly holds: number;
  readonly broken: readonly Pair[];
}

const zero = (x: number): number => (Number.isNaN(x) ? 0 : x);
const isTelling = (x: number): boolean => Math.abs(x) >= 100 || (!Number.isInteger(x) && Math.abs(x) >= 1);
const LEAST_AGREEING = 0.65;
const CENT = 0.0051;
const isSame = (a: number, b: number): boolean =>
  Math.abs(a - b) <= Math.max(1e-6 * Math.abs(a), Number.isInteger(a) && Number.isInteger(b) ? 0 : CENT);

/** Does a column of one table say the same as a column of the other, or its sum, key by key? */
function agreement(
  from: Keys,
  to: Keys,
  keys: readonly string[],
  a: number,
  b: number,
): Agreement | undefined {
  const pairs = keys.map((key): Pair => ({
    key,
    a: sumOf(from.table, a, from.records.get(key) ?? []),
    b: sumOf(to.table, b, to.records.get(key) ?? []),
  }));
  const said = pairs.filter((one) => zero(one.a) !== 0 || zero(one.b) !== 0);
  // Where a side is blank in most lines it is a part of the story only.
  const both = said.filter((one) => !Number.isNaN(one.a) && !Number.isNaN(one.b));
  const held = both.filter((one) => isSame(one.a, one.b));
  const values = new Set(held.map((one) => one.a));
  if (held.length < LEAST_KEYS || values.size < LEAST_KEYS || [...values].filter(isTelling).length < 2)
    return undefined;
  if (held.length < LEAST_AGREEING * said.length) return undefined;
  return { from, to, a, b, holds: held.length, broken: said.filter((one) => !held.includes(one)) };
}

const MOST_COLUMNS = 30;
const numbersOf = ({ columns, mapping }: RecordTable, key: number): number[] =>
  columns
    .flatMap(({ plain: list }, i) =>
      i !== key && mapping[i]?.field !== 'note' && !isCounted(list) && list.some((x) => Math.abs(x) > 0)
        ? [i]
        : [],
    )
    .slice(0, MOST_COLUMNS);

function agreements(from: Keys, to: Keys): Agreement[] {
  const keys = common(from, to);
  if (keys.length === 0 || !from.isUnique) return [];
  const found: Agreement[] = [];
  for (const a of numbersOf(from.table, from.column)) {
    let best: Agreement | undefined;
    for (const b of numbersOf(to.table, to.column)) {
      const one = agreement(from, to, keys, a, b);
      if (one && (!best || one.holds - one.broken.length > best.holds - best.broken.length)) best = one;
    }
    if (best) found.push(best);
  }
  return found;
}

/** The line of the sum that a slip of the hand would explain. */
function slipped({ to, b }: Agreement, pair: Pair): number | undefined {
  const off = zero(pair.a) - zero(pair.b);
  return (to.records.get(pair.key) ?? []).find((record) => {
    const seen = valueOf(to.table, b, record);
    return isSlip(seen, seen + off) && oddness(to.table, { record, column: b }) > 1.5;
  });
}

/** The cells of a pair that disagrees: here one, there one or the lines of a sum. */
interface Disagreement {
  readonly here: Spot | undefined;
  readonly there: readonly Spot[];
  readonly others: readonly number[];
  /** The line of the sum that one slip would put right. */
  readonly slip: number | undefined;
  /** The single cell there is the likelier one. */
  readonly isThere: boolean;
  readonly isComputed: boolean;
}
function disagreement(one: Agreement, pair: Pair, record: number): Disagreement {
  const { from, to, a, b } = one;
  const others = to.records.get(pair.key) ?? [];
  const slip = others.length > 1 ? slipped(one, pair) : undefined;
  const isWorkedHere = isComputed(from.table, { record, column: a });
  const single = others.length === 1 ? others[0] : undefined;
  const isOddThere =
    single !== undefined &&
    oddness(to.table, { record: single, column: b }) > 2 * oddness(from.table, { record, column: a });
  return {
    here: spotOf(from.table, { record, column: a }),
    there: others.flatMap((r) => spotOf(to.table, { record: r, column: b }) ?? []),
    others,
    slip,
    isThere: single !== undefined && (isWorkedHere || isOddThere),
    isComputed: isWorkedHere && others.some((r) => isComputed(to.table, { record: r, column: b })),
  };
}

const MOST_NAMED = 12;
/** The cell to look at, what stands there and what would agree. */
function mainOf({ to, b }: Agreement, { here, there, slip, isThere }: Disagreement, pair: Pair) {
  const [x, y] = [zero(pair.a), zero(pair.b)];
  if (slip === undefined)
    return isThere ? { spot: there[0], seen: y, expected: x } : { spot: here, seen: x, expected: y };
  const seen = valueOf(to.table, b, slip);
  return { spot: spotOf(to.table, { record: slip, column: b }), seen, expected: seen + x - y };
}

function verdict(one: Agreement, pair: Pair): TableVerdict | undefined {
  const { from, to, a, b } = one;
  const [record] = from.records.get(pair.key) ?? [];
  if (record === undefined) return undefined;
  const found = disagreement(one, pair, record);
  const { spot, seen, expected } = mainOf(one, found, pair);
  if (!spot || found.isComputed) return undefined;
  const isSum = found.others.length > 1;
  const rest = [found.here, ...found.there].filter(
    (other): other is Spot => other !== undefined && other !== spot,
  );
  const name = `"${headingAt(from.table, a)}" of sheet ${from.table.title}`;
  const other = `${isSum ? 'the lines of ' : ''}"${headingAt(to.table, b)}" of sheet ${to.table.title}`;
  return {
    spot,
    related: rest.slice(0, MOST_NAMED),
    or: isSum ? rest.slice(0, 1).filter((cell) => cell === found.here) : rest,
    seen: plain(seen, 9),
    expected: plain(expected, 9),
    sentence: `${name} says ${plain(zero(pair.a), 9)} and ${other} ${isSum ? 'give' : 'says'} ${plain(zero(pair.b), 9)} for ${keyWord(one, record)}; ${one.holds} others agree.`,
  };
}
const keyWord = ({ from }: Agreement, record: number): string => {
  const value = from.table.columns[from.column]?.moments?.values[record];
  const cell = from.table.columns[from.column]?.run.cellAt(record);
  return value !== undefined && isDated(value)
    ? `${dayParts(value).day}/${dayParts(value).month}`
    : `"${String(cell)}"`;
};

/** A name that stands in no line of the table the others come from. */
function strayNames(from: Keys, to: Keys): TableVerdict[] {
  if (from.kind !== 'name' || !from.isUnique || to.isUnique || from.records.size < 5) return [];
  const fieldOf = ({ table, column }: Keys): string | undefined => table.mapping[column]?.field;
  if (fieldOf(from) === undefined || fieldOf(from) !== fieldOf(to) || fieldOf(from) === 'note') return [];
  const rows = [...to.records.values()].reduce((sum, list) => sum + list.length, 0);
  const stray = [...to.records].filter(([key]) => !from.records.has(key));
  const strayRows = stray.reduce((sum, [, list]) => sum + list.length, 0);
  const isFew = rows >= 8 && strayRows <= Math.max(1, 0.08 * rows) && to.records.size - stray.length >= 4;
  return isFew
    ? stray.flatMap(([, [record]]): TableVerdict[] => {
        const spot = record === undefined ? undefined : spotOf(to.table, { record, column: to.column });
        const cell = record === undefined ? '' : String(to.table.columns[to.column]?.run.cellAt(record));
        return spot
          ? [
              {
                spot,
                seen: cell,
                expected: 'a name of the other sheet',
                sentence: `"${cell}" stands in no line of "${headingAt(from.table, from.column)}" of sheet ${from.table.title}; all others do.`,
              },
            ]
          : [];
      })
    : [];
}

const HAD: readonly NumericField[] = ['fingerlings', 'fry', 'alive', 'fish', 'hatched'];
/** More sold of a run than it ever had, where the others had enough. */
function overSold(from: Keys, to: Keys): TableVerdict[] {
  if (from.kind !== 'name' || !from.isUnique) return [];
  const field = HAD.find((one) => from.table.numbers[one] !== undefined);
  const sold = to.table.mapping.findIndex((one) => one.field === 'sold');
  const had = field === undefined ? -1 : from.table.mapping.findIndex((one) => one.field === field);
  if (!field || sold < 0 || had < 0 || columnOf(to.table, 'sold') === undefined) return [];
  const keys = common(from, to);
  const over = keys.filter((key) => {
    const [record] = from.records.get(key) ?? [];
    return (
      sumOf(to.table, sold, to.records.get(key) ?? []) > (from.table.numbers[field]?.[record ?? -1] ?? NaN)
    );
  });
  if (keys.length < 4 || over.length > Math.max(1, 0.2 * keys.length)) return [];
  return over.flatMap((key): TableVerdict[] => {
    const records = [...(to.records.get(key) ?? [])].sort(
      (x, y) => valueOf(to.table, sold, y) - valueOf(to.table, sold, x),
    );
    const [record] = from.records.get(key) ?? [];
    const spot =
      records[0] === undefined ? undefined : spotOf(to.table, { record: records[0], column: sold });
    const here = record === undefined ? undefined : spotOf(from.table, { record, column: had });
    const sum = sumOf(to.table, sold, records);
    return spot
      ? [
          {
            spot,
            ...(here ? { or: [here], related: [here] } : {}),
            severity: 'impossible',
            seen: plain(sum, 9),
            expected: `at most ${plain(from.table.numbers[field]?.[record ?? -1] ?? NaN, 9)}`,
            sentence: `${plain(sum, 9)} are sold of "${key.toUpperCase()}"; sheet ${from.table.title} has ${plain(from.table.numbers[field]?.[record ?? -1] ?? NaN, 9)} under "${headingAt(from.table, had)}".`,
          },
        ]
      : [];
  });
}

const MOST_TABLES = 16;
/** What the tables of a book say of the same thing: sums of months, fish moved, counts carried from sheet to sheet. */
export function betweenTables(tables: readonly RecordTable[]): TableVerdict[] {
  const keyed = tables
    .filter(({ length }) => length >= LEAST_KEYS)
    .slice(0, MOST_TABLES)
    .map(keysOf);
  const found: TableVerdict[] = [];
  const seen = new Set<Spot['sheet'] | string>();
  const take = (one: TableVerdict | undefined): void => {
    const { sheet, position, column } = one?.spot ?? {};
    const key = `${sheet?.name ?? ''} ${position ?? ''} ${column ?? ''}`;
    if (!one || seen.has(key)) return;
    seen.add(key);
    for (const { sheet: s, position: p, column: c } of one.or ?? []) seen.add(`${s.name} ${p} ${c}`);
    found.push(one);
  };
  for (const [i, mine] of keyed.entries())
    for (const [j, theirs] of keyed.entries()) {
      if (i === j) continue;
      for (const from of mine)
        for (const to of theirs) {
          const isMirrored = to.isUnique && j < i;
          if (!isMirrored)
            for (const one of agreements(from, to)) for (const pair of one.broken) take(verdict(one, pair));
          for (const one of [...strayNames(from, to), ...overSold(from, to)]) take(one);
        }
    }
  return found;
}

type Row = readonly (string | number | null)[];
const FRY = [4100, 5230, 3900, 6120, 4480];
const sheetsOf = (counted: readonly number[]): SheetExample['sheets'] => ({
  Runs: [['Run', 'Fry'], ...FRY.map((x, i): Row => [`R${i + 1}`, x])],
  Nursery: [['Run', 'Stocked'], ...counted.map((x, i): Row => [`R${i + 1}`, x])],
});

export const sheetRules: readonly BookRule[] = [
  {
    id: 'WHOLE.SHEETS',
    scope: 'book',
    severity: 'unlikely',
    title: 'Two sheets disagree',
    needs: [[]],
    checks:
      'Figures that stand elsewhere by run, tank, day or month, or as a sum; stray names; more sold than there was.',
    why: 'One of the two was typed wrongly, or not carried over.',
    sources: ['PRACTICE'],
    check: (tables) => (tables.length < 2 ? 'the book has only one table' : betweenTables(tables)),
    examples: [
      {
        sheets: sheetsOf([4100, 5230, 9300, 6120, 4480]),
        says: '3,900',
        because: 'Run 3 is carried over wrongly.',
      },
      { sheets: sheetsOf(FRY), because: 'Both sheets say the same.' },
    ],
  },
];
