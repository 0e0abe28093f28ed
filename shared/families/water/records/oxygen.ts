import { celsius, gPerLitre, metre, mgPerLitre, share } from '../../../units/quantities';
import { oxygenSaturation, pressureAt } from '../kernels/oxygen';
import { defineFunction, value } from '../../../functions/define';
import { num } from '../../../functions/params';

const params = {
  temperature: num(celsius, {
    min: -5,
    max: 60,
    doc: 'Water temperature.',
    published: {
      min: 0,
      max: 40,
      source: 'BEKR84',
      because: 'The oxygen equation was fitted from 0 to 40 °C.',
    },
  }),
  salt: num(gPerLitre, { min: 0, max: 40, default: 0, doc: 'Salt in the water, g/L. 0 when left out.' }),
  altitude: num(metre, { min: -400, max: 5000, default: 0, doc: 'Height above the sea. 0 when left out.' }),
};
const VALID = '0 to 40 °C, up to 40 g/L of salt, up to 5000 m';
const saturation = ({
  temperature,
  salt,
  altitude,
}: {
  temperature: number;
  salt: number;
  altitude: number;
}): number => oxygenSaturation(temperature, salt, pressureAt(altitude));

export const oxygenSaturationFunction = defineFunction({
  id: 'OXYGEN.SATURATION',
  family: 'Water',
  summary: 'Oxygen that water holds in balance with air, mg/L, at a temperature, salt content and height.',
  questions: [
    'how much oxygen can water hold',
    '100% saturation in mg/L',
    'oxygen at 28 degrees',
    'oxygen saturation',
  ],
  params,
  returns: value(mgPerLitre, 'Dissolved oxygen at 100 %.'),
  valid: VALID,
  sources: ['BEKR84', 'DEFINITION'],
  examples: [
    { args: [28], gives: '7.83', because: 'EN 25814 prints 7.83 mg/L at 28 °C.' },
    { args: [27, 5], gives: '7.75', because: 'Five grams of salt per litre cost 0.22 mg/L.' },
    { args: [25, 0, 1000], gives: '7.30', because: 'A thousand metres up about an eighth less.' },
    { args: [50], fails: { code: '#N/A', says: '0 to 40' }, because: 'Outside the fitted range.' },
  ],
  compute: saturation,
});

export const oxygenPercent = defineFunction({
  id: 'OXYGEN.PERCENT',
  family: 'Water',
  summary: 'Oxygen saturation as a share from a reading in mg/L.',
  questions: [
    'oxygen in percent from mg per litre',
    'saturation from a reading',
    'is 5 mg oxygen enough percent',
    'DO percent to mg/L',
    'DO na how many percent',
  ],
  params: { oxygen: num(mgPerLitre, { min: 0, max: 60, doc: 'Dissolved oxygen, mg/L.' }), ...params },
  returns: value(share, 'Share of saturation; 1 is 100 %.'),
  valid: VALID,
  sources: ['BEKR84', 'DEFINITION'],
  examples: [
    { args: [5, 28], gives: '0.639', because: '5 of 7.828 mg/L.' },
    { args: [5, 82], fails: { code: '#VALUE!', says: '°F' }, because: 'A reading in °F.' },
  ],
  compute: ({ oxygen, ...rest }) => oxygen / saturation(rest),
});

export const oxygenContent = defineFunction({
  id: 'OXYGEN.CONTENT',
  family: 'Water',
  summary: 'Oxygen in mg/L from a meter that shows percent of saturation.',
  questions: ['mg per litre from percent saturation', 'oxygen meter shows percent', 'percent to mg oxygen'],
  params: { saturation: num(share, { min: 0, max: 5, doc: 'Saturation: 80 % is 80% or 0.8.' }), ...params },
  returns: value(mgPerLitre, 'Dissolved oxygen.'),
  valid: VALID,
  sources: ['BEKR84', 'DEFINITION'],
  examples: [
    { args: [0.8, 28], gives: '6.26', because: '80 % of 7.828 mg/L.' },
    { args: [80, 28], fails: { code: '#VALUE!', says: '80%' }, because: 'Excel stores 80 % as 0.8.' },
  ],
  compute: ({ saturation: part, ...rest }) => part * saturation(rest),
});
