import type { SheetCells } from '../read/sheetCells';
import { valueAt } from '../read/sheetCells';
import { unitOfText } from '../columns/cells/units';
import { headingOf } from '../meaning/heading';
import { fold } from '../words/fold';
import { conceptsOf, startsWith } from '../words/lexicon';
import type { Kinds } from './kinds';
import { KIND, kindsOf } from './kinds';

/** A value of a form: where it stands, and the label beside it. */
export interface FormCell {
  readonly label: string;
  /** Words without a value above it: the part of the form it stands in. */
  readonly parent: string;
  /** The label again with its number where a form has it twice. */
  readonly key: string;
  readonly position: number;
  readonly column: number;
}
/** One run written as labels with values beside them. */
export interface FormRecord {
  readonly sheet: SheetCells;
  readonly cells: readonly FormCell[];
}

interface Label {
  readonly position: number;
  readonly column: number;
  readonly text: string;
  /** Columns to its right: where its values stand, and the one that only names units. */
  readonly isKnown: boolean;
}

const LEAST_LABELS = 3;
const LEAST_KNOWN = 0.45;
const MOST_LABELS = 4000;

export const labelKey = (label: string): string => fold(label).replace(/[\s:.=]+$/, '');

/** Does the text name something of a record book? */
export function isKnownLabel(text: string): boolean {
  const { words } = headingOf(text);
  for (const [concept, score] of conceptsOf(words || text))
    if (score >= 0.6 && !/^(?:value_|month_|weekday_)/.test(concept)) return true;
  return false;
}

type Taken = (position: number, column: number) => boolean;

function labelsIn(kinds: Kinds, column: number, taken: Taken): Label[] {
  const { sheet } = kinds;
  const labels: Label[] = [];
  for (let position = 0; position < (sheet.columns[column]?.length ?? 0); position++) {
    if (labels.length >= MOST_LABELS) break;
    if (kinds.at(position, column) !== KIND.word || taken(position, column)) continue;
    const text = String(valueAt(sheet, position, column))
      .replace(/[:=\s]+$/, '')
      .trim();
    if (text.length < 1 || text.length > 60) continue;
    labels.push({ position, column, text, isKnown: isKnownLabel(text) });
  }
  return labels;
}

const MOSTLY_UNITS = 0.6;
const column = (labels: readonly Label[]): number => labels[0]?.column ?? 0;
/** A column of labels: words, most with something filled to their right, several of them known or coming again. */
function isLabelColumn(kinds: Kinds, labels: readonly Label[]): boolean {
  if (labels.length < LEAST_LABELS) return false;
  const filled = labels.filter(
    ({ position, column }) =>
      kinds.at(position, column + 1) !== KIND.blank || kinds.at(position, column + 2) !== KIND.blank,
  );
  const withData = labels.filter(({ position, column }) =>
    [1, 2].some((step) => kinds.isData(position, column + step)),
  );
  const known = filled.filter(({ isKnown }) => isKnown).length;
  // The column beside the labels that says in which unit.
  const units = labels.filter(({ text }) => unitOfText(text.replace(/[()]/g, '')) !== undefined).length;
  if (column(labels) > 0 && units >= MOSTLY_UNITS * labels.length) return false;
  if (filled.length < LEAST_LABELS || withData.length < 2) return false;
  return known >= LEAST_KNOWN * filled.length || startOver(labels);
}

/** Forms below each other are known by their labels, which come again in order, whatever these say. */
function startOver(labels: readonly Label[]): boolean {
  const keys = labels.map(({ text }) => labelKey(text));
  const cuts = openingAt(keys);
  return cuts.length >= 2 && (cuts[1] ?? 0) - (cuts[0] ?? 0) >= LEAST_LABELS;
}

const LEAST_ALIKE = 0.6;
/** Where the labels start over: the first label that cuts the column into parts that are alike. */
function openingAt(keys: readonly string[]): readonly number[] {
  const places = new Map<string, number[]>();
  for (const [i, key] of keys.entries()) places.set(key, [...(places.get(key) ?? []), i]);
  for (const [key, at] of places) {
    if (at.length < 2 || (at[0] ?? 0) > 2) continue;
    const parts = at.map((from, i) => keys.slice(from, at[i + 1] ?? keys.length));
    if (parts.some((part) => part.length < 2) || parts[0]?.[0] !== key) continue;
    if (alike(parts) >= LEAST_ALIKE) return at;
  }
  return [];
}
/** Mean share of labels that two neighbouring parts have in common. */
function alike(parts: readonly (readonly string[])[]): number {
  let sum = 0;
  for (let i = 1; i < parts.length; i++) {
    const [a, b] = [new Set(parts[i - 1]), new Set(parts[i])];
    const common = [...a].filter((key) => b.has(key)).length;
    sum += common / Math.max(3, Math.min(a.size, b.size));
  }
  return sum / (parts.length - 1);
}

/** Labels of one column, cut where they start over: forms below each other. */
function stacks(labels: readonly Label[]): Label[][] {
  const cuts = openingAt(labels.map(({ text }) => labelKey(text)));
  if (cuts.length === 0) return [[...labels]];
  const first = cuts[0] ?? 0;
  return cuts.map((from, i) => labels.slice(i === 0 ? from - first : from, cuts[i + 1] ?? labels.length));
}

/** Runs side by side of which the values are looked for. */
const MOST_BESIDE = 300;

interface Beside {
  readonly values: readonly number[];
  readonly units: number | undefined;
}

/** Columns to the right of the labels that hold values, and the one that holds units. */
function beside(kinds: Kinds, labels: readonly Label[], to: number): Beside {
  const { sheet } = kinds;
  const filled = new Map<number, number>();
  let units: number | undefined;
  const first = labels[0]?.column ?? 0;
  for (let column = first + 1; column < Math.min(to, sheet.columns.length, first + MOST_BESIDE); column++) {
    const cells = labels.map(({ position }) => position).filter((p) => kinds.at(p, column) !== KIND.blank);
    const named = cells.filter(
      (p) =>
        kinds.at(p, column) === KIND.word &&
        unitOfText(String(valueAt(sheet, p, column)).replace(/[()]/g, '')),
    ).length;
    if (named >= 2 && named >= cells.length * 0.6) units ??= column;
    else if (cells.length > 0) filled.set(column, cells.length);
    else if (filled.size > 0 && units === undefined && column > first + 2) break;
  }
  const most = Math.max(0, ...filled.values());
  return {
    values: [...filled].filter(([, n]) => n >= most * 0.4).map(([column]) => column),
    units,
  };
}

/** Runs kept as forms: labels in a column, values beside them, one or several runs next to each other. */
export function layForms(sheet: SheetCells, taken: Taken): FormRecord[] {
  const kinds = kindsOf(sheet);
  const byColumn = new Map<number, Label[]>();
  for (let column = 0; column < sheet.columns.length; column++) {
    const labels = labelsIn(kinds, column, taken);
    if (isLabelColumn(kinds, labels)) byColumn.set(column, labels);
  }
  const columns = [...byColumn.keys()].sort((a, b) => a - b);
  return columns.flatMap((column, i) =>
    stacks(byColumn.get(column) ?? []).flatMap((labels) => {
      const { values, units } = beside(kinds, labels, columns[i + 1] ?? Infinity);
      return values.flatMap((at) => {
        if (isSums(kinds, labels, at, values)) return [];
        const cells = cellsOf(kinds, labels, at, units);
        return cells.length >= 2 ? [{ sheet, cells }] : [];
      });
    }),
  );
}

/** A word for a sum stands where the runs beside it have a figure: no run of its own. */
function isSums(kinds: Kinds, labels: readonly Label[], at: number, values: readonly number[]): boolean {
  const top = labels.find(({ position }) => kinds.at(position, at) !== KIND.blank)?.position;
  if (top === undefined || values.length < LEAST_LABELS || kinds.at(top, at) !== KIND.word) return false;
  const others = values.filter((column) => column !== at);
  return (
    startsWith(String(valueAt(kinds.sheet, top, at)), ['total_row', 'average_row']) &&
    others.every((column) => kinds.at(top, column) !== KIND.word)
  );
}

function cellsOf(kinds: Kinds, labels: readonly Label[], at: number, units: number | undefined): FormCell[] {
  const { sheet } = kinds;
  const counts = new Map<string, number>();
  let parent = '';
  return labels.flatMap(({ text, position, column }): FormCell[] => {
    const isBare = [column + 1, column + 2, at].every((one) => kinds.at(position, one) === KIND.blank);
    if (isBare) parent = text;
    const key = labelKey(text);
    const n = (counts.get(key) ?? 0) + 1;
    counts.set(key, n);
    if (kinds.at(position, at) === KIND.blank) return [];
    const unit = units === undefined ? null : valueAt(sheet, position, units);
    const label = typeof unit === 'string' && unit !== '' ? `${text} (${unit.replace(/[()]/g, '')})` : text;
    return [{ label, parent, key: n > 1 ? `${key} ${n}` : key, position, column: at }];
  });
}
