import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';

/** Workbooks written part by part, so that a test says exactly what is in the file. */

export type Parts = Readonly<Record<string, string | Uint8Array>>;
const EARLY = new Date('1980-01-02T00:00:00Z');

export const zip = (parts: Parts): Uint8Array =>
  zipSync(
    Object.fromEntries(
      Object.entries(parts).map(([name, content]) => [
        name,
        typeof content === 'string' ? strToU8(content) : content,
      ]),
    ),
    { mtime: EARLY },
  );

export const unzip = (file: Uint8Array): Record<string, string> =>
  Object.fromEntries(Object.entries(unzipSync(file)).map(([name, bytes]) => [name, strFromU8(bytes)]));

export const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
export const REL = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
export const PACKAGE_REL = 'http://schemas.openxmlformats.org/package/2006/relationships';
export const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

export const escape = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

export const relations = (
  list: readonly (readonly [id: string, type: string, target: string, external?: boolean])[],
): string =>
  `${HEAD}<Relationships xmlns="${PACKAGE_REL}">${list
    .map(
      ([id, type, target, external]) =>
        `<Relationship Id="${id}" Type="${type.includes('://') ? type : `${REL}/${type}`}" Target="${escape(target)}"${external ? ' TargetMode="External"' : ''}/>`,
    )
    .join('')}</Relationships>`;

const TYPES: readonly (readonly [RegExp, string])[] = [
  [/^xl\/workbook\.xml$/, 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml'],
  [/worksheets\/[^/]+\.xml$/, 'application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml'],
  [/styles\.xml$/, 'application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml'],
  [/sharedStrings\.xml$/, 'application/vnd.openxmlformats-officedocument.spreadsheetml.sharedStrings+xml'],
  [/calcChain\.xml$/, 'application/vnd.openxmlformats-officedocument.spreadsheetml.calcChain+xml'],
  [/metadata\.xml$/, 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml'],
  [/tables\/[^/]+\.xml$/, 'application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml'],
  [/drawings\/[^/]+\.xml$/, 'application/vnd.openxmlformats-officedocument.drawing+xml'],
  [/charts\/[^/]+\.xml$/, 'application/vnd.openxmlformats-officedocument.drawingml.chart+xml'],
  [/comments\d*\.xml$/, 'application/vnd.openxmlformats-officedocument.spreadsheetml.comments+xml'],
  [/threadedComments\/[^/]+\.xml$/, 'application/vnd.ms-excel.threadedcomments+xml'],
  [/persons\/[^/]+\.xml$/, 'application/vnd.ms-excel.person+xml'],
  [/pivotTables\/[^/]+\.xml$/, 'application/vnd.openxmlformats-officedocument.spreadsheetml.pivotTable+xml'],
  [
    /pivotCacheDefinition\d+\.xml$/,
    'application/vnd.openxmlformats-officedocument.spreadsheetml.pivotCacheDefinition+xml',
  ],
  [
    /pivotCacheRecords\d+\.xml$/,
    'application/vnd.openxmlformats-officedocument.spreadsheetml.pivotCacheRecords+xml',
  ],
  [/taskpanes\.xml$/, 'application/vnd.ms-office.webextensiontaskpanes+xml'],
  [/webextension\d+\.xml$/, 'application/vnd.ms-office.webextension+xml'],
  [/docProps\/core\.xml$/, 'application/vnd.openxmlformats-package.core-properties+xml'],
  [/docProps\/app\.xml$/, 'application/vnd.openxmlformats-officedocument.extended-properties+xml'],
  [/docProps\/custom\.xml$/, 'application/vnd.openxmlformats-officedocument.custom-properties+xml'],
  [
    /_xmlsignatures\/[^/]+\.xml$/,
    'application/vnd.openxmlformats-package.digital-signature-xmlsignature+xml',
  ],
];

export function contentTypes(names: readonly string[]): string {
  const overrides = names.flatMap((name) => {
    const type = TYPES.find(([pattern]) => pattern.test(name))?.[1];
    return type ? [`<Override PartName="/${name}" ContentType="${type}"/>`] : [];
  });
  const defaults = [
    ['rels', 'application/vnd.openxmlformats-package.relationships+xml'],
    ['xml', 'application/xml'],
    ['png', 'image/png'],
    ['vml', 'application/vnd.openxmlformats-officedocument.vmlDrawing'],
    ['bin', 'application/vnd.openxmlformats-officedocument.spreadsheetml.printerSettings'],
    ['sigs', 'application/vnd.openxmlformats-package.digital-signature-origin'],
  ];
  return `${HEAD}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">${defaults.map(([ending, type]) => `<Default Extension="${ending}" ContentType="${type}"/>`).join('')}${overrides.join('')}</Types>`;
}

export interface CellSpec {
  readonly v?: number | string | boolean;
  /** Type as the file says it; told from v when left out. */
  readonly t?: string;
  readonly f?: string;
  /** Attributes of <f>, as written. */
  readonly how?: string;
  readonly cm?: boolean;
  readonly vm?: boolean;
  readonly s?: number;
}

const valueXml = (v: number | string | boolean): string =>
  `<v>${typeof v === 'boolean' ? Number(v) : typeof v === 'string' ? escape(v) : v}</v>`;

export function cellXml(address: string, { v, t, f, how, cm, vm, s }: CellSpec): string {
  const type = t ?? (typeof v === 'string' ? 'str' : typeof v === 'boolean' ? 'b' : undefined);
  const formula =
    f === undefined && how === undefined ? '' : `<f${how ? ` ${how}` : ''}>${escape(f ?? '')}</f>`;
  return `<c r="${address}"${s === undefined ? '' : ` s="${s}"`}${type ? ` t="${type}"` : ''}${cm ? ' cm="1"' : ''}${vm ? ' vm="1"' : ''}>${formula}${v === undefined ? '' : valueXml(v)}</c>`;
}

const rowOf = (address: string): number => Number(/\d+/.exec(address)?.[0]);
const columnRank = (address: string): string => (/[A-Z]+/.exec(address)?.[0] ?? '').padStart(3);

export function rowsXml(cells: Readonly<Record<string, CellSpec>>): string {
  const rows = new Map<number, string[]>();
  for (const address of Object.keys(cells).toSorted(
    (a, b) => rowOf(a) - rowOf(b) || columnRank(a).localeCompare(columnRank(b)),
  ))
    rows.set(rowOf(address), [...(rows.get(rowOf(address)) ?? []), cellXml(address, cells[address] ?? {})]);
  return [...rows].map(([row, list]) => `<row r="${row}">${list.join('')}</row>`).join('');
}

export const worksheet = (cells: Readonly<Record<string, CellSpec>>, after = '', before = ''): string =>
  `${HEAD}<worksheet xmlns="${MAIN}" xmlns:r="${REL}" xmlns:x14="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main" xmlns:xm="http://schemas.microsoft.com/office/excel/2006/main" xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006">${before}<sheetData>${rowsXml(cells)}</sheetData>${after}</worksheet>`;

export const STYLES = `${HEAD}<styleSheet xmlns="${MAIN}"><fonts count="1"><font><sz val="11"/><name val="Calibri"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="3"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/><xf numFmtId="22" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/><xf numFmtId="10" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/></cellXfs><cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles><dxfs count="1"><dxf><font><b/></font></dxf></dxfs></styleSheet>`;

export const METADATA = `${HEAD}<metadata xmlns="${MAIN}" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray"><metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/></metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>`;

export interface SimpleBook {
  readonly sheets: Readonly<Record<string, string>>;
  /** Children of <workbook> behind <sheets>. */
  readonly after?: string;
  readonly before?: string;
  readonly extra?: Parts;
  readonly bookRelations?: readonly (readonly [string, string, string])[];
  readonly packageRelations?: readonly (readonly [string, string, string])[];
}

/** A workbook of a few sheets with styles and array metadata. */
export function simpleParts({
  sheets,
  after = '',
  before = '',
  extra = {},
  bookRelations = [],
  packageRelations = [],
}: SimpleBook): Record<string, string | Uint8Array> {
  const names = Object.keys(sheets);
  const parts: Record<string, string | Uint8Array> = {
    'xl/workbook.xml': `${HEAD}<workbook xmlns="${MAIN}" xmlns:r="${REL}">${before}<sheets>${names.map((name, i) => `<sheet name="${escape(name)}" sheetId="${i + 1}" r:id="rId${i + 1}"/>`).join('')}</sheets>${after}</workbook>`,
    'xl/_rels/workbook.xml.rels': relations([
      ...names.map((_, i) => [`rId${i + 1}`, 'worksheet', `worksheets/sheet${i + 1}.xml`] as const),
      ['rId90', 'styles', 'styles.xml'],
      ['rId91', 'sheetMetadata', 'metadata.xml'],
      ...bookRelations,
    ]),
    '_rels/.rels': relations([['rId1', 'officeDocument', 'xl/workbook.xml'], ...packageRelations]),
    'xl/styles.xml': STYLES,
    'xl/metadata.xml': METADATA,
    ...Object.fromEntries(names.map((name, i) => [`xl/worksheets/sheet${i + 1}.xml`, sheets[name] ?? ''])),
    ...extra,
  };
  return { '[Content_Types].xml': contentTypes(Object.keys(parts)), ...parts };
}

export const simpleBook = (book: SimpleBook): Uint8Array => zip(simpleParts(book));

export const OPTIONS = { date: '14 March 2026', workbook: 'season.xlsx' } as const;
