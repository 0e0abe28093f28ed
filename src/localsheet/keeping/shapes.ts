import type { IWorkbookData, IWorksheetData } from '@univerjs/core';
import type { KeptBeside } from '../univer/book/beside';
import type { TableExtra } from '../univer/book/tables';

/** What the browser keeps of a workbook. Times are milliseconds since 1970, of this machine's clock. */
export interface KeptBook {
  readonly id: string;
  readonly title: string;
  /** The last change kept. */
  readonly at: number;
  /** Counts up with each saving; a sheet with a higher number was saved in one that was cut short. */
  readonly saving: number;
  /** The engine's snapshot without its sheets. */
  readonly workbook: Omit<IWorkbookData, 'sheets'>;
  readonly beside: readonly (readonly [string, KeptBeside])[];
  readonly settings: Readonly<Record<string, unknown>>;
  readonly tables: readonly (readonly [string, TableExtra])[];
}

export interface KeptSheet {
  readonly book: string;
  readonly id: string;
  readonly saving: number;
  readonly data: Partial<IWorksheetData>;
}

/** A whole workbook as it was, packed. */
export interface KeptVersion {
  readonly book: string;
  readonly at: number;
  readonly title: string;
  readonly packed: Blob;
}

export interface KeptWhole {
  readonly book: KeptBook;
  readonly sheets: readonly KeptSheet[];
}
