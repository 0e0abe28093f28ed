import type { StateChange, Command, Doors, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { PaneState } from '../../../pane/keeping/state';
import { hasWorkbook } from '../../../pane/keeping/state';
import { HostProblem } from '../../../host/port';
import { FIRST_SHEETS } from '../../../../shared/books/words/sheetNames';
import type { RangeCells } from '../../../../shared/records';
import { initialVat } from '../../vat/state/notebook';
import { standingIn } from '../../vat/state/standing';
import { PLAN_SHEETS, tasksIn, tasksOfBook } from '../state/calendar';
import type { TodayState } from '../state/today';

/** The day as the workbook has it: a season's book, or any list of what to do. */

const quiet = (): void => undefined;
/** Reading and writing places of a book; loaded with the first book. */
export const dayTables = () =>
  import(/* webpackChunkName: "day" */ '../../../../shared/books/living/reading/day');

async function sheetsOf({ workbook }: Doors, names: readonly string[]): Promise<RangeCells[]> {
  const read = await Promise.all(names.map((sheet) => workbook.readCells({ sheet }, quiet, () => false)));
  return read.flatMap((one) => one?.sheets ?? []);
}

const FIRST = Object.values(FIRST_SHEETS);
/** What stands behind the sheet names of each season in the workbook. */
function seasonsIn(names: readonly string[], needed: (suffix: string) => readonly string[]): string[] {
  const there = new Set(names);
  const suffixes = names.flatMap((name) =>
    FIRST.flatMap((first) => (name.startsWith(first) ? [name.slice(first.length)] : [])),
  );
  return [...new Set(suffixes)].filter((suffix) => needed(suffix).every((name) => there.has(name)));
}

/** The vats of the book stand first; those that only came with the pane go, unless something was noted there. */
function withVats(state: PaneState, book: TodayState['book']): PaneState {
  if (!book || book.vats.length === 0) return state;
  const { vat } = state;
  const noted = new Set(vat.lines.map((line) => line.vat));
  const own = vat.vats.filter(
    (name) => !book.vats.includes(name) && (noted.has(name) || !initialVat.vats.includes(name)),
  );
  const vats = [...book.vats, ...own];
  const first = book.vats.find((name) => standingIn(book, name, state.now)) ?? vats[0] ?? vat.vat;
  return { ...state, vat: { ...vat, vats, vat: vats.includes(vat.vat) ? vat.vat : first } };
}

async function readBook(
  doors: Doors,
  names: readonly string[],
  chosen: string | undefined,
): Promise<StateChange> {
  // The tables come over only where a sheet of that name stands.
  if (!names.some((name) => FIRST.some((first) => name.startsWith(first)))) return readLists(doors, names);
  const { dayOfBook, daySheetNames } = await dayTables();
  const seasons = seasonsIn(names, (suffix) => daySheetNames(suffix, names));
  const suffix = chosen !== undefined && seasons.includes(chosen) ? chosen : seasons.at(-1);
  if (suffix === undefined) return readLists(doors, names);
  const book = dayOfBook(await sheetsOf(doors, daySheetNames(suffix, names)), suffix);
  const today = { book, tasks: tasksOfBook(book), seasons };
  return (now) => withVats({ ...now, today: { ...now.today, ...today } }, book);
}

async function readLists(doors: Doors, names: readonly string[]): Promise<StateChange> {
  const lists = names.filter((name) => PLAN_SHEETS.test(name));
  const tasks = tasksIn(await sheetsOf(doors, lists));
  return (now) => ({ ...now, today: { ...now.today, book: undefined, seasons: [], tasks } });
}

/** Reads the sheets of a plan in the workbook, as they stand now. */
export async function readingOf(state: PaneState, doors: Doors): Promise<StateChange> {
  try {
    return await readBook(doors, await doors.workbook.listSheets(), state.today.chosen);
  } catch (error) {
    // A cell is being edited, say: what was read before stays.
    if (error instanceof HostProblem) return (now) => now;
    throw error;
  }
}

export const readDay: Command = {
  name: 'readDay',
  label: 'Read the workbook again',
  perform: (state): PaneState | Working =>
    hasWorkbook(state) ? working(state, (doors) => readingOf(state, doors)) : state,
};

export const chooseBook: Command<string> = {
  name: 'chooseBook',
  label: 'Which season',
  perform: (state, chosen) => {
    const next: PaneState = { ...state, today: { ...state.today, chosen } };
    return readDay.perform(next, undefined);
  },
};
