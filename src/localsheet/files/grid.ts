import type { ICellData } from '@univerjs/core';
import { parseAddress } from '../../../shared/sheet/formula/address';
import type { Cell } from '../../../shared/base/values';
import { isError } from '../../../shared/base/values';
import type {
  CellModel,
  CellStyle,
  SheetModel,
  StyleName,
  WorkbookModel,
} from '../../../shared/sheet/workbook/model';
import { cleanFormula } from '../formulaText';

/**
 * The cells of a workbook model as the engine keeps them; made beside the page as well, so nothing of the
 * engine itself is loaded here.
 */

/** The engine's CellValueType, which is not loaded here; a test compares the two. */
export const VALUE_TYPE = { string: 1, number: 2, boolean: 3 } as const;

/** What a style of the engine is made from. */
export interface GridLook {
  readonly style?: StyleName;
  readonly look?: CellStyle;
  readonly format?: string;
}
type Cells = Record<number, Record<number, ICellData>>;
export interface SheetGrid {
  readonly cellData: Cells;
  readonly rows: number;
  readonly columns: number;
}
export interface Grids {
  readonly sheets: readonly SheetGrid[];
  /** Cells name them by their place: s0, s1 and so on. */
  readonly looks: readonly GridLook[];
}

class Looks {
  readonly list: GridLook[] = [];
  private readonly ids = new Map<string, string>();
  /** Readers hand out one object for each look of a file. */
  private readonly keys = new WeakMap<CellStyle, string>();

  idOf({ look, style, format }: CellModel): string | undefined {
    const shown = format === 'General' || format === '' ? undefined : format;
    if (!look && !style && !shown) return undefined;
    const key = `${look ? this.keyOf(look) : (style ?? '')} ${shown ?? ''}`;
    let id = this.ids.get(key);
    if (id === undefined) {
      this.ids.set(key, (id = `s${this.list.length}`));
      this.list.push({
        ...(look ? { look } : style ? { style } : {}),
        ...(shown === undefined ? {} : { format: shown }),
      });
    }
    return id;
  }

  private keyOf(look: CellStyle): string {
    let key = this.keys.get(look);
    if (key === undefined) this.keys.set(look, (key = JSON.stringify(look)));
    return key;
  }
}

/** An answer that is an empty text is kept as such: a formula without any value counts as 0 to those that read it. */
const valueOf = (value: Exclude<Cell, null> | undefined): ICellData => {
  if (value === undefined) return {};
  if (isError(value)) return { v: value.error, t: VALUE_TYPE.string };
  if (typeof value === 'boolean') return { v: Number(value), t: VALUE_TYPE.boolean };
  return { v: value, t: typeof value === 'number' ? VALUE_TYPE.number : VALUE_TYPE.string };
};

function cellOf(cell: CellModel, looks: Looks, isSpilledInto: boolean): ICellData {
  // A spilled value belongs to its formula; written as typed it would block it.
  const made: ICellData = isSpilledInto || (cell.value === '' && !cell.formula) ? {} : valueOf(cell.value);
  if (cell.formula) made.f = cleanFormula(cell.formula);
  const style = looks.idOf(cell);
  if (style !== undefined) made.s = style;
  return made;
}

/** 'row,column' of every cell a formula spills into, without the cell of the formula. */
function spilledInto(sheet: SheetModel): ReadonlySet<string> {
  const places = new Set<string>();
  for (const [address, { spill }] of Object.entries(sheet.cells)) {
    const anchor = spill && parseAddress(address);
    if (!anchor) continue;
    for (let r = 0; r < spill[0]; r++)
      for (let c = 0; c < spill[1]; c++)
        if (r > 0 || c > 0) places.add(`${anchor.row + r},${anchor.column + c}`);
  }
  return places;
}

function gridOf(sheet: SheetModel, looks: Looks): SheetGrid {
  const cellData: Cells = {};
  const spilled = spilledInto(sheet);
  let rows = 0;
  let columns = 0;
  for (const [address, cell] of Object.entries(sheet.cells)) {
    const place = parseAddress(address);
    if (!place) continue;
    const { row, column } = place;
    rows = Math.max(rows, row + (cell.spill?.[0] ?? 1));
    columns = Math.max(columns, column + (cell.spill?.[1] ?? 1));
    (cellData[row] ??= {})[column] = cellOf(cell, looks, spilled.has(`${row},${column}`));
  }
  return { cellData, rows, columns };
}

export function gridsOf({ sheets }: WorkbookModel): Grids {
  const looks = new Looks();
  return { sheets: sheets.map((sheet) => gridOf(sheet, looks)), looks: looks.list };
}
