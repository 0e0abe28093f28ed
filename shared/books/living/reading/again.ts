import { isoDateOfSerial } from '../../../units/dates';
import { verdictText } from '../../../maths/verdict';
import type { OrderBook } from '../../../season/book/orderBook';
import type { BookInput } from './readFigures';
import { buyerOf, lastingNames, planNames } from '../../../season/book/orderNames';
import type { NamedOrder } from '../../../season/book/orderNames';
import type { OrderPlan, SeasonBatch } from '../../../season/types';
import { numberIn } from './sheetReading';
import type { Entry } from './sheetReading';
import type { BookPlan } from '../layout';
import type { BookRead } from './read';
import { writtenNumber } from '../../../units/writtenNumber';

/** A book that has been read, as an order book for planning again on a day; and what a new plan changes. */

/** Whether a batch may still move on a day: its goods are ordered so many days before the injection. */
function stateOn(batch: SeasonBatch, today: number, lead: number): SeasonBatch['state'] {
  if (batch.state === 'over' || batch.state === 'lost') return batch.state;
  if (batch.leavesOn < today) return 'over';
  if (batch.state === 'growing' || Math.floor(batch.stripAt) < today) return 'growing';
  return batch.state === 'fixed' || Math.floor(batch.injectAt) - lead < today ? 'fixed' : 'planned';
}

/** Names of a plan as an order book takes them, also when orders come beside those there are. */
function lastingIn({ orders }: Pick<BookRead['input'], 'orders'>): (name: string) => string {
  const known = (Array.isArray(orders) ? orders : []) as readonly NamedOrder[];
  const lasting = lastingNames(known);
  const map = new Map(planNames(known).map((name, i) => [name, lasting[i] ?? name]));
  return (name) => map.get(name) ?? name;
}

const booked = (
  batch: SeasonBatch,
  state: SeasonBatch['state'],
  stays: BookPlan['stays'],
  lasting: (name: string) => string,
) => ({
  name: batch.name,
  state,
  clock: {
    temperature: batch.temperature,
    latencyHours: batch.latencyHours,
    injectAt: batch.injectAt,
    checkAt: batch.checkAt,
    stripAt: batch.stripAt,
    lateAt: batch.lateAt,
    hatchAt: batch.hatchAt,
    hatchEndAt: batch.hatchEndAt,
    firstFeedAt: batch.firstFeedAt,
    feedFrom: batch.feedFrom,
    weanedAt: batch.weanedAt,
  },
  pairs: batch.pairs,
  eggs: batch.eggs,
  larvae: batch.larvae,
  feeding: batch.feeding,
  weaned: batch.weaned,
  counts: batch.counts,
  ...(batch.weighed ? { weighed: batch.weighed } : {}),
  events: batch.events.map((event) =>
    event.order === undefined ? event : { ...event, order: lasting(event.order) },
  ),
  stays: stays
    .filter((stay) => stay.batch === batch.name)
    .map(({ vat, stage, from, to }) => ({ vat, stage, from, to })),
});

/** Names that were given, with the nights of those still planned; the highest that anything typed mentions. */
function earlierOf({ batches }: BookPlan, typed: BookRead['typed'] | undefined): readonly object[] {
  const mentioned = [...(typed?.log ?? []), ...(typed?.calendar ?? [])]
    .flatMap(({ batch, note }) => [batch, note])
    .flatMap((text) => [...String(text ?? '').matchAll(/\bB(\d{1,6})\b/g)].map(([, n]) => Number(n)));
  const last = Math.max(0, ...mentioned);
  return [
    ...batches
      .filter(({ state, stripAt }) => state === 'planned' && Number.isFinite(stripAt))
      .map(({ name, stripAt }) => ({ name, stripOn: Math.floor(stripAt) })),
    ...(last > 0 ? [{ name: `B${last}` }] : []),
  ];
}

/**
 * What readOrderBook checks for planning on `today`: everything typed, and the batches that no longer move as
 * full lines. What may still move is left out; the planner finds it anew.
 */
export function asOf(
  { input, plan, typed }: Pick<BookRead, 'input' | 'plan'> & Partial<Pick<BookRead, 'typed'>>,
  today: number,
): BookInput {
  const leads = input.leadDays as Readonly<Record<'hormone', Entry>> | undefined;
  const lead = numberIn(leads?.hormone) ?? 0;
  const lasting = lastingIn(input);
  return {
    ...input,
    plannedOn: today,
    earlier: earlierOf(plan, typed),
    batches: plan.batches.flatMap((batch) => {
      const state = stateOn(batch, today, lead);
      return state === 'planned' ? [] : [booked(batch, state, plan.stays, lasting)];
    }),
  };
}

/** One thing a new plan changes; before and after are values, the sentence is drawn from them. */
export interface BookChange {
  readonly kind: 'kept' | 'moved' | 'new batch' | 'batch dropped' | 'order';
  readonly about: string;
  readonly before?: number | string;
  readonly after?: number | string;
  readonly message: string;
}

/** Strips that move less than this, in days, are the same night. */
const SAME_NIGHT = 0.5;
const many = (n: number): string => writtenNumber(Math.round(n));
const day = (moment: number): string => isoDateOfSerial(moment);
const planned = (plan: BookPlan): SeasonBatch[] =>
  plan.batches.filter(({ state }) => state === 'planned').sort((a, b) => a.stripAt - b.stripAt);

function keptBatches(after: BookPlan): BookChange[] {
  return after.batches
    .filter(({ state }) => state !== 'planned')
    .map(({ name, state, stripAt }) => ({
      kind: 'kept',
      about: name,
      after: state,
      message: `${name}, stripped ${day(stripAt)}, stays as it is (${state}).`,
    }));
}

/** Planned batches in order of their nights, side by side: a night that is on both sides has not moved. */
function movedBatches(before: BookPlan, after: BookPlan): BookChange[] {
  const stands = new Set(after.batches.filter(({ state }) => state !== 'planned').map(({ name }) => name));
  const old = planned(before).filter(({ name }) => !stands.has(name));
  const now = planned(after);
  const isSame = (a: SeasonBatch, b: SeasonBatch): boolean => Math.abs(a.stripAt - b.stripAt) <= SAME_NIGHT;
  const gone = old.filter((was) => !now.some((is) => isSame(was, is)));
  const come = now.filter((is) => !old.some((was) => isSame(was, is)));
  return Array.from({ length: Math.max(gone.length, come.length) }, (_, i): BookChange => {
    const [was, is] = [gone[i], come[i]];
    if (was && is)
      return {
        kind: 'moved',
        about: is.name,
        before: was.stripAt,
        after: is.stripAt,
        message: `The strip of ${day(was.stripAt)} moves to ${day(is.stripAt)} (${is.name}).`,
      };
    return is
      ? {
          kind: 'new batch',
          about: is.name,
          after: is.stripAt,
          message: `A new batch, ${is.name}, is stripped on ${day(is.stripAt)}.`,
        }
      : {
          kind: 'batch dropped',
          about: was?.name ?? '',
          ...(was ? { before: was.stripAt } : {}),
          message: `The batch of ${day(was?.stripAt ?? 0)} is no longer planned.`,
        };
  });
}

function changedOrders(before: BookPlan, after: BookPlan): BookChange[] {
  // A second order of a buyer changes what plans call the first: its key stays.
  const keyed = ({ order }: OrderPlan): string => `${order.key ?? ''}|${buyerOf(order)}`;
  const byKey = new Map(before.orders.map((o): [string, OrderPlan] => [keyed(o), o]));
  const byName = new Map(before.orders.map((o): [string, OrderPlan] => [o.order.name, o]));
  return after.orders.flatMap((now): BookChange[] => {
    const old = byKey.get(keyed(now)) ?? byName.get(now.order.name);
    if (old?.verdict === now.verdict && Math.abs(old.promise - now.promise) < 1) return [];
    const from = old ? `${verdictText(old.verdict)}, ${many(old.promise)}` : 'not planned';
    const to = `${verdictText(now.verdict)}, ${many(now.promise)}`;
    return [
      {
        kind: 'order',
        about: now.order.name,
        before: from,
        after: to,
        message: `${now.order.name}: ${to} to promise of ${many(now.order.number)}; before: ${from}.`,
      },
    ];
  });
}

/** What planning again changes, to be read before anything is written. */
export const changesOf = (before: BookPlan, after: BookPlan): BookChange[] => [
  ...keptBatches(after),
  ...movedBatches(before, after),
  ...changedOrders(before, after),
];

/** All that is needed to write a book again: what one press back returns to. Plain data, made for JSON. */
export interface BookState {
  readonly book: OrderBook;
  readonly plan: BookPlan;
  readonly typed: BookRead['typed'];
}
