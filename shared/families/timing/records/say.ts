import type { Profile } from '../kernels/profile';
import { highest, lowest } from '../kernels/rateCurve';
import type { Tolerance } from '../kernels/tolerance';
import type { CellError } from '../../../base/values';
import { outside, refuse } from '../../../base/values';

/** Sentences of the timing functions. */

export const degrees = (t: number): string => String(Number(t.toPrecision(6))).replace('-', '−');

export const lethal = (
  at: string,
  temperature: number,
  { species, life, lethal: [low, high], says }: Tolerance,
): CellError =>
  outside(
    `${at}: ${degrees(temperature)} °C kills ${life} of ${species}: the published limits are ${low} and ${high} °C (${says}). Mend the water first, and ask a vet.`,
  );

/** What one can do when water is beyond what anybody tried. */
const wayOut = (temperature: number, profile: Profile): string =>
  profile.stage === 'latency' || profile.stage === 'incubation'
    ? temperature > highest(profile.curve)
      ? ' Too warm: shade the vats, change water, strip at night.'
      : ' Too cool: warm the water, or wait for a warmer week.'
    : '';

export const beyondTable = (at: string, temperature: number, profile: Profile): CellError =>
  outside(
    `${at}: ${degrees(temperature)} °C is outside "${profile.name}" (${degrees(lowest(profile.curve))} to ${degrees(highest(profile.curve))} °C). ` +
      'Hours are never stretched beyond a table: give your own in ownTemperatures and ' +
      `ownHours, or choose another.${wayOut(temperature, profile)}`,
  );

export const halfATable = (): CellError =>
  refuse('ownTemperatures and ownHours belong together: give both ranges, or neither.');

export const oneRowTable = (): CellError =>
  refuse(
    'ownTemperatures: a table of your own needs at least two different temperatures, ' +
      'because hours are only read between its rows.',
  );

export const repeatedRow = (temperature: number): CellError =>
  refuse(
    `ownTemperatures: ${degrees(temperature)} °C stands there twice. Keep one row for each temperature.`,
  );

export const slowerWhenWarmer = (
  cool: readonly [number, number],
  warm: readonly [number, number],
): CellError =>
  refuse(
    `ownHours: ${degrees(warm[1])} h at ${degrees(warm[0])} °C is longer than ${degrees(cool[1])} h at ${degrees(cool[0])} °C. ` +
      'Warmer water shortens development: look for swapped columns or a typing slip.',
  );

export const notForStage = (name: string, stage: string, names: readonly string[]): CellError =>
  refuse(`profile: there is no "${name}" for ${stage}. It has ${names.map((n) => `"${n}"`).join(', ')}.`);

export const noTimeLeft = (hoursNeeded: number, offset: number): CellError =>
  refuse(
    `offset: ${degrees(offset)} h takes away all of the ${degrees(Math.round(hoursNeeded * 10) / 10)} h there are. An offset is a small correction in hours.`,
  );
