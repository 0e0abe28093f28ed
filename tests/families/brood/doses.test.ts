import fc from 'fast-check';
import { columnOf, grid, number, refusal } from '../../support/call';

const RUN = { seed: 20260317, numRuns: 200 };

describe('likely slips are named', () => {
  test.each([
    ['HORMONE.VOLUME', [1200], /1200 g is 1\.2 kg/],
    [
      'HORMONE.DOSE',
      [1.2, 'hCG', 3],
      /3 IU\/kg of hCG is far from what was published \(500 to 6000 IU\/kg\)/,
    ],
    ['HORMONE.DOSE', [1.2, 'carp pituitary', 4000], /Look at the unit/],
    ['HORMONE.DOSE', [1.2, 'ready-made solution', 50], /0\.4 to 0\.5 mL\/kg/],
    ['HORMONE.TABLE', [columnOf([1.2, null]), columnOf(['F1', 'F2'])], /weights, row 2.*blank while tags/],
    ['HORMONE.TABLE', [columnOf([1.2, '0,9'])], /weights, row 2.*decimal comma/],
    ['FEMALES.NEEDED', [1e5, 1, 14.3, 669], /14\.3 % as 0\.143/],
    ['FEMALES.NEEDED', [1e5, 0, 0.143, 669], /A blank cell can read as 0/],
    ['MILT.VOLUME', [1e5, 5.62], /5\.62E9/],
    ['BREEDERS.EFFECTIVE', [0, 3], /from 1 to/],
    ['LOT.BREEDERS', [columnOf([100, -5]), columnOf([1])], /eggs, row 2/],
    ['FORMALIN.DOSE', [10, 100, 'eggs', 60], /15 minutes and nothing longer/],
  ] as const)('%s', (id, args, sentence) => {
    expect(refusal(id, ...args)).toMatch(sentence);
  });
});

test('blank rows of the dose table are skipped, fish without a tag are numbered', () => {
  const rows = grid(
    'HORMONE.TABLE',
    columnOf([1, null, 2]),
    columnOf(['', null, 'F9']),
    'ready-made solution',
    null,
    null,
    0,
    false,
  );
  expect(rows.map((r) => r[0])).toEqual(['1', 'F9', 'Total']);
});

test('whole numbers cover what is needed, and one less would not', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 5_000_000 }),
      fc.double({ min: 0.3, max: 6, noNaN: true }),
      fc.double({ min: 0.01, max: 0.2, noNaN: true }),
      (eggs, kg, share) => {
        const females = number('FEMALES.NEEDED', eggs, kg, share, 700);
        const each = kg * 1000 * share * 700;
        expect(females * each).toBeGreaterThanOrEqual(eggs * (1 - 1e-9));
        expect((females - 1) * each).toBeLessThan(eggs);
      },
    ),
    RUN,
  );
});

test('an exact quotient stays whole', () => {
  expect(number('FEMALES.NEEDED', 210_000, 1, 0.15, 700)).toBe(2);
  expect(number('HORMONE.VIALS', 0.3, 0.1, 0)).toBe(3);
  expect(number('HORMONE.VIALS', 5, 10, 0.1, 6)).toBe(0);
  expect(number('PITUITARY.DONORS', 0.2, 0.1)).toBe(3);
});

test('fewer females spawn, more are injected; more eggs never need fewer', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 1_000_000 }),
      fc.double({ min: 0.1, max: 1, noNaN: true }),
      (eggs, spawn) => {
        const all = number('FEMALES.NEEDED', eggs, 1, 0.1, 600);
        expect(number('FEMALES.NEEDED', eggs, 1, 0.1, 600, spawn)).toBeGreaterThanOrEqual(all);
        expect(number('FEMALES.NEEDED', eggs + 1000, 1, 0.1, 600)).toBeGreaterThanOrEqual(all);
      },
    ),
    RUN,
  );
});

test('males for a rate bring the rate to it or below, one fewer does not', () => {
  fc.assert(
    fc.property(fc.integer({ min: 15, max: 300 }), (females) => {
      const males = number('MALES.FORRATE', females, 0.01);
      expect(number('INBREEDING.RATE', females, males)).toBeLessThanOrEqual(0.01 + 1e-12);
      if (males > 1) expect(number('INBREEDING.RATE', females, males - 1)).toBeGreaterThan(0.01);
    }),
    RUN,
  );
});
