import { tokenize } from '../../../shared/sheet/formula/tokenize';
import { splitReference } from '../../../shared/sheet/formula/address';
import { asWritten, cellFrom, partsOf, TEXT_FORMAT } from '../reading/cells';
import { withExcel } from '../excelErrors';
import type { InsertOutcome, Insertion } from '../port';

/** A reference to the sheet the formula lands on needs no sheet name. */
export const withoutSheet = (formula: string, sheet: string): string =>
  `=${tokenize(formula)
    .map((token) => {
      if (token.kind !== 'reference') return token.text;
      const { sheet: named, area } = splitReference(token.text);
      return named?.toLowerCase() === sheet.toLowerCase() ? area : token.text;
    })
    .join('')}`;

const shorten = (content: string): string => (content.length > 40 ? `${content.slice(0, 40)}…` : content);
const isFull = (cell: unknown): boolean => cellFrom(cell) !== null;

interface Target {
  readonly cell: Excel.Range;
  readonly around: Excel.Range | undefined;
  readonly sheet: Excel.Worksheet;
}

/** Rows below the selected cell in which room is looked for. */
const MOST_BELOW = 200;
/** The first cell below, in the same column, from which the whole answer lies on empty cells. */
async function roomBelow(
  context: Excel.RequestContext,
  first: Excel.Range,
  { rows, columns }: Insertion,
): Promise<Excel.Range> {
  const area = first.getResizedRange(MOST_BELOW + rows - 1, columns - 1);
  area.load('formulas');
  await context.sync();
  const isFree = (row: number): boolean =>
    area.formulas.slice(row, row + rows).every((line) => line.every((content) => !isFull(content)));
  const row = Array.from({ length: MOST_BELOW }, (_, i) => i).find(isFree) ?? 0;
  return first.getOffsetRange(row, 0);
}

async function look(context: Excel.RequestContext, insertion: Insertion): Promise<Target> {
  const selected = context.workbook.getSelectedRange();
  const first = selected.getCell(0, 0);
  const cell = insertion.isBelow ? await roomBelow(context, first, insertion) : first;
  const sheet = cell.worksheet;
  cell.load('address,formulas,numberFormat');
  cell.format.protection.load('locked');
  sheet.load('name');
  sheet.protection.load('protected');
  const isSpilling = insertion.rows > 1 || insertion.columns > 1;
  const around = isSpilling ? cell.getResizedRange(insertion.rows - 1, insertion.columns - 1) : undefined;
  around?.load('formulas,numberFormat');
  await context.sync();
  return { cell, around, sheet };
}

/** The reason the formula cannot go there, if there is one. */
function refusal({ cell, around, sheet }: Target, insertion: Insertion): string | undefined {
  const { area } = partsOf(cell.address);
  if (sheet.protection.protected && cell.format.protection.locked !== false)
    return `${area} is locked because the sheet “${sheet.name}” is protected. Choose an open cell, or Review › Unprotect Sheet.`;
  if (sheet.protection.protected && cell.numberFormat[0]?.[0] === TEXT_FORMAT)
    return `${area} is formatted as text, so it would show the formula itself, and the sheet “${sheet.name}” is protected. Choose another cell.`;
  const isInTheWay =
    around?.formulas.some((row, r) => row.some((content, c) => (r > 0 || c > 0) && isFull(content))) ?? false;
  if (isInTheWay)
    return `The answer fills ${insertion.rows} rows and ${insertion.columns} columns from ${area}, and some of those cells are not empty. Choose a place with room.`;
  return undefined;
}

/**
 * A cell that was never formatted gets the format of the quantity; one of text format would keep the formula
 * as a text.
 */
function formatCells({ cell, around, sheet }: Target, insertion: Insertion): void {
  // Protection that lets a cell be filled still keeps its format.
  if (sheet.protection.protected) return;
  const range = around ?? cell;
  range.numberFormat = range.numberFormat.map((row, r) =>
    row.map((format, c) => {
      const isUnset = format === 'General' || format === TEXT_FORMAT;
      const wanted =
        (insertion.hasHeadings && r === 0) || insertion.formats[c] === TEXT_FORMAT
          ? 'General'
          : insertion.formats[c];
      return isUnset ? (wanted ?? 'General') : format;
    }),
  );
}

/** The name on the left and the unit on the right, where nothing stands; a protected sheet keeps its cells. */
async function nameIt(
  context: Excel.RequestContext,
  { cell, around, sheet }: Target,
  { name = '', unit = '' }: Insertion,
): Promise<void> {
  if ((name === '' && unit === '') || around || sheet.protection.protected) return;
  cell.load('columnIndex');
  await context.sync();
  const sides = [
    ...(cell.columnIndex > 0 && name !== '' ? [{ range: cell.getOffsetRange(0, -1), text: name }] : []),
    ...(unit === '' ? [] : [{ range: cell.getOffsetRange(0, 1), text: unit }]),
  ];
  for (const { range } of sides) range.load('formulas');
  await context.sync();
  for (const { range, text } of sides)
    if (!isFull(range.formulas[0]?.[0])) range.values = [[asWritten(text)]];
  await context.sync();
}

export const insertFormula = (insertion: Insertion): Promise<InsertOutcome> =>
  withExcel(async (context) => {
    const target = await look(context, insertion);
    const { cell, sheet } = target;
    const { area } = partsOf(cell.address);
    const sentence = refusal(target, insertion);
    if (sentence !== undefined) return { kind: 'refused', sentence };
    const content: unknown = cell.formulas[0]?.[0];
    if (isFull(content) && !insertion.mayReplace)
      return { kind: 'occupied', address: area, content: `“${shorten(String(content))}”` };
    formatCells(target, insertion);
    cell.formulas = [[withoutSheet(insertion.formula, sheet.name)]];
    await context.sync();
    await nameIt(context, target, insertion);
    return { kind: 'inserted', address: area };
  });
