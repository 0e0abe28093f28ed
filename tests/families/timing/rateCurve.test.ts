import fc from 'fast-check';
import {
  curveFromHours,
  hoursAt,
  hoursToReach,
  piecesBetween,
  rateAt,
  sumOf,
  warmthCurve,
  highest,
  lowest,
} from '../../../shared/families/timing/kernels/rateCurve';
import { PROFILES } from '../../../shared/families/timing/records/profiles';

const SEED = { seed: 20260314, numRuns: 300 };
const profiles = Object.values(PROFILES).flat();
const anyProfile = fc.constantFrom(...profiles);
const unit = fc.double({ min: 0, max: 1, noNaN: true });

test('a row of the table is given back', () => {
  const curve = curveFromHours([
    [20, 57],
    [25, 27],
    [30, 20],
  ]);
  for (const [t, h] of [
    [20, 57],
    [25, 27],
    [30, 20],
  ] as const)
    expect(hoursAt(curve, t)).toBeCloseTo(h, 12);
});

test('outside the rows there is no answer', () => {
  const curve = curveFromHours([
    [20, 57],
    [30, 20],
  ]);
  expect(rateAt(curve, 19.999)).toBeNaN();
  expect(rateAt(curve, 30.001)).toBeNaN();
});

test.each(profiles.map((p) => [`${p.stage}: ${p.name}`, p] as const))(
  '%s: more warmth never lengthens development',
  (_name, { curve }) => {
    fc.assert(
      fc.property(unit, unit, (a, b) => {
        const at = (x: number): number => lowest(curve) + x * (highest(curve) - lowest(curve));
        expect(hoursAt(curve, at(Math.max(a, b)))).toBeLessThanOrEqual(
          hoursAt(curve, at(Math.min(a, b))) * (1 + 1e-12),
        );
      }),
      SEED,
    );
  },
);

test('a constant temperature sums to one after exactly the hours of the table', () => {
  fc.assert(
    fc.property(anyProfile, unit, ({ curve }, x) => {
      const t = lowest(curve) + x * (highest(curve) - lowest(curve));
      expect(sumOf(piecesBetween(curve, t, t, hoursAt(curve, t)))).toBeCloseTo(1, 12);
    }),
    SEED,
  );
});

test('cutting a slope anywhere changes nothing', () => {
  fc.assert(
    fc.property(
      anyProfile,
      unit,
      unit,
      unit,
      fc.double({ min: 0.01, max: 48, noNaN: true }),
      ({ curve }, x, y, cut, hours) => {
        const at = (u: number): number => lowest(curve) + u * (highest(curve) - lowest(curve));
        const middle = at(x) + (at(y) - at(x)) * cut;
        const whole = sumOf(piecesBetween(curve, at(x), at(y), hours));
        const parts =
          sumOf(piecesBetween(curve, at(x), middle, hours * cut)) +
          sumOf(piecesBetween(curve, middle, at(y), hours * (1 - cut)));
        expect(Math.abs(parts - whole)).toBeLessThanOrEqual(1e-9 * whole);
      },
    ),
    SEED,
  );
});

test('the sum over a slope agrees with many short steps', () => {
  const curve = curveFromHours([
    [20, 57],
    [21, 46],
    [25, 27],
    [30, 20],
  ]);
  const steps = 100_000;
  let sum = 0;
  for (let i = 0; i < steps; i++) sum += rateAt(curve, 20 + (10 * (i + 0.5)) / steps) * (7 / steps);
  expect(sumOf(piecesBetween(curve, 20, 30, 7))).toBeCloseTo(sum, 8);
});

test('the time to reach a share, summed again, gives that share', () => {
  fc.assert(
    fc.property(anyProfile, unit, unit, unit, ({ curve }, x, y, wanted) => {
      const at = (u: number): number => lowest(curve) + u * (highest(curve) - lowest(curve));
      const pieces = piecesBetween(curve, at(x), at(y), 10);
      const target = sumOf(pieces) * wanted;
      const hours = hoursToReach(pieces, target);
      const back = sumOf(piecesBetween(curve, at(x), at(x) + (at(y) - at(x)) * (hours / 10), hours));
      expect(Math.abs(back - target)).toBeLessThanOrEqual(1e-9);
    }),
    SEED,
  );
});

test('warmth counts nothing below the base', () => {
  expect(sumOf(piecesBetween(warmthCurve(15.4), 10, 15.4, 5))).toBe(0);
  expect(sumOf(piecesBetween(warmthCurve(15), 12, 18, 6))).toBeCloseTo(4.5, 9);
});
