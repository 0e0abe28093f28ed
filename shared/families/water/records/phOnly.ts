import { count, gram, litre, millilitre, pH, text } from '../../../units/quantities';
import { millilitresFromLitres } from '../../../units/convert';
import { isError, noSolution } from '../../../base/values';
import { CEILING } from '../titration/advise';
import { airedAfter, airedBound, airedReach, boundDose, chanceOf } from '../titration/nextDose';
import { posterior } from '../titration/posterior';
import { column, defineFunction, fields, rows } from '../../../functions/define';
import { num } from '../../../functions/params';
import { baseParam, phParam, stockedParam, volumeParam } from './buffer/bufferDose';
import { gramsOf, materialOf, purityParam, temperatureParam } from './inputs';
import { misuse } from './refusals';
import { beliefsOf, meterParam, originParam } from './buffer/titrationInputs';

const ASSUMED = {
  unknown: 'Assumes a source of unknown carbon dioxide, most likely 1 to 40 mg/L.',
  aerated: 'Assumes water aerated for an hour or more, its carbon dioxide near that of the air.',
  well: 'Assumes well water with much carbon dioxide, most likely 5 to 150 mg/L.',
  peat: 'Assumes water brown as tea: acids of peat or leaves beside its carbon dioxide.',
} as const;
const AIR =
  'Air the vat, or shake a jar of it, and read again before any product: air alone may do ' +
  '(ALKALINITY.AERATED, BUFFER.JAR).';
const TRY =
  'One pH reading cannot tell; try it in a bucket first (BUFFER.TRIAL) or begin with ' +
  'the first part (BUFFER.NEXT).';

export const bufferRange = defineFunction({
  id: 'BUFFER.RANGE',
  version: 3,
  family: 'Water',
  summary:
    'With only a pH reading: the least, likely and most product a water may need, and a ' +
    'first part that is safe.',
  questions: [
    'only have a pH meter no alkalinity kit',
    'least and most soda',
    'first dose to start',
    'no test kit',
    'na only ph meter I get',
  ],
  params: {
    volume: volumeParam,
    ph: phParam,
    target: num(pH, { min: 4, max: 10, default: 7, doc: 'pH wanted.' }),
    temperature: temperatureParam,
    material: baseParam,
    purity: purityParam,
    origin: originParam,
    meter: meterParam,
    stocked: stockedParam,
  },
  later: ['stocked'],
  returns: fields(
    {
      low: column('At least', gram, '5 of 100 such waters need less.'),
      likely: column('Likely', gram),
      high: column('At most', gram, '5 of 100 such waters need more.'),
      first: column(
        'Safe first part',
        gram,
        'Keeps the chance of passing half a pH above the target at 3 in 100, freshly mixed and aired.',
      ),
      assumption: column('What this rests on', text),
      action: column('Action', text, '"air first" where air alone may do, otherwise "dose".'),
      airedLow: column('Aired at least', pH, 'Without product.'),
      aired: column('Aired likely', pH, 'pH once the carbon dioxide has left, without product.'),
      airedHigh: column('Aired at most', pH),
    },
    'Grams for the whole volume, for the pH once aired.',
  ),
  valid: 'Fresh water, 0 to 40 °C; what is assumed about carbon dioxide is judgement, not a published figure',
  sources: ['PLBU82', 'PRACTICE'],
  cautions: ['SODA_ASH', 'LIME', 'CAUSTIC', 'AMMONIA'],
  examples: [
    {
      args: [1000, 6, 7],
      gives: [
        [
          '0',
          '0.56',
          '4.2',
          '0',
          'Assumes a source of unknown carbon dioxide, most likely 1 to 40 mg/L. Air the vat, or ' +
            'shake a jar of it, and read again before any product: air alone may do ' +
            '(ALKALINITY.AERATED, BUFFER.JAR).',
          'air first',
          '5.8',
          '6.9',
          '8.3',
        ],
      ],
      because: 'What one reading is worth: perhaps nothing is needed, and never more than a few grams.',
    },
    { args: [1000, 7.5, 7], fails: { code: '#NUM!', says: 'already' }, because: 'Already above the target.' },
  ],
  compute: ({ volume, ph, target, temperature, material, purity, origin, meter, stocked }) => {
    if (ph >= target)
      return noSolution(
        `No base is needed, because the water is already at pH ${ph}, the target being ${target}.`,
      );
    const b = beliefsOf({ temperature, material, origin, meter, alkalinity: undefined, conductivity: 0 });
    if (isError(b)) return b;
    const cloud = posterior(b, { doses: [0], readings: [ph] });
    const grams = (moles: number): number => gramsOf(materialOf(material), moles, volume, purity);
    const wrong = misuse({ material, grams: 0, volume, purity, stocked });
    if (wrong) return wrong;
    const top = Math.min(target + 0.5, CEILING);
    const first = Math.min(
      airedBound(b, cloud, target, 0.5),
      airedBound(b, cloud, top, 0.03),
      boundDose(b, cloud, top, 0.03),
    );
    const airMayDo = chanceOf(cloud, airedAfter(b, cloud, 0), (aired) => aired >= target - 0.5) >= 0.05;
    const aired = airedReach(b, cloud, 0);
    return {
      low: grams(airedBound(b, cloud, target, 0.05)),
      likely: grams(airedBound(b, cloud, target, 0.5)),
      high: grams(airedBound(b, cloud, target, 0.95)),
      first: grams(first),
      assumption: `${ASSUMED[origin]} ${airMayDo ? AIR : TRY}`,
      action: airMayDo ? 'air first' : 'dose',
      airedLow: aired.low,
      aired: aired.likely,
      airedHigh: aired.high,
    };
  },
});

const PARTS = [0.03, 0.2, 0.5, 0.8, 0.95] as const;

export const bufferTrial = defineFunction({
  id: 'BUFFER.TRIAL',
  version: 3,
  family: 'Water',
  summary: 'A trial in a bucket: what to weigh, how much stock solution to add, and what to write down.',
  questions: ['bucket test', 'jar test', 'small trial before the vat', 'test am for bucket first'],
  params: {
    ph: phParam,
    target: num(pH, { min: 4, max: 10, default: 7, doc: 'pH wanted.' }),
    bucket: num(litre, { above: 0, max: 1000, default: 10, doc: 'Water from the vat in the bucket.' }),
    stock: num(gram, {
      above: 0,
      max: 100,
      default: 5,
      doc: 'Product dissolved in one litre of stock solution, g. 5 g/L is handy: 1 mL in 1 L is 5 mg/L.',
    }),
    temperature: temperatureParam,
    material: baseParam,
    origin: originParam,
    meter: meterParam,
  },
  returns: rows(
    {
      step: column('Step', count),
      todo: column('What to do', text),
      stock: column('Stock to add', millilitre),
      product: column(
        'Product so far',
        gram,
        'Running total, as BUFFER.NEXT wants it with the bucket as the volume.',
      ),
      low: column('pH at least', pH, 'Once aired.'),
      high: column('pH at most', pH, 'Once aired.'),
    },
    'The trial, row by row; stop as soon as the target is reached.',
  ),
  valid: 'Fresh water, 0 to 40 °C',
  sources: ['PLBU82', 'PRACTICE'],
  cautions: ['SODA_ASH', 'LIME', 'CAUSTIC'],
  help:
    'Grams found for the bucket times vat litres over bucket litres is the dose for the ' +
    'vat. Air the bucket before and between: what counts is the pH once the gas has left. ' +
    "Give the bucket's readings to BUFFER.NEXT, with the bucket as the volume, " +
    'for the best answer.',
  examples: [
    {
      args: [6, 7],
      gives: [
        [
          '0',
          'Dissolve 5 g of soda ash in 1 L for stock. ' +
            'Fill the bucket with 10 L from the vat, air it for an hour, measure.',
          '',
          '0',
          '6',
          '6',
        ],
        [
          '1',
          'Add, air for half an hour, wait until the reading stands, write it down.',
          '1.1',
          '0.0056',
          '6.1',
          '8.3',
        ],
      ],
      because: 'The steps walk through what such a water may need once aired.',
    },
    { args: [7.5, 7], fails: { code: '#NUM!', says: 'already' }, because: 'Already above the target.' },
  ],
  compute: ({ ph, target, bucket, stock, temperature, material, origin, meter }) => {
    if (ph >= target)
      return noSolution(
        `No base is needed, because the water is already at pH ${ph}, the target being ${target}.`,
      );
    const b = beliefsOf({ temperature, material, origin, meter, alkalinity: undefined, conductivity: 0 });
    if (isError(b)) return b;
    const cloud = posterior(b, { doses: [0], readings: [ph] });
    const totals = PARTS.map((q) => airedBound(b, cloud, target, q)).filter((moles) => moles > 0);
    const start = {
      step: 0,
      todo:
        `Dissolve ${stock} g of ${material} in 1 L for stock. ` +
        `Fill the bucket with ${bucket} L from the vat, air it for an hour, measure.`,
      stock: null,
      product: 0,
      low: ph,
      high: ph,
    };
    let before = 0;
    return [
      start,
      ...totals.map((moles, i) => {
        const product = gramsOf(materialOf(material), moles, bucket, 1);
        const { low, high } = airedReach(b, cloud, moles);
        const row = {
          step: i + 1,
          todo: 'Add, air for half an hour, wait until the reading stands, write it down.',
          stock: millilitresFromLitres((product - before) / stock),
          product,
          low,
          high,
        };
        before = product;
        return row;
      }),
    ];
  },
});
