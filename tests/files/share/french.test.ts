import { readFileSync } from 'node:fs';
import { freeze, verify } from '../../../shared/catalogue/sharing';
import type { FreezeOptions, FreezeReport } from '../../../shared/catalogue/sharing';
import { PAGE_WORDS } from '../../../shared/files/share/proof/pageWords';
import { ownWords } from '../../../shared/files/share/proof/page';
import { SOURCES } from '../../../shared/families/sources';
import { phraseTable, lookUp } from '../../../shared/units/phrases';
import { phrases } from '../../../taskpane/words/phrases/fr';
import { phrases as more } from '../../../taskpane/words/phrases/frMore';
import { ENGLISH } from '../../books/french/texts';
import { valuesOf } from './support/read';

/** A copy made in French says so on its page, is found and compared again, and holds the same digests. */

const table = phraseTable('fr', { ...phrases, ...more }, () => ',');
const say = (text: string): string => lookUp(table, text);
const FILE = 'templates/season-backyard-fr.xlsx';
const OPTIONS: FreezeOptions = {
  workbook: 'Écloserie',
  date: '29 novembre 2026',
  personal: true,
  blank: ['Commandes!C'],
};
const made = (
  more: Partial<FreezeOptions>,
): { readonly bytes: Uint8Array; readonly report: FreezeReport } => {
  const result = freeze(readFileSync(FILE), { ...OPTIONS, ...more });
  if (result.kind !== 'made') throw new Error(result.kind);
  return result;
};
const english = made({});
const french = made({ language: 'fr', say });
/** Row by row, as an independent reader sees it. */
const pageOf = async ({ bytes, report }: typeof french): Promise<string[]> =>
  [...(await valuesOf(bytes))].flatMap(([place, value]) =>
    place.startsWith(`${report.page}!`) && typeof value === 'string' ? [value] : [],
  );

/** A column AT is no English word: cells are taken out of what is looked through. */
const withoutCells = (text: string): string => text.replace(/\b[A-Z]{1,3}\d+(:[A-Z]{1,3}\d+)?\b/g, '');

/** Titles of publications keep their language. */
const citations = Object.values(SOURCES).map(({ citation }) => citation);
const isCited = (text: string): boolean => citations.some((citation) => text.startsWith(citation));

test('its page is in French', async () => {
  expect(french.report.page).toBe(PAGE_WORDS.fr.name);
  const texts = await pageOf(french);
  expect(texts.length).toBeGreaterThan(100);
  const left = texts.filter(
    (text) =>
      ENGLISH.test(withoutCells(text)) &&
      !/https?:|doi:|SPAWN\.|^=|^[0-9a-f]{16,}$/.test(text) &&
      !isCited(text),
  );
  expect(left).toEqual([]);
});
test('every fixed word of the page has its French', () => {
  const [own, other] = [ownWords({ language: 'fr', say }), ownWords({ language: 'en', say: (text) => text })];
  expect(
    own.filter(
      (text, i) =>
        text === other[i] &&
        text !== '' &&
        !['', 'Sources', PAGE_WORDS.en.cells, PAGE_WORDS.en.typed].includes(text),
    ),
  ).toEqual([]);
});

test('it is found again, whole, with the digests of the English copy', async () => {
  const [en, fr] = [verify(english.bytes), verify(french.bytes)];
  expect(en).toMatchObject({ kind: 'checked', matches: true });
  expect(fr).toMatchObject({
    kind: 'checked',
    matches: true,
    date: OPTIONS.date,
    workbook: OPTIONS.workbook,
  });
  const digests = (texts: string[]): string[] => texts.filter((text) => /^[0-9a-f]{16,64}$/.test(text));
  const [one, two] = [digests(await pageOf(english)), digests(await pageOf(french))];
  // All but the seal, which covers the words too.
  expect(two.slice(1)).toEqual(one.slice(1));
  expect(two.length).toBeGreaterThan(10);
  expect(two[0]).not.toBe(one[0]);
});

test('what is reported of it can be said, and the search finds nothing of ours', () => {
  const { removed, left, problems } = english.report;
  const said = [...removed, ...left, ...problems.map(({ sentence }) => sentence)].map(say);
  expect(said.length).toBeGreaterThan(4);
  expect(said.filter((text) => ENGLISH.test(text))).toEqual([]);
  expect(french.report.left.map(say)).toEqual(english.report.left.map(say));
});
