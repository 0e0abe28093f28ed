import { LiveFormula } from './bind';
import type { SheetStore } from './store';
import { RangeNode } from './store';

/** Formulas and ranges that may change, so that each stands after what it reads. */
export type Vertex = LiveFormula | RangeNode;

export const isFormula = (vertex: Vertex): vertex is LiveFormula => vertex instanceof LiveFormula;

/** Who reads a cell: alone, and in ranges. */
const readersAt = (sheet: SheetStore, row: number, column: number): readonly Vertex[] => {
  const { users } = sheet.slot(row, column);
  const ranges = sheet.ranges.holding(row, column);
  return ranges.length === 0 ? users : users.length === 0 ? ranges : [...users, ...ranges];
};

/** Who reads the cells a formula fills, and who reads a range. */
export function readersOf(vertex: Vertex): readonly Vertex[] {
  if (vertex instanceof RangeNode) return vertex.users;
  const { slot, spill } = vertex;
  if (!spill) return readersAt(slot.sheet, slot.row, slot.column);
  const found: Vertex[] = [];
  for (let row = spill.top; row <= spill.bottom; row++)
    for (let column = spill.left; column <= spill.right; column++)
      found.push(...readersAt(slot.sheet, row, column));
  return found;
}

interface Frame {
  readonly vertex: Vertex;
  readonly readers: readonly Vertex[];
  next: number;
  readonly index: number;
  low: number;
}

/**
 * Groups of what hangs together, in the order of need; a group of several, or one that reads itself, is a
 * circle. Tarjan's strongly connected components, over readers instead of what is read, hence turned round.
 */
class Search {
  readonly groups: { readonly members: Vertex[]; readonly isCircle: boolean }[] = [];
  private readonly indexes = new Map<Vertex, number>();
  private readonly waiting: Vertex[] = [];
  private readonly isWaiting = new Set<Vertex>();
  private readonly selfReaders = new Set<Vertex>();
  private frames: Frame[] = [];

  from(root: Vertex): void {
    if (this.indexes.has(root)) return;
    this.enter(root);
    for (let frame = this.frames.at(-1); frame; frame = this.frames.at(-1)) {
      const reader = frame.readers[frame.next++];
      if (reader) this.look(frame, reader);
      else this.leave(frame);
    }
  }

  private enter(vertex: Vertex): void {
    const index = this.indexes.size;
    this.indexes.set(vertex, index);
    this.waiting.push(vertex);
    this.isWaiting.add(vertex);
    this.frames.push({ vertex, readers: readersOf(vertex), next: 0, index, low: index });
  }

  private look(frame: Frame, reader: Vertex): void {
    const index = this.indexes.get(reader);
    if (index === undefined) this.enter(reader);
    else if (this.isWaiting.has(reader)) {
      frame.low = Math.min(frame.low, index);
      if (reader === frame.vertex) this.selfReaders.add(reader);
    }
  }

  private leave(frame: Frame): void {
    this.frames.pop();
    const above = this.frames.at(-1);
    if (above) above.low = Math.min(above.low, frame.low);
    if (frame.low !== frame.index) return;
    const members: Vertex[] = [];
    for (let vertex = this.waiting.pop(); vertex; vertex = this.waiting.pop()) {
      this.isWaiting.delete(vertex);
      members.push(vertex);
      if (vertex === frame.vertex) break;
    }
    this.groups.push({ members, isCircle: members.length > 1 || this.selfReaders.has(frame.vertex) });
  }
}

export type NeedGroup = Search['groups'][number];

export function inOrderOfNeed(roots: Iterable<Vertex>): NeedGroup[] {
  const search = new Search();
  for (const root of roots) search.from(root);
  return search.groups.reverse();
}
