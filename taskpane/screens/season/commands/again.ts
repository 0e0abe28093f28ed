import type { StateChange, Command, Doors, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { PortTell } from '../../../host/port';
import type { RangeCells } from '../../../../shared/records';
import type { BookRead } from '../../../../shared/books/engine';
import { formOfInput } from '../state/form';
import type { Again } from '../state/season';
import type { PaneState } from '../../../pane/keeping/state';
import { isFree } from '../../../pane/keeping/state';
import { inSeason } from './season';
import { engine } from './writeBook';
import { begun, stoppedAt } from '../../share/commands/share';

/** A season that stands in the workbook, read for planning again. Its sheets are only read. */

const NONE =
  'No season was found in this workbook. One that was written from here has the sheets ' +
  '“Today”, “Orders” and “Batches”; open that workbook, or fill the form in.';
const failed =
  (text: string): StateChange =>
  (now) => ({ ...now, notice: { tone: 'warning', text }, focus: 'season-again' });

/** The sheets of a season that are there; undefined when the user stopped it. */
export async function sheetsOf(
  suffix: string,
  { workbook }: Doors,
  tell: PortTell,
  isStopped: () => boolean,
): Promise<readonly RangeCells[] | undefined> {
  const { bookSheetNames } = await engine();
  const listed = await workbook.listSheets();
  const there = new Set(listed);
  const names = bookSheetNames(suffix, listed).filter((name) => there.has(name));
  const sheets: RangeCells[] = [];
  for (const [done, sheet] of names.entries()) {
    const says: PortTell = () => {
      tell({
        label: 'Reading the season',
        done: Math.round((100 * done) / names.length),
        total: 100,
        canStop: true,
      });
    };
    says({ label: '', done, total: names.length });
    const reading = await workbook.readCells({ sheet }, says, isStopped);
    if (!reading || isStopped()) return undefined;
    sheets.push(...reading.sheets);
  }
  return sheets;
}

/** How it stands with each batch, to be read before planning. */
function saidOf({ plan, missing }: BookRead): string[] {
  const under = plan.batches.filter(({ state }) => state === 'growing' || state === 'fixed');
  return [
    ...missing,
    ...(under.length > 0
      ? [
          `Under way and kept as they are: ${under.map(({ name, state }) => `${name} (${state})`).join(', ')}.`,
        ]
      : []),
  ];
}

async function read(
  again: Again,
  doors: Doors,
  tell: PortTell,
  isStopped: () => boolean,
): Promise<StateChange> {
  const { readBook, asOf } = await engine();
  const sheets = await sheetsOf(again.chosen, doors, tell, isStopped);
  if (!sheets) return stoppedAt('season-again');
  const today = doors.today();
  const reading = readBook(sheets, again.chosen);
  if (reading.kind === 'unreadable')
    return (now) => ({
      ...inSeason(now, { again: { ...again, read: undefined, faults: reading.faults } }),
      focus: 'season-read',
    });
  const found: Again = {
    ...again,
    faults: [],
    read: { suffix: again.chosen, before: reading, said: saidOf(reading) },
  };
  return (now) => ({
    ...inSeason(now, {
      again: found,
      form: formOfInput(asOf(reading, today), today),
      page: 0,
      touched: new Set(),
      isAsked: true,
      made: undefined,
    }),
    focus: 'season-read',
  });
}

async function find(doors: Doors, tell: PortTell, isStopped: () => boolean): Promise<StateChange> {
  const [{ booksIn }, names] = await Promise.all([engine(), doors.workbook.listSheets()]);
  const seasons = booksIn(names);
  const chosen = seasons.at(-1);
  if (chosen === undefined) return failed(NONE);
  const again: Again = { seasons, chosen, read: undefined, faults: [] };
  if (seasons.length === 1) return read(again, doors, tell, isStopped);
  return (now) => ({ ...inSeason(now, { again }), focus: 'season-which' });
}

const start = (state: PaneState, work: Working['work']): PaneState | Working =>
  isFree(state) ? working(begun(inSeason(state, { mode: 'season' }), 'Reading the season'), work) : state;

export const planAgain: Command = {
  name: 'planAgain',
  label: 'Plan again from this workbook',
  perform: (state) => start(state, find),
};

export const chooseSeason: Command<string> = {
  name: 'chooseSeason',
  label: 'Which season',
  perform: (state, chosen) =>
    state.season.again ? inSeason(state, { again: { ...state.season.again, chosen } }) : state,
};

export const readChosenSeason: Command = {
  name: 'readChosenSeason',
  label: 'Read this season',
  perform: (state) => {
    const { again } = state.season;
    return again ? start(state, (doors, tell, isStopped) => read(again, doors, tell, isStopped)) : state;
  },
};

/** The form stays as it is; the new plan is then compared with nothing and written on new sheets. */
export const forgetSeason: Command = {
  name: 'forgetSeason',
  label: 'Plan without comparing',
  perform: (state) => ({ ...inSeason(state, { again: undefined }), focus: 'season-again' }),
};
