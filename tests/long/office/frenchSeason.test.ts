import { addressOf } from '../../../shared/sheet/formula/address';
import {
  asOf,
  bookSheetNames,
  booksIn,
  livingBook,
  readBook,
  wordsOfBook,
} from '../../../shared/books/living';
import { fr } from '../../../shared/books/words/fr';
import { planBatches } from '../../../shared/season/batches';
import { readOrderBook } from '../../../shared/season/book/orderBook';
import type { RangeCells } from '../../../shared/records';
import { createExecutor, createOffice, installOffice } from '../../../src/officeStandIn';
import type { MemoryBook } from '../../../src/officeStandIn/memoryBook';
import { createMemoryBook } from '../../../src/officeStandIn/memoryBook';
import { officePort } from '../../../taskpane/host/office';
import { BACKYARD, seasonTemplate } from '../../../templates/season.template';
import { TEMPLATE_LANGUAGES } from '../../../templates/languages';
import { onItsDay } from '../../support/day';
import { calculating } from '../../office/calculating';

/**
 * A season in French in the open workbook, beside one in English: calculated by the host, read back through the door,
 * planned again and written over, it goes on as the English one does.
 */
jest.setTimeout(400_000);
const quiet = (): void => undefined;
const [language] = TEMPLATE_LANGUAGES;
const english = onItsDay(seasonTemplate(BACKYARD));
const french = onItsDay(seasonTemplate(BACKYARD, language));

const values = async (book: MemoryBook, name: string): Promise<Map<string, unknown>> => {
  const id = (await book.sheets()).find((sheet) => sheet.name === name)?.id ?? '';
  const area = await book.usedArea(id, false);
  const rows = area ? await book.read(id, area, 'values') : [];
  return new Map(
    rows.flatMap((row, r) =>
      row.map((value, c) => [addressOf((area?.row ?? 0) + r, (area?.column ?? 0) + c), value] as const),
    ),
  );
};
const readFrom = async (suffix: string) => {
  const there = await officePort.listSheets();
  const sheets: RangeCells[] = [];
  for (const sheet of bookSheetNames(suffix, there))
    sheets.push(...((await officePort.readCells({ sheet }, quiet, () => false))?.sheets ?? []));
  const reading = readBook(sheets, suffix);
  if (reading.kind === 'unreadable') throw new Error(reading.faults.join(' '));
  return { reading, words: wordsOfBook(there, suffix) };
};
const plannedOn = (reading: Awaited<ReturnType<typeof readFrom>>['reading'], today: number) => {
  const read = readOrderBook(asOf(reading, today));
  if ('faults' in read) throw new Error(read.faults.map(({ message }) => message).join(' '));
  return { book: read.book, plan: planBatches(read.book) };
};
/** What a plan decides, without names and words. */
const decided = ({ plan }: ReturnType<typeof plannedOn>) => ({
  batches: plan.batches.map(({ name, stripAt, eggs, state }) => [name, stripAt, eggs, state]),
  orders: plan.orders.map(({ promise, hope, certainty, verdict }) => [promise, hope, certainty, verdict]),
  stays: plan.stays.map(({ batch, stage, from, to }) => [batch, stage, from, to]),
});

test('written, calculated by the host, read back, planned again and written over', async () => {
  const book = createMemoryBook(calculating);
  installOffice(createOffice({ executor: createExecutor(book) }));
  expect(await officePort.writeWorkbook(english, '', quiet)).toMatchObject({ kind: 'written' });
  // The names of its cells are in use, whatever its sheets are called.
  expect(await officePort.writeWorkbook(french, '', quiet)).toMatchObject({ kind: 'taken', free: ' 2' });
  expect(await officePort.writeWorkbook(french, ' 2', quiet)).toMatchObject({ kind: 'written' });
  const wrong: unknown[] = [];
  for (const sheet of french.sheets) {
    const found = await values(book, `${sheet.name} 2`);
    for (const [address, { value = '', formula }] of Object.entries(sheet.cells)) {
      const got = found.get(address) ?? '';
      const isSame =
        typeof value === 'number' && typeof got === 'number'
          ? Math.abs(got - value) <= 1e-9 * Math.max(1, Math.abs(value))
          : got === value;
      if (!isSame) wrong.push([sheet.name, address, formula, got, value]);
    }
  }
  expect(wrong.slice(0, 5)).toEqual([]);

  expect(booksIn(await officePort.listSheets())).toEqual(['', ' 2']);
  const [first, second] = [await readFrom(''), await readFrom(' 2')];
  expect([first.words, second.words]).toEqual([undefined, fr]);
  const today = second.reading.plan.plannedOn + 45;
  const [now, then] = [plannedOn(second.reading, today), plannedOn(first.reading, today)];
  expect(decided(now)).toEqual(decided(then));

  const before = livingBook(
    plannedOn(second.reading, second.reading.plan.plannedOn).book,
    second.reading.plan,
    second.reading.typed,
    second.words,
  );
  const next = livingBook(now.book, now.plan, second.reading.typed, second.words);
  expect(await officePort.rewriteWorkbook(next, before, ' 2', quiet)).toContain('Commandes 2');
  const again = await readFrom(' 2');
  expect(again.words).toBe(fr);
  expect(again.reading.missing).toEqual([]);
  expect(again.reading.plan.plannedOn).toBe(today);
  expect(decided({ book: now.book, plan: now.plan }).batches).toEqual(
    again.reading.plan.batches.map(({ name, stripAt, eggs, state }) => [name, stripAt, eggs, state]),
  );
});
