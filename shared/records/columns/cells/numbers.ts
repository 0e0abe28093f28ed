import { plainDigits } from '../../words/fold';

/** Numbers that arrive as text: thousands, decimal commas, a unit left in the cell. */

export type DecimalMark = ',' | '.';

interface Shape {
  readonly sign: string;
  readonly digits: string;
  readonly unit: string;
}

/** Words and signs that stand before a number: about, and money. */
const BEFORE =
  /^(?:(?:ca|c|about|abt|approx|approximately|around|env|environ|aprox|cerca de|est|lk|kira-kira|sekitar|hampir|over|takriban|kusan|pray|hon|khoang)\.?\s*|[~≈±><]\s*|(?:tk|rs|rp|rm|fcfa|f cfa|cfa|ksh|kes|ugx|ush|tsh|tzs|ghs|gh₵|ngn|usd|mzn|mt|kz|bs|s\/)\.?\s*(?=\d)|(?:r\$|us\$|[$€£₦₹৳₵#])\s*|n(?=\d))+/i;
const SHAPE = /^([+\-−])?\s*(\d[\d.,'’\s\u00a0\u202f]*|[.,]\d+)\s*([^\d\s].*)?$/;
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

const shapeOf = (text: string): Shape | undefined => {
  const bare = plainDigits(text).trim().replace(BEFORE, '');
  const match = SHAPE.exec(bare);
  if (!match?.[2]) return undefined;
  const tail = (match[3] ?? '').trim();
  // 12/03, 10-12, 08:30 and 3x4 are no single number.
  if ((/^[-/:x×]/.test(tail) && !MONEY_TAIL.test(tail)) || tail.length > 14) return undefined;
  const unit = MONEY_TAIL.test(tail) || tail === '+' ? '' : tail;
  // A full stop or comma left at the end belongs to the sentence, not to the number.
  const digits = match[2].replace(/['’\s\u00a0\u202f]/g, '').replace(/[.,]$/, '');
  return { sign: match[1] ?? '', digits, unit };
};

const marks = (
  digits: string,
): { readonly commas: number; readonly points: number; readonly last: string; readonly after: number } => {
  const at = Math.max(digits.lastIndexOf(','), digits.lastIndexOf('.'));
  return {
    commas: digits.split(',').length - 1,
    points: digits.split('.').length - 1,
    last: at < 0 ? '' : (digits[at] ?? ''),
    after: at < 0 ? 0 : digits.length - at - 1,
  };
};

/**
 * Which mark a single text can only mean as decimal; undefined when both readings are open or it has no mark.
 */
export function decimalIn(text: string): DecimalMark | undefined {
  const shape = shapeOf(text);
  if (!shape) return undefined;
  const { commas, points, last, after } = marks(shape.digits);
  if (commas > 0 && points > 0) return last as DecimalMark;
  if (commas + points === 0) return undefined;
  if (commas + points > 1) return last === ',' ? '.' : ',';
  // One mark: three digits behind it may be thousands, unless a 0 stands alone in front.
  const front = shape.digits.slice(0, shape.digits.length - after - 1);
  if (after === 3 && front !== '' && front !== '0' && front.length <= 3) return undefined;
  return last as DecimalMark;
}

/** Has one mark with three digits behind it: 1,250 or 1.250. */
export const isOpenToBoth = (text: string): boolean => {
  const shape = shapeOf(text);
  return shape !== undefined && /[.,]/.test(shape.digits) && decimalIn(text) === undefined;
};

/**
 * The number of a text when `decimal` is the decimal mark; NaN when it is none. `unit` is what stood behind
 * it.
 */
export function readNumber(
  text: string,
  decimal: DecimalMark,
): { readonly value: number; readonly unit: string } {
  const shape = shapeOf(text);
  if (!shape) return { value: NaN, unit: '' };
  const own = decimalIn(text) ?? decimal;
  const plain =
    own === ',' ? shape.digits.replaceAll('.', '').replace(',', '.') : shape.digits.replaceAll(',', '');
  const { times, rest } = timesOf(shape.unit);
  const value = times * Number(plain);
  return { value: shape.sign === '-' || shape.sign === '−' ? -value : value, unit: rest };
}
