import type { ICellData, IColumnData, IRowData, IWorkbookData, IWorksheetData } from '@univerjs/core';
import { BooleanNumber, CellValueType, LocaleType } from '@univerjs/core';
import { parseAddress, parseArea } from '../../../shared/sheet/formula/address';
import type { Cell } from '../../../shared/base/values';
import { isError } from '../../../shared/base/values';
import type { CellModel, SheetModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { FONT_SIZE, STYLES } from '../../../shared/sheet/workbook/styles';
import { cleanFormula } from '../univer/book/cells';
import type { Style } from '../univer/book/formats';
import type { TableExtra } from '../univer/book/tables';
import { engineStyle, SCREEN_FONT } from './looks';
import { resourcesOf } from './resources';

/**
 * The workbook model as the engine's own snapshot: cells, looks, sizes, names, tables, rules, notes. What the
 * engine has no place for is added afterwards.
 */

const ROWS = 1000;
const COLUMNS = 26;
const SPARE = { rows: 200, columns: 6 };

/** Width of so many characters of the default font, in pixels, as the file format reckons it. */
export const pixelsOf = (characters: number): number => Math.round(characters * 7 + 5);
export const charactersOf = (pixels: number): number =>
  Math.max(1, Math.round(((pixels - 5) / 7) * 100) / 100);
export const PIXELS_PER_POINT = 4 / 3;

class StyleTable {
  readonly styles: Record<string, Style> = {};
  private readonly ids = new Map<string, string>();
  idOf(style: Style): string {
    const key = JSON.stringify(style);
    let id = this.ids.get(key);
    if (id === undefined) {
      id = `s${this.ids.size}`;
      this.ids.set(key, id);
      this.styles[id] = style;
    }
    return id;
  }
}

/** An answer that is an empty text is kept as such: a formula without any value counts as 0 to those that read it. */
const valueOf = (value: Exclude<Cell, null> | undefined): ICellData => {
  if (value === undefined) return {};
  if (isError(value)) return { v: value.error, t: CellValueType.STRING };
  if (typeof value === 'boolean') return { v: Number(value), t: CellValueType.BOOLEAN };
  return { v: value, t: typeof value === 'number' ? CellValueType.NUMBER : CellValueType.STRING };
};

function cellOf(cell: CellModel, table: StyleTable, isSpilledInto: boolean): ICellData {
  const look = cell.look ?? (cell.style ? STYLES[cell.style] : undefined);
  const style: Style | undefined = look
    ? engineStyle(look, cell.format)
    : cell.format && cell.format !== 'General'
      ? { n: { pattern: cell.format } }
      : undefined;
  return {
    // A spilled value belongs to its formula; written as typed it would block it.
    ...(isSpilledInto || (cell.value === '' && !cell.formula) ? {} : valueOf(cell.value)),
    ...(cell.formula ? { f: cleanFormula(cell.formula) } : {}),
    ...(style ? { s: table.idOf(style) } : {}),
  };
}

/** 'row,column' of every cell a formula spills into, without the cell of the formula. */
function spilledInto(sheet: SheetModel): ReadonlySet<string> {
  const places = new Set<string>();
  for (const [address, { spill }] of Object.entries(sheet.cells)) {
    const anchor = parseAddress(address);
    if (!spill || !anchor) continue;
    for (let r = 0; r < spill[0]; r++)
      for (let c = 0; c < spill[1]; c++)
        if (r > 0 || c > 0) places.add(`${anchor.row + r},${anchor.column + c}`);
  }
  return places;
}

type CellData = Record<number, Record<number, ICellData>>;
interface Filled {
  readonly cellData: CellData;
  readonly rows: number;
  readonly columns: number;
}

function fill(sheet: SheetModel, table: StyleTable): Filled {
  const cellData: CellData = {};
  const spilled = spilledInto(sheet);
  let lastRow = 0;
  let lastColumn = 0;
  for (const [address, cell] of Object.entries(sheet.cells)) {
    const place = parseAddress(address);
    if (!place) continue;
    lastRow = Math.max(lastRow, place.row + (cell.spill?.[0] ?? 1));
    lastColumn = Math.max(lastColumn, place.column + (cell.spill?.[1] ?? 1));
    (cellData[place.row] ??= {})[place.column] = cellOf(
      cell,
      table,
      spilled.has(`${place.row},${place.column}`),
    );
  }
  return { cellData, rows: lastRow, columns: lastColumn };
}

const sizes = (sheet: SheetModel): Pick<IWorksheetData, 'columnData' | 'rowData'> => ({
  columnData: Object.fromEntries(
    sheet.widths.map((width, i): [number, IColumnData] => [i, { w: pixelsOf(width) }]),
  ),
  rowData: Object.fromEntries(
    Object.entries(sheet.heights ?? {}).map(([row, points]): [number, IRowData] => [
      Number(row) - 1,
      { h: Math.round(points * PIXELS_PER_POINT), ia: BooleanNumber.FALSE },
    ]),
  ),
});

function sheetData(sheet: SheetModel, id: string, table: StyleTable): Partial<IWorksheetData> {
  const filled = fill(sheet, table);
  const { rows = 0, columns = 0 } = sheet.freeze ?? {};
  return {
    id,
    name: sheet.name,
    cellData: filled.cellData,
    ...sizes(sheet),
    rowCount: Math.max(ROWS, filled.rows + SPARE.rows),
    columnCount: Math.max(COLUMNS, filled.columns + SPARE.columns),
    defaultStyle: { ff: SCREEN_FONT, fs: FONT_SIZE } as Style,
    mergeData: (sheet.merges ?? []).flatMap((merge) => {
      const area = parseArea(merge);
      return area
        ? [{ startRow: area.top, endRow: area.bottom, startColumn: area.left, endColumn: area.right }]
        : [];
    }),
    freeze: {
      xSplit: columns,
      ySplit: rows,
      startRow: rows > 0 ? rows : -1,
      startColumn: columns > 0 ? columns : -1,
    },
    showGridlines: sheet.hasGridlines === false ? BooleanNumber.FALSE : BooleanNumber.TRUE,
    ...(sheet.isHidden ? { hidden: BooleanNumber.TRUE } : {}),
    ...(sheet.tab ? { tabColor: `#${sheet.tab.replace('#', '')}` } : {}),
  };
}

export function workbookData(
  model: WorkbookModel,
  id: string,
  tableExtras = new Map<string, TableExtra>(),
): Partial<IWorkbookData> {
  const table = new StyleTable();
  const sheets = model.sheets.map((sheet, i) => sheetData(sheet, `sheet${i + 1}`, table));
  const order = sheets.map((sheet) => sheet.id ?? '');
  return {
    id,
    name: model.title || 'Workbook',
    appVersion: '0.25.1',
    locale: LocaleType.EN_US,
    sheetOrder: order,
    resources: resourcesOf(model, id, order, tableExtras),
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id ?? '', sheet])),
    styles: table.styles,
  };
}
