import { celsius, pH, share } from '../../units/quantities';
import { ammoniaFraction } from '../../water/ammonia';
import { defineFunction, value } from '../define';
import { num } from '../params';

export const ammoniaShare = defineFunction({
  id: 'AMMONIA.SHARE',
  family: 'Water',
  summary: 'Share of total ammonia nitrogen that is toxic un-ionised ammonia at this pH and temperature.',
  params: {
    ph: num(pH, { min: 3, max: 12, doc: 'pH of the water.' }),
    temperature: num(celsius, { min: 0, max: 50, doc: 'Water temperature.' }),
  },
  returns: value(share, 'Share of total ammonia nitrogen present as NH3-N.'),
  valid: 'Fresh water, 0 to 50 °C',
  sources: ['EMER75'],
  cautions: ['AMMONIA'],
  examples: [
    { args: [8, 25], gives: '0.0537', because: 'Equation of Emerson et al. 1975 at 25 °C; published tables print 5.37 %.' },
    { args: [7, 82], fails: { code: '#VALUE!', says: '°F' }, because: 'A reading in °F is out of bounds, and the sentence says so.' },
  ],
  compute: ({ ph, temperature }) => ammoniaFraction(temperature, ph),
});
