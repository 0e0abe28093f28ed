import type { Near } from '../base/near';
import type { MaterialName } from '../families/water/carbonate/materials';
import { MATERIALS } from '../families/water/carbonate/materials';

/** What a person can really measure out of a dose, and how much of the product is then in it. */
export interface Measures {
  /** Level spoons; grams on a scale; millilitres of a stock solution, where the dose is too small for either. */
  readonly by: 'spoons' | 'scale' | 'stock';
  /** Spoons in quarters, or 1. */
  readonly count: number;
  /** Grams of one level spoon; of the product in a litre of stock. */
  readonly each: number;
  /** What really goes in: what is logged. */
  readonly grams: number;
  /** Of the stock, to be given. */
  readonly millilitres: number;
  /** Litres the stock is made up to, and the grams that go into them. */
  readonly stock: { readonly litres: number; readonly grams: number } | undefined;
}

const QUARTERS = 4;
/** Less than this share of the dose in the spoons: a stock solution says it better. */
const FAIR_SHARE = 0.75;
/** Grams below which a kitchen scale says little (judgement). */
export const LEAST_ON_SCALE = 2;
/** Grams of product in a litre of stock where no spoon is known. */
export const STOCK_STRENGTH = 5;

/** The two leading digits, rounded down: a little less can be made good at the next step. */
const floored = (x: number): number => {
  const unit = 10 ** (Math.floor(Math.log10(x)) - 1);
  return Number((Math.floor(x / unit + 1e-9) * unit).toPrecision(3));
};

/** Millilitres of a stock solution that hold so many grams. */
export const stockMillilitres = (grams: number, strength = STOCK_STRENGTH): number =>
  (grams / strength) * 1000;

const byStock = (grams: number, spoon: number, material: MaterialName): Measures => {
  // Lime hardly dissolves: ten litres then, and stirred while it is measured out.
  const litres = MATERIALS[material].soluble < 2 * spoon ? 10 : 1;
  const each = spoon / litres;
  const millilitres = floored(stockMillilitres(grams, each));
  return {
    by: 'stock',
    count: 1,
    each,
    grams: (millilitres / 1000) * each,
    millilitres,
    stock: { litres, grams: spoon },
  };
};

/** The largest number of quarters of one spoon that stays below the dose, of the spoon that comes nearest. */
const bySpoons = (grams: number, spoons: readonly number[]): Measures | undefined => {
  const tries = spoons
    .filter((each) => each > 0)
    .map((each) => ({ each, count: Math.floor((grams / each) * QUARTERS + 1e-9) / QUARTERS }))
    .filter(({ count }) => count > 0);
  const [best] = [...tries].sort((a, b) => b.each * b.count - a.each * a.count || a.count - b.count);
  return (
    best && {
      by: 'spoons',
      ...best,
      grams: best.each * best.count,
      millilitres: 0,
      stock: undefined,
    }
  );
};

/**
 * A dose as it can be measured out: never more than the dose. With spoons, in quarters of the one that comes
 * nearest; without, in grams on a scale; what is too small for either, as millilitres of a stock solution.
 */
export function measuresFor(
  grams: number,
  spoons: readonly number[],
  material: MaterialName = 'soda ash',
): Measures {
  const spooned = bySpoons(grams, spoons);
  if (spooned && spooned.grams >= FAIR_SHARE * grams) return spooned;
  const smallest = Math.min(...spoons.filter((each) => each > 0), Infinity);
  if (Number.isFinite(smallest)) return byStock(grams, smallest, material);
  if (grams < LEAST_ON_SCALE) return byStock(grams, STOCK_STRENGTH, material);
  const weighed = floored(grams);
  return { by: 'scale', count: 1, each: weighed, grams: weighed, millilitres: 0, stock: undefined };
}

export const NEAR: readonly Near[] = [
  {
    number: 'share of a dose that must be in the spoons, or it is given as a stock',
    value: FAIR_SHARE,
    // A quarter of the spoon holds 2.245 g of the 3 g, or 2.255 g.
    below: () => measuresFor(3, [8.98]).by,
    above: () => measuresFor(3, [9.02]).by,
    answers: ['stock', 'spoons'],
  },
  {
    number: 'grams a kitchen scale still shows',
    value: LEAST_ON_SCALE,
    below: () => measuresFor(1.99, []).by,
    above: () => measuresFor(2.01, []).by,
    answers: ['stock', 'scale'],
  },
];
