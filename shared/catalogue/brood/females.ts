import { eggsPerFemale, femalesFor } from '../../brood/eggs';
import { count, kilogram, perGram, share } from '../../units/quantities';
import { defineFunction, value } from '../define';
import { num } from '../params';

export const femaleWeight = num(kilogram, { above: 0, max: 30, doc: 'Body weight of one female, or their mean.' });
export const eggShare = num(share, { above: 0, max: 0.4, doc: 'Stripped egg weight as a share of body weight. Published for African catfish: 14.3 % in the rains, 1.3 % in the dry season.' });
export const eggsPerGram = num(perGram, { above: 0, max: 3000, doc: 'Eggs per gram of eggs, counted in a sample; not per gram of fish. Published for African catfish: 435 to 1176, mean 669.' });
export const spawning = num(share, { above: 0, max: 1, default: 1, doc: 'Share of injected females that give eggs. Published: 87.5 to 100 %.' });

export const femalesNeeded = defineFunction({
  id: 'FEMALES.NEEDED',
  family: 'Brood fish',
  summary: 'Whole number of females to inject for the eggs wanted.',
  params: { eggs: num(count, { min: 0, max: 1e10, doc: 'Eggs wanted.' }), weight: femaleWeight, eggShare, eggsPerGram, spawning },
  returns: value(count, 'Females to inject, rounded up.'),
  valid: 'Any egg yield; it changes 11-fold over the year, so use the season, or your own last strips',
  sources: ['GRAAF95', 'DADEBO00', 'BRZUSKA03', 'DEFINITION'],
  help: 'Eggs ÷ (weight × egg share × eggs per gram × share that spawns), rounded up. Fewer than 50 parents of each sex raises inbreeding: see SPAWN.INBREEDING.RATE.',
  examples: [
    { args: [523854, 1, 0.143, 669], gives: '6', because: '95,667 eggs each in the rains: 5.48 females, so 6.' },
    { args: [1090132, 1, 0.013, 669], gives: '126', because: 'The dry season: 8,697 eggs each, 125.3 females, so 126.' },
    { args: [100000, 1200, 0.143, 669], fails: { code: '#VALUE!', says: '1.2 kg' }, because: 'A weight typed in grams is named.' },
    { args: [100000, 1, 14.3, 669], fails: { code: '#VALUE!', says: '0.143' }, because: '14.3 % is 0.143 in a sheet.' },
  ],
  compute: ({ eggs, weight, eggShare: shareOfBody, eggsPerGram: perG, spawning: spawns }) => femalesFor(eggs, eggsPerFemale(weight, shareOfBody, perG), spawns),
});
