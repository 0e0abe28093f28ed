/**
 * Fertilisation to hatch as printed: GADISSA13 within 33 h at 23 °C; AMPCLARIAS 1.25 d at 25 and 0.58 d at 33 °C; ACEH19
 * 23.5 to 25.0 h at 28 °C; OLUBIYI05 22 to 30 h at 25.5 to 26.1 °C; LEGENDRE91 26 to 33 h at 25 and 14 to 18 h at 33 °C
 * and NGUENGA04 19 to 24 and 21 to 27 h at 29 °C, both Heterobranchus longifilis; NAJA16: both species and their hybrids
 * within 15 minutes of each other.
 */
import { grid, number } from '../../support/call';

const hatch = (temperature: number, species: string): readonly number[] =>
  (grid('HATCH.WINDOW', 46000, temperature, species)[0] ?? []).map((at) => (Number(at) - 46000) * 24);

test.each([
  ['African catfish', 23, 33, 33],
  ['African catfish', 25, 30, 30],
  ['African catfish', 25.8, 26, 30],
  ['African catfish', 28, 23.5, 25],
  ['African catfish', 33, 13.92, 13.92],
  ['Heterobranchus longifilis', 25, 26, 33],
  ['Heterobranchus longifilis', 29, 19, 27],
  ['Heterobranchus longifilis', 33, 14, 18],
])('%s at %d °C: the hours of the table lie in %d to %d h', (species, temperature, from, to) => {
  const hours = number('INCUBATION.HOURS', temperature, species);
  expect(hours).toBeGreaterThanOrEqual(from - 0.01);
  expect(hours).toBeLessThanOrEqual(to + 0.01);
});

test('from the first fish to the last 3 to 9 hours at 27 to 33 °C (SPREAD01 6, UKAKALU 8.4 to 8.7)', () => {
  for (const t of [27, 28, 30, 33]) {
    const [first = NaN, last = NaN] = hatch(t, 'African catfish');
    expect(last - first).toBeGreaterThan(3);
    expect(last - first).toBeLessThan(9);
  }
});

test('a hybrid takes the hours of its mother', () => {
  expect(number('INCUBATION.HOURS', 28, 'hybrid of a catfish mother')).toBe(number('INCUBATION.HOURS', 28));
});
