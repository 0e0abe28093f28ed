import type { IWorkbookData } from '@univerjs/core';
import type { KeptWhole } from './shapes';

/** A saving that was cut short left some sheets newer than the rest: their answers have to be worked out. */
export const isCutShort = ({ book, sheets }: KeptWhole): boolean =>
  sheets.some((sheet) => sheet.saving > book.saving);

/** What was kept, as the engine takes it. */
export const keptData = ({ book, sheets }: KeptWhole, id: string): Partial<IWorkbookData> => ({
  ...book.workbook,
  id,
  sheetOrder: book.workbook.sheetOrder.filter((sheet) => sheets.some((kept) => kept.id === sheet)),
  resources: (book.workbook.resources ?? []).map((resource) => ({
    ...resource,
    // Names carry the id of their workbook.
    data: resource.data.replaceAll(`"unitId":"${book.workbook.id}"`, `"unitId":"${id}"`),
  })),
  sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id, sheet.data])),
});
