import type { Cell, Grid } from '../../base/values';
import { isGrid } from '../../base/values';
import type { Area } from '../formula/address';
import { MAX_COLUMNS, MAX_ROWS, parseArea, splitReference } from '../formula/address';
import type { Binding, Compiled } from '../formula/compile';
import { compileNode } from '../formula/compile';
import { isFault, parse } from '../formula/parse';
import type { LiveBook } from './book';
import { sameCell } from './work';
import type { SheetStore } from './store';
import { keyOf } from './store';

/** A formula asked for every cell of some areas, written for the first: colouring and input rules. */
export interface RuleWatch {
  readonly id: string;
  readonly sheet: string;
  readonly formula: string;
  readonly areas: readonly Area[];
}
export interface WatchAnswer {
  readonly id: string;
  readonly sheet: string;
  /** Rows and columns from the first cell of the first area, with the value there. */
  readonly values: readonly (readonly [number, number, Cell])[];
}

interface Shift {
  rows: number;
  columns: number;
}
interface Corner {
  readonly row: number;
  readonly column: number;
  readonly isRowFixed: boolean;
  readonly isColumnFixed: boolean;
}

const corner = (text: string): Corner | undefined => {
  const area = parseArea(text);
  const match = /^(\$?)[A-Za-z]+(\$?)\d+$/.exec(text);
  return area && match
    ? { row: area.top, column: area.left, isRowFixed: match[2] === '$', isColumnFixed: match[1] === '$' }
    : undefined;
};
const moved = (at: Corner, shift: Shift): readonly [number, number] => [
  at.isRowFixed ? at.row : (at.row + shift.rows + MAX_ROWS) % MAX_ROWS,
  at.isColumnFixed ? at.column : (at.column + shift.columns + MAX_COLUMNS) % MAX_COLUMNS,
];

const valueAt = (sheet: SheetStore, row: number, column: number): Cell =>
  sheet.slots.get(keyOf(row, column))?.value ?? null;

function gather(sheet: SheetStore, from: Corner, to: Corner, shift: Shift): Grid {
  const [top, left] = moved(from, shift);
  const [bottom, right] = moved(to, shift);
  return Array.from({ length: Math.max(0, bottom - top + 1) }, (_, r) =>
    Array.from({ length: Math.max(0, right - left + 1) }, (__, c) => valueAt(sheet, top + r, left + c)),
  );
}

class Rule {
  readonly shift: Shift = { rows: 0, columns: 0 };
  private run: Compiled<Shift> | undefined;
  last = new Map<string, Cell>();

  constructor(readonly watch: RuleWatch) {}

  /** Bound at each asking: sheets and names may have changed, and reading one formula costs nothing. */
  bind(book: LiveBook): void {
    const around = book.surroundings;
    const nowhere: Compiled<Shift> = () => ({ error: '#REF!' });
    const reference = (text: string): Compiled<Shift> => {
      const { sheet: name, area } = splitReference(text);
      const sheet = name === undefined ? book.sheet(this.watch.sheet) : around.sheet(name);
      if (!sheet || text.includes('[')) return this.fixed(book, text) ?? nowhere;
      const [first = '', second] = area.split(':');
      const from = corner(first);
      const to = second === undefined ? from : corner(second);
      if (!from || !to) return this.fixed(book, text) ?? nowhere;
      return second === undefined
        ? (shift) => valueAt(sheet, ...moved(from, shift))
        : (shift) => gather(sheet, from, to, shift);
    };
    const binding: Binding<Shift> = {
      reference,
      spill: () => nowhere,
      name: (name) => {
        const text = around.name(name);
        const tree = text === undefined ? undefined : parse(text);
        return !tree || isFault(tree)
          ? () => ({ error: '#NAME?' })
          : compileNode(tree, { ...binding, name: () => nowhere });
      },
      call: (name) => around.call(name) ?? (() => ({ error: '#NAME?' })),
    };
    const tree = parse(this.watch.formula);
    this.run = isFault(tree) ? nowhere : compileNode(tree, binding);
  }

  /** Whole columns and tables stay where they are. */
  private fixed(book: LiveBook, text: string): Compiled<Shift> | undefined {
    const { sheet: name, area: areaOf } = splitReference(text);
    const area = parseArea(areaOf);
    const target = text.includes('[')
      ? book.surroundings.column(text)
      : { sheet: name === undefined ? book.sheet(this.watch.sheet) : book.surroundings.sheet(name), area };
    if (!target?.sheet || !target.area) return undefined;
    const { sheet } = target;
    const { top, left, bottom, right } = target.area;
    const at = (row: number, column: number): Corner => ({
      row,
      column,
      isRowFixed: true,
      isColumnFixed: true,
    });
    return (shift) =>
      gather(
        sheet,
        at(top, left),
        at(Math.min(bottom, sheet.lastRow), Math.min(right, sheet.lastColumn)),
        shift,
      );
  }

  ask(isAll: boolean): WatchAnswer | undefined {
    const [first] = this.watch.areas;
    const { run, shift } = this;
    if (!first || !run) return undefined;
    const values: [number, number, Cell][] = [];
    for (const area of this.watch.areas)
      for (let row = area.top; row <= area.bottom; row++)
        for (let column = area.left; column <= area.right; column++) {
          shift.rows = row - first.top;
          shift.columns = column - first.left;
          const answer = run(shift);
          const value = isGrid(answer) ? (answer[0]?.[0] ?? null) : answer;
          const key = `${shift.rows},${shift.columns}`;
          if (!isAll && this.last.has(key) && sameCell(this.last.get(key) ?? null, value)) continue;
          this.last.set(key, value);
          values.push([shift.rows, shift.columns, value]);
        }
    return values.length > 0 ? { id: this.watch.id, sheet: this.watch.sheet, values } : undefined;
  }
}

/** The formulas of rules beside the cells: asked again after every calculation, answered where they differ. */
export class Watches {
  private rules = new Map<string, Rule>();

  set(watches: readonly RuleWatch[]): void {
    const next = new Map<string, Rule>();
    for (const watch of watches) {
      const old = this.rules.get(watch.id);
      const isSame = old !== undefined && JSON.stringify(old.watch) === JSON.stringify(watch);
      next.set(watch.id, isSame ? old : new Rule(watch));
    }
    this.rules = next;
  }

  ask(book: LiveBook, isAll = false): WatchAnswer[] {
    return [...this.rules.values()].flatMap((rule) => {
      rule.bind(book);
      return rule.ask(isAll) ?? [];
    });
  }
}
