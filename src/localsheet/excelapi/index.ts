export type * from './book';
export { MAX_COLUMNS, MAX_ROWS } from './book';
export { formatArea, formatReference, parseArea, quoteSheet, splitSheet } from './address';
export { createExecutor } from './executor';
export type { Executor } from './executor';
export { CustomFunctionError, createOffice, installOffice } from './client/office';
export type { OfficeGlobals, OfficeOptions, Registry } from './client/office';
