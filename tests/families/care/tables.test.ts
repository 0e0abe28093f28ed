import { bagLoad } from '../../../shared/families/care/kernels/bags';
import { mealsFor } from '../../../shared/families/care/kernels/grain';
import { dryShareAt } from '../../../shared/families/feeding/kernels/metabolism';
import { call, grid, number } from '../../support/call';

/** Every cell of the tables behind bags, meals and dry matter, and each side of their steps. */

// Dupree & Huner 1984, lb per US gallon at 65 °F (18.3 °C): 1 lb/gal is 119.826 g/L.
test.each([
  [0.05, 1, 0.5, 2],
  [0.05, 12, 0.4, 1.6],
  [0.05, 24, 0.4, 1.2],
  [0.05, 48, 0.2, 0.6],
  [0.2, 1, 1, 3.7],
  [0.2, 12, 0.9, 3.2],
  [0.2, 24, 0.7, 2.7],
  [0.2, 48, 0.3, 1.3],
  // Half way between the rows.
  [0.05, 36, 0.3, 0.9],
])('fish of %f g for %d h: %f to %f lb a gallon', (grams, hours, low, high) => {
  const load = bagLoad(grams, hours, 18.3);
  expect(load.low / 119.8264).toBeCloseTo(low, 4);
  expect(load.high / 119.8264).toBeCloseTo(high, 4);
  // 10 °C more halve it.
  expect(bagLoad(grams, hours, 28.3).low).toBeCloseTo(load.low / 2, 6);
});

test('one hour is within the table, less and more than two days are not; 0.15 g is a fingerling', () => {
  expect(bagLoad(0.05, 0.99, 20).low).toBeNaN();
  expect(bagLoad(0.05, 48.01, 20).low).toBeNaN();
  expect(bagLoad(0.149, 1, 18.3).low).toBeCloseTo(0.5 * 119.8264, 3);
  expect(bagLoad(0.15, 1, 18.3).low).toBeCloseTo(119.8264, 3);
});

test.each([
  [0.049, [6, 8]],
  [0.05, [5, 6]],
  [0.499, [5, 6]],
  [0.5, [3, 6]],
  [9.99, [3, 6]],
  [10, [2, 3]],
])('fish of %f g get %j meals a day', (grams, meals) => {
  expect(mealsFor(grams)).toEqual(meals);
});

test('dry matter: the printed shares at their weights, straight over the logarithm between them', () => {
  expect(dryShareAt(250)).toBeCloseTo(0.16, 9);
  expect(dryShareAt(500)).toBeCloseTo(0.17, 9);
  expect(dryShareAt(50_000)).toBeCloseTo(0.25, 9);
  expect(dryShareAt(Math.sqrt(250 * 500))).toBeCloseTo(0.165, 9);
  expect(dryShareAt(90_000)).toBe(0.25);
});

test('carp eggs: means of three lots at 26 and at 33 °C, as printed (CARPZERO)', () => {
  expect(number('INCUBATION.HOURS', 26, 'common carp')).toBeCloseTo(45.14, 6);
  expect(number('INCUBATION.HOURS', 33, 'common carp')).toBeCloseTo(33.11, 6);
});

test('H. longifilis at 30 °C: first eggs from 7.5 h, the spawn complete at 11 h; at 28 °C within 14 h (LEGENDRE95)', () => {
  const hours = (celsius: number): readonly number[] =>
    (grid('STRIP.WINDOW', 46_500, celsius, 'Heterobranchus longifilis')[0] ?? []).map(
      (at) => 24 * (Number(at) - 46_500),
    );
  expect(hours(30)[0]).toBeCloseTo(7.5, 6);
  expect(hours(30)[1]).toBeCloseTo(10.5, 6);
  expect(hours(28)[2]).toBeCloseTo(14, 1);
  expect(call('STRIP.ADVICE', 30, 'Heterobranchus longifilis')).toContain('between 9.5 and 11.0 h');
});

// Dead of yesterday were alive yesterday: 100 of 10,100, and today's 201 of 10,000 are twice that, and above 2 %.
test.each([
  [201, 100, 'act'],
  [201, 102, 'look'],
  [199, 90, 'look'],
])('%d dead of 10,000 after %d yesterday: %s', (dead, yesterday, code) => {
  expect(grid('DEATHS.EXPECTED', 10_000, 10, dead, yesterday)[0]?.[3]).toBe(code);
});
