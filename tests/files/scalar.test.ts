import { writeXlsx } from '../../shared/files';
import type { CellModel } from '../../shared/sheet/workbook/model';
import { bookOf, partsOf } from './support/support';

/** A formula that may work through several cells is stored as an array; one that cannot is stored plain. */

const stored = (formula: string): 'array' | 'plain' => {
  const cells: Record<string, CellModel> = { A2: { value: 1 }, A3: { value: 2 }, D1: { formula, value: 1 } };
  const model = {
    ...bookOf(cells),
    names: [
      { name: 'one', refersTo: 'Sheet!$A$2' },
      { name: 'many', refersTo: 'Sheet!$A$2:$A$3' },
    ],
  };
  const xml = partsOf(writeXlsx(model))['xl/worksheets/sheet1.xml'] ?? '';
  const cell = /<c r="D1"[^>]*>.*?<\/c>/.exec(xml)?.[0] ?? '';
  const isArray = cell.includes('t="array" ref="D1"');
  expect(cell.includes('cm="1"')).toBe(isArray);
  return isArray ? 'array' : 'plain';
};

test.each([
  '=SUM(A2:A3*2)',
  '=SUM(IF(A2:A3>1,A2:A3,0))',
  '=A2:A3',
  '=A2:A3+1',
  '=many*2',
  '=MAX(ABS(A2:A3))',
  '=LEN(A2:A3)',
  '=INDEX(A2:A3,0)',
  '=UNIQUE(A2:A3)',
  '=VLOOKUP(A2:A3,A2:B3,1,FALSE)',
  '=SUMIF(A2:A3,A2:A3,A2:A3)',
  '=LAMBDA(x,x+1)(2)',
  '=SUM({1,2}*2)',
  '=SUM(@A2:A3*2)',
  '=NO.SUCH(A2)',
])('%s is an array', (formula) => {
  expect(stored(formula)).toBe('array');
});

test.each([
  '=A2*2',
  '=SUM(A2:A3)*2',
  '=SUM(A2:A3,1)/COUNT(A2:A3)',
  '=IF(A2>1,SUM(A2:A3),"")',
  '=ROUND(one/7,2)',
  '=SUM(many)',
  '=INDEX(A2:A3,MATCH(1,A2:A3,0))',
  '=VLOOKUP(A2,A2:B3,1,FALSE)',
  '=SUMIF(A2:A3,">1",A2:A3)',
  '=SUMPRODUCT(A2:A3*A2:A3)',
  '="A2:A3"&A2',
  '=TODAY()-A2',
])('%s is plain', (formula) => {
  expect(stored(formula)).toBe('plain');
});
