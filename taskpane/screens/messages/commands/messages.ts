import type { Command, Doors, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { MendReport, PortTell } from '../../../host/port';
import type { Report } from '../state/messages';
import { reportOf } from '../state/messages';
import type { PaneState } from '../../../pane/keeping/state';
import { isFree } from '../../../pane/keeping/state';
import { blanksOf } from '../../../pane/blanks';

const begun = (state: PaneState, label: string): PaneState => ({
  ...state,
  notice: undefined,
  question: undefined,
  task: { label, done: 0, total: 1 },
});

async function look(doors: Doors, tell: PortTell): Promise<Report> {
  const { workbook, errors } = doors;
  const scan = await workbook.scanCalls(tell);
  // Where no formula of ours stands, nothing is asked: it would come and go for nothing.
  const blanks = scan.calls.length > 0 ? await blanksOf(doors) : errors.blanks;
  return reportOf(scan, errors.list(), blanks);
}

export const lookThrough: Command = {
  name: 'lookThrough',
  label: 'Look through the workbook',
  perform: (state): PaneState | Working => {
    if (!isFree(state)) return state;
    return working(begun(state, 'Reading the workbook'), async (doors, tell) => {
      const report = await look(doors, tell);
      return (now) => ({ ...now, messages: { report, mended: undefined } });
    });
  },
};

const cells = (n: number): string => (n === 1 ? '1 cell' : `${n} cells`);
export const mendedText = ({ mended, left }: MendReport): string =>
  left.length === 0
    ? `${cells(mended)} re-entered.`
    : `${cells(mended)} re-entered, ${cells(left.length)} left as before; the reasons are below.`;

export const repair: Command = {
  name: 'repair',
  label: 'Re-enter formulas',
  perform: (state): PaneState | Working => {
    const repairs = state.messages.report?.repairs ?? [];
    if (!isFree(state) || repairs.length === 0) return state;
    return working(begun(state, 'Re-entering formulas'), async (doors, tell) => {
      const mended = await doors.workbook.mend(repairs, tell);
      const report = await look(doors, tell);
      return (now) => ({
        ...now,
        messages: { report, mended },
        notice: { tone: mended.left.length === 0 ? 'good' : 'warning', text: mendedText(mended) },
      });
    });
  },
};

export const goToCell: Command<{ readonly sheet: string; readonly address: string }> = {
  name: 'goToCell',
  label: 'Go to the cell',
  perform: (state, { sheet, address }) => {
    if (!isFree(state)) return state;
    return working({ ...state, notice: undefined }, async ({ workbook }) => {
      await workbook.goTo(sheet, address);
      return (now) => now;
    });
  },
};
