import { readOrderBook } from '../../../shared/season/book/orderBook';
import type { CellModel, SheetModel } from '../../../shared/sheet/workbook/model';
import type { CellMark } from '../../../taskpane/host/port';
import { inputOfForm } from '../../../taskpane/screens/season/state/form';
import { exampleForm } from '../../../taskpane/screens/season/state/season';
import { readTables, TABLES_SHEET, tablesSheet } from '../../../taskpane/screens/season/state/tables';
import { gridOf } from '../../season/support/support';
import { fakeWorld } from '../support/fakePort';
import { openPage } from '../support/page';
import { TODAY } from '../support/seasonModel';

/**
 * Orders, vats and fish on a sheet: what judges them is the order book, read once from the form and once from
 * the sheet made of it.
 */

const form = exampleForm(TODAY);
const sheet = tablesSheet(form);
const bookOf = (of: typeof form) => readOrderBook(inputOfForm(of));
const withCells = (cells: Readonly<Record<string, CellModel>>): SheetModel => ({
  ...sheet,
  cells: { ...sheet.cells, ...cells },
});
const addressOfTitle = (title: string, line: number): string => {
  const [head = ''] = Object.entries(sheet.cells).find(([, { value }]) => value === title) ?? [];
  return head.replace(/\d+$/, (row) => String(Number(row) + line));
};

test('written and read again, the tables are the same order book', () => {
  const read = readTables(gridOf(sheet), {
    ...form,
    orders: [],
    lists: { vats: '', females: '', males: '' },
  });
  expect(bookOf(read?.form ?? form)).toEqual(bookOf(form));
  expect(read?.counts).toEqual({ orders: 4, vats: 6, females: 12, males: 10 });
});

test('product, what a vat holds and yes or no are chosen from lists; days and numbers are checked', () => {
  const lists = (sheet.validations ?? []).flatMap((one) =>
    one.kind === 'list' ? [one.items.join('|')] : [],
  );
  expect(lists).toEqual(['fry|fingerlings', 'yes|no', 'yes|no', expect.stringMatching(/^all\|eggs/)]);
  expect((sheet.validations ?? []).filter(({ kind }) => kind === 'date').length).toBe(7);
});

test('rows pasted with gaps, days as the sheet keeps them and a semicolon in a name are read', () => {
  const grid = gridOf(
    withCells({
      [addressOfTitle('Order', 9)]: { value: 'Late; but good' },
      [addressOfTitle('Product', 9)]: { value: 'Fingerlings' },
      [addressOfTitle('Fish', 9)]: { value: 1234 },
      [addressOfTitle('Due', 9)]: { value: TODAY + 90 },
    }),
  );
  const read = readTables(grid, form);
  expect(read?.form.orders.at(-1)?.texts).toMatchObject({ name: 'Late; but good', number: '1234' });
  const book = bookOf(read?.form ?? form);
  expect('book' in book && book.book.orders.at(-1)).toMatchObject({
    product: 'fingerlings',
    due: TODAY + 90,
  });
});

test('headings that are gone are no tables', () => {
  expect(
    readTables(gridOf(withCells({ [addressOfTitle('Male', 0)]: { value: 'Bull' } })), form),
  ).toBeUndefined();
});

/** A workbook with the sheet in it. */
function sheetWorld(cells: Readonly<Record<string, CellModel>> = {}) {
  const world = fakeWorld();
  const marked: CellMark[] = [];
  let made: SheetModel | undefined;
  let isMade = Object.keys(cells).length > 0;
  Object.assign(world.doors.workbook, {
    listSheets: async () => (isMade ? [TABLES_SHEET] : []),
    writeWorkbook: async ({ sheets }: { sheets: readonly SheetModel[] }) => {
      [made] = sheets;
      isMade = true;
      return { kind: 'written', sheets: [TABLES_SHEET] };
    },
    readCells: async (wanted: unknown) => ({ sheets: [gridOf(made ?? withCells(cells))], again: wanted }),
    mark: async (marks: readonly CellMark[]) => {
      marked.push(...marks);
      return { marked: marks.map((mark) => ({ ...mark, was: '#FFFFFF' })), left: [] };
    },
    unmark: async () => ({ restored: marked.splice(0).length, changed: 0, stuck: [], left: [] }),
  });
  return Object.assign(world, { marked });
}

test('one press makes the sheet, a second leaves it alone; read, the form has what stands there', async () => {
  const world = sheetWorld();
  const page = openPage('ready', world, 'plan');
  page.one('#mode-season').click();
  await page.press('Fill in an example');
  await page.press('As tables on a sheet');
  expect(page.text()).toContain(`“${TABLES_SHEET}” is made`);
  await page.press('As tables on a sheet');
  expect(page.text()).toContain('is there already');
  await page.press('Read the tables');
  expect(page.text()).toContain('Read: 4 orders, 6 vats, 12 females, 10 males. Now work the plan out.');
  expect(bookOf(page.store.state().season.form)).toEqual(bookOf(form));
});

test('a wrong cell of each table is marked with its sentence, and the first is gone to; mended, the marks go', async () => {
  const wrong: Record<string, CellModel> = {
    [addressOfTitle('Fish', 1)]: { value: 'many' },
    [addressOfTitle('Water, L', 2)]: { value: 5 },
    [addressOfTitle('Weight, kg', 1)]: { value: 150 },
    [addressOfTitle('Male', 2)]: { value: sheet.cells[addressOfTitle('Male', 1)]?.value ?? '' },
  };
  const world = sheetWorld(wrong);
  const page = openPage('ready', world, 'plan');
  page.one('#mode-season').click();
  await page.press('Fill in an example');
  await page.press('Read the tables');
  expect(world.marked.map(({ address }) => address).sort()).toEqual(Object.keys(wrong).sort());
  for (const { note } of world.marked) expect(note).toMatch(/^Spawnbook: .+\.$/);
  expect(page.text()).toContain('4 cells cannot be used and are marked.');
  expect(page.store.state().season.marks).toHaveLength(4);
  Object.assign(world.doors.workbook, {
    readCells: async (wanted: unknown) => ({ sheets: [gridOf(sheet)], again: wanted }),
  });
  await page.press('Read the tables');
  expect(world.marked).toEqual([]);
  expect(page.store.state().season.marks).toEqual([]);
});
