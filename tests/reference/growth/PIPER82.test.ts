/**
 * Piper R.G. et al. 1982. Fish Hatchery Management, US Fish and Wildlife Service, p. 356
 * (https://www.yumpu.com/en/document/view/48053267/fish-hatchery-management-fisheries-aquaculture/379):
 * 5 °F warmer cuts a safe load of 1,000 lb to 722 lb; 5 °F cooler raises it to 1,278 lb. Transcribed by the project.
 */
import { transportLoad } from '../../../shared/families/growth/kernels/transportLoad';
import { celsiusFromFahrenheit } from '../../../shared/units/convert';
import '../../support/printed';

test.each([
  [5, '722'],
  [-5, '1,278'],
])('%d °F', (warmer, printed) => {
  expect(
    transportLoad(1000, celsiusFromFahrenheit(60), celsiusFromFahrenheit(60 + warmer)),
  ).toAgreeWithPrinted(printed);
});

test('farther than was printed there is no answer', () => {
  expect(transportLoad(1000, 15, 19)).toBeNaN();
});
