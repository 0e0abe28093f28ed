import type { Near } from '../../base/near';
import { isGrid } from '../../base/values';
import type { Cell } from '../../base/values';
import { invoke } from '../../functions/invoke';
import { larvaWeight } from '../growth/records/larvae';
import { weightOnPath } from '../growth/kernels/larvalWeight';
import { waterChange } from './records/power';
import { bagFish, bagLoad } from './kernels/bags';
import { mealsFor } from './kernels/grain';
import { ripeFemale, ripeMale } from './records/ripeness';

/** The words of a function change at numbers somebody chose; no bundle holds this file. */
const lastWords = (fn: Parameters<typeof invoke>[0], args: readonly Cell[]): string => {
  const got = invoke(fn, args);
  return String(isGrid(got) ? (got[0]?.at(-1) ?? '') : got).slice(0, 16);
};
/** Feed that asks for so many times a vat of 1,000 L. */
const feedFor = (times: number): number => {
  const got = invoke(waterChange, [1, 1000]);
  return (1000 * times) / Number(isGrid(got) ? got[0]?.[0] : NaN);
};
const water = (times: number): string => lastWords(waterChange, [feedFor(times), 1000]);
const larva = (share: number): string => lastWords(larvaWeight, [12, weightOnPath(6, share), 6]);

/** The verdict on a female with all signs, and on a male. */
const female = (rested: number, age = 500, egg = 1): string => {
  const got = invoke(ripeFemale, [true, true, true, true, rested, age, egg]);
  return String(isGrid(got) ? got[0]?.[0] : got);
};
const male = (age: number, sewn: number): string => {
  const got = invoke(ripeMale, [age, true, sewn]);
  return String(isGrid(got) ? got[0]?.[0] : got);
};

/** Most grams of fish a litre of bag water bears for an hour, and most fish of them. */
const load = (grams: number): number => Math.round(bagLoad(grams, 1, 18.3).high);
const inBag = (grams: number): number => Math.round(bagFish(grams, 1, 18.3).high);

export const NEAR: readonly Near[] = [
  {
    number: 'SPAWN.RIPE.FEMALE: days of rest',
    value: 60,
    below: () => female(59),
    above: () => female(61),
    answers: ['wait', 'ready'],
  },
  {
    number: 'SPAWN.RIPE.FEMALE: days of age',
    value: 295,
    below: () => female(70, 294),
    above: () => female(70, 296),
    answers: ['wait', 'ready'],
  },
  {
    number: 'SPAWN.RIPE.FEMALE: millimetres of an egg',
    value: 0.94,
    below: () => female(70, 500, 0.93),
    above: () => female(70, 500, 0.95),
    answers: ['look again', 'ready'],
  },
  {
    number: 'SPAWN.RIPE.MALE: days of age',
    value: 365,
    below: () => male(364, 120),
    above: () => male(366, 120),
    answers: ['look again', 'ready'],
  },
  {
    number: 'SPAWN.RIPE.MALE: days since part of a testis was taken',
    value: 90,
    below: () => male(500, 89),
    above: () => male(500, 91),
    answers: ['wait', 'ready'],
  },
  {
    number: 'SPAWN.WATER.CHANGE: times the vat a day that hands cannot bring',
    value: 1,
    below: () => water(0.99),
    above: () => water(1.01),
    answers: ['Change a third i', 'Change 1.0 times'],
  },
  {
    number: 'SPAWN.WATER.CHANGE: part of the vat that is changed in three parts with the night',
    value: 0.5,
    below: () => water(0.49),
    above: () => water(0.51),
    answers: ['Change in two or', 'Change a third i'],
  },
  {
    number: 'SPAWN.LARVA.WEIGHT: share of the way between the paths that is still ordinary',
    value: 0.33,
    below: () => larva(0.32),
    above: () => larva(0.34),
    answers: ['Near the ordinar', 'Between the path'],
  },
  {
    number: 'SPAWN.LARVA.WEIGHT: share of the way between the paths that is plenty',
    value: 0.67,
    below: () => larva(0.66),
    above: () => larva(0.68),
    answers: ['Between the path', 'Near the plentif'],
  },
  {
    number: 'SPAWN.LARVA.WEIGHT: share of the way between the paths, below the ordinary one, that is light',
    value: 0.2,
    below: () => larva(-0.21),
    above: () => larva(-0.19),
    answers: ['Lighter than bot', 'Near the ordinar'],
  },
  {
    number: 'Grams from which on fish are carried as fingerlings',
    value: 0.15,
    below: () => load(0.149),
    above: () => load(0.151),
    answers: [240, 443],
  },
  {
    number: 'Grams below which larvae in a bag are counted',
    value: 0.01,
    below: () => inBag(0.0099),
    above: () => inBag(0.0101),
    answers: [900, 23728],
  },
  {
    number: 'Grams from which on fish get the meals of fry',
    value: 0.05,
    below: () => mealsFor(0.049),
    above: () => mealsFor(0.051),
    answers: [
      [6, 8],
      [5, 6],
    ],
  },
  {
    number: 'Grams from which on fish get the meals of fingerlings',
    value: 0.5,
    below: () => mealsFor(0.49),
    above: () => mealsFor(0.51),
    answers: [
      [5, 6],
      [3, 6],
    ],
  },
  {
    number: 'Grams from which on fish get the meals of grown ones',
    value: 10,
    below: () => mealsFor(9.9),
    above: () => mealsFor(10.1),
    answers: [
      [3, 6],
      [2, 3],
    ],
  },
];
