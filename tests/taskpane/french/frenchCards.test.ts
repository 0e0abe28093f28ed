import { setPhrases } from '../../../taskpane/pane/phrases';
import { changeSetting } from '../../../taskpane/screens/settings/commands/settings';
import { fakeWorld } from '../support/fakePort';
import type { Page } from '../support/page';
import { openPage } from '../support/page';

/**
 * The same cards, dosing and plans in both languages. What reads the same in both, or has a point before decimals,
 * was not said in French.
 */

const CARDS: Readonly<Record<string, string>> = {
  weigh: '1 point 4',
  eggs: '2 1 0 next 1 next 6 4 0 next 1 next 7 0 0',
  fry: '6 0 0 next 5 0 0 next 2 0 next 2 2',
  grow: '1 0 0 next 1',
  salt: '6 0 0 next 5 next 3 0',
  dead: '1 2 0 next 9 0 0 next 3',
  feed: '9 0 0 0 next 0 point 0 2 next 8',
  water: '2 6 next 6 point 4 next 3',
  look: '8 0 next 1 0 0',
  formalin: '2 0 next 2 0 0 next 1 5',
  hand: '1 0 0',
};
const PRESSES = {
  en: { example: 'Fill in an example', plan: 'Work the plan out' },
  fr: { example: 'Remplir un exemple', plan: 'Calculer le plan' },
} as const;
type Language = keyof typeof PRESSES;

const textsOf = (page: Page): readonly string[] =>
  page
    .all('*')
    .flatMap((element) =>
      element.closest('[lang=en]') !== null || ['CODE', 'OPTION'].includes(element.tagName)
        ? []
        : [
            ...[...element.childNodes].flatMap((node) =>
              node.nodeType === 3 ? [node.textContent ?? ''] : [],
            ),
            ...['aria-label', 'placeholder', 'title'].flatMap((name) => element.getAttribute(name) ?? []),
          ],
    );

/** Texts of each state, by its name. */
async function walk(language: Language): Promise<ReadonlyMap<string, readonly string[]>> {
  const page = openPage('ready', fakeWorld(), 'settings');
  page.store.send(changeSetting, { language });
  await page.store.idle();
  await import('../../../taskpane/words/phrases/fr');
  await new Promise((go) => {
    setTimeout(go, 20);
  });
  await page.store.idle();
  const seen = new Map<string, readonly string[]>();
  const look = (name: string): void => {
    seen.set(name, textsOf(page));
  };
  const press = async (id: string): Promise<void> => {
    page.one(id).click();
    await page.store.idle();
  };
  const keys = async (faces: string): Promise<void> => {
    for (const face of faces.split(' ')) await press(`#key-${face}`);
  };
  await page.go('vat');
  for (const [card, faces] of Object.entries(CARDS)) {
    await press(`#card-${card}`);
    await keys(faces);
    look(`${card} filled`);
    await keys('write');
    look(`${card} written`);
    await press('#card-back');
  }
  look('lines of the vat');
  await press('#card-dose');
  for (const [field, text] of Object.entries({ volume: '600', temperature: '26', spoon: '1' }))
    await page.type(`#dose-${field}`, text);
  const stocked = page.one('#dose-stocked') as HTMLSelectElement;
  stocked.value = 'no';
  stocked.dispatchEvent(new Event('change', { bubbles: true }));
  await page.store.idle();
  look('dosing set up');
  await press('#dose-ready');
  await keys('5 point 1 write');
  look('first reading');
  await keys('5 point 5 next 5 point 5 write');
  look('what to give');
  await keys('6 point 9 next 6 point 9 write');
  look('done');
  await page.go('plan');
  await page.press(PRESSES[language].example);
  look('plan of one order');
  page.one('#mode-season').click();
  await page.store.idle();
  await page.press(PRESSES[language].example);
  await page.press(PRESSES[language].plan);
  look('plan of a season');
  return seen;
}
afterAll(() => {
  setPhrases('en', undefined);
});

/** Names, not words of a language. */
const NAMES = /^(Spawnbook|SPAWN\.|B\d|[A-Z]\d)/;
/** Without its numbers, which differ by their decimal mark. */
const bare = (text: string): string => text.replace(/[\d.,\s]+/g, ' ');
const isWord = (text: string): boolean => /\p{Ll}{3}/u.test(text) && !NAMES.test(text);

test('filled cards, a dosing and plans: nothing reads the same as in English, no number has a point', async () => {
  const english = await walk('en');
  const french = await walk('fr');
  const left = [...french].flatMap(([state, texts]) => {
    const same = new Set(english.get(state)?.map(bare));
    return texts.flatMap((text) =>
      isWord(text) && ((same.has(bare(text)) && text.trim().includes(' ')) || /\d\.\d/.test(text))
        ? [`${state}: ${text}`]
        : [],
    );
  });
  expect(english.size).toBeGreaterThan(25);
  expect([...new Set(left)]).toEqual([]);
});
