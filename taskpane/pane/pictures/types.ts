import type { Words } from '../../words/en';

/** What each picture is drawn from; times are serials, numbers as they are. */

export interface DotsData {
  readonly orders: readonly {
    readonly name: string;
    readonly wanted: number;
    /** What each of some seasons drawn by chance brings. */
    readonly seasons: readonly number[];
  }[];
}
export interface VatsData {
  readonly from: number;
  readonly to: number;
  readonly now: number;
  readonly vats: readonly {
    readonly name: string;
    readonly stays: readonly {
      readonly batch: string;
      readonly stage: string;
      readonly from: number;
      readonly to: number;
    }[];
  }[];
}
/** Readings and expectations of the pH, one after the other. */
export interface PathData {
  readonly points: readonly {
    readonly label: string;
    readonly ph: number;
    /** Ends of what is expected; a reading has none. */
    readonly low?: number;
    readonly high?: number;
  }[];
  /** The pH wanted, and the one never to go above. */
  readonly wanted: number;
  readonly most: number;
}
export interface FunnelData {
  readonly steps: readonly {
    readonly name: string;
    readonly planned: number;
    readonly counted: number | undefined;
  }[];
}
export interface GrowthData {
  readonly planned: readonly { readonly at: number; readonly grams: number }[];
  readonly weighed: readonly { readonly at: number; readonly grams: number }[];
}
export interface CashData {
  readonly weeks: readonly { readonly from: number; readonly left: number }[];
}
export interface DeathsData {
  /** Days in order, those without a death too. */
  readonly days: readonly { readonly day: number; readonly dead: number }[];
}

/** Words and how a day is written, as the reader has them. */
export interface PictureWords {
  readonly words: Words['pictures'];
  readonly day: (serial: number) => string;
}
