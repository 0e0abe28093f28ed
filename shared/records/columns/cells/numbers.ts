import type { Decimal, NumberParts } from '../../../units/digits';
import { decimalOf, isOpenDigits, numberParts, valueOfParts } from '../../../units/digits';

/** Numbers that arrive as text: thousands, decimal commas, a unit left in the cell. */

export type DecimalMark = Decimal;

/** Words and signs that stand before a number: about, and money. */
const BEFORE =
  /^(?:(?:ca|c(?=[.\s])|about|abt|approx|approximately|around|env|environ|aprox|cerca de|est|lk|kira-kira|sekitar|hampir|over|takriban|kusan|pray|hon|khoang)\.?\s*|[~≈±><]\s*|(?:tk|rs|rp|rm|fcfa|f cfa|cfa|ksh|kes|ugx|ush|tsh|tzs|ghs|gh₵|ngn|usd|mzn|mt|kz|bs|s\/)\.?\s*(?=\d)|(?:r\$|us\$|[$€£₦₹৳₵#])\s*|n(?=\d))+/i;
const MONEY_TAIL = /^(?:\/[-=]|(?:f ?cfa|f|frs|tk|rs|rp|ksh|ugx|tsh|taka|naira|cfa|xaf|xof|[$€£₦₹৳₵])\.?)$/i;
const TIMES: readonly (readonly [RegExp, number])[] = [
  [/^(?:k|mil|mille|rb|ribu|thousand|hazar|hajar|elfu|nghin|ngan)(?=\s|$)/i, 1e3],
  [/^(?:lakhs?|lacs?|লাখ)(?=\s|$)/i, 1e5],
  [/^(?:jt|juta|million|millions|milhoes|millones|tr|trieu|mio)(?=\s|$)/i, 1e6],
  [/^(?:van)(?=\s|$)/i, 1e4],
];
/** "a" million spoken with the number: 5k is 5,000. */
const timesOf = (unit: string): { readonly times: number; readonly rest: string } => {
  for (const [word, times] of TIMES) {
    const match = word.exec(unit);
    if (match) return { times, rest: unit.slice(match[0].length).trim() };
  }
  return { times: 1, rest: unit };
};

const partsOf = (text: string): NumberParts | undefined => {
  const parts = numberParts(text, BEFORE);
  if (!parts) return undefined;
  const { tail } = parts;
  // 12/03, 10-12, 08:30 and 3x4 are no single number.
  if ((/^[-/:x×]/.test(tail) && !MONEY_TAIL.test(tail)) || tail.length > 14) return undefined;
  return {
    ...parts,
    // A full stop or comma left at the end belongs to the sentence, not to the number.
    digits: parts.digits.replace(/[.,]$/, ''),
    tail: MONEY_TAIL.test(tail) || tail === '+' ? '' : tail,
  };
};

/**
 * Which mark a single text can only mean as decimal; undefined when both readings are open or it has no mark.
 */
export function decimalIn(text: string): DecimalMark | undefined {
  const parts = partsOf(text);
  return parts && decimalOf(parts.digits);
}

/** Has one mark with three digits behind it: 1,250 or 1.250. */
export const isOpenToBoth = (text: string): boolean => {
  const parts = partsOf(text);
  return parts !== undefined && isOpenDigits(parts.digits);
};

/**
 * The number of a text when `decimal` is the decimal mark; NaN when it is none. `unit` is what stood behind
 * it.
 */
export function readNumber(
  text: string,
  decimal: DecimalMark,
): { readonly value: number; readonly unit: string } {
  const parts = partsOf(text);
  if (!parts) return { value: NaN, unit: '' };
  const { times, rest } = timesOf(parts.tail);
  return { value: times * valueOfParts(parts, decimal), unit: rest };
}
