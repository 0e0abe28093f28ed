// Long: one member a line.
/**
 * The part of the Excel object model that the local sheet offers, by public names. Objects a client hands out
 * are built from it; what is not here does not exist, so code that reaches further fails at once.
 */
export type MethodSpec =
  /**
   * Answers with an object; `fades` marks one that cannot be used after the next sync unless it is kept or
   * has an id.
   */
  | { readonly gives: string; readonly fades?: true; readonly isIndexer?: true }
  /** Answers with a result whose value is there after sync. */
  | 'value'
  | 'nothing';

export interface ClassSpec {
  readonly read?: readonly string[];
  /** Readable and writable. */
  readonly write?: readonly string[];
  readonly links?: Readonly<Record<string, string>>;
  readonly methods?: Readonly<Record<string, MethodSpec>>;
  /** The class of a collection's items. */
  readonly items?: string;
}

const gives = (type: string): MethodSpec => ({ gives: type });
const fading = (type: string): MethodSpec => ({ gives: type, fades: true });
const indexer = (type: string): MethodSpec => ({ gives: type, isIndexer: true });
const range = fading('Range');

export const CLASSES: Readonly<Record<string, ClassSpec>> = {
  Workbook: {
    links: {
      worksheets: 'WorksheetCollection',
      names: 'NamedItemCollection',
      tables: 'TableCollection',
      application: 'Application',
      settings: 'SettingCollection',
      customXmlParts: 'CustomXmlPartCollection',
    },
    methods: { getSelectedRange: range, getActiveCell: range },
  },
  Application: { methods: { calculate: 'nothing', createWorkbook: fading('WorkbookCreated') } },
  SettingCollection: {
    items: 'Setting',
    methods: {
      add: fading('Setting'),
      getItem: indexer('Setting'),
      getItemOrNullObject: gives('Setting'),
      getCount: 'value',
    },
  },
  Setting: { read: ['key'], write: ['value'], methods: { delete: 'nothing' } },
  CustomXmlPartCollection: { methods: { getByNamespace: gives('CustomXmlPartScopedCollection') } },
  CustomXmlPartScopedCollection: {
    items: 'CustomXmlPart',
    methods: { getOnlyItemOrNullObject: gives('CustomXmlPart') },
  },
  CustomXmlPart: { read: ['id'], methods: { getXml: 'value', delete: 'nothing' } },
  WorkbookCreated: { methods: { open: 'nothing' } },
  WorksheetCollection: {
    items: 'Worksheet',
    methods: {
      add: fading('Worksheet'),
      getItem: indexer('Worksheet'),
      getItemOrNullObject: gives('Worksheet'),
      getActiveWorksheet: gives('Worksheet'),
      getFirst: fading('Worksheet'),
      getCount: 'value',
    },
  },
  Worksheet: {
    read: ['id'],
    write: ['name', 'position', 'visibility', 'tabColor', 'showGridlines'],
    links: {
      tables: 'TableCollection',
      charts: 'ChartCollection',
      names: 'NamedItemCollection',
      notes: 'NoteCollection',
      freezePanes: 'WorksheetFreezePanes',
      protection: 'WorksheetProtection',
      pageLayout: 'PageLayout',
    },
    methods: {
      activate: 'nothing',
      delete: 'nothing',
      getRange: range,
      getCell: range,
      getRangeByIndexes: range,
      getUsedRange: range,
      getUsedRangeOrNullObject: range,
    },
  },
  WorksheetFreezePanes: {
    methods: {
      freezeRows: 'nothing',
      freezeColumns: 'nothing',
      freezeAt: 'nothing',
      unfreeze: 'nothing',
      getLocationOrNullObject: range,
    },
  },
  WorksheetProtection: {
    read: ['protected', 'options'],
    methods: { protect: 'nothing', unprotect: 'nothing' },
  },
  PageLayout: {
    write: ['orientation', 'zoom'],
    methods: { setPrintTitleRows: 'nothing', setPrintArea: 'nothing' },
  },
  NoteCollection: { methods: { add: fading('Note'), getItemOrNullObject: gives('Note') } },
  Note: { write: ['content'], methods: { delete: 'nothing' } },
  Range: {
    read: [
      'address',
      'cellCount',
      'rowCount',
      'columnCount',
      'rowIndex',
      'columnIndex',
      'text',
      'valueTypes',
      'hasSpill',
    ],
    write: ['values', 'formulas', 'numberFormat'],
    links: {
      worksheet: 'Worksheet',
      format: 'RangeFormat',
      dataValidation: 'DataValidation',
      conditionalFormats: 'ConditionalFormatCollection',
    },
    methods: {
      select: 'nothing',
      clear: 'nothing',
      merge: 'nothing',
      unmerge: 'nothing',
      getCell: range,
      getRow: range,
      getColumn: range,
      getLastRow: range,
      getBoundingRect: range,
      getResizedRange: range,
      getAbsoluteResizedRange: range,
      getOffsetRange: range,
      getUsedRangeOrNullObject: range,
      getSpillingToRangeOrNullObject: range,
      getSpillParentOrNullObject: range,
    },
  },
  RangeFormat: {
    write: ['columnWidth', 'rowHeight', 'horizontalAlignment', 'verticalAlignment', 'wrapText'],
    links: {
      fill: 'RangeFill',
      font: 'RangeFont',
      borders: 'RangeBorderCollection',
      protection: 'FormatProtection',
    },
    methods: { autofitColumns: 'nothing' },
  },
  RangeFill: { write: ['color'], methods: { clear: 'nothing' } },
  RangeFont: { write: ['bold', 'italic', 'color', 'size', 'name'] },
  RangeBorderCollection: {
    read: ['count'],
    items: 'RangeBorder',
    methods: { getItem: indexer('RangeBorder') },
  },
  RangeBorder: { read: ['sideIndex'], write: ['style', 'color'] },
  FormatProtection: { write: ['locked'] },
  DataValidation: {
    read: ['type'],
    write: ['rule', 'errorAlert', 'prompt', 'ignoreBlanks'],
    methods: { clear: 'nothing' },
  },
  ConditionalFormatCollection: {
    items: 'ConditionalFormat',
    methods: {
      add: fading('ConditionalFormat'),
      getItem: gives('ConditionalFormat'),
      getCount: 'value',
      clearAll: 'nothing',
    },
  },
  ConditionalFormat: {
    read: ['id', 'type'],
    links: { custom: 'CustomConditionalFormat' },
    methods: { delete: 'nothing' },
  },
  CustomConditionalFormat: { links: { rule: 'ConditionalFormatRule', format: 'ConditionalRangeFormat' } },
  ConditionalFormatRule: { write: ['formula'] },
  ConditionalRangeFormat: { links: { fill: 'ConditionalRangeFill', font: 'ConditionalRangeFont' } },
  ConditionalRangeFill: { write: ['color'] },
  ConditionalRangeFont: { write: ['color'] },
  NamedItemCollection: {
    items: 'NamedItem',
    methods: {
      add: fading('NamedItem'),
      getItem: indexer('NamedItem'),
      getItemOrNullObject: gives('NamedItem'),
      getCount: 'value',
    },
  },
  NamedItem: {
    read: ['name', 'scope', 'type'],
    write: ['formula', 'comment'],
    methods: { delete: 'nothing', getRange: range, getRangeOrNullObject: range },
  },
  TableCollection: {
    items: 'Table',
    methods: {
      add: fading('Table'),
      getItem: indexer('Table'),
      getItemOrNullObject: gives('Table'),
      getCount: 'value',
    },
  },
  Table: {
    read: ['id'],
    write: ['name', 'style', 'showTotals'],
    links: { worksheet: 'Worksheet' },
    methods: { getRange: range, getHeaderRowRange: range, getDataBodyRange: range, delete: 'nothing' },
  },
  ChartCollection: {
    read: ['count'],
    items: 'Chart',
    methods: {
      add: fading('Chart'),
      getItem: gives('Chart'),
      getItemOrNullObject: gives('Chart'),
      getCount: 'value',
    },
  },
  Chart: {
    read: ['id'],
    write: ['name', 'chartType'],
    links: { title: 'ChartTitle', legend: 'ChartLegend', axes: 'ChartAxes', series: 'ChartSeriesCollection' },
    methods: { setPosition: 'nothing', delete: 'nothing' },
  },
  ChartTitle: { write: ['text', 'visible'] },
  ChartLegend: { write: ['visible', 'position'] },
  ChartAxes: { links: { categoryAxis: 'ChartAxis', valueAxis: 'ChartAxis' } },
  ChartAxis: {
    write: ['numberFormat', 'reversePlotOrder', 'minimum', 'maximum'],
    links: { title: 'ChartAxisTitle' },
  },
  ChartAxisTitle: { write: ['text', 'visible'] },
  ChartSeriesCollection: {
    read: ['count'],
    items: 'ChartSeries',
    methods: { getItemAt: gives('ChartSeries'), add: fading('ChartSeries'), getCount: 'value' },
  },
  ChartSeries: {
    write: ['name'],
    links: { format: 'ChartSeriesFormat' },
    methods: { setValues: 'nothing', setXAxisValues: 'nothing', delete: 'nothing' },
  },
  ChartSeriesFormat: { links: { fill: 'ChartFill' } },
  ChartFill: { methods: { setSolidColor: 'nothing', clear: 'nothing' } },
};

/** The name on the wire: GetRange for getRange. */
export const wireName = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);
