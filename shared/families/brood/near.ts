import type { Near } from '../../base/near';
import { isError } from '../../base/values';
import { PREPARATIONS } from '../preparations';
import { invoke } from '../../functions/invoke';
import { femalesForNineInTen } from './kernels/eggs';
import { malesForEffective } from './kernels/inbreeding';
import { perKilogram } from './records/hormone';
import { milt } from './records/milt';
import { pairingPlan } from './records/pairing';
import { formalinStop } from './records/treatments';

/** What is refused for brood fish and eggs changes at numbers somebody chose; no bundle holds this file. */
const why = (strength: number): string =>
  (formalinStop(strength, 'eggs', 10)?.message ?? '').split(' ').slice(3, 6).join(' ');
const [first] = PREPARATIONS;
const isRefused = (dose: number): boolean => isError(perKilogram(first, dose));

/** Females to inject when each that gives, eight of ten, gives 10,000 eggs, 30 % apart from female to female. */
const females = (eggs: number): number => femalesForNineInTen(eggs, 10_000, 0.8, 0.3);
const isTooThin = (spermPerEgg: number): boolean => isError(invoke(milt, [105_000, 5.62e9, spermPerEgg]));
/** What is said of so many females and one male. */
const pairing = (many: number): string => {
  const column = Array.from({ length: many }, (_, i) => [`F${i}`]);
  const got = [invoke(pairingPlan, [column, column, [['M']], [['A']]])].flat(2).find(isError);
  return (got?.message ?? '').split(' ').slice(0, 3).join(' ');
};

export const NEAR: readonly Near[] = [
  {
    number: 'mg/L of formalin solution that was tried on eggs',
    value: 250,
    below: () => why(249),
    above: () => why(251),
    answers: ['', 'was never tried'],
  },
  {
    number: 'mg/L of formalin solution that kills eggs',
    value: 500,
    below: () => why(499),
    above: () => why(501),
    answers: ['was never tried', 'kills Clarias eggs:'],
  },
  {
    number: 'Times the highest dose in print that is another unit',
    value: 5,
    below: () => isRefused(4.9 * first.published[1]),
    above: () => isRefused(5.1 * first.published[1]),
    answers: [false, true],
  },
  {
    number: 'Bell-curve distance that leaves one season in ten below',
    value: 1.2816,
    below: () => females(13_200),
    above: () => females(13_400),
    answers: [3, 4],
  },
  {
    number: 'Times the females that the effective number can at most be',
    value: 4,
    below: () => malesForEffective(10, 39),
    above: () => malesForEffective(10, 41),
    answers: [390, NaN],
  },
  {
    number: 'Sperm per egg below which fertilisation fell (RURANGWA98)',
    value: 3000,
    below: () => isTooThin(2950),
    above: () => isTooThin(3050),
    answers: [true, false],
  },
  {
    number: 'Females that are paired at once',
    value: 300,
    below: () => pairing(300),
    above: () => pairing(301),
    answers: ['femalesPerMale: 300 females', 'females: up to'],
  },
];
