import type { CountLimits } from './poisson';
import { wilson } from './wilson';

export interface ProductStage extends CountLimits {
  readonly value: number;
}
export interface StageProduct extends ProductStage {
  readonly share: number;
}

/**
 * A start number times the shares of several stages, their uncertainty carried along.
 *
 * On logarithms the product is a sum; its ends are log θ − √Σ(log θi − log li)² and log θ + √Σ(log ui − log
 * θi)². A stage that nothing survived gives 0 to the product of all upper ends, the widest answer.
 * In: start with its limits, each share with its limits. Source: ZOUD08. Stages must be counted separately
 * from each other. Example: 10,000 exactly, then 80 of 100 and 50 of 100 → 4,000 with 3,134 to 4,853.
 */
export const stageProduct = (start: ProductStage, shares: readonly ProductStage[]): StageProduct => {
  const parts = [start, ...shares];
  const product = (pick: (part: ProductStage) => number): number =>
    parts.reduce((total, part) => total * pick(part), 1);
  const value = product((part) => part.value);
  const share = shares.reduce((total, part) => total * part.value, 1);
  if (value === 0) return { value, share, low: 0, high: product((part) => part.high) };
  const down = Math.sqrt(parts.reduce((sum, part) => sum + Math.log(part.value / part.low) ** 2, 0));
  const up = Math.sqrt(parts.reduce((sum, part) => sum + Math.log(part.high / part.value) ** 2, 0));
  return { value, share, low: value * Math.exp(-down), high: value * Math.exp(up) };
};

/** The stage k of n with its Wilson ends. */
export const countedStage = (k: number, n: number, confidence: number): ProductStage => ({
  value: k / n,
  ...wilson(k, n, confidence),
});
