import { minutesFromHours } from '../../../units/convert';
/** Least oxygen for fry of this fish: above 3, better 4 mg/L (JANSSEN85). */
export const DANGER_MG_PER_L = 3; // mg/L, JANSSEN85
export const ACT_MG_PER_L = 4; // mg/L, JANSSEN85

/**
 * Minutes until still water falls to a level: 60 × litres × (now − floor) ÷ mg an hour. What comes in through the
 * surface is left out, so the true time is longer, or shorter where dirt rots. Example: 1,000 L from 7 to 3 mg/L at
 * 2,000 mg/h → 120 min.
 */
export const minutesWithoutAir = (litres: number, now: number, floor: number, use: number): number =>
  use > 0 ? minutesFromHours((litres * Math.max(0, now - floor)) / use) : Infinity;
