import { FORMALIN_GRAMS_PER_ML } from '../kernels/formalin';
import { formalinStop } from '../../brood/records/treatments';
import { gramsAt } from '../../brood/kernels/treatments';
import { litre, mgPerLitre, millilitre, minutes, ratio, text } from '../../../units/quantities';
import { gramsFromMilligrams } from '../../../units/convert';
import { readTypedNumber } from '../../../units/typedNumber';
import { refuse } from '../../../base/values';
import { column, defineFunction, fields, value } from '../../../functions/define';
import { choice, num, texts } from '../../../functions/params';

export const formalinVolume = defineFunction({
  id: 'FORMALIN.VOLUME',
  family: 'Brood fish',
  summary: 'Millilitres of formalin solution for a 15-minute egg bath; stops at strengths that kill.',
  params: {
    volume: num(litre, { above: 0, max: 1e6, doc: 'Water of the bath.' }),
    strength: num(mgPerLitre, {
      above: 0,
      max: 10_000,
      doc: 'Milligrams of formalin solution per litre of bath.',
    }),
    stage: choice(['eggs', 'fry'], {
      default: 'eggs',
      aliases: { egg: 'eggs', larvae: 'fry' },
      doc: 'What is bathed.',
    }),
    minutes: num(minutes, {
      above: 0,
      max: 1440,
      default: 15,
      doc: 'Length of the bath; the trials used 15 minutes.',
    }),
  },
  returns: value(millilitre, 'Formalin solution as bought (37 %).'),
  valid:
    'Eggs of African catfish, up to 250 mg/L for 15 minutes; better none. 500 mg/L and more killed every egg',
  sources: ['EGGFORMALIN10', 'ANTIFUNGUS', 'FORMALINDENS'],
  cautions: ['FORMALIN', 'BATH', 'BANNED', 'RESIDUES'],
  questions: ['how many ml of formalin', 'formalin for eggs', 'formalin dose in ml'],
  help:
    'Grams over 1.09 g/mL (recalled). A label dose for all fish eggs, 1,000 to 2,000 µL/L for ' +
    '15 minutes, kills every egg of this fish. Never with permanganate.',
  examples: [
    { args: [20, 100], gives: '1.83', because: '2.00 g at 1.09 g/mL.' },
    {
      args: [20, 1000],
      fails: { code: '#N/A', says: 'kills Clarias eggs' },
      because: 'The label dose of other fish.',
    },
    {
      args: [20, 100, 'fry'],
      fails: { code: '#N/A', says: 'vet' },
      because: 'Nothing safe was published for fry.',
    },
  ],
  compute: ({ volume, strength, stage, minutes: given }) =>
    formalinStop(strength, stage, given) ??
    gramsFromMilligrams(gramsAt(volume, strength)) / FORMALIN_GRAMS_PER_ML,
});

const UNITS = ['°C', 'g', 'kg', 'mg', 'L', 'mL', 'cm', 'mm', 'm', 'h', 'd', 'meq/L'] as const;
export const unitRead = defineFunction({
  id: 'UNIT.READ',
  family: 'Checks',
  summary: 'Reads a number with its unit as people write it, 81 F, 20 gal, 3 lb, and gives it in your unit.',
  params: {
    typed: texts({ doc: 'What was written: 81 F, 20 gal, 2.5 lb, 12 oz, 3 ft, 4 in, 900 g.' }),
    unit: choice(UNITS, {
      doc: 'The unit wanted.',
      aliases: { c: '°C', celsius: '°C', l: 'L', litres: 'L', ml: 'mL' },
    }),
  },
  returns: fields(
    { number: column('Number', ratio), understood: column('Understood', text) },
    'The number in the unit wanted, and how it was read.',
  ),
  valid:
    '°F, pounds, ounces, gallons of the United States, inches and feet beside the metric units; exact factors',
  sources: ['DEFINITION'],
  questions: [
    'fahrenheit to celsius',
    'gallons to litres',
    'pounds to grams',
    'inches to cm',
    'convert units',
    'ounces to grams',
    'feet to metres',
  ],
  help:
    'A gallon is that of the United States, 3.785 L; the old British one is 4.546 L. Forms ' +
    'read the same units behind a number.',
  examples: [
    { args: ['81 F', '°C'], gives: [['27.2222', '27.222222 °C']], because: '(81 − 32) × 5/9.' },
    { args: ['20 gal', 'L'], gives: [['75.70824', '75.708236 L']], because: '3.785411784 L each.' },
    { args: ['2.5 lb', 'kg'], gives: [['1.13398', '1.133981 kg']], because: '453.59237 g each.' },
    {
      args: ['20 gal', '°C'],
      fails: { code: '#VALUE!', says: 'is no unit of °C' },
      because: 'A volume is no temperature.',
    },
    { args: ['soon', 'L'], fails: { code: '#VALUE!', says: 'no number' }, because: 'Nothing to read.' },
  ],
  compute: ({ typed, unit }) => {
    const written = typed[0] ?? '';
    const read = readTypedNumber(written, { unit });
    if (read.kind === 'number') return { number: read.value, understood: read.understood };
    if (read.kind === 'open')
      return refuse(
        `typed: "${written}" can be ${read.readings[0]} or ${read.readings[1]}. Write it without marks of thousands.`,
      );
    return read.kind === 'none' && read.unit !== undefined && read.unit !== ''
      ? refuse(`typed: "${read.unit}" is no unit of ${unit}. Write a number and its unit, 81 F or 20 gal.`)
      : refuse(`typed: there is no number in "${written}". Write a number and its unit, 81 F or 20 gal.`);
  },
});
