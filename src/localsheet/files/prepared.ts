import { isUnreadable, readXlsx } from '../../../shared/files';
import type { WorkbookModel } from '../../../shared/sheet/workbook/model';
import type { Grids } from './grid';
import { gridsOf } from './grid';
import { countFormulas, needsCalculation } from './stale';

/** A workbook ready to be put into the engine: what takes time with many cells is done. */
export interface Prepared {
  /** Without its cells, but for their notes. */
  readonly model: WorkbookModel;
  readonly grids: Grids;
  readonly isStale: boolean;
  readonly formulas: number;
}
export type FilePrepared = (Prepared & { readonly lost: readonly string[] }) | { readonly fault: string };

export const prepare = (model: WorkbookModel): Prepared => ({
  model: {
    ...model,
    sheets: model.sheets.map((sheet) => ({
      ...sheet,
      cells: Object.fromEntries(
        Object.entries(sheet.cells).flatMap(([address, { note }]) => (note ? [[address, { note }]] : [])),
      ),
    })),
  },
  grids: gridsOf(model),
  isStale: needsCalculation(model),
  formulas: countFormulas(model),
});

export function prepareFile(bytes: Uint8Array): FilePrepared {
  const found = readXlsx(bytes);
  return isUnreadable(found) ? { fault: found.fault } : { ...prepare(found.model), lost: found.lost };
}
