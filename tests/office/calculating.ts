import { evaluate } from '../../shared/catalogue/calculation';
import type { Operand } from '../../shared/sheet/formula';
import { parseArea, splitReference } from '../../shared/sheet/formula/address';
import { isGrid } from '../../shared/base/values';
import type { Cell } from '../../shared/base/values';
import { zeroHostCalls } from '../support/zeroHost';
import type { Calculate, Calculation, MemoryFormula } from '../../src/officeStandIn/memoryBook';

class UnderWay extends Error {}
const keyOf = (sheet: string, row: number, column: number): string => `${sheet}!${row}:${column}`;

/** Calculates a book in memory with the engine's own formula reader, each formula after those it looks at. */
class Calculator {
  private readonly underWay = new Map<string, MemoryFormula>();
  private readonly waiting: Map<string, MemoryFormula>;
  private readonly bySheet = new Map<string, MemoryFormula[]>();
  /** Nothing waits up and left of these. */
  private readonly settledCorners = new Map<string, { readonly row: number; readonly column: number }[]>();

  constructor(
    private readonly calculation: Calculation,
    private readonly call: typeof zeroHostCalls,
  ) {
    this.waiting = new Map(
      calculation.formulas.map((cell) => [keyOf(cell.sheet, cell.row, cell.column), cell]),
    );
    for (const cell of calculation.formulas)
      this.bySheet
        .set(cell.sheet, this.bySheet.get(cell.sheet) ?? [])
        .get(cell.sheet)
        ?.push(cell);
  }

  run(): void {
    for (const cell of this.calculation.formulas) this.settle(cell);
  }

  /** Gives a cell its value; one that needs a cell under way waits until that is done. */
  private settle(cell: MemoryFormula): void {
    const key = keyOf(cell.sheet, cell.row, cell.column);
    if (!this.waiting.delete(key)) return;
    this.underWay.set(key, cell);
    try {
      this.calculation.give(cell, this.answer(cell));
    } catch (error) {
      this.waiting.set(key, cell);
      throw error;
    } finally {
      this.underWay.delete(key);
    }
  }

  private answer(cell: MemoryFormula): Operand {
    return evaluate(cell.formula, {
      // An area of one cell is still an area: SUM passes over a text in it.
      reference: (text) => {
        const found = this.read(text, cell.sheet);
        return text.includes(':') && !isGrid(found) ? [[found]] : found;
      },
      name: (name) => {
        const found = this.calculation.names.find((one) => one.name.toLowerCase() === name.toLowerCase());
        return found ? this.read(found.formula.replace(/^=/, ''), cell.sheet) : { error: '#NAME?' };
      },
      call: this.call,
    });
  }

  private valueAt(sheet: string, row: number, column: number): Cell {
    const key = keyOf(sheet, row, column);
    if (this.underWay.has(key)) throw new UnderWay(key);
    const own = this.waiting.get(key);
    if (own) this.settle(own);
    const value = this.calculation.valueAt(sheet, row, column);
    if (value !== null || own) return value;
    this.settleCorner(sheet, row, column);
    return this.calculation.valueAt(sheet, row, column);
  }

  /**
   * A blank cell may be filled by a formula further up or to the left; one that needs what is under way does not
   * fill it.
   */
  private settleCorner(sheet: string, row: number, column: number): void {
    const settled = this.settledCorners.get(sheet) ?? [];
    if (settled.some((corner) => corner.row >= row && corner.column >= column)) return;
    const isWithin = (cell: MemoryFormula): boolean =>
      cell.sheet === sheet && cell.row <= row && cell.column <= column;
    let isWhole = true;
    for (const cell of this.bySheet.get(sheet) ?? [])
      if (isWithin(cell))
        try {
          this.settle(cell);
        } catch (error) {
          if (!(error instanceof UnderWay)) throw error;
          isWhole = false;
        }
    if (!isWhole || [...this.underWay.values()].some(isWithin)) return;
    const within = settled.filter((corner) => corner.row > row || corner.column > column);
    this.settledCorners.set(sheet, [...within, { row, column }]);
  }

  private read(text: string, home: string): Operand {
    const { sheet = home, area } = splitReference(text.replaceAll('$', ''));
    const place = parseArea(area);
    if (!place) return { error: '#REF!' };
    const grid: Cell[][] = [];
    for (let row = place.top; row <= place.bottom; row++) {
      const line: Cell[] = [];
      for (let column = place.left; column <= place.right; column++)
        line.push(this.valueAt(sheet, row, column));
      grid.push(line);
    }
    const [first] = grid;
    return grid.length === 1 && first?.length === 1 ? (first[0] ?? null) : grid;
  }
}

/**
 * Office tests calculate on the harder host, which hands a blank cell to our functions as 0: what they compare
 * with was calculated where blanks stay blank, so both hosts must agree.
 */
export const calculating: Calculate = (calculation) => {
  new Calculator(calculation, zeroHostCalls).run();
};
