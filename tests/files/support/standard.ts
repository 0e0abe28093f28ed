import { JSDOM } from 'jsdom';
import type { Area } from '../../../shared/sheet/formula/address';
import { parseArea } from '../../../shared/sheet/formula/address';

/** Rejoins 'xl/worksheets' and '../tables/table1.xml'. */
const joinedPath = (from: string, target: string): string =>
  target.startsWith('/') ? target.slice(1) : new URL(target, `file:///${from}`).pathname.slice(1);

/**
 * Rules of ISO/IEC 29500-1 (SpreadsheetML, DrawingML charts) and 29500-2 (packages) that can be applied
 * without the schema files: the order of child elements, which children may stand where, and that everything
 * one part says of another is true. The lists are transcribed from the standard's element descriptions, from
 * memory, for the elements we write.
 */
const ORDER: Readonly<Record<string, string>> = {
  workbook:
    'fileVersion fileSharing workbookPr workbookProtection bookViews sheets ' +
    'functionGroups externalReferences definedNames calcPr',
  worksheet:
    'sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr ' +
    'sheetProtection protectedRanges scenarios autoFilter sortState dataConsolidate ' +
    'customSheetViews mergeCells phoneticPr conditionalFormatting dataValidations ' +
    'hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks ' +
    'customProperties cellWatches ignoredErrors smartTags drawing legacyDrawing ' +
    'legacyDrawingHF picture oleObjects controls webPublishItems tableParts extLst',
  sheetPr: 'tabColor outlinePr pageSetUpPr',
  sheetView: 'pane selection pivotSelection',
  row: 'c',
  c: 'f v is',
  dataValidation: 'formula1 formula2',
  cfRule: 'formula colorScale dataBar iconSet',
  headerFooter: 'oddHeader oddFooter evenHeader evenFooter firstHeader firstFooter',
  styleSheet: 'numFmts fonts fills borders cellStyleXfs cellXfs cellStyles dxfs tableStyles colors extLst',
  xf: 'alignment protection',
  dxf: 'font numFmt fill alignment border protection',
  border: 'start end left right top bottom diagonal vertical horizontal',
  patternFill: 'fgColor bgColor',
  table: 'autoFilter sortState tableColumns tableStyleInfo',
  tableColumn: 'calculatedColumnFormula totalsRowFormula',
  si: 't rPh phoneticPr r',
  comments: 'authors commentList',
  comment: 'text',
  metadata: 'metadataTypes metadataStrings mdxMetadata futureMetadata cellMetadata valueMetadata',
  chartSpace:
    'date1904 lang roundedCorners style clrMapOvr pivotSource protection chart spPr txPr ' +
    'externalData printSettings userShapes',
  chart:
    'title autoTitleDeleted pivotFmts view3D floor sideWall backWall plotArea legend ' +
    'plotVisOnly dispBlanksAs',
  plotArea: 'layout barChart lineChart catAx dateAx valAx dTable spPr',
  title: 'tx layout overlay spPr txPr',
  tx: 'strRef rich v',
  rich: 'bodyPr lstStyle p',
  txPr: 'bodyPr lstStyle p',
  legend: 'legendPos legendEntry layout overlay spPr txPr',
  legendEntry: 'idx delete txPr',
  lineChart: 'grouping varyColors ser dLbls dropLines hiLowLines upDownBars marker smooth axId',
  barChart: 'barDir grouping varyColors ser dLbls gapWidth overlap serLines axId',
  ser:
    'idx order tx spPr invertIfNegative marker pictureOptions dPt dLbls trendline ' +
    'errBars cat val smooth shape',
  catAx:
    'axId scaling delete axPos majorGridlines minorGridlines title numFmt majorTickMark ' +
    'minorTickMark tickLblPos spPr txPr crossAx crosses crossesAt auto lblAlgn lblOffset ' +
    'tickLblSkip tickMarkSkip noMultiLvlLbl',
  dateAx:
    'axId scaling delete axPos majorGridlines minorGridlines title numFmt majorTickMark ' +
    'minorTickMark tickLblPos spPr txPr crossAx crosses crossesAt auto lblOffset ' +
    'baseTimeUnit majorUnit majorTimeUnit minorUnit minorTimeUnit',
  valAx:
    'axId scaling delete axPos majorGridlines minorGridlines title numFmt majorTickMark ' +
    'minorTickMark tickLblPos spPr txPr crossAx crosses crossesAt crossBetween majorUnit ' +
    'minorUnit dispUnits',
  scaling: 'logBase orientation max min',
  numRef: 'f numCache',
  strRef: 'f strCache',
  numCache: 'formatCode ptCount pt',
  strCache: 'ptCount pt',
  pt: 'v',
  spPr: 'xfrm custGeom prstGeom noFill solidFill gradFill blipFill pattFill grpFill ln effectLst',
  ln: 'noFill solidFill gradFill pattFill prstDash custDash round bevel miter headEnd tailEnd',
  twoCellAnchor: 'from to sp grpSp graphicFrame cxnSp pic clientData',
  from: 'col colOff row rowOff',
  to: 'col colOff row rowOff',
  graphicFrame: 'nvGraphicFramePr xfrm graphic',
  themeElements: 'clrScheme fontScheme fmtScheme extLst',
  clrScheme: 'dk1 lt1 dk2 lt2 accent1 accent2 accent3 accent4 accent5 accent6 hlink folHlink',
  fontScheme: 'majorFont minorFont',
  fmtScheme: 'fillStyleLst lnStyleLst effectStyleLst bgFillStyleLst',
  majorFont: 'latin ea cs font',
  minorFont: 'latin ea cs font',
};

const REQUIRED: Readonly<Record<string, readonly string[]>> = {
  workbook: ['sheets'],
  worksheet: ['sheetData'],
  plotArea: ['valAx'],
  lineChart: ['grouping', 'axId'],
  barChart: ['barDir', 'axId'],
  ser: ['idx', 'order', 'val'],
  valAx: ['axId', 'scaling', 'axPos', 'crossAx'],
  catAx: ['axId', 'scaling', 'axPos', 'crossAx'],
  dateAx: ['axId', 'scaling', 'axPos', 'crossAx'],
  styleSheet: ['fonts', 'fills', 'borders', 'cellXfs'],
};

const window = new JSDOM('').window;

/** An element as the rules look at it: asking the document itself costs twenty times as much. */
class Piece {
  readonly children: Piece[] = [];
  text = '';
  constructor(
    readonly localName: string,
    readonly parent: Piece | undefined,
    private readonly attributes: ReadonlyMap<string, string>,
  ) {}

  get(name: string): string | null {
    return this.attributes.get(name) ?? null;
  }
}

/** The elements of a part by their names, in the order they stand in. */
class Part {
  readonly all: Piece[] = [];
  private readonly named = new Map<string, Piece[]>();

  constructor(document: Document) {
    this.add(document.documentElement, undefined);
  }

  private add(element: Element, parent: Piece | undefined): void {
    const names = element.getAttributeNames();
    const piece = new Piece(
      element.localName,
      parent,
      new Map(names.map((name) => [name, element.getAttribute(name) ?? ''])),
    );
    parent?.children.push(piece);
    this.all.push(piece);
    this.of(piece.localName).push(piece);
    for (let node = element.firstChild; node; node = node.nextSibling)
      if (node.nodeType === 1) this.add(node as Element, piece);
      else if (node.nodeType === 3) piece.text += node.nodeValue ?? '';
  }

  of(name: string): Piece[] {
    const found = this.named.get(name) ?? [];
    if (found.length === 0) this.named.set(name, found);
    return found;
  }

  /** Elements of a name directly inside one of another name. */
  within(parent: string, name: string): Piece[] {
    return this.of(name).filter((piece) => piece.parent?.localName === parent);
  }
}

/** A strict parser of other people: a part that is not well-formed gives undefined. */
const partOf = (xml: string): Part | undefined => {
  try {
    const parsed = new window.DOMParser().parseFromString(xml, 'application/xml');
    const isBroken = parsed.getElementsByTagName('parsererror').length > 0;
    return isBroken ? undefined : new Part(parsed);
  } catch {
    return undefined;
  }
};

const orderFaults = (path: string, element: Piece): string[] => {
  const children = element.children.map(({ localName }) => localName);
  const order = ORDER[element.localName]?.split(' ');
  const faults: string[] = [];
  if (order) {
    let last = 0;
    for (const child of children) {
      const at = order.indexOf(child);
      if (at < 0) faults.push(`${path}: <${child}> may not stand in <${element.localName}>`);
      else if (at < last) faults.push(`${path}: <${child}> stands too late in <${element.localName}>`);
      last = Math.max(last, at);
    }
  }
  for (const needed of REQUIRED[element.localName] ?? [])
    if (!children.includes(needed)) faults.push(`${path}: <${element.localName}> lacks <${needed}>`);
  return faults;
};

type Parts = Readonly<Record<string, string>>;
type Documents = ReadonlyMap<string, Part>;

const relationFaults = (path: string, document: Part, parts: Parts): string[] => {
  const source = path.replace('_rels/', '').replace(/\.rels$/, '');
  const relations = document.of('Relationship');
  const ids = relations.map((r) => r.get('Id'));
  const used = [...(parts[source] ?? '').matchAll(/\br:(?:id|embed)="([^"]+)"/g)].map(([, id]) => id ?? '');
  return [
    ...(new Set(ids).size === ids.length ? [] : [`${path}: an id occurs twice`]),
    ...targetsOf(path, document)
      .filter((target) => !(target in parts))
      .map((target) => `${path}: ${target} is not in the package`),
    ...used.filter((id) => !ids.includes(id)).map((id) => `${source}: ${id} leads nowhere`),
  ];
};

const targetsOf = (path: string, document: Part): string[] =>
  document
    .of('Relationship')
    .map((r) => joinedPath(path.replace('_rels/', '').replace(/\.rels$/, ''), r.get('Target') ?? ''));

const packageFaults = (parts: Parts, documents: Documents): string[] => {
  const types = documents.get('[Content_Types].xml');
  const listed = (selector: string, attribute: string): string[] =>
    (types?.of(selector) ?? []).map((o) => o.get(attribute) ?? '');
  const overrides = new Set(listed('Override', 'PartName'));
  const defaults = new Set(listed('Default', 'Extension'));
  const relations = [...documents].filter(([path]) => path.endsWith('.rels'));
  const reached = new Set(relations.flatMap(([path, document]) => targetsOf(path, document)));
  const plain = Object.keys(parts).filter(
    (path) => path !== '[Content_Types].xml' && !path.endsWith('.rels'),
  );
  const typed = (path: string): boolean => overrides.has(`/${path}`);
  return [
    ...relations.flatMap(([path, document]) => relationFaults(path, document, parts)),
    ...plain
      .filter((path) => !typed(path) && !defaults.has(path.slice(path.lastIndexOf('.') + 1)))
      .map((path) => `${path}: no content type`),
    ...plain
      .filter((path) => !typed(path) && path.endsWith('.xml'))
      .map((path) => `${path}: only the content type of any XML`),
    ...plain.filter((path) => !reached.has(path)).map((path) => `${path}: nothing leads to it`),
    ...[...overrides]
      .filter((path) => !(path.slice(1) in parts))
      .map((path) => `content type of ${path}, which is not in the package`),
  ];
};

interface Counts {
  readonly xfs: number;
  readonly dxfs: number;
  readonly texts: number;
  readonly hasMetadata: boolean;
}

const within = (value: string | null, count: number): boolean =>
  value === null || (Number.isInteger(Number(value)) && Number(value) >= 0 && Number(value) < count);
const areaOf = (element: Piece, attribute = 'ref'): Area =>
  parseArea(element.get(attribute) ?? '') ?? { top: -1, left: -1, bottom: -1, right: -1 };
const overlap = (a: Area, b: Area): boolean =>
  a.top <= b.bottom && b.top <= a.bottom && a.left <= b.right && b.left <= a.right;
const ascends = (numbers: readonly number[]): boolean =>
  numbers.every((n, i) => i === 0 || n > (numbers[i - 1] ?? n));

const cellFaults = (cell: Piece, counts: Counts): string[] => [
  ...(within(cell.get('s'), counts.xfs) ? [] : ['no such style']),
  ...(cell.get('t') !== 's' ||
  within(cell.children.find(({ localName }) => localName === 'v')?.text ?? '', counts.texts)
    ? []
    : ['no such text']),
  ...(cell.get('cm') === null || (cell.get('cm') === '1' && counts.hasMetadata) ? [] : ['no such metadata']),
];

const rowFaults = (row: Piece, counts: Counts): string[] => {
  const cells = row.children;
  const inRow = cells.every((cell) => areaOf(cell, 'r').top === Number(row.get('r')) - 1);
  return [
    ...(inRow && ascends(cells.map((cell) => areaOf(cell, 'r').left))
      ? []
      : [`row ${row.get('r') ?? ''}: cells out of order`]),
    ...cells.flatMap((cell) => cellFaults(cell, counts).map((fault) => `${cell.get('r') ?? ''}: ${fault}`)),
  ];
};

/** Cells with a formula, by the line they stand in. */
const placesByRow = (formulas: readonly Piece[]): ReadonlyMap<number, readonly Area[]> => {
  const rows = new Map<number, Area[]>();
  for (const { parent } of formulas) {
    if (!parent) continue;
    const place = areaOf(parent, 'r');
    const row = rows.get(place.top) ?? [];
    if (row.length === 0) rows.set(place.top, row);
    row.push(place);
  }
  return rows;
};

const spillFaults = (sheet: Part): string[] => {
  const formulas = sheet.of('f');
  const rows = placesByRow(formulas);
  const formulasIn = (area: Area): number => {
    let count = 0;
    for (let row = area.top; row <= area.bottom; row++)
      count += (rows.get(row) ?? []).filter((place) => overlap(place, area)).length;
    return count;
  };
  return formulas
    .filter((f) => f.get('t') === 'array' && formulasIn(areaOf(f)) !== 1)
    .map((f) => `formulas inside the spilled range ${f.get('ref') ?? ''}`);
};

const LISTS = [
  ['mergeCells', 'mergeCell'],
  ['dataValidations', 'dataValidation'],
  ['tableParts', 'tablePart'],
  ['rowBreaks', 'brk'],
] as const;

const ruleFaults = (sheet: Part, counts: Counts): string[] => {
  const all = (name: string): Piece[] => sheet.of(name);
  const priorities = all('cfRule').map((r) => r.get('priority'));
  const merges = all('mergeCell').map((m) => areaOf(m));
  return [
    ...(merges.some((a, i) => merges.slice(i + 1).some((b) => overlap(a, b)))
      ? ['merged cells overlap']
      : []),
    ...(new Set(priorities).size === priorities.length ? [] : ['two rules of the same priority']),
    ...(all('cfRule').every((rule) => within(rule.get('dxfId'), counts.dxfs))
      ? []
      : ['a rule without its look']),
    ...LISTS.filter(([list, item]) =>
      all(list).some(
        (element) =>
          Number(element.get('count')) !==
          element.children.filter(({ localName }) => localName === item).length,
      ),
    ).map(([list]) => `${list} miscounted`),
    ...(all('dataValidation').every((rule) =>
      ['prompt', 'error'].every((name) => (rule.get(name) ?? '').length <= 255),
    )
      ? []
      : ['a prompt longer than 255 characters']),
  ];
};

const sheetFaults = (path: string, sheet: Part, counts: Counts): string[] => {
  const rows = sheet.of('row');
  return [
    ...(ascends(rows.map((row) => Number(row.get('r')))) ? [] : ['rows out of order']),
    ...rows.flatMap((row) => rowFaults(row, counts)),
    ...spillFaults(sheet),
    ...ruleFaults(sheet, counts),
  ].map((fault) => `${path}: ${fault}`);
};

const tableFaults = (documents: Documents): string[] => {
  const tables = [...documents]
    .filter(([path]) => path.startsWith('xl/tables/'))
    .map(([path, document]) => [path, document] as const);
  const ids = tables.map(([, t]) => t.of('table')[0]?.get('id'));
  return [
    ...(new Set(ids).size === ids.length ? [] : ['two tables of one id']),
    ...tables.flatMap(([path, table]) => {
      const area = parseArea(table.of('table')[0]?.get('ref') ?? '');
      const columns = table.of('tableColumn');
      return area && area.right - area.left + 1 === columns.length
        ? []
        : [`${path}: columns do not fit the range`];
    }),
  ];
};

/** What a strict reader would object to, as sentences. */
export function standardFaults(parts: Parts): string[] {
  const documents = new Map<string, Part>();
  const faults: string[] = [];
  for (const [path, xml] of Object.entries(parts)) {
    const document = partOf(xml);
    if (document) documents.set(path, document);
    else faults.push(`${path}: not well-formed`);
  }
  const count = (path: string, list: string, item: string): number =>
    documents.get(path)?.within(list, item).length ?? 0;
  const counts = {
    xfs: count('xl/styles.xml', 'cellXfs', 'xf'),
    dxfs: count('xl/styles.xml', 'dxfs', 'dxf'),
    texts: count('xl/sharedStrings.xml', 'sst', 'si'),
    hasMetadata: 'xl/metadata.xml' in parts,
  };
  for (const [path, document] of documents) {
    if (!path.endsWith('.vml'))
      for (const element of document.all) faults.push(...orderFaults(path, element));
    if (path.startsWith('xl/worksheets/') && !path.endsWith('.rels'))
      faults.push(...sheetFaults(path, document, counts));
  }
  return [...faults, ...packageFaults(parts, documents), ...tableFaults(documents)];
}
