import { livingBook, LivingPages } from '../../shared/books/living';
import { stillWater } from '../../shared/books/living/workings/stillWater';
import { planBatches } from '../../shared/season/batches';
import { readOneOrder } from '../../shared/season/one';
import { ORDER } from '../run/support';

/** What nobody should type into the plan of one run: each ends in sentences, none in a broken book. */

const said = (changes: object): { readonly sentences: readonly string[]; readonly fish: number } => {
  const read = readOneOrder({ ...ORDER, product: 'fry', wanted: 20_000, ...changes });
  if ('faults' in read) return { sentences: read.faults.map(({ message }) => message), fish: NaN };
  const plan = planBatches(read.book, { draws: 60 });
  const pages = new LivingPages(read.book, plan);
  const cells = livingBook(read.book, plan).sheets.flatMap((sheet) => Object.values(sheet.cells));
  const broken = cells
    .map(({ value }) => String(value ?? ''))
    .filter((text) => /\b(NaN|undefined|Infinity)\b/.test(text));
  expect(broken).toEqual([]);
  return {
    sentences: [...plan.findings, ...stillWater(pages)].map(({ message }) => message),
    fish: plan.promise,
  };
};

test.each([
  ['water colder than all evidence', { temperature: 16 }, /16\.0 °C.*20 to 33 °C/],
  ['water warmer than all evidence', { temperature: 36 }, /36\.0 °C.*20 to 33 °C/],
  ['water no fish lives in', { temperature: 82 }, /from 10 to 40 °C, got 82/],
  ['a preparation nobody knows', { preparation: 'toad gland' }, /preparation/i],
  ['no males', { males: 0 }, /male/],
  ['no females', { females: 0 }, /female|none of/],
  ['a day that is past', { wantedOn: '2020-01-01' }, /past|2020|expected|before/],
  ['sooner than fish grow', { wantedOn: '2027-02-25' }, /no day to strip/],
  ['five million fish', { wanted: 5_000_000 }, /promise|none of|binds/],
  ['more than five million', { wanted: 5_000_001 }, /5\u202f000\u202f000/],
])('%s is a sentence', (_, changes, words) => {
  const { sentences } = said(changes);
  expect(sentences.length).toBeGreaterThan(0);
  expect(sentences.join(' ')).toMatch(words);
  for (const sentence of sentences) expect(sentence).toMatch(/^[^a-z].*\.$/s);
});

test.each([
  ['one fish', { wanted: 1 }],
  ['one vat', { vats: 1 }],
])('%s can be planned', (_, changes) => {
  const { fish } = said({ ...changes, females: 8, males: 8 });
  expect(fish).toBeGreaterThanOrEqual(1);
});

// Trials of latency and hatch lie between 20 and 33 °C (STRIP.EVIDENCE, HATCH.TIME): just inside, just outside.
test.each([
  [19.9, 'refused'],
  [20, 'planned'],
  [33, 'planned'],
  [33.1, 'refused'],
])('water of %s °C is %s, with a word on how thin the evidence is', (temperature, outcome) => {
  const { sentences, fish } = said({ temperature, females: 8, males: 8 });
  expect([temperature, fish > 0 ? 'planned' : 'refused']).toEqual([temperature, outcome]);
  const words = sentences.join(' ');
  expect(words).toMatch(outcome === 'planned' ? /no trial|thin|few/ : /20 to 33 °C/);
});
