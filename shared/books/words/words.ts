import type { PhraseTable, Phrases } from '../../units/phrases';
import { lookUp, phraseTable } from '../../units/phrases';
import { sheetNameOf } from './sheetNames';

/** What a language needs to write a workbook; English stands in the code that makes it. */
export interface BookWords {
  /** As Intl knows it. */
  readonly code: string;
  /** Put before the days of a number format, so that months have this language on every computer: [$-40C]. */
  readonly formatTag: string;
  readonly decimalMark: string;
  /** From Sunday on, and from January on, for formulas that write a day out. */
  readonly weekdays: readonly string[];
  readonly months: readonly string[];
  /** English sheet name → its own, at most 31 letters. */
  readonly sheets: Readonly<Record<string, string>>;
  /** English sentence, heading or word → its own. What is read back (headings, choices) must be one to one. */
  readonly phrases: Phrases;
}

interface Made {
  readonly table: PhraseTable;
  readonly english: ReadonlyMap<string, string>;
}
const made = new WeakMap<BookWords, Made>();
function madeOf(words: BookWords): Made {
  let known = made.get(words);
  if (!known) {
    const english = new Map<string, string>();
    for (const [text, own] of Object.entries(words.phrases)) if (!english.has(own)) english.set(own, text);
    known = { table: phraseTable(words.code, words.phrases, () => words.decimalMark), english };
    made.set(words, known);
  }
  return known;
}

/** A text in a language; what it does not know stays. */
export const sayIn = (words: BookWords, text: string): string => lookUp(madeOf(words).table, text);

/** A sheet of a book in a language, with the word behind the names of a second book. */
export const ownSheetName = (words: BookWords, name: string): string => sheetNameOf(words.sheets, name);

/** Texts between marks “…” in a sentence about a book, in its language: names of its sheets and headings. */
export const quotedIn = (words: BookWords, sentence: string): string =>
  sentence.replace(/“([^”]*)”/g, (_, text: string) => {
    const sheet = ownSheetName(words, text);
    return `“${sheet === text ? sayIn(words, text) : sheet}”`;
  });

/** Days of the week in a row, each looked up alone. */
const LIST = ', ';
/** Shapes before a verdict. */
const SHAPED = /^([●▲◊▼×✓?] )(.+)$/;

/** The English of a heading, a choice or a label written in a language; anything else stays as it is. */
export function englishOf(words: BookWords, text: string): string {
  const { english } = madeOf(words);
  const whole = english.get(text);
  if (whole !== undefined) return whole;
  const [, shape = '', word = ''] = SHAPED.exec(text) ?? [];
  const shaped = english.get(word);
  if (shaped !== undefined) return `${shape}${shaped}`;
  const parts = text.split(LIST).map((part) => english.get(part));
  return parts.length > 1 && parts.every((part) => part !== undefined) ? parts.join(LIST) : text;
}

const KEPT = 'Kept of ';
const STOOD = 'Stood in ';
/** How a remark about what found no place begins in each language. */
const beginningOf = (words: BookWords, english: string): string =>
  (words.phrases[`${english}{}: {}`] ?? english).split('{}')[0] ?? english;
export const keptBeginnings = (languages: readonly BookWords[]): readonly string[] => [
  KEPT,
  ...languages.map((words) => beginningOf(words, KEPT)),
];
/** A remark of ours about what found no place; what somebody typed in it stays as it is. */
export function remarkIn(words: BookWords, remark: string): string {
  if (remark.startsWith(STOOD)) return `${beginningOf(words, STOOD)}${remark.slice(STOOD.length)}`;
  return remark.startsWith(KEPT) ? sayIn(words, remark) : remark;
}
