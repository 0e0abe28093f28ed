import type { Command, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { PlanTexts } from '../state/plan';
import { exampleTexts, firstFault, isFieldKey, readForm } from '../state/plan';
import type { PlanForm } from '../../../../shared/run/form';
import { planSeason } from '../../../../shared/run/season';
import type { WorkbookModel } from '../../../../shared/sheet/workbook/model';
import type { PaneState } from '../../../pane/state';
import { isFree } from '../../../pane/state';
import type { Written } from '../../../pane/writing';
import { badSuffix, fileWord, isSuffix, list, outcomeChange } from '../../../pane/writing';

const withTexts = (state: PaneState, texts: PlanTexts): PaneState => ({
  ...state,
  plan: { ...state.plan, texts },
  notice: undefined,
  question: undefined,
});

export const fillField: Command<{ readonly key: string; readonly text: string }> = {
  name: 'fillField',
  label: 'Type',
  perform: (state, { key, text }) =>
    isFieldKey(key) ? withTexts(state, { ...state.plan.texts, [key]: text }) : state,
};

/** A field complains only once the user has left it. */
export const leaveField: Command<string> = {
  name: 'leaveField',
  label: 'Leave the field',
  perform: (state, key) => ({
    ...state,
    plan: { ...state.plan, touched: new Set([...state.plan.touched, key]) },
  }),
};

export const fillExample: Command = {
  name: 'fillExample',
  label: 'Fill in an example',
  perform: (state) => withTexts(state, exampleTexts(state.plan.texts)),
};

/** Writing workbooks is a big part of the code and needed late: it is loaded when first asked for. */
const bookOf = async (form: PlanForm): Promise<WorkbookModel> => {
  const { seasonWorkbook } = await import(/* webpackChunkName: "book" */ '../../../../shared/run');
  return seasonWorkbook(planSeason(form));
};

/** Shows what is wrong in the form instead of starting. */
const refuseForm = (state: PaneState): PaneState => {
  const key = firstFault(state.plan.texts);
  return {
    ...state,
    plan: { ...state.plan, isAsked: true },
    notice: { tone: 'warning', text: 'Some fields of the form cannot be used yet. The first one is chosen.' },
    focus: key === undefined ? undefined : `plan-${key}`,
  };
};

const WRITTEN: Written = {
  done: (sheets) =>
    `The plan is written on new sheets: ${list(sheets)}. Yellow cells are yours to change; everything else follows.`,
  what: 'the plan',
  again: { label: 'Write beside them', act: 'writeWithSuffix' },
};

function write(state: PaneState, suffix: string): PaneState | Working {
  if (!isFree(state)) return state;
  const { form } = readForm(state.plan.texts);
  if (!form) return refuseForm(state);
  const begun: PaneState = {
    ...state,
    notice: undefined,
    question: undefined,
    task: { label: 'Working the plan out', done: 0, total: 7 },
  };
  return working(begun, async ({ workbook }, tell) =>
    outcomeChange(await workbook.writeWorkbook(await bookOf(form), suffix, tell), WRITTEN),
  );
}

export const writePlan: Command = {
  name: 'writePlan',
  label: 'Write into this workbook',
  perform: (state) => write(state, ''),
};

export const writeWithSuffix: Command = {
  name: 'writeWithSuffix',
  label: 'Write beside them',
  perform: (state) => {
    const word = state.question?.word?.value.trim() ?? '';
    if (isSuffix(word)) return write(state, ` ${word}`);
    return { ...state, notice: { tone: 'warning', text: badSuffix(word) }, focus: 'question-word' };
  },
};

const fileName = (form: PlanForm): string => `${fileWord(form.hatchery, 'season')}-plan.xlsx`;

export const savePlan: Command = {
  name: 'savePlan',
  label: 'Save as .xlsx file',
  perform: (state): PaneState | Working => {
    if (state.task) return state;
    const { form } = readForm(state.plan.texts);
    if (!form) return refuseForm(state);
    const begun: PaneState = {
      ...state,
      notice: undefined,
      question: undefined,
      task: { label: 'Making the file', done: 0, total: 2 },
    };
    return working(begun, async ({ files }, tell) => {
      const [model, { writeXlsx }] = await Promise.all([
        bookOf(form),
        import(/* webpackChunkName: "xlsx" */ '../../../../shared/files/write'),
      ]);
      tell({ label: 'Making the file', done: 1, total: 2 });
      const text = await files.saveWorkbook(fileName(form), writeXlsx(model));
      return (now) => ({ ...now, notice: { tone: 'good', text } });
    });
  },
};
