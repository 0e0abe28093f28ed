// Long: records of one subject, each with its texts, questions and examples.
import { femalesFor, femalesInSeasons } from '../odds/femalesNeeded';
import { rangeOf, shareReaching } from '../../../maths/quantiles';
import type { SeasonChain, StageSpread } from '../odds/simulate';
import { simulateSeason } from '../odds/simulate';
import { count, ratio, share } from '../../../units/quantities';
import type { CellError } from '../../../base/values';
import { isError, noSolution, refuse } from '../../../base/values';
import { column, defineFunction, fields, value } from '../../../functions/define';
import { num, series } from '../../../functions/params';
import { writtenNumber } from '../../../units/writtenNumber';

const females = num(count, { min: 0, max: 5000, whole: true, doc: 'Females injected over all runs.' });
const eggsEach = num(count, { above: 0, max: 1e7, doc: 'Eggs expected of one female that gives eggs.' });
const chain = {
  shares: series(share, {
    above: 0,
    max: 1,
    pair: 'stage',
    doc: 'Share expected to come through each stage: hatch, survival to first feed, to fry, to fingerlings.',
  }),
  spreads: series(share, {
    min: 0,
    max: 0.5,
    pair: 'stage',
    doc:
      'How much each share varies from run to run: the standard deviation of your past ' +
      'runs (0.15 is 15 points).',
  }),
  eggSpread: num(ratio, {
    min: 0,
    max: 2,
    default: 0.3,
    doc:
      'How much eggs vary between females: standard deviation of the natural logarithm, ' +
      'near to the deviation as a share of the mean.',
  }),
  spawning: num(share, {
    above: 0,
    max: 1,
    default: 1,
    doc: 'Share of injected females that give eggs. Published: 87.5 to 100 %.',
  }),
  runs: num(count, {
    min: 1,
    max: 200,
    default: 1,
    whole: true,
    doc: 'Runs the females are spread over evenly. More runs, less luck.',
  }),
  alike: num(share, {
    min: 0,
    max: 1,
    default: 0.3,
    doc:
      'Part of the variation that all runs of a season share (same water, same brood ' +
      'fish). 0: every run for itself; 1: all runs come out alike.',
  }),
  seed: num(count, {
    min: 0,
    max: 4294967295,
    default: 1,
    whole: true,
    doc:
      'The same seed gives the same draws everywhere; another seed shows how much of the ' +
      'answer is chance of drawing.',
  }),
};
interface Chain {
  readonly shares: readonly number[];
  readonly spreads: readonly number[];
  readonly eggSpread: number;
  readonly spawning: number;
  readonly runs: number;
  readonly alike: number;
  readonly seed: number;
}

/** Enough that P10 and P90 of a sheet stand within about two parts in a hundred. */
const DRAWS = 4000;

/** A share of m cannot vary by more than √(m(1 − m)); a beta distribution needs less. */
function stagesOf({ shares, spreads, alike }: Chain): readonly StageSpread[] | CellError {
  for (const [i, mean] of shares.entries()) {
    const most = Math.sqrt(mean * (1 - mean));
    const got = spreads[i] ?? 0;
    if (mean < 1 && got >= 0.95 * most)
      return refuse(
        `spreads, row ${i + 1}: expected less than ${(0.95 * most).toPrecision(3)}, the most a share of ${mean} can vary, got ${got}.`,
      );
  }
  return shares.map((mean, i) => ({
    mean,
    runs: (spreads[i] ?? 0) * Math.sqrt(1 - alike),
    season: (spreads[i] ?? 0) * Math.sqrt(alike),
  }));
}

function totals(fish: number, eggs: number, args: Chain): Float64Array | CellError {
  const stages = stagesOf(args);
  if (isError(stages)) return stages;
  const runs = Math.max(1, Math.min(args.runs, fish));
  const season: SeasonChain = {
    stages,
    orders: 1,
    ovulating: args.spawning,
    lost: 0,
    eggs: { females: args.eggSpread, runs: 0, season: 0 },
    runs: Array.from({ length: runs }, (_, r) => ({
      order: 0,
      stages: stages.map((__, i) => i),
      eggs: Array.from({ length: Math.floor(fish / runs) + (r < fish % runs ? 1 : 0) }, () => eggs),
    })),
  };
  return (simulateSeason(season, DRAWS, args.seed)[0] ?? new Float64Array(0)).sort();
}

const valid =
  'Any species; as good as the shares and spreads: take them from your own runs. ' +
  'Stages vary independently of each other within a run';
const help =
  'Shares follow beta distributions, eggs of females a log-normal one; 4,000 seasons ' +
  'are drawn from the seed, so the answer stays the same until an input changes. ' +
  'Published hatch runs from 28 to 59 % with the season alone: a plan on the mean is ' +
  'kept about every second time.';
const tooWild = 'A share of 0.9 cannot vary by half.';

export const seasonOdds = defineFunction({
  id: 'SEASON.ODDS',
  family: 'Plan and money',
  summary: 'Fish to expect from a number of females: poor, middling and good season (P10, P50, P90).',
  questions: ['chance to deliver 50000', 'poor season good season', 'P10 P90', 'I fit promise am?'],
  params: { females, eggsPerFemale: eggsEach, ...chain },
  returns: fields(
    {
      p10: column('One season in ten is below', count),
      p50: column('Half are below', count),
      p90: column('Nine in ten are below', count),
    },
    'Fish at the end of the chain.',
  ),
  valid,
  help,
  sources: ['DEFINITION', 'GRAAF95', 'BRZUSKA03', 'PRACTICE'],
  examples: [
    {
      args: [4, 60000, 0.5, 0, 0],
      gives: [['119681', '120003', '120317']],
      because:
        'Nothing varies but single eggs: 120,000 with a deviation of √(240,000 · ½ · ½) = ' +
        '245, by which P10 and P90 lie 1.28 off.',
    },
    {
      args: [4, 60000, 0.9, 0.5],
      fails: { code: '#VALUE!', says: 'the most a share of 0.9' },
      because: tooWild,
    },
  ],
  compute: ({ females: fish, eggsPerFemale, ...rest }) => {
    const drawn = totals(fish, eggsPerFemale, rest);
    return isError(drawn) ? drawn : { ...rangeOf(drawn) };
  },
});

export const orderCertainty = defineFunction({
  id: 'ORDER.CERTAINTY',
  family: 'Plan and money',
  summary: 'Share of seasons in which a number of females brings at least the fish promised.',
  questions: [
    'how sure is the order with these females',
    'chance to meet the order',
    'odds of enough fry',
    'how sure am I to meet the order',
    'e sure say order go complete?',
  ],
  params: {
    wanted: num(count, { above: 0, max: 1e9, doc: 'Fish promised.' }),
    females,
    eggsPerFemale: eggsEach,
    ...chain,
  },
  returns: value(share, 'Certainty of meeting the order; 0.5 is a coin.'),
  valid,
  help,
  sources: ['DEFINITION', 'GRAAF95', 'BRZUSKA03', 'PRACTICE'],
  examples: [
    {
      args: [100000, 4, 60000, 0.5, 0, 0],
      gives: '1',
      because: 'Four females bring 120,000 when nothing varies.',
    },
    { args: [100000, 2, 60000, 0.5, 0, 0], gives: '0', because: 'Two bring 60,000.' },
    {
      args: [100000, 4, 60000, 0.9, 0.5],
      fails: { code: '#VALUE!', says: 'the most a share of 0.9' },
      because: tooWild,
    },
  ],
  compute: ({ wanted, females: fish, eggsPerFemale, ...rest }) => {
    const drawn = totals(fish, eggsPerFemale, rest);
    return isError(drawn) ? drawn : shareReaching(drawn, wanted);
  },
});

const MOST_FEMALES = 5000;
export const femalesForCertainty = defineFunction({
  id: 'FEMALES.FORCERTAINTY',
  family: 'Plan and money',
  summary: 'Females to inject so that the fish promised are there with the certainty you want.',
  questions: [
    'females to be sure of the order',
    'how many females to be 90 percent sure',
    'spare females for certainty',
    'females so that the order is met in nine of ten seasons',
  ],
  params: {
    wanted: num(count, { above: 0, max: 1e9, doc: 'Fish promised.' }),
    eggsPerFemale: eggsEach,
    shares: chain.shares,
    spreads: chain.spreads,
    certainty: num(share, {
      min: 0.05,
      max: 0.995,
      default: 0.9,
      doc: 'Share of seasons in which the order is to be met (90 % is 0.9).',
    }),
    eggSpread: chain.eggSpread,
    spawning: chain.spawning,
    runs: chain.runs,
    alike: chain.alike,
    seed: chain.seed,
  },
  returns: value(count, 'Whole females, over all runs together.'),
  valid,
  help,
  sources: ['DEFINITION', 'GRAAF95', 'BRZUSKA03', 'PRACTICE'],
  examples: [
    {
      args: [100000, 60000, 0.5, 0, 0.9, 0],
      gives: '4',
      because: '30,000 fish from each female when nothing varies: 3.33, so 4.',
    },
    {
      args: [100000, 60000, 0.5, 0, 90],
      fails: { code: '#VALUE!', says: '0.9' },
      because: 'A percentage typed as a number is named.',
    },
  ],
  compute: ({ wanted, eggsPerFemale, certainty, ...rest }) => {
    const stages = stagesOf(rest);
    if (isError(stages)) return stages;
    const expected =
      wanted / (eggsPerFemale * rest.spawning * stages.reduce((product, { mean }) => product * mean, 1));
    const tooFew = noSolution(
      `wanted: even ${writtenNumber(MOST_FEMALES)} females would not give that certainty. Take more runs, or better shares.`,
    );
    if (expected > MOST_FEMALES) return tooFew;
    const counts = femalesInSeasons(
      {
        wanted,
        eggsPerFemale,
        stages,
        eggs: { females: rest.eggSpread, runs: 0, season: 0 },
        ovulating: rest.spawning,
        runs: rest.runs,
        lost: 0,
        most: MOST_FEMALES,
      },
      DRAWS,
      rest.seed,
    );
    const needed = femalesFor(counts, certainty);
    return Number.isFinite(needed) ? needed : tooFew;
  },
});
