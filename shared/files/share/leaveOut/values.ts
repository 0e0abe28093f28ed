import type { Near } from '../../../base/near';
import type { StoredValue } from '../../cells/stored';
import { revealCellText } from '../../text';
import { lex } from '../references/lex';

/**
 * The values that were left out, to be looked for in everything a copy holds: texts as whole words in any letter
 * case, numbers in every spelling.
 */
export class LeftValues {
  /** Rounded to fifteen digits. */
  private readonly numbers = new Set<number>();
  private readonly texts = new Set<string>();
  private readonly byFirstWord = new Map<string, string[][]>();
  /** Digits of telephone-like values, and their endings without the country. */
  private readonly digits = new Set<string>();
  private readonly endings = new Set<string>();
  /** Values too short to tell from chance: they stand in every workbook. */
  short = 0;

  get size(): number {
    return this.numbers.size + this.texts.size;
  }

  add({ type, raw }: StoredValue): void {
    if (type === 'n' || type === 'd') this.addNumber(raw);
    else if (type === 'str' || type === 'inlineStr') this.addText(revealCellText(raw));
    // A number with decimals is nobody's telephone.
    if (type !== 'n' || !/[.eE]/.test(raw)) this.addDigits(raw);
  }

  private addDigits(raw: string): void {
    const digits = raw.replace(/\D/g, '');
    if (digits.length < SHORTEST_PHONE || /[a-z]{2}|\.\d+e/i.test(raw)) return;
    this.digits.add(digits);
    for (let cut = 1; cut <= COUNTRY && digits.length - cut >= SHORTEST_ENDING; cut++)
      this.endings.add(digits.slice(cut));
  }

  private addNumber(raw: string): void {
    const number = Number(raw);
    if (!Number.isFinite(number)) return;
    if (isLong(number)) this.numbers.add(rounded(number));
    else this.short++;
  }

  private addText(raw: string): void {
    const text = raw.trim().toLowerCase();
    const number = text === '' ? NaN : Number(text);
    if (Number.isFinite(number) && isLong(number)) this.numbers.add(rounded(number));
    const words = wordsOf(text);
    const [first] = words;
    if (first === undefined || text.length < SHORTEST_TEXT) {
      if (text !== '') this.short++;
      return;
    }
    if (this.texts.has(text)) return;
    this.texts.add(text);
    const list = this.byFirstWord.get(first);
    if (list) list.push(words);
    else this.byFirstWord.set(first, [words]);
  }

  /** Is the number, or its opposite, one that was left out? */
  hasNumber(number: number): boolean {
    if (this.numbers.size === 0) return false;
    const { numbers } = this;
    if (numbers.has(number) || numbers.has(-number)) return true;
    const near = rounded(number);
    return near !== number && (numbers.has(near) || numbers.has(-near));
  }

  /** A number typed or stored in a cell, where a long one may be somebody's telephone. */
  inNumber(number: number): boolean {
    return (
      this.hasNumber(number) ||
      (this.digits.size > 0 &&
        Math.abs(number) >= SMALLEST_PHONE &&
        this.holdsDigits(String(Math.abs(number))))
    );
  }

  /** Does the text hold a value that was left out? */
  in(raw: string): boolean {
    if (this.size === 0 || raw === '') return false;
    return this.holdsText(raw) || this.holdsNumber(raw) || this.holdsDigits(raw);
  }

  /** Is the text, whole, a value that was left out: the word itself, or the number in any spelling? */
  isWhole(raw: string): boolean {
    const text = raw.trim();
    if (this.texts.has(text.toLowerCase())) return true;
    const [token] = text.match(NUMBER) ?? [];
    return token === text && readings(text).some((number) => this.hasNumber(number));
  }

  /** The same for texts alone, where numbers are places and sizes. */
  inWords(raw: string): boolean {
    return this.holdsText(raw);
  }

  private holdsText(raw: string): boolean {
    if (this.texts.size === 0) return false;
    const text = raw.trim().toLowerCase();
    if (this.texts.has(text)) return true;
    const words = wordsOf(text);
    return words.some((word, i) =>
      (this.byFirstWord.get(word) ?? []).some((wanted) => wanted.every((one, k) => words[i + k] === one)),
    );
  }

  private holdsDigits(raw: string): boolean {
    return (
      this.digits.size > 0 &&
      (raw.match(/\+?\d[\d\s().\-/]*\d/g) ?? []).some((run) => {
        const digits = run.replace(/\D/g, '');
        if (digits.length < SHORTEST_PHONE) return false;
        if (this.digits.has(digits) || this.endings.has(digits)) return true;
        for (let cut = 1; cut <= COUNTRY && digits.length - cut >= SHORTEST_ENDING; cut++)
          if (this.digits.has(digits.slice(cut))) return true;
        return false;
      })
    );
  }

  private holdsNumber(raw: string): boolean {
    if (this.numbers.size === 0 || !/\d/.test(raw)) return false;
    for (const [token] of raw.matchAll(NUMBER))
      if (readings(token).some((number) => this.hasNumber(number))) return true;
    return false;
  }

  /** In a formula only what it spells out counts: texts and numbers, not the addresses it reads. */
  inFormula(formula: string): boolean {
    if (this.size === 0) return false;
    return lex(formula).some((piece) => {
      if (piece.kind !== 'string' && piece.kind !== 'literal') return false;
      const text = formula.slice(piece.at, piece.end);
      if (piece.kind === 'string') return this.in(text.slice(1, -1).replaceAll('""', '"'));
      const number = Number(text);
      return this.inNumber(number) || (formula[piece.end] === '%' && this.hasNumber(number / 100));
    });
  }

  /** Spellings to look for in bytes that are no XML. */
  *spellings(): Generator<string> {
    for (const number of this.numbers)
      if (String(number).replace(/\D/g, '').length >= SHORTEST_IN_BYTES) yield String(number);
    for (const text of this.texts) if (text.length >= SHORTEST_IN_BYTES) yield text;
  }
}

/** Digits of the shortest telephone number that counts, and of the longest country code with its zeros. */
const SHORTEST_PHONE = 7;
const SMALLEST_PHONE = 10 ** (SHORTEST_PHONE - 1);
const COUNTRY = 5;
const SHORTEST_ENDING = 8;
const SHORTEST_TEXT = 3;
const SHORTEST_IN_BYTES = 5;
/** 5, 40 or 0.5 stand in every workbook; 480 and 12.5 tell. */
const FEWEST_DIGITS = 3;

/** Whole numbers below this, and what has few digits, are their own rounding. */
const MANY_DIGITS = 1e15;

/** Fifteen digits, which every spreadsheet keeps when it saves a file. */
const rounded = (number: number): number =>
  Number.isInteger(number) && Math.abs(number) < MANY_DIGITS ? number : Number(number.toPrecision(15));

const isLong = (number: number): boolean =>
  String(Math.abs(rounded(number)))
    .replace(/e.*$/i, '')
    .replace(/^0\.0*/, '')
    .replace('.', '').length >= FEWEST_DIGITS;

const wordsOf = (text: string): string[] => text.match(/[\p{L}\p{N}]+/gu) ?? [];

/** A number as people and programs write it, with any of the marks between groups of digits. */
const NUMBER = /[-+]?(?:\d[\d ,.'’_\u00a0\u202f]*\d|\d|[.,]\d+)(?:[eE][-+]?\d{1,3})?%?/g;
const LONGEST_TOKEN = 60;

/** What a token can mean: comma or point for the decimals, the other marks between groups. */
function readings(token: string): number[] {
  if (token.length > LONGEST_TOKEN) return token.split(/[ ,'’_\u00a0\u202f]/).map(Number);
  const isShare = token.endsWith('%');
  const bare = token.replace(/%$/, '').replace(/[ '’_\u00a0\u202f]/g, '');
  const found = new Set<number>();
  for (const text of [
    bare,
    bare.replaceAll(',', ''),
    bare.replaceAll('.', '').replace(',', '.'),
    bare.replaceAll(/[.,]/g, ''),
    ...token.split(/[ ,;\u00a0\u202f]/),
  ])
    if (text !== '' && Number.isFinite(Number(text))) {
      found.add(Number(text));
      if (isShare) found.add(Number(text) / 100);
    }
  return [...found];
}

/** Is the value found again when only it was left out? */
const finds = (type: string, left: string, looked: string): boolean => {
  const values = new LeftValues();
  values.add({ type, raw: left });
  return values.in(looked);
};
export const NEAR: readonly Near[] = [
  {
    number: 'digits of the shortest number that is looked for',
    value: FEWEST_DIGITS,
    below: () => finds('n', '99', '99'),
    above: () => finds('n', '100', '100'),
    answers: [false, true],
  },
  {
    number: 'signs of the shortest text that is looked for',
    value: SHORTEST_TEXT,
    below: () => finds('str', 'ab', 'ab'),
    above: () => finds('str', 'abc', 'abc'),
    answers: [false, true],
  },
  {
    number: 'digits of the shortest telephone number',
    value: SHORTEST_PHONE,
    below: () => finds('str', '12 34 56', '123456'),
    above: () => finds('str', '12 34 567', '1234567'),
    answers: [false, true],
  },
  {
    number: 'digits of a country in front of a telephone number',
    value: COUNTRY,
    below: () => finds('str', '+12345 12345678', '12345678'),
    above: () => finds('str', '+123456 12345678', '12345678'),
    answers: [true, false],
  },
  {
    number: 'digits that must be left of it without the country',
    value: SHORTEST_ENDING,
    below: () => finds('str', '+9 1234567', '1234567'),
    above: () => finds('str', '+9 12345678', '12345678'),
    answers: [false, true],
  },
];
