import fc from 'fast-check';
import { logGamma } from '../../shared/maths/specialFunctions';
import { estimateCounted, estimateMeasured } from '../../shared/families/learning/kernels/estimate';
import { logGammaFast } from '../../shared/maths/logGammaFast';
import { mixtureQuantile, normalShare } from '../../shared/families/learning/kernels/normalMixture';
import type { SharePoint } from '../../shared/families/learning/kernels/poolShares';
import { nextShareAt } from '../../shared/families/learning/kernels/shareQuantiles';
import { RATE_KEYS, RATES, rateSpec } from '../../shared/families/learning/rates';
import { SOURCES } from '../../shared/families/sources';
import '../support/printed';

const SEED = { seed: 20260114, numRuns: 60 };
const HATCH = rateSpec('hatch');
const PER_GRAM = rateSpec('eggsPerGram');
const times = <T>(n: number, make: (i: number) => T): T[] => Array.from({ length: n }, (_, i) => make(i));

describe('arithmetic underneath', () => {
  test('consistency: the fast log gamma is the other one', () => {
    for (const x of [0.01, 0.3, 1, 2.5, 8.99, 9, 25, 1234.5, 3e6])
      expect(Math.abs(logGammaFast(x) - logGamma(x))).toBeLessThan(
        1e-11 * Math.max(1, Math.abs(logGamma(x))),
      );
    expect(logGammaFast(0)).toBeNaN();
  });

  test.each([
    [1.959964, '0.975000'],
    [-1.644854, '0.050000'],
    [0, '0.5'],
    [3.090232, '0.999000'],
    [9, '1'],
    [-9, '0'],
  ])('normal share below %s is %s', (z, printed) => {
    expect(normalShare(z)).toAgreeWithPrinted(printed);
  });

  test('quantile of one bell, and of two far apart', () => {
    expect(mixtureQuantile([{ weight: 1, mean: 3, sd: 2 }], 0.975)).toAgreeWithPrinted('6.919928');
    const two = [
      { weight: 1, mean: -100, sd: 1 },
      { weight: 1, mean: 100, sd: 1 },
    ];
    expect(mixtureQuantile(two, 0.25)).toAgreeWithPrinted('-100.0000');
    expect(mixtureQuantile(two, 0.75)).toAgreeWithPrinted('100.0000');
  });

  test('one beta distribution: uniform, and the arcsine law', () => {
    const one = (mean: number, steadiness: number): SharePoint[] => [
      { weight: 1, mean, steadiness, logit: 0, halfStep: 0 },
    ];
    expect(nextShareAt(one(0.5, 2), [0.025, 0.5, 0.975]).map((x) => x.toFixed(4))).toEqual([
      '0.0250',
      '0.5000',
      '0.9750',
    ]);
    // sin²(π/2 · 0.1) and its mirror.
    expect(nextShareAt(one(0.5, 1), [0.1, 0.9]).map((x) => x.toFixed(4))).toEqual(['0.0245', '0.9755']);
  });
});

describe('counted rates', () => {
  test('with no run the literature comes back, with its spread of farms', () => {
    const { value, low, high, ownWeight, runs } = estimateCounted(HATCH, []);
    expect(value).toAgreeWithPrinted('0.59');
    expect(ownWeight).toBe(0);
    expect(runs).toBe(0);
    expect(low).toBeLessThan(0.284);
    expect(high).toBeGreaterThan(0.864);
  });

  test('few runs lean on the literature, many on the farm', () => {
    const farm = (runs: number) =>
      estimateCounted(
        HATCH,
        times(runs, (i) => ({ k: 60 + (i % 3) * 20, n: 200 })),
      );
    const values = [1, 3, 10, 40].map((runs) => farm(runs));
    expect(values.map(({ ownWeight }) => ownWeight)).toEqual(
      [...values.map(({ ownWeight }) => ownWeight)].sort((a, b) => a - b),
    );
    expect(farm(1).value).toBeGreaterThan(0.32);
    expect(Math.abs(farm(40).value - 0.4)).toBeLessThan(0.015);
    expect(farm(40).ownWeight).toBeGreaterThan(0.95);
  });

  test('a farm unlike the published ones is believed', () => {
    const poor = times(6, (i) => ({ k: 4 + i, n: 200 }));
    expect(estimateCounted(HATCH, poor).value).toBeLessThan(0.06);
  });

  test('all and none are counts like others', () => {
    const all = estimateCounted(
      HATCH,
      times(5, () => ({ k: 50, n: 50 })),
    );
    const none = estimateCounted(
      HATCH,
      times(5, () => ({ k: 0, n: 50 })),
    );
    expect(all.value).toBeGreaterThan(0.9);
    expect(all.high).toBeLessThan(1);
    expect(none.value).toBeLessThan(0.1);
    expect(none.low).toBeGreaterThan(0);
  });

  test('counts of hundreds of thousands cost no digits', () => {
    const small = estimateCounted(
      HATCH,
      times(8, (i) => ({ k: 400 + 40 * i, n: 1000 })),
    );
    const large = estimateCounted(
      HATCH,
      times(8, (i) => ({ k: 400_000 + 40_000 * i, n: 1_000_000 })),
    );
    expect(Math.abs(small.value - large.value)).toBeLessThan(0.005);
    expect(Math.abs(small.low - large.low)).toBeLessThan(0.01);
  });

  test('property: ordered, inside 0 to 1, whatever the order of the runs', () => {
    const run = fc
      .integer({ min: 1, max: 500 })
      .chain((n) => fc.integer({ min: 0, max: n }).map((k) => ({ k, n })));
    fc.assert(
      fc.property(fc.array(run, { maxLength: 12 }), (runs) => {
        const e = estimateCounted(HATCH, runs);
        const back = estimateCounted(HATCH, [...runs].reverse());
        return (
          e.low > 0 &&
          e.low < e.value &&
          e.value < e.high &&
          e.high < 1 &&
          e.nextLow <= e.low &&
          e.nextHigh >= e.high &&
          e.nextLow >= 0 &&
          e.nextHigh <= 1 &&
          Math.abs(e.value - back.value) < 1e-6 &&
          Math.abs(e.nextLow - back.nextLow) < 1e-6
        );
      }),
      SEED,
    );
  });
});

describe('measured rates', () => {
  test('no run: the literature', () => {
    const { farm } = estimateMeasured(PER_GRAM, []);
    expect(Math.abs(farm.value / 669 - 1)).toBeLessThan(0.02);
    expect(farm.ownWeight).toBe(0);
  });

  test('equal values say that runs are steady, not that they are certain', () => {
    const { farm } = estimateMeasured(PER_GRAM, [{ values: times(6, () => 720) }]);
    expect(farm.value).toAgreeWithPrinted('720');
    expect(farm.low).toBeLessThan(715);
    expect(farm.nextHigh - farm.nextLow).toBeGreaterThan(farm.high - farm.low);
  });

  test('consistency: with many runs the interval is that of the textbook', () => {
    const values = times(60, (i) => Math.exp(6.5 + 0.2 * Math.sin(i * 2.4)));
    const logs = values.map(Math.log);
    const mean = logs.reduce((a, b) => a + b, 0) / 60;
    const sd = Math.sqrt(logs.reduce((s, y) => s + (y - mean) ** 2, 0) / 59);
    const { farm } = estimateMeasured(PER_GRAM, [{ values }]);
    // t with 59 degrees of freedom at 95 %: 2.0010.
    expect(Math.log(farm.high / farm.low)).toBeCloseTo((2 * 2.001 * sd) / Math.sqrt(60), 2);
    expect(farm.value).toBeCloseTo(Math.exp(mean + (sd * sd) / 2), -1);
  });

  test('a farm at the edge of belief is followed once it has some runs', () => {
    const far = PER_GRAM.literature * Math.exp(6 * PER_GRAM.farms);
    const { farm } = estimateMeasured(PER_GRAM, [{ values: times(6, (i) => far * (1 + 0.02 * i)) }]);
    expect(farm.low).toBeGreaterThan(0.9 * far);
    expect(farm.high).toBeLessThan(1.2 * far);
  });

  test('a month without runs leans on the others, a month with many stands alone', () => {
    const { kinds } = estimateMeasured(rateSpec('eggShare'), [
      { values: times(12, (i) => 0.03 + 0.001 * i) },
      { values: times(12, (i) => 0.05 + 0.002 * i) },
      { values: [] },
    ]);
    const [first, second, third] = kinds;
    expect(first?.value).toBeCloseTo(0.036, 2);
    expect(second?.value).toBeCloseTo(0.061, 2);
    expect(third?.value).toBeLessThan(0.09);
    expect((third?.high ?? 0) / (third?.low ?? 1)).toBeGreaterThan(
      3 * ((first?.high ?? 0) / (first?.low ?? 1)),
    );
    expect(third?.ownWeight).toBeGreaterThan(0);
  });

  test('moving every value and the literature by one amount moves the answer by it', () => {
    const spec = rateSpec('latencyOffset');
    const values = [0.4, 2.2, 1.1];
    const here = estimateMeasured({ ...spec, kinds: undefined } as never, [{ values }]).farm;
    const there = estimateMeasured({ ...spec, kinds: undefined, literature: 5 } as never, [
      { values: values.map((x) => x + 5) },
    ]).farm;
    expect(there.value - here.value).toBeCloseTo(5, 6);
    expect(there.nextLow - here.nextLow).toBeCloseTo(5, 6);
  });
});

test('every rate names its sources and says in its note what was chosen', () => {
  for (const key of RATE_KEYS) {
    expect(RATES[key].key).toBe(key);
    for (const source of RATES[key].sources) expect(SOURCES[source]?.citation).toBeDefined();
    expect(RATES[key].note).toMatch(/chosen here/);
  }
});
