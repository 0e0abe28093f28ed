import { evaluateWith } from '../sheet/formula/evaluate';
import { nativeFunction } from '../sheet/formula/natives';
import { isGrid } from '../base/values';
import type { Answer } from './ask';
import type { Assumed } from '../families/assumptions';
import { assumed } from '../families/assumptions';
import type { FeedRow, Results } from './compute';
import { compute } from './compute';
import type { PlanTask } from './events';
import { tasksOf } from './events';
import type { RunFinding } from './findings';
import { findingsOf } from './findings';
import type { PlanForm } from './form';
import { named, nameOf } from './results';
import type { ChainStep } from './steps';
import { stepsOf } from './steps';

export interface PlannedTask extends PlanTask {
  readonly when: Answer;
  readonly howMuch: Answer | undefined;
}
export interface PlannedStep extends ChainStep {
  readonly number: Answer;
}

/** A season of one run: what to do when, with how much, and what stands in the way. */
export interface OneRunPlan {
  readonly form: PlanForm;
  readonly assumed: Assumed;
  readonly results: Results;
  readonly steps: readonly PlannedStep[];
  readonly feed: readonly FeedRow[];
  /** In order of time. */
  readonly tasks: readonly PlannedTask[];
  readonly findings: readonly RunFinding[];
  readonly canBeMet: boolean;
}

/** Evaluates a formula over the names of the plan. */
function answering(form: PlanForm, a: Assumed, results: Results): (formula: string) => Answer {
  const known = new Map<string, Answer>();
  for (const [key, value] of Object.entries({ ...form, ...a, ...results }))
    if (typeof value === 'number' || (typeof value === 'object' && 'error' in value))
      known.set(nameOf(key as never), value as Answer);
  return (formula) => {
    const got = evaluateWith(named(formula), {
      call: nativeFunction,
      name: (name) => known.get(name) ?? { error: '#NAME?' },
    });
    const cell = isGrid(got) ? (got[0]?.[0] ?? 0) : got;
    return typeof cell === 'number' || (typeof cell === 'object' && cell !== null)
      ? cell
      : { error: '#VALUE!' };
  };
}

const byTime = (x: PlannedTask, y: PlannedTask): number =>
  typeof x.when === 'number' && typeof y.when === 'number' ? x.when - y.when : 0;

/**
 * Plans a checked form. Never fails: what cannot be had is a finding, what cannot be worked out is an error
 * with its sentence.
 */
export function planSeason(form: PlanForm): OneRunPlan {
  const a = assumed(form.assumptions);
  const { results, numbers, feed } = compute(form, a);
  const answer = answering(form, a, results);
  const tasks = tasksOf(form, a).map((task): PlannedTask => ({
    ...task,
    when: answer(task.at),
    howMuch: task.amount === undefined ? undefined : answer(task.amount),
  }));
  const findings = findingsOf(form, a, results);
  return {
    form,
    assumed: a,
    results,
    feed,
    steps: stepsOf(form.product).map((step, i) => ({ ...step, number: numbers[i] ?? NaN })),
    tasks: tasks.sort(byTime),
    findings,
    canBeMet: !findings.some(({ kind }) => kind === 'cannot'),
  };
}
