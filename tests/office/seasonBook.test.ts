import { addressOf, parseArea } from '../../shared/sheet/formula/address';
import { readOrderBook } from '../../shared/season/orderBook';
import { asOf, bookSheetNames, booksIn, readBook } from '../../shared/books/living';
import type { CellModel, WorkbookModel } from '../../shared/sheet/workbook/model';
import { readXlsx, writeXlsx } from '../../shared/files';
import { createExecutor, createOffice, installOffice } from '../../src/officeStandIn';
import type { MemoryBook } from '../../src/officeStandIn/memoryBook';
import { createMemoryBook } from '../../src/officeStandIn/memoryBook';
import { officePort } from '../../taskpane/host/office';
import { BACKYARD, seasonTemplate } from '../../templates/season.template';
import { onItsDay } from '../support/day';
import { calculating } from './calculating';

/**
 * One season, rendered into the open workbook and into a file: cell by cell what the model says. The local
 * sheet is compared in tests/browser.
 */
jest.setTimeout(180_000);
const model = onItsDay(seasonTemplate(BACKYARD));
const quiet = (): void => undefined;

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
    expect(again.book).toEqual({ ...first.book, plannedOn: 46_419 });
  },
);

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
