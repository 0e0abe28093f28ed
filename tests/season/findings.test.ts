import { planFindings } from '../../shared/season/batches/answer/findings';
import { serialOfDay } from '../../shared/units/dates';
import { bookOf } from './support/support';

/** What a plan says of its orders: each side of every limit. */
const DUE = serialOfDay(2027, 4, 1);
const order = (name: string, certainty: number, more: object = {}, of: object = {}) => ({
  order: { name, number: 900, product: 'fry', due: DUE, forBreeding: false, ...of },
  delivered: 0,
  certainty,
  promise: 640,
  batches: ['B1'],
  parents: 8,
  ...more,
});
const said = (orders: readonly object[], more: object = {}, vats = 1): string[] =>
  planFindings(
    bookOf({ certainty: 0.8, leastParents: 20, ...more }),
    { vats: Array.from({ length: vats }) } as never,
    [],
    orders as never,
    undefined,
  ).map(({ kind, message }) => `${kind}: ${message}`);

test.each<readonly [string, object, readonly string[]]>([
  ['sure enough', order('A', 0.7801), []],
  [
    'a hair less',
    order('A', 0.7799),
    ['care: A: promise 640 of 900 fry for 2027-04-01; the whole order comes in 78 % of seasons.'],
  ],
  [
    'four in ten',
    order('A', 0.4),
    ['care: A: promise 640 of 900 fry for 2027-04-01; the whole order comes in 40 % of seasons.'],
  ],
  [
    'fewer',
    order('A', 0.39),
    ['cannot: A: promise 640 of 900 fry for 2027-04-01; the whole order comes in 39 % of seasons.'],
  ],
  ['delivered', order('A', 0, { delivered: 900 }), []],
  [
    'one fish is missing',
    order('A', 0.1, { delivered: 899 }),
    [expect.stringContaining('cannot: A: promise') as string],
  ],
  [
    'no batch',
    order('A', 0, { batches: [] }),
    ['cannot: A: none of 900 fry can be promised for 2027-04-01.'],
  ],
  [
    'no day',
    order('A', 0, { batches: [], why: 'no female is ready' }),
    ['cannot: A: there is no day to strip for 2027-04-01: no female is ready.'],
  ],
])('%s', (_, one, wanted) => {
  expect(said([one])).toEqual(wanted);
});
test('eight orders are named, the rest is counted', () => {
  const many = (n: number): string[] => said(Array.from({ length: n }, (_, i) => order(`A${i}`, 0.5)));
  expect(many(8)).toHaveLength(8);
  expect(many(9)[8]).toBe('care: 1 more order is less sure than wanted; its odds stand beside it.');
  expect(many(10)[8]).toBe('care: 2 more orders are less sure than wanted; their odds stand beside them.');
  expect(many(10)).toHaveLength(9);
});
test('brood fish need parents enough', () => {
  const brood = (parents: number, more: object = {}) =>
    said([order('A', 1, { parents, ...more }, { forBreeding: true })]);
  expect(brood(20)).toEqual([]);
  expect(brood(19)).toEqual([
    'care: A: Too few parents for future brood fish: they count as 19, 20 are wanted.',
  ]);
  expect(said([order('A', 1, { parents: 2 })])).toEqual([]);
});
test('no vats', () => {
  expect(said([], {}, 0)).toEqual(['cannot: There are no vats.']);
});
