import type { Page } from 'playwright-core';
import type { Session } from '../../browser/support/localSheet';
import { ask, kill, openLocalSheet, picture, until, untilReady } from '../../browser/support/localSheet';

/**
 * A phone of 360 × 740 points: the pane first, the sheet one press away, fingers instead of a mouse. Then the
 * installed page at the vat: no network, no server, a killed tab, a clock an hour wrong, two tabs on one book.
 */

let session: Session;
let page: Page;
beforeAll(async () => {
  session = await openLocalSheet({ isPhone: true, keepsSite: true });
  ({ page } = session);
});
afterAll(async () => {
  await session.close();
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

describe('installed, without network and server', () => {
  const HOUR = 3_600_000;
  /** From the icon on the phone's screen: the start address, nothing of the last workbook in it. */
  async function started(clockIsLate = 0): Promise<Page> {
    const next = await session.page.context().newPage();
    if (clockIsLate !== 0)
      await next.addInitScript((late) => {
        const Real = Date;
        window.Date = class extends Real {
          constructor(...given: []) {
            super(...((given.length > 0 ? given : [Real.now() - late]) as []));
          }
          static override now(): number {
            return Real.now() - late;
          }
        } as DateConstructor;
      }, clockIsLate);
    await next.goto(session.url);
    await untilReady(next);
    return next;
  }
  const goOn = async (on: Page): Promise<void> => {
    await on.getByRole('button', { name: 'Go on with it' }).tap();
    await until(async () => (await ask(on, 'getValue', 'J1')) === 'Vat 1');
  };

  beforeAll(async () => {
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null, undefined, {
      timeout: 120_000,
    });
    await session.stopServer();
  });

  test('the tab is killed at the vat: the app goes on with the workbook, and its pane answers', async () => {
    await ask(page, 'setValue', 'J1', 'Vat 1');
    await ask(page, 'setValue', 'J2', 5.1);
    await ask(page, 'keepNow');
    await kill(page);
    page = await started();
    await picture(page, 'phone-go-on');
    await goOn(page);
    expect(await ask(page, 'getValues', 'J1:J2')).toEqual([['Vat 1'], [5.1]]);
    await ask(page, 'setFormula', 'J3', '=SPAWN.BUFFER.DOSE(600,J2,6.5)');
    expect(await ask(page, 'getValue', 'J3')).toEqual(expect.any(Number));
    const pane = page.frames().find((frame) => frame.url().includes('taskpane'));
    await pane?.click('#place-vat');
    await pane?.click('#card-dose');
    await pane?.waitForSelector('input');
    await ask(page, 'keepNow');
  });

  test('the clock is set back an hour: what is typed is kept and found, and after it is set right too', async () => {
    await kill(page);
    page = await started(HOUR);
    await goOn(page);
    await ask(page, 'setValue', 'J4', 'typed an hour ago');
    await ask(page, 'keepNow');
    await kill(page);
    page = await started();
    await goOn(page);
    expect(await ask(page, 'getValue', 'J4')).toBe('typed an hour ago');
    expect(await ask(page, 'kept')).toHaveLength(1);
    await ask(page, 'setValue', 'J5', 'now');
    await ask(page, 'keepNow');
    expect(await ask(page, 'kept')).toHaveLength(1);
  });

  test('a second tab on the same book goes on with a copy', async () => {
    const second = await started();
    await second.goto(page.url());
    await second.reload();
    await untilReady(second);
    expect(await second.textContent('#status')).toContain('open in another tab');
    await ask(second, 'setValue', 'J6', 'second');
    await ask(second, 'keepNow');
    expect((await ask(page, 'kept')).map(({ title }) => title).sort()).toEqual([
      'Workbook',
      'Workbook (copy)',
    ]);
    expect(await ask(page, 'getValue', 'J6')).toBeNull();
    await second.close();
  });
});
