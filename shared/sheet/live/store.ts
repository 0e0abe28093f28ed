import type { Cell, Grid } from '../../base/values';
import type { Area } from '../formula/address';
import { MAX_COLUMNS, MAX_ROWS } from '../formula/address';
import type { LiveFormula } from './bind';

/** Cells and ranges of a workbook that is kept calculated, and who reads them. Rows and columns from 0. */

export const keyOf = (row: number, column: number): number => row * MAX_COLUMNS + column;

const NONE: readonly never[] = [];
/** Lists of readers: small, many, and filled by one formula after the other, so that its repeats stand last. */
const enter = <T>(list: T[], one: T): void => {
  if (list.at(-1) !== one) list.push(one);
};
const drop = <T>(list: T[], one: T): void => {
  const at = list.lastIndexOf(one);
  if (at < 0) return;
  const last = list.pop();
  if (last !== undefined && at < list.length) list[at] = last;
};

export class Slot {
  value: Cell = null;
  /** The formula that stands here. */
  formula: LiveFormula | undefined;
  /** The formula elsewhere that spills into this cell. */
  cover: LiveFormula | undefined;
  private readers: LiveFormula[] | undefined;
  constructor(
    readonly sheet: SheetStore,
    readonly row: number,
    readonly column: number,
  ) {}

  /** Formulas that read this cell alone. */
  get users(): readonly LiveFormula[] {
    return this.readers ?? NONE;
  }
  take(user: LiveFormula): void {
    enter((this.readers ??= []), user);
  }
  leave(user: LiveFormula): void {
    if (this.readers) drop(this.readers, user);
  }
}

/** One object for each range, however many formulas read it; what it holds is gathered once. */
export class RangeNode {
  readonly users: LiveFormula[] = [];
  private grid: Grid | undefined;
  constructor(
    readonly sheet: SheetStore,
    readonly area: Area,
  ) {}

  take(user: LiveFormula): void {
    enter(this.users, user);
  }

  has(row: number, column: number): boolean {
    const { top, bottom, left, right } = this.area;
    return row >= top && row <= bottom && column >= left && column <= right;
  }

  forget(): void {
    this.grid = undefined;
  }

  /** Blank cells are null; a whole column or row ends where the sheet does. */
  read(): Grid {
    return (this.grid ??= this.gather());
  }

  private gather(): Grid {
    const { sheet, area } = this;
    const bottom = area.bottom === MAX_ROWS - 1 ? Math.max(area.top, sheet.lastRow) : area.bottom;
    const right = area.right === MAX_COLUMNS - 1 ? Math.max(area.left, sheet.lastColumn) : area.right;
    const grid: Cell[][] = [];
    for (let row = area.top; row <= bottom; row++) {
      const line: Cell[] = [];
      for (let column = area.left; column <= right; column++)
        line.push(sheet.slots.get(keyOf(row, column))?.value ?? null);
      grid.push(line);
    }
    return grid;
  }
}

/** Rows in one block: short ranges are listed under the blocks they touch, tall ones under their columns. */
const BLOCK = 64;
const TALL = 4 * BLOCK;
const WIDE = 32;

interface Column {
  readonly tall: Set<RangeNode>;
  readonly blocks: Map<number, Set<RangeNode>>;
}

/** Which ranges hold a cell. */
class RangeIndex {
  private readonly known = new Map<string, RangeNode>();
  private readonly wide = new Set<RangeNode>();
  private readonly columns = new Map<number, Column>();

  take(sheet: SheetStore, area: Area): RangeNode {
    const key = `${area.top},${area.left},${area.bottom},${area.right}`;
    let node = this.known.get(key);
    if (!node) {
      this.known.set(key, (node = new RangeNode(sheet, area)));
      for (const list of this.listsOf(area)) list.add(node);
    }
    return node;
  }

  leave(node: RangeNode, user: LiveFormula): void {
    drop(node.users, user);
    if (node.users.length > 0) return;
    const { top, left, bottom, right } = node.area;
    this.known.delete(`${top},${left},${bottom},${right}`);
    for (const list of this.listsOf(node.area)) list.delete(node);
  }

  private *listsOf({ top, bottom, left, right }: Area): Generator<Set<RangeNode>> {
    if (right - left >= WIDE) {
      yield this.wide;
      return;
    }
    for (let column = left; column <= right; column++) {
      let entry = this.columns.get(column);
      if (!entry) this.columns.set(column, (entry = { tall: new Set(), blocks: new Map() }));
      if (bottom - top >= TALL) yield entry.tall;
      else
        for (let block = Math.floor(top / BLOCK); block <= Math.floor(bottom / BLOCK); block++) {
          let list = entry.blocks.get(block);
          if (!list) entry.blocks.set(block, (list = new Set()));
          yield list;
        }
    }
  }

  holding(row: number, column: number): readonly RangeNode[] {
    const entry = this.columns.get(column);
    let found: RangeNode[] | undefined;
    const look = (list: Iterable<RangeNode>): void => {
      for (const node of list) if (node.has(row, column)) (found ??= []).push(node);
    };
    if (this.wide.size > 0) look(this.wide);
    if (!entry) return found ?? NONE;
    if (entry.tall.size > 0) look(entry.tall);
    const block = entry.blocks.get(Math.floor(row / BLOCK));
    if (block) look(block);
    return found ?? NONE;
  }
}

export class SheetStore {
  readonly slots = new Map<number, Slot>();
  readonly ranges = new RangeIndex();
  /** Formulas whose answer has no room. */
  readonly blocked = new Set<LiveFormula>();
  lastRow = 0;
  lastColumn = 0;
  constructor(
    readonly id: string,
    public name: string,
  ) {}

  slot(row: number, column: number): Slot {
    const key = keyOf(row, column);
    let slot = this.slots.get(key);
    if (!slot) this.slots.set(key, (slot = new Slot(this, row, column)));
    return slot;
  }

  /** A value stands here: whole columns and rows reach at least so far. */
  reach(row: number, column: number): void {
    if (row > this.lastRow) this.lastRow = row;
    if (column > this.lastColumn) this.lastColumn = column;
  }
}
