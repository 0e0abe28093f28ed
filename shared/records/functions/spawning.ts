import { count, gram, kilogram, millilitre, mlPerKg, perGram, share } from '../../units/quantities';
import { defineFunction } from '../../functions/define';
import { choice, num } from '../../functions/params';
import { HELP, verdict, verdictOf } from './verdict';

/** Checks take any number: a value out of bounds is what they are for. */
const counted = (doc: string) => num(count, { optional: true, doc });

export const checkStages = defineFunction({
  id: 'CHECK.STAGES',
  family: 'Checks',
  summary: 'Does a count grow along the stages of a run? Says which, or ok.',
  questions: ['check my records', 'wrong date', 'error in sheet', 'check my book'],
  params: {
    eggs: counted('Number of eggs.'),
    fertilised: counted('Number fertilised.'),
    hatched: counted('Number hatched.'),
    fry: counted('Number of fry.'),
    fingerlings: counted('Number of fingerlings.'),
  },
  returns: verdict,
  valid: 'Any counts of one batch',
  sources: ['DEFINITION'],
  help: HELP,
  examples: [
    {
      args: [40_000, 34_000, 46_000],
      gives: 'Number hatched is above the number fertilised it came from: 46,000 of 34,000.',
      because: 'More larvae than fertilised eggs.',
    },
    {
      args: [40_000, 34_000, 21_000, null, 9000],
      gives: 'ok',
      because: 'Falls at every stage; fry were not counted.',
    },
    {
      args: [40_000],
      gives: 'not checked: needs the number fertilised',
      because: 'One count proves nothing.',
    },
    { args: ['many', 34_000], fails: { code: '#VALUE!', says: 'many' }, because: 'No number.' },
  ],
  compute: (args) => verdictOf(['STAGE.GROWS', 'COUNT.SENSE'], args),
});

const STAGES = ['fertilised', 'hatched', 'survival'] as const;
const FIELDS_OF = {
  fertilised: ['fertilisedShare', 'fertilised', 'eggs'],
  hatched: ['hatchShare', 'hatched', 'fertilised'],
  survival: ['survival', 'alive', 'stocked'],
} as const;

export const checkShare = defineFunction({
  id: 'CHECK.SHARE',
  family: 'Checks',
  summary: 'Does a percentage follow from its two counts? Says what would follow, or ok.',
  questions: [
    'does the percentage fit the counts',
    'check a hatch rate from its counts',
    'percent in my book is wrong',
    'does the percentage match the counts',
  ],
  params: {
    share: num(share, { doc: 'Share as written down, 0 to 1 or as a percent cell.' }),
    part: num(count, { doc: 'Count of the good ones.' }),
    whole: num(count, { doc: 'Count of all.' }),
    stage: choice(STAGES, { default: 'survival', doc: 'What the share is of, for the words of the answer.' }),
  },
  returns: verdict,
  valid: 'Shares kept to the whole percent or better',
  sources: ['DEFINITION'],
  help: HELP,
  examples: [
    {
      args: [0.86, 71, 100],
      gives: 'Survival does not follow from alive ÷ stocked: 71 % expected, 86 % seen.',
      because: '71 of 100.',
    },
    { args: [0.71, 71, 100, 'fertilised'], gives: 'ok', because: 'Follows exactly.' },
    { args: [0.71, 71, 'all'], fails: { code: '#VALUE!', says: 'whole' }, because: 'No number.' },
  ],
  compute: (args) => {
    const [result, part, whole] = FIELDS_OF[args.stage];
    return verdictOf(['SHARE.COUNTS', 'SHARE.RANGE', 'SLIP.TEN', 'SLIP.DIGITS'], {
      [result]: args.share,
      [part]: args.part,
      [whole]: args.whole,
    });
  },
});

export const checkEggs = defineFunction({
  id: 'CHECK.EGGS',
  family: 'Checks',
  summary: 'Do egg weight, eggs per gram, number of eggs and female weight fit each other?',
  questions: ['does the egg number fit the weight of eggs', 'more fish than eggs', 'number increased'],
  params: {
    eggWeight: num(gram, { optional: true, doc: 'Weight of the stripped eggs.' }),
    eggsPerGram: num(perGram, { optional: true, doc: 'Eggs counted per gram.' }),
    eggs: counted('Number of eggs as written down.'),
    femaleWeight: num(kilogram, { optional: true, doc: 'Weight of the female before stripping.' }),
  },
  returns: verdict,
  valid: 'African catfish: 435 to 1,176 eggs per gram were published',
  sources: ['DADEBO00', 'GRAAF95', 'PRACTICE'],
  help: HELP,
  examples: [
    {
      args: [150, 700, 1_050_000],
      gives:
        'Number of eggs looks ten times too much: 1,050,000 seen; with 105,000 the number of ' +
        'eggs follows from egg weight × eggs per gram.',
      because: '150 g × 700 per g.',
    },
    { args: [170, 690, 117_300, 1.2], gives: 'ok', because: '14 % of her weight, and the product follows.' },
    {
      args: [520, null, null, 1.2],
      gives: '520 g of eggs from a female of 1.2 kg is 43.3 % of her body; 14 % is a good season.',
      because: 'No female gives so much.',
    },
    {
      args: ['150 ml', 700],
      fails: { code: '#VALUE!', says: 'Leave the unit out' },
      because: 'A volume where grams are asked for.',
    },
  ],
  compute: (args) =>
    verdictOf(
      [
        'EGGS.PRODUCT',
        'EGGS.PERGRAM',
        'EGGS.YIELD',
        'VALUE.RANGE',
        'COUNT.SENSE',
        'SLIP.TEN',
        'SLIP.THOUSAND',
        'SLIP.DIGITS',
      ],
      args,
    ),
});

export const checkDose = defineFunction({
  id: 'CHECK.DOSE',
  family: 'Checks',
  summary: 'Does the hormone volume given fit the weight of the fish and the dose per kg?',
  questions: [
    'does the hormone volume fit the weight',
    'check the hormone given',
    'was the injection too big for her weight',
    'does the dose fit the weight',
  ],
  params: {
    volume: num(millilitre, { doc: 'Volume injected.' }),
    weight: num(kilogram, { doc: 'Weight of the fish.' }),
    dose: num(mlPerKg, { optional: true, doc: 'Dose per kg that was meant.' }),
    preparation: choice(['ready-made solution', 'other'], {
      default: 'other',
      doc: 'A ready-made solution has narrower limits.',
    }),
  },
  returns: verdict,
  valid: 'A ready-made solution 0.2 to 1 mL/kg, anything else 0.05 to 4 mL/kg',
  sources: ['READYMADE', 'PRACTICE'],
  cautions: ['HORMONE'],
  help: HELP,
  examples: [
    {
      args: [0.75, 3.31, 0.5],
      gives:
        'Female weight looks in pounds: 3.31 kg seen; with 1.501 kg the hormone volume ' +
        'follows from weight × dose per kg.',
      because: 'A scale set to pounds.',
    },
    { args: [0.6, 1.2, 0.5], gives: 'ok', because: '1.2 kg × 0.5 mL/kg.' },
    {
      args: [5, 1],
      gives: '5 mL of hormone per kg is outside what is given, 0.05 to 4 mL/kg.',
      because: '0.5 mL without its point.',
    },
    { args: [0.6, 'heavy'], fails: { code: '#VALUE!', says: 'weight' }, because: 'No number.' },
  ],
  compute: ({ volume, weight, dose, preparation }) =>
    verdictOf(
      ['DOSE.VOLUME', 'DOSE.PERKG', 'VALUE.RANGE', 'SLIP.TEN', 'SLIP.THOUSAND', 'SLIP.POUND', 'SLIP.DIGITS'],
      {
        hormoneVolume: volume,
        femaleWeight: weight,
        hormoneDose: dose,
        preparation: preparation === 'other' ? undefined : preparation,
      },
    ),
});
