import type { StandInArea, CellInput } from './book';
import { fail } from './failure';

/** What Excel makes of a value written to a cell. */

const FORMULA_LIMIT = 8192;
const TEXT_LIMIT = 32_767;

/** Quotes and brackets must pair up; Excel refuses the write otherwise. */
export function isBalanced(formula: string): boolean {
  const bare = formula.replace(/"(?:[^"]|"")*"/g, '').replace(/'(?:[^']|'')*'/g, '');
  let depth = 0;
  for (const char of bare) {
    if (char === '(' || char === '{') depth += 1;
    if (char === ')' || char === '}') depth -= 1;
    if (depth < 0) return false;
  }
  return depth === 0 && !bare.includes('"');
}

function readText(text: string, isTextFormat: boolean): CellInput {
  if (text === '') return null;
  if (text.length > TEXT_LIMIT)
    return fail('InvalidArgument', `A cell holds at most ${TEXT_LIMIT} characters.`);
  if (isTextFormat) return { value: text };
  if (text.startsWith('=') && text.length > 1) {
    if (text.length > FORMULA_LIMIT)
      return fail('FormulaLengthExceedsLimit', `A formula holds at most ${FORMULA_LIMIT} characters.`);
    return isBalanced(text)
      ? { formula: text }
      : fail(
          'InvalidArgument',
          `The formula ${text.slice(0, 60)} has a bracket or a quote without its partner.`,
        );
  }
  if (text.startsWith("'")) return { value: text.slice(1) };
  const trimmed = text.trim();
  if (/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(trimmed)) return { value: Number(trimmed) };
  if (/^[+-]?(\d+\.?\d*|\.\d+)%$/.test(trimmed)) return { value: Number(trimmed.slice(0, -1)) / 100 };
  if (/^(true|false)$/i.test(trimmed)) return { value: trimmed.toLowerCase() === 'true' };
  return { value: text };
}

/** null leaves the cell as it is, '' empties it. */
export function readInput(given: unknown, isTextFormat: boolean): CellInput {
  if (given === null || given === undefined) return undefined;
  if (typeof given === 'string') return readText(given, isTextFormat);
  if (typeof given === 'boolean') return { value: given };
  if (typeof given === 'number' && Number.isFinite(given)) return { value: given };
  return fail('InvalidArgument', 'A cell takes a number, a text, TRUE or FALSE.');
}

/** A 2-D array of the area's own shape, or one value for every cell. */
export function shaped(given: unknown, area: StandInArea): readonly (readonly unknown[])[] {
  if (!Array.isArray(given))
    return Array.from({ length: area.rows }, () => Array.from({ length: area.columns }, () => given));
  const lines: readonly unknown[] = given;
  const fitting =
    lines.length === area.rows && lines.every((line) => Array.isArray(line) && line.length === area.columns);
  if (!fitting)
    fail(
      'InvalidArgument',
      `The array does not have the range's shape, ${area.rows} rows of ${area.columns}.`,
    );
  return lines as readonly (readonly unknown[])[];
}

const SHEET_NAME_LIMIT = 31;
export function checkSheetName(name: unknown): string {
  if (typeof name !== 'string' || name.trim() === '' || name.length > SHEET_NAME_LIMIT)
    return fail('InvalidArgument', `A sheet name has 1 to ${SHEET_NAME_LIMIT} characters.`);
  if (
    /[:\\/?*[\]]/.test(name) ||
    name.startsWith("'") ||
    name.endsWith("'") ||
    name.toLowerCase() === 'history'
  )
    return fail(
      'InvalidArgument',
      'A sheet name may not hold : \\ / ? * [ ], begin or end with an apostrophe, or be "History".',
    );
  return name;
}

export function checkColor(color: unknown): string {
  if (color === '' || (typeof color === 'string' && /^#[0-9a-f]{6}$/i.test(color)))
    return color.toUpperCase();
  return fail('InvalidArgument', 'A colour is #RRGGBB.');
}

export const asText = (given: unknown, what: string): string =>
  typeof given === 'string' ? given : fail('InvalidArgument', `${what} must be a text.`);
export const asNumber = (given: unknown, what: string): number =>
  typeof given === 'number' && Number.isFinite(given)
    ? given
    : fail('InvalidArgument', `${what} must be a number.`);
export const asFlag = (given: unknown, what: string): boolean =>
  typeof given === 'boolean' ? given : fail('InvalidArgument', `${what} must be true or false.`);
export const asOneOf = <T extends string>(given: unknown, choices: readonly T[], what: string): T =>
  choices.find((c) => c === given) ??
  fail('InvalidArgument', `${what} must be one of ${choices.join(', ')}.`);
export const asWhole = (given: unknown, what: string): number => {
  const n = asNumber(given, what);
  return Number.isInteger(n) ? n : fail('InvalidArgument', `${what} must be a whole number.`);
};
