import type { Near } from '../../base/near';
import { isError } from '../../base/values';
import type { TitrationInputs } from './records/buffer/titrationInputs';
import { aimOf, beliefsOf, logOf } from './records/buffer/titrationInputs';
import type { Advice } from './titration/advise';
import { advise, AIR_MAY_DO, AIR_MAY_STILL_DO, CREEPING, EDGE, RISING } from './titration/advise';
import type { MeterName, OriginName } from './titration/beliefs';
import { NIGHT_HOURS } from './titration/log';
import { AS_LOW, RESTLESS, USUAL } from './titration/segments';

/** Cases beside the numbers of the part-doses: 1,000 L at 25 °C, soda ash, a good meter. */

/** Grams given before, pH, what happened, the second reading, serial. */
export type Line = readonly [grams: number, ph: number, event?: string, again?: number, at?: number];

/** What is asked beside the usual. */
export interface Beside {
  readonly meter?: MeterName;
  readonly airing?: 'can' | 'cannot';
  readonly stocked?: boolean;
  readonly target?: number;
  /** The window. */
  readonly bottom?: number;
  readonly top?: number;
  readonly material?: 'soda ash' | 'hydrated lime';
  readonly origin?: OriginName;
  /** µS/cm. */
  readonly conductivity?: number;
  /** What the meter showed in a buffer of pH 7. */
  readonly bufferRead?: number | undefined;
}
const ORDINARY: Required<Beside> = {
  meter: 'good',
  airing: 'can',
  stocked: false,
  target: 7,
  bottom: 6.5,
  top: 7.5,
  material: 'soda ash',
  origin: 'unknown',
  conductivity: 0,
  bufferRead: undefined,
};
/** The whole answer; undefined where it is refused. */
export const answered = (lines: readonly Line[], beside: Beside = {}): Advice | undefined => {
  const asked: Required<Beside> = { ...ORDINARY, ...beside };
  const { meter, material, origin, conductivity, bufferRead } = asked;
  const given: TitrationInputs = {
    volume: 1000,
    doses: lines.map(([grams]) => grams),
    readings: lines.map(([, ph]) => ph),
    events: lines.map(([, , event = '']) => event),
    again: lines.map(([, , , again = NaN]) => again),
    at: lines.map(([, , , , at = NaN]) => at),
    temperature: 25,
    material,
    purity: 1,
    origin,
    alkalinity: undefined,
    conductivity,
    meter,
    dosesAre: 'given before',
    bufferRead,
    bufferValue: 7,
  };
  const [b, log] = [beliefsOf(given), logOf(given)];
  const aim = aimOf({ ...asked, step: 1 });
  return isError(b) || isError(log) || isError(aim) ? undefined : advise(b, log, aim);
};
/** Action and first reason. */
export const said = (lines: readonly Line[], beside?: Beside): string => {
  const advice = answered(lines, beside);
  return advice ? `${advice.action} ${advice.reasons[0]?.code ?? ''}` : 'refused';
};
const AIRED = 'aired';
/** Water of pH 5.1 that air does not help, and the grams given to it. */
const sour = (grams: number, ph: number, ...more: readonly Line[]): readonly Line[] => [
  [0, 5.1],
  [0, 5.2, AIRED],
  [0, 5.2, AIRED],
  [grams, ph],
  ...more,
];
/** The same read too early after its first dose. */
const slow = (ph: number): readonly Line[] => sour(1, 5.5, [0, 5.75], [0, 5.78], [0.6, ph]);

export const NEAR: readonly Near[] = [
  {
    number: 'chance that air alone will do from which product waits for air',
    value: AIR_MAY_DO,
    below: () => said([[0, 4.52]], { meter: 'cheap' }),
    above: () => said([[0, 4.5]]),
    answers: ['dose limited', 'airFirst airMayDo'],
  },
  {
    number: 'the same once an hour of air has run',
    value: AIR_MAY_STILL_DO,
    below: () =>
      said([
        [0, 5.86],
        [0, 6.064, AIRED],
      ]),
    above: () =>
      said([
        [0, 5.86],
        [0, 6.0675, AIRED],
      ]),
    answers: ['dose limited', 'airFirst stillMoving'],
  },
  {
    number: 'rise by an hour of air from which air goes on',
    value: RISING,
    below: () =>
      said([
        [0, 4.5],
        [0, 4.78, AIRED],
      ]),
    above: () =>
      said([
        [0, 4.5],
        [0, 4.82, AIRED],
      ]),
    answers: ['dose limited', 'airFirst stillMoving'],
  },
  {
    number: 'pH below the window from which air goes on as long as the pH creeps up',
    value: EDGE,
    below: () =>
      said([
        [0, 5],
        [0, 6.18, AIRED],
        [0, 6.26, AIRED],
      ]),
    above: () =>
      said([
        [0, 5],
        [0, 6.16, AIRED],
        [0, 6.24, AIRED],
      ]),
    answers: ['airFirst stillMoving', 'dose limited'],
  },
  {
    number: 'rise of pH that counts as creeping up',
    value: CREEPING,
    below: () =>
      said([
        [0, 5],
        [0, 6.353, AIRED],
        [0, 6.4, AIRED],
      ]),
    above: () =>
      said([
        [0, 5],
        [0, 6.347, AIRED],
        [0, 6.4, AIRED],
      ]),
    answers: ['dose limited', 'airFirst stillMoving'],
  },
  {
    number: 'two readings this far apart agree',
    value: RESTLESS,
    below: () => said([[0, 4.4, '', 4.52]]),
    above: () => said([[0, 4.4, '', 4.53]]),
    answers: ['dose limited', 'waitSettle differ'],
  },
  {
    number: 'lowest first reading that is not read again',
    value: USUAL.low,
    below: () => said([[0, 3.99]]),
    above: () => said([[0, 4.01]]),
    answers: ['readAgain unusual', 'dose limited'],
  },
  {
    number: 'highest first reading that is not read again',
    value: USUAL.high,
    below: () => said([[0, 8.99]]),
    above: () => said([[0, 9.01]]),
    answers: ['stop aboveTop', 'readAgain unusual'],
  },
  {
    number: 'chance of a reading so low after a dose below which it is read again',
    value: AS_LOW.usual,
    below: () => said(sour(1, 5.76)),
    above: () => said(sour(1, 5.82)),
    answers: ['readAgain low', 'dose limited'],
  },
  {
    number: 'the same in a vat that was read too early before',
    value: AS_LOW.slow,
    below: () => said(slow(6.25)),
    above: () => said(slow(6.35)),
    answers: ['readAgain low', 'dose limited'],
  },
  {
    number: 'hours after which gas has gone as in a night',
    value: NIGHT_HOURS,
    below: () =>
      said([
        [0, 5.1, '', NaN, 1],
        [0, 5.6, '', NaN, 1 + 2.9 / 24],
      ]),
    above: () =>
      said([
        [0, 5.1, '', NaN, 1],
        [0, 5.6, '', NaN, 1 + 3.1 / 24],
      ]),
    answers: ['waitSettle stillMoving', 'airFirst stillMoving'],
  },
  {
    number: 'parts in which gas may leave: so far a water of pH 8 rises under air',
    value: 3,
    below: () =>
      said([
        [0, 8],
        [0, 8.69, AIRED],
      ]),
    above: () =>
      said([
        [0, 8],
        [0, 8.74, AIRED],
      ]),
    answers: ['readAgain high', 'readAgain unexpected'],
  },
];
