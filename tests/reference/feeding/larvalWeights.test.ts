/**
 * Janssen J. 1985, FAO field documents 20 and 21 (key JANSSEN85): 2 to 3 mg at first food, 1 g at 40 to 50 days.
 * Kawamura G. et al. 2017 (key KAWAMURA17): 2.8 mg on day 4, 90 mg on day 21 (range 10 to 490). North American Journal
 * of Aquaculture 78 (key NAJA16): 83 mg at 28 days. Verreth J. 1999 (key VERRETH99): 50 to 60 mg after a week of
 * feeding, 100 to 150 after two, 300 to 500 after a month. From abstracts and the letter.
 */
import { ASSUMPTIONS } from '../../../shared/families/assumptions';
import { grid, number } from '../../support/call';

const milligrams = (day: number): readonly number[] =>
  (grid('LARVA.WEIGHT', day)[0] ?? []).slice(0, 2).map((g) => Number(g) * 1000);

test('first food: 2 to 3 mg, in the plan as in the function', () => {
  for (const mg of [...milligrams(0), ASSUMPTIONS.startWeight.planned * 1000]) {
    expect(mg).toBeGreaterThanOrEqual(2);
    expect(mg).toBeLessThanOrEqual(3);
  }
});

test.each([
  [7, 50, 60],
  [14, 100, 150],
  [30, 300, 500],
])('plenty of Artemia, day %d: %d to %d mg', (day, low, high) => {
  const plenty = milligrams(day)[1] ?? NaN;
  expect(plenty).toBeGreaterThanOrEqual(low);
  expect(plenty).toBeLessThanOrEqual(high);
});

test.each([
  ['Kawamura, 21 days after 2.8 mg: 90 mg', 21, 90],
  ['North American Journal of Aquaculture, 28 d less 3 of yolk: 83 mg', 21.5, 83],
])('the ordinary path is within a tenth of what was printed: %s', (_what, day, printed) => {
  expect(Math.abs((milligrams(day)[0] ?? NaN) / printed - 1)).toBeLessThan(0.15);
});

test('with the planned growth a fish weighs 1 g at 40 to 50 days from hatching', () => {
  const { startWeight, fryGrowth, nurseryGrowth, rearingDays } = ASSUMPTIONS;
  const days =
    rearingDays.planned +
    (100 * Math.log(1 / startWeight.planned) - fryGrowth.planned * rearingDays.planned) /
      nurseryGrowth.planned;
  // Three days of yolk go before.
  expect(days + 3).toBeGreaterThanOrEqual(40);
  expect(days + 3).toBeLessThanOrEqual(50);
});

test.each([
  // Weight at weaning and in the nursery, g; what is planned for that time.
  ['fry', 0.018, ASSUMPTIONS.fryRation.planned],
  ['nursery', 0.2, ASSUMPTIONS.nurseryRation.planned],
] as const)(
  'the planned ration of %s lies within a quarter of what they eat at that weight (CONC98)',
  (_what, g, ration) => {
    // Bagged feed is nine tenths dry.
    const eaten = number('RATION.GUIDE', g) / 0.9;
    expect(Math.abs(ration / eaten - 1)).toBeLessThan(0.25);
  },
);
