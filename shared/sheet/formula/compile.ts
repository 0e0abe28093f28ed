import { binary, unary } from './operators';
import type { EagerFunction, Operand } from './evaluate';
import { fitted, lazyFunction } from './evaluate';
import type { ParsedNode } from './parse';
import { isFault, parse } from './parse';

/**
 * A formula read once and turned into closures over numbered places, for what is asked thousands of times.
 * Its answers are those of evaluateWith: both share the operators, the functions and IF and its kin.
 */
export type Compiled<S> = (scope: S) => Operand;

export interface Binding<S> {
  /** What a name in the formula means; undefined when there is none of that name. */
  readonly name: (name: string) => Compiled<S> | undefined;
  readonly call: (name: string) => EagerFunction | undefined;
  /** Cells of a reference as written; left out where a formula has no sheet to look at. */
  readonly reference?: (text: string) => Compiled<S>;
  /** Cells of a spilled answer, by its anchor as written. */
  readonly spill?: (anchor: string) => Compiled<S>;
}

const sum = <S>(left: Compiled<S>, right: Compiled<S>, operator: string): Compiled<S> => {
  const other = (a: Operand, b: Operand): Operand => binary(operator, a, b);
  const onNumbers =
    (apply: (x: number, y: number) => number): Compiled<S> =>
    (scope) => {
      const a = left(scope);
      const b = right(scope);
      const answer = typeof a === 'number' && typeof b === 'number' ? apply(a, b) : NaN;
      return Number.isFinite(answer) ? answer : other(a, b);
    };
  switch (operator) {
    case '+':
      return onNumbers((x, y) => x + y);
    case '-':
      return onNumbers((x, y) => x - y);
    case '*':
      return onNumbers((x, y) => x * y);
    default:
      return (scope) => other(left(scope), right(scope));
  }
};

function callOf<S>(
  name: string,
  args: readonly (ParsedNode | undefined)[],
  binding: Binding<S>,
): Compiled<S> {
  const inner = args.map((arg) => (arg ? compileNode(arg, binding) : undefined));
  const lazy = lazyFunction(name);
  if (lazy) return (scope) => lazy(inner.map((arg) => arg && (() => arg(scope))));
  const known = binding.call(name);
  if (!known) throw new Error(`There is no function ${name}.`);
  const fn = fitted(name, args, known);
  return (scope) => fn(inner.map((arg) => arg?.(scope)));
}

/** A formula that has been read already; throws as `compile` does. */
export function compileNode<S>(node: ParsedNode, binding: Binding<S>): Compiled<S> {
  switch (node.kind) {
    case 'literal':
      return () => node.value;
    case 'array':
      return () => node.rows;
    case 'unary': {
      const of = compileNode(node.of, binding);
      return (scope) => unary(node.operator, of(scope));
    }
    case 'binary':
      return sum(compileNode(node.left, binding), compileNode(node.right, binding), node.operator);
    case 'call':
      return callOf(node.name, node.args, binding);
    case 'name': {
      const meant = binding.name(node.name);
      if (!meant) throw new Error(`There is no name ${node.name}.`);
      return meant;
    }
    case 'reference':
      if (binding.reference) return binding.reference(node.text);
      throw new Error(NO_SHEET);
    default:
      if (binding.spill) return binding.spill(node.anchor);
      throw new Error(NO_SHEET);
  }
}
const NO_SHEET = 'A compiled formula names what it needs; it has no sheet to look at.';

/** Throws where the formula cannot be read or names what is not there: formulas compiled are our own. */
export function compile<S>(formula: string, binding: Binding<S>): Compiled<S> {
  const parsed = parse(formula);
  if (isFault(parsed)) throw new Error(`${formula}: ${parsed.fault} (at character ${parsed.at + 1})`);
  return compileNode(parsed, binding);
}
