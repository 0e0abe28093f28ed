/**
 * Speed of development against temperature: a broken line through (temperature, 1/hours).
 *
 * One rule serves every question: the rate, not the hours, is interpolated between two rows, and a changing
 * temperature is the sum of rate × time. At a constant temperature both give the same hours, because the sum
 * of a constant rate reaches one after 1/rate hours. Straight rates are the published model of ontogeny, 1/τ
 * = a + b·T (KAMLER02).
 */
export interface RateCurve {
  /** °C, ascending, no two alike. */
  readonly temperatures: readonly number[];
  /** Share of the stage done per hour, at each temperature. */
  readonly rates: readonly number[];
}

export const lowest = (curve: RateCurve): number => curve.temperatures[0] ?? NaN;
export const highest = (curve: RateCurve): number => curve.temperatures[curve.temperatures.length - 1] ?? NaN;

/** Curve through rows of a table in hours; a rate is 1/hours. Rows ascend in temperature. */
export const curveFromHours = (rows: readonly (readonly [number, number])[]): RateCurve => ({
  temperatures: rows.map(([t]) => t),
  rates: rows.map(([, h]) => 1 / h),
});

/**
 * Curve from one measured duration and a base temperature: τ = D/(T − t0) with D = hours·(T − t0) (KAMLER02).
 */
export const curveFromBase = (
  temperature: number,
  hours: number,
  base: number,
  low: number,
  high: number,
): RateCurve => {
  const warmth = hours * (temperature - base);
  return { temperatures: [low, high], rates: [(low - base) / warmth, (high - base) / warmth] };
};

/** Warmth above a base as a rate: °C·h gained per hour, none below the base. Wide enough for any water. */
export const warmthCurve = (base: number): RateCurve => ({
  temperatures: [base - 1000, base, base + 1000],
  rates: [0, 0, 1000],
});

/**
 * Rate of development at one temperature, per hour. NaN outside the curve: never extrapolated.
 * Example: rows 26 °C 10 h and 27 °C 9 h give 0.10556 /h at 26.5 °C, that is 9.474 h.
 */
export function rateAt({ temperatures, rates }: RateCurve, temperature: number): number {
  const last = temperatures.length - 1;
  let i = 0;
  while (i < last && (temperatures[i + 1] ?? Infinity) < temperature) i++;
  const t0 = temperatures[i] ?? NaN;
  const t1 = temperatures[i + 1] ?? t0;
  const r0 = rates[i] ?? NaN;
  if (!(temperature >= t0 && temperature <= t1)) return NaN;
  return t1 === t0 ? r0 : r0 + ((rates[i + 1] ?? NaN) - r0) * ((temperature - t0) / (t1 - t0));
}

export const hoursAt = (curve: RateCurve, temperature: number): number => 1 / rateAt(curve, temperature);

/** A stretch of time over which the rate runs in a straight line. */
export interface CurvePiece {
  readonly hours: number;
  readonly from: number;
  readonly to: number;
}

/**
 * The stretch from temperature a to b, evenly over `hours`, cut where the line passes a row of the curve, so
 * that every piece is a trapezoid and the sum is exact whatever the spacing of the readings.
 */
export function piecesBetween(curve: RateCurve, a: number, b: number, hours: number): CurvePiece[] {
  const low = Math.min(a, b);
  const high = Math.max(a, b);
  const cuts = curve.temperatures.filter((t) => t > low && t < high);
  if (a > b) cuts.reverse();
  const pieces: CurvePiece[] = [];
  let before = 0;
  let from = rateAt(curve, a);
  for (const cut of cuts) {
    const share = (cut - a) / (b - a);
    const to = rateAt(curve, cut);
    pieces.push({ hours: hours * (share - before), from, to });
    before = share;
    from = to;
  }
  pieces.push({ hours: hours * (1 - before), from, to: rateAt(curve, b) });
  return pieces;
}

export const sumOf = (pieces: readonly CurvePiece[]): number =>
  pieces.reduce((sum, p) => sum + (p.hours * (p.from + p.to)) / 2, 0);

/**
 * The same sum without building pieces: mean rate between two temperatures × hours. The mean is weighted by
 * the width of each stretch of the curve, and divided by the sum of those widths, so that a tiny slope across
 * a row loses no digits.
 */
export function sumBetween(curve: RateCurve, a: number, b: number, hours: number): number {
  const low = Math.min(a, b);
  const high = Math.max(a, b);
  const { temperatures, rates } = curve;
  let area = 0;
  let width = 0;
  for (let i = 0; i + 1 < temperatures.length; i++) {
    const t0 = temperatures[i] ?? NaN;
    const t1 = temperatures[i + 1] ?? NaN;
    const from = Math.max(low, t0);
    const step = Math.min(high, t1) - from;
    if (!(step > 0)) continue;
    const r0 = rates[i] ?? NaN;
    const slope = ((rates[i + 1] ?? NaN) - r0) / (t1 - t0);
    area += step * (r0 + slope * (from - t0 + step / 2));
    width += step;
  }
  return hours * (width > 0 ? area / width : rateAt(curve, a));
}

/** Hours into the pieces until `wanted` is reached; NaN when they do not reach it. */
export function hoursToReach(pieces: readonly CurvePiece[], wanted: number): number {
  let spent = 0;
  let left = wanted;
  for (const { hours, from, to } of pieces) {
    const gain = (hours * (from + to)) / 2;
    if (gain >= left && gain > 0) {
      // Stable root of from·x + (to − from)·x²/(2·hours) = left.
      return (
        spent +
        Math.min(
          hours,
          (2 * left) / (from + Math.sqrt(Math.max(0, from * from + (2 * left * (to - from)) / hours))),
        )
      );
    }
    spent += hours;
    left -= gain;
  }
  return NaN;
}
