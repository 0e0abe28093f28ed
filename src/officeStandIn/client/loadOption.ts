import type { QueryInfo } from '../messages';
import { OfficeError } from './errors';

/**
 * load('a, b/c'), load(['a']), load({ a: true, b: { c: true }, $top: 3 }), load({ select, expand, top, skip
 * }), load().
 */
const split = (text: string): string[] =>
  text
    .split(',')
    .map((part) => part.trim())
    .filter(Boolean);
const list = (given: unknown): readonly string[] => {
  if (typeof given === 'string') return split(given);
  if (Array.isArray(given)) return given.map(String);
  throw new OfficeError('InvalidArgument', 'load() takes names of properties.');
};

function flags(option: Readonly<Record<string, unknown>>, prefix: string, select: string[]): void {
  for (const [key, value] of Object.entries(option)) {
    if (key === '$top' || key === '$skip') continue;
    const name = key === '$all' ? '*' : key;
    if (value === true) select.push(`${prefix}${name}`);
    else if (typeof value === 'object' && value !== null)
      flags(value as Readonly<Record<string, unknown>>, `${prefix}${name}/`, select);
    else if (value !== false) throw new OfficeError('InvalidArgument', `load() does not understand ${key}.`);
  }
}

export function readLoadOption(option: unknown): QueryInfo {
  if (option === undefined || option === null) return {};
  if (typeof option === 'string' || Array.isArray(option)) return { Select: list(option) };
  if (typeof option !== 'object')
    throw new OfficeError('InvalidArgument', 'load() takes names of properties.');
  const { select, expand, top, skip } = option as Readonly<Record<string, unknown>>;
  if (['select', 'expand', 'top', 'skip'].some((key) => key in option))
    return {
      ...(select === undefined ? {} : { Select: list(select) }),
      ...(expand === undefined ? {} : { Expand: list(expand) }),
      ...(typeof top === 'number' ? { Top: top } : {}),
      ...(typeof skip === 'number' ? { Skip: skip } : {}),
    };
  const { $top, $skip } = option as Readonly<Record<string, unknown>>;
  const chosen: string[] = [];
  flags(option as Readonly<Record<string, unknown>>, '', chosen);
  return {
    Select: chosen,
    ...(typeof $top === 'number' ? { Top: $top } : {}),
    ...(typeof $skip === 'number' ? { Skip: $skip } : {}),
  };
}
