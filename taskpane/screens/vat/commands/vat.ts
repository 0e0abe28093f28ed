import type { Command, Working } from '../../../pane/command';
import type { PaneState } from '../../../pane/keeping/state';
import { wordsFor } from '../../../words/words';
import type { CardId } from '../state/cards';
import { CARDS, isPadCard } from '../state/cards';
import { withEntries } from '../state/entries';
import type { VatState } from '../state/notebook';
import { cleared, contextOf, fieldsOf, isUsual, readCard, textOf, withText } from '../state/vat';
import { inVat, noteLines, quiet } from './notebook';

export const addVat: Command<boolean> = {
  name: 'addVat',
  label: 'Add a vat',
  perform: (state, isAdding) => ({
    ...inVat(state, { isAdding, added: '' }),
    focus: isAdding ? 'vat-added' : undefined,
  }),
};
export const nameVat: Command<string> = {
  name: 'nameVat',
  label: 'Name of the vat',
  perform: (state, added) => inVat(state, { added }),
};
export const keepVat: Command = {
  name: 'keepVat',
  label: 'Add',
  perform: (state) => {
    const name = state.vat.added.trim();
    if (name === '') return inVat(state, { isAdding: false });
    return inVat(state, {
      vats: state.vat.vats.includes(name) ? state.vat.vats : [...state.vat.vats, name],
      vat: name,
      isAdding: false,
      added: '',
    });
  },
};

const firstEmpty = (vat: VatState, units: PaneState['settings']['units']): string =>
  fieldsOf(vat).find((field) => textOf(vat, field, units) === '')?.key ?? fieldsOf(vat)[0]?.key ?? '';

export const atCard = (state: PaneState, card: CardId | undefined, focus: string): PaneState => {
  const vat = { ...state.vat, card };
  return { ...quiet(state), vat: { ...vat, field: firstEmpty(vat, state.settings.units) }, focus };
};
export const openCard: Command<CardId> = {
  name: 'openCard',
  label: 'Open the card',
  perform: (state, card) => atCard(state, card, 'card-title'),
};
export const closeCard: Command = {
  name: 'closeCard',
  label: 'All cards',
  perform: (state) => atCard(state, undefined, `card-${state.vat.card ?? 'dose'}`),
};

export const chooseField: Command<string> = {
  name: 'chooseField',
  label: 'Field',
  perform: (state, field) => inVat(state, { field }),
};

export const typeField: Command<{ readonly field: string; readonly text: string }> = {
  name: 'typeField',
  label: 'Type',
  perform: (state, { field, text }) => ({
    ...quiet(state),
    vat: withText(state.vat, field, text, state.settings.units),
  }),
};

/** A long enough number for anything at a vat. */
const MOST_DIGITS = 10;
export const pressKey: Command<string> = {
  name: 'pressKey',
  label: 'Key',
  perform: (state, key) => {
    const field = fieldsOf(state.vat).find((one) => one.key === state.vat.field);
    if (!field) return state;
    const { units } = state.settings;
    const usual = key !== 'erase' && isUsual(state.vat, field, units);
    const text = usual ? '' : textOf(state.vat, field, units);
    const next =
      key === 'erase'
        ? text.slice(0, -1)
        : key === '.' && (/[.,]/.test(text) || field.kind === 'whole')
          ? text
          : `${text}${key}`.slice(0, MOST_DIGITS);
    return { ...quiet(state), vat: withText(state.vat, field.key, next, state.settings.units) };
  },
};

export const nextField: Command = {
  name: 'nextField',
  label: 'Next field',
  perform: (state) => {
    const fields = fieldsOf(state.vat);
    const at = fields.findIndex(({ key }) => key === state.vat.field);
    return inVat(state, { field: fields[(at + 1) % Math.max(1, fields.length)]?.key ?? '' });
  },
};

const MINUTES_A_DAY = 1440;

export const writeCard: Command = {
  name: 'writeCard',
  label: 'Write it down',
  perform: (state): PaneState | Working => {
    const { vat } = state;
    const { card } = vat;
    if (!isPadCard(card)) return state;
    const words = wordsFor(state);
    const { units } = state.settings;
    const { values, faults, missing } = readCard(vat, words, units);
    const [fault] = faults.values();
    const isShort = missing.length > 0 || (CARDS[card].oneOf && Object.keys(values).length === 0);
    // What is wrong or missing stands where the answer will; the field it is about gets the keyboard.
    if (fault !== undefined || isShort) {
      const field = [...faults.keys()][0] ?? missing[0]?.key ?? vat.field;
      return { ...quiet(state), vat: { ...vat, field }, focus: `field-${field}` };
    }
    const context = contextOf(vat, state.now, words, units);
    const drafts = withEntries(state, CARDS[card].lines(values, context), values, context.text);
    const minutes = CARDS[card].minutes?.(values);
    const after = cleared(vat, units);
    const timed: VatState = {
      ...after,
      field: firstEmpty(after, units),
      timer:
        minutes === undefined
          ? vat.timer
          : { what: words.vat.cards[card], until: state.now + minutes / MINUTES_A_DAY, hasRung: false },
    };
    return noteLines(state, timed, drafts, state.now);
  },
};
