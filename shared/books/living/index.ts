import { NOTES_WIDTH, citedIn, writeNotes } from './workings/notes';
import { calculate } from '../../catalogue/calculation';
import type { SheetModel, WorkbookModel } from '../../sheet/workbook/model';
import type { OrderBook } from '../../season/book/orderBook';
import type { BookPlan } from './layout';
import type { TypedActuals } from './reading/typed';
import { carryTyped, withoutPlace } from './reading/typed';
import { FIGURES } from './workings/figureList';
import { batchesSheet } from './pages/batches';
import { broodSheet } from './workings/brood';
import { calendarSheet } from './pages/calendar';
import { checksSheet } from './pages/checks';
import { LivingPages } from './context';
import { nameKeysOf } from './columns';
import type { Table } from './table';
import type { IsTyped } from '../words/inLanguage';
import { inLanguage } from '../words/inLanguage';
import type { BookWords } from '../words/words';
import { remarkIn, sayIn } from '../words/words';
import { SHEETS } from './layout';
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
function pagesFor(
  book: OrderBook,
  plan: BookPlan,
  typed: TypedActuals | undefined,
  words: BookWords | undefined,
): LivingPages {
  const pages = new LivingPages(book, plan, typed);
  const lost = pages.typed ? withoutPlace(pages, pages.typed) : [];
  if (!pages.typed || lost.length === 0) return pages;
  const kept = words ? lost.map((line) => ({ ...line, note: remarkIn(words, String(line.note)) })) : lost;
  return new LivingPages(book, plan, { ...pages.typed, log: [...pages.typed.log, ...kept] });
}

/** Cells of the tables that hold names and remarks. */
function namesOn(pages: LivingPages): IsTyped {
  const cells = new Map<string, Set<string>>();
  for (const table of Object.values(pages.tables) as Table<string>[])
    for (const key of table.keys.filter((one) => nameKeysOf(table.columns).has(one)))
      for (let row = table.first; row <= table.last; row++) {
        const own = cells.get(table.title) ?? new Set<string>();
        cells.set(table.title, own.add(`${table.letters[key] ?? ''}${row}`));
      }
  return (sheet, address) => cells.get(sheet)?.has(address) === true;
}

function translated(model: WorkbookModel, pages: LivingPages, words: BookWords): WorkbookModel {
  const isName = namesOn(pages);
  const own = inLanguage(
    model,
    words,
    (sheet, address, text) =>
      isName(sheet, address, text) || (sheet === SHEETS.notes && citedIn(text, String) !== undefined),
  );
  const say = (text: string): string => sayIn(words, text);
  return {
    ...own,
    sheets: own.sheets.map((sheet, i) =>
      model.sheets[i]?.name === SHEETS.notes
        ? {
            ...sheet,
            cells: Object.fromEntries(
              Object.entries(sheet.cells).map(([address, cell]) => {
                const cited = typeof cell.value === 'string' ? citedIn(cell.value, say) : undefined;
                return [address, cited === undefined ? cell : { ...cell, value: cited }];
              }),
            ),
          }
        : sheet,
    ),
  };
}

/**
 * The season as one book with live formulas, its values calculated for the day of planning; in English where no
 * words are given.
 */
export function livingBook(
  book: OrderBook,
  plan: BookPlan,
  written?: TypedActuals,
  words?: BookWords,
): WorkbookModel {
  const pages = pagesFor(book, plan, written, words);
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
  const model: WorkbookModel = {
    title: `${book.hatchery}: the season`,
    sheets: typed ? carryTyped([...sheets, notes], pages, typed) : [...sheets, notes],
    names: pages.names,
  };
  return calculate(words ? translated(model, pages, words) : model, plan.plannedOn).model;
}

export { asOf, changesOf } from './reading/again';
export type { BookChange, BookState } from './reading/again';
export { bookSheetNames, booksIn, readBook, wordsOfBook } from './reading/read';
export type { BookRead, BookReading } from './reading/read';
export type { BookInput } from './reading/readFigures';
export { cardsWorkbook } from './pages/cards';
