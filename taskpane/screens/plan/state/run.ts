// Long: what the pane says of a run, drawn from its plan.
import { within } from '../../../../shared/base/steps';
import { LivingPages } from '../../../../shared/books/living';
import type { TaskLine } from '../../../../shared/books/living/layout';
import { hardestDay, stillWater } from '../../../../shared/books/living/workings/stillWater';
import { TASKS } from '../../../../shared/run/lines';
import type { RunTask } from '../../../../shared/run/lines';
import { planBatchesSteps } from '../../../../shared/season/batches';
import type { PlanForm } from '../../../../shared/season/one';
import { femalesForNineSteps } from '../../../../shared/season/one/females';
import type { OrderBook } from '../../../../shared/season/book/orderBook';
import type { BatchStay, SeasonBatch, SeasonPlan } from '../../../../shared/season/types';
import { grouped } from '../../../pane/values/show';
import type { PlanTexts } from './plan';

/** A plan of one run, with what the pane shows of it; it was made from these texts. */
export interface MadeRun {
  readonly texts: PlanTexts;
  readonly form: PlanForm;
  readonly book: OrderBook;
  readonly plan: SeasonPlan;
  readonly preview: Preview;
}
/** The plan in a few lines and one picture, before anything is written. */
export interface Preview {
  /** What the vats ask for beyond buckets and a night's sleep. */
  readonly care: readonly string[];
  /** The hours of the first night: inject, look, strip, hatch, feed. */
  readonly hours: readonly Hour[];
  readonly nights: number;
  readonly females: number;
  /** Females for nine runs in ten; undefined when no number makes it so sure. */
  readonly nine: number | undefined;
  readonly moments: readonly Moment[];
  readonly bars: readonly Bar[];
  readonly figures: readonly Figure[];
}
export interface Hour {
  readonly what: string;
  readonly at: number;
}
export interface Moment {
  readonly at: number;
  readonly what: string;
  readonly amount: string;
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

/** Three telling digits: nobody weighs a dose finer. */
const telling = (value: number): string =>
  grouped(value, Number.isInteger(value) || value >= 100 ? 0 : value >= 10 ? 1 : 2);
/** Big weights read better in kilograms. */
const grams = (g: number): string => (g >= 1000 ? `${grouped(g / 1000, 2)} kg` : `${telling(g)} g`);
const many = (n: number): string => grouped(Math.round(n));

function amountOf(pages: LivingPages, { task, batch, order }: TaskLine): string {
  const { amount, unit = '', per } = TASKS[task] as RunTask;
  if (amount === undefined) return '';
  const own = pages.plan.batches.find(({ name }) => name === batch);
  if (!own) return '';
  const share = pages.plan.allocations.find((a) => a.batch === batch && a.order === order);
  const value = per === 'order' ? share && share.fish / pages.assumed.arriving : pages.figure(own, amount);
  return typeof value === 'number' ? `${telling(value)} ${unit}`.trim() : '';
}
const momentsOf = (pages: LivingPages): Moment[] =>
  pages.rows.tasks.map((task) => ({
    at: task.when,
    // One order alone: its buyer says which.
    what: task.what.replace(/^O\d+(?=:)/, (key) => pages.buyers.get(key) ?? key),
    amount: amountOf(pages, task),
  }));

const HOURS = [
  ['Inject', 'inject'],
  ['First look', 'look'],
  ['Strip', 'strip'],
  ['First hatch', 'hatch'],
  ['First food', 'firstFeed'],
] as const;
/** Of the first night, as the calendar says them. */
function hoursOf(pages: LivingPages, [first]: readonly SeasonBatch[]): Hour[] {
  return HOURS.flatMap(([what, key]) => {
    const task = pages.rows.tasks.find((line) => line.batch === first?.name && line.task === key);
    return task && Number.isFinite(task.when) ? [{ what, at: task.when }] : [];
  });
}

const STAGES = [
  ['eggs', 'Eggs and yolk larvae'],
  ['fry', 'Larvae and fry'],
  ['nursing', 'Nursing'],
] as const;
/** The vats of a stage, as many as are full at once. */
function barsOf({ stays }: SeasonPlan): Bar[] {
  return STAGES.flatMap(([stage, label]) => {
    const own = stays.filter((stay) => stay.stage === stage);
    if (own.length === 0) return [];
    return [
      {
        label,
        from: Math.min(...own.map(({ from }) => from)),
        to: Math.max(...own.map(({ to }) => to)),
        vats: new Set(own.map(({ vat }) => vat)).size,
      },
    ];
  });
}

const vatsAtOnce = (stays: readonly BatchStay[]): number =>
  stays.reduce(
    (most, { from }) =>
      Math.max(most, new Set(stays.flatMap((s) => (s.from <= from && s.to > from ? [s.vat] : []))).size),
    0,
  );

/** The preparation, with what else it takes: salt water and donors for glands. */
function hormoneNote(pages: LivingPages, plan: SeasonPlan): string {
  const sum = (key: 'saline' | 'donors'): number =>
    plan.batches.reduce((total, batch) => total + pages.reader(batch).number(key), 0);
  const [saline, donors] = [sum('saline'), sum('donors')];
  return [
    pages.book.preparation,
    saline > 0 && `in ${telling(saline)} mL of salt water`,
    donors > 0 && `from about ${grouped(Math.ceil(donors))} donor fish`,
  ]
    .filter((part) => part !== false)
    .join(', ');
}

function figuresOf(
  pages: LivingPages,
  plan: SeasonPlan,
  { females, males, vats, material }: PlanForm,
): Figure[] {
  const [first] = plan.batches;
  if (!first) return [];
  const line = pages.reader(first);
  const sum = (of: (batch: SeasonBatch) => number): number =>
    plan.batches.reduce((total, batch) => total + of(batch), 0);
  const hormone = sum((batch) => pages.reader(batch).number('hormone'));
  const unit = String(line.get('hormoneUnit'));
  const dose = sum((batch) => pages.reader(batch).number('halfEggs') * 2);
  const goods = (item: string): number =>
    plan.purchases.reduce((total, p) => (p.item === item ? total + p.amount : total), 0);
  return [
    {
      label: 'Females to inject',
      value: grouped(sum(({ pairs }) => pairs.length)),
      note: `you have ${grouped(females)}`,
    },
    {
      label: 'Males',
      value: grouped(new Set(plan.batches.flatMap((b) => b.males)).size),
      note: `you have ${grouped(males)}`,
    },
    { label: 'Hormone', value: `${telling(hormone)} ${unit}`, note: hormoneNote(pages, plan) },
    {
      label: 'Eggs to strip',
      value: many(sum(({ eggs }) => eggs)),
      note: `larvae at first food ${many(sum(({ feeding }) => feeding))}`,
    },
    {
      label: 'Net for the eggs',
      value: `${grouped(
        sum((batch) => pages.reader(batch).number('netArea')),
        2,
      )} m²`,
      note: 'one layer, all nets together',
    },
    { label: 'Vats at once', value: grouped(vatsAtOnce(plan.stays)), note: `you have ${grouped(vats)}` },
    Number.isFinite(dose)
      ? {
          label: `To raise the pH: ${material}`,
          value: dose > 0 ? grams(dose) : 'air alone',
          note: 'air first; vats of the eggs, in two halves',
        }
      : { label: 'To raise the pH', value: 'not asked', note: 'type the pH under Everything else' },
    ...plan.batches.slice(0, 1).map((batch) => {
      const { litres, minutes } = hardestDay(pages, batch);
      return {
        label: 'New water a day, at most',
        value: `${grouped(litres)} L`,
        note: `without air: act within ${grouped(minutes)} minutes`,
      };
    }),
    { label: 'Cysts for live food', value: grams(1000 * goods('cysts')) },
    { label: 'Dry feed', value: grams(1000 * goods('dry feed')) },
  ];
}

export function previewOf(form: PlanForm, book: OrderBook, plan: SeasonPlan, nine?: number): Preview {
  const pages = new LivingPages(book, plan);
  return {
    care: stillWater(pages).map(({ message }) => message),
    hours: hoursOf(pages, plan.batches),
    nights: plan.batches.length,
    females: plan.batches.reduce((sum, { pairs }) => sum + pairs.length, 0),
    nine,
    moments: momentsOf(pages),
    bars: barsOf(plan),
    figures: figuresOf(pages, plan, form),
  };
}

const PLANNING = 0.7;
/** Plans one order: the plan itself, then how many females nine runs in ten would take. */
export function* runSteps(texts: PlanTexts, form: PlanForm, book: OrderBook): Generator<number, MadeRun> {
  const plan = yield* within(planBatchesSteps(book), 0, PLANNING);
  const nine = yield* within(femalesForNineSteps(book, plan), PLANNING, 1 - PLANNING);
  return { texts, form, book, plan, preview: previewOf(form, book, plan, nine) };
}
