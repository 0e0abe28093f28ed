import type { Near } from '../../base/near';
import { isError } from '../../base/values';
import { PREPARATIONS } from '../preparations';
import { perKilogram } from './records/hormone';
import { formalinStop } from './records/treatments';

/** What is refused for brood fish and eggs changes at numbers somebody chose; no bundle holds this file. */
const why = (strength: number): string =>
  (formalinStop(strength, 'eggs', 10)?.message ?? '').split(' ').slice(3, 6).join(' ');
const [first] = PREPARATIONS;
const isRefused = (dose: number): boolean => isError(perKilogram(first, dose));

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
];
