import type { NumericField } from '../../fields';
import { fieldSpec } from '../../fields';
import type { RecordTable } from '../../table';
import { at } from '../../meaning/sampled';
import { plain } from '../show';
import type { Suspicion } from './suspect';
import { headingAt, isComputed, oddness } from './suspect';

/** A part that cannot be more than its whole. */
const PARTS: readonly (readonly [part: NumericField, whole: NumericField, more?: NumericField | 'in'])[] = [
  ['hatched', 'eggs'],
  ['fry', 'hatched'],
  ['fingerlings', 'fry'],
  ['fertilised', 'eggs'],
  ['sampleGood', 'sampleSize'],
  ['eggsDead', 'eggs'],
  ['alive', 'stocked'],
  ['dead', 'opening', 'in'],
  ['sold', 'opening', 'in'],
  ['dead', 'fish'],
  ['dead', 'stocked'],
  ['deposit', 'amount'],
  ['paid', 'amount', 'dueRunning'],
  ['gradeSmall', 'graded'],
  ['gradeMiddle', 'graded'],
  ['gradeBig', 'graded'],
  ['gradeCull', 'graded'],
  ['doseFirst', 'doseSecond'],
];

const columnOf = (table: RecordTable, field: NumericField): number =>
  table.mapping.findIndex((one) => one.field === field && !one.isRepeated && one.confidence >= 0.5);

const added = (more: (typeof PARTS)[number][2]): readonly NumericField[] =>
  more === 'in' ? ['movedIn', 'stocked'] : more ? [more] : [];
/** What a whole may have been in every line, with what came in besides. */
function wholesOf(whole: Float64Array, besides: readonly (Float64Array | undefined)[]): Float64Array {
  if (besides.length === 0) return whole;
  const more = new Float64Array(whole.length);
  for (const list of besides)
    if (list) for (let i = 0; i < more.length; i++) more[i] = at(more, i) + Math.max(0, at(list, i) || 0);
  return whole.map((x, i) => x + at(more, i));
}

export function morePartThanWhole(table: RecordTable): Suspicion[] {
  return PARTS.flatMap(([part, whole, more]): Suspicion[] => {
    const columns = [columnOf(table, part), columnOf(table, whole)];
    const [x, y] = [table.numbers[part], table.numbers[whole]];
    if (columns.includes(-1) || !x || !y) return [];
    const wholes = wholesOf(
      y,
      added(more).map((field) => table.numbers[field]),
    );
    const found: Suspicion[] = [];
    let n = 0;
    for (let record = 0; record < x.length; record++) {
      const [p, w] = [at(x, record), at(wholes, record)];
      if (Number.isNaN(p) || !(w > 0)) continue;
      n++;
      if (p > w * 1.0001) found.push(tooMuch(table, columns, record, p, w));
    }
    return found.length > Math.max(1, 0.2 * n) ? [] : found;
  });
}
function tooMuch(
  table: RecordTable,
  columns: readonly number[],
  record: number,
  p: number,
  w: number,
): Suspicion {
  const weights = columns.map((column) => {
    const cell = { record, column };
    return isComputed(table, cell) ? 0.02 : 0.5 + Math.min(10, oddness(table, cell));
  });
  const sum = weights.reduce((all, weight) => all + weight, 0);
  const [a, b] = columns.map((column) => headingAt(table, column));
  return {
    rule: 'WHOLE.PART',
    weight: 1.7,
    severity: 'impossible',
    cells: columns.map((column, i) => ({ record, column, share: at(weights, i) / sum })),
    sentence: `More under "${a}" (${plain(p, 9)}) than there were under "${b}" (${plain(w, 9)}).`,
  };
}

/** A rise of pH that air alone does not make from one reading to the next. */
const LEAST_RISE = 0.5;
/** Lines in which nothing is said to be given: that few of them may rise for the rule to speak. */
const MOST_ALONE = 0.25;

/** Lines without a dose whose pH stayed, from which on a blank is known to mean none. */
const LEAST_STILL = 3;

/** A pH that moves though nothing was given, where lines without a dose otherwise keep their pH. */
export function risesAlone(table: RecordTable): Suspicion[] {
  const [before, after, dose] = [table.numbers.ph, table.numbers.phAfter, table.numbers.materialDose];
  const [a, b, d] = [columnOf(table, 'ph'), columnOf(table, 'phAfter'), columnOf(table, 'materialDose')];
  if (!before || !after || !dose || a < 0 || b < 0 || d < 0) return [];
  if (dose.filter((x) => x > 0).length < 3) return [];
  const bare: { readonly record: number; readonly rise: number }[] = [];
  for (const [record, value] of after.entries()) {
    const rise = value - (before[record] ?? NaN);
    if (!((dose[record] ?? NaN) > 0) && !Number.isNaN(rise)) bare.push({ record, rise });
  }
  const alone = bare.filter(({ rise }) => Math.abs(rise) >= LEAST_RISE);
  // A dose left blank in many lines that rise was not written down; that is no fault of the readings.
  if (alone.length > Math.max(1, MOST_ALONE * bare.length)) return [];
  const isKept = bare.length - alone.length >= LEAST_STILL;
  const accused = alone.filter(({ record }) => isKept || dose[record] === 0);
  return accused.map(({ record }) => ({
    rule: 'WHOLE.RISE',
    weight: 1.5,
    cells: [
      { record, column: b, share: 0.5 },
      { record, column: d, share: 0.3 },
      { record, column: a, share: 0.2 },
    ],
    sentence: `The pH goes from ${plain(before[record] ?? NaN, 3)} to ${plain(after[record] ?? NaN, 3)} with nothing given.`,
  }));
}

/** Days on which the morning was warmer, from which on it is the weather. */
const MOST_WARM = 0.05;
const LEAST_DAYS = 10;
const LEAST_WARMER = 0.4;
/** A morning warmer than the afternoon, alone among many days: the two were exchanged. */
export function warmMornings(table: RecordTable): Suspicion[] {
  const [low, high] = [table.numbers.temperatureLow, table.numbers.temperatureHigh];
  const [a, b] = [columnOf(table, 'temperatureLow'), columnOf(table, 'temperatureHigh')];
  if (!low || !high || a < 0 || b < 0) return [];
  const days = low.filter((x, i) => !Number.isNaN(x - (high[i] ?? NaN))).length;
  const warm = Array.from(low.keys()).filter((i) => (low[i] ?? NaN) - (high[i] ?? NaN) >= LEAST_WARMER);
  const colder = low.filter((x, i) => x > (high[i] ?? NaN)).length;
  if (days < LEAST_DAYS || colder > Math.max(1, MOST_WARM * days)) return [];
  return warm.map((record) => ({
    rule: 'WHOLE.PART',
    weight: 1.2,
    severity: 'unlikely',
    cells: [
      { record, column: a, share: 0.5 },
      { record, column: b, share: 0.5 },
    ],
    sentence: `"${headingAt(table, a)}" is warmer than "${headingAt(table, b)}", alone among ${days} days: the two may be exchanged.`,
  }));
}

/** Fish do not get lighter or shorter from one weighing of a group to the next. */
export function shrinking(table: RecordTable): Suspicion[] {
  const dates = table.numbers.date;
  const groups = table.texts.vat ?? table.texts.female ?? table.texts.run ?? [];
  return (['weight', 'length', 'fish'] as const).flatMap((field): Suspicion[] => {
    const list = table.numbers[field];
    const column = columnOf(table, field);
    if (!list || !dates || column < 0) return [];
    const steps = stepsOf(list, dates, groups);
    const falls = steps.filter(({ before, record }) => {
      const change = at(list, record) / at(list, before);
      return field === 'fish' ? change > 1.02 : change < 0.9;
    });
    if (steps.length < 4 || falls.length > Math.max(1, 0.15 * steps.length)) return [];
    return falls.map(({ before, record }): Suspicion => {
      const [odd, oddBefore] = [record, before].map((one) => oddness(table, { record: one, column })) as [
        number,
        number,
      ];
      const group = groups[record] ?? '';
      return {
        rule: 'WHOLE.SHRINKS',
        weight: 1.2,
        cells: [
          { record, column, share: (odd + 1.2) / (odd + oddBefore + 2.2) },
          { record: before, column, share: (oddBefore + 1) / (odd + oddBefore + 2.2) },
        ],
        sentence: `The ${fieldSpec(field).noun} goes from ${plain(at(list, before), 5)} to ${plain(at(list, record), 5)}${group ? ` in ${group}` : ''}: ${field === 'fish' ? 'fish do not become more' : 'fish do not get smaller'} by themselves.`,
      };
    });
  });
}
interface Step {
  readonly before: number;
  readonly record: number;
}
/** From each number of a group to the next in time. */
function stepsOf(list: Float64Array, dates: Float64Array, groups: readonly string[]): Step[] {
  const last = new Map<string, number>();
  const steps: Step[] = [];
  for (let record = 0; record < list.length; record++) {
    if (!(at(list, record) > 0)) continue;
    const group = groups[record] ?? '';
    const before = last.get(group);
    last.set(group, record);
    if (before !== undefined && at(dates, record) >= at(dates, before)) steps.push({ before, record });
  }
  return steps;
}
