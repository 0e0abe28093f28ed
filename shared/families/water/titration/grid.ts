// Long: one grid, from laying it out to its quantiles; the steps share working arrays that stay out of every call.
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
  /** Kinds of one course differ only in what a reading has not seen: the water goes the same way. */
  readonly course: number;
  readonly log: number;
  /** log10 of the air's CO2 as times that outdoors. */
  readonly shift: number;
}
const supposed = (
  gases: readonly Gas[],
  organic: readonly (readonly [sites: number, often: number])[],
): readonly Supposed[] =>
  organic.flatMap(([sites, often], i) =>
    gases.flatMap((gas, j) =>
      UNSEEN.map(([unseen, times]) => ({
        ...gas,
        sites,
        unseen,
        course: i * gases.length + j,
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

/** Errors of the readings under one kind: squares of their own and of the shared one, and what the wider costs. */
interface Errors {
  readonly noise2: number;
  readonly offset2: number;
  readonly wider: number;
}
const errorsOf = ({ noise, offset }: Beliefs, sites: number, n: number): Errors => {
  const own2 = noise * noise;
  const noise2 = sites > 0 && n > 1 ? own2 + SITES_ERROR * SITES_ERROR : own2;
  const offset2 = offset * offset;
  // The wider error of a kind costs it height: without that it would always win.
  const wider =
    noise2 === own2 ? 0 : (n - 1) * log(noise2 / own2) + log((noise2 + n * offset2) / (own2 + n * offset2));
  return { noise2, offset2, wider };
};

/** A supposed water on its way through the series: where it stands after each reading reached so far. */
interface Course {
  reached: number;
  balance: number;
  carbon: number;
  ph: number;
  readonly balances: Float64Array;
  readonly carbons: Float64Array;
  readonly phs: Float64Array;
  firstAlkalinity: number;
}
const courseOf = (n: number): Course => ({
  reached: 0,
  balance: 0,
  carbon: 0,
  ph: 7,
  balances: new Float64Array(n),
  carbons: new Float64Array(n),
  phs: new Float64Array(n),
  firstAlkalinity: 0,
});

/** mmol/L given between the reading before and this one. */
const addedAt = (s: Series, i: number): number => (s.doses[i] ?? 0) - (i > 0 ? (s.doses[i - 1] ?? 0) : 0);

const begun = (course: Course, b: Beliefs, ph0: number, co2: number, sites: number): void => {
  const { balance, carbon } = sampleFrom(b.conditions, ph0, co2, sites);
  course.reached = 0;
  course.balance = balance;
  course.carbon = carbon;
  course.ph = ph0;
  course.firstAlkalinity = balance - (sites > 0 ? sites * sitesOpen(10 ** -ph0) : 0);
};

/** Follows the water to its next reading. */
const onward = (course: Course, b: Beliefs, s: Series, { sites, loss, air }: Supposed): void => {
  const { conditions: c } = b;
  const i = course.reached;
  const added = addedAt(s, i);
  if (i > 0 || added > 0) {
    course.balance += b.equivalents * added;
    course.carbon += b.carbonEach * added;
    if (added !== 0) course.ph = samplePH(c, course.balance, course.carbon, sites, course.ph);
    // Water that a dose has robbed of gas takes some in again: the excess may be below nothing.
    const excess = loss > 0 ? carbonDioxideAt(c, course.carbon, course.ph) - air * b.airCO2 : 0;
    if (excess !== 0) {
      course.carbon -= loss * excess;
      course.ph = samplePH(c, course.balance, course.carbon, sites, course.ph);
    }
  }
  course.balances[i] = course.balance;
  course.carbons[i] = course.carbon;
  course.phs[i] = course.ph;
  course.reached++;
};

/** The pH a reading of a course shows where part of the dose has not come yet. */
const shownAt = (b: Beliefs, s: Series, { unseen, sites }: Supposed, course: Course, i: number): number => {
  const ph = course.phs[i] ?? NaN;
  const hidden = unseen > 0 && s.settled?.[i] !== true ? unseen * addedAt(s, i) : 0;
  if (!(hidden > 0)) return ph;
  const balance = (course.balances[i] ?? 0) - b.equivalents * hidden;
  return samplePH(b.conditions, balance, (course.carbons[i] ?? 0) - b.carbonEach * hidden, sites, ph);
};

/**
 * Log likelihood of what was read on a course, whose state at the end goes into `out`. Every further reading lowers
 * it: a course is left, with −∞, as soon as it lies below `least`.
 */
const judged = (
  b: Beliefs,
  s: Series,
  kind: Supposed,
  { noise2, offset2, wider }: Errors,
  course: Course,
  least: number,
  out: Float64Array,
  at: number,
): number => {
  const n = s.readings.length;
  let sum = 0;
  let squares = 0;
  let height = 0;
  for (let i = 0; i < n; i++) {
    if (course.reached === i) onward(course, b, s, kind);
    const miss = (s.readings[i] ?? 0) - shownAt(b, s, kind, course, i);
    sum += miss;
    squares += miss * miss;
    // The offset is shared by all readings: integrated out, it leaves this much of the squares.
    out[at + OFFSET] = (sum * offset2) / (noise2 + (i + 1) * offset2);
    out[at + UNEXPLAINED] = squares - sum * (out[at + OFFSET] ?? 0);
    height = -0.5 * ((out[at + UNEXPLAINED] ?? 0) / noise2 + wider);
    if (height < least) return -Infinity;
  }
  out[at + BALANCE] = course.balance;
  out[at + CARBON] = course.carbon;
  out[at + NOW] = course.ph;
  return height;
};

/** What the pressure alone takes from a node, and the kit with the usual in fresh water. */
const pressurePrior = (b: Beliefs, pressure: number): number =>
  -0.5 * ((pressure - b.pressure.mean) / b.pressure.sd) ** 2;
const alkalinityPrior = (b: Beliefs, alkalinity: number): number => {
  const kit = b.kit ? (alkalinity - b.kit.value) / b.kit.error : 0;
  const over = alkalinity > b.mostAlkalinity ? log(alkalinity / b.mostAlkalinity) / 0.3 : 0;
  return -0.5 * (kit * kit + over * over);
};

export interface Explored {
  readonly logs: Float64Array;
  readonly state: Float64Array;
  readonly best: number;
}

/** Log likelihood of every node that comes within DEPTH of the best, of which one is known already; −∞ of the rest. */
export const explore = (b: Beliefs, s: Series, nodes: Nodes, known = -Infinity): Explored => {
  const n = nodes.ph0.length;
  const logs = new Float64Array(n).fill(-Infinity);
  const state = new Float64Array(n * WIDTH);
  const kinds = kindsOf(b);
  const errors = kinds.map(({ sites }) => errorsOf(b, sites, s.readings.length));
  const course = courseOf(s.readings.length);
  let [ph0, pressure, way, co2] = [NaN, NaN, -1, 0];
  let best = known;
  for (let i = 0; i < n; i++) {
    const which = nodes.kind[i] ?? 0;
    const [kind, error] = [kinds[which], errors[which]];
    if (!kind || !error) continue;
    const at = i * WIDTH;
    state[at + UNEXPLAINED] = Infinity;
    const here = nodes.pressure[i] ?? 0;
    let prior = pressurePrior(b, here - kind.shift) + kind.log;
    if (prior < best - DEPTH) continue;
    // Kinds of one course stand beside each other (put): the water is followed once for both.
    if (nodes.ph0[i] !== ph0 || here !== pressure || kind.course !== way) {
      ph0 = nodes.ph0[i] ?? 7;
      pressure = here;
      way = kind.course;
      co2 = b.conditions.kh * 10 ** pressure;
      begun(course, b, ph0, co2, kind.sites);
    }
    prior += alkalinityPrior(b, course.firstAlkalinity);
    state[at + ALKALINITY0] = course.firstAlkalinity;
    state[at + CO2_0] = co2;
    const l = prior + judged(b, s, kind, error, course, best - DEPTH - prior, state, at);
    logs[i] = l;
    if (l > best) best = l;
  }
  return { logs, state, best };
};

/** A dose went in before a reading that stands alone: the reading may not have seen all of it. */
const hidesDose = (s: Series): boolean =>
  s.readings.some((_, i) => s.settled?.[i] !== true && addedAt(s, i) > 0);

export const firstNodes = (b: Beliefs, s: Series): Nodes => {
  const first = s.readings[0] ?? 7;
  // One reading cannot have lost gas yet.
  const losesGas = s.readings.length > 1;
  const unseens = hidesDose(s) ? UNSEEN.length : 1;
  const reach = 3.5 * hypot(b.noise, b.offset);
  const lowest = max(-5.5, b.pressure.mean - 3.5 * b.pressure.sd);
  const highest = min(-0.4, b.pressure.mean + 3.5 * b.pressure.sd);
  const phGap = (2 * reach) / (COARSE_PH - 1);
  const places = max(COARSE_PRESSURE.fewest, Math.ceil((highest - lowest) / COARSE_PRESSURE.gap) + 1);
  const pressureGap = (highest - lowest) / (places - 1);
  const nodes: Nodes = { ph0: [], pressure: [], kind: [], phGap, pressureGap };
  const kinds = kindsOf(b);
  const gases = GASES[b.isUnderAir ? 'aired' : 'still'].length;
  for (let kind = 0; kind < kinds.length; kind += UNSEEN.length) {
    // Gas lost after a lone reading leaves it as it is: the shares take turns.
    const turn = (kind / UNSEEN.length) % gases;
    for (const i of outward(COARSE_PH))
      for (const j of outward(places))
        if (losesGas || (i + j) % gases === turn)
          for (let unseen = 0; unseen < unseens; unseen++)
            put(
              nodes,
              first - reach + i * phGap,
              lowest + j * pressureGap + (kinds[kind]?.shift ?? 0),
              kind + unseen,
            );
  }
  return nodes;
};

/** 0 to n − 1 from the middle out: the likeliest nodes come first, and spare the others their way. */
const outward = (n: number): readonly number[] =>
  Array.from({ length: n }, (_, i) => ((n - 1) >> 1) + (i % 2 === 0 ? -i / 2 : (i + 1) / 2));

const put = (nodes: Nodes, ph0: number, pressure: number, kind: number): void => {
  nodes.ph0.push(ph0);
  nodes.pressure.push(pressure);
  nodes.kind.push(kind);
};

/** Nodes, kinds of one course together, that still carry weight. */
const carrying = (
  { ph0, pressure, kind }: Nodes,
  { logs, best }: Explored,
): readonly (readonly number[])[] => {
  const cells: number[][] = [];
  const counts = (i: number): boolean => (logs[i] ?? -Infinity) >= best - DEPTH;
  for (let i = 0; i < logs.length; i++) {
    const hasTwin = ph0[i] === ph0[i + 1] && pressure[i] === pressure[i + 1] && isTwin(kind[i], kind[i + 1]);
    const cell = (hasTwin ? [i, i + 1] : [i]).filter(counts);
    if (cell.length > 0) cells.push(cell);
    if (hasTwin) i++;
  }
  return cells;
};

/** Parts into which the width of a cell is cut, and where their middles lie, in widths of the cell. */
const CUTS = { 3: [0, -1 / 3, 1 / 3], 2: [-1 / 4, 1 / 4] } as const;

/**
 * Each cell that still carries weight is divided: into nine where no more than `most` nodes come of it, else into
 * four; undefined where those too are more.
 */
export const refined = (nodes: Nodes, found: Explored, most: number): Nodes | undefined => {
  const cells = carrying(nodes, found);
  const held = cells.reduce((sum, cell) => sum + cell.length, 0);
  const parts = 9 * held <= most ? 3 : 2;
  if (parts * parts * held > most) return undefined;
  const { ph0, pressure, kind, phGap, pressureGap } = nodes;
  const finer: Nodes = {
    ph0: [],
    pressure: [],
    kind: [],
    phGap: phGap / parts,
    pressureGap: pressureGap / parts,
  };
  for (const cell of cells) {
    const [x, y] = [ph0[cell[0] ?? 0] ?? 0, pressure[cell[0] ?? 0] ?? 0];
    for (const u of CUTS[parts])
      for (const v of CUTS[parts])
        for (const i of cell) put(finer, x + u * phGap, y + v * pressureGap, kind[i] ?? 0);
  }
  return finer;
};

/** The two differ only in what a reading has not seen. */
const isTwin = (one = 0, other = 0): boolean =>
  other === one + 1 && other % UNSEEN.length === UNSEEN.length - 1 && UNSEEN.length === 2;
