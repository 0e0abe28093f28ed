import type { NamedParam, Return, SheetFunction } from './define';
import { expects } from './sentences';

/** What help, the README and the terminal say about a function, in words derived from its record. */

export { expects };

export const isRequired = (param: NamedParam): boolean =>
  param.kind !== 'flag' && !param.optional && !('default' in param && param.default !== undefined);

export const defaultText = (param: NamedParam): string | undefined => {
  if (param.kind === 'flag') return param.default ? 'TRUE' : 'FALSE';
  if (param.kind === 'number' || param.kind === 'choice')
    return param.default === undefined ? undefined : String(param.default);
  return undefined;
};

/** SPAWN.BUFFER.DOSE(volume, ph, target, [alkalinity]) */
export const signature = (fn: SheetFunction): string =>
  `${fn.name}(${fn.params.map((param) => (isRequired(param) ? param.name : `[${param.name}]`)).join(', ')})`;

export const returnsText = (returns: Return): string =>
  returns.kind === 'value'
    ? returns.quantity.unit || 'number'
    : Object.values(returns.columns)
        .map(({ title, quantity }) =>
          quantity.unit && quantity.unit !== 'text' ? `${title} (${quantity.unit})` : title,
        )
        .join(' · ');

/** The record without its code, as JSON. */
export const describeFunction = (fn: SheetFunction): Readonly<Record<string, unknown>> => ({
  name: fn.name,
  family: fn.family,
  summary: fn.summary,
  signature: signature(fn),
  params: fn.params.map((param) => ({
    name: param.name,
    doc: param.doc,
    expects: expects(param),
    required: isRequired(param),
    default: defaultText(param),
  })),
  returns: { kind: fn.returns.kind, doc: fn.returns.doc, unit: returnsText(fn.returns) },
  valid: fn.valid,
  sources: fn.sources,
  cautions: fn.cautions,
  help: fn.help,
  examples: fn.examples,
  version: fn.version,
});
