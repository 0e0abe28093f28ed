import type { Beliefs, Series } from './series';
import { carbonDioxideAt, sampleFrom, samplePH, sitesOpen } from './model';

// Taken out of Math once: these run in the innermost loops.
const { hypot, log, max, min } = Math;

/**
 * Share of the CO2 above air balance that leaves between one dose and the next reading, and how often each is
 * met (judgement).
 */
const LOSSES = [
  [0.05, 0.6],
  [0.35, 0.4],
] as const;
/** Organic acid sites, meq/L, and how often each is met (judgement): clear, tea-coloured, dark water. */
const SITES = [
  [0, 0.7],
  [0.05, 0.18],
  [0.15, 0.12],
] as const;

/** Share of a part-dose that a lone reading has not seen yet, and how often each is met (judgement). */
const UNSEEN = [
  [0, 0.65],
  [0.5, 0.35],
] as const;

/** One reading alone has lost no gas and hidden no dose. */
const isFirstKind = (kind: number): boolean =>
  KINDS[kind]?.loss === LOSSES[0][0] && KINDS[kind]?.unseen === 0;

/** Nodes of the first grid. */
const COARSE_PH = 7;
const COARSE_PRESSURE = 23;
/** Log-likelihood depth within which a node still counts. */
export const DEPTH = 10;

/** Every combination of site, loss and unseen share, with the log of how often it is met. */
export const KINDS = SITES.flatMap(([sites, often]) =>
  LOSSES.flatMap(([loss, share]) =>
    UNSEEN.map(([unseen, times]) => ({ sites, loss, unseen, log: log(often * share * times) })),
  ),
);

/** Grid nodes: first pH, log10 of first CO2 pressure, kind. */
export interface Nodes {
  readonly ph0: number[];
  readonly pressure: number[];
  readonly kind: number[];
  readonly phGap: number;
  readonly pressureGap: number;
}

/** Columns of what is known of a node after it has been followed through the series. */
export const BALANCE = 0,
  CARBON = 1,
  NOW = 2,
  ALKALINITY0 = 3,
  CO2_0 = 4,
  OFFSET = 5,
  UNEXPLAINED = 6,
  WIDTH = 7;

/** The pH a reading shows where part of the dose has not come yet. */
const seenWithout = (
  b: Beliefs,
  hidden: number,
  balance: number,
  carbon: number,
  sites: number,
  ph: number,
): number =>
  hidden > 0
    ? samplePH(b.conditions, balance - b.equivalents * hidden, carbon - b.carbonEach * hidden, sites, ph)
    : ph;

/**
 * Follows one supposed water through the series, writes its state at the end into `out` and returns its log
 * likelihood.
 */
const follow = (
  b: Beliefs,
  s: Series,
  ph0: number,
  co2: number,
  { sites, loss, unseen }: (typeof KINDS)[number],
  out: Float64Array,
  at: number,
): number => {
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
      // Water that a dose has robbed of gas takes some in again: the excess may be below nothing.
      const excess = loss > 0 ? carbonDioxideAt(c, carbon, ph) - b.airCO2 : 0;
      if (excess !== 0) {
        carbon -= loss * excess;
        ph = samplePH(c, balance, carbon, sites, ph);
      }
    }
    const hidden = added > 0 && s.settled?.[i] !== true ? unseen * added : 0;
    const miss = (s.readings[i] ?? 0) - seenWithout(b, hidden, balance, carbon, sites, ph);
    sum += miss;
    squares += miss * miss;
  }
  const [noise2, offset2] = [b.noise * b.noise, b.offset * b.offset];
  // The offset is shared by all readings: integrated out, it leaves this much of the squares.
  const shared = offset2 / (noise2 + n * offset2);
  const unexplained = squares - sum * sum * shared;
  out.set(
    [balance, carbon, ph, start.balance - sites * sitesOpen(10 ** -ph0), co2, sum * shared, unexplained],
    at,
  );
  return (-0.5 * unexplained) / noise2;
};

const logPrior = (b: Beliefs, pressure: number, alkalinity: number): number => {
  const z = (pressure - b.pressure.mean) / b.pressure.sd;
  const kit = b.kit ? (alkalinity - b.kit.value) / b.kit.error : 0;
  const over = alkalinity > b.mostAlkalinity ? log(alkalinity / b.mostAlkalinity) / 0.3 : 0;
  return -0.5 * (z * z + kit * kit + over * over);
};

export interface Explored {
  readonly logs: Float64Array;
  readonly state: Float64Array;
  readonly best: number;
}

export const explore = (b: Beliefs, s: Series, nodes: Nodes): Explored => {
  const n = nodes.ph0.length;
  const logs = new Float64Array(n);
  const state = new Float64Array(n * WIDTH);
  let best = -Infinity;
  for (let i = 0; i < n; i++) {
    const kind = KINDS[nodes.kind[i] ?? 0];
    const pressure = nodes.pressure[i] ?? 0;
    if (!kind) continue;
    const likelihood = follow(
      b,
      s,
      nodes.ph0[i] ?? 7,
      b.conditions.kh * 10 ** pressure,
      kind,
      state,
      i * WIDTH,
    );
    const l = likelihood + logPrior(b, pressure, state[i * WIDTH + ALKALINITY0] ?? 0) + kind.log;
    logs[i] = l;
    if (l > best) best = l;
  }
  return { logs, state, best };
};

export const firstNodes = (b: Beliefs, first: number, losesGas: boolean): Nodes => {
  const reach = 3.5 * hypot(b.noise, b.offset);
  const lowest = max(-5.5, b.pressure.mean - 3.5 * b.pressure.sd);
  const highest = min(-0.4, b.pressure.mean + 3.5 * b.pressure.sd);
  const phGap = (2 * reach) / (COARSE_PH - 1);
  const pressureGap = (highest - lowest) / (COARSE_PRESSURE - 1);
  const nodes: Nodes = { ph0: [], pressure: [], kind: [], phGap, pressureGap };
  for (let kind = 0; kind < KINDS.length; kind++)
    if (losesGas || isFirstKind(kind))
      for (let i = 0; i < COARSE_PH; i++)
        for (let j = 0; j < COARSE_PRESSURE; j++)
          put(nodes, first - reach + i * phGap, lowest + j * pressureGap, kind);
  return nodes;
};

const put = (nodes: Nodes, ph0: number, pressure: number, kind: number): void => {
  nodes.ph0.push(ph0);
  nodes.pressure.push(pressure);
  nodes.kind.push(kind);
};

/** Each cell that still carries weight becomes nine of a third of its width. */
export const refined = (nodes: Nodes, { logs, best }: Explored): Nodes => {
  const finer: Nodes = {
    ph0: [],
    pressure: [],
    kind: [],
    phGap: nodes.phGap / 3,
    pressureGap: nodes.pressureGap / 3,
  };
  for (let i = 0; i < logs.length; i++) {
    if ((logs[i] ?? -Infinity) < best - DEPTH) continue;
    for (let u = -1; u <= 1; u++)
      for (let v = -1; v <= 1; v++)
        put(
          finer,
          (nodes.ph0[i] ?? 0) + u * finer.phGap,
          (nodes.pressure[i] ?? 0) + v * finer.pressureGap,
          nodes.kind[i] ?? 0,
        );
  }
  return finer;
};
