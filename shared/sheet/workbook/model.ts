import type { Cell } from '../../base/values';

/**
 * A workbook as plain data: what the sheets say, not how a host draws them. Renderers (the open workbook,
 * .xlsx bytes, the local sheet) read it and decide nothing about content. Addresses are A1 text without the
 * sheet; references are 'Sheet name'!A1:B2.
 */
export interface WorkbookModel {
  readonly title: string;
  readonly sheets: readonly SheetModel[];
  /** Workbook-level names. */
  readonly names: readonly NameModel[];
  /** Texts that the pane keeps in the workbook, under names that begin with spawnbook. */
  readonly settings?: Readonly<Record<string, string>>;
}

export interface NameModel {
  readonly name: string;
  readonly refersTo: string;
  readonly comment?: string;
}

export interface SheetModel {
  readonly name: string;
  readonly tab?: string;
  /** Column widths in characters, from column A. */
  readonly widths: readonly number[];
  /** By A1 address. */
  readonly cells: Readonly<Record<string, CellModel>>;
  readonly merges?: readonly string[];
  readonly tables?: readonly TableModel[];
  readonly validations?: readonly ValidationModel[];
  readonly conditionals?: readonly ConditionalModel[];
  readonly charts?: readonly ChartModel[];
  /** Rows and columns that stay when scrolling. */
  readonly freeze?: { readonly rows: number; readonly columns: number };
  /**
   * Every sheet prints one page wide on A4. titleRows (1-based, first and last) repeat on every page; footer
   * stands at the left foot.
   */
  readonly print?: {
    readonly landscape?: boolean;
    readonly titleRows?: readonly [number, number];
    readonly footer?: string;
    readonly onePage?: boolean;
    /** A4 where nothing is said. */
    readonly paper?: 'A4' | 'A5';
    /** Only these cells print, where not the whole sheet does: A1:H40. */
    readonly area?: string;
    /** A new page begins above these 1-based rows. */
    readonly breaksAbove?: readonly number[];
  };
  /** Heights in points by 1-based row, where the usual one does not fit. */
  readonly heights?: Readonly<Record<number, number>>;
  /** Grid lines on the screen; off where borders already say what belongs together. */
  readonly hasGridlines?: boolean;
  /** Workings: out of sight until somebody unhides them. At least one sheet of a workbook is shown. */
  readonly isHidden?: boolean;
  /** Formulas locked, inputs open; no password. */
  readonly isProtected?: boolean;
}

export interface CellModel {
  /** Typed value, or the calculated value of `formula`. Dates are serials. */
  readonly value?: Exclude<Cell, null>;
  /** As typed in Excel with English names: =SPAWN.BUFFER.DOSE(B2,…). */
  readonly formula?: string;
  /**
   * Size of the answer of a spilling formula, [rows, columns]; the cells below and beside hold only values.
   */
  readonly spill?: readonly [number, number];
  readonly style?: StyleName;
  /** Formatting found in a file, where no style of ours says it. */
  readonly look?: CellStyle;
  readonly format?: string;
  readonly note?: string;
}

/** The few looks a cell can have; styles.ts says what each means in colour and weight. */
export type StyleName =
  /**
   * Words around the numbers. section heads a block, heading a column, unit follows a number, quiet is small
   * print.
   */
  | 'title'
  | 'subtitle'
  | 'section'
  | 'heading'
  | 'label'
  | 'quiet'
  | 'unit'
  /**
   * input may be typed into, blank is to be filled in (by hand on paper too), result is an answer, big the
   * few answers a page is opened for, cell and text fill tables.
   */
  | 'input'
  | 'blank'
  | 'result'
  | 'big'
  | 'cell'
  | 'text'
  /** Judgements; the cell says the same in words. */
  | 'good'
  | 'warning'
  | 'bad'
  /** The scale of verdicts (shared/maths/verdict.ts); "cannot" is bad. */
  | 'safe'
  | 'likely'
  | 'toss'
  | 'unlikely';

/** A look spelled out; styles.ts holds the one behind each StyleName. */
export interface CellStyle {
  /** Six hex digits, no #. */
  readonly ink: string;
  readonly fill?: string;
  readonly isBold?: boolean;
  readonly isItalic?: boolean;
  /** Points; 10 where none is given. */
  readonly size?: number;
  readonly border?: 'thin' | 'medium' | 'bottom';
  readonly borderColor?: string;
  readonly align?: 'left' | 'center' | 'right';
  /** Set off from the cell's edge by this many steps. */
  readonly indent?: number;
  /** Long text runs over several lines of the cell. */
  readonly wraps?: boolean;
  /** May be typed into while the sheet is protected. */
  readonly isOpen?: boolean;
}

export interface TableModel {
  readonly name: string;
  readonly range: string;
  readonly hasTotals?: boolean;
}

export type ValidationModel = { readonly range: string; readonly message: string } & (
  | { readonly kind: 'list'; readonly items: readonly string[] }
  | { readonly kind: 'decimal' | 'whole' | 'date'; readonly min: number; readonly max: number }
);

/** Colours `range` as `style` where `formula` (native functions only, relative to the first cell) is true. */
export interface ConditionalModel {
  readonly range: string;
  readonly formula: string;
  readonly style: StyleName;
}

export interface ChartSeries {
  readonly name: string;
  readonly values: string;
  readonly color?: string;
  /** Drawn as empty space: the offset of an occupancy bar. */
  readonly isHidden?: boolean;
}
export interface ChartModel {
  /** 'occupancy' is a stacked bar whose first series is the hidden offset. */
  readonly kind: 'line' | 'column' | 'occupancy';
  readonly title: string;
  readonly categories: string;
  readonly series: readonly ChartSeries[];
  readonly xTitle?: string;
  readonly yTitle?: string;
  /** Number format of the value axis. */
  readonly valueFormat?: string;
  /** Number format of the categories; set when they are dates. */
  readonly categoryFormat?: string;
  /** First and last value of the axis, where the data should not decide (dates of an occupancy chart). */
  readonly valueRange?: readonly [number, number];
  /** Top left cell and bottom right cell it covers. */
  readonly from: string;
  readonly to: string;
}
