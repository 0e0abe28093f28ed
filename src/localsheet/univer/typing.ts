import type { ICellData, IObjectMatrixPrimitiveType, Nullable } from '@univerjs/core';
import { ICommandService } from '@univerjs/core';
import { SetRangeValuesMutation } from '@univerjs/sheets';
import { cleanFormula } from '../formulaText';
import type { Engine } from './engine';

/**
 * Formulas copied from Excel or from its files carry signs the engine does not know; they are taken off as
 * the cell is written.
 */
export function cleanTyping({ injector }: Engine): void {
  injector.get(ICommandService).beforeCommandExecuted(({ id, params }) => {
    if (id !== SetRangeValuesMutation.id) return;
    const cells =
      (params as { cellValue?: IObjectMatrixPrimitiveType<Nullable<ICellData>> } | undefined)?.cellValue ??
      {};
    for (const line of Object.values(cells)) {
      for (const cell of Object.values<Nullable<ICellData>>(line))
        if (cell?.f && /[@_]/.test(cell.f)) cell.f = cleanFormula(cell.f);
    }
  });
}
