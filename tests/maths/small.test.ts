import { quantileOf, rangeOf, shareReaching } from '../../shared/maths/quantiles';
import { rngOf } from '../../shared/maths/rng';
import { incompleteBeta, incompleteGamma, logGamma } from '../../shared/maths/specialFunctions';
import { verdictOf, verdictText } from '../../shared/maths/verdict';

/** Order statistics, verdicts and drawn numbers: each side of every limit, by hand. */
const TEN = Array.from({ length: 11 }, (_, i) => 10 * i);

test('quantiles lie straight between neighbours (rule 7 of Hyndman and Fan 1996)', () => {
  expect([0, 0.1, 0.25, 0.5, 0.95, 1].map((p) => quantileOf(TEN, p))).toEqual([0, 10, 25, 50, 95, 100]);
  expect([quantileOf([7], 0.3), quantileOf([], 0.5)]).toEqual([7, NaN]);
  expect(rangeOf(TEN)).toEqual({ p10: 10, p50: 50, p90: 90 });
});
test('the share that reaches the wish', () => {
  expect([50, 50.1, 0, -1, 100, 100.1].map((wish) => shareReaching(TEN, wish) * 11)).toEqual([
    6,
    5,
    11,
    11,
    expect.closeTo(1, 9),
    0,
  ]);
  expect(shareReaching([], 1)).toBeNaN();
  expect(shareReaching([1, 2, 2, 2, 3], 2)).toBe(0.8);
});

test.each([
  [1, 'safe'],
  [0.9, 'safe'],
  [0.9 - 5e-10, 'safe'],
  [0.9 - 5e-9, 'likely'],
  [0.7, 'likely'],
  [0.7 - 5e-9, 'a coin toss'],
  [0.4, 'a coin toss'],
  [0.4 - 5e-9, 'unlikely'],
  [1e-9, 'unlikely'],
  [0, 'cannot'],
  [-0.1, 'cannot'],
  [NaN, 'cannot'],
])('a share of %f is %s', (share, verdict) => {
  expect(verdictOf(share)).toBe(verdict);
  expect(verdictOf(share, false)).toBe('cannot');
});
test('a verdict has its shape', () => {
  expect([1, 0.8, 0.5, 0.1, 0].map((share) => verdictText(verdictOf(share)))).toEqual([
    '● safe',
    '▲ likely',
    '◊ a coin toss',
    '▼ unlikely',
    '× cannot',
  ]);
});

// Kept as they were drawn: every plan rests on the same seasons on every computer, and in every edition.
test.each([
  [
    1,
    [0.048853901331312954, 0.546947036520578, -0.877917423826978, 0.07630408838932146, -0.16574351927424705],
  ],
  [77, [0.6677145109279081, 0.16150044708047062, 1.0535290100570358, 0.3146476614534638, 1.5131668464443164]],
  [
    2 ** 33 + 5,
    [0.5844076337525621, 0.22021022194530815, 1.8558442315870762, -0.23197399833403629, -1.1603165183370294],
  ],
])('seed %i gives the same numbers', (seed, numbers) => {
  const { even, normal } = rngOf(seed);
  const drawn = [even(), even(), normal(), normal(), normal()];
  drawn.forEach((x, i) => expect(Math.abs(x / (numbers[i] ?? NaN) - 1)).toBeLessThan(1e-14));
});

test('functions at their ends, and at values known in closed form', () => {
  expect(logGamma(5)).toBeCloseTo(Math.log(24), 13);
  expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.PI) / 2, 13);
  expect(logGamma(0.25) + logGamma(0.75)).toBeCloseTo(Math.log(Math.PI * Math.SQRT2), 13);
  expect([logGamma(0), logGamma(-1)]).toEqual([NaN, NaN]);
  expect([incompleteBeta(0, 2, 2), incompleteBeta(1, 2, 2), incompleteBeta(0.5, 2, 2)]).toEqual([
    0,
    1,
    expect.closeTo(0.5, 13),
  ]);
  // I_x(1, b) = 1 − (1 − x)^b, I_x(a, 1) = x^a, on both sides of the turn.
  for (const x of [0.05, 0.3, 0.5, 0.7, 0.95]) {
    expect(incompleteBeta(x, 1, 3)).toBeCloseTo(1 - (1 - x) ** 3, 13);
    expect(incompleteBeta(x, 4, 1)).toBeCloseTo(x ** 4, 13);
  }
  expect([incompleteBeta(-0.1, 1, 1), incompleteBeta(1.1, 1, 1), incompleteBeta(0.5, 0, 1)]).toEqual([
    NaN,
    NaN,
    NaN,
  ]);
  expect(incompleteBeta(0.5, 1, 0)).toBeNaN();
  // P(1, x) = 1 − e^−x, P(2, x) = 1 − (1 + x) e^−x.
  for (const x of [0.1, 1.9, 2, 2.1, 2.9, 3, 3.1, 20]) {
    expect(incompleteGamma(1, x)).toBeCloseTo(1 - Math.exp(-x), 13);
    expect(incompleteGamma(2, x)).toBeCloseTo(1 - (1 + x) * Math.exp(-x), 13);
  }
  expect([incompleteGamma(1, 0), incompleteGamma(0, 1), incompleteGamma(1, -1)]).toEqual([0, NaN, NaN]);
});
