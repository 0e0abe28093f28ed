import type { DoseReach } from './nextDose';

/** What happened between the reading above and this one. Plain: nothing but the dose, if any. */
export const EVENTS = ['', 'aired', 'jar', 'night', 'refill', 'change', 'rain'] as const;
export type EventName = (typeof EVENTS)[number];

/** One reading of the series as the vat was written down. */
export interface TitrationEntry {
  /** mmol/L of product since the start. */
  readonly dose: number;
  readonly reading: number;
  /** The second reading some minutes later. */
  readonly again?: number | undefined;
  readonly event: EventName;
  /** Hours since the reading above, where both times are known. */
  readonly hours?: number | undefined;
}
export type Log = readonly TitrationEntry[];

/** Hours after which gas has gone as in a night. */
export const NIGHT_HOURS = 3;

/** A reading that cannot come from the readings before it. */
export interface Suspect {
  readonly read: number;
  readonly expected: DoseReach;
}
