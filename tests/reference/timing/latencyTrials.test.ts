/**
 * Waiting times of African catfish and kin as their abstracts print them, all with a temperature. Sources by key:
 * OKER15, WORLDAQ25, OLUBIYI05, GADISSA13, MOSHAAND, CLARIIDPAGE, TILAPIAGLAND, LEGENDRE95, LONGIHCG, BIDOR04. Not
 * placed, because no temperature is printed: NGUEKU15 7 to 9 h, AUDU23, ATAGUBA24 11 and 12 h, YULIANTI20 10.1 h,
 * VILLANUEVA25 11.88 and 17.59 h, DOCTOLERO 10 to 12 h, SHARAF12 9 to 12 h; TSADU is another species.
 */
import { call, grid, number, refusal } from '../../support/call';

/** Hours after an injection at 0:00: first look, best, last hour tried. */
const windowAt = (temperature: number, preparation: string): readonly number[] =>
  (grid('STRIP.WINDOW', 46000, temperature, preparation)[0] ?? []).map((at) => (Number(at) - 46000) * 24);

const adviceAt = (temperature: number): string => String(call('STRIP.ADVICE', temperature));

const GOOD: readonly (readonly [string, number, number, string])[] = [
  ['ready-made solution', 26, 613 / 60, 'OKER15: 613 minutes at 26.0 ± 0.7 °C'],
  ['ready-made solution', 26.5, 8, 'WORLDAQ25: fertilised at 8 h, 26 to 27 °C'],
  ['ready-made solution', 26.5, 10, 'WORLDAQ25: fertilised at 10 h'],
  ['ready-made solution', 26.5, 12, 'WORLDAQ25: 12 h best, most eggs and 83.57 % fertilised'],
  ['ready-made solution', 27, 12, 'WORLDAQ25: the warm end of its 26 to 27 °C'],
  ['ready-made solution', 27.15, 8, 'OLUBIYI05: 8 to 11.5 h at 26.3 to 28.0 °C'],
  ['ready-made solution', 26.3, 11.5, 'OLUBIYI05: the long end'],
  ['own-species pituitary', 22, 20, 'CLARIIDPAGE: 20 h at 22 °C'],
  ['own-species pituitary', 28, 12, 'CLARIIDPAGE: 12 h at 28 °C'],
  ['own-species pituitary', 23, 13.5, 'GADISSA13: 13.5 h, 76.9 % fertilised'],
  ['own-species pituitary', 26, 17, 'MOSHAAND: larvae from 17 h, 26 to 28 °C'],
  ['own-species pituitary', 27, 17, 'MOSHAAND: the middle of it'],
  ['carp pituitary', 23, 13.5, 'GADISSA13: 13.5 h, 80.5 % fertilised'],
  ['carp pituitary', 26, 745 / 60, 'OKER15: 745 minutes at 26.0 ± 0.7 °C'],
  ['tilapia pituitary', 27, 14, 'TILAPIAGLAND: 14 to 18 h at 27 ± 1 °C'],
  ['tilapia pituitary', 27, 18, 'TILAPIAGLAND: the long end'],
  ['hCG', 30, 8, 'LEGENDRE95: 18,000 eggs at 8 h at 30 °C, Heterobranchus'],
  ['hCG', 30, 11, 'LEGENDRE95: 72,000 at 11 h'],
  ['hCG', 28, 14, 'LONGIHCG: within 14 h at 27 to 29 °C'],
  ['Heterobranchus longifilis', 30, 8, 'LEGENDRE95'],
  ['Heterobranchus longifilis', 30, 11, 'LEGENDRE95'],
  ['Heterobranchus longifilis', 28, 14, 'LONGIHCG'],
  ['Heterobranchus bidorsalis', 27, 14, 'BIDOR04: 14 to 18 h at 27 ± 1 °C'],
  ['Heterobranchus bidorsalis', 27, 18, 'BIDOR04: the long end'],
];

test.each(GOOD)(
  '%s at %d °C: %d h had good eggs and is inside the window (%s)',
  (name, temperature, hours) => {
    const [first = NaN, best = NaN, last = NaN] = windowAt(temperature, name);
    expect(first).toBeLessThanOrEqual(hours + 0.01);
    expect(last).toBeGreaterThanOrEqual(hours - 0.01);
    expect(first < best && best < last).toBe(true);
  },
);

test('two preparations never share a curve: in one trial the gland took 1.2 times as long as the solution', () => {
  // OKER15: 745 / 613 = 1.215. The middles of all trials stand in the same order.
  const [solution, tilapia, own] = ['ready-made solution', 'tilapia pituitary', 'own-species pituitary'].map(
    (name) => number('LATENCY.HOURS', 27, name),
  );
  expect(tilapia).toBeGreaterThan((solution ?? NaN) * 1.2);
  // VILLANUEVA25: tilapia gland 17.59 h, own gland 11.88 h, 1.48 times.
  expect((tilapia ?? NaN) / (own ?? NaN)).toBeCloseTo(17.59 / 11.88, 1);
});

test('nothing is called over-ripe or too late where a trial still fertilised', () => {
  const advice = String(grid('RUN.CLOCK', 46000.8, 27).flat().join(' ')).toLowerCase();
  expect(advice).not.toMatch(/over-?ripe|too late/);
});

test.each([
  ['tried', 27, false],
  ['the last temperature with a trial', 28, false],
  ['just warmer: carried', 28.1, true],
  ['31 °C in March', 31, true],
  ['33 °C, the end', 33, true],
])('%s: %d °C is marked as thin %s', (_what, temperature, isThin) => {
  expect(/No trial at/.test(adviceAt(temperature))).toBe(isThin);
});

test('beyond 33 °C a sentence: the temperature, the limit, what to do', () => {
  expect(refusal('LATENCY.HOURS', 33.1)).toMatch(/33\.1 °C.*20 to 33 °C.*shade the vats.*strip at night/);
  expect(refusal('LATENCY.HOURS', 19.9)).toMatch(/19\.9 °C.*warm the water/);
});
