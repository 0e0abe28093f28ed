import { phrases } from '../../../taskpane/words/phrases/fr';
import { en } from '../../../taskpane/words/en';
import { fr } from '../../../taskpane/words/fr';
import { say, setPhrases } from '../../../taskpane/pane/phrases';
import { changeSetting } from '../../../taskpane/screens/settings/commands/settings';
import { bookWorld } from '../support/bookWorld';
import { fakeWorld } from '../support/fakePort';
import type { Page } from '../support/page';
import { EVERY_PLACE, openPage } from '../support/page';

/**
 * With French chosen no state shows an English sentence. What stays English (help of functions, findings,
 * sentences of errors) says so by its own lang attribute, as WCAG 3.1.2 asks, so that a reader pronounces it.
 */

/** Common words of English that are no words of French. */
const ENGLISH =
  /(?<!\p{L})(the|of|is|are|and|with|not|your|you|which|from|for|was|were|has|have|this|that|to|by|be|what|when|where|each|every|its|their|them|they)(?!\p{L})/iu;
const own = (element: Element): boolean => element.closest('[lang=en]') === null;
const textsOf = (page: Page): string[] =>
  page
    .all('*')
    .flatMap((element) =>
      own(element)
        ? [
            ...[...element.childNodes].flatMap((node) =>
              node.nodeType === 3 ? [node.textContent ?? ''] : [],
            ),
            ...['aria-label', 'placeholder', 'title'].flatMap((name) => element.getAttribute(name) ?? []),
          ]
        : [],
    );
const englishIn = (page: Page): string[] => [...new Set(textsOf(page).filter((text) => ENGLISH.test(text)))];

const french = async (page: Page): Promise<Page> => {
  page.store.send(changeSetting, { language: 'fr' });
  await page.store.idle();
  // The sentences are fetched once.
  await import('../../../taskpane/words/phrases/fr');
  await new Promise((go) => {
    setTimeout(go, 20);
  });
  await page.store.idle();
  return page;
};
afterAll(() => {
  setPhrases('en', undefined);
});

test('every place, card and part in French', async () => {
  const page = await french(openPage('ready', fakeWorld(), 'settings'));
  const found: Record<string, string[]> = {};
  const look = (name: string): void => {
    const bad = englishIn(page);
    if (bad.length > 0) found[name] = bad;
  };
  for (const place of EVERY_PLACE) {
    await page.go(place);
    look(place);
  }
  await page.go('vat');
  page.one('#card-back').click();
  await page.store.idle();
  for (const id of page.all('.card-face').map((face) => face.id)) {
    page.one(`#${id}`).click();
    await page.store.idle();
    look(id);
    page.one('#card-back').click();
    await page.store.idle();
  }
  await page.go('plan');
  page.one('#mode-season').click();
  await page.store.idle();
  look('season');
  expect(found).toEqual({});
});

test('a plan of one order and one of a season, with their answers, in French', async () => {
  const page = await french(openPage('absent', fakeWorld(), 'plan'));
  await page.press('Remplir un exemple');
  expect(englishIn(page)).toEqual([]);
  page.one('#mode-season').click();
  await page.store.idle();
  await page.press('Remplir un exemple');
  await page.press('Calculer le plan');
  expect(page.text()).toMatch(/Promettez [\d\s]+, espérez/);
  expect(englishIn(page)).toEqual([]);
});

test('what stands in a field from the start is French, names and decimals, in every form', async () => {
  const page = await french(openPage('ready', fakeWorld(), 'settings'));
  const values = (): string[] =>
    page
      .all('input')
      .flatMap((field) =>
        (field as HTMLInputElement).type === 'text' ? [(field as HTMLInputElement).value] : [],
      );
  const bad = (): string[] =>
    values().filter((text) => /\d\.\d/.test(text) || /hatchery|buyer|farm|pond|vat |line /i.test(text));
  await page.go('plan');
  expect(bad()).toEqual([]);
  expect(values()).toEqual(expect.arrayContaining(['Mon écloserie', 'L’acheteur']));
  await page.press('Remplir un exemple');
  expect(bad()).toEqual([]);
  page.one('#mode-season').click();
  await page.store.idle();
  expect(bad()).toEqual([]);
  expect(values()).toContain('Mon écloserie');
  await page.press('Remplir un exemple');
  expect(bad()).toEqual([]);
  expect(values()).toEqual(expect.arrayContaining(['Écloserie des Aulnes', '0,03', '27,5']));
  expect((page.one('#season-vats') as HTMLTextAreaElement).value).toContain('Bac 1');
  expect((page.one('#season-females') as HTMLTextAreaElement).value).toContain('F1; 1,4; souche A');
  expect(page.all('.fault')).toEqual([]);
  await page.go('vat');
  page.one('#card-weigh').click();
  await page.store.idle();
  expect(values()).toContain('0,5');
  // A name somebody typed is theirs, whatever it is.
  await page.go('plan');
  await page.type('#season-hatchery', 'My hatchery 2');
  expect((page.one('#season-hatchery') as HTMLInputElement).value).toBe('My hatchery 2');
});

test('Today beside a season’s book in French', async () => {
  const world = bookWorld();
  const page = await french(openPage('ready', world, 'today'));
  expect(page.text()).toContain('Ensuite');
  expect(englishIn(page)).toEqual([]);
});

test('one language is one table: the words of the other have the same keys, its sentences the same marks', () => {
  const keys = (table: object): string[] =>
    Object.entries(table).flatMap(([key, value]) =>
      typeof value === 'object' && value !== null && !Array.isArray(value)
        ? keys(value as object).map((inner) => `${key}.${inner}`)
        : [key],
    );
  // A state of a dosing is said by its own word in English.
  expect(keys(fr).filter((key) => !key.startsWith('vat.dose.states.'))).toEqual(keys(en));
  const marks = (text: string): number => (text.match(/\{(\d*|n)\}/g) ?? []).length;
  expect(Object.entries(phrases).filter(([english, said]) => marks(english) !== marks(said))).toEqual([]);
});

test('numbers, days and verdicts inside a sentence are said too; what is unknown stays', () => {
  setPhrases('fr', phrases);
  expect(say('Inject 4 females on Sat 10 Apr 08:00')).toBe('Injectez 4 femelles le sam. 10 avr. 08:00');
  expect(say('First look: press lightly, then every half hour. Cooler water means later')).toBe(
    'Premier regard: presser légèrement, puis chaque demi-heure. Une eau plus fraîche veut dire plus tard',
  );
  expect(say('F1, F2')).toBe('F1, F2');
  expect(say('Kingfisher Creek')).toBe('Kingfisher Creek');
  setPhrases('en', undefined);
  expect(say('Sat 10 Apr')).toBe('Sat 10 Apr');
});
