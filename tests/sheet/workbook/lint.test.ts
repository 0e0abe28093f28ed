import { SheetBuilder } from '../../../shared/sheet/workbook/build';
import { customDepths, lintWorkbook } from '../../../shared/catalogue/calculation';
import type { ConditionalModel, SheetModel, WorkbookModel } from '../../../shared/sheet/workbook/model';

const builder = (name = 'S'): SheetBuilder => new SheetBuilder(name, { widths: [] });
const book = (...sheets: readonly SheetModel[]): WorkbookModel => ({ title: 'Test', sheets, names: [] });
const faultsOf = (formula: string): string[] =>
  lintWorkbook(book(builder().put('A1', 7).put('B1', formula).build()));

test('a sound workbook has no faults', () => {
  const sheet = builder()
    .row('A1', ['Fish', 'Share'], 'heading')
    .row('A2', [10, 0.5])
    .row('A3', [20, '=A3/40']);
  sheet.table({ name: 'fish', range: 'A1:B3' });
  sheet.chart({
    kind: 'line',
    title: 'Fish',
    categories: 'S!$A$2:$A$3',
    series: [{ name: 'share', values: 'S!$B$2:$B$3' }],
    from: 'D1',
    to: 'H9',
  });
  expect(
    lintWorkbook({ ...book(sheet.build()), names: [{ name: 'first_fish', refersTo: 'S!$A$2' }] }),
  ).toEqual([]);
});

test.each([
  ['=SPAWN.NO.SUCH(A1)', 'there is no function SPAWN.NO.SUCH'],
  ['=VERYODD(A1)', 'there is no function VERYODD'],
  ['=SPAWN.AMMONIA.SHARE(A1)', 'SPAWN.AMMONIA.SHARE takes 2 arguments, got 1'],
  ['=SPAWN.AMMONIA.SHARE(A1,25,3)', 'SPAWN.AMMONIA.SHARE takes 2 arguments, got 3'],
  ['=SPAWN.HORMONE.VOLUME()', 'SPAWN.HORMONE.VOLUME takes 1 to 2 arguments, got 0'],
  ['=SUM(A1', 'cannot be read: a closing bracket ) is missing'],
  ['=Elsewhere!A1', 'Elsewhere!A1 is not in this workbook'],
  ['=A1#', 'A1# does not spill'],
])('%s', (formula, fault) => {
  expect(faultsOf(formula)).toEqual([`S B1: ${fault}`]);
});

test('depth counts custom functions one behind the other, through cells, names and native arithmetic', () => {
  const sheet = builder()
    .put('A1', 7)
    .put('B1', '=SPAWN.AMMONIA.SHARE(A1,25)')
    .put('B2', '=B1*100')
    .put('B3', '=SPAWN.AMMONIA.SHARE(7+B2,25)')
    .put('B4', '=SPAWN.AMMONIA.SHARE(7,25)+SPAWN.AMMONIA.SHARE(8,25)')
    .put('B5', '=through+1')
    .put('B6', '=SPAWN.AMMONIA.SHARE(7+SPAWN.AMMONIA.SHARE(through,25),25)');
  const model = { ...book(sheet.build()), names: [{ name: 'through', refersTo: 'S!$B$3' }] };
  expect(Object.fromEntries(customDepths(model))).toEqual({
    'S!B1': 1,
    'S!B2': 1,
    'S!B3': 2,
    'S!B4': 1,
    'S!B5': 2,
    'S!B6': 4,
  });
  expect(lintWorkbook(model)).toEqual(['S!B6: 4 levels of custom functions, at most 2']);
});

test('no custom function in a colouring rule', () => {
  const rule = (formula: string): ConditionalModel => ({ range: 'A1:A3', formula, style: 'bad' });
  const [fault] = lintWorkbook(
    book(builder().put('A1', 7).when(rule('=SPAWN.AMMONIA.SHARE($A1,25)>0.1')).build()),
  );
  expect(fault).toContain('calls SPAWN.AMMONIA.SHARE; Excel never applies it');
  expect(lintWorkbook(book(builder().put('A1', 7).when(rule('=$B1>0.1')).build()))).toEqual([]);
});

test.each([
  ['a', []],
  ['x'.repeat(31), []],
  ['x'.repeat(32), ['1 to 31']],
  ['Feed/day', ['not allowed']],
  ["'quoted", ['not allowed']],
  ['History', ['keeps this name']],
])('sheet name %s', (name, expected) => {
  const faults = lintWorkbook(book(builder(name).put('A1', 1).build()));
  expect(faults).toHaveLength(expected.length);
  expected.forEach((part, i) => {
    expect(faults[i]).toContain(part);
  });
});

test('names and sheets do not clash, whatever their letter case', () => {
  const sheet = builder()
    .row('A1', ['Fish', 'Share'])
    .row('A2', [1, 2])
    .table({ name: 'Season', range: 'A1:B2' })
    .build();
  const model = {
    ...book(sheet, builder('s').put('A1', 1).build()),
    names: [{ name: 'season', refersTo: 'S!$A$1' }],
  };
  expect(lintWorkbook(model)).toEqual(['sheet "s" occurs twice', 'name "Season" occurs twice']);
});

test.each(['AB12', 'R1C1', 'R', '2fast', 'fish wanted', 'TRUE'])('%s cannot be a name', (name) => {
  expect(
    lintWorkbook({ ...book(builder().put('A1', 1).build()), names: [{ name, refersTo: 'S!$A$1' }] }),
  ).toHaveLength(1);
});

test('tables have headings in words, no spills and no merged cells', () => {
  const sheet = builder()
    .row('A1', ['Fish', 3])
    .row('A2', [1, { formula: '=SPAWN.HORMONE.VOLUME(A2:A3,1)', spill: [2, 1] }])
    .row('A3', [2])
    .merge('A4:B4', 'both')
    .table({ name: 'fish', range: 'A1:B4' })
    .build();
  expect(lintWorkbook(book(sheet))).toEqual([
    'S: every column of table fish needs a heading in words',
    'S B2: an answer may not spill in table fish',
    'S: merged cells A4:B4 in table fish',
  ]);
});

test('charts point at rows or columns that fit each other', () => {
  const chart = { kind: 'column', title: 'Fish', from: 'D1', to: 'H9' } as const;
  const sheet = builder()
    .put('A1', 1)
    .chart({ ...chart, categories: 'S!$A$1:$A$3', series: [{ name: 'a', values: 'S!$B$1:$B$4' }] })
    .chart({ ...chart, categories: 'S!$A$1:$B$3', series: [] })
    .build();
  expect(lintWorkbook(book(sheet))).toEqual([
    'S: chart "Fish": S!$B$1:$B$4 does not fit the categories',
    'S: chart "Fish": S!$A$1:$B$3 is not one row or column',
  ]);
});
