import { gram, litre, pH } from '../../../units/quantities';
import { isError } from '../../../base/values';
import { doseTo } from '../carbonate/dose';
import { defineFunction, value } from '../../../functions/define';
import { num } from '../../../functions/params';
import {
  airOf,
  airParam,
  alkalinityParam,
  carbonDioxideParam,
  dissolvedInParam,
  dissolvedParam,
  gramsOf,
  hardnessParam,
  materialOf,
  materialParam,
  modeParam,
  purityParam,
  temperatureParam,
  unreachable,
  waterBehind,
} from './inputs';

export const volumeParam = num(litre, { above: 0, max: 1e7, doc: 'Water in the vat.' });
export const phParam = num(pH, { min: 0, max: 14, doc: 'pH of the water now.' });
export const targetParam = num(pH, { min: 3, max: 12, doc: 'pH wanted.' });

export const bufferDose = defineFunction({
  id: 'BUFFER.DOSE',
  family: 'Water',
  summary: 'Grams of a product that bring a volume of water to a wished pH.',
  questions: [
    'how much soda ash to raise pH',
    'raise ph from 5 to 7',
    'water too sour for eggs',
    'how much lime for my tank',
    'ph too low what do i add',
    'how much buffer',
    'lower ph with acid',
    'borehole water ph 4.5 how much soda',
    'quantity of soda ash for GP tank',
  ],
  params: {
    volume: volumeParam,
    ph: phParam,
    target: targetParam,
    alkalinity: alkalinityParam,
    temperature: temperatureParam,
    material: materialParam,
    purity: purityParam,
    carbonDioxide: carbonDioxideParam,
    mode: modeParam,
    hardness: hardnessParam,
    dissolved: dissolvedParam,
    dissolvedIn: dissolvedInParam,
    airCarbonDioxide: airParam,
  },
  returns: value(gram, 'Grams of product for the whole volume.'),
  valid: 'Fresh and lightly salted water, 0 to 40 °C, up to about 29 g/L of salt',
  sources: ['PLBU82', 'PHREEQC', 'NOAACO2'],
  cautions: ['SODA_ASH', 'LIME', 'ACID', 'AMMONIA'],
  help:
    "Solves the carbonate system at the water's own temperature and salt. With pH alone " +
    'the dose rests on an assumption: that the water has been aerated, so that its ' +
    'carbon dioxide is that of the air. That is the smallest dose that fits the pH; ' +
    'water that holds more carbon dioxide needs more (BUFFER.RANGE shows how much more). ' +
    'So dose, mix, measure and go on with BUFFER.NEXT. "closed" answers for the first ' +
    'minutes after mixing; pH then drifts towards the "open" answer (DRIFT.TABLE). Dose ' +
    'before the fish go in; with fish in the water move no more than 0.3 pH at a time ' +
    'and look at AMMONIA.RISE first.',
  examples: [
    {
      args: [1000, 6, 7, 0.1, 26],
      gives: '14.9',
      because:
        'Soft water at 26 °C with 0.1 meq/L; an independent solver with another salt background gave 14.8.',
    },
    {
      args: [1000, 6, 7, 0.1, 26, 'baking soda'],
      gives: '79.3',
      because: 'Baking soda takes about 5.4 times the weight of soda ash to the same pH.',
    },
    {
      args: [1000, 4.6, 7],
      gives: '3.3',
      because: 'pH alone, water taken as aerated at 25 °C: 0.025 meq/L of mineral acid and 0.6 mg/L of CO2.',
    },
    {
      args: [1000, 4.6, 7, null, 25, 'soda ash', 1, null, 'open'],
      gives: '4.7',
      because:
        'The same water after airing, where the 5 g per 1000 L of the field rule bring it to about 7.03.',
    },
    {
      args: [1000, 8.5, 7.5, 3, 25, 'hydrochloric acid', 0.3],
      gives: '26.2',
      because: 'Downwards with 30 % acid.',
    },
    {
      args: [1000, 7.2, 6.5, 1],
      fails: { code: '#VALUE!', says: 'only raises pH' },
      because: 'A base cannot lower pH.',
    },
    {
      args: [1000, 6, 8.6, 1, 25, 'baking soda'],
      fails: { code: '#NUM!', says: 'Use soda ash' },
      because: 'Baking soda cannot pass about pH 8.3.',
    },
    {
      args: [1000, 4.5, 7, 0.5],
      fails: { code: '#N/A', says: 'below pH 5.2' },
      because: 'Carbon is not to be had from pH and alkalinity there.',
    },
    { args: [1000, 15, 7], fails: { code: '#VALUE!', says: 'from 0 to 14' }, because: 'No pH above 14.' },
    { args: [-5, 6, 7], fails: { code: '#VALUE!', says: 'above 0' }, because: 'A volume is above 0.' },
  ],
  compute: ({ volume, target, material, purity, mode, ...readings }) => {
    const known = waterBehind(readings, mode === 'closed');
    if (isError(known)) return known;
    const moles = doseTo(
      known.k,
      known.water,
      materialOf(material),
      target,
      airOf(mode, readings.airCarbonDioxide),
    );
    return typeof moles === 'number'
      ? gramsOf(materialOf(material), moles, volume, purity)
      : unreachable(moles, material, target, mode);
  },
});
