import type { Bell } from './belief';
import { fromBells, literatureBells, scaleBelief } from './belief';
import { mixtureQuantile } from './normalMixture';
import type { Case, PoolKind } from './poolNormal';
import { poolNormal } from './poolNormal';
import type { Counted, SharePoint } from './poolShares';
import { poolShares } from './poolShares';
import type { RateSpec } from '../rates';
import { meanShareAt, nextShareAt } from './shareQuantiles';

export interface Estimate {
  /** Mean over runs to come: the middle of what is believed, and the ends of its interval. */
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
  return {
    value: from(mixtureQuantile(means, 0.5)),
    low: from(mixtureQuantile(means, a)),
    high: from(mixtureQuantile(means, b)),
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
  const farm = answer(
    cases,
    scale,
    { bell: (c) => c.farm, spread: (c) => Math.hypot(c.runSd, c.kindSd), runs: all, pull: (c) => c.pull },
    confidence,
  );
  if (!spec.kinds) return { farm, kinds: [] };
  const each = [...kinds, { values: [] }].map(({ values }, i) =>
    answer(
      cases,
      scale,
      {
        bell: (c) => c.kinds[i] ?? c.farm,
        spread: (c) => c.runSd,
        runs: values.length,
        pull: (c) => {
          const own = values.length / (values.length + (c.runSd / c.kindSd) ** 2);
          return own + (1 - own) * c.pull;
        },
      },
      confidence,
    ),
  );
  return { farm, kinds: each };
}

const logit = (p: number): number => Math.log(p / (1 - p));

/** Median steadiness φ for runs whose standard deviation is this part of √(M(1 − M)): 1/(φ + 1) = part². */
const steadiness = (part: number): number => 1 / (part * part) - 1;

/**
 * Pull of own runs: information in the counts against the literature, on the logit scale, averaged over what
 * is believed.
 */
const sharePull = (points: readonly SharePoint[], runs: readonly Counted[], farms: number): number =>
  points.reduce((sum, { weight, mean, steadiness: phi }) => {
    const information =
      runs.reduce((total, { n }) => total + n / (1 + (n - 1) / (phi + 1)), 0) * mean * (1 - mean);
    return sum + (weight * information) / (information + 1 / (farms * farms));
  }, 0);

/** Counted rates: k of n in each run. */
export function estimateCounted(spec: CountedSpec, runs: readonly Counted[], confidence = 0.95): Estimate {
  const points = poolShares(runs, {
    mean: fromBells(literatureBells(logit(spec.literature), spec.farms)),
    steadiness: scaleBelief(steadiness(spec.runs), spec.runsFactor ** 2),
  });
  const [a, b] = tails(confidence);
  const [nextLow = NaN, nextHigh = NaN] = nextShareAt(points, [a, b]);
  return {
    value: meanShareAt(points, 0.5),
    low: meanShareAt(points, a),
    high: meanShareAt(points, b),
    nextLow,
    nextHigh,
    ownWeight: sharePull(points, runs, spec.farms),
    runs: runs.length,
  };
}
