/**
 * How wide the moment is. Published trials give ratios, not rules; they are applied to the hours of the
 * chosen profile.
 */

/**
 * Least width of a stripping window, as shares of the latency, where a table prints one hour only. AUDU23
 * stripped at 9, 11, 13, 15 and 17 h: 11, 13 and 15 h fertilised 98 to 99 %, 13 h hatched best (63.73 %), 17 h
 * hatched 1.99 %. So: look from 11/13 on; 15/13 was still good.
 */
export const FIRST_CHECK_SHARE = 11 / 13; // share of best hour, AUDU23
export const LAST_TESTED_SHARE = 15 / 13; // share of best hour, AUDU23

/**
 * Last hatch as a share of first hatch: first 24.05 to 25.28 h, last 32.62 to 33.95 h (1443 to 1517 and 1957
 * to 2037 minutes, UKAKALU); the middle of both.
 */
export const LAST_HATCH_SHARE = (1957 + 2037) / (1443 + 1517); // last/first, UKAKALU

export interface StripWindow {
  readonly firstCheck: number;
  readonly best: number;
  /** The last hour that a trial tested and found good: later is untried, not over-ripe. */
  readonly lastTested: number;
}

/**
 * Hours after the injection. `spread` is the published spread of the profile: the wider of the two windows is
 * shown.
 */
export const stripWindow = (
  latency: number,
  spread: readonly [number, number],
  offset: number,
): StripWindow => ({
  firstCheck: latency * Math.min(FIRST_CHECK_SHARE, spread[0]) + offset,
  best: latency + offset,
  lastTested: latency * Math.max(LAST_TESTED_SHARE, spread[1]) + offset,
});

/**
 * Hours after fertilisation of first and last hatch; undefined where no spread was published. Catfishes and a
 * table of the user's own (no species) take the spread of African catfish.
 */
export const hatchWindow = (
  hours: number,
  spread: readonly [number, number],
  species: string,
): { readonly first: number; readonly last: number } | undefined => {
  const isCatfish = species === '' || species.startsWith('Clarias') || species.startsWith('Heterobranchus');
  if (!isCatfish && spread[0] === spread[1]) return undefined;
  return {
    first: hours * spread[0],
    last: hours * (isCatfish ? Math.max(LAST_HATCH_SHARE * spread[0], spread[1]) : spread[1]),
  };
};
