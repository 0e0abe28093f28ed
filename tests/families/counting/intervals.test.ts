import fc from 'fast-check';
import { clusteredShare } from '../../../shared/families/counting/kernels/clusteredShare';
import { ratioDifference, shareDifference } from '../../../shared/families/counting/kernels/difference';
import { lotEstimate } from '../../../shared/families/counting/kernels/lotEstimate';
import { twoSidedNormal } from '../../../shared/maths/normalQuantile';
import { ratioEstimate } from '../../../shared/families/counting/kernels/ratioEstimate';
import {
  relativeSpread,
  sampleForShare,
  subsamplesFor,
} from '../../../shared/families/counting/kernels/sampleSize';
import { countedStage, stageProduct } from '../../../shared/families/counting/kernels/stageProduct';
import { wilson, wilsonAt, wilsonCorrectedAt } from '../../../shared/families/counting/kernels/wilson';
import { bell, chance, successes } from '../../support/chance';
import '../../support/printed';
import { tableOf } from '../../support/table';

const SEED = { seed: 20260301, numRuns: 400 };
const counted = fc
  .integer({ min: 1, max: 5000 })
  .chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n)));
const confidence = fc.double({ min: 0.5, max: 0.999, noNaN: true });
const samples = fc.array(
  fc.tuple(fc.double({ min: 0.1, max: 5, noNaN: true }), fc.integer({ min: 1, max: 900 })),
  { minLength: 1, maxLength: 12 },
);

test.each(tableOf('wilson_six_digits.csv').map((row) => [`${row.k} of ${row.n}`, row] as const))(
  'consistency: six digits of %s',
  (_name, row) => {
    const z = twoSidedNormal(0.95);
    const [k, n] = [Number(row.k), Number(row.n)];
    // The table was rounded to six digits by another program.
    expect(wilsonAt(k, n, z).low).toBeCloseTo(Number(row.lower), 6);
    expect(wilsonAt(k, n, z).high).toBeCloseTo(Number(row.upper), 6);
    expect(wilsonCorrectedAt(k, n, z).low).toBeCloseTo(Number(row.lower_cc), 6);
    expect(wilsonCorrectedAt(k, n, z).high).toBeCloseTo(Number(row.upper_cc), 6);
  },
);

test('a Wilson interval holds its share, stays in 0..1, is mirrored, and the corrected one holds it', () => {
  fc.assert(
    fc.property(counted, confidence, ([k, n], c) => {
      const z = twoSidedNormal(c);
      const plain = wilsonAt(k, n, z);
      const mirrored = wilsonAt(n - k, n, z);
      const wide = wilsonCorrectedAt(k, n, z);
      expect(plain.low).toBeLessThanOrEqual(k / n + 1e-12);
      expect(plain.high).toBeGreaterThanOrEqual(k / n - 1e-12);
      expect(plain.low).toBeGreaterThanOrEqual(0);
      expect(plain.high).toBeLessThanOrEqual(1);
      expect(plain.low).toBeCloseTo(1 - mirrored.high, 12);
      expect(wide.low).toBeLessThanOrEqual(plain.low + 1e-12);
      expect(wide.high).toBeGreaterThanOrEqual(plain.high - 1e-12);
    }),
    SEED,
  );
});

test('more confidence is wider; a larger sample with the same share is narrower', () => {
  fc.assert(
    fc.property(counted, ([k, n]) => {
      const width = (a: number, b: number, c: number): number => wilson(a, b, c).high - wilson(a, b, c).low;
      expect(width(k, n, 0.99)).toBeGreaterThan(width(k, n, 0.9));
      expect(width(4 * k, 4 * n, 0.95)).toBeLessThan(width(k, n, 0.95));
    }),
    SEED,
  );
});

test('a count from samples lies inside its interval, never below what was counted', () => {
  fc.assert(
    fc.property(samples, fc.double({ min: 60, max: 5000, noNaN: true }), confidence, (list, lot, c) => {
      const counts = list.map(([, k]) => k);
      const got = lotEstimate(
        lot,
        list.map(([w]) => w),
        counts,
        c,
      );
      expect(got.low).toBeLessThanOrEqual(got.total + 1e-6);
      expect(got.high).toBeGreaterThanOrEqual(got.total - 1e-6);
      expect(got.low).toBeGreaterThanOrEqual(counts.reduce((a, b) => a + b, 0) - 1e-6);
    }),
    SEED,
  );
});

test('consistency: standard error worked by hand for 36, 35, 41 eggs in 1.5, 1.6, 1.9 g', () => {
  // Residuals 2.40, −0.84, −1.56; their squares sum to 8.8992; s² = 4.4496; mean weight 5/3 g; (1 −
  // 5/316.8)·s²/3 → 1.45979.
  const got = ratioEstimate([1.5, 1.6, 1.9], [36, 35, 41], 316.8, 0.95);
  expect(got.error).toAgreeWithPrinted('0.72493');
  // t with two degrees of freedom is 4.30265.
  expect(got.high - got.ratio).toAgreeWithPrinted('3.1191');
  expect(got.degrees).toBe(2);
});

test('a lot that was counted whole has no uncertainty left', () => {
  const got = lotEstimate(5, [1.5, 1.6, 1.9], [36, 35, 41], 0.95);
  expect([got.low, got.total, got.high].map((x) => Math.round(x * 1e9) / 1e9)).toEqual([112, 112, 112]);
});

/** Eggs per sample with a bell-shaped scatter of 6 % around 700 per gram. */
const draw = (random: () => number, n: number): { sizes: number[]; counts: number[] } => {
  const sizes = Array.from({ length: n }, () => 0.8 + 0.4 * random());
  return { sizes, counts: sizes.map((w) => Math.round(w * 700 * (1 + 0.06 * bell(random)))) };
};

test('more samples give a narrower interval on average', () => {
  const random = chance(7);
  const meanWidth = (n: number): number => {
    let sum = 0;
    for (let i = 0; i < 400; i++) {
      const { sizes, counts } = draw(random, n);
      const { low, high } = ratioEstimate(sizes, counts, Infinity, 0.95);
      sum += high - low;
    }
    return sum / 400;
  };
  const widths = [2, 3, 5, 8, 13].map(meanWidth);
  for (let i = 1; i < widths.length; i++) expect(widths[i]).toBeLessThan((widths[i - 1] ?? 0) * 0.85);
});

test('a 95 % interval holds the truth about 95 times in 100', () => {
  const random = chance(11);
  let held = 0;
  let heldShare = 0;
  for (let i = 0; i < 4000; i++) {
    const { sizes, counts } = draw(random, 4);
    const { low, high } = ratioEstimate(sizes, counts, Infinity, 0.95);
    if (low <= 700 && 700 <= high) held++;
    const share = wilson(successes(random, 80, 0.83), 80, 0.95);
    if (share.low <= 0.83 && 0.83 <= share.high) heldShare++;
  }
  // Three standard errors of 4,000 trials are 1 point; Wilson's coverage itself swings by about a point and a
  // half.
  expect(Math.abs(held / 4000 - 0.95)).toBeLessThan(0.015);
  expect(Math.abs(heldShare / 4000 - 0.95)).toBeLessThan(0.025);
});

test('a single sample gets the chance of the count alone', () => {
  const got = ratioEstimate([2], [25], Infinity, 0.95);
  expect(got.low * 2).toAgreeWithPrinted('16.18');
  expect(got.high * 2).toAgreeWithPrinted('36.90');
  expect(got.error).toBeNaN();
});

test(
  'samples that disagree widen the interval; samples that agree do not make it ' +
    'narrower than the pooled count',
  () => {
    const clumped = clusteredShare([90, 50, 70, 30], [100, 100, 100, 100], 0.95);
    const even = clusteredShare([61, 60, 59, 60], [100, 100, 100, 100], 0.95);
    const pooled = wilson(240, 400, 0.95);
    expect(clumped.isClumped).toBe(true);
    expect(clumped.high - clumped.low).toBeGreaterThan(3 * (pooled.high - pooled.low));
    expect(even).toMatchObject({ low: pooled.low, high: pooled.high, isClumped: false });
  },
);

test('a difference holds itself, turns round when the runs are swapped, and vanishes for equal runs', () => {
  fc.assert(
    fc.property(counted, counted, confidence, ([k1, n1], [k2, n2], c) => {
      const one = shareDifference(k1, n1, k2, n2, c);
      const other = shareDifference(k2, n2, k1, n1, c);
      expect(one.low).toBeLessThanOrEqual(one.difference + 1e-12);
      expect(one.high).toBeGreaterThanOrEqual(one.difference - 1e-12);
      expect(one.low).toBeCloseTo(-other.high, 12);
      expect(shareDifference(k1, n1, k1, n1, c).difference).toBe(0);
    }),
    SEED,
  );
});

test('consistency: two equal ratio estimates double the variance and the degrees of freedom', () => {
  const side = ratioEstimate([1, 1, 1], [700, 710, 690], Infinity, 0.95);
  const got = ratioDifference(side, side, 0.95);
  expect(got.difference).toBe(0);
  // Standard error of one side 10/√3 = 5.7735; of the difference 8.1650; t with 4 degrees of freedom 2.77645.
  expect(got.high).toAgreeWithPrinted('22.67');
});

test('the sample size asked for is enough and one less is not', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.02, max: 0.98, noNaN: true }),
      fc.double({ min: 0.01, max: 0.2, noNaN: true }),
      (p, d) => {
        const n = sampleForShare(p, d, 0.95);
        const half = (m: number): number => (wilson(p * m, m, 0.95).high - wilson(p * m, m, 0.95).low) / 2;
        expect(half(n)).toBeLessThanOrEqual(d);
        if (n > 1) expect(half(n - 1)).toBeGreaterThan(d);
      },
    ),
    SEED,
  );
});

test('consistency: at one half the sample size is z²/4d² − z², rounded up', () => {
  const z = twoSidedNormal(0.95);
  for (const d of [0.02, 0.05, 0.1])
    expect(sampleForShare(0.5, d, 0.95)).toBe(Math.ceil((z * z) / (4 * d * d) - z * z));
});

test('a small lot needs fewer, never more than there are', () => {
  expect(sampleForShare(0.5, 0.05, 0.95, 1000)).toBeLessThan(381);
  expect(sampleForShare(0.5, 0.05, 0.95, 20)).toBeLessThanOrEqual(20);
});

test('the number of subsamples asked for is enough and one less is not', () => {
  expect(subsamplesFor(0.05, 0.05, 0.95)).toBe(7);
  // A wish no count can meet ends without an answer instead of running on.
  expect(subsamplesFor(5, 0.001, 0.95)).toBeNaN();
  expect(relativeSpread([1, 2, 3], [10, 20, 30])).toBe(0);
});

test(
  'stages multiplied: exact shares add nothing, one stage is its own interval, more ' + 'stages are wider',
  () => {
    const start = { value: 10000, low: 10000, high: 10000 };
    const half = countedStage(50, 100, 0.95);
    const one = stageProduct(start, [half]);
    expect([one.low / 10000, one.high / 10000].map((x) => x.toFixed(9))).toEqual(
      [half.low, half.high].map((x) => x.toFixed(9)),
    );
    const two = stageProduct(start, [half, { value: 1, low: 1, high: 1 }]);
    expect(two.low).toBeCloseTo(one.low, 9);
    const three = stageProduct(start, [half, countedStage(80, 100, 0.95)]);
    expect(three.high / three.low).toBeGreaterThan(one.high / one.low);
    expect(stageProduct(start, [half, countedStage(0, 10, 0.95)])).toMatchObject({ value: 0, low: 0 });
  },
);

test('a product holds itself and lies inside the product of all worst cases', () => {
  fc.assert(
    fc.property(
      fc.array(
        counted.filter(([k]) => k > 0),
        { minLength: 1, maxLength: 6 },
      ),
      (list) => {
        const stages = list.map(([k, n]) => countedStage(k, n, 0.95));
        const got = stageProduct({ value: 1000, low: 900, high: 1200 }, stages);
        expect(got.low).toBeLessThanOrEqual(got.value * (1 + 1e-12));
        expect(got.high).toBeGreaterThanOrEqual(got.value * (1 - 1e-12));
        expect(got.low).toBeGreaterThanOrEqual(900 * stages.reduce((t, s) => t * s.low, 1) * (1 - 1e-9));
        expect(got.high).toBeLessThanOrEqual(1200 * stages.reduce((t, s) => t * s.high, 1) * (1 + 1e-9));
      },
    ),
    SEED,
  );
});

test('the interval of a product of three counted stages holds the truth about 95 times in 100', () => {
  const random = chance(23);
  let held = 0;
  for (let i = 0; i < 3000; i++) {
    const stages = (
      [
        [0.8, 120],
        [0.6, 150],
        [0.35, 90],
      ] as const
    ).map(([p, n]) => countedStage(successes(random, n, p), n, 0.95));
    const got = stageProduct({ value: 1, low: 1, high: 1 }, stages);
    if (got.low <= 0.8 * 0.6 * 0.35 && 0.8 * 0.6 * 0.35 <= got.high) held++;
  }
  expect(Math.abs(held / 3000 - 0.95)).toBeLessThan(0.02);
});
