import { DEFAULT_PREPARATION } from '../../preparations';
import { orderFault } from '../kernels/logFaults';
import type { Profile, LifeStage } from '../kernels/profile';
import type { RateCurve } from '../kernels/rateCurve';
import { kills } from '../kernels/tolerance';
import type { Track } from '../kernels/track';
import { doneAt, gapWithin, makeTrack, strayWithin, timeWhen } from '../kernels/track';
import { hatchWindow, stripWindow } from '../kernels/window';
import { HOURS_PER_DAY } from '../../../units/convert';
import { celsius, hours, moment } from '../../../units/quantities';
import type { CellError } from '../../../base/values';
import { isError } from '../../../base/values';
import { num, series } from '../../../functions/params';
import { SERIALS } from './latency';
import * as say from './logSay';
import { hoursOf, profileFor } from './profiles';
import { beyondTable, lethal } from './say';

/** From the cells of a log to a checked answer: order, silences, readings no table covers. */

export const logParams = {
  times: series(moment, {
    ...SERIALS,
    pair: 'log',
    blanks: 'drop',
    doc: 'Dates and times of the readings, in order. Any spacing; a row without a reading is left out.',
  }),
  temperatures: series(celsius, {
    min: 0,
    max: 45,
    pair: 'log',
    blanks: 'drop',
    doc: 'Water temperature at each of the times.',
  }),
};
export const longestGap = num(hours, {
  above: 0,
  max: 240,
  default: 12,
  doc:
    'Longest stretch without a reading that is bridged by a straight line; two readings ' +
    'a day are 12 h apart.',
});
export const expectedTemperature = num(celsius, {
  min: 0,
  max: 45,
  optional: true,
  doc:
    'Temperature expected after the last reading. Left out, the last reading is held for ' +
    'up to longestGap.',
});

interface Kept {
  readonly key: RateCurve;
  readonly temperatures: readonly number[];
  readonly track: Track | CellError;
}
/** The lists of a call are shared by all its rows, so the log is summed once for them. */
const tracks = new WeakMap<readonly number[], Kept>();

export function trackFor(
  curve: RateCurve,
  times: readonly number[],
  temperatures: readonly number[],
): Track | CellError {
  const kept = tracks.get(times);
  if (kept && kept.key === curve && kept.temperatures === temperatures) return kept.track;
  const fault = orderFault(times);
  const track = fault
    ? say.badOrder(fault, times[fault.index] ?? NaN, times[fault.index - 1] ?? NaN)
    : makeTrack(curve, times, temperatures);
  tracks.set(times, { key: curve, temperatures, track });
  return track;
}

const stray = (profile: Profile, temperature: number, time: string): CellError =>
  profile.tolerance && kills(profile.tolerance, temperature)
    ? lethal(time, temperature, profile.tolerance)
    : beyondTable(time, temperature, profile);

/** What stands in the way of using the log over [from, to], or undefined. */
export function obstacle(
  track: Track,
  readings: readonly number[],
  profile: Profile | undefined,
  from: number,
  to: number,
  longest: number,
): CellError | undefined {
  const first = track.times[0] ?? NaN;
  const slack = (longest * (1 + 1e-9)) / HOURS_PER_DAY;
  const last = track.times[track.times.length - 1] ?? NaN;
  if (first - from > slack) return say.beforeLog(from, first, longest);
  if (from - last > slack) return say.startsAfterLog(from, last);
  const wrong = strayWithin(track, from, to);
  if (wrong >= 0 && profile)
    return stray(profile, readings[wrong] ?? NaN, say.readingAt(track.times[wrong] ?? NaN));
  const gap = gapWithin(track, from, to, longest);
  const [t0, t1] = [track.times[gap] ?? NaN, track.times[gap + 1] ?? NaN];
  return gap >= 0 ? say.tooLongAGap(t0, t1, (t1 - t0) * HOURS_PER_DAY, longest) : undefined;
}

export interface LogArgs {
  readonly start: number;
  readonly times: readonly number[];
  readonly temperatures: readonly number[];
  readonly expected: number | undefined;
  readonly stage: LifeStage;
  readonly profile: string | undefined;
  readonly longestGap: number;
  readonly ownTemperatures: readonly number[] | undefined;
  readonly ownHours: readonly number[] | undefined;
}
interface Ready {
  readonly track: Track;
  readonly profile: Profile;
  readonly last: number;
  readonly ahead: number;
}

const DEFAULTS: Readonly<Record<LifeStage, string>> = {
  latency: DEFAULT_PREPARATION,
  incubation: 'African catfish',
  'first feed': 'African catfish',
  'yolk gone': 'African catfish',
};

function ready(args: LogArgs): Ready | CellError {
  const profile = profileFor(args.stage, args.profile ?? DEFAULTS[args.stage], args);
  if (isError(profile)) return profile;
  const track = trackFor(profile.curve, args.times, args.temperatures);
  if (isError(track)) return track;
  const end = track.times.length - 1;
  if (args.expected !== undefined) {
    const hoursAhead = hoursOf(profile, args.expected, 'expected');
    if (isError(hoursAhead)) return hoursAhead;
  }
  return {
    track,
    profile,
    last: track.times[end] ?? NaN,
    ahead: args.expected ?? track.temperatures[end] ?? NaN,
  };
}

/** The last reading is held only so far when no temperature is expected. */
const ranOut = ({ track, last, ahead }: Ready, args: LogArgs, to: number): CellError | undefined =>
  args.expected === undefined && (to - last) * HOURS_PER_DAY > args.longestGap * (1 + 1e-9)
    ? say.afterLog(last, doneAt(track, last, ahead) - doneAt(track, args.start, ahead), args.longestGap)
    : undefined;

/** Share done at a time, not capped at one. */
export function progress(args: LogArgs, at: number): number | CellError {
  const log = ready(args);
  if (isError(log)) return log;
  if (at < args.start) return say.endsBeforeStart(args.start, at);
  const stop =
    obstacle(log.track, args.temperatures, log.profile, args.start, at, args.longestGap) ??
    ranOut(log, args, at);
  return stop ?? doneAt(log.track, at, log.ahead) - doneAt(log.track, args.start, log.ahead);
}

/** Date and time when a share of the stage is done; 1 is its end, more is past it. */
function reachedAt(log: Ready, args: LogArgs, share: number): number | CellError {
  const end = timeWhen(log.track, doneAt(log.track, args.start, log.ahead) + share, log.ahead);
  return (
    obstacle(log.track, args.temperatures, log.profile, args.start, end, args.longestGap) ??
    ranOut(log, args, end) ??
    end
  );
}

/** Date and time when the stage is done. */
export function finish(args: LogArgs): number | CellError {
  const log = ready(args);
  return isError(log) ? log : reachedAt(log, args, 1);
}

export interface LogWindow {
  readonly opens: number | CellError;
  readonly best: number | CellError;
  readonly closes: number | CellError;
}

/**
 * The published window of the stage, each edge when that share of it is done; undefined where none was
 * published.
 */
export function windowOf(args: LogArgs): LogWindow | CellError | undefined {
  const log = ready(args);
  if (isError(log)) return log;
  const { profile } = log;
  const strip = args.stage === 'latency' ? stripWindow(1, profile.spread, 0) : undefined;
  const hatch = args.stage === 'incubation' ? hatchWindow(1, profile.spread, profile.species) : undefined;
  const opens = strip?.firstCheck ?? hatch?.first;
  const closes = strip?.lastTested ?? hatch?.last;
  if (opens === undefined || closes === undefined) return undefined;
  return {
    opens: reachedAt(log, args, opens),
    best: reachedAt(log, args, 1),
    closes: reachedAt(log, args, closes),
  };
}

/** Warmth above a base between two times, °C·h. */
export function warmthBetween(track: Track, from: number, to: number): number {
  const last = track.temperatures[track.temperatures.length - 1] ?? NaN;
  return doneAt(track, to, last) - doneAt(track, from, last);
}
