// Long: one table of units as people write them.
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
} from '../../../units/convert';
import type { FieldName } from '../../fields';
import type { UnitClass } from '../../meaning/roles';
import { fold } from '../../words/fold';

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
const VOLUME_ML: Readonly<Record<string, Convert>> = { mL: same, L: (x) => 1000 * x };
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
  maleWeight: WEIGHT_KG,
  femaleAfter: WEIGHT_KG,
  biomass: WEIGHT_KG,
  packWeight: WEIGHT_KG,
  sampleWeight: WEIGHT_G,
  feedTotal: WEIGHT_G,
  treatAmount: WEIGHT_G,
  temperatureLow: WARMTH,
  temperatureHigh: WARMTH,
  minutes: SPAN,
  hormoneVolume: { mL: same, mg: same, IU: same, g: same },
  doseFirst: { mL: same, mg: same, IU: same, g: same },
  doseSecond: { mL: same, mg: same, IU: same, g: same },
  hormoneDose: { 'mL/kg': same, 'mg/kg': same, 'IU/kg': same },
  rateFirst: { 'mL/kg': same, 'mg/kg': same, 'IU/kg': same },
  rateSecond: { 'mL/kg': same, 'mg/kg': same, 'IU/kg': same },
  treatRate: { 'mg/L': same, 'g/L': (x) => 1000 * x },
  length: { cm: same, mm: (x) => x / 10, in: (x) => x * 2.54 },
  eggVolume: VOLUME_ML,
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

const MORE: readonly (readonly [string, UnitClass, string])[] = [
  [
    'g',
    'mass',
    'g gr gm gms grm grs gram grams gramm gramme grammes grama gramas gramo gramos gam جرام غم جم غ',
  ],
  ['kg', 'mass', 'kg kgs kilo kilos kilogram kilograms quilo quilos ki كجم كغ كيلو'],
  ['mg', 'mass', 'mg mgs miligram'],
  ['lb', 'mass', 'lb lbs pound pounds libra libras'],
  ['oz', 'mass', 'oz ounce ounces onza onzas'],
  ['L', 'volume', 'l lt lts ltr ltrs lit litre litres liter liters litro litros lita لتر'],
  ['mL', 'volume', 'ml mls cc millilitre millilitres mililitros مل'],
  ['m3', 'volume', 'm3 m³ cum khoi'],
  ['gal', 'volume', 'gal gals gallon gallons galones'],
  ['°C', 'temperature', '°c ºc oc c degc celsius celcius grados م°'],
  ['°F', 'temperature', '°f ºf of f degf fahrenheit'],
  ['%', 'share', '% pct percent pc pourcent porcento persen'],
  ['h', 'span', 'h hr hrs hour hours heure heures hora horas jam gio saa ساعه'],
  ['min', 'span', 'min mins minute minutes mn minutos menit phut'],
  ['d', 'span', 'd day days jour jours dia dias hari ngay'],
  ['cm', 'length', 'cm cms'],
  ['mm', 'length', 'mm'],
  ['in', 'length', 'in inch inches'],
  [
    'money',
    'money',
    '₦ n naira fcfa cfa xaf tk taka rs rp rm r$ us$ $ ksh kes ugx tsh tzs ghs mt mzn kz bs s/ usd gh₵ egp ' +
      'جنيه ج.م دينار',
  ],
  [
    'count',
    'count',
    'pcs pc pcs. nos no number ind ekor butir con unid unids und un pieces fish eggs alevins milheiro millar sb u',
  ],
  ['mL/kg', 'perMass', 'ml/kg mls/kg cc/kg'],
  ['mg/kg', 'massPerMass', 'mg/kg'],
  ['IU/kg', 'massPerMass', 'iu/kg ui/kg'],
  ['IU', 'units', 'iu ui'],
  ['mg/L', 'concentration', 'mg/l ppm mgl g/m3 mg/lt mg/litre'],
  ['g/L', 'concentration', 'g/l ppt ‰ psu g/lt g/litre'],
  ['mg/L CaCO3', 'concentration', 'mg/lcaco3 mg/lcomocaco3'],
  ['meq/L', 'concentration', 'meq/l'],
  ['°d', 'concentration', 'dkh °d °dh'],
  ['per g', 'perGram', '/g perg no/g eggs/g oeufs/g ovos/g huevos/g butir/g trung/g nos/g pcs/g'],
  ['per mL', 'perVolume', '/ml perml no/ml eggs/ml oeufs/ml ovos/ml huevos/ml ind/ml /l no/l ind/l nos/l'],
  ['per day', 'perDay', '/day %/day g/day'],
];
const BY_WORD = new Map(
  MORE.flatMap(([unit, of, words]) => words.split(' ').map((word) => [fold(word), { unit, of }] as const)),
);

export interface UnitSaid {
  readonly unit: string;
  readonly of: UnitClass;
}
/** The unit a short text names, in any of the languages of the table; undefined where it names none. */
export const unitOfText = (text: string): UnitSaid | undefined =>
  BY_WORD.get(fold(text).replace(/[\s.]/g, ''));

export const unitOfWord = (word: string): string | undefined => {
  const key = word.toLowerCase().replace(/[\s.]/g, '');
  return Object.hasOwn(SPELLINGS, key) ? SPELLINGS[key] : undefined;
};

/** The unit as the field may be kept in it: mg/L beside an alkalinity means calcium carbonate. */
export const unitForField = (field: FieldName, unit: string | undefined): string | undefined => {
  const known = UNITS[field];
  if (!known || unit === undefined) return undefined;
  if (field === 'alkalinity' && unit === 'mg/L') return 'mg/L CaCO3';
  return Object.hasOwn(known, unit) ? unit : undefined;
};

export const ownUnit = (field: FieldName): string | undefined => {
  const known = UNITS[field];
  return known && Object.keys(known)[0];
};
export const converter = (field: FieldName, unit: string | undefined): Convert =>
  unit === undefined ? same : (UNITS[field]?.[unit] ?? same);

/** The units each field may be kept in, its own first. */
export const unitChoices = (): Readonly<Partial<Record<FieldName, readonly string[]>>> =>
  Object.fromEntries(Object.entries(UNITS).map(([field, units]) => [field, Object.keys(units)]));
