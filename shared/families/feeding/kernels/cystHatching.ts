/** Cysts per litre in small and in larger vessels, g/L, and the volume where the rule changes, L. NEW02 */
export const SMALL_DENSITY = 5;
export const LARGE_DENSITY = 2;
export const SWITCH_VOLUME = 20;

export interface HatchingWater {
  readonly volume: number;
  readonly density: number;
  readonly vessels: number;
}

/**
 * Water to hatch Artemia cysts in: 5 g/L below 20 L, 2 g/L from 20 L up.
 *
 * Without a vessel size one vessel is meant: up to 100 g fits below 20 L, more needs the lower density at
 * once (100 g: 50 L). With a vessel size the density follows that size and the number of vessels is rounded
 * up. In: g, L. Out: L, g/L, number. Source: NEW02. Example: 27.1 g → 5.42 L.
 */
export const hatchingWater = (cysts: number, vessel?: number): HatchingWater => {
  if (vessel !== undefined) {
    const density = vessel < SWITCH_VOLUME ? SMALL_DENSITY : LARGE_DENSITY;
    return { volume: cysts / density, density, vessels: Math.ceil(cysts / density / vessel - 1e-9) };
  }
  const density = cysts / SMALL_DENSITY < SWITCH_VOLUME ? SMALL_DENSITY : LARGE_DENSITY;
  return { volume: cysts / density, density, vessels: cysts > 0 ? 1 : 0 };
};

/**
 * Time by which a share of the final hatch was reached: straight line between readings of a rising curve.
 * In: hours rising, cumulative hatch, wished share of the last reading. Out: h; NaN when the first reading is
 * already past it. Source: ASEM13 (T10, T90, synchrony T90 − T10). Example: 0 % at 12 h, 100 % at 22 h: T10
 * is 13 h.
 */
export const hatchTime = (hours: readonly number[], hatched: readonly number[], wished: number): number => {
  const target = (hatched.at(-1) ?? NaN) * wished;
  const after = hatched.findIndex((h) => h >= target);
  const [h1, h0] = [hatched[after], hatched[after - 1]];
  const [t1, t0] = [hours[after], hours[after - 1]];
  if (h1 === undefined || t1 === undefined) return NaN;
  if (h1 === target) return t1;
  return h0 === undefined || t0 === undefined ? NaN : t0 + ((t1 - t0) * (target - h0)) / (h1 - h0);
};
