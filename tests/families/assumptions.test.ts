import { ASSUMPTIONS } from '../../shared/families/assumptions';
import { expectKept } from '../support/kept';

/** The figures a plan starts from: each planned, its poor and good ends, and what anyone may type. */
test('planned figures and their limits', () => {
  for (const { key, planned, low, high, min, max } of Object.values(ASSUMPTIONS)) {
    const ends = [low, high].sort((a, b) => a - b);
    expect([key, ...ends, planned].every((x) => typeof x === 'string' || (x >= min && x <= max))).toBe(true);
    expect(planned).toBeGreaterThanOrEqual(ends[0] ?? NaN);
    expect(planned).toBeLessThanOrEqual(ends[1] ?? NaN);
  }
  expectKept(
    'assumptions',
    Object.fromEntries(
      Object.values(ASSUMPTIONS).map(({ key, unit, planned, low, high, min, max }) => [
        key,
        `${planned} (${low} to ${high}), typed ${min} to ${max} ${unit}`,
      ]),
    ),
  );
});
