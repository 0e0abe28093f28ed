// Long: the stand-in for one object of Excel's model, member by member.
import type { Cell } from '../../shared/base/values';

/**
 * What the stand-in for the Excel object model needs from a spreadsheet. A backend stores and calculates; it
 * knows nothing of batches, proxies, A1 text parsing or Excel error codes: the executor does all of that and
 * calls a backend only with places that exist. Every member may answer at once or with a promise; the
 * executor waits for each before the next.
 */
export type Awaitable<T> = T | Promise<T>;

/** Zero-based, inside the sheet. */
export interface StandInArea {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** Excel's sheet size. An area of a whole column has this many rows; backends clip to what they hold. */
export const MAX_ROWS = 1_048_576;
export const MAX_COLUMNS = 16_384;

export type Visibility = 'Visible' | 'Hidden' | 'VeryHidden';
export interface SheetState {
  /** Stable while the sheet lives; renaming keeps it. */
  readonly id: string;
  readonly name: string;
  readonly visibility: Visibility;
  /** '#RRGGBB', or '' for none. */
  readonly tabColor: string;
  readonly showGridlines: boolean;
}
/** `position` is the zero-based place among the sheets. */
export type SheetPatch = Partial<Omit<SheetState, 'id'>> & { readonly position?: number };

/** Typed content, already parsed: undefined leaves the cell, null empties it and keeps its format. */
export type CellInput =
  undefined | null | { readonly value: number | string | boolean } | { readonly formula: string };

/**
 * values: what the cell shows as a number, text, truth or error; cells a formula spills into count.
 * formulas: the formula text as typed with English names (=SUM(A1:A3)), otherwise the value; a spilled-into
 * cell gives its value. formats: number format codes, 'General' when none. text: as drawn.
 */
export interface CellReads {
  readonly values: Cell[][];
  readonly formulas: Cell[][];
  readonly formats: string[][];
  readonly text: string[][];
}

export type HorizontalAlignment =
  'General' | 'Left' | 'Center' | 'Right' | 'Fill' | 'Justify' | 'CenterAcrossSelection' | 'Distributed';
export type VerticalAlignment = 'Top' | 'Center' | 'Bottom' | 'Justify' | 'Distributed';

/** The look of cells. Read over several cells, a property that is not the same everywhere is null. */
export interface FormatState {
  /** '#RRGGBB', or '' for no fill. */
  readonly fill: string;
  readonly bold: boolean;
  readonly italic: boolean;
  readonly color: string;
  /** Points. */
  readonly size: number;
  readonly font: string;
  readonly horizontal: HorizontalAlignment;
  readonly vertical: VerticalAlignment;
  readonly wrap: boolean;
  /** Locked cells refuse changes while the sheet is protected; true unless set otherwise. */
  readonly locked: boolean;
  /** Points (a pixel is 0.75 point); of the whole column or row. */
  readonly columnWidth: number;
  readonly rowHeight: number;
}
export type MixedFormat = { readonly [K in keyof FormatState]: FormatState[K] | null };
export type FormatPatch = Partial<FormatState>;

export type Edge =
  'EdgeTop' | 'EdgeBottom' | 'EdgeLeft' | 'EdgeRight' | 'InsideVertical' | 'InsideHorizontal';
export type LineStyle =
  'None' | 'Continuous' | 'Dash' | 'DashDot' | 'DashDotDot' | 'Dot' | 'Double' | 'SlantDashDot';
export interface BorderState {
  readonly style: LineStyle;
  readonly color: string;
}

export interface TableState {
  readonly id: string;
  readonly name: string;
  readonly sheet: string;
  /** With the heading row, and with the totals row when shown. */
  readonly area: StandInArea;
  readonly style: string;
  readonly showTotals: boolean;
}
export type TablePatch = Partial<Pick<TableState, 'name' | 'style' | 'showTotals'>>;

export interface NameState {
  readonly name: string;
  /** A sheet's id for a name that belongs to one sheet. */
  readonly scope?: string;
  /** =Sheet!$A$1 or any formula. */
  readonly formula: string;
  readonly comment: string;
}

export interface ValidationState {
  readonly rule:
    | { readonly kind: 'list'; readonly source: string; readonly dropDown: boolean }
    | {
        readonly kind: 'decimal' | 'whole' | 'date' | 'time' | 'textLength';
        readonly operator: string;
        readonly formula1: string | number;
        readonly formula2?: string | number;
      }
    | { readonly kind: 'custom'; readonly formula: string };
  readonly ignoreBlanks: boolean;
  readonly error?: {
    readonly title: string;
    readonly message: string;
    readonly style: 'Stop' | 'Warning' | 'Information';
    readonly show: boolean;
  };
  readonly prompt?: { readonly title: string; readonly message: string; readonly show: boolean };
}

/** Colours an area where a formula, written for its first cell, is true. */
export interface ConditionalState {
  readonly id: string;
  readonly area: StandInArea;
  readonly formula: string;
  readonly fill?: string;
  readonly color?: string;
}

/** A chart as data; whoever shows the sheet draws it. */
export interface ChartSeriesState {
  readonly name: string;
  /** Reference text, 'Sheet'!A1:A9. */
  readonly values: string;
  readonly categories: string;
  /** '#RRGGBB', 'none' when drawn as empty space, undefined for automatic. */
  readonly fill?: string;
}
export interface AxisState {
  readonly title?: string;
  readonly format?: string;
  readonly reversed: boolean;
  readonly min?: number;
  readonly max?: number;
}
export interface ChartState {
  readonly id: string;
  readonly name: string;
  /** Excel.ChartType: Line, ColumnClustered, BarStacked… */
  readonly type: string;
  readonly title?: string;
  readonly legend: { readonly visible: boolean; readonly position: string };
  readonly category: AxisState;
  readonly value: AxisState;
  readonly series: readonly ChartSeriesState[];
  /** The cells it covers. */
  readonly place?: StandInArea;
}

export interface ProtectionState {
  readonly isOn: boolean;
  /** Excel.WorksheetProtectionOptions as given. */
  readonly options: Readonly<Record<string, boolean | string>>;
  readonly password?: string;
}

export interface PageState {
  readonly landscape: boolean;
  /** Rows repeated on each printed page, zero-based first and last. */
  readonly titleRows?: readonly [number, number];
  readonly fitWidth?: number;
  readonly fitHeight?: number;
  readonly scale?: number;
}

export interface Selection {
  readonly sheet: string;
  readonly area: StandInArea;
}

/** A part of the file that spreadsheet programs carry along unread. */
export interface XmlPartState {
  readonly id: string;
  readonly namespace: string;
  readonly xml: string;
}

export interface StandInBook {
  /** Runs the changes of one batch as one undo step. */
  group<T>(work: () => Promise<T>): Promise<T>;
  /** Resolves when no calculation is pending. Called before values are read. */
  settle(): Awaitable<void>;
  calculate(isFull: boolean): Awaitable<void>;

  /** In tab order. */
  sheets(): Awaitable<readonly SheetState[]>;
  /** Adds at the end; the name is free and legal. Answers the new id. */
  addSheet(name: string): Awaitable<string>;
  changeSheet(sheet: string, patch: SheetPatch): Awaitable<void>;
  /** Never the last visible one. Takes its tables, charts and own names with it. */
  deleteSheet(sheet: string): Awaitable<void>;
  activeSheet(): Awaitable<string>;
  activate(sheet: string): Awaitable<void>;
  selection(): Awaitable<Selection>;
  select(sheet: string, area: StandInArea): Awaitable<void>;

  /** Rows × columns of the area, also where nothing is. */
  read<K extends keyof CellReads>(sheet: string, area: StandInArea, what: K): Awaitable<CellReads[K]>;
  /** Same shape as the area. */
  write(sheet: string, area: StandInArea, cells: readonly (readonly CellInput[])[]): Awaitable<void>;
  /** undefined leaves a cell's format. */
  setNumberFormats(
    sheet: string,
    area: StandInArea,
    formats: readonly (readonly (string | undefined)[])[],
  ): Awaitable<void>;
  clear(sheet: string, area: StandInArea, what: 'All' | 'Contents' | 'Formats'): Awaitable<void>;
  /**
   * The smallest area that holds everything; with `valuesOnly` formats do not count. undefined when nothing
   * is there.
   */
  usedArea(sheet: string, valuesOnly: boolean): Awaitable<StandInArea | undefined>;
  /** The area a formula in this cell fills, more than one cell; undefined when it does not spill. */
  spillArea(sheet: string, row: number, column: number): Awaitable<StandInArea | undefined>;
  /** The cell whose answer fills this one, itself where it spills; undefined where nothing spills into it. */
  spillParent(
    sheet: string,
    row: number,
    column: number,
  ): Awaitable<{ readonly row: number; readonly column: number } | undefined>;

  format(sheet: string, area: StandInArea): Awaitable<MixedFormat>;
  /** `columnWidth` and `rowHeight` act on whole columns and rows of the area. */
  setFormat(sheet: string, area: StandInArea, patch: FormatPatch): Awaitable<void>;
  border(sheet: string, area: StandInArea, edge: Edge): Awaitable<BorderState>;
  setBorder(sheet: string, area: StandInArea, edge: Edge, border: BorderState): Awaitable<void>;
  autofitColumns(sheet: string, area: StandInArea): Awaitable<void>;
  merges(sheet: string): Awaitable<readonly StandInArea[]>;
  merge(sheet: string, area: StandInArea): Awaitable<void>;
  unmerge(sheet: string, area: StandInArea): Awaitable<void>;

  /** All tables of the workbook. */
  tables(): Awaitable<readonly TableState[]>;
  /** The name is free; headings are in the first row. Answers the id. */
  addTable(sheet: string, area: StandInArea, name: string): Awaitable<string>;
  changeTable(id: string, patch: TablePatch): Awaitable<void>;
  /** Keeps the cells. */
  deleteTable(id: string): Awaitable<void>;

  names(): Awaitable<readonly NameState[]>;
  /** Adds, or replaces the one with the same name and scope. */
  putName(name: NameState): Awaitable<void>;
  deleteName(name: string, scope?: string): Awaitable<void>;

  /** What add-ins keep with the workbook, by key; plain data. */
  settings(): Awaitable<Readonly<Record<string, unknown>>>;
  /** Adds or replaces; undefined takes it away. */
  putSetting(key: string, value: unknown): Awaitable<void>;

  /** Parts of custom XML, where the book has such. */
  xmlParts?(): Awaitable<readonly XmlPartState[]>;
  deleteXmlPart?(id: string): Awaitable<void>;

  /** Of the first cell of the area. */
  validation(sheet: string, area: StandInArea): Awaitable<ValidationState | undefined>;
  setValidation(sheet: string, area: StandInArea, rule: ValidationState | undefined): Awaitable<void>;
  conditionals(sheet: string): Awaitable<readonly ConditionalState[]>;
  /** Adds, or replaces the one with the same id. */
  putConditional(sheet: string, rule: ConditionalState): Awaitable<void>;
  deleteConditional(sheet: string, id: string): Awaitable<void>;

  charts(sheet: string): Awaitable<readonly ChartState[]>;
  /** Adds, or replaces the one with the same id. */
  putChart(sheet: string, chart: ChartState): Awaitable<void>;
  deleteChart(sheet: string, id: string): Awaitable<void>;

  freeze(sheet: string): Awaitable<{ readonly rows: number; readonly columns: number }>;
  setFreeze(sheet: string, rows: number, columns: number): Awaitable<void>;
  protection(sheet: string): Awaitable<ProtectionState>;
  /** The executor refuses forbidden changes itself; the backend blocks typing. */
  setProtection(sheet: string, state: ProtectionState): Awaitable<void>;
  page(sheet: string): Awaitable<PageState>;
  setPage(sheet: string, patch: Partial<PageState>): Awaitable<void>;

  /** The note on a cell; '' removes it. */
  note(sheet: string, row: number, column: number): Awaitable<string>;
  setNote(sheet: string, row: number, column: number, text: string): Awaitable<void>;
}
