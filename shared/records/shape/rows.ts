import { formulaAt } from '../read/sheetCells';
import { startsWith } from '../words/lexicon';
import type { Header } from './headers';
import { isNumbering, isUnits, textAt } from './headingLines';
import type { Kinds } from './kinds';
import { KIND } from './kinds';

const TOTALS = ['total_row', 'subtotal_row', 'average_row'] as const;
const CARRIED = ['carried_forward_row', 'target_plan_row'] as const;
const DOWN_SUM =
  /^=\s*(?:SUM|AVERAGE|SUBTOTAL|COUNT|MAX|MIN)\(\s*(?:\d+\s*,\s*)?\$?([A-Z]{1,3})\$?\d+:\$?([A-Z]{1,3})\$?\d+\s*\)$/i;

const DOWN_RANGE = /^=.*\b(?:SUM|AVERAGE|SUBTOTAL)\(.*?\$?([A-Z]{1,3})\$?(\d+):\$?\1\$?(\d+)/i;
/** Adds up at least two cells of one column above; a sum over another sheet is a figure of its line. */
const addsDown = (formula: string | undefined): boolean => {
  // Most formulas of a long table have no range at all.
  if (!formula?.includes(':') || formula.includes('!')) return false;
  if (!DOWN_SUM.test(formula) && !DOWN_RANGE.test(formula)) return false;
  const range = DOWN_RANGE.exec(formula);
  return range !== null && Number(range[3]) - Number(range[2]) >= 1;
};

interface Row {
  readonly filled: number;
  readonly texts: readonly string[];
  readonly repeats: number;
  readonly sums: number;
}
const NO_TEXTS: readonly string[] = [];

function lookAtRow(kinds: Kinds, position: number, { columns, texts: headings }: Header): Row {
  let texts: string[] | undefined;
  let filled = 0;
  let repeats = 0;
  let sums = 0;
  for (const column of columns) {
    const kind = kinds.at(position, column);
    if (kind === KIND.blank) continue;
    filled++;
    if (addsDown(formulaAt(kinds.sheet, position, column))) sums++;
    if (kind !== KIND.word) continue;
    const text = textAt(kinds.sheet, position, column);
    (texts ??= []).push(text);
    const heading = headings.get(column) ?? '';
    if (heading !== '' && (text === heading || heading.startsWith(`${text} (`))) repeats++;
  }
  return { filled, texts: texts ?? NO_TEXTS, repeats, sums };
}
const filledIn = (kinds: Kinds, position: number, { columns }: Header): number[] =>
  columns.filter((column) => kinds.at(position, column) !== KIND.blank);
/** Do the first words say that the row is one of these? */
const opensWith = (texts: readonly string[], concepts: readonly string[]): boolean =>
  (texts[0] !== undefined && startsWith(texts[0], concepts)) ||
  (texts[1] !== undefined && startsWith(texts[1], concepts));

/** Why a row is no record; 'record' where it is one. */
export type RowKind = 'total' | 'note' | 'header again' | 'units' | 'opening' | 'record' | 'blank';

/** What a row below the header is; `dated` is the column that mostly holds dates. */
export function kindOfRow(
  kinds: Kinds,
  position: number,
  header: Header,
  dated: number | undefined,
): RowKind {
  const row = lookAtRow(kinds, position, header);
  const { filled, texts, repeats } = row;
  if (filled === 0) return 'blank';
  if (repeats >= 2 && repeats >= filled / 2) return 'header again';
  const width = header.columns.length;
  const hasDate = dated !== undefined && kinds.at(position, dated) === KIND.date;
  if (!hasDate && isTotal(row, width, dated !== undefined)) return 'total';
  if (filled < width && opensWith(texts, CARRIED)) return 'opening';
  if (isNumbering(kinds, position, header.columns)) return 'header again';
  const isWorded = texts.length >= 2 && texts.length >= 0.8 * filled;
  if (isWorded && isUnits(kinds, position, filledIn(kinds, position, header))) return 'units';
  return isNote(kinds, position, filled, header) ? 'note' : 'record';
}
const isTotal = ({ texts, sums, filled }: Row, width: number, isDated: boolean): boolean =>
  opensWith(texts, TOTALS) || sums >= 2 || (sums === 1 && isDated && filled <= 0.7 * width);
function isNote(kinds: Kinds, position: number, filled: number, header: Header): boolean {
  const width = header.columns.length;
  const isShort = width > 3 && filled <= 2;
  if (!isShort && filled > 0.4 * width) return false;
  const figures = filledIn(kinds, position, header).filter((column) => kinds.isData(position, column)).length;
  return figures === 0 || (isShort && filled === 1);
}
