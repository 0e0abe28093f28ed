import {
  amount,
  amountPerKilogram,
  count,
  gram,
  kilogram,
  mgPerKg,
  milligram,
  millilitre,
  mlPerKg,
  ratio,
  text,
} from '../../../units/quantities';
import { isError } from '../../../base/values';
import { column, defineFunction, fields, rows } from '../../../functions/define';
import { choice, num } from '../../../functions/params';
import type { Preparation } from '../../preparations';
import { PREPARATION_NAMES, PREPARATIONS } from '../../preparations';
import { donorsFor } from '../kernels/hormone';
import { dose, found, HORMONE_SOURCES, HORMONE_VALID, perKilogram, preparation } from './hormone';

const SALT_GRAMS_PER_LITRE = 9; // g/L, GADISSA13
export const hormonePrepare = defineFunction({
  id: 'HORMONE.PREPARE',
  family: 'Brood fish',
  summary:
    'What to make ready for an injection: amount, salt water, salt, donors and antagonist for all fish.',
  params: {
    weight: num(kilogram, { above: 0, max: 1000, doc: 'Weight of all fish to be injected together.' }),
    preparation,
    dose,
    donorWeight: num(kilogram, {
      above: 0,
      max: 30,
      optional: true,
      doc: 'Weight of one donor, for glands of the own species.',
    }),
  },
  returns: fields(
    {
      amount: column('Amount', amount),
      unit: column('Unit', text),
      saline: column(
        'Salt water',
        millilitre,
        'Of 9 g/L, boiled and cooled; none for a ready-made solution.',
      ),
      salt: column('Salt in it', gram),
      syringe: column('In the syringe', mlPerKg, 'Millilitres for each kg of fish.'),
      donors: column('Donors', count, 'Whole fish; blank unless the glands are of the own species.'),
      antagonist: column('Antagonist', milligram),
    },
    'For all the fish; add a fifth for what stays in mortar and syringe.',
  ),
  valid: HORMONE_VALID,
  sources: [...HORMONE_SOURCES, 'GADISSA13', 'NGUEKU15', 'CLARIIDPAGE'],
  cautions: ['HORMONE', 'INJECTION'],
  questions: [
    'how much saline for pituitary',
    'how many donor fish for pituitary',
    'how do I prepare the hormone',
    'how much salt water to mix with the gland',
  ],
  help:
    'Grind glands dry, add the salt water, let it settle, draw up the clear liquid. Salt water of 9 g/L is 0.9 g ' +
    'of plain salt in 100 mL of boiled and cooled water. A fresh gland is used at once. Never give the liquid of a ' +
    'gland by the millilitres of a ready-made solution.',
  examples: [
    {
      args: [4.8],
      gives: [['2.4', 'mL', '0', '0', '0.50', '', '0']],
      because: '0.5 mL/kg, nothing to mix.',
    },
    {
      args: [4.8, 'own-species pituitary', null, 1],
      gives: [['19.2', 'mg', '4.8', '0.0432', '1.00', '8', '0']],
      because: '4 mg/kg, 1 mL/kg of 9 g/L, donors one and a half times the weight.',
    },
    { args: [0], fails: { code: '#VALUE!', says: 'above 0' }, because: 'No fish weigh nothing.' },
  ],
  compute: ({ weight, preparation: name, dose: given, donorWeight }) => {
    const p = found(name);
    const perKg = perKilogram(p, given);
    if (isError(perKg)) return perKg;
    const saline = p.salineMlPerKg * weight;
    return {
      amount: perKg * weight,
      unit: p.unit,
      saline,
      salt: (saline / 1000) * SALT_GRAMS_PER_LITRE,
      syringe: p.isSolution ? perKg : p.salineMlPerKg,
      donors:
        p.donorsPerKg === undefined || donorWeight === undefined
          ? ''
          : donorsFor(weight, donorWeight, p.donorsPerKg),
      antagonist: p.antagonist * weight * (perKg / p.dose),
    };
  },
});

export const preparationList = defineFunction({
  id: 'PREPARATION.LIST',
  family: 'Brood fish',
  summary: 'Every hormone preparation known here: dose, salt water, donors, storage and where it comes from.',
  params: {
    preparation: choice(['all', ...PREPARATION_NAMES] as const, { default: 'all', doc: 'One, or all.' }),
  },
  returns: rows(
    {
      name: column('Preparation', text),
      dose: column('Dose per kg', amountPerKilogram),
      unit: column('Unit', text),
      low: column('From', amountPerKilogram),
      high: column('To', amountPerKilogram),
      antagonist: column('Antagonist', mgPerKg),
      saline: column('Salt water', mlPerKg),
      donors: column('Donors per kg', ratio),
      waiting: column('Waiting time seen', text),
      storage: column('Storage', text),
      note: column('Note', text),
      source: column('Source', text),
    },
    'One row for each.',
  ),
  valid: 'What is built in; doses are per kg of female, males need none for milt from the testis',
  sources: [...HORMONE_SOURCES, 'VIVEIROS02'],
  cautions: ['HORMONE'],
  questions: ['which hormone can I use', 'what hormones are there for catfish', 'hormone dose list'],
  examples: [
    {
      args: ['tilapia pituitary'],
      gives: [
        [
          'tilapia pituitary',
          '8',
          'mg',
          '6',
          '10',
          '0',
          '1',
          '',
          '14 to 18 h at 27 ± 1 °C; half as long again as the own gland in another trial (17.6 against 11.9 h)',
          'Acetone-dried.',
          'Nothing happened below 6 mg/kg.',
          'TILAPIAGLAND, VILLANUEVA25',
        ],
      ],
      because: 'Best 8 of 6 to 10 mg/kg.',
    },
    { args: ['toad'], fails: { code: '#VALUE!', says: 'expected one of' }, because: 'Toad glands failed.' },
  ],
  compute: ({ preparation: wanted }) =>
    PREPARATIONS.filter(({ name }) => wanted === 'all' || name === wanted).map((p: Preparation) => ({
      name: p.name,
      dose: p.dose,
      unit: p.unit,
      low: p.published[0],
      high: p.published[1],
      antagonist: p.antagonist,
      saline: p.salineMlPerKg,
      donors: p.donorsPerKg ?? '',
      waiting: p.waiting.says,
      storage: p.storage,
      note: p.note,
      source: p.sources.join(', '),
    })),
});
