import { readFileSync } from 'node:fs';
import { isUnreadable, readXlsx } from '../../shared/files';
import type { WorkbookModel } from '../../shared/sheet/workbook/model';
import { calculate } from '../../shared/catalogue/calculation';
import type { Session } from './support/localSheet';
import { ask, openLocalSheet, until } from './support/localSheet';

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
  await session.page.evaluate(async (text) => {
    await window.spawnbook?.openFile(
      Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0)),
      'season.xlsx',
    );
  }, readFileSync(FILE).toString('base64'));
});
afterAll(() => session?.close());

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

test('a formula typed, its error sentence, rows put in above it', async () => {
  const { page } = session;
  await ask(page, 'activate', 'Checks');
  await ask(page, 'setFormula', 'Checks!H60', '=SPAWN.BUFFER.DOSE(1000,4.6,2)');
  expect(await ask(page, 'getErrorText', 'Checks!H60')).toMatch(/target: expected a number from 3 to 12/);
  await ask(page, 'setValue', 'Checks!J60', 7);
  await ask(page, 'setFormula', 'Checks!H60', '=J60*2+SUM(J58:J60)');
  expect(await ask(page, 'getValue', 'Checks!H60')).toBe(21);
  await ask(page, 'setFormula', 'Checks!H61', '=H60+1');
  expect(await ask(page, 'getValue', 'Checks!H61')).toBe(22);
  await ask(page, 'insertRows', 'Checks!A58:A58');
  expect(await ask(page, 'getFormula', 'Checks!H62')).toBe('=H61+1');
  expect(await ask(page, 'getValue', 'Checks!H62')).toBe(22);
  await ask(page, 'setValue', 'Checks!J61', 8);
  expect(await ask(page, 'getValue', 'Checks!H62')).toBe(25);
});

test('a function only the engine knows: it takes the workbook over', async () => {
  const { page } = session;
  await ask(page, 'setFormula', 'Checks!J70', '=ROMAN(9)');
  await until(async () => (await ask(page, 'getValue', 'Checks!J70')) === 'IX');
  await ask(page, 'setValue', 'Checks!J61', 9);
  expect(await ask(page, 'getValue', 'Checks!H62')).toBe(28);
  expect(session.trouble).toEqual([]);
});
