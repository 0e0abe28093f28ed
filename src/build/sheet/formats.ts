import type { SheetFunction } from '../../../shared/functions/define';

/**
 * Number formats of answers by full name of the function: of the one value, or of the values side by side.
 * Tables are left out: their rows are many and their headings say the units.
 */
export type AnswerFormats = Readonly<Record<string, readonly string[]>>;

export const answerFormats = (functions: readonly SheetFunction[]): AnswerFormats =>
  Object.fromEntries(
    functions.flatMap(({ name, returns }) =>
      returns.kind === 'value'
        ? [[name, [returns.quantity.format]]]
        : returns.kind === 'fields'
          ? [[name, Object.values(returns.columns).map((column) => column.quantity.format)]]
          : [],
    ),
  );
