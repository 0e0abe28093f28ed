import type { VatEvent } from '../../../shared/dosing/events';
import { bufferUnit } from '../../../shared/dosing/events';
import { EMPTY_LINE } from '../../../shared/dosing/log';
import type { VatSetup } from '../../../shared/dosing/vat';
import { vatAdvice } from '../../../shared/dosing/vat';
import type { MeterName } from '../../../shared/families/water/titration/beliefs';
import { columnOf, grid } from '../../support/call';
import type { Draws } from '../../support/draws';
import { drawsFrom } from '../../support/draws';
import type { Draw, Vat } from './vat';
import { airedPH, drawVat, pass, pour, read, readBuffer, truePH } from './vat';

/** One line of the notebook at the vat. */
export interface Line {
  readonly total: number;
  readonly ph: number;
  readonly event: string;
}
export interface Told {
  readonly action: string;
  readonly grams: number;
  /** pH range stated for after the dose. */
  readonly low: number;
  readonly high: number;
  /** pH range stated for once aired, and the chance stated of ending well. */
  readonly airedLow: number;
  readonly airedHigh: number;
  readonly odds: number;
}
/** inBuffer: what the meter showed in a buffer of pH 7, where the person has held it in one. */
export type Advisor = (
  vat: Pick<Vat, 'litres' | 'celsius' | 'product'>,
  lines: readonly Line[],
  inBuffer?: number,
) => Told;

export interface Played {
  readonly ownAired: number;
  readonly end: number;
  readonly aired: number;
  readonly highest: number;
  readonly readings: number;
  readonly given: number;
  readonly actions: readonly string[];
  /** What was said last. */
  readonly last: Told;
  readonly lines: readonly Line[];
  /** The range stated for after each dose, and what came of it. */
  readonly stated: readonly Stated[];
}
/** One dose: the range stated, the true pH of the vat then, and what the meter showed less its error in the buffer. */
export interface Stated {
  readonly low: number;
  readonly high: number;
  readonly truth: number;
  readonly shown: number;
}

const MOST = 16;
/** Hours from a last reading to that of the next morning. */
const NIGHT = 12;
const CHECKS = 500_000_000;
export interface Habits {
  /** Standard error of what a hand measures out, as a share. */
  readonly hand?: number;
  /** Hours under strong air when told to air. */
  readonly airHours: number;
  /** Holds the meter in a buffer before the first reading, as the pane asks. */
  readonly checksMeter?: boolean;
  readonly after?: (vat: Vat, lines: Line[], chance: Draws) => void;
}

/** pH on the bottle of the buffer. */
const LABEL = 7;
/** What the meter shows in it; a stream of its own, so that vat and readings are the same with the check and without. */
const bufferFor = (vat: Vat, { checksMeter = false }: Habits, seed: number): number | undefined =>
  checksMeter ? readBuffer(vat, drawsFrom(seed + CHECKS)) : undefined;
const isIn = ({ low, high }: Stated, ph: number): boolean => ph >= low && ph <= high;
/** Of the ranges stated: how many held the true pH, and how many the pH then read. */
export const heldOf = (all: readonly Stated[]): { readonly held: number; readonly heldRead: number } => ({
  held: all.filter((one) => isIn(one, one.truth)).length / all.length,
  heldRead: all.filter((one) => isIn(one, one.shown)).length / all.length,
});

/**
 * "Read again tomorrow": the words ask for one more reading, and to go on from it. The person comes back as long as
 * something was given since the last morning, and once where nothing was.
 */
const comesBack = (actions: readonly string[]): boolean =>
  !actions.slice(0, -1).includes('watch') ||
  actions.slice(actions.slice(0, -1).lastIndexOf('watch')).includes('dose');

/** What comes before the next reading where no dose is due; undefined where the person is done. */
const waitFor = (
  action: string,
  actions: readonly string[],
  { airHours }: Habits,
): { readonly hours: number; readonly event: string } | undefined => {
  if (action === 'airFirst') return { hours: airHours, event: 'aired' };
  if (['waitSettle', 'readAgain', 'checkMeter'].includes(action)) return { hours: 0.25, event: '' };
  return action === 'watch' && comesBack(actions) ? { hours: NIGHT, event: 'night' } : undefined;
};

/** Gives what is said, not quite, waits a quarter of an hour and reads. */
const dosedAndRead = (
  vat: Vat,
  { grams, low, high }: Told,
  isAirOn: boolean,
  { hand = 0.03 }: Habits,
  chance: Draws,
): readonly [reading: number, range: Omit<Stated, 'shown'>] => {
  pour(vat, grams * Math.max(0.5, 1 + hand * chance.normal()));
  pass(vat, 0.25, isAirOn ? 'strong' : 'stirred');
  const reading = read(vat, chance);
  return [reading, { low, high, truth: truePH(vat) }];
};

/** A person who does what is said, weighs 3 % off, and reads after a quarter of an hour. */
export const play = (seed: number, draw: Draw, advise: Advisor, habits: Habits = { airHours: 1 }): Played => {
  const chance = drawsFrom(seed);
  const vat = drawVat(chance, draw);
  const ownAired = airedPH(vat);
  const lines: Line[] = [{ total: 0, ph: read(vat, chance), event: '' }];
  const actions: string[] = [];
  let isAirOn = false;
  let given = 0;
  const stated: Stated[] = [];
  const inBuffer = bufferFor(vat, habits, seed);
  const meterError = (inBuffer ?? LABEL) - LABEL;
  let told: Told | undefined;
  while (lines.length < MOST) {
    told = advise(vat, lines, inBuffer);
    actions.push(told.action);
    const total = lines.at(-1)?.total ?? 0;
    if (told.action === 'dose') {
      given += told.grams;
      const [reading, range] = dosedAndRead(vat, told, isAirOn, habits, chance);
      stated.push({ ...range, shown: reading - meterError });
      lines.push({ total: total + told.grams, ph: reading, event: '' });
      continue;
    }
    if (told.action === 'airFirst') isAirOn = true;
    const wait = waitFor(told.action, actions, habits);
    if (!wait) break;
    pass(vat, wait.hours, isAirOn ? 'strong' : wait.event === 'night' ? 'still' : 'stirred');
    lines.push({ total, ph: read(vat, chance), event: wait.event });
  }
  if (!told) throw new Error('a vat has a first reading');
  const end = truePH(vat);
  habits.after?.(vat, lines, chance);
  const aired = airedPH(vat);
  return {
    ownAired,
    end,
    aired,
    highest: Math.max(vat.highest, aired),
    readings: lines.length,
    given,
    actions,
    last: told,
    lines,
    stated,
  };
};

const CODES: Readonly<Record<string, string>> = {
  'air first': 'airFirst',
  wait: 'waitSettle',
  'read again': 'readAgain',
};
/** BUFFER.NEXT as a sheet asks it, with what was done between readings in its own column or without it. */
export const next =
  (meter: string, tells = true, origin = 'unknown'): Advisor =>
  ({ litres, celsius, product }, lines, inBuffer?: number) => {
    const args = [
      litres,
      columnOf(lines.map(({ total }) => total)),
      columnOf(lines.map(({ ph }) => ph)),
      7,
      null,
      celsius,
      product,
      1,
      origin,
      null,
      0,
      meter,
    ];
    const events = columnOf(lines.map(({ event }) => event));
    const extra = tells ? [6.5, 7.5, 1, false, null, events, null, null, null, inBuffer ?? null] : [];
    const [heads = [], row = []] = grid('BUFFER.NEXT', ...args, ...extra);
    const at = (name: string): unknown =>
      row[
        heads.findIndex(
          (head) =>
            String(head)
              .split(/[,(\[]/)[0]
              ?.trim() === name,
        )
      ];
    const grams = Number(at('Dose'));
    const word = at('Action');
    const todo = String(at('What to do'));
    const action =
      typeof word === 'string'
        ? (CODES[word] ?? word)
        : grams > 0
          ? 'dose'
          : todo.startsWith('Wait')
            ? 'waitSettle'
            : 'stop';
    return {
      action,
      grams,
      low: Number(at('pH at least')),
      high: Number(at('pH at most')),
      airedLow: Number(at('Aired at least')),
      airedHigh: Number(at('Aired at most')),
      odds: Number(at('Chance of ending well')),
    };
  };

/** The lines of the simulated notebook as the log of the pane holds them. */
export const eventsIn = (lines: readonly Line[]): VatEvent[] =>
  lines.flatMap(({ total, ph, event }, i) => {
    const part = total - (lines[i - 1]?.total ?? 0);
    const reading: VatEvent = { ...EMPTY_LINE, vat: '1', what: (event || 'reading') as 'reading', ph };
    return part > 0 ? [{ ...EMPTY_LINE, vat: '1', what: 'dose', grams: part }, reading] : [reading];
  });

/** The vat engine, with a person who owns these spoons and logs what they held. */
export const person =
  (spoons: readonly number[], meter: MeterName = 'good'): Advisor =>
  ({ litres, celsius, product }, lines, inBuffer) => {
    const check: VatEvent[] =
      inBuffer === undefined
        ? []
        : [{ ...EMPTY_LINE, what: 'meter check', number: inBuffer, unit: bufferUnit(7) }];
    const advice = vatAdvice({ ...SETUP, name: '1', litres, celsius, material: product, spoons, meter }, [
      ...check,
      ...eventsIn(lines),
    ]);
    return {
      action: advice.action,
      grams: advice.measures?.grams ?? 0,
      low: advice.now?.low ?? NaN,
      high: advice.now?.high ?? NaN,
      airedLow: advice.aired?.low ?? NaN,
      airedHigh: advice.aired?.high ?? NaN,
      odds: advice.odds ?? NaN,
    };
  };
export const SETUP: VatSetup = {
  name: '1',
  litres: 1000,
  celsius: 25,
  material: 'soda ash',
  purity: 1,
  spoons: [],
  target: 7,
  bottom: 6.5,
  top: 7.5,
  isStocked: false,
  ammonia: null,
  alkalinity: null,
  origin: 'unknown',
  meter: 'good',
  canAir: true,
  sameAs: null,
};

const share = (runs: readonly Played[], is: (run: Played) => boolean): number =>
  runs.length === 0 ? NaN : runs.filter(is).length / runs.length;

export interface Figures {
  readonly vats: number;
  /** Of the vats whose own aired pH is at most 8: end above 8 once aired. */
  readonly pushedOver: number;
  readonly inside: number;
  readonly insideClosed: number;
  /** Of the vats that reach 6.5 by air alone: no product given. */
  readonly leftAlone: number;
  readonly ever75: number;
  readonly ever8: number;
  readonly readings: number;
  readonly held: number;
  readonly heldRead: number;
}
export const figuresOf = (runs: readonly Played[]): Figures => {
  const soft = runs.filter((run) => run.ownAired <= 8);
  return {
    vats: runs.length,
    pushedOver: share(soft, (run) => run.aired > 8),
    inside: share(soft, (run) => run.aired >= 6.5 && run.aired <= 8),
    insideClosed: share(runs, (run) => run.end >= 6.5 && run.end <= 7.5),
    leftAlone: share(
      runs.filter((run) => run.ownAired >= 6.5),
      (run) => run.given === 0,
    ),
    ever75: share(soft, (run) => run.highest > Math.max(7.5, run.ownAired + 0.02)),
    ever8: share(soft, (run) => run.highest > 8),
    readings: runs.reduce((sum, run) => sum + run.readings, 0) / runs.length,
    ...heldOf(runs.flatMap(({ stated }) => stated)),
  };
};
const percent = (x: number): string => (Number.isNaN(x) ? '    –' : `${(100 * x).toFixed(1)} %`).padStart(7);
export const line = (name: string, f: Figures): string =>
  `${name.padEnd(26)} ${String(f.vats).padStart(4)} vats · aired 6.5–8 ${percent(f.inside)} · pushed above 8 ${percent(f.pushedOver)} · ever above 8 ${percent(f.ever8)}, 7.5 ${percent(f.ever75)} · left alone ${percent(f.leftAlone)} · readings ${f.readings.toFixed(2)} · range held ${percent(f.held)}, readings ${percent(f.heldRead)}`;

export const many = (
  n: number,
  from: number,
  draw: Draw,
  advise: Advisor,
  habits?: Habits,
): readonly Played[] => Array.from({ length: n }, (_, i) => play(from + i, draw, advise, habits));
