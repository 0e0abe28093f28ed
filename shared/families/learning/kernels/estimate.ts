import type { Bell } from './belief';
import { fromBells, literatureBells, scaleBelief } from './belief';
import { limitedTranslation } from './limitedTranslation';
import { mixtureQuantile } from './normalMixture';
import type { Case, PoolKind } from './poolNormal';
import { poolNormal } from './poolNormal';
import type { Counted, SharePoint } from './poolShares';
import { poolShares } from './poolShares';
import type { RateSpec } from '../rates';
import { meanShareAt, nextShareAt } from './shareQuantiles';

export interface Estimate {
  /**
   * Mean over runs to come: the middle of what is believed, pulled no further from the own runs than is safe for a
   * farm unlike the published ones; and the ends of the interval of what is believed.
   */
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Where a single further run will lie. */
  readonly nextLow: number;
  readonly nextHigh: number;
  /** Weight of the own runs against the literature, 0 to 1. */
  readonly ownWeight: number;
  readonly runs: number;
}

export interface Estimates {
  readonly farm: Estimate;
  /** In the order of the kinds given, then one for a kind never seen. */
  readonly kinds: readonly Estimate[];
}

const tails = (confidence: number): readonly [number, number] => [(1 - confidence) / 2, (1 + confidence) / 2];

interface Scale {
  readonly to: (value: number) => number;
  readonly from: (scaled: number) => number;
  /**
   * Runs that spread on logarithms have a mean above their middle: half their variance.
   */ readonly lift: number;
}
const SCALES: Readonly<Record<'log' | 'difference', Scale>> = {
  log: { to: Math.log, from: Math.exp, lift: 0.5 },
  difference: { to: (x) => x, from: (x) => x, lift: 0 },
};

const weighted = (cases: readonly Case[], of: (one: Case) => number): number =>
  cases.reduce((sum, one) => sum + one.weight * of(one), 0);

interface Asked {
  readonly bell: (one: Case) => Bell;
  readonly spread: (one: Case) => number;
  readonly runs: number;
  readonly pull: (one: Case) => number;
  /** How far the middle moves towards the own runs. */
  readonly moved: number;
}

const within = (x: number, low: number, high: number): number => Math.max(low, Math.min(high, x));

/** What the limit takes off the pull of the literature, on the scale of the rate. */
function takenOff(cases: readonly Case[], farms: number): number {
  const variance = weighted(cases, (c) => c.ownVariance);
  if (!Number.isFinite(variance)) return 0;
  const middle = mixtureQuantile(
    cases.map(({ weight, farm }) => ({ ...farm, weight })),
    0.5,
  );
  const pull = middle - weighted(cases, (c) => c.own);
  const believed = weighted(cases, (c) => c.ownVariance / (c.ownVariance + farms * farms));
  return limitedTranslation(pull, variance, believed) - pull;
}

function answer(cases: readonly Case[], { from, lift }: Scale, asked: Asked, confidence: number): Estimate {
  const means = cases.map((one) => {
    const b = asked.bell(one);
    return { weight: one.weight, mean: b.mean + lift * asked.spread(one) ** 2, sd: b.sd };
  });
  const next = cases.map((one) => {
    const b = asked.bell(one);
    return { weight: one.weight, mean: b.mean, sd: Math.hypot(b.sd, asked.spread(one)) };
  });
  const [a, b] = tails(confidence);
  const [low, high] = [mixtureQuantile(means, a), mixtureQuantile(means, b)];
  return {
    value: from(within(mixtureQuantile(means, 0.5) + asked.moved, low, high)),
    low: from(low),
    high: from(high),
    nextLow: from(mixtureQuantile(next, a)),
    nextHigh: from(mixtureQuantile(next, b)),
    ownWeight: weighted(cases, asked.pull),
    runs: asked.runs,
  };
}

/** What an estimate needs of a rate. */
export type CountedSpec = Pick<RateSpec, 'literature' | 'farms' | 'runs' | 'runsFactor'>;
export type MeasuredSpec = CountedSpec & Pick<RateSpec, 'scale' | 'kinds'>;

/** What is believed of the spreads of a rate. */
const normalModel = (spec: MeasuredSpec, scale: Scale): Parameters<typeof poolNormal>[1] => ({
  // The literature gives means; the middle of runs that spread on logarithms lies below their mean.
  mean: literatureBells(
    scale.to(spec.literature) - scale.lift * (spec.runs ** 2 + (spec.kinds?.spread ?? 0) ** 2),
    spec.farms,
  ),
  runs: scaleBelief(spec.runs, spec.runsFactor),
  ...(spec.kinds ? { kinds: scaleBelief(spec.kinds.spread, spec.kinds.factor) } : {}),
});

/**
 * Measured rates: one value per run, already in the unit of the rate; log rates above 0. One list for each
 * kind of run.
 */
export function estimateMeasured(
  spec: MeasuredSpec,
  kinds: readonly PoolKind[],
  confidence = 0.95,
): Estimates {
  const scale = SCALES[spec.scale === 'log' ? 'log' : 'difference'];
  const scaled = kinds.map(({ values, errors }): PoolKind => ({
    values: values.map(scale.to),
    ...(errors ? { errors } : {}),
  }));
  const cases = poolNormal(scaled, normalModel(spec, scale));
  const all = kinds.reduce((sum, { values }) => sum + values.length, 0);
  const moved = takenOff(cases, spec.farms);
  const farm = answer(
    cases,
    scale,
    {
      bell: (c) => c.farm,
      spread: (c) => Math.hypot(c.runSd, c.kindSd),
      runs: all,
      pull: (c) => c.pull,
      moved,
    },
    confidence,
  );
  if (!spec.kinds) return { farm, kinds: [] };
  const each = [...kinds, { values: [] }].map(({ values }, i) => {
    const ownPart = (c: Case): number => values.length / (values.length + (c.runSd / c.kindSd) ** 2);
    return answer(
      cases,
      scale,
      {
        bell: (c) => c.kinds[i] ?? c.farm,
        spread: (c) => c.runSd,
        runs: values.length,
        pull: (c) => ownPart(c) + (1 - ownPart(c)) * c.pull,
        // A kind leans on the farm's mean for the part its own runs leave open.
        moved: moved * weighted(cases, (c) => 1 - ownPart(c)),
      },
      confidence,
    );
  });
  return { farm, kinds: each };
}

const logit = (p: number): number => Math.log(p / (1 - p));

/** Median steadiness φ for runs whose standard deviation is this part of √(M(1 − M)): 1/(φ + 1) = part². */
const steadiness = (part: number): number => 1 / (part * part) - 1;

/** What the counts alone say in one case of mean and steadiness: weights of the runs, their mean and its variance. */
function countsAt({ mean, steadiness: phi }: SharePoint, runs: readonly Counted[]) {
  let [weight, sum] = [0, 0];
  for (const { k, n } of runs) {
    const counts = n / (1 + (n - 1) / (phi + 1));
    weight += counts;
    sum += (counts * k) / n;
  }
  return {
    own: sum / weight,
    variance: (mean * (1 - mean)) / weight,
    /** On the logit scale. */
    information: weight * mean * (1 - mean),
  };
}

interface CountsAlone {
  readonly own: number;
  readonly variance: number;
  /** Pull of own runs: information in the counts against the literature, on the logit scale. */
  readonly pull: number;
}
/** Averaged over what is believed. */
function countsAlone(points: readonly SharePoint[], runs: readonly Counted[], farms: number): CountsAlone {
  let [own, variance, pull] = [0, 0, 0];
  for (const point of points) {
    const at = countsAt(point, runs);
    own += point.weight * at.own;
    variance += point.weight * at.variance;
    pull += (point.weight * at.information) / (at.information + 1 / (farms * farms));
  }
  return { own, variance, pull };
}

/** Counted rates: k of n in each run. */
export function estimateCounted(spec: CountedSpec, runs: readonly Counted[], confidence = 0.95): Estimate {
  const points = poolShares(runs, {
    mean: fromBells(literatureBells(logit(spec.literature), spec.farms)),
    steadiness: scaleBelief(steadiness(spec.runs), spec.runsFactor ** 2),
  });
  const [a, b] = tails(confidence);
  const [nextLow = NaN, nextHigh = NaN] = nextShareAt(points, [a, b]);
  const { own, variance, pull } = countsAlone(points, runs, spec.farms);
  const [middle, low, high] = [0.5, a, b].map((part) => meanShareAt(points, part)) as [
    number,
    number,
    number,
  ];
  return {
    value:
      runs.length === 0
        ? middle
        : within(own + limitedTranslation(middle - own, variance, 1 - pull), low, high),
    low,
    high,
    nextLow,
    nextHigh,
    ownWeight: pull,
    runs: runs.length,
  };
}
