import type { Constants } from './constants';
import type { Solved, Water } from './carbonate';
import { alkalinityOf, solve } from './carbonate';
import { sharesAt } from './conditions';
import type { Material } from './materials';

/**
 * Closed: no CO2 lost or gained. Otherwise the CO2 pressure of the air the water ends in balance with, atm.
 */
export type Air = 'closed' | number;

/** The water after `moles` mmol/L of a material. */
export const withDose = (water: Water, material: Material, moles: number): Water => ({
  temperature: water.temperature,
  sodium: water.sodium + material.sodium * moles,
  calcium: water.calcium + material.calcium * moles,
  chloride: water.chloride + material.chloride * moles,
  // Hydroxide brought by limes needs no entry: alkalinity follows from the strong ions.
  sulfate: water.sulfate + material.sulfate * moles,
  carbon: water.carbon + material.carbon * moles,
});

const rest = (k: Constants, water: Water, air: Air): Solved =>
  solve(k, water, air === 'closed' ? { kind: 'closed' } : { kind: 'open', pressure: air });

export interface Outcome {
  readonly state: Solved;
  readonly dissolved: number;
  readonly water: Water;
}

/**
 * The water after a dose, everything dissolved, except a material that stops dissolving when the water is
 * saturated with calcite. In: mmol/L of material. Out: the solved state and how much of the dose went into
 * solution.
 */
export const afterDose = (
  k: Constants,
  water: Water,
  material: Material,
  moles: number,
  air: Air,
): Outcome => {
  const all = withDose(water, material, moles);
  const state = rest(k, all, air);
  if (!material.stopsAtCalcite || moles === 0 || state.saturationIndex <= 0)
    return { state, dissolved: moles, water: all };
  return atSaturation(k, water, material, moles, air);
};

const atSaturation = (k: Constants, water: Water, material: Material, most: number, air: Air): Outcome => {
  let low = 0;
  let high = most;
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (rest(k, withDose(water, material, middle), air).saturationIndex > 0) high = middle;
    else low = middle;
  }
  const dosed = withDose(water, material, low);
  return { state: rest(k, dosed, air), dissolved: low, water: dosed };
};

export type Unreachable =
  /** The water is already past the target without any of it (aired, if the answer is for aired water). */
  | { readonly reason: 'already past'; readonly ph: number }
  /** No amount of this material gets there. */
  | { readonly reason: 'never' }
  /** Carbon dioxide leaves again when the water is aired. */
  | { readonly reason: 'leaves' }
  /** The lime stops dissolving before. */
  | { readonly reason: 'saturated'; readonly ph: number };

/** mmol/L beyond which a dose is not a dose. */
const MOST = 500;

/**
 * Dose of a material that takes a water to a target pH.
 *
 * Closed: x = [DIC·ᾱ(t) + W(t) − Alk] / (e − c·ᾱ(t)); open: x = [CO2·(r1 + 2 r2)(t) + W(t) − Alk] / e,
 * settled for the ionic strength and the ions the dose itself brings. In: totals mmol/L, target pH. Out:
 * mmol/L, or why there is none. Sources: PLBU82 (constants); the explicit solution is algebra. Example: 0.1
 * meq/L, pH 6.0, 26 °C, soda ash to 7.0 → 0.140 mmol/L.
 */
export const doseTo = (
  k: Constants,
  water: Water,
  material: Material,
  target: number,
  air: Air,
): number | Unreachable => {
  const { equivalents: e, carbon: c } = material;
  const alkalinity = alkalinityOf(water);
  const start = rest(k, water, air).ph;
  if (Math.abs(start - target) < 1e-6) return 0;
  const isUp = target > start;
  if (e !== 0 && isUp !== e > 0) return { reason: 'already past', ph: start };
  if (e === 0 && isUp) return { reason: 'already past', ph: start };
  if (e === 0 && air !== 'closed') return { reason: 'leaves' };
  let moles = 0;
  for (let pass = 0; pass < 60; pass++) {
    const dosed = withDose(water, material, moles);
    const { conditions } = solve(
      k,
      dosed,
      air === 'closed' ? { kind: 'at', ph: target } : { kind: 'at', ph: target, pressure: air },
    );
    const { perCarbon, perCO2, w } = sharesAt(conditions, target);
    const wanted =
      air === 'closed'
        ? (water.carbon * perCarbon + w - alkalinity) / (e - c * perCarbon)
        : (conditions.kh * air * perCO2 + w - alkalinity) / e;
    if (!(wanted >= 0) || wanted > MOST) return { reason: 'never' };
    const isSettled = Math.abs(wanted - moles) <= 1e-8 * wanted;
    moles = wanted;
    if (isSettled) break;
  }
  return confirmed(k, water, material, moles, target, air);
};

const confirmed = (
  k: Constants,
  water: Water,
  material: Material,
  moles: number,
  target: number,
  air: Air,
): number | Unreachable => {
  const { state, dissolved } = afterDose(k, water, material, moles, air);
  if (dissolved < moles * (1 - 1e-6)) return { reason: 'saturated', ph: state.ph };
  return Math.abs(state.ph - target) < 1e-3 ? moles : { reason: 'never' };
};
