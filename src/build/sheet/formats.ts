import type { SheetFunction } from '../../../shared/functions/define';

/**
 * Number formats of answers by full name of the function: of the one value, or of the columns. The rows of a
 * table stand below its headings, which are texts and show no format.
 */
export type AnswerFormats = Readonly<Record<string, readonly string[]>>;

export const answerFormats = (functions: readonly SheetFunction[]): AnswerFormats =>
  Object.fromEntries(
    functions.map(({ name, returns }) => [
      name,
      returns.kind === 'value'
        ? [returns.quantity.format]
        : Object.values(returns.columns).map((column) => column.quantity.format),
    ]),
  );
