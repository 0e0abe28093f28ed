import type { Beliefs, Series } from './series';
import { carbonDioxideAt, sampleFrom, samplePH, sitesOpen } from './model';

// Taken out of Math once: these run in the innermost loops.
const { hypot, log, max, min } = Math;

/** One supposition of the gas: share of the gap to the air's that closes, the air's CO2, how often it is met. */
interface Gas {
  readonly loss: number;
  /** CO2 of the air over the vat, as times that of the air outdoors. */
  readonly air: number;
  readonly often: number;
}
/**
 * Share of the gap between the gas in the water and the air's that closes between a dose and the next reading: of
 * an hour in still shallow water 0.3, under strong air 2 (from memory). It closes both ways: water that a dose has
 * robbed of gas takes some in, and under air that says how much CO2 the air of the place holds: 600 to 1000 ppm
 * indoors (WATER facts). How often each is met is judgement.
 */
export const GASES: Readonly<Record<'still' | 'aired', readonly Gas[]>> = {
  still: [
    { loss: 0.05, air: 1, often: 0.6 },
    { loss: 0.35, air: 1, often: 0.4 },
  ],
  aired: [
    { loss: 0.25, air: 1, often: 0.3 },
    { loss: 0.5, air: 1, often: 0.3 },
    { loss: 0.3, air: 1.7, often: 0.2 },
    { loss: 0.5, air: 1.7, often: 0.2 },
  ],
};
/** Organic acid sites, meq/L, and how often each is met (judgement): in water nobody called brown, and in brown. */
export const SITES: Readonly<
  Record<'unknown' | 'brown', readonly (readonly [sites: number, often: number])[]>
> = {
  unknown: [
    [0, 0.78],
    [0.1, 0.13],
    [0.3, 0.09],
  ],
  brown: [
    [0, 0.15],
    [0.06, 0.3],
    [0.18, 0.3],
    [0.36, 0.25],
  ],
};
/** What three kinds of site leave unsaid of real acids, as an error of each of several readings, pH (judgement). */
const SITES_ERROR = 0.1;

/** Share of a part-dose that a lone reading has not seen yet, and how often each is met (judgement). */
const UNSEEN = [
  [0, 0.65],
  [0.5, 0.35],
] as const;

/** One supposition of what happens between two readings, with the log of how often it is met. */
interface Supposed extends Gas {
  readonly sites: number;
  readonly unseen: number;
  readonly log: number;
  /** log10 of the air's CO2 as times that outdoors. */
  readonly shift: number;
}
const supposed = (
  gases: readonly Gas[],
  organic: readonly (readonly [sites: number, often: number])[],
): readonly Supposed[] =>
  organic.flatMap(([sites, often]) =>
    gases.flatMap((gas) =>
      UNSEEN.map(([unseen, times]) => ({
        ...gas,
        sites,
        unseen,
        log: log(often * gas.often * times),
        shift: Math.log10(gas.air),
      })),
    ),
  );
const KINDS = {
  still: { unknown: supposed(GASES.still, SITES.unknown), brown: supposed(GASES.still, SITES.brown) },
  aired: { unknown: supposed(GASES.aired, SITES.unknown), brown: supposed(GASES.aired, SITES.brown) },
} as const;
/** Every combination of site, gas and unseen share. */
export const kindsOf = ({ isUnderAir, isBrown }: Beliefs): readonly Supposed[] =>
  KINDS[isUnderAir ? 'aired' : 'still'][isBrown ? 'brown' : 'unknown'];

/** Nodes of the first grid. */
const COARSE_PH = 7;
/** Most between two nodes, log10 of the CO2 pressure, and fewest nodes. */
const COARSE_PRESSURE = { gap: 0.22, fewest: 9 } as const;
/** Log-likelihood depth within which a node still counts. */
export const DEPTH = 10;

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

/** Log likelihood of misses, from their sum and the sum of their squares. */
const weighed = (
  { noise, offset }: Beliefs,
  sites: number,
  n: number,
  sum: number,
  squares: number,
): { readonly height: number; readonly shared: number; readonly unexplained: number } => {
  const own2 = noise * noise;
  const noise2 = sites > 0 && n > 1 ? own2 + SITES_ERROR * SITES_ERROR : own2;
  const offset2 = offset * offset;
  // The offset is shared by all readings: integrated out, it leaves this much of the squares.
  const shared = offset2 / (noise2 + n * offset2);
  const unexplained = squares - sum * sum * shared;
  // The wider error of a kind costs it height: without that it would always win.
  const wider =
    noise2 === own2 ? 0 : (n - 1) * log(noise2 / own2) + log((noise2 + n * offset2) / (own2 + n * offset2));
  return { height: -0.5 * (unexplained / noise2 + wider), shared, unexplained };
};

/**
 * Follows one supposed water through the series, writes its state at the end into `out` and returns its log
 * likelihood.
 */
const follow = (
  b: Beliefs,
  s: Series,
  ph0: number,
  co2: number,
  { sites, loss, unseen, air }: Supposed,
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
      const excess = loss > 0 ? carbonDioxideAt(c, carbon, ph) - air * b.airCO2 : 0;
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
  const { height, shared, unexplained } = weighed(b, sites, n, sum, squares);
  out.set(
    [balance, carbon, ph, start.balance - sites * sitesOpen(10 ** -ph0), co2, sum * shared, unexplained],
    at,
  );
  return height;
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
  const kinds = kindsOf(b);
  let best = -Infinity;
  for (let i = 0; i < n; i++) {
    const kind = kinds[nodes.kind[i] ?? 0];
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
    const l = likelihood + logPrior(b, pressure - kind.shift, state[i * WIDTH + ALKALINITY0] ?? 0) + kind.log;
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
  const places = max(COARSE_PRESSURE.fewest, Math.ceil((highest - lowest) / COARSE_PRESSURE.gap) + 1);
  const pressureGap = (highest - lowest) / (places - 1);
  const nodes: Nodes = { ph0: [], pressure: [], kind: [], phGap, pressureGap };
  const kinds = kindsOf(b);
  const gases = GASES[b.isUnderAir ? 'aired' : 'still'].length;
  for (let kind = 0; kind < kinds.length; kind++) {
    // One reading alone has hidden no dose, and gas lost after it leaves it as it is: the shares take turns.
    if (!losesGas && kinds[kind]?.unseen !== 0) continue;
    const turn = Math.floor(kind / UNSEEN.length) % gases;
    for (let i = 0; i < COARSE_PH; i++)
      for (let j = 0; j < places; j++)
        if (losesGas || (i + j) % gases === turn)
          put(nodes, first - reach + i * phGap, lowest + j * pressureGap + (kinds[kind]?.shift ?? 0), kind);
  }
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
