/** The only conversion factors, as two-way pairs. */
export const kelvinFromCelsius = (t: number): number => t + 273.15;
export const celsiusFromKelvin = (t: number): number => t - 273.15;
export const celsiusFromFahrenheit = (t: number): number => ((t - 32) * 5) / 9;
export const fahrenheitFromCelsius = (t: number): number => (t * 9) / 5 + 32;

/** 1 meq/L of alkalinity written as calcium carbonate: half the molar mass of CaCO3, 100.087 g/mol. */
const MG_CACO3_PER_MEQ = 50.0435;
/** One German degree is 10 mg/L of CaO, 56.077 g/mol with two equivalents. */
const MEQ_PER_DKH = 20 / 56.077;

export const mgCaCO3FromMeq = (meq: number): number => meq * MG_CACO3_PER_MEQ;
export const meqFromMgCaCO3 = (mg: number): number => mg / MG_CACO3_PER_MEQ;
export const meqFromDkh = (dkh: number): number => dkh * MEQ_PER_DKH;
export const dkhFromMeq = (meq: number): number => meq / MEQ_PER_DKH;

export const HOURS_PER_DAY = 24;
export const hoursFromDays = (d: number): number => d * HOURS_PER_DAY;
export const daysFromHours = (h: number): number => h / HOURS_PER_DAY;
export const gramsFromKilograms = (kg: number): number => kg * 1000;
export const kilogramsFromGrams = (g: number): number => g / 1000;
export const gramsFromMilligrams = (mg: number): number => mg / 1000;
export const milligramsFromGrams = (g: number): number => g * 1000;
export const litresFromMillilitres = (ml: number): number => ml / 1000;
export const millilitresFromLitres = (l: number): number => l * 1000;

/** The avoirdupois pound, 0.45359237 kg exactly; an ounce is a sixteenth of it. */
const GRAMS_PER_POUND = 453.59237;
export const gramsFromPounds = (lb: number): number => lb * GRAMS_PER_POUND;
export const poundsFromGrams = (g: number): number => g / GRAMS_PER_POUND;
export const kilogramsFromPounds = (lb: number): number => (lb * GRAMS_PER_POUND) / 1000;
export const poundsFromKilograms = (kg: number): number => (kg * 1000) / GRAMS_PER_POUND;
export const gramsFromOunces = (oz: number): number => (oz * GRAMS_PER_POUND) / 16;
export const ouncesFromGrams = (g: number): number => (g * 16) / GRAMS_PER_POUND;
/** The gallon of the United States, 3.785411784 L exactly. */
const LITRES_PER_GALLON = 3.785411784;
export const litresFromGallons = (gal: number): number => gal * LITRES_PER_GALLON;
export const gallonsFromLitres = (l: number): number => l / LITRES_PER_GALLON;
export const litresFromCubicMetres = (m3: number): number => m3 * 1000;
export const cubicMetresFromLitres = (l: number): number => l / 1000;
export const sharesFromPercent = (percent: number): number => percent / 100;
export const percentFromShare = (part: number): number => part * 100;
export const hoursFromMinutes = (min: number): number => min / 60;
export const minutesFromHours = (h: number): number => h * 60;

/**
 * Units of alkalinity and hardness, each in meq/L: CaCO3 100.087, CaO 56.077, HCO3 61.017, Ca 40.078 g/mol;
 * °f is 10 mg/L CaCO3.
 */
const MEQ_PER_UNIT = {
  'meq/L': 1,
  'mmol/L Ca': 2,
  'mg/L CaCO3': 1 / MG_CACO3_PER_MEQ,
  '°d': MEQ_PER_DKH,
  '°f': 10 / MG_CACO3_PER_MEQ,
  'mg/L HCO3': 1 / 61.017,
  'mg/L Ca': 2 / 40.078,
  'mg/L CaO': 2 / 56.077,
} as const;
export type HardnessUnit = keyof typeof MEQ_PER_UNIT;
export const HARDNESS_UNITS = [
  'meq/L',
  'mg/L CaCO3',
  '°d',
  '°f',
  'mg/L HCO3',
  'mmol/L Ca',
  'mg/L Ca',
  'mg/L CaO',
] as const satisfies readonly HardnessUnit[];
export const hardnessFrom = (amount: number, unit: HardnessUnit): number => amount * MEQ_PER_UNIT[unit];
export const hardnessTo = (meq: number, unit: HardnessUnit): number => meq / MEQ_PER_UNIT[unit];
