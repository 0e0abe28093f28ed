import { RULES } from '../../shared/records/rules';
import { checkRules } from '../../shared/records/rules/check';
import type { Rule } from '../../shared/records/rules/rule';
import { shown, shownWorkedOut } from '../../shared/records/rules/show';
import { headingOf } from '../../shared/records/meaning/heading';
import { notReadSentence } from '../../shared/records/findings/reading';
import type { ReadingShare } from '../../shared/records/findings/reading';
import { auditGrid } from './support/grid';
import type { ExampleCell } from '../../shared/records/rules/rule';

/** Small parts of the check of records, by hand: a case on each side of every limit. */
describe('numbers as sentences write them', () => {
  test.each([
    ['eggs', 71_627.9817, '71,627.9817', '71,628'],
    ['eggs', 9.5, '9.5', '9.5'],
    ['eggs', 10.4, '10.4', '10'],
    ['eggs', -12.6, '−12.6', '−13'],
    ['eggWeight', 121.94, '121.9 g', '121.9 g'],
    ['hatchShare', 0.8512, '85.1 %', '85.1 %'],
    ['ph', 7.25, '7.25', '7.25'],
  ] as const)('%s of %f', (field, value, typed, workedOut) => {
    expect([shown(field, value), shownWorkedOut(field, value)]).toEqual([typed, workedOut]);
  });
});

test('how many columns were not read', () => {
  const sentence = (columns: number, read: number) => notReadSentence({ columns, read } as ReadingShare);
  expect([sentence(14, 14), sentence(14, 13), sentence(14, 12), sentence(1, 0), sentence(3, 0)]).toEqual([
    '',
    '1 of 14 columns was not read.',
    '2 of 14 columns were not read.',
    '1 of 1 columns was not read.',
    '3 of 3 columns were not read.',
  ]);
});

describe('a rule that is not complete is named', () => {
  const [whole] = RULES;
  const faults = (changes: object): string[] =>
    checkRules([{ ...(whole as Rule), id: 'X.Y', ...changes } as Rule]).map((text) =>
      text.replace('X.Y: ', ''),
    );
  const fires = { record: {}, says: 'something', because: 'because' };
  const silent = { record: {}, because: 'because' };
  test.each<readonly [object, readonly string[]]>([
    [{ examples: [fires, silent] }, []],
    [{ examples: [silent] }, ['no example that fires']],
    [{ examples: [fires] }, ['no example that stays silent']],
    [{ examples: [fires, { ...silent, because: 'sixsix' }] }, []],
    [{ examples: [fires, { ...silent, because: 'fives' }] }, ['an example does not say why']],
    [{ sources: [] }, ['no source; common practice is PRACTICE']],
    [{ sources: ['NOBODY'] }, ['unknown source NOBODY']],
    [{ needs: [] }, ['does not say what it needs']],
    [{ needs: [['eggs', 'moonlight']] }, ['needs moonlight, which is no field']],
  ])('%j', (changes, wanted) => {
    expect(faults(changes)).toEqual(wanted);
  });
  test('two of one name', () => {
    expect(checkRules([whole as Rule, whole as Rule])).toEqual([
      `${(whole as Rule).id}: two rules of that name`,
    ]);
  });
});

describe('units and counts in a heading', () => {
  test.each([
    ['Water °C', '°C', 1],
    ['Water (°C)', '°C', 1],
    ['Water º F', '°F', 1],
    ['Air [°f]', '°F', 1],
    ['°F of the water', '°F', 1],
    ['Eggs/g', 'per g', 1],
    ['Eggs per g', 'per g', 1],
    ['Eggs per ml', 'per mL', 1],
    ['eggs in 1 g', 'per g', 1],
    ['Hatch %', '%', 1],
    ['Weight kg', 'kg', 1],
    ['Weight (kg)', 'kg', 1],
    ['Weight in kg', 'kg', 1],
    ['Weight', undefined, 1],
    ['Eggs (thousands)', undefined, 1000],
    ['Eggs thousands', undefined, 1000],
    ['Remarks (see below)', undefined, 1],
  ] as const)('%s', (text, unit, times) => {
    const { unit: said, times: factor } = headingOf(text);
    expect([said?.unit, factor]).toEqual([unit, times]);
  });
});

/** From row 80 on only a row without figures is looked at as a heading: a long table stays one. */
describe('a second table far down', () => {
  const lines = (n: number, from = 0): ExampleCell[][] =>
    Array.from({ length: n }, (_, i) => [`R${from + i}`, 100 + ((i * 37) % 50), 60 + ((i * 13) % 30)]);
  const tables = (rows: readonly (readonly ExampleCell[])[]) =>
    auditGrid(rows).tables.map(({ length, mapping }) => [length, ...mapping.map(({ header }) => header)]);
  const first: ExampleCell[] = ['Run', 'Egg weight (g)', 'Female weight (kg)'];
  const second: ExampleCell[] = ['Date', 'Temperature', 'Oxygen'];
  const water = Array.from({ length: 12 }, (_, i): ExampleCell[] => [
    `2025-04-${String(10 + i)}`,
    25 + (i % 3),
    6 + (i % 2),
  ]);
  test.each([20, 78, 79, 120])('%i lines above it', (n) => {
    expect(tables([first, ...lines(n), [null, null, null], second, ...water])).toEqual([
      [n, ...first],
      [12, ...second],
    ]);
  });
  test('a blank first cell does not hide it', () => {
    const shifted = (row: ExampleCell[]): ExampleCell[] => [null, ...row];
    expect(tables([first, ...lines(120), [null], shifted(second), ...water.map(shifted)])).toEqual([
      [120, ...first],
      [12, ...second],
    ]);
  });
});
