/**
 * Consistency: oxygen and food by size at 28 °C, worked out beforehand and apart from this code from the two printed ends
 * of CONC98 (1.0 to 0.033 µmol O2 and 152 to 6.2 % at 0.07 mg to 38 g of dry weight) with the dry share of each weight
 * assumed as listed (tests/data/oxygen_food_computed.csv).
 */
import { readFileSync } from 'node:fs';
import '../../support/printed';
import { number } from '../../support/call';

const rows = readFileSync('tests/data/oxygen_food_computed.csv', 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => line.split(','));

test.each(rows.map((row) => [row[0] ?? '', row[4] ?? '', row[5] ?? ''] as const))(
  '%s mg: %s mg of oxygen an hour for a thousand, eats %s %% of its weight dry',
  (mg, oxygen, food) => {
    const grams = Number(mg) / 1000;
    expect(Math.abs(number('OXYGEN.USE', 1000, grams) / Number(oxygen) - 1)).toBeLessThan(0.01);
    expect(Math.abs((number('RATION.GUIDE', grams) * 100) / Number(food) - 1)).toBeLessThan(0.01);
  },
);

test('30,000 fry of 50 mg in 1,000 L: two hours from 7 to 3 mg/L', () => {
  expect(Math.abs(number('AIR.MINUTES', 30_000, 0.05, 1000) * 2 - 117.3)).toBeLessThan(0.5);
});
