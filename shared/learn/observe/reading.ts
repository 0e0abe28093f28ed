import type { RunRecord } from '../../records/schema';
import { dateOf } from '../../units/dates';
import type { RateKey } from '../../families/learning/rates';

/** Readings of the water, shared by all runs they cover. */
export interface TemperatureLog {
  readonly times: readonly number[];
  readonly temperatures: readonly number[];
}

export interface ObserveSettings {
  /** Used instead of the mean temperature of a record wherever it covers the stage. */
  readonly log?: TemperatureLog;
  /** Hormone preparation of records that name none. */
  readonly preparation?: string;
  /** Whose incubation table is compared; African catfish when left out. */
  readonly species?: string;
}
export interface ReaderSettings extends ObserveSettings {
  readonly isFailureKept: boolean;
}

/** One run's word on one rate: a measured value, or k of n. */
export interface Seen {
  readonly rate: RateKey;
  /** Preparation or month (1 to 12), where runs of the rate come in kinds. */
  readonly kind?: string | number;
  readonly value?: number;
  readonly k?: number;
  readonly n?: number;
}
export interface Unused {
  readonly rate: RateKey;
  readonly because: string;
}
export type Observation = Seen & { readonly record: RunRecord };
export type SkippedRecord = Unused & { readonly record: RunRecord };
export type Reader = (record: RunRecord, settings: ReaderSettings) => readonly (Seen | Unused)[];

/** The day a run is filed under. */
export const dayOf = ({ values: v }: RunRecord): number | undefined =>
  v.stripped?.value ??
  v.injected?.value ??
  v.fertilisedAt?.value ??
  v.date?.value ??
  v.hatchedAt?.value ??
  v.stockedAt?.value;

/** 1 to 12; undefined when the record has no date. */
export const monthOf = (record: RunRecord): number | undefined => {
  const day = dayOf(record);
  return day === undefined ? undefined : dateOf(day).getUTCMonth() + 1;
};

const LARGEST_COUNT = 1e9;
/** k of n, or why it cannot be one. Numbers worked out from weights need not be whole. */
export const counted = (rate: RateKey, k: number, n: number): Seen | Unused => {
  if (!(n >= 1 && n <= LARGEST_COUNT)) return { rate, because: 'nothing was counted' };
  if (k < 0 || k > n) return { rate, because: 'more came out than went in' };
  return { rate, k: Math.round(k), n: Math.round(n) };
};
