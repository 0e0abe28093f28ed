import { estimateCounted, estimateMeasured } from '../../../shared/families/learning/kernels/estimate';
import type { RateSpec } from '../../../shared/families/learning/rates';
import { RATE_KEYS, rateSpec } from '../../../shared/families/learning/rates';
import type { World } from '../../learn/support/farms';
import { Chance, farmMean, spread } from '../../learn/support/farms';

/**
 * Three runs of simulated farms, every rate: the learned mean against the two that need no estimator, the literature
 * and the mean of the own runs. Root of the mean squared error over farms.
 *
 * Before a limit was set to the pull of the literature, farms two spreads from it came out 0.93 to 1.12 times the better
 * of the two (1,200 farms; latency 1.05, incubation 1.10, eggs per gram 1.08, females that give eggs 1.10, fertilised
 * 1.12, hatch 1.10, fry 1.08 and 1.07, nursery 1.08, growth 1.09). With the limit at 0.65: 0.91 to 1.04 on those farms,
 * 0.94 to 1.035 on the 1,000 of this test; near farms lose 0.00 to 0.05 and stay at 0.75 to 0.99. Also tried: limits of 0.6
 * (1.03, near farms 0.01 worse still), 0.7 (1.045), 0.8 (1.06) and 1 (1.08); a pull that shrinks with distance (1.06, near
 * farms worse); the belief as Student's t with 4 degrees of freedom (hatch 1.04 to 1.09).
 */
const RUNS = 3;
/** Of farms far away more: their ratio lies nearest the target, and 400 farms leave 0.03 to chance. */
const FARMS = { assumed: 300, other: 300, far: 1000 } as const satisfies Record<World, number>;
const SEED = 80;
const KINDS = { preparation: 3, month: 12 } as const;
const shareOf = (x: number): number => 1 / (1 + Math.exp(-x));
const meanOf = (list: readonly number[]): number => list.reduce((sum, x) => sum + x, 0) / list.length;

interface Judged {
  readonly learned: number;
  readonly literature: number;
  readonly own: number;
  readonly truth: number;
}

function measured(chance: Chance, world: World, spec: RateSpec): Judged {
  const isLog = spec.scale === 'log';
  const [to, from] = isLog ? [Math.log, Math.exp] : [(x: number) => x, (x: number) => x];
  const lift = isLog ? 0.5 : 0;
  const { kinds } = spec;
  const middle = to(spec.literature) - lift * (spec.runs ** 2 + (kinds?.spread ?? 0) ** 2);
  const mu = farmMean(chance, world, middle, spec.farms);
  const sd = spread(chance, world, spec.runs, spec.runsFactor);
  const kindSd = kinds ? spread(chance, world, kinds.spread, kinds.factor) : 0;
  const lists = Array.from({ length: kinds ? KINDS[kinds.by] : 1 }, () => ({
    middle: mu + kindSd * chance.bell(),
    values: [] as number[],
  }));
  for (let i = 0; i < RUNS; i++) {
    const list = lists[Math.floor(chance.next() ** 1.7 * lists.length)];
    list?.values.push(from(list.middle + sd * chance.bell()));
  }
  return {
    learned: estimateMeasured(spec, lists).farm.value,
    literature: spec.literature,
    own: meanOf(lists.flatMap(({ values }) => values)),
    truth: from(mu + lift * (sd ** 2 + kindSd ** 2)),
  };
}

function counted(chance: Chance, world: World, spec: RateSpec): Judged {
  const { literature } = spec;
  const truth = shareOf(farmMean(chance, world, Math.log(literature / (1 - literature)), spec.farms));
  const phi = spread(chance, world, 1 / spec.runs ** 2 - 1, spec.runsFactor ** 2);
  const seen = Array.from({ length: RUNS }, () => {
    // Few females, or some dozens to hundreds of eggs.
    const n =
      spec.key === 'ovulating'
        ? 3 + Math.floor(chance.next() * 8)
        : 60 + Math.floor(chance.next() ** 2 * 300);
    return { n, k: chance.binomial(n, chance.beta(truth * phi, (1 - truth) * phi)) };
  });
  return {
    learned: estimateCounted(spec, seen).value,
    literature,
    own: meanOf(seen.map(({ k, n }) => k / n)),
    truth,
  };
}

/** Error of the learned figure ÷ error of the better of the other two; of what spreads by factors on logarithms. */
function against(spec: RateSpec, world: World): number {
  const chance = new Chance(SEED);
  const farm = spec.scale === 'share' ? counted : measured;
  const seen = Array.from({ length: FARMS[world] }, () => farm(chance, world, spec));
  const to = (x: number): number => (spec.scale === 'log' ? Math.log(x) : x);
  const error = (of: 'learned' | 'literature' | 'own'): number =>
    Math.sqrt(meanOf(seen.map((one) => (to(one[of]) - to(one.truth)) ** 2)));
  return error('learned') / Math.min(error('literature'), error('own'));
}

describe.each(['assumed', 'other', 'far'] as const)('farms %s', (world) => {
  test.each(RATE_KEYS)('%s: no worse than the better of literature and own mean', (key) => {
    const times = against(rateSpec(key), world);
    console.log(`${key}, farms ${world}: ${times.toFixed(3)} times the better of the two (target 1.05)`);
    expect(times).toBeLessThanOrEqual(1.05);
  });
});
