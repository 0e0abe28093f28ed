import type { Page } from 'playwright-core';
import type { Session } from '../../browser/support/localSheet';
import {
  ask,
  kill,
  openLocalSheet,
  picture,
  typeInto,
  until,
  untilReady,
} from '../../browser/support/localSheet';

/** Nothing typed is lost: a killed tab, a second tab on the same workbook, a full disk, no network. */

let session: Session;
beforeAll(async () => {
  session = await openLocalSheet();
});
afterAll(async () => {
  await session.close();
});

/** Kept and written, however long the browser takes. */
const untilKept = (page: Page, count: number): Promise<void> =>
  until(async () => (await ask(page, 'kept')).length >= count);

async function another(address = session.url): Promise<Page> {
  const page = await session.page.context().newPage();
  await page.goto(address);
  await untilReady(page);
  return page;
}

test('an empty workbook nobody typed into is not kept', async () => {
  expect(await ask(session.page, 'kept')).toEqual([]);
});

test('a killed tab: what was typed is there under Continue, with formulas, looks and names', async () => {
  const page = await another();
  await typeInto(page, 'A1', 'Vat 1');
  await typeInto(page, 'B1', '1000');
  await typeInto(page, 'C1', '=SPAWN.BUFFER.DOSE(B1,4.6,7)');
  const dose = await ask(page, 'getValue', 'C1');
  expect(dose).toEqual(expect.any(Number));
  // Under five seconds by the page's own timers; the wait here is for a busy machine.
  await untilKept(page, 1);
  await page.waitForFunction(() => location.hash.length > 10, undefined, { timeout: 120_000 });
  await typeInto(page, 'A2', 'Vat 2');
  await new Promise((resolve) => {
    setTimeout(resolve, 4000);
  });
  await kill(page);

  const next = await another();
  await next.waitForSelector('#start-books button');
  await picture(next, 'start-continue');
  await next.click('#start-books button');
  await until(async () => (await ask(next, 'getValue', 'A1')) === 'Vat 1');
  expect(await ask(next, 'getValues', 'A1:C2')).toEqual([
    ['Vat 1', 1000, dose],
    ['Vat 2', null, null],
  ]);
  expect(await ask(next, 'getFormula', 'C1')).toBe('=SPAWN.BUFFER.DOSE(B1,4.6,7)');
  // The formula lives.
  await typeInto(next, 'B1', '2000');
  expect((await ask(next, 'getValue', 'C1')) as number).toBeCloseTo((dose as number) * 2, 6);
  await ask(next, 'keepNow');
});

test('reloaded, the page goes on with the same workbook', async () => {
  const page = session.page.context().pages().at(-1) ?? session.page;
  expect(page.url()).toContain('#');
  await page.reload();
  await untilReady(page);
  expect(await ask(page, 'getValue', 'B1')).toBe(2000);
  expect(await ask(page, 'kept')).toHaveLength(1);
});

test('a second tab on the same workbook goes on with a copy, and neither writes over the other', async () => {
  const first = session.page.context().pages().at(-1) ?? session.page;
  const second = await another(first.url());
  expect(await second.textContent('#status')).toContain('open in another tab');
  await typeInto(second, 'A9', 'from the second tab');
  await ask(second, 'keepNow');
  await typeInto(first, 'A9', 'from the first tab');
  await ask(first, 'keepNow');
  const kept = await ask(first, 'kept');
  expect(kept.map(({ title }) => title).sort()).toEqual(['Workbook', 'Workbook (copy)']);
  await first.reload();
  await untilReady(first);
  expect(await ask(first, 'getValue', 'A9')).toBe('from the first tab');
  await second.reload();
  await untilReady(second);
  expect(await ask(second, 'getValue', 'A9')).toBe('from the second tab');
  await second.close();
});

test('an earlier version is brought back, and the present one becomes a version', async () => {
  const page = session.page.context().pages().at(-1) ?? session.page;
  await page.click('#books');
  const back = page.locator('#versions-list button').last();
  await back.waitFor();
  await picture(page, 'workbooks');
  await back.click();
  await until(async () => (await ask(page, 'getValue', 'A9')) === null);
  expect(await ask(page, 'getValue', 'A1')).toBe('Vat 1');
  await page.click('#books');
  await page.locator('#versions-list button').nth(1).waitFor();
  await page.click('#books-dialog form button');
});

test('a full disk: a sentence, the workbook stays open, and it is kept once there is room', async () => {
  const page = session.page.context().pages().at(-1) ?? session.page;
  // What browsers throw when their share of the disk is used up (DOM standard, QuotaExceededError).
  await page.evaluate(() => {
    const put = IDBObjectStore.prototype.put;
    Object.assign(window, {
      makeRoom: () => {
        IDBObjectStore.prototype.put = put;
      },
    });
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await typeInto(page, 'A12', 'typed with no room left');
  await page.waitForFunction(
    () => document.querySelector('#status')?.textContent?.includes('no room left'),
    undefined,
    { timeout: 120_000 },
  );
  expect(await ask(page, 'getValue', 'A12')).toBe('typed with no room left');
  const { bytes } = await page.evaluate(async () => {
    const saved = await window.spawnbook?.saveFile();
    return { bytes: saved?.bytes.length ?? 0 };
  });
  expect(bytes).toBeGreaterThan(1000);
  await page.evaluate(() => {
    (window as unknown as { makeRoom: () => void }).makeRoom();
  });
  await typeInto(page, 'A13', 'room again');
  await ask(page, 'keepNow');
  await page.reload();
  await untilReady(page);
  expect(await ask(page, 'getValues', 'A12:A13')).toEqual([['typed with no room left'], ['room again']]);
});
