import { CATALOGUE } from '../../shared/catalogue';
import { numberWithUnit } from '../../shared/units/typedUnits';
import { number, refusal } from '../support/call';

// Exact by definition: 1 lb = 453.59237 g, 1 oz = 28.349523125 g, 1 US gallon = 3.785411784 L, 1 in = 2.54 cm
// (NIST Special Publication 811, appendix B, from memory).
test.each<[string, string, number]>([
  ['81 F', '°C', (81 - 32) / 1.8],
  ['81F', '°C', (81 - 32) / 1.8],
  ['27 °C', '°C', 27],
  ['3 lb', 'kg', 1.36077711],
  ['12 oz', 'g', 340.1942775],
  ['200 gal', 'L', 757.0823568],
  ['1,4 kg', 'g', 1400],
  ['1.4 kg', 'kg', 1.4],
  ['500 mg', 'g', 0.5],
  ['3 ft', 'm', 0.9144],
  ['90 min', 'h', 1.5],
  ['80 %', 'share', 0.8],
  ['8 mg/L', 'mg/L', 8],
  ['0.125 kg', 'g', 125],
])('%s in %s is %d', (text, unit, wanted) => {
  expect(numberWithUnit(text, unit)).toBeCloseTo(wanted, 9);
});

test.each([
  ['a comma that may stand between thousands', '1,250 g', 'g'],
  ['a point that may', '1.250 g', 'g'],
  ['a unit of another kind', '600 kg', 'L'],
  ['money', '100 usd', 'money'],
  ['a word where the number has no unit', '5 fish', ''],
  ['no unit at all', '81', '°C'],
  ['two numbers', '5-600 g', 'g'],
  ['a date', '12 Mar', 'd'],
  ['a price where a rate is asked for', '5 each', 'mg/kg'],
])('%s is not guessed at: %s', (_, text, unit) => {
  expect(numberWithUnit(text, unit)).toBeUndefined();
});

test('functions take a written unit of their kind, and refuse the others with a sentence', () => {
  expect(number('HATCH.TIME', 46_100, '81 F')).toBe(number('HATCH.TIME', 46_100, (81 - 32) / 1.8));
  expect(number('HORMONE.VOLUME', '3 lb', 0.5)).toBe(number('HORMONE.VOLUME', 1.36077711, 0.5));
  expect(refusal('BUFFER.AIRED', '600 kg', 5.1)).toMatch(/got the text "600 kg"\. Leave the unit out/);
  // Bounds hold for what was understood.
  expect(refusal('HATCH.TIME', 46_100, '200 F')).toContain('93.3333');
});

test('a number written with the own unit of its argument is that number, in every function', () => {
  const wrong = CATALOGUE.flatMap(({ id, params }) =>
    params.flatMap((param) => {
      if (param.kind !== 'number' || param.quantity.unit === '') return [];
      const { unit } = param.quantity;
      const got = numberWithUnit(`7 ${unit.split(' ')[0] ?? ''}`, unit);
      return got === 7 || unit.includes(' ') || unit === 'share'
        ? []
        : [`${id} ${param.name}: 7 ${unit} → ${String(got)}`];
    }),
  );
  expect(wrong).toEqual([]);
});
