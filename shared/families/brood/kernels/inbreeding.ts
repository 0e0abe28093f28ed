/**
 * Effective number of parents with unequal sexes.
 * Equation as published: Ne = 4·Nf·Nm/(Nf + Nm); in a line already inbred Ne/(1 + F).
 * In: numbers, share. Validity: every parent contributes alike; not for males used again and again (BUSACK).
 * Source: SALMONIDBOOK, NACAINBREED. Example: 99 females with 1 male → 3.96.
 */
export const effectiveNumber = (females: number, males: number, inbreeding = 0): number =>
  (4 * females * males) / (females + males) / (1 + inbreeding);

/** Rate of inbreeding per generation, ΔF = 1/(2·Ne) (NACAINBREED). Example: Ne 50 → 0.01. */
export const inbreedingRate = (effective: number): number => 1 / (2 * effective);

/** Inbreeding after t generations of the same rate: 1 − (1 − F0)·(1 − ΔF)^t (textbook). */
export const inbreedingAfter = (rate: number, generations: number, start: number): number =>
  1 - (1 - start) * (1 - rate) ** generations;

/** Males that bring Ne to a wish: Nm = Ne·Nf/(4·Nf − Ne). NaN when no number of males can. */
export const malesForEffective = (females: number, effective: number): number =>
  4 * females > effective
    ? Math.ceil(((effective * females) / (4 * females - effective)) * (1 - 1e-12))
    : NaN;

/**
 * Parents that count when they contribute unequally: (Σc)²/Σc². Example: milt shares 0.8, 0.1, 0.1 → 1.52
 * males.
 */
export const effectiveContributors = (contributions: readonly number[]): number => {
  const sum = contributions.reduce((a, b) => a + b, 0);
  return (sum * sum) / contributions.reduce((a, c) => a + c * c, 0);
};

/**
 * Fish to keep from each lot so that the lots contribute as evenly as their numbers allow: the largest common
 * ceiling whose sum does not pass the wish; what is left over goes one each to the first lots that still have
 * fish.
 */
export function evenShares(available: readonly number[], wanted: number): number[] {
  const kept = available.map(() => 0);
  let left = Math.min(
    wanted,
    available.reduce((a, b) => a + b, 0),
  );
  let open = available.map((_, i) => i).filter((i) => (available[i] ?? 0) > 0);
  while (left > 0 && open.length > 0) {
    const each = Math.max(1, Math.floor(left / open.length));
    for (const i of open) {
      const take = Math.min(each, (available[i] ?? 0) - (kept[i] ?? 0), left);
      kept[i] = (kept[i] ?? 0) + take;
      left -= take;
    }
    open = open.filter((i) => (kept[i] ?? 0) < (available[i] ?? 0));
  }
  return kept;
}
