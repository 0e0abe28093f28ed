/**
 * National Institute of Standards and Technology, Statistical Reference Datasets, analysis of variance, SiRstv:
 * resistivity of silicon wafers, five instruments (groups) with five readings each, and the certified values
 * (https://www.itl.nist.gov/div898/strd/anova/SiRstv.html). Data and certified values were read in two public reprints
 * that agree and transcribed by hand.
 */
import { varianceParts } from '../../../shared/families/learning/kernels/betweenFemales';
import '../../support/printed';

const INSTRUMENTS = [
  [196.3052, 196.124, 196.189, 196.2569, 196.3403],
  [196.3042, 196.3825, 196.1669, 196.3257, 196.0422],
  [196.1303, 196.2005, 196.2889, 196.0343, 196.1811],
  [196.2795, 196.1748, 196.1494, 196.1485, 195.9885],
  [196.2119, 196.1051, 196.185, 196.0052, 196.209],
];
const [WITHIN, BETWEEN] = ['0.0108318280', '0.0127865654'];

test('mean square within groups, with its degrees of freedom', () => {
  const { within, freedom } = varianceParts(INSTRUMENTS);
  expect(within).toAgreeWithPrinted(WITHIN);
  expect(freedom).toBe(20);
  // Residual standard deviation, certified.
  expect(Math.sqrt(within)).toAgreeWithPrinted('0.104076068');
});

test('part between groups: the certified mean squares, ( between − within ) ÷ 5', () => {
  const { between } = varianceParts(INSTRUMENTS);
  expect(between).toBeCloseTo((Number(BETWEEN) - Number(WITHIN)) / 5, 10);
});
