import type { Command, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { PlanState, PlanTexts } from '../state/plan';
import { exampleTexts, firstFault, firstOpen, isTextKey, readyForm, usualForm } from '../state/plan';
import type { MadeRun } from '../state/run';
import type { WorkbookModel } from '../../../../shared/sheet/workbook/model';
import type { PortTell } from '../../../host/port';
import { isoDateOfSerial } from '../../../../shared/units/dates';
import { inShares } from '../../../pane/slices';
import type { PaneState } from '../../../pane/keeping/state';
import { isFree } from '../../../pane/keeping/state';
import { engine, modelOf, saveModel } from '../../season/commands/writeBook';
import type { Written } from '../../../pane/values/writing';
import { languageOf, wordsFor } from '../../../words/words';
import { badSuffix, fileWord, isSuffix, list, outcomeChange } from '../../../pane/values/writing';

const withPlan = (state: PaneState, plan: Partial<PlanState>): PaneState => ({
  ...state,
  plan: { ...state.plan, ...plan },
});

/** The planner is a big part of the code: it is loaded at the first number typed. */
const runPlanner = () => import(/* webpackChunkName: "run" */ '../state/run');
const quiet: PortTell = () => undefined;

/** The texts typed last: planning of older ones is given up. */
let newest: PlanTexts | undefined;
/** A pause in typing this long starts the planning. */
const PAUSE_MS = 150;
const pause = (ms: number): Promise<void> =>
  new Promise((go) => {
    setTimeout(go, ms);
  });

/** Plans what is typed so far, in slices and unseen; the answer comes when it is ready. */
function planning(state: PaneState): PaneState | Working {
  const { texts } = state.plan;
  newest = texts;
  const { form, book } = usualForm(texts);
  if (!form || !book) return state;
  return working(state, async () => {
    await pause(PAUSE_MS);
    const isOld = (): boolean => newest !== texts;
    if (isOld()) return (now) => now;
    const { runSteps } = await runPlanner();
    const made = await inShares(runSteps(texts, form, book), { label: '', from: 0, to: 100 }, quiet, isOld);
    return (now) => (made && now.plan.texts === texts ? withPlan(now, { made }) : now);
  });
}

const withTexts = (state: PaneState, texts: PlanTexts): PaneState | Working =>
  planning({ ...withPlan(state, { texts }), notice: undefined, question: undefined });

export const fillField: Command<{ readonly key: string; readonly text: string }> = {
  name: 'fillField',
  label: 'Type',
  perform: (state, { key, text }) =>
    !isTextKey(key) || state.plan.texts[key] === text
      ? state
      : withTexts(state, { ...state.plan.texts, [key]: text }),
};

/** A field complains only once the user has left it. */
export const leaveField: Command<string> = {
  name: 'leaveField',
  label: 'Leave the field',
  perform: (state, key) => withPlan(state, { touched: new Set([...state.plan.touched, key]) }),
};

export const fillExample: Command = {
  name: 'fillExample',
  label: 'Fill in an example',
  // The answer stands at the top, the button at the foot.
  perform: (state) =>
    withTexts(
      { ...state, focus: 'plan-answer' },
      exampleTexts(state.plan.texts, wordsFor(state).example.creek),
    ),
};

/** What was typed in an earlier hour is planned again when the place is opened. */
export const planTyped: Command = {
  name: 'planTyped',
  label: 'Plan what is typed',
  perform: (state) => {
    const { texts, touched, made } = state.plan;
    const today = isoDateOfSerial(state.openedOn);
    // A form kept from another day is planned from this one, unless the day was chosen.
    if (!touched.has('plannedOn') && texts.plannedOn !== today)
      return withTexts(state, { ...texts, plannedOn: today });
    return made?.texts === texts ? state : planning(state);
  },
};

/** Shows what is wrong in the form instead of starting. */
const refuseForm = (state: PaneState): PaneState => {
  const key = firstFault(state.plan.texts);
  return {
    ...withPlan(state, { isAsked: true }),
    notice: { tone: 'warning', text: 'Some fields of the form cannot be used yet. The first one is chosen.' },
    focus: key === undefined ? undefined : `plan-${key.replace('.', '-')}`,
  };
};

/** The plan of the typed form: the one on show, or made now. */
async function madeOf(
  state: PaneState,
  tell: PortTell,
  isStopped: () => boolean,
): Promise<MadeRun | undefined> {
  const { texts, made } = state.plan;
  if (made?.texts === texts) return made;
  const { form, book } = readyForm(texts);
  if (!form || !book) return undefined;
  const { runSteps } = await runPlanner();
  return inShares(
    runSteps(texts, form, book),
    { label: 'Working the plan out', from: 0, to: 100 },
    tell,
    isStopped,
  );
}

const WRITTEN: Written = {
  done: (sheets) =>
    `The plan is written on new sheets: ${list(sheets)}. Yellow cells are yours to change; everything else follows.`,
  what: 'the plan',
  again: { label: 'Write beside them', act: 'writeWithSuffix' },
};

/** What was written without having been asked is said: the answer on show rests on it. */
const takenWords = (taken: readonly string[]): string =>
  taken.length === 0 ? '' : ` Taken for granted: ${taken.join(', ')}.`;

/** Progress is told in hundredths. */
const TOTAL = 100;
const begun = (state: PaneState, label: string): PaneState => ({
  ...state,
  notice: undefined,
  question: undefined,
  task: { label, done: 0, total: TOTAL },
});

function write(state: PaneState, suffix: string): PaneState | Working {
  if (!isFree(state)) return state;
  const { form, taken } = readyForm(state.plan.texts);
  if (!form) return refuseForm(state);
  return working(begun(state, 'Working the plan out'), async ({ workbook }, tell, isStopped) => {
    const made = await madeOf(state, tell, isStopped);
    if (!made) return (now) => now;
    const change = outcomeChange(
      await workbook.writeWorkbook(await modelOf(made, tell, TOTAL, languageOf(state)), suffix, tell),
      { ...WRITTEN, done: (sheets) => [WRITTEN.done(sheets), takenWords(taken)].join('') },
    );
    return (now) => change(now.plan.texts === made.texts ? withPlan(now, { made }) : now);
  });
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

/** Makes a file of what `modelFrom` gives for the plan, which is made first where it is not. */
function save(
  state: PaneState,
  name: string,
  modelFrom: (made: MadeRun, tell: PortTell) => Promise<WorkbookModel>,
): PaneState | Working {
  if (state.task) return state;
  const { form } = readyForm(state.plan.texts);
  if (!form) return refuseForm(state);
  return saveModel(state, `${fileWord(form.hatchery, 'run')}-${name}.xlsx`, async (tell, isStopped) => {
    const made = await madeOf(state, tell, isStopped);
    return made && modelFrom(made, tell);
  });
}

export const savePlan: Command = {
  name: 'savePlan',
  label: 'Save as .xlsx file',
  perform: (state) => save(state, 'plan', (made, tell) => modelOf(made, tell, TOTAL, languageOf(state))),
};

/** One page for the wall and one for every vat: a file of its own, to print and hang up. */
export const saveCards: Command = {
  name: 'saveCards',
  label: 'Cards to print',
  perform: (state) =>
    save(state, 'cards', async ({ book, plan }) => {
      const { cardsWorkbook, BOOK_LANGUAGES } = await engine();
      return cardsWorkbook(book, plan, undefined, BOOK_LANGUAGES[languageOf(state)]);
    }),
};

/** Enter: to the first question that is still open; where none is, the plan is written, or saved without a workbook. */
export const enterPlan: Command = {
  name: 'enterPlan',
  label: 'Go on',
  perform: (state) => {
    const { texts } = state.plan;
    if (readyForm(texts).form)
      return isFree(state) ? writePlan.perform(state, undefined) : savePlan.perform(state, undefined);
    const key = firstOpen(texts);
    return key === undefined ? state : { ...state, focus: `plan-${key.replace('.', '-')}` };
  },
};
