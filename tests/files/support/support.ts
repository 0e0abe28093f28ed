import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import type { ReadResult } from '../../../shared/files';
import type { CellModel, SheetModel, WorkbookModel } from '../../../shared/sheet/workbook/model';

export const partsOf = (bytes: Uint8Array): Record<string, string> =>
  Object.fromEntries(Object.entries(unzipSync(bytes)).map(([path, part]) => [path, strFromU8(part)]));

export const zipOf = (parts: Readonly<Record<string, string | Uint8Array>>): Uint8Array =>
  zipSync(
    Object.fromEntries(
      Object.entries(parts).map(([path, part]) => [path, typeof part === 'string' ? strToU8(part) : part]),
    ),
  );

export const bookOf = (
  cells: Readonly<Record<string, CellModel>>,
  more: Partial<SheetModel> = {},
): WorkbookModel => ({ title: 'Test', sheets: [{ name: 'Sheet', widths: [], cells, ...more }], names: [] });

export const readable = (
  result: ReadResult,
): { readonly model: WorkbookModel; readonly lost: readonly string[] } => {
  if ('fault' in result) throw new Error(result.fault);
  return result;
};
export const cellsOf = (result: ReadResult, sheet = 0): Readonly<Record<string, CellModel>> =>
  readable(result).model.sheets[sheet]?.cells ?? {};

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006/relationships';

/** The smallest file of another hand: one sheet, and whatever other parts a test is about. */
export const plainFile = (
  sheetData: string,
  other: Readonly<Record<string, string>> = {},
  workbookPr = '',
): Uint8Array =>
  zipOf({
    '_rels/.rels': `<Relationships xmlns="${PACKAGE}"><Relationship Id="rId1" Type="${OFFICE}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}">${workbookPr}<sheets><sheet name="Sheet" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    'xl/_rels/workbook.xml.rels':
      `<Relationships xmlns="${PACKAGE}"><Relationship Id="rId1" Type="${OFFICE}/worksheet" Target="worksheets/sheet1.xml"/>` +
      `<Relationship Id="rId2" Type="${OFFICE}/sharedStrings" Target="sharedStrings.xml"/><Relationship Id="rId3" Type="${OFFICE}/styles" Target="styles.xml"/></Relationships>`,
    'xl/worksheets/sheet1.xml': `<worksheet xmlns="${MAIN}">${sheetData}</worksheet>`,
    ...other,
  });
