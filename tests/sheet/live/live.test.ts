import { evaluate } from '../../../shared/catalogue/calculation';
import type { Cell } from '../../../shared/base/values';
import { isError, isGrid } from '../../../shared/base/values';
import type { Operand } from '../../../shared/sheet/formula';
import { addressOf, parseArea } from '../../../shared/sheet/formula/address';
import { CELLS, FORMULAS } from '../formula/formulas';

import type { Content } from './desk';
import { Desk, liveCell } from './desk';

/** The calculation that is kept up to date, move by move. */

test('answers name exactly what has another value', () => {
  const desk = new Desk('S');
  desk.put('S', 'A1', 2).put('S', 'A2', '=A1*10').put('S', 'A3', '=A2>5').put('S', 'A4', '=A3&""');
  expect(desk.live.calculate().map(({ row, value }) => [row, value])).toEqual([
    [1, 20],
    [2, true],
    [3, 'TRUE'],
  ]);
  desk.put('S', 'A1', 3);
  // A3 stays TRUE: what hangs on it is not worked out again.
  expect(desk.live.calculate().map(({ row, value }) => [row, value])).toEqual([[1, 30]]);
  desk.put('S', 'A1', 3);
  expect(desk.live.calculate()).toEqual([]);
});

test('the last digits of a large number count once they were calculated; those of a file do not', () => {
  const desk = new Desk('S');
  desk.put('S', 'A1', 0);
  desk.live.set('S', [{ row: 1, column: 0, value: 1e15 + 2, formula: '=1E+15+A1' }]);
  expect(desk.live.calculate()).toEqual([]);
  desk.put('S', 'A1', 1);
  expect(desk.live.calculate().map(({ value }) => value)).toEqual([1e15 + 1]);
});

test('a circle is an error until it is broken', () => {
  const desk = new Desk('S');
  desk.put('S', 'A1', '=B1+1').put('S', 'B1', '=SUM(A1:A2)').put('S', 'C1', '=B1*2').put('S', 'D1', '=D1');
  desk.live.calculate();
  expect(['A1', 'B1', 'C1', 'D1'].map((a) => isError(desk.at('S', a)))).toEqual([true, true, true, true]);
  desk.put('S', 'A1', 4).put('S', 'D1', '=A1');
  desk.live.calculate();
  expect(['A1', 'B1', 'C1', 'D1'].map((a) => desk.at('S', a))).toEqual([4, 4, 8, 4]);
  desk.put('S', 'A2', '=B1');
  desk.live.calculate();
  expect(desk.at('S', 'C1')).toMatchObject({ error: '#REF!' });
});

test('a spilled answer grows, shrinks, is blocked and freed', () => {
  const desk = new Desk('S');
  desk
    .put('S', 'A1', 1)
    .put('S', 'A2', 2)
    .put('S', 'A3', 3)
    .put('S', 'C1', '=IF(D1=1,A1:A3,A1:A2)*2')
    .put('S', 'E1', '=SUM(C1:C9)')
    .put('S', 'F1', '=SUM(C1#)')
    .put('S', 'G1', '=C3');
  const row = (): Cell[] => ['C1', 'C2', 'C3', 'E1', 'F1', 'G1'].map((a) => desk.at('S', a));
  desk.live.calculate();
  expect(row()).toEqual([2, 4, null, 6, 6, 0]);
  desk.put('S', 'D1', 1);
  desk.live.calculate();
  expect(row()).toEqual([2, 4, 6, 12, 12, 6]);
  desk.put('S', 'C2', 'mine');
  desk.live.calculate();
  expect(row()[0]).toMatchObject({ error: '#SPILL!' });
  expect(row().slice(1, 3)).toEqual(['mine', null]);
  desk.put('S', 'C2', null);
  desk.live.calculate();
  expect(row()).toEqual([2, 4, 6, 12, 12, 6]);
  desk.put('S', 'D1', 0);
  desk.live.calculate();
  expect(row()).toEqual([2, 4, null, 6, 6, 0]);
  desk.put('S', 'C1', null);
  desk.live.calculate();
  expect(row()).toEqual([null, null, null, 0, { error: '#REF!' }, 0]);
});

test('names, tables and sheets may come later, change and go', () => {
  const desk = new Desk('S');
  desk.put('S', 'A1', '=rate*2').put('S', 'A2', '=SUM(Log[grams])').put('S', 'A3', "='My days'!B2+1");
  desk.live.calculate();
  expect(desk.at('S', 'A1')).toMatchObject({ error: '#NAME?' });
  expect(desk.at('S', 'A3')).toMatchObject({ error: '#REF!' });
  desk.live.setSheets([
    { id: 'S', name: 'S' },
    { id: 'T', name: 'My days' },
  ]);
  const cells: [string, Content][] = [
    ['A1', 'grams'],
    ['A2', 3],
    ['A3', 4],
    ['B2', 0.5],
  ];
  desk.live.set(
    'T',
    cells.map(([address, content]) => liveCell(address, content)),
  );
  desk.live.setNames([{ name: 'Rate', refersTo: "='My days'!$B$2" }]);
  desk.live.setTables([{ name: 'Log', sheet: 'T', area: { top: 0, left: 0, bottom: 2, right: 1 } }]);
  desk.live.calculate();
  expect(['A1', 'A2', 'A3'].map((a) => desk.at('S', a))).toEqual([1, 7, 1.5]);
  desk.live.set('T', [liveCell('A1', 'pieces')]);
  desk.live.setNames([{ name: 'rate', refersTo: '=0.25' }]);
  desk.live.calculate();
  expect(desk.at('S', 'A1')).toBe(0.5);
  expect(desk.at('S', 'A2')).toMatchObject({ error: '#REF!' });
  desk.live.setNames([]);
  desk.live.calculate();
  expect(desk.at('S', 'A1')).toMatchObject({ error: '#NAME?' });
  desk.live.setSheets([{ id: 'S', name: 'S' }]);
  desk.live.calculate();
  expect(desk.at('S', 'A3')).toMatchObject({ error: '#REF!' });
});

test('moved rows arrive as a whole sheet; only what differs is worked out', () => {
  const desk = new Desk('S');
  desk.put('S', 'A1', 1).put('S', 'A2', '=A1+1').put('S', 'A3', '=A2+1').put('S', 'B1', '=1+1');
  desk.live.calculate();
  // A row above the second: the engine has rewritten what the formulas point at.
  desk.live.replace('S', [
    liveCell('A1', 1),
    liveCell('A3', '=A1+1'),
    liveCell('A4', '=A3+1'),
    { ...liveCell('B1', '=1+1'), value: 2 },
  ]);
  expect(desk.live.calculate().map(({ row, column, value }) => [row, column, value])).toEqual([
    [2, 0, 2],
    [3, 0, 3],
  ]);
  expect(desk.at('S', 'A2')).toBeNull();
  // A formula written again as it was, without its value: whoever wrote it gets the value again.
  desk.live.set('S', [liveCell('B1', '=1+1')]);
  expect(desk.live.calculate().map(({ row, column, value }) => [row, column, value])).toEqual([[0, 1, 2]]);
  desk.live.tellAgain('S');
  expect(desk.live.calculate()).toHaveLength(3);
});

test('functions that are not known here are named, and the day is handed in', () => {
  const desk = new Desk('S');
  desk.put('S', 'A1', '=XIRR(B1:B3)').put('S', 'A2', '=LET(x,1,x)').put('S', 'A3', '=TODAY()+1');
  desk.live.setToday(46_000);
  desk.live.calculate();
  expect(desk.live.unknown()).toEqual(['XIRR', 'LET']);
  expect(desk.at('S', 'A3')).toBe(46_001);
  desk.live.setToday(46_005);
  desk.put('S', 'A1', null).put('S', 'A2', null);
  expect(desk.live.calculate().map(({ value }) => value)).toEqual([46_006]);
  expect(desk.live.unknown()).toEqual([]);
});

test('a whole column holds what is in it, also what comes later', () => {
  const desk = new Desk('S');
  desk.put('S', 'A1', 1).put('S', 'A2', 2).put('S', 'C1', '=SUM(A:A)').put('S', 'C2', '=COUNTA(A:A)');
  desk.live.calculate();
  desk.put('S', 'A5000', 4);
  desk.live.calculate();
  expect([desk.at('S', 'C1'), desk.at('S', 'C2')]).toEqual([7, 3]);
});

test('the witness of the formulas (LibreOffice) is answered the same cell by cell', () => {
  // tests/sheet/formula/witness.test.ts holds evaluate() to the witness; here every formula stands in a cell.
  const desk = new Desk('S');
  for (const [address, value] of Object.entries(CELLS)) desk.put('S', address, value === '' ? null : value);
  FORMULAS.forEach((formula, i) => desk.put('S', `H${i + 1}`, `=${formula}`));
  desk.live.calculate();
  const grids = (text: string) => {
    const cells = parseArea(text);
    if (!cells) return [[{ error: '#REF!' as const }]];
    return Array.from({ length: cells.bottom - cells.top + 1 }, (_, r) =>
      Array.from({ length: cells.right - cells.left + 1 }, (__, c) =>
        desk.at('S', addressOf(cells.top + r, cells.left + c)),
      ),
    );
  };
  const reference = (text: string): Operand => {
    const grid = grids(text);
    return !text.includes(':') ? (grid[0]?.[0] ?? null) : grid;
  };
  const differing = FORMULAS.flatMap((formula, i) => {
    const kept = desk.at('S', `H${i + 1}`);
    const answer = evaluate(`=${formula}`, { reference });
    const first = isGrid(answer) ? (answer[0]?.[0] ?? 0) : (answer ?? 0);
    return JSON.stringify(kept) === JSON.stringify(first) || (isError(kept) && kept.error === '#SPILL!')
      ? []
      : [[formula, kept, first]];
  });
  expect(differing).toEqual([]);
});
