// Long: the water between two readings, from its events to its estimate.
import type { Cloud } from './cloud';
import { quantile } from './cloud';
import type { TitrationEntry, EventName, Log, Suspect } from './log';
import { NIGHT_HOURS } from './log';
import { carbonDioxideAt, samplePH } from './model';
import { airedPH } from './open';
import { posterior } from './posterior';
import type { Beliefs, Series } from './series';

/**
 * The stretch of the readings that still speaks of the water as it is. Airing, a night, a refill, rain, or a
 * confirmed reading that nothing before explains begin a new one: its first reading, with what is then
 * believed about the gas, says more than all before it.
 */
export interface Segment {
  readonly beliefs: Beliefs;
  readonly series: Series;
  /** mmol/L given when the stretch began. */
  readonly base: number;
  /** The water has stood under air since it came in. */
  readonly isAired: boolean;
  /** Two readings agree. */
  readonly isSettled: boolean;
  /** pH of the vat itself where the reading is of an aired jar. */
  readonly vatReading?: number | undefined;
  /** Moved at one and the same dose, nobody wrote down why: not mixed yet, or gas on the way. */
  readonly isRestless: boolean;
  /** A new water came in with this stretch: part-doses before it no longer count. */
  readonly firstEntry: number;
}

/** log10 of the CO2 pressure outdoors, atm, after what happened (judgement; the air is at −3.38). */
const GAS = {
  /** After an hour of strong air, still perhaps on the way. */
  aired: { mean: -3, sd: 0.45 },
  /** Two readings under air agree. */
  settled: { mean: -3.34, sd: 0.13 },
  jar: { mean: -3.28, sd: 0.22 },
  night: { mean: -3.1, sd: 0.4 },
  /** A night after air had done its work. */
  nightAired: { mean: -3.3, sd: 0.16 },
  /** It moved by itself, nobody wrote down why. */
  moved: { mean: -2.8, sd: 0.6 },
  /** Readings that nothing before explains, in water that had been aired. */
  airedBefore: { mean: -3.2, sd: 0.4 },
} as const;

/** A repeat reading this far from the one before says the water is not at rest. */
export const RESTLESS = 0.12;
/** The same in standard errors of a reading: one decimal and paper strips scatter more than that. */
const RESTLESS_ERRORS = 3;
export const tolerance = (b: Beliefs): number => Math.max(RESTLESS, RESTLESS_ERRORS * b.noise);
/** A first reading outside these is read again before anything is built on it (judgement). */
export const USUAL = { low: 4, high: 9 } as const;

/** What the kit said of the untouched water, with the product that has gone in since. */
const kitAfter = ({ kit, equivalents }: Beliefs, dose: number): Beliefs['kit'] =>
  kit && { ...kit, value: kit.value + equivalents * dose };

const begin = (
  b: Beliefs,
  entry: TitrationEntry,
  pressure: Beliefs['pressure'],
  flags: Pick<Segment, 'isAired' | 'isSettled' | 'firstEntry'> & {
    readonly vatReading?: number;
    readonly isRestless?: boolean;
  },
): Segment => ({
  isRestless: false,
  beliefs: {
    ...b,
    pressure,
    isUnderAir: flags.isAired,
    kit: flags.firstEntry === 0 ? kitAfter(b, entry.dose) : undefined,
  },
  series: { doses: [0], readings: [levelOf(entry)], settled: [true] },
  base: entry.dose,
  ...flags,
});

/** The reading, or the middle of the two that agree. */
export const levelOf = ({ reading, again }: TitrationEntry): number =>
  again === undefined ? reading : (reading + again) / 2;

/** A repeat that agrees settles the reading it repeats too. */
const settledWith = (
  { series, base }: Segment,
  entry: TitrationEntry,
  isSettled: boolean,
): readonly boolean[] => {
  const before = series.settled ?? [];
  const isRepeat = entry.dose - base === series.doses.at(-1);
  return isRepeat && isSettled ? [...before.slice(0, -1), true, true] : [...before, isSettled];
};

const extended = (segment: Segment, entry: TitrationEntry, isSettled: boolean): Segment => ({
  ...segment,
  series: {
    doses: [...segment.series.doses, entry.dose - segment.base],
    readings: [...segment.series.readings, levelOf(entry)],
    settled: settledWith(segment, entry, isSettled),
  },
  isSettled,
  isRestless: false,
});

const clouds = new WeakMap<Segment, Cloud>();
/** What the stretch says about the water. Where the reading is of a jar, the vat's own gas is put back. */
export const cloudOf = (segment: Segment): Cloud => {
  let cloud = clouds.get(segment);
  if (!cloud) {
    cloud = posterior(segment.beliefs, segment.series);
    if (segment.vatReading !== undefined) cloud = inVat(segment.beliefs, cloud, segment.vatReading);
    clouds.set(segment, cloud);
  }
  return cloud;
};

const inVat = ({ conditions: c }: Beliefs, cloud: Cloud, ph: number): Cloud => {
  const carbons = cloud.carbons.map((carbon, i) => {
    // Carbon at which the balance found in the jar stands at the vat's own pH; never less than in the jar.
    let low = carbon;
    let high = Math.max(20, 4 * carbon);
    for (let step = 0; step < 30; step++) {
      const middle = (low + high) / 2;
      if (samplePH(c, cloud.balances[i] ?? 0, middle, cloud.sites[i] ?? 0, ph) > ph) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  });
  const now = carbons.map((carbon, i) =>
    samplePH(c, cloud.balances[i] ?? 0, carbon, cloud.sites[i] ?? 0, ph),
  );
  return { ...cloud, carbons, now };
};

/** Most of the gas above the air's that leaves while a dose mixes. */
export const MIXING_LOSS = 0.6;
/** Parts in which gas leaves: the pH, and with it the gas that is left to leave, moves meanwhile. */
const PARTS = 3;
/** pH that may be read after a further dose, from the least to the most gas that can have moved meanwhile. */
const reachable = (
  segment: Segment,
  added: number,
  mostExchange: number,
): { readonly low: number; readonly high: number } => {
  const { beliefs: b } = segment;
  const { conditions: c } = b;
  const cloud = cloudOf(segment);
  const after = (exchange: number): number[] =>
    cloud.now.map((now, i) => {
      const balance = (cloud.balances[i] ?? 0) + b.equivalents * added;
      const sites = cloud.sites[i] ?? 0;
      let carbon = (cloud.carbons[i] ?? 0) + b.carbonEach * added;
      let ph = samplePH(c, balance, carbon, sites, now);
      for (let part = 0; part < PARTS && exchange > 0; part++) {
        carbon -= (1 - (1 - exchange) ** (1 / PARTS)) * (carbonDioxideAt(c, carbon, ph) - b.airCO2);
        ph = samplePH(c, balance, carbon, sites, ph);
      }
      return ph;
    });
  const closed = after(0);
  const moved = after(mostExchange);
  return {
    low: Math.min(quantile(cloud, closed, 0.025), quantile(cloud, moved, 0.025)),
    high: Math.max(quantile(cloud, closed, 0.975), quantile(cloud, moved, 0.975)),
  };
};

const isBelieved = (segment: Segment, entry: TitrationEntry, mostExchange: number): true | Suspect => {
  const { low, high } = reachable(
    segment,
    entry.dose - segment.base - (segment.series.doses.at(-1) ?? 0),
    mostExchange,
  );
  const room = tolerance(segment.beliefs);
  const read = levelOf(entry);
  return read >= low - room && read <= high + room
    ? true
    : { read, expected: { low, likely: (low + high) / 2, high } };
};

/** Abscissa at which the bell curve's tail is what is asked below; logistic stand-in for its integral. */
const below = (z: number): number => 1 / (1 + Math.exp(-1.702 * z));
/** Chance that a reading after the last dose falls as low as it did, or lower, by what was known before it. */
export const chanceAsLow = (before: Segment, added: number, read: number): number => {
  const { beliefs: b } = before;
  const cloud = cloudOf(before);
  return cloud.now.reduce((sum, now, i) => {
    const ph = samplePH(
      b.conditions,
      (cloud.balances[i] ?? 0) + b.equivalents * added,
      (cloud.carbons[i] ?? 0) + b.carbonEach * added,
      cloud.sites[i] ?? 0,
      now,
    );
    return sum + (cloud.weights[i] ?? 0) * below((read - ph) / (Math.SQRT2 * b.noise));
  }, 0);
};
/**
 * A reading lower than so many of 100 expected after a dose is read again: perhaps it has not mixed. In a vat where
 * that has been so before, any reading is.
 */
export const AS_LOW = { usual: 0.15, slow: 0.6 } as const;

export const eventOf = ({ event, hours }: TitrationEntry): EventName =>
  event === '' && hours !== undefined && hours >= NIGHT_HOURS ? 'night' : event;

export interface Walked {
  readonly segment: Segment;
  /** The last reading is not believed yet. */
  readonly suspect: Suspect | undefined;
  readonly isUnusual: boolean;
  /** The last reading lies low after its dose and stands alone. */
  readonly isLow: boolean;
  /** One of the readings at the present dose lay low. */
  readonly wasLow: boolean;
  /** A reading after an earlier dose lay low: this vat mixes slowly, or is read too early. */
  readonly isSlow: boolean;
}

const agree = (b: Beliefs, one: number, other: number): boolean =>
  Math.abs(one - other) <= tolerance(b) + 1e-9;

const AIRED: readonly EventName[] = ['aired', 'jar', 'night'];

const RENEWED: readonly EventName[] = ['refill', 'change', 'rain'];

const started = (b: Beliefs, first: TitrationEntry): Walked => ({
  segment: begin(b, first, b.pressure, {
    isAired: b.pressure.mean < -3,
    isSettled: isConfirmed(b, first),
    firstEntry: 0,
  }),
  suspect: undefined,
  isUnusual: (first.reading < USUAL.low || first.reading > USUAL.high) && first.again === undefined,
  isLow: false,
  wasLow: false,
  isSlow: false,
});

const isConfirmedNow = (
  b: Beliefs,
  entry: TitrationEntry,
  before: TitrationEntry,
  suspect: Suspect | undefined,
): boolean =>
  isConfirmed(b, entry) ||
  (suspect !== undefined && entry.dose === before.dose && agree(b, entry.reading, suspect.read));

/** What is known after one more line of the log. */
const onward = (
  b: Beliefs,
  known: Walked,
  entry: TitrationEntry,
  before: TitrationEntry,
  i: number,
): Walked => {
  const { segment } = known;
  const event = eventOf(entry);
  const isSlow = known.isSlow || (known.wasLow && entry.dose > before.dose);
  const calm = { suspect: undefined, isUnusual: false, isLow: false, wasLow: false, isSlow };
  if (RENEWED.includes(event)) {
    const flags = { isAired: false, isSettled: isConfirmed(b, entry), firstEntry: i };
    return { ...calm, segment: begin(b, entry, b.pressure, flags) };
  }
  const wasLow = known.wasLow && entry.dose === before.dose;
  const step = stepOf(b, segment, entry, before, event);
  if (!isSuspect(step)) {
    const isLow = event === '' && liesLow(b, segment, entry, before, isSlow ? AS_LOW.slow : AS_LOW.usual);
    return { ...calm, segment: step, isLow, wasLow: wasLow || isLow };
  }
  if (!isConfirmedNow(b, entry, before, known.suspect)) return { ...calm, segment, suspect: step, wasLow };
  const isAired = segment.isAired || AIRED.includes(event);
  const flags = { isAired, isSettled: true, firstEntry: segment.firstEntry };
  return { ...calm, wasLow, segment: begin(b, entry, segment.isAired ? GAS.airedBefore : GAS.moved, flags) };
};

/** Reads the log from its first line to its last. */
export const walk = (b: Beliefs, log: Log): Walked => {
  const [first, ...rest] = log;
  if (!first) throw new Error('a log has a first reading');
  return rest.reduce((known, entry, i) => onward(b, known, entry, log[i] ?? first, i + 1), started(b, first));
};

const liesLow = (
  b: Beliefs,
  segment: Segment,
  entry: TitrationEntry,
  before: TitrationEntry,
  asLow: number,
): boolean =>
  entry.dose > before.dose &&
  !isConfirmed(b, entry) &&
  segment.vatReading === undefined &&
  chanceAsLow(segment, entry.dose - before.dose, levelOf(entry)) < asLow;

const isSuspect = (step: Segment | Suspect): step is Suspect => 'read' in step;
const isConfirmed = (b: Beliefs, { reading, again }: TitrationEntry): boolean =>
  again !== undefined && agree(b, reading, again);

/** The stretch with one more reading in it, a new one, or why the reading is not believed. */
const stepOf = (
  b: Beliefs,
  segment: Segment,
  entry: TitrationEntry,
  before: TitrationEntry,
  event: EventName,
): Segment | Suspect => {
  const isSame = entry.dose === before.dose;
  const rise = levelOf(entry) - (segment.vatReading ?? segment.series.readings.at(-1) ?? NaN);
  const isStill = isSame && Math.abs(rise) <= tolerance(b);
  const isUnderAir = AIRED.includes(event);
  if (!isUnderAir && isStill) return extended(segment, entry, true);
  const believed = isBelieved(segment, entry, isUnderAir || isSame ? 1 : MIXING_LOSS);
  if (believed !== true) return believed;
  if (isUnderAir) return underAir(b, segment, entry, event, isStill);
  // A jar tells the balance, not the gas in the vat: what is read in the vat after a dose begins anew.
  if (!isSame && segment.vatReading === undefined) return extended(segment, entry, isConfirmed(b, entry));
  return begin(b, entry, segment.isAired ? GAS.airedBefore : GAS.moved, {
    isAired: segment.isAired,
    isSettled: isConfirmed(b, entry),
    isRestless: isSame && !isConfirmed(b, entry),
    firstEntry: segment.firstEntry,
  });
};

/**
 * Share of the gas above the air's that an hour of strong air leaves, and how often each is met: 1.2 to 3 times its
 * amount leave an hour (from memory); less where the air is weak.
 */
const LEFT: readonly (readonly [left: number, often: number])[] = [
  [0.05, 0.25],
  [0.12, 0.3],
  [0.25, 0.3],
  [0.45, 0.15],
];
/** Most samples that are followed through the air (time of one call). */
const FOLLOWED = 100;
/** Least that is believed of the spread of the gas after air, log10. */
const LEAST_SPREAD = 0.13;

/**
 * What gas is left after air, by how far the pH has risen: of each water that the readings before allow, the air
 * leaves some shares; those count that lead to the pH read. Mean and deviation of log10 atm.
 */
const gasLeft = (b: Beliefs, segment: Segment, read: number): Beliefs['pressure'] => {
  const cloud = cloudOf(segment);
  const { conditions: c } = b;
  const every = Math.max(1, Math.ceil(cloud.weights.length / FOLLOWED));
  let [sum, mean, square] = [0, 0, 0];
  for (let i = 0; i < cloud.weights.length; i += every) {
    const [balance, carbon, sites] = [cloud.balances[i] ?? 0, cloud.carbons[i] ?? 0, cloud.sites[i] ?? 0];
    const air = (cloud.airs[i] ?? 1) * b.airCO2;
    const excess = carbonDioxideAt(c, carbon, cloud.now[i] ?? 7) - air;
    for (const [left, often] of LEFT) {
      const gas = air + left * excess;
      const miss = (read - (cloud.offsets[i] ?? 0) - airedPH(c, gas, { balance, sites })) / b.noise;
      const weight = (cloud.weights[i] ?? 0) * often * Math.exp(-0.25 * miss * miss);
      const pressure = Math.log10((gas / air) * (b.airCO2 / c.kh));
      sum += weight;
      mean += weight * pressure;
      square += weight * pressure * pressure;
    }
  }
  if (!(sum > 1e-9)) return GAS.aired;
  mean /= sum;
  return { mean, sd: Math.max(LEAST_SPREAD, Math.sqrt(Math.max(0, square / sum - mean * mean))) };
};

const gasUnder = (
  b: Beliefs,
  segment: Segment,
  entry: TitrationEntry,
  event: EventName,
  isSettled: boolean,
): Beliefs['pressure'] => {
  if (isSettled) return GAS.settled;
  if (event === 'night') return segment.isAired ? GAS.nightAired : GAS.night;
  return event === 'jar' || segment.vatReading !== undefined ? GAS.jar : gasLeft(b, segment, levelOf(entry));
};

const underAir = (
  b: Beliefs,
  segment: Segment,
  entry: TitrationEntry,
  event: EventName,
  isStill: boolean,
): Segment => {
  const { firstEntry, series } = segment;
  const isJar = event === 'jar';
  // Air that moves nothing says as much as two readings under air.
  const isSettled = isConfirmed(b, entry) || isStill;
  return begin(b, entry, gasUnder(b, segment, entry, event, isSettled), {
    isAired: true,
    isSettled: isSettled || isJar,
    firstEntry,
    ...(isJar ? { vatReading: series.readings.at(-1) ?? entry.reading } : {}),
  });
};
