import { findFunction } from '../../../shared/catalogue';
import { keepBlanks } from '../../../shared/sheet/workbook/blanks';
import type { CellModel, SheetModel } from '../../../shared/sheet/workbook/model';

/** Which cells may be blank one day, and what they are handed over as. */
const CALL = '=SPAWN.AMMONIA.SHARE(8,A1)';
const WRAPPED = '=SPAWN.AMMONIA.SHARE(8,IF(A1="","",A1))';
function handed(
  cells: Record<string, CellModel>,
  formula = CALL,
  more: Partial<SheetModel> = {},
): string | undefined {
  const sheet = { name: 'One', widths: [], cells: { ...cells, H1: { formula } }, ...more } as SheetModel;
  const { sheets } = keepBlanks(findFunction, { title: 'T', names: [], sheets: [sheet] });
  return sheets[0]?.cells['H1']?.formula;
}
const PROTECTED = { isProtected: true };

test.each<readonly [string, CellModel | undefined, Partial<SheetModel>, boolean]>([
  ['no cell at all', undefined, PROTECTED, true],
  ['an empty cell', {}, PROTECTED, true],
  ['an empty text', { value: '' }, PROTECTED, true],
  ['a number nobody may change', { value: 25 }, PROTECTED, false],
  ['a number anybody may change', { value: 25 }, {}, true],
  ['a number that stands open for typing', { value: 25, style: 'input' }, PROTECTED, true],
  ['a number in another style', { value: 25, style: 'cell' }, PROTECTED, false],
  ['a formula', { formula: '=5*5' }, {}, false],
])('%s', (_, cell, more, isWrapped) => {
  expect(handed(cell ? { A1: cell } : {}, CALL, more)).toBe(isWrapped ? WRAPPED : CALL);
});

test('a range may be blank where one of its cells may', () => {
  const call = '=SPAWN.AMMONIA.SHARE(8,A1:A2)';
  const wrapped = '=SPAWN.AMMONIA.SHARE(8,IF(A1:A2="","",A1:A2))';
  expect(handed({ A1: { value: 1 }, A2: { value: 2 } }, call, PROTECTED)).toBe(call);
  expect(handed({ A1: { value: 1 } }, call, PROTECTED)).toBe(wrapped);
  expect(handed({ A2: { value: 1 } }, call, PROTECTED)).toBe(wrapped);
  expect(handed({ A1: { formula: '=SEQUENCE(2)', spill: [2, 1] } }, call, PROTECTED)).toBe(call);
  expect(handed({ A1: { formula: '=SEQUENCE(2)', spill: [1, 2] } }, call, PROTECTED)).toBe(wrapped);
});
test('only what is an argument of ours by itself', () => {
  for (const formula of ['=SPAWN.AMMONIA.SHARE(8,A1+1)', '=SUM(A1)', '=SPAWN.AMMONIA.SHARE(8,MAX(A1))'])
    expect(handed({}, formula)).toBe(formula);
  expect(handed({}, '=ROUND(SPAWN.AMMONIA.SHARE(8, A1 ),2)')).toBe(
    '=ROUND(SPAWN.AMMONIA.SHARE(8, IF(A1="","",A1) ),2)',
  );
});
