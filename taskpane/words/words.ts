import { dateOf } from '../../shared/units/dates';
import type { PaneState } from '../pane/state';
import { setNumberStyle } from '../pane/show';
import type { Words } from './en';
import { en } from './en';
import { fr } from './fr';

/** Languages of the pane: a third is one more file and one more line. */
export const LANGUAGES = { en, fr } as const satisfies Readonly<Record<string, Words>>;
export type Language = keyof typeof LANGUAGES;
export const LANGUAGE_NAMES: Readonly<Record<Language, string>> = { en: 'English', fr: 'Français' };
const isLanguage = (text: string): text is Language => text in LANGUAGES;

/** What the spreadsheet program speaks, or the browser. */
let hostLanguage = 'en';
export const setHostLanguage = (tag: string): void => {
  hostLanguage = tag;
};

export const languageOf = ({ settings }: Pick<PaneState, 'settings'>): Language => {
  const wanted =
    settings.language === 'auto' ? (hostLanguage.toLowerCase().split('-')[0] ?? 'en') : settings.language;
  return isLanguage(wanted) ? wanted : 'en';
};

/** The words for what is on the screen now; numbers follow. */
export const wordsFor = (state: Pick<PaneState, 'settings'>): Words => {
  const language = languageOf(state);
  const { numbers } = state.settings;
  setNumberStyle(numbers === 'comma' || (numbers === 'auto' && language !== 'en') ? 'comma' : 'point');
  return LANGUAGES[language];
};

/** "Sat 28 Nov" in the reader's language. */
export const dayWords = (state: Pick<PaneState, 'settings'>, serial: number): string =>
  new Intl.DateTimeFormat(languageOf(state), {
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    timeZone: 'UTC',
  }).format(dateOf(serial));
