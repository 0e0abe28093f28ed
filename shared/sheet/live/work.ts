import type { Cell, CellError, Grid } from '../../base/values';
import type { Near } from '../../base/near';
import { isError } from '../../base/values';
import type { Operand } from '../formula';
import type { Area } from '../formula/address';
import type { LiveFormula } from './bind';
import type { NeedGroup, Vertex } from './order';
import { isFormula, readersOf } from './order';
import { cover } from './spill';
import type { Slot } from './store';

/** The value of one formula, or the cells its answer covers. */
export interface LiveAnswer {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly value: Cell;
  /** Where the answer covers several cells. */
  readonly grid?: Grid;
  /** It covered several before and does no longer, or covers others now. */
  readonly hadGrid?: boolean;
}

const CIRCLE: CellError = { error: '#REF!', message: 'This formula needs its own answer.' };
export const sameCell = (a: Cell, b: Cell): boolean =>
  isError(a) && isError(b) ? a.error === b.error && a.message === b.message : Object.is(a, b) || a === b;

/** Where a calculation begins: what was changed has to be worked out again, with all that reads it. */
export function rootsOf(touched: Iterable<Slot>, dirty: Iterable<LiveFormula>): Set<Vertex> {
  const roots = new Set<Vertex>(dirty);
  for (const slot of touched) {
    for (const user of slot.users) {
      user.needs = true;
      roots.add(user);
    }
    for (const range of slot.sheet.ranges.holding(slot.row, slot.column)) {
      range.forget();
      for (const user of range.users) {
        user.needs = true;
        roots.add(user);
      }
    }
    for (const waiting of slot.sheet.blocked) {
      waiting.needs = true;
      roots.add(waiting);
    }
  }
  return roots;
}

interface Before {
  readonly value: Cell;
  readonly spill: Area | undefined;
  /** The value came with the formula, out of a file perhaps. */
  readonly isStored: boolean;
}

/** One calculation: formulas worked out, and what they showed before it. */
export class Work {
  private readonly before = new Map<LiveFormula, Before>();
  readonly late: Slot[] = [];
  readonly blockedNow: LiveFormula[] = [];

  group({ members, isCircle }: NeedGroup): void {
    for (const vertex of members) {
      if (!isFormula(vertex)) continue;
      const isNew = isCircle !== vertex.isInCircle;
      vertex.isInCircle = isCircle;
      if (vertex.needs || isNew || isCircle) this.formula(vertex, isCircle ? CIRCLE : vertex.run(undefined));
      vertex.needs = false;
    }
  }

  private formula(formula: LiveFormula, answer: Operand): void {
    const { slot } = formula;
    if (!this.before.has(formula))
      this.before.set(formula, { value: slot.value, spill: formula.spill, isStored: formula.isFresh });
    formula.isFresh = false;
    const oldReaders = formula.spill && [...readersOf(formula)];
    const { changed, freed } = cover(formula, answer);
    if (freed.length > 0) for (const waiting of slot.sheet.blocked) this.blockedNow.push(waiting);
    if (changed.length === 0 && freed.length === 0) return;
    for (const reader of oldReaders ?? readersOf(formula)) this.tell(reader);
    // Cells it did not cover before: their readers may have been worked out already.
    for (const one of [...changed, ...freed]) if (one !== slot) this.late.push(one);
  }

  private tell(reader: Vertex): void {
    if (isFormula(reader)) {
      reader.needs = true;
      return;
    }
    reader.forget();
    for (const user of reader.users) user.needs = true;
  }

  answers(retold: readonly LiveFormula[]): LiveAnswer[] {
    const answers: LiveAnswer[] = [];
    for (const [formula, { value: old, spill, isStored }] of this.before) {
      const { slot } = formula;
      if (slot.formula !== formula) continue;
      const isSpilled = formula.spill !== undefined || spill !== undefined;
      const isSame = (isStored ? nearlySame : sameCell)(old, slot.value);
      if (isSpilled || !isSame) answers.push(answerOf(formula, spill !== undefined));
    }
    const told = new Set(answers.map(({ sheet, row, column }) => `${sheet} ${row} ${column}`));
    for (const formula of retold) {
      const { sheet, row, column } = formula.slot;
      if (!told.has(`${sheet.id} ${row} ${column}`))
        answers.push(answerOf(formula, formula.spill !== undefined));
    }
    return answers;
  }
}

const answerOf = ({ slot, spill }: LiveFormula, hadGrid: boolean): LiveAnswer => ({
  sheet: slot.sheet.id,
  row: slot.row,
  column: slot.column,
  value: slot.value,
  ...(spill ? { grid: gridAt(slot, spill) } : {}),
  ...(hadGrid ? { hadGrid } : {}),
});

/** Files keep fewer digits than were calculated: the same number for whoever looks. */
const CLOSE = 1e-13;
const nearlySame = (a: Cell, b: Cell): boolean =>
  typeof a === 'number' && typeof b === 'number'
    ? Math.abs(a - b) <= CLOSE * Math.max(Math.abs(a), Math.abs(b))
    : sameCell(a, b);

export const NEAR: readonly Near[] = [
  {
    number: 'how far a stored number may stand from the calculated one and be the same',
    value: CLOSE,
    below: () => nearlySame(1, 1 + 0.95e-13),
    above: () => nearlySame(1, 1 + 1.05e-13),
    answers: [true, false],
  },
];

const gridAt = ({ sheet }: Slot, { top, bottom, left, right }: Area): Grid =>
  Array.from({ length: bottom - top + 1 }, (_, r) =>
    Array.from({ length: right - left + 1 }, (__, c) => sheet.slot(top + r, left + c).value),
  );
