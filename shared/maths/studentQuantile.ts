import { normalQuantile } from './normalQuantile';
import { incompleteBeta, logGamma } from './specialFunctions';

/** First value for three or more degrees of freedom; `tails` is the probability outside both limits. */
const hill = (tails: number, df: number): number => {
  const a = 1 / (df - 0.5);
  const b = 48 / (a * a);
  let c = (((20700 * a) / b - 98) * a - 16) * a + 96.36;
  const d = ((94.5 / (b + c) - 3) / b + 1) * Math.sqrt((a * Math.PI) / 2) * df;
  let y = (d * tails) ** (2 / df);
  if (y > 0.05 + a) {
    const x = normalQuantile(tails / 2);
    y = x * x;
    if (df < 5) c += 0.3 * (df - 4.5) * (x + 0.6);
    c = (((0.05 * d * x - 5) * x - 7) * x - 2) * x + b + c;
    y = (((((0.4 * y + 6.3) * y + 36) * y + 94.5) / c - y - 3) / b + 1) * x;
    y = Math.expm1(a * y * y);
  } else {
    y =
      (((1 / (((df + 6) / (df * y) - 0.089 * d - 0.822) * (df + 2) * 3) + 0.5 / (df + 4)) * y - 1) *
        (df + 1)) /
        (df + 2) +
      1 / y;
  }
  return Math.sqrt(df * y);
};

/**
 * Two-sided quantile of Student's t: the t that leaves 1 − confidence outside ±t.
 *
 * Start: closed forms for 1 and 2 degrees of freedom, HILL70 above. Then Newton steps on the exact
 * distribution, P(|T| > t) = I_x(df/2, 1/2) with x = df/(df + t²).
 * In: share, degrees of freedom ≥ 1 (fractions allowed). Out: t > 0. NaN outside. Source: HILL70.
 * Example: 0.95 with 2 degrees of freedom → 4.3027.
 */
export const twoSidedStudent = (confidence: number, df: number): number => {
  const tails = 1 - confidence;
  if (!(tails > 0 && tails < 1 && df >= 1)) return NaN;
  if (df === 1) return 1 / Math.tan((tails * Math.PI) / 2);
  if (df === 2) return Math.sqrt(2 / (tails * (2 - tails)) - 2);
  let t = df < 3 ? Math.sqrt(2 / (tails * (2 - tails)) - 2) : hill(tails, df);
  const scale = logGamma((df + 1) / 2) - logGamma(df / 2) - 0.5 * Math.log(df * Math.PI);
  for (let i = 0; i < 12; i++) {
    const over = incompleteBeta(df / (df + t * t), df / 2, 0.5) - tails;
    const density = 2 * Math.exp(scale - ((df + 1) / 2) * Math.log1p((t * t) / df));
    // A step may not go below half the value: far out the density is too small to trust.
    const next = Math.max(t + over / density, t / 2);
    if (Math.abs(next - t) <= 1e-14 * t) return next;
    t = next;
  }
  return t;
};
