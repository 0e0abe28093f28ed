import type { Near } from '../base/near';

/** Common practice, no source: what a stirred vat takes to mix, and a meter to come to rest. */
export const MIX_MINUTES = 15;
/** The same for each further thousand litres of a storage tank, and the longest. */
const MORE_PER_1000_L = 10;
const LONGEST_MIX = 60;
/** Between the two readings of a pair. */
export const SETTLE_MINUTES = 5;
export const AIR_MINUTES = 60;
/** A meter checked in a buffer within so many hours counts as checked. */
export const CHECK_HOURS = 24;

/** Minutes a volume takes to mix after a dose. */
export const mixMinutes = (litres: number): number =>
  Math.min(LONGEST_MIX, MIX_MINUTES + MORE_PER_1000_L * Math.max(0, Math.ceil(litres / 1000) - 1));

export const NEAR: readonly Near[] = [
  {
    number: 'litres from which a tank mixes longer than a vat',
    value: 1000,
    below: () => mixMinutes(1000),
    above: () => mixMinutes(1001),
    answers: [15, 25],
  },
  {
    number: 'longest time to mix',
    value: LONGEST_MIX,
    below: () => mixMinutes(5000),
    above: () => mixMinutes(9000),
    answers: [55, 60],
  },
];
