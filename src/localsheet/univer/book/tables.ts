import type { Injector } from '@univerjs/core';
import { generateRandomId } from '@univerjs/core';
import { RangeThemeStyle, SheetRangeThemeModel } from '@univerjs/sheets';
import {
  AddSheetTableMutation,
  DeleteSheetTableCommand,
  DeleteSheetTableMutation,
  SetSheetTableMutation,
  SheetTableService,
  TableManager,
} from '@univerjs/sheets-table';
import type { StandInArea, StandInBook, TableState } from '../../../officeStandIn/book';
import type { Context } from './context';
import { toArea, toRange } from './context';

export type TablePart = Pick<StandInBook, 'tables' | 'addTable' | 'changeTable' | 'deleteTable'>;

export interface TableExtra {
  readonly style: string;
  readonly showTotals: boolean;
}
const PLAIN: TableExtra = { style: 'TableStyleMedium2', showTotals: false };
/** The cells bring their own look; a table adds nothing but its heading row. */
export const TABLE_THEME = 'table-spawnbook';

/** Made known once; a snapshot's tables name it. */
export function knowTableTheme(injector: Injector): void {
  const themes = injector.get(SheetRangeThemeModel);
  if (!themes.getRegisteredRangeThemes().includes(TABLE_THEME))
    themes.registerDefaultRangeTheme(
      new RangeThemeStyle(TABLE_THEME, { headerRowStyle: { bl: 1 } } as never),
    );
}

/** The engine knows neither style names nor totals rows: both are kept in `extras`, by table. */
export function tablePart(context: Context, extras: Map<string, TableExtra>): TablePart {
  const { injector } = context.engine;
  const service = (): SheetTableService => injector.get(SheetTableService);
  const infoOf = (id: string) => service().getTableInfo(context.unitId, id);
  /** The engine's own command refuses names that sheets have; Excel allows them. */
  const add = (sheet: string, area: StandInArea, name: string, id: string): void => {
    const unitId = context.unitId;
    const range = toRange(area);
    knowTableTheme(injector);
    const header = injector.get(TableManager).getColumnHeader(unitId, sheet, range, 'Column');
    const params = {
      unitId,
      subUnitId: sheet,
      name,
      tableId: id,
      range,
      header,
      options: { showHeader: true, tableStyleId: TABLE_THEME },
    };
    context.mutate(AddSheetTableMutation.id, params, { unitId, tableId: id }, DeleteSheetTableMutation.id);
  };
  return {
    tables: () =>
      service()
        .getTableList(context.unitId)
        .map((table): TableState => {
          const { style, showTotals } = extras.get(table.id) ?? PLAIN;
          const area = toArea(table.range);
          return {
            id: table.id,
            name: table.name,
            sheet: table.subUnitId,
            area: showTotals ? { ...area, rows: area.rows + 1 } : area,
            style,
            showTotals,
          };
        }),
    addTable(sheet, area, name) {
      const id = generateRandomId(8);
      context.ensure(sheet, area);
      add(sheet, area, name, id);
      extras.set(id, PLAIN);
      return id;
    },
    changeTable(id, patch) {
      const table = infoOf(id);
      if (!table) return;
      const { style, showTotals } = { ...(extras.get(id) ?? PLAIN), ...patch };
      extras.set(id, { style, showTotals });
      if (patch.name !== undefined && patch.name !== table.name)
        context.run(SetSheetTableMutation.id, {
          unitId: context.unitId,
          subUnitId: table.subUnitId,
          tableId: id,
          config: { name: patch.name },
        });
    },
    deleteTable(id) {
      const table = infoOf(id);
      if (table)
        context.run(DeleteSheetTableCommand.id, {
          unitId: context.unitId,
          subUnitId: table.subUnitId,
          tableId: id,
        });
      extras.delete(id);
    },
  };
}
