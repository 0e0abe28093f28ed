import type { Near } from '../../base/near';
import { isError } from '../../base/values';
import type { Cell } from '../../base/values';
import { invoke } from '../../functions/invoke';
import { sgr } from './records/growth';
import { condition } from './records/sizes';

/** What is refused as a slip of a unit changes at numbers somebody chose; no bundle holds this file. */
const refusal = (fn: Parameters<typeof invoke>[0], args: readonly Cell[]): string => {
  const got = invoke(fn, args);
  return isError(got) ? (got.message ?? '') : '';
};
const isRefused = (fn: Parameters<typeof invoke>[0], args: readonly Cell[]): boolean =>
  refusal(fn, args) !== '';
/** Condition of a fish of 10 cm, and what is said of one whose length was typed in millimetres. */
const plump = (weight: number): boolean => isRefused(condition, [weight, 10]);
const isInMillimetres = (weight: number): boolean =>
  refusal(condition, [weight, 100]).includes('millimetres');
const shrunk = (start: number): boolean => isRefused(sgr, [start, 1, 30]);

export const NEAR: readonly Near[] = [
  {
    number: 'Least condition of a fish',
    value: 0.05,
    below: () => plump(0.49),
    above: () => plump(0.51),
    answers: [true, false],
  },
  {
    number: 'Most condition of a fish',
    value: 20,
    below: () => plump(199),
    above: () => plump(201),
    answers: [false, true],
  },
  {
    number: 'Condition from which on a unit explains it',
    value: 0.2,
    below: () => isInMillimetres(1.9),
    above: () => isInMillimetres(2.1),
    answers: [false, true],
  },
  {
    number: 'Condition up to which a unit explains it',
    value: 5,
    below: () => isInMillimetres(49),
    above: () => isInMillimetres(51),
    answers: [true, false],
  },
  {
    number: 'Times a fish shrank by another unit',
    value: 20,
    below: () => shrunk(19.9),
    above: () => shrunk(20.1),
    answers: [false, true],
  },
];
