import { readFileSync } from 'node:fs';
import { columnLetters, parseAddress } from '../../../shared/sheet/formula/address';
import type { SheetModel } from '../../../shared/sheet/workbook/model';
import { readXlsx } from '../../../shared/files';
import { fr } from '../../../shared/books/words/fr';
import { ownSheetName } from '../../../shared/books/words/words';
import type { Session } from '../../browser/support/localSheet';
import { ask, openLocalSheet, picture } from '../../browser/support/localSheet';

/**
 * A whole season opened in the local sheet: it calculates every cell anew, and each must show what the file
 * was stored with.
 */

let session: Session;
beforeAll(async () => {
  session = await openLocalSheet();
});
afterAll(async () => {
  await session.close();
});

const areaOf = ({ cells }: SheetModel): string => {
  const places = Object.keys(cells).flatMap((address) => parseAddress(address) ?? []);
  return `A1:${columnLetters(Math.max(...places.map((p) => p.column)))}${Math.max(...places.map((p) => p.row)) + 1}`;
};
const isSame = (got: unknown, stored: unknown): boolean =>
  typeof stored === 'number'
    ? typeof got === 'number' && Math.abs(got - stored) <= 1e-9 * Math.max(1, Math.abs(stored))
    : JSON.stringify(got ?? '') === JSON.stringify(stored ?? '');

/** The first page and the counters behind it follow the day on the clock. */
const BY_THE_CLOCK = ['Today', 'Task list', 'Vat use'];
const LEFT_OUT = new Set([...BY_THE_CLOCK, ...BY_THE_CLOCK.map((name) => ownSheetName(fr, name))]);
// The English one last: the next test goes on with it.
test.each(['season-backyard-fr.xlsx', 'season-backyard.xlsx'])(
  '%s: calculated here, every cell is as stored',
  async (file) => {
    const { page } = session;
    const bytes = readFileSync(`templates/${file}`);
    const stored = readXlsx(new Uint8Array(bytes));
    if (!('model' in stored)) throw new Error(JSON.stringify(stored));
    await page.evaluate(
      async ([text, name]) => {
        await window.spawnbook?.openFile(
          Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0)),
          name,
        );
      },
      [bytes.toString('base64'), file] as const,
    );
    await ask(page, 'waitForCalculation');
    const wrong: unknown[] = [];
    let compared = 0;
    for (const sheet of stored.model.sheets) {
      const values = await ask(page, 'getValues', `'${sheet.name}'!${areaOf(sheet)}`);
      if (LEFT_OUT.has(sheet.name)) continue;
      for (const [address, { value, formula }] of Object.entries(sheet.cells)) {
        const place = parseAddress(address);
        if (!place || value === undefined) continue;
        compared++;
        const got = values[place.row]?.[place.column];
        if (!isSame(got, value)) wrong.push([sheet.name, address, formula, value, got]);
      }
    }
    expect(wrong.slice(0, 5)).toEqual([]);
    expect(compared).toBeGreaterThan(3000);
    for (const name of ['Today', 'Vats', 'Shopping and money']) {
      await ask(page, 'activate', file.endsWith('-fr.xlsx') ? ownSheetName(fr, name) : name);
      await picture(page, `${file.replace('.xlsx', '')}-${name.toLowerCase().replaceAll(' ', '-')}`);
    }
  },
);

test('the local sheet carries a change through the whole season', async () => {
  const { page } = session;
  const runs = await ask(page, 'getValues', "'Batches'!B4:Q6");
  const at = (title: string): number => runs[0]?.indexOf(title) ?? -1;
  const cell = (title: string): string => `'Batches'!${columnLetters(1 + at(title))}5`;
  const days = await ask(page, 'getValues', "'Feed by batch'!B4:T4");
  const feedDate = `${columnLetters(1 + (days[0]?.indexOf('Date') ?? -1))}5`;
  const [hatch, feed] = [
    await ask(page, 'getValue', cell('First hatch')),
    await ask(page, 'getValue', `'Feed by batch'!${feedDate}`),
  ];
  await ask(page, 'setValue', cell('Water measured, °C'), 24);
  await ask(page, 'waitForCalculation');
  expect(Number(await ask(page, 'getValue', cell('First hatch')))).toBeGreaterThan(Number(hatch));
  expect(Number(await ask(page, 'getValue', `'Feed by batch'!${feedDate}`))).toBeGreaterThan(Number(feed));
});

test('nothing went wrong unseen', () => {
  expect(session.trouble).toEqual([]);
});
