import { evaluate } from '../../../../shared/catalogue/calculation';
import { findFunction } from '../../../../shared/catalogue';
import type { NamedParam, SheetFunction } from '../../../../shared/functions/define';
import type { ParsedNode } from '../../../../shared/sheet/formula/parse';
import { isFault, parse } from '../../../../shared/sheet/formula/parse';
import type { Cell, Grid } from '../../../../shared/base/values';
import { isError, isGrid } from '../../../../shared/base/values';
import { mendFormula } from '../../messages/state/formulaRepair';

/** A cell's formula taken apart: which function of ours, with which arguments, from which cells. */
export interface Explained {
  readonly fn: SheetFunction;
  readonly args: readonly ExplainedArg[];
  /** The formula holds more than this one call. */
  readonly isPart: boolean;
  /** Why it fails, and what would mend it. */
  readonly sentence: string | undefined;
}
export interface ExplainedArg {
  readonly param: NamedParam;
  /** The cells it comes from, when it is a reference; undefined for a typed value or nothing. */
  readonly reference: string | undefined;
  readonly text: string;
  readonly value: Cell | Grid | undefined;
}

const calls = (node: ParsedNode | undefined): readonly Extract<ParsedNode, { kind: 'call' }>[] => {
  if (!node) return [];
  switch (node.kind) {
    case 'call':
      return [node, ...node.args.flatMap(calls)];
    case 'unary':
      return calls(node.of);
    case 'binary':
      return [...calls(node.left), ...calls(node.right)];
    default:
      return [];
  }
};

/** Every reference of the formula, as written. */
export function referencesOf(formula: string): readonly string[] {
  const found = new Set<string>();
  const visit = (node: ParsedNode | undefined): void => {
    if (!node) return;
    if (node.kind === 'reference') found.add(node.text);
    else if (node.kind === 'call') node.args.forEach(visit);
    else if (node.kind === 'unary') visit(node.of);
    else if (node.kind === 'binary') {
      visit(node.left);
      visit(node.right);
    }
  };
  const parsed = parse(mendFormula(formula));
  if (!isFault(parsed)) visit(parsed);
  return [...found];
}

const textOf = (node: ParsedNode | undefined): string => {
  if (!node) return '';
  if (node.kind === 'literal') return node.value === null ? '' : String(node.value);
  if (node.kind === 'reference') return node.text;
  if (node.kind === 'unary') return `${node.operator}${textOf(node.of)}`;
  if (node.kind === 'binary') return `${textOf(node.left)} ${node.operator} ${textOf(node.right)}`;
  return node.kind === 'call' ? `${node.name}(…)` : '…';
};

/** undefined when none of our functions is in it. */
export function explain(
  formula: string,
  holds: (reference: string) => Cell | Grid | undefined,
): Explained | undefined {
  const mended = mendFormula(formula);
  const parsed = parse(mended);
  if (isFault(parsed)) return undefined;
  const ours = calls(parsed).filter(({ name }) => findFunction(name));
  const [first] = ours;
  const fn = first && findFunction(first.name);
  if (!fn) return undefined;
  const args = fn.params.map((param, i): ExplainedArg => {
    const node = first.args[i];
    const reference = node?.kind === 'reference' ? node.text : undefined;
    return {
      param,
      reference,
      text: textOf(node),
      value: reference === undefined ? undefined : holds(reference),
    };
  });
  const got = evaluate(mended, { reference: (text) => holds(text) ?? { error: '#REF!' } });
  const error = isGrid(got) ? got.flat().find(isError) : isError(got) ? got : undefined;
  return { fn, args, isPart: parsed.kind !== 'call' || ours.length > 1, sentence: error?.message };
}
