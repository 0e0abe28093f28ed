// Long: one judgement, action by action, with what each is told.
import type { Cell, CellError } from '../base/values';
import { isError } from '../base/values';
import type { DosingReading, Row, Vat } from './ask';
import { askAmmonia, askCurve, askNext, askRange, askTrial, plain } from './ask';
import { LIMES, YES } from './fields';
import { MEASURE_AMMONIA, WAIT, limeAndFish, unreachableWith } from './words';

/** What a person at the vat is told after a reading. */
export interface Dosing {
  /** done: the window is reached; stop: nothing may be given, and why. */
  readonly kind: 'dose' | 'done' | 'stop' | 'wait' | 'air' | 'refused';
  /** The one word or number in large letters. */
  readonly headline: string;
  readonly spoons: string | undefined;
  /** What to do, in sentences. */
  readonly todo: string;
  readonly wait: string | undefined;
  readonly expected: JudgedReach | undefined;
  /** pH once the carbon dioxide has left: with the dose, if one is due. */
  readonly aired: JudgedReach | undefined;
  readonly warnings: readonly { readonly tone: 'warning' | 'bad'; readonly text: string }[];
  /** Grams in all once the dose is given; what stands beside the next reading. */
  readonly total: number | undefined;
  /** How it is likely to go on after the dose due now. */
  readonly later: readonly { readonly dose: number; readonly total: number; readonly reach: JudgedReach }[];
  readonly curve: readonly ({ readonly total: number } & JudgedReach)[];
  readonly trial: Trial | undefined;
}
export interface JudgedReach {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}
export interface Trial {
  readonly need: { readonly low: number; readonly high: number } | undefined;
  readonly steps: readonly {
    readonly todo: string;
    readonly stock: number | undefined;
    readonly low: number;
    readonly high: number;
  }[];
}

const number = (cell: Cell | undefined): number | undefined =>
  typeof cell === 'number' && Number.isFinite(cell) ? cell : undefined;
const words = (cell: Cell | undefined): string => (typeof cell === 'string' ? cell : '');

const reachOf = (row: Row): JudgedReach | undefined => {
  const [low, likely, high] = [number(row.low), number(row.likely), number(row.high)];
  return low === undefined || likely === undefined || high === undefined ? undefined : { low, likely, high };
};

/** pH once the gas has left. */
const airedOf = (row: Row): JudgedReach | undefined =>
  reachOf({ low: row.airedLow ?? null, likely: row.aired ?? null, high: row.airedHigh ?? null });

/** Grams as a scale shows them. */
export const gramsText = (grams: number): string =>
  grams === 0
    ? '0'
    : grams < 1
      ? grams.toFixed(2)
      : grams < 100
        ? grams.toFixed(1).replace(/\.0$/, '')
        : String(Math.round(grams));

const QUARTERS = ['', '¼', '½', '¾'] as const;
/** Spoons to the quarter below: a little less can be made good at the next step, a little more cannot. */
export function spoonsText(grams: number, each: number): string {
  const quarters = Math.floor((grams / each) * 4 + 1e-9);
  if (quarters === 0) return 'less than ¼ of your spoon: weigh it';
  const whole = Math.floor(quarters / 4);
  return `or ${whole > 0 ? whole : ''}${QUARTERS[quarters % 4] ?? ''} level ${quarters > 4 ? 'spoons' : 'spoon'} (${gramsText((quarters / 4) * each)} g)`;
}

type Warning = Dosing['warnings'][number];
interface Stop {
  readonly warning: Warning;
  readonly isStop: boolean;
}

/** Ammonia comes before any rise of pH in water that holds fish. */
function ammoniaWarning(vat: Vat, ph: number, high: number): Stop | undefined {
  if (vat.stocked !== YES) return undefined;
  const answer = askAmmonia(vat, ph, vat.ammonia ?? 1);
  if (isError(answer)) return { isStop: true, warning: { tone: 'bad', text: plain(answer) } };
  const [row = {}] = answer;
  if (vat.ammonia === null) {
    const times = number(row.times) ?? 1;
    const leap =
      times >= 2
        ? ` At pH ${String(vat.target)} the toxic part is ${Math.round(times)} times what it is at pH ${ph}.`
        : '';
    return { isStop: true, warning: { tone: 'bad', text: `${MEASURE_AMMONIA}${leap}` } };
  }
  const safe = number(row.safe);
  const isStop = safe !== undefined && Math.max(number(vat.target) ?? 0, high) > safe;
  return { isStop, warning: { tone: isStop ? 'bad' : 'warning', text: `Ammonia: ${words(row.verdict)}` } };
}

const trialOf = (vat: Vat, readings: readonly DosingReading[]): Trial | undefined => {
  const [first] = readings;
  if (!first || readings.length > 1 || vat.alkalinity !== null) return undefined;
  const trial = askTrial(vat, first.ph);
  if (isError(trial)) return undefined;
  const range = askRange(vat, first.ph);
  const [low, high] = isError(range) ? [] : [number(range[0]?.low), number(range[0]?.high)];
  return {
    need: low === undefined || high === undefined ? undefined : { low, high },
    steps: trial.map((row) => ({
      todo: words(row.todo),
      stock: number(row.stock),
      low: number(row.low) ?? NaN,
      high: number(row.high) ?? NaN,
    })),
  };
};

const refused = (error: CellError): Dosing => ({
  kind: 'refused',
  headline: 'No answer yet',
  spoons: undefined,
  todo: plain(error),
  wait: undefined,
  expected: undefined,
  aired: undefined,
  warnings: [],
  total: undefined,
  later: [],
  curve: [],
  trial: undefined,
});

const curveOf = (vat: Vat, readings: readonly DosingReading[]): Dosing['curve'] => {
  const rows = askCurve(vat, readings);
  return isError(rows)
    ? []
    : rows.flatMap((row) => {
        const [total, reach] = [number(row.total), reachOf(row)];
        return total === undefined || !reach ? [] : [{ total, ...reach }];
      });
};

/** Reasons to give nothing although a dose was worked out. */
function stops(vat: Vat, dose: number | undefined, ammonia: Stop | undefined): readonly Warning[] {
  const material = words(vat.material);
  return [
    ...(vat.stocked === YES && LIMES.includes(material)
      ? [{ tone: 'bad' as const, text: limeAndFish(material) }]
      : []),
    ...(dose === undefined
      ? [{ tone: 'bad' as const, text: unreachableWith(material, number(vat.target) ?? NaN) }]
      : []),
    ...(ammonia?.isStop ? [ammonia.warning] : []),
  ];
}

/** The large word beside each action of BUFFER.NEXT, and the kind of answer it is. */
const ACTIONS: Readonly<Record<string, { readonly kind: Dosing['kind']; readonly headline: string }>> = {
  'air first': { kind: 'air', headline: 'AIR FIRST' },
  wait: { kind: 'wait', headline: 'WAIT' },
  'read again': { kind: 'wait', headline: 'READ AGAIN' },
  done: { kind: 'done', headline: 'DONE' },
  stop: { kind: 'stop', headline: 'ADD NOTHING' },
};

const later = (rows: readonly Row[]): Dosing['later'] =>
  rows.flatMap((row) => {
    const [dose, total, reach] = [number(row.dose), number(row.total), airedOf(row)];
    return dose === undefined || total === undefined || !reach ? [] : [{ dose, total, reach }];
  });

const remarkOf = (row: Row): readonly Warning[] =>
  words(row.remark) === '' ? [] : [{ tone: 'warning', text: words(row.remark) }];
const NOTHING = {
  spoons: undefined,
  expected: undefined,
  aired: undefined,
  wait: undefined,
  later: [],
} as const;

/** The readings themselves say that nothing is to be given now. */
function atRest(vat: Vat, row: Row, last: DosingReading): Omit<Dosing, 'curve' | 'trial'> {
  // Air lifts the pH, and with it the toxic part of the ammonia, as product does.
  const ammonia =
    words(row.action) === 'air first' ? ammoniaWarning(vat, last.ph, number(row.airedHigh) ?? 0) : undefined;
  if (ammonia?.isStop)
    return {
      ...NOTHING,
      kind: 'stop',
      headline: 'STOP',
      todo: ammonia.warning.text,
      warnings: [],
      total: last.grams,
    };
  const { kind, headline } = ACTIONS[words(row.action)] ?? { kind: 'stop', headline: 'ADD NOTHING' };
  return {
    ...NOTHING,
    kind,
    headline,
    todo: words(row.todo),
    aired: airedOf(row),
    wait: kind === 'wait' ? WAIT : undefined,
    warnings: [...(ammonia ? [ammonia.warning] : []), ...remarkOf(row)],
    total: last.grams,
  };
}

function withDose(vat: Vat, rows: readonly Row[], last: DosingReading): Omit<Dosing, 'curve' | 'trial'> {
  const [now = {}, ...rest] = rows;
  const dose = number(now.dose);
  const ammonia = ammoniaWarning(vat, last.ph, number(now.high) ?? 0);
  const hindered = stops(vat, dose, ammonia);
  if (hindered.length > 0 || dose === undefined)
    return {
      ...NOTHING,
      kind: 'stop',
      headline: 'STOP',
      todo: hindered.map(({ text }) => text).join(' '),
      warnings: dose === undefined ? [] : remarkOf(now),
      total: last.grams,
    };
  const each = number(vat.spoon);
  return {
    kind: 'dose',
    headline: `${gramsText(dose)} g`,
    spoons: each === undefined ? undefined : spoonsText(dose, each),
    todo: words(now.todo),
    wait: WAIT,
    expected: reachOf(now),
    aired: airedOf(now),
    total: number(now.total),
    later: later(rest),
    warnings: [...(ammonia ? [ammonia.warning] : []), ...remarkOf(now)],
  };
}

/** Everything the vat side needs after these readings; undefined before the first. */
export function judge(vat: Vat, readings: readonly DosingReading[]): Dosing | undefined {
  const last = readings.at(-1);
  if (!last) return undefined;
  const rows = askNext(vat, readings);
  if (isError(rows)) return refused(rows);
  const [now = {}] = rows;
  const said = now.step === 0 ? atRest(vat, now, last) : withDose(vat, rows, last);
  return {
    ...said,
    curve: curveOf(vat, readings),
    trial: trialOf(vat, readings),
  };
}
