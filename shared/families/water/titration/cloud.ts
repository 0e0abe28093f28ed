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
  /** Part-doses that the readings have followed. */
  readonly steps: number;
  /** Root mean square of what the best sample leaves unexplained, in units of the reading error. */
  readonly misfit: number;
  readonly logEvidence: number;
}

const PLACES = 128;
const weightIn = new Float64Array(PLACES);
/** Places that the finite values are counted into. */
interface Places {
  readonly low: number;
  readonly scale: number;
}
const placesOf = (values: readonly number[]): Places => {
  let low = values[0] ?? NaN;
  let high = -1e300;
  for (const value of values) {
    if (value < low) low = value;
    if (value > high && value < 1e300) high = value;
  }
  return { low, scale: high > low ? (PLACES - 1) / (high - low) : 0 };
};
const counted = ({ weights }: Cloud, values: readonly number[], { low, scale }: Places): void => {
  weightIn.fill(0);
  for (let i = 0; i < values.length; i++) {
    const place = ((values[i] ?? 0) - low) * scale;
    if (place < PLACES) weightIn[place | 0] = (weightIn[place | 0] ?? 0) + (weights[i] ?? 0);
  }
};

/**
 * Weighted quantile: the values are counted into so many places, and only those of one place are sorted. Samples
 * stand on nodes of a grid, and each speaks for the stretch half way to its neighbours. Infinite values count as above.
 */
export const quantile = (cloud: Cloud, values: readonly number[], q: number): number => {
  const places = placesOf(values);
  counted(cloud, values, places);
  let place = 0;
  let before = 0;
  while (place < PLACES && before + (weightIn[place] ?? 0) < q) before += weightIn[place++] ?? 0;
  if (place === PLACES) return Infinity;
  return inCell(cloud, values, nthOf(cloud, values, q - before, { ...places, place }), q);
};

/** The value in a place by which the weight there reaches what is wanted. */
const nthOf = (
  { weights }: Cloud,
  values: readonly number[],
  wanted: number,
  { low, scale, place }: Places & { readonly place: number },
): number => {
  const there: number[] = [];
  for (let i = 0; i < values.length; i++) {
    const here = ((values[i] ?? 0) - low) * scale;
    if (here < PLACES && (here | 0) === place) there.push(i);
  }
  there.sort((one, other) => (values[one] ?? 0) - (values[other] ?? 0));
  let sum = 0;
  for (const i of there) {
    sum += weights[i] ?? 0;
    if (sum >= wanted) return values[i] ?? NaN;
  }
  return values[there.at(-1) ?? 0] ?? NaN;
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

/** Chance that the water holds organic acids. */
export const chanceOrganic = ({ sites, weights }: Pick<Cloud, 'sites' | 'weights'>): number =>
  sites.reduce((sum, amount, i) => (amount > 0 ? sum + (weights[i] ?? 0) : sum), 0);
