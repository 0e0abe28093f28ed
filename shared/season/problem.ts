import type { Assumed } from '../families/assumptions';
import { assumed } from '../families/assumptions';
import { eggsPerFemale } from '../families/brood/kernels/eggs';
import type { NoRun, RunClock } from './figures/clock';
import { monthIndexOf } from '../units/dates';
import { clockOn, stagesFor } from './figures/clock';
import type { BookedOrder, OrderBook, VatStageKey } from './book/orderBook';
import { VAT_STAGES } from './book/orderBook';
import type { Product } from './figures/product';
import { productOf } from './figures/product';

/** An order book as the scheduler sees it: numbers only. */
export interface Problem {
  readonly tasks: readonly Task[];
  readonly vats: readonly ProblemVat[];
  readonly females: readonly ProblemFemale[];
  /** Places of the females, the best giver first. */
  readonly byEggs: readonly number[];
  readonly males: readonly ProblemMale[];
  readonly restDays: number;
  readonly cleaningDays: number;
  readonly femalesPerDay: number;
  readonly femalesPerMale: number;
  readonly malesSurvive: boolean;
  /** Females that runs which stand are stripped of, by day. */
  readonly strippedOn: ReadonlyMap<number, number>;
  /** Vats taken by runs under way, by place. */
  readonly taken: readonly { readonly vat: number; readonly from: number; readonly until: number }[];
  /** What is taken as being there without limit, to see what binds. */
  readonly without?: 'vats' | 'females' | 'males' | 'hands';
}
export interface Task {
  readonly order: BookedOrder;
  readonly product: Product;
  /** Fish to plan for, with the spare. */
  readonly wanted: number;
  /** What a fish of it is worth beside the others. */
  readonly value: number;
  readonly candidates: readonly Candidate[];
  /** Why days were left out, with their number. */
  readonly refused: Readonly<Partial<Record<NoRun | 'lead time', number>>>;
}
/** A day on which a run for the order may be stripped. */
export interface Candidate {
  readonly day: number;
  readonly clock: RunClock;
  /** Eggs of a female stripped on that day, times those of the usual one. */
  readonly eggFactor: number;
  readonly weanedAt: number;
  readonly readyAt: number;
  /** From and to of each stage of the product, in days. */
  readonly spans: readonly (readonly [from: number, to: number])[];
}
export interface ProblemVat {
  readonly name: string;
  readonly litres: number;
  readonly holds: number;
}
export interface ProblemFemale {
  readonly tag: string;
  readonly eggs: number;
  readonly kilograms: number;
  readonly family: string;
  readonly used: readonly number[];
}
export interface ProblemMale {
  readonly tag: string;
  readonly family: string;
  readonly used: readonly number[];
  /** Dead or sold: used no more, however long it rested. */
  readonly isGone?: boolean;
}

export const stageBit = (key: VatStageKey): number => 1 << VAT_STAGES.indexOf(key);

/** Fish leave in the morning; weaned fry are moved in the morning. */
export const MORNING = 8 / 24;
/**
 * The slowest published hatching, at twice its hours, and yolk together, with a day over: no candidate lies further
 * back.
 */
const LONGEST_BEFORE_FEED = 10;

type Clocks = (day: number) => RunClock | NoRun;
const clocksOf = (book: OrderBook, a: Assumed): Clocks => {
  const stages = stagesFor(book.preparation);
  const known = new Map<number, RunClock | NoRun>();
  return (day) => {
    let clock = known.get(day);
    if (clock === undefined) known.set(day, (clock = clockOn(book, stages, a, day)));
    return clock;
  };
};

/** Goods ordered on the day of planning must be there before they are used. */
const arrivesInTime = (book: OrderBook, clock: RunClock, a: Assumed): boolean =>
  Math.floor(clock.stripAt) >= book.plannedOn &&
  Math.floor(clock.injectAt) - book.leadDays.hormone >= book.plannedOn &&
  Math.floor(clock.firstFeedAt) - 1 - book.leadDays.cysts >= book.plannedOn &&
  clock.feedFrom + a.liveDays - book.leadDays.feed >= book.plannedOn;

/**
 * Egg yields swing with the seasons: the month of the strip says how far from the figure of the whole year.
 */
const eggFactorOn = ({ eggShares }: OrderBook, { eggShare }: Assumed, day: number): number =>
  (eggShares?.[monthIndexOf(day)] ?? eggShare) / eggShare;

function candidatesOf(
  book: OrderBook,
  a: Assumed,
  due: number,
  product: Product,
  clocks: Clocks,
): Pick<Task, 'candidates' | 'refused'> {
  const rearing = product.rearingDays + product.nurseryDays;
  const candidates: Candidate[] = [];
  const refused: Partial<Record<NoRun | 'lead time', number>> = {};
  const refuse = (why: NoRun | 'lead time'): void => {
    refused[why] = (refused[why] ?? 0) + 1;
  };
  for (let day = due - rearing - 1; day >= due - rearing - book.holdDays - LONGEST_BEFORE_FEED; day--) {
    const clock = clocks(day);
    if (typeof clock === 'string') {
      refuse(clock);
      continue;
    }
    const readyAt = clock.feedFrom + rearing;
    if (readyAt > due || readyAt < due - book.holdDays) continue;
    if (!arrivesInTime(book, clock, a)) {
      refuse('lead time');
      continue;
    }
    const weanedAt = clock.feedFrom + product.rearingDays + MORNING;
    const leaves = due + MORNING;
    const spans: (readonly [number, number])[] =
      product.nurseryDays > 0
        ? [
            [clock.stripAt, clock.firstFeedAt],
            [clock.firstFeedAt, weanedAt],
            [weanedAt, leaves],
          ]
        : [
            [clock.stripAt, clock.firstFeedAt],
            [clock.firstFeedAt, leaves],
          ];
    candidates.push({ day, clock, eggFactor: eggFactorOn(book, a, day), weanedAt, readyAt, spans });
  }
  return { candidates, refused };
}

const usesOf = (lastUsed: number | undefined): number[] => (lastUsed === undefined ? [] : [lastUsed]);

/** The problem of an order book; orders whose size cannot be had come back as sentences. */
export function problemOf(book: OrderBook): {
  readonly problem: Problem;
  readonly assumed: Assumed;
  readonly impossible: readonly string[];
} {
  const a = assumed(book.assumptions);
  const clocks = clocksOf(book, a);
  const impossible: string[] = [];
  /** Fish of different prices weigh by their price only where every order has one. */
  const arePriced = book.orders.every(({ price }) => price !== undefined && price > 0);
  const tasks: Task[] = [];
  for (const order of book.orders) {
    const product = productOf(order, a);
    if (typeof product === 'string') {
      impossible.push(product);
      continue;
    }
    tasks.push({
      order,
      product,
      wanted: Math.ceil(order.number * (1 + book.spare)),
      value: arePriced && order.price !== undefined ? order.price : 1,
      ...candidatesOf(book, a, order.due, product, clocks),
    });
  }
  const females = book.females.map(({ tag, kilograms, family, lastUsed }): ProblemFemale => ({
    tag,
    kilograms,
    eggs: eggsPerFemale(kilograms, a.eggShare, a.eggsPerGram) * a.ovulating,
    family: family ?? '',
    used: usesOf(lastUsed),
  }));
  return {
    assumed: a,
    impossible,
    problem: {
      tasks,
      vats: book.vats.map(({ name, litres, holds }) => ({
        name,
        litres,
        holds: holds.reduce((bits, key) => bits | stageBit(key), 0),
      })),
      females,
      byEggs: females
        .map((_, i) => i)
        .sort((x, y) => (females[y]?.eggs ?? 0) - (females[x]?.eggs ?? 0) || x - y),
      males: book.males.map(({ tag, family, lastUsed }) => ({
        tag,
        family: family ?? '',
        used: usesOf(lastUsed),
      })),
      taken: [],
      strippedOn: new Map(),
      restDays: book.restDays,
      cleaningDays: book.cleaningDays,
      femalesPerDay: book.staff.femalesPerDay,
      femalesPerMale: Math.max(1, Math.floor(a.femalesPerMale)),
      malesSurvive: book.malesSurvive,
    },
  };
}
