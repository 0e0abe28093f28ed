import type { TrendRate } from '../../../../shared/learn';
import { initialTrend } from '../state/check';
import type { Command, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import { inShares } from '../../../pane/slices';
import type { PaneState } from '../../../pane/state';
import type { Grouping } from '../state/trend';
import { auditor, learner } from './check';
import { begun, stoppedAt } from '../../share/commands/share';

/** What the records teach, shown before any sheet is written. */

export const showLearned: Command = {
  name: 'showLearned',
  label: 'Show our rates and trends',
  perform: (state): PaneState | Working => {
    const { result } = state.check;
    if (!result || state.task) return state;
    return working(begun(state, 'Learning from the records'), async (_, tell, isStopped) => {
      const [{ isAccepted, runRecords }, learn] = await Promise.all([auditor(), learner()]);
      const records = runRecords(result.report);
      const during = (from: number, to: number) => ({ label: 'Learning from the records', from, to });
      const rates = await inShares(learn.learnSteps(records), during(0, 40), tell, isStopped);
      const hatch =
        rates && (await inShares(learn.trendSteps(records, 'hatch'), during(40, 70), tell, isStopped));
      const fertilisation =
        hatch &&
        (await inShares(learn.trendSteps(records, 'fertilisation'), during(70, 100), tell, isStopped));
      if (!fertilisation) return stoppedAt('check-learn');
      const trends = { hatch, fertilisation };
      const rate = hatch.points.length === 0 && fertilisation.points.length > 0 ? 'fertilisation' : 'hatch';
      const verdicts = { hatch: learn.trendVerdict(hatch), fertilisation: learn.trendVerdict(fertilisation) };
      const learned = {
        rates,
        trends,
        verdicts,
        accepted: records.filter(isAccepted).length,
        records: records.length,
      };
      // A newer check has come in between: these figures are not about it.
      return (now) =>
        now.check.result === result
          ? {
              ...now,
              focus: 'check-learned',
              check: { ...now.check, learned, trend: { ...initialTrend, rate } },
            }
          : now;
    });
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
