// Long: one question, what to do at this vat, with the order in which it is answered.
import { isError } from '../base/values';
import type { Cell, CellError } from '../base/values';
import type { Near } from '../base/near';
import { findFunction } from '../catalogue';
import { isListParam, readScalar } from '../functions/read';
import { cautionKeys } from '../families/water/carbonate/materials';
import type { MaterialName } from '../families/water/carbonate/materials';
import { gramsOf, materialOf, molesOf } from '../families/water/records/inputs';
import type { TitrationInputs } from '../families/water/records/buffer/titrationInputs';
import { aimOf, beliefsOf, logOf } from '../families/water/records/buffer/titrationInputs';
import type { Advice, AdviceReason } from '../families/water/titration/advise';
import { advise, CEILING } from '../families/water/titration/advise';
import type { MeterName, OriginName } from '../families/water/titration/beliefs';
import { ERRORS_IN_90 } from '../families/water/titration/beliefs';
import { quantile } from '../families/water/titration/cloud';
import type { Cloud } from '../families/water/titration/cloud';
import type { Aim, DoseReach } from '../families/water/titration/nextDose';
import { airedReach, expected, expectedByHand, oddsOf } from '../families/water/titration/nextDose';
import { ammoniaAt } from './ask';
import type { MeterCheck, VatEvent } from './events';
import { dosingOf, meterChecks } from './events';
import { EMPTY_LINE } from './log';
import type { Measures } from './spoons';
import { measuresFor } from './spoons';
import { AIR_MINUTES, CHECK_HOURS, MIX_MINUTES, SETTLE_MINUTES, mixMinutes } from './waits';

/** A vat and what is put into it, as the person described it once. */
export interface VatSetup {
  readonly name: string;
  readonly litres: number;
  /** Where no reading holds one. */
  readonly celsius: number;
  readonly material: MaterialName;
  readonly purity: number;
  /** Grams of each level measure the person owns. */
  readonly spoons: readonly number[];
  readonly target: number;
  readonly bottom: number;
  readonly top: number;
  readonly isStocked: boolean;
  /** mg/L N; null where not measured. */
  readonly ammonia: number | null;
  /** meq/L of the untouched water, from a kit. */
  readonly alkalinity: number | null;
  readonly origin: OriginName;
  readonly meter: MeterName;
  readonly canAir: boolean;
  /** Name of a vat or tank that holds the same water. */
  readonly sameAs: string | null;
}

export type VatAction =
  /** Nothing can be worked out; the reason holds the sentence. */
  | 'refused'
  /** No reading yet. */
  | 'readFirst'
  /** A dose is in and nobody has read since. */
  | 'mix'
  | Advice['action'];

export type VatReason =
  | AdviceReason
  | { readonly code: 'refusal'; readonly sentence: string }
  | { readonly code: 'meterUnchecked' }
  | { readonly code: 'meterOff'; readonly by: number }
  | { readonly code: 'sameWater'; readonly as: string }
  | { readonly code: 'otherWater'; readonly as: string }
  | { readonly code: 'measureAmmonia' }
  | { readonly code: 'ammonia'; readonly safe: number }
  | { readonly code: 'given'; readonly grams: number; readonly read: number };

export interface VatAdvice {
  readonly action: VatAction;
  /** To give now, as BUFFER.NEXT has it; null when nothing is due. */
  readonly grams: number | null;
  /** The same as it can be measured out; log the grams of this. */
  readonly measures: Measures | undefined;
  /** Grams given since this water came in. */
  readonly total: number;
  readonly lastRead: number | null;
  /** pH now; with a dose due or given unread: once it has mixed. */
  readonly now: DoseReach | undefined;
  /** pH once the carbon dioxide has left, with the dose that is due. */
  readonly aired: DoseReach | undefined;
  /** Chance of ending between the window's bottom and pH 8. */
  readonly odds: number | undefined;
  /** Until the next reading. */
  readonly waitMinutes: number | null;
  readonly reasons: readonly VatReason[];
  /** Keys of the cautions of this product and of fish, where something is to be handled. */
  readonly cautions: readonly string[];
}

/** Everything that stands beside the vat asked about. */
export interface Around {
  readonly vats?: readonly VatSetup[];
  /** Serial; only the age of a meter check is taken from it. */
  readonly now?: number;
}

interface Study {
  readonly given: TitrationInputs;
  readonly advice: Advice;
  readonly aim: Aim;
}

const NOTHING = {
  grams: null,
  measures: undefined,
  total: 0,
  lastRead: null,
  now: undefined,
  aired: undefined,
  odds: undefined,
  waitMinutes: null,
  cautions: [],
} as const;

const lastOf = <T>(list: readonly T[]): T | undefined => list[list.length - 1];

const isUnread = (own: readonly VatEvent[]): boolean => {
  const dose = own.map(({ grams }) => (grams ?? 0) > 0).lastIndexOf(true);
  return dose >= 0 && !own.slice(dose).some(({ ph }) => ph !== null);
};

/** The last check of the meter that still counts. */
const checkFor = (events: readonly VatEvent[], now: number | undefined): MeterCheck | undefined => {
  const check = lastOf(meterChecks(events));
  return check && (now === undefined || check.at === null || now - check.at <= CHECK_HOURS / 24)
    ? check
    : undefined;
};

interface Prior {
  readonly mean: number;
  readonly sd: number;
  readonly isAired: boolean;
  readonly as: string;
}

/** The columns of the log as BUFFER.NEXT takes them. */
export const columnsOf = (
  own: readonly VatEvent[],
): Pick<TitrationInputs, 'doses' | 'readings' | 'events' | 'again' | 'at'> => ({
  doses: own.map(({ grams }) => grams ?? NaN),
  readings: own.map(({ ph }) => ph ?? NaN),
  events: own.map(({ what }) => what),
  again: own.map(({ again }) => again ?? NaN),
  at: own.map(({ at }) => at ?? NaN),
});

/** Most pH units in one step, once aired; twice that where the water is known from another vat. */
export const STEP = { usual: 1, known: 2 } as const;

const givenOf = (
  setup: VatSetup,
  own: readonly VatEvent[],
  check: MeterCheck | undefined,
  prior?: Prior,
): TitrationInputs => ({
  volume: setup.litres,
  ...columnsOf(own),
  temperature: lastOf(own.flatMap(({ celsius }) => (celsius === null ? [] : [celsius]))) ?? setup.celsius,
  material: setup.material,
  purity: setup.purity,
  origin: prior?.isAired === true && setup.origin !== 'peat' ? 'aerated' : setup.origin,
  alkalinity: prior?.mean ?? setup.alkalinity ?? undefined,
  alkalinityWithin: prior && prior.sd * ERRORS_IN_90,
  conductivity: 0,
  meter: setup.meter,
  dosesAre: 'given before',
  bufferRead: check?.shown,
  bufferValue: check?.buffer ?? 7,
});

const MOST_KEPT = 60;
const known = new Map<string, Study | CellError>();

/** The estimate takes some milliseconds and is asked for again with every redraw. */
function studied(setup: VatSetup, given: TitrationInputs, step: number): Study | CellError {
  const { target, bottom, top, isStocked, canAir } = setup;
  const key = JSON.stringify([given, step, target, bottom, top, isStocked, canAir]);
  const before = known.get(key);
  if (before) return before;
  const b = beliefsOf(given);
  const log = logOf(given);
  const aim = aimOf({
    target,
    bottom,
    top,
    step,
    stocked: isStocked,
    meter: setup.meter,
    material: setup.material,
    airing: canAir ? 'can' : 'cannot',
  });
  const study = isError(b)
    ? b
    : isError(log)
      ? log
      : isError(aim)
        ? aim
        : { given, aim, advice: advise(b, log, aim) };
  if (known.size >= MOST_KEPT) known.clear();
  known.set(key, study);
  return study;
}

/** Alkalinity of each sample before any product, and with what has gone in, meq/L. */
const alkalinities = ({ advice: { segment, cloud } }: Study, isWithProduct: boolean): readonly number[] => {
  const { equivalents } = segment.beliefs;
  const shift = isWithProduct ? (lastOf(segment.series.doses) ?? 0) : -segment.base;
  return cloud.firstAlkalinity.map((a) => a + equivalents * shift);
};

const moments = (cloud: Cloud, values: readonly number[]): { mean: number; sd: number } => {
  const mean = values.reduce((sum, v, i) => sum + v * (cloud.weights[i] ?? 0), 0);
  const square = values.reduce((sum, v, i) => sum + (v - mean) ** 2 * (cloud.weights[i] ?? 0), 0);
  return { mean, sd: Math.sqrt(square) };
};

/** Two fillings from one source are not quite one water (judgement): standard error of their difference, meq/L. */
export const FILLINGS_DIFFER = 0.004;

/** The vat of the same water that all others go back to. */
const rootOf = (setup: VatSetup, vats: readonly VatSetup[]): VatSetup | undefined => {
  let found: VatSetup | undefined;
  let name = setup.sameAs;
  for (let i = 0; i < vats.length && name !== null && name !== setup.name; i++) {
    found = vats.find((one) => one.name === name) ?? found;
    name = found?.sameAs ?? null;
  }
  return found;
};

const priorOf = (
  setup: VatSetup,
  own: readonly VatEvent[],
  events: readonly VatEvent[],
  { vats = [], now }: Around,
): Prior | undefined => {
  const root = rootOf(setup, vats);
  const rootEvents = root && dosingOf(events, root.name);
  if (!root || !rootEvents?.some(({ ph }) => ph !== null)) return undefined;
  const study = studied(root, givenOf(root, rootEvents, checkFor(events, now)), STEP.usual);
  if (isError(study)) return undefined;
  const isFromTank = own.some(({ what }) => what === 'from tank');
  const { mean, sd } = moments(study.advice.cloud, alkalinities(study, isFromTank));
  return {
    mean,
    sd: Math.hypot(FILLINGS_DIFFER, sd),
    isAired: isFromTank && study.advice.segment.isAired,
    as: root.name,
  };
};

/** Errors by which the other vat's water may lie beyond what this vat's readings allow. */
export const ALLOWED = 2;
/** The vat's own readings, without what the other says, leave room for that water. */
const agrees = (study: Study, { mean, sd }: Prior): boolean => {
  const own = alkalinities(study, false);
  const { cloud } = study.advice;
  return (
    mean >= quantile(cloud, own, 0.01) - ALLOWED * sd && mean <= quantile(cloud, own, 0.99) + ALLOWED * sd
  );
};

/** A reading no vat of water gives, or a figure of the vat that cannot be. */
function refusalOf(setup: VatSetup, own: readonly VatEvent[]): string | undefined {
  const next = findFunction('SPAWN.BUFFER.NEXT');
  const fault = (name: string, cell: Cell): string | undefined => {
    const param = next?.params.find((one) => one.name === name);
    if (!param) return undefined;
    const read = readScalar(
      isListParam(param) && param.kind === 'series' ? { ...param, kind: 'number' } : (param as never),
      cell,
    );
    return isError(read) ? read.message : undefined;
  };
  for (const [name, cell] of [
    ['volume', setup.litres],
    ['temperature', setup.celsius],
    ['purity', setup.purity],
    ['alkalinity', setup.alkalinity],
  ] as const) {
    const said = fault(name, cell);
    if (said !== undefined) return said;
  }
  for (const { ph, again, celsius, grams } of own) {
    const said =
      (ph === null ? undefined : (pHFault(ph) ?? fault('readings', ph))) ??
      (again === null ? undefined : (pHFault(again) ?? fault('again', again))) ??
      (celsius === null ? undefined : fault('temperature', celsius)) ??
      (grams === null ? undefined : fault('doses', grams));
    if (said !== undefined) return said;
  }
  return undefined;
}

/** What water in a vat can show on a meter that works; beyond it nothing is built on the reading. */
export const READABLE = { low: 3, high: 11 } as const;
const pHFault = (ph: number): string | undefined =>
  ph >= READABLE.low && ph <= READABLE.high
    ? undefined
    : `pH ${ph} is no reading of a vat: water lies between ${READABLE.low} and ${READABLE.high}. Is the meter on, ` +
      'its cap off, its battery good? Rinse it, check it in a buffer and read again.';

const refused = (sentence: string): VatAdvice => ({
  ...NOTHING,
  action: 'refused',
  reasons: [{ code: 'refusal', sentence }],
});

/** The estimate of this vat, and how another vat of the same water came into it. */
function studyOf(
  setup: VatSetup,
  own: readonly VatEvent[],
  events: readonly VatEvent[],
  around: Around,
): { readonly study: Study; readonly same: readonly VatReason[] } | CellError {
  const check = checkFor(events, around.now);
  const alone = studied(setup, givenOf(setup, own, check), STEP.usual);
  if (isError(alone)) return alone;
  const prior = priorOf(setup, own, events, around);
  if (!prior) return { study: alone, same: [] };
  if (!agrees(alone, prior)) return { study: alone, same: [{ code: 'otherWater', as: prior.as }] };
  const together = studied(setup, givenOf(setup, own, check, prior), STEP.known);
  return isError(together) ? together : { study: together, same: [{ code: 'sameWater', as: prior.as }] };
}

/** Why a vat that holds fish gets no more base now. */
const ammoniaOf = (setup: VatSetup, read: number, high: number): VatReason | undefined => {
  if (!setup.isStocked) return undefined;
  if (setup.ammonia === null) return { code: 'measureAmmonia' };
  const safe = ammoniaAt(setup.ammonia, read, setup.target, setup.celsius);
  return safe !== undefined && Math.max(setup.target, high) > safe ? { code: 'ammonia', safe } : undefined;
};

const WAITS: Readonly<Partial<Record<VatAction, number>>> = {
  airFirst: AIR_MINUTES,
  waitSettle: MIX_MINUTES,
  readAgain: SETTLE_MINUTES,
};

const gramsSince = (own: readonly VatEvent[]): number => {
  const renewed = own.map(({ what }) => what).lastIndexOf('refill');
  return own.slice(Math.max(0, renewed)).reduce((sum, { grams }) => sum + (grams ?? 0), 0);
};

const meterReasons = (check: MeterCheck | undefined): readonly VatReason[] =>
  check ? [{ code: 'meterOff', by: check.shown - check.buffer }] : [{ code: 'meterUnchecked' }];

/** What more product, mmol/L, would make of the water. */
const outcome = ({ advice: { segment, cloud }, aim }: Study, moles: number, off: number) => ({
  now: off > 0 ? expectedByHand(segment.beliefs, cloud, moles, off) : expected(segment.beliefs, cloud, moles),
  aired: airedReach(segment.beliefs, cloud, moles),
  odds: oddsOf(segment.beliefs, cloud, moles, { bottom: aim.bottom, top: CEILING }),
});

/** Share by which a spoon levelled by hand is off, standard error (judgement); what is weighed is taken as it is. */
export const SPOON_ERROR = 0.1;

interface Answering {
  readonly setup: VatSetup;
  readonly own: readonly VatEvent[];
  readonly study: Study;
  readonly reasons: readonly VatReason[];
  readonly read: number;
}

const common = ({ setup, own, read }: Answering) => ({
  ...NOTHING,
  total: gramsSince(own),
  lastRead: read,
  cautions: cautionKeys(setup.material, setup.isStocked),
});

const moles = ({ study: { given } }: Answering, grams: number): number =>
  molesOf(materialOf(given.material), grams, given.volume, given.purity);

/** A dose is in, nobody has read since. */
function mixing(a: Answering): VatAdvice {
  const since = a.own.slice(a.own.map(({ ph }) => ph !== null).lastIndexOf(true) + 1);
  const grams = since.reduce((sum, one) => sum + (one.grams ?? 0), 0);
  return {
    ...common(a),
    action: 'mix',
    ...outcome(a.study, moles(a, grams), a.setup.spoons.length > 0 ? SPOON_ERROR : 0),
    waitMinutes: mixMinutes(a.setup.litres),
    reasons: [{ code: 'given', grams, read: a.read }, ...a.reasons],
  };
}

function answered(a: Answering): VatAdvice {
  const { advice, given } = a.study;
  const isLifting = advice.action === 'dose' || advice.action === 'airFirst';
  const high = advice.action === 'dose' ? advice.after.high : advice.aired.high;
  const ammonia = isLifting ? ammoniaOf(a.setup, a.read, high) : undefined;
  const { action } = advice;
  const rest: VatAdvice = {
    ...common(a),
    action: ammonia ? 'stop' : action,
    now: advice.now,
    aired: advice.airedUntouched,
    odds: advice.odds,
    waitMinutes: ammonia ? null : (WAITS[action] ?? null),
    // The first reason says what to do: where ammonia forbids it, it is not said.
    reasons: [...(ammonia ? [ammonia, ...advice.reasons.slice(1)] : advice.reasons), ...a.reasons],
    cautions: action === 'dose' ? common(a).cautions : [],
  };
  if (action !== 'dose' || ammonia) return rest;
  const grams = gramsOf(materialOf(given.material), advice.dose, given.volume, given.purity);
  const measures = measuresFor(grams, a.setup.spoons, given.material);
  return {
    ...rest,
    grams,
    measures,
    ...outcome(a.study, moles(a, measures.grams), measures.by === 'spoons' ? SPOON_ERROR : 0),
    waitMinutes: mixMinutes(a.setup.litres),
  };
}

/**
 * What to do at a vat after everything logged so far. The estimate is that of BUFFER.NEXT on the same lines,
 * so formula and pane give the same grams; what the pane adds is what a person can measure out, the clock, and
 * what another vat of the same water has shown.
 *
 * In: the vat, the events of all vats oldest first, the other vats. Out: values; say.ts draws the sentences.
 */
export function vatAdvice(setup: VatSetup, events: readonly VatEvent[], around: Around = {}): VatAdvice {
  const own = dosingOf(events, setup.name);
  const refusal = refusalOf(setup, own);
  if (refusal !== undefined) return refused(refusal);
  const check = checkFor(events, around.now);
  const read = lastOf(own.flatMap(({ ph }) => (ph === null ? [] : [ph])));
  if (read === undefined)
    return { ...NOTHING, action: 'readFirst', total: gramsSince(own), reasons: meterReasons(check) };
  // A dose on its own has no reading yet: the estimate is of the lines up to the last one.
  const isMixing = isUnread(own);
  const upTo = isMixing ? own.slice(0, own.map(({ ph }) => ph !== null).lastIndexOf(true) + 1) : own;
  const found = studyOf(setup, upTo, events, around);
  if (isError(found)) return refused(found.message ?? found.error);
  const reasons = [...found.same, ...(check ? meterReasons(check) : [])];
  const a: Answering = { setup, own, study: found.study, reasons, read };
  return isMixing ? mixing(a) : answered(a);
}

/** What a vat's readings say about its water, for a tank that is topped up; undefined while they say nothing. */
export function waterOf(
  setup: VatSetup,
  events: readonly VatEvent[],
  around: Around = {},
): Study | undefined {
  const own = dosingOf(events, setup.name);
  if (refusalOf(setup, own) !== undefined || !own.some(({ ph }) => ph !== null)) return undefined;
  const found = studyOf(setup, own, events, around);
  return isError(found) ? undefined : found.study;
}

/** A vat for the cases beside chosen numbers. */
export const TRIED: VatSetup = {
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
const tried = (what: VatEvent['what'], more: Partial<VatEvent>): VatEvent => ({
  ...EMPTY_LINE,
  vat: '1',
  what,
  ...more,
});
const actionAt = (...events: readonly VatEvent[]): string => vatAdvice(TRIED, events).action;
const highestWith = (...spoons: readonly number[]): number =>
  vatAdvice({ ...TRIED, spoons }, [tried('reading', { ph: 5.1 }), tried('aired', { ph: 5.4, again: 5.4 })])
    .now?.high ?? NaN;
const checkedBefore = (hours: number): boolean =>
  vatAdvice(
    TRIED,
    [
      tried('meter check', { number: 6.9, unit: 'buffer 7', at: 1000 }),
      tried('reading', { ph: 5.5, at: 1000 }),
    ],
    { now: 1000 + hours / 24 },
  ).reasons.some(({ code }) => code === 'meterOff');

export const NEAR: readonly Near[] = [
  {
    number: 'lowest pH that is a reading of a vat',
    value: READABLE.low,
    below: () => actionAt(tried('reading', { ph: 2.99 })),
    above: () => actionAt(tried('reading', { ph: 3.01 })),
    answers: ['refused', 'readAgain'],
  },
  {
    number: 'highest pH that is a reading of a vat',
    value: READABLE.high,
    below: () => actionAt(tried('reading', { ph: 10.99 })),
    above: () => actionAt(tried('reading', { ph: 11.01 })),
    answers: ['readAgain', 'refused'],
  },
  {
    number: 'share by which a spoon levelled by hand is off',
    value: SPOON_ERROR,
    // The same 1.3 g, weighed and in spoons.
    below: () => highestWith() > 6.776,
    above: () => highestWith(0.4) > 6.776,
    answers: [false, true],
  },
  {
    number: 'hours for which a check of the meter counts',
    value: CHECK_HOURS,
    below: () => checkedBefore(23.9),
    above: () => checkedBefore(24.1),
    answers: [true, false],
  },
];
