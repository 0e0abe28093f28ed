import { readFileSync } from 'node:fs';
import { isUnreadable, readXlsx, writeXlsx } from '../../../shared/files';
import type { CellModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { calculate } from '../../../shared/catalogue/calculation';
import type { Session } from '../../browser/support/localSheet';
import { ask, openLocalSheet, typeInto, until } from '../../browser/support/localSheet';

/**
 * A workbook of more formulas than the page calculates itself: its values come from the worker. What they have
 * to be is calculated here, whole.
 */
const FILE = 'templates/season-commercial.xlsx';
/** Cells of a sheet that is shown, read to judge the whole. */
const READ = 'Batches!A1:Z60';

let session: Session;
let model: WorkbookModel;

beforeAll(async () => {
  const found = readXlsx(readFileSync(FILE));
  if (isUnreadable(found)) throw new Error(found.fault);
  ({ model } = found);
  session = await openLocalSheet();
  await openBytes(readFileSync(FILE));
});
afterAll(() => session?.close());

const openBytes = (bytes: Uint8Array): Promise<void> =>
  session.page.evaluate(async (text) => {
    await window.spawnbook?.openFile(
      Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0)),
      'book.xlsx',
    );
  }, Buffer.from(bytes).toString('base64'));

const day = (): number => {
  const now = new Date();
  return Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / 86_400_000 + 25_569;
};

/** Values of Batches as calculated whole, after one cell of it was changed. */
function whole(address: string, value: number): Map<string, unknown> {
  const changed: WorkbookModel = {
    ...model,
    sheets: model.sheets.map((sheet) =>
      sheet.name === 'Batches'
        ? { ...sheet, cells: { ...sheet.cells, [address]: { ...sheet.cells[address], value } } }
        : sheet,
    ),
  };
  const cells = calculate(changed, day()).model.sheets.find(({ name }) => name === 'Batches')?.cells ?? {};
  return new Map(Object.entries(cells).map(([at, cell]) => [at, cell.value]));
}

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
async function shown(): Promise<Map<string, unknown>> {
  const rows = await ask(session.page, 'getValues', READ);
  return new Map(rows.flatMap((row, r) => row.map((value, c) => [`${letters[c] ?? ''}${r + 1}`, value])));
}

test('an edit gives, all over the sheet, what calculating the whole workbook gives', async () => {
  const before = await shown();
  const input = [...before].find(
    ([at, value]) =>
      typeof value === 'number' &&
      value > 1000 &&
      model.sheets.find(({ name }) => name === 'Batches')?.cells[at]?.formula === undefined,
  );
  if (!input) throw new Error('no input');
  const [address, value] = input;
  const next = Number(value) + 2;
  await ask(session.page, 'setValue', `Batches!${address}`, next);
  const expected = whole(address, next);
  const now = await shown();
  const differing = [...now].filter(([at, is]) => {
    const should = expected.get(at) ?? null;
    return typeof is === 'number' && typeof should === 'number'
      ? Math.abs(is - should) > 1e-9 * Math.max(1, Math.abs(should))
      : typeof should === 'object' && should !== null
        ? typeof is !== 'object'
        : is !== should && !(is === null && should === '');
  });
  expect(differing).toEqual([]);
  expect(
    [...now].filter(([at, is]) => JSON.stringify(is) !== JSON.stringify(before.get(at))).length,
  ).toBeGreaterThan(3);
});

const ROWS = 2_400;
/** A plain book above the limit: every row reads D1, the sum reads every row. */
function plainBook(): Uint8Array {
  const cells: Record<string, CellModel> = { D1: { value: 2 }, E1: { formula: `=SUM(B1:B${ROWS})` } };
  for (let row = 1; row <= ROWS; row++) {
    cells[`A${row}`] = { value: row };
    cells[`B${row}`] = { formula: `=A${row}*$D$1` };
  }
  return writeXlsx({ title: 'Plain', names: [], sheets: [{ name: 'Log', widths: [], cells }] });
}
const SUM = (ROWS * (ROWS + 1)) / 2;

test('typed: results, an error with its sentence, one undo, rows put in', async () => {
  const { page } = session;
  await openBytes(plainBook());
  // Stored without values: all of them come from the worker.
  expect(await ask(page, 'getValue', 'E1')).toBe(2 * SUM);
  await typeInto(page, 'D1', '3');
  expect(await ask(page, 'getValue', 'E1')).toBe(3 * SUM);
  await page.keyboard.press('Control+z');
  await until(async () => (await ask(page, 'getValue', 'E1')) === 2 * SUM);
  await typeInto(page, 'G1', '=SPAWN.BUFFER.DOSE(1000,4.6,D1)');
  expect(await ask(page, 'getErrorText', 'G1')).toMatch(/target: expected a number from 3 to 12/);
  await ask(page, 'insertRows', 'A2:A3');
  expect(await ask(page, 'getFormula', 'B5')).toBe('=A5*$D$1');
  await ask(page, 'setValue', 'A2', 1000);
  await ask(page, 'setFormula', 'B2', '=A2*$D$1');
  expect(await ask(page, 'getValue', 'E1')).toBe(2 * SUM + 2000);
  expect(await ask(page, 'getValue', `B${ROWS + 2}`)).toBe(2 * ROWS);
});

test('a function only the engine knows: it takes the workbook over', async () => {
  const { page } = session;
  await ask(page, 'setFormula', 'G2', '=ROMAN(9)');
  await until(async () => (await ask(page, 'getValue', 'G2')) === 'IX');
  await ask(page, 'setValue', 'A2', 2000);
  expect(await ask(page, 'getValue', 'E1')).toBe(2 * SUM + 4000);
  expect(session.trouble).toEqual([]);
});
