import { constantsAt } from '../../../../shared/families/water/carbonate/constants';
import { solve } from '../../../../shared/families/water/carbonate/carbonate';
import { compose } from '../../../../shared/families/water/carbonate/readings';

/** A repeatable stream of chance (mulberry32). */
export const chanceFrom = (
  seed: number,
): { uniform: () => number; normal: () => number; between: (a: number, b: number) => number } => {
  let state = seed >>> 0;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
  return { uniform, normal, between: (a, b) => a + (b - a) * uniform() };
};
export type Chance = ReturnType<typeof chanceFrom>;

/**
 * A vat as it really is, which the fit never sees: its ions, its organic acids, its meter and the hand that
 * doses.
 */
export interface Vat {
  readonly temperature: number;
  balance: number;
  carbon: number;
  readonly calcium: number;
  readonly sites: readonly (readonly [amount: number, pK: number])[];
  readonly meter: {
    readonly offset: number;
    readonly slope: number;
    readonly noise: number;
    readonly digit: number;
  };
  readonly kind: 'plain' | 'organic';
}

const opened = (vat: Vat, ph: number): number =>
  vat.sites.reduce((sum, [amount, pK]) => sum + amount / (1 + 10 ** (pK - ph)), 0);

/** True pH: the full solver with ion pairs, organic sites of any strength balanced around it by halving. */
export const truePH = (vat: Vat): { ph: number; carbonDioxide: number } => {
  const k = constantsAt(vat.temperature);
  const back = { temperature: vat.temperature, calcium: vat.calcium, ionicStrength: 0 };
  const at = (organic: number): ReturnType<typeof solve> =>
    solve(k, compose(back, vat.balance - organic, vat.carbon), { kind: 'closed' });
  if (vat.sites.length === 0) return at(0);
  let low = 2;
  let high = 13;
  for (let i = 0; i < 22; i++) {
    const middle = (low + high) / 2;
    if (at(opened(vat, middle)).ph > middle) low = middle;
    else high = middle;
  }
  return at(opened(vat, (low + high) / 2));
};

export const airCO2 = (temperature: number): number => 1000 * constantsAt(temperature).kh * 420e-6;

/** Gas leaves: a share of the CO2 above air balance. */
export const breathe = (vat: Vat, share: number): void => {
  const { carbonDioxide } = truePH(vat);
  vat.carbon -= Math.max(0, carbonDioxide - airCO2(vat.temperature)) * share;
};

export const read = (vat: Vat, chance: Chance): number => {
  const { offset, slope, noise, digit } = vat.meter;
  const shown = 7 + (truePH(vat).ph - 7) * slope + offset + noise * chance.normal();
  return Math.round(shown / digit) * digit;
};

const sitesFor = (chance: Chance): (readonly [number, number])[] => {
  const total = chance.between(0.03, 0.2);
  // Two to four kinds of site of unequal size and any strength: not the three equal ones the fit knows.
  const n = 2 + Math.floor(3 * chance.uniform());
  const parts = Array.from({ length: n }, () => [chance.between(0.3, 1), chance.between(3, 7.2)] as const);
  const sum = parts.reduce((s, [p]) => s + p, 0);
  return parts.map(([p, pK]) => [(total * p) / sum, pK] as const);
};

/**
 * A source water below pH 6.4: rain and forest streams, soft wells, hard wells full of CO2; one in five holds
 * organic acids.
 */
export const drawVat = (chance: Chance): Vat => {
  for (;;) {
    const kindOfWater = chance.uniform();
    const balance =
      kindOfWater < 0.35
        ? chance.between(-0.08, 0.03)
        : kindOfWater < 0.75
          ? 10 ** chance.between(-2, -0.3)
          : chance.between(0.5, 3);
    const temperature = chance.between(20, 32);
    const isOrganic = chance.uniform() < 0.2;
    const vat: Vat = {
      temperature,
      balance,
      carbon: 0,
      calcium: Math.max(0, balance) * chance.between(0, 0.45),
      sites: isOrganic ? sitesFor(chance) : [],
      meter: { offset: 0.05 * chance.normal(), slope: 1 + 0.012 * chance.normal(), noise: 0.03, digit: 0.01 },
      kind: isOrganic ? 'organic' : 'plain',
    };
    // The carbon that gives the drawn CO2 pressure, by halving.
    const wanted = 1000 * constantsAt(temperature).kh * 10 ** chance.between(-3.4, -1.2);
    let low = 0;
    let high = 40;
    for (let i = 0; i < 40; i++) {
      vat.carbon = (low + high) / 2;
      if (truePH(vat).carbonDioxide > wanted) high = vat.carbon;
      else low = vat.carbon;
    }
    const { ph } = truePH(vat);
    if (ph > 3.9 && ph < 6.4) return vat;
  }
};
