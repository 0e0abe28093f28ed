import type { Near } from '../base/near';
import { shown } from './sentences';

/** How numbers are told in sentences changes at numbers somebody chose; no bundle holds this file. */
export const NEAR: readonly Near[] = [
  {
    number: 'Number from which on digits are counted and not written',
    value: 1e15,
    below: () => shown(9.9e14),
    above: () => shown(1.01e15),
    answers: ['990000000000000', '1.010e+15'],
  },
];
