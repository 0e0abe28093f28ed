import type { Frame, Page } from 'playwright-core';
import { bookSheetNames, SHEETS } from '../../../shared/books/living';
import { fr } from '../../../shared/books/words/fr';
import { ownSheetName } from '../../../shared/books/words/words';
import type { Session } from '../../browser/support/localSheet';
import { ask, openLocalSheet, picture, turnTo } from '../../browser/support/localSheet';
import { smallTargets, walkOf } from '../../browser/support/states';

/** A season in French from the pane: written, one count noted at the vat, planned again over its own sheets. */

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

const PATIENCE = 180_000;
const noticed = async (): Promise<string> => {
  await pane.waitForSelector('.notice', { timeout: PATIENCE });
  await ask(page, 'waitForCalculation');
  return pane.locator('.notice').innerText();
};
const sheetNames = (): Promise<string[]> => ask(page, 'getSheetNames');
/** Words of English that no French text and no name has. */
const ENGLISH =
  /(?<!\p{L})(the|of|with|your|you|which|from|was|were|this|that|what|when|where|each|every|not)(?!\p{L})/iu;

test('the example of a season is written in French, alive, and no sheet holds English', async () => {
  await pane.click('#menu-button');
  await pane.click('#place-settings');
  await pane.selectOption('#setting-language', 'fr');
  await turnTo(pane, 'plan');
  await pane.click('#mode-season');
  await pane.click('#season-example');
  await pane.click('#season-plan');
  await pane.waitForSelector('.current .order-plan', { timeout: PATIENCE });
  await pane.click('#season-write');
  expect(await noticed()).toContain('La saison est écrite');
  const names = await sheetNames();
  expect(names).toEqual(expect.arrayContaining([...bookSheetNames('', names)]));
  expect(names).toContain('Commandes');
  const own = Object.values(SHEETS).map((name) => ownSheetName(fr, name));
  const english: unknown[] = [];
  for (const name of names.filter((one) => own.includes(one) && one !== 'Notes' && one !== 'Chiffres')) {
    const values = await ask(page, 'getValues', `'${name}'!A1:AK60`);
    for (const cell of values.flat())
      if (typeof cell === 'string' && (ENGLISH.test(cell) || cell.startsWith('#')))
        english.push([name, cell]);
  }
  expect(english).toEqual([]);
  expect((await ask(page, 'getValues', `'Aujourd’hui'!C5:C5`))[0]?.[0]).toBe('● tout tient');
  await picture(page, 'french-season');
});

test('dead fish are noted at the vat; planned again over its own sheets, the book stays French', async () => {
  await pane.click('#place-vat');
  await pane.click('#card-dead');
  for (const key of ['1', '2']) await pane.click(`#key-${key}`);
  await pane.click('#key-write');
  await ask(page, 'waitForCalculation');
  await turnTo(pane, 'plan');
  await pane.click('#season-again', { timeout: PATIENCE });
  await pane.waitForSelector('#season-read', { timeout: PATIENCE });
  await pane.click('#season-plan');
  await pane.waitForSelector('#season-over', { timeout: PATIENCE });
  await pane.click('#season-over');
  expect(await noticed()).toContain('La saison est replanifiée');
  const names = await sheetNames();
  expect(names).toContain('Commandes');
  expect(names).not.toContain('Orders');
  expect(session.trouble).toEqual([]);
});

/** A phone held upright in a wet hand, the pane alone. */
async function narrowPane(): Promise<Page> {
  const narrow = await page.context().newPage();
  await narrow.setViewportSize({ width: 270, height: 640 });
  await narrow.goto(pane.url());
  await narrow.click('#menu-button');
  await narrow.click('#place-settings');
  await narrow.selectOption('#setting-language', 'fr');
  return narrow;
}
const sideways = (narrow: Page): Promise<number> =>
  narrow.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

test('every state in French at 270 px: nothing scrolls sideways, no target is under 44', async () => {
  const narrow = await narrowPane();
  const found: unknown[] = [];
  for (const [name, go] of walkOf(narrow).states) {
    await go();
    await narrow.waitForSelector('.page > :not(.wait)');
    const [small, over] = [await smallTargets(narrow, 44), await sideways(narrow)];
    if (small.length > 0 || over > 0) found.push([name, small, over]);
  }
  await narrow.close();
  expect(found).toEqual([]);
});

test('typed as a French farmer types: commas, spaces, day before month, a long name', async () => {
  const narrow = await narrowPane();
  const walk = walkOf(narrow);
  await walk.plan('run');
  for (const [key, text] of Object.entries({
    wanted: '10 000',
    females: '4',
    femaleWeight: '1,25',
    males: '4',
    vats: '8',
    vatLitres: '1 000',
    temperature: '26,5',
  }))
    await narrow.fill(`#plan-${key}`, text);
  await narrow.waitForSelector('#plan-answer:not(.stale) .verdict-line');
  expect(await narrow.innerText('#plan-answer')).toMatch(/^Injectez \d+ femelles? le /);
  expect(await narrow.locator('.fault').allInnerTexts()).toEqual([]);
  await narrow.click('#plan-others > summary');
  const name = 'Écloserie de la Coopérative des Pisciculteurs du Bas-Fleuve'.slice(0, 60);
  await narrow.fill('#plan-hatchery', name);
  expect(await sideways(narrow)).toBe(0);

  await walk.plan('season');
  await narrow.fill('#season-staff-daysOff', '25/04/2027\n2 mai 2027');
  await narrow.press('#season-staff-daysOff', 'Tab');
  expect(await narrow.locator('#season-staff-daysOff-fault').count()).toBe(0);
  await narrow.fill('#season-staff-daysOff', '02/04/2027');
  await narrow.press('#season-hatchery', 'Tab');
  expect(await narrow.innerText('#season-staff-daysOff-fault')).toContain('2 avr. ou 4 févr.');
  await narrow.fill('#season-hatchery', 'Écloserie '.repeat(30));
  await narrow.press('#season-hatchery', 'Tab');
  expect(await narrow.innerText('#season-hatchery-fault')).toContain('au plus 60 caractères');
  expect(await sideways(narrow)).toBe(0);

  await walk.part('find');
  await narrow.fill('#function-search', 'hatch time');
  await narrow.click('#function-list button:has-text("HATCH.TIME")');
  await narrow.fill('#argument-fertilised', '01/05/2026 22h30');
  await narrow.fill('#argument-temperature', '26,5');
  expect(await narrow.innerText('#function-answer .formula')).toContain('DATE(2026,5,1)+TIME(22,30,0),26.5');
  await narrow.fill('#argument-temperature', '16,5');
  const refused = await narrow.innerText('#function-answer .answer-error');
  expect(refused).toContain('Température');
  expect(refused).not.toMatch(ENGLISH);
  await narrow.close();
});

test('a line noted with wet hands is taken back after the pane was closed and opened again', async () => {
  const narrow = await narrowPane();
  await walkOf(narrow).card('weigh');
  await narrow.locator('.tile input').first().fill('2,3');
  expect(await narrow.innerText('#card-answer')).toContain('1,15 mL');
  await narrow.click('#key-write');
  await narrow.waitForSelector('#line-back');
  await narrow.close();
  const again = await page.context().newPage();
  await again.setViewportSize({ width: 270, height: 640 });
  await again.goto(pane.url());
  await walkOf(again).card('weigh');
  expect(await again.innerText('#card-answer')).toContain('1,15 mL');
  await again.click('#line-back');
  await again.waitForFunction(() => !document.querySelector('#card-answer')?.textContent?.includes('1,15'));
  await again.close();
  expect(session.trouble).toEqual([]);
});
