import { CATALOGUE } from '../../shared/catalogue';
import { SOURCES } from '../../shared/families/sources';
import { checkCatalogue } from '../../shared/functions/check';
import type { SheetFunction } from '../../shared/functions/define';

/** One thing wrong with a record that was right, and what is said of it. */
const named = (name: string): SheetFunction => {
  const fn = CATALOGUE.find((one) => one.name === name);
  if (!fn) throw new Error(`no ${name}`);
  return fn;
};
const plain = named('SPAWN.HATCH.TIME');
const said = (changes: object, fn = plain): string[] => checkCatalogue([{ ...fn, ...changes }], SOURCES);

const [first] = plain.examples;
const good = plain.examples.find(({ gives }) => gives !== undefined);
const bad = plain.examples.find(({ fails }) => fails !== undefined);

test('as it stands nothing is said', () => {
  expect([said({}), good === undefined, bad === undefined]).toEqual([[], false, false]);
});
test.each([
  [{ id: 'hatch.time' }, 'an id is upper-case words'],
  [{ id: 'HATCH' }, 'at least two'],
  [{ id: 'HATCH.AB12' }, 'a part looks like a cell address'],
  [{ id: 'HATCH.R1C1' }, 'a part looks like a cell address'],
  [{ name: `SPAWN.${'X'.repeat(123)}` }, 'longer than Excel allows'],
  [{ summary: 'Too short' }, 'the summary must be one line of 10 to 255'],
  [{ summary: 'x'.repeat(256) }, 'the summary must be one line of 10 to 255'],
  [{ summary: 'Hours to\nthe hatch.' }, 'the summary must be one line'],
  [{ valid: 'no' }, 'says nothing about where it holds'],
  [{ returns: { ...plain.returns, doc: '' } }, 'says nothing about what it returns'],
  [{ examples: [bad] }, 'no example with an answer'],
  [{ examples: [good] }, 'no example of an error'],
  [{ examples: [...plain.examples, { ...first, because: 'As it i' }] }, 'does not say why'],
  [{ examples: [...plain.examples, { args: [], because: 'Neither of both.' }] }, 'either give or fail'],
  [{ sources: [] }, 'no source'],
  [{ sources: ['NOBODY99'] }, 'unknown source NOBODY99'],
  [{ cautions: ['nothing'] }, 'unknown caution nothing'],
])('%j: %s', (changes, sentence) => {
  expect(said(changes).join('\n')).toContain(sentence);
});
test.each([
  [{ name: `SPAWN.${'X'.repeat(122)}` }],
  [{ summary: 'Ten of it.' }],
  [{ summary: 'x'.repeat(255) }],
  [{ examples: [...plain.examples, { ...first, because: 'As it is' }] }],
])('just inside, nothing is said: %j', (changes) => {
  expect(said(changes)).toEqual([]);
});

const withParam = (changes: object): string[] =>
  said({ params: [{ ...plain.params[0], ...changes }, ...plain.params.slice(1)] });
test.each([
  [{ kind: 'choice', choices: ['a', 'b'], default: 'c' }, 'the default is not a choice'],
  [{ kind: 'number', min: 1, max: 5, default: 0.9 }, 'the default is out of bounds'],
  [{ kind: 'number', min: 1, max: 5, default: 5.1 }, 'the default is out of bounds'],
  [{ kind: 'number', above: 1, default: 1 }, 'the default is out of bounds'],
])('a parameter %j: %s', (changes, sentence) => {
  expect(withParam(changes).join('\n')).toContain(sentence);
});
test.each([
  [{ kind: 'choice', choices: ['a', 'b'], default: 'b' }],
  [{ kind: 'number', min: 1, max: 5, default: 1 }],
  [{ kind: 'number', min: 1, max: 5, default: 5 }],
  [{ kind: 'number', min: 1, max: 5, above: 1, default: 1.1 }],
])('a parameter %j has a default it can have', (changes) => {
  expect(withParam(changes).filter((one) => one.includes('default'))).toEqual([]);
});
test('two that a file would store under one name', () => {
  const twin = { ...plain, id: plain.id.replace('.', '_') };
  expect(checkCatalogue([plain, { ...plain }], SOURCES).join()).toContain('stored under the same name as');
  expect(checkCatalogue([plain, twin], SOURCES).join()).toContain('stored under the same name as');
});
test('what must be given cannot follow what may be left out', () => {
  const [one, ...rest] = plain.params;
  const optional = { ...one, optional: true, default: undefined };
  const needed = { ...one, name: 'another', optional: false, default: undefined };
  expect(said({ params: [optional, needed, ...rest] }).join()).toContain('follows an optional one');
});
