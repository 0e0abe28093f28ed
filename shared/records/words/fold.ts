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
