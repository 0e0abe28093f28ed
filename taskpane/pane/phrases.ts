import type { PhraseTable, Phrases } from '../../shared/units/phrases';
import { isKnown, lookUp, phraseTable, threesApart } from '../../shared/units/phrases';
import { shownDecimalMark } from './values/show';

/** The language the pane is drawn in. */

export type { Phrases } from '../../shared/units/phrases';

let current: PhraseTable | undefined;
let spoken: Phrases | undefined;
let language = 'en';
/** The language drawn from now on; undefined phrases leave every sentence as it is. */
export function setPhrases(locale: string, phrases: Phrases | undefined): void {
  if (language === locale && spoken === phrases) return;
  language = locale;
  spoken = phrases;
  current = phrases && phraseTable(locale, phrases, shownDecimalMark);
}
/** For what is drawn once and kept. */
export const phraseLanguage = (): string => (current ? language : 'en');

/** A sentence in the language of the pane. */
export const say = (text: string): string => (current ? lookUp(current, text) : text);

/** Signs that French sets off by a space do not begin a line. */
export const unbroken = (text: string): string =>
  phraseLanguage() === 'fr' ? text.replace(/ (?=[:;!?»%])/g, '\u00a0').replace(/« /g, '«\u00a0') : text;

/** Whether nothing of a sentence would stay English. */
export const canSay = (text: string): boolean => current === undefined || isKnown(current, text);
/** A sentence of the engine, which parts thousands by commas, before it is said. */
export const withFigures = (text: string): string => (current ? threesApart(text) : text);
