import fc from 'fast-check';
import { normalQuantile } from '../../shared/maths/normalQuantile';
import { incompleteBeta, logGamma } from '../../shared/maths/specialFunctions';
import { binomial } from '../../shared/families/money/odds/binomial';
import { rngOf } from '../../shared/maths/rng';
import { femalesFor, femalesInSeasons } from '../../shared/families/money/odds/femalesNeeded';
import { quantileOf, shareReaching } from '../../shared/maths/quantiles';
import { betaOf, shareSpread } from '../../shared/families/money/odds/shareSpread';
import type { SeasonChain } from '../../shared/families/money/odds/simulate';
import { simulateSeason } from '../../shared/families/money/odds/simulate';
import { number } from '../support/call';

const NONE = { females: 0, runs: 0, season: 0 };
const DRAWS = 40_000;
const chain = (changes: Partial<SeasonChain>): SeasonChain => ({
  runs: [{ eggs: [100_000], stages: [0], order: 0 }],
  orders: 1,
  stages: [{ mean: 0.5, runs: 0, season: 0 }],
  eggs: NONE,
  ovulating: 1,
  lost: 0,
  ...changes,
});
const drawn = (changes: Partial<SeasonChain>, seed = 7): Float64Array =>
  (simulateSeason(chain(changes), DRAWS, seed)[0] ?? new Float64Array()).sort();
const meanOf = (list: Float64Array): number => list.reduce((sum, x) => sum + x, 0) / list.length;
const deviationOf = (list: Float64Array): number => {
  const mean = meanOf(list);
  return Math.sqrt(list.reduce((sum, x) => sum + (x - mean) ** 2, 0) / list.length);
};
/** Four standard errors of a share counted in the draws. */
const error = (p: number): number => 4 * Math.sqrt((p * (1 - p)) / DRAWS);

describe('chance', () => {
  test('the same seed gives the same numbers, another seed others', () => {
    const list = (seed: number): number[] => {
      const { even, normal } = rngOf(seed);
      return [even(), normal(), even(), normal(), even()];
    };
    expect(list(5)).toEqual(list(5));
    expect(list(5)).not.toEqual(list(6));
  });

  test(
    'even numbers fill ten boxes evenly (chi-square below its 0.999 quantile, 27.88 with ' +
      '9 degrees, textbook)',
    () => {
      for (const seed of [1, 2, 99, 4_294_967_295]) {
        const { even } = rngOf(seed);
        const boxes = Array.from({ length: 10 }, () => 0);
        for (let i = 0; i < 100_000; i++) {
          const box = Math.floor(even() * 10);
          boxes[box] = (boxes[box] ?? 0) + 1;
        }
        expect(boxes.reduce((sum, n) => sum + (n - 10_000) ** 2 / 10_000, 0)).toBeLessThan(27.88);
      }
    },
  );

  test('normal numbers stand at the quantiles of the normal distribution', () => {
    const { normal } = rngOf(11);
    const list = new Float64Array(DRAWS).map(() => normal()).sort();
    for (const p of [0.01, 0.1, 0.5, 0.9, 0.99])
      expect(Math.abs(1 - shareReaching(list, normalQuantile(p)) - p)).toBeLessThan(error(p));
  });

  test.each([
    [10, 0.3],
    [40, 0.02],
    [1000, 0.9],
    [100_000, 0.4],
  ])('binomial of %d at %d: mean and variance np and np(1 − p)', (n, p) => {
    const chance = rngOf(3);
    const list = new Float64Array(DRAWS).map(() => binomial(chance, n, p));
    const variance = n * p * (1 - p);
    expect(Math.abs(meanOf(list) - n * p)).toBeLessThan(4 * Math.sqrt(variance / DRAWS));
    expect(Math.abs(deviationOf(list) ** 2 / variance - 1)).toBeLessThan(0.05);
    expect(list.every((k) => Number.isInteger(k) && k >= 0 && k <= n)).toBe(true);
  });
});

describe('a share that varies', () => {
  test('stands where the beta distribution has it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.03, max: 0.97, noNaN: true }),
        fc.double({ min: 0.05, max: 0.7, noNaN: true }),
        fc.double({ min: 0.02, max: 0.98, noNaN: true }),
        (mean, part, p) => {
          const deviation = part * Math.sqrt(mean * (1 - mean));
          const at = shareSpread(mean, deviation)(normalQuantile(p));
          // Below a thousand-millionth of a fish the answer is none, wherever the distribution puts it.
          const isNothing = at < 1e-9 || at > 1 - 1e-9;
          expect(isNothing ? 0 : Math.abs(incompleteBeta(at, ...betaOf(mean, deviation)) - p)).toBeLessThan(
            0.005,
          );
        },
      ),
      { seed: 4, numRuns: 60 },
    );
  });
  test('without spread it is its mean', () => {
    expect([shareSpread(0.4, 0)(3), shareSpread(1, 0)(-2), shareSpread(0, 0)(1)]).toEqual([0.4, 1, 0]);
  });
});

describe('closed forms', () => {
  test('a product of log-normals is log-normal: its quantiles', () => {
    // Eggs vary by female 0.3, run 0.2 and season 0.4, all survive: ln N has deviation √0.29 and mean ln
    // 100,000 − 0.29/2.
    const list = drawn({
      eggs: { females: 0.3, runs: 0.2, season: 0.4 },
      stages: [{ mean: 1, runs: 0, season: 0 }],
    });
    const s = Math.sqrt(0.29);
    for (const p of [0.05, 0.1, 0.5, 0.9, 0.95]) {
      const exact = 100_000 * Math.exp(s * normalQuantile(p) - (s * s) / 2);
      expect(Math.abs(1 - shareReaching(list, exact) - p)).toBeLessThan(error(p));
    }
    expect(meanOf(list) / 100_000).toBeCloseTo(1, 1);
  });

  test('a few fish of a share that varies are beta-binomial: every probability', () => {
    const [mean, deviation, n] = [0.6, 0.15, 12];
    const [a, b] = betaOf(mean, deviation);
    const beta = (x: number, y: number): number => logGamma(x) + logGamma(y) - logGamma(x + y);
    const chose = (k: number): number => logGamma(n + 1) - logGamma(k + 1) - logGamma(n - k + 1);
    const list = drawn({
      runs: [{ eggs: [n], stages: [0], order: 0 }],
      stages: [{ mean, runs: deviation, season: 0 }],
    });
    for (let k = 0; k <= n; k++) {
      const exact = Math.exp(chose(k) + beta(k + a, n - k + b) - beta(a, b));
      const got = shareReaching(list, k) - shareReaching(list, k + 1);
      expect(Math.abs(got - exact)).toBeLessThan(error(exact) + 0.001);
    }
  });

  test('females that give eggs are binomial', () => {
    const list = drawn({
      runs: [{ eggs: [1000, 1000, 1000], stages: [0], order: 0 }],
      stages: [{ mean: 1, runs: 0, season: 0 }],
      ovulating: 0.875,
    });
    for (const [k, exact] of [
      [3000, 0.875 ** 3],
      [2000, 0.875 ** 3 + 3 * 0.875 ** 2 * 0.125],
      [1000, 1 - 0.125 ** 3],
    ] as const)
      expect(Math.abs(shareReaching(list, k) - exact)).toBeLessThan(error(exact));
  });

  test('many runs of their own come near a normal: mean and deviation add up', () => {
    const list = drawn({
      runs: Array.from({ length: 40 }, () => ({ eggs: [10_000], stages: [0], order: 0 })),
      stages: [{ mean: 0.5, runs: 0.1, season: 0 }],
    });
    const deviation = Math.sqrt(40) * Math.sqrt((10_000 * 0.1) ** 2 + 10_000 * (0.25 - 0.01));
    expect(Math.abs(meanOf(list) - 200_000)).toBeLessThan((4 * deviation) / Math.sqrt(DRAWS));
    expect(deviationOf(list) / deviation).toBeCloseTo(1, 1);
    for (const p of [0.1, 0.5, 0.9])
      expect(Math.abs(1 - shareReaching(list, 200_000 + deviation * normalQuantile(p)) - p)).toBeLessThan(
        0.015,
      );
  });

  test(
    'what a season shares does not average out: correlation of two runs is its part of ' + 'the variance',
    () => {
      const totals = simulateSeason(
        chain({
          orders: 2,
          runs: [0, 1].map((order) => ({ eggs: [1e6], stages: [0], order })),
          stages: [{ mean: 0.5, runs: 0.08, season: 0.06 }],
        }),
        DRAWS,
        5,
      );
      const [x = new Float64Array(), y = new Float64Array()] = totals;
      const [mx, my] = [meanOf(x), meanOf(y)];
      const covariance = x.reduce((sum, xi, i) => sum + (xi - mx) * ((y[i] ?? NaN) - my), 0) / DRAWS;
      expect(covariance / (deviationOf(x) * deviationOf(y))).toBeCloseTo(0.36, 1);
    },
  );

  test('runs lost altogether', () => {
    expect(Math.abs(shareReaching(drawn({ lost: 0.2 }), 1) - 0.8)).toBeLessThan(error(0.8));
  });
});

describe('females for a certainty', () => {
  const question = {
    wanted: 100_000,
    eggsPerFemale: 60_000,
    stages: [
      { mean: 0.5, runs: 0.12, season: 0.06 },
      { mean: 0.7, runs: 0.1, season: 0.05 },
    ],
    eggs: { females: 0.3, runs: 0.1, season: 0.2 },
    ovulating: 0.9,
    runs: 2,
    lost: 0,
    most: 1000,
  };
  test('more certainty never takes fewer, and the answer is met when simulated with another seed', () => {
    const counts = femalesInSeasons(question, 20_000, 3);
    const needed = [0.5, 0.75, 0.9, 0.95].map((p) => femalesFor(counts, p));
    expect(needed.every((n, i) => i === 0 || n >= (needed[i - 1] ?? 0))).toBe(true);
    const [, , ninety = 0] = needed;
    const certaintyOf = (females: number): number =>
      shareReaching(
        drawn(
          {
            stages: question.stages,
            eggs: question.eggs,
            ovulating: question.ovulating,
            runs: [0, 1].map((r) => ({
              order: 0,
              stages: [0, 1],
              eggs: Array.from({ length: Math.floor((females + 1 - r) / 2) }, () => question.eggsPerFemale),
            })),
          },
          91,
        ),
        question.wanted,
      );
    expect(certaintyOf(ninety)).toBeGreaterThan(0.885);
    expect(certaintyOf(ninety - 1)).toBeLessThan(0.915);
  });
  test('a wish no number of females meets is Infinity', () => {
    expect(femalesFor(femalesInSeasons({ ...question, lost: 0.5, runs: 1 }, 2000, 3), 0.9)).toBe(Infinity);
  });
});

test('the sheet agrees with itself: females for 90 % meet the order in about 90 % of seasons', () => {
  const shares = [[0.59], [0.8], [0.75]];
  const spreads = [[0.15], [0.12], [0.13]];
  const females = number('FEMALES.FORCERTAINTY', 60_000, 66_900, shares, spreads, 0.9, 0.3, 0.875, 3);
  const certainty = number(
    'ORDER.CERTAINTY',
    60_000,
    females,
    66_900,
    shares,
    spreads,
    0.3,
    0.875,
    3,
    0.3,
    2,
  );
  expect(certainty).toBeGreaterThan(0.87);
  expect(
    number('ORDER.CERTAINTY', 60_000, females - 1, 66_900, shares, spreads, 0.3, 0.875, 3, 0.3, 2),
  ).toBeLessThan(0.93);
});

test('quantiles lie straight between neighbours', () => {
  expect([quantileOf([1, 2, 3, 4], 0.5), quantileOf([1, 2, 3], 0.1)]).toEqual([2.5, 1.2]);
});
