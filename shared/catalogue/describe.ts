import type { NamedParam, Return, SheetFunction } from './define';
import type { NumberLimits } from './params';
import { allowed } from './sentences';

/** What help, the README and the terminal say about a function, in words derived from its record. */

export const isRequired = (param: NamedParam): boolean =>
  param.kind !== 'flag' && !param.optional && !('default' in param && param.default !== undefined);

const limitsText = (limits: NumberLimits, unit: string): string => {
  const bounded = limits.min !== undefined || limits.max !== undefined || limits.above !== undefined || limits.whole;
  return bounded ? allowed(limits, unit) : `a number${unit ? ` in ${unit}` : ''}`;
};

/** "a number from 0 to 50 °C" */
export function expects(param: NamedParam): string {
  switch (param.kind) {
    case 'number': return limitsText(param, param.quantity.unit);
    case 'series': return `a range; each ${limitsText(param, param.quantity.unit)}`;
    case 'choice': return `one of ${param.choices.map((choice) => `"${choice}"`).join(', ')}`;
    case 'flag': return 'TRUE or FALSE';
    case 'texts': return 'a range of texts';
  }
}

export const defaultText = (param: NamedParam): string | undefined => {
  if (param.kind === 'flag') return param.default ? 'TRUE' : 'FALSE';
  if (param.kind === 'number' || param.kind === 'choice') return param.default === undefined ? undefined : String(param.default);
  return undefined;
};

/** SPAWN.BUFFER.DOSE(volume, ph, target, [alkalinity]) */
export const signature = (fn: SheetFunction): string =>
  `${fn.name}(${fn.params.map((param) => (isRequired(param) ? param.name : `[${param.name}]`)).join(', ')})`;

export const returnsText = (returns: Return): string =>
  returns.kind === 'value'
    ? returns.quantity.unit || 'number'
    : Object.values(returns.columns).map(({ title, quantity }) => (quantity.unit && quantity.unit !== 'text' ? `${title} (${quantity.unit})` : title)).join(' · ');

/** The record without its code, as JSON. */
export const describeFunction = (fn: SheetFunction): Readonly<Record<string, unknown>> => ({
  name: fn.name, family: fn.family, summary: fn.summary, signature: signature(fn),
  params: fn.params.map((param) => ({ name: param.name, doc: param.doc, expects: expects(param), required: isRequired(param), default: defaultText(param) })),
  returns: { kind: fn.returns.kind, doc: fn.returns.doc, unit: returnsText(fn.returns) },
  valid: fn.valid, sources: fn.sources, cautions: fn.cautions, help: fn.help, examples: fn.examples, version: fn.version,
});
