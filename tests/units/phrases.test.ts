import { figuresApart, isKnown, lookUp, phraseTable } from '../../shared/units/phrases';

/** How a text of ours is said in another language: whole, by its pattern, in parts; what is not known stays. */
const table = phraseTable(
  'fr',
  {
    Strip: 'Prélever',
    'Air first': 'Aérer d’abord',
    '{n} fish': '{n} poissons',
    '{} fish': 'poissons : {}',
    '{} gives {n} eggs': '{} donne {n} œufs',
    '{1} after {2}': '{2} puis {1}',
    '{n} of {n} vats': '{n} bacs sur {n}',
    Female: 'Femelle',
  },
  () => ',',
);
test.each([
  ['Strip', 'Prélever'],
  ['strip', 'strip'],
  ['Strip.', 'Prélever.'],
  ['Strip:', 'Prélever:'],
  ['  Strip ', '  Prélever '],
  // {n} takes numbers, days and units of them; a word goes to the pattern that takes anything.
  ['12 fish', '12 poissons'],
  ['12 to 14 fish', 'poissons : 12 to 14'],
  ['12–14 fish', '12–14 poissons'],
  ['40 k fish', '40 k poissons'],
  ['40k fish', '40k poissons'],
  ['tame fish', 'poissons : tame'],
  ['Female gives 1 200 eggs', 'Femelle donne 1 200 œufs'],
  ['F1 gives 12.5 eggs', 'F1 donne 12,5 œufs'],
  ['F1 gives few eggs', 'F1 gives few eggs'],
  // Marks with a number change places, and what they hold is said too.
  ['Strip after Female', 'Femelle puis Prélever'],
  ['3 of 7 vats', '3 bacs sur 7'],
  // Sentences, lists and signs.
  ['Strip. Air first.', 'Prélever. Aérer d’abord.'],
  ['Strip; Air first', 'Prélever; Aérer d’abord'],
  ['Strip, Air first, unknown', 'Prélever, Aérer d’abord, unknown'],
  ['● Air first', '● Aérer d’abord'],
  ['unknown, unheard', 'unknown, unheard'],
  // Numbers alone take the mark of the reader; codes and dates of files do not.
  ['12.5', '12,5'],
  ['−0.25 kg', '−0,25 kg'],
  ['1.5 mg/L', '1,5 mg/L'],
  ['2.5 %', '2,5 %'],
  ['0.5 ×', '0,5 ×'],
  // A short word is no unit: said where it is known, and only the mark changes where it is not.
  ['1.5 fish', '1,5 poissons'],
  ['1.5 tame', '1,5 tame'],
  ['12', '12'],
  ['B12', 'B12'],
  ['', ''],
])('%s', (english, own) => {
  expect(lookUp(table, english)).toBe(own);
  // From memory too.
  expect(lookUp(table, english)).toBe(own);
});
test('days and months as the language writes them', () => {
  expect(
    ['Mon 3 Feb', '3 Feb 2026', '3 Feb 08:30', 'Sun 31 Dec 2026'].map((text) => lookUp(table, text)),
  ).toEqual(['lun. 3 févr.', '3 févr. 2026', '3 févr. 08:30', 'dim. 31 déc. 2026']);
});

test('a number with a unit needs no words, one with a word does', () => {
  expect(['1.5', '1.5 mg/L', '1.5 fish'].map((text) => isKnown(table, text))).toEqual([true, true, true]);
  expect(['1.5 tame', '1.5 meal'].map((text) => isKnown(table, text))).toEqual([false, false]);
});
test('long numbers of an engine sentence in threes, years and what is quoted as they are', () => {
  expect(
    [
      'up to 10000000 L',
      'from 1000 to 10000 g',
      'in 2026',
      'the text "1234567"',
      '12345.678',
      '2026-05-01',
      'A12345',
      '=DATE(20260,3,14)',
    ].map(figuresApart),
  ).toEqual([
    'up to 10\u202f000\u202f000 L',
    'from 1000 to 10\u202f000 g',
    'in 2026',
    'the text "1234567"',
    '12\u202f345.678',
    '2026-05-01',
    'A12345',
    '=DATE(20260,3,14)',
  ]);
});
