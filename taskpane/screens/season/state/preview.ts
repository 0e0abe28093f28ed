import type {
  OrderBook,
  PlannedOrder,
  PlannedRun,
  Purchase,
  SeasonBook,
  VatStay,
} from '../../../../shared/season';
import { dayText, timeText, weekdayText } from '../../../../shared/units/dates';
import { grouped } from '../../../pane/show';

/** A planned season in plain rows and words, before anything is written. */

export interface SeasonMoment {
  readonly at: number;
  readonly run: number;
  readonly order: string;
  readonly what: string;
  readonly more: string;
  readonly isNight: boolean;
  readonly isAllDay: boolean;
}

const NIGHT_FROM = 22;
const NIGHT_TO = 6;
const isNight = (at: number): boolean => {
  const hour = (at % 1) * 24;
  return hour >= NIGHT_FROM || hour < NIGHT_TO - 1e-6;
};

function groupBy<T, K>(items: readonly T[], keyOf: (item: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const item of items) {
    const group = groups.get(keyOf(item));
    if (group) group.push(item);
    else groups.set(keyOf(item), [item]);
  }
  return groups;
}

const many = (n: number): string => grouped(Math.round(n));
const vatsWords = (names: readonly string[]): string => names.join(', ');

function momentsOfRun(run: PlannedRun): SeasonMoment[] {
  const at = (when: number, what: string, more = '', isAllDay = false): SeasonMoment[] =>
    Number.isFinite(when)
      ? [
          {
            at: when,
            run: run.run,
            order: run.order,
            what,
            more,
            isAllDay,
            isNight: !isAllDay && isNight(when),
          },
        ]
      : [];
  const vatsFor = (stage: string): string =>
    vatsWords(run.vats.find(({ stage: key }) => key === stage)?.names ?? []);
  return [
    ...at(
      run.injectAt,
      'Inject',
      `${run.females.map(({ tag }) => tag).join(', ')}; ${grouped(run.hormone, 2)} mL in all`,
    ),
    ...at(
      run.stripAt,
      'Strip',
      `males ${run.males.join(', ')}; about ${many(run.eggs)} eggs into ${vatsFor('eggs')}`,
    ),
    ...at(run.hatchAt, 'Hatch begins', `about ${many(run.larvae)} larvae`),
    ...at(run.firstFeedAt, 'First meal', vatsFor('fry')),
    ...at(Math.floor(run.weanedAt), 'Weaned', `about ${many(run.weaned)} fry`, true),
    ...(run.readyAt > run.weanedAt + 0.5
      ? at(Math.floor(run.readyAt), 'Ready', `about ${many(run.fish)} fish`, true)
      : []),
    ...at(run.due, 'Fetched', `${many(run.fish)} fish for ${run.order}`, true),
  ];
}

/** Every run's main moments in order of time. */
export const momentsOf = ({ runs }: SeasonBook): readonly SeasonMoment[] =>
  runs.flatMap(momentsOfRun).sort((a, b) => a.at - b.at || a.run - b.run);

/** One run in one vat without a break, whatever its stages. */
export interface VatBar {
  readonly run: number | undefined;
  readonly from: number;
  readonly to: number;
  readonly cleanAt: number;
}
export interface VatRow {
  readonly vat: string;
  readonly bars: readonly VatBar[];
}

function barsOf(stays: readonly VatStay[]): VatBar[] {
  const bars: VatBar[] = [];
  for (const { run, from, to, cleanAt } of stays) {
    const last = bars.at(-1);
    if (last?.run === run && from <= last.to + 1e-6) bars[bars.length - 1] = { ...last, to, cleanAt };
    else bars.push({ run, from, to, cleanAt });
  }
  return bars;
}

/** Runs already in the vats come first in their rows; they bear no number of this plan. */
export function vatRowsOf(
  { vats, underway, plannedOn, cleaningDays }: OrderBook,
  { occupancy }: SeasonBook,
): readonly VatRow[] {
  const staysOf = groupBy(occupancy, ({ vat }) => vat);
  return vats.map(({ name }) => ({
    vat: name,
    bars: [
      ...underway
        .filter((run) => run.vats.includes(name))
        .map(({ from, until }): VatBar => ({
          run: undefined,
          from: Math.max(plannedOn, from ?? plannedOn),
          to: until,
          cleanAt: until + cleaningDays,
        })),
      ...barsOf(staysOf.get(name) ?? []),
    ],
  }));
}

export const dayWords = (serial: number): string => `${weekdayText(serial)} ${dayText(serial)}`;
export const momentWords = (serial: number): string => `${dayWords(serial)} ${timeText(serial)}`;

/** The same as the picture, for whoever does not see it. */
export const rowWords = ({ vat, bars }: VatRow): string => {
  const stays = bars.map(
    ({ run, from, to }) =>
      `${run === undefined ? 'a run under way' : `run ${run}`} from ${dayText(from)} to ${dayText(to)}`,
  );
  return `${vat}: ${stays.length === 0 ? 'not used' : stays.join(', ')}.`;
};

export const weeksOf = (
  purchases: readonly Purchase[],
): readonly (readonly [week: number, items: readonly Purchase[]])[] => [
  ...groupBy(purchases, ({ week }) => week),
];

const AMOUNT_DECIMALS = { mL: 1, kg: 2 } as const;
export const goodsWords = ({ item, amount, unit }: Purchase): string =>
  `${item} ${grouped(amount, AMOUNT_DECIMALS[unit])} ${unit}`;

export const fishWords = ({ order }: PlannedOrder): string =>
  `${many(order.number)} ${order.product}${order.grams === undefined ? '' : ` of ${order.grams} g`} by ${dayWords(order.due)}`;

/** What is delivered of what was promised, spare left aside. */
export const delivered = ({ orders }: SeasonBook): { readonly fish: number; readonly ordered: number } => ({
  fish: orders.reduce((sum, { order, expected }) => sum + Math.min(order.number, expected), 0),
  ordered: orders.reduce((sum, { order }) => sum + order.number, 0),
});
