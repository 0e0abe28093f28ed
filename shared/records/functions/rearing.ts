import {
  count,
  days,
  fishGram,
  gram,
  litre,
  meqPerLitre,
  percentPerDay,
  pH,
  ratio,
  share,
} from '../../units/quantities';
import { MATERIAL_NAMES } from '../../families/water/carbonate/materials';
import { defineFunction } from '../../functions/define';
import { choice, num } from '../../functions/params';
import { HELP, verdict, verdictOf } from './verdict';

export const checkPH = defineFunction({
  id: 'CHECK.PH',
  family: 'Checks',
  summary: 'Can a dose have made the pH change that was written down?',
  questions: [
    'can this dose have changed the ph that much',
    'check a ph change written down',
    'ph after dosing looks wrong',
  ],
  params: {
    before: num(pH, { doc: 'pH before the dose.' }),
    after: num(pH, { doc: 'pH after the dose.' }),
    dose: num(gram, { doc: 'Product given.' }),
    volume: num(litre, { doc: 'Water in the vat.' }),
    material: choice(MATERIAL_NAMES, { default: 'soda ash', doc: 'Product given.' }),
    alkalinity: num(meqPerLitre, {
      optional: true,
      doc: 'Alkalinity before the dose, where it was measured.',
    }),
  },
  returns: verdict,
  valid: 'Fresh water near 26 °C; without alkalinity only what no water could do is reported',
  sources: ['PLBU82', 'PHREEQC', 'NOAACO2', 'PRACTICE'],
  help: HELP,
  examples: [
    { args: [4.6, 7, 5, 1000], gives: 'ok', because: 'The field rule in rain water.' },
    {
      args: [6.5, 5.9, 10, 1000],
      gives: 'soda ash raises pH, yet it went from 6.5 to 5.9.',
      because: 'A base cannot lower pH.',
    },
    { args: [6, 7, 14.9, 1000, 'soda ash', 0.1], gives: 'ok', because: 'What the carbonate system gives.' },
    { args: [6, 'ok', 14.9, 1000], fails: { code: '#VALUE!', says: 'after' }, because: 'No number.' },
  ],
  compute: ({ before, after, dose, volume, material, alkalinity }) =>
    verdictOf(['PH.DOSE', 'VALUE.RANGE'], {
      ph: before,
      phAfter: after,
      materialDose: dose,
      volume,
      material,
      alkalinity,
    }),
});

export const checkFeed = defineFunction({
  id: 'CHECK.FEED',
  family: 'Checks',
  summary: 'Does the feed of a day fit the number and weight of the fish, and the ration?',
  questions: [
    'does the feed given fit the fish',
    'check feed of a day in my records',
    'feed in my book looks too much',
  ],
  params: {
    feed: num(gram, { doc: 'Feed of the day.' }),
    fish: num(count, { doc: 'Number of fish.' }),
    weight: num(fishGram, { doc: 'Mean weight of one fish.' }),
    ration: num(share, { optional: true, doc: 'Ration meant, share of body weight per day.' }),
  },
  returns: verdict,
  valid: 'From first feed to fingerlings and beyond',
  sources: ['UYS85', 'FEEDFREQ', 'BASH23', 'PRACTICE'],
  help: HELP,
  examples: [
    { args: [200, 2000, 2], gives: 'ok', because: 'A ration of 5 %.' },
    {
      args: [160, 1000, 2, 0.05],
      gives: 'Feed given does not follow from fish × mean weight × ration: 100 g expected, 160 g seen.',
      because: '1,000 × 2 g × 5 %.',
    },
    {
      args: [5000, 2000, 2],
      gives: '5,000 g for 2,000 fish of 2 g is 125 % of their weight in a day; 40 % is more than they eat.',
      because: '5 kg for 4 kg of fish.',
    },
    { args: ['some', 2000, 2], fails: { code: '#VALUE!', says: 'feed' }, because: 'No number.' },
  ],
  compute: (args) =>
    verdictOf(
      ['FEED.STATED', 'FEED.RATION', 'COUNT.SENSE', 'SLIP.TEN', 'SLIP.THOUSAND', 'SLIP.DIGITS'],
      args,
    ),
});

export const checkGrowth = defineFunction({
  id: 'CHECK.GROWTH',
  family: 'Checks',
  summary: 'Is growth between two weighings believable, and does the growth rate follow from it?',
  questions: ['is this growth believable', 'check two weighings', 'did they really grow that fast'],
  params: {
    start: num(fishGram, { doc: 'Mean weight at the start.' }),
    end: num(fishGram, { doc: 'Mean weight at the end.' }),
    days: num(days, { doc: 'Days between.' }),
    rate: num(percentPerDay, { optional: true, doc: 'Growth rate as written down.' }),
  },
  returns: verdict,
  valid: 'From first feed on; limits by size at the start',
  sources: ['RICKER79', 'SOLARPOND', 'MAKERERE', 'LEGE92', 'PRACTICE'],
  help: HELP,
  examples: [
    { args: [4.07, 298.75, 90], gives: 'ok', because: 'Published: 4.77 % per day.' },
    {
      args: [50, 100, 10, 10],
      gives:
        'Growth rate does not follow from 100 × ln(end ÷ start) ÷ days: 6.931 %/d expected, 10 %/d seen.',
      because: 'Doubling in ten days is not 10 %.',
    },
    {
      args: [5, 80, 10],
      gives: 'From 5 to 80 g in 10 days is 27.7 % per day; fish of that size do not grow above 15.',
      because: 'Beyond belief.',
    },
    { args: [5, 'big', 10], fails: { code: '#VALUE!', says: 'end' }, because: 'No number.' },
  ],
  compute: ({ start, end, days: span, rate }) =>
    verdictOf(['GROWTH.STATED', 'GROWTH.RANGE', 'SLIP.TEN', 'SLIP.THOUSAND', 'SLIP.DIGITS'], {
      startWeight: start,
      endWeight: end,
      days: span,
      growthRate: rate,
    }),
});

export const checkConversion = defineFunction({
  id: 'CHECK.CONVERSION',
  family: 'Checks',
  summary: 'Does the feed conversion of a batch follow from feed and gain, and is it believable?',
  questions: ['is this feed conversion believable', 'check my fcr', 'fcr in my book looks wrong'],
  params: {
    feed: num(gram, { optional: true, doc: 'Feed of the whole period.' }),
    startWeight: num(fishGram, { optional: true, doc: 'Mean weight at the start.' }),
    stocked: num(count, { optional: true, doc: 'Number stocked.' }),
    endWeight: num(fishGram, { optional: true, doc: 'Mean weight at the end.' }),
    alive: num(count, { optional: true, doc: 'Number alive at the end.' }),
    conversion: num(ratio, { optional: true, doc: 'Feed conversion as written down.' }),
  },
  returns: verdict,
  valid: 'Dry feed; live food and pond food lower the ratio',
  sources: ['DEFINITION', 'BASH23', 'PRACTICE'],
  help: HELP,
  examples: [
    { args: [12_000, 5, 1000, 15, 1000, 1.2], gives: 'ok', because: '12 kg for a gain of 10 kg.' },
    {
      args: [12_000, 5, 1000, 15, 1000, 0.8],
      gives: 'Feed conversion does not follow from feed ÷ gain of the batch: 1.2 expected, 0.8 seen.',
      because: '0.8 is feed ÷ final weight.',
    },
    {
      args: [null, null, null, null, null, 0.12],
      gives: 'Feed conversion of 0.12 is beyond belief: so little dry feed does not make so much fish.',
      because: '1.2 with its point moved.',
    },
    { args: ['bag'], fails: { code: '#VALUE!', says: 'feed' }, because: 'No number.' },
  ],
  compute: (args) => verdictOf(['FCR.STATED', 'FCR.RANGE', 'SLIP.TEN', 'SLIP.THOUSAND', 'SLIP.DIGITS'], args),
});
