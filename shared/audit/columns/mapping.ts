import { z } from 'zod';
import type { FieldName } from '../fields';
import { FIELD_NAMES } from '../fields';

/** What the user said about a header, kept with the workbook: the field it means, or 'ignore', and the unit where it matters. */
export const CorrectionSchema = z.strictObject({
  /** Left out: on every sheet. */
  sheet: z.string().optional(),
  header: z.string(),
  field: z.enum(['ignore', ...FIELD_NAMES] as [string, ...string[]]).transform((name) => name as FieldName | 'ignore'),
  unit: z.string().optional(),
  decimal: z.enum([',', '.']).optional(),
  order: z.enum(['day first', 'month first', 'year first']).optional(),
});
export type Correction = z.infer<typeof CorrectionSchema>;

/** The form in which a mapping is remembered. */
export const RememberedSchema = z.strictObject({ version: z.literal(1), columns: z.array(CorrectionSchema) });
export type Remembered = z.infer<typeof RememberedSchema>;

export interface MappedColumn {
  /** Column letters, or the label of a form. */
  readonly column: string;
  readonly header: string;
  readonly field: FieldName | undefined;
  readonly unit: string | undefined;
  readonly decimal: ',' | '.';
  readonly order: 'day first' | 'month first' | 'year first';
  /** 0..1; 1 when the user said so. */
  readonly confidence: number;
  readonly reasons: readonly string[];
  /** Other fields it could be, best first. */
  readonly alternatives: readonly FieldName[];
  readonly isCorrected: boolean;
  /** The values contradict the unit in the header. */
  readonly isAgainstHeader: boolean;
}

export const headerKey = (header: string): string => header.toLowerCase().replace(/\s+/g, ' ').trim();

export const correctionFor = (corrections: readonly Correction[], sheet: string, header: string): Correction | undefined => {
  const key = headerKey(header);
  const fitting = corrections.filter((one) => headerKey(one.header) === key && (one.sheet === undefined || one.sheet === sheet));
  return fitting.find((one) => one.sheet !== undefined) ?? fitting[0];
};

/** The whole mapping of a table as corrections, so that next time nothing is guessed. */
export const rememberedOf = (tables: readonly { readonly sheet: string; readonly columns: readonly MappedColumn[] }[]): Remembered => ({
  version: 1,
  columns: tables.flatMap(({ sheet, columns }) => columns.filter(({ header }) => header !== '').map((column) => ({
    sheet, header: column.header, field: column.field ?? 'ignore', decimal: column.decimal, order: column.order, ...(column.unit === undefined ? {} : { unit: column.unit }),
  }))),
});
