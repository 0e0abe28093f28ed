/**
 * Values computed by us from published inputs: they show that the parts agree, not that a publication says
 * so.
 */
import { columnOf, grid, number } from '../../support/call';

describe('consistency: 100,000 fingerlings with 32.3 % pond survival and 669 eggs per gram', () => {
  test.each([
    ['rainy', 0.591, 0.143, '523854', '5.48', 6],
    ['dry', 0.284, 0.013, '1090132', '125.3', 126],
  ])(
    '%s season: %d hatch, %d of body weight: %s eggs, %s kg',
    (season, hatch, eggShare, eggs, kilograms, females) => {
      const wanted = number('BROOD.WEIGHT', 100_000, 1, hatch, 0.323);
      expect(wanted).toAgreeWithPrinted(eggs);
      expect(number('BROOD.WEIGHT', 100_000, eggShare * 1000 * 669, hatch, 0.323)).toAgreeWithPrinted(
        kilograms,
      );
      expect(number('FEMALES.NEEDED', wanted, 1, eggShare, 669)).toBe(females);
      expect(grid('FEMALES.SEASON', wanted, 1, season)[0]?.[0]).toBe(females);
    },
  );
});

describe('consistency: effective parents', () => {
  test.each([
    [10, 2, '6.67', '7.5'],
    [10, 5, '13.3', '3.75'],
    [20, 4, '13.3', '3.75'],
    [30, 10, '30', '1.67'],
    [25, 25, '50', '1'],
    [50, 50, '100', '0.5'],
  ])('%d females, %d males: Ne %s, %s %%', (females, males, effective, percent) => {
    expect(number('BREEDERS.EFFECTIVE', females, males)).toAgreeWithPrinted(effective);
    expect(number('INBREEDING.RATE', females, males) * 100).toAgreeWithPrinted(percent);
  });

  test('a lot to which all give alike counts all its parents', () => {
    const [lot] = grid('LOT.BREEDERS', columnOf([5, 5, 5]), columnOf([2, 2]));
    expect(lot?.[2]).toBeCloseTo(number('BREEDERS.EFFECTIVE', 3, 2), 12);
  });

  test('one generation adds the rate, and an inbred line has a smaller Ne', () => {
    expect(number('INBREEDING.AFTER', 10, 5, 1)).toBeCloseTo(number('INBREEDING.RATE', 10, 5), 12);
    expect(number('INBREEDING.AFTER', 10, 5, 0, 0.2)).toBeCloseTo(0.2, 12);
    expect(number('BREEDERS.EFFECTIVE', 10, 5, 0.25)).toBeCloseTo(
      number('BREEDERS.EFFECTIVE', 10, 5) / 1.25,
      12,
    );
  });
});

describe('consistency: doses', () => {
  test(
    '1.2 kg at 0.5 mL/kg is 0.60 mL, that is 12 µg GnRHa and 6 mg antagonist at 20 µg ' + 'and 10 mg per mL',
    () => {
      const volume = number('HORMONE.VOLUME', 1.2);
      expect(volume).toAgreeWithPrinted('0.60');
      expect(volume * 20).toAgreeWithPrinted('12');
      expect(volume * 10).toAgreeWithPrinted('6');
    },
  );

  test.each([
    ['carp pituitary', 4, '4.8'],
    ['hCG', 3000, '3600'],
  ])('1.2 kg of %s at %d per kg: %s', (preparation, dose, amount) => {
    expect(grid('HORMONE.DOSE', 1.2, preparation, dose)[0]?.[0]).toAgreeWithPrinted(amount);
  });

  test.each([
    [5.62e9, '0.28'],
    [6.54e9, '0.24'],
    [3.8e10, '0.04'],
  ])('milt for 150 g of eggs at 700 per g and %d sperm per mL: %s mL', (density, volume) => {
    expect(number('MILT.VOLUME', 150 * 700, density)).toAgreeWithPrinted(volume);
  });

  test('the table adds up to single doses and their total', () => {
    const weights = [0.8, 1.25, 2.1];
    const rows = grid('HORMONE.TABLE', columnOf(weights), null, 'carp pituitary', null, 5, 0.1, false);
    const single = grid('HORMONE.DOSE', columnOf(weights), 'carp pituitary', null, 5);
    expect(rows.slice(0, 3).map((r) => r[4])).toEqual(single.map((r) => r[2]));
    expect(rows[3]?.[4]).toBeCloseTo(number('HORMONE.VOLUME', 4.15, 0.8), 12);
    for (const row of rows) expect(Number(row[5]) + Number(row[6])).toBeCloseTo(Number(row[4]), 12);
  });
});
