import { dateOf, timeText } from '../../shared/units/dates';
import type { Phrases } from '../pane/phrases';
import { setPhrases } from '../pane/phrases';
import type { PictureWords } from '../pane/pictures/types';
import type { PaneState } from '../pane/keeping/state';
import { setCurrency, setNumberStyle } from '../pane/values/show';
import type { PlaceId } from '../pane/frame/places';
import type { Words } from './en';
import { en } from './en';
import { fr } from './fr';

/** Languages of the pane: a third is one more file and one more line. */
export const LANGUAGES = { en, fr } as const satisfies Readonly<Record<string, Words>>;
export type Language = keyof typeof LANGUAGES;
interface Sentences {
  readonly load: () => Promise<{ readonly phrases: Phrases }>;
  /** Those of the places below, which most days do not open. */
  readonly more: () => Promise<{ readonly phrases: Phrases }>;
}
/** Sentences of a language beside its words; fetched when somebody reads it. English stands in the views. */
const PHRASES: Readonly<Partial<Record<Language, Sentences>>> = {
  fr: {
    load: () => import(/* webpackChunkName: "fr" */ './phrases/fr'),
    more: () => import(/* webpackChunkName: "frmore" */ './phrases/frMore'),
  },
};
const SELDOM: readonly PlaceId[] = ['why', 'share'];
const fetched = new Map<Language, Phrases>();
const whole = new Set<Language>();
/** What is drawn from now on is in the language of the state; a promise where sentences must be fetched first. */
export function speak(state: Pick<PaneState, 'settings' | 'ready'>): Promise<void> | undefined {
  const language = languageOf(state);
  const sentences = PHRASES[language];
  const known = fetched.get(language);
  setPhrases(language, sentences && known);
  if (!sentences) return undefined;
  if (!known)
    return sentences.load().then(({ phrases }) => {
      fetched.set(language, phrases);
    });
  if (whole.has(language) || !SELDOM.some((place) => state.ready.includes(place))) return undefined;
  return sentences.more().then(({ phrases }) => {
    whole.add(language);
    fetched.set(language, { ...phrases, ...known });
  });
}
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
  setCurrency(state.settings.currency);
  return LANGUAGES[language];
};

/** The language with its country where the host says one: days and months stand in its order. */
export const localeOf = (state: Pick<PaneState, 'settings'>): string => {
  const language = languageOf(state);
  if (hostLanguage.toLowerCase().startsWith(`${language}-`)) return hostLanguage;
  return language === 'en' ? 'en-GB' : language;
};

/** "Sat 28 Nov" in the reader's language. */
export const dayWords = (state: Pick<PaneState, 'settings'>, serial: number): string =>
  new Intl.DateTimeFormat(localeOf(state), {
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    timeZone: 'UTC',
  }).format(dateOf(serial));

/** "16 Feb" and "16 Feb 18:30", or the hour alone for today. */
export const shortDay = (state: Pick<PaneState, 'settings'>, serial: number): string =>
  new Intl.DateTimeFormat(localeOf(state), { day: 'numeric', month: 'short', timeZone: 'UTC' }).format(
    dateOf(serial),
  );
export const momentOf = (state: Pick<PaneState, 'settings' | 'now'>, at: number): string =>
  Math.floor(at) === Math.floor(state.now) ? timeText(at) : `${shortDay(state, at)} ${timeText(at)}`;

/** What a picture is written with. */
export const pictureWords = (state: Pick<PaneState, 'settings'>): PictureWords => ({
  words: wordsFor(state).pictures,
  day: (serial) => shortDay(state, serial),
});
