import type { Cell } from '../../shared/base/values';
import { isWholeColumns, isWholeRows, overlaps } from './address';
import type {
  StandInArea,
  BorderState,
  CellInput,
  ChartState,
  ConditionalState,
  Edge,
  FormatPatch,
  FormatState,
  MixedFormat,
  PageState,
  ProtectionState,
  SheetState,
  ValidationState,
} from './book';

/** One sheet of the in-memory book. */

export interface MemoryCell {
  value: Cell;
  formula?: string;
  numberFormat?: string;
  look?: FormatPatch;
  borders?: Partial<Record<Edge, BorderState>>;
  validation?: ValidationState;
  note?: string;
  /** Filled by the formula of another cell. */
  spilledFrom?: number;
}

export const DEFAULT_FORMAT: FormatState = {
  fill: '',
  bold: false,
  italic: false,
  color: '#000000',
  size: 11,
  font: 'Calibri',
  horizontal: 'General',
  vertical: 'Bottom',
  wrap: false,
  locked: true,
  columnWidth: 48,
  rowHeight: 15,
};
type SizeKey = 'columnWidth' | 'rowHeight';
const isSize = (key: keyof FormatState): key is SizeKey => key === 'columnWidth' || key === 'rowHeight';

const WIDTH = 16_384;
export const keyOf = (row: number, column: number): number => row * WIDTH + column;
export const rowOfKey = (key: number): number => Math.floor(key / WIDTH);
export const columnOfKey = (key: number): number => key % WIDTH;

/** Whole rows and columns are not filled cell by cell. */
const isUnbounded = (area: StandInArea): boolean => isWholeRows(area) || isWholeColumns(area);
const holds = (area: StandInArea, row: number, column: number): boolean =>
  row >= area.row &&
  row < area.row + area.rows &&
  column >= area.column &&
  column < area.column + area.columns;

export class MemorySheet {
  readonly cells = new Map<number, MemoryCell>();
  readonly columnWidths = new Map<number, number>();
  readonly rowHeights = new Map<number, number>();
  /** Looks of whole rows and columns, later ones on top. */
  private readonly layers: {
    readonly area: StandInArea;
    readonly look: FormatPatch;
    readonly numberFormat?: string;
  }[] = [];
  merges: StandInArea[] = [];
  charts: ChartState[] = [];
  conditionals: ConditionalState[] = [];
  freeze = { rows: 0, columns: 0 };
  protection: ProtectionState = { isOn: false, options: {} };
  page: PageState = { landscape: false };

  constructor(public state: SheetState) {}

  at(row: number, column: number): MemoryCell | undefined {
    return this.cells.get(keyOf(row, column));
  }

  touch(row: number, column: number): MemoryCell {
    const key = keyOf(row, column);
    let cell = this.cells.get(key);
    if (!cell) this.cells.set(key, (cell = { value: null }));
    return cell;
  }

  /** Existing cells inside an area. */
  *within(area: StandInArea): Generator<readonly [number, MemoryCell]> {
    for (const entry of this.cells) if (holds(area, rowOfKey(entry[0]), columnOfKey(entry[0]))) yield entry;
  }

  map<T>(area: StandInArea, show: (row: number, column: number, cell: MemoryCell | undefined) => T): T[][] {
    return Array.from({ length: area.rows }, (_, r) =>
      Array.from({ length: area.columns }, (_unused, c) =>
        show(area.row + r, area.column + c, this.at(area.row + r, area.column + c)),
      ),
    );
  }

  write(area: StandInArea, cells: readonly (readonly CellInput[])[]): void {
    for (const [r, line] of cells.entries())
      for (const [c, input] of line.entries())
        if (input !== undefined) this.put(area.row + r, area.column + c, input);
  }

  private put(row: number, column: number, input: Exclude<CellInput, undefined>): void {
    const cell = this.touch(row, column);
    delete cell.formula;
    delete cell.spilledFrom;
    cell.value = input && 'value' in input ? input.value : null;
    if (input && 'formula' in input) cell.formula = input.formula;
  }

  clear(area: StandInArea, what: 'All' | 'Contents' | 'Formats'): void {
    for (const [, cell] of this.within(area)) {
      if (what !== 'Formats') this.empty(cell);
      if (what !== 'Contents') {
        delete cell.numberFormat;
        delete cell.look;
        delete cell.borders;
      }
      if (what === 'All') delete cell.validation;
    }
    if (what === 'Contents') return;
    if (isUnbounded(area)) this.layers.push({ area, look: { ...DEFAULT_FORMAT }, numberFormat: 'General' });
    this.conditionals = this.conditionals.filter((c) => !overlaps(c.area, area));
  }

  private empty(cell: MemoryCell): void {
    cell.value = null;
    delete cell.formula;
    delete cell.spilledFrom;
  }

  used(valuesOnly: boolean): StandInArea | undefined {
    const keys = [...this.cells]
      .filter(([, cell]) => hasContent(cell) || (!valuesOnly && hasLook(cell)))
      .map(([key]) => key);
    if (keys.length === 0) return undefined;
    const rows = keys.map(rowOfKey);
    const columns = keys.map(columnOfKey);
    const row = rows.reduce((a, b) => Math.min(a, b));
    const column = columns.reduce((a, b) => Math.min(a, b));
    return {
      row,
      column,
      rows: rows.reduce((a, b) => Math.max(a, b)) - row + 1,
      columns: columns.reduce((a, b) => Math.max(a, b)) - column + 1,
    };
  }

  numberFormat(row: number, column: number): string {
    return (
      this.at(row, column)?.numberFormat ??
      this.layers.findLast((l) => l.numberFormat !== undefined && holds(l.area, row, column))?.numberFormat ??
      'General'
    );
  }

  setNumberFormats(area: StandInArea, formats: readonly (readonly (string | undefined)[])[]): void {
    for (const [r, line] of formats.entries())
      for (const [c, format] of line.entries())
        if (format !== undefined) this.touch(area.row + r, area.column + c).numberFormat = format;
  }

  setFormat(area: StandInArea, { columnWidth, rowHeight, ...look }: FormatPatch): void {
    if (columnWidth !== undefined)
      for (let c = area.column; c < area.column + area.columns; c++) this.columnWidths.set(c, columnWidth);
    if (rowHeight !== undefined)
      for (let r = area.row; r < area.row + area.rows; r++) this.rowHeights.set(r, rowHeight);
    if (Object.keys(look).length === 0) return;
    if (isUnbounded(area)) {
      this.layers.push({ area, look });
      for (const [, cell] of this.within(area)) cell.look = { ...cell.look, ...look };
      return;
    }
    for (let r = area.row; r < area.row + area.rows; r++)
      for (let c = area.column; c < area.column + area.columns; c++) {
        const cell = this.touch(r, c);
        cell.look = { ...cell.look, ...look };
      }
  }

  private lookAt(row: number, column: number): FormatState {
    const under = this.layers.filter((l) => holds(l.area, row, column)).map((l) => l.look);
    const sizes = {
      columnWidth: this.columnWidths.get(column) ?? DEFAULT_FORMAT.columnWidth,
      rowHeight: this.rowHeights.get(row) ?? DEFAULT_FORMAT.rowHeight,
    };
    return Object.assign({}, DEFAULT_FORMAT, ...under, this.at(row, column)?.look, sizes) as FormatState;
  }

  format(area: StandInArea): MixedFormat {
    const places = isUnbounded(area)
      ? [
          [area.row, area.column] as const,
          ...[...this.within(area)].map(([key]) => [rowOfKey(key), columnOfKey(key)] as const),
        ]
      : Array.from(
          { length: area.rows * area.columns },
          (_, i) => [area.row + Math.floor(i / area.columns), area.column + (i % area.columns)] as const,
        );
    const [first, ...rest] = places.map(([row, column]) => this.lookAt(row, column));
    const shown: Record<string, unknown> = { ...(first ?? DEFAULT_FORMAT) };
    for (const look of rest)
      for (const key of Object.keys(look) as (keyof FormatState)[])
        if (shown[key] !== look[key] && !(isUnbounded(area) && isSize(key))) shown[key] = null;
    return shown as unknown as MixedFormat;
  }
}

export const hasContent = (cell: MemoryCell): boolean =>
  cell.formula !== undefined || (cell.value !== null && cell.value !== '') || cell.spilledFrom !== undefined;
const hasLook = (cell: MemoryCell): boolean =>
  cell.look !== undefined || cell.borders !== undefined || cell.numberFormat !== undefined;
