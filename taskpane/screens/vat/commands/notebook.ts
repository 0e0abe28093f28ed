// Long: every kind of entry at the vat and the lines it becomes.
import type { Grid } from '../../../../shared/base/values';
import type { StateChange, Command, Doors, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { LogLines, LogPlace } from '../../../host/port';
import { HostProblem } from '../../../host/port';
import type { PaneState } from '../../../pane/keeping/state';
import { hasWorkbook } from '../../../pane/keeping/state';
import type { Language } from '../../../words/words';
import { languageOf, wordsFor } from '../../../words/words';
import type { LogWords } from '../../../../shared/dosing/logWords';
import { LOG_LANGUAGES } from '../../../../shared/dosing/logWords';
import { LOG_COLUMNS, LOG_SHEET, logRow, readLog } from '../../../../shared/dosing/log';
import type { LineDraft } from '../state/cards';
import type { Filled, NotebookLine, VatState } from '../state/notebook';
import { entryOf, lineOfEntry, waiting, WHAT } from '../state/notebook';
import { readingOf } from '../../today/commands/read';
import { markEntries } from '../state/entries';
import { placeFor } from './places';

export const inVat = (state: PaneState, vat: Partial<VatState>): PaneState => ({
  ...state,
  vat: { ...state.vat, ...vat },
});
export const quiet = (state: PaneState): PaneState => ({ ...state, notice: undefined, question: undefined });

export const chooseVat: Command<string> = {
  name: 'chooseVat',
  label: 'Vat',
  perform: (state, vat) => inVat(quiet(state), { vat }),
};

interface LogForm {
  readonly sheet: string;
  readonly headings: readonly string[];
  readonly words: LogWords | undefined;
}
const FORMS: Readonly<Record<string, LogForm>> = {
  en: { sheet: LOG_SHEET, headings: LOG_COLUMNS.map(({ heading }) => heading), words: undefined },
  ...Object.fromEntries(
    Object.entries(LOG_LANGUAGES).map(([code, words]) => [
      code,
      { sheet: words.sheet, headings: LOG_COLUMNS.map(({ key }) => words.headings[key]), words },
    ]),
  ),
};
const FORMATS = LOG_COLUMNS.map(({ format }) => format);
const WIDTHS = LOG_COLUMNS.map(({ width }) => width);
/** Where the log may stand: in the language of the pane, else in another. */
function formsFor(language: Language): readonly [LogForm, ...LogForm[]] {
  const own = FORMS[language] ?? (FORMS.en as LogForm);
  return [own, ...Object.values(FORMS).filter((form) => form !== own)];
}
const placeOf = (language: Language): LogPlace => {
  const [own, ...others] = formsFor(language);
  return { ...own, others };
};
/** The sheet the lines stand on; made on first use. Headings and words of a sheet are one language. */
function logOf(language: Language, lines: readonly NotebookLine[]): LogLines {
  const inForm = ({ sheet, headings, words }: LogForm): LogLines => ({
    sheet,
    headings,
    formats: FORMATS,
    widths: WIDTHS,
    rows: lines.map((line) => logRow(entryOf(line), words)),
  });
  const [own, ...others] = formsFor(language);
  return { ...inForm(own), others: others.map(inForm) };
}

interface Kept {
  readonly filled: readonly Filled[];
  /** The book took all it was given. */
  readonly isWhole: boolean;
}
/** What the season's book takes of a line; nothing where no book stands. */
async function intoBook(
  { workbook }: Doors,
  { entries = [], at }: NotebookLine,
  suffix: string | undefined,
): Promise<Kept> {
  const filled: Filled[] = [];
  let isWhole = true;
  for (const entry of entries) {
    const place = await placeFor(entry, at, workbook, suffix);
    if (place && (place.cells.length === 0 || (await workbook.writeCells(place.sheet, place.cells))))
      filled.push(place);
    // A task ticked off elsewhere meanwhile is no loss; a fact is.
    else if (entry.kind !== 'tick') isWhole = false;
  }
  return { filled, isWhole };
}

type Placed = Pick<NotebookLine, 'filled' | 'isWritten' | 'row'>;
const placedChange =
  (places: ReadonlyMap<number, Placed>): StateChange =>
  (now) =>
    inVat(now, {
      lines: now.vat.lines.map((line) => {
        const place = places.get(line.id);
        return place ? { ...line, ...place } : line;
      }),
    });

/**
 * Writes what waits into the workbook; a line stays in the pane until it stands there. What was written before
 * something failed is remembered, and the failure is said.
 */
async function writeWaiting(
  doors: Doors,
  lines: readonly NotebookLine[],
  { suffix, language }: Where,
): Promise<StateChange> {
  const places = new Map<number, Placed>();
  const rest: NotebookLine[] = [];
  try {
    for (const line of lines) {
      const { filled, isWhole } = await intoBook(doors, line, suffix);
      const isInBook =
        filled.length > 0 && isWhole && (line.entries ?? []).some(({ kind }) => kind !== 'tick');
      if (isInBook && line.isLogged !== true)
        places.set(line.id, { filled, isWritten: true, row: undefined });
      else rest.push({ ...line, filled });
    }
    if (rest.length > 0) {
      const { row } = await doors.workbook.appendLines(logOf(language, rest));
      rest.forEach(({ id, filled = [] }, i) => places.set(id, { filled, isWritten: true, row: row + i }));
    }
  } catch (error) {
    if (!(error instanceof HostProblem)) throw error;
    const change = placedChange(places);
    return (now) => ({
      ...change(now),
      notice: { tone: 'warning', text: wordsFor(now).vat.notWritten(error.message) },
    });
  }
  return placedChange(places);
}

export type NotedDraft = LineDraft & Pick<NotebookLine, 'task'>;

/** Notes lines at a moment, in the pane first and in the workbook at once. */
export function noteLines(
  state: PaneState,
  vat: VatState,
  drafts: readonly NotedDraft[],
  at: number,
): PaneState | Working {
  const first = Math.max(0, ...state.vat.lines.map(({ id }) => id)) + 1;
  const { who } = state.vat;
  const lines = drafts.map((draft, i): NotebookLine => ({
    ...draft,
    ...(who === '' ? {} : { entry: { ...draft.entry, who } }),
    id: first + i,
    at,
    vat: vat.vat,
    row: undefined,
  }));
  const next: PaneState = {
    ...quiet(state),
    vat: { ...vat, lines: [...vat.lines, ...lines] },
  };
  if (!hasWorkbook(state)) return next;
  return working(next, (doors) => writeWaiting(doors, waiting(next.vat), whereOf(next)));
}
/** The book and the language the lines go to. */
interface Where {
  readonly suffix: string | undefined;
  readonly language: Language;
}
const whereOf = (state: PaneState): Where => ({
  suffix: state.today.book?.suffix,
  language: languageOf(state),
});

/** Days for which lines that stand in another workbook go on to count here: a tab closed in the middle of a dosing. */
const ELSEWHERE_DAYS = 1.5;
const isRecent = (line: NotebookLine, now: number): boolean =>
  line.isElsewhere !== true || now - line.at <= ELSEWHERE_DAYS;

/** No log in this workbook: what was written stands in another one, and is not written twice. */
const leftElsewhere = (line: NotebookLine): NotebookLine =>
  line.row === undefined ? line : { ...line, row: undefined, isWritten: true, isElsewhere: true };

/** The log shows minutes; a line typed into it may be a minute off the pane's own. */
const SAME_MINUTES = 1.5;
const MINUTES_A_DAY = 1440;
/** A line left elsewhere that stands in this workbook after all: its book was opened only now. */
const isFound = (line: NotebookLine, read: readonly NotebookLine[]): boolean =>
  line.isElsewhere === true &&
  read.some(
    ({ vat, what, value, at }) =>
      vat === line.vat &&
      what === line.what &&
      value === line.value &&
      Math.abs(at - line.at) * MINUTES_A_DAY <= SAME_MINUTES,
  );

/**
 * The workbook's log is the truth: what stands there takes the place of the pane's lines that were written,
 * so a figure put right in the sheet is right here. Lines that wait, or were written meanwhile, stay; a
 * workbook without a log takes nothing away.
 */
const withLog =
  (grid: Grid): StateChange =>
  (now) => {
    const { lines } = readLog(grid);
    const first = Math.max(0, ...now.vat.lines.map(({ id }) => id)) + 1;
    let at = 0;
    const read = lines.map((entry, i) => {
      at = entry.at ?? at;
      const line = lineOfEntry(entry, first + i, at);
      const before = now.vat.lines.find(
        ({ row, what, vat }) => row === line.row && what === line.what && vat === line.vat,
      );
      return before ? { ...before, ...line, id: before.id } : line;
    });
    const mine = grid.length === 0 ? now.vat.lines.map(leftElsewhere) : now.vat.lines;
    const kept = mine.filter(
      (line) =>
        (line.row === undefined || line.row > grid.length) && isRecent(line, now.now) && !isFound(line, read),
    );
    const added = read.map(({ vat }) => vat).filter((vat) => vat !== '');
    return inVat(now, {
      lines: [...read, ...kept].sort((a, b) => a.at - b.at),
      vats: [...new Set([...now.vat.vats, ...added])],
    });
  };

/** The log as it stands in the workbook; a failure is said and leaves the lines as they are. */
const readBack = async ({ workbook }: Doors, { language }: Where): Promise<StateChange> => {
  try {
    return withLog(await workbook.readLines(placeOf(language)));
  } catch (error) {
    if (!(error instanceof HostProblem)) throw error;
    return (now) => ({ ...now, notice: { tone: 'warning', text: error.message } });
  }
};

/** Half a second: the log keeps the moment of the pane to less than that. */
const SAME_MOMENT = 0.5 / 86_400;
/**
 * Lines that wait and stand in the log all the same: the pane was closed after it wrote them and before it could
 * remember that. Each line of the log answers for one.
 */
function standing(lines: readonly NotebookLine[], grid: Grid): ReadonlyMap<number, Placed> {
  const free = readLog(grid).lines.map((entry) => lineOfEntry(entry, 0, entry.at ?? 0));
  const found = new Map<number, Placed>();
  for (const line of lines) {
    const mine = lineOfEntry({ ...entryOf(line), row: 0 }, 0, line.at);
    const i = free.findIndex(
      ({ at, what, vat, value }) =>
        what === mine.what &&
        vat === mine.vat &&
        value === mine.value &&
        Math.abs(at - line.at) <= SAME_MOMENT,
    );
    if (i < 0) continue;
    found.set(line.id, { filled: line.filled ?? [], isWritten: true, row: free[i]?.row });
    free.splice(i, 1);
  }
  return found;
}
async function writeOnce(doors: Doors, lines: readonly NotebookLine[], where: Where): Promise<StateChange> {
  if (lines.length === 0) return (now) => now;
  const grid = await doors.workbook.readLines(placeOf(where.language)).catch(() => []);
  const found = standing(lines, grid);
  const rest = lines.filter(({ id }) => !found.has(id));
  const written = await writeWaiting(doors, rest, where);
  return (now) => written(placedChange(found)(now));
}

/** Turned to: the day is read, what waited is written where it belongs, and the log is read back. */
export const openVats: Command = {
  name: 'openVats',
  label: 'Read the workbook',
  perform: (state) => {
    if (!hasWorkbook(state)) return state;
    return working(state, async (doors) => {
      const read = await readingOf(state, doors);
      const next = read(state);
      const written = await writeOnce(doors, waiting(next.vat), whereOf(next));
      const logged = await readBack(doors, whereOf(next));
      return (now) => logged(written(read(now)));
    });
  },
};

export const markHour: Command<string> = {
  name: 'markHour',
  label: 'Note the hour',
  perform: (state, what) =>
    noteLines(state, state.vat, [{ what, value: null, unit: '', ...markEntries(state, what) }], state.now),
};

/** The last line goes, in the pane and in the sheet. */
export const takeLineBack: Command<number> = {
  name: 'takeLineBack',
  label: 'Take the last line back',
  perform: (state, id): PaneState | Working => {
    const line = state.vat.lines.find((one) => one.id === id);
    if (!line) return state;
    const words = wordsFor(state);
    const without = (now: PaneState): PaneState => ({
      ...inVat(now, { lines: now.vat.lines.filter((one) => one.id !== id) }),
      notice: { tone: 'good', text: words.vat.undone(WHAT[line.what] ?? line.what) },
    });
    const { row, filled = [] } = line;
    if ((row === undefined && filled.length === 0) || !hasWorkbook(state)) return without(state);
    return working(quiet(state), async ({ workbook }) => {
      const stuck: StateChange = (now) => ({ ...now, notice: { tone: 'warning', text: words.vat.noUndo } });
      for (const { sheet, cells } of filled)
        if (
          !(await workbook.writeCells(
            sheet,
            cells.map(({ address, from, to }) => ({ address, from: to, to: from })),
          ))
        )
          return stuck;
      const isGone = row === undefined || (await workbook.removeLine(logOf(languageOf(state), [line]), row));
      return isGone ? without : stuck;
    });
  },
};

export const stopTimer: Command = {
  name: 'stopTimer',
  label: 'Stop the clock',
  perform: (state) => inVat(state, { timer: undefined }),
};
/** The wait is over: it rings once. */
export const ringTimer: Command = {
  name: 'ringTimer',
  label: 'Ring',
  perform: (state): PaneState | Working => {
    const { timer } = state.vat;
    if (!timer || timer.hasRung || timer.until > state.now) return state;
    const next = inVat(state, { timer: { ...timer, hasRung: true } });
    if (!state.settings.rings) return next;
    return working(next, async ({ ring }) => {
      ring?.();
      return (now) => now;
    });
  },
};
