import type { Near } from '../../base/near';
import type { Rng } from '../../maths/rng';
import { binomial } from './odds/binomial';
import { eggsStripped } from './odds/simulate';

/** How chance is drawn changes at numbers somebody chose; no bundle holds this file. */
/** No chance at all: every even draw the same, every bell-shaped one in the middle. */
const always = (even: number): Rng => ({ even: () => even, normal: () => 0 });
/** What comes of so many at one in ten, and of twenty at such a chance. */
const ofTen = (many: number): number => binomial(always(0.3), many, 0.1);
const ofTwenty = (chance: number): number => binomial(always(0.6), 20, chance);
/** Eggs of females of one each, half of whom give: tossed one by one, a draw of 0.4 lets all of them. */
const eggs = (females: number): number =>
  eggsStripped(
    always(0.4),
    Array.from({ length: females }, () => 1),
    0.5,
    0,
  );

export const NEAR: readonly Near[] = [
  {
    number: 'Most that are expected of a toss that is made one by one',
    value: 25,
    below: () => ofTen(249),
    above: () => ofTen(251),
    answers: [20, 25],
  },
  {
    number: 'Chance from which on those that do not come are counted',
    value: 0.5,
    below: () => ofTwenty(0.49),
    above: () => ofTwenty(0.51),
    answers: [20, 0],
  },
  {
    number: 'Females that are tossed one by one, at the most',
    value: 48,
    below: () => eggs(48),
    above: () => eggs(49),
    answers: [48, 24],
  },
];
