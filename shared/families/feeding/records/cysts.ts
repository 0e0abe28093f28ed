import { cystsNeeded } from '../kernels/cystsNeeded';
import { count, gram, perGram, share } from '../../../units/quantities';
import { defineFunction, value } from '../../../functions/define';
import { num } from '../../../functions/params';

/** Nauplii per gram of dry cysts of one published strain: KKT1. */
export const NAUPLII_PER_GRAM = 230600;

export const naupliiPerGramParam = num(perGram, {
  min: 1000,
  max: 400000,
  default: NAUPLII_PER_GRAM,
  doc:
    'Hatching efficiency, nauplii per gram of dry cysts: 230,600 (one published strain) ' +
    'if left out. Measure your own tin with SPAWN.CYSTS.EFFICIENCY.',
});
export const harvestParam = num(share, {
  above: 0,
  max: 1,
  default: 0.8,
  doc: 'Share of the hatched nauplii that reach the larvae: 80% if left out (common practice, no source).',
});

export const cystsForLarvae = defineFunction({
  id: 'CYSTS.NEEDED',
  family: 'Rearing',
  summary: 'Dry Artemia cysts to hatch for one day of live food.',
  questions: [
    'how much artemia to hatch',
    'how many tins',
    'how much brine shrimp',
    'artamia quantity',
    'artimia',
    'how many spoon artemia for 50k fry',
    'tin of artemia for how many fry',
    'artemia for 50k fry',
  ],
  params: {
    larvae: num(count, { min: 0, max: 1e10, doc: 'Larvae to feed.' }),
    naupliiPerLarva: num(count, {
      above: 0,
      max: 20000,
      doc: 'Nauplii per larva per day. Your own figure: no published rate for African catfish was found.',
    }),
    naupliiPerGram: naupliiPerGramParam,
    harvest: harvestParam,
  },
  returns: value(gram, 'Dry cysts to put in to hatch.'),
  valid: 'Fresh nauplii fed within hours; a day older they have lost a quarter or more of their energy',
  sources: ['DEFINITION', 'ASEM13', 'KKT1', 'LAVENS96', 'PRACTICE'],
  help:
    'larvae × nauplii per larva ÷ (nauplii per gram × harvest share). Good tins give ' +
    '200,000 to 300,000 nauplii per gram (from memory of FAO Paper 361); one published ' +
    'strain gave 230,600.',
  native: '{larvae}*{naupliiPerLarva}/({naupliiPerGram}*{harvest})',
  examples: [
    {
      args: [50000, 100, 230600, 1],
      gives: '21.68',
      because: '5 million nauplii at 230,600 per gram, all caught.',
    },
    {
      args: [50000, 100, 230600, 0.8],
      gives: '27.1',
      because: 'With 80 % caught a quarter more cysts are needed.',
    },
    {
      args: [50000, 100, 230.6],
      fails: { code: '#VALUE!', says: 'naupliiPerGram' },
      because: 'Nauplii per milligram was typed.',
    },
  ],
  compute: ({ larvae, naupliiPerLarva, naupliiPerGram, harvest }) =>
    cystsNeeded(larvae, naupliiPerLarva, naupliiPerGram, harvest),
});
