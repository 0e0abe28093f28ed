import type { PanePlace } from '../frame/places';
import type { PaneState } from './state';

/**
 * What outlives the pane: every form, reading and choice, as a text. Each place names the fields of its slices
 * that are kept; what cannot be read back in their shape is left as it was at first.
 */

export const KEPT_VERSION = 1;
/** Slices as they were kept, by name; those of places not opened yet wait here. */
export type KeptState = Readonly<Record<string, Readonly<Record<string, unknown>>>>;

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value) && !(value instanceof Set);

const replacer = (_key: string, value: unknown): unknown =>
  value instanceof Set ? { $set: [...value] } : value;
const reviver = (_key: string, value: unknown): unknown =>
  isRecord(value) && Array.isArray(value.$set) ? new Set(value.$set) : value;

/** A kept value that has the shape of the first one; anything else gives the first one. */
export function conform(first: unknown, kept: unknown): unknown {
  if (kept === undefined || kept === null) return first;
  if (first === undefined) return kept;
  if (first instanceof Set) return kept instanceof Set ? kept : first;
  if (Array.isArray(first)) return Array.isArray(kept) ? kept : first;
  if (!isRecord(first)) return typeof kept === typeof first ? kept : first;
  if (!isRecord(kept)) return first;
  const known = Object.keys(first);
  // A table by any key (what stands in each argument) begins empty and takes what was kept.
  if (known.length === 0) return kept;
  return Object.fromEntries(known.map((key) => [key, conform(first[key], kept[key])]));
}

const slice = (state: PaneState, name: string): unknown =>
  (state as unknown as Record<string, unknown>)[name];

/** The slices of a place, with what was kept of them put back. */
export function withKept(place: PanePlace, today: number, kept: KeptState): Partial<PaneState> {
  const initial = place.initial(today) as Record<string, unknown>;
  const out: Record<string, unknown> = { ...initial };
  for (const [name, keys] of Object.entries(place.keeps ?? {})) {
    const first = initial[name];
    const had = kept[name];
    if (!isRecord(first) || !had) continue;
    out[name] = {
      ...first,
      ...Object.fromEntries(keys.map((key) => [key, conform(first[key], had[key])])),
    };
  }
  return out as Partial<PaneState>;
}

/** What is to be kept now: the slices of the places opened, and what waits of the others. */
export function keptOf(state: PaneState, places: readonly PanePlace[]): KeptState {
  const out: Record<string, Record<string, unknown>> = { ...(state.kept as Record<string, never>) };
  for (const { keeps = {} } of places)
    for (const [name, keys] of Object.entries(keeps)) {
      const now = slice(state, name);
      if (isRecord(now)) out[name] = Object.fromEntries(keys.map((key) => [key, now[key]]));
    }
  out.pane = { screen: state.screen };
  out.settings = { ...state.settings };
  return out;
}

export const keptText = (kept: KeptState, at: number): string =>
  JSON.stringify({ version: KEPT_VERSION, at, kept }, replacer);

/** undefined for what is not ours, damaged or of another version. */
export function readKept(text: unknown): { readonly at: number; readonly kept: KeptState } | undefined {
  if (typeof text !== 'string') return undefined;
  try {
    const read: unknown = JSON.parse(text, reviver);
    if (!isRecord(read) || read.version !== KEPT_VERSION || !isRecord(read.kept)) return undefined;
    const slices = Object.entries(read.kept).filter(([, value]) => isRecord(value));
    return { at: typeof read.at === 'number' ? read.at : 0, kept: Object.fromEntries(slices) as KeptState };
  } catch {
    return undefined;
  }
}

const isSame = (a: unknown, b: unknown): boolean =>
  a === b || JSON.stringify(a, replacer) === JSON.stringify(b, replacer);

/** What was typed since the pane opened lies over what was kept: field by field, line after line. */
function over(first: unknown, now: unknown, kept: unknown): unknown {
  if (isSame(first, now)) return kept;
  if (kept === undefined || kept === null) return now;
  if (now instanceof Set && kept instanceof Set) return new Set<unknown>([...kept, ...now]);
  if (Array.isArray(now) && Array.isArray(kept)) return after(now, kept);
  if (!isRecord(now) || !isRecord(kept)) return now;
  const begun = isRecord(first) ? first : {};
  const keys = new Set([...Object.keys(kept), ...Object.keys(now)]);
  return Object.fromEntries([...keys].map((key) => [key, over(begun[key], now[key], kept[key])]));
}
/** Lines that are numbered follow those that were kept; any other list is the one on show. */
function after(now: readonly unknown[], kept: readonly unknown[]): readonly unknown[] {
  const idOf = (line: unknown): number | undefined =>
    isRecord(line) && typeof line.id === 'number' ? line.id : undefined;
  if (!now.every((line) => idOf(line) !== undefined)) return now;
  const last = Math.max(0, ...kept.map((line) => idOf(line) ?? 0));
  return [...kept, ...now.map((line, i) => ({ ...(line as object), id: last + 1 + i }))];
}

/** Kept slices with what somebody typed before they arrived; a pane is typed into while the workbook is read. */
export function withTyped(kept: KeptState, state: PaneState, places: readonly PanePlace[]): KeptState {
  const out: Record<string, Record<string, unknown>> = { ...(kept as Record<string, never>) };
  for (const place of places) {
    const initial = place.initial(state.openedOn) as Record<string, unknown>;
    for (const [name, keys] of Object.entries(place.keeps ?? {})) {
      const [first, now] = [initial[name], slice(state, name)];
      if (!isRecord(first) || !isRecord(now)) continue;
      for (const key of keys)
        if (!isSame(first[key], now[key]))
          out[name] = { ...out[name], [key]: over(first[key], now[key], out[name]?.[key]) };
    }
  }
  return out;
}
