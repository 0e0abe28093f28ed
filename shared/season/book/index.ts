import { calculate } from '../../workbook/calculate';
import type { WorkbookModel } from '../../workbook/model';
import type { OrderBook } from '../orderBook';
import type { SeasonBook } from '../result';
import { calendarSheet } from './calendar';
import { moneySheet } from './money';
import { ordersSheet } from './orders';
import { runsSheet } from './runs';
import { shoppingSheet } from './shopping';
import { summarySheet } from './summary';
import { vatsSheets } from './vats';

/** The season as a workbook with live formulas, its values calculated. */
export function orderBookWorkbook(book: OrderBook, plan: SeasonBook): WorkbookModel {
  const season = { book, plan };
  const [vats, ...bars] = vatsSheets(season);
  const sheets = [
    summarySheet(season), ordersSheet(season), runsSheet(season), calendarSheet(season), ...(vats ? [vats] : []), shoppingSheet(season), moneySheet(season), ...bars,
  ];
  return calculate({ title: `${book.hatchery}: the season`, sheets, names: [] }).model;
}
