import type { Correction, RunRecord } from '../../../../shared/records';
import type { WorkbookModel } from '../../../../shared/sheet/workbook/model';
import { STYLES } from '../../../../shared/sheet/workbook/styles';
import type { Checked, Writing } from '../state/check';
import { saidOf } from '../state/check';
import type { StateChange, Command, Doors, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { Marked, MarkReport, PortTell, UnmarkReport } from '../../../host/port';
import type { PaneState } from '../../../pane/keeping/state';
import { isFree } from '../../../pane/keeping/state';
import type { Language } from '../../../words/words';
import { languageOf } from '../../../words/words';
import { auditor, learner, recordWords } from './check';
import type { Written } from '../../../pane/values/writing';
import { badSuffix, isSuffix, list, outcomeChange } from '../../../pane/values/writing';

/** What comes out of a check: sheets, and marks on the cells. Records themselves are never changed. */

/** A model to write, or the sentence why there is none. */
type Made = WorkbookModel | string;

const acceptedText = (records: readonly RunRecord[], accepted: number): string =>
  `${accepted} of ${records.length} ${records.length === 1 ? 'record is' : 'records are'} free of findings`;

async function learned(
  { report }: Checked,
  said: readonly Correction[],
  writing: 'rates' | 'trends',
): Promise<Made> {
  const [{ isAccepted, runRecords }, learn] = await Promise.all([auditor(), learner()]);
  const records = runRecords(report, said);
  const accepted = records.filter(isAccepted).length;
  if (writing === 'rates') {
    const rates = learn.learnRates(records);
    return rates.rates.some(({ runs }) => runs > 0)
      ? learn.ratesWorkbook(rates)
      : `There is nothing to learn rates from: ${acceptedText(records, accepted)}, and none of those says two things that make a rate (eggs and hatched, injection and strip time …).`;
  }
  const trends = [learn.trendsOf(records, 'hatch'), learn.trendsOf(records, 'fertilisation')].find(
    ({ chart }) => chart.hasLimits,
  );
  return trends
    ? learn.trendsWorkbook(trends)
    : `There are too few runs for trends: at least 8 free of findings must say how many eggs were set and how many hatched or were fertilised. ${acceptedText(records, accepted)}.`;
}

const make = async (checked: Checked, said: readonly Correction[], writing: Writing): Promise<Made> =>
  writing === 'findings'
    ? (await auditor()).findingsWorkbook(checked.report)
    : learned(checked, said, writing);

/** In the language of the pane; a sentence why there is nothing is said as it is drawn. */
const inWords = async (made: Made, language: Language): Promise<Made> =>
  language === 'en' || typeof made === 'string' ? made : (await recordWords()).recordSheetsIn(made, language);

const WRITTEN: Readonly<Record<Writing, Written>> = {
  findings: {
    done: (sheets) => `The findings are written on new sheets: ${list(sheets)}. No record was changed.`,
    what: 'the findings',
    again: { label: 'Write beside it', act: 'writeCheckWithSuffix' },
  },
  rates: {
    done: (sheets) =>
      `Your own rates are written on a new sheet: ${list(sheets)}. Formulas can use its names, such as rate_hatch.`,
    what: 'the rates',
    again: { label: 'Write beside it', act: 'writeCheckWithSuffix' },
  },
  trends: {
    done: (sheets) => `The trends are written on a new sheet: ${list(sheets)}.`,
    what: 'the trends',
    again: { label: 'Write beside it', act: 'writeCheckWithSuffix' },
  },
};

function write(state: PaneState, writing: Writing, suffix: string): PaneState | Working {
  const { result } = state.check;
  if (!isFree(state) || !result) return state;
  const said = saidOf(state.check);
  const language = languageOf(state);
  const begun: PaneState = {
    ...state,
    notice: undefined,
    question: undefined,
    check: { ...state.check, writing },
    task: { label: 'Making the sheet', done: 0, total: 7 },
  };
  return working(begun, async ({ workbook }, tell) => {
    const made = await inWords(await make(result, said, writing), language);
    if (typeof made === 'string') return (now) => ({ ...now, notice: { tone: 'warning', text: made } });
    return outcomeChange(await workbook.writeWorkbook(made, suffix, tell), WRITTEN[writing]);
  });
}

export const writeFindings: Command = {
  name: 'writeFindings',
  label: 'Write the findings as a sheet',
  perform: (state) => write(state, 'findings', ''),
};
export const writeRates: Command = {
  name: 'writeRates',
  label: 'Write our own rates as a sheet',
  perform: (state) => write(state, 'rates', ''),
};
export const writeTrends: Command = {
  name: 'writeTrends',
  label: 'Write trends',
  perform: (state) => write(state, 'trends', ''),
};
export const writeCheckWithSuffix: Command = {
  name: 'writeCheckWithSuffix',
  label: 'Write beside it',
  perform: (state) => {
    const word = state.question?.word?.value.trim() ?? '';
    return isSuffix(word)
      ? write(state, state.check.writing, ` ${word}`)
      : { ...state, notice: { tone: 'warning', text: badSuffix(word) }, focus: 'question-word' };
  },
};

const cells = (n: number): string => (n === 1 ? '1 cell' : `${n} cells`);
const sentence = (...parts: readonly (string | false)[]): string =>
  parts.filter((part) => part !== false && part !== '').join(' ');
const keep =
  (marks: readonly Marked[]): StateChange =>
  (now) => ({ ...now, check: { ...now.check, marks } });

const markedText = ({ marked, left }: MarkReport): string =>
  sentence(
    marked.length === 0
      ? 'No cell was marked.'
      : `${cells(marked.length)} marked. Values and formulas are as they were.`,
    ...left,
  );
const unmarkedText = ({ restored, changed, left }: UnmarkReport): string =>
  sentence(
    `The marks of ${cells(restored)} are taken away.`,
    changed > 0 && `${cells(changed)} had another colour by now and kept it.`,
    ...left,
  );

async function unmarkAll(
  { workbook }: Doors,
  marks: readonly Marked[],
  tell: PortTell,
): Promise<UnmarkReport | undefined> {
  return marks.length === 0 ? undefined : workbook.unmark(marks, tell);
}

export const markCells: Command = {
  name: 'markCells',
  label: 'Mark the cells',
  perform: (state): PaneState | Working => {
    const { result, given, marks } = state.check;
    if (!isFree(state) || !result || given?.again === undefined) return state;
    const begun: PaneState = {
      ...state,
      notice: undefined,
      question: undefined,
      task: { label: 'Marking cells', done: 0, total: 1 },
    };
    return working(begun, async (doors, tell) => {
      const { marksOf } = await auditor();
      // Marks of the last check go first, or their colour would be taken for the user's own.
      const stuck = (await unmarkAll(doors, marks, tell))?.stuck ?? [];
      const wanted = marksOf(result.report).map(({ place, style, note }) => ({
        sheet: place.sheet,
        address: place.cell,
        fill: `#${STYLES[style].fill ?? 'FBE9C6'}`,
        note,
      }));
      const report = await doors.workbook.mark(wanted, tell);
      return (now) => ({
        ...keep([...stuck, ...report.marked])(now),
        focus: 'check-mark',
        notice: { tone: report.left.length === 0 ? 'good' : 'warning', text: markedText(report) },
      });
    });
  },
};

export const takeMarksAway: Command = {
  name: 'takeMarksAway',
  label: 'Take the marks away',
  perform: (state): PaneState | Working => {
    const { marks } = state.check;
    if (!isFree(state) || marks.length === 0) return state;
    const begun: PaneState = {
      ...state,
      notice: undefined,
      question: undefined,
      task: { label: 'Taking the marks away', done: 0, total: 1 },
    };
    return working(begun, async (doors, tell) => {
      const report = await unmarkAll(doors, marks, tell);
      if (!report) return (now) => now;
      return (now) => ({
        ...keep(report.stuck)(now),
        focus: 'check-mark',
        notice: { tone: report.left.length === 0 ? 'good' : 'warning', text: unmarkedText(report) },
      });
    });
  },
};
