import type { Near } from '../../base/near';
import { isError } from '../../base/values';
import type { Cell } from '../../base/values';
import { invoke } from '../../functions/invoke';
import { ordinaryWeight } from './kernels/larvalWeight';
import { transportLoad } from './kernels/transportLoad';
import { sgr } from './records/growth';
import { cannibalismStage, condition, spread } from './records/sizes';
import { fcr } from './records/survival';

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

const kind = (length: number): string => String(invoke(cannibalismStage, [length])).slice(0, 6);
/** Feed for fish that grew by 10 kg, and one weight among fish of 1 g. */
const isFed = (feed: number): boolean => ![invoke(fcr, [feed, 5, 15])].flat(2).some(isError);
const isOdd = (weight: number): boolean => [invoke(spread, [[[weight], [1], [1]]])].flat(2).some(isError);

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
  {
    number: 'Millimetres up to which prey is bitten from the tail',
    value: 45,
    below: () => kind(44),
    above: () => kind(46),
    answers: ['Biting', 'Whole '],
  },
  {
    number: 'Last day of feeding on which the weight of a larva is known',
    value: 30,
    below: () => ordinaryWeight(29).toFixed(3),
    above: () => ordinaryWeight(31).toFixed(3),
    answers: ['0.299', 'NaN'],
  },
  {
    number: 'Degrees Fahrenheit that a safe load was printed for',
    value: 5,
    below: () => Math.round(transportLoad(1000, 20, 22.7)),
    above: () => Math.round(transportLoad(1000, 20, 22.9)),
    answers: [730, NaN],
  },
  {
    number: 'Times the middle fish that one is not weighed in the same unit',
    value: 500,
    below: () => isOdd(490),
    above: () => isOdd(510),
    answers: [false, true],
  },
  {
    number: 'Feed to gain that is grams for kilograms',
    value: 100,
    below: () => isFed(990),
    above: () => isFed(1010),
    answers: [true, false],
  },
  {
    number: 'Feed to gain that no fish grows on',
    value: 0.05,
    below: () => isFed(0.49),
    above: () => isFed(0.51),
    answers: [false, true],
  },
];
