// Long: records of one subject, each with its texts, questions and examples.
import {
  bathWord,
  CHLORINE_MG_PER_L,
  CHLORINE_MINUTES,
  CHLORINE_PRODUCTS,
  chlorineGrams,
  thiosulfateGrams,
} from '../kernels/disinfect';
import {
  count,
  gram,
  litre,
  mgPerLitre,
  millilitre,
  minutes,
  share,
  squareMetre,
  text,
} from '../../../units/quantities';
import { column, defineFunction, fields, rows, value } from '../../../functions/define';
import { choice, num } from '../../../functions/params';

const water = num(litre, { above: 0, max: 1e6, doc: 'Water the gear stands in, or that fills the vat.' });
const strength = num(mgPerLitre, {
  above: 0,
  max: 1000,
  default: CHLORINE_MG_PER_L,
  doc: 'Active chlorine wanted: 200 if left out.',
});
const PRODUCTS = ['calcium hypochlorite', 'household bleach'] as const;

export const chlorineDose = defineFunction({
  id: 'CHLORINE.DOSE',
  family: 'Water',
  summary: 'Chlorine bath for empty vats, nets and tools: product, minutes, and what neutralises it.',
  params: {
    volume: water,
    strength,
    product: choice(PRODUCTS, {
      default: 'calcium hypochlorite',
      aliases: {
        bleach: 'household bleach',
        hth: 'calcium hypochlorite',
        'chlorine powder': 'calcium hypochlorite',
        hypochlorite: 'calcium hypochlorite',
      },
      doc: 'What you have.',
    }),
    active: num(share, {
      above: 0,
      max: 1,
      optional: true,
      doc: 'Active chlorine in it, from the label. Left out: 65% powder, 5.25% bleach.',
    }),
  },
  returns: fields(
    {
      grams: column('Product', gram),
      millilitres: column('Or', millilitre, 'For a liquid.'),
      from: column('At least', minutes),
      to: column('To', minutes),
      thiosulfate: column('Sodium thiosulfate', gram, 'Crystals, to take the chlorine away.'),
      says: column('In words', text),
    },
    'For clean gear: slime and dirt use the chlorine up.',
  ),
  valid: 'Gear and empty vats, never with fish or eggs; 200 mg/L for 30 to 60 minutes or 100 mg/L for hours',
  sources: ['PIPER82', 'WALSH86', 'DEFINITION'],
  cautions: ['CHLORINE'],
  questions: [
    'how do I disinfect my tank',
    'how much bleach to clean the vat',
    'wash nets with chlorine',
    'sterilise tools',
    'how to remove chlorine',
  ],
  help:
    'Scrub and rinse first. Then the bath, then thiosulfate or three rinses, then dry in the ' +
    'sun (practice). A pool strip that reads 0 is not proof: fry die far below it, so ' +
    'neutralise as well.',
  examples: [
    {
      args: [500],
      gives: [
        [
          '153.8',
          '',
          '30',
          '60',
          '742',
          'Scrub first, leave it in for 30 to 60 minutes, neutralise or rinse three times, test for ' +
            '0, dry in the sun.',
        ],
      ],
      because: '500 L at 200 mg/L from a powder of 65 %; 1.48 g/L of thiosulfate.',
    },
    {
      args: [100, 200, 'bleach'],
      gives: [
        [
          '381',
          '353',
          '30',
          '60',
          '148',
          'Scrub first, leave it in for 30 to 60 minutes, neutralise or rinse three times, test for ' +
            '0, dry in the sun.',
        ],
      ],
      because: '20 g of chlorine from bleach of 5.25 %.',
    },
    { args: [0], fails: { code: '#VALUE!', says: 'above 0' }, because: 'No water, no bath.' },
  ],
  compute: ({ volume, strength: wanted, product, active }) => {
    const p = CHLORINE_PRODUCTS.find(({ name }) => name === product);
    const grams = chlorineGrams(volume, wanted, active ?? p?.share ?? 1);
    const kind = bathWord(wanted);
    const [from, to] = kind === 'full' ? CHLORINE_MINUTES : kind === 'long' ? [180, 360] : [5, 5];
    const span =
      kind === 'full'
        ? '30 to 60 minutes'
        : kind === 'long'
          ? 'three to six hours'
          : '5 minutes: a quick wash, not a disinfection';
    return {
      grams,
      millilitres: p?.density === undefined ? '' : grams / p.density,
      from,
      to,
      thiosulfate: thiosulfateGrams(volume, wanted),
      says: `Scrub first, leave it in for ${span}, neutralise or rinse three times, test for 0, dry in the sun.`,
    };
  },
});

export const chlorineNeutralise = defineFunction({
  id: 'CHLORINE.NEUTRALISE',
  family: 'Water',
  summary: 'Sodium thiosulfate that takes chlorine out of tap water or a bath, grams.',
  params: {
    volume: water,
    chlorine: num(mgPerLitre, {
      above: 0,
      max: 1000,
      default: 2,
      doc: 'Chlorine in it: 2 mg/L if left out, a usual most of tap water.',
    }),
  },
  returns: value(gram, 'Crystals (pentahydrate).'),
  valid: 'Free chlorine; chloramine gives ammonia besides, so air and test before use',
  sources: ['WALSH86', 'PIPER82', 'DEFINITION'],
  cautions: ['CHLORINE'],
  questions: ['remove chlorine from tap water', 'how much thiosulfate', 'can I use tap water for fry'],
  examples: [
    { args: [1000], gives: '14.8', because: '2 mg/L in 1,000 L, 7.4 g for each gram.' },
    { args: [3.785, 200], gives: '5.6', because: 'A gallon of 200 mg/L: 5.6 g in print.' },
    { args: [1000, 0], fails: { code: '#VALUE!', says: 'above 0' }, because: 'Nothing to take away.' },
  ],
  compute: ({ volume, chlorine }) => thiosulfateGrams(volume, chlorine),
});

export const limeMud = defineFunction({
  id: 'LIME.MUD',
  family: 'Water',
  summary: 'Hydrated lime for the wet mud of an emptied pond, grams from and to.',
  params: { area: num(squareMetre, { above: 0, max: 1e6, doc: 'Wet bottom.' }) },
  returns: fields(
    { from: column('From', gram), to: column('To', gram) },
    'Spread on wet mud, before filling.',
  ),
  valid:
    'Ponds without fish: 1,000 to 2,000 kg a hectare; fill when the pH has come below 9, larvae die above it',
  sources: ['UFSANIT', 'PIPER82'],
  cautions: ['LIME'],
  questions: ['how much lime for a pond', 'disinfect pond bottom', 'lime on pond mud'],
  help: 'Wait ten days or until pH is down: Piper prints 9.5, larvae of this fish bear 9.0 at most.',
  examples: [
    { args: [100], gives: [['10000', '20000']], because: '100 to 200 g on a square metre.' },
    { args: [0], fails: { code: '#VALUE!', says: 'above 0' }, because: 'No bottom.' },
  ],
  compute: ({ area }) => ({ from: 100 * area, to: 200 * area }),
});

const STEPS = {
  vat: [
    ['Empty, scrub off slime, rinse', 'practice'],
    ['Chlorine 200 mg/L for 30 to 60 minutes (SPAWN.CHLORINE.DOSE), walls splashed too', 'Piper 1982 p. 283'],
    ['Thiosulfate or three rinses, test strip at 0', 'Piper 1982 p. 283'],
    ['Dry in the sun for a day, upside down', 'practice'],
  ],
  'nets and tools': [
    ['Rinse and brush; cloth needs longer than smooth things', 'WOAH Aquatic Manual'],
    ['Chlorine 200 mg/L for 60 minutes, or 100 mg/L for hours', 'Piper 1982 p. 283'],
    ['Rinse three times, hang in the sun until bone dry', 'practice; hours in the sun: not found'],
    ['Own net and siphon for each vat, marked', 'practice'],
  ],
  'between two batches': [
    [
      'One teaspoon of bleach a gallon (about 68 mg/L) for 5 minutes, three rinses',
      'Walsh and Lindberg 1986',
    ],
    [
      'Conflict: another source asks 200 mg/L for 30 to 60 minutes; use that after a sick batch',
      'Piper 1982 p. 283',
    ],
  ],
  'new concrete': [
    ['Fill, wait two days, read pH, empty; again and again', 'practice, 15 to 28 days in print'],
    ['Ready when pH rises by less than 0.3 in two days and stays below 8.5', 'practice'],
    ['Then 20 fry in a bucket of that water for a day', 'practice'],
    ['No strong acid: dangerous, and not needed', 'caution'],
  ],
  'new tarpaulin': [
    ['Wash with plain water, fill, wait two days, empty; twice', 'practice; nothing in print found'],
    ['Smell it, read pH, then 20 fry in a bucket of that water for a day', 'practice'],
  ],
  salt: [
    ['Strength and hours of salt for vats were not found in print: use chlorine or drying', 'not found'],
  ],
} as const;
const THINGS = Object.keys(STEPS) as readonly string[] as readonly [
  'vat',
  'nets and tools',
  'between two batches',
  'new concrete',
  'new tarpaulin',
  'salt',
];

export const washSteps = defineFunction({
  id: 'WASH.STEPS',
  family: 'Water',
  summary: 'How to wash and disinfect a vat, nets and tools, new concrete or tarpaulin, step by step.',
  params: {
    what: choice(THINGS, {
      default: 'vat',
      doc: 'What is to be cleaned.',
      aliases: {
        tank: 'vat',
        net: 'nets and tools',
        nets: 'nets and tools',
        tools: 'nets and tools',
        concrete: 'new concrete',
        tarpaulin: 'new tarpaulin',
        tarp: 'new tarpaulin',
        liner: 'new tarpaulin',
      },
    }),
  },
  returns: rows(
    { step: column('Step', count), todo: column('Do', text), standing: column('From', text) },
    'One row a step.',
  ),
  valid: 'Gear and vats without fish; what is only practice says so',
  sources: ['PIPER82', 'WALSH86', 'PRACTICE'],
  cautions: ['CHLORINE'],
  questions: [
    'how to clean a tank',
    'new concrete tank',
    'new tarpaulin pond',
    'how to disinfect nets',
    'clean after disease',
  ],
  examples: [
    {
      args: ['salt'],
      gives: [
        [
          '1',
          'Strength and hours of salt for vats were not found in print: use chlorine or drying',
          'not found',
        ],
      ],
      because: 'Nothing was found.',
    },
    { args: ['boat'], fails: { code: '#VALUE!', says: 'expected one of' }, because: 'Not in the list.' },
  ],
  compute: ({ what }) => STEPS[what].map(([todo, standing], i) => ({ step: i + 1, todo, standing })),
});
