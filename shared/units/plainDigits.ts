/** Digits as people and their keyboards write them, as plain ones: ５００, ٥٠٠, 2½, 1 1/2. */

const FRACTIONS: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};
/** More than three places: never taken for thousands. */
const written = (n: number): string => n.toFixed(6);

const isDigit = (code: number): boolean => /^\p{Nd}$/u.test(String.fromCodePoint(code));
/** Digits of every script stand in tens, the nought first; of some, as of the bold ones, several tens in a row. */
function valueOf(digit: string): string {
  const code = digit.codePointAt(0) ?? 0;
  let before = 0;
  while (isDigit(code - before - 1)) before++;
  return String(before % 10);
}

/** Marks of other scripts and of wide letters. */
const MARKS: Readonly<Record<string, string>> = {
  '٫': '.',
  '٬': ',',
  '．': '.',
  '，': ',',
  '：': ':',
  '／': '/',
  '－': '-',
  '％': '%',
};

const ASCII_ONLY = /^[\x20-\x7e]*$/;
const IN_WORDS = /^(\d+)\s+([1-7])\/([2348])(?![\d/])/;

/** A text with its digits, marks and fractions written plainly; all else stays. */
export function plainDigits(text: string): string {
  const plain = ASCII_ONLY.test(text)
    ? text
    : text
        .replace(/[٫٬．，：／－％]/g, (mark) => MARKS[mark] ?? mark)
        .replace(/(?![0-9])\p{Nd}/gu, valueOf)
        .replace(/(\d+)?\s?([½⅓⅔¼¾⅛⅜⅝⅞])/g, (_, whole: string | undefined, part: string) =>
          written(Number(whole ?? 0) + (FRACTIONS[part] ?? 0)),
        );
  return plain.replace(IN_WORDS, (_, whole: string, over: string, under: string) =>
    written(Number(whole) + Number(over) / Number(under)),
  );
}
