import * as z from 'zod';
import type { FieldName } from '../fields';
import { FIELD_NAMES } from '../fields';

/**
 * What the user said about a header, kept with the workbook: the field it means, or 'ignore', and the unit
 * where it matters.
 */
export const CorrectionSchema = z.strictObject({
  /** Left out: on every sheet. */
  sheet: z.string().optional(),
  header: z.string(),
  field: z
    .enum(['ignore', ...FIELD_NAMES] as [string, ...string[]])
    .transform((name) => name as FieldName | 'ignore'),
  unit: z.string().optional(),
  decimal: z.enum([',', '.']).optional(),
  order: z.enum(['day first', 'month first', 'year first']).optional(),
  /** What a hatch share is a share of, where nothing in the book says it. */
  base: z.enum(['eggs', 'fertilised']).optional(),
});
export type Correction = z.infer<typeof CorrectionSchema>;

/** The form in which a mapping is remembered. */
export const RememberedSchema = z.strictObject({ version: z.literal(1), columns: z.array(CorrectionSchema) });
export type Remembered = z.infer<typeof RememberedSchema>;

export interface MappedColumn {
  /** Column letters, or the label of a form. */
  readonly column: string;
  readonly header: string;
  /** Words of the heading that stand above it, over several columns. */
  readonly parent: string;
  readonly field: FieldName | undefined;
  readonly unit: string | undefined;
  /** The unit the heading names, kept when the meaning is corrected. */
  readonly unitSaid: string | undefined;
  /** What a number of the column stands for: 1000 under "Fry ('000)". */
  readonly times: number;
  readonly decimal: ',' | '.';
  readonly order: 'day first' | 'month first' | 'year first';
  /** 0..1; 1 when the user said so. */
  readonly confidence: number;
  readonly reasons: readonly string[];
  /** Other fields it could be, best first. */
  readonly alternatives: readonly FieldName[];
  /** The first few different values, as they stand. */
  readonly samples: readonly string[];
  readonly isCorrected: boolean;
  /** The values contradict the unit in the header. */
  readonly isAgainstHeader: boolean;
  /** One of several columns that say the same of different tanks or days. */
  readonly isRepeated: boolean;
}

export const headerKey = (header: string): string => header.toLowerCase().replace(/\s+/g, ' ').trim();

export const correctionFor = (
  corrections: readonly Correction[],
  sheet: string,
  header: string,
): Correction | undefined => {
  const key = headerKey(header);
  const fitting = corrections.filter(
    (one) => headerKey(one.header) === key && (one.sheet === undefined || one.sheet === sheet),
  );
  return fitting.find((one) => one.sheet !== undefined) ?? fitting[0];
};

/** The whole mapping of a table as corrections, so that next time nothing is guessed. */
export const rememberedOf = (
  tables: readonly { readonly sheet: string; readonly columns: readonly MappedColumn[] }[],
): Remembered => ({
  version: 1,
  columns: tables.flatMap(({ sheet, columns }) =>
    columns
      .filter(({ header }) => header !== '')
      .map((column) => ({
        sheet,
        header: column.header,
        field: column.field ?? 'ignore',
        decimal: column.decimal,
        order: column.order,
        ...(column.unit === undefined ? {} : { unit: column.unit }),
      })),
  ),
});

/**
 * Headers longer than this are whole sentences, and more columns than this no book has: what is kept stays
 * small.
 */
const LONGEST_HEADER = 200;
const MOST_KEPT = 200;
const LONGEST_TEXT = 200_000;

/** What the user said, as text to keep with the workbook: the latest. */
export const rememberedText = (columns: readonly Correction[]): string =>
  JSON.stringify({
    version: 1,
    columns: columns.filter(({ header }) => header.length <= LONGEST_HEADER).slice(-MOST_KEPT),
  } satisfies Remembered);

const KeptSchema = z.object({ version: z.literal(1), columns: z.array(z.unknown()).max(MOST_KEPT) });
const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
};

/** What a workbook kept, as far as it can be understood: anything else in its place counts as nothing. */
export function rememberedFrom(kept: unknown): Correction[] {
  if (typeof kept !== 'string' || kept.length > LONGEST_TEXT) return [];
  const found = KeptSchema.safeParse(parsed(kept));
  return found.success
    ? found.data.columns.flatMap((one) => {
        const column = CorrectionSchema.safeParse(one);
        return column.success && column.data.header.length <= LONGEST_HEADER ? [column.data] : [];
      })
    : [];
}
