/** A narrow space that does not break, as ISO 80000-1 groups digits: no language reads it as a decimal sign. */
const NARROW = '\u202f';
const MOST_DECIMALS = 6;

/**
 * A number inside a sentence: "20 000", "0.05". Digits in threes, a point before decimals; without `decimals` as
 * many as it has, up to six. Infinity and NaN are written as they are.
 */
export function writtenNumber(n: number, decimals?: number): string {
  if (!Number.isFinite(n)) return String(n);
  return n
    .toLocaleString('en', {
      minimumFractionDigits: decimals ?? 0,
      maximumFractionDigits: decimals ?? MOST_DECIMALS,
    })
    .replaceAll(',', NARROW);
}
