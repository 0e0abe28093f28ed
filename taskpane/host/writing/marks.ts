import { toProblem, withExcel } from '../excelErrors';
import type { CellMark, Marked, MarkReport, PortTell, UnmarkReport } from '../port';

/** Colours cells and notes them, and takes exactly that away again. Values and formulas are never touched. */

/** Cells of one trip. */
const AT_ONCE = 300;
/** Excel says white where a cell has no fill. */
const NO_FILL = '#FFFFFF';
const NOTES_SET = '1.18';
const NOTE_MAX = 2000;

const takesNotes = (): boolean => {
  const office: unknown = Reflect.get(globalThis, 'Office');
  const found = office as
    { context?: { requirements?: { isSetSupported(set: string, version: string): boolean } } } | undefined;
  return found?.context?.requirements?.isSetSupported('ExcelApi', NOTES_SET) === true;
};

const chunks = <T>(list: readonly T[]): T[][] =>
  Array.from({ length: Math.ceil(list.length / AT_ONCE) }, (_, i) =>
    list.slice(i * AT_ONCE, (i + 1) * AT_ONCE),
  );
const sheetsOf = (marks: readonly CellMark[]): string[] => [...new Set(marks.map(({ sheet }) => sheet))];
const same = (a: unknown, b: string): boolean => typeof a === 'string' && a.toLowerCase() === b.toLowerCase();

/** Why cells of a sheet cannot be marked, by sheet. */
async function closedSheets(names: readonly string[]): Promise<Map<string, string>> {
  return withExcel(async (context) => {
    const sheets = names.map((name) => ({
      name,
      sheet: context.workbook.worksheets.getItemOrNullObject(name),
    }));
    await context.sync();
    const there = sheets.filter(({ sheet }) => !sheet.isNullObject);
    for (const { sheet } of there) sheet.protection.load('protected,options');
    await context.sync();
    const closed = new Map(
      sheets
        .filter(({ sheet }) => sheet.isNullObject)
        .map(({ name }) => [name, `There is no sheet called “${name}” any more.`]),
    );
    for (const {
      name,
      sheet: { protection },
    } of there)
      if (protection.protected && protection.options.allowFormatCells !== true)
        closed.set(
          name,
          `“${name}” is protected: its cells were left alone. Choose Review › Unprotect Sheet, then try again.`,
        );
    return closed;
  });
}

interface Spot<M extends CellMark> {
  readonly mark: M;
  readonly range: Excel.Range;
  readonly note: Excel.Note | undefined;
}

async function spotsOf<M extends CellMark>(
  context: Excel.RequestContext,
  marks: readonly M[],
  withNotes: boolean,
): Promise<Spot<M>[]> {
  const spots = marks.map((mark): Spot<M> => {
    const sheet = context.workbook.worksheets.getItem(mark.sheet);
    const range = sheet.getRange(mark.address);
    range.format.fill.load('color');
    const note = withNotes ? sheet.notes.getItemOrNullObject(mark.address) : undefined;
    note?.load('content');
    return { mark, range, note };
  });
  await context.sync();
  return spots;
}
const textOf = (note: Excel.Note | undefined): string | undefined =>
  note && !note.isNullObject ? note.content : undefined;

interface Before {
  readonly one: Marked;
  readonly note: string | undefined;
}
const signOf = ({ note }: CellMark): string => note.split('\n')[0] ?? note;
const isOurs = (note: string | undefined, mark: CellMark): boolean => note?.startsWith(signOf(mark)) === true;

/**
 * A note somebody wrote stays. A cell that holds a comment takes no note; the colour is there all the same.
 */
async function addNotes(before: readonly Before[]): Promise<void> {
  try {
    await withExcel(async (context) => {
      for (const { one, note } of before) {
        const { notes } = context.workbook.worksheets.getItem(one.sheet);
        const text = one.note.slice(0, NOTE_MAX);
        if (note === undefined) notes.add(one.address, text);
        else if (isOurs(note, one)) notes.getItemOrNullObject(one.address).content = text;
      }
      await context.sync();
    });
  } catch {
    // Said nowhere: the finding itself is in the pane.
  }
}

/** A cell that carries our note was marked in an earlier session: its colour is ours, not the user's. */
function beforeOf({ mark, range, note }: Spot<CellMark>): Before {
  const { color } = range.format.fill;
  const text = textOf(note);
  return {
    one: { ...mark, was: isOurs(text, mark) || typeof color !== 'string' || color === '' ? NO_FILL : color },
    note: text,
  };
}

/** `known` hears what is about to be painted: what is painted must stay known, or nobody could take it away. */
async function markSome(
  marks: readonly CellMark[],
  withNotes: boolean,
  known: (marked: readonly Marked[]) => void,
): Promise<void> {
  const before = await withExcel(async (context) => {
    const spots = await spotsOf(context, marks, withNotes);
    const found = spots.map(beforeOf);
    known(found.map(({ one }) => one));
    for (const {
      mark: { fill },
      range,
    } of spots)
      range.format.fill.color = fill;
    await context.sync();
    return found;
  });
  if (withNotes) await addNotes(before);
}

export async function mark(marks: readonly CellMark[], tell: PortTell): Promise<MarkReport> {
  const closed = await closedSheets(sheetsOf(marks));
  const open = marks.filter(({ sheet }) => !closed.has(sheet));
  const withNotes = takesNotes();
  const marked: Marked[] = [];
  const left = [...closed.values()];
  try {
    for (const some of chunks(open)) {
      tell({ label: 'Marking cells', done: marked.length, total: open.length });
      await markSome(some, withNotes, (ones) => marked.push(...ones));
    }
  } catch (error) {
    left.push(toProblem(error).message);
  }
  return { marked, left };
}

async function unmarkSome(marked: readonly Marked[], withNotes: boolean): Promise<number> {
  return withExcel(async (context) => {
    const spots = await spotsOf(context, marked, withNotes);
    let restored = 0;
    for (const { mark: one, range, note } of spots) {
      const text = textOf(note);
      if (note && text === one.note.slice(0, NOTE_MAX)) note.delete();
      // Painted over since: the user's colour stays.
      if (!same(range.format.fill.color, one.fill)) continue;
      restored++;
      if (same(one.was, NO_FILL)) range.format.fill.clear();
      else range.format.fill.color = one.was;
    }
    await context.sync();
    return restored;
  });
}

export async function unmark(marked: readonly Marked[], tell: PortTell): Promise<UnmarkReport> {
  const closed = await closedSheets(sheetsOf(marked));
  const withNotes = takesNotes();
  const left = [...closed.values()];
  let stuck = marked.filter(({ sheet }) => closed.has(sheet));
  const open = marked.filter(({ sheet }) => !closed.has(sheet));
  let restored = 0;
  for (const [done, some] of chunks(open).entries()) {
    tell({ label: 'Taking the marks away', done: done * AT_ONCE, total: open.length });
    try {
      restored += await unmarkSome(some, withNotes);
    } catch (error) {
      stuck = [...stuck, ...some];
      left.push(toProblem(error).message);
    }
  }
  return {
    restored,
    changed: open.length - restored - (stuck.length - marked.length + open.length),
    stuck,
    left,
  };
}
