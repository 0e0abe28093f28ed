import type { Cell } from '../../base/values';
import { BOOK_LANGUAGES } from './index';
import type { BookWords } from './words';
import { englishOf, ownSheetName } from './words';

/** Sheets of a book in any language, read as if they were English: where they are found, what their words mean. */

/** The words of the language in which most of the English names stand there, `suffix` behind them; none: English. */
export function wordsOfSheets(
  there: readonly string[],
  english: readonly string[],
  suffix: string,
): BookWords | undefined {
  const names = new Set(there);
  const found = (own: (name: string) => string): number =>
    english.filter((name) => names.has(`${own(name)}${suffix}`)).length;
  let best: { readonly words: BookWords | undefined; readonly count: number } = {
    words: undefined,
    count: found((name) => name),
  };
  for (const words of Object.values(BOOK_LANGUAGES)) {
    const count = found((name) => ownSheetName(words, name));
    if (count > best.count) best = { words, count };
  }
  return best.words;
}

interface Sheet {
  readonly name: string;
  readonly values: readonly (readonly Cell[])[];
}
/** What stands in the cells, where it was read in another language: names are people's own in any. */
export interface WithOwn {
  readonly own?: readonly (readonly Cell[])[];
}

/** A sheet with the words of its book in English; `english`: names of all sheets of a book. */
export function sheetInEnglish<S extends Sheet>(
  sheet: S,
  words: BookWords,
  english: readonly string[],
  suffix: string,
): S & WithOwn {
  const name = english.find((one) => `${ownSheetName(words, one)}${suffix}` === sheet.name);
  const known = new Map<string, string>();
  const said = (cell: Cell): Cell => {
    if (typeof cell !== 'string' || cell === '') return cell;
    let text = known.get(cell);
    if (text === undefined) known.set(cell, (text = englishOf(words, cell)));
    return text;
  };
  return {
    ...sheet,
    name: name === undefined ? sheet.name : `${name}${suffix}`,
    values: sheet.values.map((row) => row.map(said)),
    own: sheet.values,
  };
}
