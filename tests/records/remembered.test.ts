import type { Correction } from '../../shared/records';
import { rememberedFrom, rememberedText } from '../../shared/records';

const SAID: readonly Correction[] = [
  { sheet: 'Runs', header: 'Ova', field: 'eggs' },
  { header: 'Odd', field: 'ignore', unit: 'g', decimal: ',', order: 'day first' },
];

test('what was said comes back as it was', () => {
  expect(rememberedFrom(rememberedText(SAID))).toEqual(SAID);
});

test.each([
  ['nothing', undefined],
  ['null', null],
  ['a number', 7],
  ['an object', { version: 1, columns: [] }],
  ['text that is no JSON', '{"version":1,'],
  ['JSON of something else', '[1,2]'],
  ['a later version', '{"version":2,"columns":[]}'],
  ['columns that are no list', '{"version":1,"columns":"Ova"}'],
  ['null inside', '{"version":1,"columns":null}'],
  ['far too much', JSON.stringify({ version: 1, columns: Array.from({ length: 5000 }, () => SAID[0]) })],
  ['a long text', 'x'.repeat(300_000)],
])('%s counts as nothing', (_, kept) => {
  expect(rememberedFrom(kept)).toEqual([]);
});

test('a damaged entry is left out, the others stay', () => {
  const kept = JSON.stringify({
    version: 1,
    columns: [
      { header: 'Ova', field: 'roe' },
      null,
      'Ova',
      { header: 3, field: 'eggs' },
      { header: 'Ova', field: 'eggs', more: 1 },
      { header: 'x'.repeat(300), field: 'eggs' },
      SAID[0],
    ],
  });
  expect(rememberedFrom(kept)).toEqual([SAID[0]]);
});

test('what is kept stays small: the latest columns, no endless header', () => {
  const many = Array.from({ length: 500 }, (_, i): Correction => ({
    sheet: 'A sheet with a name as long as',
    header: `${i} ${'w'.repeat(i % 2 === 0 ? 150 : 900)}`,
    field: 'fertilisedShare',
    decimal: '.',
    order: 'month first',
  }));
  const text = rememberedText(many);
  expect(text.length).toBeLessThan(100_000);
  const back = rememberedFrom(text);
  expect(back).toHaveLength(200);
  expect(back.at(-1)?.header).toBe(many[498]?.header);
});
