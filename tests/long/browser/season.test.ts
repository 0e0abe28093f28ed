import { join } from 'node:path';
import type { Frame, Page } from 'playwright-core';
import { isError } from '../../../shared/base/values';
import type { Session } from '../../browser/support/localSheet';
import { ask, openLocalSheet, OUT, picture, turnTo, untilReady } from '../../browser/support/localSheet';

/**
 * The season screen in a real browser: six orders typed in, planned, written, counted, planned again over its
 * own sheets, taken back after the page was closed; the file opened again.
 */

jest.setTimeout(600_000);
let session: Session;
let { page, pane }: { page: Page; pane: Frame } = {} as Session;
beforeAll(async () => {
  session = await openLocalSheet();
  ({ page, pane } = session);
  await ask(page, 'newBook');
});
afterAll(async () => {
  await session.close();
});

/** However busy the machine is. */
const PATIENCE = 180_000;
const sheetNames = (): Promise<string[]> => ask(page, 'getSheetNames');
const focused = (): Promise<string> => pane.evaluate(() => document.activeElement?.id ?? '');
const noticed = async (): Promise<string> => {
  await pane.waitForSelector('.notice', { timeout: PATIENCE });
  await ask(page, 'waitForCalculation');
  return pane.locator('.notice').innerText();
};
/** What every sheet shows, by cell; sheets that follow the hour on the clock are left out. */
const everything = async (): Promise<Map<string, unknown>> => {
  const cells = new Map<string, unknown>();
  for (const name of await sheetNames()) {
    if (['Task list', 'Vat use', 'Today'].includes(name)) continue;
    const values = await ask(page, 'getValues', `'${name}'!A1:AK60`);
    values.forEach((row, r) => {
      row.forEach((value, c) => {
        if (value !== null && value !== '')
          cells.set(
            `${name}!${letter(c)}${r + 1}`,
            typeof value === 'number' ? Number(value.toPrecision(9)) : value,
          );
      });
    });
  }
  return cells;
};
const differing = (now: ReadonlyMap<string, unknown>, before: ReadonlyMap<string, unknown>): unknown[] =>
  [...new Set([...now.keys(), ...before.keys()])]
    .filter((cell) => now.get(cell) !== before.get(cell))
    .slice(0, 12)
    .map((cell) => [cell, now.get(cell), before.get(cell)]);
const letter = (column: number): string => (column < 26 ? '' : 'A') + String.fromCharCode(65 + (column % 26));
/** Address of the cell under a heading, in the first line that fits. */
async function cellOf(sheet: string, heading: string, key: string, line: unknown): Promise<string> {
  const values = await ask(page, 'getValues', `'${sheet}'!A1:AK60`);
  const head = values.findIndex((row) => row.includes(heading) && row.includes(key));
  const [column, at] = [values[head]?.indexOf(heading) ?? -1, values[head]?.indexOf(key) ?? -1];
  const row = values.findIndex((cells, i) => i > head && (line === '' ? !cells[at] : cells[at] === line));
  expect([sheet, heading, head >= 0, column >= 0, row > head]).toEqual([sheet, heading, true, true, true]);
  return `'${sheet}'!${letter(column)}${row + 1}`;
}

/** Keys pressed so far: what a person needs of time. */
let keys = 0;
const press = async (key: string): Promise<void> => {
  keys++;
  await page.keyboard.press(key);
};
const typed = async (text: string): Promise<void> => {
  keys += text.length;
  await page.keyboard.type(text);
};
async function tabTo(id: string, most = 60): Promise<void> {
  for (let i = 0; i < most && (await focused()) !== id; i++) await press('Tab');
  expect(await focused()).toBe(id);
}
const planned = async (): Promise<void> => {
  await pane.waitForSelector('.current .order-plan', { timeout: 120_000 });
};

const serial = Math.floor(Date.now() / 86_400_000) + 25_569;
const dayIn = (days: number): string => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);
const ORDERS = [
  ['Ama', 'fry', 3000, 62],
  ['Bo', 'fry', 2000, 64],
  ['Cy', 'fingerlings', 1500, 95],
  ['Di', 'fry', 4000, 104],
  ['Ed', 'fingerlings', 1000, 100],
  ['Flo', 'fry', 2500, 106],
] as const;
/** Somebody who is no typist strikes four keys a second: two minutes are this many. */
const TWO_MINUTES = 2 * 60 * 4;

test('a season of six orders typed in with the keyboard alone, in the keys of two minutes, and planned at once', async () => {
  await turnTo(pane, 'plan');
  await pane.focus('#mode-run');
  keys = 0;
  await press('ArrowRight');
  expect(await focused()).toBe('mode-season');
  for (let i = 0; i < 40; i++) {
    if ((await pane.evaluate(() => document.activeElement?.textContent)) === 'Many orders from a sheet')
      break;
    await press('Tab');
  }
  await press('Enter');
  await tabTo('season-pasted', 3);
  await typed(
    ORDERS.map(([name, fish, number, days]) => `${name}; ${fish}; ${number}; ${dayIn(days)}`).join('\n'),
  );
  await tabTo('season-add-pasted', 3);
  await press('Enter');
  await tabTo('season-vats', 80);
  await typed(['A 600', 'B 600', 'C 400', 'D 400'].join('\n'));
  await tabTo('season-females', 3);
  await typed(['F1 1.2', 'F2 1.1', 'F3 0.9', 'F4 1.4', 'F5 1', 'F6 1.3'].join('\n'));
  await tabTo('season-males', 3);
  await typed(['M1', 'M2', 'M3', 'M4', 'M5'].join('\n'));
  await tabTo('season-temperatures-0', 3);
  for (let month = 0; month < 12; month++) {
    await typed('27');
    await press('Tab');
  }
  await tabTo('season-plan', 40);
  await picture(page, 'season-form');
  await press('Enter');
  await planned();
  expect(await focused()).toBe('season-result');
  expect(await pane.locator('.fault').count()).toBe(0);
  process.stdout.write(`six orders: ${keys} keys\n`);
  expect(keys).toBeLessThan(TWO_MINUTES);
  await picture(page, 'season-result');
});

test('the preview says the promise first, then odds, calendar, vats, shopping; nothing is written yet', async () => {
  const words = (await pane.locator('.preview').innerText()).replace(/\s+/g, ' ');
  expect(words).toMatch(/Result Promise [\d ,]+, hope for [\d ,]+/);
  for (const word of [
    '80 % was asked for',
    'The whole order comes in',
    'Inject',
    'Strip',
    'The same in words',
    'week to order in',
  ])
    expect(words).toContain(word);
  expect(words).toMatch(/[●▲◊▼×] (safe|likely|a coin toss|unlikely|cannot)/);
  expect(await pane.locator('.season-vats svg .bar').count()).toBeGreaterThan(2);
  expect(await sheetNames()).toHaveLength(1);
});

test('a change afterwards marks the plan as outdated, and it cannot be written', async () => {
  await pane.fill('#season-certainty', '70 %');
  await pane.waitForSelector('.outdated');
  expect(await pane.getAttribute('#season-write', 'aria-disabled')).toBe('true');
  await pane.focus('#season-plan');
  await page.keyboard.press('Enter');
  await planned();
  expect(await pane.locator('#season-promise').innerText()).toContain('70 % was asked for');
  expect(await pane.getAttribute('#season-write', 'aria-disabled')).toBeNull();
});

test('written on new sheets, eight to see, alive and without errors; a second writing asks first', async () => {
  await pane.focus('#season-write');
  await page.keyboard.press('Enter');
  expect(await noticed()).toContain('The season is written on new sheets');
  const names = await sheetNames();
  for (const name of [
    'Today',
    'Orders',
    'Batches',
    'Calendar',
    'Vats',
    'Counts',
    'Shopping and money',
    'Checks',
  ])
    expect(names).toContain(name);
  const bad: string[] = [];
  for (const name of names)
    for (const line of await ask(page, 'getValues', `'${name}'!A1:AK60`))
      for (const cell of line) if (isError(cell)) bad.push(`${name}: ${cell.error} ${cell.message ?? ''}`);
  expect(bad).toEqual([]);
  expect(await ask(page, 'getValue', await cellOf('Orders', 'Fish', 'Buyer', 'Di'))).toBe(4000);
  await ask(page, 'activate', 'Today');
  await picture(page, 'season-written');
  const before = await everything();
  await pane.focus('#season-write');
  await page.keyboard.press('Enter');
  await pane.waitForSelector('[role=alert] .question');
  await page.keyboard.press('Escape');
  await pane.waitForSelector('[role=alert] .question', { state: 'detached' });
  expect(await focused()).toBe('season-write');
  expect(differing(await everything(), before)).toEqual([]);
});

let old: ReadonlyMap<string, unknown> = new Map();
test('deaths counted and a bigger order: planned again over its own sheets, with every change seen before', async () => {
  const dead = { 'Date and hour': serial, Batch: 'B1', What: 'died', Number: 40 };
  const log = await cellOf('Counts', 'Date and hour', 'What', '');
  const row = /\d+$/.exec(log)?.[0] ?? '';
  for (const [heading, value] of Object.entries(dead)) {
    const at = (await cellOf('Counts', heading, 'What', '')).replace(/\d+$/, row);
    if (heading !== 'What') await ask(page, 'setValue', at, value);
  }
  await ask(page, 'setValue', (await cellOf('Counts', 'What', 'What', '')).replace(/\d+$/, row), 'died');
  await ask(page, 'waitForCalculation');
  old = await everything();
  await pane.focus('#season-again');
  await page.keyboard.press('Enter');
  await pane.waitForSelector('#season-read .banner', { timeout: PATIENCE });
  expect(await focused()).toBe('season-read');
  await pane.fill('#season-order-4-number', '6000');
  await pane.focus('#season-plan');
  await page.keyboard.press('Enter');
  await planned();
  expect(await pane.locator('.changes').innerText()).toContain('Di: ');
  expect(differing(await everything(), old)).toEqual([]);
  await picture(page, 'season-changed');
  const names = await sheetNames();
  await pane.focus('#season-over');
  await page.keyboard.press('Enter');
  expect(await noticed()).toContain('planned anew on its own sheets');
  expect(await sheetNames()).toEqual(names);
  expect(await ask(page, 'getValue', await cellOf('Orders', 'Fish', 'Buyer', 'Di'))).toBe(6000);
  expect(await ask(page, 'getValue', await cellOf('Counts', 'Number', 'What', 'died'))).toBe(40);
  await picture(page, 'season-over');
});

test('one press takes it back, after the page was closed and opened again; pressed again it is the later plan', async () => {
  const later = await everything();
  await ask(page, 'keepNow');
  await page.reload();
  await untilReady(page);
  const found = page.frames().find((frame) => frame.url().includes('taskpane'));
  if (!found) throw new Error('The pane is not in the page.');
  pane = found;
  await pane.waitForSelector('#place-plan');
  await turnTo(pane, 'plan');
  await pane.click('#season-again', { timeout: PATIENCE });
  await pane.waitForSelector('#season-read .banner', { timeout: PATIENCE });
  await pane.focus('#season-back');
  await page.keyboard.press('Enter');
  expect(await noticed()).toContain('The season is back as it was');
  expect(differing(await everything(), old)).toEqual([]);
  await pane.focus('#season-back');
  await page.keyboard.press('Enter');
  await pane.waitForSelector('.notice:has-text("The season is back")', { timeout: PATIENCE });
  await ask(page, 'waitForCalculation');
  expect(differing(await everything(), later)).toEqual([]);
});

test('saved and opened again: the same sheets, and the season is read from them', async () => {
  await pane.click('#season-again', { timeout: PATIENCE });
  await pane.waitForSelector('#season-read .banner', { timeout: PATIENCE });
  await pane.click('#season-plan');
  await planned();
  await pane.focus('#season-save');
  const [opened] = await Promise.all([page.context().waitForEvent('page'), page.keyboard.press('Enter')]);
  await opened.waitForFunction(() => window.spawnbook !== undefined, undefined, { timeout: 120_000 });
  await untilReady(opened);
  for (const name of ['Orders', 'Batches'])
    expect((await ask(opened, 'getValues', `'${name}'!A1:N30`)).length).toBeGreaterThan(5);
  const frame = opened.frames().find((one) => one.url().includes('taskpane'));
  if (!frame) throw new Error('The pane is not in the page.');
  await frame.waitForSelector('#place-plan');
  await turnTo(frame, 'plan');
  await frame.click('#season-again');
  await frame.waitForSelector('#season-read .banner.good', { timeout: PATIENCE });
  expect(await frame.inputValue('#season-order-4-number')).toBe('6000');
  await opened.close();
});

const faultBeside = (on: Page, id: string): Promise<string> => on.locator(`#${id}-fault`).innerText();

test.each([360, 270])(
  'alone and %i px wide: nothing scrolls sideways, bad input is said beside its field',
  async (width) => {
    const narrow = await page.context().newPage();
    const sideways = (): Promise<number> =>
      narrow.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    await narrow.setViewportSize({ width, height: 760 });
    await narrow.goto(pane.url().replace(/\?.*$/, ''));
    await turnTo(narrow, 'plan');
    await narrow.click('#mode-season');
    await narrow.click('#season-example');
    await narrow.fill('#season-order-1-due', '2020-01-01');
    await narrow.fill('#season-order-2-name', '');
    await narrow.fill('#season-order-3-number', '0.5');
    await narrow.fill('#season-order-4-grams', '900');
    await narrow.fill('#season-vats', 'Vat 1; 1000\nVat 1; 5\nVat 3');
    await narrow.fill('#season-certainty', 'very');
    await narrow.click('#season-plan');
    expect(await faultBeside(narrow, 'season-order-1-due')).toContain('is due on 2020-01-01');
    expect(await faultBeside(narrow, 'season-order-2-name')).toContain('Name of the order: expected');
    expect(await faultBeside(narrow, 'season-order-3-number')).toContain('expected a whole number from 1');
    expect(await faultBeside(narrow, 'season-order-4-grams')).toContain('That is no fry or fingerling');
    expect(await faultBeside(narrow, 'season-certainty')).toContain('from 0.5 to 0.99');
    expect(await faultBeside(narrow, 'season-vats')).toMatch(
      /Line 2: Water in the vat: expected a number from 10[\s\S]*Line 3: “Vat 3” has no litres/,
    );
    expect(await sideways()).toBe(0);
    await narrow.screenshot({ path: join(OUT, `season-bad-${width}.png`), fullPage: true });
    await narrow.click('#season-example');
    await narrow.click('#season-plan');
    await narrow.waitForSelector('.order-plan', { timeout: 120_000 });
    for (const summary of await narrow.locator('summary').all()) await summary.click();
    expect(await sideways()).toBe(0);
    await narrow.screenshot({ path: join(OUT, `season-${width}.png`), fullPage: true });
    await narrow.close();
  },
);

test('nothing went wrong unseen, and nothing was asked of another machine', () => {
  expect(session.trouble).toEqual([]);
});
