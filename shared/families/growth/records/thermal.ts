import { daysByThermal, thermalGrowth, weightByThermal } from '../kernels/thermalGrowth';
import { celsius, days, fishGram, gram, ratio } from '../../../units/quantities';
import { noSolution } from '../../../base/values';
import { defineFunction, value } from '../../../functions/define';
import { num } from '../../../functions/params';
import { daysParam, endParam, startParam, weightSlip } from './growth';

const meanTemperature = num(celsius, { above: 0, max: 45, doc: 'Mean water temperature over the days.' });
const futureTemperature = num(celsius, {
  above: 0,
  max: 45,
  doc: 'Mean water temperature to come.',
  published: {
    max: 30.3,
    source: 'PROKES15',
    because:
      'The coefficient assumes that warmth always speeds growth; for African catfish that ' +
      'ends at about 30.3 °C.',
  },
});
const coefficient = num(ratio, {
  above: 0,
  max: 10,
  doc: 'Thermal growth coefficient from your own two weighings, in the same form.',
});
const scale = num(ratio, {
  min: 100,
  max: 1000,
  default: 1000,
  doc: 'Form of the coefficient: 1000 (if left out) or 100. Both are in use; say which when you compare.',
});
const LIMITS =
  'It assumes that growth rises steadily with temperature, that weight goes with the ' +
  'cube of length, and that length grows evenly. All three can fail (Jobling 2003): ' +
  'use it for short spans, between temperatures you have measured at, never above the ' +
  'best one. On a published growth curve of African catfish at 29.5 °C one coefficient ' +
  'taken over 239 days was up to 48 % too low in between (Legendre et al. 1992).';

export const tgc = defineFunction({
  id: 'GROWTH.TGC',
  family: 'Rearing',
  summary:
    'Thermal growth coefficient from two mean weights, the days and the mean temperature between them.',
  questions: ['thermal growth coefficient', 'tgc of my fish', 'growth allowing for temperature', 'TGC'],
  params: { start: startParam, end: endParam, temperature: meanTemperature, days: daysParam, scale },
  returns: value(ratio, 'Coefficient, in the chosen form.'),
  valid: 'Below the best temperature of the species; describes, does not explain',
  sources: ['IWAM81', 'TGCPAGE', 'JOBL03'],
  help: `scale × (end^⅓ − start^⅓) ÷ (temperature × days). ${LIMITS}`,
  native: '{scale}*({end}^(1/3)-{start}^(1/3))/({temperature}*{days})',
  examples: [
    { args: [10, 350, 11, 200, 100], gives: '0.222', because: 'Published worked example in the ×100 form.' },
    {
      args: [10, 0.35, 11, 200],
      fails: { code: '#VALUE!', says: 'looks like kilograms' },
      because: '0.35 kg typed where grams are meant.',
    },
  ],
  compute: ({ start, end, temperature, days: span, scale: form }) =>
    weightSlip(start, end) ?? thermalGrowth(start, end, temperature, span, form),
});

export const weightByTgc = defineFunction({
  id: 'GROWTH.WEIGHTBYTGC',
  family: 'Rearing',
  summary: 'Mean weight after some days at a mean temperature, from the thermal growth coefficient.',
  questions: [
    'weight after some days by temperature',
    'how big in cooler water',
    'size by thermal growth',
    'thermal growth coefficient',
  ],
  params: {
    start: startParam,
    coefficient,
    temperature: futureTemperature,
    days: num(days, { min: 0, max: 3650, doc: 'Days from the start.' }),
    scale,
  },
  returns: value(gram, 'Mean weight.'),
  valid: 'Up to 30.3 °C for African catfish',
  sources: ['IWAM81', 'JOBL03', 'PROKES15', 'LEGE92'],
  help: LIMITS,
  native: '({start}^(1/3)+{coefficient}/{scale}*{temperature}*{days})^3',
  examples: [
    { args: [10, 2.224, 11, 200], gives: '350', because: 'The inverse of the published example.' },
    {
      args: [10, 2.224, 32, 200],
      fails: { code: '#N/A', says: '30.3' },
      because: 'Above the best temperature warmth no longer speeds growth.',
    },
  ],
  compute: ({ start, coefficient: c, temperature, days: span, scale: form }) =>
    weightByThermal(start, c, temperature, span, form),
});

export const daysByTgc = defineFunction({
  id: 'GROWTH.DAYSBYTGC',
  family: 'Rearing',
  summary: 'Days from one mean weight to another at a mean temperature, from the thermal growth coefficient.',
  questions: [
    'days to a weight in cooler water',
    'time to size with thermal growth',
    'days to grow by temperature',
  ],
  params: {
    start: startParam,
    target: num(fishGram, { min: 0.0005, max: 30000, doc: 'Mean weight you want.' }),
    coefficient,
    temperature: futureTemperature,
    scale,
  },
  returns: value(days, 'Days to that weight.'),
  valid: 'Up to 30.3 °C for African catfish',
  sources: ['IWAM81', 'JOBL03', 'PROKES15', 'LEGE92'],
  help: LIMITS,
  native: '{scale}*({target}^(1/3)-{start}^(1/3))/({coefficient}*{temperature})',
  examples: [
    { args: [10, 350, 2.224, 11], gives: '200', because: 'The inverse of the published example.' },
    {
      args: [350, 10, 2.224, 11],
      fails: { code: '#NUM!', says: 'already' },
      because: 'The fish are heavier than the target.',
    },
  ],
  compute: ({ start, target, coefficient: c, temperature, scale: form }) =>
    target < start
      ? noSolution(
          `The fish weigh ${start} g, already more than ${target} g. Was one of them typed in kilograms?`,
        )
      : daysByThermal(start, target, c, temperature, form),
});
