import type { DosingKey } from '../../../../shared/dosing/fields';
import { DOSING_FIELDS, DOSING_KEYS } from '../../../../shared/dosing/fields';
import { dosingOf } from '../../../../shared/dosing/events';
import type { Command, Working } from '../../../pane/command';
import type { PaneState } from '../../../pane/keeping/state';
import { inVat, noteLines, quiet } from '../../vat/commands/notebook';
import type { DoseState } from '../state/dose';
import { eventsIn, textsOf } from '../state/dose';
import type { SetupTexts } from '../state/setup';
import { readSetup } from '../state/setup';

export const inDose = (state: PaneState, dose: Partial<DoseState>): PaneState => ({
  ...quiet(state),
  dose: { ...state.dose, ...dose },
});

export const withTexts = (state: PaneState, name: string, texts: SetupTexts): PaneState =>
  inDose(state, { setups: { ...state.dose.setups, [name]: texts } });

export const openSetup: Command<boolean> = {
  name: 'openSetup',
  label: 'Set up the vat',
  perform: (state, isSetupOpen) => ({
    ...inDose(state, { isSetupOpen, isAsked: false, touched: new Set() }),
    focus: isSetupOpen ? 'dose-volume' : 'card-title',
  }),
};

const isDosingKey = (key: string): key is DosingKey => (DOSING_KEYS as readonly string[]).includes(key);

export const fillSetup: Command<{
  readonly key: Exclude<keyof SetupTexts, 'imperial'>;
  readonly text: string;
}> = {
  name: 'fillSetup',
  label: 'Type',
  perform: (now, { key, text }) => {
    const state = key === 'spoon' ? { ...now, settings: { ...now.settings, spoon: text } } : now;
    const before = textsOf(state, state.vat.vat);
    const others = before.imperial.filter((one) => one !== key);
    const isImperial = state.settings.units === 'imperial' && isDosingKey(key);
    const imperial = isImperial ? [...others, key] : others;
    return withTexts(state, state.vat.vat, { ...before, [key]: text, imperial });
  },
};

export const leaveSetupField: Command<string> = {
  name: 'leaveSetupField',
  label: 'Leave the field',
  perform: (state, key) => ({
    ...state,
    dose: { ...state.dose, touched: new Set([...state.dose.touched, key]) },
  }),
};

export const typeWho: Command<string> = {
  name: 'typeWho',
  label: 'Who writes',
  perform: (state, who) => inVat(state, { who }),
};

/** Everything of another vat's set-up; its water is taken as the same until a reading says otherwise. */
export const copySetup: Command<string> = {
  name: 'copySetup',
  label: 'Same water',
  perform: (state, from): PaneState | Working =>
    keepSetup.perform(
      withTexts(state, state.vat.vat, { ...textsOf(state, from), sameAs: from, kind: 'vat' }),
      undefined,
    ),
};

/** The set-up is whole: the vat's first line is that it was filled. */
export const keepSetup: Command = {
  name: 'keepSetup',
  label: 'Ready',
  perform: (state): PaneState | Working => {
    const name = state.vat.vat;
    const texts = textsOf(state, name);
    const { faults, cells } = readSetup(texts);
    const wrong = DOSING_FIELDS.find(({ key }) => faults.has(key));
    if (wrong) return { ...inDose(state, { isAsked: true }), focus: `dose-${wrong.key}` };
    const kept: PaneState = {
      ...inDose(withTexts(state, name, texts), {
        isSetupOpen: false,
        isAsked: false,
        field: 'ph',
        ready: [...new Set([...state.dose.ready, name])],
      }),
      focus: 'card-title',
    };
    if (dosingOf(eventsIn(state.vat.lines), name).length > 0) return kept;
    return noteLines(kept, kept.vat, [filledLine(state, cells.volume, cells.material)], state.now);
  },
};

const filledLine = (state: PaneState, litres: unknown, product: unknown) => {
  const from = textsOf(state, state.vat.vat).sameAs;
  const isFromTank = from !== '' && state.dose.setups[from]?.kind === 'tank';
  const amount = typeof litres === 'number' ? litres : null;
  return {
    what: isFromTank ? 'from tank' : 'filled',
    value: amount,
    unit: 'L',
    entry: {
      what: isFromTank ? 'from tank' : 'filled',
      litres: amount,
      product: typeof product === 'string' ? product : '',
      ...(isFromTank ? { note: from } : {}),
    },
  };
};

/** The vat was emptied and filled: what is written from now on is another dosing. */
export const newWater: Command = {
  name: 'newWater',
  label: 'New water in the vat',
  perform: (state): PaneState | Working => {
    const { cells } = readSetup(textsOf(state, state.vat.vat));
    const next = inDose(state, {
      drafts: { ...state.dose.drafts, [state.vat.vat]: { what: undefined, texts: {} } },
    });
    const line = filledLine(state, cells.volume, cells.material);
    const both =
      line.what === 'filled'
        ? [line]
        : [{ ...line, what: 'filled', entry: { ...line.entry, what: 'filled' } }, line];
    return noteLines(inVat(next, { timer: undefined }), { ...next.vat, timer: undefined }, both, state.now);
  },
};
