import { CellValueType } from '@univerjs/core';
import { findFunction } from '../../../shared/catalogue';
import { Desk } from '../../../src/localsheet/calculating/desk';
import type { Changes } from '../../../src/localsheet/calculating/messages';
import { announcement } from '../../../src/localsheet/calculating/results';
import { VALUE_TYPE } from '../../../src/localsheet/files/grid';

const changes = (part: Partial<Changes>): Changes => ({
  task: 'calculate',
  book: 'book1',
  today: 46_000,
  cells: [],
  isAll: false,
  again: [],
  ...part,
});
const sheets = [{ id: 's1', name: 'Vats' }];
const area = (top: number, bottom: number) => ({ top, bottom, left: 0, right: 0 });

test('types of values are those of the engine', () => {
  expect(VALUE_TYPE).toEqual({
    string: CellValueType.STRING,
    number: CellValueType.NUMBER,
    boolean: CellValueType.BOOLEAN,
  });
});

test('the worker answers what changed, the rules that say something else, and what it does not know', () => {
  const desk = new Desk(findFunction);
  const cells = [
    { row: 0, column: 0, value: 3 },
    { row: 1, column: 0, value: 8 },
    { row: 0, column: 1, value: null, formula: '=A1*2' },
    { row: 1, column: 1, value: null, formula: '=SPAWN.BUFFER.DOSE(1000,A2,2)' },
  ];
  const first = desk.calculate(
    changes({
      sheets,
      cells: [{ sheet: 's1', isWhole: true, cells }],
      // Written for A1, asked for A1:A2: the lone A moves down, $A$1 stays.
      watches: [{ id: 'red', sheet: 's1', formula: '=A1>$A$1', areas: [area(0, 1)] }],
    }),
  );
  expect(first.answers.map(({ row, value }) => [row, value]).sort()).toEqual([
    [0, 6],
    [1, expect.objectContaining({ error: '#VALUE!', message: expect.any(String) as string })],
  ]);
  expect(first.watches).toEqual([
    {
      id: 'red',
      sheet: 's1',
      values: [
        [0, 0, false],
        [1, 0, true],
      ],
    },
  ]);
  const edit = desk.calculate(
    changes({ cells: [{ sheet: 's1', isWhole: false, cells: [{ row: 0, column: 0, value: 9 }] }] }),
  );
  expect(edit.answers.map(({ row, value }) => [row, value])).toEqual([[0, 18]]);
  expect(edit.watches.map(({ values }) => values)).toEqual([[[1, 0, false]]]);
  const stranger = desk.calculate(
    changes({
      cells: [
        { sheet: 's1', isWhole: false, cells: [{ row: 5, column: 0, value: null, formula: '=XIRR(A1:A2)' }] },
      ],
    }),
  );
  expect(stranger.unknown).toEqual(['XIRR']);
  // Another workbook begins empty.
  expect(desk.calculate(changes({ book: 'book2', sheets })).answers).toEqual([]);
});

test('answers are announced as the engine announces its own', () => {
  const data = announcement(
    'book1',
    [
      { sheet: 's1', row: 2, column: 1, value: true },
      { sheet: 's1', row: 3, column: 1, value: { error: '#N/A', message: 'Too little is known.' } },
      { sheet: 's1', row: 5, column: 1, value: 1, grid: [[1], ['x']], hadGrid: true },
    ],
    [{ id: 'red', sheet: 's1', values: [[1, 0, true]] }],
  );
  const values = data.unitData.book1?.s1;
  expect(values?.getValue(2, 1)).toEqual({ v: 1, t: CellValueType.BOOLEAN });
  expect(values?.getValue(3, 1)).toMatchObject({
    v: '#N/A',
    custom: { spawnbookError: { code: '#N/A', message: 'Too little is known.' } },
  });
  expect(data.arrayFormulaRange).toEqual({
    book1: { s1: { 5: { 1: { startRow: 5, startColumn: 1, endRow: 6, endColumn: 1 } } } },
  });
  expect(data.arrayFormulaCellData.book1?.s1?.getValue(6, 1)).toMatchObject({ v: 'x' });
  expect(data.unitOtherData).toEqual({
    book1: { s1: { red: { 1: { 0: [[{ v: 1, t: CellValueType.BOOLEAN }]] } } } },
  });
});
