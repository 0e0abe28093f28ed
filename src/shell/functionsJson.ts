import type { NamedParam, SheetFunction } from '../../shared/functions/define';
import { HEADINGS } from '../../shared/functions/define';
import { isListParam } from '../../shared/functions/read';
import { allowed } from '../../shared/functions/sentences';

/** functions.json, the list of functions Excel reads before any code runs, derived from the catalogue. */

interface JsonParameter {
  readonly name: string;
  readonly description: string;
  readonly type: 'any';
  /** Left out: a single value. */
  readonly dimensionality?: 'matrix';
  readonly optional?: true;
}
export interface JsonFunction {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  /** The page of the function; Excel offers it beside the arguments. */
  readonly helpUrl?: string;
  readonly parameters: readonly JsonParameter[];
  /** Of any type, which is what leaving the type out means. */
  readonly result: { readonly dimensionality: 'matrix' };
  readonly options: { readonly requiresAddress: true };
}
export interface FunctionsJson {
  /** Errors in a range reach the function, which then answers for the other cells. */
  readonly allowErrorForDataTypeAny: true;
  readonly functions: readonly JsonFunction[];
}

const EXCEL_DESCRIPTION_LIMIT = 255;

const isOptional = (param: NamedParam): boolean =>
  param.kind === 'flag' || param.optional === true || ('default' in param && param.default !== undefined);

const limitsOf = (param: NamedParam): string => {
  if (param.kind === 'choice') return `One of: ${param.choices.join(', ')}.`;
  if (param.kind === 'number' || param.kind === 'series') {
    const { unit } = param.quantity;
    // The bounds of a date are serial numbers, which tell a reader nothing.
    if (unit === 'date' || unit === 'date and time')
      return unit === 'date' ? 'A date.' : 'A date with its time.';
    const text = allowed(param, unit).replace(/^a /, '');
    return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
  }
  return '';
};
const defaultOf = (param: NamedParam): string =>
  'default' in param && param.default !== undefined
    ? `Left out: ${param.kind === 'flag' ? String(param.default).toUpperCase() : param.default}.`
    : '';

/** Meaning first; limits and default where they fit. */
const describe = (param: NamedParam): string => {
  const parts = [param.doc.trim(), limitsOf(param), defaultOf(param)].filter(Boolean);
  while (parts.length > 1 && parts.join(' ').length > EXCEL_DESCRIPTION_LIMIT) parts.splice(1, 1);
  return parts.join(' ');
};

/**
 * Every argument that may come from cells is a matrix, so that Excel hands a range over whole: one call for a
 * column, and a sentence of ours (instead of Excel repeating the call per cell) where a range does not
 * belong.
 */
const parameterOf = (param: NamedParam): JsonParameter => ({
  name: param.name,
  description: describe(param),
  type: 'any',
  ...(param.name === HEADINGS && !isListParam(param) ? {} : { dimensionality: 'matrix' as const }),
  ...(isOptional(param) ? { optional: true as const } : {}),
});

const functionOf = (fn: SheetFunction, help: string | undefined): JsonFunction => ({
  id: fn.id,
  name: fn.id,
  description: fn.summary,
  ...(help === undefined ? {} : { helpUrl: `${help}/${fn.id}.html` }),
  parameters: fn.params.map(parameterOf),
  result: { dimensionality: 'matrix' },
  options: { requiresAddress: true },
});

/** `help` is the address of the folder of help pages. */
export const functionsJson = (functions: readonly SheetFunction[], help?: string): FunctionsJson => ({
  allowErrorForDataTypeAny: true,
  functions: functions.map((fn) => functionOf(fn, help)),
});

export const functionsJsonText = (functions: readonly SheetFunction[], help?: string): string =>
  `${JSON.stringify(functionsJson(functions, help), null, 2)}\n`;

/** Desktop Excel refuses a larger file. */
const EXCEL_FILE_LIMIT = 1_000_000;
const EXCEL_PARAMETER_LIMIT = 255;

/** What Excel would refuse or cut. Sentences; none when all is well. */
export function functionsJsonFaults(json: FunctionsJson): string[] {
  const tooLong = (what: string, text: string): string[] =>
    text.length > EXCEL_DESCRIPTION_LIMIT
      ? [`${what}: ${text.length} characters of description, ${EXCEL_DESCRIPTION_LIMIT} at most`]
      : [];
  return [
    ...(JSON.stringify(json, null, 2).length > EXCEL_FILE_LIMIT
      ? ['functions.json is larger than Excel accepts (1 MB)']
      : []),
    ...json.functions.flatMap((fn) => [
      ...(/^[A-Z][A-Z0-9.]{2,127}$/.test(fn.id)
        ? []
        : [`${fn.id}: ids are 3 to 128 capital letters, digits and dots, beginning with a letter`]),
      ...(fn.parameters.length > EXCEL_PARAMETER_LIMIT
        ? [`${fn.id}: more than ${EXCEL_PARAMETER_LIMIT} parameters`]
        : []),
      ...tooLong(fn.id, fn.description),
      ...fn.parameters.flatMap((p) => tooLong(`${fn.id} ${p.name}`, p.description)),
    ]),
  ];
}
