import * as z from 'zod';
import type { FieldName, NumericField, RecordText } from './fields';
import { FIELD_NAMES, isTextField } from './fields';

/** Where a value of a record was read. */
export const PlaceSchema = z.object({ sheet: z.string(), cell: z.string() });
export type RecordPlace = z.infer<typeof PlaceSchema>;

export interface Sourced<T> extends RecordPlace {
  readonly value: T;
}

/**
 * One row (or one form) of a record book: only what was filled in, each in the unit of its field, with the
 * cell it came from.
 */
export type RunValues = { readonly [N in NumericField]?: Sourced<number> } & {
  readonly [N in RecordText]?: Sourced<string>;
};

export interface RunRecord {
  /** The sheet and its 1-based row, or the first row of a form: unique within a book. */
  readonly sheet: string;
  readonly row: number;
  readonly values: RunValues;
  /**
   * Rules with a finding of severity "impossible" or "unlikely" on this record; a record without any is taken
   * as accepted.
   */
  readonly findings: readonly string[];
  /** What its hatch share is a share of, where the book or the user says it. */
  readonly hatchBase?: 'eggs' | 'fertilised' | undefined;
}

const sourced = (name: FieldName): z.ZodOptional<z.ZodObject> =>
  PlaceSchema.extend({ value: isTextField(name) ? z.string().min(1) : z.number() }).optional();

export const RunRecordSchema = z.object({
  sheet: z.string(),
  row: z.number().int().positive(),
  values: z.strictObject(Object.fromEntries(FIELD_NAMES.map((name) => [name, sourced(name)]))),
  findings: z.array(z.string()),
  hatchBase: z.enum(['eggs', 'fertilised']).optional(),
}) as unknown as z.ZodType<RunRecord>;

/** The value alone, undefined when the record does not say it. */
export const numberOf = (record: RunRecord, name: NumericField): number | undefined =>
  record.values[name]?.value;
export const textOf = (record: RunRecord, name: RecordText): string | undefined => record.values[name]?.value;
export const isAccepted = (record: RunRecord): boolean => record.findings.length === 0;
