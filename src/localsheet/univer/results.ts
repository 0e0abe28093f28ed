import type { BaseValueObject } from '@univerjs/engine-formula';
import {
  ArrayValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
} from '@univerjs/engine-formula';
import type { CellError } from '../../../shared/base/values';

/**
 * What a function answers → what the engine stores. Text stays text even when it looks like a number; null
 * shows as 0, as in Excel; an error carries its sentence inside the cell, so it moves with the cell.
 */
interface ThrownError {
  readonly code: string;
  readonly message?: unknown;
}
interface FormattedNumber {
  readonly basicValue: number;
  readonly numberFormat?: string;
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;
const isThrownError = (value: unknown): value is ThrownError =>
  isObject(value) && typeof value.code === 'string' && value.code.startsWith('#');
const isFormatted = (value: unknown): value is FormattedNumber =>
  isObject(value) && value.type === 'Double' && typeof value.basicValue === 'number';

/** The key under which a cell keeps why it shows an error. */
export const SENTENCE = 'spawnbookError';

const CODES = new Set<string>(Object.values(ErrorType));

export const errorResult = (code: string, message: string): BaseValueObject => {
  const type = (CODES.has(code) ? code : '#VALUE!') as ErrorType;
  return message === ''
    ? ErrorValueObject.create(type)
    : new ErrorValueObject(type, message).withCustomData({ [SENTENCE]: { code: type, message } });
};

const numberResult = (value: number, format?: string): BaseValueObject =>
  Number.isFinite(value)
    ? NumberValueObject.create(value, format)
    : errorResult('#NUM!', 'There is no answer for these numbers.');

/** An error a function threw, put in a cell or came from another runtime; undefined for anything else. */
export const asError = (value: unknown): CellError | undefined => {
  if (isThrownError(value))
    return {
      error: value.code as CellError['error'],
      message: typeof value.message === 'string' ? value.message : '',
    };
  return isObject(value) && typeof value.error === 'string' ? (value as unknown as CellError) : undefined;
};

const scalarResult = (value: unknown): BaseValueObject => {
  if (typeof value === 'number') return numberResult(value);
  if (typeof value === 'string') return StringValueObject.create(value);
  if (typeof value === 'boolean') return BooleanValueObject.create(value);
  if (value === null || value === undefined) return NumberValueObject.create(0);
  if (isFormatted(value)) return numberResult(value.basicValue, value.numberFormat);
  const failure = asError(value);
  return failure ? errorResult(failure.error, failure.message ?? '') : errorResult('#VALUE!', '');
};

const arrayResult = (rows: readonly unknown[]): BaseValueObject => {
  const lines = rows.map((row) => (Array.isArray(row) ? row : [row]));
  const width = Math.max(0, ...lines.map((line) => line.length));
  if (width === 0) return errorResult('#CALC!', 'The answer is empty.');
  const [first] = lines;
  if (lines.length === 1 && width === 1) return scalarResult(first?.[0]);
  // A short row is filled as Excel fills it.
  const calculateValueList = lines.map((line) =>
    Array.from({ length: width }, (_, i) =>
      i < line.length ? scalarResult(line[i]) : ErrorValueObject.create(ErrorType.NA),
    ),
  );
  return ArrayValueObject.create({
    calculateValueList,
    rowCount: lines.length,
    columnCount: width,
    unitId: '',
    sheetId: '',
    row: -1,
    column: -1,
  });
};

export const toResult = (value: unknown): BaseValueObject =>
  Array.isArray(value) ? arrayResult(value) : scalarResult(value);
