/** What a cell can hold, in every host: Excel, the local sheet, a file, the terminal. */
export type ErrorCode =
  '#VALUE!' | '#N/A' | '#NUM!' | '#DIV/0!' | '#REF!' | '#NAME?' | '#NULL!' | '#SPILL!' | '#CALC!' | '#BUSY!';

/** An error is a value: a code the sheet shows and, for #VALUE! and #N/A, a sentence. */
export interface CellError {
  readonly error: ErrorCode;
  readonly message?: string;
}

/** null is a blank cell. */
export type Cell = number | string | boolean | null | CellError;
export type Grid = readonly (readonly Cell[])[];

export const isError = (value: unknown): value is CellError =>
  typeof value === 'object' && value !== null && 'error' in value;

export const isGrid = (value: unknown): value is Grid => Array.isArray(value);

/** #VALUE!: what was given cannot be used. */
export const refuse = (message: string): CellError => ({ error: '#VALUE!', message });

/** #N/A: outside published validity, or not enough data. */
export const outside = (message: string): CellError => ({ error: '#N/A', message });

/** #NUM!: no solution. Hosts cannot show its sentence in the cell, the pane can. */
export const noSolution = (message: string): CellError => ({ error: '#NUM!', message });
