import { logGammaFast } from '../../../maths/logGammaFast';

/**
 * Σ ln Γ(count + a) over many counts, as a function of a > 0. It is asked thousands of times for the same counts, so it
 * is kept as Chebyshev polynomials, one for each doubling of a (interpolation at Chebyshev roots and Clenshaw's
 * recurrence, from memory; held to the plain sum). Seen from the middle of a doubling [p, 2p] the function breaks
 * nowhere nearer than at 0, three half-lengths off: the error falls by 3 + √8 with every term, and twenty terms leave
 * less than the last digit.
 */
const TERMS = 20;
/** Below this every value is worked out for itself: the function bends there without end. */
const LEAST = 2 ** -12;
/** Fewer counts than this are added up as fast as a polynomial. */
const FEW = 4;

const addUp = (counts: Float64Array, a: number): number => {
  // A local name: reached through its module it is several times slower where modules are wrapped.
  const lg = logGammaFast;
  let sum = 0;
  for (let i = 0; i < counts.length; i++) sum += lg((counts[i] ?? NaN) + a);
  return sum;
};

const ANGLES = Array.from({ length: TERMS }, (_, j) => (Math.PI * (j + 0.5)) / TERMS);
const COSINES = Array.from({ length: TERMS }, (_, k) => ANGLES.map((angle) => Math.cos(k * angle)));

/** Coefficients of the polynomial through the roots of the Chebyshev polynomial of that order, from −1 to 1. */
function fitted(valueAt: (x: number) => number): Float64Array {
  const values = ANGLES.map((angle) => valueAt(Math.cos(angle)));
  return Float64Array.from(COSINES, (cosines, k) => {
    let sum = 0;
    for (let j = 0; j < TERMS; j++) sum += (values[j] ?? 0) * (cosines[j] ?? 0);
    return ((k === 0 ? 1 : 2) * sum) / TERMS;
  });
}
function clenshaw(coefficients: Float64Array, x: number): number {
  let after = 0;
  let next = 0;
  for (let k = TERMS - 1; k > 0; k--) {
    const now = 2 * x * next - after + (coefficients[k] ?? 0);
    after = next;
    next = now;
  }
  return x * next - after + (coefficients[0] ?? 0);
}

/** The sum as a function of a; NaN where a is not above 0. */
export function gammaSums(counts: readonly number[]): (a: number) => number {
  const list = Float64Array.from(counts);
  if (list.length < FEW) return (a) => addUp(list, a);
  const doublings = new Map<number, Float64Array>();
  return (a) => {
    if (!(a > LEAST) || a === Infinity) return addUp(list, a);
    const power = Math.floor(Math.log2(a));
    const from = 2 ** power;
    let known = doublings.get(power);
    if (!known) doublings.set(power, (known = fitted((x) => addUp(list, from * (1.5 + 0.5 * x)))));
    return clenshaw(known, (2 * a) / from - 3);
  };
}
