import type { ICellData, Nullable } from '@univerjs/core';
import { CellValueType } from '@univerjs/core';
import { FormulaDataModel } from '@univerjs/engine-formula';
import type { Cell, ErrorCode } from '../../../../shared/base/values';
import { isError } from '../../../../shared/base/values';
import type { StandInArea, StandInBook, CellInput, CellReads } from '../../../officeStandIn/book';
import { cleanFormula } from '../../formulaText';
import { SENTENCE } from '../results';
import type { Context } from './context';
import { toArea } from './context';

/** Values, formulas and number formats of cells. */
export type CellPart = Pick<
  StandInBook,
  'read' | 'write' | 'setNumberFormats' | 'clear' | 'usedArea' | 'spillArea' | 'spillParent'
>;

const ERRORS: Readonly<Record<string, ErrorCode>> = {
  '#VALUE!': '#VALUE!',
  '#N/A': '#N/A',
  '#NUM!': '#NUM!',
  '#DIV/0!': '#DIV/0!',
  '#REF!': '#REF!',
  '#NAME?': '#NAME?',
  '#NULL!': '#NULL!',
  '#SPILL!': '#SPILL!',
  '#CALC!': '#CALC!',
  '#GETTING_DATA': '#BUSY!',
  // The engine's own: a formula it cannot read, and a circle of formulas.
  '#ERROR!': '#NAME?',
  '#CYCLE!': '#REF!',
  '#CONNECT!': '#BUSY!',
};

const sentenceOf = (cell: ICellData, code: string): string | undefined => {
  const kept: unknown = cell.custom?.[SENTENCE];
  // Left behind by an earlier answer unless the code is still the same.
  return typeof kept === 'object' &&
    kept !== null &&
    'code' in kept &&
    kept.code === code &&
    'message' in kept
    ? String(kept.message)
    : undefined;
};

const textOfRich = (cell: ICellData): string =>
  (cell.p?.body?.dataStream ?? '').replace(/\r\n$/, '').replaceAll('\r', '\n');

export function cellOf(cell: Nullable<ICellData>): Cell {
  if (!cell) return null;
  if (cell.p) return textOfRich(cell);
  const { v, t } = cell;
  if (v === null || v === undefined) return null;
  if (t === CellValueType.BOOLEAN) return v === true || v === 1 || v === '1';
  if (t === CellValueType.NUMBER) return Number(v);
  if (typeof v !== 'string') return v;
  const code = ERRORS[v];
  if (code === undefined) return v;
  const message = sentenceOf(cell, v);
  return message ? { error: code, message } : { error: code };
}

const TYPES = {
  number: CellValueType.NUMBER,
  string: CellValueType.STRING,
  boolean: CellValueType.BOOLEAN,
} as const;
const EMPTY: ICellData = {
  v: null,
  t: null,
  f: null,
  si: null,
  p: null,
  ref: null,
  xf: null,
  custom: null as never,
};

const inputCell = (input: Exclude<CellInput, undefined>): ICellData => {
  if (input === null) return { ...EMPTY };
  if ('formula' in input) return { ...EMPTY, f: cleanFormula(input.formula) };
  const { value } = input;
  return {
    ...EMPTY,
    v: typeof value === 'boolean' ? Number(value) : value,
    t: typeof value === 'string' && value === '' ? null : TYPES[typeof value as keyof typeof TYPES],
  };
};

export class UniverCells {
  constructor(private readonly context: Context) {}

  private get model(): FormulaDataModel {
    return this.context.engine.injector.get(FormulaDataModel);
  }

  raw(sheet: string, row: number, column: number): Nullable<ICellData> {
    return this.context.sheet(sheet).getCellMatrix().getValue(row, column);
  }

  /** What the cell holds, or what a formula elsewhere spills into it. */
  stored(sheet: string, row: number, column: number): Nullable<ICellData> {
    const own = this.raw(sheet, row, column);
    if (own && (own.p || (own.v !== null && own.v !== undefined))) return own;
    const spilled = this.model.getArrayFormulaCellData()[this.context.unitId]?.[sheet]?.[row]?.[column];
    return spilled ? { ...own, ...spilled } : own;
  }

  value(sheet: string, row: number, column: number): Cell {
    return cellOf(this.stored(sheet, row, column));
  }

  formula(sheet: string, row: number, column: number): string | undefined {
    const cell = this.raw(sheet, row, column);
    if (!cell || (!cell.f && !cell.si)) return undefined;
    const text = this.model.getFormulaStringByCell(row, column, sheet, this.context.unitId) ?? cell.f;
    return text && text !== '' ? text : undefined;
  }

  format(sheet: string, row: number, column: number): string {
    return this.context.sheet(sheet).getComposedCellStyle(row, column).n?.pattern || 'General';
  }

  text(sheet: string, row: number, column: number): string {
    const shown = this.context.facade(sheet).getRange(row, column).getDisplayValue();
    return shown ?? '';
  }

  spillArea(sheet: string, row: number, column: number): StandInArea | undefined {
    const range = this.model.getArrayFormulaRange()[this.context.unitId]?.[sheet]?.[row]?.[column];
    if (!range) return undefined;
    const area = toArea(range);
    return (area.rows > 1 || area.columns > 1) && !isError(this.value(sheet, row, column)) ? area : undefined;
  }

  spillParent(
    sheet: string,
    row: number,
    column: number,
  ): { readonly row: number; readonly column: number } | undefined {
    const lines = this.model.getArrayFormulaRange()[this.context.unitId]?.[sheet] ?? {};
    for (const [top, line] of Object.entries(lines))
      for (const left of Object.keys(line ?? {})) {
        const area = this.spillArea(sheet, Number(top), Number(left));
        const isIn =
          area !== undefined &&
          row >= area.row &&
          row < area.row + area.rows &&
          column >= area.column &&
          column < area.column + area.columns;
        if (isIn) return { row: area.row, column: area.column };
      }
    return undefined;
  }

  private usedSpill(sheet: string, widen: (row: number, column: number) => void): void {
    const spilled = this.model.getArrayFormulaCellData()[this.context.unitId]?.[sheet] ?? {};
    for (const [row, line] of Object.entries(spilled)) {
      for (const [column, cell] of Object.entries<Nullable<ICellData>>(line ?? {}))
        if (cell?.v !== null && cell?.v !== undefined) widen(Number(row), Number(column));
    }
  }

  usedArea(sheet: string, valuesOnly: boolean): StandInArea | undefined {
    let top = Infinity,
      left = Infinity,
      bottom = -1,
      right = -1;
    const widen = (row: number, column: number): void => {
      top = Math.min(top, row);
      left = Math.min(left, column);
      bottom = Math.max(bottom, row);
      right = Math.max(right, column);
    };
    this.context
      .sheet(sheet)
      .getCellMatrix()
      .forValue((row, column, cell) => {
        if (!cell) return;
        const holds =
          Boolean(cell.f ?? cell.si ?? cell.p) || (cell.v !== null && cell.v !== undefined && cell.v !== '');
        if (holds || (!valuesOnly && cell.s)) widen(row, column);
      });
    this.usedSpill(sheet, widen);
    return bottom < 0
      ? undefined
      : { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
  }
}

export function cellPart(context: Context, cells: UniverCells): CellPart {
  const readers: {
    [K in keyof CellReads]: (sheet: string, row: number, column: number) => CellReads[K][number][number];
  } = {
    values: (s, r, c) => cells.value(s, r, c),
    formulas: (s, r, c) => cells.formula(s, r, c) ?? cells.value(s, r, c),
    formats: (s, r, c) => cells.format(s, r, c),
    text: (s, r, c) => cells.text(s, r, c),
  };
  return {
    read(sheet, area, what) {
      const own = context.sheet(sheet);
      const one = readers[what];
      const blank = what === 'values' || what === 'formulas' ? null : what === 'formats' ? 'General' : '';
      const inside = (r: number, c: number): boolean => r < own.getRowCount() && c < own.getColumnCount();
      return Array.from({ length: area.rows }, (_, r) =>
        Array.from({ length: area.columns }, (_blank, c) =>
          inside(area.row + r, area.column + c) ? one(sheet, area.row + r, area.column + c) : blank,
        ),
      ) as never;
    },
    write(sheet, area, inputs) {
      context.changeAll(
        sheet,
        area,
        (r, c) => {
          const input = inputs[r - area.row]?.[c - area.column];
          return input === undefined ? undefined : inputCell(input);
        },
        false,
      );
    },
    setNumberFormats(sheet, area, formats) {
      context.changeAll(sheet, area, (r, c) => {
        const format = formats[r - area.row]?.[c - area.column];
        if (format === undefined) return undefined;
        return { s: { n: format === '' || format.toLowerCase() === 'general' ? null : { pattern: format } } };
      });
    },
    clear(sheet, area, what) {
      const look = (r: number, c: number): ICellData | undefined =>
        cells.raw(sheet, r, c) ? { s: null } : undefined;
      const contents = (r: number, c: number): ICellData | undefined =>
        cells.raw(sheet, r, c) ? { ...EMPTY } : undefined;
      if (what !== 'Formats') context.changeAll(sheet, area, contents, false);
      if (what !== 'Contents') context.changeAll(sheet, area, look);
    },
    usedArea: (sheet, valuesOnly) => cells.usedArea(sheet, valuesOnly),
    spillArea: (sheet, row, column) => cells.spillArea(sheet, row, column),
    spillParent: (sheet, row, column) => cells.spillParent(sheet, row, column),
  };
}
