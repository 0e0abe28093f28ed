import { STAGES, STAGE_DENSITY, vatsFor } from '../kernels/stockingDensity';
import {
  count,
  kilogramPerCubicMetre,
  litre,
  litreOrSquareMetre,
  ratio,
  share,
  text,
} from '../../../units/quantities';
import { column, defineFunction, fields, value } from '../../../functions/define';
import { choice, num } from '../../../functions/params';
import { fishParam, weightParam } from '../../feeding/records/feed';

const stageParam = choice(STAGES, {
  doc: 'What is stocked: eggs (standing water), fry in tanks, larvae in ponds, fingerlings in ponds.',
  aliases: {
    egg: 'eggs',
    fry: 'fry in tanks',
    'fry in tank': 'fry in tanks',
    larvae: 'larvae in ponds',
    fingerlings: 'fingerlings in ponds',
  },
});
const sizeParam = num(litreOrSquareMetre, {
  above: 0,
  max: 1e7,
  doc: 'Size of one vat in litres (eggs, fry), or of one pond in m² (larvae and fingerlings in ponds).',
});
const densityParam = num(ratio, {
  above: 0,
  max: 10000,
  optional: true,
  doc: 'Your own density, per litre or per m². Left out: the published one for the stage.',
});
const USED = ['YONG08', 'MAKERERE', 'GRAAF95', 'FAO362MONO'];
const HELP =
  'Published densities used when you give none: eggs 480 per litre of standing water ' +
  '(the most), fry in tanks 50 per litre, larvae in fenced ponds 100 per m², ' +
  'fingerlings in ponds 10 per m². SPAWN.STOCKING.STUDIES lists them with what came of ' +
  'them.';

export const stockingNumber = defineFunction({
  id: 'STOCKING.NUMBER',
  family: 'Rearing',
  summary: 'How many eggs or fish a vat or pond may hold, by stage, at the published density or your own.',
  questions: [
    'how many fish can my tank hold',
    'how many fry per litre',
    'overcrowded',
    'how many larvae per litre',
    'stoking density',
    'stockin rate',
    'how many fingerlings for GP tank',
    'how many fish my pond fit carry',
    'how many fry I go put',
  ],
  params: { stage: stageParam, size: sizeParam, density: densityParam },
  returns: value(count, 'Number for one vat or pond.'),
  valid: 'African catfish; clean, aerated water',
  sources: USED,
  help: HELP,
  examples: [
    {
      args: ['eggs', 60],
      gives: '28,800',
      because: 'The published limit for standing water is 480 eggs per litre.',
    },
    { args: ['fry in tanks', 500, 100], gives: '50,000', because: 'Own density of 100 per litre.' },
    {
      args: ['broodfish', 500],
      fails: { code: '#VALUE!', says: 'expected one of' },
      because: 'No density is known for that stage.',
    },
  ],
  compute: ({ stage, size, density }) => Math.floor((density ?? STAGE_DENSITY[stage].density) * size + 1e-9),
});

export const vatsNeeded = defineFunction({
  id: 'VATS.NEEDED',
  family: 'Rearing',
  summary: 'How many vats or ponds a number of eggs or fish needs, by stage.',
  questions: ['how many vats do i need', 'number of tanks for my fry', 'tanks for so many eggs'],
  params: {
    number: num(count, { min: 0, max: 1e12, doc: 'Eggs or fish to place.' }),
    stage: stageParam,
    size: sizeParam,
    density: densityParam,
  },
  returns: value(count, 'Whole vats or ponds.'),
  valid: 'African catfish; clean, aerated water',
  sources: USED,
  help: HELP,
  examples: [
    {
      args: [100000, 'eggs', 60],
      gives: '4',
      because: '100,000 eggs at 480 per litre need 208 L: four vats of 60 L.',
    },
    {
      args: [100000, 'eggs', 0],
      fails: { code: '#VALUE!', says: 'above 0' },
      because: 'A vat of no size holds nothing.',
    },
  ],
  compute: ({ number, stage, size, density }) =>
    vatsFor(number, density ?? STAGE_DENSITY[stage].density, size),
});

export const stockingCheck = defineFunction({
  id: 'STOCKING.CHECK',
  family: 'Rearing',
  summary: 'Is this vat or pond too full? Density, the published one, and a verdict in words.',
  questions: ['is this vat too full', 'too many fry in the tank', 'overstocked', 'tank too full'],
  params: {
    number: num(count, { min: 0, max: 1e12, doc: 'Eggs or fish in it.' }),
    stage: stageParam,
    size: sizeParam,
  },
  returns: fields(
    {
      density: column('Density', ratio),
      published: column('Most recommended', ratio),
      share: column('Of that', share),
      verdict: column('In words', text),
      code: column('Code', text, 'thin, within or above.'),
    },
    'Density, the most a trial recommended, their ratio, and all that the trials saw.',
  ),
  version: 2,
  valid: 'African catfish; clean, aerated water. With flow and oxygen hatcheries hold several times as many',
  sources: [...USED, 'AJANI15', 'LONGIDENS09'],
  examples: [
    {
      args: [36000, 'eggs', 60],
      gives: [
        [
          '600',
          '480',
          '1.25',
          'Above the most any trial recommended, 480 per L (standing water, hatch falls as eggs lie ' +
            'closer; in a jar ' +
            'with 30 changes an hour 5,000 to 15,000 hatched 86 to 90 %).',
          'above',
        ],
      ],
      because: '36,000 eggs in 60 L are 600 per litre.',
    },
    { args: [36000, 'eggs', -1], fails: { code: '#VALUE!', says: 'above 0' }, because: 'A vat has a size.' },
  ],
  compute: ({ number, stage, size }) => {
    const { density: best, most, unit, says } = STAGE_DENSITY[stage];
    const density = number / size;
    const code = density > most ? 'above' : density > best || best === most ? 'within' : 'thin';
    const word = {
      above: `Above the most any trial recommended, ${most} ${unit}`,
      within: `Within what trials recommended, up to ${most} ${unit}${best < most ? `; more live at ${best}` : ''}`,
      thin: `As thin as the best trial or thinner: ${best} ${unit}`,
    }[code];
    return { density, published: most, share: density / most, verdict: `${word} (${says}).`, code };
  },
});

export const weightDensity = defineFunction({
  id: 'DENSITY.WEIGHT',
  family: 'Rearing',
  summary: 'Weight of fish per volume of water, kg per cubic metre.',
  questions: [
    'kg of fish per cubic metre',
    'weight of fish in the vat per litre',
    'biomass density',
    'fish per square meter',
  ],
  params: {
    fish: fishParam,
    weight: weightParam,
    volume: num(litre, { above: 0, max: 1e8, doc: 'Water in the vat.' }),
  },
  returns: value(kilogramPerCubicMetre, 'Weight of fish in a cubic metre of water.'),
  valid: 'Any species; no published limit for African catfish fry was found',
  sources: ['DEFINITION'],
  native: '{fish}*{weight}/{volume}',
  examples: [
    { args: [2000, 5, 1000], gives: '10', because: '10 kg of fish in 1,000 L.' },
    {
      args: [2000, 5, 0],
      fails: { code: '#VALUE!', says: 'blank cell can read as 0' },
      because: 'The volume cell was blank.',
    },
  ],
  // Grams per litre are kilograms per cubic metre.
  compute: ({ fish, weight, volume }) => (fish * weight) / volume,
});
