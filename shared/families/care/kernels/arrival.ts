import type { Near } from '../../../base/near';
import { bagFish } from './bags';

/**
 * Dead on arrival in sealed bags, as a share. Nobody printed it for this fish: 2 % up to the careful load of the
 * tables, rising straight to 5 % at their highest, from where a trade pays the buyer back (LIM03, ornamental fish);
 * both ends are chosen here. Denser than any table there is no figure. Drums of 1 g fry arrived without loss
 * (JANSSEN85).
 */
export const CAREFUL_DEAD = 0.02;
export const HIGHEST_DEAD = 0.05;

/** In: fish of so many grams, so many in a litre, h, °C. Out: share, NaN beyond the tables. */
export function deadOnArrival(fishGrams: number, perLitre: number, hours: number, celsius: number): number {
  const { low, high } = bagFish(fishGrams, hours, celsius);
  if (!(perLitre <= high * (1 + 1e-9))) return NaN;
  const part = high > low ? Math.min(1, Math.max(0, (perLitre - low) / (high - low))) : 0;
  return CAREFUL_DEAD + (HIGHEST_DEAD - CAREFUL_DEAD) * part;
}

/** 0.5 g for 5 h at 29 °C: 110 to 401 in a litre. */
const at = (end: 'low' | 'high', times: number): number =>
  deadOnArrival(0.5, bagFish(0.5, 5, 29)[end] * times, 5, 29);
export const NEAR: readonly Near[] = [
  {
    number: 'dead on arrival at the careful load',
    value: CAREFUL_DEAD,
    below: () => at('low', 0.9) === 0.02,
    above: () => at('low', 1.1) === 0.02,
    answers: [true, false],
  },
  {
    number: 'dead on arrival at the highest load',
    value: HIGHEST_DEAD,
    below: () => at('high', 0.97) >= 0.0485 && at('high', 0.97) <= 0.05,
    above: () => at('high', 1.001) <= 0.05,
    answers: [true, false],
  },
];
