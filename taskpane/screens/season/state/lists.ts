import { grouped } from '../../../pane/values/show';
import { isoDateOfSerial } from '../../../../shared/units/dates';
import { columnsOf, entriesOf } from '../../../../shared/units/typedLists';
import { readTypedNumber } from '../../../../shared/units/typedNumber';
import { readTypedDay } from '../../../../shared/units/typedTime';
import type { OrderKey } from './fields';

/** Vats and fish as lines of text: typed, or pasted straight from a sheet. */

export const LISTS = ['vats', 'females', 'males'] as const;
export type ListKey = (typeof LISTS)[number];

export interface ListLine {
  /** As an editor counts them, from 1. */
  readonly line: number;
  readonly entry: Readonly<Record<string, unknown>>;
  /** Said instead of the order book's sentence, where the line itself is the trouble. */
  readonly fault?: string;
}

const HEADING = /^(name|order|tag|vat|female|male|fish|nr|no\.?|number)s?$/i;
const isHeading = (parts: readonly string[]): boolean =>
  HEADING.test(parts[0] ?? '') && !parts.some((part) => /\d/.test(part));

/** Shaped like a day, whether there is such a day or not: the order book says so of the wrong ones. */
const looksLikeDay = (text: string): boolean =>
  /^\d{1,4}[-/.]\d{1,2}[-/.]\d{1,4}$|^\d{5}$/.test(text) ||
  (/\d/.test(text) && ['time', 'open'].includes(readTypedDay(text).kind));
/** Words before the days on which a vat is out of use, and the day a fish died or was sold. */
export const OUT = 'out';
export const GONE = 'gone';
const outOf = (part: string): { readonly outFrom?: string; readonly outUntil?: string } | undefined => {
  const match =
    /^out(?:\s+of\s+use)?(?:\s+from)?\s*(?<from>\S*?)\s*(?:(?:to|until|till|–)\s*(?<until>\S+))?$/i.exec(
      part,
    );
  const { from, until } = match?.groups ?? {};
  return match ? { ...(from ? { outFrom: from } : {}), ...(until ? { outUntil: until } : {}) } : undefined;
};
const goneOf = (part: string): string | undefined =>
  /^(?:gone|dead|died|sold)(?:\s+on)?\s+(\S+)$/i.exec(part)?.[1];
/** A pasted date may be the number a sheet keeps for it. */
const dayOf = (text: string): string | number => (/^\d{5}$/.test(text) ? Number(text) : text);
/** Family and last use follow the tag in either order. */
function kinAndUse(parts: readonly string[]): {
  readonly family?: string;
  readonly lastUsed?: string | number;
  readonly goneOn?: string | number;
} {
  const gone = parts.map(goneOf).find((part) => part !== undefined);
  const given = parts.filter((part) => part !== '' && goneOf(part) === undefined);
  const [day, family] = [given.find(looksLikeDay), given.find((part) => !looksLikeDay(part))];
  return {
    ...(family === undefined ? {} : { family }),
    ...(day === undefined ? {} : { lastUsed: dayOf(day) }),
    ...(gone === undefined ? {} : { goneOn: dayOf(gone) }),
  };
}

const READERS: Readonly<Record<ListKey, (parts: readonly string[]) => ListLine['entry']>> = {
  vats: ([name, litres, ...rest]) => {
    const out = rest.map(outOf).find((part) => part !== undefined);
    const stages = rest
      .filter((part) => outOf(part) === undefined)
      .flatMap((part) => part.toLowerCase().split(/[\s,/+]+/))
      .filter((word) => word !== '' && word !== 'and');
    return { name, litres, ...(stages.length > 0 ? { holds: stages } : {}), ...out };
  },
  females: ([tag, kilograms, ...rest]) => ({ tag, kilograms, ...kinAndUse(rest) }),
  males: ([tag, ...rest]) => ({ tag, ...kinAndUse(rest) }),
};
const LEAST_PARTS: Readonly<Record<ListKey, number>> = { vats: 2, females: 2, males: 1 };

function faultOf(list: ListKey, parts: readonly string[]): string | undefined {
  if (parts.length < LEAST_PARTS[list])
    return `“${(parts[0] ?? '').slice(0, 40)}” has no ${list === 'vats' ? 'litres' : 'weight'}. Put a tab, a semicolon or a comma and a space between the columns.`;
  const most = list === 'females' ? 5 : 4;
  return list !== 'vats' && parts.filter(Boolean).length > most
    ? `has ${parts.length} columns; at most ${most} are read.`
    : undefined;
}

const known = new Map<ListKey, { readonly text: string; readonly lines: readonly ListLine[] }>();

/** The lines that say something; a first line of headings is passed over. */
export function readLines(list: ListKey, text: string): readonly ListLine[] {
  const last = known.get(list);
  if (last?.text === text) return last.lines;
  const all = text
    .split(/\r?\n/)
    .map((words, i) => ({
      words: words.trim(),
      parts: columnsOf(words.trim(), list !== 'males'),
      line: i + 1,
    }))
    .filter(({ words }) => words !== '');
  const rows = all[0] && isHeading(all[0].parts) ? all.slice(1) : all;
  const lines = rows.map(({ parts, line }): ListLine => {
    const fault = faultOf(list, parts);
    return { line, entry: READERS[list](parts), ...(fault === undefined ? {} : { fault }) };
  });
  known.set(list, { text, lines });
  return lines;
}

const FIELDS = { litres: { unit: 'L', min: 10, max: 200_000 }, kilograms: { unit: 'kg', min: 0.1, max: 15 } };
const total = (lines: readonly ListLine[], key: keyof typeof FIELDS): number =>
  lines.reduce((sum, { entry }) => {
    const read = readTypedNumber(String(entry[key] ?? ''), FIELDS[key]);
    return sum + (read.kind === 'number' ? read.value : 0);
  }, 0);
const counted = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

/** What was read, to be seen while typing: 9 females, 10.4 kg. */
export function echoOf(list: ListKey, text: string): string {
  const lines = readLines(list, text);
  if (lines.length === 0) return 'Nothing yet.';
  if (list === 'vats')
    return `${counted(lines.length, 'vat', 'vats')}, ${grouped(Math.round(total(lines, 'litres')))} L`;
  const families = new Set(lines.map(({ entry }) => entry.family).filter((family) => family !== undefined))
    .size;
  const kin = families > 0 ? `, ${counted(families, 'family', 'families')}` : '';
  const weight = list === 'females' ? `, ${Number(total(lines, 'kilograms').toFixed(1))} kg` : '';
  return `${counted(lines.length, list.slice(0, -1), list)}${weight}${kin}`;
}

/** Lines as they would be typed. */
export const linesText = (rows: readonly (readonly (string | undefined)[])[]): string =>
  rows
    .map((row) => {
      const parts = row.map((part) => part ?? '');
      while (parts.length > 1 && parts.at(-1) === '') parts.pop();
      return parts.join('; ');
    })
    .join('\n');

/** Orders as rows of a sheet: name, fish, number, day, weight, price, and yes for fish to breed from. */
export function readOrderLines(
  text: string,
): readonly { readonly texts: Readonly<Record<OrderKey, string>>; readonly forBreeding: boolean }[] {
  const rows = text
    .split(/\r?\n/)
    .map((line) => columnsOf(line.trim()))
    .filter((parts) => parts.some((part) => part !== ''));
  return (rows[0] && isHeading(rows[0]) ? rows.slice(1) : rows).map((parts) => {
    const [name = '', product = '', number = '', due = '', grams = '', price = '', breeding = ''] = parts;
    const fish = /^fingerling/i.test(product) ? 'fingerlings' : /^(fry)?$/i.test(product) ? 'fry' : product;
    return {
      texts: { name, product: fish, number, due: dueOf(due), grams, price },
      forBreeding: /^(yes|y|x|true)$/i.test(breeding),
    };
  });
}
const dueOf = (text: string): string => (/^\d{5}$/.test(text) ? isoDateOfSerial(Number(text)) : text);

/** Days off: dates with anything between them. */
export const daysIn = (text: string): readonly string[] =>
  entriesOf(text).flatMap((entry) => (/^[\d\s-]+$/.test(entry) ? entry.split(/\s+/) : [entry]));
