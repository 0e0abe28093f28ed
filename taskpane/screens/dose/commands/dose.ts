// Long: commands of one screen that share its waiting and its notices.
import type { DosingReading } from '../../../../shared/dosing/ask';
import { GRAMS_SO_FAR } from '../../../../shared/dosing/ask';
import { DOSING_FIELDS } from '../../../../shared/dosing/fields';
import type { WorkbookModel } from '../../../../shared/sheet/workbook/model';
import type { Command, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { DoseState, Draft } from '../state/dose';
import {
  EMPTY_DRAFT,
  EXAMPLE_READINGS,
  dosingOf,
  draftGrams,
  exampleDose,
  isDosingKey,
  readVat,
} from '../state/dose';
import type { PaneState } from '../../../pane/state';
import { isFree } from '../../../pane/state';
import { readNumber } from '../../../pane/typed';
import type { Written } from '../../../pane/writing';
import { badSuffix, isSuffix, list, outcomeChange } from '../../../pane/writing';

const inDose = (state: PaneState, dose: Partial<DoseState>): PaneState => ({
  ...state,
  dose: { ...state.dose, ...dose },
  notice: undefined,
  question: undefined,
});

export const fillDoseField: Command<{ readonly key: string; readonly text: string }> = {
  name: 'fillDoseField',
  label: 'Type',
  perform: (state, { key, text }) =>
    isDosingKey(key) ? inDose(state, { texts: { ...state.dose.texts, [key]: text } }) : state,
};

export const leaveDoseField: Command<string> = {
  name: 'leaveDoseField',
  label: 'Leave the field',
  perform: (state, key) => ({
    ...state,
    dose: { ...state.dose, touched: new Set([...state.dose.touched, key]) },
  }),
};

export const showVat: Command<boolean> = {
  name: 'showVat',
  label: 'The vat and the product',
  perform: (state, isVatOpen) => ({ ...state, dose: { ...state.dose, isVatOpen } }),
};

export const openAmmonia: Command = {
  name: 'openAmmonia',
  label: 'Type the ammonia',
  perform: (state) => ({ ...inDose(state, { isVatOpen: true }), focus: 'dose-ammonia' }),
};

export const typeReading: Command<Partial<Draft>> = {
  name: 'typeReading',
  label: 'Type a reading',
  perform: (state, draft) => inDose(state, { draft: { ...state.dose.draft, ...draft }, fault: undefined }),
};

/** Readings change in one way only, so that every change can be taken back. */
const MOST_UNDONE = 50;
const withReadings = (state: PaneState, readings: readonly DosingReading[]): PaneState =>
  inDose(state, {
    readings,
    past: [...state.dose.past, state.dose.readings].slice(-MOST_UNDONE),
    draft: EMPTY_DRAFT,
    correcting: undefined,
    fault: undefined,
    isVatOpen: readings.length === 0,
  });

/** The sentence is about a row of readings, not about the vat. */
const FAULTY_READING = new RegExp(`^(?:Reading \\d+, )?(?:${GRAMS_SO_FAR}|pH): `);
const refuse = (state: PaneState, field: 'grams' | 'ph', sentence: string): PaneState => ({
  ...inDose(state, { fault: { field, sentence } }),
  focus: `dose-${field}`,
});

/** The typed reading, or the field that cannot be read as a number. */
function typedReading(
  dose: DoseState,
  isFirst: boolean,
): DosingReading | { readonly field: 'grams' | 'ph'; readonly sentence: string } {
  const text = draftGrams(dose);
  const grams = isFirst ? 0 : readNumber(text);
  if (grams === undefined)
    return {
      field: 'grams',
      sentence:
        text.trim() === ''
          ? 'How much product has gone in so far? A number in grams is needed.'
          : `Grams so far: expected a number, got “${text}”.`,
    };
  const ph = readNumber(dose.draft.ph);
  if (ph === undefined)
    return {
      field: 'ph',
      sentence:
        dose.draft.ph.trim() === ''
          ? 'Type the pH the meter shows.'
          : `pH: expected a number such as 5.2, got “${dose.draft.ph}”.`,
    };
  return { grams, ph };
}

const refuseVat = (state: PaneState): PaneState => {
  const key = DOSING_FIELDS.find((field) => readVat(state.dose.texts).faults.has(field.key))?.key;
  return {
    ...inDose(state, { isAsked: true, isVatOpen: true }),
    notice: {
      tone: 'warning',
      text: 'First the vat and the product: the field chosen still needs an answer.',
    },
    focus: key === undefined ? undefined : `dose-${key}`,
  };
};

export const addReading: Command = {
  name: 'addReading',
  label: 'Take this reading',
  perform: (state) => {
    const { dose } = state;
    if (!readVat(dose.texts).vat) return refuseVat(state);
    const at = dose.correcting ?? dose.readings.length;
    const reading = typedReading(dose, at === 0);
    if ('field' in reading) return refuse(state, reading.field, reading.sentence);
    const readings = [...dose.readings.slice(0, at), reading, ...dose.readings.slice(at + 1)];
    const answer = dosingOf({ texts: dose.texts, readings });
    // A reading the functions cannot take is not kept: their reason stands beside the field.
    if (answer?.kind === 'refused' && FAULTY_READING.test(answer.todo))
      return refuse(state, answer.todo.includes(GRAMS_SO_FAR) ? 'grams' : 'ph', answer.todo);
    return { ...withReadings(state, readings), focus: 'dose-answer' };
  },
};

export const correctReading: Command<number> = {
  name: 'correctReading',
  label: 'Correct',
  perform: (state, at) => {
    const reading = state.dose.readings[at];
    if (!reading) return state;
    return {
      ...inDose(state, {
        correcting: at,
        fault: undefined,
        draft: { grams: String(reading.grams), ph: String(reading.ph) },
      }),
      focus: 'dose-ph',
    };
  },
};

export const leaveCorrection: Command = {
  name: 'leaveCorrection',
  label: 'Leave it as it was',
  perform: (state) => ({
    ...inDose(state, { correcting: undefined, fault: undefined, draft: EMPTY_DRAFT }),
    focus: 'dose-ph',
  }),
};

export const dropReading: Command<number> = {
  name: 'dropReading',
  label: 'Take out',
  perform: (state, at) => {
    const { readings } = state.dose;
    if (at === 0 && readings.length > 1)
      return {
        ...state,
        notice: {
          tone: 'warning',
          text:
            'The reading before any product is needed by all that follow. Correct it instead, or ' +
            'begin a new vat.',
        },
      };
    return {
      ...withReadings(
        state,
        readings.filter((_, i) => i !== at),
      ),
      focus: readings.length > 1 ? 'dose-answer' : 'dose-ph',
    };
  },
};

export const undoReading: Command = {
  name: 'undoReading',
  label: 'Undo',
  perform: (state) => {
    const { past } = state.dose;
    const readings = past.at(-1);
    if (!readings) return state;
    return {
      ...inDose(state, {
        readings,
        past: past.slice(0, -1),
        draft: EMPTY_DRAFT,
        correcting: undefined,
        fault: undefined,
      }),
      focus: readings.length > 0 ? 'dose-answer' : 'dose-ph',
    };
  },
};

export const newVat: Command = {
  name: 'newVat',
  label: 'New vat',
  perform: (state) => ({
    ...withReadings(state, []),
    notice: { tone: 'good', text: 'The readings are cleared for a new vat. Undo brings them back.' },
    focus: 'dose-volume',
  }),
};

export const fillDoseExample: Command = {
  name: 'fillDoseExample',
  label: 'Show an example',
  perform: (state) => ({
    ...withReadings(inDose(state, { texts: exampleDose(state.dose.texts) }), EXAMPLE_READINGS),
    focus: 'dose-answer',
  }),
};

/** Writing is needed late: its code is loaded when first asked for. */
const sheetOf = async ({ texts, readings }: DoseState): Promise<WorkbookModel> => {
  const { dosingWorkbook } = await import(
    /* webpackChunkName: "dosing" */ '../../../../shared/books/dosing/sheet'
  );
  return dosingWorkbook(readVat(texts).cells, readings);
};

const WRITTEN: Written = {
  done: (sheets) =>
    `The dosing is written on a new sheet: ${list(sheets)}. Go on there or here; the two do not follow each other.`,
  what: 'the dosing sheet',
  again: { label: 'Write beside it', act: 'writeDoseWithSuffix' },
};

function write(state: PaneState, suffix: string): PaneState | Working {
  if (!isFree(state)) return state;
  if (!readVat(state.dose.texts).vat) return refuseVat(state);
  const begun: PaneState = {
    ...state,
    notice: undefined,
    question: undefined,
    task: { label: 'Writing the dosing sheet', done: 0, total: 7 },
  };
  return working(begun, async ({ workbook }, tell) =>
    outcomeChange(await workbook.writeWorkbook(await sheetOf(state.dose), suffix, tell), WRITTEN),
  );
}

export const writeDose: Command = {
  name: 'writeDose',
  label: 'Write as a sheet',
  perform: (state) => write(state, ''),
};

export const writeDoseWithSuffix: Command = {
  name: 'writeDoseWithSuffix',
  label: 'Write beside it',
  perform: (state) => {
    const word = state.question?.word?.value.trim() ?? '';
    return isSuffix(word)
      ? write(state, ` ${word}`)
      : { ...state, notice: { tone: 'warning', text: badSuffix(word) }, focus: 'question-word' };
  },
};

export const saveDose: Command = {
  name: 'saveDose',
  label: 'Save as .xlsx file',
  perform: (state): PaneState | Working => {
    if (state.task) return state;
    if (!readVat(state.dose.texts).vat) return refuseVat(state);
    const begun: PaneState = {
      ...state,
      notice: undefined,
      question: undefined,
      task: { label: 'Making the file', done: 0, total: 2 },
    };
    return working(begun, async ({ files }) => {
      const [model, { writeXlsx }] = await Promise.all([
        sheetOf(state.dose),
        import(/* webpackChunkName: "xlsx" */ '../../../../shared/files/write'),
      ]);
      const text = await files.saveWorkbook('dosing.xlsx', writeXlsx(model));
      return (now) => ({ ...now, notice: { tone: 'good', text } });
    });
  },
};
