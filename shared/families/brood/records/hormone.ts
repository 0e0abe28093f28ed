// Long: records of one subject, each with its texts, questions and examples.
import type { Dose } from '../kernels/hormone';
import { donorsFor, doseFor, packsFor, splitDose, volumeByWeight } from '../kernels/hormone';
import type { Preparation } from '../../preparations';
import {
  DEFAULT_PREPARATION,
  PREPARATION_NAMES,
  PREPARATION_WORDS,
  PREPARATIONS,
  preparationNamed,
} from '../../preparations';
import {
  amount,
  amountPerKilogram,
  amountPerMillilitre,
  count,
  hours,
  kilogram,
  milligram,
  millilitre,
  mlPerKg,
  moment,
  ratio,
  share,
  text,
} from '../../../units/quantities';
import { daysFromHours } from '../../../units/convert';
import type { CellError } from '../../../base/values';
import { isError, refuse } from '../../../base/values';
import { column, defineFunction, fields, rows, value } from '../../../functions/define';
import { choice, num, series, texts } from '../../../functions/params';
import { SERIALS } from '../../timing/records/latency';

export const fishWeight = num(kilogram, { above: 0, max: 30, doc: 'Weight of one fish.' });
export const preparation = choice(PREPARATION_NAMES, {
  doc: 'What is given. Amounts are in its unit: mL, mg, IU or µg.',
  aliases: PREPARATION_WORDS,
  default: DEFAULT_PREPARATION,
});
export const dose = num(amountPerKilogram, {
  above: 0,
  max: 100_000,
  optional: true,
  doc:
    'Amount per kg of fish in the unit of the preparation. Left out: 0.5 mL, 4 mg catfish or carp ' +
    'or 8 mg tilapia pituitary, 3000 IU hCG, 40 or 30 µg LHRHa.',
});
const concentration = num(amountPerMillilitre, {
  above: 0,
  max: 1e6,
  optional: true,
  doc:
    'Amount in each mL of what is in the syringe (mg, µg or IU per mL); not needed for a ' +
    'solution dosed by volume.',
});
export const HORMONE_SOURCES = [
  'BRZUSKA03',
  'SUEZ',
  'GRAAF95',
  'TILAPIAGLAND',
  'SALEH',
  'SHOURBELA',
  'SHARAF12',
  'READYMADE',
] as const;
export const HORMONE_VALID =
  'African catfish, females: 0.4 to 0.5 mL/kg ready-made, 3 to 4 mg/kg catfish or carp pituitary, ' +
  '6 to 10 mg/kg tilapia pituitary, 500 to 6000 IU/kg hCG, 30 to 40 µg/kg LHRHa (GnRHa) with ' +
  'an antagonist; more than five times off these is refused as a slip of units';
const HELP =
  'A single injection is enough for African catfish: every other study seen used one. Males need none: a ' +
  'single injection raised nothing where the milt is taken from the testis. ' +
  ('A ready-made solution holds about 20 µg GnRHa and 10 mg domperidone in each mL, so ' +
    '0.5 mL/kg is 10 µg/kg and 5 mg/kg. Powder is taken up in salt water of 9 g/L, 1 to 2 mL ' +
    'per kg of fish; SPAWN.HORMONE.PREPARE says how much. LHRHa alone made few ovulate (17 %).');

export const found = (name: string): Preparation => preparationNamed(name) ?? PREPARATIONS[0];

const SLIP_FACTOR = 5;

/** Dose per kg, or the sentence when it is so far off that its unit must be another. */
export function perKilogram(p: Preparation, given: number | undefined): number | CellError {
  if (given === undefined) return p.dose;
  const [low, high] = p.published;
  if (given <= high * SLIP_FACTOR && given >= low / SLIP_FACTOR) return given;
  const range = low === high ? `${low}` : `${low} to ${high}`;
  return refuse(
    `dose: ${given} ${p.unit}/kg of ${p.name} is far from what was published (${range} ${p.unit}/kg). Look at the unit: a dose is per kg of fish, in ${p.unit}. Ask a vet before using another.`,
  );
}

export const hormoneVolume = defineFunction({
  id: 'HORMONE.VOLUME',
  family: 'Brood fish',
  summary: 'Millilitres of a ready-made hormone solution for one fish, by its weight.',
  questions: [
    'how much hormone to inject',
    'hormone dosage',
    '0.5 ml per kg',
    'hCG IU per kg',
    'harmone dosage',
    'how many mil for one fish',
    'how many ml for 1kg mother fish',
    '0.5 per kilo',
    'how many ml I go inject',
  ],
  params: {
    weight: fishWeight,
    dose: num(mlPerKg, {
      above: 0,
      max: 3,
      default: 0.5,
      doc: 'Millilitres per kg of fish, from the leaflet. Published for African catfish: 0.4 to 0.5.',
    }),
  },
  returns: value(millilitre, 'Volume to inject.'),
  valid: 'African catfish at 0.4 to 0.5 mL/kg, single injection; carps were given 0.25 to 0.80 mL/kg',
  sources: ['BRZUSKA03', 'SUEZ', 'READYMADE'],
  cautions: ['HORMONE'],
  help: 'Give it a range of weights and the doses spill. For pituitary powder or hCG use SPAWN.HORMONE.DOSE.',
  native: '({weight}*{dose})',
  examples: [
    { args: [1.2], gives: '0.60', because: '1.2 kg at 0.5 mL/kg.' },
    {
      args: [[[0.8], [1.5]], 0.4],
      gives: [['0.32'], ['0.60']],
      because: 'A range of weights gives a range of doses.',
    },
    {
      args: [1200],
      fails: { code: '#VALUE!', says: '1.2 kg' },
      because: 'A weight typed in grams is named.',
    },
  ],
  compute: ({ weight, dose: perKg }) => volumeByWeight(weight, perKg),
});

export const hormoneDose = defineFunction({
  id: 'HORMONE.DOSE',
  family: 'Brood fish',
  summary: 'Hormone for one fish by weight, preparation and concentration: amount, unit and mL.',
  questions: ['injection dose for 1.5 kg female', 'pituitary dose', 'LHRHa dose', 'injecton dose'],
  params: { weight: fishWeight, preparation, dose, concentration },
  returns: fields(
    {
      amount: column('Amount', amount),
      unit: column('Unit', text),
      volume: column('Volume', millilitre, 'Blank when a powder has no concentration yet.'),
      antagonist: column('Antagonist', milligram, 'Dopamine antagonist that goes with LHRHa.'),
    },
    'What one fish gets. A column of weights spills one row for each.',
  ),
  valid: HORMONE_VALID,
  sources: HORMONE_SOURCES,
  cautions: ['HORMONE'],
  help: HELP,
  examples: [
    {
      args: [1.2, 'carp pituitary', null, 4],
      gives: [['4.8', 'mg', '1.20', '0.0']],
      because: '4 mg/kg, dissolved to 4 mg per mL.',
    },
    {
      args: [1.2, 'hCG'],
      gives: [['3600', 'IU', '', '0.0']],
      because: '3000 IU/kg; no concentration, so no volume.',
    },
    {
      args: [1.2, 'LHRHa with domperidone'],
      gives: [['48', 'µg', '', '12.0']],
      because: '40 µg/kg with 10 mg/kg.',
    },
    {
      args: [1.2, 'hCG', 3],
      fails: { code: '#VALUE!', says: '500 to 6000 IU/kg' },
      because: '3 IU/kg: a dose in mg was typed.',
    },
  ],
  compute: (args) => {
    const p = found(args.preparation);
    const perKg = perKilogram(p, args.dose);
    if (isError(perKg)) return perKg;
    const got = doseFor(p, args.weight, perKg, args.concentration);
    return { amount: got.amount, unit: p.unit, volume: got.volume ?? '', antagonist: got.antagonist };
  },
});

const firstShare = num(share, {
  min: 0,
  max: 0.9,
  default: 0,
  doc:
    'Share given in a first, preparatory injection; 0 for a single one. 10 % was ' +
    'published for migrants of South America.',
});

export const hormoneTable = defineFunction({
  id: 'HORMONE.TABLE',
  family: 'Brood fish',
  summary: 'Dose table for a list of fish: amount, mL, split in two if wished, and the total.',
  questions: [
    'dose table for many females',
    'hormone for a list of fish',
    'doses for all my brood fish',
    'dose table for all my females',
  ],
  params: {
    weights: series(kilogram, { above: 0, max: 30, pair: 'fish', doc: 'Weight of each fish.' }),
    tags: texts({
      pair: 'fish',
      optional: true,
      doc: 'Tag or name of each fish; left out, they are numbered.',
    }),
    preparation,
    dose,
    concentration,
    firstShare,
  },
  returns: rows(
    {
      fish: column('Fish', text),
      weight: column('Weight', kilogram),
      amount: column('Amount', amount),
      unit: column('Unit', text),
      volume: column('Volume', millilitre),
      first: column('First', millilitre),
      second: column('Second', millilitre),
    },
    'One row for each fish and a last row with the total.',
  ),
  valid: HORMONE_VALID,
  sources: [...HORMONE_SOURCES, 'NEOTROP13'],
  cautions: ['HORMONE'],
  help: `${HELP} Columns First and Second stay blank for a single injection, and all volumes when a powder has no concentration yet.`,
  examples: [
    {
      args: [
        [[1.2], [0.8]],
        [['F1'], ['F2']],
      ],
      gives: [
        ['F1', '1.2', '0.60', 'mL', '0.60', '', ''],
        ['F2', '0.8', '0.40', 'mL', '0.40', '', ''],
        ['Total', '2.0', '1.00', 'mL', '1.00', '', ''],
      ],
      because: '0.5 mL/kg each.',
    },
    {
      args: [[[1]], null, 'carp pituitary', 5.5, 5.5, 0.1],
      gives: [['1', '1', '5.5', 'mg', '1.00', '0.10', '0.90']],
      because: '5.5 mg/kg split 10 % and 90 %.',
    },
    {
      args: [[[1.2], [800]]],
      fails: { code: '#VALUE!', says: 'row 2' },
      because: 'One weight was typed in grams.',
    },
  ],
  compute: ({ weights, tags, preparation: name, dose: given, concentration: perMl, firstShare: part }) => {
    const p = found(name);
    const perKg = perKilogram(p, given);
    if (isError(perKg)) return perKg;
    const line = (fish: string, weight: number, { amount: whole, volume }: Dose) => {
      const [first, second] =
        part > 0 && volume !== undefined ? splitDose(volume, part) : (['', ''] as const);
      return { fish, weight, amount: whole, unit: p.unit, volume: volume ?? '', first, second };
    };
    const total = weights.reduce<number>((sum, w) => sum + w, 0);
    return [
      ...weights.map((weight, i) =>
        line(tags?.[i] || String(i + 1), weight, doseFor(p, weight, perKg, perMl)),
      ),
      line('Total', total, doseFor(p, total, perKg, perMl)),
    ];
  },
});

export const hormoneSplit = defineFunction({
  id: 'HORMONE.SPLIT',
  family: 'Brood fish',
  summary: 'First and second part of a split dose, and when to give the first.',
  questions: ['two doses', 'split injection', '10 percent first', 'when to give the first dose'],
  params: {
    total: num(amount, { above: 0, max: 1e7, doc: 'The whole dose in any unit.' }),
    firstShare: num(share, { above: 0, max: 0.9, default: 0.1, doc: 'Share given first.' }),
    second: num(moment, {
      ...SERIALS,
      optional: true,
      doc: 'Date and time of the second, resolving injection.',
    }),
    gap: num(hours, { above: 0, max: 72, default: 12, doc: 'Hours between the two.' }),
  },
  returns: fields(
    {
      first: column('First part', amount),
      second: column('Second part', amount),
      firstAt: column('Give the first at', moment),
    },
    'Parts in the unit given; latency counts from the second.',
  ),
  valid:
    'Published for South American migrants, 10 % then 90 % after 12 h; African catfish ' +
    'needs one injection only',
  sources: ['NEOTROP13', 'OKER15', 'MOSHAAND'],
  cautions: ['HORMONE'],
  help: 'For African catfish all studies seen but one used a single injection. Split only for species that need it.',
  examples: [
    { args: [5.5], gives: [['0.55', '4.95', '']], because: '10 % and 90 % of 5.5 mg/kg.' },
    {
      args: [6, 0.1, 46000.5],
      gives: [['0.6', '5.4', '46000.0']],
      because: 'First part 12 h before the second.',
    },
    { args: [6, 10], fails: { code: '#VALUE!', says: '10%' }, because: 'A share of 10 % is 0.1.' },
  ],
  compute: ({ total, firstShare: part, second, gap }) => {
    const [first, rest] = splitDose(total, part);
    return { first, second: rest, firstAt: second === undefined ? '' : second - daysFromHours(gap) };
  },
});

export const hormoneVials = defineFunction({
  id: 'HORMONE.VIALS',
  family: 'Brood fish',
  summary: 'Vials or packs to buy for the hormone needed, with a spare.',
  questions: ['how many vials', 'how many 10 ml bottles', 'ampoules', 'how many bottle hormone I go buy'],
  params: {
    needed: num(amount, { min: 0, max: 1e9, doc: 'Total needed, in mL, mg or IU.' }),
    perVial: num(amount, { above: 0, max: 1e9, doc: 'What one vial holds, in the same unit.' }),
    spare: num(share, {
      min: 0,
      max: 1,
      default: 0.1,
      doc: 'Share on top for drops left in the syringe and fish heavier than planned.',
    }),
    left: num(amount, { min: 0, max: 1e9, default: 0, doc: 'Good stock left, in the same unit.' }),
  },
  returns: value(count, 'Whole vials to buy.'),
  valid: 'Any packed hormone; one tenth as a spare is common practice, no source',
  sources: ['PRACTICE', 'DEFINITION'],
  cautions: ['HORMONE'],
  help: 'An opened vial may not keep: see its leaflet. Put left to 0 if yours does not.',
  examples: [
    { args: [18, 10], gives: '2', because: '18 mL and a tenth more is 19.8 mL: two vials of 10 mL.' },
    { args: [20, 10, 0], gives: '2', because: 'Exactly two vials without a spare.' },
    { args: [18, 0], fails: { code: '#VALUE!', says: 'above 0' }, because: 'An empty vial holds nothing.' },
  ],
  compute: ({ needed, perVial, spare, left }) => packsFor(needed, spare, perVial, left),
});

export const pituitaryDonors = defineFunction({
  id: 'PITUITARY.DONORS',
  family: 'Brood fish',
  summary: 'Donor fish whose glands treat one fish with the pituitary of its own species.',
  questions: [
    'how many donor fish',
    'how many heads for one female',
    'use fish head hormone',
    'how many fish head for one mother',
    'how many fish I go kill take head',
  ],
  params: {
    weight: fishWeight,
    donorWeight: num(kilogram, { above: 0, max: 30, doc: 'Weight of one donor.' }),
    ratio: num(ratio, {
      above: 0,
      max: 10,
      default: 1.5,
      doc: 'Weight of donors ÷ weight of the fish injected.',
    }),
  },
  returns: value(count, 'Whole donors.'),
  valid: 'African catfish; 1.5 kg of donors per kg of fish, latency 12 h at 28 °C and 20 h at 22 °C',
  sources: ['CLARIIDPAGE'],
  cautions: ['HORMONE'],
  help:
    'Glands keep up to 18 months in acetone or alcohol. Another study used two glands of ' +
    'donors as heavy as the female.',
  examples: [
    { args: [1, 0.5], gives: '3', because: '1.5 kg of donors at 0.5 kg each.' },
    {
      args: [1, 500],
      fails: { code: '#VALUE!', says: '0.5 kg' },
      because: 'A weight typed in grams is named.',
    },
  ],
  compute: ({ weight, donorWeight, ratio: donorsPerKg }) => donorsFor(weight, donorWeight, donorsPerKg),
});
