import { append } from '../../append';
import type { Area, CellPlace } from '../../../sheet/formula/address';
import { MAX_COLUMNS, overlaps } from '../../../sheet/formula/address';

/** Cells of many sheets, asked for by cell and by range. */
export class CellSet {
  /** Sheet → column → rows. */
  private readonly cells = new Map<number, Map<number, Set<number>>>();
  private readonly areas = new Map<number, Area[]>();
  size = 0;

  /** FALSE when it was in already. */
  add(sheet: number, { row, column }: CellPlace): boolean {
    let columns = this.cells.get(sheet);
    if (!columns) this.cells.set(sheet, (columns = new Map<number, Set<number>>()));
    let rows = columns.get(column);
    if (!rows) columns.set(column, (rows = new Set<number>()));
    if (rows.has(row)) return false;
    rows.add(row);
    this.size++;
    return true;
  }
  /** Whole ranges, filled or not. */
  addArea(sheet: number, area: Area): void {
    const list = this.areas.get(sheet);
    if (list) list.push(area);
    else this.areas.set(sheet, [area]);
  }

  /** Every single cell of the set. */
  each(visit: (sheet: number, place: CellPlace) => void): void {
    for (const [sheet, columns] of this.cells)
      for (const [column, rows] of columns) for (const row of rows) visit(sheet, { row, column });
  }

  has(sheet: number, place: CellPlace): boolean {
    return (
      (this.cells.get(sheet)?.get(place.column)?.has(place.row) ?? false) ||
      (this.areas.get(sheet) ?? []).some(
        (area) =>
          place.row >= area.top &&
          place.row <= area.bottom &&
          place.column >= area.left &&
          place.column <= area.right,
      )
    );
  }

  touches(sheet: number, area: Area): boolean {
    if ((this.areas.get(sheet) ?? []).some((one) => overlaps(one, area))) return true;
    for (const [column, rows] of this.columnsIn(sheet, area)) {
      if (area.bottom - area.top < rows.size) {
        for (let row = area.top; row <= area.bottom; row++) if (rows.has(row)) return true;
      } else for (const row of rows) if (row >= area.top && row <= area.bottom) return column >= 0;
    }
    return false;
  }

  /** Single cells of the set inside a range. */
  *within(sheet: number, area: Area): Generator<CellPlace> {
    for (const [column, rows] of this.columnsIn(sheet, area)) {
      if (area.bottom - area.top < rows.size) {
        for (let row = area.top; row <= area.bottom; row++) if (rows.has(row)) yield { row, column };
      } else for (const row of rows) if (row >= area.top && row <= area.bottom) yield { row, column };
    }
  }

  private *columnsIn(sheet: number, area: Area): Generator<readonly [number, Set<number>]> {
    const columns = this.cells.get(sheet);
    if (!columns) return;
    if (area.right - area.left < columns.size) {
      for (let column = area.left; column <= area.right; column++) {
        const rows = columns.get(column);
        if (rows) yield [column, rows];
      }
    } else
      for (const [column, rows] of columns)
        if (column >= area.left && column <= area.right) yield [column, rows];
  }
}

const BLOCK = 64;
/** A range over more blocks or columns than this stands in a list that is looked through. */
const MOST_BLOCKS = 32;
const MOST_WIDE = 64;

/** Who reads a cell: ranges with their readers; a range that was hit is taken out. */
export class ReaderIndex {
  /** Column of a sheet → row → readers. */
  private readonly single = new Map<number, Map<number, number | number[]>>();
  /** Column of a sheet → block of rows → ranges. */
  private readonly blocks = new Map<number, Map<number, Held[]>>();
  private readonly long = new Map<number, Held[]>();
  private readonly known = new Map<string, Held>();

  add(sheet: number, area: Area, reader: number): void {
    if (area.top === area.bottom && area.left === area.right) {
      const rows = inner(this.single, columnOf(sheet, area.left));
      const known = rows.get(area.top);
      if (known === undefined) rows.set(area.top, reader);
      else if (typeof known === 'number') rows.set(area.top, [known, reader]);
      else known.push(reader);
      return;
    }
    const key = `${sheet}|${area.top}|${area.left}|${area.bottom}|${area.right}`;
    const known = this.known.get(key);
    if (known) {
      known.readers.push(reader);
      return;
    }
    const held: Held = { area, readers: [reader], isHit: false };
    this.known.set(key, held);
    const [from, to] = [Math.floor(area.top / BLOCK), Math.floor(area.bottom / BLOCK)];
    if (to - from >= MOST_BLOCKS || area.right - area.left >= MOST_WIDE) {
      put(this.long, sheet, held);
      return;
    }
    for (let column = area.left; column <= area.right; column++)
      for (let block = from; block <= to; block++)
        put(inner(this.blocks, columnOf(sheet, column)), block, held);
  }

  /** Readers of the cell that have not been told before. */
  hit(sheet: number, { row, column }: CellPlace): number[] {
    const own = columnOf(sheet, column);
    const readers = this.hitSingle(own, row);
    for (const list of [this.blocks.get(own)?.get(Math.floor(row / BLOCK)), this.long.get(sheet)]) {
      if (!list) continue;
      let kept = 0;
      for (const held of list) {
        if (held.isHit) continue;
        const { area } = held;
        if (row >= area.top && row <= area.bottom && column >= area.left && column <= area.right) {
          held.isHit = true;
          append(readers, held.readers);
        } else list[kept++] = held;
      }
      list.length = kept;
    }
    return readers;
  }

  private hitSingle(column: number, row: number): number[] {
    const rows = this.single.get(column);
    const known = rows?.get(row);
    if (known === undefined) return [];
    rows?.delete(row);
    return typeof known === 'number' ? [known] : known;
  }

  /** Ranges that a whole range of cells hits. */
  hitArea(sheet: number, area: Area): number[] {
    const readers: number[] = [];
    for (let column = area.left; column <= area.right; column++) {
      const rows = this.single.get(columnOf(sheet, column));
      for (const [row, known] of rows ?? []) {
        if (row < area.top || row > area.bottom) continue;
        if (typeof known === 'number') readers.push(known);
        else append(readers, known);
        rows?.delete(row);
      }
    }
    for (const [key, held] of this.known)
      if (!held.isHit && key.startsWith(`${sheet}|`) && overlaps(held.area, area)) {
        held.isHit = true;
        append(readers, held.readers);
      }
    return readers;
  }
}

const columnOf = (sheet: number, column: number): number => sheet * MAX_COLUMNS + column;
function inner<K, L, V>(map: Map<K, Map<L, V>>, key: K): Map<L, V> {
  let found = map.get(key);
  if (!found) map.set(key, (found = new Map<L, V>()));
  return found;
}

interface Held {
  readonly area: Area;
  readonly readers: number[];
  isHit: boolean;
}
function put<K, V>(map: Map<K, V[]>, key: K, value: V): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}
