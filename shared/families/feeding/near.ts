import type { Near } from '../../base/near';
import type { Cell } from '../../base/values';
import { isError, isGrid } from '../../base/values';
import { invoke } from '../../functions/invoke';
import { hatchingWater } from './kernels/cystHatching';
import { cystsForLarvae } from './records/cysts';
import { cystsEfficiency, cystsWater } from './records/hatching';

/** What is said of live food changes at numbers somebody chose; no bundle holds this file. */
const densityIn = (vessel: number): number => hatchingWater(10, vessel).density;
/** The beginning of what is said of hatching water of such a warmth. */
const words = (celsius: number): string => {
  const got = invoke(cystsWater, [27.1, null, null, celsius]);
  return String(isGrid(got) ? got.at(-1)?.at(-1) : got).slice(0, 6);
};
/** So many nauplii in 1 mL of a litre that holds a gram of cysts. */
const isBelieved = (counted: number): boolean => {
  const got = invoke(cystsEfficiency, [[[counted]], 1, 1, 1]);
  return !(isGrid(got) ? got.flat() : [got]).some(isError);
};
const cysts = (...tin: readonly Cell[]): number => Number(invoke(cystsForLarvae, [50_000, 100, ...tin]));
/** A tin is asked for more than one of which nothing is known. */
const needsMore = (perGram: number): boolean => cysts(perGram) > cysts();

export const NEAR: readonly Near[] = [
  {
    number: 'Litres of a vessel from which on cysts lie thinner (NEW02)',
    value: 20,
    below: () => densityIn(19.5),
    above: () => densityIn(20.5),
    answers: [5, 2],
  },
  {
    number: 'Nauplii per gram of a tin of which nothing is known (KKT1)',
    value: 230_600,
    below: () => needsMore(230_000),
    above: () => needsMore(231_000),
    answers: [true, false],
  },
  {
    number: '°C below which cysts hatch slower',
    value: 25,
    below: () => words(24.9),
    above: () => words(25.1),
    answers: ['Below ', 'Light,'],
  },
  {
    number: '°C that cysts usually hatch at, at the most',
    value: 28,
    below: () => words(27.9),
    above: () => words(28.1),
    answers: ['Light,', 'Warmer'],
  },
  {
    number: 'Nauplii per gram that are more than there are cysts in it',
    value: 400_000,
    below: () => isBelieved(399),
    above: () => isBelieved(401),
    answers: [true, false],
  },
];
