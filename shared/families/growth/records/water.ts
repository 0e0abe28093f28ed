// Long: records of one subject, each with its texts, questions and examples.
import {
  ammoniaFromFeed,
  dryShareAt,
  nitrogenNotKept,
  oxygenPerFish,
} from '../../feeding/kernels/metabolism';
import { flowForAmmonia, flowForOxygen } from '../../feeding/kernels/waterFlow';
import { milligramsFromGrams } from '../../../units/convert';
import {
  celsius,
  gram,
  gramPerDay,
  litrePerMinute,
  mgPerLitre,
  milligramPerHour,
  pH,
  ratio,
  share,
} from '../../../units/quantities';
import { noSolution, outside } from '../../../base/values';
import { ammoniaFraction } from '../../water/kernels/ammonia';
import { column, defineFunction, fields, value } from '../../../functions/define';
import { num } from '../../../functions/params';
import { fishParam, weightParam } from '../../feeding/records/feed';

export const dryMatterParam = num(share, {
  min: 0.05,
  max: 0.5,
  optional: true,
  doc: 'Dry matter of the fish. Left out: by weight, 12% in larvae, 18% at 1 g, 25% from 50 g (assumed).',
});
/** Dry share given, or the one assumed for the weight in g. */
export const dryShareOr = (given: number | undefined, grams: number): number =>
  given ?? dryShareAt(milligramsFromGrams(grams));
const feedParam = num(gram, { min: 0, max: 1e9, doc: 'Feed given in a day.' });
export const LINE_HELP =
  "The paper's abstract prints both ends of a straight line on logarithms, for 0.07 mg " +
  'and 38 g of dry body weight at 28 °C; the line between them is drawn here. Warmer ' +
  'water raises it, cooler water lowers it: no correction is made.';
export const beyondLine = (weight: number, dryMatter: number) =>
  outside(
    `weight: ${weight} g at ${Math.round(dryMatter * 100)} % dry matter is outside what was published (0.07 mg to 38 g of dry weight, Conceicao et al. 1998). Measure your own fish.`,
  );

export const oxygenUse = defineFunction({
  id: 'OXYGEN.USE',
  version: 2,
  family: 'Rearing',
  summary: 'Oxygen that growing African catfish use in an hour, by number and weight, at 28 °C.',
  questions: ['how much oxygen do my fish use', 'does feed use up oxygen', 'oxygen go reach my fish?'],
  params: { fish: fishParam, weight: weightParam, dryMatter: dryMatterParam },
  returns: value(milligramPerHour, 'Oxygen used by all the fish in an hour.'),
  valid: '0.07 mg to 38 g dry body weight, 28 °C, well fed and growing',
  sources: ['CONC98', 'DRYMATTER'],
  help: `${LINE_HELP} Small catfish take more than 85 % of their oxygen from the water: breathing air does not save fry.`,
  examples: [
    {
      args: [1000, 0.05],
      gives: '68.2',
      because: 'A thousand fry of 50 mg, 14 % dry: 1.36 mg a gram and hour.',
    },
    {
      args: [1000, 2, 0.25],
      gives: '1,616',
      because: 'Between the two published ends: 0.101 µmol per mg and hour at 500 mg dry weight.',
    },
    {
      args: [1000, 200],
      fails: { code: '#N/A', says: 'outside what was published' },
      because: '200 g is beyond 38 g of dry weight.',
    },
  ],
  compute: ({ fish, weight, dryMatter }) => {
    const dry = dryShareOr(dryMatter, weight);
    const use = oxygenPerFish(milligramsFromGrams(weight * dry));
    return Number.isNaN(use) ? beyondLine(weight, dry) : fish * use;
  },
});

export const oxygenForFeed = defineFunction({
  id: 'OXYGEN.FORFEED',
  family: 'Rearing',
  summary: "Oxygen that a day's feed takes out of the water in the end: fish, bacteria and wastes together.",
  questions: ['oxygen that feed uses', 'how much oxygen does feeding take', 'air needed for the feed'],
  params: {
    feed: feedParam,
    perGram: num(ratio, {
      above: 0,
      max: 5,
      default: 1.25,
      doc: 'Oxygen per weight of feed: 1.25 if left out (Boyd, for general use).',
    }),
  },
  returns: value(gramPerDay, 'Oxygen in a day.'),
  valid: 'Ponds and vats where wastes rot in the same water',
  sources: ['BOYDFEED'],
  help:
    'Larger than what the fish breathe, because uneaten feed and wastes rot. Remove ' +
    'wastes and the water is spared part of it.',
  native: '{feed}*{perGram}',
  examples: [
    { args: [1000], gives: '1,250', because: '1.25 kg of oxygen per kg of feed.' },
    { args: [-5], fails: { code: '#VALUE!', says: 'got −5' }, because: 'Feed cannot be negative.' },
  ],
  compute: ({ feed, perGram }) => feed * perGram,
});

export const ammoniaMade = defineFunction({
  id: 'AMMONIA.MADE',
  family: 'Rearing',
  summary: "Total ammonia nitrogen that a day's feed puts into the water, and the most it could be.",
  questions: [
    'how much ammonia does the feed make',
    'ammonia from feeding',
    'does more feed mean more ammonia',
    'how much ammonia from feed',
  ],
  params: {
    feed: feedParam,
    protein: num(share, { above: 0, max: 0.9, doc: 'Protein in the feed, from the bag: 45% or 0.45.' }),
    coefficient: num(ratio, {
      above: 0,
      max: 0.16,
      default: 0.092,
      doc:
        'Ammonia nitrogen per weight of protein fed: 0.092 if left out (from memory, ' +
        'recirculating systems).',
    }),
    kept: num(share, {
      min: 0,
      max: 0.6,
      default: 0.2,
      doc: 'Share of the nitrogen that stays in the fish: 20% if left out (published 20 to 30% in ponds).',
    }),
  },
  returns: fields(
    { made: column('Ammonia nitrogen', gramPerDay), most: column('At most', gramPerDay) },
    'Usual amount, and all nitrogen that does not stay in the fish.',
  ),
  valid: 'Feed that is eaten; rotting leftovers add to it',
  sources: ['TIMM10', 'BOYDFEED', 'DEFINITION'],
  cautions: ['AMMONIA'],
  help:
    'Usual: feed × protein × 0.092, a coefficient recalled from a textbook, not looked ' +
    'up. At most: protein is 16 % nitrogen, and whatever does not stay in the fish ends ' +
    'in the water, part of it as solids.',
  examples: [
    {
      args: [1000, 0.45],
      gives: [['41.4', '57.6']],
      because: '1,000 × 0.45 × 0.092; and 1,000 × 0.45 × 0.16 × 0.8.',
    },
    { args: [1000, 45], fails: { code: '#VALUE!', says: '45%' }, because: 'Excel stores 45 % as 0.45.' },
  ],
  compute: ({ feed, protein, coefficient, kept }) => ({
    made: ammoniaFromFeed(feed, protein, coefficient),
    most: nitrogenNotKept(feed, protein, kept),
  }),
});

export const flowOxygen = defineFunction({
  id: 'FLOW.OXYGEN',
  family: 'Rearing',
  summary: 'Water flow that brings the fish their oxygen.',
  questions: [
    'flow to bring enough oxygen',
    'flow to bring oxygen for fish',
    'how much fresh water do fish need',
  ],
  params: {
    use: num(milligramPerHour, {
      min: 0,
      max: 1e12,
      doc: 'Oxygen used in an hour (SPAWN.OXYGEN.USE, or your own measurement).',
    }),
    inflow: num(mgPerLitre, { min: 0, max: 30, doc: 'Oxygen in the water coming in.' }),
    outflow: num(mgPerLitre, {
      min: 0,
      max: 30,
      default: 5,
      doc: 'Least oxygen you allow in the water going out: 5 mg/L if left out.',
    }),
  },
  returns: value(litrePerMinute, 'Flow.'),
  valid: 'Well-mixed vat without aeration',
  sources: ['DEFINITION', 'MODULE7'],
  native: '{use}/({inflow}-{outflow})/60',
  examples: [
    { args: [6000, 7.8], gives: '35.7', because: '6,000 mg/h ÷ 2.8 mg/L ÷ 60 min.' },
    {
      args: [6000, 4.5],
      fails: { code: '#NUM!', says: 'Aerate' },
      because: 'Water poorer than the limit cannot supply anything.',
    },
  ],
  compute: ({ use, inflow, outflow }) => {
    const flow = flowForOxygen(use, inflow, outflow);
    return Number.isNaN(flow)
      ? noSolution(
          `The water coming in holds ${inflow} mg/L, no more than the ${outflow} mg/L allowed going out: no flow is enough. Aerate it first.`,
        )
      : flow;
  },
});

export const flowAmmonia = defineFunction({
  id: 'FLOW.AMMONIA',
  family: 'Rearing',
  summary: 'Water flow that keeps toxic ammonia below the limit, from the ammonia made, pH and temperature.',
  questions: [
    'flow to keep ammonia low',
    'water flow against ammonia',
    'litres a minute to wash out ammonia',
  ],
  params: {
    made: num(gramPerDay, {
      min: 0,
      max: 1e9,
      doc: 'Total ammonia nitrogen made in a day (SPAWN.AMMONIA.MADE).',
    }),
    ph: num(pH, { min: 3, max: 12, doc: 'pH in the vat.' }),
    temperature: num(celsius, { min: 0, max: 50, doc: 'Water temperature.' }),
    limit: num(mgPerLitre, {
      above: 0,
      max: 2,
      default: 0.34,
      doc:
        'Highest un-ionised ammonia nitrogen: 0.34 mg/L if left out, found for catfish of ' +
        '141 g. Larvae may need less.',
    }),
    inflow: num(mgPerLitre, {
      min: 0,
      max: 100,
      default: 0,
      doc: 'Total ammonia nitrogen in the water coming in: none if left out.',
    }),
  },
  returns: value(litrePerMinute, 'Flow.'),
  valid: 'Well-mixed fresh water without a filter that removes ammonia',
  sources: ['DEFINITION', 'SCHR10', 'EMER75'],
  cautions: ['AMMONIA'],
  examples: [
    {
      args: [41.4, 8, 28],
      gives: '5.53',
      because: 'At pH 8 and 28 °C 6.54 % is toxic, so total ammonia may reach 5.20 mg/L.',
    },
    {
      args: [41.4, 8, 28, 0.34, 6],
      fails: { code: '#NUM!', says: 'already' },
      because: 'The inflow is above the total allowed.',
    },
  ],
  compute: ({ made, ph, temperature, limit, inflow }) => {
    const total = limit / ammoniaFraction(temperature, ph);
    const flow = flowForAmmonia(made, total, inflow);
    return Number.isNaN(flow)
      ? noSolution(
          `The water coming in holds ${inflow} mg/L, already at the ${total.toFixed(2)} mg/L of total ammonia allowed at this pH and temperature. Lower the pH or use other water.`,
        )
      : flow;
  },
});
