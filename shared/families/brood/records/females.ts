// Long: records of one subject, each with its texts, questions and examples.
import {
  broodWeight,
  eggsPerFemale,
  eggWeight,
  femalesFor,
  femalesForNineInTen,
  SEASONS,
} from '../kernels/eggs';
import { count, gram, kilogram, perGram, perKilogram, share } from '../../../units/quantities';
import { noSolution } from '../../../base/values';
import { column, defineFunction, fields, value } from '../../../functions/define';
import { choice, num } from '../../../functions/params';

export const femaleWeight = num(kilogram, {
  above: 0,
  max: 30,
  doc: 'Body weight of one female, or their mean.',
});
export const eggShare = num(share, {
  above: 0,
  max: 0.4,
  doc:
    'Stripped egg weight as a share of body weight. Published for African catfish: 14.3 ' +
    '% in the rains, 1.3 % in the dry season.',
});
export const eggsPerGram = num(perGram, {
  above: 0,
  max: 3000,
  doc:
    'Eggs per gram of eggs, counted in a sample; not per gram of fish. Published for ' +
    'African catfish: 435 to 1176, mean 669.',
});
export const spawning = num(share, {
  above: 0,
  max: 1,
  default: 1,
  doc: 'Share of injected females that give eggs. Published: 87.5 to 100 %.',
});

export const femalesNeeded = defineFunction({
  id: 'FEMALES.NEEDED',
  family: 'Brood fish',
  summary: 'Whole number of females to inject for the eggs wanted.',
  questions: [
    'how many broodstock do I need',
    'kilos of females needed',
    'females for an order',
    'how many femals',
    'how many mama fish I need',
  ],
  params: {
    eggs: num(count, { min: 0, max: 1e10, doc: 'Eggs wanted.' }),
    weight: femaleWeight,
    eggShare,
    eggsPerGram,
    spawning,
  },
  returns: value(count, 'Females to inject, rounded up.'),
  valid: 'Any egg yield; it changes 11-fold over the year, so use the season, or your own last strips',
  sources: ['GRAAF95', 'DADEBO00', 'BRZUSKA03', 'DEFINITION'],
  help:
    'Eggs ÷ (weight × egg share × eggs per gram × share that spawns), rounded up. Fewer ' +
    'than 50 parents of each sex raises inbreeding: see SPAWN.INBREEDING.RATE.',
  examples: [
    {
      args: [523854, 1, 0.143, 669],
      gives: '6',
      because: '95,667 eggs each in the rains: 5.48 females, so 6.',
    },
    {
      args: [1090132, 1, 0.013, 669],
      gives: '126',
      because: 'The dry season: 8,697 eggs each, 125.3 females, so 126.',
    },
    {
      args: [100000, 1200, 0.143, 669],
      fails: { code: '#VALUE!', says: '1.2 kg' },
      because: 'A weight typed in grams is named.',
    },
    {
      args: [100000, 1, 14.3, 669],
      fails: { code: '#VALUE!', says: '0.143' },
      because: '14.3 % is 0.143 in a sheet.',
    },
  ],
  compute: ({ eggs, weight, eggShare: shareOfBody, eggsPerGram: perG, spawning: spawns }) =>
    femalesFor(eggs, eggsPerFemale(weight, shareOfBody, perG), spawns),
});

export const eggsExpected = defineFunction({
  id: 'EGGS.EXPECTED',
  family: 'Brood fish',
  summary: 'Weight and number of eggs to expect from females of a weight.',
  questions: [
    'how many eggs will a 1 kg female give',
    'eggs per kg of female',
    'fecundity',
    'eggs from 2 kg mother',
    'fecundty',
    'how many egg one mama fish go give',
  ],
  params: {
    weight: femaleWeight,
    eggShare,
    eggsPerGram,
    females: num(count, { min: 0, max: 1e6, default: 1, whole: true, doc: 'Females injected.' }),
    spawning,
  },
  returns: fields(
    { eggWeight: column('Egg weight', gram), eggs: column('Eggs', count) },
    'From all of them together.',
  ),
  valid: 'Any egg yield; yields differ widely between females, so weigh and count what you strip',
  sources: ['GRAAF95', 'DADEBO00', 'DEFINITION'],
  help:
    'Eggs per gram are counted per gram of eggs. A web figure of 700 eggs per gram of ' +
    'body weight is a mix-up: 700 is per gram of eggs.',
  examples: [
    { args: [1, 0.143, 669], gives: [['143.0', '95667']], because: '14.3 % of 1 kg, 669 eggs in each gram.' },
    {
      args: [1, 0.6, 669],
      fails: { code: '#VALUE!', says: '0.4' },
      because: 'No female is more than half eggs.',
    },
  ],
  compute: ({ weight, eggShare: part, eggsPerGram: perG, females, spawning: spawns }) => ({
    eggWeight: eggWeight(weight, part) * females * spawns,
    eggs: eggsPerFemale(weight, part, perG) * females * spawns,
  }),
});

export const femalesSeason = defineFunction({
  id: 'FEMALES.SEASON',
  version: 2,
  family: 'Brood fish',
  summary: 'Females to inject for the eggs wanted, by the published yield of the season.',
  questions: [
    'females needed in the dry season',
    'females by season',
    'how many females in the rainy season',
  ],
  params: {
    eggs: num(count, { min: 0, max: 1e10, doc: 'Eggs wanted.' }),
    weight: femaleWeight,
    season: choice(['rainy', 'dry'], {
      doc: 'Rainy or dry season.',
      aliases: { rains: 'rainy', wet: 'rainy' },
    }),
    eggsPerGram: num(perGram, {
      above: 0,
      max: 3000,
      default: 669,
      doc: 'Eggs per gram of eggs. Published: 435 to 1176, mean 669.',
    }),
    spawning,
  },
  returns: fields(
    {
      females: column('Females', count),
      careful: column(
        'For nine seasons in ten',
        count,
        'Females differ: this many are enough in nine of ten.',
      ),
      kilograms: column('Weight of females', kilogram),
    },
    'Whole females for the mean yield, and for nine seasons in ten.',
  ),
  valid:
    'African catfish in a wet and dry tropical year: stripped eggs 14.3 % of body weight in the rains, 1.3 % in ' +
    'the dry season; females taken to differ by 30 and 40 %',
  sources: ['GRAAF95', 'DADEBO00'],
  help:
    'The ± 1.3 and ± 0.3 % printed with these means are errors of a mean, not what females differ by. ' +
    'Season changes the yield 11-fold: a plan with one constant is wrong by that much. ' +
    'Replace it with your own strips as soon as you have them (SPAWN.FEMALES.NEEDED).',
  examples: [
    {
      args: [523854, 1, 'rainy'],
      gives: [['6', '7', '6']],
      because: '5.48 females at the mean; seven bring it in nine seasons of ten when they differ by 30 %.',
    },
    {
      args: [1090132, 1, 'dry'],
      gives: [['126', '132', '126']],
      because: '125.3 at the mean; 132 when they differ by 40 %.',
    },
    {
      args: [100000, 1, 'summer'],
      fails: { code: '#VALUE!', says: '"rainy", "dry"' },
      because: 'Two seasons were published.',
    },
  ],
  compute: ({ eggs, weight, season, eggsPerGram: perG, spawning: spawns }) => {
    const { share: mean, between } = SEASONS[season];
    const females = femalesFor(eggs, eggsPerFemale(weight, mean, perG), spawns);
    return {
      females,
      careful: femalesForNineInTen(eggs, eggsPerFemale(weight, mean, perG), spawns, between),
      kilograms: females * weight,
    };
  },
});

export const femalesBySpawn = defineFunction({
  id: 'FEMALES.BYSPAWN',
  family: 'Brood fish',
  summary: 'Whole number of females when the eggs or larvae of one female are known.',
  questions: [
    'females when i know eggs of one female',
    'how many females by my own spawns',
    'females from eggs per female',
  ],
  params: {
    eggs: num(count, { min: 0, max: 1e11, doc: 'Eggs or larvae wanted.' }),
    perFemale: num(count, { above: 0, max: 1e8, doc: 'Eggs or larvae one female gives.' }),
    spawning,
  },
  returns: value(count, 'Females, rounded up.'),
  valid: 'Any species',
  sources: ['DEFINITION', 'PIKEPLAN'],
  examples: [
    { args: [3377000, 100000], gives: '34', because: '33.8 females, so 34: a published pike plan.' },
    { args: [3377000, 0], fails: { code: '#VALUE!', says: 'above 0' }, because: 'A blank yield reads as 0.' },
  ],
  compute: ({ eggs, perFemale, spawning: spawns }) => femalesFor(eggs, perFemale, spawns),
});

export const broodWeightNeeded = defineFunction({
  id: 'BROOD.WEIGHT',
  family: 'Brood fish',
  summary: 'Kilograms of females for the fry wanted, through spawning, hatch and survival.',
  questions: [
    'how many kilograms of females do i need',
    'kg of broodstock for my fry',
    'weight of females needed',
    'how many females for 50000 fry',
    'how many mother for 100k fry',
  ],
  params: {
    fry: num(count, { min: 0, max: 1e10, doc: 'Fry wanted.' }),
    eggsPerKilogram: num(perKilogram, {
      above: 0,
      max: 1e6,
      doc:
        'Eggs per kg of female. Published when stripped: 28,000 to 37,600 for African ' +
        'catfish, 100,000 to 200,000 for common carp.',
    }),
    hatch: num(share, { above: 0, max: 1, default: 1, doc: 'Share of eggs that hatch.' }),
    survival: num(share, { above: 0, max: 1, default: 1, doc: 'Share of the hatched that live to be fry.' }),
    spawning,
  },
  returns: value(kilogram, 'Weight of females.'),
  valid: 'Any species',
  sources: ['SRAC1803', 'DEFINITION'],
  help: 'Survivals are divided, never added: half lost means twice the eggs, not half as many again.',
  examples: [
    {
      args: [1000000, 6613.868, 0.7, 0.7, 0.5],
      gives: '617.1',
      because:
        '3000 eggs per pound, 70 % hatch, 70 % to swim-up, half spawn: 1,360.5 lb; the ' +
        'bulletin prints 612 to 907 kg.',
    },
    {
      args: [1000000, 6613.868, 0],
      fails: { code: '#VALUE!', says: 'above 0' },
      because: 'Nothing hatches from a hatch of 0.',
    },
  ],
  compute: ({ fry, eggsPerKilogram, hatch, survival, spawning: spawns }) => {
    const kg = broodWeight(fry, eggsPerKilogram, [hatch, survival, spawns]);
    return Number.isFinite(kg) ? kg : noSolution('hatch: with these shares no fry are left.');
  },
});
