import { strFromU8, strToU8, unzlibSync, zlibSync } from 'fflate';
import type { BookState } from './again';
import type { BookPlan } from '../layout';

/** A book kept as bytes, so that one press can bring it back after the pane was closed. */

const VERSION = 1;

/** Of a plan what stands in the book. */
export const bookPlanOf = ({
  plannedOn,
  batches,
  orders,
  allocations,
  stays,
  findings,
  promise,
  hope,
  verdict,
  odds,
}: BookPlan): BookPlan => ({
  plannedOn,
  batches,
  orders,
  allocations,
  stays,
  findings,
  promise,
  hope,
  verdict,
  odds: odds && { gain: odds.gain, solvent: odds.solvent, ...(odds.profit && { profit: odds.profit }) },
});

/** JSON knows no number but finite ones; an estimate that was not made is NaN. */
const written = (_key: string, value: unknown): unknown =>
  typeof value === 'number' && !Number.isFinite(value) ? { $number: String(value) } : value;
const read = (_key: string, value: unknown): unknown =>
  typeof value === 'object' && value !== null && '$number' in value ? Number(value.$number) : value;

/** A state as compressed bytes. */
export const packState = ({ book, plan, typed }: BookState): Uint8Array =>
  zlibSync(strToU8(JSON.stringify({ version: VERSION, book, plan: bookPlanOf(plan), typed }, written)));

/** undefined for what is not ours, damaged or of another version. */
export function unpackState(bytes: Uint8Array): BookState | undefined {
  try {
    const state = JSON.parse(strFromU8(unzlibSync(bytes)), read) as BookState & { readonly version?: number };
    return state.version === VERSION ? { book: state.book, plan: state.plan, typed: state.typed } : undefined;
  } catch {
    return undefined;
  }
}
