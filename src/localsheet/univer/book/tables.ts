import { generateRandomId } from '@univerjs/core';
import { AddSheetTableCommand, DeleteSheetTableCommand, SetSheetTableCommand, SheetTableService } from '@univerjs/sheets-table';
import type { Book, TableState } from '../../excelapi/book';
import type { Context } from './context';
import { toArea, toRange } from './context';

export type TablePart = Pick<Book, 'tables' | 'addTable' | 'changeTable' | 'deleteTable'>;

interface Extra { readonly style: string; readonly showTotals: boolean }
const PLAIN: Extra = { style: 'TableStyleMedium2', showTotals: false };

/** The engine knows neither style names nor totals rows: both are kept beside it, by table. */
export function tablePart(context: Context): TablePart {
  const extras = new Map<string, Extra>();
  const service = (): SheetTableService => context.engine.injector.get(SheetTableService);
  const infoOf = (id: string) => service().getTableInfo(context.unitId, id);
  return {
    tables: () => service().getTableList(context.unitId).map((table): TableState => {
      const { style, showTotals } = extras.get(table.id) ?? PLAIN;
      const area = toArea(table.range);
      return { id: table.id, name: table.name, sheet: table.subUnitId, area: showTotals ? { ...area, rows: area.rows + 1 } : area, style, showTotals };
    }),
    addTable(sheet, area, name) {
      const id = generateRandomId(8);
      context.ensure(sheet, area);
      context.run(AddSheetTableCommand.id, { unitId: context.unitId, subUnitId: sheet, name, id, range: toRange(area), options: { showHeader: true, tableStyleId: 'table-default-4' } });
      extras.set(id, PLAIN);
      return id;
    },
    changeTable(id, patch) {
      const table = infoOf(id);
      if (!table) return;
      extras.set(id, { ...(extras.get(id) ?? PLAIN), ...(patch.style === undefined ? {} : { style: patch.style }), ...(patch.showTotals === undefined ? {} : { showTotals: patch.showTotals }) });
      if (patch.name !== undefined && patch.name !== table.name) context.run(SetSheetTableCommand.id, { unitId: context.unitId, tableId: id, name: patch.name });
    },
    deleteTable(id) {
      const table = infoOf(id);
      if (table) context.run(DeleteSheetTableCommand.id, { unitId: context.unitId, subUnitId: table.subUnitId, tableId: id });
      extras.delete(id);
    },
  };
}
