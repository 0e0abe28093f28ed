import type { IRange } from '@univerjs/core';
import type { StandInArea } from '../../officeStandIn/book';
import type { UniverBook } from './book';
import { toArea } from './book/context';
import type { Style } from './book/formats';

/**
 * Protected sheets: typing, pasting, clearing, dragging and changing rows or columns over locked cells is
 * stopped before it happens. The engine's own protection is not used: it would also stop formulas written by
 * the pane into open cells and answers with a dialog that swallows the next keys.
 */
const EDIT = 'sheet.operation.set-cell-edit-visible';
/**
 * A person's commands: everything but moving about, sizes, and the sheets themselves, which Excel leaves free
 * too.
 */
const COMMAND = /^(sheet\.command\.|(univer|doc)\.command\.(paste|cut)$)/;
const FREE =
  /(activate|zoom|scroll|select-(range|all)|(move|expand)-selection|header|frozen|tab-color|defined-name|worksheet-(order|name|hidden|show)|(row|column)-count|col-width|row-height|auto-width|auto-height|(insert|remove|copy)-sheet|gridlines|format-painter)/;
/** Commands that move cells: with protection on, Excel allows none of them. */
const STRUCTURE = /^sheet\.command\.(insert|remove|delete|move)-(multi-)?(row|col|range)/;

const ranges = (params: unknown): IRange[] => {
  const given = params as
    { range?: IRange | IRange[]; ranges?: IRange[]; targetRange?: IRange; subUnitId?: string } | undefined;
  const found = given?.range ?? given?.ranges ?? given?.targetRange;
  return found === undefined ? [] : Array.isArray(found) ? found : [found];
};

export function guardProtected(open: UniverBook, onRefused: (sentence: string) => void): void {
  const { context, beside } = open;
  const isLocked = (sheet: string, area: StandInArea): boolean => {
    const own = context.sheet(sheet);
    const { row, column, rows, columns } = context.clip(sheet, area);
    for (let r = row; r < row + rows; r++)
      for (let c = column; c < column + columns; c++)
        if ((own.getComposedCellStyle(r, c) as Style).isOpen !== 1) return true;
    return false;
  };
  const { api } = context.engine;
  const refuse = (): void => {
    onRefused(
      'This cell is locked: the sheet is protected so that its formulas stay whole. Type ' +
        'into the bordered input cells, or unprotect the sheet in the pane.',
    );
  };
  api.addEvent(api.Event.BeforeCommandExecute, (event) => {
    const { id, params } = event;
    const isEdit = id === EDIT && (params as { visible?: boolean } | undefined)?.visible !== false;
    if (!isEdit && (!COMMAND.test(id) || FREE.test(id))) return;
    // What the pane asks for was checked before it came here.
    if (context.isWorking) return;
    const sheet = context.book.getActiveSheet().getSheetId();
    if (!beside.of(sheet).protection.isOn) return;
    const touched = ranges(params).map(toArea);
    const active = context.book.getActiveRange()?.getRange();
    const areas = touched.length > 0 ? touched : active ? [toArea(active)] : [];
    if (
      !STRUCTURE.test(id) &&
      !areas.some((area) => isLocked(sheet, isEdit ? { ...area, rows: 1, columns: 1 } : area))
    )
      return;
    event.cancel = true;
    refuse();
  });
}
