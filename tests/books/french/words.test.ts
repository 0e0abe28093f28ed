import { fr } from '../../../shared/books/words/fr';
import { FIRST_SHEETS } from '../../../shared/books/words/sheetNames';
import { englishOf, sayIn } from '../../../shared/books/words/words';
import * as columns from '../../../shared/books/living/columns';
import { VATS_TODAY } from '../../../shared/books/living/pages/today';
import { FIGURES, FIGURE_HEADINGS, SPREAD_HEADINGS } from '../../../shared/books/living/workings/figureList';
import { PRICE_FIELDS, SETUP_FIELDS } from '../../../shared/books/living/workings/setupFields';
import { phrases as panePhrases } from '../../../taskpane/words/phrases/fr';

/** What is read back from a French book means one thing, and pane and book say the same. */

const structure = [
  ...Object.values(columns)
    .filter((of): of is typeof columns.ORDERS => typeof of === 'object' && !Array.isArray(of))
    .flatMap((of) => Object.values(of).map(({ title }) => title)),
  ...Object.values(VATS_TODAY).map(({ title }) => title),
  ...FIGURE_HEADINGS,
  ...SPREAD_HEADINGS,
  ...FIGURES.map(({ label }) => label),
  ...[...SETUP_FIELDS, ...PRICE_FIELDS].flatMap(({ label, choices = [] }) => [label, ...choices]),
].filter(Boolean);

test('headings, labels and choices: none has another’s French, and each leads back to itself', () => {
  expect(structure.filter((text) => englishOf(fr, sayIn(fr, text)) !== text)).toEqual([]);
});

test('the first sheet is known before the words are fetched', () => {
  expect(FIRST_SHEETS).toEqual({ en: 'Today', fr: fr.sheets.Today });
});

test('the pane says what the book says', () => {
  for (const [english, own] of Object.entries(fr.phrases))
    expect([english, panePhrases[english]]).toEqual([english, own]);
  const marks = (text: string): string => (text.match(/\{(\d*|n)\}/g) ?? []).sort().join();
  expect(Object.entries(fr.phrases).filter(([english, own]) => marks(english) !== marks(own))).toEqual([]);
});
