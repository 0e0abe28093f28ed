import { measuresFor, stockMillilitres } from '../../shared/dosing/spoons';
import { gramsText, measuresText } from '../../shared/dosing/say';
import { mixMinutes } from '../../shared/dosing/waits';

describe('what a person can measure out', () => {
  test('never more than the dose, whatever the spoons', () => {
    for (const spoons of [[], [5], [5, 2.5], [15, 5, 1]])
      for (let grams = 0.05; grams < 400; grams *= 1.13) {
        const m = measuresFor(grams, spoons);
        expect(m.grams).toBeLessThanOrEqual(grams + 1e-9);
        // A quarter of the dose is the most that is left to the next step.
        expect(m.grams).toBeGreaterThanOrEqual(0.75 * grams);
      }
  });

  test('the spoon that comes nearest, in quarters, with what it really holds', () => {
    expect(measuresFor(6.8, [5])).toMatchObject({ by: 'spoons', count: 1.25, each: 5, grams: 6.25 });
    expect(measuresFor(6.8, [5, 2.3])).toMatchObject({
      count: 2.75,
      each: 2.3,
      grams: expect.closeTo(6.325),
    });
    expect(measuresText(measuresFor(12.6, [5]))).toBe('2½ level spoons of 5 g');
  });

  test('too small for the spoon: millilitres of a stock, by hand 1.1 g of 5 g/L are 220 mL', () => {
    expect(measuresFor(1.1, [5])).toMatchObject({
      by: 'stock',
      millilitres: 220,
      grams: expect.closeTo(1.1),
      stock: { litres: 1, grams: 5 },
    });
    expect(stockMillilitres(0.03)).toBeCloseTo(6);
    // Hydrated lime dissolves 1.65 g/L (handbook): ten litres for a spoon of 5 g.
    expect(measuresFor(0.5, [5], 'hydrated lime')).toMatchObject({ stock: { litres: 10, grams: 5 } });
  });

  test('without a spoon a scale from 2 g on, a stock below', () => {
    expect(measuresFor(2.01, [])).toMatchObject({ by: 'scale', grams: 2 });
    expect(measuresFor(1.99, [])).toMatchObject({ by: 'stock', grams: expect.closeTo(1.95) });
    expect(measuresFor(46.8, []).grams).toBe(46);
  });
});

test('a tank mixes longer than a vat, up to an hour', () => {
  expect([600, 1000, 1001, 4000, 20_000].map(mixMinutes)).toEqual([15, 15, 25, 45, 60]);
});

describe('the limits of measuring', () => {
  test.each([
    [4.68, [], 4.6],
    [46.8, [], 46],
    [468, [], 460],
    [460, [], 460],
    [2, [], 2],
    [7.5, [30], 7.5],
    [5, [5, 2.5], 5],
    [5, [0, 5], 5],
    [7, [30, 6], 6],
  ])('%f g with spoons of %j: %f g', (grams, spoons, measured) => {
    expect(measuresFor(grams, spoons).grams).toBeCloseTo(measured, 9);
  });
  test('of two spoons that hold the same, the fewer; a spoon too large is left', () => {
    expect(measuresFor(5, [2.5, 5])).toMatchObject({ count: 1, each: 5 });
    expect(measuresFor(7, [30])).toMatchObject({ by: 'stock', stock: { litres: 1, grams: 30 } });
  });
  test('a stock in ten litres where two spoons would not dissolve in one', () => {
    // Hydrated lime dissolves 1.65 g/L (handbook).
    expect(measuresFor(0.1, [0.8], 'hydrated lime').stock?.litres).toBe(1);
    expect(measuresFor(0.1, [0.85], 'hydrated lime').stock?.litres).toBe(10);
  });
  test.each([
    [1.25, '¼ level spoon of 5 g'],
    [2.5, '½ level spoon of 5 g'],
    [3.75, '¾ level spoon of 5 g'],
    [5, '1 level spoon of 5 g'],
    [6.25, '1¼ level spoons of 5 g'],
    [10, '2 level spoons of 5 g'],
  ])('%f g: %s', (grams, says) => {
    expect(measuresText(measuresFor(grams, [5]))).toBe(says);
  });
  test.each([
    [0, '0'],
    [0.994, '0.99'],
    [1, '1'],
    [1.26, '1.3'],
    [99.94, '99.9'],
    [100, '100'],
    [123.4, '123'],
  ])('%f g as a scale shows it: %s', (grams, says) => {
    expect(gramsText(grams)).toBe(says);
  });
});
