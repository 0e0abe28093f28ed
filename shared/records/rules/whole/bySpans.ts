import { at } from '../../meaning/sampled';
import type { RecordTable } from '../../table';
import { plain } from '../show';
import { robustOfSome } from '../figures/statistics';
import type { Dated } from './byMoments';
import { aroundClock, clockColumns, dateColumns, HOURS, isClock, isDated, turn } from './byMoments';
import type { Suspicion } from './suspect';
import { headingAt, isComputed } from './suspect';

const DAY = 1;
/** A day written without its hour, among others with theirs, is not the midnight it begins with. */
const hoursSaid = (values: Float64Array, isStamped: boolean): Float64Array =>
  isStamped ? values.map((x) => (Number.isInteger(x) ? NaN : x)) : values;

/** Moments of a line with their day: a clock alone takes a day column beside it when there is but one. */
export function spanFaults(table: RecordTable): Suspicion[] {
  const clocks = table.columns.flatMap(({ moments }, column) => {
    let [kept, stamped, bare] = [0, 0, 0];
    for (let i = 0; i < (moments?.values.length ?? 0); i++) {
      const x = moments?.values[i] ?? NaN;
      if (Number.isNaN(x)) continue;
      kept++;
      if (isDated(x) && !Number.isInteger(x)) stamped++;
      if (isClock(x)) bare++;
    }
    return moments && kept > 0 && (stamped >= 0.8 * kept || bare >= 0.8 * kept)
      ? [
          {
            column,
            values: hoursSaid(moments.values, stamped > bare),
            isStamped: stamped > bare,
          },
        ]
      : [];
  });
  return clocks.flatMap((a, i) =>
    clocks.slice(i + 1).flatMap((b): Suspicion[] => {
      if (a.isStamped !== b.isStamped) return [];
      const spans = a.values.map((x, record) => {
        const raw = (b.values[record] ?? NaN) - x;
        return a.isStamped ? HOURS * raw : HOURS * (((raw % DAY) + DAY) % DAY);
      });
      return suspectSpans(table, a.column, b.column, spans, a.values, b.values, a.isStamped);
    }),
  );
}

/** How far an hour stands from the usual one, in spreads. */
const oddHour = (moment: number, own: { readonly middle: number; readonly spread: number }): number =>
  Math.abs(turn((moment % 1) - own.middle)) / Math.max(own.spread, 0.02);
function suspectSpans(
  table: RecordTable,
  a: number,
  b: number,
  spans: Float64Array,
  from: Float64Array,
  to: Float64Array,
  isStamped: boolean,
): Suspicion[] {
  const own = robustOfSome(spans);
  if (own.n < 5 || own.spread > 2.2) return [];
  const [limit, records] = [Math.max(4, 6 * own.spread), [] as number[]];
  for (let record = 0; record < spans.length; record++) {
    const span = spans[record] ?? NaN;
    const apart = isStamped
      ? Math.abs(span - own.middle)
      : HOURS * Math.abs(turn((span - own.middle) / HOURS));
    if (apart > limit || (isStamped && span < 0 && own.middle > 0)) records.push(record);
  }
  if (records.length === 0 || records.length > Math.max(1, 0.25 * own.n) || records.length > 400) return [];
  const [ownA, ownB] = [aroundClock(from.map((x) => x % 1)), aroundClock(to.map((x) => x % 1))];
  return records.flatMap((record): Suspicion[] => {
    const span = at(spans, record);
    const off = isStamped ? Math.abs(span - own.middle) : HOURS * Math.abs(turn((span - own.middle) / HOURS));
    const isBackward = isStamped && span < 0 && own.middle > 0;
    const [x, y] = [at(from, record), at(to, record)];
    const [oddA, oddB] = [oddHour(x, ownA), oddHour(y, ownB)];
    const half = Math.abs(off - 12) < Math.max(1.5, 3 * own.spread);
    const sum = oddA + oddB + 1;
    return [
      {
        rule: 'WHOLE.SPAN',
        weight: 1.5,
        severity: isBackward ? 'impossible' : 'unlikely',
        cells: [
          {
            record,
            column: a,
            share: (oddA + 0.5) / sum,
            meant: half ? (x + 0.5) % 1 : undefined,
          },
          {
            record,
            column: b,
            share: (oddB + 0.5) / sum,
            meant: half ? (y + 0.5) % 1 : undefined,
          },
        ],
        sentence: `From "${headingAt(table, a)}" to "${headingAt(table, b)}" are ${plain(span, 3)} hours; the other lines have about ${plain(own.middle, 3)}${half ? ': morning and evening may be exchanged' : ''}.`,
      },
    ];
  });
}

const SPANS = new Set<string>(['latency', 'incubationHours', 'minutes', 'days']);
const NAMED_SPANS = new Map([
  ['minutes', 'startTime endTime'],
  ['latency', 'injected stripped'],
]);
const SPAN_UNITS = new Set(['h', 'min', 'd']);

/** A column of numbers that is the time between two clocks or days of the line. */
export function statedSpans(table: RecordTable): Suspicion[] {
  const moments = [...dateColumns(table), ...clockColumns(table)];
  const numbers = table.columns
    .map((one, column) => ({ ...one, column }))
    .filter(({ moments: m, column }) => {
      const { field, unitSaid } = table.mapping[column] ?? {};
      const isSpan =
        field === undefined ? unitSaid === undefined || SPAN_UNITS.has(unitSaid) : SPANS.has(field);
      return !m && isSpan;
    });
  return moments.flatMap((a) =>
    moments.flatMap((b): Suspicion[] => {
      if (a.column === b.column) return [];
      return numbers.flatMap(({ column, plain: list }) => spanLink(table, a, b, column, list));
    }),
  );
}
const clocksIn = ({ values }: Dated): boolean => isClock(values.find((x) => !Number.isNaN(x)) ?? NaN);
/** The time between the two moments of a line, in parts of a day; across midnight where only the hour is said. */
function between24(a: Dated, b: Dated, factor: number, record: number): number {
  const from = at(a.values, record);
  const raw = at(b.values, record) - from;
  return factor * (isClock(from) ? ((raw % 1) + 1) % 1 : raw);
}
/** Does the stated time differ from the time between? A whole day more or less cannot be told from hours. */
function isOffBy(seen: number, wanted: number, factor: number, isByClock: boolean): boolean {
  if (factor === HOURS && isByClock && Math.abs((seen - wanted) % 24) < 0.13) return false;
  return Math.abs(seen - wanted) > Math.max(0.02 * Math.abs(wanted), factor === HOURS ? 0.13 : 0.6);
}
function spanLink(table: RecordTable, a: Dated, b: Dated, column: number, list: Float64Array): Suspicion[] {
  const fields = [a, b].map((one) => table.mapping[one.column]?.field).join(' ');
  // Start, end and the time between by their own names.
  const isNamed = NAMED_SPANS.get(table.mapping[column]?.field ?? '') === fields;
  const isByClock = clocksIn(a);
  for (const factor of isByClock ? [HOURS, 1440] : [1, HOURS]) {
    const broken: number[] = [];
    let tried = 0;
    const expected = (record: number): number => between24(a, b, factor, record);
    for (let record = 0; record < list.length; record++) {
      const [seen, wanted] = [at(list, record), expected(record)];
      if (Number.isNaN(seen) || Number.isNaN(wanted)) continue;
      tried++;
      if (isOffBy(seen, wanted, factor, isByClock)) broken.push(record);
    }
    if (tried < 4 || broken.length > Math.max(1, (isNamed ? 0.5 : 0.3) * tried) || new Set(list).size < 3)
      continue;
    return broken.map((record) => ({
      rule: 'WHOLE.STATED',
      weight: 1.6,
      cells: [
        {
          record,
          column,
          share: isComputed(table, { record, column }) ? 0.02 : 0.4,
          meant: Number(expected(record).toPrecision(4)),
        },
        { record, column: a.column, share: 0.3 },
        { record, column: b.column, share: 0.3 },
      ],
      sentence: `"${headingAt(table, column)}" says ${plain(list[record] ?? NaN, 5)}, but from "${headingAt(table, a.column)}" to "${headingAt(table, b.column)}" it is ${plain(expected(record), 4)}.`,
    }));
  }
  return [];
}
