import type { Verdict } from '../maths/verdict';
import type { Range } from '../maths/quantiles';
import type { CashWeek } from '../families/money/kernels/cashWeeks';
import type { RunClock } from './figures/clock';
import type { BookedOrder } from './book/orderBook';
import type { VatStageKey } from './figures/stages';
import type { Swing } from '../families/money/kernels/swings';

/**
 * The living season: what goes into planning and what comes out, as plain rows. Days and times are sheet
 * serials, shares 0 to 1, fish whole fish unless a line says expected. Input is the order book
 * (`readOrderBook`); what stands in the vats is in its `batches`.
 */

/** How sure an order may be asked to be, at the most. */
export const MOST_CERTAIN = 0.99;

/** Planned may still move; fixed is too near to move (goods are ordered, or injected); the rest speak. */
export const BATCH_STATES = ['fixed', 'growing', 'over', 'lost'] as const;
export type BatchState = (typeof BATCH_STATES)[number];
/** What is counted, in the order of the chain. */
export const COUNT_STAGES = ['eggs', 'larvae', 'feeding', 'weaned', 'fish'] as const;
export type CountStage = (typeof COUNT_STAGES)[number];
export const EVENT_KINDS = ['sold', 'died', 'lost', 'released'] as const;
export type EventKind = (typeof EVENT_KINDS)[number];

export interface BatchPair {
  readonly female: string;
  readonly male: string;
  readonly kilograms: number;
}
/** The hours of a batch; they stay as they were once it is fixed. */
export interface BatchClock extends RunClock {
  /** Fry are weaned and those to be nursed are moved. */
  readonly weanedAt: number;
}
/** How many of what there were at a time: `fish` are those alive, whatever their stage. */
export interface BatchCount {
  readonly at: number;
  readonly stage: CountStage;
  readonly number: number;
}
/** Fish of a batch weighed: grams of one, and the day. */
export interface BatchWeighing {
  readonly on: number;
  readonly grams: number;
}
/** Fish that left a batch: to a buyer, by death, by an accident, or let go as surplus. */
export interface BatchEvent {
  readonly at: number;
  readonly kind: EventKind;
  readonly number: number;
  readonly order?: string | undefined;
  /** Money received for them. */
  readonly paid?: number | undefined;
  readonly note?: string | undefined;
}
/** Fish of a batch in a vat. */
export interface BatchStay {
  readonly batch: string;
  readonly vat: string;
  readonly stage: VatStageKey;
  readonly from: number;
  readonly to: number;
  /** Clean and full again from here on; the same as `to` where the batch stays in the vat. */
  readonly cleanAt: number;
  /** Fish (or eggs) that stand in it at the beginning. */
  readonly fish: number;
  readonly perLitre: number;
}

/** Fish of a batch for an order. */
export interface Allocation {
  readonly batch: string;
  readonly order: string;
  /** Day they leave, and their age then in days after the first full day of feeding. */
  readonly on: number;
  readonly ageDays: number;
  readonly grams: number;
  /** Fish counted out that the plan gives. */
  readonly fish: number;
  /** Larvae at first food they are grown from. */
  readonly feeding: number;
  readonly stage: 'fry' | 'nursing';
}

/** Whether eggs were counted, the sum of later counts, fish lost or let go, fish sold. */
export interface KnownLog {
  readonly eggs: number;
  readonly counted: number;
  readonly lost: number;
  readonly sold: number;
}

export interface SeasonBatch extends BatchClock {
  /** Stays the same through every plan: B1, B2 …, numbered in the order they were first planned. */
  readonly name: string;
  readonly state: 'planned' | BatchState;
  readonly pairs: readonly BatchPair[];
  readonly males: readonly string[];
  /** In the unit of the preparation. */
  readonly hormone: number;
  /** Expected of a middling season, or counted: eggs stripped, larvae hatched, larvae at first food, weaned fry. */
  readonly eggs: number;
  readonly larvae: number;
  readonly feeding: number;
  readonly weaned: number;
  /** Fish its allocations promise, and fish nobody has ordered (expected, at the day the last of it leaves). */
  readonly promised: number;
  readonly extra: number;
  /** The day its last fish leave. */
  readonly leavesOn: number;
  /** As they were typed; empty for what is only planned. */
  readonly counts: readonly BatchCount[];
  /** The weighing that decides how its fish grow. */
  readonly weighed?: BatchWeighing | undefined;
  readonly events: readonly BatchEvent[];
  /** Fish alive by counts and events, where one was counted. */
  readonly alive: number | undefined;
  /** What the planning knew of its log, where the batch was read from a book: later lines came after it. */
  readonly known?: KnownLog | undefined;
}

export interface OrderPlan {
  readonly order: BookedOrder;
  readonly batches: readonly string[];
  /** Fish handed over already. */
  readonly delivered: number;
  /** Fish one can promise at the certainty wanted, and what half of all seasons bring, the delivered included. */
  readonly promise: number;
  readonly hope: number;
  readonly range: Range;
  /** Ten seasons that stand for all drawn, the poorest first; left out where a plan is read of a book. */
  readonly seasons?: readonly number[];
  /** Share of seasons that bring the whole order. */
  readonly certainty: number;
  readonly verdict: Verdict;
  /** Mean number sold to it. */
  readonly expected: number;
  readonly parents: number;
  /** Only where nothing can be planned: why. */
  readonly why?: string | undefined;
}

export interface BatchFeeding {
  readonly date: number;
  readonly batch: string;
  readonly fish: number;
  readonly grams: number;
  readonly cysts: number;
  readonly dry: number;
}
export type Goods = 'hormone' | 'cysts' | 'dry feed';
export interface SeasonPurchase {
  readonly week: number;
  readonly item: Goods;
  readonly amount: number;
  readonly unit: string;
  readonly cost: number;
  readonly usedFrom: number;
}
/** One line of the money: what is to come, or (isBooked) what was typed as paid or received. */
export interface MoneyEntry {
  readonly date: number;
  readonly what: string;
  readonly amount: number;
  readonly batch?: string | undefined;
  readonly order?: string | undefined;
  readonly isBooked: boolean;
  readonly isFixed: boolean;
}
/** NaN or Infinity where nothing is sold. */
export interface SeasonMoney {
  readonly sales: number;
  readonly costs: readonly { readonly what: string; readonly amount: number }[];
  readonly cost: number;
  readonly profit: number;
  readonly margin: number;
  readonly costPerFish: number;
  /** Mean price at which nothing is won or lost. */
  readonly breakEvenPrice: number;
  readonly breakEvenNumber: number;
  readonly leastBalance: number;
  readonly swings: readonly Swing[];
}
export interface PlanFinding {
  readonly kind: 'cannot' | 'care';
  readonly about: string;
  readonly message: string;
}
/** A change that was tried and what it brought. */
export interface TriedChange {
  readonly what: string;
  readonly gain: number;
}
export interface SeasonShort {
  readonly binding: string | undefined;
  /** Those that help, the best first. */
  readonly changes: readonly TriedChange[];
  /** All that were tried, in words. */
  readonly tried: readonly string[];
}

export interface SeasonPlan {
  readonly plannedOn: number;
  readonly wanted: number;
  readonly batches: readonly SeasonBatch[];
  readonly orders: readonly OrderPlan[];
  readonly allocations: readonly Allocation[];
  readonly stays: readonly BatchStay[];
  readonly purchases: readonly SeasonPurchase[];
  readonly feeding: readonly BatchFeeding[];
  readonly entries: readonly MoneyEntry[];
  readonly cash: readonly CashWeek[];
  readonly money: SeasonMoney;
  /** Profit and the lowest balance of drawn seasons; undefined when none were drawn. */
  readonly odds:
    | {
        readonly profit: Range;
        readonly least: Range;
        /** Share of seasons with a profit, and share in which the money never runs out. */
        readonly gain: number;
        readonly solvent: number;
      }
    | undefined;
  /** "Promise 10,000, hope for 33,000": all fish of open orders and those nobody ordered, together. */
  readonly promise: number;
  readonly hope: number;
  /** All fish of a poor, a middling and a good season, those nobody ordered included. */
  readonly fish: Range;
  readonly verdict: Verdict;
  /** All orders at the certainty wanted. */
  readonly canBeMet: boolean;
  readonly findings: readonly PlanFinding[];
  readonly short: SeasonShort | undefined;
}
