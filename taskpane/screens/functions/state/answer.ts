import { isRequired } from '../../../../shared/functions/describe';
import type { NamedParam, SheetFunction } from '../../../../shared/functions/define';
import { HEADINGS } from '../../../../shared/functions/define';
import { invoke } from '../../../../shared/functions/invoke';
import type { Quantity } from '../../../../shared/units/quantities';
import { text } from '../../../../shared/units/quantities';
import type { Cell, Grid } from '../../../../shared/base/values';
import { isGrid } from '../../../../shared/base/values';
import type { FunctionsState, ArgumentReading } from './functions';
import type { TypedField } from '../../../pane/values/typed';
import { readTyped } from '../../../pane/values/typed';

/** The formula the fields make, and what it gives now. */
export interface CallDraft {
  readonly formula: string;
  readonly state:
    | { readonly kind: 'incomplete'; readonly missing: readonly string[] }
    | { readonly kind: 'reading' }
    | { readonly kind: 'unreadable'; readonly sentence: string }
    | { readonly kind: 'answer'; readonly value: Cell | Grid };
}

const formulaOf = (typed: TypedField): string =>
  typed.kind === 'blank' ? '' : typed.kind === 'reference' ? typed.reference : typed.formula;

export const typedArguments = (fn: SheetFunction, texts: FunctionsState['texts']): readonly TypedField[] =>
  fn.params.map((param) => readTyped(texts[param.name] ?? '', param));

function formulaText(fn: SheetFunction, typed: readonly TypedField[]): string {
  const parts = typed.map(formulaOf);
  while (parts.length > 0 && parts.at(-1) === '') parts.pop();
  return `=${fn.name}(${parts.join(',')})`;
}

const valueOf = (
  typed: TypedField,
  readings: Readonly<Record<string, ArgumentReading>>,
): Cell | Grid | undefined => {
  if (typed.kind === 'blank') return null;
  if (typed.kind === 'value') return typed.value;
  const reading = readings[typed.reference];
  return reading?.kind === 'read' ? reading.range.values : undefined;
};

function stateOf(
  fn: SheetFunction,
  typed: readonly TypedField[],
  readings: Readonly<Record<string, ArgumentReading>>,
): CallDraft['state'] {
  const missing = fn.params
    .filter((param, i) => isRequired(param) && typed[i]?.kind === 'blank')
    .map((param) => param.name);
  if (missing.length > 0) return { kind: 'incomplete', missing };
  for (const one of typed) {
    const reading = one.kind === 'reference' ? readings[one.reference] : undefined;
    if (reading?.kind === 'failed') return { kind: 'unreadable', sentence: reading.sentence };
    if (one.kind === 'reference' && !reading) return { kind: 'reading' };
  }
  return {
    kind: 'answer',
    value: invoke(
      fn,
      typed.map((one) => valueOf(one, readings) ?? null),
    ),
  };
}

export function draftOf(fn: SheetFunction, state: Pick<FunctionsState, 'texts' | 'readings'>): CallDraft {
  const typed = typedArguments(fn, state.texts);
  return { formula: formulaText(fn, typed), state: stateOf(fn, typed, state.readings) };
}

/** References among the fields that have not been read. */
export const unread = (
  fn: SheetFunction,
  state: Pick<FunctionsState, 'texts' | 'readings'>,
): readonly string[] => [
  ...new Set(
    typedArguments(fn, state.texts).flatMap((one) =>
      one.kind === 'reference' && !state.readings[one.reference] ? [one.reference] : [],
    ),
  ),
];

/** Quantity of each column of the answer. */
export const columnQuantities = (fn: SheetFunction, width: number): readonly Quantity[] =>
  fn.returns.kind === 'value'
    ? Array.from({ length: width }, () => (fn.returns.kind === 'value' ? fn.returns.quantity : text))
    : Object.values(fn.returns.columns).map((column) => column.quantity);

/** Whether the answer begins with a heading row. */
export function hasHeadings(fn: SheetFunction, texts: FunctionsState['texts']): boolean {
  const param: NamedParam | undefined = fn.params.find((p) => p.name === HEADINGS);
  if (param?.kind !== 'flag') return false;
  const typed = readTyped(texts[HEADINGS] ?? '', param);
  return typed.kind === 'value' ? typed.value === true || typed.value === 1 : param.default;
}

export const sizeOf = (value: Cell | Grid): { readonly rows: number; readonly columns: number } =>
  isGrid(value) ? { rows: value.length, columns: value[0]?.length ?? 1 } : { rows: 1, columns: 1 };
