/** Body dry weight at the two ends of the published line, mg. CONC98 */
const SMALLEST = 0.07;
const LARGEST = 38000;
/** Oxygen at those ends, µmol per mg dry weight and hour. CONC98 */
const OXYGEN = [1.0, 0.033] as const;
/** Food at those ends, share of dry weight per day. CONC98 */
const FOOD = [1.52, 0.062] as const;
/** mg of O2 in a µmol; molar mass 31.998 g/mol. */
const MG_PER_MICROMOLE = 0.031998;
/** Nitrogen in protein, g per g: one part in 6.25. DEFINITION */
const NITROGEN_IN_PROTEIN = 0.16;

/**
 * Dry share of the body by wet weight in mg: 12 % at first food to 20 % at 5 g is assumed (nothing seen), 25 % in
 * fingerlings of 50 g is from memory (DRYMATTER). Straight between over the logarithm of weight.
 */
const DRY_SHARES = [
  [1, 0.12],
  [2.5, 0.12],
  [5, 0.125],
  [10, 0.13],
  [25, 0.135],
  [50, 0.14],
  [100, 0.15],
  [250, 0.16],
  [500, 0.17],
  [1000, 0.18],
  [2500, 0.19],
  [5000, 0.2],
  [50_000, 0.25],
] as const;
export function dryShareAt(wetMilligrams: number): number {
  const after = DRY_SHARES.findIndex(([weight]) => weight >= wetMilligrams);
  if (after === 0) return DRY_SHARES[0][1];
  const [right, left] = [DRY_SHARES[after], DRY_SHARES[after - 1]];
  if (!right || !left) return 0.25;
  return left[1] + (right[1] - left[1]) * (Math.log(wetMilligrams / left[0]) / Math.log(right[0] / left[0]));
}

/** Power law through the two published ends; NaN outside them. */
const along = ([first, last]: readonly [number, number], dryWeight: number): number => {
  if (!(dryWeight >= SMALLEST && dryWeight <= LARGEST)) return NaN;
  const slope = Math.log(last / first) / Math.log(LARGEST / SMALLEST);
  return first * (dryWeight / SMALLEST) ** slope;
};

/**
 * Oxygen one growing African catfish uses at 28 °C.
 *
 * The paper's abstract says oxygen use per dry weight falls along one power line from 1.0 µmol/(mg·h) at 0.07
 * mg to 0.033 at 38 g of dry weight; the line between the two printed ends is drawn here. In: dry weight of
 * one fish, mg. Out: mg O2 per hour and fish. Validity: 0.07 mg to 38 g dry weight, 28 °C, well fed; NaN
 * outside. Source: CONC98. Example: 0.07 mg → 0.00224 mg/h.
 */
export const oxygenPerFish = (dryWeight: number): number =>
  along(OXYGEN, dryWeight) * dryWeight * MG_PER_MICROMOLE;

/**
 * Food one growing African catfish eats at 28 °C, as dry food per dry body weight and day.
 *
 * Same paper: from 152 % at 0.07 mg to 6.2 % at 38 g dry weight. Out: share per day. Source: CONC98. Example:
 * 38 g → 0.062.
 */
export const foodIntake = (dryWeight: number): number => along(FOOD, dryWeight);

/**
 * Total ammonia nitrogen from feed: feed × protein share × coefficient.
 * In: g/d, share. Out: g N per day. Source: TIMM10 (0.092, from memory). Example: 1,000 g of 45 % protein →
 * 41.4 g.
 */
export const ammoniaFromFeed = (feed: number, protein: number, coefficient: number): number =>
  feed * protein * coefficient;

/**
 * The most nitrogen that can reach the water: all nitrogen fed that does not stay in the fish.
 * In: g/d, share, share kept. Out: g N per day. Source: BOYDFEED (20 to 30 % kept in ponds). Example: 1,000 g
 * of 45 %, 20 % kept → 57.6 g.
 */
export const nitrogenNotKept = (feed: number, protein: number, kept: number): number =>
  feed * protein * NITROGEN_IN_PROTEIN * (1 - kept);
