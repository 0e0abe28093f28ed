import type { Cell } from '../../../../shared/base/values';
import type { StateChange, Command, Doors, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { LogLines } from '../../../host/port';
import { HostProblem } from '../../../host/port';
import type { PaneState } from '../../../pane/state';
import { hasWorkbook } from '../../../pane/state';
import { wordsFor } from '../../../words/words';
import type { LineDraft } from '../state/cards';
import type { NotebookLine, VatState } from '../state/notebook';
import { waiting, WHAT } from '../state/notebook';

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

/** The sheet the lines stand on; made on first use. Headings and words are one language, so it can be read. */
const SHEET = 'Vat log';
/** As the calendar of a plan has it in its list. */
const DONE = 'done';
const HEADINGS = ['When', 'Vat', 'What', 'Number', 'Unit', 'Note'];
const logOf = (rows: readonly (readonly Cell[])[]): LogLines => ({
  sheet: SHEET,
  headings: HEADINGS,
  formats: ['yyyy-mm-dd hh:mm', '@', 'General', 'General', 'General', 'General'],
  widths: [110, 60, 120, 70, 50, 160],
  rows,
});
const rowOf = ({ at, vat, what, value, unit, note }: NotebookLine): Cell[] => [
  at,
  vat,
  WHAT[what] ?? what,
  value,
  unit || null,
  note ?? null,
];

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
  const lines = drafts.map((draft, i): NotebookLine => ({
    ...draft,
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

/** Lines that waited for a workbook go into it when there is one. */
export const flushLines: Command = {
  name: 'flushLines',
  label: 'Write what waits',
  perform: (state) => {
    const lines = waiting(state.vat);
    if (!hasWorkbook(state) || lines.length === 0) return state;
    return working(state, (doors) => writeWaiting(doors, lines));
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
