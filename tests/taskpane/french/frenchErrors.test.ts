import { join } from 'node:path';
import { CATALOGUE } from '../../../shared/catalogue';
import type { NamedParam } from '../../../shared/functions/define';
import { invoke } from '../../../shared/functions/invoke';
import type { Arg } from '../../../shared/functions/invoke';
import { isError, isGrid } from '../../../shared/base/values';
import { isKnown, lookUp, phraseTable } from '../../../shared/units/phrases';
import type { LogFault } from '../../../shared/families/timing/kernels/logFaults';
import { badOrder } from '../../../shared/families/timing/records/logSay';
import { setPhrases } from '../../../taskpane/pane/phrases';
import { errorWords } from '../../../taskpane/pane/values/errorWords';
import { phrases as base } from '../../../taskpane/words/phrases/fr';
import { phrases as more } from '../../../taskpane/words/phrases/frMore';
import { ENGLISH } from '../../books/french/texts';
import { errorTexts } from '../support/errorTexts';

/** Sentences of errors in French: every one of the source, and every one that wrong arguments bring out. */

const phrases = { ...more, ...base };
const table = phraseTable('fr', phrases, () => ',');
beforeAll(() => {
  setPhrases('fr', phrases);
});
afterAll(() => {
  setPhrases('en', undefined);
});
const said = (sentence: string): string =>
  errorWords(sentence)
    .map((part) => lookUp(table, part))
    .join('');
const isSaid = (sentence: string): boolean => errorWords(sentence).every((part) => isKnown(table, part));

const SHARED = join(__dirname, '../../../shared');
const source = ['families', 'functions', 'records/functions'].flatMap((folder) =>
  errorTexts(join(SHARED, folder)).map(([, text]) =>
    text.replace(/^7(?=[:,] )/, 'weights').replace(/^7(?= (?:is missing|has) )/, 'weights'),
  ),
);

/** Where a whole sentence is put into another, a value in its place says nothing; what is told below has them. */
const HOLDS_SENTENCE = /\d\.7$|g7|another\.7|7\. 7 /;

/** Every fault of a log, with the sentence of each. */
const FAULTS: Readonly<Record<LogFault['kind'], LogFault>> = {
  order: { kind: 'order', index: 1 },
  midnight: { kind: 'midnight', index: 1 },
  repeat: { kind: 'repeat', index: 1 },
  gap: { kind: 'gap', index: 1, hours: 30 },
  jump: { kind: 'jump', index: 1, degrees: 6, minutes: 20 },
  clock: { kind: 'clock', index: 1 },
  notATime: { kind: 'notATime', index: 1 },
  notANumber: { kind: 'notANumber', index: 1 },
  noReading: { kind: 'noReading', index: 1 },
  zero: { kind: 'zero', index: 1 },
  fahrenheit: { kind: 'fahrenheit', index: 1, celsius: 26 },
  impossible: { kind: 'impossible', index: 1 },
};

/** What nobody should type in the place of an argument. */
const WRONG: readonly Arg[] = [
  'twelve',
  '1,5 truly',
  '2026/01/02 x',
  -1e9,
  1e12,
  0,
  '',
  { error: '#N/A' },
  [['a'], ['b'], ['c']],
  [[1, 2]],
];
const typed = (args: readonly unknown[], params: readonly NamedParam[]): Arg[] =>
  params.map((_, i) => (args[i] ?? null) as Arg);
const told = new Set(
  Object.values(FAULTS).flatMap((fault) => badOrder(fault, 46000.5, 46000.25).message ?? []),
);
const listen = (answer: ReturnType<typeof invoke>): void => {
  for (const cell of isGrid(answer) ? answer.flat() : [answer])
    if (isError(cell) && cell.message !== undefined) told.add(cell.message);
};
for (const fn of CATALOGUE) {
  for (const { args } of fn.examples) listen(invoke(fn, args as Arg[]));
  const [first] = fn.examples;
  fn.params.forEach((_, i) => {
    for (const wrong of WRONG) listen(invoke(fn, typed(first?.args ?? [], fn.params).with(i, wrong)));
  });
}

test('the sentences are found', () => {
  expect(source.length).toBeGreaterThan(140);
  expect(told.size).toBeGreaterThan(1500);
});

test('every sentence of an error in the source has its French', () => {
  const left = source.filter((text) => !isSaid(text));
  expect(left.filter((text) => !HOLDS_SENTENCE.test(text))).toEqual([]);
  expect(left.length).toBeLessThan(8);
});

test('what wrong arguments bring out is said without English', () => {
  expect([...told].filter((text) => !isSaid(text))).toEqual([]);
});

/** Names of arguments and options stand as cells hold them, quoted texts as they were typed. */
const bare = (text: string): string =>
  text.replace(/« [^»]* »|"[^"]*"|\b[A-Z]+\.[A-Z.]+\b|\b[a-z]+[A-Z]\w*\b|\([^)]*\d{4}[^)]*\)/g, '');
test('no common word of English is left in them', () => {
  expect([...told].map(said).filter((text) => ENGLISH.test(bare(text)))).toEqual([]);
});

const digits = (text: string): string =>
  [...text.replace(/CO2|NH3|NH4|CaCO3/g, '').matchAll(/\d/g)].sort().join('');
test('no figure changed on the way', () => {
  expect([...told].filter((text) => digits(text) !== digits(said(text)))).toEqual([]);
});

test('an argument is named as its field is', () => {
  expect(errorWords('sampleWeights, row 3: expected a number above 0 g, got 0.').join('')).toBe(
    'Sample weights, row 3: expected a number above 0 g, got 0.',
  );
  expect(said('volume: expected a number from 0.1 to 5 L, got the text "two".')).toBe(
    'Volume: attendu un nombre de 0,1 à 5 L, reçu le texte « two ».',
  );
  expect(errorWords('There is no answer for these numbers.')).toEqual([
    'There is no answer for these numbers.',
  ]);
});
