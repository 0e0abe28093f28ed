import type { Cell, Grid } from '../../../../shared/base/values';
import type { StateChange, Command, Doors, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { LogLines } from '../../../host/port';
import { HostProblem } from '../../../host/port';
import type { PaneState } from '../../../pane/state';
import { hasWorkbook } from '../../../pane/state';
import { wordsFor } from '../../../words/words';
import { LOG_COLUMNS, LOG_SHEET, logRow, readLog } from '../../../../shared/dosing/log';
import type { LineDraft } from '../state/cards';
import type { NotebookLine, VatState } from '../state/notebook';
import { entryOf, lineOfEntry, waiting, WHAT } from '../state/notebook';

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

/** As the calendar of a plan has it in its list. */
const DONE = 'done';
const HEADINGS = LOG_COLUMNS.map(({ heading }) => heading);
/** The sheet the lines stand on; made on first use. Headings and words are one language, so it can be read. */
const logOf = (rows: readonly (readonly Cell[])[]): LogLines => ({
  sheet: LOG_SHEET,
  headings: HEADINGS,
  formats: LOG_COLUMNS.map(({ format }) => format),
  widths: LOG_COLUMNS.map(({ width }) => width),
  rows,
});
const rowOf = (line: NotebookLine): Cell[] => logRow(entryOf(line));

/** Writes what waits into the workbook; a line stays in the pane until it stands there. */
async function writeWaiting({ workbook }: Doors, lines: readonly NotebookLine[]): Promise<StateChange> {
  if (lines.length === 0) return (now) => now;
  for (const { ticked } of lines)
    if (ticked) await workbook.writeWord(ticked.sheet, ticked.address, null, DONE);
  const { row } = await workbook.appendLines(logOf(lines.map(rowOf)));
  const rows = new Map(lines.map(({ id }, i) => [id, row + i]));
  return (now) =>
    inVat(now, { lines: now.vat.lines.map((line) => ({ ...line, row: line.row ?? rows.get(line.id) })) });
}

/** Notes lines at this moment, in the pane first and in the workbook at once. */
export function noteLines(
  state: PaneState,
  vat: VatState,
  drafts: readonly (LineDraft & Pick<NotebookLine, 'task' | 'ticked'>)[],
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
  return working(next, async (doors) => {
    try {
      return await writeWaiting(doors, waiting(next.vat));
    } catch (error) {
      // The line is kept: it waits, and the reason is said.
      if (error instanceof HostProblem)
        return (now) => ({ ...now, notice: { tone: 'warning', text: error.message } });
      throw error;
    }
  });
}

/**
 * The workbook's log is the truth: what stands there takes the place of the pane's lines that were written,
 * so a figure put right in the sheet is right here. Lines that wait, or were written meanwhile, stay.
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
    const kept = now.vat.lines.filter(({ row }) => row === undefined || row > grid.length);
    const added = read.map(({ vat }) => vat).filter((vat) => vat !== '');
    return inVat(now, {
      lines: [...read, ...kept],
      vats: [...new Set([...now.vat.vats, ...added])],
    });
  };

/** Lines that waited for a workbook go into it when there is one, and what stands there is read back. */
export const openNotebook: Command = {
  name: 'openNotebook',
  label: 'Write what waits, read what is there',
  perform: (state) => {
    if (!hasWorkbook(state)) return state;
    return working(state, async (doors) => {
      try {
        const flushed = await writeWaiting(doors, waiting(state.vat));
        const grid = await doors.workbook.readLines({ sheet: LOG_SHEET, headings: HEADINGS });
        return (now) => withLog(grid)(flushed(now));
      } catch (error) {
        if (error instanceof HostProblem)
          return (now) => ({ ...now, notice: { tone: 'warning', text: error.message } });
        throw error;
      }
    });
  },
};

export const markHour: Command<string> = {
  name: 'markHour',
  label: 'Note the hour',
  perform: (state, what) => noteLines(state, state.vat, [{ what, value: null, unit: '' }], state.now),
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
    const { row } = line;
    if (row === undefined || !hasWorkbook(state)) return without(state);
    return working(quiet(state), async ({ workbook }) => {
      if (line.ticked) await workbook.writeWord(line.ticked.sheet, line.ticked.address, DONE, null);
      const isGone = await workbook.removeLine(logOf([rowOf(line)]), row);
      return isGone ? without : (now) => ({ ...now, notice: { tone: 'warning', text: words.vat.noUndo } });
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
