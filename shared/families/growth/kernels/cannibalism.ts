/** Days after the start of feeding and total length, HECHT88. */
export const ONSET = { days: 3.5, length: 8 } as const;
/** Biting prey tail first ends about here, mm. HECHT88 */
export const TAIL_FIRST_ENDS = 45;
export const OVER = { days: 47, length: 80 } as const;
/** Grading every two weeks did better than every four or never, days. MWAN20 */
export const GRADING_INTERVAL = 14;

/**
 * Days after the start of feeding on which to grade: every interval from the first until cannibalism is over.
 * Example: 14 → 14, 28, 42.
 */
export const gradingDays = (interval: number, last: number): readonly number[] =>
  Array.from({ length: Math.floor(last / interval) }, (_, i) => (i + 1) * interval);
