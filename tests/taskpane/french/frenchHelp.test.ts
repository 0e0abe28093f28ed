import { CATALOGUE } from '../../../shared/catalogue';
import { expects } from '../../../shared/functions/describe';
import { phraseTable, isKnown, lookUp } from '../../../shared/units/phrases';
import { phrases as base } from '../../../taskpane/words/phrases/fr';
import { phrases as more } from '../../../taskpane/words/phrases/frMore';
import { labelOf } from '../../../taskpane/pane/values/show';
import { setPhrases } from '../../../taskpane/pane/phrases';
import { changeSetting } from '../../../taskpane/screens/settings/commands/settings';
import { ENGLISH } from '../../books/french/texts';
import { fakeWorld } from '../support/fakePort';
import { openPage } from '../support/page';

/** The help of functions in French: every text of every record, and the same figures in it. */

const table = phraseTable('fr', { ...more, ...base }, () => ',');
const texts: readonly (readonly [where: string, text: string])[] = CATALOGUE.flatMap((fn) => [
  [`${fn.id}: what it is`, fn.summary] as const,
  [`${fn.id}: what it gives`, fn.returns.doc] as const,
  [`${fn.id}: where it holds`, fn.valid] as const,
  [`${fn.id}: how it works`, fn.help ?? ''] as const,
  ...fn.params.flatMap(({ name, doc }) => [
    [`${fn.id}: ${name}`, doc] as const,
    [`${fn.id}: label of ${name}`, labelOf(name)] as const,
  ]),
  ...(fn.returns.kind === 'value'
    ? []
    : Object.values(fn.returns.columns).flatMap(({ title, doc = '' }) => [
        [`${fn.id}: a column`, title] as const,
        [`${fn.id}: of ${title}`, doc] as const,
      ])),
]);

test('every text of every function has its French', () => {
  expect(texts.length).toBeGreaterThan(2000);
  expect(texts.filter(([, text]) => !isKnown(table, text))).toEqual([]);
});

/** Options stand as cells hold them, in their marks. */
const bare = (text: string): string =>
  text.replace(/« [^»]* »|\b[A-Z]+\.[A-Z.]+\b|\b\w+ \([^)]*\)|\d in\b/g, '');
test('no common word of English is left in it', () => {
  expect(
    texts
      .map(([where, text]) => [where, lookUp(table, text)] as const)
      .filter(([, own]) => ENGLISH.test(bare(own))),
  ).toEqual([]);
});

/** Digits in their order, whatever parts thousands and decimals. */
const digits = (text: string): string =>
  [...text.replace(/CO2|NH3|NH4|CaCO3/g, '').matchAll(/\d/g)].sort().join('');
test('no figure changed on the way', () => {
  expect(
    texts
      .filter(([, text]) => digits(text) !== digits(lookUp(table, text)))
      .map(([where, text]) => `${where}: ${text}`),
  ).toEqual([]);
});

test('marks stand where they stood', () => {
  const marks = (text: string): number => (text.match(/\{(\d*|n)\}/g) ?? []).length;
  expect(Object.entries(more).filter(([english, said]) => marks(english) !== marks(said))).toEqual([]);
});

test('what an argument takes is said too', () => {
  const takes = [
    ...new Set(CATALOGUE.flatMap(({ params }) => params.map((param) => `Takes ${expects(param)}.`))),
  ];
  expect(takes.filter((text) => !isKnown(table, text))).toEqual([]);
});

test('the pane shows them: a card of the finder, and the page of a function but for its examples', async () => {
  const page = openPage('ready', fakeWorld(), 'settings');
  page.store.send(changeSetting, { language: 'fr' });
  await page.go('find');
  await import('../../../taskpane/words/phrases/frMore');
  await new Promise((go) => {
    setTimeout(go, 50);
  });
  await page.type('#function-search', 'ammoniac toxique');
  const card = page.all('.card-text').find((one) => one.textContent?.startsWith('Azote ammoniacal toxique'));
  expect(card?.getAttribute('lang')).toBeNull();
  (card?.closest('button') ?? card)?.dispatchEvent(new MouseEvent('click', { bubbles: true }));
  await page.store.idle();
  expect(page.one('.lead').textContent).toBe(
    lookUp(table, CATALOGUE.find(({ id }) => id === 'AMMONIA.TOXIC')?.summary ?? ''),
  );
  const left = page
    .all('[lang=en]')
    .filter((one) => one.closest('.examples') === null)
    .map(({ textContent }) => textContent);
  expect(left).toEqual([]);
  setPhrases('en', undefined);
});

test('sentences that follow each other are said one by one, and no pattern reaches over the end of one', () => {
  expect(
    lookUp(
      table,
      'That is 0.73 g. Stock: 1 g of soda ash in 1 litre of clean water, stirred; made fresh today. Held back so as not to pass the top of the window.',
    ),
  ).toBe(
    'Cela fait 0,73 g. Solution : 1 g de carbonate de soude dans 1 litre d’eau propre, remuée ; faite aujourd’hui. Retenu pour ne pas dépasser le haut de la fenêtre.',
  );
});
