import { BATH_MINUTES, FORMALIN_KILLS, FORMALIN_TESTED, FRY_SALT_MOST, gramsAt } from '../kernels/treatments';
import { gramsFromMilligrams } from '../../../units/convert';
import { gPerLitre, gram, litre, mgPerLitre, minutes } from '../../../units/quantities';
import type { CellError } from '../../../base/values';
import { outside } from '../../../base/values';
import { defineFunction, value } from '../../../functions/define';
import { choice, num } from '../../../functions/params';

const water = num(litre, { above: 0, max: 1e6, doc: 'Water of the bath.' });
const time = num(minutes, {
  above: 0,
  max: 1440,
  default: BATH_MINUTES,
  doc: 'Length of the bath; the trials used 15 minutes.',
});
const VET = 'Ask a vet.';

const tooLong = (given: number): CellError =>
  outside(
    `minutes: ${given} min; the trials used ${BATH_MINUTES} minutes and nothing longer is known to be safe. ${VET}`,
  );

export function formalinStop(strength: number, stage: 'eggs' | 'fry', given: number): CellError | undefined {
  if (stage === 'fry')
    return outside(
      `stage: no formalin strength was found published as safe for fry of African catfish. ${VET}`,
    );
  if (strength >= FORMALIN_KILLS)
    return outside(
      `strength: ${strength} mg/L kills Clarias eggs: 500, 750 and 1000 mg/L for 15 minutes left none alive (J. Appl. Sci. Environ. Manage. 14(4), 2010). Doses for trout eggs are that strong; do not copy them. ${VET}`,
    );
  if (strength > FORMALIN_TESTED)
    return outside(
      `strength: ${strength} mg/L was never tried on Clarias eggs; 50 to 250 mg/L was, and 500 mg/L killed all (J. Appl. Sci. Environ. Manage. 14(4), 2010). ${VET}`,
    );
  return given > BATH_MINUTES ? tooLong(given) : undefined;
}

export const formalinDose = defineFunction({
  id: 'FORMALIN.DOSE',
  family: 'Brood fish',
  summary: 'Grams of formalin solution for a 15-minute egg bath; stops at strengths that kill.',
  questions: [
    'formalin for eggs',
    'fungus on eggs treatment',
    'how many ml formalin for 1000 litres',
    'fungus on my eggs',
    'formaline dose',
    'fungus dey my egg',
  ],
  params: {
    volume: water,
    strength: num(mgPerLitre, {
      above: 0,
      max: 10_000,
      doc: 'Milligrams of formalin solution (37 % formaldehyde) per litre of bath.',
    }),
    stage: choice(['eggs', 'fry'], {
      doc: 'What is bathed.',
      aliases: { egg: 'eggs', larvae: 'fry' },
      default: 'eggs',
    }),
    minutes: time,
  },
  returns: value(gram, 'Formalin solution as bought, by weight.'),
  valid: 'Eggs of African catfish, up to 250 mg/L for 15 minutes. 500 mg/L and more killed every egg',
  sources: ['EGGFORMALIN10', 'ANTIFUNGUS', 'TROUTFORMALIN'],
  cautions: ['FORMALIN', 'BATH'],
  help:
    'One trial found fewer eggs hatched than untreated at every strength from 50 to 250 ' +
    'mg/L, another had its best hatch (70 %) at 250 mg/L: the evidence disagrees, so ' +
    'treat only when fungus is seen. ' +
    ('Strength counts the solution as bought; 100 mg/L of it is 37 mg/L formaldehyde. ' +
      'Trout eggs are given 750 to 1667 mg/L, which kills all catfish eggs.'),
  examples: [
    { args: [20, 100], gives: '2.00', because: '20 L at 100 mg/L.' },
    {
      args: [20, 500],
      fails: { code: '#N/A', says: 'kills Clarias eggs' },
      because: 'No egg hatched at 500 mg/L.',
    },
    {
      args: [20, 300],
      fails: { code: '#N/A', says: 'never tried' },
      because: 'Between the tried and the deadly strength.',
    },
    {
      args: [20, 100, 'fry'],
      fails: { code: '#N/A', says: 'vet' },
      because: 'Nothing safe was published for fry.',
    },
  ],
  compute: ({ volume, strength, stage, minutes: given }) =>
    formalinStop(strength, stage, given) ?? gramsFromMilligrams(gramsAt(volume, strength)),
});

export const frySaltDose = defineFunction({
  id: 'FRY.SALT.DOSE',
  family: 'Brood fish',
  summary: 'Grams of salt for a 15-minute bath of catfish fry; stops at strengths that kill.',
  questions: [
    'how much salt can fry stand',
    'salt bath 15 minutes fry',
    'salt treatment for fry safe strength',
    'salt fit kill fry?',
  ],
  params: {
    volume: water,
    strength: num(gPerLitre, { above: 0, max: 400, doc: 'Grams of salt per litre of bath.' }),
    stage: choice(['yolk-sac fry', 'swim-up fry'], {
      doc: 'Age of the fry.',
      aliases: { 'yolk sac fry': 'yolk-sac fry', 'swim up fry': 'swim-up fry' },
    }),
    minutes: time,
  },
  returns: value(gram, 'Plain salt.'),
  version: 2,
  valid: 'African catfish and hybrids from hatch to weaned fry, up to 4 g/L for 15 minutes',
  sources: ['KAWAMURA17', 'GBULUBO98', 'HYBSALT', 'FRYSALT11'],
  cautions: ['BATH'],
  help:
    'Trials kept larvae and fry for days at 2 to 4 g/L; one paper found half dead in a day at 0.6 to 0.7 g/L and ' +
    'stands alone. Try 50 fish for a day first: SPAWN.SALT.CHECK lists every trial. ' +
    'A 3 % bath used on fingerlings of another species is never for fry.',
  examples: [
    { args: [20, 0.5, 'yolk-sac fry'], gives: '10.00', because: '20 L at 0.5 g/L.' },
    { args: [20, 2, 'swim-up fry'], gives: '40.00', because: '20 L at 2 g/L.' },
    {
      args: [20, 5, 'yolk-sac fry'],
      fails: { code: '#N/A', says: '4 g/L' },
      because: 'Stronger than hybrids bear, and no gain for a bath.',
    },
    {
      args: [20, 10, 'swim-up fry'],
      fails: { code: '#N/A', says: '6 g/L' },
      because: 'Half the fry die within two days at 10 g/L.',
    },
    {
      args: [20, 0.5, 'swim-up fry', 60],
      fails: { code: '#N/A', says: '15 minutes' },
      because: 'A bath is short; for days in salted water see SALT.CHECK.',
    },
  ],
  compute: ({ volume, strength, minutes: given }) =>
    strength > FRY_SALT_MOST
      ? outside(
          `strength: ${strength} g/L is too strong for young catfish: 2 to ${FRY_SALT_MOST} g/L was borne for days by all trials but one, 6 g/L killed hybrids, 10 g/L all (SPAWN.SALT.CHECK lists them). ${VET}`,
        )
      : given > BATH_MINUTES
        ? tooLong(given)
        : gramsAt(volume, strength),
});
