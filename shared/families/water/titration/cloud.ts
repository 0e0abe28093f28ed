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
  /** Share of the gap to the air's CO2 that closes between two readings, and that CO2 as times that outdoors. */
  readonly losses: readonly number[];
  readonly airs: readonly number[];
  readonly offsets: readonly number[];
  /** Root mean square of what the best sample leaves unexplained, in units of the reading error. */
  readonly misfit: number;
  readonly logEvidence: number;
}

/** Halvings of the range of the values: twelve digits of it are left. */
const HALVINGS = 40;

/**
 * Weighted quantile, by halving the range of the values: several times faster than sorting them. Samples stand on
 * nodes of a grid, and each speaks for the stretch half way to its neighbours. Infinite values count as above.
 */
export const quantile = (cloud: Cloud, values: readonly number[], q: number): number => {
  let low = values[0] ?? NaN;
  let high = -1e300;
  for (const value of values) {
    if (value < low) low = value;
    if (value > high && value < 1e300) high = value;
  }
  if (weightUpTo(cloud, values, high) < q) return Infinity;
  if (weightUpTo(cloud, values, low) >= q) return inCell(cloud, values, low, q);
  for (let i = 0; i < HALVINGS && high - low > 1e-12; i++) {
    const middle = (low + high) / 2;
    if (weightUpTo(cloud, values, middle) >= q) high = middle;
    else low = middle;
  }
  return inCell(cloud, values, high, q);
};

/** Where in the stretch of the value found the share is reached. */
const inCell = ({ weights }: Cloud, values: readonly number[], found: number, q: number): number => {
  let [before, here] = [0, 0];
  let [under, over] = [-Infinity, Infinity];
  const least = found - 1e-9;
  const most = found + 1e-12;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] ?? 0;
    if (value < least) {
      before += weights[i] ?? 0;
      if (value > under) under = value;
    } else if (value <= most) here += weights[i] ?? 0;
    else if (value < over) over = value;
  }
  // Nothing needed is no node of a grid: it is the answer of all that need nothing.
  if (!(here > 0) || found === 0) return found;
  const from = under > -Infinity ? (under + found) / 2 : found;
  const to = over < 1e300 ? (found + over) / 2 : found;
  return from + Math.max(0, Math.min(1, (q - before) / here)) * (to - from);
};

const weightUpTo = ({ weights }: Cloud, values: readonly number[], most: number): number => {
  let sum = 0;
  for (let i = 0; i < values.length; i++) if ((values[i] ?? 0) <= most) sum += weights[i] ?? 0;
  return sum;
};

/** Chance that the water holds organic acids. */
export const chanceOrganic = ({ sites, weights }: Pick<Cloud, 'sites' | 'weights'>): number =>
  sites.reduce((sum, amount, i) => (amount > 0 ? sum + (weights[i] ?? 0) : sum), 0);
