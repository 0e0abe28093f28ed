/**
 * Signs of Chinese, Japanese and Korean writing, by their Unicode properties: where a line may be broken
 * between two of them. Stands in for a package that builds the same three expressions from tables of half a
 * megabyte.
 */
const LETTERS =
  '\\p{Script=Han}\\p{Script=Hiragana}\\p{Script=Katakana}\\p{Script=Hangul}\\p{Script=Bopomofo}';
const PUNCTUATION =
  '\\u3001-\\u3003\\u3008-\\u3011\\u3014-\\u301F\\u3030\\u30FB\\uFF01-\\uFF0F\\uFF1A-\\uFF20';

const of = (signs: string): { toRegExp(): RegExp } => ({ toRegExp: () => new RegExp(`[${signs}]`, 'u') });
export const letters = (): { toRegExp(): RegExp } => of(LETTERS);
export const punctuations = (): { toRegExp(): RegExp } => of(PUNCTUATION);
export const all = (): { toRegExp(): RegExp } => of(LETTERS + PUNCTUATION);
