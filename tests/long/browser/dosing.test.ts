import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Frame, Page } from 'playwright-core';
import { ask, launchPhone, picture, sharedSite, until, untilReady } from '../../browser/support/localSheet';

/**
 * Three sour vats on a phone of 360 × 740 points, from a page nobody has prepared until the next morning: the
 * answer and the next reading on one screen, every line in the workbook, nothing lost when the tab is closed.
 */

// Alone, this file builds the page first.
jest.setTimeout(900_000);
let site: Awaited<ReturnType<typeof sharedSite>>;
let phone: Awaited<ReturnType<typeof launchPhone>>;
let page: Page;
let pane: Frame;
const profile = mkdtempSync(join(tmpdir(), 'spawnbook-dosing-'));

const paneOf = async (): Promise<Frame> => {
  const found = page.frames().find((frame) => frame.url().includes('taskpane'));
  if (!found) throw new Error('no pane');
  await found.waitForSelector('#place-vat');
  return found;
};
beforeAll(async () => {
  site = await sharedSite();
  phone = await launchPhone(profile);
  page = await phone.newPage();
  await page.goto(site.url);
  await untilReady(page);
  pane = await paneOf();
});
afterAll(async () => {
  await phone.close();
  await site.stop();
  rmSync(profile, { recursive: true, force: true });
});

const keys = async (text: string): Promise<void> => {
  for (const face of text)
    await pane.click(face === '.' ? '#key-point' : face === '>' ? '#key-next' : `#key-${face}`);
};
const read = async (text: string): Promise<void> => {
  await keys(text);
  await pane.click('#key-write');
};
const big = (): Promise<string> => pane.innerText('#card-answer .big');

/** From the list of vats to the lowest key everything lies inside the window; keys are large enough. */
const fits = async (): Promise<void> => {
  const seen = await pane.evaluate(() => {
    document.scrollingElement?.scrollTo(0, 0);
    const box = (id: string): DOMRect | undefined => document.querySelector(id)?.getBoundingClientRect();
    const keySizes = [...document.querySelectorAll('.padkey')].map((one) => one.getBoundingClientRect());
    return {
      top: box('#dose-vat-0')?.top ?? -1,
      answer: box('#card-answer')?.bottom ?? Infinity,
      field: box('#field-ph')?.top ?? -1,
      bottom: box('#key-write')?.bottom ?? Infinity,
      height: innerHeight,
      sideways: document.documentElement.scrollWidth - innerWidth,
      least: Math.min(...keySizes.map((key) => Math.min(key.width, key.height))),
    };
  });
  expect(seen.top).toBeGreaterThanOrEqual(0);
  expect(seen.field).toBeGreaterThanOrEqual(seen.answer);
  expect(seen.bottom).toBeLessThanOrEqual(seen.height);
  expect(seen.sideways).toBeLessThanOrEqual(0);
  expect(seen.least).toBeGreaterThanOrEqual(56);
};

const log = async (): Promise<unknown[][]> => {
  const rows = (await ask(page, 'getValues', "'Vat log'!A1:M30")) as unknown[][];
  return rows.filter((row) => row.some((cell) => cell !== null && cell !== ''));
};

test('a new page asks what it needs, once', async () => {
  await pane.click('#place-vat');
  await pane.click('#card-dose');
  await pane.fill('#dose-volume', '600');
  await pane.fill('#dose-temperature', '26');
  await pane.fill('#dose-spoon', '5');
  await pane.selectOption('#dose-stocked', 'no');
  await pane.selectOption('#dose-meter', 'cheap');
  await pane.click('#dose-ready');
  expect(await big()).toContain('Read the pH');
  await fits();
});

test('air first; after an hour of it 6.9 needs no product, and the log has a line for each', async () => {
  await read('5.1');
  expect(await big()).toContain('Air first');
  await fits();
  await picture(page, 'dosing-air');
  await read('6.9');
  // Untouched, and perhaps still rising: inside now, and by this meter not surely so tomorrow.
  expect(await big()).toContain('No product; read again tomorrow');
  await fits();
  await until(async () => (await log()).length === 4);
  const lines = await log();
  expect(lines.map((row) => row[2])).toEqual(['What', 'filled', 'reading', 'aired']);
  expect(lines.slice(2).map((row) => row[5])).toEqual([5.1, 6.9]);
});

test('the second vat starts from the first, and air is enough for it too', async () => {
  await pane.click('#dose-vat-1');
  await pane.click('#dose-same-0');
  await read('5.1');
  await fits();
  await read('6.8');
  expect(await big()).toContain('No product; read again tomorrow');
  await fits();
  await until(async () => (await log()).length === 7);
});

test('the third is another water: aired it stays at 5.6, and a part-dose is given in what the spoon can hold', async () => {
  await pane.click('#dose-vat-2');
  await pane.click('#dose-same-0');
  await read('5.0');
  await read('5.6>5.6');
  expect(await big()).toMatch(/Give/);
  expect(await pane.innerText('#card-answer')).toContain('⚠');
  await fits();
  await picture(page, 'dosing-third');
  await pane.click('#dose-given');
  expect(await big()).toContain('Mix');
  await fits();
  await until(async () => (await log()).length === 11);
  const [what, product, grams] = (await log()).at(-1)?.slice(2, 5) ?? [];
  expect([what, product]).toEqual(['dose', 'soda ash']);
  expect(grams).toBeGreaterThan(0.2);
  expect(grams).toBeLessThan(2);
});

test('the tab is closed in the middle and opened again: vats, readings and states are there', async () => {
  const before = await big();
  const rows = (await log()).length;
  await page.waitForFunction(() => location.hash.length > 10, undefined, { timeout: 120_000 });
  await ask(page, 'keepNow');
  await page.close();
  page = await phone.newPage();
  await page.goto(site.url);
  await untilReady(page);
  await page.getByRole('button', { name: 'Go on with it' }).tap();
  await until(async () => (await log().catch(() => [])).length === rows);
  pane = await paneOf();
  await pane.click('#place-vat');
  await pane.waitForSelector('#card-dose, #dose-vat-0');
  if ((await pane.locator('#card-dose').count()) > 0) await pane.click('#card-dose');
  await pane.click('#dose-vat-2');
  await picture(page, 'dosing-again');
  await until(async () => (await big()) === before);
  expect((await log()).length).toBe(rows);
  await pane.click('#dose-vat-0');
  expect(await big()).toContain('No product; read again tomorrow');
});

test('the third vat goes on: a second part-dose, no more than twice the first, and it stands at 6.9', async () => {
  await pane.click('#dose-vat-2');
  await read('5.9>5.9');
  expect(await big()).toMatch(/Give/);
  await fits();
  await pane.click('#dose-given');
  await until(async () => (await log()).length === 13);
  const [first, second] = (await log()).filter((row) => row[2] === 'dose').map((row) => Number(row[4]));
  expect(second).toBeLessThanOrEqual(2 * (first ?? 0) + 1e-9);
  await read('6.9>6.9');
  expect(await big()).toContain('Done');
  await fits();
  await picture(page, 'dosing-done');
});

test('next morning 7.3 is fine and said so; 1.2 on a meter that is off is no reading', async () => {
  await pane.click('#dose-vat-0');
  await pane.click('#dose-what-night');
  await read('7.3');
  // A morning is the end of what air does.
  expect(await big()).toContain('Done');
  expect(await pane.innerText('#card-answer')).toContain('pH 7.30 is in the window');
  await until(async () => (await log()).some((row) => row[5] === 7.3));
  const rows = (await log()).length;
  await read('1.2');
  expect(await pane.innerText('#card-answer')).toContain('pH 1.2 is no reading of a vat');
  expect((await log()).length).toBe(rows);
  await fits();
  await picture(page, 'dosing-slip');
});
