import { addressOf, parseAddress, parseArea } from '../../sheet/formula/address';
import type { ChartModel, SheetModel, TableModel } from '../../sheet/workbook/model';
import { escapeCellText, escapeXml } from '../text';

/** Parts that hang on a sheet: its drawing with charts, its tables, its notes. */

export function drawingXml(charts: readonly ChartModel[]): string {
  const corner = (name: string, row: number, column: number): string =>
    `<xdr:${name}><xdr:col>${column}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:${name}>`;
  const frames = charts.map((chart, i) => {
    const from = parseAddress(chart.from) ?? { row: 0, column: 0 };
    const to = parseAddress(chart.to) ?? from;
    return (
      `<xdr:twoCellAnchor>${corner('from', from.row, from.column)}${corner('to', to.row + 1, to.column + 1)}` +
      `<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="${i + 2}" name="Chart ${i + 1}" descr="${escapeXml(chart.title)}"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr>` +
      ('<xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" ' +
        'cy="0"/></xdr:xfrm><a:graphic><a:graphicData ' +
        'uri="http://schemas.openxmlformats.org/drawingml/2006/chart">') +
      `<c:chart xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart" r:id="rId${i + 1}"/></a:graphicData></a:graphic></xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor>`
    );
  });
  return (
    '<xdr:wsDr ' +
    'xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing" ' +
    'xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main" ' +
    `xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships">${frames.join('')}</xdr:wsDr>`
  );
}

/** A table without a name would make the file unreadable. */
const nameOf = (table: TableModel, id: number): string => table.name.trim() || `Table${id}`;

export function tableXml(table: TableModel, sheet: SheetModel, id: number): string {
  const area = parseArea(table.range) ?? { top: 0, left: 0, bottom: 0, right: 0 };
  const columns = Array.from({ length: area.right - area.left + 1 }, (_, i) =>
    String(sheet.cells[addressOf(area.top, area.left + i)]?.value ?? `Column ${i + 1}`),
  );
  return (
    `<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="${id}" name="${escapeXml(nameOf(table, id))}" displayName="${escapeXml(nameOf(table, id))}" ref="${table.range}"${table.hasTotals ? ' totalsRowCount="1"' : ' totalsRowShown="0"'}>` +
    `<tableColumns count="${columns.length}">${columns.map((name, i) => `<tableColumn id="${i + 1}" name="${escapeCellText(name).replaceAll('\n', '_x000a_').replaceAll('"', '&quot;')}"/>`).join('')}</tableColumns>` +
    ('<tableStyleInfo showFirstColumn="0" showLastColumn="0" showRowStripes="0" ' +
      'showColumnStripes="0"/></table>')
  );
}

export const notesOf = (sheet: SheetModel): readonly (readonly [string, string])[] =>
  Object.entries(sheet.cells).flatMap(([address, { note }]) =>
    note === undefined ? [] : [[address, note] as const],
  );

export const notesXml = (notes: readonly (readonly [string, string])[]): string =>
  '<comments ' +
  'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><authors><author></author></authors><commentList>' +
  notes
    .map(
      ([address, text]) =>
        `<comment ref="${address}" authorId="0"><text><t xml:space="preserve">${escapeCellText(text)}</t></text></comment>`,
    )
    .join('') +
  '</commentList></comments>';

/** The boxes notes are shown in; Excel still wants them in its old drawing language. */
export function noteBoxesXml(notes: readonly (readonly [string, string])[]): string {
  const boxes = notes.map(([address], i) => {
    const { row, column } = parseAddress(address) ?? { row: 0, column: 0 };
    return (
      `<v:shape id="_x0000_s${1025 + i}" type="#_x0000_t202" style="position:absolute;visibility:hidden" fillcolor="#ffffe1" o:insetmode="auto"><v:fill color2="#ffffe1"/><v:shadow color="black" obscured="t"/><v:path o:connecttype="none"/><v:textbox style="mso-direction-alt:auto"/>` +
      `<x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>${column + 1}, 15, ${row}, 2, ${column + 3}, 31, ${row + 4}, 1</x:Anchor><x:AutoFill>False</x:AutoFill><x:Row>${row}</x:Row><x:Column>${column}</x:Column></x:ClientData></v:shape>`
    );
  });
  return (
    '<xml xmlns:v="urn:schemas-microsoft-com:vml" ' +
    'xmlns:o="urn:schemas-microsoft-com:office:office" ' +
    'xmlns:x="urn:schemas-microsoft-com:office:excel">' +
    '<o:shapelayout v:ext="edit"><o:idmap v:ext="edit" data="1"/></o:shapelayout>' +
    ('<v:shapetype id="_x0000_t202" coordsize="21600,21600" o:spt="202" ' +
      'path="m,l,21600r21600,l21600,xe"><v:stroke joinstyle="miter"/><v:path ' +
      'gradientshapeok="t" o:connecttype="rect"/></v:shapetype>') +
    `${boxes.join('')}</xml>`
  );
}
