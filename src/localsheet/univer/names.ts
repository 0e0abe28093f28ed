import { IFunctionService, LexerTreeBuilder, sequenceNodeType } from '@univerjs/engine-formula';
import type { ISequenceNode } from '@univerjs/engine-formula';
import type { Engine } from './engine';

/**
 * Two repairs in how the engine puts names into formulas. A name that is spelled like a function (product)
 * must not take the function's place (PRODUCT(…)); and what a name stands for is put in as one value, in
 * brackets, not as loose text.
 */
interface NameContent {
  readonly formulaOrRefString: string;
}
interface NameParam {
  readonly getValueByName: (unitId: string, name: string) => NameContent | null | undefined;
}
type Nodes = readonly (string | ISequenceNode)[];
interface Builder {
  _handleDefinedName(sequence: unknown, param: NameParam): unknown;
  getSequenceNode(sequence: unknown): Nodes;
}

const ONE_REFERENCE = /^=?\s*(('([^']|'')+'|[\w.]+)!)?\$?[A-Za-z]{0,3}\$?\d*(:\$?[A-Za-z]{0,3}\$?\d*)?$/;
const asOneValue = (content: NameContent): NameContent =>
  ONE_REFERENCE.test(content.formulaOrRefString)
    ? content
    : { ...content, formulaOrRefString: `=(${content.formulaOrRefString.replace(/^=/, '')})` };

export function repairNames({ injector }: Engine): void {
  const functions = injector.get(IFunctionService);
  // The engine keeps these two to itself; there is no public door.
  const builder = injector.get(LexerTreeBuilder) as unknown as Builder;
  const handle = builder._handleDefinedName.bind(builder);
  const nodesOf = builder.getSequenceNode.bind(builder);
  const isCall = (nodes: Nodes, at: number): boolean => {
    const node = nodes[at];
    const next = nodes[at + 1];
    return (
      typeof node === 'object' &&
      node.nodeType === sequenceNodeType.FUNCTION &&
      functions.hasExecutor(node.token.toUpperCase()) &&
      typeof next === 'string' &&
      next.startsWith('(')
    );
  };
  const withoutCalls = (nodes: Nodes): Nodes =>
    nodes.map((node, at) => (typeof node === 'object' && isCall(nodes, at) ? node.token : node));
  let depth = 0;
  builder.getSequenceNode = (sequence) => (depth === 0 ? nodesOf(sequence) : withoutCalls(nodesOf(sequence)));
  builder._handleDefinedName = (sequence, param) => {
    depth++;
    try {
      return handle(sequence, {
        ...param,
        getValueByName: (unitId, name) => {
          const found = param.getValueByName(unitId, name);
          return found && asOneValue(found);
        },
      });
    } finally {
      depth--;
    }
  };
}
