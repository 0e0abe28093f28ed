const LETTERS: readonly (readonly [RegExp, string])[] = [
  [/ƙ/g, 'k'],
  [/ɗ/g, 'd'],
  [/ɓ/g, 'b'],
  [/đ/g, 'd'],
  [/ø/g, 'o'],
  [/œ/g, 'oe'],
  [/æ/g, 'ae'],
  [/[أإآ]/g, 'ا'],
  [/ة/g, 'ه'],
  [/ى/g, 'ي'],
];

const BEYOND_ASCII = /[^\0-\x7f]/;
/** Small letters without accents: what people leave out when they type. */
export function fold(text: string): string {
  // Most words have no accents to lose.
  if (!BEYOND_ASCII.test(text)) return text.toLowerCase().replace(/\s+/g, ' ').trim();
  let folded = text.toLowerCase().normalize('NFD').replace(/\p{M}/gu, '');
  for (const [from, to] of LETTERS) folded = folded.replace(from, to);
  return folded.replace(/\s+/g, ' ').trim();
}

/** Zeros of the decimal digits people type beside 0 to 9: Arabic, Persian, Devanagari, Bangla, Thai. */
const ZEROS = [0x0660, 0x06f0, 0x0966, 0x09e6, 0x0e50] as const;
const FOREIGN_DIGIT = /[\u0660-\u0669\u06f0-\u06f9\u0966-\u096f\u09e6-\u09ef\u0e50-\u0e59\u066b\u066c]/;

/** Digits of any script as 0 to 9, with the Arabic marks as comma and point. */
export function plainDigits(text: string): string {
  if (!FOREIGN_DIGIT.test(text)) return text;
  return [...text]
    .map((letter) => {
      if (letter === '\u066b') return '.';
      if (letter === '\u066c') return ',';
      const code = letter.codePointAt(0) ?? 0;
      const zero = ZEROS.find((one) => code >= one && code < one + 10);
      return zero === undefined ? letter : String(code - zero);
    })
    .join('');
}
