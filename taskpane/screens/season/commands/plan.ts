import type { Command, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import { bookOfForm, firstFaultOf } from '../state/faults';
import type { SeasonMade } from '../state/season';
import { ROWS_SHOWN, isOutdated } from '../state/season';
import type { PaneState } from '../../../pane/keeping/state';
import { inSeason } from './season';
import { begun, stoppedAt } from '../../share/commands/share';
import type { Written } from '../../../pane/values/writing';
import { badSuffix, fileWord, isSuffix, list } from '../../../pane/values/writing';
import { engine, planOf, saveBook, saveCardsOf, writeNewBook } from './writeBook';

/** Planning a season and writing it down on new sheets; writing over a book is in ./writeOver. */

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
      const { asksOfVats, changesOf } = await engine();
      const plan = await planOf(book, tell, isStopped);
      if (!plan) return stoppedAt('season-plan');
      const before = again?.read?.before;
      const made: SeasonMade = {
        form,
        book,
        plan,
        asks: asksOfVats(book, plan, before?.typed),
        changes: before && changesOf(before.plan, plan),
      };
      return (now) => ({ ...inSeason(now, { made }), focus: 'season-result' });
    });
  },
};

/** The plan to write, or the state that says why there is none. */
export function madeOf(state: PaneState): SeasonMade | PaneState {
  const { made } = state.season;
  if (made && !isOutdated(state.season)) return made;
  const text = made
    ? 'The form has changed since this plan was worked out. Work the plan out again first; then write it.'
    : 'There is no plan yet. Work the plan out first.';
  return { ...state, notice: { tone: 'warning', text }, question: undefined, focus: 'season-plan' };
}
export const isMade = (made: SeasonMade | PaneState): made is SeasonMade => 'plan' in made && 'book' in made;

const WRITTEN: Written = {
  done: (sheets) =>
    `The season is written on new sheets: ${list(sheets)}. Yellow cells are yours to change; Checks says whether it still holds.`,
  what: 'the season',
  again: { label: 'Write beside them', act: 'writeSeasonWithSuffix' },
};

function write(state: PaneState, suffix: string): PaneState | Working {
  const made = madeOf(state);
  return isMade(made) ? writeNewBook(state, made, suffix, WRITTEN) : made;
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

export const saveSeasonCards: Command = {
  name: 'saveSeasonCards',
  label: 'Cards to print',
  perform: (state): PaneState | Working => {
    if (state.task) return state;
    const made = madeOf(state);
    return isMade(made)
      ? saveCardsOf(state, made, `${fileWord(made.book.hatchery, 'hatchery')}-cards.xlsx`)
      : made;
  },
};

export const saveSeason: Command = {
  name: 'saveSeason',
  label: 'Save as .xlsx file',
  perform: (state): PaneState | Working => {
    if (state.task) return state;
    const made = madeOf(state);
    return isMade(made)
      ? saveBook(state, made, `${fileWord(made.book.hatchery, 'hatchery')}-season.xlsx`)
      : made;
  },
};
