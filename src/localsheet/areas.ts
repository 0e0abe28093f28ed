import { areaText, parseArea, splitReference } from '../../shared/sheet/formula/address';
import type { StandInArea } from '../officeStandIn/book';

/** A1 text ⇄ the areas the backend works with. */

export function areaOf(text: string): StandInArea | undefined {
  const found = parseArea(text);
  return (
    found && {
      row: found.top,
      column: found.left,
      rows: found.bottom - found.top + 1,
      columns: found.right - found.left + 1,
    }
  );
}

export const textOfArea = ({ row, column, rows, columns }: StandInArea): string =>
  areaText({ top: row, left: column, bottom: row + rows - 1, right: column + columns - 1 });

export interface SheetArea {
  readonly sheet: string | undefined;
  readonly area: StandInArea;
}

/** ='My sheet'!$A$1:$B$2 → sheet name and area. */
export function referenceOf(text: string): SheetArea | undefined {
  const { sheet, area } = splitReference(text.trim().replace(/^=/, ''));
  const found = areaOf(area);
  return found && { sheet, area: found };
}
