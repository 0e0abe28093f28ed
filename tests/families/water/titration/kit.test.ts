import { columnOf, grid } from '../../../support/call';

/** What a kit and a conductivity leave of the doubt about the alkalinity, from one reading of pH 6.2. */
const reach = (kit: number | null, conductivity: number): { low: number; high: number } => {
  const args = [25, 'soda ash', 1, 'unknown', kit, conductivity, 'good'] as const;
  const [[, low, high] = []] = grid('BUFFER.FIT', 1000, columnOf([0]), columnOf([6.2]), ...args);
  return { low: Number(low), high: Number(high) };
};

test('a kit’s step of 0.1 meq/L: 90 of 100 lie within 1.645 of it (normal table), less where the pH knows better', () => {
  const { low, high } = reach(0.3, 0);
  expect(high - low).toBeLessThanOrEqual(2 * 1.645 * 0.1 + 0.03);
  expect(high - low).toBeGreaterThan(1.645 * 0.1);
});

test('a tenth of a kit that reads 2 meq/L', () => {
  const { low, high } = reach(2, 0);
  expect(high - low).toBeGreaterThan(1.645 * 0.2);
  expect(high - low).toBeLessThanOrEqual(2 * 1.645 * 0.2 + 0.05);
});

test('conductivity leaves room for no more alkalinity than its ions can carry: 1 meq/L to about 100 µS/cm', () => {
  const free = reach(null, 0).high;
  for (const conductivity of [16, 40]) {
    const { high } = reach(null, conductivity);
    // A soft limit: its tail reaches beyond, not to twice as much.
    expect(high).toBeLessThan((2 * conductivity) / 100);
    expect(high).toBeGreaterThan((0.5 * conductivity) / 100);
    expect(high).toBeLessThan(free);
  }
});
