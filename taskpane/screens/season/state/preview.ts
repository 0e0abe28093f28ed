import type { OrderBook } from '../../../../shared/season/book/orderBook';
import type {
  BatchStay,
  OrderPlan,
  SeasonBatch,
  SeasonPlan,
  SeasonPurchase,
} from '../../../../shared/season/types';
import { dayText, timeText, weekdayText } from '../../../../shared/units/dates';
import { grouped } from '../../../pane/values/show';

/** A planned season in plain rows and words, before anything is written. */

export interface SeasonMoment {
  readonly at: number;
  readonly batch: string;
  /** Whom the fish are for, where it is one order. */
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
  return hour >= NIGHT_FROM - 1e-6 || hour < NIGHT_TO - 1e-6;
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

type Say = (when: number, what: string, more?: string, isAllDay?: boolean) => SeasonMoment[];

function momentsOfBatch(
  batch: SeasonBatch,
  { stays, allocations }: SeasonPlan,
  hormoneUnit: string,
): SeasonMoment[] {
  const own = stays.filter((stay) => stay.batch === batch.name);
  const say: Say = (at, what, more = '', isAllDay = false) =>
    Number.isFinite(at)
      ? [{ at, batch: batch.name, order: '', what, more, isAllDay, isNight: !isAllDay && isNight(at) }]
      : [];
  const vatsFor = (stage: string): string =>
    vatsWords([...new Set(own.flatMap((stay) => (stay.stage === stage ? [stay.vat] : [])))]);
  const tags = batch.pairs.map(({ female }) => female).join(', ');
  return [
    ...say(batch.injectAt, 'Inject', `${tags}; ${grouped(batch.hormone, 2)} ${hormoneUnit} in all`),
    ...say(
      batch.stripAt,
      'Strip',
      `males ${batch.males.join(', ')}; about ${many(batch.eggs)} eggs into ${vatsFor('eggs')}`,
    ),
    ...say(batch.hatchAt, 'Hatch begins', `about ${many(batch.larvae)} larvae`),
    ...say(batch.firstFeedAt, 'First meal', vatsFor('fry')),
    ...say(Math.floor(batch.weanedAt), 'Weaned', `about ${many(batch.weaned)} fry`, true),
    ...allocations
      .filter((share) => share.batch === batch.name)
      .flatMap((share) =>
        say(share.on, 'Fetched', `${many(share.fish)} fish for ${share.order}`, true).map((moment) => ({
          ...moment,
          order: share.order,
        })),
      ),
  ];
}

/** Main moments, in order of time, of every batch that is not over; from the day of planning on. */
export const momentsOf = (plan: SeasonPlan, hormoneUnit: string): readonly SeasonMoment[] =>
  plan.batches
    .filter(({ state }) => state !== 'over' && state !== 'lost')
    .flatMap((batch) => momentsOfBatch(batch, plan, hormoneUnit))
    .filter(({ at }) => at >= plan.plannedOn)
    .sort((a, b) => a.at - b.at || a.batch.localeCompare(b.batch));

/** One batch in one vat without a break, whatever its stages. */
export interface VatBar {
  readonly batch: string;
  /** It stood before this plan was made. */
  readonly isBefore: boolean;
  readonly from: number;
  readonly to: number;
  readonly cleanAt: number;
}
export interface VatRow {
  readonly vat: string;
  readonly bars: readonly VatBar[];
}

function barsOf(stays: readonly BatchStay[], before: ReadonlySet<string>): VatBar[] {
  const bars: VatBar[] = [];
  for (const { batch, from, to, cleanAt } of [...stays].sort((a, b) => a.from - b.from)) {
    const last = bars.at(-1);
    if (last?.batch === batch && from <= last.to + 1e-6) bars[bars.length - 1] = { ...last, to, cleanAt };
    else bars.push({ batch, isBefore: before.has(batch), from, to, cleanAt });
  }
  return bars;
}

/** Vat by vat who stands in it from the day of planning on. */
export function vatRowsOf({ vats, plannedOn }: OrderBook, { stays, batches }: SeasonPlan): readonly VatRow[] {
  const before = new Set(batches.flatMap(({ name, state }) => (state === 'planned' ? [] : [name])));
  const staysOf = groupBy(
    stays.filter(({ to }) => to >= plannedOn),
    ({ vat }) => vat,
  );
  return vats.map(({ name }) => ({ vat: name, bars: barsOf(staysOf.get(name) ?? [], before) }));
}

export const dayWords = (serial: number): string => `${weekdayText(serial)} ${dayText(serial)}`;
export const momentWords = (serial: number): string => `${dayWords(serial)} ${timeText(serial)}`;

/** The same as the picture, for whoever does not see it. */
export const rowWords = ({ vat, bars }: VatRow): string => {
  const stays = bars.map(
    ({ batch, from, to, isBefore }) =>
      `${batch}${isBefore ? ', under way,' : ''} from ${dayText(from)} to ${dayText(to)}`,
  );
  return `${vat}: ${stays.length === 0 ? 'not used' : stays.join(', ')}.`;
};

export const weeksOf = (
  purchases: readonly SeasonPurchase[],
): readonly (readonly [week: number, items: readonly SeasonPurchase[]])[] => [
  ...groupBy(purchases, ({ week }) => week),
];

const DECIMALS: Readonly<Record<string, number>> = { mL: 1, kg: 2 };
export const goodsWords = ({ item, amount, unit }: SeasonPurchase): string =>
  `${item} ${grouped(amount, DECIMALS[unit] ?? 1)} ${unit}`;

export const fishWords = ({ order }: OrderPlan): string =>
  `${many(order.number)} ${order.product}${order.grams === undefined ? '' : ` of ${order.grams} g`} by ${dayWords(order.due)}`;
