import { NOTES_WIDTH, writeNotes } from './workings/notes';
import { calculate } from '../../catalogue/calculation';
import type { SheetModel, WorkbookModel } from '../../sheet/workbook/model';
import type { OrderBook } from '../../season/orderBook';
import type { BookPlan } from './layout';
import type { TypedActuals } from './reading/typed';
import { carryTyped, withoutPlace } from './reading/typed';
import { FIGURES } from './workings/figureList';
import { batchesSheet } from './pages/batches';
import { broodSheet } from './workings/brood';
import { calendarSheet } from './pages/calendar';
import { checksSheet } from './pages/checks';
import { LivingPages } from './context';
import { countsSheet } from './pages/counts';
import { feedSheet } from './pages/feed';
import { figuresSheet } from './figures';
import { moneySheet } from './pages/money';
import { ordersSheet, promisesSheet } from './pages/orders';
import { setupSheet } from './workings/setup';
import { todaySheet } from './pages/today';
import { barsSheet, stayWorkingsSheet, vatsSheet } from './pages/vats';
import { daysSheet, sharesSheet, tasksSheet, timesSheet, workingsSheet } from './workings/workings';

export { LivingPages } from './context';
export { SHEETS, SHOWN } from './layout';
export type { BookPlan } from './layout';
export type { TypedActuals } from './reading/typed';

const HOW: readonly string[] = [
  'Every order is planned backwards: fish wanted, divided by what survives each step, gives the eggs. ' +
    'Losses are never added up.',
  'Change a yellow cell and what hangs on it moves at once. What decides which batch is when waits for ' +
    'planning again in the pane: it keeps the batches under way as they are, plans the rest anew, and ' +
    'lists every change before it is written.',
  'Odds come from seasons drawn by chance from a seed. How much each step varies stands on Figures. A ' +
    'plan is not a promise: promise the first number, hope for the second.',
  'Sheets are protected without a password, so that formulas are not overtyped by mistake: Review, ' +
    'Unprotect Sheet.',
];

/** Where everything stands; what was typed for lines that are no more stands at the end of the log. */
function pagesFor(book: OrderBook, plan: BookPlan, typed: TypedActuals | undefined): LivingPages {
  const pages = new LivingPages(book, plan, typed);
  const lost = pages.typed ? withoutPlace(pages, pages.typed) : [];
  if (!pages.typed || lost.length === 0) return pages;
  return new LivingPages(book, plan, { ...pages.typed, log: [...pages.typed.log, ...lost] });
}

/** The season as one book with live formulas, its values calculated for the day of planning. */
export function livingBook(book: OrderBook, plan: BookPlan, written?: TypedActuals): WorkbookModel {
  const pages = pagesFor(book, plan, written);
  const { typed } = pages;
  const bars = barsSheet(pages);
  const today = todaySheet(pages);
  const sheets: SheetModel[] = [
    today,
    ordersSheet(pages),
    batchesSheet(pages),
    calendarSheet(pages),
    vatsSheet(pages, bars),
    countsSheet(pages),
    moneySheet(pages),
    checksSheet(pages),
    setupSheet(pages),
    broodSheet(pages),
    figuresSheet(pages),
    workingsSheet(pages),
    sharesSheet(pages),
    daysSheet(pages),
    feedSheet(pages),
    timesSheet(pages),
    tasksSheet(pages),
    promisesSheet(pages),
    stayWorkingsSheet(pages),
    bars.build(),
  ];
  const notes = writeNotes(
    pages.sheet('notes', 'Notes', '', {
      widths: [2, NOTES_WIDTH],
      tab: '6B5B95',
      print: { landscape: false },
    }),
    sheets,
    { how: HOW, cautions: ['HORMONE', 'SODA_ASH', 'AMMONIA'], assumptions: FIGURES },
  );
  return calculate(
    {
      title: `${book.hatchery}: the season`,
      sheets: typed ? carryTyped([...sheets, notes], pages, typed) : [...sheets, notes],
      names: pages.names,
    },
    plan.plannedOn,
  ).model;
}

export { asOf, changesOf } from './reading/again';
export type { BookChange, BookState } from './reading/again';
export { bookSheetNames, booksIn, readBook } from './reading/read';
export type { BookRead, BookReading } from './reading/read';
export type { BookInput } from './reading/readFigures';
export { cardsWorkbook } from './pages/cards';
