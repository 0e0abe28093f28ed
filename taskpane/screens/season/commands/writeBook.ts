import type { Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { PortTell } from '../../../host/port';
import type { OrderBook } from '../../../../shared/season/book/orderBook';
import type { SeasonPlan } from '../../../../shared/season/types';
import type { WorkbookModel } from '../../../../shared/sheet/workbook/model';
import { inShares } from '../../../pane/slices';
import type { PaneState } from '../../../pane/keeping/state';
import { isFree } from '../../../pane/keeping/state';
import type { Written } from '../../../pane/values/writing';
import { outcomeChange } from '../../../pane/values/writing';
import type { Language } from '../../../words/words';
import { languageOf } from '../../../words/words';

/**
 * Planning an order book and writing it as the living book, for whichever screen has one: a season of many
 * orders or one run.
 */

/** A checked order book and its plan: what a book is written from. */
export interface BookToWrite {
  readonly book: OrderBook;
  readonly plan: SeasonPlan;
}

/** The planner is a big part of the code and needed late: it is loaded when first asked for. */
export const engine = () => import(/* webpackChunkName: "season" */ '../../../../shared/books/engine');

/** undefined when the user stopped it. */
export async function planOf(
  book: OrderBook,
  tell: PortTell,
  isStopped: () => boolean,
): Promise<SeasonPlan | undefined> {
  const { planBatchesSteps } = await engine();
  return inShares(
    planBatchesSteps(book),
    { label: 'Working the plan out', from: 0, to: 100 },
    tell,
    isStopped,
  );
}

const models = new WeakMap<SeasonPlan, Map<Language, WorkbookModel>>();
/** Lets what is going on be drawn before something long. */
export const pause = (): Promise<void> =>
  new Promise((go) => {
    setTimeout(go);
  });

/** Calculating the workbook takes a second or so: it is done once for a plan and a language. */
export async function modelOf(
  { book, plan }: BookToWrite,
  tell: PortTell,
  total: number,
  language: Language,
): Promise<WorkbookModel> {
  const known = models.get(plan) ?? new Map<Language, WorkbookModel>();
  models.set(plan, known);
  let model = known.get(language);
  if (!model) {
    const { livingBook, BOOK_LANGUAGES } = await engine();
    tell({ label: 'Calculating the workbook', done: 0, total });
    await pause();
    known.set(language, (model = livingBook(book, plan, undefined, BOOK_LANGUAGES[language])));
  }
  return model;
}

export const WRITING_STEPS = 8;
export const calculating = (state: PaneState): PaneState => ({
  ...state,
  notice: undefined,
  question: undefined,
  task: { label: 'Calculating the workbook', done: 0, total: WRITING_STEPS },
});

/** New sheets only; asks for a word behind their names when they are taken. */
export const writeNewBook = (
  state: PaneState,
  made: BookToWrite,
  suffix: string,
  written: Written,
): PaneState | Working =>
  isFree(state)
    ? working(calculating(state), async ({ workbook }, tell) =>
        outcomeChange(
          await workbook.writeWorkbook(
            await modelOf(made, tell, WRITING_STEPS, languageOf(state)),
            suffix,
            tell,
          ),
          written,
        ),
      )
    : state;

/** One page for the wall and one for every vat, to print and hang up: a file of its own. */
export const saveCardsOf = (state: PaneState, made: BookToWrite, fileName: string): PaneState | Working =>
  saveModel(state, fileName, async () => {
    const { cardsWorkbook, BOOK_LANGUAGES } = await engine();
    return cardsWorkbook(made.book, made.plan, undefined, BOOK_LANGUAGES[languageOf(state)]);
  });

/** The book as a file of its own. */
export const saveBook = (state: PaneState, made: BookToWrite, fileName: string): PaneState | Working =>
  saveModel(state, fileName, (tell) => modelOf(made, tell, 2, languageOf(state)));

/** Makes a file of the model and hands it to the user; no model, because it was stopped, no file. */
export function saveModel(
  state: PaneState,
  fileName: string,
  modelFrom: (tell: PortTell, isStopped: () => boolean) => Promise<WorkbookModel | undefined>,
): PaneState | Working {
  if (state.task) return state;
  const next: PaneState = {
    ...state,
    notice: undefined,
    question: undefined,
    task: { label: 'Making the file', done: 0, total: 2 },
  };
  return working(next, async ({ files }, tell, isStopped) => {
    const [model, { writeXlsx }] = await Promise.all([
      modelFrom(tell, isStopped),
      import(/* webpackChunkName: "xlsx" */ '../../../../shared/files/write'),
    ]);
    if (!model) return (now) => now;
    tell({ label: 'Making the file', done: 1, total: 2 });
    const text = await files.saveWorkbook(fileName, writeXlsx(model));
    return (now) => ({ ...now, notice: { tone: 'good', text } });
  });
}
