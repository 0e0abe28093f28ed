import type { Command, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { PaneState } from '../../../pane/keeping/state';
import { isFree } from '../../../pane/keeping/state';
import { fileWord } from '../../../pane/values/writing';
import { languageOf, wordsFor } from '../../../words/words';
import { begun } from '../../share/commands/share';
import { sheetsOf } from '../../season/commands/again';
import { engine } from '../../season/commands/writeBook';

/** Cards of the season that stands in the workbook: what stands now and what is injected in the next days. */

/** Two weeks ahead hang on the wall; what comes later may still move. */
const DAYS_AHEAD = 14;

export const printCards: Command = {
  name: 'printCards',
  label: 'Print cards',
  perform: (state): PaneState | Working => {
    if (!isFree(state)) return state;
    const { today } = wordsFor(state);
    return working(begun(state, today.cards), async (doors, tell, isStopped) => {
      const { workbook, files } = doors;
      const day = doors.today();
      const [{ BOOK_LANGUAGES, booksIn, cardsWorkbook, readBook, readOrderBook }, { writeXlsx }] =
        await Promise.all([
          engine(),
          import(/* webpackChunkName: "xlsx" */ '../../../../shared/files/write'),
        ]);
      const suffix = booksIn(await workbook.listSheets()).at(-1);
      if (suffix === undefined) return (now) => ({ ...now, notice: { tone: 'warning', text: today.noBook } });
      const sheets = await sheetsOf(suffix, doors, tell, isStopped);
      if (!sheets) return (now) => now;
      const reading = readBook(sheets, suffix);
      const checked = reading.kind === 'read' ? readOrderBook(reading.input) : undefined;
      if (reading.kind !== 'read' || !checked || 'faults' in checked)
        return (now) => ({ ...now, notice: { tone: 'warning', text: today.noBook } });
      const { batches } = reading.plan;
      const wanted = batches.filter(
        ({ state: stands, injectAt, leavesOn }) =>
          stands !== 'over' && stands !== 'lost' && leavesOn >= day && injectAt < day + DAYS_AHEAD,
      );
      const names = (wanted.length > 0 ? wanted : batches.slice(0, 1)).map(({ name }) => name);
      const model = cardsWorkbook(checked.book, reading.plan, names, BOOK_LANGUAGES[languageOf(state)]);
      const text = await files.saveWorkbook(
        `${fileWord(checked.book.hatchery, 'season')}-cards.xlsx`,
        writeXlsx(model),
      );
      return (now) => ({ ...now, notice: { tone: 'good', text } });
    });
  },
};
