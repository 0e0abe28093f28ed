import type { Cell, Grid } from '../../../shared/base/values';
import { parseArea, splitSheet } from '../../../src/officeStandIn/address';
import type { Calculate } from '../../../src/officeStandIn/memoryBook';

/**
 * Just enough calculation for the tests: =A1*2 style sums of references, =SPILL(n) and =FAIL(). Not a formula
 * engine.
 */
export const calculate: Calculate = ({ formulas, valueAt, give }) => {
  for (const cell of formulas) {
    const number = (reference: string): number => {
      const { sheet, rest } = splitSheet(reference);
      const area = parseArea(rest);
      return area ? Number(valueAt(sheet ?? cell.sheet, area.row, area.column)) : Number(reference);
    };
    const answer = (): Cell | Grid => {
      const spill = /^=SPILL\((\d+)\)$/.exec(cell.formula);
      if (spill) return Array.from({ length: Number(spill[1]) }, (_, i) => [i + 1, (i + 1) * 10]);
      if (cell.formula === '=FAIL()') return { error: '#N/A' };
      return cell.formula
        .slice(1)
        .split('+')
        .map((term) =>
          term
            .split('*')
            .map(number)
            .reduce((a, b) => a * b),
        )
        .reduce((a, b) => a + b);
    };
    give(cell, answer());
  }
};
