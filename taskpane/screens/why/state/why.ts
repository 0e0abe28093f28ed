import type { CellLook, Marked } from '../../../host/port';

export const WHY_PARTS = ['cell', 'find', 'check', 'errors'] as const;
export type WhyPart = (typeof WHY_PARTS)[number];

export interface WhyState {
  readonly part: WhyPart;
  /** The selected cell, as last looked at. */
  readonly cell: CellLook | undefined;
  /** What its references hold, by their text. */
  readonly holds: Readonly<Record<string, unknown>>;
  /** Cells coloured because the formula reads them. */
  readonly marked: readonly Marked[];
}
export const initialWhy: WhyState = { part: 'cell', cell: undefined, holds: {}, marked: [] };
