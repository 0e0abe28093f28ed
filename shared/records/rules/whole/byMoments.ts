// Long: dates that break their order, hours that break their habit, spans that do not follow
import { dayParts, dayText, serialOfCalendarDay, timeText } from '../../../units/dates';
import type { RecordTable } from '../../table';
import { plain } from '../show';
import { rankOf, robustOfSome } from '../figures/statistics';
import type { At, Suspicion } from './suspect';
import { headingAt, isComputed } from './suspect';

export const isDated = (value: number): boolean => value > 20_000;
export const isClock = (value: number): boolean => value >= 0 && value < 1;

export interface Dated {
  readonly column: number;
  readonly values: Float64Array;
}
/** Columns of which at least four in five moments are of the kind; worked out once a table. */
const columnsOf = (isOne: (value: number) => boolean): ((table: RecordTable) => readonly Dated[]) => {
  const known = new WeakMap<RecordTable, readonly Dated[]>();
  return (table) => {
    let found = known.get(table);
    if (!found) {
      found = table.columns.flatMap(({ moments }, column) => {
        if (!moments) return [];
        let [kept, fitting] = [0, 0];
        for (let i = 0; i < moments.values.length; i++) {
          const x = moments.values[i] ?? NaN;
          if (Number.isNaN(x)) continue;
          kept++;
          if (isOne(x)) fitting++;
        }
        return kept > 0 && fitting >= 0.8 * kept ? [{ column, values: moments.values }] : [];
      });
      known.set(table, found);
    }
    return found;
  };
};
/** The records of which the value passes a test. */
function recordsWhere(values: Float64Array, test: (value: number) => boolean): number[] {
  const found: number[] = [];
  for (let record = 0; record < values.length; record++) if (test(values[record] ?? NaN)) found.push(record);
  return found;
}
export const dateColumns = columnsOf(isDated);
export const clockColumns = columnsOf(isClock);

const dateWord = (serial: number): string => `${dayText(serial)} ${dayParts(serial).year}`;

/** The day that one slip of month or year would have made of another. */
function slippedTo(value: number, low: number, high: number): number | undefined {
  const { year, month, day } = dayParts(value);
  const tries = [
    ...[-1, 1, -2, 2, -10, 10, -100, 100].map((step) => serialOfCalendarDay(year + step, month, day)),
    ...[-1, 1, -2, 2, 3, -3].map((step) => serialOfCalendarDay(year, month + step, day)),
    serialOfCalendarDay(year, day, month),
    serialOfCalendarDay(month === 12 ? year + 1 : year - 1, month === 12 ? 1 : 12, day),
  ];
  return tries.find((one) => one !== undefined && one >= low && one <= high);
}

/** Rows of one group in their order: a day that stands before the one above it or far behind the one below. */
function orderFaults(table: RecordTable, { column, values }: Dated, isFirst: boolean): Suspicion[] {
  const records: number[] = [];
  for (let record = 0; record < values.length; record++)
    if (isDated(Math.floor(values[record] ?? NaN))) records.push(record);
  const days = Float64Array.from(records, (record) => Math.floor(values[record] ?? NaN));
  const steps = days.subarray(1).map((day, i) => day - (days[i] ?? NaN));
  let ups = 0;
  for (const step of steps) if (step >= 0) ups++;
  if (ups < 0.8 * steps.length) return [];
  const { middle } = robustOfSome(steps);
  const usual = Math.max(2, middle, robustOfSome(steps.map(Math.abs)).middle);
  const found: Suspicion[] = [];
  for (let i = 0; i < records.length; i++) {
    const record = records[i] ?? 0;
    const fault = outOfOrder(days[i] ?? NaN, days[i - 1], days[i + 1], usual);
    if (fault) found.push(...orderFault(table, column, record, fault, isFirst, { days, steps, i, usual }));
  }
  return found;
}
interface Line {
  readonly days: Float64Array;
  readonly steps: Float64Array;
  readonly i: number;
  readonly usual: number;
}
function orderFault(
  table: RecordTable,
  column: number,
  record: number,
  fault: 'order' | 'jump',
  isFirst: boolean,
  { days, steps, i, usual }: Line,
): Suspicion[] {
  const [value, before, after] = [days[i] ?? NaN, days[i - 1], days[i + 1]];
  if (isHabit(steps, i, back(value, before, after))) return [];
  const meant = slippedTo(value, ...between(value, before, after, 4 * usual));
  // Later stages need not end in the order they began: only a slip of month or year stands out.
  if ((fault === 'jump' || !isFirst) && meant === undefined) return [];
  const parts: (At & { share: number; meant?: number | undefined })[] = [{ record, column, share: 1, meant }];
  return [
    {
      rule: 'WHOLE.DATE',
      weight: meant === undefined ? 1.5 : 2.2,
      cells: parts,
      sentence: `${dateWord(value)} under "${headingAt(table, column)}" breaks the order of the lines: ${before === undefined ? '' : `${dateWord(before)} stands above`}${before !== undefined && after !== undefined ? ', ' : ''}${after === undefined ? '' : `${dateWord(after)} below`}.`,
    },
  ];
}
/** The days a line may have: from the line above to the line below, a day more on either side. */
const between = (
  value: number,
  before: number | undefined,
  after: number | undefined,
  reach: number,
): readonly [number, number] => [
  (before ?? (after ?? value) - reach) - 1,
  (after ?? (before ?? value) + reach) + 1,
];
/** How far a day goes back: behind the line above, or the line below behind it. */
const back = (value: number, before: number | undefined, after: number | undefined): number =>
  Math.max(before === undefined ? 0 : before - value, after === undefined ? 0 : value - after);
/** Lines elsewhere go back by half as much: the table is not kept in the order of this column. */
function isHabit(steps: Float64Array, i: number, size: number): boolean {
  let others = 0;
  const least = Math.max(2, 0.4 * size);
  for (let j = 0; j < steps.length; j++) if (j !== i - 1 && j !== i && -(steps[j] ?? NaN) >= least) others++;
  return others > 0.04 * steps.length;
}

/** 'order' where it stands before the line above or after the line below though these agree; 'jump' at the ends. */
function outOfOrder(
  value: number,
  before: number | undefined,
  after: number | undefined,
  usual: number,
): 'order' | 'jump' | undefined {
  if (before !== undefined && after !== undefined)
    return isOutside(value, before, after, usual) ? 'order' : undefined;
  const other = before ?? after;
  if (other === undefined) return undefined;
  const gap = before === undefined ? other - value : value - other;
  return gap > 8 * usual || gap < -usual ? 'jump' : undefined;
}
function isOutside(value: number, before: number, after: number, usual: number): boolean {
  if (after < before || after - before > Math.max(20, 8 * usual)) return false;
  // A day or two behind the line below may be a line written late.
  return value < before - 1 || value > after + usual + 5;
}

/** Two days of one line: how far apart is a habit. */
function pairFaults(table: RecordTable): Suspicion[] {
  const dated = dateColumns(table);
  return dated.flatMap((a, i) =>
    dated.slice(i + 1).flatMap((b): Suspicion[] => {
      const gaps = a.values.map((x, record) =>
        isDated(x) && isDated(b.values[record] ?? NaN)
          ? Math.floor(b.values[record] ?? NaN) - Math.floor(x)
          : NaN,
      );
      const own = robustOfSome(gaps);
      if (own.n < 4) return [];
      const backward = gaps.filter((gap) => gap < 0).length;
      const limit = Math.max(6, 8 * own.spread);
      const records: number[] = [];
      for (let record = 0; record < gaps.length; record++) {
        const gap = gaps[record] ?? NaN;
        if (Math.abs(gap - own.middle) > limit || gap < 0) records.push(record);
      }
      if (records.length > Math.max(2, 0.3 * own.n) || records.length > 400) return [];
      return records.flatMap((record): Suspicion[] => {
        const gap = gaps[record] ?? NaN;
        const off = gap - own.middle;
        const isBackward = gap < 0 && own.middle >= 0 && backward <= Math.max(1, 0.15 * own.n);
        if (!(Math.abs(off) > limit) && !isBackward) return [];
        const [x, y] = [a.values[record] ?? NaN, b.values[record] ?? NaN];
        const slack = Math.max(3, 4 * own.spread);
        const meantB = slippedTo(y, x + own.middle - slack, x + own.middle + slack);
        const meantA = slippedTo(x, y - own.middle - slack, y - own.middle + slack);
        const [sa, sb] = [meantA === undefined ? 0.4 : 1, meantB === undefined ? 0.5 : 1];
        return [
          {
            rule: 'WHOLE.GAP',
            weight: 1.6,
            severity: isBackward ? 'impossible' : 'unlikely',
            cells: [
              { record, column: a.column, share: sa / (sa + sb), meant: meantA },
              { record, column: b.column, share: sb / (sa + sb), meant: meantB },
            ],
            sentence: `From "${headingAt(table, a.column)}" ${dateWord(x)} to "${headingAt(table, b.column)}" ${dateWord(y)} are ${plain(gap, 5)} days; the other lines have about ${plain(own.middle, 3)}.`,
          },
        ];
      });
    }),
  );
}

/** Hours on the dial: middle and spread around the clock. */
export function aroundClock(values: Float64Array): {
  readonly middle: number;
  readonly spread: number;
  readonly n: number;
} {
  const kept: number[] = [];
  const every = Math.max(1, Math.floor(values.length / 400));
  for (let i = 0; i < values.length; i += every) if (isClock(values[i] ?? NaN)) kept.push(values[i] ?? NaN);
  let best = { middle: NaN, spread: Infinity };
  // The middle of a clock is the value nearest to all others.
  const step = Math.max(1, Math.floor(kept.length / 60));
  for (let i = 0; i < kept.length; i += step) {
    const center = kept[i] ?? 0;
    const spread =
      robustOfSome(kept.map((x) => turn(x - center))).spread +
      Math.abs(robustOfSome(kept.map((x) => turn(x - center))).middle);
    if (spread < best.spread) best = { middle: center, spread };
  }
  return { ...best, n: kept.length * every };
}
/** Difference on the dial, from −12 h to 12 h. */
export const turn = (x: number): number => x - Math.round(x);

export const HOURS = 24;
function clockFaults(table: RecordTable): Suspicion[] {
  return clockColumns(table).flatMap(({ column, values }): Suspicion[] => {
    const own = aroundClock(values);
    if (own.n < 6 || own.spread > 1.6 / HOURS) return [];
    const far = recordsWhere(
      values,
      (value) =>
        isClock(value) && !(Math.abs(turn(value - own.middle)) < Math.max(4.5 / HOURS, 7 * own.spread)),
    );
    const found = far.flatMap((record): Suspicion[] => {
      const value = values[record] ?? NaN;
      const off = Math.abs(turn(value - own.middle));
      const half = Math.abs(off - 0.5) < Math.max(1.5 / HOURS, 3 * own.spread);
      if (isComputed(table, { record, column })) return [];
      // Two at that hour are a habit, not a slip.
      if (
        values.some(
          (other, i) => i !== record && isClock(other) && Math.abs(turn(other - value)) < 1.2 / HOURS,
        )
      )
        return [];
      return [
        {
          rule: 'WHOLE.HOUR',
          weight: half ? 1.9 : 1.3,
          cells: [{ record, column, share: 1, meant: half ? (value + 0.5) % 1 : undefined }],
          sentence: `${timeText(value)} under "${headingAt(table, column)}" is far from the usual ${timeText(own.middle)}${half ? `; ${timeText((value + 0.5) % 1)} would fit` : ''}.`,
        },
      ];
    });
    return found.length > Math.max(1, 0.2 * own.n) ? [] : found;
  });
}

const LEAST_DATES = 5;
const LEAST_YEARS_OFF = 200;
/** A day years away from all others of its column, that one slip of the year would bring among them. */
function farDays(table: RecordTable): Suspicion[] {
  return dateColumns(table).flatMap(({ column, values }): Suspicion[] => {
    const days = values.filter(isDated);
    if (days.length < LEAST_DATES) return [];
    const [low, high] = [rankOf(days, 0.1), rankOf(days, 0.9)];
    const reach = Math.max(LEAST_YEARS_OFF, high - low);
    const far: number[] = [];
    for (let record = 0; record < values.length; record++) {
      const x = values[record] ?? NaN;
      if ((x < low - reach || x > high + reach) && isDated(x)) far.push(record);
    }
    if (far.length > Math.max(1, 0.1 * days.length)) return [];
    return far.flatMap((record): Suspicion[] => {
      const x = values[record] ?? NaN;
      const meant = slippedTo(x, low - reach / 2, high + reach / 2);
      return meant === undefined
        ? []
        : [
            {
              rule: 'WHOLE.DATE',
              weight: 1.8,
              cells: [{ record, column, share: 1, meant }],
              sentence: `${dateWord(x)} under "${headingAt(table, column)}" is far from all others, ${dateWord(low)} to ${dateWord(high)}.`,
            },
          ];
    });
  });
}

export const bySuspectMoments = (table: RecordTable): Suspicion[] => [
  ...farDays(table),
  ...dateColumns(table).flatMap((one, i) => orderFaults(table, one, i === 0)),
  ...pairFaults(table),
  ...clockFaults(table),
];
