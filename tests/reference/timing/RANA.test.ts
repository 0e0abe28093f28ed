/**
 * Rana K., two abstracts (keys RANACONE and RANATEMP): Oreochromis eggs in incubators at 28 °C hatched after
 * 72 to 84 h (O. niloticus) and 90 to 102 h (O. mossambicus); O. niloticus began to feed 8, 5 and 4 d after
 * hatch at 24, 28 and 30 °C and half the fry were lost below 21.8 or above 32.1 °C. Transcribed from the
 * abstracts.
 */
import { grid, number, refusal } from '../../support/call';

test.each([
  ['Nile tilapia', '72', '84'],
  ['Mozambique tilapia', '90', '102'],
])('%s hatches from %s to %s h at 28 °C', (species, first, last) => {
  const [from, to] = (grid('HATCH.WINDOW', 46000, 28, species)[0] ?? []).map(
    (at) => (Number(at) - 46000) * 24,
  );
  expect(from).toAgreeWithPrinted(first);
  expect(to).toAgreeWithPrinted(last);
});

test.each([
  [24, '8'],
  [28, '5'],
  [30, '4'],
])('at %d °C Nile tilapia feeds %s d after hatch', (temperature, days) => {
  expect(number('FEEDING.START', 46000, temperature, 'Nile tilapia') - 46000).toAgreeWithPrinted(days);
});

test.each([21.7, 32.2])('%d °C is named as beyond what fry bear', (temperature) => {
  expect(refusal('FEEDING.START', 46000, temperature, 'Nile tilapia')).toMatch(/#N\/A .*21\.8 and 32\.1/);
});
