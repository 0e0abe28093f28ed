/**
 * A stand-in for the Excel object model, so that code written against Excel runs beside the local sheet.
 * Three parts: a client that records calls (client/), an executor that runs the recorded batches with Excel's
 * refusals (executor.ts, nodes/), and a book that stores and calculates (book.ts is the contract;
 * memoryBook.ts the one for tests, ../univer the one users see). The executor also takes the batches of
 * Excel's own client library, which is how the tests compare the two.
 */
export type * from './book';
export { MAX_COLUMNS, MAX_ROWS } from './book';
export { formatArea, formatReference, parseArea, quoteSheet, splitSheet } from './address';
export { createExecutor } from './executor';
export type { Executor } from './executor';
export { CustomFunctionError, createOffice, installOffice } from './client/office';
export type { OfficeGlobals, OfficeOptions, Registry } from './client/office';
