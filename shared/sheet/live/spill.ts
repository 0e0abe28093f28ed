import type { Cell, CellError, Grid } from '../../base/values';
import { isGrid } from '../../base/values';
import type { Area } from '../formula/address';
import { MAX_COLUMNS, MAX_ROWS } from '../formula/address';
import type { Operand } from '../formula/evaluate';
import type { LiveFormula } from './bind';
import type { Slot } from './store';

/** Answers over several cells: which they cover, and what happens where they have no room. */

const NO_ROOM: CellError = {
  error: '#SPILL!',
  message: 'The answer needs more cells than are free here. Clear the cells below and to the right.',
};

/** A formula alone in its cell that points at a blank shows 0. */
const shown = (cell: Cell | undefined): Cell => cell ?? 0;

const same = (a: Cell, b: Cell): boolean =>
  typeof a === 'object' && typeof b === 'object' && a !== null && b !== null
    ? a.error === b.error && a.message === b.message
    : Object.is(a, b);

/** Cells a formula covered beside its own are blank again. */
export function uncover(formula: LiveFormula): Slot[] {
  const freed: Slot[] = [];
  const { spill, slot } = formula;
  formula.spill = undefined;
  if (!spill) return freed;
  for (let row = spill.top; row <= spill.bottom; row++)
    for (let column = spill.left; column <= spill.right; column++) {
      const one = slot.sheet.slot(row, column);
      if (one.cover !== formula) continue;
      one.cover = undefined;
      one.value = null;
      freed.push(one);
    }
  return freed;
}

const isFree = (one: Slot, formula: LiveFormula): boolean =>
  one === formula.slot ||
  one.cover === formula ||
  (one.formula === undefined && one.cover === undefined && one.value === null);

function hasRoom(formula: LiveFormula, area: Area): boolean {
  if (area.bottom >= MAX_ROWS || area.right >= MAX_COLUMNS) return false;
  for (let row = area.top; row <= area.bottom; row++)
    for (let column = area.left; column <= area.right; column++)
      if (!isFree(formula.slot.sheet.slot(row, column), formula)) return false;
  return true;
}

function put(one: Slot, value: Cell, changed: Slot[]): void {
  one.sheet.reach(one.row, one.column);
  if (same(one.value, value)) return;
  one.value = value;
  changed.push(one);
}

const areaOf = ({ slot: { row, column } }: LiveFormula, rows: number, columns: number): Area => ({
  top: row,
  left: column,
  bottom: row + rows - 1,
  right: column + columns - 1,
});

export interface Covered {
  readonly changed: Slot[];
  readonly freed: Slot[];
}

/** Puts an answer into its cell and those it covers; answers which have another value now. */
export function cover(formula: LiveFormula, answer: Operand): Covered {
  const { slot } = formula;
  const changed: Slot[] = [];
  const columns = isGrid(answer) ? (answer[0]?.length ?? 0) : 1;
  slot.sheet.blocked.delete(formula);
  formula.wanted = undefined;
  if (!isGrid(answer) || answer.length * columns <= 1) {
    const freed = uncover(formula);
    put(slot, shown(isGrid(answer) ? answer[0]?.[0] : answer), changed);
    return { changed, freed };
  }
  const area = areaOf(formula, answer.length, columns);
  if (!hasRoom(formula, area)) {
    const freed = uncover(formula);
    formula.wanted = area;
    slot.sheet.blocked.add(formula);
    put(slot, NO_ROOM, changed);
    return { changed, freed };
  }
  return { changed, freed: spread(formula, area, answer, changed) };
}

function spread(formula: LiveFormula, area: Area, answer: Grid, changed: Slot[]): Slot[] {
  const { slot, spill } = formula;
  const freed: Slot[] = [];
  const inNew = (row: number, column: number): boolean =>
    row >= area.top && row <= area.bottom && column >= area.left && column <= area.right;
  if (spill)
    for (let row = spill.top; row <= spill.bottom; row++)
      for (let column = spill.left; column <= spill.right; column++) {
        const one = slot.sheet.slot(row, column);
        if (inNew(row, column) || one.cover !== formula) continue;
        one.cover = undefined;
        one.value = null;
        freed.push(one);
      }
  formula.spill = area;
  for (let row = area.top; row <= area.bottom; row++)
    for (let column = area.left; column <= area.right; column++) {
      const one = slot.sheet.slot(row, column);
      if (one !== slot) one.cover = formula;
      put(one, shown(answer[row - area.top]?.[column - area.left]), changed);
    }
  return freed;
}
