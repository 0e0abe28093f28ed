import {
  effectiveContributors,
  effectiveNumber,
  evenShares,
  inbreedingAfter,
  inbreedingRate,
  malesForEffective,
} from '../kernels/inbreeding';
import { amount, count, ratio, share, text } from '../../../units/quantities';
import { noSolution, outside } from '../../../base/values';
import { column, defineFunction, fields, rows, value } from '../../../functions/define';
import { num, series, texts } from '../../../functions/params';

const females = num(count, { min: 1, max: 1e6, whole: true, doc: 'Females whose offspring are kept.' });
const males = num(count, { min: 1, max: 1e6, whole: true, doc: 'Males whose offspring are kept.' });
const already = num(share, { min: 0, max: 1, default: 0, doc: 'Inbreeding of the stock already, if known.' });
const VALID =
  'Every parent contributes about alike; not where the same males are used again and ' +
  'again, and pooled milt counts as fewer males';
const HELP =
  'Advice: keep the rate at 0.5 to 1 % per generation, that is 25 of each sex for 1 % ' +
  'and 50 of each for 0.5 %; Ne of 50 for a short time, 500 for a long one. ' +
  ('Choosing the best makes it worse than the formula: 50 pairs or more with 30 to 50 ' +
    'offspring each keep about 1 %, too few pairs 6 to 8 %. ') +
  ('One generation of full sibs cost trout up to half of the hatch. Each male is used ' +
    'once, so males usually set the limit.');

export const breedersEffective = defineFunction({
  id: 'BREEDERS.EFFECTIVE',
  family: 'Brood fish',
  summary: 'Effective number of parents (Ne) from numbers of females and males.',
  questions: ['effective population size', 'too related', 'genetic', 'brother and sister dey mate'],
  params: { females, males, inbreeding: already },
  returns: value(ratio, 'Parents the stock behaves as if it had, half of each sex.'),
  valid: VALID,
  sources: ['SALMONIDBOOK', 'NACAINBREED', 'FAO217', 'BUSACK'],
  help: HELP,
  native: '(4*{females}*{males}/({females}+{males})/(1+{inbreeding}))',
  examples: [
    { args: [99, 1], gives: '3.96', because: 'One male for 99 females, as printed.' },
    { args: [2, 2], gives: '4.00', because: 'Two pairs are worth more, as printed.' },
    { args: [10, 0], fails: { code: '#VALUE!', says: '1 to' }, because: 'No males, no offspring.' },
  ],
  compute: (args) => effectiveNumber(args.females, args.males, args.inbreeding),
});

export const inbreedingRateValue = defineFunction({
  id: 'INBREEDING.RATE',
  family: 'Brood fish',
  summary: 'Rise of inbreeding per generation from numbers of females and males.',
  questions: [
    'rise of inbreeding each generation',
    'inbreeding from few males',
    'how fast does inbreeding grow',
    'inbreeding',
  ],
  params: { females, males, inbreeding: already },
  returns: value(share, 'Share per generation, 1/(2 Ne).'),
  valid: VALID,
  sources: ['NACAINBREED', 'FAORATE', 'BENTSEN02', 'BUSACK'],
  help: HELP,
  examples: [
    { args: [25, 25], gives: '0.01', because: 'Published: 1 % with 25 of each sex.' },
    { args: [50, 50], gives: '0.005', because: 'Published: 0.5 % with 50 of each sex.' },
    { args: [10, 2], gives: '0.075', because: 'Ne 6.67: two males set the limit.' },
    { args: [2.5, 2], fails: { code: '#VALUE!', says: 'whole number' }, because: 'Fish come whole.' },
  ],
  compute: (args) => inbreedingRate(effectiveNumber(args.females, args.males, args.inbreeding)),
});

export const inbreedingAfterValue = defineFunction({
  id: 'INBREEDING.AFTER',
  family: 'Brood fish',
  summary: 'Inbreeding of a closed stock after some generations.',
  questions: [
    'inbreeding after some generations',
    'how inbred will my stock be',
    'inbreeding of a closed farm',
    'replacing brood stock',
  ],
  params: {
    females,
    males,
    generations: num(count, { min: 0, max: 1000, whole: true, doc: 'Generations bred within the farm.' }),
    start: num(share, { min: 0, max: 1, default: 0, doc: 'Inbreeding at the start.' }),
  },
  returns: value(share, 'Inbreeding coefficient at the end.'),
  valid: `${VALID}; the same numbers every generation and no new blood`,
  sources: ['NACAINBREED', 'DEFINITION'],
  help: HELP,
  examples: [
    { args: [10, 5, 4], gives: '0.142', because: '3.75 % a generation: 1 − 0.9625⁴.' },
    { args: [10, 5, -1], fails: { code: '#VALUE!', says: 'from 0' }, because: 'Generations go forward.' },
  ],
  compute: (args) =>
    inbreedingAfter(inbreedingRate(effectiveNumber(args.females, args.males)), args.generations, args.start),
});

export const malesForRate = defineFunction({
  id: 'MALES.FORRATE',
  family: 'Brood fish',
  summary: 'Males needed with these females to keep inbreeding below a rate.',
  questions: ['males to keep inbreeding low', 'how many males against inbreeding', 'males for a safe stock'],
  params: {
    females,
    rate: num(share, {
      above: 0,
      max: 0.5,
      default: 0.01,
      doc: 'Highest rise of inbreeding per generation. Advice: 0.5 to 1 %.',
    }),
  },
  returns: value(count, 'Whole males, each with offspring kept.'),
  valid: VALID,
  sources: ['SALMONIDBOOK', 'FAORATE'],
  help: HELP,
  examples: [
    { args: [25], gives: '25', because: 'Ne of 50 for 1 %.' },
    { args: [40], gives: '19', because: '50·40/(160 − 50) = 18.2 males.' },
    {
      args: [10],
      fails: { code: '#NUM!', says: 'females' },
      because: 'Ten females cannot reach Ne 50 with any number of males.',
    },
  ],
  compute: ({ females: f, rate }) => {
    const wanted = malesForEffective(f, 1 / (2 * rate));
    return Number.isNaN(wanted)
      ? noSolution(
          `females: ${f} are too few for this rate whatever the males; more than ${Math.floor(1 / (8 * rate))} are needed.`,
        )
      : wanted;
  },
});

export const lotBreeders = defineFunction({
  id: 'LOT.BREEDERS',
  family: 'Brood fish',
  summary: 'Effective parents of a mass lot: pooled eggs and milt that contribute unequally.',
  questions: ['effective parents of pooled eggs', 'mixed milt of several males', 'parents behind a mass lot'],
  params: {
    eggs: series(amount, {
      above: 0,
      max: 1e10,
      doc: 'Eggs (or grams of eggs) from each female of the lot.',
    }),
    milt: series(amount, {
      above: 0,
      max: 1e10,
      doc: 'Milt from each male of the lot, in mL or as a share of offspring.',
    }),
  },
  returns: fields(
    {
      females: column('Effective females', ratio),
      males: column('Effective males', ratio),
      effective: column('Ne', ratio),
      rate: column('Inbreeding rate', share),
    },
    'Parents that count, and the rise of inbreeding if the next generation comes from this lot alone.',
  ),
  valid: `${VALID}. Equal volumes of milt do not mean equal offspring: one of several males usually dominates (from memory)`,
  sources: ['DEFINITION', 'SALMONIDBOOK', 'NACAINBREED'],
  help:
    'Parents that count = (sum)² ÷ sum of squares. Fertilise the eggs of each female in ' +
    'parts, each with one male, rather than with a mix, and keep alike from every part ' +
    '(SPAWN.LOT.KEEP).',
  examples: [
    {
      args: [
        [[100], [100]],
        [[0.8], [0.1], [0.1]],
      ],
      gives: [['2.000', '1.515', '3.448', '0.145']],
      because: 'One male with 80 % of the offspring counts for half of the others.',
    },
    {
      args: [[[100]], [[0]]],
      fails: { code: '#VALUE!', says: 'above 0' },
      because: 'A male without milt is not in the lot.',
    },
  ],
  compute: ({ eggs, milt }) => {
    const f = effectiveContributors(eggs);
    const m = effectiveContributors(milt);
    const effective = effectiveNumber(f, m);
    return { females: f, males: m, effective, rate: inbreedingRate(effective) };
  },
});

export const lotKeep = defineFunction({
  id: 'LOT.KEEP',
  family: 'Brood fish',
  summary: 'Fish to keep from each lot or family so that all contribute as evenly as they can.',
  questions: [
    'how many to keep from each family',
    'fish to keep from each lot as future brood',
    'even numbers from each lot',
    'keep broodstock from each family',
    'same family fish',
  ],
  params: {
    available: series(count, {
      min: 0,
      max: 1e9,
      whole: true,
      pair: 'lots',
      doc: 'Fish there are in each lot.',
    }),
    wanted: num(count, { min: 1, max: 1e9, whole: true, doc: 'Future brood fish wanted in all.' }),
    lots: texts({ pair: 'lots', optional: true, doc: 'Name of each lot; left out, they are numbered.' }),
  },
  returns: rows(
    { lot: column('Lot', text), available: column('There are', count), keep: column('Keep', count) },
    'One row for each lot.',
  ),
  valid: 'Lots that are one family each; 30 to 50 from each of 50 pairs or more keep inbreeding near 1 %',
  sources: ['BENTSEN02', 'DEFINITION'],
  help:
    'Take them at random from each lot before grading: the largest of a mass lot often ' +
    'have the same few parents.',
  examples: [
    {
      args: [[[400], [12], [300]], 100],
      gives: [
        ['1', '400', '44'],
        ['2', '12', '12'],
        ['3', '300', '44'],
      ],
      because: 'All of the small lot, the rest even.',
    },
    { args: [[[40], [12]], 100], fails: { code: '#N/A', says: '52' }, because: 'There are not that many.' },
  ],
  compute: ({ available, wanted, lots }) => {
    const total = available.reduce((a, b) => a + b, 0);
    if (total < wanted)
      return outside(
        `wanted: ${wanted} fish, but all lots together have ${total}. Ask for that many or fewer.`,
      );
    const kept = evenShares(available, wanted);
    return available.map((n, i) => ({ lot: lots?.[i] || String(i + 1), available: n, keep: kept[i] ?? 0 }));
  },
});
