import type { Conditions } from '../carbonate';
import { carbonDioxideAt, sampleFrom, samplePH, sitesOpen } from './model';

// Taken out of Math once: these run in the innermost loops.
const { exp, hypot, log, max, min, sqrt } = Math;

/** One dosing as it was written down: running total of product and the pH read after it. */
export interface Series {
  /** mmol/L of product since the start, one per reading. */
  readonly doses: readonly number[];
  readonly readings: readonly number[];
}

export interface Beliefs {
  readonly conditions: Conditions;
  /** meq and mmol of carbon per mmol of product. */
  readonly equivalents: number;
  readonly carbonEach: number;
  /** CO2(aq) in balance with the air, mmol/L. */
  readonly airCO2: number;
  /** Random error of one reading and lasting offset of the meter, standard deviations in pH. */
  readonly noise: number;
  readonly offset: number;
  /** log10 of the CO2 pressure of the untouched water, atm: mean and standard deviation. */
  readonly pressure: { readonly mean: number; readonly sd: number };
  /** Alkalinity by kit, meq/L, with its standard error. */
  readonly kit?: { readonly value: number; readonly error: number } | undefined;
  /** Alkalinity the conductivity leaves room for, meq/L. */
  readonly mostAlkalinity: number;
}

/** Weighted samples of what the water may be: the posterior, with the state each one is in after the last reading. */
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

/** Share of the CO2 above air balance that leaves between one dose and the next reading, and how often each is met (judgement). */
const LOSSES = [[0, 0.5], [0.15, 0.3], [0.4, 0.2]] as const;
/** Organic acid sites, meq/L, and how often each is met (judgement): clear, tea-coloured, dark water. */
const SITES = [[0, 0.7], [0.05, 0.18], [0.15, 0.12]] as const;

/** Every combination of site and loss, with the log of its share. */
const KINDS = SITES.flatMap(([sites, often]) => LOSSES.map(([loss, share]) => ({ sites, loss, log: log(often * share) })));

/** Grid nodes: first pH, log10 of first CO2 pressure, kind. */
interface Nodes { readonly ph0: number[]; readonly pressure: number[]; readonly kind: number[]; readonly phGap: number; readonly pressureGap: number }

/** Columns of what is known of a node after it has been followed through the series. */
const BALANCE = 0, CARBON = 1, NOW = 2, ALKALINITY0 = 3, CO2_0 = 4, OFFSET = 5, UNEXPLAINED = 6, WIDTH = 7;

/** Follows one supposed water through the series, writes its state at the end into `out` and returns its log likelihood. */
const follow = (b: Beliefs, s: Series, ph0: number, co2: number, sites: number, loss: number, out: Float64Array, at: number): number => {
  const { conditions: c } = b;
  const start = sampleFrom(c, ph0, co2, sites);
  let { balance, carbon } = start;
  let ph = ph0;
  let given = 0;
  let sum = 0;
  let squares = 0;
  const n = s.readings.length;
  for (let i = 0; i < n; i++) {
    const dose = s.doses[i] ?? 0;
    const added = dose - given;
    if (i > 0 || added > 0) {
      balance += b.equivalents * added;
      carbon += b.carbonEach * added;
      given = dose;
      ph = samplePH(c, balance, carbon, sites, ph);
      const excess = loss > 0 ? carbonDioxideAt(c, carbon, ph) - b.airCO2 : 0;
      if (excess > 0) {
        carbon -= loss * excess;
        ph = samplePH(c, balance, carbon, sites, ph);
      }
    }
    const miss = (s.readings[i] ?? 0) - ph;
    sum += miss;
    squares += miss * miss;
  }
  const noise2 = b.noise * b.noise;
  const offset2 = b.offset * b.offset;
  // The offset is shared by all readings: integrated out, it leaves this much of the squares.
  const shared = offset2 / (noise2 + n * offset2);
  const unexplained = squares - sum * sum * shared;
  out.set([balance, carbon, ph, start.balance - sites * sitesOpen(10 ** -ph0), co2, sum * shared, unexplained], at);
  return -0.5 * unexplained / noise2;
};

const logPrior = (b: Beliefs, pressure: number, alkalinity: number): number => {
  const z = (pressure - b.pressure.mean) / b.pressure.sd;
  const kit = b.kit ? (alkalinity - b.kit.value) / b.kit.error : 0;
  const over = alkalinity > b.mostAlkalinity ? log(alkalinity / b.mostAlkalinity) / 0.3 : 0;
  return -0.5 * (z * z + kit * kit + over * over);
};

interface Explored { readonly logs: Float64Array; readonly state: Float64Array; readonly best: number }

const explore = (b: Beliefs, s: Series, nodes: Nodes): Explored => {
  const n = nodes.ph0.length;
  const logs = new Float64Array(n);
  const state = new Float64Array(n * WIDTH);
  let best = -Infinity;
  for (let i = 0; i < n; i++) {
    const kind = KINDS[nodes.kind[i] ?? 0];
    const pressure = nodes.pressure[i] ?? 0;
    if (!kind) continue;
    const likelihood = follow(b, s, nodes.ph0[i] ?? 7, b.conditions.kh * 10 ** pressure, kind.sites, kind.loss, state, i * WIDTH);
    const l = likelihood + logPrior(b, pressure, state[i * WIDTH + ALKALINITY0] ?? 0) + kind.log;
    logs[i] = l;
    if (l > best) best = l;
  }
  return { logs, state, best };
};

const firstNodes = (b: Beliefs, first: number, losesGas: boolean): Nodes => {
  const reach = 3.5 * hypot(b.noise, b.offset);
  const lowest = max(-5.5, b.pressure.mean - 3.5 * b.pressure.sd);
  const highest = min(-0.4, b.pressure.mean + 3.5 * b.pressure.sd);
  const phGap = (2 * reach) / (COARSE_PH - 1);
  const pressureGap = (highest - lowest) / (COARSE_PRESSURE - 1);
  const nodes: Nodes = { ph0: [], pressure: [], kind: [], phGap, pressureGap };
  for (let kind = 0; kind < KINDS.length; kind++) if (losesGas || KINDS[kind]?.loss === 0) for (let i = 0; i < COARSE_PH; i++) for (let j = 0; j < COARSE_PRESSURE; j++)
    put(nodes, first - reach + i * phGap, lowest + j * pressureGap, kind);
  return nodes;
};

const put = (nodes: Nodes, ph0: number, pressure: number, kind: number): void => {
  nodes.ph0.push(ph0);
  nodes.pressure.push(pressure);
  nodes.kind.push(kind);
};

/** Each cell that still carries weight becomes nine of a third of its width. */
const refined = (nodes: Nodes, { logs, best }: Explored): Nodes => {
  const finer: Nodes = { ph0: [], pressure: [], kind: [], phGap: nodes.phGap / 3, pressureGap: nodes.pressureGap / 3 };
  for (let i = 0; i < logs.length; i++) {
    if ((logs[i] ?? -Infinity) < best - DEPTH) continue;
    for (let u = -1; u <= 1; u++) for (let v = -1; v <= 1; v++)
      put(finer, (nodes.ph0[i] ?? 0) + u * finer.phGap, (nodes.pressure[i] ?? 0) + v * finer.pressureGap, nodes.kind[i] ?? 0);
  }
  return finer;
};

const COARSE_PH = 9;
const COARSE_PRESSURE = 27;
/** Log-likelihood depth within which a cell is divided; more such cells than this are fine enough as they are. */
const DEPTH = 10;
const FEW = 350;
const LEVELS = 2;

/**
 * What the readings say about the water: its pH and CO2 before the first dose, with the meter's offset integrated out, gas lost
 * between readings, and acid sites of organic matter, on a grid whose cells are divided where the weight is.
 *
 * Model: A + e x_i = (D + c x_i) ᾱ_i + W_i + sites, A and D from the first pH and CO2 pressure, so carbon is never negative.
 * In: the series and the beliefs held before it. Out: weighted samples. Validity: carbonate system closed but for the gas lost.
 * Sources: PLBU82 for the constants; priors are judgement (PRACTICE); site model KOHL00.
 */
export const posterior = (b: Beliefs, s: Series): Cloud => {
  // One reading cannot have lost gas yet.
  let nodes = firstNodes(b, s.readings[0] ?? 7, s.readings.length > 1);
  let found = explore(b, s, nodes);
  for (let level = 0; level < LEVELS; level++) {
    const finer = refined(nodes, found);
    if (finer.ph0.length > 9 * FEW) break;
    nodes = finer;
    found = explore(b, s, nodes);
  }
  return cloudOf(b, nodes, found, s.readings.length);
};

/** Share of the weight that the lightest samples may carry and still be left out. */
const CRUMBS = 0.002;

/** Weight below which samples are left out, found by halving its exponent. */
const lightest = (mass: Float64Array): number => {
  let all = 0;
  for (const m of mass) all += m;
  let low = -DEPTH;
  let high = 0;
  for (let i = 0; i < 12; i++) {
    const middle = (low + high) / 2;
    const limit = exp(middle);
    let below = 0;
    for (const m of mass) if (m < limit) below += m;
    if (below > CRUMBS * all) high = middle; else low = middle;
  }
  return exp(low);
};

const cloudOf = (b: Beliefs, nodes: Nodes, { logs, state, best }: Explored, n: number): Cloud => {
  const mass = logs.map((l) => exp(l - best));
  const least = lightest(mass);
  const kept: number[] = [];
  let total = 0;
  let leastSquares = 1e300;
  for (let i = 0; i < logs.length; i++) {
    leastSquares = min(leastSquares, state[i * WIDTH + UNEXPLAINED] ?? 1e300);
    if ((mass[i] ?? 0) < least) continue;
    kept.push(i);
    total += mass[i] ?? 0;
  }
  const column = (which: number): number[] => kept.map((i) => state[i * WIDTH + which] ?? NaN);
  const kinds = kept.map((i) => KINDS[nodes.kind[i] ?? 0]);
  return {
    weights: kept.map((i) => (mass[i] ?? 0) / total),
    balances: column(BALANCE), carbons: column(CARBON), now: column(NOW), firstAlkalinity: column(ALKALINITY0), firstCO2: column(CO2_0), offsets: column(OFFSET),
    sites: kinds.map((kind) => kind?.sites ?? 0), losses: kinds.map((kind) => kind?.loss ?? 0),
    misfit: sqrt(max(0, leastSquares) / max(1, n)) / b.noise,
    logEvidence: best + log(total * nodes.phGap * nodes.pressureGap),
  };
};

/** Halvings of the range of the values: twelve digits of it are left. */
const HALVINGS = 40;

/** Weighted quantile, by halving the range of the values: several times faster than sorting them. Infinite values count as above. */
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
    if (weightUpTo(cloud, values, middle) >= q) high = middle; else low = middle;
  }
  return high;
};

const weightUpTo = ({ weights }: Cloud, values: readonly number[], most: number): number => {
  let sum = 0;
  for (let i = 0; i < values.length; i++) if ((values[i] ?? 0) <= most) sum += weights[i] ?? 0;
  return sum;
};
