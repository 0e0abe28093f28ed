import { gram, litre, pH } from '../../../../units/quantities';
import { isError } from '../../../../base/values';
import { doseTo } from '../../carbonate/dose';
import { defineFunction, value } from '../../../../functions/define';
import { choice, flag, num } from '../../../../functions/params';
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
  airedModeParam,
  purityParam,
  temperatureParam,
  unreachable,
  waterBehind,
} from '../inputs';
import { misuse } from '../refusals';

export const volumeParam = num(litre, { above: 0, max: 1e7, doc: 'Water in the vat.' });
export const phParam = num(pH, { min: 3, max: 11, doc: 'pH of the water now.' });
export const stockedParam = flag(false, 'TRUE when fish or eggs are in the water: no lime, no caustic soda.');
const bases = [
  'soda ash',
  'soda ash monohydrate',
  'washing soda',
  'baking soda',
  'hydrated lime',
  'quicklime',
  'caustic soda',
] as const;
export const baseParam = choice(bases, {
  default: 'soda ash',
  doc: 'Product that raises pH.',
  aliases: {
    Na2CO3: 'soda ash',
    'sodium carbonate': 'soda ash',
    NaHCO3: 'baking soda',
    'sodium bicarbonate': 'baking soda',
    'Ca(OH)2': 'hydrated lime',
    CaO: 'quicklime',
    NaOH: 'caustic soda',
  },
});
export const targetParam = num(pH, { min: 3, max: 12, doc: 'pH wanted.' });

export const bufferDose = defineFunction({
  id: 'BUFFER.DOSE',
  version: 2,
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
    mode: airedModeParam,
    hardness: hardnessParam,
    dissolved: dissolvedParam,
    dissolvedIn: dissolvedInParam,
    airCarbonDioxide: airParam,
    stocked: stockedParam,
  },
  returns: value(gram, 'Grams of product for the whole volume.'),
  valid: 'Fresh and lightly salted water, 0 to 40 °C, up to about 29 g/L of salt',
  sources: ['PLBU82', 'PHREEQC', 'NOAACO2'],
  cautions: ['SODA_ASH', 'LIME', 'CAUSTIC', 'ACID', 'AMMONIA'],
  help:
    "Solves the carbonate system at the water's own temperature and salt. The dose is for " +
    'the end, the vat in balance with the air ("open"): air first, read, dose in parts, go ' +
    'on with BUFFER.NEXT. "closed" is chemistry for the first minutes after mixing, before ' +
    'any gas is lost: such a dose in water rich in carbon dioxide ends far above the ' +
    'target. With pH alone the pH counts as read after airing. BUFFER.AIRED gives 0 where ' +
    'air alone is enough. Dose before the fish go in; with fish in the water move no more ' +
    'than 0.3 pH at a time and look at AMMONIA.RISE first.',
  examples: [
    {
      args: [1000, 6, 7, 0.1, 26, 'soda ash', 1, null, 'closed'],
      gives: '14.9',
      because:
        'Soft water at 26 °C with 0.1 meq/L; an independent solver with another salt background gave 14.8.',
    },
    {
      args: [1000, 6, 7, 0.1, 26, 'baking soda', 1, null, 'closed'],
      gives: '79.3',
      because: 'Baking soda takes about 5.4 times the weight of soda ash to the same pH.',
    },
    {
      args: [1000, 4.6, 7],
      gives: '4.7',
      because: 'pH alone, for the aired end; the 5 g per 1000 L of the field rule bring it to about 7.03.',
    },
    {
      args: [1000, 4.6, 7, null, 25, 'soda ash', 1, null, 'closed'],
      gives: '3.3',
      because: 'The same water freshly mixed: 0.025 meq/L of mineral acid and 0.6 mg/L of CO2.',
    },
    {
      args: [1000, 5.5, 7.5, 0.2, 30, 'baking soda'],
      fails: { code: '#NUM!', says: 'comes to pH 7.52 by itself' },
      because: 'Air alone does it; for the first minutes before airing it took 2 kg.',
    },
    {
      args: [1000, 8.5, 7.5, 3, 25, 'hydrochloric acid', 0.3, null, 'closed'],
      gives: '26.2',
      because: 'Downwards with 30 % acid.',
    },
    {
      args: [1000, 7.2, 6.5, 1, 25, 'soda ash', 1, null, 'closed'],
      fails: { code: '#VALUE!', says: 'only raises pH' },
      because: 'A base cannot lower pH.',
    },
    {
      args: [1000, 6, 8.6, 1, 25, 'baking soda', 1, null, 'closed'],
      fails: { code: '#NUM!', says: 'Use soda ash' },
      because: 'Baking soda cannot pass about pH 8.3.',
    },
    {
      args: [1000, 4.5, 7, 0.5, 25, 'soda ash', 1, null, 'closed'],
      fails: { code: '#N/A', says: 'below pH 5.2' },
      because: 'Carbon is not to be had from pH and alkalinity there.',
    },
    {
      args: [1000, 15, 7],
      fails: { code: '#VALUE!', says: 'from 3 to 11' },
      because: 'No vat stands there.',
    },
    { args: [-5, 6, 7], fails: { code: '#VALUE!', says: 'above 0' }, because: 'A volume is above 0.' },
  ],
  compute: ({ volume, target, material, purity, mode, stocked, ...readings }) => {
    const known = waterBehind(readings, mode === 'closed');
    if (isError(known)) return known;
    const moles = doseTo(
      known.k,
      known.water,
      materialOf(material),
      target,
      airOf(mode, readings.airCarbonDioxide),
    );
    if (typeof moles !== 'number') return unreachable(moles, material, target, mode);
    const grams = gramsOf(materialOf(material), moles, volume, purity);
    return misuse({ material, grams, volume, purity, stocked }) ?? grams;
  },
});
