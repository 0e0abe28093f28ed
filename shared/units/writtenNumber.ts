/** A narrow space that does not break, as ISO 80000-1 groups digits: no language reads it as a decimal sign. */
const NARROW = '\u202f';
const MOST_DECIMALS = 6;

/** One format for each number of decimals: making one costs a hundred times what using it does. */
const FORMATS = new Map<number | undefined, Intl.NumberFormat>();
function formatFor(decimals: number | undefined): Intl.NumberFormat {
  const known = FORMATS.get(decimals);
  if (known) return known;
  const made = new Intl.NumberFormat('en', {
    minimumFractionDigits: decimals ?? 0,
    maximumFractionDigits: decimals ?? MOST_DECIMALS,
  });
  FORMATS.set(decimals, made);
  return made;
}

/**
 * A number inside a sentence: "20 000", "0.05". Digits in threes, a point before decimals; without `decimals` as
 * many as it has, up to six. Infinity and NaN are written as they are.
 */
export function writtenNumber(n: number, decimals?: number): string {
  if (!Number.isFinite(n)) return String(n);
  return formatFor(decimals).format(n).replaceAll(',', NARROW);
}
