/**
 * Capacity calculation of a pike farm (Russian coursework): 3.377 million pre-larvae at 100,000 a female,
 * printed 33.8, so 34.
 */
import { number } from '../../support/call';

test('34 females', () => {
  expect(number('FEMALES.BYSPAWN', 3_377_000, 100_000)).toBe(34);
});

test('each step divides by the survival, never adds the loss', () => {
  // Printed 1.117, then 1.241, 1.655, 2.364 and 3.377 million at survivals of 90, 75, 70 and 70 %.
  let fish = 335_100 / 0.3;
  for (const [survival, printed] of [
    [0.9, '1.241'],
    [0.75, '1.655'],
    [0.7, '2.364'],
    [0.7, '3.377'],
  ] as const) {
    fish = number('BROOD.WEIGHT', fish, 1, survival);
    expect(fish / 1e6).toAgreeWithPrinted(printed);
  }
});
