import type { Area, CellPlace } from '../formula/address';
import { parseAddress } from '../formula/address';
import type { ParsedNode } from '../formula/parse';
import { parse } from '../formula/parse';
import type { Target } from './places';
import { Places } from './places';
import type { Shape } from './shapes';
import { Shapes } from './shapes';
import type { SheetModel, WorkbookModel } from './model';

/**
 * The formulas of a workbook and what each takes from which other: the base of calculating and of checking.
 */

/** A formula in its cell, the cells its answer covers, and those it reads. */
export class FormulaNode {
  readonly area: Area;
  private own: ParsedNode | undefined;

  constructor(
    readonly sheet: SheetModel,
    readonly address: string,
    readonly formula: string,
    readonly shape: Shape,
    { row, column }: CellPlace,
    [rows, columns]: readonly [number, number],
  ) {
    this.area = { top: row, left: column, bottom: row + rows - 1, right: column + columns - 1 };
  }

  /** Rows between the formula that its shape was read from and this one. */
  get rows(): number {
    return this.area.top - this.shape.row;
  }
  get targets(): Target[] {
    return this.shape.targets.map((moved) => moved.by(this.rows));
  }
  get faults(): readonly string[] {
    return this.shape.faults;
  }
  /** The formula as read, with its own references. */
  get tree(): ParsedNode | undefined {
    if (this.rows === 0 || !this.shape.tree) return this.shape.tree;
    const tree = (this.own ??= parse(this.formula) as ParsedNode);
    return tree;
  }
}

const ONE = [1, 1] as const;
const CORNER: CellPlace = { row: 0, column: 0 };
const placeOf = (address: string): CellPlace => parseAddress(address) ?? CORNER;

export function formulaNodes(model: WorkbookModel, places = new Places(model)): FormulaNode[] {
  const shapes = new Shapes(places);
  const nodes: FormulaNode[] = [];
  for (const sheet of model.sheets)
    for (const [address, { formula, spill }] of Object.entries(sheet.cells)) {
      if (formula === undefined) continue;
      const place = placeOf(address);
      nodes.push(
        new FormulaNode(sheet, address, formula, shapes.of(formula, place.row, sheet), place, spill ?? ONE),
      );
    }
  return nodes;
}

/**
 * The formulas a reference rests on. One object for each range, however many formulas name it: a season has
 * thousands of sums over the same few columns.
 */
export interface Group {
  readonly members: readonly FormulaNode[];
}
const NOBODY: Group = { members: [] };
export type Needed = FormulaNode | Group;
export const isGroup = (one: Needed): one is Group => 'members' in one;

interface Covered {
  /** By row and column. */
  readonly cells: (FormulaNode | undefined)[][];
  readonly nodes: FormulaNode[];
  readonly groups: Map<string, Group>;
}

/** Which formula covers a cell, for the sheets of a model. */
export class Covering {
  private readonly bySheet = new Map<SheetModel, Covered>();
  private readonly byTarget = new Map<Target, Group>();

  constructor(nodes: readonly FormulaNode[]) {
    for (const node of nodes) {
      let entry = this.bySheet.get(node.sheet);
      if (!entry) this.bySheet.set(node.sheet, (entry = { cells: [], nodes: [], groups: new Map() }));
      entry.nodes.push(node);
      for (let row = node.area.top; row <= node.area.bottom; row++) {
        const line = (entry.cells[row] ??= []);
        for (let column = node.area.left; column <= node.area.right; column++) line[column] = node;
      }
    }
  }

  /** The formula of a single cell, the formulas of a range. */
  within(target: Target): Needed {
    const { area } = target;
    const entry = this.bySheet.get(target.sheet);
    if (!entry) return NOBODY;
    if (area.top === area.bottom && area.left === area.right)
      return entry.cells[area.top]?.[area.left] ?? NOBODY;
    const same = this.byTarget.get(target);
    if (same) return same;
    const key = `${area.top}:${area.left}:${area.bottom}:${area.right}`;
    let group = entry.groups.get(key);
    if (!group) entry.groups.set(key, (group = { members: membersOf(entry, area) }));
    this.byTarget.set(target, group);
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
      const node = cells[row]?.[column];
      if (node) found.add(node);
    }
  return [...found];
}

export interface Ordered {
  readonly order: readonly FormulaNode[];
  readonly circles: readonly (readonly FormulaNode[])[];
}

interface Open {
  readonly node: Needed;
  readonly needs: readonly Needed[];
  next: number;
}

/** Formulas so that each stands after the ones it needs; formulas that need each other are listed apart. */
export function inOrder(nodes: readonly FormulaNode[], covering = new Covering(nodes)): Ordered {
  const order: FormulaNode[] = [];
  const circles: FormulaNode[][] = [];
  const state = new Map<Needed, 'open' | 'done'>();
  const stack: Open[] = [];
  const open = (node: Needed): void => {
    state.set(node, 'open');
    const needs = isGroup(node)
      ? node.members
      : node.shape.targets.map((moved) => covering.within(moved.by(node.rows)));
    stack.push({ node, needs, next: 0 });
  };
  for (const root of nodes) {
    if (!state.has(root)) open(root);
    for (let top = stack.at(-1); top; top = stack.at(-1)) {
      const need = top.needs[top.next++];
      if (!need) {
        state.set(top.node, 'done');
        if (!isGroup(top.node)) order.push(top.node);
        stack.pop();
        continue;
      }
      const known = state.get(need);
      if (known === undefined) open(need);
      else if (known === 'open') {
        const from = stack.findIndex(({ node }) => node === need);
        circles.push(stack.slice(from).flatMap(({ node }) => (isGroup(node) ? [] : [node])));
      }
    }
  }
  return { order, circles };
}
