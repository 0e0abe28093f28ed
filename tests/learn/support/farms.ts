/**
 * Invented farms for the check of the estimator, seeded. Every farm has true values of its own, drawn from
 * one of these worlds: assumed – as the estimator believes farms to be: checks the arithmetic, coverage must
 * be 95 % other   – farm means spread by another law (Student's t with 4 degrees of freedom, same quartiles),
 * spreads of runs even on a logarithm, shares vary on logits instead of as a beta distribution: checks that
 * the belief need not be right far     – every farm lies two farm-spreads from the literature: what happens
 * to a farm unlike the published ones
 */
export type World = 'assumed' | 'other' | 'far';

/** Splits a seed into a stream of numbers in (0, 1): a 32-bit mixer with a Weyl step, own arrangement. */
export class Chance {
  private state: number;
  private spare: number | undefined;
  constructor(seed: number) {
    this.state = seed >>> 0;
  }

  /** Between 0 and 1, neither included. */
  next(): number {
    this.state = (this.state + 0x9e3779b9) >>> 0;
    let x = this.state;
    x = Math.imul(x ^ (x >>> 16), 0x85ebca6b);
    x = Math.imul(x ^ (x >>> 13), 0xc2b2ae35);
    return (((x ^ (x >>> 16)) >>> 0) + 0.5) / 4294967296;
  }

  /** Standard normal, polar method. */
  bell(): number {
    if (this.spare !== undefined) {
      const kept = this.spare;
      this.spare = undefined;
      return kept;
    }
    for (;;) {
      const u = 2 * this.next() - 1;
      const v = 2 * this.next() - 1;
      const s = u * u + v * v;
      if (s === 0 || s >= 1) continue;
      const f = Math.sqrt((-2 * Math.log(s)) / s);
      this.spare = v * f;
      return u * f;
    }
  }

  /** Gamma with scale 1, squeeze-free rejection on a cubed normal; shapes below 1 by the power trick. */
  gamma(shape: number): number {
    if (shape < 1) return this.gamma(shape + 1) * this.next() ** (1 / shape);
    const d = shape - 1 / 3;
    const c = 1 / Math.sqrt(9 * d);
    for (;;) {
      const z = this.bell();
      const v = (1 + c * z) ** 3;
      if (v > 0 && Math.log(this.next()) < 0.5 * z * z + d - d * v + d * Math.log(v)) return d * v;
    }
  }

  beta(a: number, b: number): number {
    const x = this.gamma(a);
    const y = this.gamma(b);
    return x / (x + y);
  }

  binomial(n: number, p: number): number {
    let k = 0;
    for (let i = 0; i < n; i++) if (this.next() < p) k++;
    return k;
  }
}

/**
 * Quartile of the belief (nine bells in ten of width 1, one of width 3) ÷ quartile of Student's t with 4
 * degrees of freedom: 0.730/0.7407.
 */
const SAME_QUARTILES = 0.9856;
/** Farm mean on its scale. */
export function farmMean(chance: Chance, world: World, middle: number, sd: number): number {
  if (world === 'assumed') return middle + chance.bell() * (chance.next() < 0.1 ? 3 : 1) * sd;
  if (world === 'far') return middle + (chance.next() < 0.5 ? -2 : 2) * sd;
  return middle + SAME_QUARTILES * sd * (chance.bell() / Math.sqrt(chance.gamma(2) / 2));
}

/**
 * Spread between runs: even on the logarithm with the standard deviation the estimator believes, or as it
 * believes.
 */
export const spread = (chance: Chance, world: World, median: number, factor: number): number =>
  median * factor ** (world === 'assumed' ? chance.bell() : Math.sqrt(3) * (2 * chance.next() - 1));
