import { ammoniaFraction } from '../../water/kernels/ammonia';
import { celsius, mgPerLitre, pH, text } from '../../../units/quantities';
import { column, defineFunction, fields } from '../../../functions/define';
import { choice, num } from '../../../functions/params';

const LIFE = choice(['eggs', 'larvae'], {
  default: 'larvae',
  aliases: { egg: 'eggs', fry: 'larvae', larva: 'larvae' },
  doc: 'Eggs or larvae and fry.',
});
type Code = 'good' | 'borne' | 'harmful' | 'deadly';

/**
 * Printed limits, pH. ACEH19 (28 °C): eggs best 6.7 to 7.6, none at 3.4 or 10; larvae 92 to 98 % at 6.5 to 7.5,
 * none below 4.5 or above 9.
 */
const PH_LIMITS = {
  eggs: { best: [6.7, 7.6], borne: [6.1, 8.8], none: [3.4, 10] },
  larvae: { best: [6.5, 7.5], borne: [6, 8.5], none: [4.5, 9] },
} as const;
const PH_TRIALS = {
  eggs: 'hatch best at 6.7 to 7.6, 23.5 to 25 h from 6.1 to 8.8, none at 3.4 or 10 (28 °C).',
  larvae:
    '92 to 98 % alive after 72 h at 6.5 to 7.5, none below 4.5 or above 9; another trial: ' +
    'half dead at 4.25 and 10.1 ' +
    '(its own death figures contradict its text).',
} as const;
const inside = (x: number, [low, high]: readonly [number, number]): boolean => x >= low && x <= high;

export const phCheck = defineFunction({
  id: 'PH.CHECK',
  family: 'Water',
  summary: 'Is this pH good for eggs or larvae of African catfish? With every trial that says something.',
  params: { ph: num(pH, { min: 0, max: 14, doc: 'pH, settled.' }), life: LIFE },
  returns: fields(
    { verdict: column('Verdict', text, 'good, borne, harmful or deadly.'), says: column('In words', text) },
    'The stricter trial decides above 9, where the two disagree.',
  ),
  valid:
    'African catfish, steady pH; between the printed levels the verdict is borne or harmful by judgement',
  sources: ['ACEH19', 'PHTWO'],
  questions: ['is this ph ok for eggs', 'what ph for catfish larvae', 'is ph 8.5 bad', 'ph too high for fry'],
  help:
    'Never raise it by 0.5 at once with fish in the vat: that killed channel catfish fry of 7 ' +
    'to 14 days. pH 6 and 8.5 as ends of borne for larvae are judgement between printed ' +
    'levels.',
  examples: [
    {
      args: [7, 'eggs'],
      gives: [
        [
          'good',
          'Good. Trials: hatch best at 6.7 to 7.6, 23.5 to 25 h from 6.1 to 8.8, none at 3.4 or 10 (28 °C).',
        ],
      ],
      because: 'Inside the best range.',
    },
    {
      args: [9.2, 'larvae'],
      gives: [
        [
          'deadly',
          'Deadly. Trials: 92 to 98 % alive after 72 h at 6.5 to 7.5, none below 4.5 or above 9; ' +
            'another trial: half dead at 4.25 and 10.1 (its own death figures contradict its text).',
        ],
      ],
      because: 'None above 9.',
    },
    { args: [70], fails: { code: '#VALUE!', says: 'from 0 to 14' }, because: 'No such pH.' },
  ],
  compute: ({ ph, life }) => {
    const { best, borne, none } = PH_LIMITS[life];
    const deadly = life === 'eggs' ? ph <= none[0] || ph >= none[1] : ph < none[0] || ph > none[1];
    const verdict: Code = deadly
      ? 'deadly'
      : inside(ph, best)
        ? 'good'
        : inside(ph, borne)
          ? 'borne'
          : 'harmful';
    const word = { good: 'Good', borne: 'Borne', harmful: 'Harmful', deadly: 'Deadly' }[verdict];
    return { verdict, says: `${word}. Trials: ${PH_TRIALS[life]}` };
  },
});

const LEAFLET = 0.05; // mg/L NH3-N, NH3LEAF
const GROWN = 0.34; // mg/L NH3-N, SCHR10
export const ammoniaCheck = defineFunction({
  id: 'AMMONIA.CHECK',
  family: 'Water',
  summary: 'Is this ammonia a danger? The toxic part at your pH and temperature against all that is printed.',
  params: {
    total: num(mgPerLitre, { min: 0, max: 500, doc: 'Total ammonia nitrogen, mg/L.' }),
    ph: num(pH, { min: 3, max: 12, doc: 'pH of the water.' }),
    temperature: num(celsius, { min: 0, max: 50, doc: 'Water temperature.' }),
  },
  returns: fields(
    {
      toxic: column('Toxic part', mgPerLitre, 'Un-ionised ammonia nitrogen.'),
      verdict: column('Verdict', text, 'good, harmful or deadly.'),
      says: column('In words', text),
    },
    'Nothing was found for larvae: stay well below.',
  ),
  valid: 'Fresh water; printed for fish of 141 g and for fingerlings, not for larvae',
  sources: ['EMER75', 'SCHR10', 'NH3LEAF', 'AGUIGWO03'],
  cautions: ['AMMONIA'],
  questions: [
    'is my ammonia too high',
    'is this ammonia dangerous or safe',
    'ammonia limit for fry',
    'what ammonia kills fish',
  ],
  help:
    'Three figures: first harm at 0.05 mg/L in a leaflet; 0.34 mg/L borne by fish of 141 g; ' +
    'fingerlings half dead in 96 h at 3.85 mg/L, form not stated. The last stands alone and ' +
    'cannot be placed.',
  examples: [
    {
      args: [1, 7, 27],
      gives: [['0.0065', 'good', 'Below the 0.05 mg/L of first harm. Larvae are unknown: stay well below.']],
      because: '0.65 % of it is toxic.',
    },
    {
      args: [1, 8.2, 27],
      gives: [
        [
          '0.094',
          'harmful',
          'Between first harm (0.05 mg/L, a leaflet) and what fish of 141 g bear (0.34). Change ' +
            'water, stop feed, do not raise the pH.',
        ],
      ],
      because: '9.4 % of it.',
    },
    { args: [-1, 7, 27], fails: { code: '#VALUE!', says: 'from 0' }, because: 'No negative reading.' },
  ],
  compute: ({ total, ph, temperature }) => {
    const toxic = total * ammoniaFraction(temperature, ph);
    if (toxic < LEAFLET)
      return {
        toxic,
        verdict: 'good',
        says: 'Below the 0.05 mg/L of first harm. Larvae are unknown: stay well below.',
      };
    return toxic <= GROWN
      ? {
          toxic,
          verdict: 'harmful',
          says:
            'Between first harm (0.05 mg/L, a leaflet) and what fish of 141 g bear (0.34). Change ' +
            'water, stop feed, do not raise the pH.',
        }
      : {
          toxic,
          verdict: 'deadly',
          says: 'Above what even fish of 141 g bear (0.34 mg/L). Change water now, stop feed.',
        };
  },
});
