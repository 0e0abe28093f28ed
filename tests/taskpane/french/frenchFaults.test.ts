import { isKnown, lookUp, phraseTable } from '../../../shared/units/phrases';
import { phrases } from '../../../taskpane/words/phrases/fr';
import { ENGLISH } from '../../books/french/texts';
import { formFaults } from '../formFaults';

/** What stands beside a field of a plan that cannot be used: sentences of ours, and French in a French pane. */

const table = phraseTable('fr', phrases, () => ',');
const said = [...formFaults()];

test('every sentence beside a field is one of ours', () => {
  expect(said.length).toBeGreaterThan(600);
  expect(said.filter((text) => /string to have|invalid|too (big|small)|<=|>=/i.test(text))).toEqual([]);
});

test('and has its French', () => {
  expect(said.filter((text) => !isKnown(table, text))).toEqual([]);
});

/** What was typed and options stay as they are. */
const bare = (text: string): string => text.replace(/« [^»]* »|"[^"]*"/g, '');
test('no common word of English is left in it', () => {
  expect(said.map((text) => lookUp(table, text)).filter((text) => ENGLISH.test(bare(text)))).toEqual([]);
});
