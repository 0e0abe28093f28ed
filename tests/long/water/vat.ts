import type { Draws as Chance } from '../../support/draws';
import type { Site, Water } from './chemistry';
import { carbonUnder, exchanged, phAired, phNow } from './chemistry';

/** What goes in: meq and mmol of carbon per gram of the pure product (standard atomic weights). */
export const PRODUCTS = {
  'soda ash': { meq: 2000 / 105.988, carbon: 1000 / 105.988 },
  'baking soda': { meq: 1000 / 84.007, carbon: 1000 / 84.007 },
  'hydrated lime': { meq: 2000 / 74.093, carbon: 0 },
} as const;
export type Product = keyof typeof PRODUCTS;

export interface Meter {
  /** Lasting error, slope and random error of a reading, the digit it shows. */
  readonly offset: number;
  readonly slope: number;
  readonly noise: number;
  readonly digit: number;
}

/** A vat as it really is; the advice never sees it. */
export interface Vat {
  readonly litres: number;
  readonly celsius: number;
  readonly sites: readonly Site[];
  balance: number;
  carbon: number;
  /** Product poured in that has not mixed yet, grams. */
  unmixed: number;
  readonly product: Product;
  readonly ppm: number;
  readonly meter: Meter;
  /** Exchange with the air per hour: standing, stirred after a dose, under strong air. */
  readonly rates: { readonly still: number; readonly stirred: number; readonly strong: number };
  /** Share of what is unmixed that mixes in a quarter of an hour. */
  readonly mixing: number;
  /** Highest pH the bulk has stood at. */
  highest: number;
}

const waterOf = (vat: Vat, unmixed = 0): Water => {
  const { meq, carbon } = PRODUCTS[vat.product];
  return {
    celsius: vat.celsius,
    balance: vat.balance - (unmixed * meq) / vat.litres,
    carbon: vat.carbon - (unmixed * carbon) / vat.litres,
    sites: vat.sites,
  };
};

/** pH of the vat, all of it mixed. */
export const truePH = (vat: Vat): number => phNow(waterOf(vat));
export const airedPH = (vat: Vat): number => phAired(waterOf(vat), vat.ppm);
const noted = (vat: Vat): void => {
  vat.highest = Math.max(vat.highest, truePH(vat));
};

export const pour = (vat: Vat, grams: number): void => {
  const { meq, carbon } = PRODUCTS[vat.product];
  vat.balance += (grams * meq) / vat.litres;
  vat.carbon += (grams * carbon) / vat.litres;
  vat.unmixed += grams;
  noted(vat);
};

export const pass = (vat: Vat, hours: number, how: keyof Vat['rates']): void => {
  vat.carbon = exchanged(waterOf(vat), vat.ppm, vat.rates[how], hours);
  vat.unmixed *= (1 - vat.mixing) ** (hours / 0.25);
  if (how !== 'stirred' && hours >= 0.5) vat.unmixed = 0;
  noted(vat);
};

/** What the meter shows where it is dipped: product that has not mixed yet is not there. */
export const read = (vat: Vat, chance: Chance): number => {
  const { offset, slope, noise, digit } = vat.meter;
  const there = phNow(waterOf(vat, vat.unmixed));
  const shown = 7 + (there - 7) * slope + offset + noise * chance.normal();
  return Number((Math.round(shown / digit) * digit).toFixed(2));
};

/** pH of the buffer in the bottle, which is not quite that on its label: age, temperature. */
const BUFFER = { label: 7, error: 0.02 } as const;
/** What the meter shows in a fresh buffer of pH 7: its own random error and its digit are in it too. */
export const readBuffer = ({ meter: { offset, slope, noise, digit } }: Vat, chance: Chance): number => {
  const there = BUFFER.label + BUFFER.error * chance.normal();
  const shown = 7 + (there - 7) * slope + offset + noise * chance.normal();
  return Number((Math.round(shown / digit) * digit).toFixed(2));
};

/** Raw water as drawn takes the place of a share of the vat. */
export const refill = (
  vat: Vat,
  raw: { readonly balance: number; readonly carbon: number },
  share: number,
): void => {
  vat.balance += share * (raw.balance - vat.balance);
  vat.carbon += share * (raw.carbon - vat.carbon);
  noted(vat);
};

export const METERS = {
  good: (chance: Chance): Meter => ({
    offset: 0.05 * chance.normal(),
    slope: 1 + 0.012 * chance.normal(),
    noise: 0.03,
    digit: 0.01,
  }),
  cheap: (chance: Chance): Meter => ({
    offset: 0.1 * chance.normal(),
    slope: 1 + 0.02 * chance.normal(),
    noise: 0.05,
    digit: 0.1,
  }),
} as const;

export interface Kind {
  readonly balance: (chance: Chance) => number;
  /** log10 of the CO2 pressure as drawn, atm. */
  readonly pressure: (chance: Chance) => number;
  readonly lowest: number;
  readonly highest: number;
  readonly sites?: (chance: Chance) => readonly Site[];
}

const tannin = (chance: Chance): readonly Site[] => {
  const total = chance.between(0.03, 0.2);
  const parts = Array.from(
    { length: 2 + Math.floor(3 * chance.uniform()) },
    () => [chance.between(0.3, 1), chance.between(3, 7.2)] as const,
  );
  const sum = parts.reduce((all, [part]) => all + part, 0);
  return parts.map(([part, pK]) => [(total * part) / sum, pK] as const);
};

export const KINDS = {
  /** Rain, forest streams, soft wells: alkalinity −0.1 to 1 meq/L, pH 4.3 to 6.4. */
  ordinary: {
    balance: (c) => (c.uniform() < 0.4 ? c.between(-0.1, 0.03) : 10 ** c.between(-2, 0)),
    pressure: (c) => c.between(-3.4, -1.2),
    lowest: 4.3,
    highest: 6.4,
  },
  'hard well': {
    balance: (c) => c.between(1, 4),
    pressure: (c) => c.between(-1.8, -0.9),
    lowest: 5.8,
    highest: 7,
  },
  tannin: {
    balance: (c) => (c.uniform() < 0.4 ? c.between(-0.08, 0.05) : 10 ** c.between(-2, -0.5)),
    pressure: (c) => c.between(-3.4, -1.5),
    lowest: 4,
    highest: 6.4,
    sites: tannin,
  },
} as const satisfies Readonly<Record<string, Kind>>;
export type KindName = keyof typeof KINDS;

export interface Draw {
  readonly kind: KindName;
  readonly meter?: (chance: Chance) => Meter;
  readonly product?: Product;
  /** Share mixed in a quarter of an hour. */
  readonly mixing?: (chance: Chance) => number;
}

/** A vat full of a water of a kind. */
export const drawVat = (
  chance: Chance,
  { kind, meter = METERS.good, product = 'soda ash', mixing }: Draw,
): Vat => {
  const of: Kind = KINDS[kind];
  for (;;) {
    const celsius = chance.between(20, 32);
    const water = { celsius, balance: of.balance(chance), sites: of.sites?.(chance) ?? [] };
    const ppm = chance.uniform() < 0.6 ? 420 : chance.between(420, 900);
    const carbon = carbonUnder(water, 10 ** of.pressure(chance));
    const vat: Vat = {
      ...water,
      litres: 1000,
      carbon,
      unmixed: 0,
      product,
      ppm,
      meter: meter(chance),
      rates: {
        still: chance.between(0.03, 0.1),
        stirred: chance.between(0.3, 1.2),
        strong: chance.between(1.2, 3),
      },
      mixing: mixing?.(chance) ?? chance.between(0.93, 1),
      highest: 0,
    };
    vat.highest = truePH(vat);
    if (vat.highest > of.lowest && vat.highest < of.highest) return vat;
  }
};
