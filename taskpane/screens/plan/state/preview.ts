import { ASSUMPTIONS } from '../../../../shared/families/assumptions';
import type { Answer } from '../../../../shared/run/ask';
import type { RunFinding } from '../../../../shared/run/findings';
import type { PlanForm } from '../../../../shared/run/form';
import type { PlannedTask, OneRunPlan } from '../../../../shared/run/season';
import { planSeason } from '../../../../shared/run/season';
import { stepsOf, vatStagesOf } from '../../../../shared/run/steps';
import { isError } from '../../../../shared/base/values';
import { grouped } from '../../../pane/show';

/** The plan in a few lines and one picture, before anything is written. */
export interface Preview {
  readonly moments: readonly ClockMoment[];
  /** Tasks that only the workbook lists. */
  readonly more: number;
  readonly bars: readonly Bar[];
  readonly vats: number;
  readonly figures: readonly Figure[];
  readonly findings: readonly RunFinding[];
  readonly canBeMet: boolean;
  /** "3 females". */
  readonly females: string;
  /** Fish if every step goes badly, or well. */
  readonly range: string;
}
export interface ClockMoment {
  readonly key: string;
  readonly at: number;
  readonly what: string;
  readonly amount: string;
  readonly remember: string;
}
export interface Bar {
  readonly label: string;
  readonly from: number;
  readonly to: number;
  readonly vats: number;
}
export interface Figure {
  readonly label: string;
  readonly value: string;
  readonly note?: string;
}

/** The hours a night is planned around; the workbook has every task. */
const SHOWN = new Set([
  'order',
  'fill',
  'trial',
  'choose',
  'inject',
  'check',
  'strip',
  'late',
  'hatch',
  'cysts',
  'firstFeed',
  'wean',
  'weaned',
  'sale',
]);

const number = (answer: Answer | undefined): number | undefined =>
  answer === undefined || isError(answer) ? undefined : answer;

/** Three telling digits: nobody weighs a dose finer. */
const telling = (value: number): string =>
  grouped(value, Number.isInteger(value) || value >= 100 ? 0 : value >= 10 ? 1 : 2);

const amountText = ({ howMuch, unit = '' }: PlannedTask): string => {
  const amount = number(howMuch);
  return amount === undefined ? '' : `${telling(amount)} ${unit}`.trim();
};

const momentsOf = (tasks: readonly PlannedTask[]): ClockMoment[] =>
  tasks.flatMap((task) => {
    const at = number(task.when);
    return at === undefined || !SHOWN.has(task.key)
      ? []
      : [{ key: task.key, at, what: task.what, amount: amountText(task), remember: task.remember }];
  });

const barsOf = ({ form, results }: OneRunPlan): Bar[] =>
  vatStagesOf(form.product).flatMap((stage) => {
    const [from, to, vats] = [
      number(results[stage.from]),
      number(results[stage.to]),
      number(results[stage.result]),
    ];
    return from === undefined || to === undefined || vats === undefined
      ? []
      : [{ label: stage.label, from, to, vats }];
  });

const shown = (answer: Answer, decimals: number, unit = ''): string =>
  isError(answer) ? answer.error : `${grouped(answer, decimals)}${unit ? ` ${unit}` : ''}`;
/** Big weights read better in kilograms. */
const grams = (answer: Answer): string =>
  isError(answer)
    ? answer.error
    : answer >= 1000
      ? `${grouped(answer / 1000, 2)} kg`
      : `${telling(answer)} g`;

/** Fish from these eggs when every step comes out at its poor end, and at its good end. */
function rangeOf({ form, assumed: a, results }: OneRunPlan): string {
  const eggs = number(results.eggsNeeded);
  if (eggs === undefined) return '–';
  const steps = stepsOf(form.product);
  const along = (
    pick: (own: number, published: { readonly low: number; readonly high: number }) => number,
  ): number => steps.reduce((fish, { survival }) => fish * pick(a[survival], ASSUMPTIONS[survival]), eggs);
  return `${grouped(along((own, { low }) => Math.min(own, low)))} to ${grouped(along((own, { high }) => Math.max(own, high)))}`;
}

function figuresOf(plan: OneRunPlan): Figure[] {
  const { form, results: r } = plan;
  return [
    {
      label: 'Females to inject',
      value: shown(r.femalesNeeded, 0),
      note: `you have ${grouped(form.females)}`,
    },
    { label: 'Males', value: shown(r.malesNeeded, 0), note: `you have ${grouped(form.males)}` },
    {
      label: 'Hormone liquid',
      value: shown(r.hormoneTotal, 1, 'mL'),
      note: `${shown(r.hormoneEach, 2, 'mL')} each`,
    },
    { label: 'Eggs to strip', value: shown(r.eggsNeeded, 0) },
    {
      label: `${form.product === 'fry' ? 'Fry' : 'Fingerlings'}, poor to good end`,
      value: rangeOf(plan),
      note: 'if every step goes badly, or well',
    },
    { label: 'Vats at once', value: shown(r.vatsNeeded, 0), note: `you have ${grouped(form.vats)}` },
    {
      label: `Buffer: ${form.material}`,
      value: grams(r.totalDose),
      note: `${grams(r.vatDose)} a vat in two halves, after a trial bucket`,
    },
    { label: 'Cysts for live food', value: grams(r.cystsTotal) },
    { label: 'Dry feed', value: shown(r.feedTotal, 2, 'kg') },
  ];
}

const femalesText = ({ results }: OneRunPlan): string => {
  const n = number(results.femalesNeeded);
  return n === undefined ? 'the females' : n === 1 ? '1 female' : `${grouped(n)} females`;
};

const known = new WeakMap<PlanForm, Preview>();

export function previewOf(form: PlanForm): Preview {
  let preview = known.get(form);
  if (!preview) {
    const plan = planSeason(form);
    const moments = momentsOf(plan.tasks);
    preview = {
      moments,
      more: plan.tasks.length - moments.length,
      bars: barsOf(plan),
      vats: form.vats,
      figures: figuresOf(plan),
      findings: plan.findings,
      canBeMet: plan.canBeMet,
      females: femalesText(plan),
      range: rangeOf(plan),
    };
    known.set(form, preview);
  }
  return preview;
}
