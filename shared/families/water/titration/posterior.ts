import type { Cloud } from './cloud';
import { chanceOrganic } from './cloud';
import type { Explored, Nodes } from './grid';
import {
  ALKALINITY0,
  BALANCE,
  CARBON,
  CO2_0,
  DEPTH,
  explore,
  firstNodes,
  kindsOf,
  NOW,
  OFFSET,
  refined,
  UNEXPLAINED,
  WIDTH,
} from './grid';
import type { Beliefs, Series } from './series';

const { exp, log, max, min, sqrt } = Math;

/** Nodes that are enough: a grid of more than this is not made by dividing cells (time of one call). */
const ENOUGH = 1300;
const LEVELS = 3;

/**
 * What the readings say about the water: its pH and CO2 before the first dose, with the meter's offset
 * integrated out, gas lost between readings, and acid sites of organic matter, on a grid whose cells are
 * divided where the weight is.
 *
 * Model: A + e x_i = (D + c x_i) ᾱ_i + W_i + sites, A and D from the first pH and CO2 pressure, so carbon is
 * never negative. In: the series and the beliefs held before it. Out: weighted samples. Validity: carbonate
 * system closed but for the gas lost. Sources: PLBU82 for the constants; priors are judgement (PRACTICE);
 * site model KOHL00.
 */
export const posterior = (b: Beliefs, s: Series): Cloud => {
  const cloud = explored(b, s);
  // Acids of peat that the readings show are looked at as closely as those that somebody told of.
  return b.isBrown !== true && s.readings.length > 2 && chanceOrganic(cloud) > BROWN
    ? explored({ ...b, isBrown: true }, s)
    : cloud;
};
/** Chance of organic acids, by the readings, from which the water counts as brown. */
export const BROWN = 0.5;
const explored = (b: Beliefs, s: Series): Cloud => {
  let nodes = firstNodes(b, s);
  let found = explore(b, s, nodes);
  for (let level = 0; level < LEVELS; level++) {
    const finer = refined(nodes, found, ENOUGH);
    if (!finer) break;
    nodes = finer;
    found = explore(b, s, nodes, found.best - 1);
  }
  return cloudOf(b, nodes, found, s);
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
    if (below > CRUMBS * all) high = middle;
    else low = middle;
  }
  return exp(low);
};

const stepsOf = ({ doses }: Series): number =>
  doses.filter((dose, i) => i > 0 && dose > (doses[i - 1] ?? 0)).length;

const cloudOf = (b: Beliefs, nodes: Nodes, { logs, state, best }: Explored, s: Series): Cloud => {
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
  const all = kindsOf(b);
  const kinds = kept.map((i) => all[nodes.kind[i] ?? 0]);
  return {
    weights: kept.map((i) => (mass[i] ?? 0) / total),
    balances: column(BALANCE),
    carbons: column(CARBON),
    now: column(NOW),
    firstAlkalinity: column(ALKALINITY0),
    firstCO2: column(CO2_0),
    offsets: column(OFFSET),
    steps: stepsOf(s),
    sites: kinds.map((kind) => kind?.sites ?? 0),
    airs: kinds.map((kind) => kind?.air ?? 1),
    losses: kinds.map((kind) => kind?.loss ?? 0),
    misfit: sqrt(max(0, leastSquares) / max(1, s.readings.length)) / b.noise,
    logEvidence: best + log(total * nodes.phGap * nodes.pressureGap),
  };
};
