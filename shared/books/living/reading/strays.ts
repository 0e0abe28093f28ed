import type { Cell } from '../../../base/values';
import { isError } from '../../../base/values';
import { addressOf, parseAddress } from '../../../sheet/formula/address';
import type { CellModel, SheetModel, WorkbookModel } from '../../../sheet/workbook/model';
import { NOTES_WIDTH } from '../workings/notes';
import type { BookRead } from './read';
import type { TypedLine } from './typed';

/**
 * Cells on the sheets of a book that are nobody's: a remark beside a table, a sum of one's own below it. They
 * move with the line they stand beside when the book is written anew; what has no place is kept in the log.
 */

export interface StandingSheet {
  readonly name: string;
  /** Of its first cell, counted from 0. */
  readonly top: number;
  readonly left: number;
  readonly values: readonly (readonly Cell[])[];
  /** Formulas where a cell has one. */
  readonly formulas?: readonly (readonly unknown[])[];
}
interface Stray {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly cell: CellModel;
}

const isBlank = (value: unknown): boolean => value === undefined || value === null || value === '';
const holds = (cell: CellModel | undefined): boolean =>
  cell !== undefined && (cell.formula !== undefined || !isBlank(cell.value));

/** Cells that a formula of the sheet spills into belong to it. */
function spilledOf({ cells }: SheetModel): ReadonlySet<string> {
  const spilled = new Set<string>();
  for (const [address, { spill }] of Object.entries(cells)) {
    const place = parseAddress(address);
    if (!spill || !place) continue;
    for (let row = 0; row < spill[0]; row++)
      for (let column = 0; column < spill[1]; column++)
        spilled.add(addressOf(place.row + row, place.column + column));
  }
  return spilled;
}

function straysOn(standing: StandingSheet, sheet: SheetModel): Stray[] {
  const spilled = spilledOf(sheet);
  return standing.values.flatMap((cells, r) =>
    cells.flatMap((value, c): Stray[] => {
      const [row, column] = [standing.top + r, standing.left + c];
      const address = addressOf(row, column);
      const formula = standing.formulas?.[r]?.[c];
      if (value === null || isBlank(value) || holds(sheet.cells[address]) || spilled.has(address)) return [];
      const isFormula = typeof formula === 'string' && formula.startsWith('=');
      if (!isFormula && isError(value)) return [];
      return [{ sheet: sheet.name, row, column, cell: isFormula ? { formula, value } : { value } }];
    }),
  );
}

/** What the first column of a line says, which tells the line from others. */
const KEY_COLUMN = 1;
const keyAt = ({ cells }: SheetModel, row: number): unknown => cells[addressOf(row, KEY_COLUMN)]?.value;

/** The place of a stray on the new sheet: beside its line, wherever that went, if it is free there. */
function placeOf(stray: Stray, old: SheetModel, now: SheetModel): string | undefined {
  const key = keyAt(old, stray.row);
  const isFree = (row: number): boolean => !holds(now.cells[addressOf(row, stray.column)]);
  if (isBlank(key) || keyAt(now, stray.row) === key)
    return isFree(stray.row) && isBlank(keyAt(now, stray.row)) === isBlank(key)
      ? addressOf(stray.row, stray.column)
      : undefined;
  const moved = Object.entries(now.cells).find(
    ([address, { value }]) => value === key && parseAddress(address)?.column === KEY_COLUMN,
  );
  const row = moved && parseAddress(moved[0])?.row;
  return row !== undefined && isFree(row) ? addressOf(row, stray.column) : undefined;
}

const textOf = (value: CellModel['value']): string =>
  typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean' ? String(value) : '';

/** Longest remark of a line of the log. */
const REMARK = NOTES_WIDTH * 4;

/**
 * A book's new model with what stood beside its tables: `lost` are lines for the log of what found no place.
 * In: sheets as they stand, the model of the same book as it was written, the new one; names without suffix.
 */
export function withStrays(
  standing: readonly StandingSheet[],
  old: WorkbookModel,
  now: WorkbookModel,
): { readonly model: WorkbookModel; readonly strays: number; readonly lost: readonly TypedLine[] } {
  const byName = new Map(old.sheets.map((sheet) => [sheet.name, sheet]));
  const placed = new Map<string, Record<string, CellModel>>();
  const lost: TypedLine[] = [];
  let strays = 0;
  for (const sheet of standing) {
    const before = byName.get(sheet.name);
    const after = now.sheets.find(({ name }) => name === sheet.name);
    if (!before || !after) continue;
    for (const stray of straysOn(sheet, before)) {
      strays++;
      const address = placeOf(stray, before, after);
      const where = `${stray.sheet}!${addressOf(stray.row, stray.column)}`;
      if (address === undefined)
        lost.push({
          note: `Stood in ${where}: ${textOf(stray.cell.formula ?? stray.cell.value)}`.slice(0, REMARK),
        });
      else placed.set(sheet.name, { ...placed.get(sheet.name), [address]: stray.cell });
    }
  }
  return {
    strays,
    lost,
    model: {
      ...now,
      sheets: now.sheets.map((sheet) => {
        const own = placed.get(sheet.name);
        return own
          ? {
              ...sheet,
              cells: {
                ...sheet.cells,
                ...Object.fromEntries(
                  Object.entries(own).map(([address, cell]) => [
                    address,
                    { ...sheet.cells[address], ...cell },
                  ]),
                ),
              },
            }
          : sheet;
      }),
    },
  };
}

/** Whether two readings of a book say the same: nothing was typed in between. */
export const isSameBook = (a: BookRead, b: BookRead): boolean =>
  JSON.stringify([a.input, a.typed, a.plan.batches]) === JSON.stringify([b.input, b.typed, b.plan.batches]);
