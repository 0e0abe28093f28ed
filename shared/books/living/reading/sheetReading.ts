import { isoDateOfSerial, serialOfIsoDate, MONTH_NAMES, WEEKDAY_WORDS } from '../../../units/dates';
import { PRICE_FIELDS, SETUP_FIELDS } from '../workings/setupFields';
import type { SetupField } from '../workings/setupFields';
import type { Cell } from '../../../base/values';
import { isError } from '../../../base/values';
import type { WithOwn } from '../../words/inEnglish';

/**
 * Finds in read cells what the sheets of a season were written with: by headings and labels, wherever rows
 * were put in since.
 */

export interface ReadSheet extends WithOwn {
  readonly name: string;
  readonly values: readonly (readonly Cell[])[];
}
/** The cells of a sheet as somebody typed them, in whatever language. */
export const ownOf = ({ values, own = values }: ReadSheet): readonly (readonly Cell[])[] => own;
/** A value as typed; nothing where the cell is blank or holds an error. */
export type Entry = string | number | boolean | undefined;
type Line<K extends string> = Readonly<Partial<Record<K, Entry>>>;

const entry = (cell: Cell | undefined): Entry =>
  cell === null || cell === undefined || cell === '' || isError(cell) ? undefined : cell;
export const textIn = (value: Entry): string => (value === undefined ? '' : String(value).trim());
export const numberIn = (value: Entry): number | undefined => (typeof value === 'number' ? value : undefined);
export const isYes = (value: Entry): boolean => value === true || /^(yes|y|x|true)$/i.test(textIn(value));
/** A day typed as a date or as 2027-03-31. */
export const dayOf = (value: Entry): number | undefined =>
  typeof value === 'string' ? serialOfIsoDate(value) : numberIn(value);

/** Headings are looked for in this many rows from the top. */
const TOP_ROWS = 60;
const headingRow = ({ values }: ReadSheet, titles: readonly string[], least: number): number =>
  values.slice(0, TOP_ROWS).findIndex((row) => titles.filter((title) => row.includes(title)).length >= least);

function rowsBelow<K extends string>(
  { values }: ReadSheet,
  head: number,
  titles: readonly (readonly [K, string])[],
): Line<K>[] {
  const places = titles
    .map(([key, title]) => [key, values[head]?.indexOf(title) ?? -1] as const)
    .filter(([, at]) => at >= 0);
  return values
    .slice(head + 1)
    .map((row) => Object.fromEntries(places.map(([key, at]) => [key, entry(row[at])])) as Line<K>);
}

export function rowsUnder<T extends string>(sheet: ReadSheet, titles: readonly T[]): Line<T>[] {
  const head = headingRow(sheet, titles, Math.ceil(titles.length / 2));
  return head < 0
    ? []
    : rowsBelow(
        sheet,
        head,
        titles.map((title) => [title, title] as const),
      );
}

const rightOf = (sheet: ReadSheet, label: string, steps = 1, isOwn = false): Entry => {
  const { values } = sheet;
  const at = values.findIndex((cells) => cells.includes(label));
  const column = (values[at]?.indexOf(label) ?? -1) + steps;
  return at < 0 ? undefined : entry((isOwn ? ownOf(sheet) : values)[at]?.[column]);
};

const weekdays = (text: string): unknown => {
  const words = text.split(/[\s,;]+/).filter(Boolean);
  const numbers = words.map(
    (word) => WEEKDAY_WORDS.findIndex((day) => word.toLowerCase().startsWith(day.toLowerCase())) + 1,
  );
  return numbers.every((n) => n > 0) ? numbers : words;
};

/** An entry of Setup as the order book takes it. */
function taken({ kind }: SetupField, value: Entry): unknown {
  if (kind === 'yesNo') return isYes(value);
  if (kind === 'clock') return typeof value === 'number' ? Math.round(value * 24 * 60) / 60 : value;
  if (kind === 'weekdays') return value === undefined ? undefined : weekdays(textIn(value));
  // A single day may have become a date when it was typed.
  if (kind === 'dates')
    return (typeof value === 'number' ? isoDateOfSerial(value) : textIn(value))
      .split(/[\s,;]+/)
      .filter(Boolean);
  return value;
}

/** Everything on Setup, in the shape of an order book. */
export function setupOf(sheet: ReadSheet): Record<string, unknown> {
  const book: Record<string, unknown> = {};
  for (const field of [...SETUP_FIELDS, ...PRICE_FIELDS]) {
    const value = taken(field, rightOf(sheet, field.label, 1, field.kind === 'text'));
    const [first, second] = field.path;
    if (value === undefined) continue;
    if (second === undefined) book[first] = value;
    else book[first] = { ...(book[first] as object | undefined), [second]: value };
  }
  book.temperatures = MONTH_NAMES.map((month) => rightOf(sheet, month) ?? null);
  const eggShares = MONTH_NAMES.map((month) => rightOf(sheet, month, 2) ?? null);
  if (eggShares.some((share) => share !== null)) book.eggShares = eggShares;
  return book;
}
