/**
 * de Graaf G.J., Galemoni F., Banzoussi B. 1995. Aquaculture Research 26(4):233-242 (abstract): stripped eggs
 * 14.3 ± 1.3 % of body weight in the rainy, 1.3 ± 0.3 % in the dry season; the ± are errors of the means. Dadebo E.
 * 2000 (DADEBO00): 669 eggs per gram on average. Transcribed from the abstracts.
 */
import { bell, chance } from '../../support/chance';
import { grid } from '../../support/call';

test.each([
  ['rainy', '14.3'],
  ['dry', '1.3'],
])('%s season: %s %% of body weight', (season, mean) => {
  // A million females' worth of eggs makes the whole number fine enough to read the share back.
  const eggs = 1e9;
  const [females] = grid('FEMALES.SEASON', eggs, 1, season)[0] ?? [];
  expect((eggs / Number(females) / 1000 / 669) * 100).toAgreeWithPrinted(mean);
});

test.each([
  // Drawn seasons, apart from the formula: each female gives or not, then a yield with its spread.
  ['rainy', 0.143, 0.3, 1, 500_000],
  ['rainy', 0.143, 0.3, 0.875, 1_000_000],
  ['dry', 0.013, 0.4, 1, 200_000],
] as const)(
  '%s: the careful number brings the eggs in nine drawn seasons of ten',
  (season, share, spread, gives, eggs) => {
    const females = Number(grid('FEMALES.SEASON', eggs, 1, season, 669, gives)[0]?.[1]);
    const random = chance(20261128);
    const draw = (n: number): number =>
      Array.from({ length: n }, () =>
        random() < gives ? share * 1000 * 669 * Math.max(0, 1 + spread * bell(random)) : 0,
      ).reduce((sum, one) => sum + one, 0);
    const seasons = 4000;
    const met = (n: number): number =>
      Array.from({ length: seasons }, () => draw(n)).filter((sum) => sum >= eggs).length / seasons;
    expect(met(females)).toBeGreaterThan(0.88);
    // One fewer would not do, as far as whole fish go.
    expect(met(females - 1)).toBeLessThan(0.92);
  },
);
