import { bagFish, bagLoad, LARVA_GRAMS } from '../kernels/bags';
import { weightParam } from '../../feeding/records/feed';
import {
  celsius,
  count,
  gPerLitre,
  gram,
  hours,
  kilogram,
  litre,
  perLitre,
  share,
  text,
} from '../../../units/quantities';
import { kilogramsFromGrams } from '../../../units/convert';
import { noSolution } from '../../../base/values';
import { column, defineFunction, fields } from '../../../functions/define';
import { num } from '../../../functions/params';

export const bagNumber = defineFunction({
  id: 'BAG.FISH',
  family: 'Rearing',
  summary: 'Fish for one sealed bag with oxygen, by size, hours and temperature.',
  params: {
    weight: weightParam,
    water: num(litre, { above: 0, max: 100, doc: 'Water in one bag: a quarter of it, oxygen in the rest.' }),
    hours: num(hours, {
      min: 1,
      max: 48,
      doc: 'From closing the bag to opening it.',
    }),
    temperature: num(celsius, { min: 5, max: 35, default: 27, doc: 'Water in the bag: 27 °C if left out.' }),
    fish: num(count, { min: 0, max: 1e8, optional: true, doc: 'Fish to be sent, for the number of bags.' }),
  },
  returns: fields(
    {
      low: column('Fish in a bag', count, 'Begin with this.'),
      high: column('At most', count),
      perLitre: column('In a litre', perLitre),
      load: column('Load', gPerLitre),
      bags: column('Bags', count, 'At the careful number; blank without fish.'),
      says: column('In words', text),
    },
    'One trial bag overnight first.',
  ),
  valid:
    'Sealed bags, a quarter water and three quarters oxygen, 1 to 48 h; many species, none of ' +
    'this one above 1 g was read',
  sources: ['DUPREE84', 'SWANN', 'WOYN80', 'JANSSEN85', 'KAWAMURA17'],
  questions: [
    'how many fish in a bag',
    'fish per litre for transport',
    'how many fingerlings per bag for 5 hours',
    'packing fry with oxygen',
    'how many bags do I need',
  ],
  help:
    'Loads were printed at 18.3 °C; each 10 °C more halves them. 2,000 fry of this fish in ' +
    '3.5 L for a day and more ' +
    'were reported once: several times this table. No feed for a day before (larvae: a few ' +
    'hours). Pack at dawn in the ' +
    'shade, double bag, four corners; spines pierce it above 10 cm. Fresh oxygen after 8 h, ' +
    'fresh water after 12 to 16 h. ' +
    'Float bags 15 to 20 minutes before opening. Salt in the bag was not found for this fish.',
  examples: [
    {
      args: [0.5, 5, 5, 29, 6000],
      gives: [
        [
          '550',
          '2008',
          '110',
          '55.0',
          '11',
          'Begin with 550 and try one bag overnight. Stop feed a day before, same temperature, shade.',
        ],
      ],
      because: 'Fingerlings of 1 to 2 inches, 5 h, 29 °C: less than half of what was printed at 18.3 °C.',
    },
    {
      args: [0.0025, 5, 24, 27],
      gives: [
        [
          '3500',
          '4500',
          '700',
          '1.75',
          '',
          'Begin with 3500 and try one bag overnight. Larvae: no feed for a few hours only, do not slop.',
        ],
      ],
      because: 'Larvae are counted: 700 to 900 a litre.',
    },
    {
      args: [0.5, 5, 60],
      fails: { code: '#VALUE!', says: 'from 1 to 48' },
      because: 'Nobody printed loads for so long.',
    },
  ],
  compute: ({ weight, water, hours: span, temperature, fish }) => {
    const each = bagFish(weight, span, temperature);
    const low = Math.floor(each.low * water + 1e-9);
    if (low < 1)
      return noSolution(
        `water: ${water} L is too little for one fish of ${weight} g over ${span} h. Take a larger bag.`,
      );
    const isLarva = weight < LARVA_GRAMS;
    return {
      low,
      high: Math.floor(each.high * water + 1e-9),
      perLitre: each.low,
      load: isLarva ? each.low * weight : bagLoad(weight, span, temperature).low,
      bags: fish === undefined ? '' : Math.ceil(fish / low),
      says: `Begin with ${low} and try one bag overnight. ${isLarva ? 'Larvae: no feed for a few hours only, do not slop.' : 'Stop feed a day before, same temperature, shade.'}`,
    };
  },
});

/** Samples of 200 fish and more, three of them: start, middle, end (WALSH86). */
const SAMPLE_LEAST = 200;
export const countOut = defineFunction({
  id: 'COUNT.OUT',
  family: 'Counting',
  summary: 'Counting fish out by weight: what to weigh for an order, for each bag, with something on top.',
  params: {
    ordered: num(count, { min: 1, max: 1e8, doc: 'Fish the buyer pays.' }),
    sampleFish: num(count, { min: 1, max: 1e6, doc: 'Fish counted in the sample: 200 or more.' }),
    sampleGrams: num(gram, { above: 0, max: 1e6, doc: 'Weight of that sample, without water.' }),
    extra: num(share, {
      min: 0,
      max: 0.5,
      default: 0.05,
      doc: 'Given on top: 5% if left out (practice, from memory).',
    }),
    bags: num(count, {
      min: 1,
      max: 10000,
      default: 1,
      whole: true,
      doc: 'Bags or buckets it is divided into.',
    }),
    trayGrams: num(gram, {
      above: 0,
      max: 100000,
      default: 500,
      doc: 'What you weigh at a time: 500 g if left out.',
    }),
  },
  returns: fields(
    {
      fish: column('Fish to weigh out', count, 'With what is given on top.'),
      kilograms: column('Weight', kilogram),
      perBag: column('Each bag', gram),
      trays: column('Full trays', count),
      rest: column('And', gram, 'In the last tray.'),
      miscount: column('Miscount', share, 'About this far off, nine times in ten, from the sample alone.'),
      says: column('In words', text),
    },
    'By weight, from one sample.',
  ),
  valid: 'Fish of one grade; a sample from start, middle and end of the catch',
  sources: ['WALSH86', 'PRACTICE', 'DEFINITION'],
  questions: [
    'how to count fry by weight',
    'count out 6000 fingerlings',
    'how many kg is 2500 fish',
    'counting fish for a buyer',
    'extra fish for the customer',
  ],
  help:
    'Lower the water first, drain the net the same way each time, keep the fish wet and out ' +
    'of water under half a minute. Sizes differ by a third in an ungraded lot: the miscount ' +
    'shown assumes that.',
  examples: [
    {
      args: [6000, 200, 130, 0.05, 11],
      gives: [
        [
          '6300',
          '4.095',
          '372',
          '8',
          '95',
          '0.039',
          'Weigh 8 trays of 500 g and 95 g. Weigh a second and a third sample: start, middle, end of the catch.',
        ],
      ],
      because: '0.65 g each; 200 fish with weights that differ by a third.',
    },
    {
      args: [100, 50, 40],
      gives: [
        [
          '105',
          '0.084',
          '84',
          '0',
          '84',
          '0.078',
          'Weigh 84 g. Sample of 50: count 200 or more, or count the order itself. Weigh a second ' +
            'and a third sample: start, middle, end of the catch.',
        ],
      ],
      because: 'A small sample says so.',
    },
    { args: [6000, 0, 130], fails: { code: '#VALUE!', says: 'from 1' }, because: 'No sample.' },
  ],
  compute: ({ ordered, sampleFish, sampleGrams, extra, bags, trayGrams }) => {
    const each = sampleGrams / sampleFish;
    const fish = Math.ceil(ordered * (1 + extra) - 1e-9);
    const grams = fish * each;
    const trays = Math.floor(grams / trayGrams + 1e-9);
    const rest = grams - trays * trayGrams;
    const small =
      sampleFish < SAMPLE_LEAST
        ? ` Sample of ${sampleFish}: count 200 or more, or count the order itself.`
        : '';
    const weigh =
      trays === 0
        ? `Weigh ${Math.round(rest)} g.`
        : `Weigh ${trays} trays of ${trayGrams} g and ${Math.round(rest)} g.`;
    return {
      fish,
      kilograms: kilogramsFromGrams(grams),
      perBag: grams / bags,
      trays,
      rest,
      miscount: (1.645 * (1 / 3)) / Math.sqrt(sampleFish),
      says: `${weigh}${small} Weigh a second and a third sample: start, middle, end of the catch.`,
    };
  },
});
