// Long: one rule with its sentences; it would not read better in pieces.
import { swappedDay } from '../../columns/cells/swap';
import { dayParts } from '../../../units/dates';
import type { NumericField } from '../../fields';
import { NUMERIC_FIELDS, fieldSpec } from '../../fields';
import type { RecordTable } from '../../table';
import type {
  AuditOptions,
  BookRule,
  RowRule,
  RuleFinding,
  TableRule,
  TableVerdict,
  RuleVerdict,
} from '../rule';
import { capitalNoun, nounOf, shown } from '../show';
import { writtenNumber } from '../../../units/writtenNumber';

/** What happens after what in a run. */
const ORDER = [
  'injected',
  'stripped',
  'fertilisedAt',
  'hatchedAt',
  'feedingAt',
] as const satisfies readonly NumericField[];
const MOMENTS = NUMERIC_FIELDS.filter((name) => fieldSpec(name).kind === 'moment');
/** Before this no small farm kept a spreadsheet: 1 January 1990. */
export const EARLIEST = 32_874;
/** 1 January 2100. */
export const LATEST = 73_051;

const after = (said: RuleFinding, first: NumericField, second: NumericField): RuleVerdict | undefined => {
  const [a, b] = [said.num(first), said.num(second)];
  if (!(b < a) || a < EARLIEST || b < EARLIEST) return undefined;
  // A date alone is midnight: the same day is no contradiction.
  if (Number.isInteger(b) && b === Math.floor(a)) return undefined;
  const swapped = swappedDay(b);
  const proposal =
    swapped !== undefined && swapped >= a && swapped - a < 10 ? shown(second, swapped) : undefined;
  return {
    field: second,
    with: [first],
    seen: shown(second, b),
    expected: `after ${shown(first, a)}`,
    ...(proposal ? { proposal } : {}),
    sentence: `${capitalNoun(second)} is before the ${nounOf(first)}: ${shown(second, b)}, but ${shown(first, a)}.${proposal ? ` With day and month exchanged it would be ${proposal}.` : ''}`,
  };
};

function orderVerdicts(said: RuleFinding): RuleVerdict[] {
  const found: RuleVerdict[] = [];
  let before: NumericField | undefined;
  for (const name of ORDER) {
    if (Number.isNaN(said.num(name))) continue;
    const fault = before && after(said, before, name);
    if (fault) found.push(fault);
    before = name;
  }
  const batch = after(said, 'stockedAt', 'emptiedAt');
  return batch ? [...found, batch] : found;
}

/** Spreadsheets know no later day than 31 December 9999. */
const AFTER_THE_LAST_DAY = 2_958_466;
const isMoment = new Set(MOMENTS);
const isOfAnotherCentury = (value: number): boolean => value >= 1 && !(value >= EARLIEST && value < LATEST);
const centuryVerdicts = (said: RuleFinding): RuleVerdict[] =>
  said.given.flatMap((field) => {
    if (!isMoment.has(field)) return [];
    const value = said.num(field);
    if (!isOfAnotherCentury(value)) return [];
    if (value >= AFTER_THE_LAST_DAY)
      return [
        {
          field,
          seen: writtenNumber(value),
          expected: 'a day with its hour',
          sentence: `${capitalNoun(field)} is ${writtenNumber(value)}, which is no day: the last one a sheet knows is 31 Dec 9999.`,
        },
      ];
    const year = dayParts(value).year;
    const meant = value < EARLIEST ? year + 100 : year - 100;
    return [
      {
        field,
        seen: String(year),
        expected: `a year like ${meant}`,
        proposal: `the same day in ${meant}`,
        sentence: `${capitalNoun(field)} lies in the year ${year}: probably ${meant}.`,
      },
    ];
  });

export const dateRowRules: readonly RowRule[] = [
  {
    id: 'DATE.ORDER',
    scope: 'row',
    severity: 'impossible',
    title: 'Times out of order',
    check: orderVerdicts,
    needs: [...ORDER.flatMap((a, i) => ORDER.slice(i + 1).map((b) => [a, b])), ['stockedAt', 'emptiedAt']],
    checks: 'Injection, strip, fertilisation, hatch, first feed, and stocking before the end.',
    why: 'A run happens in one order; past midnight the date is often not moved on.',
    sources: ['DEFINITION'],
    examples: [
      {
        record: { injected: 46_001.9, stripped: 46_001.3 },
        says: 'before the injection time',
        because: 'Injected in the evening, stripped next morning, the date not moved on.',
      },
      { record: { injected: 46_001.9, stripped: 46_002.3 }, because: 'The next morning.' },
      { record: { stockedAt: 46_001.6, emptiedAt: 46_001 }, because: 'The same day kept without a time.' },
    ],
  },
  {
    id: 'DATE.CENTURY',
    scope: 'row',
    severity: 'impossible',
    title: 'A date in a wrong century',
    needs: MOMENTS.map((name) => [name]),
    check: centuryVerdicts,
    mayFire: (numbers) => MOMENTS.some((name) => numbers[name]?.some(isOfAnotherCentury)),
    checks: 'Dates before 1990 or after 2099.',
    why: 'A year of two digits is read as 19.. or 20.. by the program, not by the one who typed it.',
    sources: ['PRACTICE'],
    examples: [
      { record: { date: 9570 }, says: '1926', because: '14 March 1926 for 2026.' },
      { record: { date: 46_095 }, because: 'March 2026.' },
    ],
  },
];

/** Positions that keep a list in rising order, as many as there can be (patience sorting). */
export function rising(values: readonly number[]): ReadonlySet<number> {
  const ends: number[] = [];
  const before = new Array<number>(values.length).fill(-1);
  for (let i = 0; i < values.length; i++) {
    const value = values[i] ?? NaN;
    let low = 0;
    let high = ends.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((values[ends[middle] ?? 0] ?? 0) <= value) low = middle + 1;
      else high = middle;
    }
    before[i] = ends[low - 1] ?? -1;
    ends[low] = i;
  }
  const kept = new Set<number>();
  for (let i = ends.at(-1) ?? -1; i >= 0; i = before[i] ?? -1) kept.add(i);
  return kept;
}

/** Positions that break a rising order, as few as there can be. */
function outOfOrder(values: readonly number[]): number[] {
  // Most tables are in order, and then there is nothing to search.
  let isRising = true;
  for (let i = 1; i < values.length; i++) if (!((values[i - 1] ?? 0) <= (values[i] ?? 0))) isRising = false;
  if (isRising) return [];
  const kept = rising(values);
  return values.flatMap((_, k) => (kept.has(k) ? [] : [k]));
}

const LEAST_ROWS = 6;
/** More rows than this share out of order: the table is not sorted by date. */
const MOST_OUT = 0.1;
const LONGEST_STEP = 62;
/** So few days out of order may be a line written late. */
const WRITTEN_LATE = 3;

function sequence(table: RecordTable): readonly TableVerdict[] | string {
  const dates = table.numbers.date;
  if (!dates) return 'no column of dates';
  const records: number[] = [];
  for (let i = 0; i < dates.length; i++)
    if ((dates[i] ?? NaN) >= EARLIEST && (dates[i] ?? NaN) < LATEST) records.push(i);
  if (records.length < LEAST_ROWS) return `only ${records.length} rows have a date`;
  const values = records.map((i) => Math.floor(dates[i] ?? NaN));
  const out = outOfOrder(values);
  if (out.length > Math.max(1, MOST_OUT * records.length))
    return 'the rows are not kept in the order of their dates';
  const jumps = out.length === 0 ? lonelyJumps(values) : [];
  return [...out, ...jumps].map((k) => sequenceVerdict(records, values, k));
}

/** A row far ahead of both its neighbours is in order only because it is the last one. */
const lonelyJumps = (values: readonly number[]): number[] => {
  const last = values.length - 1;
  const step = (values[last] ?? 0) - (values[last - 1] ?? 0);
  const usual = ((values[last - 1] ?? 0) - (values[0] ?? 0)) / Math.max(1, last - 1);
  return step > LONGEST_STEP && step > 20 * Math.max(usual, 1) ? [last] : [];
};

function sequenceVerdict(records: readonly number[], values: readonly number[], k: number): TableVerdict {
  const [before, value, next] = [
    values[k - 1] ?? values[k + 1] ?? 0,
    values[k] ?? 0,
    values[k + 1] ?? values[k - 1] ?? 0,
  ];
  const swapped = swappedDay(value);
  const fits =
    swapped !== undefined && swapped >= Math.min(before, next) - 1 && swapped <= Math.max(before, next) + 1;
  const off = Math.max(Math.min(before, next) - value, value - Math.max(before, next));
  return {
    record: records[k] ?? 0,
    field: 'date',
    ...(!fits && off <= WRITTEN_LATE ? { severity: 'look' as const } : {}),
    seen: shown('date', value),
    expected: `between ${shown('date', before)} and ${shown('date', next)}`,
    ...(fits ? { proposal: shown('date', swapped) } : {}),
    sentence: `The date ${shown('date', value)} is out of order between ${shown('date', before)} and ${shown('date', next)}.${fits ? ` With day and month exchanged it would be ${shown('date', swapped)}.` : ''}`,
  };
}

function styles(table: RecordTable): readonly TableVerdict[] | string {
  const columns = table.mapping.filter(
    ({ field }) => field !== undefined && MOMENTS.includes(field as NumericField),
  );
  return columns.flatMap(({ field, reasons, header }) => {
    if (!field || !reasons.some((reason) => reason.includes('both orders'))) return [];
    const first = table.spot(0, field) ?? table.home(0);
    return [
      {
        spot: first,
        seen: 'day first and month first',
        expected: 'one order',
        sentence: `The column "${header}" holds dates written day first and others written month first: 03/04 cannot be told apart.`,
      },
    ];
  });
}

const row = (day: number, eggs: number): readonly [number, number] => [day, eggs];
const steady = [46_001, 46_003, 46_006, 46_010, 46_013, 46_017, 46_020].map((day, i) =>
  row(day, 90_000 + 137 * i),
);

export const dateTableRules: readonly TableRule[] = [
  {
    id: 'DATE.SEQUENCE',
    scope: 'table',
    severity: 'unlikely',
    title: 'A date out of sequence',
    needs: [['date']],
    check: sequence,
    checks: 'Rows whose date breaks the order of a table that is otherwise sorted by date.',
    why: "Day and month are exchanged by programs set to another country, or the year is last year's.",
    sources: ['PRACTICE'],
    examples: [
      {
        sheets: { Runs: [['Date', 'Eggs'], ...steady.slice(0, 3), row(46_301, 91_000), ...steady.slice(3)] },
        says: 'out of order',
        because: 'One row ten months ahead of its neighbours.',
      },
      { sheets: { Runs: [['Date', 'Eggs'], ...steady] }, because: 'Sorted.' },
      {
        sheets: { Runs: [['Date', 'Eggs'], ...[...steady].reverse()] },
        because: 'Sorted the other way round: not judged.',
      },
    ],
  },
  {
    id: 'DATE.STYLES',
    scope: 'table',
    severity: 'unlikely',
    title: 'Dates in two orders',
    needs: MOMENTS.map((name) => [name]),
    check: styles,
    checks:
      'A column that holds both dates that can only be day first and dates that can only be month first.',
    why: 'Then every date with a day up to the 12th is open to both readings.',
    sources: ['PRACTICE'],
    examples: [
      {
        sheets: {
          Runs: [
            ['Date', 'Eggs'],
            ['25/03/2026', 91_230],
            ['03/28/2026', 92_110],
            ['02/04/2026', 90_950],
          ],
        },
        says: 'day first and others',
        because: '25/03 and 03/28 in one column.',
      },
      {
        sheets: {
          Runs: [
            ['Date', 'Eggs'],
            ['25/03/2026', 91_230],
            ['28/03/2026', 92_110],
          ],
        },
        because: 'One order.',
      },
    ],
  },
];

const future = (
  tables: readonly RecordTable[],
  _: unknown,
  { today }: AuditOptions,
): readonly TableVerdict[] | string => {
  if (today === undefined) return 'the day of the check was not given';
  return tables.flatMap((table) =>
    MOMENTS.flatMap((field) => {
      const values = table.numbers[field];
      if (!values) return [];
      const found: TableVerdict[] = [];
      for (let i = 0; i < values.length; i++) {
        const value = values[i] ?? NaN;
        const spot = value >= today + 1 && value < LATEST ? table.spot(i, field) : undefined;
        if (spot)
          found.push({
            spot,
            field,
            seen: shown(field, value),
            expected: `up to ${shown(field, today)}`,
            sentence: `${capitalNoun(field)} lies in the future: ${shown(field, value)}.`,
          });
      }
      return found;
    }),
  );
};

export const dateBookRules: readonly BookRule[] = [
  {
    id: 'DATE.FUTURE',
    scope: 'book',
    severity: 'unlikely',
    title: 'A date in the future',
    needs: MOMENTS.map((name) => [name]),
    check: future,
    checks: 'Dates after the day of the check.',
    why: 'A record is written after the event; a plan in the same sheet should be kept apart.',
    sources: ['PRACTICE'],
    examples: [
      {
        sheets: {
          Runs: [
            ['Date', 'Eggs'],
            [46_001, 91_230],
            [54_001, 92_110],
          ],
        },
        says: 'future',
        because: 'Twenty years on; examples are checked on serial 50,000.',
      },
      {
        sheets: {
          Runs: [
            ['Date', 'Eggs'],
            [46_001, 91_230],
            [46_004, 92_110],
          ],
        },
        because: 'In the past.',
      },
    ],
  },
];
