import { strToU8, zipSync } from 'fflate';
import { absoluteArea, quoteSheet } from '../../sheet/formula/address';
import type { WorkbookModel } from '../../sheet/workbook/model';
import { toFile } from '../formulas';
import { escapeXml } from '../text';

const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006/relationships';
const SPREADSHEET = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

/** What a part is: its content type, and the last word of the relationship that leads to it. */
export const PARTS = {
  workbook: { type: `${SPREADSHEET}.sheet.main+xml`, relation: `${OFFICE}/officeDocument` },
  sheet: { type: `${SPREADSHEET}.worksheet+xml`, relation: `${OFFICE}/worksheet` },
  styles: { type: `${SPREADSHEET}.styles+xml`, relation: `${OFFICE}/styles` },
  texts: { type: `${SPREADSHEET}.sharedStrings+xml`, relation: `${OFFICE}/sharedStrings` },
  theme: { type: 'application/vnd.openxmlformats-officedocument.theme+xml', relation: `${OFFICE}/theme` },
  metadata: { type: `${SPREADSHEET}.sheetMetadata+xml`, relation: `${OFFICE}/sheetMetadata` },
  table: { type: `${SPREADSHEET}.table+xml`, relation: `${OFFICE}/table` },
  notes: { type: `${SPREADSHEET}.comments+xml`, relation: `${OFFICE}/comments` },
  noteBoxes: {
    type: 'application/vnd.openxmlformats-officedocument.vmlDrawing',
    relation: `${OFFICE}/vmlDrawing`,
  },
  drawing: {
    type: 'application/vnd.openxmlformats-officedocument.drawing+xml',
    relation: `${OFFICE}/drawing`,
  },
  chart: {
    type: 'application/vnd.openxmlformats-officedocument.drawingml.chart+xml',
    relation: `${OFFICE}/chart`,
  },
  settings: { type: 'application/xml', relation: `${OFFICE}/customXml` },
  core: {
    type: 'application/vnd.openxmlformats-package.core-properties+xml',
    relation: 'http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties',
  },
  app: {
    type: 'application/vnd.openxmlformats-officedocument.extended-properties+xml',
    relation: `${OFFICE}/extended-properties`,
  },
} as const;
export type PartKind = keyof typeof PARTS;

interface Link {
  readonly id: string;
  readonly kind: PartKind;
  readonly target: string;
}

const HEADER = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
/** A fixed time in every entry: the same model gives the same bytes. */
const TIME = new Date(1980, 0, 1);
const LEVEL = 6;

/** Relative path from one part to another: /xl/worksheets/sheet1.xml → ../charts/chart1.xml. */
const relative = (from: string, to: string): string => {
  const source = from.split('/').slice(0, -1);
  const target = to.split('/');
  let same = 0;
  while (same < source.length && source[same] === target[same]) same++;
  return '../'.repeat(source.length - same) + target.slice(same).join('/');
};

/** The parts of a file and how they point at each other; zips to bytes. */
export class WrittenPackage {
  private readonly parts = new Map<string, { readonly kind: PartKind; readonly xml: string }>();
  private readonly links = new Map<string, Link[]>();

  /** Says that `from` ('' is the package) points at `target`; gives the id to write in `from`. */
  link(from: string, kind: PartKind, target: string): string {
    const links = this.links.get(from) ?? [];
    const id = `rId${links.length + 1}`;
    links.push({ id, kind, target });
    this.links.set(from, links);
    return id;
  }

  add(path: string, kind: PartKind, xml: string): void {
    this.parts.set(path, { kind, xml: kind === 'noteBoxes' ? xml : HEADER + xml });
  }

  private contentTypes(): string {
    const overrides = [...this.parts]
      .filter(([, { kind }]) => kind !== 'noteBoxes')
      .map(([path, { kind }]) => `<Override PartName="/${path}" ContentType="${PARTS[kind].type}"/>`);
    return (
      `${HEADER}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>` +
      `<Default Extension="xml" ContentType="application/xml"/><Default Extension="vml" ContentType="${PARTS.noteBoxes.type}"/>${overrides.join('')}</Types>`
    );
  }

  private relations(from: string, links: readonly Link[]): string {
    const items = links.map(
      ({ id, kind, target }) =>
        `<Relationship Id="${id}" Type="${PARTS[kind].relation}" Target="${escapeXml(relative(from, target))}"/>`,
    );
    return `${HEADER}<Relationships xmlns="${PACKAGE}">${items.join('')}</Relationships>`;
  }

  bytes(): Uint8Array {
    const files: Record<string, Uint8Array> = { '[Content_Types].xml': strToU8(this.contentTypes()) };
    for (const [from, links] of this.links) {
      const at = from.lastIndexOf('/') + 1;
      files[`${from.slice(0, at)}_rels/${from.slice(at)}.rels`] = strToU8(this.relations(from, links));
    }
    for (const [path, { xml }] of this.parts) files[path] = strToU8(xml);
    return zipSync(files, { level: LEVEL, mtime: TIME });
  }
}

/**
 * Sheets, names and the promise to calculate nothing on opening: cached values of custom functions must
 * survive where the add-in is missing.
 */
export function workbookXml(model: WorkbookModel, sheetIds: readonly string[]): string {
  const titles = model.sheets.flatMap((sheet, i) => {
    const { titleRows: rows, area } = sheet.print ?? {};
    const local = (name: string, place: string) => ({
      name,
      local: i,
      text: `${quoteSheet(sheet.name)}!${place}`,
      comment: undefined,
    });
    return [
      ...(area ? [local('_xlnm.Print_Area', absoluteArea(area))] : []),
      ...(rows ? [local('_xlnm.Print_Titles', `$${rows[0]}:$${rows[1]}`)] : []),
    ];
  });
  const own = model.names.map(({ name, refersTo, comment }) => ({
    name,
    local: undefined,
    text: toFile(refersTo),
    comment,
  }));
  const key = (name: string): string => name.toLowerCase();
  const names = [...titles, ...own].sort((a, b) =>
    key(a.name) < key(b.name) ? -1 : key(a.name) > key(b.name) ? 1 : (a.local ?? -1) - (b.local ?? -1),
  );
  const definitions = names.map(
    ({ name, local, text, comment }) =>
      `<definedName name="${escapeXml(name)}"${comment ? ` comment="${escapeXml(comment)}"` : ''}${local === undefined ? '' : ` localSheetId="${local}"`}>${escapeXml(text)}</definedName>`,
  );
  return (
    '<workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" ' +
    'xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships">' +
    ('<workbookPr defaultThemeVersion="124226"/><bookViews><workbookView xWindow="0" ' +
      'yWindow="0" windowWidth="28800" windowHeight="15000"/></bookViews>') +
    `<sheets>${model.sheets.map((sheet, i) => `<sheet name="${escapeXml(sheet.name)}" sheetId="${i + 1}"${sheet.isHidden ? ' state="hidden"' : ''} r:id="${sheetIds[i] ?? ''}"/>`).join('')}</sheets>` +
    `${definitions.length > 0 ? `<definedNames>${definitions.join('')}</definedNames>` : ''}<calcPr calcId="191029"/></workbook>`
  );
}

export const coreXml = (title: string): string =>
  '<cp:coreProperties ' +
  'xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties" ' +
  'xmlns:dc="http://purl.org/dc/elements/1.1/">' +
  `<dc:creator>Spawnbook</dc:creator><dc:title>${escapeXml(title)}</dc:title></cp:coreProperties>`;
export const appXml = (): string =>
  '<Properties ' +
  'xmlns="http://schemas.openxmlformats.org/officeDocument/2006/extended-properties"><Application>Spawnbook</Application></Properties>';

/** What cm="1" refers to: the cell holds a dynamic array. */
export const metadataXml = (): string =>
  '<metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" ' +
  'xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray">' +
  ('<metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" ' +
    'copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" ' +
    'clearFormats="1" clearComments="1" assign="1" coerce="1" ' +
    'cellMeta="1"/></metadataTypes>') +
  ('<futureMetadata name="XLDAPR" count="1"><bk><extLst><ext ' +
    'uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties ' +
    'fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata>') +
  '<cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';
