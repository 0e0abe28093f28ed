import type { CountLimits } from './poisson';
import { ratioEstimate } from './ratioEstimate';
import { wilson } from './wilson';

export interface ClusteredShare extends CountLimits {
  readonly share: number;
  /** True when the samples differ more among themselves than chance alone would make them. */
  readonly isClumped: boolean;
}

/**
 * A share from several samples taken at different spots, with an interval that sees clumping.
 *
 * Share Σk / Σn. Ends: the wider, on each side, of the ratio-estimator interval (spread between samples, t
 * with m − 1 degrees of freedom) and the Wilson interval of the pooled count, cut at 0 and 1. One sample:
 * Wilson alone. Source: COCH77 chapter 3 (clusters), WILS27. Example: 90/100, 50/100 → 0.70 and an interval
 * far wider than 140 of 200 gives.
 */
export const clusteredShare = (
  successes: readonly number[],
  samples: readonly number[],
  confidence: number,
): ClusteredShare => {
  const k = successes.reduce((a, b) => a + b, 0);
  const n = samples.reduce((a, b) => a + b, 0);
  const pooled = wilson(k, n, confidence);
  if (samples.length < 2) return { share: k / n, ...pooled, isClumped: false };
  const spread = ratioEstimate(samples, successes, Infinity, confidence);
  const low = Math.max(0, Math.min(pooled.low, spread.low));
  const high = Math.min(1, Math.max(pooled.high, spread.high));
  return { share: k / n, low, high, isClumped: high - low > (pooled.high - pooled.low) * (1 + 1e-9) };
};
