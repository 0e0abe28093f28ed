import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import type { Session } from './support/localSheet';
import { ask, launchPhone, openLocalSheet, picture, until, untilReady } from './support/localSheet';

/** A phone of 360 × 740 points: the pane first, the sheet one press away, fingers instead of a mouse. */

let session: Session;
let phone: Awaited<ReturnType<typeof launchPhone>>;
let page: Page;
const profile = mkdtempSync(join(tmpdir(), 'spawnbook-phone-'));
beforeAll(async () => {
  session = await openLocalSheet();
  phone = await launchPhone(profile);
  page = await phone.newPage();
  await page.goto(session.url);
  await untilReady(page);
});
afterAll(async () => {
  await phone.close();
  await session.close();
  rmSync(profile, { recursive: true, force: true });
});

/** What a finger in the middle of the screen would touch. */
const inTheMiddle = (): Promise<string> =>
  page.evaluate(() => {
    const found = document.elementFromPoint(innerWidth / 2, innerHeight / 2);
    return found?.closest('#pane') ? 'pane' : found?.closest('#sheet-area') ? 'sheet' : 'nothing';
  });

test('it opens on the pane, without sideways scrolling', async () => {
  await picture(page, 'phone-pane');
  expect(await inTheMiddle()).toBe('pane');
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
});

test('one press leads to the sheet; a finger chooses a cell, keys fill it, one press leads back', async () => {
  await page.tap('#pane-toggle');
  expect(await inTheMiddle()).toBe('sheet');
  await page.touchscreen.tap(150, 420);
  const chosen = await page.evaluate(
    () => document.querySelector<HTMLInputElement>('[data-u-comp="defined-name"] input')?.value ?? '',
  );
  await page.keyboard.type('=SPAWN.BUFFER.DOSE(1000,4.6,7)');
  await page.keyboard.press('Enter');
  await until(async () => (await ask(page, 'getValues', 'A1:F30')).flat().some((v) => typeof v === 'number'));
  expect(chosen === '' || /^[A-F]\d+$/.test(chosen)).toBe(true);
  await picture(page, 'phone-sheet');
  await page.tap('#pane-toggle');
  expect(await inTheMiddle()).toBe('pane');
});

test('a finger scrolls the sheet', async () => {
  await page.tap('#pane-toggle');
  const devtools = await page.context().newCDPSession(page);
  await ask(page, 'setValue', 'A40', 'far below');
  await devtools.send('Input.synthesizeScrollGesture', {
    x: 180,
    y: 500,
    yDistance: -300,
    gestureSourceType: 'touch',
  });
  await picture(page, 'phone-scrolled');
  await page.tap('#pane-toggle');
});

test('the buttons of the bar are in a list behind one, large enough for a finger', async () => {
  await page.tap('#menu');
  const sizes = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('#tools button')]
      .filter((one) => !one.hidden)
      .map((one) => one.getBoundingClientRect().height),
  );
  expect(sizes.length).toBeGreaterThanOrEqual(5);
  // WCAG 2.2, target size (minimum): 24 pixels; ours are 40.
  expect(Math.min(...sizes)).toBeGreaterThanOrEqual(40);
  await page.tap('#menu');
});

test('on its side it still holds together', async () => {
  await page.setViewportSize({ width: 740, height: 360 });
  await picture(page, 'phone-landscape');
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  await page.setViewportSize({ width: 360, height: 740 });
});
