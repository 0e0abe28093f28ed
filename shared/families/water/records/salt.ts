import { celsius, gPerLitre, gram, litre, microsiemens, share } from '../../../units/quantities';
import { refuse } from '../../../base/values';
import { MG_SALT_PER_MICROSIEMENS, saltGrams } from '../kernels/salt';
import { defineFunction, value } from '../../../functions/define';
import { num } from '../../../functions/params';

export const saltDose = defineFunction({
  id: 'SALT.DOSE',
  family: 'Water',
  summary: 'Grams of salt for a wished strength in a vat, a wash for sticky eggs or a bath.',
  questions: [
    'how much salt to add',
    '3 g per litre salt',
    'how many kg salt for 1000 litres',
    'salt for egg wash',
    '0.9% saline',
    'how much salt I go put',
  ],
  params: {
    volume: num(litre, { above: 0, max: 1e7, doc: 'Water to be salted.' }),
    wanted: num(gPerLitre, { min: 0, max: 300, doc: 'Salt wanted. 0.5 % is 5 g/L.' }),
    present: num(gPerLitre, { min: 0, max: 300, default: 0, doc: 'Salt in the water now. 0 when left out.' }),
    purity: num(share, { above: 0, max: 1, default: 1, doc: 'Share of the product that is salt.' }),
  },
  returns: value(gram, 'Plain salt, without iodide or anti-caking agent by custom.'),
  valid:
    'Exact to 1.6 % up to 30 g/L, where the water swells by the salt; it says nothing ' +
    'about what fish bear (SALT.CHECK)',
  sources: ['DEFINITION', 'GBULUBO98', 'KAWAMURA17', 'HYBSALT', 'FRYSALT11'],
  cautions: ['BATH'],
  help:
    'Before salting water with eggs or fry look at SALT.CHECK and SALT.LIMITS: 2 to 4 g/L is borne by most larvae, ' +
    'one paper found half dead at 0.7.',
  examples: [
    { args: [20, 0.5], gives: '10.0', because: '20 L at half a gram per litre.' },
    { args: [1000, 5, 1, 0.95], gives: '4211', because: 'Four grams per litre more, salt of 95 %.' },
    {
      args: [1000, 1, 5],
      fails: { code: '#VALUE!', says: 'already' },
      because: 'Salt cannot be taken out by adding.',
    },
  ],
  compute: ({ volume, wanted, present, purity }) =>
    wanted < present
      ? refuse(
          `wanted: the water already holds ${present} g/L, more than ${wanted}. Exchange water (EXCHANGE.VOLUME).`,
        )
      : saltGrams(volume, wanted, present, purity),
});

export const saltFromConductivity = defineFunction({
  id: 'SALT.CONTENT',
  family: 'Water',
  summary: 'Salt in fresh water from the rise of its conductivity, g/L.',
  questions: ['salt from conductivity', 'check salt with TDS meter', 'tds to salt'],
  params: {
    reading: num(microsiemens, {
      min: 0,
      max: 100000,
      doc: 'Conductivity with the salt, at 20 °C.',
      published: {
        max: 950,
        source: 'WATERUNITS',
        because: 'The factor holds for weak salt, up to 0.5 g/L; weigh the salt in above that.',
      },
    }),
    before: num(microsiemens, {
      min: 0,
      max: 100000,
      default: 0,
      doc: 'Conductivity of the water before salting. 0 when left out.',
    }),
    temperature: num(celsius, {
      min: 0,
      max: 40,
      default: 20,
      doc: 'Temperature the readings refer to: 20, or 25 for a meter that compensates to 25.',
    }),
  },
  returns: value(gPerLitre, 'Salt.'),
  valid: 'Sodium chloride up to 0.5 g/L; 2 % per °C from memory',
  sources: ['WATERUNITS', 'ECMEM'],
  examples: [
    { args: [800], gives: '0.42', because: '0.53 mg/L for each µS/cm at 20 °C.' },
    { args: [5000], fails: { code: '#N/A', says: '0.5 g/L' }, because: 'Too strong for the factor.' },
  ],
  compute: ({ reading, before, temperature }) =>
    (Math.max(0, reading - before) * MG_SALT_PER_MICROSIEMENS) / 1000 / (1 + 0.02 * (temperature - 20)),
});
