import { SheetBuilder } from '../../../shared/sheet/workbook/build';
import { calculate } from '../../../shared/catalogue/calculation';
import type { SheetModel, WorkbookModel } from '../../../shared/sheet/workbook/model';

const book = (...sheets: readonly SheetModel[]): WorkbookModel => ({ title: 'Test', sheets, names: [] });
const sheet = (name: string, cells: Readonly<Record<string, string | number>>): SheetModel => {
  const builder = new SheetBuilder(name, { widths: [] });
  for (const [address, content] of Object.entries(cells)) builder.put(address, content);
  return builder.build();
};
const valuesOf = (model: WorkbookModel, name: string): Record<string, unknown> =>
  Object.fromEntries(
    Object.entries(model.sheets.find((s) => s.name === name)?.cells ?? {}).map(([address, cell]) => [
      address,
      cell.value,
    ]),
  );

test('a formula is calculated after the ones it needs, wherever they stand', () => {
  const { model, faults } = calculate(
    book(sheet('One', { A1: '=A2+Two!B1', A2: '=A3*2', A3: 5 }), sheet('Two', { B1: '=One!A2/10' })),
  );
  expect(faults).toEqual([]);
  expect(valuesOf(model, 'One')).toEqual({ A1: 11, A2: 10, A3: 5 });
});

test('a range waits for all of its formulas: down, across and in a block', () => {
  const { model, faults } = calculate(
    book(
      sheet('One', {
        A1: '=SUM(A2:A4)',
        B1: '=SUM(B2:D2)',
        C1: '=SUM(A3:B4)',
        A3: '=A5*2',
        A4: '=A3+1',
        A5: 5,
        B2: 1,
        C2: '=D2+1',
        D2: '=A5',
        B4: '=A4*10',
      }),
    ),
  );
  expect(faults).toEqual([]);
  expect(valuesOf(model, 'One')).toMatchObject({ A1: 21, B1: 12, C1: 131 });
});

test('what is not in the workbook is named, each by its kind', () => {
  const { model, faults } = calculate(book(sheet('One', { A1: '=nowhere+1', A2: '=Gone!B2+1', A3: '=A1' })));
  expect(valuesOf(model, 'One')).toMatchObject({
    A1: { error: '#NAME?' },
    A2: { error: '#REF!' },
    A3: { error: '#NAME?' },
  });
  expect(faults).toEqual([
    expect.stringContaining('there is no name nowhere'),
    expect.stringContaining('Gone!B2 is not in this workbook'),
  ]);
});

test('a long chain does not exhaust the stack', () => {
  const cells: Record<string, string | number> = { A20000: 1 };
  for (let row = 1; row < 20_000; row++) cells[`A${row}`] = `=A${row + 1}+1`;
  expect(valuesOf(calculate(book(sheet('Long', cells))).model, 'Long')['A1']).toBe(20_000);
});

test('names, sheets with spaces, ranges and blank cells are resolved', () => {
  const model: WorkbookModel = {
    ...book(
      sheet('Our water', {
        A1: 2,
        A3: 4,
        B1: '=SUM(A1:A3)',
        B2: '=COUNT(A1:A3)',
        B3: '=IF(ISBLANK(nothing),"blank",nothing)',
        B4: '=twice*10',
      }),
    ),
    names: [
      { name: 'nothing', refersTo: "'Our water'!$A$2" },
      { name: 'twice', refersTo: "'Our water'!$A$1" },
    ],
  };
  expect(valuesOf(calculate(model).model, 'Our water')).toMatchObject({ B1: 6, B2: 2, B3: 'blank', B4: 20 });
});

test('a spilled answer fills the cells it covers and # reads them all', () => {
  const builder = new SheetBuilder('S', { widths: [] });
  builder
    .put('A1', 1)
    .put('A2', 2)
    .put('A3', 3)
    .put('B1', { formula: '=SPAWN.HORMONE.VOLUME(A1:A3,0.5)', spill: [3, 1] })
    .put('C1', '=SUM(B1#)')
    .put('C2', '=B3*2');
  const { model, faults } = calculate(book(builder.build()));
  expect(faults).toEqual([]);
  expect(valuesOf(model, 'S')).toMatchObject({ B1: 0.5, B2: 1, B3: 1.5, C1: 3, C2: 3 });
});

test('an answer of another size than the model says is a fault', () => {
  const builder = new SheetBuilder('S', { widths: [] });
  builder
    .put('A1', 1)
    .put('A2', 2)
    .put('B1', { formula: '=SPAWN.HORMONE.VOLUME(A1:A2,0.5)', spill: [3, 1] });
  expect(calculate(book(builder.build())).faults).toEqual(['S B1 gives 2 × 1 cells, the model says 3 × 1']);
});

test('a circle is named, and the rest is still calculated', () => {
  const { model, faults } = calculate(book(sheet('S', { A1: '=B1+1', B1: '=A1+1', C1: '=1+1' })));
  expect(faults).toEqual(['S A1 needs S B1 needs S A1: a circle']);
  expect(valuesOf(model, 'S')).toMatchObject({ A1: { error: '#REF!' }, C1: 2 });
});

test('a reference to nowhere and a name nobody defined are faults', () => {
  const { faults } = calculate(book(sheet('S', { A1: '=Gone!B2', A2: '=missing_name' })));
  expect(faults).toEqual(['S A1: Gone!B2 is not in this workbook', 'S A2: there is no name missing_name']);
});

test('an error of a function keeps its sentence in the value', () => {
  const { model } = calculate(book(sheet('S', { A1: '=SPAWN.AMMONIA.SHARE(7,82)' })));
  expect(valuesOf(model, 'S')['A1']).toMatchObject({
    error: '#VALUE!',
    message: expect.stringContaining('°F'),
  });
});
