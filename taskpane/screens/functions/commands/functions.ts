import type { Family, SheetFunction } from '../../../../shared/functions/define';
import type { Cell, Grid } from '../../../../shared/base/values';
import { columnQuantities, draftOf, hasHeadings, sizeOf, unread } from '../state/answer';
import type { StateChange, Command, Doors, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { FunctionsState, ArgumentReading } from '../state/functions';
import { openFunction } from '../state/functions';
import type { Insertion } from '../../../host/port';
import { HostProblem } from '../../../host/port';
import { unitText } from '../../../pane/values/show';
import { wordsFor } from '../../../words/words';
import type { PaneState } from '../../../pane/keeping/state';
import { hasWorkbook } from '../../../pane/keeping/state';
import { BLANK_AS_ZERO, blanksOf } from '../../../pane/blanks';
import { typedText } from '../../../pane/values/typed';

const inFunctions = (state: PaneState, functions: Partial<FunctionsState>): PaneState => ({
  ...state,
  functions: { ...state.functions, ...functions },
});

export const searchFunctions: Command<string> = {
  name: 'searchFunctions',
  label: 'Search',
  perform: (state, search) => inFunctions(state, { search }),
};

export const chooseFamily: Command<Family | 'all'> = {
  name: 'chooseFamily',
  label: 'Subject',
  perform: (state, family) => inFunctions(state, { family }),
};

export const openPage: Command<string> = {
  name: 'openPage',
  label: 'Open',
  perform: (state, name) => ({
    ...inFunctions(state, { open: name, texts: {}, readings: {} }),
    notice: undefined,
    question: undefined,
    focus: 'function-title',
  }),
};

export const closePage: Command = {
  name: 'closePage',
  label: 'All functions',
  perform: (state) => ({
    ...inFunctions(state, { open: undefined, texts: {}, readings: {} }),
    notice: undefined,
    question: undefined,
    focus: 'function-search',
  }),
};

/** Reads what the typed references hold, so that the answer can be shown before anything is inserted. */
function withReadings(state: PaneState): PaneState | Working {
  const fn = openFunction(state.functions);
  const wanted = fn && hasWorkbook(state) ? unread(fn, state.functions) : [];
  if (wanted.length === 0) return state;
  return working(state, async (doors) => {
    const readings: [string, ArgumentReading][] = await Promise.all(
      wanted.map(async (reference): Promise<[string, ArgumentReading]> => [
        reference,
        await readOne(doors, reference),
      ]),
    );
    return (now) =>
      inFunctions(now, { readings: { ...now.functions.readings, ...Object.fromEntries(readings) } });
  });
}

async function readOne(doors: Doors, reference: string): Promise<ArgumentReading> {
  try {
    return { kind: 'read', range: await doors.workbook.readReference(reference) };
  } catch (error) {
    if (error instanceof HostProblem) return { kind: 'failed', sentence: error.message };
    throw error;
  }
}

export const fillArgument: Command<{ readonly param: string; readonly text: string }> = {
  name: 'fillArgument',
  label: 'Type a value',
  perform: (state, { param, text }) =>
    withReadings(
      inFunctions(
        { ...state, notice: undefined, question: undefined },
        { texts: { ...state.functions.texts, [param]: text } },
      ),
    ),
};

export const takeSelection: Command<string> = {
  name: 'takeSelection',
  label: 'Use selection',
  perform: (state, param) =>
    working({ ...state, notice: undefined, question: undefined }, async (doors) => {
      const range = await doors.workbook.readSelection();
      return (now) =>
        inFunctions(now, {
          texts: { ...now.functions.texts, [param]: range.reference },
          readings: { ...now.functions.readings, [range.reference]: { kind: 'read', range } },
        });
    }),
};

export const useExample: Command<readonly (Cell | Grid)[]> = {
  name: 'useExample',
  label: 'Try these numbers',
  perform: (state, args) => {
    const fn = openFunction(state.functions);
    if (!fn) return state;
    const texts = Object.fromEntries(fn.params.map((param, i) => [param.name, typedText(args[i], param)]));
    return { ...inFunctions(state, { texts, readings: {} }), focus: 'function-answer' };
  },
};

function formatsFor(fn: SheetFunction, value: Cell | Grid): readonly string[] {
  return columnQuantities(fn, sizeOf(value).columns).map(({ format }) => format);
}

/** Where: the selected cell, the selected cell whatever it holds, or the next room below it. */
type InsertPlace = 'here' | 'over' | 'below';
/** Name and unit of an answer of one cell, as they stand beside it. */
const besideOf = (fn: SheetFunction, isNamed: boolean): Pick<Insertion, 'name' | 'unit'> =>
  isNamed && fn.returns.kind === 'value'
    ? { name: fn.summary.replace(/[.:,;].*$/s, ''), unit: unitText(fn.returns.quantity) }
    : {};

function insert(state: PaneState, where: InsertPlace): PaneState | Working {
  const fn = openFunction(state.functions);
  if (!fn || state.task) return state;
  const draft = draftOf(fn, state.functions);
  const value = draft.state.kind === 'answer' ? draft.state.value : 0;
  const size = sizeOf(value);
  return working(
    { ...state, question: undefined, notice: undefined },
    async (doors): Promise<StateChange> => {
      const blanks = await blanksOf(doors);
      const outcome = await doors.workbook.insertFormula({
        formula: draft.formula,
        ...size,
        formats: formatsFor(fn, value),
        hasHeadings: hasHeadings(fn, state.functions.texts),
        mayReplace: where === 'over',
        ...(where === 'below' ? { isBelow: true } : {}),
        ...besideOf(fn, state.functions.isNamed),
      });
      if (outcome.kind === 'inserted')
        return (now) => ({
          ...now,
          notice:
            blanks === 'zero'
              ? { tone: 'warning', text: `${fn.name} is now in ${outcome.address}. ${BLANK_AS_ZERO}` }
              : { tone: 'good', text: `${fn.name} is now in ${outcome.address}.` },
        });
      const { find: says } = wordsFor(state);
      if (outcome.kind === 'refused')
        return (now) => ({ ...now, notice: { tone: 'warning', text: outcome.sentence } });
      return (now) => ({
        ...now,
        focus: 'question',
        question: {
          text: says.holds(outcome.address, outcome.content),
          answers: [
            { label: says.replace, act: 'insertAnyway' },
            { label: says.free, act: 'insertBelow' },
            { label: says.keep, act: 'dismiss' },
          ],
        },
      });
    },
  );
}

export const insertFormula: Command = {
  name: 'insertFormula',
  label: 'Insert into the selected cell',
  perform: (state) => insert(state, 'here'),
};
export const insertAnyway: Command = {
  name: 'insertAnyway',
  label: 'Replace it',
  perform: (state) => insert(state, 'over'),
};
export const insertBelow: Command = {
  name: 'insertBelow',
  label: 'Next free cells instead',
  perform: (state) => insert(state, 'below'),
};
export const nameAnswer: Command<boolean> = {
  name: 'nameAnswer',
  label: 'Name and unit beside it',
  perform: (state, isNamed) => inFunctions(state, { isNamed }),
};
