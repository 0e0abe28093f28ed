// Long: what a column of numbers or words says about its own cells, whatever it means
import { isNothingText, KIND, kindOfText } from '../../shape/kinds';
import type { ReadColumn, RecordTable } from '../../table';
import { fieldSpec } from '../../fields';
import { plain } from '../show';
import { boundsOf, isBeyond, robustOfSome } from '../figures/statistics';
import type { At, Suspicion } from './suspect';
import { headingAt, isComputed, logScale } from './suspect';

/** More cells than this are no slips. */
const MOST_STRANGE = 400;
/** The few values of a column that pass a test, each with its record; none between the bounds does. */
function strange(
  list: Float64Array,
  [low, high]: readonly [number, number],
  test: (value: number) => boolean,
): (readonly [number, number])[] {
  const found: (readonly [number, number])[] = [];
  for (let record = 0; record < list.length && found.length < MOST_STRANGE; record++) {
    const value = list[record] ?? NaN;
    if ((value <= low || value >= high) && test(value)) found.push([value, record]);
  }
  return found;
}

const alone = (at: At, meant?: number): Suspicion['cells'] => [{ ...at, share: 1, meant }];

/** A column of which at least this share of the filled cells are numbers. */
const MOSTLY = 0.75;
const LEAST = 5;

/** Text that is no number, no "none" and no habit of the column, where numbers stand. */
export function strangeWords(table: RecordTable): Suspicion[] {
  const counts = new Map<string, number>();
  const found = strangeIn(table, counts);
  return found.filter(({ text }) => (counts.get(text) ?? 0) === 1).map(({ suspicion }) => suspicion);
}

interface Strange {
  readonly text: string;
  readonly suspicion: Suspicion;
}
function countOf(values: Float64Array): number {
  let n = 0;
  for (let i = 0; i < values.length; i++) if (!Number.isNaN(values[i])) n++;
  return n;
}
/** Columns in which nearly all cells are numbers, or moments. */
function isMostlyRead({ content, moments }: ReadColumn): boolean {
  const usable = content.filled - content.errors;
  const read = moments ? countOf(moments.values) : content.numbers;
  return usable > 0 && read >= MOSTLY * usable;
}
/** Texts of a column that say neither a number or moment nor that there is none. */
function oddTexts({ run, moments }: ReadColumn): { readonly record: number; readonly text: string }[] {
  const odd: { readonly record: number; readonly text: string }[] = [];
  for (let record = 0; record < run.length; record++) {
    if (!Number.isNaN(run.numberAt(record))) continue;
    const cell = run.cellAt(record);
    if (typeof cell !== 'string' || cell.trim() === '' || isNothingText(cell)) continue;
    const kind = kindOfText(cell);
    const isRead = moments ? !Number.isNaN(moments.values[record] ?? NaN) : kind === KIND.number;
    if (!isRead && kind !== KIND.blank) odd.push({ record, text: cell.trim() });
  }
  return odd;
}
function strangeIn(table: RecordTable, counts: Map<string, number>): Strange[] {
  return table.columns.flatMap((one, column): Strange[] => {
    const field = table.mapping[column]?.field;
    if ((field && fieldSpec(field).kind === 'text') || !isMostlyRead(one)) return [];
    const { header, moments } = one;
    const odd = oddTexts(one);
    for (const { text } of odd) counts.set(text, (counts.get(text) ?? 0) + 1);
    return odd
      .filter(({ text }) => !/\s\S+\s+\S+\s/.test(text))
      .slice(0, MOST_STRANGE)
      .map(({ record, text }) => ({
        text,
        suspicion: {
          rule: moments ? 'WHOLE.MOMENT' : 'WHOLE.WORD',
          weight: 3,
          severity: moments && kindOfText(text) !== KIND.word ? 'impossible' : 'unlikely',
          cells: alone({ record, column }),
          sentence: moments
            ? `"${text.slice(0, 40)}" is no ${kindOfText(text) === KIND.date ? 'day of the calendar' : 'date or hour'}; the others under "${header}" are.`
            : `"${text.slice(0, 40)}" stands where "${header}" has numbers: it was not read.`,
        },
      }));
  });
}

/** One negative number where all others are none. */
export function negatives(table: RecordTable): Suspicion[] {
  return table.columns.flatMap(({ plain: list }, column): Suspicion[] => {
    const field = table.mapping[column]?.field;
    if (field === 'balance' || field === 'dueRunning' || field === 'due') return [];
    const below: number[] = [];
    let n = 0;
    for (let record = 0; record < list.length; record++) {
      const value = list[record] ?? NaN;
      if (Number.isNaN(value)) continue;
      n++;
      if (value < 0) below.push(record);
    }
    const few = n >= 4 && below.length <= Math.max(1, 0.08 * n);
    return few
      ? below
          .filter((record) => !isComputed(table, { record, column }))
          .map((record) => ({
            rule: 'WHOLE.NEGATIVE',
            weight: 3,
            severity: 'impossible',
            cells: alone({ record, column }, -(list[record] ?? NaN)),
            sentence: `"${headingAt(table, column)}" is below nothing here (${plain(list[record] ?? NaN, 9)}); no other line is.`,
          }))
      : [];
  });
}

/** Percent. */
const WHOLE = 100;
/** Over a hundred in a column of percent. */
export function overHundred(table: RecordTable): Suspicion[] {
  return table.columns.flatMap(({ plain: list, content }, column): Suspicion[] => {
    const mapped = table.mapping[column];
    const isShare = mapped?.field
      ? fieldSpec(mapped.field).quantity.unit === 'share'
      : mapped?.unitSaid === '%';
    if (!isShare || content.high > WHOLE || content.middle <= 1.01) return [];
    return strange(list, [-Infinity, WHOLE], (value) => value > WHOLE).flatMap(([value, record]) =>
      !isComputed(table, { record, column })
        ? [
            {
              rule: 'WHOLE.HUNDRED',
              weight: 3,
              severity: 'impossible' as const,
              cells: alone({ record, column }),
              sentence: `${plain(value, 6)} % under "${headingAt(table, column)}": a part cannot be more than the whole.`,
            },
          ]
        : [],
    );
  });
}

/** Spread of a column, in powers of ten, up to which a slip of a power of ten stands out. */
const TIGHT = 0.2;
const FACTOR = 0.65;

/** A value ten, a hundred, a thousand times the others, or nothing like any of them. */
export function wildNumbers(table: RecordTable): Suspicion[] {
  return table.columns.flatMap(({ plain: list, content, moments }, column): Suspicion[] => {
    if (moments || content.numbers < LEAST) return [];
    const field = table.mapping[column]?.field;
    if (field && (fieldSpec(field).kind === 'text' || DRIFTING.has(field))) return [];
    const own = logScale(table, column);
    if (own.n < LEAST || own.n < 0.7 * content.numbers || own.spread > TIGHT) return [];
    const spread = Math.max(own.spread, 0.03);
    // Few values know their spread badly.
    const limit = Math.max(FACTOR, (5 + 12 / own.n) * spread);
    const isWild = (value: number): boolean => value > 0 && Math.abs(Math.log10(value) - own.middle) >= limit;
    return strange(list, boundsOf(own.middle, limit), isWild).flatMap(([value, record]): Suspicion[] => {
      const off = Math.log10(value) - own.middle;
      if (isComputed(table, { record, column })) return [];
      if (isNearOthers(list, record)) return [];
      if (isFew(value, off, content.fractions) || isSumOfOthers(list, value)) return [];
      const power = Math.round(off);
      const fits = power !== 0 && Math.abs(off - power) <= Math.max(0.1, 2 * spread);
      const meant = fits ? Number((value / 10 ** power).toPrecision(6)) : undefined;
      return [
        {
          rule: 'WHOLE.WILD',
          weight: 1.5 + (fits ? 0.8 : 0),
          cells: alone({ record, column }, meant),
          sentence: `${plain(value, 9)} is nothing like the other ${own.n - 1} numbers under "${headingAt(table, column)}", whose middle is ${plain(10 ** own.middle, 4)}.`,
        },
      ];
    });
  });
}
/** A handful where others count hundreds may be so. */
const HANDFUL = 20;
const isFew = (value: number, off: number, fractions: number): boolean =>
  off < 0 && fractions === 0 && value <= HANDFUL;
/** A total that stands among its parts. */
function isSumOfOthers(list: Float64Array, value: number): boolean {
  const sum = list.reduce((all, x) => (Number.isNaN(x) ? all : all + x), 0) - value;
  return Math.abs(sum - value) <= 0.002 * value;
}

/** Counts that follow trade and chance, and sums that grow. */
const DRIFTING = new Set([
  'dead',
  'deadTotal',
  'deadRunning',
  'sold',
  'movedIn',
  'movedOut',
  'income',
  'expense',
  'balance',
  'due',
  'dueRunning',
  'paid',
  'amount',
  'quantity',
  'unitPrice',
  'deposit',
  'treatAmount',
  'treatRate',
  'eggsDead',
]);
/** Another value of the column is as far out. */
function isNearOthers(list: Float64Array, record: number): boolean {
  const value = list[record] ?? NaN;
  return list.some((other, i) => i !== record && other > 0 && Math.abs(Math.log10(value / other)) < 0.38);
}

/** Spreads that count as off; a few values know their spread badly. */
const [FAR, FOR_FEW] = [7, 20];
/** Numbers that lie close together on a plain scale: temperatures, pH, lengths. */
export function offNumbers(table: RecordTable): Suspicion[] {
  return table.columns.flatMap(({ plain: list, content, moments }, column): Suspicion[] => {
    const field = table.mapping[column]?.field;
    if (moments || content.numbers < 8 || (field && fieldSpec(field).kind === 'text')) return [];
    const own = robustOfSome(list);
    if (!(own.middle > 0) || own.spread > 0.12 * own.middle || content.fractions < 0.2) return [];
    const least = Math.max(own.spread, 0.012 * own.middle);
    const limit = FAR + FOR_FEW / own.n;
    if (!isBeyond(list, own.middle - limit * least, own.middle + limit * least)) return [];
    const spread = Math.max(least, 1.5 * stepOf(list));
    const times = new Map<number, number>();
    for (const value of list) times.set(value, (times.get(value) ?? 0) + 1);
    const bounds = [own.middle - limit * spread, own.middle + limit * spread] as const;
    return strange(list, bounds, (value) => Math.abs(value - own.middle) > limit * spread).flatMap(
      ([value, record]): Suspicion[] => {
        if (
          (times.get(value) ?? 0) > 1 ||
          isComputed(table, { record, column }) ||
          isTrendOf(list, record, own.middle)
        )
          return [];
        const celsius = ((value - 32) * 5) / 9;
        const isFahrenheit = Math.abs(celsius - own.middle) < 4 * spread && value > 60 && value < 105;
        return [
          {
            rule: isFahrenheit ? 'WHOLE.FAHRENHEIT' : 'WHOLE.WILD',
            weight: isFahrenheit ? 2.4 : 1.4,
            cells: alone({ record, column }, isFahrenheit ? Math.round(10 * celsius) / 10 : undefined),
            sentence: isFahrenheit
              ? `${plain(value, 5)} under "${headingAt(table, column)}" looks like °F: that is ${plain(celsius, 3)} °C, as the others are.`
              : `${plain(value, 9)} lies far from the other ${own.n - 1} numbers under "${headingAt(table, column)}", whose middle is ${plain(own.middle, 4)}.`,
          },
        ];
      },
    );
  });
}
/** The step in which a column is written: half of it for numbers like 26.5 and 27.0. */
function stepOf(list: Float64Array): number {
  const kept = [...new Set(list)].filter((x) => !Number.isNaN(x)).sort((a, b) => a - b);
  let least = Infinity;
  for (let i = 1; i < kept.length; i++) least = Math.min(least, (kept[i] ?? 0) - (kept[i - 1] ?? 0));
  return Number.isFinite(least) ? least / 2 : 0;
}
const isTrendOf = (list: Float64Array, record: number, middle: number): boolean =>
  [record - 1, record + 1].some((i) => {
    const [near, value] = [list[i] ?? NaN, list[record] ?? NaN];
    return Math.abs(near - value) < 0.3 * Math.abs(value - middle);
  });
