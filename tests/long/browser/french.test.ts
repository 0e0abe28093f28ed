import type { Frame, Page } from 'playwright-core';
import { bookSheetNames, SHEETS } from '../../../shared/books/living';
import { fr } from '../../../shared/books/words/fr';
import { ownSheetName } from '../../../shared/books/words/words';
import type { Session } from '../../browser/support/localSheet';
import { ask, openLocalSheet, picture, turnTo } from '../../browser/support/localSheet';

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
