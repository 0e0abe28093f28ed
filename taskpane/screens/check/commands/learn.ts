import type { TrendRate } from '../../../../shared/learn';
import type { ShareBase } from '../../../../shared/records';
import type { Checked } from '../state/check';
import { corrected, initialTrend, saidOf, withSaid } from '../state/check';
import type { Command, Doors, StateChange, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import { inShares } from '../../../pane/slices';
import type { PaneState } from '../../../pane/keeping/state';
import type { Grouping } from '../state/trend';
import { auditor, learner, rememberIn } from './check';
import { begun, stoppedAt } from '../../share/commands/share';

/** What the records teach, shown before any sheet is written. */

/** Learns from the records under check as the user says they are read. */
function learning(
  state: PaneState,
  result: Checked,
  before: (doors: Doors) => Promise<StateChange>,
): Working {
  const said = saidOf(state.check);
  return working(begun(state, 'Learning from the records'), async (doors, tell, isStopped) => {
    const kept = await before(doors);
    const [{ isAccepted, runRecords, shareQuestions }, learn] = await Promise.all([auditor(), learner()]);
    const records = runRecords(result.report, said);
    const during = (from: number, to: number) => ({ label: 'Learning from the records', from, to });
    const rates = await inShares(learn.learnSteps(records), during(0, 40), tell, isStopped);
    const hatch =
      rates && (await inShares(learn.trendSteps(records, 'hatch'), during(40, 70), tell, isStopped));
    const fertilisation =
      hatch && (await inShares(learn.trendSteps(records, 'fertilisation'), during(70, 100), tell, isStopped));
    if (!fertilisation) return (now) => stoppedAt('check-learn')(kept(now));
    const trends = { hatch, fertilisation };
    const rate = hatch.points.length === 0 && fertilisation.points.length > 0 ? 'fertilisation' : 'hatch';
    const verdicts = { hatch: learn.trendVerdict(hatch), fertilisation: learn.trendVerdict(fertilisation) };
    const learned = {
      rates,
      trends,
      verdicts,
      accepted: records.filter(isAccepted).length,
      records: records.length,
      questions: shareQuestions(result.report, said),
    };
    // A newer check has come in between: these figures are not about it.
    return (now) =>
      kept(
        now.check.result === result
          ? {
              ...now,
              focus: 'check-learned',
              check: { ...now.check, learned, trend: { ...initialTrend, rate } },
            }
          : now,
      );
  });
}

export const showLearned: Command = {
  name: 'showLearned',
  label: 'Show our rates and trends',
  perform: (state): PaneState | Working => {
    const { result } = state.check;
    if (!result || state.task) return state;
    return learning(state, result, () => Promise.resolve((now) => now));
  },
};

export interface ShareAnswer {
  readonly sheet: string | undefined;
  readonly header: string;
  readonly base: ShareBase;
}
/** What a hatch share is a share of: remembered with its column, and learned at once. */
export const sayShareBase: Command<ShareAnswer> = {
  name: 'sayShareBase',
  label: 'A share of',
  perform: (state, { sheet, header, base }): PaneState | Working => {
    const { result } = state.check;
    if (!result || state.task) return state;
    const before = saidOf(state.check).find((one) => one.header === header && one.sheet === sheet);
    const said = corrected(saidOf(state.check), {
      field: 'hatchShare',
      ...before,
      header,
      ...(sheet === undefined ? {} : { sheet }),
      base,
    });
    // How the column is read stays as it is: the check itself need not be made again.
    const { isChanged } = state.check;
    const next = { ...state, check: { ...withSaid(state.check, said), isChanged } };
    return learning(next, result, (doors) =>
      next.check.corrections === state.check.corrections
        ? Promise.resolve((now) => now)
        : rememberIn(doors, said),
    );
  },
};

export interface TrendChoice {
  readonly rate?: TrendRate;
  readonly by?: Grouping;
}
export const chooseTrend: Command<TrendChoice> = {
  name: 'chooseTrend',
  label: 'Choose the trend',
  perform: (state, choice) => ({
    ...state,
    check: { ...state.check, trend: { ...state.check.trend, ...choice, point: undefined } },
  }),
};

/** The point that is read out; the keyboard goes with it. */
export const choosePoint: Command<number> = {
  name: 'choosePoint',
  label: 'Point',
  perform: (state, point) =>
    point === state.check.trend.point
      ? state
      : {
          ...state,
          focus: `trend-point-${point}`,
          check: { ...state.check, trend: { ...state.check.trend, point } },
        },
};
