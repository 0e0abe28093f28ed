import type { FindFunction } from '../../../shared/sheet/formula';
import { LiveBook } from '../../../shared/sheet/live/book';
import { Watches } from '../../../shared/sheet/live/watch';
import type { Changes, Results } from './messages';

/** The workbook as the worker keeps it calculated. */
export class Desk {
  private book = '';
  private live: LiveBook;
  private watches = new Watches();

  constructor(private readonly find: FindFunction) {
    this.live = new LiveBook(find);
  }

  calculate(changes: Changes): Results {
    if (changes.book !== this.book) {
      this.book = changes.book;
      this.live = new LiveBook(this.find);
      this.watches = new Watches();
    }
    const { live, watches } = this;
    live.setToday(changes.today);
    if (changes.sheets) live.setSheets(changes.sheets);
    if (changes.names) live.setNames(changes.names);
    if (changes.tables) live.setTables(changes.tables);
    for (const { sheet, isWhole, cells } of changes.cells)
      if (isWhole) live.replace(sheet, cells);
      else live.set(sheet, cells);
    if (changes.isAll) live.soilAll();
    for (const sheet of changes.again) live.tellAgain(sheet);
    const answers = live.calculate();
    if (changes.watches) watches.set(changes.watches);
    return { answers, watches: watches.ask(live), unknown: live.unknown() };
  }
}
