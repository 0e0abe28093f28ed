import { celsius, text } from '../../../units/quantities';
import { outside } from '../../../base/values';
import { defineFunction, value } from '../../../functions/define';
import { choice, num } from '../../../functions/params';
import * as say from './say';
import { TOLERANCES } from '../kernels/tolerance';

/**
 * Bands of early life of African catfish, °C (PROKES15): optimum 22.9 to 30.3, borderline 20.6 to 22.9 and
 * 30.2 to 33.2.
 */
const OPTIMUM = [22.9, 30.3] as const;
const BORDERLINE = [20.6, 33.2] as const;
/**
 * Hatching of Heterobranchus longifilis, °C (NWOSU00): best 25 to 27, least at 23 and 29, none at 20 or 32.
 */
const LONGIFILIS = { best: [25, 27], least: [23, 29], none: [20, 32] } as const;

const within = (t: number, [low, high]: readonly [number, number]): boolean => t >= low && t <= high;

function longifilis(t: number): ReturnType<typeof outside> | string {
  if (t <= LONGIFILIS.none[0] || t >= LONGIFILIS.none[1])
    return outside(
      `temperature: at ${say.degrees(t)} °C no eggs of Heterobranchus longifilis hatched; none did at 20 or 32 °C (Nwosu & Holzlohner 2000). Mend the water first, and ask a vet.`,
    );
  if (within(t, LONGIFILIS.best)) return 'best: 25 to 27 °C';
  return within(t, LONGIFILIS.least)
    ? 'less than best: 25 to 27 °C hatches best'
    : 'poor: few hatch below 23 or above 29 °C';
}

function clarias(t: number, life: 'eggs' | 'larvae'): ReturnType<typeof outside> | string {
  const tolerance = TOLERANCES.find((x) => x.species === 'Clarias gariepinus' && x.life === life);
  if (tolerance && !within(t, tolerance.lethal)) return say.lethal('temperature', t, tolerance);
  if (within(t, OPTIMUM)) return 'good: 22.9 to 30.3 °C is the best range';
  return within(t, BORDERLINE)
    ? `borderline: ${t < OPTIMUM[0] ? 'cool' : 'warm'}, more are lost; 22.9 to 30.3 °C is the best range`
    : `poor: close to the ${t < OPTIMUM[0] ? 'cold' : 'warm'} limit that kills ${life}`;
}

export const temperatureCheck = defineFunction({
  id: 'TEMPERATURE.CHECK',
  family: 'Timing',
  summary: 'Says whether a temperature is good, borderline, poor or deadly for eggs or larvae.',
  questions: [
    'is 32 degrees too hot',
    'water too cold for larvae',
    'is 22 ok for hatching',
    'water too cold?',
  ],
  params: {
    temperature: num(celsius, { min: 0, max: 45, doc: 'Water temperature.' }),
    life: choice(['eggs', 'larvae'], {
      doc: 'Eggs or larvae.',
      aliases: { egg: 'eggs', embryo: 'eggs', larva: 'larvae', fry: 'larvae' },
      default: 'eggs',
    }),
    species: choice(['African catfish', 'Heterobranchus longifilis'], {
      doc: 'Whose eggs or larvae.',
      aliases: { 'clarias gariepinus': 'African catfish', catfish: 'African catfish' },
      default: 'African catfish',
    }),
  },
  returns: value(
    text,
    'A verdict with the range behind it; a deadly temperature is an error that names the limit.',
  ),
  valid: 'African catfish eggs and larvae; hatching of Heterobranchus longifilis',
  sources: ['PROKES15', 'NWOSU00', 'SWING'],
  help:
    'Eggs of African catfish die below 17.5 and above 35.1 °C, larvae below 18.9 and ' +
    'above 33.2 °C, in constant water. A swing within the limits still harms: tanks in ' +
    'the sun at 19 to 37 °C hatched nothing, the narrowest range 57 %.',
  examples: [
    {
      args: [27],
      gives: 'good: 22.9 to 30.3 °C is the best range',
      because: 'Inside the published optimum.',
    },
    {
      args: [21, 'larvae'],
      gives: 'borderline: cool, more are lost; 22.9 to 30.3 °C is the best range',
      because: 'The lower suboptimal band starts at 20.6 °C.',
    },
    { args: [34, 'larvae'], fails: { code: '#N/A', says: '33.2 °C' }, because: 'Larvae die above 33.2 °C.' },
    {
      args: [28, 'larvae', 'Heterobranchus longifilis'],
      fails: { code: '#N/A', says: 'eggs only' },
      because: 'Only its hatching was published.',
    },
  ],
  compute: ({ temperature: t, life, species }) => {
    if (species === 'African catfish') return clarias(t, life);
    return life === 'eggs'
      ? longifilis(t)
      : outside('life: for Heterobranchus longifilis temperatures were published for eggs only.');
  },
});
