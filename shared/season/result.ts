import type { Product } from './product';
import type { BookedOrder, VatStageKey } from './orderBook';
import type { RunClock } from './clock';
import type { Range } from '../maths/quantiles';
import type { CashWeek } from '../families/money/kernels/cashWeeks';
import type { Swing } from '../families/money/kernels/swings';

/** A season as plain rows: what a workbook, a pane or a terminal shows. Dates and times are sheet serials. */
export interface SeasonBook {
  readonly orders: readonly PlannedOrder[];
  readonly runs: readonly PlannedRun[];
  readonly occupancy: readonly VatStay[];
  /** Goods by the week they must be ordered in. */
  readonly purchases: readonly Purchase[];
  readonly feeding: readonly FeedingRow[];
  readonly cash: readonly CashWeek[];
  readonly money: SeasonMoney;
  readonly findings: readonly SeasonFinding[];
  readonly shortfall: Shortfall | undefined;
  readonly canBeMet: boolean;
}

export interface PlannedOrder {
  readonly order: BookedOrder;
  readonly product: Product | undefined;
  /**
   * Fish expected on the day from planned runs and runs under way, not more than ordered and spare unless
   * more are under way.
   */
  readonly expected: number;
  readonly runs: readonly number[];
  readonly females: number;
  readonly odds: (Range & { readonly certainty: number }) | undefined;
  /** Females that would meet it in nine seasons of ten; Infinity when no number does. */
  readonly femalesForNinety: number | undefined;
  /** Parents that count, of all its runs together. */
  readonly parents: number;
}

export interface PlannedRun extends RunClock {
  /** 1 for the run that is stripped first. */
  readonly run: number;
  readonly order: string;
  readonly females: readonly { readonly tag: string; readonly kilograms: number; readonly male: string }[];
  readonly males: readonly string[];
  readonly hormone: number;
  readonly eggs: number;
  readonly larvae: number;
  readonly feeding: number;
  readonly weaned: number;
  readonly fish: number;
  readonly weanedAt: number;
  readonly readyAt: number;
  readonly due: number;
  readonly vats: readonly { readonly stage: VatStageKey; readonly names: readonly string[] }[];
}

export interface VatStay {
  readonly vat: string;
  readonly run: number;
  readonly stage: VatStageKey;
  readonly from: number;
  readonly to: number;
  /** Clean and full again from here on; the same as `to` where the run stays in the vat. */
  readonly cleanAt: number;
  readonly fish: number;
  readonly perLitre: number;
}

export type Goods = 'hormone' | 'cysts' | 'dry feed';
export interface Purchase {
  /** Monday of the week to order in. */
  readonly week: number;
  readonly item: Goods;
  readonly amount: number;
  readonly unit: 'mL' | 'kg';
  readonly cost: number;
  /** First day it is used. */
  readonly usedFrom: number;
}
export interface FeedingRow {
  readonly date: number;
  readonly run: number;
  readonly fish: number;
  readonly grams: number;
  readonly cysts: number;
  readonly dry: number;
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

export interface SeasonFinding {
  readonly kind: 'cannot' | 'care';
  readonly about: string;
  readonly message: string;
}
export interface Change {
  readonly what: string;
  readonly fish: number;
  readonly gain: number;
}
export interface Shortfall {
  /** What stands in the way, in words; undefined when no single thing does. */
  readonly binding: string | undefined;
  /** Single changes, the one that brings most on top; none that brings nothing. */
  readonly changes: readonly Change[];
}
