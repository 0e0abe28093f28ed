import { addressOf, parseArea } from '../../../shared/sheet/formula/address';
import { readOrderBook } from '../../../shared/season/book/orderBook';
import { asOf, bookSheetNames, booksIn, readBook } from '../../../shared/books/living';
import type { CellModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { readXlsx, writeXlsx } from '../../../shared/files';
import { createExecutor, createOffice, installOffice } from '../../../src/officeStandIn';
import type { MemoryBook } from '../../../src/officeStandIn/memoryBook';
import { createMemoryBook } from '../../../src/officeStandIn/memoryBook';
import { officePort } from '../../../taskpane/host/office';
import { BACKYARD, seasonTemplate } from '../../../templates/season.template';
import { onItsDay } from '../../support/day';
import { calculating } from '../../office/calculating';

/**
 * One season, rendered into the open workbook and into a file: cell by cell what the model says. The local
 * sheet is compared in tests/browser.
 */
jest.setTimeout(180_000);
const model = onItsDay(seasonTemplate(BACKYARD));
const quiet = (): void => undefined;
/** The same season with a bigger first order and one more. */
const BACKYARD_LATER = [
  { name: 'Neighbours', product: 'fry', number: 23_000, due: '2027-03-20', price: 0.04 },
  { name: 'School pond', product: 'fry', number: 18_000, due: '2027-04-24', price: 0.04 },
  { name: 'Market cages', product: 'fingerlings', number: 9000, due: '2027-07-03', price: 0.12 },
  { name: 'New pond', product: 'fry', number: 2000, due: '2027-04-24', price: 0.04 },
];

const open = (): MemoryBook => {
  const book = createMemoryBook(calculating);
  installOffice(createOffice({ executor: createExecutor(book) }));
  return book;
};
const values = async (book: MemoryBook, name: string): Promise<Map<string, unknown>> => {
  const id = (await book.sheets()).find((sheet) => sheet.name === name)?.id ?? '';
  const area = await book.usedArea(id, false);
  if (!area) return new Map();
  const rows = await book.read(id, area, 'values');
  return new Map(
    rows.flatMap((row, r) =>
      row.map((value, c) => [addressOf(area.row + r, area.column + c), value] as const),
    ),
  );
};
const isSame = (got: unknown, { value = '' }: CellModel): boolean =>
  typeof value === 'number'
    ? typeof got === 'number' && Math.abs(got - value) <= 1e-9 * Math.max(1, Math.abs(value))
    : (got ?? '') === value;

function differences(
  sheets: WorkbookModel['sheets'],
  got: (sheet: string, address: string) => unknown,
): { readonly compared: number; readonly wrong: unknown[] } {
  const wrong: unknown[] = [];
  let compared = 0;
  for (const sheet of sheets)
    for (const [address, cell] of Object.entries(sheet.cells)) {
      compared++;
      const found = got(sheet.name, address);
      if (!isSame(found, cell)) wrong.push([sheet.name, address, cell.formula, found, cell.value]);
    }
  return { compared, wrong };
}

test(
  'written into the open workbook, with and without a word behind its names, every ' +
    'cell shows what the model says',
  async () => {
    const book = open();
    expect(await officePort.writeWorkbook(model, '', quiet)).toMatchObject({ kind: 'written' });
    expect(await officePort.writeWorkbook(model, '', quiet)).toMatchObject({ kind: 'taken', free: ' 2' });
    expect(await officePort.writeWorkbook(model, ' 2', quiet)).toMatchObject({ kind: 'written' });
    for (const suffix of ['', ' 2']) {
      const found = new Map(
        await Promise.all(
          model.sheets.map(async ({ name }) => [name, await values(book, `${name}${suffix}`)] as const),
        ),
      );
      const { compared, wrong } = differences(model.sheets, (sheet, address) =>
        found.get(sheet)?.get(address),
      );
      expect([suffix, wrong.slice(0, 5)]).toEqual([suffix, []]);
      expect(compared).toBeGreaterThan(3000);
    }
    const names = (await book.sheets()).map(({ name }) => name);
    expect(booksIn(names)).toEqual(['', ' 2']);
    const sheets = await Promise.all(
      bookSheetNames(' 2').map(
        async (sheet) => (await officePort.readCells({ sheet }, quiet, () => false))?.sheets[0],
      ),
    );
    const reading = readBook(
      sheets.filter((sheet) => sheet !== undefined),
      ' 2',
    );
    expect(reading.kind).toBe('read');
    const again = readOrderBook(reading.kind === 'read' ? asOf(reading, 46_419) : {});
    const first = readOrderBook(BACKYARD);
    if (!('book' in again) || !('book' in first)) throw new Error(JSON.stringify(again));
    // The batches that were planned are remembered by name and night, so that no name is given twice.
    const { earlier } = again.book;
    expect(earlier.map(({ name }) => name)).toEqual(['B1', 'B2', 'B3']);
    expect(again.book).toEqual({ ...first.book, plannedOn: 46_419, earlier });
  },
);

/** What stands on every sheet: values, formulas, formats, merges, tables, charts, rules. */
async function everythingIn(book: MemoryBook): Promise<unknown> {
  const sheets = await book.sheets();
  return {
    tables: (await book.tables()).map(({ name, area, sheet }) => ({ name, area, sheet })),
    names: await book.names(),
    looked: await Promise.all(
      sheets.map(async ({ id, name, ...sheet }) => {
        const area = await book.usedArea(id, false);
        return {
          name,
          visibility: sheet,
          area,
          values: area && (await book.read(id, area, 'values')),
          formulas: area && (await book.read(id, area, 'formulas')),
          formats: area && (await book.read(id, area, 'formats')),
          charts: (await book.charts(id)).map((chart) => ({ ...chart, id: '' })),
          conditionals: (await book.conditionals(id)).map((rule) => ({ ...rule, id: '' })),
          freeze: await book.freeze(id),
          protection: await book.protection(id),
          merges: await book.merges(id),
        };
      }),
    ),
  };
}
const LATER = onItsDay(seasonTemplate({ ...BACKYARD, orders: BACKYARD_LATER }));

test('written over itself the book is as if written anew, and formulas elsewhere that read it go on', async () => {
  const book = open();
  const own = (await book.sheets())[0]?.id ?? '';
  await officePort.writeWorkbook(model, '', quiet);
  await officePort.writeWorkbook(model, ' 2', quiet);
  const number = Object.entries(model.sheets.find(({ name }) => name === 'Orders')?.cells ?? {}).find(
    ([, { value }]) => value === 22_000,
  )?.[0];
  await book.write(own, { row: 0, column: 0, rows: 1, columns: 2 }, [
    [{ formula: `=Orders!${number ?? ''}*2` }, { formula: '=season_hatchery' }],
  ]);
  expect(await officePort.rewriteWorkbook(LATER, model, '', quiet)).toContain('Orders');
  const fresh = createMemoryBook(calculating);
  installOffice(createOffice({ executor: createExecutor(fresh) }));
  await officePort.writeWorkbook(LATER, '', quiet);
  await officePort.writeWorkbook(model, ' 2', quiet);
  type All = { looked: { name: string }[] };
  const [got, wanted] = [(await everythingIn(book)) as All, (await everythingIn(fresh)) as All];
  const mine = got.looked[0]?.name;
  const others = ({ looked }: All) =>
    looked.filter(({ name }) => name !== mine).map((sheet) => ({ ...sheet }));
  for (const [i, sheet] of others(wanted).entries()) expect(others(got)[i]).toEqual(sheet);
  expect(await book.read(own, { row: 0, column: 0, rows: 1, columns: 2 }, 'values')).toEqual([
    [46_000, 'Mango Court Hatchery'],
  ]);
});

test('a host that fails half-way leaves the book as it was', async () => {
  const book = open();
  await officePort.writeWorkbook(model, '', quiet);
  const before = await everythingIn(book);
  const { setFreeze } = book;
  let fails = true;
  book.setFreeze = (...given) => {
    if (fails) {
      fails = false;
      throw new Error('out of memory');
    }
    return setFreeze(...given);
  };
  await expect(officePort.rewriteWorkbook(LATER, model, '', quiet)).rejects.toThrow(
    'The season stays as it was: it could not be written over.',
  );
  expect(await everythingIn(book)).toEqual(before);
});

test('as a file, read back: the same values, formulas, tables, rules and charts', () => {
  const read = readXlsx(writeXlsx(model));
  if (!('model' in read)) throw new Error(JSON.stringify(read));
  const byName = new Map(read.model.sheets.map((sheet) => [sheet.name, sheet]));
  const { compared, wrong } = differences(
    model.sheets,
    (sheet, address) => byName.get(sheet)?.cells[address]?.value,
  );
  expect(wrong.slice(0, 5)).toEqual([]);
  expect(compared).toBeGreaterThan(3000);
  for (const sheet of model.sheets) {
    const got = byName.get(sheet.name);
    const formulas = Object.entries(sheet.cells).filter(([, { formula }]) => formula !== undefined);
    expect([
      sheet.name,
      formulas
        .filter(
          ([address, { formula }]) =>
            got?.cells[address]?.formula?.replaceAll(' ', '') !== formula?.replaceAll(' ', ''),
        )
        .slice(0, 3),
    ]).toEqual([sheet.name, []]);
    for (const part of ['tables', 'validations', 'conditionals', 'charts'] as const)
      expect([sheet.name, part, got?.[part]?.length ?? 0]).toEqual([
        sheet.name,
        part,
        sheet[part]?.length ?? 0,
      ]);
    expect(got?.isProtected).toBe(true);
  }
  expect(read.model.names.map(({ name }) => name).sort()).toEqual(model.names.map(({ name }) => name).sort());
});

test('every sheet fits a sheet of paper’s width, and its rules lie on its cells', () => {
  for (const sheet of model.sheets)
    for (const { range } of [...(sheet.validations ?? []), ...(sheet.conditionals ?? [])])
      expect([sheet.name, range, parseArea(range)]).not.toEqual([sheet.name, range, undefined]);
});
