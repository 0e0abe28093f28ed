import { createExecutor, createOffice, installOffice } from '../../src/officeStandIn';
import type { Calculate, MemoryBook } from '../../src/officeStandIn/memoryBook';
import { createMemoryBook } from '../../src/officeStandIn/memoryBook';
import type { Cell } from '../../shared/base/values';
import { insertFormula } from '../../taskpane/host/writing/insert';
import { mend } from '../../taskpane/host/writing/mend';
import type { Insertion } from '../../taskpane/host/port';
import { goTo, readCell, readReference, readSelection } from '../../taskpane/host/reading/ranges';
import { scanCalls } from '../../taskpane/host/reading/scan';
import { reportOf } from '../../taskpane/screens/messages/state/messages';

const SHEET = '{sheet1}';
const at = (
  row: number,
  column: number,
  rows = 1,
  columns = 1,
): { row: number; column: number; rows: number; columns: number } => ({ row, column, rows, columns });
const quiet = (): void => undefined;

function open(calculate?: Calculate): MemoryBook {
  const book = createMemoryBook(calculate);
  installOffice(createOffice({ executor: createExecutor(book) }));
  return book;
}

async function put(book: MemoryBook, row: number, column: number, content: string | number): Promise<void> {
  const isFormula = typeof content === 'string' && content.startsWith('=');
  await book.write(SHEET, at(row, column), [[isFormula ? { formula: content } : { value: content }]]);
}
const formulaAt = async (book: MemoryBook, row: number, column: number): Promise<Cell> =>
  (await book.read(SHEET, at(row, column), 'formulas'))[0]?.[0] ?? null;

const DOSE = '=SPAWN.AMMONIA.SHARE(8,25)';
const insertion = (more: Partial<Insertion> = {}): Insertion => ({
  formula: DOSE,
  rows: 1,
  columns: 1,
  formats: ['0.0%'],
  hasHeadings: false,
  mayReplace: false,
  ...more,
});

test('the selected cell: its own formula, or the one whose answer fills it', async () => {
  const book = open(({ formulas, give }) => {
    for (const cell of formulas) give(cell, cell.formula === DOSE ? [[1], [2]] : 3);
  });
  await put(book, 1, 1, DOSE);
  await put(book, 0, 0, '=A9');
  const look = async (row: number, column: number) => {
    await book.select(SHEET, at(row, column));
    const { address, formula, value, spilledFrom } = await readCell();
    return [address, formula, value, spilledFrom];
  };
  expect(await look(1, 1)).toEqual(['B2', DOSE, 1, undefined]);
  expect(await look(2, 1)).toEqual(['B3', DOSE, 2, 'B2']);
  expect(await look(0, 0)).toEqual(['A1', '=A9', 3, undefined]);
  expect(await look(3, 1)).toEqual(['B4', '', null, undefined]);
});

describe('inserting a formula', () => {
  test('an empty cell takes it, with the number format of the quantity', async () => {
    const book = open();
    await book.select(SHEET, at(2, 1));
    expect(await insertFormula(insertion())).toEqual({ kind: 'inserted', address: 'B3' });
    expect(await formulaAt(book, 2, 1)).toBe(DOSE);
    expect(await book.read(SHEET, at(2, 1), 'formats')).toEqual([['0.0%']]);
  });

  test('a format the user chose stays', async () => {
    const book = open();
    await book.setNumberFormats(SHEET, at(0, 0), [['0.000']]);
    await insertFormula(insertion());
    expect(await book.read(SHEET, at(0, 0), 'formats')).toEqual([['0.000']]);
  });

  test('a cell of text format takes the formula as a formula', async () => {
    const book = open(({ formulas, give }) => {
      for (const cell of formulas) give(cell, 0.05);
    });
    await book.setNumberFormats(SHEET, at(0, 0), [['@']]);
    await insertFormula(insertion());
    expect((await readReference('A1')).values).toEqual([[0.05]]);
    await book.setNumberFormats(SHEET, at(1, 0), [['@']]);
    await book.select(SHEET, at(1, 0));
    await insertFormula(insertion({ formats: ['@'] }));
    expect(await book.read(SHEET, at(1, 0), 'formats')).toEqual([['General']]);
  });

  test('a cell that holds something is a question; agreeing replaces it', async () => {
    const book = open();
    await put(book, 0, 0, 'my pH');
    expect(await insertFormula(insertion())).toEqual({ kind: 'occupied', address: 'A1', content: '“my pH”' });
    expect(await formulaAt(book, 0, 0)).toBe('my pH');
    expect(await insertFormula(insertion({ mayReplace: true }))).toEqual({ kind: 'inserted', address: 'A1' });
    expect(await formulaAt(book, 0, 0)).toBe(DOSE);
  });

  test('next free cells: the first row below with room, its name left and its unit right of it', async () => {
    const book = open();
    await put(book, 2, 1, 'full');
    await put(book, 3, 1, 7);
    await book.select(SHEET, at(2, 1));
    expect(await insertFormula(insertion({ isBelow: true, name: 'Toxic share', unit: 'share' }))).toEqual({
      kind: 'inserted',
      address: 'B5',
    });
    expect(await book.read(SHEET, at(4, 0, 1, 3), 'values')).toEqual([['Toxic share', null, 'share']]);
    // What stands beside already stays.
    await put(book, 5, 0, 'mine');
    await insertFormula(insertion({ isBelow: true, name: 'Toxic share' }));
    expect(await book.read(SHEET, at(5, 0), 'values')).toEqual([['mine']]);
  });

  test('a zero counts as something', async () => {
    const book = open();
    await put(book, 0, 0, 0);
    expect((await insertFormula(insertion())).kind).toBe('occupied');
  });

  test('a locked cell of a protected sheet is refused with a sentence, an open one takes it', async () => {
    const book = open();
    await book.setFormat(SHEET, at(1, 0), { locked: false });
    await book.setProtection(SHEET, { isOn: true, options: {} });
    const refused = await insertFormula(insertion());
    expect(refused).toMatchObject({
      kind: 'refused',
      sentence: expect.stringMatching(/^A1 is locked because the sheet “Sheet1” is protected/) as string,
    });
    expect(await formulaAt(book, 0, 0)).toBeNull();
    await book.select(SHEET, at(1, 0));
    expect(await insertFormula(insertion())).toEqual({ kind: 'inserted', address: 'A2' });
  });

  test('an answer of several cells needs room, and says so before it is written', async () => {
    const book = open();
    await put(book, 1, 2, 'keep me');
    const outcome = await insertFormula(insertion({ rows: 3, columns: 3, formats: ['0', '0', '0'] }));
    expect(outcome).toMatchObject({
      kind: 'refused',
      sentence: expect.stringContaining('3 rows and 3 columns from A1') as string,
    });
    expect(await formulaAt(book, 0, 0)).toBeNull();
    expect(await formulaAt(book, 1, 2)).toBe('keep me');
  });

  test('headings keep their text format, the columns below get theirs', async () => {
    const book = open();
    await insertFormula(
      insertion({ rows: 2, columns: 2, formats: ['d mmm yyyy', '0.0'], hasHeadings: true }),
    );
    expect(await book.read(SHEET, at(0, 0, 2, 2), 'formats')).toEqual([
      ['General', 'General'],
      ['d mmm yyyy', '0.0'],
    ]);
  });

  test('references to the same sheet lose the sheet, others keep it, texts are left alone', async () => {
    const book = open();
    await book.addSheet('Night log');
    await insertFormula(insertion({ formula: `=SPAWN.X(Sheet1!B2:B4,'Night log'!A1,"Sheet1!B2")` }));
    expect(await formulaAt(book, 0, 0)).toBe(`=SPAWN.X(B2:B4,'Night log'!A1,"Sheet1!B2")`);
  });
});

describe('reading cells', () => {
  test('the selection comes with its values and a reference that works from any sheet', async () => {
    const book = open();
    await put(book, 0, 0, 24.5);
    await put(book, 1, 0, 'cold');
    await book.select(SHEET, at(0, 0, 3, 1));
    expect(await readSelection()).toEqual({
      reference: 'Sheet1!A1:A3',
      rows: 3,
      columns: 1,
      values: [[24.5], ['cold'], [null]],
    });
  });

  test('a sheet that is not there is named', async () => {
    open();
    await expect(readReference("'No such'!A1")).rejects.toThrow('There is no sheet called “No such”.');
  });

  test('a whole column is too much to show', async () => {
    open();
    await expect(readReference('A:A')).rejects.toThrow(/Select only the rows/);
  });

  test('going to a cell brings its sheet to the front', async () => {
    const book = open();
    const id = await book.addSheet('Second');
    await goTo('Second', 'C4');
    expect(await book.selection()).toEqual({ sheet: id, area: at(3, 2) });
    await expect(goTo('Gone', 'A1')).rejects.toThrow(/no sheet called “Gone”/);
  });
});

describe('looking through the workbook and mending', () => {
  /** A book whose formulas give what the test says, as after calculation. */
  const giving = (values: Readonly<Record<string, Cell>>): MemoryBook =>
    open(({ formulas, give }) => {
      for (const cell of formulas) give(cell, values[cell.formula] ?? 1);
    });

  test('finds our formulas wherever they are, and what their references hold', async () => {
    const book = giving({ '=SPAWN.AMMONIA.SHARE(A1,B1)': { error: '#VALUE!' } });
    await put(book, 0, 0, 8);
    await put(book, 0, 1, 82);
    await put(book, 4, 3, '=SPAWN.AMMONIA.SHARE(A1,B1)');
    await put(book, 5, 3, '=SUM(A1:B1)');
    const scan = await scanCalls(quiet);
    expect(scan.calls).toEqual([
      { sheet: 'Sheet1', address: 'D5', formula: '=SPAWN.AMMONIA.SHARE(A1,B1)', value: { error: '#VALUE!' } },
    ]);
    expect(scan.lookUp('A1:B1', 'Sheet1')).toEqual([[8, 82]]);
    const [trouble] = reportOf(scan, []).troubles;
    expect(trouble).toMatchObject({
      address: 'D5',
      code: '#VALUE!',
      sentence: expect.stringContaining('°F') as string,
    });
  });

  test('reads a big sheet in slices without losing a row', async () => {
    const book = giving({});
    await book.write(
      SHEET,
      at(0, 0, 70_000, 1),
      Array.from({ length: 70_000 }, (_, i) => [{ value: i }]),
    );
    await put(book, 69_999, 0, '=SPAWN.AMMONIA.SHARE(8,25)');
    const told: number[] = [];
    const scan = await scanCalls(({ done }) => told.push(done));
    expect(scan.calls.map((call) => call.address)).toEqual(['A70000']);
    expect(scan.lookUp('A65000:A65001', 'Sheet1')).toEqual([[64_999], [65_000]]);
    expect(told.length).toBeGreaterThan(1);
  });

  test(
    're-enters formulas that were typed too early, and mends storage and foreign-file ' + 'spellings',
    async () => {
      const spellings = [
        '=SPAWN.AMMONIA.SHARE(8,25)',
        '=_xldudf_SPAWN_AMMONIA_SHARE(8,25)',
        '=[2]!_xldudf_SPAWN_AMMONIA_SHARE(8,25)',
        "='OLD.XLAM'!_xldudf_SPAWN_AMMONIA_SHARE(8,25)*2",
      ];
      const book = giving(Object.fromEntries(spellings.map((formula) => [formula, { error: '#NAME?' }])));
      for (const [row, formula] of spellings.entries()) await put(book, row, 0, formula);
      const report = reportOf(await scanCalls(quiet), []);
      expect(report.repairs.map((one) => one.address)).toEqual(['A1', 'A2', 'A3', 'A4']);
      expect(await mend(report.repairs, quiet)).toEqual({ mended: 4, left: [] });
      expect((await book.read(SHEET, at(0, 0, 4, 1), 'formulas')).flat()).toEqual([
        '=SPAWN.AMMONIA.SHARE(8,25)',
        '=SPAWN.AMMONIA.SHARE(8,25)',
        '=SPAWN.AMMONIA.SHARE(8,25)',
        '=SPAWN.AMMONIA.SHARE(8,25)*2',
      ]);
    },
  );

  test('a locked cell on a protected sheet stays and is reported, an open one is mended', async () => {
    const formula = '=_xldudf_SPAWN_AMMONIA_SHARE(8,25)';
    const book = giving({ [formula]: { error: '#NAME?' } });
    await put(book, 0, 0, formula);
    await put(book, 1, 0, formula);
    await book.setFormat(SHEET, at(1, 0), { locked: false });
    await book.setProtection(SHEET, { isOn: true, options: {} });
    const report = await mend(reportOf(await scanCalls(quiet), []).repairs, quiet);
    expect(report.mended).toBe(1);
    expect(report.left).toEqual([
      { sheet: 'Sheet1', address: 'A1', sentence: expect.stringContaining('protected') as string },
    ]);
    expect(await formulaAt(book, 0, 0)).toBe(formula);
    expect(await formulaAt(book, 1, 0)).toBe('=SPAWN.AMMONIA.SHARE(8,25)');
  });

  test('a formula kept as a text is entered as a formula', async () => {
    const book = giving({ '=SPAWN.AMMONIA.SHARE(8,25)': 0.05 });
    await book.setNumberFormats(SHEET, at(0, 0), [['@']]);
    await book.write(SHEET, at(0, 0), [[{ value: '=SPAWN.AMMONIA.SHARE(8,25)' }]]);
    const report = reportOf(await scanCalls(quiet), []);
    expect(report.troubles.map((one) => one.code)).toEqual(['text']);
    await mend(report.repairs, quiet);
    expect((await readReference('A1')).values).toEqual([[0.05]]);
  });

  test('a cell changed since the reading is left alone', async () => {
    const formula = '=_xldudf_SPAWN_AMMONIA_SHARE(8,25)';
    const book = giving({ [formula]: { error: '#NAME?' } });
    await put(book, 0, 0, formula);
    const { repairs } = reportOf(await scanCalls(quiet), []);
    await put(book, 0, 0, 'typed meanwhile');
    const report = await mend(repairs, quiet);
    expect(report.left[0]?.sentence).toContain('changed meanwhile');
    expect(await formulaAt(book, 0, 0)).toBe('typed meanwhile');
  });

  test('cells filled by a spilling formula are not written to', async () => {
    const formula = '=_xldudf_SPAWN_FEED_TABLE(1)';
    const book = open(({ formulas, give }) => {
      for (const cell of formulas)
        give(cell, [
          [1, 2],
          [3, 4],
        ]);
    });
    await put(book, 0, 0, formula);
    const cells = ['A1', 'B1', 'A2', 'B2'].map((address) => ({
      sheet: 'Sheet1',
      address,
      was: formula,
      formula: '=SPAWN.FEED.TABLE(1)',
      showsValue: true,
    }));
    await mend(cells, quiet);
    expect((await book.read(SHEET, at(0, 0, 2, 2), 'formulas')).flat()).toEqual([
      '=SPAWN.FEED.TABLE(1)',
      2,
      3,
      4,
    ]);
  });
});

test('fifty thousand cells are read, one more is too many', async () => {
  open();
  expect((await readReference('A1:A50000')).rows).toBe(50_000);
  await expect(readReference('A1:A50001')).rejects.toThrow(
    /That is 50.001 cells; the pane reads up to 50.000/,
  );
});
