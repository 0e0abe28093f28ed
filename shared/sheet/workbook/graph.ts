// Long: places, references and their order belong together.
import type { Area, CellPlace } from '../formula/address';
import { addressOf, parseAddress, parseArea, splitReference } from '../formula/address';
import type { ParsedNode } from '../formula/parse';
import { parse } from '../formula/parse';
import type { Shape } from './shapes';
import { Shapes } from './shapes';
import type { SheetModel, WorkbookModel } from './model';

/**
 * The formulas of a workbook and what each takes from which other: the base of calculating and of checking.
 */

export interface Target {
  readonly sheet: SheetModel;
  readonly area: Area;
}

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
