import type { FWorksheet } from '@univerjs/sheets/facade';
import { InsertSheetCommand } from '@univerjs/sheets';
import { ScrollToCellCommand } from '@univerjs/sheets-ui';
import type { StandInArea, StandInBook, SheetState } from '../../../officeStandIn/book';
import type { Context } from './context';
import { toArea } from './context';
import type { OneUndo } from './oneUndo';

/** Sheets, their order, which one is open and what is selected in it. */
export type SheetPart = Pick<
  StandInBook,
  | 'sheets'
  | 'addSheet'
  | 'changeSheet'
  | 'deleteSheet'
  | 'activeSheet'
  | 'activate'
  | 'selection'
  | 'select'
  | 'group'
  | 'freeze'
  | 'setFreeze'
>;

export const ROWS = 1000;
export const COLUMNS = 26;

/** Kept apart: the engine knows hidden sheets but not sheets hidden from the list of hidden ones. */
const veryHidden = new Set<string>();

const stateOf = (sheet: FWorksheet): SheetState => ({
  id: sheet.getSheetId(),
  name: sheet.getSheetName(),
  visibility: !sheet.isSheetHidden()
    ? 'Visible'
    : veryHidden.has(sheet.getSheetId())
      ? 'VeryHidden'
      : 'Hidden',
  tabColor: (sheet.getTabColor() ?? '').toUpperCase(),
  showGridlines: !sheet.hasHiddenGridLines(),
});

export function sheetPart(context: Context, oneUndo: OneUndo, onDeleted: (sheet: string) => void): SheetPart {
  const activeId = (): string => context.book.getActiveSheet().getSheetId();
  return {
    group: (work) => oneUndo.change(work),
    sheets: () => context.book.getSheets().map(stateOf),
    addSheet(name) {
      const index = context.book.getSheets().length;
      // In the background, as Excel adds: to show a new sheet and go back costs two drawings for each.
      context.run(InsertSheetCommand.id, {
        unitId: context.unitId,
        index,
        sheet: { name, rowCount: ROWS, columnCount: COLUMNS },
      });
      const added = context.book.getSheets()[index];
      if (!added) throw new Error('The engine added no sheet.');
      return added.getSheetId();
    },
    changeSheet(id, patch) {
      const sheet = context.facade(id);
      if (patch.name !== undefined && patch.name !== sheet.getSheetName()) sheet.setName(patch.name);
      if (patch.tabColor !== undefined) sheet.setTabColor(patch.tabColor);
      if (patch.showGridlines !== undefined) sheet.setHiddenGridlines(!patch.showGridlines);
      if (patch.position !== undefined) context.book.moveSheet(sheet, patch.position);
      if (patch.visibility === undefined) return;
      veryHidden.delete(id);
      if (patch.visibility === 'Visible') sheet.showSheet();
      else sheet.hideSheet();
      if (patch.visibility === 'VeryHidden') veryHidden.add(id);
    },
    deleteSheet(id) {
      context.book.deleteSheet(id);
      onDeleted(id);
    },
    activeSheet: activeId,
    activate(id) {
      context.book.setActiveSheet(id);
    },
    selection() {
      const range = context.book.getActiveRange()?.getRange();
      const area: StandInArea = range ? toArea(range) : { row: 0, column: 0, rows: 1, columns: 1 };
      return { sheet: activeId(), area };
    },
    select(id, area) {
      if (activeId() !== id) context.book.setActiveSheet(id);
      context.ensure(id, area);
      context.book.setActiveRange(context.range(id, area));
      context.run(ScrollToCellCommand.id, {
        range: context.range(id, { ...area, rows: 1, columns: 1 }).getRange(),
      });
    },
    freeze(id) {
      const { xSplit, ySplit } = context.facade(id).getFreeze();
      return { rows: ySplit, columns: xSplit };
    },
    setFreeze(id, rows, columns) {
      const sheet = context.facade(id);
      if (rows === 0 && columns === 0) sheet.cancelFreeze();
      else
        sheet.setFreeze({
          xSplit: columns,
          ySplit: rows,
          startRow: rows > 0 ? rows : -1,
          startColumn: columns > 0 ? columns : -1,
        });
    },
  };
}
