/**
 * United States Fish and Wildlife Service, Inland Salmonid Broodstock Handbook, p. 1-8 (key SALMONIDBOOK): 99
 * females with 1 male give Ne 3.96, 2 with 2 give 4.00. Wageningen University breeding text quoting FAO (key
 * FAORATE): 25 of each sex 1 %, 50 of each 0.5 % per generation. Transcribed from the pages.
 */
import { number } from '../../support/call';

test.each([
  [99, 1, '3.96'],
  [2, 2, '4.00'],
])('%d females and %d males: Ne %s', (females, males, effective) => {
  expect(number('BREEDERS.EFFECTIVE', females, males)).toAgreeWithPrinted(effective);
});

test.each([
  [25, 25, '1'],
  [50, 50, '0.5'],
])('%d females and %d males: %s %% a generation', (females, males, percent) => {
  expect(number('INBREEDING.RATE', females, males) * 100).toAgreeWithPrinted(percent);
});

test.each([
  [25, 0.01, 25],
  [50, 0.005, 50],
])('%d females at a rate of %d need %d males', (females, rate, males) => {
  expect(number('MALES.FORRATE', females, rate)).toBe(males);
});
