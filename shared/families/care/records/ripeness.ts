import { days, millimetre, text } from '../../../units/quantities';
import { column, defineFunction, fields } from '../../../functions/define';
import { flag, num } from '../../../functions/params';

const REST_FEMALE = 60; // d, practice: 6 to 8 weeks remembered; ripe again within a month in lakes
const REST_SEWN = 90; // d, DIYAWARE10 (45 in a note, 120 best)
const YOUNG_MALE = 365; // d, OKOYE: 12 months better than 6 and 9
const YOUNG_FEMALE = 295; // d, first mature in the laboratory
const LEAST_EGG = 0.94; // mm, SHARAF12

type Verdict = 'ready' | 'wait' | 'look again';
const SAYS: Readonly<Record<Verdict, string>> = {
  ready: 'Ready by what was given.',
  wait: 'Wait or take another fish.',
  'look again': 'Not all signs are there: look again tomorrow.',
};
const columns = {
  verdict: column('Verdict', text, 'ready, wait or look again.'),
  says: column('In words', text),
};
const result = (verdict: Verdict, reasons: readonly string[]) => ({
  verdict,
  says: [SAYS[verdict], ...reasons].join(' '),
});

/** What stands against using a female now. */
const tooSoon = (rested: number | undefined, age: number | undefined): readonly string[] => [
  ...(rested !== undefined && rested < REST_FEMALE
    ? [`Only ${rested} days since she gave; plan ${REST_FEMALE} (practice).`]
    : []),
  ...(age !== undefined && age < YOUNG_FEMALE ? [`${age} days old; first mature at ${YOUNG_FEMALE}.`] : []),
];

export const ripeFemale = defineFunction({
  id: 'RIPE.FEMALE',
  family: 'Brood fish',
  summary: 'Is this female ripe? From belly, eggs, papilla, age and when she last gave.',
  params: {
    belly: flag(false, 'TRUE when the belly is soft and swollen.'),
    eggs: flag(false, 'TRUE when eggs come at a light press.'),
    even: flag(false, 'TRUE when they are of one size with a small dark spot.'),
    papilla: flag(false, 'TRUE when the papilla is red or swollen.'),
    rested: num(days, { min: 0, max: 5000, optional: true, doc: 'Days since she last gave eggs.' }),
    age: num(days, { min: 0, max: 10000, optional: true, doc: 'Age in days.' }),
    egg: num(millimetre, { above: 0, max: 5, optional: true, doc: 'Egg across, mm, if measured.' }),
  },
  returns: fields(columns, 'A list of signs, not a measurement.'),
  valid: 'African catfish; signs are practice, egg size and age from trials',
  sources: ['SHARAF12', 'PRACTICE'],
  cautions: ['INJECTION'],
  questions: [
    'is the female ready',
    'how to know a ripe female',
    'choose brood fish',
    'when can I use her again',
    'select catfish for breeding',
  ],
  help:
    'Trial fish had more than 60 % of eggs with a moved nucleus and eggs of 0.94 to 1.07 mm. ' +
    'Wet towel over the eyes, out of water under a minute (practice); anaesthetics only with ' +
    'a vet.',
  examples: [
    {
      args: [true, true, true, true, 75],
      gives: [['ready', 'Ready by what was given.']],
      because: 'All signs, ten weeks of rest.',
    },
    {
      args: [true, true, true, true, 40],
      gives: [['wait', 'Wait or take another fish. Only 40 days since she gave; plan 60 (practice).']],
      because: 'Too soon.',
    },
    {
      args: [true, false, false, true],
      gives: [['look again', 'Not all signs are there: look again tomorrow. No eggs at a light press.']],
      because: 'No eggs yet.',
    },
    { args: ['maybe'], fails: { code: '#VALUE!', says: 'belly' }, because: 'Yes or no is wanted.' },
  ],
  compute: ({ belly, eggs, even, papilla, rested, age, egg }) => {
    const stop = tooSoon(rested, age);
    if (stop.length > 0) return result('wait', stop);
    const missing = [
      ...(eggs ? [] : ['No eggs at a light press.']),
      ...(belly ? [] : ['Belly not soft and swollen.']),
      ...(even || !eggs ? [] : ['Eggs uneven: old and new ones together.']),
      ...(egg !== undefined && egg < LEAST_EGG
        ? [`Eggs of ${egg} mm; trial fish had ${LEAST_EGG} to 1.07.`]
        : []),
    ];
    const hint = papilla || missing.length === 0 ? [] : ['Papilla pale.'];
    return missing.length === 0 ? result('ready', []) : result('look again', [...missing, ...hint]);
  },
});

export const ripeMale = defineFunction({
  id: 'RIPE.MALE',
  family: 'Brood fish',
  summary: 'Can this male be used? From age, papilla and days since part of a testis was taken.',
  params: {
    age: num(days, { min: 0, max: 10000, doc: 'Age in days.' }),
    papilla: flag(true, 'TRUE when the papilla is long and pointed.'),
    sewn: num(days, {
      min: 0,
      max: 5000,
      optional: true,
      doc: 'Days since part of a testis was taken and the fish sewn.',
    }),
  },
  returns: fields(columns, 'A list of signs, not a measurement.'),
  valid: 'African catfish, milt from the testis',
  sources: ['OKOYE', 'DIYAWARE10', 'THERIO12', 'PRACTICE'],
  cautions: ['INJECTION'],
  questions: [
    'is the male ready',
    'how old must a male be',
    'can I use the male again',
    'male catfish milt again after surgery',
  ],
  help:
    'Males of 12 months had more and better milt than of 6 and 9; body weight says little (r ' +
    '0.68), the testis much (r 0.98). Of sewn males all lived with up to three quarters ' +
    'taken; 45, 90 and 120 days are in print: 90 is taken. A vet for the operation.',
  examples: [
    { args: [500], gives: [['ready', 'Ready by what was given.']], because: 'Over a year.' },
    {
      args: [500, true, 60],
      gives: [['wait', 'Wait or take another fish. 60 days since the operation; plan 90.']],
      because: 'Healing takes longer.',
    },
    {
      args: [200],
      gives: [
        [
          'look again',
          'Not all signs are there: look again tomorrow. 200 days old: 12 months gave more and ' +
            'better milt than 6 and 9.',
        ],
      ],
      because: 'Too young for good milt.',
    },
    { args: [-1], fails: { code: '#VALUE!', says: 'from 0' }, because: 'No such age.' },
  ],
  compute: ({ age, papilla, sewn }) => {
    if (sewn !== undefined && sewn < REST_SEWN)
      return result('wait', [`${sewn} days since the operation; plan ${REST_SEWN}.`]);
    const missing = [
      ...(age < YOUNG_MALE ? [`${age} days old: 12 months gave more and better milt than 6 and 9.`] : []),
      ...(papilla ? [] : ['Papilla short: is it a male?']),
    ];
    return missing.length === 0 ? result('ready', []) : result('look again', missing);
  },
});
