import { evaluate } from '../../shared/catalogue/calculation';
import type { Session } from './support/localSheet';
import { ask, openLocalSheet, until } from './support/localSheet';

/** What a newcomer meets first, in a real browser; the rest is walked by `npm run test:long`. */

let session: Session;
beforeAll(async () => {
  session = await openLocalSheet();
});
afterAll(async () => {
  await session.close();
});

test('npm start prints the address and a formula to try', () => {
  expect(session.printed).toMatch(/Spawnbook is at http:\/\/localhost:\d+\//);
  expect(session.printed).toMatch(/=SPAWN\.[A-Z.]+\(/);
});

test('the first screen is an empty sheet, and the formula that npm start prints works in the chosen cell', async () => {
  const { page } = session;
  const formula = /=SPAWN\.[A-Z.]+\(.*\)/.exec(session.printed)?.[0] ?? '';
  // No click, no menu: the keys go to the cell that is selected.
  await page.keyboard.type(formula);
  await page.keyboard.press('Enter');
  await ask(page, 'waitForCalculation');
  expect(await ask(page, 'getFormula', 'A1')).toBe(formula);
  expect(await ask(page, 'getValue', 'A1')).toBeCloseTo(evaluate(formula) as number, 9);
});

test('five answers typed into the pane make a plan, which is written into the workbook', async () => {
  const { page, pane } = session;
  await pane.click('#place-plan');
  for (const [key, text] of [
    ['wanted', '10000'],
    ['females', '4'],
    ['femaleWeight', '1.2'],
    ['males', '4'],
    ['vats', '8'],
    ['vatLitres', '1000'],
    ['temperature', '27'],
  ] as const) {
    await pane.click(`#plan-${key}`);
    await page.keyboard.type(text);
  }
  await pane.waitForSelector('#plan-answer:not(.stale) .verdict-line');
  expect(await pane.innerText('#plan-answer')).toMatch(/^Inject \d+ females? on /);
  await pane.click('#plan-write');
  await until(async () => (await pane.locator('.notice').count()) > 0);
  expect(await ask(page, 'getSheetNames')).toEqual(
    expect.arrayContaining(['Today', 'Orders', 'Batches', 'Calendar', 'Counts']),
  );
  expect(session.trouble).toEqual([]);
});
