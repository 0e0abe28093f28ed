import type { StateChange, Command, Doors, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { PortTell } from '../../../host/port';
import type { OwnCells, Overwritten } from '../../../host/port';
import { HalfWritten, HostProblem } from '../../../host/port';
import type { WorkbookModel } from '../../../../shared/sheet/workbook/model';
import type { RangeCells } from '../../../../shared/records';
import type { BookRead, BookState } from '../../../../shared/books/engine';
import type { SeasonMade } from '../state/season';
import type { PaneState } from '../../../pane/keeping/state';
import { isFree } from '../../../pane/keeping/state';
import { inSeason } from './season';
import { sheetsOf } from './again';
import { isMade, madeOf } from './plan';
import { WRITING_STEPS, calculating, engine, pause } from './writeBook';

/**
 * A season written over its own sheets, and taken back. The book as it stood is kept in the workbook first; so
 * one press brings it back after the pane was closed, and pressed again undoes the taking back.
 */

const keyOf = (suffix: string): string => `season-before${suffix}`;
/** Settings take texts: bytes go in as base64, a part at a time. */
const PART = 0x6000;
function textOf(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += PART)
    text += btoa(String.fromCharCode(...bytes.subarray(at, at + PART)));
  return text;
}
const bytesOf = (text: string): Uint8Array => Uint8Array.from(atob(text), (char) => char.charCodeAt(0));

const NOW_READ =
  'Something was typed into the season since it was read, so nothing was written: it would be lost. ' +
  'Plan again from this workbook, and work the plan out once more.';
const notice =
  (tone: 'good' | 'warning', text: string, focus?: string): StateChange =>
  (now) => ({ ...now, notice: { tone, text }, ...(focus === undefined ? {} : { focus }) });

/** The sheets under the names the book's models have. */
const plainNames = (sheets: readonly RangeCells[], suffix: string): RangeCells[] =>
  sheets.map((sheet) => ({ ...sheet, name: sheet.name.slice(0, sheet.name.length - suffix.length) }));

async function stateNow(before: BookRead): Promise<BookState | undefined> {
  const { asOf, readOrderBook } = await engine();
  const checked = readOrderBook(asOf(before, before.plan.plannedOn));
  return 'book' in checked ? { book: checked.book, plan: before.plan, typed: before.typed } : undefined;
}

interface Overwriting {
  readonly doors: Doors;
  readonly tell: PortTell;
  readonly suffix: string;
  readonly sheets: readonly RangeCells[];
  /** The book as it stands. */
  readonly now: BookState;
  /** The book to write, with everything that was typed. */
  readonly next: BookState;
}

/** What `withOwn` holds that the plain model of the book does not. */
function ownCells(withOwn: WorkbookModel, plain: WorkbookModel): OwnCells[] {
  return withOwn.sheets.flatMap((sheet, i) => {
    const known = plain.sheets[i]?.cells ?? {};
    const cells = Object.entries(sheet.cells).filter(([address, cell]) => cell !== known[address]);
    return cells.length > 0 ? [{ sheet: sheet.name, cells: Object.fromEntries(cells) }] : [];
  });
}

/** A season whose writing over broke off for good, back as it stood: from what the workbook keeps of it. */
export async function putSeasonBack(
  doors: Doors,
  tell: PortTell,
  { suffix, strays }: Overwritten,
): Promise<boolean> {
  const kept = await keptIn(doors, suffix);
  if (!kept) return false;
  const { livingBook, wordsOfBook } = await engine();
  const words = wordsOfBook(await doors.workbook.listSheets(), suffix);
  const plain = livingBook(kept.book, kept.plan, kept.typed, words);
  const own = new Map(strays.map(({ sheet, cells }) => [sheet, cells]));
  const model = {
    ...plain,
    sheets: plain.sheets.map((sheet) => ({ ...sheet, cells: { ...sheet.cells, ...own.get(sheet.name) } })),
  };
  await doors.workbook.rewriteWorkbook(model, model, suffix, tell, strays);
  return true;
}

/** Keeps the book as it stands, then writes the other over it; answers how many remarks moved to the log. */
async function overwrite({ doors, tell, suffix, sheets, now, next }: Overwriting): Promise<number> {
  const { livingBook, packState, remarkIn, withStrays, wordsOfBook } = await engine();
  const { workbook } = doors;
  const words = wordsOfBook(await workbook.listSheets(), suffix);
  tell({ label: 'Calculating the workbook', done: 0, total: WRITING_STEPS });
  await pause();
  const old = livingBook(now.book, now.plan, now.typed, words);
  const standing = plainNames(sheets, suffix);
  const fresh = (typed: BookState['typed']) => livingBook(next.book, next.plan, typed, words);
  let made = withStrays(standing, old, fresh(next.typed));
  const lost = made.lost.map((line) =>
    words ? { ...line, note: remarkIn(words, String(line.note)) } : line,
  );
  if (lost.length > 0)
    made = withStrays(standing, old, fresh({ ...next.typed, log: [...next.typed.log, ...lost] }));
  const kept = await workbook.recallText(keyOf(suffix)).catch(() => undefined);
  await workbook.rememberText(keyOf(suffix), textOf(packState(now)));
  const withOwn = withStrays(standing, old, old).model;
  try {
    await workbook.rewriteWorkbook(made.model, withOwn, suffix, tell, ownCells(withOwn, old));
  } catch (error) {
    // Half written: what is kept now is all there is of the season.
    if (error instanceof HalfWritten) throw error;
    // What was kept before is what one press must still bring back.
    await workbook
      .rememberText(keyOf(suffix), typeof kept === 'string' ? kept : undefined)
      .catch(() => undefined);
    throw error;
  }
  return lost.length;
}

const moved = (lost: number): string =>
  lost === 0
    ? ''
    : ` ${lost === 1 ? 'One cell of your own found' : `${lost} cells of your own found`} no place beside its line any more; what it said stands at the end of the log on Counts.`;

async function writeIt(
  { book, plan }: SeasonMade,
  { suffix, before }: { readonly suffix: string; readonly before: BookRead },
  doors: Doors,
  tell: PortTell,
): Promise<StateChange> {
  const { readBook, isSameBook, bookPlanOf } = await engine();
  const sheets = await sheetsOf(suffix, doors, tell, () => false);
  const reading = readBook(sheets ?? [], suffix);
  if (reading.kind === 'unreadable') return notice('warning', reading.faults.join(' '), 'season-again');
  if (!isSameBook(reading, before)) return notice('warning', NOW_READ, 'season-again');
  // An entry of the sheets that cannot be read was mended in the form.
  const now = (await stateNow(before)) ?? { book, plan: before.plan, typed: before.typed };
  const lost = await overwrite({
    doors,
    tell,
    suffix,
    sheets: sheets ?? [],
    now,
    next: { book, plan: bookPlanOf(plan), typed: before.typed },
  });
  const text = `The season is planned anew on its own sheets; batches under way and all that was typed are in it.${moved(lost)} “${takeSeasonBack.label}” brings back what stood there.`;
  return (state) => ({
    ...inSeason(state, { again: undefined, back: suffix }),
    notice: { tone: 'good', text },
    focus: 'season-back',
  });
}

export const writeOverSeason: Command = {
  name: 'writeOverSeason',
  label: 'Write over the season',
  perform: (state): PaneState | Working => {
    const read = state.season.again?.read;
    if (!isFree(state) || !read) return state;
    const made = madeOf(state);
    return isMade(made)
      ? working(calculating(state), (doors, tell) => writeIt(made, read, doors, tell))
      : made;
  },
};

async function keptIn(doors: Doors, suffix: string): Promise<BookState | undefined> {
  const { unpackState } = await engine();
  const text = await doors.workbook.recallText(keyOf(suffix));
  try {
    return typeof text === 'string' ? unpackState(bytesOf(text)) : undefined;
  } catch {
    return undefined;
  }
}

/** The season chosen, or the first in the workbook of which something is kept. */
async function findKept(
  doors: Doors,
  wanted: string | undefined,
): Promise<{ readonly suffix: string; readonly state: BookState } | undefined> {
  const { booksIn } = await engine();
  const suffixes =
    wanted === undefined ? [...booksIn(await doors.workbook.listSheets())].reverse() : [wanted];
  for (const suffix of suffixes) {
    const state = await keptIn(doors, suffix);
    if (state) return { suffix, state };
  }
  return undefined;
}

async function takeIt(doors: Doors, tell: PortTell, wanted: string | undefined): Promise<StateChange> {
  const { readBook } = await engine();
  const kept = await findKept(doors, wanted);
  if (!kept)
    return notice(
      'warning',
      'There is nothing to take back: no season of this workbook was written over since it was first written.',
      'season-again',
    );
  const { suffix, state } = kept;
  const sheets = await sheetsOf(suffix, doors, tell, () => false);
  const reading = readBook(sheets ?? [], suffix);
  if (reading.kind === 'unreadable')
    throw new HostProblem(
      `Nothing was changed: what was typed since cannot be read and would be lost. ${reading.faults.join(' ')}`,
    );
  const now = await stateNow(reading);
  if (!now)
    throw new HostProblem(
      'Nothing was changed: an entry on the season’s sheets cannot be read, and it would be lost. ' +
        'Plan again from this workbook shows which.',
    );
  const lost = await overwrite({
    doors,
    tell,
    suffix,
    sheets: sheets ?? [],
    now,
    // What was typed meanwhile happened, whichever plan stands.
    next: { book: { ...state.book, booked: now.book.booked }, plan: state.plan, typed: now.typed },
  });
  const text = `The season is back as it was before it was planned again; what was typed since is in it.${moved(lost)} Press once more to have the later plan.`;
  return (after) => ({
    ...inSeason(after, { again: undefined, made: undefined, back: suffix }),
    notice: { tone: 'good', text },
    focus: 'season-back',
  });
}

export const takeSeasonBack: Command = {
  name: 'takeSeasonBack',
  label: 'Take the last planning back',
  perform: (state): PaneState | Working =>
    isFree(state)
      ? working(calculating(state), (doors, tell) =>
          takeIt(doors, tell, state.season.again?.chosen ?? state.season.back),
        )
      : state,
};
