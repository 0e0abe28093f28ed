import { gram, pH } from '../../../../units/quantities';
import { isError } from '../../../../base/values';
import { pressureOfCO2 } from '../../carbonate/constants';
import { neededOnceAired } from '../../aired/needed';
import { defineFunction, value } from '../../../../functions/define';
import { num } from '../../../../functions/params';
import { baseParam, phParam, stockedParam, volumeParam } from './bufferDose';
import {
  airParam,
  alkalinityParam,
  carbonDioxideParam,
  dissolvedInParam,
  dissolvedParam,
  gramsOf,
  hardnessParam,
  materialOf,
  purityParam,
  temperatureParam,
  unreachable,
  waterBehind,
} from '../inputs';
import { misuse } from '../refusals';

export const bufferAired = defineFunction({
  id: 'BUFFER.AIRED',
  family: 'Water',
  summary: 'Grams still needed once the water has been aired; 0 when air alone is enough.',
  questions: [
    'how much soda ash after airing the water',
    'do I need product at all after aeration',
    'dose for the aired vat',
    'soda ash once the gas has left',
  ],
  params: {
    volume: volumeParam,
    ph: phParam,
    target: num(pH, { min: 4, max: 8, default: 7, doc: 'pH wanted once aired.' }),
    alkalinity: alkalinityParam,
    temperature: temperatureParam,
    material: baseParam,
    purity: purityParam,
    carbonDioxide: carbonDioxideParam,
    bottom: num(pH, {
      min: 4,
      max: 8,
      default: 6.5,
      doc: 'Lowest pH that will do: water that air alone brings here is left alone.',
    }),
    stocked: stockedParam,
    hardness: hardnessParam,
    dissolved: dissolvedParam,
    dissolvedIn: dissolvedInParam,
    airCarbonDioxide: airParam,
  },
  returns: value(gram, 'Grams of product for the whole volume.'),
  valid: 'Fresh and lightly salted water, 0 to 40 °C, no fish breathing in it',
  sources: ['PLBU82', 'PHREEQC', 'NOAACO2'],
  cautions: ['SODA_ASH', 'LIME', 'CAUSTIC', 'AMMONIA'],
  help:
    'Air comes before product: carbon dioxide leaves by itself and takes the pH up with it. ' +
    'Without alkalinity the pH counts as read after airing, which is the safe way to take ' +
    'it: such a dose never brings more than the soft water it is meant for needs. Air for ' +
    'an hour or more, read, type that pH, dose in parts, and go on with BUFFER.NEXT.',
  examples: [
    {
      args: [1000, 6, 7, 0.3, 26],
      gives: '0',
      because:
        'Aired this water stands near 7.7 by itself; dosed before airing it took 45 g and ended near 8.6.',
    },
    {
      args: [1000, 4.6, 7],
      gives: '4.7',
      because: 'The 5 g per 1000 L of the field rule bring such water to about 7.03.',
    },
    { args: [1000, 5.81, 7, 0.1, 26], gives: '0', because: 'An independent solver airs this water to 7.19.' },
    {
      args: [1000, 0, 7],
      fails: { code: '#VALUE!', says: 'from 3 to 11' },
      because: 'A dead meter.',
    },
    {
      args: [1000, 5, 7, null, 25, 'quicklime', 1, null, 6.5, true],
      fails: { code: '#VALUE!', says: 'never put quicklime' },
      because: 'Lime burns gills.',
    },
  ],
  compute: ({ volume, target, material, purity, bottom, stocked, ...readings }) => {
    const known = waterBehind(readings, false);
    if (isError(known)) return known;
    const needed = neededOnceAired({
      k: known.k,
      water: known.water,
      material: materialOf(material),
      target,
      bottom,
      pressure: pressureOfCO2(readings.airCarbonDioxide),
    });
    if ('reason' in needed) return unreachable(needed, material, target, 'open');
    const grams = gramsOf(materialOf(material), needed.moles, volume, purity);
    return misuse({ material, grams, volume, purity, stocked }) ?? grams;
  },
});
