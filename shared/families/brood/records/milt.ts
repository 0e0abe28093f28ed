import { BEST_SPERM_PER_EGG, diluent, LEAST_SPERM_PER_EGG, malesFor, miltVolume } from '../kernels/milt';
import { count, gram, millilitre, ratio, share, spermPerMillilitre } from '../../../units/quantities';
import { column, defineFunction, fields, value } from '../../../functions/define';
import { num } from '../../../functions/params';

const eggs = num(count, { min: 0, max: 1e10, doc: 'Eggs to fertilise.' });
const spermDensity = num(spermPerMillilitre, {
  min: 1e6,
  max: 1e12,
  doc:
    'Sperm per mL of undiluted milt. Published counts differ ten-fold: 5.6E9 to 6.5E9 ' +
    'and 3.8E10 to 9.7E10.',
});
const spermPerEgg = num(count, {
  above: 0,
  max: 1e6,
  default: BEST_SPERM_PER_EGG,
  doc: 'Sperm for each egg.',
  published: {
    min: LEAST_SPERM_PER_EGG,
    source: 'RURANGWA98',
    because: 'Below 3,000 sperm per egg fertilisation fell (Rurangwa et al. 1998).',
  },
});
const motile = num(share, {
  above: 0,
  max: 1,
  default: 1,
  doc: 'Share of sperm that swim. Published: 40 % in males under 1 kg, 82 % above 1.5 kg.',
});
const VALID =
  'African catfish, 3,000 sperm per egg or more; best at 15,000 (80 % fertilised), ' +
  'more than that partly hinders';
const HELP =
  'Males of African catfish cannot be stripped: the testes are taken, so each male ' +
  'serves once. Use undiluted milt at once: 1.5 to 4 % of sperm lived after 15 minutes ' +
  'at room temperature. ' +
  ('Add water last: activated sperm is best at 20 s and nearly spent at 120 s. Never ' +
    'chill the eggs. When in doubt about the count, take the lower.');

export const milt = defineFunction({
  id: 'MILT.VOLUME',
  family: 'Brood fish',
  summary: 'Millilitres of undiluted milt for a batch of eggs, from sperm per egg.',
  questions: ['how much milt', 'ml of milt per 100 g eggs', 'enough sperm', 'how many male I go kill'],
  params: { eggs, spermDensity, spermPerEgg, motile },
  returns: value(millilitre, 'Undiluted milt.'),
  valid: VALID,
  sources: ['RURANGWA98', 'IDAHOR18', 'SOLOMON15'],
  help: HELP,
  examples: [
    { args: [105000, 5.62e9], gives: '0.28', because: '150 g of eggs at 700 per g; 15,000 sperm each.' },
    { args: [105000, 3.8e10], gives: '0.04', because: 'The same with the ten times higher count.' },
    {
      args: [105000, 5.62e9, 1000],
      fails: { code: '#N/A', says: '3,000 sperm per egg' },
      because: 'Fewer sperm than published.',
    },
    {
      args: [105000, 5.62],
      fails: { code: '#VALUE!', says: '5.62E9' },
      because: 'The count was typed in thousands of millions.',
    },
  ],
  compute: (args) => miltVolume(args.eggs, args.spermPerEgg, args.spermDensity, args.motile),
});

export const malesNeeded = defineFunction({
  id: 'MALES.NEEDED',
  family: 'Brood fish',
  summary: 'Whole number of males whose milt fertilises a batch of eggs.',
  questions: [
    'how many males do i need',
    'males for so many eggs',
    'number of males to kill',
    'how many males',
  ],
  params: {
    eggs,
    spermDensity,
    miltPerMale: num(millilitre, {
      above: 0,
      max: 200,
      doc: 'Milt one male gives. Published: 0.21 to 1.3 mL at 0.57 kg, 2.2 mL at 1.2 kg.',
    }),
    spermPerEgg,
    motile,
  },
  returns: value(count, 'Males, at least one.'),
  valid: VALID,
  sources: ['RURANGWA98', 'IDAHOR18', 'SOLOMON15', 'SAIDU21'],
  help: `${HELP} This is the number for the eggs, not for the stock: few males raise inbreeding faster than few females do, see SPAWN.INBREEDING.RATE.`,
  examples: [
    { args: [1050000, 5.62e9, 1], gives: '3', because: '2.80 mL at 1 mL a male.' },
    { args: [105000, 5.62e9, 2.2], gives: '1', because: '0.28 mL from a male that gives 2.2 mL.' },
    {
      args: [105000, 5.62e9, 0],
      fails: { code: '#VALUE!', says: 'above 0' },
      because: 'A male without milt serves none.',
    },
  ],
  compute: (args) =>
    malesFor(miltVolume(args.eggs, args.spermPerEgg, args.spermDensity, args.motile), args.miltPerMale),
});

export const miltDiluent = defineFunction({
  id: 'MILT.DILUENT',
  family: 'Brood fish',
  summary: 'Salt water to keep or spread milt in: millilitres and grams of salt.',
  questions: [
    'saline for milt',
    'dilute sperm',
    'salt water for mixing eggs and sperm',
    'salt water to mix sperm',
  ],
  params: {
    volume: num(millilitre, { min: 0, max: 10_000, doc: 'Undiluted milt.' }),
    parts: num(ratio, { above: 0, max: 1000, default: 5, doc: 'Parts of diluent to one part of milt.' }),
  },
  returns: fields(
    {
      diluent: column('Diluent', millilitre),
      salt: column('Salt', gram, 'Plain sodium chloride without additives.'),
    },
    'Diluent of 9 g salt per litre.',
  ),
  valid:
    'Milt was kept 1:5 at 4 °C in a medium with 150 mM sodium chloride (8.8 g/L) and ' +
    'other salts; plain 0.9 % salt water is the simple stand-in',
  sources: ['MANSOUR04'],
  help:
    'Fresh water in the milt starts the sperm and spends it: dry the tube, the testes ' +
    'and the fish. Add water only over eggs and milt together.',
  examples: [
    { args: [2], gives: [['10.00', '0.09']], because: '1:5, at 9 g/L.' },
    { args: [-1], fails: { code: '#VALUE!', says: 'from 0' }, because: 'No volume is below zero.' },
  ],
  compute: ({ volume, parts }) => {
    const made = diluent(volume, parts);
    return { diluent: made.volume, salt: made.salt };
  },
});
