import type { Command, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { PortTell } from '../../../host/port';
import type { SeasonBook } from '../../../../shared/season';
import type { WorkbookModel } from '../../../../shared/sheet/workbook/model';
import { bookOfForm, firstFaultOf } from '../state/faults';
import type { Again, SeasonMade } from '../state/season';
import { ROWS_SHOWN, isOutdated } from '../state/season';
import { inShares } from '../../../pane/slices';
import type { PaneState } from '../../../pane/state';
import { isFree } from '../../../pane/state';
import { inSeason } from './season';
import { begun, stoppedAt } from '../../share/commands/share';
import type { Written } from '../../../pane/writing';
import { badSuffix, fileWord, isSuffix, list, outcomeChange } from '../../../pane/writing';

/** Planning a season and writing it down. */

/** The planner is a big part of the code and needed late: it is loaded when first asked for. */
export const planner = () => import(/* webpackChunkName: "season" */ '../../../../shared/season');

/** Orders are shown page by page: the one in question must be on show. */
const pageOf = (state: PaneState, field: string | undefined): number => {
  const id = /^season-order-(\d+)-/.exec(field ?? '')?.[1];
  const place = state.season.form.orders.findIndex((row) => String(row.id) === id);
  return place < 0 ? state.season.page : Math.floor(place / ROWS_SHOWN);
};

/** Shows what is wrong in the form instead of starting. */
function refuseForm(state: PaneState): PaneState {
  const focus = firstFaultOf(state.season.form);
  return {
    ...inSeason(state, { isAsked: true, page: pageOf(state, focus) }),
    focus,
    question: undefined,
    notice: { tone: 'warning', text: 'Some fields of the form cannot be used yet. The first one is chosen.' },
  };
}

export const planSeason: Command = {
  name: 'planSeason',
  label: 'Work the plan out',
  perform: (state): PaneState | Working => {
    if (state.task) return state;
    const { form, again } = state.season;
    const book = bookOfForm(form);
    if (!book) return refuseForm(state);
    return working(begun(state, 'Working the plan out'), async (_, tell, isStopped) => {
      const { compareSeasons, planSeasonSteps } = await planner();
      const plan = await inShares(
        planSeasonSteps(book),
        { label: 'Working the plan out', from: 0, to: 100 },
        tell,
        isStopped,
      );
      if (!plan) return stoppedAt('season-plan');
      const before = again?.read?.before;
      const made: SeasonMade = {
        form,
        book,
        plan,
        changes: before && compareSeasons(before, plan, book.plannedOn),
      };
      return (now) => ({ ...inSeason(now, { made }), focus: 'season-result' });
    });
  },
};

const models = new WeakMap<SeasonBook, WorkbookModel>();
const pause = (): Promise<void> =>
  new Promise((go) => {
    setTimeout(go);
  });

/**
 * Calculating the workbook takes a second or so: it is done once for a plan, after what is going on has been
 * drawn.
 */
async function modelOf({ book, plan }: SeasonMade, tell: PortTell, total: number): Promise<WorkbookModel> {
  let model = models.get(plan);
  if (!model) {
    const { orderBookWorkbook } = await planner();
    tell({ label: 'Calculating the workbook', done: 0, total });
    await pause();
    models.set(plan, (model = orderBookWorkbook(book, plan)));
  }
  return model;
}

/** The plan to write, or the state that says why there is none. */
function madeOf(state: PaneState): SeasonMade | PaneState {
  const { made } = state.season;
  if (made && !isOutdated(state.season)) return made;
  const text = made
    ? 'The form has changed since this plan was worked out. Work the plan out again first; then write it.'
    : 'There is no plan yet. Work the plan out first.';
  return { ...state, notice: { tone: 'warning', text }, question: undefined, focus: 'season-plan' };
}
const isMade = (made: SeasonMade | PaneState): made is SeasonMade => 'plan' in made && 'book' in made;

const written = (again: Again | undefined): Written => ({
  done: (sheets) =>
    `The season is written on new sheets: ${list(sheets)}. ${again?.read ? 'The sheets of the season before stay as they were.' : 'Yellow cells are yours to change.'}`,
  what: again?.read ? 'the new season' : 'the season',
  again: { label: 'Write beside them', act: 'writeSeasonWithSuffix' },
});

const WRITING_STEPS = 8;
function write(state: PaneState, suffix: string): PaneState | Working {
  if (!isFree(state)) return state;
  const made = madeOf(state);
  if (!isMade(made)) return made;
  const next: PaneState = {
    ...state,
    notice: undefined,
    question: undefined,
    task: { label: 'Calculating the workbook', done: 0, total: WRITING_STEPS },
  };
  return working(next, async ({ workbook }, tell) =>
    outcomeChange(
      await workbook.writeWorkbook(await modelOf(made, tell, WRITING_STEPS), suffix, tell),
      written(state.season.again),
    ),
  );
}

export const writeSeason: Command = {
  name: 'writeSeason',
  label: 'Write into this workbook',
  perform: (state) => write(state, ''),
};

export const writeSeasonWithSuffix: Command = {
  name: 'writeSeasonWithSuffix',
  label: 'Write beside them',
  perform: (state) => {
    const word = state.question?.word?.value.trim() ?? '';
    if (isSuffix(word)) return write(state, ` ${word}`);
    return { ...state, notice: { tone: 'warning', text: badSuffix(word) }, focus: 'question-word' };
  },
};

export const saveSeason: Command = {
  name: 'saveSeason',
  label: 'Save as .xlsx file',
  perform: (state): PaneState | Working => {
    if (state.task) return state;
    const made = madeOf(state);
    if (!isMade(made)) return made;
    const next: PaneState = {
      ...state,
      notice: undefined,
      question: undefined,
      task: { label: 'Making the file', done: 0, total: 2 },
    };
    return working(next, async ({ files }, tell) => {
      const [model, { writeXlsx }] = await Promise.all([
        modelOf(made, tell, 2),
        import(/* webpackChunkName: "xlsx" */ '../../../../shared/files/write'),
      ]);
      tell({ label: 'Making the file', done: 1, total: 2 });
      const text = await files.saveWorkbook(
        `${fileWord(made.book.hatchery, 'hatchery')}-season.xlsx`,
        writeXlsx(model),
      );
      return (now) => ({ ...now, notice: { tone: 'good', text } });
    });
  },
};
