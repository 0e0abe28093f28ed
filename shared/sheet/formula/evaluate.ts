import type { Cell, CellError, Grid } from '../../base/values';
import { isError, isGrid } from '../../base/values';
import { binary, unary } from './operators';
import type { ParsedNode } from './parse';
import { isFault, parse } from './parse';

export type Operand = Cell | Grid;
/** undefined is an argument left out: F(1,,2). */
export type EagerFunction = (args: readonly (Operand | undefined)[]) => Operand;

/** Where a formula gets what it does not hold itself. */
export interface Resolver {
  /** Cells of a reference as written: B2, 'My sheet'!A1:B9, Table[Column]. */
  readonly reference?: (text: string) => Operand;
  /** Cells of a spilled answer, by its anchor as written. */
  readonly spill?: (anchor: string) => Operand;
  readonly name?: (name: string) => Operand;
  readonly call?: (name: string) => EagerFunction | undefined;
}

const nothing = (what: string): CellError => ({
  error: '#REF!',
  message: `${what} cannot be used here: there is no sheet.`,
});

/** IF and its kin decide before they look at the other arguments. */
type Later = () => Operand;
type Lazy = (args: readonly (Later | undefined)[]) => Operand;

const truth = (value: Operand): boolean | CellError => {
  const cell = isGrid(value) ? (value[0]?.[0] ?? null) : value;
  if (isError(cell)) return cell;
  if (typeof cell === 'string')
    return /^true$/i.test(cell)
      ? true
      : /^false$/i.test(cell)
        ? false
        : { error: '#VALUE!', message: `"${cell}" is neither TRUE nor FALSE.` };
  return Boolean(cell);
};

const pick = (value: Operand, row: number, column: number): Cell => {
  if (!isGrid(value)) return value;
  const line = value[value.length === 1 ? 0 : row];
  return line?.[line.length === 1 ? 0 : column] ?? { error: '#N/A' };
};

const choose = (condition: Operand, yes: Operand, no: Operand): Operand => {
  if (!isGrid(condition)) return no;
  return condition.map((line, row) =>
    line.map((cell, column) => {
      const is = truth(cell);
      return isError(is) ? is : pick(is ? yes : no, row, column);
    }),
  );
};

const replaceErrors = (value: Operand, instead: () => Operand, only?: string): Operand => {
  const bad = (cell: Cell): boolean => isError(cell) && (only === undefined || cell.error === only);
  if (!isGrid(value)) return bad(value) ? instead() : value;
  if (!value.some((line) => line.some(bad))) return value;
  const other = instead();
  return value.map((line, row) => line.map((cell, column) => (bad(cell) ? pick(other, row, column) : cell)));
};

const run = (later: Later | undefined): Operand => (later ? later() : null);

const LAZY: Readonly<Record<string, Lazy>> = {
  IF: ([condition, yes, no]) => {
    const test = run(condition);
    if (isGrid(test) && (test.length > 1 || (test[0]?.length ?? 0) > 1))
      return choose(test, run(yes), no ? run(no) : false);
    const is = truth(test);
    if (isError(is)) return is;
    return is ? run(yes) : no ? run(no) : false;
  },
  IFERROR: ([value, instead]) => replaceErrors(run(value), () => run(instead)),
  IFNA: ([value, instead]) => replaceErrors(run(value), () => run(instead), '#N/A'),
  IFS: (args) => {
    for (let i = 0; i + 1 < args.length; i += 2) {
      const is = truth(run(args[i]));
      if (isError(is)) return is;
      if (is) return run(args[i + 1]);
    }
    return { error: '#N/A' };
  },
  CHOOSE: ([which, ...options]) => {
    const n = run(which);
    const option = typeof n === 'number' ? options[Math.trunc(n) - 1] : undefined;
    return isError(n) ? n : option ? run(option) : { error: '#VALUE!' };
  },
};
/** Functions that decide which of their arguments are looked at. */
export const lazyFunction = (name: string): Lazy | undefined => {
  const key = name.toUpperCase();
  return Object.hasOwn(LAZY, key) ? LAZY[key] : undefined;
};

/** A text typed as an argument of these is a fault in Excel; one that stands in a cell is passed over. */
const LOGICAL: ReadonlySet<string> = new Set(['AND', 'OR', 'XOR']);
const isTypedText = (node: ParsedNode | undefined): boolean =>
  node?.kind === 'literal' && typeof node.value === 'string' && !/^(true|false)$/i.test(node.value);

/** These pass over what is no number in a cell, though they read a number typed as a text. */
export const AGGREGATE_NAMES = [
  'SUM',
  'AVERAGE',
  'MIN',
  'MAX',
  'PRODUCT',
  'MEDIAN',
  'STDEV.S',
  'COUNT',
  'COUNTA',
  'COUNTBLANK',
  'AND',
  'OR',
] as const;
const AGGREGATES: ReadonlySet<string> = new Set(AGGREGATE_NAMES);
const IN_CELLS: ReadonlySet<ParsedNode['kind']> = new Set(['reference', 'name']);
const asCells = (value: Operand): Grid => (isGrid(value) ? value : [[value]]);

/** How a function takes its arguments, by its name as written; the same few names are asked for all day. */
interface CallKind {
  readonly lazy: Lazy | undefined;
  readonly isLogical: boolean;
  readonly isAggregate: boolean;
}
const KINDS = new Map<string, CallKind>();
const MOST_NAMES = 2000;
function kindOf(name: string): CallKind {
  let kind = KINDS.get(name);
  if (!kind) {
    const known = name.toUpperCase();
    kind = { lazy: lazyFunction(name), isLogical: LOGICAL.has(known), isAggregate: AGGREGATES.has(known) };
    if (KINDS.size < MOST_NAMES) KINDS.set(name, kind);
  }
  return kind;
}

/** The function as it takes these arguments: a cell handed to SUM is a range of one, a text typed into AND a fault. */
export function fitted(
  name: string,
  args: readonly (ParsedNode | undefined)[],
  fn: EagerFunction,
): EagerFunction {
  const { isLogical, isAggregate } = kindOf(name);
  if (isLogical && args.some(isTypedText)) return () => ({ error: '#VALUE!' });
  if (!isAggregate || !args.some((arg) => arg && IN_CELLS.has(arg.kind))) return fn;
  return (values) =>
    fn(
      values.map((value, i) =>
        value !== undefined && IN_CELLS.has(args[i]?.kind ?? 'literal') ? asCells(value) : value,
      ),
    );
}

function call(name: string, args: readonly (ParsedNode | undefined)[], resolver: Resolver): Operand {
  const kind = kindOf(name);
  if (kind.lazy) return kind.lazy(args.map((arg) => (arg ? () => evaluateNode(arg, resolver) : undefined)));
  const fn = resolver.call?.(name);
  if (!fn) return { error: '#NAME?', message: `There is no function ${name}.` };
  const values = args.map((arg) => (arg ? evaluateNode(arg, resolver) : undefined));
  return fitted(name, args, fn)(values);
}

/** What a formula takes from outside itself; null is a blank cell, not a missing one. */
function lookUp(node: ParsedNode & { kind: 'reference' | 'spill' | 'name' }, resolver: Resolver): Operand {
  if (node.kind === 'reference')
    return resolver.reference ? resolver.reference(node.text) : nothing(node.text);
  if (node.kind === 'spill') return resolver.spill ? resolver.spill(node.anchor) : nothing(`${node.anchor}#`);
  return resolver.name
    ? resolver.name(node.name)
    : { error: '#NAME?', message: `There is no name ${node.name}.` };
}

/** a+b+c+… leans to the left as deep as it is long: worked through in a loop, not in itself. */
function chain(node: ParsedNode & { kind: 'binary' }, resolver: Resolver): Operand {
  const steps: (ParsedNode & { kind: 'binary' })[] = [];
  let first: ParsedNode = node;
  for (; first.kind === 'binary'; first = first.left) steps.push(first);
  return steps.reduceRight<Operand>(
    (left, step) => binary(step.operator, left, evaluateNode(step.right, resolver)),
    evaluateNode(first, resolver),
  );
}

function evaluateNode(node: ParsedNode, resolver: Resolver): Operand {
  switch (node.kind) {
    case 'literal':
      return node.value;
    case 'array':
      return node.rows;
    case 'unary':
      return unary(node.operator, evaluateNode(node.of, resolver));
    case 'binary':
      return chain(node, resolver);
    case 'call':
      return call(node.name, node.args, resolver);
    default:
      return lookUp(node, resolver);
  }
}

/** Calculates a formula that has been read already. */
export const evaluateTree = (tree: ParsedNode, resolver: Resolver): Operand => evaluateNode(tree, resolver);

/** Calculates a formula. A formula that cannot be read gives #VALUE! with a sentence that says where. */
export function evaluateWith(formula: string, resolver: Resolver): Operand {
  const parsed = parse(formula);
  if (isFault(parsed))
    return {
      error: '#VALUE!',
      message: `The formula cannot be read: ${parsed.fault} (at character ${parsed.at + 1}).`,
    };
  return evaluateNode(parsed, resolver);
}
