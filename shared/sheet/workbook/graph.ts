// Long: places, references and their order belong together.
import type { Area } from '../formula/address';
import { addressOf, areaText, parseAddress, parseArea, splitReference } from '../formula/address';
import type { ParsedNode } from '../formula/parse';
import { isFault, parse } from '../formula/parse';
import type { SheetModel, WorkbookModel } from './model';

/**
 * The formulas of a workbook and what each takes from which other: the base of calculating and of checking.
 */

export interface Target {
  readonly sheet: SheetModel;
  readonly area: Area;
}

export interface FormulaNode {
  readonly sheet: SheetModel;
  readonly address: string;
  /** Cells the answer covers. */
  readonly area: Area;
  readonly formula: string;
  readonly tree: ParsedNode | undefined;
  readonly targets: readonly Target[];
  readonly faults: readonly string[];
}

const firstLetterCase = (text: string): string => text.toLowerCase();

/** Finds what a reference or a name of the model means. */
export class Places {
  private readonly sheets = new Map<string, SheetModel>();
  private readonly names = new Map<string, string>();
  private readonly tables = new Map<string, { readonly sheet: SheetModel; readonly area: Area }>();

  constructor(model: WorkbookModel) {
    for (const sheet of model.sheets) {
      this.sheets.set(firstLetterCase(sheet.name), sheet);
      for (const table of sheet.tables ?? []) {
        const area = parseArea(table.range);
        if (area) this.tables.set(firstLetterCase(table.name), { sheet, area });
      }
    }
    for (const { name, refersTo } of model.names)
      this.names.set(firstLetterCase(name), refersTo.replace(/^=/, ''));
  }

  /** Texts looked up before: thousands of formulas name the same few columns. */
  private readonly known = new Map<SheetModel, Map<string, Target | undefined>>();

  reference(text: string, home: SheetModel): Target | undefined {
    let ofSheet = this.known.get(home);
    if (!ofSheet) this.known.set(home, (ofSheet = new Map()));
    if (ofSheet.has(text)) return ofSheet.get(text);
    const target = this.find(text, home);
    ofSheet.set(text, target);
    return target;
  }

  private find(text: string, home: SheetModel): Target | undefined {
    if (text.includes('[')) return this.column(text);
    const { sheet: name, area: areaOf } = splitReference(text);
    const sheet = name === undefined ? home : this.sheets.get(firstLetterCase(name));
    const area = parseArea(areaOf);
    return sheet && area ? { sheet, area } : undefined;
  }

  name(name: string, home: SheetModel): Target | undefined {
    const refersTo = this.names.get(firstLetterCase(name));
    return refersTo === undefined ? undefined : this.reference(refersTo, home);
  }

  /** Table[Column]: the cells of a column below its heading. */
  private column(text: string): Target | undefined {
    const match = /^([^[]+)\[([^[\]]+)\]$/.exec(text);
    const table = this.tables.get(firstLetterCase(match?.[1] ?? ''));
    if (!table || !match?.[2]) return undefined;
    const { top, bottom, left, right } = table.area;
    for (let column = left; column <= right; column++)
      if (table.sheet.cells[addressOf(top, column)]?.value === match[2])
        return { sheet: table.sheet, area: { top: top + 1, bottom, left: column, right: column } };
    return undefined;
  }
}

/** Every node of a formula, each before what it is made of. */
export function* walk(node: ParsedNode | undefined): Generator<ParsedNode> {
  const waiting = [node];
  while (waiting.length > 0) {
    const one = waiting.pop();
    if (!one) continue;
    yield one;
    if (one.kind === 'call') for (let i = one.args.length - 1; i >= 0; i--) waiting.push(one.args[i]);
    else if (one.kind === 'unary') waiting.push(one.of);
    else if (one.kind === 'binary') waiting.push(one.right, one.left);
  }
}

/** Cells that a reference, spill or name in a formula means; a sentence when it means none. */
export function targetOf(node: ParsedNode, places: Places, home: SheetModel): Target | string | undefined {
  if (node.kind === 'reference')
    return places.reference(node.text, home) ?? `${node.text} is not in this workbook`;
  if (node.kind === 'name') return places.name(node.name, home) ?? `there is no name ${node.name}`;
  if (node.kind !== 'spill') return undefined;
  const anchor = places.reference(node.anchor, home);
  const cell = anchor && anchor.sheet.cells[addressOf(anchor.area.top, anchor.area.left)];
  if (!anchor || !cell?.spill) return `${node.anchor}# does not spill`;
  const [rows, columns] = cell.spill;
  return {
    sheet: anchor.sheet,
    area: { ...anchor.area, bottom: anchor.area.top + rows - 1, right: anchor.area.left + columns - 1 },
  };
}

function formulaNode(
  sheet: SheetModel,
  address: string,
  formula: string,
  spill: readonly [number, number] | undefined,
  places: Places,
): FormulaNode {
  const place = parseAddress(address) ?? { row: 0, column: 0 };
  const [rows, columns] = spill ?? [1, 1];
  const area = {
    top: place.row,
    left: place.column,
    bottom: place.row + rows - 1,
    right: place.column + columns - 1,
  };
  const tree = parse(formula);
  if (isFault(tree))
    return {
      sheet,
      address,
      area,
      formula,
      tree: undefined,
      targets: [],
      faults: [`cannot be read: ${tree.fault}`],
    };
  const targets: Target[] = [];
  const faults: string[] = [];
  for (const node of walk(tree)) {
    const target = targetOf(node, places, sheet);
    if (typeof target === 'string') faults.push(target);
    else if (target) targets.push(target);
  }
  return { sheet, address, area, formula, tree, targets, faults };
}

export const formulaNodes = (model: WorkbookModel, places = new Places(model)): FormulaNode[] =>
  model.sheets.flatMap((sheet) =>
    Object.entries(sheet.cells)
      .filter(([, cell]) => cell.formula !== undefined)
      .map(([address, cell]) => formulaNode(sheet, address, cell.formula ?? '', cell.spill, places)),
  );

/**
 * The formulas a reference rests on. One object for each range, however many formulas name it: a season has
 * thousands of sums over the same few columns.
 */
export interface Group {
  readonly members: readonly FormulaNode[];
}
const NOBODY: Group = { members: [] };

interface Covered {
  readonly cells: Map<string, FormulaNode>;
  readonly nodes: FormulaNode[];
  readonly groups: Map<string, Group>;
}

/** Which formula covers a cell, for the sheets of a model. */
export class Covering {
  private readonly bySheet = new Map<SheetModel, Covered>();

  constructor(nodes: readonly FormulaNode[]) {
    for (const node of nodes) {
      let entry = this.bySheet.get(node.sheet);
      if (!entry) this.bySheet.set(node.sheet, (entry = { cells: new Map(), nodes: [], groups: new Map() }));
      entry.nodes.push(node);
      for (let row = node.area.top; row <= node.area.bottom; row++)
        for (let column = node.area.left; column <= node.area.right; column++)
          entry.cells.set(addressOf(row, column), node);
    }
  }

  within({ sheet, area }: Target): Group {
    const entry = this.bySheet.get(sheet);
    if (!entry) return NOBODY;
    const key = areaText(area);
    let group = entry.groups.get(key);
    if (!group) entry.groups.set(key, (group = { members: membersOf(entry, area) }));
    return group;
  }
}

function membersOf({ cells, nodes }: Covered, area: Area): FormulaNode[] {
  const size = (area.bottom - area.top + 1) * (area.right - area.left + 1);
  if (size > nodes.length)
    return nodes.filter(
      ({ area: a }) =>
        a.top <= area.bottom && a.bottom >= area.top && a.left <= area.right && a.right >= area.left,
    );
  const found = new Set<FormulaNode>();
  for (let row = area.top; row <= area.bottom; row++)
    for (let column = area.left; column <= area.right; column++) {
      const node = cells.get(addressOf(row, column));
      if (node) found.add(node);
    }
  return [...found];
}

export interface Ordered {
  readonly order: readonly FormulaNode[];
  readonly circles: readonly (readonly FormulaNode[])[];
}

type Waiting = FormulaNode | Group;
const isGroup = (one: Waiting): one is Group => 'members' in one;

/** Formulas so that each stands after the ones it needs; formulas that need each other are listed apart. */
export function inOrder(nodes: readonly FormulaNode[], covering = new Covering(nodes)): Ordered {
  const needs = new Map<Waiting, readonly Waiting[]>();
  const needsOf = (one: Waiting): readonly Waiting[] => {
    let list = needs.get(one);
    if (!list)
      needs.set(
        one,
        (list = isGroup(one) ? one.members : one.targets.map((target) => covering.within(target))),
      );
    return list;
  };
  const order: FormulaNode[] = [];
  const circles: FormulaNode[][] = [];
  const state = new Map<Waiting, 'open' | 'done'>();
  for (const root of nodes) {
    const stack: { readonly node: Waiting; next: number }[] = state.has(root)
      ? []
      : [{ node: root, next: 0 }];
    if (stack.length > 0) state.set(root, 'open');
    for (let top = stack.at(-1); top; top = stack.at(-1)) {
      const need = needsOf(top.node)[top.next++];
      if (!need) {
        state.set(top.node, 'done');
        if (!isGroup(top.node)) order.push(top.node);
        stack.pop();
      } else if (state.get(need) === 'open') {
        const from = stack.findIndex(({ node }) => node === need);
        circles.push(stack.slice(from).flatMap(({ node }) => (isGroup(node) ? [] : [node])));
      } else if (!state.has(need)) {
        state.set(need, 'open');
        stack.push({ node: need, next: 0 });
      }
    }
  }
  return { order, circles };
}
