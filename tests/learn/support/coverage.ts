import { estimateCounted, estimateMeasured } from '../../../shared/families/learning/kernels/estimate';
import type { RateKey, RateSpec } from '../../../shared/families/learning/rates';
import { rateSpec } from '../../../shared/families/learning/rates';
import type { World } from './farms';
import { Chance, farmMean, spread } from './farms';

/** How often the intervals hold the truth, over simulated farms of one world with a number of runs each. */
export interface Covered {
  readonly rate: RateKey;
  readonly world: World;
  readonly runs: number;
  readonly farms: number;
  readonly seed: number;
  /** Hits of the interval for the farm's mean and for the next run. */
  readonly mean: number;
  readonly next: number;
  /** The same for one kind of run (a preparation, a month), where the rate has kinds; else 0. */
  readonly kindMean: number;
  readonly kindNext: number;
  /** Widths of the mean's intervals added up, in the unit of the rate. */
  readonly width: number;
}

const logit = (p: number): number => Math.log(p / (1 - p));
const shareOf = (x: number): number => 1 / (1 + Math.exp(-x));
const inside = (x: number, low: number, high: number): number => (x >= low && x <= high ? 1 : 0);
const NODES = 400;
/** Mean of shares that vary as a bell on logits. */
const meanOfLogits = (mu: number, sd: number): number => {
  let sum = 0;
  let weight = 0;
  for (let i = 0; i <= NODES; i++) {
    const z = -6 + (12 * i) / NODES;
    const w = Math.exp(-0.5 * z * z);
    sum += w * shareOf(mu + sd * z);
    weight += w;
  }
  return sum / weight;
};

interface Hit {
  readonly mean: number;
  readonly next: number;
  readonly kindMean: number;
  readonly kindNext: number;
  readonly width: number;
}

/** Samples as farms take them: few females, or some dozens to hundreds of eggs. */
const sampleOf = (key: RateKey, chance: Chance): number =>
  key === 'ovulating' ? 3 + Math.floor(chance.next() * 8) : 60 + Math.floor(chance.next() ** 2 * 300);

/** Mean share of a farm and its runs: beta as the estimator believes, or bells on logits. */
function sharesOf(
  spec: RateSpec,
  world: World,
  chance: Chance,
): { readonly truth: number; readonly draw: () => number } {
  const mu = farmMean(chance, world, logit(spec.literature), spec.farms);
  const middle = shareOf(mu);
  if (world === 'assumed') {
    const phi = spread(chance, world, 1 / spec.runs ** 2 - 1, spec.runsFactor ** 2);
    return { truth: middle, draw: () => chance.beta(middle * phi, (1 - middle) * phi) };
  }
  // On logits a spread of s/√(M(1 − M)) gives about s·√(M(1 − M)) on shares.
  const sd = spread(chance, world, spec.runs, spec.runsFactor) / Math.sqrt(middle * (1 - middle));
  return { truth: meanOfLogits(mu, sd), draw: () => shareOf(mu + sd * chance.bell()) };
}

function countedFarm(key: RateKey, world: World, runs: number, chance: Chance): Hit {
  const spec = rateSpec(key);
  const { truth, draw } = sharesOf(spec, world, chance);
  const seen = Array.from({ length: runs }, () => {
    const n = sampleOf(key, chance);
    return { n, k: chance.binomial(n, draw()) };
  });
  const got = estimateCounted(spec, seen);
  return {
    mean: inside(truth, got.low, got.high),
    next: inside(draw(), got.nextLow, got.nextHigh),
    kindMean: 0,
    kindNext: 0,
    width: got.high - got.low,
  };
}

interface Measured {
  readonly mu: number;
  readonly runSd: number;
  readonly kindSd: number;
  readonly thetas: readonly number[];
  readonly scaled: (x: number) => number;
  readonly lift: number;
}
const PREPARATIONS = 3;
const MONTHS = 12;
const kindsOf = (spec: RateSpec): number =>
  spec.kinds ? (spec.kinds.by === 'month' ? MONTHS : PREPARATIONS) : 1;

function farmOf(spec: RateSpec, world: World, chance: Chance): Measured {
  const isLog = spec.scale === 'log';
  const middle = isLog
    ? Math.log(spec.literature) - (spec.runs ** 2 + (spec.kinds?.spread ?? 0) ** 2) / 2
    : spec.literature;
  const mu = farmMean(chance, world, middle, spec.farms);
  const runSd = spread(chance, world, spec.runs, spec.runsFactor);
  const kindSd = spec.kinds ? spread(chance, world, spec.kinds.spread, spec.kinds.factor) : 0;
  return {
    mu,
    runSd,
    kindSd,
    thetas: Array.from({ length: kindsOf(spec) }, () => mu + kindSd * chance.bell()),
    scaled: isLog ? Math.exp : (x) => x,
    lift: isLog ? 0.5 : 0,
  };
}

function measuredFarm(key: RateKey, world: World, runs: number, chance: Chance): Hit {
  const spec = rateSpec(key);
  const { mu, runSd, kindSd, thetas, scaled, lift } = farmOf(spec, world, chance);
  // Runs fall into a few kinds much more often than into the others, as months and preparations do.
  const kindOf = (): number => Math.floor(chance.next() ** 1.7 * thetas.length);
  const lists: number[][] = thetas.map(() => []);
  for (let i = 0; i < runs; i++) {
    const g = kindOf();
    lists[g]?.push(scaled((thetas[g] ?? NaN) + runSd * chance.bell()));
  }
  const { farm, kinds } = estimateMeasured(
    spec,
    lists.map((values) => ({ values })),
  );
  const truth = scaled(mu + lift * (runSd ** 2 + kindSd ** 2));
  const mean = inside(truth, farm.low, farm.high);
  const next = inside(scaled(mu + Math.hypot(kindSd, runSd) * chance.bell()), farm.nextLow, farm.nextHigh);
  const g = kindOf();
  const kind = kinds[g];
  const theta = thetas[g] ?? NaN;
  return {
    mean,
    next,
    width: farm.high - farm.low,
    kindMean: kind ? inside(scaled(theta + lift * runSd ** 2), kind.low, kind.high) : 0,
    kindNext: kind ? inside(scaled(theta + runSd * chance.bell()), kind.nextLow, kind.nextHigh) : 0,
  };
}

export function coverage(rate: RateKey, world: World, runs: number, farms: number, seed: number): Covered {
  const spec = rateSpec(rate);
  const chance = new Chance(seed);
  const total = { mean: 0, next: 0, kindMean: 0, kindNext: 0, width: 0 };
  for (let i = 0; i < farms; i++) {
    const hit = (spec.scale === 'share' ? countedFarm : measuredFarm)(rate, world, runs, chance);
    for (const key of Object.keys(total) as (keyof typeof total)[]) total[key] += hit[key];
  }
  return { rate, world, runs, farms, seed, ...total };
}
