/**
 * Legendre M. et al. 1992. J. Fish Biology 40:59-79: growth of Clarias gariepinus at 29.5 °C, 18 points,
 * digitised in an open data file (mydata_Clarias_gariepinus.m). The rates over the curve were worked out by
 * the project.
 */
import { specificGrowth, weightAfter } from '../../../shared/families/growth/kernels/specificGrowth';
import { thermalGrowth, weightByThermal } from '../../../shared/families/growth/kernels/thermalGrowth';
import '../../support/printed';
import { tableOf } from '../../support/table';

const CURVE = tableOf('legendre1992_growth.csv').map((row) => ({
  day: Number(row.day),
  weight: Number(row.wet_weight_g),
}));
const FROM = CURVE.find((p) => p.day === 12.97);
const TO = CURVE.at(-1);

test('consistency: growth rate and thermal coefficient from day 12.97 to 251.84', () => {
  if (!FROM || !TO) throw new Error('points missing');
  const days = TO.day - FROM.day;
  expect(specificGrowth(FROM.weight, TO.weight, days)).toAgreeWithPrinted('1.470');
  expect(thermalGrowth(FROM.weight, TO.weight, 29.5, days, 1000)).toAgreeWithPrinted('0.701');
});

/** How far a model fitted to the two ends lies from the measured weights between them, at worst. */
const worst = (model: (start: number, days: number) => number): number => {
  if (!FROM) throw new Error('point missing');
  return Math.max(
    ...CURVE.filter((p) => p.day > FROM.day).map((p) =>
      Math.abs(model(FROM.weight, p.day - FROM.day) / p.weight - 1),
    ),
  );
};

test(
  'counter-example: one coefficient for the whole curve is up to half too low in ' +
    'between, as the help says',
  () => {
    expect(worst((start, days) => weightByThermal(start, 0.701, 29.5, days, 1000))).toAgreeWithPrinted(
      '0.48',
    );
  },
);

test('counter-example: one growth rate for the whole curve is worse still, as the help says', () => {
  expect(worst((start, days) => weightAfter(start, 1.47, days))).toAgreeWithPrinted('0.65');
});
