import { CAUTIONS } from './cautions';
import type { Example, NamedParam, SheetFunction } from './define';
import type { Source } from './source';

/** Source key → source, as the families list them. */
type Sources = Readonly<Record<string, Source>>;

/**
 * Whole-catalogue rules: what every record must have before anything is derived from it. Returns sentences,
 * none when all is well.
 */

const ID = /^[A-Z][A-Z0-9]*(\.[A-Z][A-Z0-9]*)+$/;
const CELL_LIKE = /^([A-Z]{1,3}[0-9]{1,7}|R[0-9]*C[0-9]*)$/;
const EXCEL_ID_LIMIT = 128;
const EXCEL_SUMMARY_LIMIT = 255;

const idFaults = (fn: SheetFunction): string[] => [
  ...(ID.test(fn.id) ? [] : [`${fn.id}: an id is upper-case words and digits joined by dots, at least two`]),
  ...(fn.id.split('.').some((part) => CELL_LIKE.test(part))
    ? [`${fn.id}: a part looks like a cell address`]
    : []),
  ...(fn.name.length > EXCEL_ID_LIMIT ? [`${fn.id}: longer than Excel allows`] : []),
];

const textFaults = (fn: SheetFunction): string[] => [
  ...(fn.summary.length < 10 || fn.summary.length > EXCEL_SUMMARY_LIMIT
    ? [`${fn.id}: the summary must be one line of 10 to ${EXCEL_SUMMARY_LIMIT} characters`]
    : []),
  ...(fn.summary.includes('\n') ? [`${fn.id}: the summary must be one line`] : []),
  ...(fn.valid.length < 3 ? [`${fn.id}: says nothing about where it holds`] : []),
  ...(fn.returns.doc ? [] : [`${fn.id}: says nothing about what it returns`]),
];

const defaultFault = (param: NamedParam): string | undefined => {
  if (param.kind === 'choice')
    return param.default !== undefined && !param.choices.includes(param.default)
      ? 'the default is not a choice'
      : undefined;
  if (param.kind !== 'number' || param.default === undefined) return undefined;
  const { min = -Infinity, max = Infinity, above = -Infinity } = param;
  return param.default < min || param.default > max || param.default <= above
    ? 'the default is out of bounds'
    : undefined;
};

const paramFaults = (fn: SheetFunction, param: NamedParam, sources: Sources): string[] => {
  const published = param.kind === 'number' || param.kind === 'series' ? param.published : undefined;
  return [
    param.doc.length < 5 ? 'no doc' : undefined,
    /^[a-z][A-Za-z0-9]*$/.test(param.name) ? undefined : 'a parameter name is camelCase letters and digits',
    defaultFault(param),
    published && !(published.source in sources) ? `unknown source ${published.source}` : undefined,
  ]
    .filter((fault) => fault !== undefined)
    .map((fault) => `${fn.id} ${param.name}: ${fault}`);
};

const orderFaults = (fn: SheetFunction): string[] => {
  const isOptional = (p: NamedParam): boolean =>
    p.kind === 'flag' || p.optional === true || ('default' in p && p.default !== undefined);
  const first = fn.params.findIndex(isOptional);
  return first >= 0 && fn.params.slice(first).some((p) => !isOptional(p))
    ? [`${fn.id}: a required parameter follows an optional one`]
    : [];
};

const exampleFaults = (fn: SheetFunction): string[] => {
  const good = fn.examples.filter((e: Example) => e.gives !== undefined);
  const bad = fn.examples.filter((e: Example) => e.fails !== undefined);
  return [
    ...(good.length > 0 ? [] : [`${fn.id}: no example with an answer`]),
    ...(bad.length > 0 ? [] : [`${fn.id}: no example of an error`]),
    ...fn.examples.filter((e) => e.because.length < 8).map(() => `${fn.id}: an example does not say why`),
    ...fn.examples
      .filter((e) => (e.gives === undefined) === (e.fails === undefined))
      .map(() => `${fn.id}: an example must either give or fail`),
  ];
};

const keyFaults = (fn: SheetFunction, sources: Sources): string[] => [
  ...(fn.sources.length > 0 ? [] : [`${fn.id}: no source`]),
  ...fn.sources.filter((key) => !(key in sources)).map((key) => `${fn.id}: unknown source ${key}`),
  ...fn.cautions.filter((key) => !(key in CAUTIONS)).map((key) => `${fn.id}: unknown caution ${key}`),
];

/** In a file every dot becomes an underscore, so names may not differ by that alone. */
const clashes = (functions: readonly SheetFunction[]): string[] => {
  const seen = new Map<string, string>();
  return functions.flatMap((fn) => {
    const stored = fn.id.replaceAll('.', '_').toUpperCase();
    const other = seen.get(stored);
    seen.set(stored, fn.id);
    return other ? [`${fn.id}: stored under the same name as ${other}`] : [];
  });
};

export const checkCatalogue = (functions: readonly SheetFunction[], sources: Sources): string[] => [
  ...functions.flatMap((fn) => [
    ...idFaults(fn),
    ...textFaults(fn),
    ...fn.params.flatMap((p) => paramFaults(fn, p, sources)),
    ...orderFaults(fn),
    ...exampleFaults(fn),
    ...keyFaults(fn, sources),
  ]),
  ...clashes(functions),
];
