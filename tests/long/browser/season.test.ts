import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { isError } from '../../../shared/base/values';
import type { Session } from '../../browser/support/localSheet';
import { ask, openLocalSheet, OUT, picture, typeInto, untilReady } from '../../browser/support/localSheet';

/** The season screen in a real browser: filled in, planned, written, read back and planned again. */

jest.setTimeout(180_000);
let session: Session;
beforeAll(async () => {
  session = await openLocalSheet();
  await ask(session.page, 'newBook');
});
afterAll(async () => {
  await session.close();
});

const sheetNames = (): Promise<string[]> => ask(session.page, 'getSheetNames');
const focused = (): Promise<string> => session.pane.evaluate(() => document.activeElement?.id ?? '');
const shown = async (name: string): Promise<void> => {
  await session.page.waitForFunction(
    async (wanted) => (await window.spawnbook?.getSheetNames())?.includes(wanted) ?? false,
    name,
    { timeout: 60_000 },
  );
  await session.pane.waitForSelector('.notice');
  await ask(session.page, 'waitForCalculation');
};
const everything = async (): Promise<string> => {
  const names = await sheetNames();
  return JSON.stringify(
    await Promise.all(
      names.map(async (name) => [name, await ask(session.page, 'getValues', `'${name}'!A1:AK60`)]),
    ),
  );
};
const letter = (column: number): string => (column < 26 ? '' : 'A') + String.fromCharCode(65 + (column % 26));
/** Address of the cell under a heading, in the first line that fits. */
async function cellOf(
  sheet: string,
  heading: string,
  line: (cell: unknown) => boolean,
  key: string,
): Promise<string> {
  const values = await ask(session.page, 'getValues', `'${sheet}'!A1:AK60`);
  const head = values.findIndex((row) => row.includes(heading) && row.includes(key));
  const [column, at] = [values[head]?.indexOf(heading) ?? -1, values[head]?.indexOf(key) ?? -1];
  const row = values.findIndex((cells, i) => i > head && line(cells[at]));
  expect([head >= 0, column >= 0, row > head]).toEqual([true, true, true]);
  return `'${sheet}'!${letter(column)}${row + 1}`;
}

async function planAndWait(page: { press: (key: string) => Promise<void> }): Promise<void> {
  await session.pane.focus('#season-plan');
  await page.press('Enter');
  await session.pane.waitForSelector('.current .order-plan', { timeout: 60_000 });
}

test('keyboard only: the switch, the example, the plan', async () => {
  const { page, pane } = session;
  await typeInto(page, 'B2', 'mine, keep');
  await pane.focus('#mode-run');
  await page.keyboard.press('ArrowRight');
  await pane.waitForSelector('#season-example');
  expect(await focused()).toBe('mode-season');
  for (let i = 0; i < 10 && (await focused()) !== 'season-example'; i++) await page.keyboard.press('Tab');
  expect(await focused()).toBe('season-example');
  await page.keyboard.press('Enter');
  await picture(page, 'season-form');
  await planAndWait(page.keyboard);
  expect(await focused()).toBe('season-result');
  await picture(page, 'season-result');
});

test(
  'the preview shows verdict, odds, calendar, vats, shopping and money before anything ' + 'is written',
  async () => {
    const { pane } = session;
    const words = await pane.locator('.preview').innerText();
    for (const word of [
      'Every order can be met',
      'Poor, middle and good season',
      'Met in',
      'Inject',
      'Strip',
      'night',
      'The same in words',
      'week to order in',
      'A fish costs',
      'Least money at hand',
      'Moves the profit most',
    ])
      expect(words).toContain(word);
    expect(await pane.locator('.season-vats svg .bar').count()).toBeGreaterThan(4);
    expect(await sheetNames()).toHaveLength(1);
  },
);

test('a change afterwards marks the plan as outdated, and it cannot be written', async () => {
  const { page, pane } = session;
  await pane.locator('.order input[inputmode=numeric]').first().fill('15500');
  await pane.waitForSelector('.outdated');
  expect(await pane.getAttribute('#season-write', 'aria-disabled')).toBe('true');
  await picture(page, 'season-outdated');
  await planAndWait(page.keyboard);
  expect(await pane.getAttribute('#season-write', 'aria-disabled')).toBeNull();
});

test('written with the keyboard on new sheets, alive and without errors', async () => {
  const { page, pane } = session;
  await pane.focus('#season-write');
  await page.keyboard.press('Enter');
  await shown('Orders');
  const names = await sheetNames();
  for (const name of ['Season', 'Setup', 'Orders', 'Runs', 'Pairs', 'Vats', 'Shopping', 'Money'])
    expect(names).toContain(name);
  expect(await ask(page, 'getValue', `'${names[0] ?? ''}'!B2`)).toBe('mine, keep');
  const bad: string[] = [];
  for (const name of names)
    for (const line of await ask(page, 'getValues', `'${name}'!A1:AK60`))
      for (const cell of line) if (isError(cell)) bad.push(`${name}: ${cell.error} ${cell.message ?? ''}`);
  expect(bad).toEqual([]);
  const number = await cellOf('Orders', 'Fish', (cell) => cell === 'Two Mills farm', 'Order');
  expect(await ask(page, 'getValue', number)).toBe(15_500);
  await ask(page, 'activate', 'Season');
  await picture(page, 'season-written');
});

test('written a second time: asks first and changes nothing; Escape goes back to the button', async () => {
  const { page, pane } = session;
  const before = await everything();
  await pane.focus('#season-write');
  await page.keyboard.press('Enter');
  await pane.waitForSelector('[role=alert] .question');
  await picture(page, 'season-asks');
  await page.keyboard.press('Escape');
  await pane.waitForSelector('[role=alert] .question', { state: 'detached' });
  expect(await focused()).toBe('season-write');
  expect(await everything()).toBe(before);
});

test('saved: the file opens in a window of its own, with every sheet and its values', async () => {
  const { page, pane } = session;
  await pane.focus('#season-save');
  const [opened] = await Promise.all([page.context().waitForEvent('page'), page.keyboard.press('Enter')]);
  await pane.waitForSelector('.notice:has-text("Alder-Bend-Hatchery-season.xlsx")');
  await opened.waitForFunction(() => window.spawnbook !== undefined, undefined, { timeout: 60_000 });
  await untilReady(opened);
  for (const name of ['Orders', 'Runs', 'Pairs'])
    expect(await ask(opened, 'getValues', `'${name}'!A1:N30`)).toEqual(
      await ask(page, 'getValues', `'${name}'!A1:N30`),
    );
  await opened.close();
});

test(
  'planned again after the first strip: what is in the vats stands, the change is ' +
    'shown, the old sheets stay',
  async () => {
    const { page, pane } = session;
    const today = Math.floor(Date.now() / 86_400_000) + 25_569;
    const isFirst = (cell: unknown): boolean => cell === 1;
    await ask(page, 'setValue', await cellOf('Pairs', 'Stripped at', isFirst, 'Run'), today - 1);
    // Far fewer fry than planned: another run must make up for them.
    await ask(page, 'setValue', await cellOf('Fry counts', 'Fry weaned', isFirst, 'Run'), 1500);
    await ask(page, 'waitForCalculation');
    const old = await everything();
    await pane.focus('#season-again');
    await page.keyboard.press('Enter');
    await pane.waitForSelector('#season-read .banner');
    expect(await focused()).toBe('season-read');
    expect(await pane.locator('#season-read').innerText()).toMatch(/Run 1 \(Two Mills farm\) is in the vats/);
    expect(await pane.locator('.underway li').count()).toBeGreaterThan(0);
    await picture(page, 'season-again');
    await planAndWait(page.keyboard);
    const changed = await pane.locator('.changes').innerText();
    expect(changed).toMatch(/New\s+Two Mills farm: a new run is stripped on/);
    await picture(page, 'season-changed');
    expect(await everything()).toBe(old);
    await pane.click('#season-write');
    await pane.waitForSelector('[role=alert] .question');
    await pane.getByRole('button', { name: 'Write beside them' }).click();
    await shown('Setup 2');
    expect(await pane.locator('.notice').innerText()).toContain(
      'The sheets of the season before stay as they were.',
    );
    const names = await sheetNames();
    expect(names.filter((name) => name.startsWith('Runs'))).toEqual(['Runs', 'Runs 2']);
    const kept = JSON.parse(old) as [string, unknown][];
    for (const [name, values] of kept)
      expect(await ask(page, 'getValues', `'${name}'!A1:AK60`)).toEqual(values);
  },
);

test('of two seasons the newer is offered, and the older can be chosen', async () => {
  const { page, pane } = session;
  await pane.click('#season-again');
  await pane.waitForSelector('#season-which');
  expect(await focused()).toBe('season-which');
  expect(await pane.inputValue('#season-which')).toBe(' 2');
  await picture(page, 'season-which');
  await pane.selectOption('#season-which', '');
  await pane.getByRole('button', { name: 'Read this season' }).click();
  await pane.waitForSelector('#season-read .banner.good');
});

test(
  'a thousand orders pasted from a sheet: quick keys, a plan within seconds that shows ' +
    'how far it is and can be stopped',
  async () => {
    const { pane } = session;
    const dayIn = (days: number): string =>
      new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);
    await pane.click('#season-example');
    await pane.click('summary:has-text("Many orders from a sheet")');
    await pane.fill(
      '#season-pasted',
      Array.from(
        { length: 996 },
        (_, i) => `Buyer ${i + 1}; fry; 100; ${dayIn(60 + (i % 200))}; ; 0.05`,
      ).join('\n'),
    );
    await pane.click('#season-add-pasted');
    expect((await pane.locator('.pager').innerText()).replace(/\s/g, ' ')).toContain('1–10 of 1 000 orders');
    const keys = await pane.evaluate(() => {
      const field = document.querySelectorAll<HTMLInputElement>('.order input[inputmode=numeric]')[5];
      return Array.from({ length: 21 }, (_, i) => {
        const begun = performance.now();
        if (field) field.value = String(100 + i);
        field?.dispatchEvent(new Event('input', { bubbles: true }));
        return performance.now() - begun;
      });
    });
    const middle = [...keys].sort((a, b) => a - b)[10] ?? Infinity;
    await pane.click('#season-plan');
    await pane.click('#task-stop');
    await pane.waitForSelector('.notice:has-text("Stopped. Nothing was made")');
    expect(await focused()).toBe('season-plan');
    const begun = Date.now();
    await pane.click('#season-plan');
    await pane.waitForSelector('.current .order-plan:has-text("Buyer 1")', { timeout: 60_000 });
    const took = Date.now() - begun;
    process.stdout.write(
      `1,000 orders: a key ${middle.toFixed(1)} ms (longest ${Math.max(...keys).toFixed(0)}), the plan ${took} ms\n`,
    );
    await picture(session.page, 'season-thousand');
  },
);

const faultBeside = (page: Page, id: string): Promise<string> => page.locator(`#${id}-fault`).innerText();

test.each([320, 280])(
  'alone and %i px wide: nothing scrolls sideways, bad input is said beside its field',
  async (width) => {
    const narrow = await session.page.context().newPage();
    const sideways = (): Promise<number> =>
      narrow.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    await narrow.setViewportSize({ width, height: 760 });
    await narrow.goto(session.pane.url().replace(/\?.*$/, ''));
    await narrow.click('#mode-season');
    await narrow.click('#season-plan');
    await narrow.waitForSelector('.fault');
    expect(await narrow.evaluate(() => document.activeElement?.id)).toBe('season-order-1-name');
    expect(await faultBeside(narrow, 'season-vats')).toContain('the list is empty');
    expect(await sideways()).toBe(0);
    await narrow.screenshot({ path: join(OUT, `season-faults-${width}.png`), fullPage: true });
    await narrow.click('#season-example');
    await narrow.fill('#season-order-1-due', '2020-01-01');
    await narrow.fill('#season-order-2-name', 'Two Mills farm');
    await narrow.fill('#season-order-3-number', '0.5');
    await narrow.fill('#season-order-4-grams', '900');
    await narrow.fill('#season-vats', 'Vat 1; 1000\nVat 1; 5\nVat 3');
    await narrow.fill('#season-temperatures-0', '');
    await narrow.click('#season-plan');
    expect(await faultBeside(narrow, 'season-order-1-due')).toContain('is due on 2020-01-01');
    expect(await faultBeside(narrow, 'season-order-2-name')).toContain(
      'Order 1 is called Two Mills farm too',
    );
    expect(await faultBeside(narrow, 'season-order-3-number')).toContain('expected a whole number from 1');
    expect(await faultBeside(narrow, 'season-order-4-grams')).toContain('That is no fry or fingerling');
    expect(await faultBeside(narrow, 'season-vats')).toMatch(
      /Line 2: Water in the vat: expected a number from 10[\s\S]*Line 3: “Vat 3” has no litres[\s\S]*Line 2: Vat 1 stands on line 1 already/,
    );
    expect(await narrow.locator('#season-temperatures-0-care').innerText()).toContain(
      'January lies in the season',
    );
    expect(await sideways()).toBe(0);
    await narrow.screenshot({ path: join(OUT, `season-bad-${width}.png`), fullPage: true });
    await narrow.click('#season-example');
    await narrow.click('#season-plan');
    await narrow.waitForSelector('.order-plan', { timeout: 60_000 });
    for (const summary of await narrow.locator('summary').all()) await summary.click();
    expect(await sideways()).toBe(0);
    await narrow.screenshot({ path: join(OUT, `season-${width}.png`), fullPage: true });
    await narrow.close();
  },
);

test('nothing went wrong unseen, and nothing was asked of another machine', () => {
  expect(session.trouble).toEqual([]);
});
