// Long: records of one subject, each with its texts, questions and examples.
import { ACT_MG_PER_L, DANGER_MG_PER_L, minutesWithoutAir } from '../kernels/air';
import { ammoniaFromFeed, dryShareAt, oxygenPerFish } from '../../feeding/kernels/metabolism';
import { ammoniaFraction } from '../../water/kernels/ammonia';
import { fishParam, weightParam } from '../../feeding/records/feed';
import { beyondLine } from '../../growth/records/water';
import { celsius, count, gram, litre, mgPerLitre, minutes, pH, share, text } from '../../../units/quantities';
import { HOURS_PER_DAY, milligramsFromGrams } from '../../../units/convert';
import { noSolution } from '../../../base/values';
import { column, defineFunction, fields, rows } from '../../../functions/define';
import { choice, flag, num } from '../../../functions/params';

const water = num(litre, { above: 0, max: 1e7, doc: 'Water in the vat.' });
const useOf = (fish: number, grams: number): number =>
  fish * oxygenPerFish(milligramsFromGrams(grams * dryShareAt(milligramsFromGrams(grams))));

export const airMinutes = defineFunction({
  id: 'AIR.MINUTES',
  family: 'Rearing',
  summary: 'Minutes fish have when air or power stops, and when you must act.',
  params: {
    fish: fishParam,
    weight: weightParam,
    volume: water,
    oxygen: num(mgPerLitre, {
      min: 0,
      max: 20,
      default: 7,
      doc: 'Oxygen when the air stops: 7 mg/L if left out.',
    }),
  },
  returns: fields(
    {
      act: column('Act within', minutes, 'Half the time to the danger level.'),
      four: column('At 4 mg/L after', minutes),
      three: column('At 3 mg/L after', minutes, 'Danger for fry.'),
      says: column('In words', text),
    },
    'In still water at 28 °C; what comes in through the surface is left out.',
  ),
  valid:
    'African catfish of 0.6 mg to 150 g, 28 °C, well fed; cooler and fasting fish have ' +
    'longer, rotting feed shortens it',
  sources: ['CONC98', 'DRYMATTER', 'JANSSEN85', 'DEFINITION'],
  cautions: ['ELECTRICITY'],
  questions: [
    'power cut how long do the fish live',
    'how long without air',
    'light out, no aerator',
    'generator failed fish gasping',
    'minutes without oxygen',
  ],
  help:
    'Fry below 1 to 2 g cannot be counted on to breathe air. SPAWN.AIR.STEPS lists what to do ' +
    'first. Never a chemical: ' +
    'no safe dose of peroxide for larvae was found.',
  examples: [
    {
      args: [30000, 0.05, 1000],
      gives: [
        [
          '59',
          '88',
          '117',
          'About 117 minutes to 3 mg/L: act within 59. Stop feed, move the water, see SPAWN.AIR.STEPS.',
        ],
      ],
      because: '30,000 fry of 50 mg use 2.0 g of oxygen an hour: 4 mg/L in 1,000 L lasts two hours.',
    },
    { args: [30000, 0.05, 0], fails: { code: '#VALUE!', says: 'above 0' }, because: 'No water.' },
  ],
  compute: ({ fish, weight, volume, oxygen }) => {
    const use = useOf(fish, weight);
    if (Number.isNaN(use)) return beyondLine(weight, dryShareAt(milligramsFromGrams(weight)));
    if (use === 0) return noSolution('fish: without fish the oxygen lasts.');
    const three = minutesWithoutAir(volume, oxygen, DANGER_MG_PER_L, use);
    return {
      act: three / 2,
      four: minutesWithoutAir(volume, oxygen, ACT_MG_PER_L, use),
      three,
      says:
        three < 1
          ? 'At the danger level already: move the water by hand now, see SPAWN.AIR.STEPS.'
          : `About ${Math.round(three)} minutes to 3 mg/L: act within ${Math.round(three / 2)}. Stop feed, move the water, see SPAWN.AIR.STEPS.`,
    };
  },
});

const FIRST = [
  ['Stop feed, cut the light, do not startle them', 'practice'],
  ['Switch the mains off before you touch pump or blower', 'caution'],
  [
    'Move the water by hand: bucket from a height, tyre pump with a stone, splashing',
    'FAO Better Farming 38',
  ],
] as const;
const THEN = {
  eggs: [
    ['Lower the water to a thin film that moves over the eggs, lift and dip the net gently', 'practice'],
    ['Add fresh aired water of the same temperature', 'practice'],
  ],
  fish: [
    ['Take out dirt and dead fish', 'practice'],
    ['Add fresh aired water of the same temperature', 'practice'],
    ['Spread the fish over every vat you have', 'practice'],
    ['Oxygen bottle with a stone, if there is one', 'FAO AC041F, three days bridged with shrimp'],
  ],
} as const;
const AFTER = [
  ['When power is back: no feed until they swim quietly; write down the minutes', 'practice'],
] as const;

export const airSteps = defineFunction({
  id: 'AIR.STEPS',
  family: 'Rearing',
  summary: 'Power cut or air gone: what to do first, in order.',
  params: {
    life: choice(['fish', 'eggs'], {
      default: 'fish',
      aliases: { fry: 'fish', larvae: 'fish', egg: 'eggs' },
      doc: 'What is in the vat.',
    }),
  },
  returns: rows(
    { step: column('Step', count), todo: column('Do', text), standing: column('From', text) },
    'In this order.',
  ),
  valid: 'Small vats; try the back-up on the day before hatching',
  sources: ['PRACTICE', 'FAOBETTER38'],
  cautions: ['ELECTRICITY'],
  questions: [
    'what to do in a power cut',
    'air pump stopped',
    'what first when the power goes off',
    'no light in the hatchery',
    'fish gasping at the surface',
  ],
  examples: [
    {
      args: ['eggs'],
      gives: [
        ['1', 'Stop feed, cut the light, do not startle them', 'practice'],
        ['2', 'Switch the mains off before you touch pump or blower', 'caution'],
        [
          '3',
          'Move the water by hand: bucket from a height, tyre pump with a stone, splashing',
          'FAO Better Farming 38',
        ],
        [
          '4',
          'Lower the water to a thin film that moves over the eggs, lift and dip the net gently',
          'practice',
        ],
        ['5', 'Add fresh aired water of the same temperature', 'practice'],
        ['6', 'When power is back: no feed until they swim quietly; write down the minutes', 'practice'],
      ],
      because: 'Common practice, where no source is named.',
    },
    { args: ['cows'], fails: { code: '#VALUE!', says: 'expected one of' }, because: 'Not in the list.' },
  ],
  compute: ({ life }) =>
    [...FIRST, ...THEN[life], ...AFTER].map(([todo, standing], i) => ({ step: i + 1, todo, standing })),
});

export const waterChange = defineFunction({
  id: 'WATER.CHANGE',
  family: 'Rearing',
  summary:
    'Water to change in a day, from the ammonia the feed makes and, without air, from the oxygen used.',
  params: {
    feed: num(gram, { min: 0, max: 1e7, doc: 'Dry feed given in a day.' }),
    volume: water,
    ph: num(pH, { min: 3, max: 12, default: 7, doc: 'pH in the vat: 7 if left out.' }),
    temperature: num(celsius, { min: 0, max: 45, default: 27, doc: 'Water temperature.' }),
    protein: num(share, { above: 0, max: 0.9, default: 0.45, doc: 'Protein in the feed: 45% if left out.' }),
    limit: num(mgPerLitre, {
      above: 0,
      max: 2,
      default: 0.05,
      doc: 'Most un-ionised ammonia nitrogen: 0.05 mg/L if left out; larvae are unknown.',
    }),
    aerated: flag(true, 'TRUE where air runs day and night: then oxygen asks for no water.'),
    fish: num(count, { min: 0, max: 1e9, default: 0, doc: 'Fish in it, for the oxygen.' }),
    weight: num(gram, { min: 0, max: 30000, default: 0, doc: 'Mean weight of one, g, for the oxygen.' }),
  },
  returns: fields(
    {
      change: column('Change', litre, 'In a day: the larger of the two.'),
      times: column('Of the vat', share),
      ammonia: column('For ammonia', litre),
      oxygen: column('For oxygen', litre, '0 where air runs.'),
      says: column('In words', text),
    },
    'Spread over the day; much at once is a shock.',
  ),
  valid: 'Well-mixed vat without a filter; clean water coming in, 8 to 5 mg/L of oxygen for the second',
  sources: ['TIMM10', 'EMER75', 'NH3LEAF', 'SCHR10', 'CONC98', 'DEFINITION'],
  cautions: ['AMMONIA'],
  questions: [
    'how much water to change',
    'how often change water',
    'water change for fry',
    'ammonia too high how much water',
    'litres of new water a day',
  ],
  help:
    'Ammonia: feed × protein × 0.092 (from memory) over the total that keeps the toxic part ' +
    'under the limit at this pH ' +
    'and temperature. The limit for larvae was not found; fish of 141 g bear 0.34 mg/L, a ' +
    'leaflet saw first harm at 0.05.',
  examples: [
    {
      args: [470, 1000],
      gives: [
        [
          '2523',
          '2.52',
          '2523',
          '0',
          'Change 2.5 times the vat in a day: flow, more vats, or less feed. By hand this is too much for one vat.',
        ],
      ],
      because: '19.5 g of ammonia nitrogen; 0.65 % of it is toxic at pH 7 and 27 °C, so 7.7 mg/L may stand.',
    },
    {
      args: [20, 1000],
      gives: [
        [
          '107',
          '0.11',
          '107',
          '0',
          'Change in two or three parts over the day, aired and of the same temperature.',
        ],
      ],
      because: 'A twenty-third of the feed.',
    },
    { args: [-1, 1000], fails: { code: '#VALUE!', says: 'from 0' }, because: 'No negative feed.' },
  ],
  compute: (a) => {
    const total = a.limit / ammoniaFraction(a.temperature, a.ph);
    const ammonia = milligramsFromGrams(ammoniaFromFeed(a.feed, a.protein, 0.092)) / total;
    const use = a.aerated || a.fish === 0 || a.weight === 0 ? 0 : useOf(a.fish, a.weight);
    if (Number.isNaN(use)) return beyondLine(a.weight, dryShareAt(milligramsFromGrams(a.weight)));
    const oxygen = (use * HOURS_PER_DAY) / (8 - 5);
    const change = Math.max(ammonia, oxygen);
    const times = change / a.volume;
    return {
      change,
      times,
      ammonia,
      oxygen,
      says:
        times > 1
          ? `Change ${times.toFixed(1)} times the vat in a day: flow, more vats, or less feed. By hand this is too much for one vat.`
          : times > 0.5
            ? 'Change a third in the morning, a third at noon, the rest at night, aired and of the same temperature.'
            : 'Change in two or three parts over the day, aired and of the same temperature.',
    };
  },
});
