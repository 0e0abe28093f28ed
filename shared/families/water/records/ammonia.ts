import { celsius, mgPerLitre, pH, ratio, share, text } from '../../../units/quantities';
import { AMMONIA_UNITS, ammoniaFraction, nitrogenFrom, phForFraction } from '../kernels/ammonia';
import { column, defineFunction, fields, value } from '../../../functions/define';
import { choice, num } from '../../../functions/params';

const phParam = num(pH, { min: 3, max: 12, doc: 'pH of the water.' });
const temperatureParam = num(celsius, { min: 0, max: 50, doc: 'Water temperature.' });
const totalParam = num(mgPerLitre, { min: 0, max: 500, doc: 'Total ammonia from a kit, mg/L.' });
const unitParam = choice(AMMONIA_UNITS, {
  default: 'N',
  doc: 'What the kit\'s mg/L are of: "N" ammonia nitrogen, "NH4" ammonium, "NH3" ammonia.',
  aliases: { 'NH3-N': 'N', 'NH4-N': 'N', TAN: 'N', 'NH4+': 'NH4' },
});
/** Harm was seen from about 0.05 mg/L in a handbook leaflet; juvenile African catfish bore 0.34. */
const limitParam = num(mgPerLitre, {
  above: 0,
  max: 5,
  default: 0.05,
  doc:
    'Toxic ammonia nitrogen you allow. 0.05 when left out; 0.34 is the published ceiling ' +
    'for juvenile African catfish.',
});
const VALID =
  'Fresh water, 0 to 50 °C; in 3 to 10 g/L of salt the true share is 10 to 25 % lower (from memory)';

export const ammoniaShare = defineFunction({
  id: 'AMMONIA.SHARE',
  family: 'Water',
  summary: 'Share of total ammonia nitrogen that is toxic un-ionised ammonia at this pH and temperature.',
  questions: [
    'is my ammonia safe',
    'ammonia 2 ppm at pH 8 is it dangerous',
    'TAN to NH3',
    'ammonia poisoning',
    'amonia level',
    'ammonia too much?',
  ],
  params: { ph: phParam, temperature: temperatureParam },
  returns: value(share, 'Share of total ammonia nitrogen present as NH3-N.'),
  valid: VALID,
  sources: ['EMER75'],
  cautions: ['AMMONIA'],
  examples: [
    {
      args: [8, 25],
      gives: '0.0537',
      because: 'Equation of Emerson et al. 1975 at 25 °C; published tables print 5.37 %.',
    },
    {
      args: [7, 82],
      fails: { code: '#VALUE!', says: '°F' },
      because: 'A reading in °F is out of bounds, and the sentence says so.',
    },
  ],
  compute: ({ ph, temperature }) => ammoniaFraction(temperature, ph),
});

export const ammoniaToxic = defineFunction({
  id: 'AMMONIA.TOXIC',
  family: 'Water',
  summary: "Toxic un-ionised ammonia nitrogen in a water, mg/L, from a kit's total.",
  questions: ['toxic ammonia', 'amonnia toxic', 'water dey smell'],
  params: { total: totalParam, ph: phParam, temperature: temperatureParam, unit: unitParam },
  returns: value(mgPerLitre, 'NH3-N; times 1.216 for mg/L of NH3.'),
  valid: VALID,
  sources: ['EMER75'],
  cautions: ['AMMONIA'],
  examples: [
    { args: [1, 8, 27], gives: '0.0613', because: '6.13 % of the total at 27 °C and pH 8.' },
    {
      args: [1, 8, 27, 'NH4'],
      gives: '0.0476',
      because: 'A kit that shows NH4 counts 18.04 for each 14.01 of nitrogen.',
    },
    { args: [-1, 8, 27], fails: { code: '#VALUE!', says: 'from 0' }, because: 'No negative reading.' },
  ],
  compute: ({ total, ph, temperature, unit }) => nitrogenFrom(total, unit) * ammoniaFraction(temperature, ph),
});

export const ammoniaLimit = defineFunction({
  id: 'AMMONIA.LIMIT',
  family: 'Water',
  summary:
    'Highest total ammonia nitrogen that keeps the toxic part under your limit at this pH and temperature.',
  questions: [
    'how much total ammonia is still safe at my ph',
    'highest ammonia my kit may show',
    'ammonia limit for fry',
    'ammonia limit',
  ],
  params: { ph: phParam, temperature: temperatureParam, limit: limitParam },
  returns: value(mgPerLitre, 'Total ammonia nitrogen.'),
  valid: VALID,
  sources: ['EMER75', 'SCHR10', 'NH3LEAF'],
  cautions: ['AMMONIA'],
  examples: [
    { args: [8, 20, 0.34], gives: '8.93', because: 'Limit for juvenile African catfish.' },
    { args: [8, 20, 0], fails: { code: '#VALUE!', says: 'above 0' }, because: 'A limit is above 0.' },
  ],
  compute: ({ ph, temperature, limit }) => limit / ammoniaFraction(temperature, ph),
});

export const ammoniaRise = defineFunction({
  id: 'AMMONIA.RISE',
  family: 'Water',
  summary:
    'Before raising the pH of water that holds fish: toxic ammonia now and after, and ' +
    'the highest pH that stays safe.',
  questions: [
    'can I raise pH with fish in the tank',
    'lime with fish inside',
    'highest safe pH',
    'fish dey inside, I fit raise ph?',
  ],
  params: {
    total: totalParam,
    ph: phParam,
    target: num(pH, { min: 3, max: 12, doc: 'pH after the dose.' }),
    temperature: temperatureParam,
    limit: limitParam,
    unit: unitParam,
  },
  returns: fields(
    {
      now: column('Toxic ammonia N now', mgPerLitre),
      after: column('Toxic ammonia N after', mgPerLitre),
      times: column('Times as much', ratio),
      safe: column('Highest safe pH', pH, 'Blank when there is no ammonia.'),
      verdict: column('Verdict', text),
    },
    'The change a rise of pH brings.',
  ),
  valid: VALID,
  sources: ['EMER75', 'SCHR10', 'NH3LEAF'],
  cautions: ['AMMONIA'],
  help:
    'From pH 6.5 to 8.9 toxic ammonia grows 166-fold at 27 °C. The default limit of 0.05 ' +
    'mg/L is where a leaflet saw first harm; eggs and larvae may need less, ask for ' +
    'figures of your species.',
  examples: [
    {
      args: [1, 6.5, 8.9, 27],
      gives: [
        [
          '0.0021',
          '0.341',
          '166',
          '7.91',
          'Do not raise: the toxic part would pass the limit. Exchange water first, or stop at pH 7.90.',
        ],
      ],
      because: 'The 166-fold leap between pH 6.5 and 8.9.',
    },
    {
      args: [1, 6.5, 7, 27],
      gives: [
        ['0.0021', '0.0065', '3.1', '7.91', 'Stays under the limit. Raise in steps of no more than 0.3 pH.'],
      ],
      because: 'Half a pH unit is three times as much.',
    },
    { args: [1, 6.5, 15, 27], fails: { code: '#VALUE!', says: 'from 3 to 12' }, because: 'No such pH.' },
  ],
  compute: ({ total, ph, target, temperature, limit, unit }) => {
    const nitrogen = nitrogenFrom(total, unit);
    const now = nitrogen * ammoniaFraction(temperature, ph);
    const after = nitrogen * ammoniaFraction(temperature, target);
    const safe = nitrogen > limit ? phForFraction(temperature, limit / nitrogen) : null;
    const floored = safe === null ? '' : (Math.floor(safe * 10) / 10).toFixed(2);
    return {
      now,
      after,
      times: ammoniaFraction(temperature, target) / ammoniaFraction(temperature, ph),
      safe,
      verdict:
        now > limit
          ? 'Over the limit already: exchange water, stop feeding, do not raise the pH.'
          : after > limit
            ? `Do not raise: the toxic part would pass the limit. Exchange water first, or stop at pH ${floored}.`
            : 'Stays under the limit. Raise in steps of no more than 0.3 pH.',
    };
  },
});
