import type { StateChange, Command, Doors, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { PortTell } from '../../../host/port';
import type { PaneState } from '../../../pane/keeping/state';
import { isFree } from '../../../pane/keeping/state';
import { lookAtWorkbook } from './share';
import type { Written } from '../../../pane/values/writing';
import { badSuffix, isSuffix, list, outcomeChange } from '../../../pane/values/writing';

/**
 * One page that tells the season to somebody who does not breed fish, written into the workbook that holds
 * the plan.
 */

const WRITTEN: Written = {
  done: (sheets) =>
    `The summary is written on a new sheet: ${list(sheets)}. It follows the plan, and it is part of the next copy.`,
  what: 'the summary',
  again: { label: 'Write beside it', act: 'writeSummaryWithSuffix' },
};

async function writeIt(
  doors: Doors,
  suffix: string,
  tell: PortTell,
  isStopped: () => boolean,
): Promise<StateChange> {
  const file = await doors.workbook.readFile(tell);
  const refuse =
    (text: string): StateChange =>
    (now) => ({ ...now, notice: { tone: 'warning', text } });
  if (file.kind === 'closed')
    return refuse(
      'This Excel does not hand the open workbook to the pane, so the plan in it cannot be read.',
    );
  const [{ isUnreadable, readXlsx }, { summaryOf }] = await Promise.all([
    import(/* webpackChunkName: "read" */ '../../../../shared/files/read'),
    import(/* webpackChunkName: "summary" */ '../../../../shared/books/summary'),
  ]);
  const read = readXlsx(file.bytes);
  if (isUnreadable(read)) return refuse(read.fault);
  const summary = summaryOf(read.model);
  if ('fault' in summary) return refuse(summary.fault);
  const outcome = await doors.workbook.writeWorkbook(summary.model, suffix, tell);
  const written = outcomeChange(outcome, WRITTEN);
  if (outcome.kind !== 'written') return written;
  // What was looked at before lacks the new sheet.
  const looked = await lookAtWorkbook(doors, tell, isStopped);
  return (now) => ({ ...written(now.share.look ? looked(now) : now), focus: 'share-summary' });
}

function write(state: PaneState, suffix: string): PaneState | Working {
  if (!isFree(state)) return state;
  const begun: PaneState = {
    ...state,
    notice: undefined,
    question: undefined,
    task: { label: 'Reading the plan', done: 0, total: 7 },
  };
  return working(begun, (doors, tell, isStopped) => writeIt(doors, suffix, tell, isStopped));
}

export const writeSummary: Command = {
  name: 'writeSummary',
  label: 'Add a one-page summary',
  perform: (state) => write(state, ''),
};

export const writeSummaryWithSuffix: Command = {
  name: 'writeSummaryWithSuffix',
  label: 'Write beside it',
  perform: (state) => {
    const word = state.question?.word?.value.trim() ?? '';
    return isSuffix(word)
      ? write(state, ` ${word}`)
      : { ...state, notice: { tone: 'warning', text: badSuffix(word) }, focus: 'question-word' };
  },
};
