import { NOTES_WIDTH, writeNotes } from '../living/notes';
import { calculate } from '../../catalogue/calculation';
import type { SheetModel, WorkbookModel } from '../../sheet/workbook/model';
import type { OrderBook } from '../../season/orderBook';
import type { SeasonBook } from '../../season/result';
import { Pages } from './context';
import { eggCountsSheet, fryCountsSheet } from './counts';
import { daysSheet } from './days';
import { feedDaysSheet, feedRunsSheet } from './feed';
import { FIGURES, figuresSheet } from './figures';
import { fishSheet } from './fish';
import { moneySheet } from './money';
import { ordersSheet } from './orders';
import { pairsSheet } from './pairs';
import { parentsSheet } from './parents';
import { runsSheet } from './runs';
import { cashOf, seasonSheet } from './season';
import { setupSheet } from './setup';
import { shoppingSheet } from './shopping';
import { barsSheet, staysSheet, vatsSheet } from './vats';
import { waterSheet } from './water';

const HOW: readonly string[] = [
  'Every order is planned backwards: fish wanted, divided by what survives each step, ' +
    'gives the eggs. Losses are never added up. The strip falls on the latest day that ' +
    'leaves the fish enough time, at an hour people are there, with females that have ' +
    'rested, males that are no kin, and vats that are free and clean.',
  'Change a yellow cell and what hangs on it moves at once: water and prices on Setup, ' +
    'numbers, dates and prices on Orders, water and hour of stripping on Runs, eggs to ' +
    'set on Fish, weights on Pairs, readings on Vat water, counts on Egg counts and Fry ' +
    'counts, figures on Figures.',
  'What decides which run is when (new orders, fish, vats, hours) waits for Plan again ' +
    'in the pane: it reads these sheets, takes runs that are in the vats as they really ' +
    'are, plans the rest anew, says what changed, and writes the new season beside this ' +
    'one.',
  'Odds come from seasons drawn by chance from a seed: hatch and survival vary from ' +
    'run to run and from season to season, eggs from female to female. How much they ' +
    'vary stands on Figures. A plan is not a promise.',
  'Sheets are protected without a password, so that formulas are not overtyped by ' +
    'mistake: Review, Unprotect Sheet.',
  'Formulas that begin with SPAWN need the Spawnbook add-in to change; without it ' +
    'their last values stay until the cell is calculated again.',
];

/** The season as a workbook with live formulas, its values calculated. */
export function orderBookWorkbook(book: OrderBook, plan: SeasonBook): WorkbookModel {
  const pages = new Pages(book, plan);
  const bars = barsSheet(pages);
  const money = moneySheet(pages);
  const sheets: SheetModel[] = [
    seasonSheet(pages, cashOf(pages)),
    setupSheet(pages),
    ordersSheet(pages),
    daysSheet(pages),
    runsSheet(pages),
    fishSheet(pages),
    pairsSheet(pages),
    eggCountsSheet(pages),
    fryCountsSheet(pages),
    waterSheet(pages),
    vatsSheet(pages, bars),
    staysSheet(pages),
    parentsSheet(pages),
    feedDaysSheet(pages),
    feedRunsSheet(pages),
    shoppingSheet(pages),
    money,
    figuresSheet(pages),
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
  return calculate({
    title: `${book.hatchery}: the season`,
    sheets: [...sheets, notes, bars.build()],
    names: pages.names,
  }).model;
}
