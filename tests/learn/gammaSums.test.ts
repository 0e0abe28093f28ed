import { gammaSums } from '../../shared/families/learning/kernels/gammaSums';
import { logGamma } from '../../shared/maths/specialFunctions';
import { Chance } from './support/farms';

/** Against the plain sum by the other routine for ln Γ, which shares nothing with the polynomials. */
test.each([
  ['samples', [61, 0, 88, 140, 3, 97, 97, 12]],
  ['larvae', [41_200, 65_000, 12, 88_140]],
  ['nothing seen', [0, 0, 0, 0, 0]],
  ['one run', [61]],
])('sums of ln Γ over %s are those of the plain sum', (_name, counts) => {
  const sum = gammaSums(counts);
  const chance = new Chance(3);
  for (let i = 0; i < 400; i++) {
    const a = Math.exp(-12 + 20 * chance.next());
    const plain = counts.reduce((all, k) => all + logGamma(k + a), 0);
    expect(Math.abs(sum(a) - plain)).toBeLessThan(1e-11 * counts.reduce((all, k) => all + k, 100));
  }
});

test('ends of a doubling, and what is no steadiness', () => {
  const sum = gammaSums([5, 6, 7, 8]);
  const plain = (a: number): number => [5, 6, 7, 8].reduce((all, k) => all + logGamma(k + a), 0);
  for (const a of [2 ** -13, 2 ** -12, 1, 2, 4 - 1e-12, 4, 1024]) expect(sum(a)).toBeCloseTo(plain(a), 9);
  expect([0, -1, NaN].map((a) => gammaSums([0, 0, 0, 0])(a))).toEqual([NaN, NaN, NaN]);
  expect(sum(Infinity)).not.toBe(0);
});
