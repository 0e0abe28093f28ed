// Long: commands of one screen that share its draft.
import { bufferUnit, eventOf } from '../../../../shared/dosing/events';
import type { LogLine } from '../../../../shared/dosing/log';
import { EMPTY_LINE } from '../../../../shared/dosing/log';
import { measuresText, vatSentences } from '../../../../shared/dosing/say';
import type { Command, Working } from '../../../pane/command';
import type { PaneState } from '../../../pane/keeping/state';
import { say } from '../../../pane/phrases';
import { readNumber } from '../../../pane/values/typed';
import { shownUnit } from '../../../pane/values/units';
import { wordsFor } from '../../../words/words';
import { chooseVat, noteLines, ringTimer } from '../../vat/commands/notebook';
import type { VatState } from '../../vat/state/notebook';
import type { DoseDraft, DraftField, DraftWhat } from '../state/dose';
import {
  EMPTY_DRAFT,
  FIELD_UNITS,
  adviceFor,
  draftOf,
  eventsIn,
  fieldsFor,
  setupIn,
  textsOf,
  whatOf,
} from '../state/dose';
import { waitOver } from '../state/clocks';
import { inDose } from './setup';

const withDraft = (state: PaneState, draft: DoseDraft, more: Partial<PaneState['dose']> = {}): PaneState =>
  inDose(state, { drafts: { ...state.dose.drafts, [state.vat.vat]: draft }, fault: undefined, ...more });

export const chooseDoseVat: Command<string> = {
  name: 'chooseDoseVat',
  label: 'Vat',
  perform: (state, name): PaneState | Working => {
    const chosen = chooseVat.perform(state, name);
    return 'work' in chosen ? chosen : inDose(chosen, { field: 'ph', fault: undefined, isSetupOpen: false });
  },
};

/** Pressed once more, the choice is taken back. */
export const chooseWhat: Command<DraftWhat> = {
  name: 'chooseWhat',
  label: 'What happened before',
  perform: (state, what) => {
    const draft = draftOf(state);
    const isOff = whatOf(state, adviceFor(state, state.vat.vat)) === what;
    const next: DraftWhat = isOff ? 'reading' : what;
    return withDraft(state, { ...draft, what: next }, { field: fieldsFor(next, false)[0] ?? 'ph' });
  },
};

export const chooseDoseField: Command<DraftField> = {
  name: 'chooseDoseField',
  label: 'Field',
  perform: (state, field) => ({ ...state, dose: { ...state.dose, field } }),
};

export const typeDose: Command<{ readonly field: DraftField; readonly text: string }> = {
  name: 'typeDose',
  label: 'Type',
  perform: (state, { field, text }) => {
    const draft = draftOf(state);
    return withDraft(state, { ...draft, texts: { ...draft.texts, [field]: text } });
  },
};

const MOST_DIGITS = 8;
const shownFields = (state: PaneState): readonly DraftField[] => {
  const advice = adviceFor(state, state.vat.vat);
  return fieldsFor(whatOf(state, advice), advice?.action === 'dose');
};

export const pressDoseKey: Command<string> = {
  name: 'pressDoseKey',
  label: 'Key',
  perform: (state, key) => {
    const draft = draftOf(state);
    const { field } = state.dose;
    const text = draft.texts[field] ?? '';
    const next =
      key === 'erase'
        ? text.slice(0, -1)
        : key === '.' && /[.,]/.test(text)
          ? text
          : `${text}${key}`.slice(0, MOST_DIGITS);
    return withDraft(state, { ...draft, texts: { ...draft.texts, [field]: next } });
  },
};

export const nextDoseField: Command = {
  name: 'nextDoseField',
  label: 'Next field',
  perform: (state) => {
    const fields = shownFields(state);
    const at = fields.indexOf(state.dose.field);
    return { ...state, dose: { ...state.dose, field: fields[(at + 1) % fields.length] ?? 'ph' } };
  },
};

export const showMore: Command<boolean> = {
  name: 'showMore',
  label: 'More',
  perform: (state, isMoreOpen) => ({ ...state, dose: { ...state.dose, isMoreOpen } }),
};

const refuse = (state: PaneState, field: DraftField, fault: string): PaneState => ({
  ...inDose(state, { fault, field }),
});

type Numbers = Readonly<Partial<Record<DraftField, number>>>;
/** The typed figures, or the field that is no number or is missing. */
function typedFigures(state: PaneState): Numbers | { readonly field: DraftField; readonly fault: string } {
  const { vat } = wordsFor(state);
  const { texts } = draftOf(state);
  const fields = shownFields(state);
  const numbers: Partial<Record<DraftField, number>> = {};
  for (const field of fields) {
    const text = (texts[field] ?? '').trim();
    if (text === '') continue;
    const value = readNumber(text);
    if (value === undefined) return { field, fault: vat.notNumber(vat.dose.fields[field]) };
    numbers[field] = shownUnit(FIELD_UNITS[field] ?? '', state.settings).toMetric(value);
  }
  const needed = fields[0] ?? 'ph';
  return numbers[needed] === undefined
    ? { field: needed, fault: vat.stillNeeded(vat.dose.fields[needed]) }
    : numbers;
}

const entryFor = (state: PaneState, what: DraftWhat, n: Numbers): Partial<LogLine> =>
  what === 'meter check'
    ? { what, number: n.shown ?? null, unit: bufferUnit(n.buffer ?? 7) }
    : {
        what,
        ph: n.ph ?? null,
        again: n.again ?? null,
        celsius: n.celsius ?? null,
        litres: n.litres ?? null,
        product: textsOf(state, state.vat.vat).material,
      };

/** The clock rings for the vat whose wait ends first. */
const timed = (state: PaneState, vat: VatState): VatState => {
  const wait = waitOver({ ...state, vat }, state.vat.vat);
  const words = wordsFor(state).vat;
  if (!wait || wait <= state.now) return vat;
  return vat.timer && !vat.timer.hasRung && vat.timer.until < wait
    ? vat
    : { ...vat, timer: { what: words.of(state.vat.vat), until: wait, hasRung: false } };
};

/** What a line would make of the vat, as a sentence, where it cannot be taken. */
const refusalOf = (state: PaneState, entry: Partial<LogLine>): string | undefined => {
  const name = state.vat.vat;
  const setup = setupIn(state, name);
  const event = eventOf({ ...EMPTY_LINE, at: state.now, vat: name, ...entry });
  const after = event && adviceFor(state, name, [...eventsIn(state.vat.lines), event]);
  return setup && after?.action === 'refused' ? vatSentences(setup, after).todo : undefined;
};

/** The next reading goes into the log, unless no vat of water could show it. */
export const writeReading: Command = {
  name: 'writeReading',
  label: 'Write it down',
  perform: (state): PaneState | Working => {
    const name = state.vat.vat;
    if (!setupIn(state, name)) return inDose(state, { isSetupOpen: true, isAsked: true });
    const advice = adviceFor(state, name);
    const what = whatOf(state, advice);
    const figures = typedFigures(state);
    if ('fault' in figures) return refuse(state, figures.field, figures.fault);
    const entry = entryFor(state, what, figures);
    const refusal = refusalOf(state, entry);
    if (refusal !== undefined) return refuse(state, shownFields(state)[0] ?? 'ph', refusal);
    const draft = { what, value: figures.ph ?? figures.shown ?? null, unit: '', entry };
    const cleared = withDraft(state, EMPTY_DRAFT, { field: 'ph' });
    return noteTimed(cleared, [draft]);
  },
};

const noteTimed = (state: PaneState, drafts: Parameters<typeof noteLines>[2]): PaneState | Working => {
  const noted = noteLines(state, state.vat, drafts, state.now);
  const next = 'work' in noted ? noted.next : noted;
  const withClock = { ...next, vat: timed(next, next.vat) };
  return 'work' in noted ? { ...noted, next: withClock } : withClock;
};

/** One press logs what was really given: what the spoons hold, or the grams typed instead. */
export const giveDose: Command = {
  name: 'giveDose',
  label: 'Given',
  perform: (state): PaneState | Working => {
    const { measures } = adviceFor(state, state.vat.vat) ?? {};
    if (!measures) return state;
    const text = (draftOf(state).texts.grams ?? '').trim();
    const typed = text === '' ? measures.grams : readNumber(text);
    const { vat } = wordsFor(state);
    if (typed === undefined || typed < 0) return refuse(state, 'grams', vat.notNumber(vat.dose.fields.grams));
    const grams = Number(typed.toPrecision(4));
    const entry = { what: 'dose', grams, product: textsOf(state, state.vat.vat).material };
    const refusal = refusalOf(state, entry);
    if (refusal !== undefined) return refuse(state, 'grams', refusal);
    const note = text === '' && measures.by !== 'scale' ? say(measuresText(measures)) : '';
    const cleared = withDraft(state, EMPTY_DRAFT, { field: 'ph' });
    return noteTimed(cleared, [{ what: 'dose', value: grams, unit: 'g', entry: { ...entry, note } }]);
  },
};

/** The clock on show has rung and was stopped: the next wait of any vat takes its place. */
export const tickVats: Command = {
  name: 'tickVats',
  label: 'The clock goes on',
  perform: (state): PaneState | Working => {
    if (state.vat.timer) return ringTimer.perform(state, undefined);
    const waits = state.vat.vats
      .flatMap((name) => {
        const until = waitOver(state, name);
        return until === undefined || until <= state.now ? [] : [{ name, until }];
      })
      .sort((a, b) => a.until - b.until);
    const [first] = waits;
    if (!first || first.until - state.now > 1) return state;
    const timer = { what: wordsFor(state).vat.of(first.name), until: first.until, hasRung: false };
    return { ...state, vat: { ...state.vat, timer } };
  },
};
