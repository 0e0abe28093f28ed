import type { IColumnData, IRowData, IWorkbookData, IWorksheetData } from '@univerjs/core';
import { BooleanNumber, LocaleType } from '@univerjs/core';
import { parseArea } from '../../../shared/sheet/formula/address';
import type { SheetModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { FONT_SIZE, STYLES } from '../../../shared/sheet/workbook/styles';
import type { Style } from '../univer/book/formats';
import type { TableExtra } from '../univer/book/tables';
import type { GridLook, SheetGrid } from './grid';
import { gridsOf } from './grid';
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

function sheetData(sheet: SheetModel, id: string, filled: SheetGrid): Partial<IWorksheetData> {
  const { rows = 0, columns = 0 } = sheet.freeze ?? {};
  return {
    id,
    name: sheet.name,
    cellData: filled.cellData as IWorksheetData['cellData'],
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

const styleOf = ({ style, look, format }: GridLook): Style => {
  const found = look ?? (style ? STYLES[style] : undefined);
  return found ? engineStyle(found, format) : { n: { pattern: format ?? 'General' } };
};

export function workbookData(
  model: WorkbookModel,
  id: string,
  tableExtras = new Map<string, TableExtra>(),
  grids = gridsOf(model),
): Partial<IWorkbookData> {
  const sheets = model.sheets.map((sheet, i) =>
    sheetData(sheet, `sheet${i + 1}`, grids.sheets[i] ?? { cellData: {}, rows: 0, columns: 0 }),
  );
  const order = sheets.map((sheet) => sheet.id ?? '');
  return {
    id,
    name: model.title || 'Workbook',
    appVersion: '0.25.1',
    locale: LocaleType.EN_US,
    sheetOrder: order,
    resources: resourcesOf(model, id, order, tableExtras),
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id ?? '', sheet])),
    styles: Object.fromEntries(grids.looks.map((look, i) => [`s${i}`, styleOf(look)])),
  };
}
