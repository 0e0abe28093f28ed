/**
 * Weighted samples of what the water may be: the posterior, with the state each one is in after the last
 * reading.
 */
export interface Cloud {
  readonly weights: readonly number[];
  readonly balances: readonly number[];
  readonly carbons: readonly number[];
  readonly sites: readonly number[];
  /** True pH now. */
  readonly now: readonly number[];
  readonly firstAlkalinity: readonly number[];
  readonly firstCO2: readonly number[];
  readonly losses: readonly number[];
  readonly offsets: readonly number[];
  /** Root mean square of what the best sample leaves unexplained, in units of the reading error. */
  readonly misfit: number;
  readonly logEvidence: number;
}

/** Halvings of the range of the values: twelve digits of it are left. */
const HALVINGS = 40;

/**
 * Weighted quantile, by halving the range of the values: several times faster than sorting them. Infinite
 * values count as above.
 */
export const quantile = (cloud: Cloud, values: readonly number[], q: number): number => {
  let low = values[0] ?? NaN;
  let high = -1e300;
  for (const value of values) {
    if (value < low) low = value;
    if (value > high && value < 1e300) high = value;
  }
  if (weightUpTo(cloud, values, high) < q) return Infinity;
  if (weightUpTo(cloud, values, low) >= q) return low;
  for (let i = 0; i < HALVINGS && high - low > 1e-12; i++) {
    const middle = (low + high) / 2;
    if (weightUpTo(cloud, values, middle) >= q) high = middle;
    else low = middle;
  }
  return high;
};

const weightUpTo = ({ weights }: Cloud, values: readonly number[], most: number): number => {
  let sum = 0;
  for (let i = 0; i < values.length; i++) if ((values[i] ?? 0) <= most) sum += weights[i] ?? 0;
  return sum;
};
