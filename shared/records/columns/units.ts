import {
  celsiusFromFahrenheit,
  gramsFromKilograms,
  gramsFromMilligrams,
  gramsFromOunces,
  gramsFromPounds,
  hoursFromDays,
  hoursFromMinutes,
  kilogramsFromGrams,
  kilogramsFromPounds,
  litresFromCubicMetres,
  litresFromGallons,
  litresFromMillilitres,
  meqFromDkh,
  meqFromMgCaCO3,
  sharesFromPercent,
} from '../../units/convert';
import type { FieldName } from '../fields';

/** How people write units in headers, and what turns the number into the unit of the field. */
export type Convert = (value: number) => number;
const same: Convert = (value) => value;

const WEIGHT_G: Readonly<Record<string, Convert>> = {
  g: same,
  kg: gramsFromKilograms,
  mg: gramsFromMilligrams,
  lb: gramsFromPounds,
  oz: gramsFromOunces,
};
const WEIGHT_KG: Readonly<Record<string, Convert>> = {
  kg: same,
  g: kilogramsFromGrams,
  lb: kilogramsFromPounds,
};
const VOLUME: Readonly<Record<string, Convert>> = {
  L: same,
  m3: litresFromCubicMetres,
  mL: litresFromMillilitres,
  gal: litresFromGallons,
};
const WARMTH: Readonly<Record<string, Convert>> = { '°C': same, '°F': celsiusFromFahrenheit };
const SHARES: Readonly<Record<string, Convert>> = { share: same, '%': sharesFromPercent };
const SPAN: Readonly<Record<string, Convert>> = { h: same, min: hoursFromMinutes, d: hoursFromDays };

/** Units a field may be kept in, the field's own first. Fields that are not here have no unit to mistake. */
export const UNITS: Readonly<Partial<Record<FieldName, Readonly<Record<string, Convert>>>>> = {
  femaleWeight: WEIGHT_KG,
  eggWeight: WEIGHT_G,
  startWeight: WEIGHT_G,
  endWeight: WEIGHT_G,
  weight: WEIGHT_G,
  feed: WEIGHT_G,
  materialDose: WEIGHT_G,
  temperature: WARMTH,
  incubationTemperature: WARMTH,
  volume: VOLUME,
  latency: SPAN,
  incubationHours: SPAN,
  eggYield: SHARES,
  fertilisedShare: SHARES,
  hatchShare: SHARES,
  survival: SHARES,
  ration: SHARES,
  alkalinity: { 'meq/L': same, 'mg/L CaCO3': meqFromMgCaCO3, '°d': meqFromDkh },
};

/** Spellings → the unit meant. Compared in lower case without blanks and dots. */
const SPELLINGS: Readonly<Record<string, string>> = {
  g: 'g',
  gr: 'g',
  grm: 'g',
  grs: 'g',
  gram: 'g',
  grams: 'g',
  gm: 'g',
  gms: 'g',
  gramme: 'g',
  kg: 'kg',
  kgs: 'kg',
  kilo: 'kg',
  kilos: 'kg',
  kilogram: 'kg',
  kilograms: 'kg',
  mg: 'mg',
  lb: 'lb',
  lbs: 'lb',
  pound: 'lb',
  pounds: 'lb',
  oz: 'oz',
  ounces: 'oz',
  '°c': '°C',
  c: '°C',
  degc: '°C',
  celsius: '°C',
  ºc: '°C',
  oc: '°C',
  '°f': '°F',
  f: '°F',
  degf: '°F',
  fahrenheit: '°F',
  ºf: '°F',
  of: '°F',
  l: 'L',
  lt: 'L',
  ltr: 'L',
  ltrs: 'L',
  lit: 'L',
  litre: 'L',
  litres: 'L',
  liter: 'L',
  liters: 'L',
  m3: 'm3',
  'm³': 'm3',
  cum: 'm3',
  ml: 'mL',
  mls: 'mL',
  cc: 'mL',
  gal: 'gal',
  gallons: 'gal',
  '%': '%',
  pc: '%',
  percent: '%',
  pct: '%',
  h: 'h',
  hr: 'h',
  hrs: 'h',
  hour: 'h',
  hours: 'h',
  min: 'min',
  mins: 'min',
  minutes: 'min',
  d: 'd',
  day: 'd',
  days: 'd',
  'meq/l': 'meq/L',
  'mg/l': 'mg/L',
  ppm: 'mg/L',
  'mg/lcaco3': 'mg/L CaCO3',
  dkh: '°d',
  '°d': '°d',
  '°dh': '°d',
  'ml/kg': 'mL/kg',
  'mls/kg': 'mL/kg',
  '/g': 'per g',
  perg: 'per g',
  'no/g': 'per g',
};

export const unitOfWord = (word: string): string | undefined =>
  SPELLINGS[word.toLowerCase().replace(/[\s.]/g, '')];

/** The unit as the field may be kept in it: mg/L beside an alkalinity means calcium carbonate. */
export const unitForField = (field: FieldName, unit: string | undefined): string | undefined => {
  const known = UNITS[field];
  if (!known || unit === undefined) return undefined;
  if (field === 'alkalinity' && unit === 'mg/L') return 'mg/L CaCO3';
  return unit in known ? unit : undefined;
};

export const ownUnit = (field: FieldName): string | undefined => {
  const known = UNITS[field];
  return known && Object.keys(known)[0];
};
export const converter = (field: FieldName, unit: string | undefined): Convert =>
  unit === undefined ? same : (UNITS[field]?.[unit] ?? same);
