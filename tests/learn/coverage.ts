/** Run by coverage.test.ts in a plain Node process: how often the intervals hold the truth, as JSON lines. */
import { estimateCounted, estimateMeasured } from '../../shared/learn/estimate';
import type { RateKey } from '../../shared/learn/rates';
import { RATE_KEYS, rateSpec } from '../../shared/learn/rates';
import type { World } from './farms';
import { Chance, farmMean, spread } from './farms';

export interface Covered {
  readonly rate: string;
  readonly world: World;
  readonly runs: number;
  readonly farms: number;
  readonly mean: number;
  readonly next: number;
  /** Of a kind (preparation, month), where the rate has kinds. */
  readonly kindMean?: number;
  readonly kindNext?: number;
  /** Mean width of the interval against the one without any run. */
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

interface Hit { readonly mean: number; readonly next: number; readonly kindMean?: number; readonly kindNext?: number; readonly width: number }

function countedFarm(key: RateKey, world: World, runs: number, chance: Chance): Hit {
  const spec = rateSpec(key);
  const mu = farmMean(chance, world, logit(spec.literature), spec.farms);
  const sampleOf = (): number => (key === 'ovulating' ? 3 + Math.floor(chance.next() * 8) : 60 + Math.floor(chance.next() ** 2 * 300));
  let trueMean = shareOf(mu);
  let draw: () => number;
  if (world === 'assumed') {
    const phi = spread(chance, world, 1 / spec.runs ** 2 - 1, spec.runsFactor ** 2);
    draw = () => chance.beta(trueMean * phi, (1 - trueMean) * phi);
  } else {
    // On logits a spread of s/√(M(1 − M)) gives about the standard deviation s of shares.
    const sd = spread(chance, world, spec.runs, spec.runsFactor) / Math.sqrt(trueMean * (1 - trueMean));
    trueMean = meanOfLogits(mu, sd);
    draw = () => shareOf(mu + sd * chance.bell());
  }
  const seen = Array.from({ length: runs }, () => { const n = sampleOf(); return { n, k: chance.binomial(n, draw()) }; });
  const got = estimateCounted(spec, seen);
  return { mean: inside(trueMean, got.low, got.high), next: inside(draw(), got.nextLow, got.nextHigh), width: got.high - got.low };
}

function measuredFarm(key: RateKey, world: World, runs: number, chance: Chance): Hit {
  const spec = rateSpec(key);
  const isLog = spec.scale === 'log';
  const mu = farmMean(chance, world, isLog ? Math.log(spec.literature) : spec.literature, spec.farms);
  const runSd = spread(chance, world, spec.runs, spec.runsFactor);
  const kindSd = spec.kinds ? spread(chance, world, spec.kinds.spread, spec.kinds.factor) : 0;
  const kinds = spec.kinds ? (spec.kinds.by === 'month' ? 12 : 3) : 1;
  const thetas = Array.from({ length: kinds }, () => mu + kindSd * chance.bell());
  const values: number[][] = thetas.map(() => []);
  const scaled = (x: number): number => (isLog ? Math.exp(x) : x);
  // Runs fall into few kinds much more often than into the others, as months and preparations do.
  const kindOf = (): number => Math.floor(chance.next() ** 1.7 * kinds);
  for (let i = 0; i < runs; i++) {
    const g = kindOf();
    values[g]?.push(scaled((thetas[g] ?? NaN) + runSd * chance.bell()));
  }
  const { farm, kinds: each } = estimateMeasured(spec, values.map((list) => ({ values: list })));
  const truth = scaled(mu + (isLog ? (runSd ** 2 + kindSd ** 2) / 2 : 0));
  const hit: Hit = {
    mean: inside(truth, farm.low, farm.high),
    next: inside(scaled(mu + Math.hypot(kindSd, runSd) * chance.bell()), farm.nextLow, farm.nextHigh),
    width: farm.high - farm.low,
  };
  if (!spec.kinds) return hit;
  const g = kindOf();
  const of = each[g];
  const theta = thetas[g] ?? NaN;
  return {
    ...hit,
    kindMean: inside(scaled(theta + (isLog ? runSd ** 2 / 2 : 0)), of?.low ?? NaN, of?.high ?? NaN),
    kindNext: inside(scaled(theta + runSd * chance.bell()), of?.nextLow ?? NaN, of?.nextHigh ?? NaN),
  };
}

export function coverage(key: RateKey, world: World, runs: number, farms: number, seed: number): Covered {
  const spec = rateSpec(key);
  const chance = new Chance(seed);
  const total = { mean: 0, next: 0, kindMean: 0, kindNext: 0, width: 0 };
  for (let i = 0; i < farms; i++) {
    const hit = spec.scale === 'share' ? countedFarm(key, world, runs, chance) : measuredFarm(key, world, runs, chance);
    total.mean += hit.mean;
    total.next += hit.next;
    total.kindMean += hit.kindMean ?? 0;
    total.kindNext += hit.kindNext ?? 0;
    total.width += hit.width;
  }
  const part = (x: number): number => x / farms;
  return {
    rate: key, world, runs, farms, mean: part(total.mean), next: part(total.next), width: part(total.width),
    ...(spec.kinds ? { kindMean: part(total.kindMean), kindNext: part(total.kindNext) } : {}),
  };
}

const WORLDS: readonly World[] = ['assumed', 'other', 'far'];
const RUNS = [1, 2, 4, 8, 30];
const [farms = '600', only = ''] = process.argv.slice(2);
for (const [r, key] of RATE_KEYS.entries())
  for (const [w, world] of WORLDS.entries())
    for (const runs of RUNS) {
      if (only && key !== only) continue;
      const from = performance.now();
      console.log(JSON.stringify({ ...coverage(key, world, runs, Number(farms), 1000 * r + 100 * w + runs), ms: Math.round(performance.now() - from) }));
    }
