import type { LogLine } from '../../../../shared/dosing/log';
import type { VatEvent } from '../../../../shared/dosing/events';
import { dosingOf, eventsOf } from '../../../../shared/dosing/events';
import { tankAdvice } from '../../../../shared/dosing/tank';
import type { TankAdvice } from '../../../../shared/dosing/tank';
import type { VatAdvice, VatSetup } from '../../../../shared/dosing/vat';
import { vatAdvice } from '../../../../shared/dosing/vat';
import { CEILING } from '../../../../shared/families/water/titration/advise';
import type { DoseReach } from '../../../../shared/families/water/titration/nextDose';
import type { PathData } from '../../../pane/pictures/types';
import type { PaneState } from '../../../pane/keeping/state';
import { readNumber } from '../../../pane/values/typed';
import { shownUnit } from '../../../pane/values/units';
import type { NotebookLine } from '../../vat/state/notebook';
import { entryOf } from '../../vat/state/notebook';
import type { SetupTexts } from './setup';
import { EMPTY_SETUP, setupOf } from './setup';

/** What the next line says beside its numbers. */
export const WHATS = ['reading', 'aired', 'jar', 'night', 'change', 'refill', 'rain', 'meter check'] as const;
export type DraftWhat = (typeof WHATS)[number];
export const DRAFT_FIELDS = ['ph', 'again', 'celsius', 'grams', 'litres', 'shown', 'buffer'] as const;
export type DraftField = (typeof DRAFT_FIELDS)[number];
/** Units of the fields in the log; the pane may show and take others. */
export const FIELD_UNITS: Readonly<Partial<Record<DraftField, string>>> = {
  celsius: '°C',
  grams: 'g',
  litres: 'L',
};
export interface DoseDraft {
  /** What happened before the reading; left alone it follows the advice. */
  readonly what: DraftWhat | undefined;
  readonly texts: Readonly<Partial<Record<DraftField, string>>>;
}
export const EMPTY_DRAFT: DoseDraft = { what: undefined, texts: {} };

export interface DoseState {
  /** By vat. */
  readonly setups: Readonly<Record<string, SetupTexts>>;
  readonly drafts: Readonly<Record<string, DoseDraft>>;
  /** Vats whose set-up somebody has called ready. */
  readonly ready: readonly string[];
  /** The set-up is open; the fields that have been left, and whether all are asked for. */
  readonly isSetupOpen: boolean;
  readonly touched: ReadonlySet<string>;
  readonly isAsked: boolean;
  /** The field the number keys type into. */
  readonly field: DraftField;
  readonly isMoreOpen: boolean;
  readonly fault: string | undefined;
}

export const initialDose: DoseState = {
  setups: {},
  drafts: {},
  ready: [],
  isSetupOpen: false,
  touched: new Set(),
  isAsked: false,
  field: 'ph',
  isMoreOpen: false,
  fault: undefined,
};

type Holder = Pick<PaneState, 'dose' | 'vat' | 'settings'>;

const remembered = new WeakMap<readonly NotebookLine[], readonly VatEvent[]>();
/** Every event of every vat, oldest first. */
export function eventsIn(lines: readonly NotebookLine[]): readonly VatEvent[] {
  let events = remembered.get(lines);
  if (!events) {
    events = eventsOf(lines.map((line): LogLine => entryOf(line)));
    remembered.set(lines, events);
  }
  return events;
}

/**
 * The texts of a vat's set-up: typed, or, where only the workbook came along, what its log says of the vat;
 * the rest is asked.
 */
export function textsOf(state: Holder, name: string): SetupTexts {
  return withSpoon(vatTexts(state, name), state.settings.spoon);
}

const spooned = new WeakMap<SetupTexts, SetupTexts>();
/** The spoon is the person's, the same at every vat and in Settings. One object for one answer, as below. */
function withSpoon(texts: SetupTexts, spoon: string): SetupTexts {
  if (texts.spoon === spoon) return texts;
  let known = spooned.get(texts);
  if (known?.spoon !== spoon) {
    known = { ...texts, spoon };
    spooned.set(texts, known);
  }
  return known;
}

function vatTexts({ dose, vat }: Holder, name: string): SetupTexts {
  const typed = dose.setups[name];
  if (typed) return typed;
  const own = dosingOf(eventsIn(vat.lines), name);
  const litres = own.find(({ what }) => what === 'filled')?.litres ?? null;
  const product = own.find((event) => event.product !== '')?.product ?? '';
  const celsius = own.flatMap((event) => (event.celsius === null ? [] : [event.celsius])).at(-1);
  return logged(name, own.length, litres, product, celsius);
}

const derived = new Map<string, SetupTexts>();
/** One object for one answer, because what was read of it is remembered by it. */
function logged(
  name: string,
  n: number,
  litres: number | null,
  product: string,
  celsius: number | undefined,
): SetupTexts {
  const key = JSON.stringify([name, n, litres, product, celsius]);
  const texts: SetupTexts = derived.get(key) ?? {
    ...EMPTY_SETUP,
    ...(litres === null ? {} : { volume: String(litres) }),
    ...(product === '' ? {} : { material: product }),
    ...(celsius === undefined ? {} : { temperature: String(celsius) }),
  };
  if (derived.size > 200) derived.clear();
  derived.set(key, texts);
  return texts;
}

export const setupIn = (state: Holder, name: string): VatSetup | undefined =>
  state.dose.ready.includes(name) ? setupOf(name, textsOf(state, name)) : undefined;
export const isTank = (state: Holder, name: string): boolean => state.dose.setups[name]?.kind === 'tank';

const setupsIn = (state: Holder): readonly VatSetup[] =>
  state.vat.vats.flatMap((name) => setupIn(state, name) ?? []);

/** What to do at a vat now; undefined while its set-up is not whole. */
export function adviceFor(state: Holder, name: string, events?: readonly VatEvent[]): VatAdvice | undefined {
  const setup = setupIn(state, name);
  if (!setup) return undefined;
  const all = events ?? eventsIn(state.vat.lines);
  const around = { vats: setupsIn(state), now: lastMoment(all) };
  return isTank(state, name) ? tankAdvice(setup, all, around) : vatAdvice(setup, all, around);
}
/** A check of the meter ages by the lines of the log, so that an answer does not change while one looks at it. */
const lastMoment = (events: readonly VatEvent[]): number =>
  events.reduce((last, { at }) => Math.max(last, at ?? 0), 0);

export const tankIn = (state: Holder, name: string): TankAdvice | undefined => {
  const setup = setupIn(state, name);
  return setup && isTank(state, name)
    ? tankAdvice(setup, eventsIn(state.vat.lines), { vats: setupsIn(state) })
    : undefined;
};

export interface TankFacts {
  readonly tank: TankAdvice;
  /** Vats of the size that is filled from it; of no size known, none. */
  readonly vats: number | undefined;
  readonly topUp: { readonly litres: number; readonly aired: DoseReach } | undefined;
}
/** How much stands in the tank, and what raw water would make of it: as much as was typed, or until it is full. */
export function tankFacts(state: Holder): TankFacts | undefined {
  const name = state.vat.vat;
  const [tank, setup] = [tankIn(state, name), setupIn(state, name)];
  if (!tank || !setup) return undefined;
  const sizes = setupsIn(state).flatMap((one) => (one.sameAs === name ? [one.litres] : []));
  const typed = readNumber(draftOf(state).texts.litres ?? '');
  const asked = typed === undefined ? undefined : shownUnit('L', state.settings).toMetric(typed);
  const litres = Math.min(asked ?? Infinity, setup.litres - tank.litres);
  const aired = litres > 0 ? tank.afterTopUp(litres) : undefined;
  return {
    tank,
    vats: sizes.length > 0 ? tank.fillsLeft(Math.max(...sizes)) : undefined,
    topUp: aired && { litres, aired },
  };
}

/** The way of the pH at a vat: its readings, then what is expected next and once aired. */
export function pathOf(
  state: Holder,
  advice: VatAdvice,
  words: { readonly at: (serial: number) => string; readonly next: string; readonly aired: string },
): PathData | undefined {
  const setup = setupIn(state, state.vat.vat);
  const read = dosingOf(eventsIn(state.vat.lines), state.vat.vat).flatMap(({ at, ph, again }) =>
    ph === null
      ? []
      : [{ label: at === null ? '' : words.at(at), ph: again === null ? ph : (ph + again) / 2 }],
  );
  if (!setup || read.length === 0) return undefined;
  const ahead = (label: string, reach: DoseReach | undefined) =>
    reach ? [{ label, ph: reach.likely, low: reach.low, high: reach.high }] : [];
  const isDosed = advice.action === 'dose' || advice.action === 'mix';
  return {
    points: [...read, ...(isDosed ? ahead(words.next, advice.now) : []), ...ahead(words.aired, advice.aired)],
    wanted: setup.target,
    most: CEILING,
  };
}

export const draftOf = ({ dose, vat }: Holder): DoseDraft => dose.drafts[vat.vat] ?? EMPTY_DRAFT;

/** What the next line is, when nothing was chosen: an hour of air after the advice to air. */
export const whatOf = (state: Holder, advice: VatAdvice | undefined): DraftWhat => {
  const { what } = draftOf(state);
  if (what) return what;
  const isAiring = advice?.action === 'airFirst' && hasReading(state);
  return isAiring ? 'aired' : 'reading';
};
const hasReading = ({ vat }: Holder): boolean =>
  dosingOf(eventsIn(vat.lines), vat.vat).some(({ ph }) => ph !== null);

/** The fields of the next line. */
export const fieldsFor = (what: DraftWhat, isDue: boolean): readonly DraftField[] => {
  if (what === 'meter check') return ['shown', 'buffer'];
  const water: readonly DraftField[] =
    what === 'change' || what === 'refill' || what === 'rain' ? ['litres'] : [];
  return ['ph', 'again', ...water, 'celsius', ...(isDue ? (['grams'] as const) : [])];
};
