import { count, gram, litre, metre, millimetre, perGram, squareMetre, text } from '../../../units/quantities';
import { refuse } from '../../../base/values';
import { column, defineFunction, fields } from '../../../functions/define';
import { num } from '../../../functions/params';

/**
 * Eggs on a square centimetre of net in one layer: 68 at closest packing of 1.3 mm eggs, 29 of 2.0 mm; swollen eggs
 * were not measured, so 15 to 30 is planned (geometry). One spawn on 50 × 70 cm is about 33 (ELGAMAL).
 */
const DENSE = 30; // per cm², worked out
const THIN = 15; // per cm², worked out
const PLANNED = 20; // per cm², chosen between
const CM2_PER_M2 = 10_000;
const EGGS_PER_LITRE = 300; // per L, planned below the 480 of standing water (YONG08)

export const netArea = defineFunction({
  id: 'NET.AREA',
  family: 'Brood fish',
  summary: 'Net or screen for eggs in one layer: square metres, nets, mesh, and litres of standing water.',
  params: {
    eggs: num(count, { min: 0, max: 1e9, optional: true, doc: 'Number of eggs; or give grams.' }),
    grams: num(gram, {
      min: 0,
      max: 1e6,
      optional: true,
      doc: 'Weight of stripped eggs, if they were not counted.',
    }),
    eggsPerGram: num(perGram, { above: 0, max: 3000, default: 669, doc: 'Eggs in a gram: 669 if left out.' }),
    netWidth: num(metre, { above: 0, max: 20, optional: true, doc: 'Width of one net or frame, m.' }),
    netLength: num(metre, { above: 0, max: 20, optional: true, doc: 'Length of one net or frame, m.' }),
  },
  returns: fields(
    {
      area: column('Net', squareMetre, 'At 20 eggs on a square centimetre.'),
      low: column('At least', squareMetre, 'At 30.'),
      high: column('Better', squareMetre, 'At 15.'),
      nets: column('Nets', count, 'Of your size; blank without it.'),
      mesh: column('Mesh', millimetre, 'Lets larvae through and holds shells; 0.5 mm holds larvae back.'),
      litres: column('Standing water', litre, 'At 300 eggs a litre; flowing water takes far more.'),
      says: column('In words', text),
    },
    'For eggs in a single layer.',
  ),
  valid:
    'African catfish, sticky eggs in one layer; worked out from the size of an egg, one net in Egypt agrees',
  sources: ['ELGAMAL', 'GRAAF95', 'YONG08', 'DADEBO00', 'DEFINITION'],
  questions: [
    'how big a net for the eggs',
    'how many eggs on a net',
    'net area for 100 g of eggs',
    'what mesh for hatching',
    'egg mat size',
    'how do I spread the eggs',
  ],
  help:
    'Hang the net before stripping, 5 to 10 cm under the surface and off the floor ' +
    '(practice), and then leave it: eggs ' +
    'bear shaking worst in the first hours. Lift it when hatching has ended, count the white ' +
    'eggs on it. Thin floating ' +
    'roots hatched 50 to 66 %, flat nylon mat 4 % in one trial. Tannic acid hatched 13 %: do not use it.',
  examples: [
    {
      args: [null, 100],
      gives: [
        [
          '0.33',
          '0.22',
          '0.45',
          '',
          '1.0',
          '223',
          'One layer, no heaps: eggs below others suffocate. Hang the net before stripping, then leave it.',
        ],
      ],
      because: '66,900 eggs at 20, 30 and 15 on a square centimetre.',
    },
    {
      args: [115000, null, null, 0.5, 0.7],
      gives: [
        [
          '0.58',
          '0.38',
          '0.77',
          '2',
          '1.0',
          '383',
          'One layer, no heaps: eggs below others suffocate. Hang the net before stripping, then leave it.',
        ],
      ],
      because: 'Frames of 50 × 70 cm: one holds the spawn at the densest, two are better.',
    },
    {
      args: [null, null],
      fails: { code: '#VALUE!', says: 'number of eggs or their weight' },
      because: 'Nothing to spread.',
    },
  ],
  compute: ({ eggs, grams, eggsPerGram, netWidth, netLength }) => {
    if (eggs === undefined && grams === undefined)
      return refuse('eggs: give the number of eggs or their weight in grams.');
    const number = eggs ?? (grams ?? 0) * eggsPerGram;
    const at = (perCm2: number): number => number / perCm2 / CM2_PER_M2;
    return {
      area: at(PLANNED),
      low: at(DENSE),
      high: at(THIN),
      nets:
        netWidth === undefined || netLength === undefined
          ? ''
          : Math.ceil(at(PLANNED) / (netWidth * netLength) - 1e-9),
      mesh: 1,
      litres: number / EGGS_PER_LITRE,
      says: 'One layer, no heaps: eggs below others suffocate. Hang the net before stripping, then leave it.',
    };
  },
});
