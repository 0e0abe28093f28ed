import type { RunRecord } from '../records/schema';
import { momentText, MONTH_NAMES } from '../units/dates';
import type { ControlChart } from '../families/learning/kernels/controlChart';
import { controlChart } from '../families/learning/kernels/controlChart';
import { estimateCounted } from '../families/learning/kernels/estimate';
import type { Observation, ObserveSettings } from './observe';
import { observe } from './observe';
import { dayOf, monthOf } from './observe/reading';
import { byRun } from './observe/runs';
import type { RateKey } from '../families/learning/rates';
import { rateSpec } from '../families/learning/rates';
import { runNow } from '../base/steps';

/** Shares hatched (or fertilised) looked at by what may move them. */
export type TrendRate = Extract<RateKey, 'hatch' | 'fertilisation'>;

export interface TrendGroup {
  readonly name: string;
  readonly runs: number;
  readonly k: number;
  readonly n: number;
  /** Counted: k of n. */
  readonly share: number;
  /**
   * What may be expected of this group, leaning on the farm while it has few runs, with its 95 % interval.
   */
  readonly expected: number;
  readonly low: number;
  readonly high: number;
}
export interface TrendView {
  readonly by: 'female' | 'male' | 'temperature' | 'month';
  readonly title: string;
  readonly groups: readonly TrendGroup[];
  /** Records that do not say it. */
  readonly without: number;
}
export interface TrendPoint {
  readonly when: number | undefined;
  readonly name: string;
  readonly k: number;
  readonly n: number;
}
export interface Trends {
  readonly rate: TrendRate;
  readonly label: string;
  readonly views: readonly TrendView[];
  /** Runs in order of time; those without a date come first, in the order of the sheet. */
  readonly points: readonly TrendPoint[];
  readonly chart: ControlChart;
}

interface Counted {
  readonly k: number;
  readonly n: number;
  readonly record: RunRecord;
}
type GroupOf = (record: RunRecord) => { readonly name: string; readonly order: number } | undefined;

/** Width of a class of temperatures, °C: a thermometer read to half a degree fills it. */
const DEGREES = 1;
const named = (name: string | undefined): ReturnType<GroupOf> =>
  name === undefined ? undefined : { name, order: 0 };
const VIEWS: readonly { readonly by: TrendView['by']; readonly title: string; readonly groupOf: GroupOf }[] =
  [
    { by: 'female', title: 'by female', groupOf: ({ values }) => named(values.female?.value.trim()) },
    { by: 'male', title: 'by male', groupOf: ({ values }) => named(values.male?.value.trim()) },
    {
      by: 'temperature',
      title: 'by water temperature',
      groupOf: ({ values: { incubationTemperature, temperature } }) => {
        const t = (incubationTemperature ?? temperature)?.value;
        if (t === undefined) return undefined;
        const from = Math.floor(t / DEGREES) * DEGREES;
        return { name: `${from} to ${from + DEGREES} °C`, order: from };
      },
    },
    {
      by: 'month',
      title: 'by month',
      groupOf: (record) => {
        const month = monthOf(record);
        return month === undefined ? undefined : { name: MONTH_NAMES[month - 1] ?? '', order: month };
      },
    },
  ];

/**
 * Farms differ by `farms` on the logit scale; females, males and months of one farm are taken to differ half
 * as much (chosen here).
 */
const WITHIN_FARM = 0.5;

function* viewSteps(
  counts: readonly Counted[],
  rate: TrendRate,
  farm: number,
  { by, title, groupOf }: (typeof VIEWS)[number],
): Generator<void, TrendView> {
  const groups = new Map<string, { order: number; members: Counted[] }>();
  let without = 0;
  for (const one of counts) {
    const group = groupOf(one.record);
    if (!group) {
      without++;
      continue;
    }
    const known = groups.get(group.name);
    if (known) known.members.push(one);
    else groups.set(group.name, { order: group.order, members: [one] });
  }
  const spec = rateSpec(rate);
  const rows: { readonly order: number; readonly group: TrendGroup }[] = [];
  for (const [name, { order, members }] of groups) {
    yield;
    const k = members.reduce((sum, m) => sum + m.k, 0);
    const n = members.reduce((sum, m) => sum + m.n, 0);
    const { value, low, high } = estimateCounted(
      { ...spec, literature: farm, farms: spec.farms * WITHIN_FARM },
      members,
    );
    rows.push({
      order,
      group: { name, runs: members.length, k, n, share: k / n, expected: value, low, high },
    });
  }
  const isRanked = by === 'female' || by === 'male';
  rows.sort(
    (a, b) =>
      (isRanked ? b.group.expected - a.group.expected : a.order - b.order) ||
      a.group.name.localeCompare(b.group.name, 'en'),
  );
  return { by, title, groups: rows.map(({ group }) => group), without };
}

const nameOf = ({ values: { run }, sheet, row }: RunRecord, when: number | undefined): string =>
  run?.value ?? (when === undefined ? `${sheet}, row ${row}` : momentText(when).replace(/ \d\d:\d\d$/, ''));

const together = (rows: readonly Observation[]): Counted[] => {
  const [first] = rows;
  return first
    ? [
        {
          record: first.record,
          k: rows.reduce((sum, o) => sum + (o.k ?? 0), 0),
          n: rows.reduce((sum, o) => sum + (o.n ?? 0), 0),
        },
      ]
    : [];
};

/** trendsOf in steps, yielding the share done. */
export function* trendSteps(
  records: readonly RunRecord[],
  rate: TrendRate = 'hatch',
  settings: ObserveSettings = {},
): Generator<number, Trends> {
  const seen = observe(records, settings).observations.filter((o) => o.rate === rate);
  const rows = seen.flatMap((o) => together([o]));
  const runs = byRun(seen).flatMap(together);
  const farm = Math.min(0.99, Math.max(0.01, estimateCounted(rateSpec(rate), runs).value));
  const points = runs
    .map(({ record, k, n }, i) => ({ when: dayOf(record), name: nameOf(record, dayOf(record)), k, n, i }))
    .sort((a, b) => (a.when ?? -Infinity) - (b.when ?? -Infinity) || a.i - b.i)
    .map(({ when, name, k, n }): TrendPoint => ({ when, name, k, n }));
  const views: TrendView[] = [];
  for (const [i, view] of VIEWS.entries()) {
    const steps = viewSteps(view.by === 'female' || view.by === 'male' ? rows : runs, rate, farm, view);
    let step = steps.next();
    for (; !step.done; step = steps.next()) yield i / VIEWS.length;
    views.push(step.value);
  }
  return {
    rate,
    label: rateSpec(rate).label,
    points,
    views,
    chart: controlChart(
      points.map((p) => p.k),
      points.map((p) => p.n),
    ),
  };
}

/**
 * Hatch (or fertilisation) of accepted records, by female, male, temperature and month, and over time with
 * control limits. A row is one female with one male; water, month and time belong to the run, so there its
 * rows are put together.
 */
export const trendsOf = (
  records: readonly RunRecord[],
  rate: TrendRate = 'hatch',
  settings: ObserveSettings = {},
): Trends => runNow(trendSteps(records, rate, settings));
