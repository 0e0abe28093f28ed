/**
 * Carbonate water for the simulated vats, derived apart from the product: other published fits of the
 * constants, another activity law, and a charge balance solved by halving in pH.
 *
 * Constants (from memory, as textbooks of aquatic chemistry print them): K1 Harned & Davis 1943, K2 Harned &
 * Scholes 1941, Kw Harned & Hamer 1933, Henry's constant of CO2 Harned & Davis 1943; activity by Güntelberg.
 * Held against PHREEQC rows in chemistry.test.ts.
 */
export interface Constants {
  readonly k1: number;
  readonly k2: number;
  readonly kw: number;
  readonly kh: number;
}

export const constantsAt = (celsius: number): Constants => {
  const t = celsius + 273.15;
  return {
    k1: 10 ** -(3404.71 / t + 0.032786 * t - 14.8435),
    k2: 10 ** -(2902.39 / t + 0.02379 * t - 6.498),
    kw: 10 ** -(4787.3 / t + 7.1321 * Math.log10(t) + 0.010365 * t - 22.801),
    kh: 10 ** (2385.73 / t + 0.0152642 * t - 14.0184),
  };
};

/** Acid sites beside carbonate: amount in meq/L and pK. */
export type Site = readonly [amount: number, pK: number];

/** A water: strong-ion balance meq/L, inorganic carbon mmol/L, its acid sites. */
export interface Water {
  readonly celsius: number;
  readonly balance: number;
  readonly carbon: number;
  readonly sites: readonly Site[];
}

const MILLI = 1000;

/** What is left over of positive charge at a pH, meq/L: rises with falling pH. */
const charge = (
  water: Water,
  ph: number,
  k: Constants,
  carbonDioxide: number | undefined,
  strength: number,
): number => {
  const root = Math.sqrt(strength);
  const log = -0.5 * (root / (1 + root));
  const one = 10 ** log;
  const two = 10 ** (4 * log);
  const activity = 10 ** -ph;
  const first = k.k1 / activity / one;
  const second = (k.k1 * k.k2) / (activity * activity) / two;
  const gas = carbonDioxide ?? water.carbon / (1 + first + second);
  const organic = water.sites.reduce((sum, [amount, pK]) => sum + amount / (1 + 10 ** (pK - ph)), 0);
  const hydrogen = (MILLI * activity) / one;
  const hydroxide = (MILLI * k.kw) / activity / one;
  return water.balance + hydrogen - hydroxide - gas * (first + 2 * second) - organic;
};

const solved = (water: Water, carbonDioxide: number | undefined): number => {
  const k = constantsAt(water.celsius);
  const strength = Math.max(1e-4, (1.2 * Math.abs(water.balance)) / MILLI);
  let low = 2;
  let high = 12;
  for (let i = 0; i < 44; i++) {
    const middle = (low + high) / 2;
    if (charge(water, middle, k, carbonDioxide, strength) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/** CO2 in balance with the air, mmol/L. */
export const airGas = (celsius: number, ppm: number): number => MILLI * constantsAt(celsius).kh * ppm * 1e-6;

/** pH with the carbon it holds now. */
export const phNow = (water: Water): number => solved(water, undefined);
/** pH once in balance with the air. */
export const phAired = (water: Water, ppm: number): number => solved(water, airGas(water.celsius, ppm));

export const gasAt = (water: Water, ph: number): number => {
  const k = constantsAt(water.celsius);
  const root = Math.sqrt(Math.max(1e-4, (1.2 * Math.abs(water.balance)) / MILLI));
  const log = -0.5 * (root / (1 + root));
  const a = 10 ** -ph;
  return water.carbon / (1 + k.k1 / a / 10 ** log + (k.k1 * k.k2) / (a * a) / 10 ** (4 * log));
};

/** Carbon of a water that stands under a pressure of CO2, atm. */
export const carbonUnder = (water: Omit<Water, 'carbon'>, atmospheres: number): number => {
  const gas = MILLI * constantsAt(water.celsius).kh * atmospheres;
  const held = { ...water, carbon: 0 };
  const ph = solved(held, gas);
  return gas / gasAt({ ...held, carbon: 1 }, ph);
};

/** The carbon after some hours of exchange with the air at a rate per hour: small steps forward. */
export const exchanged = (water: Water, ppm: number, rate: number, hours: number): number => {
  const air = airGas(water.celsius, ppm);
  const steps = Math.max(4, Math.min(400, Math.ceil(rate * hours * 12)));
  let { carbon } = water;
  for (let i = 0; i < steps; i++) {
    const here = { ...water, carbon };
    carbon -= ((rate * hours) / steps) * (gasAt(here, phNow(here)) - air);
    carbon = Math.max(1e-6, carbon);
  }
  return carbon;
};
