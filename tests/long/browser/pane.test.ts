import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Frame, Page } from 'playwright-core';
import { isError } from '../../../shared/base/values';
import { readXlsx } from '../../../shared/files';
import type { Session } from '../../browser/support/localSheet';
import { ask, openLocalSheet, OUT, picture, typeInto, turnTo, until } from '../../browser/support/localSheet';

/** The production pane beside the local sheet, used as a person would. */

let session: Session;
beforeAll(async () => {
  session = await openLocalSheet();
  await ask(session.page, 'newBook');
});
afterAll(async () => {
  await session.close();
});

const sheetNames = (): Promise<string[]> => ask(session.page, 'getSheetNames');

/** Every value of every sheet: what "nothing lost" is checked on. */
async function everything(): Promise<string> {
  const sheets = await sheetNames();
  return JSON.stringify(
    await Promise.all(
      sheets.map(async (name) => [name, await ask(session.page, 'getValues', `'${name}'!A1:L80`)]),
    ),
  );
}

const writePlan = async (): Promise<void> => {
  await session.pane.click('#plan-write');
};

/** Clicks and keys as a person needs them, counted: a click into a field, each character, each button. */
function counting(page: Page, pane: Frame) {
  let presses = 0;
  return {
    presses: () => presses,
    click: async (target: string): Promise<void> => {
      presses++;
      await pane.click(target);
    },
    answer: async (key: string, text: string): Promise<void> => {
      presses += 1 + text.length;
      await pane.click(`#plan-${key}`);
      await page.keyboard.type(text);
    },
  };
}
const MOST_PRESSES = 40;

test('from a new page to the written plan of one order: under forty presses, no example used', async () => {
  const { page, pane } = session;
  const person = counting(page, pane);
  await person.click('#place-plan');
  await pane.waitForSelector('#plan-wanted');
  for (const [key, text] of [
    ['wanted', '10000'],
    ['females', '4'],
    ['femaleWeight', '1.2'],
    ['males', '4'],
    ['vats', '8'],
    ['vatLitres', '1000'],
    ['temperature', '27'],
  ] as const)
    await person.answer(key, text);
  await pane.waitForSelector('#plan-answer:not(.stale) .verdict-line');
  expect(await pane.innerText('#plan-answer')).toMatch(/^Inject \d+ females? on \w{3} \d+ \w+ \d\d:\d\d/);
  const before = await sheetNames();
  await person.click('#plan-write');
  await until(async () => (await pane.locator('.notice').count()) > 0);
  expect(await ask(page, 'getValues', "'Orders'!A1:L20").then((rows) => rows.flat())).toContain(10000);
  console.log(`presses to a written plan: ${person.presses()}, of fewer than ${MOST_PRESSES}`);
  expect(person.presses()).toBeLessThan(MOST_PRESSES);
  // Twenty sheets with all their looks, rules and names are one step back.
  await ask(page, 'select', 'A1');
  await page.keyboard.press('Control+z');
  await until(async () => (await sheetNames()).length === before.length);
  expect(await sheetNames()).toEqual(before);
  await ask(page, 'newBook');
});

test('a season plan is asked for, previewed and written', async () => {
  const { page, pane } = session;
  await typeInto(page, 'B2', 'mine, keep');
  await turnTo(pane, 'plan');
  await pane.getByRole('button', { name: 'Fill in an example' }).click();
  await pane.waitForSelector('.preview h2:text-is("Result")');
  await picture(page, 'plan-preview');
  await writePlan();
  await until(async () => (await pane.locator('.notice').count()) > 0);
  expect(await pane.innerText('.notice')).toContain('written on new sheets');
  const names = await sheetNames();
  expect(names).toEqual(expect.arrayContaining(['Today', 'Orders', 'Batches', 'Calendar', 'Counts']));
  const first = names[0] ?? '';
  expect(await ask(page, 'getValue', `'${first}'!B2`)).toBe('mine, keep');
  await ask(page, 'activate', 'Calendar');
  await picture(page, 'plan-written');
});

test('what the pane wrote is alive: a warmer vat moves the injection to a later hour', async () => {
  const { page } = session;
  const [heads = []] = await ask(page, 'getValues', "'Batches'!A4:Q4");
  const [measured, at] = ['Water measured, °C', 'Inject at'].map((head) => heads.indexOf(head));
  const cellOf = (column = -1): string => `'Batches'!${String.fromCharCode(65 + column)}5`;
  const inject = await ask(page, 'getValue', cellOf(at));
  await ask(page, 'setValue', cellOf(measured), 29);
  const later = await ask(page, 'getValue', cellOf(at));
  expect(typeof inject === 'number' && typeof later === 'number' && later > inject).toBe(true);
  await ask(page, 'setValue', cellOf(measured), '');
  expect(await ask(page, 'getValue', cellOf(at))).toBe(inject);
});

test('no written cell shows an error', async () => {
  const { page } = session;
  const bad: string[] = [];
  for (const name of ['Today', 'Orders', 'Batches', 'Calendar', 'Vats', 'Counts', 'Checks'])
    for (const line of await ask(page, 'getValues', `'${name}'!A1:L80`))
      for (const cell of line) if (isError(cell)) bad.push(`${name}: ${cell.error} ${cell.message ?? ''}`);
  expect(bad).toEqual([]);
});

test('a second plan asks first and overwrites nothing', async () => {
  const { pane } = session;
  const before = await everything();
  await writePlan();
  await pane.waitForSelector('[role=alert] .question');
  expect(await everything()).toBe(before);
  await picture(session.page, 'plan-asks');
  const buttons = pane.locator('.question button');
  await buttons.last().click();
  expect(await everything()).toBe(before);
});

test('a function is found, tried and inserted; a cell in use is asked about', async () => {
  const { page, pane } = session;
  await ask(page, 'newBook');
  await typeInto(page, 'A1', '7.8');
  await ask(page, 'select', 'C3');
  await turnTo(pane, 'find');
  // A new workbook brings the pane's kept state with it; a search typed before that is typed again.
  await until(async () => {
    await pane.fill('input[type=search]', 'ammonia share');
    await page.waitForTimeout(1000);
    return (await pane.getByRole('button', { name: /AMMONIA\.SHARE/ }).count()) > 0;
  });
  await picture(page, 'functions-found');
  await pane
    .getByRole('button', { name: /AMMONIA\.SHARE/ })
    .first()
    .click();
  await pane.waitForSelector('text=Emerson');
  await pane.locator('input[id$="-ph"]').fill('8');
  await pane.locator('input[id$="-temperature"]').fill('25');
  await pane.waitForSelector('text=/0\\.053|5\\.4/');
  await picture(page, 'function-page');
  await pane.getByRole('button', { name: /^Insert/ }).click();
  await until(async () => (await ask(page, 'getFormula', 'C3')) !== null);
  expect(await ask(page, 'getFormula', 'C3')).toBe('=SPAWN.AMMONIA.SHARE(8,25)');
  expect(await ask(page, 'getValue', 'C3')).toBeCloseTo(0.05366, 4);
  await ask(page, 'select', 'A1');
  await pane.getByRole('button', { name: /^Insert/ }).click();
  await pane.waitForSelector('[role=alert] .question');
  expect(await ask(page, 'getValue', 'A1')).toBe(7.8);
});

test('a saved file reads back with the same formulas and values', async () => {
  const { page } = session;
  const { bytes } = await page.evaluate(async () => {
    const saved = await window.spawnbook?.saveFile();
    return { bytes: Array.from(saved?.bytes ?? []) };
  });
  const read = readXlsx(Uint8Array.from(bytes));
  if (!('model' in read)) throw new Error(JSON.stringify(read));
  const cell = read.model.sheets[0]?.cells.C3;
  expect(cell?.formula).toBe('=SPAWN.AMMONIA.SHARE(8,25)');
  expect(cell?.value).toBeCloseTo(0.05366, 4);
  await ask(page, 'newBook');
  await page.evaluate(async (all) => {
    await window.spawnbook?.openFile(Uint8Array.from(all), 'saved.xlsx');
  }, bytes);
  expect(await ask(page, 'getFormula', 'C3')).toBe('=SPAWN.AMMONIA.SHARE(8,25)');
  expect(await ask(page, 'getValue', 'C3')).toBeCloseTo(0.05366, 4);
});

test('the built template opens with the values it was stored with', async () => {
  const { page } = session;
  const bytes = Array.from(readFileSync('templates/season-plan.xlsx'));
  const stored = readXlsx(Uint8Array.from(bytes));
  if (!('model' in stored)) throw new Error(JSON.stringify(stored));
  await page.evaluate(async (all) => {
    await window.spawnbook?.openFile(Uint8Array.from(all), 'season-plan.xlsx');
  }, bytes);
  await ask(page, 'waitForCalculation');
  const wrong: string[] = [];
  let compared = 0;
  for (const sheet of stored.model.sheets) {
    // The first page and the counters behind it follow the day on the clock.
    if (['Today', 'Task list', 'Vat use'].includes(sheet.name)) continue;
    for (const [address, { formula, value }] of Object.entries(sheet.cells)) {
      if (formula === undefined || value === undefined) continue;
      compared++;
      const got = await ask(page, 'getValue', `'${sheet.name}'!${address}`);
      const same =
        typeof value === 'number' && typeof got === 'number'
          ? Math.abs(got - value) <= 1e-9 * Math.max(1, Math.abs(value))
          : JSON.stringify(got ?? '') === JSON.stringify(value);
      if (!same)
        wrong.push(
          `${sheet.name}!${address} ${formula}: stored ${JSON.stringify(value)}, calculated ${JSON.stringify(got)}`,
        );
    }
  }
  expect(wrong).toEqual([]);
  expect(compared).toBeGreaterThan(50);
});

test('narrow panes do not scroll sideways', async () => {
  const narrow = await session.page.context().newPage();
  for (const width of [320, 280]) {
    await narrow.setViewportSize({ width, height: 700 });
    await narrow.goto(session.pane.url());
    await narrow.waitForSelector('#place-plan');
    for (const id of ['today', 'plan', 'vat', 'why']) {
      await narrow.click(`#place-${id}`);
      await narrow.waitForSelector('.page > :not(.wait)');
      expect(
        await narrow.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        ),
      ).toBe(0);
      await narrow.screenshot({ path: join(OUT, `pane-${width}-${id}.png`) });
    }
  }
  await narrow.close();
});

test('nothing went wrong unseen, and nothing was asked of another machine', () => {
  expect(session.trouble).toEqual([]);
});
