import {
  celsiusFromFahrenheit,
  gramsFromOunces,
  gramsFromPounds,
  hardnessFrom,
  litresFromGallons,
} from './convert';

/** Units people put behind a number, each with its way to the unit a field keeps. */

type Way = (n: number) => number;
const times =
  (factor: number): Way =>
  (n) =>
    n * factor;
const same: Way = (n) => n;

interface Spelling {
  readonly words: RegExp;
  readonly way: Way;
}
const spelled = (words: RegExp, way: Way): Spelling => ({ words, way });

const GRAM = [
  spelled(/^(g|gr|grs|grams?|grammes?)$/, same),
  spelled(/^(kg|kgs|kilos?|kilograms?|kilogrammes?)$/, times(1000)),
  spelled(/^mg$/, times(1e-3)),
  spelled(/^(lb|lbs|pounds?)$/, gramsFromPounds),
  spelled(/^(oz|ounces?)$/, gramsFromOunces),
];
const LITRE = [
  spelled(/^(l|lt|ltr|ltrs|litres?|liters?|litros?)$/, same),
  spelled(/^(ml|millilitres?|milliliters?|cc)$/, times(1e-3)),
  spelled(/^(m3|m³|cbm|cubic met(re|er)s?)$/, times(1000)),
  spelled(/^(gal|gals|gallons?|us gal|us gallons?)$/, litresFromGallons),
];
/** In centimetres. */
const LENGTH = [
  spelled(/^(cm|centimet(re|er)s?)$/, same),
  spelled(/^(mm|millimet(re|er)s?)$/, times(0.1)),
  spelled(/^(m|met(re|er)s?)$/, times(100)),
  spelled(/^(in|inch|inches|["″])$/, times(2.54)),
  spelled(/^(ft|foot|feet|['′])$/, times(30.48)),
];
const divided = (list: readonly Spelling[], by: number): readonly Spelling[] =>
  list.map(({ words, way }) => ({ words, way: (n) => way(n) / by }));

const SPELLINGS: Readonly<Record<string, readonly Spelling[]>> = {
  g: GRAM,
  kg: divided(GRAM, 1000),
  mg: divided(GRAM, 1e-3),
  L: LITRE,
  mL: divided(LITRE, 1e-3),
  '°C': [
    spelled(/^(°|º|deg\.?)?\s*c(elsius)?$/, same),
    spelled(/^(°|º)$/, same),
    spelled(/^(°|º|deg\.?)?\s*f(ahrenheit)?$/, celsiusFromFahrenheit),
  ],
  cm: LENGTH,
  mm: divided(LENGTH, 0.1),
  m: divided(LENGTH, 100),
  d: [
    spelled(/^(d|days?|jours?|j|dias?)$/, same),
    spelled(/^(weeks?|wks?|w)$/, times(7)),
    spelled(/^(months?)$/, times(30)),
  ],
  h: [spelled(/^(h|hrs?|hours?)$/, same), spelled(/^(min|mins|minutes?)$/, times(1 / 60))],
  fish: [
    spelled(/^(fish|fry|fingerlings?|larvae|eggs|pcs?|pieces?|heads?|no\.?|nos\.?|females?|males?)$/, same),
    spelled(/^(k|thousand)$/, times(1000)),
    spelled(/^(m|mio|million)$/, times(1e6)),
  ],
  'meq/L': [
    spelled(/^(meq\/?l?|mmol\/l)$/, same),
    spelled(/^(mg\/l|ppm)(\s*(as\s*)?caco3)?$/, (n) => hardnessFrom(n, 'mg/L CaCO3')),
    spelled(/^(°?d|°?dh|°?dkh|dkh)$/, (n) => hardnessFrom(n, '°d')),
  ],
};
/** Money before or behind a number: letters or a sign, whatever the country. */
const CURRENCY =
  /^[\p{Sc}]$|^(usd|eur|ghs|ngn|kes|ugx|tzs|xaf|xof|cfa|fcfa|fr|zar|zmw|mwk|etb|rwf|gbp|inr)\.?$/iu;
/** "a kg", "/kg", "each" behind a price says what the field says already. */
const EACH = /^(each|a|per|\/|the)\b.*$/i;

const isPrice = (word: string): boolean => CURRENCY.test(word) || EACH.test(word);

/**
 * The way from a written unit to the unit of a field; undefined when the word is no unit of that kind. A share
 * takes %, and every field takes its own unit. In: field's unit ("share (80 % is 0.8)" is a share), word.
 */
export function wayFrom(unit: string, word: string): Way | undefined {
  const written = word.trim().toLowerCase();
  const [bare = ''] = unit.split(' ');
  if (['', unit.toLowerCase(), bare.toLowerCase()].includes(written)) return same;
  if (bare === 'share') return /^(%|percent|pct|per cent)$/.test(written) ? times(0.01) : undefined;
  // A bare number is of things counted, or of money.
  const kind = SPELLINGS[bare === '' ? 'fish' : bare];
  const isMoney = kind === undefined || bare === '';
  return (
    kind?.find(({ words }) => words.test(written))?.way ?? (isMoney && isPrice(written) ? same : undefined)
  );
}
/** Digits, one point or comma at most, then a unit that begins with a letter or a sign. */
const WITH_UNIT = /^([+-]?\d+)(?:([.,])(\d+))?\s*([^\d\s.,+-].*)$/u;

/**
 * The number of a text like "81 F" or "2,5 lb" in a unit; undefined when the text holds no unit of that kind, or
 * when its comma or point may stand between thousands ("1,250 g").
 */
export function numberWithUnit(text: string, unit: string): number | undefined {
  const [, whole = '', mark, decimals = '', word = ''] = WITH_UNIT.exec(text.trim()) ?? [];
  const isOpen = mark !== undefined && decimals.length === 3 && Number(whole) !== 0;
  if (whole === '' || isOpen || !isOfKind(unit, word)) return undefined;
  return wayFrom(unit, word)?.(Number(`${whole}.${decimals === '' ? '0' : decimals}`));
}
/** Money and things counted are left out: any word may stand behind those. */
function isOfKind(unit: string, word: string): boolean {
  const [bare = ''] = unit.split(' ');
  if (bare === '') return false;
  return bare in SPELLINGS || bare === 'share' || word.trim().toLowerCase() === unit.toLowerCase();
}
/** A sign of money in front of a number is passed over. */
export const withoutMoney = (text: string): string =>
  text.replace(/^\s*([\p{Sc}]|(usd|eur|ghs|ngn|kes|ugx|tzs|xaf|xof|cfa|fcfa|zar|zmw|gbp|inr)\b\.?)\s*/iu, '');
