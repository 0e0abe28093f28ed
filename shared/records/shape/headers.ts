// Long: one walk along a row: is it a header, what does it cover, what stands over it
import type { SheetCells } from '../read/sheetCells';
import { fold } from '../words/fold';
import { headingOf } from '../meaning/heading';
import { conceptsOf, monthOf, startsWith } from '../words/lexicon';
import { isKnownLabel } from './forms';
import {
  isHeadingLike,
  isNext,
  isNumbering,
  isSecondLine,
  lastOfHeadings,
  runsOf,
  textAt,
} from './headingLines';
import type { Kinds } from './kinds';
import { KIND } from './kinds';

const CARRIED = ['carried_forward_row', 'target_plan_row'] as const;

export interface Header {
  readonly first: number;
  readonly last: number;
  readonly columns: readonly number[];
  readonly texts: ReadonlyMap<number, string>;
  readonly parents: ReadonlyMap<number, string>;
}

const LOOK_AHEAD = 8;
const LEAST_WORDS = 0.7;

/** Word cells of a run, or undefined where it cannot be a header: figures among them, texts repeated. */
function headingCells(kinds: Kinds, position: number, run: readonly number[]): number | undefined {
  const words = run.filter((column) => isHeadingLike(kinds, position, column)).length;
  if (words < 2 || words < LEAST_WORDS * run.length) {
    // A word for the sum may close the line.
    const inner = run.slice(1, kinds.at(position, run.at(-1) ?? 0) === KIND.word ? -1 : undefined);
    const isMatrix =
      kinds.at(position, run[0] ?? 0) === KIND.word &&
      (isCountingRow(kinds, position, inner) || isDateRow(kinds, position, inner)) &&
      !isAmongFigures(kinds, position, run);
    return isMatrix ? run.length : undefined;
  }
  return isSaidOften(kinds, position, run) ? undefined : words;
}
const LEAST_DISTINCT = 0.6;
/** The same few words again and again are entries, unless group names stand over them with gaps between. */
function isSaidOften(kinds: Kinds, position: number, run: readonly number[]): boolean {
  const texts = run.map((column) => fold(textAt(kinds.sheet, position, column)));
  if (new Set(texts).size >= LEAST_DISTINCT * texts.length) return false;
  const above = run.filter((column) => kinds.at(position - 1, column) === KIND.word).length;
  return above === 0 || above > LEAST_DISTINCT * run.length;
}
const isCountingRow = (kinds: Kinds, position: number, columns: readonly number[]): boolean =>
  columns.every((column) => kinds.at(position, column) === KIND.number) &&
  isCounting(kinds, position, columns);
/** Days over the columns, numbers below. */
const isDateRow = (kinds: Kinds, position: number, columns: readonly number[]): boolean =>
  columns.length >= 2 &&
  columns.every(
    (column) => kinds.at(position, column) === KIND.date && kinds.at(position + 1, column) === KIND.number,
  );
function isCounting(kinds: Kinds, position: number, columns: readonly number[]): boolean {
  const list = columns.map((column) => Number(textAt(kinds.sheet, position, column)));
  return (
    list.length >= 2 && list.every((x, i) => Number.isInteger(x) && (i === 0 || x - (list[i - 1] ?? x) === 1))
  );
}

/** A month or an opening balance may stand between the header and the first line. */
const mayStandBetween = (columns: readonly number[], filled: readonly number[], skipped: number): boolean =>
  columns.length >= 4 && filled.length <= 2 && (filled.length === 1 || skipped === 0);
const isBetween = (sheet: SheetCells, position: number, filled: readonly number[]): boolean =>
  filled.length === 1 || startsWith(textAt(sheet, position, filled[0] ?? 0), [...CARRIED, 'opening_stock']);

const isThin = (figures: number, rows: number, columns: number): boolean =>
  rows === 0 || 2 * figures < rows || figures < 0.2 * columns * rows;
/** Too few figures in the rows below the run, or none in the next filled row under it: that is words again. */
function isThinBelow(kinds: Kinds, position: number, columns: readonly number[]): boolean {
  const { sheet } = kinds;
  let [rows, figures, skipped] = [0, 0, 0];
  for (let p = position + 1; p < sheet.rows.length && rows < LOOK_AHEAD; p++) {
    if ((sheet.rows[p] ?? 0) - (sheet.rows[p - 1] ?? 0) > 3) break;
    const filled = columns.filter((column) => kinds.at(p, column) !== KIND.blank);
    if (filled.length === 0) continue;
    if (rows === 0 && mayStandBetween(columns, filled, skipped)) {
      if (++skipped > 3) return true;
      if (isBetween(sheet, p, filled)) continue;
    }
    rows++;
    const found = filled.filter((column) => kinds.isData(p, column)).length;
    figures += found;
    // The first row below must hold a figure: words over words are no header.
    if (rows === 1 && found === 0) return true;
  }
  return isThin(figures, rows, columns.length);
}

const FORM_ROWS = 14;
/** The different words down the first column; undefined where they are too few. */
function labelsDown(kinds: Kinds, position: number, run: readonly number[]): readonly string[] | undefined {
  const [first] = run;
  if (first === undefined) return undefined;
  const labels: string[] = [];
  let rows = 0;
  for (let p = position; p < kinds.sheet.rows.length && rows < FORM_ROWS; p++) {
    if (run.every((column) => kinds.at(p, column) === KIND.blank)) continue;
    rows++;
    if (kinds.at(p, first) === KIND.word) labels.push(textAt(kinds.sheet, p, first));
  }
  const areMany = labels.length >= 3 && labels.length >= 0.75 * rows;
  return areMany && new Set(labels).size >= 0.8 * labels.length ? labels : undefined;
}
/** Months down the side are the lines of a summary. */
const areMonths = (labels: readonly string[]): boolean =>
  labels.filter((label) => monthOf(label.split(/[\s.'-]/)[0] ?? '') > 0).length >= 0.5 * (labels.length - 1);
/** V1, Bac 2: names of what stands in lines of its own. */
const NAME_OF_VAT = /^\p{L}+[\s.-]*\d{1,3}$/u;
/** Labels down the first column with values beside them are a form and no table. */
function looksLikeForm(kinds: Kinds, position: number, run: readonly number[]): boolean {
  const { sheet } = kinds;
  const labels = labelsDown(kinds, position, run);
  if (!labels || (run.length > 2 && areMonths(labels))) return false;
  const known = labels.filter((label) => isKnownLabel(label) && !NAME_OF_VAT.test(label)).length;
  if (run.length > 2 && isAmongFigures(kinds, position, run) && known >= 0.5 * labels.length) return true;
  const others = new Set(
    run
      .slice(1)
      .filter((column) => kinds.at(position, column) === KIND.word)
      .map((column) => textAt(sheet, position, column))
      .filter(isKnownLabel),
  ).size;
  if (run.length === 2)
    return known >= 0.4 * labels.length || (others === 0 && isMixed(kinds, position, run[1] ?? 0));
  return known >= 0.5 * labels.length && others < 0.5 * (run.length - 1);
}
/** The line above has a label and figures: names in a line of a form are no headings. */
function isAmongFigures(kinds: Kinds, position: number, [first = 0, ...rest]: readonly number[]): boolean {
  if (position === 0 || !isNext(kinds.sheet, position - 1)) return false;
  const figures = rest.filter((column) => kinds.isData(position - 1, column)).length;
  return kinds.at(position - 1, first) === KIND.word && figures >= 0.6 * rest.length;
}
/** Values of several kinds below each other. */
function isMixed(kinds: Kinds, position: number, column: number): boolean {
  const counts = new Map<number, number>();
  for (let p = position; p < Math.min(kinds.sheet.rows.length, position + FORM_ROWS); p++) {
    const kind = kinds.at(p, column);
    if (kind !== KIND.blank) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  }
  const all = [...counts.values()].reduce((sum, n) => sum + n, 0);
  return counts.size > 1 && Math.max(...counts.values()) < 0.8 * all;
}

/** How far down the labels of a form are looked for again. */
const FORM_TALL = 60;
/** The labels below come again in the same order, each time beside other values: a line of forms. */
function isOfForms(kinds: Kinds, position: number, run: readonly number[]): boolean {
  const { sheet } = kinds;
  const [first, beside] = run;
  if (first === undefined || beside === undefined) return false;
  const label = (p: number): string => (kinds.at(p, first) === KIND.word ? textAt(sheet, p, first) : '');
  const own = label(position);
  if (own === '') return false;
  return [1, -1].some((way) => {
    const again = Array.from({ length: FORM_TALL }, (_, i) => position + way * (i + 3)).find(
      (p) => p >= 0 && p < sheet.rows.length && label(p) === own,
    );
    return (
      again !== undefined && !isNextPage(kinds, position, again, run) && areAlike(label, position, again)
    );
  });
}
/** The same row of headings again: the next page of a table. */
const isNextPage = ({ sheet }: Kinds, position: number, again: number, run: readonly number[]): boolean =>
  run.length > 2 && run.every((column) => textAt(sheet, again, column) === textAt(sheet, position, column));
function areAlike(label: (position: number) => string, position: number, again: number): boolean {
  let [labels, same] = [0, 0];
  for (let step = 1; step < Math.abs(again - position); step++) {
    const text = label(position + step);
    if (text === '') continue;
    labels++;
    if (label(again + step) === text) same++;
  }
  return labels >= 2 && same >= 0.8 * labels;
}

/** Text of a merged cell that covers this one. */
function mergedText({ merges, rows, columns }: SheetCells, position: number, column: number): string {
  const row = rows[position] ?? -1;
  const area = merges.find((m) => m.top <= row && m.bottom >= row && m.left <= column && m.right >= column);
  if (!area) return '';
  const top = rows.indexOf(area.top);
  const cell = top < 0 ? null : columns[area.left]?.cellAt(top);
  return typeof cell === 'string' ? cell : '';
}

/** What stands over each column in the row above: its own words, a merged cell, or the words to the left. */
function overWords(
  kinds: Kinds,
  position: number,
  columns: readonly number[],
): Map<number, string> | undefined {
  const { sheet } = kinds;
  const over = new Map<number, string>();
  let last = '';
  let spoken = 0;
  for (const column of columns) {
    const own = kinds.at(position, column) === KIND.word ? textAt(sheet, position, column) : '';
    if (own === '' && kinds.isData(position, column)) return undefined;
    const text = own || mergedText(sheet, position, column);
    if (own) spoken++;
    if (text) last = text;
    if (text || last) over.set(column, text || last);
  }
  return spoken > 0 ? over : undefined;
}

/** The rows above a header that belong to it: group names over several columns. */
function withParents(kinds: Kinds, header: Header): Header {
  const { sheet } = kinds;
  const above = header.first - 1;
  if (above < 0 || !isNext(sheet, above)) return header;
  const over = overWords(kinds, above, header.columns);
  if (!over) return header;
  const own = header.columns.filter((column) => kinds.at(above, column) === KIND.word);
  const isTitle = own.length === 1 && own[0] === header.columns[0] && !isSpanned(sheet, above, own[0] ?? 0);
  const hasGaps = header.columns.some(
    (column) => !header.texts.get(column) && kinds.at(above, column) === KIND.word,
  );
  if (isTitle && !hasGaps) return header;
  const isGroups =
    own.length >= 2 ||
    hasGaps ||
    own.some((column) => isSpanned(sheet, above, column)) ||
    (!isTitle && own.some((column) => namesSomething(textAt(sheet, above, column))));
  if (!isGroups) return header;
  return {
    ...header,
    first: above,
    texts: new Map(header.columns.map((c) => [c, header.texts.get(c) || textAt(sheet, above, c)])),
    parents: new Map([...over].filter(([c]) => header.texts.get(c))),
  };
}
const GROUP_WORDS = 4;
/** A few words that name something kept in records: "Deaths (no.)" over the columns of the tanks. */
const namesSomething = (text: string): boolean =>
  text.split(/\s+/).length <= GROUP_WORDS &&
  [...conceptsOf(headingOf(text).words).values()].some((score) => score >= 0.6);
/** A merged cell over some but not all of a table. */
const isSpanned = ({ merges, rows }: SheetCells, position: number, column: number): boolean =>
  merges.some(
    (m) => m.top === rows[position] && m.left === column && m.right > m.left && m.right - m.left < 8,
  );

/** Columns next to the header that hold figures below though nothing stands over them. */
function widened(
  kinds: Kinds,
  position: number,
  run: readonly number[],
  others: ReadonlySet<number>,
): number[] {
  const columns = [...run];
  const last = run.at(-1) ?? 0;
  const isFilledBelow = (column: number): boolean => {
    let [filled, rows] = [0, 0];
    for (let p = position + 1; p < kinds.sheet.rows.length && rows < 6; p++) {
      if (!run.some((c) => kinds.at(p, c) !== KIND.blank)) continue;
      rows++;
      if (kinds.at(p, column) !== KIND.blank) filled++;
    }
    return filled >= 2 && 2 * filled >= rows;
  };
  for (let column = last + 1; column <= last + 2 && !others.has(column); column++)
    if (isFilledBelow(column) && !others.has(column + 1)) columns.push(column);
    else break;
  return columns;
}

/** Columns whose only heading stands in the row above: "Run" beside "Eggs" over "weight" and "number". */
function underParents(
  kinds: Kinds,
  position: number,
  columns: readonly number[],
  others: ReadonlySet<number>,
): number[] {
  const above = position - 1;
  const found = [...columns];
  if (above < 0 || !isNext(kinds.sheet, above)) return found;
  const isOne = (column: number): boolean =>
    !others.has(column) &&
    kinds.at(above, column) === KIND.word &&
    kinds.at(position, column) === KIND.blank &&
    hasBelow(kinds, position, column);
  for (let column = (columns[0] ?? 0) - 1; column >= 0 && isOne(column); column--) found.unshift(column);
  for (let column = (columns.at(-1) ?? 0) + 1; isOne(column); column++) found.push(column);
  return found;
}

/** Runs that a heading left blank cut in two: the column between holds figures like the others. */
function joinRuns(kinds: Kinds, position: number, runs: readonly number[][]): number[][] {
  const joined: number[][] = [];
  for (const run of runs) {
    const before = joined.at(-1);
    const gap = before ? (run[0] ?? 0) - (before.at(-1) ?? 0) : 0;
    const between = before ? (before.at(-1) ?? 0) + 1 : 0;
    const isCovered = (column: number): boolean =>
      position > 0 && isNext(kinds.sheet, position - 1) && kinds.at(position - 1, column) === KIND.word;
    const gaps = Array.from({ length: Math.max(0, gap - 1) }, (_, i) => between + i);
    if (
      before &&
      (gap === 2
        ? hasBelow(kinds, position, between) || isCovered(between)
        : gaps.length > 0 && gaps.every((column) => isCovered(column) && hasBelow(kinds, position, column)))
    ) {
      before.push(...gaps, ...run);
      continue;
    }
    joined.push([...run]);
  }
  return joined;
}
function hasBelow(kinds: Kinds, position: number, column: number): boolean {
  let filled = 0;
  for (let p = position + 1; p < Math.min(kinds.sheet.rows.length, position + 7); p++)
    if (kinds.at(p, column) !== KIND.blank) filled++;
  return filled >= 2;
}

/** Headers that start over without a gap: two tables that touch. */
function cutRepeats(kinds: Kinds, position: number, run: readonly number[]): number[][] {
  const same = (a: number, b: number): boolean =>
    fold(textAt(kinds.sheet, position, a)) === fold(textAt(kinds.sheet, position, b));
  for (let i = 2; i + 1 < run.length; i++)
    if (same(run[0] ?? 0, run[i] ?? 0) && same(run[1] ?? 0, run[i + 1] ?? 0))
      return [run.slice(0, i), ...cutRepeats(kinds, position, run.slice(i))];
  return [[...run]];
}

export function headersAt(kinds: Kinds, position: number): Header[] {
  const { sheet } = kinds;
  const runs = joinRuns(kinds, position, runsOf(kinds, position)).flatMap((run) =>
    cutRepeats(kinds, position, run),
  );
  const taken = new Set(runs.flat());
  return runs.flatMap((run): Header[] => {
    const cells = run.filter((column) => kinds.at(position, column) !== KIND.blank);
    if (headingCells(kinds, position, cells) === undefined) return [];
    if (isNumbering(kinds, position, run)) return [];
    const { last, units } = lastOfHeadings(kinds, position, run);
    if (isSecondLine(kinds, last + 1, run)) return [];
    if (isThinBelow(kinds, last, run)) return [];
    if (looksLikeForm(kinds, position, run) || isOfForms(kinds, position, run)) return [];
    const texts = new Map(
      run.map((column) => {
        const unit = units !== undefined ? textAt(sheet, units, column).replace(/[()[\]]/g, '') : '';
        const text = textAt(sheet, position, column) || mergedText(sheet, position, column);
        return [column, unit ? `${text} (${unit})` : text] as const;
      }),
    );
    const others = new Set([...taken].filter((c) => !run.includes(c)));
    const columns = underParents(kinds, position, widened(kinds, last, run, others), others);
    return [withParents(kinds, { first: position, last, columns, texts, parents: new Map() })];
  });
}
