import { addressOf } from '../../../sheet/formula/address';
import type { PackageBook } from '../../package/book';
import type { Package } from '../../package/package';
import { relationsPart } from '../../package/package';
import type { PageCell, PageRow } from './page';
import { put } from '../../package/splice';
import type { Edit } from '../../package/splice';
import { all, attribute, attributesOf, bytesOf, child } from '../../package/xml';
import { escapeCellText, escapeXml } from '../../text';

/**
 * Adds a sheet of plain cells behind the others: texts inline, looks borrowed from cells that are there, so
 * no other part changes.
 */

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const RELATIONS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const SHEET_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml';
const WIDTHS = [24, 24, 9, 48, 20, 30, 16, 26, 17, 17, 17, 18, 12];

function cellXml(cell: PageCell, row: number, column: number): string {
  const { type, raw } = cell.value;
  const place = `<c r="${addressOf(row, column)}"${cell.style ? ` s="${escapeXml(cell.style)}"` : ''}`;
  if (type === 'n') return `${place}><v>${escapeXml(raw)}</v></c>`;
  if (type === 'b' || type === 'e') return `${place} t="${type}"><v>${escapeXml(raw)}</v></c>`;
  const words = `<t xml:space="preserve">${escapeCellText(raw)}</t>`;
  return `${place} t="inlineStr"><is>${cell.isBold ? `<r><rPr><b/><sz val="11"/><rFont val="Calibri"/></rPr>${words}</r>` : words}</is></c>`;
}

export function sheetXml(rows: readonly PageRow[]): string {
  const body = rows
    .map((row, r) => {
      const cells = row.map((cell, column) => (cell ? cellXml(cell, r, column) : '')).join('');
      return cells ? `<row r="${r + 1}">${cells}</row>` : '';
    })
    .join('');
  const columns = WIDTHS.map(
    (width, i) => `<col min="${i + 1}" max="${i + 1}" width="${width}" customWidth="1"/>`,
  ).join('');
  return (
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<worksheet xmlns="${MAIN}"><sheetPr><pageSetUpPr fitToPage="1"/></sheetPr><sheetViews><sheetView showGridLines="0" workbookViewId="0"/></sheetViews>` +
    `<sheetFormatPr defaultRowHeight="15"/><cols>${columns}</cols><sheetData>${body}</sheetData>` +
    ('<pageMargins left="0.5" right="0.5" top="0.5" bottom="0.5" header="0.3" ' +
      'footer="0.3"/><pageSetup paperSize="9" orientation="landscape" ' +
      'fitToHeight="0"/></worksheet>')
  );
}

export function freeName(taken: readonly string[], wish: string): string {
  const used = new Set(taken.map((name) => name.toLowerCase()));
  for (let n = 1; ; n++) {
    const name = n === 1 ? wish : `${wish} (${n})`;
    if (!used.has(name.toLowerCase())) return name;
  }
}

/**
 * The edits of workbook.xml that hang the sheet in; its own parts are added here. `taken` is what the names
 * of the tabs will be.
 */
export function addSheet(pack: Package, book: PackageBook, name: string, rows: readonly PageRow[]): Edit[] {
  const { bytes, root } = book;
  const sheets = child(root, 'sheets');
  if (!sheets) return [];
  const folder = book.part.slice(0, book.part.lastIndexOf('/') + 1);
  let number = 1;
  while (!pack.isFree(`${folder}worksheets/sheet${number}.xml`)) number++;
  const part = `${folder}worksheets/sheet${number}.xml`;
  const strictly = attributesOf(bytes, root).some((one) =>
    one.value.startsWith('http://purl.oclc.org/ooxml/'),
  );
  const relationsUri = strictly ? 'http://purl.oclc.org/ooxml/officeDocument/relationships' : RELATIONS;
  const xml = sheetXml(rows);
  pack.add(
    part,
    bytesOf(strictly ? xml.replace(MAIN, 'http://purl.oclc.org/ooxml/spreadsheetml/main') : xml),
    SHEET_TYPE,
  );

  const used = new Set(pack.relations(book.part).map((relation) => relation.id.toLowerCase()));
  let id = 1;
  while (used.has(`rid${id}`)) id++;
  const relations = pack.tree(relationsPart(book.part));
  if (relations) {
    const at = relations.root.closeStart;
    pack.edit(relationsPart(book.part), [
      put(
        at,
        at,
        `<${relations.root.prefix}Relationship Id="rId${id}" Type="${relationsUri}/worksheet" Target="/${part}"/>`,
      ),
    ]);
  }
  const sheetId =
    1 +
    Math.max(0, ...all(sheets, 'sheet').map((one) => Number(attribute(bytes, one, 'sheetId')?.value) || 0));
  // Declared on the element itself: a root without xmlns:r is allowed, and a prefix of that name may mean
  // something else.
  return [
    put(
      sheets.closeStart,
      sheets.closeStart,
      `<${sheets.prefix}sheet name="${escapeXml(name)}" sheetId="${sheetId}" r:id="rId${id}" xmlns:r="${relationsUri}"/>`,
    ),
  ];
}
