import { CHOICE_WORDS, englishOption } from '../functions/choiceWords';
import type { LogLine } from './log';

/** The log of the vats in another language: its sheet, its headings and the words of its lines, one to one. */
export interface LogWords {
  readonly sheet: string;
  readonly headings: Readonly<Record<keyof LogLine, string>>;
  /** Other headings a person may have written over a column: small letters. */
  readonly also: Readonly<Partial<Record<keyof LogLine, readonly string[]>>>;
  /** What was noted, English → the other. */
  readonly words: Readonly<Record<string, string>>;
  /** Products, English → the other. */
  readonly products: Readonly<Record<string, string>>;
}

export const LOG_LANGUAGES: Readonly<Record<string, LogWords>> = {
  fr: {
    sheet: 'Journal des bacs',
    headings: {
      at: 'Quand',
      vat: 'Bac',
      what: 'Quoi',
      product: 'Produit',
      grams: 'Dose, g',
      ph: 'pH',
      again: 'pH encore',
      celsius: 'Eau, °C',
      litres: 'Eau, L',
      number: 'Nombre',
      unit: 'Unité',
      who: 'Qui',
      note: 'Note',
    },
    also: {
      at: ['date et heure', 'heure'],
      vat: ['cuve', 'bassin'],
      what: ['événement', 'evenement'],
      grams: ['grammes'],
      ph: ['ph lu'],
      again: ['second ph', 'ph 2'],
      celsius: ['température', 'temperature de l’eau'],
      who: ['par', 'personne'],
      note: ['notes', 'remarque', 'remarques'],
    },
    words: {
      filled: 'rempli',
      reading: 'mesure',
      dose: 'dose',
      aired: 'aéré',
      jar: 'bocal',
      night: 'nuit',
      refill: 'complété',
      change: 'changement d’eau',
      rain: 'pluie',
      'meter check': 'contrôle du pH-mètre',
      'from tank': 'de la réserve',
      'water temperature': 'température de l’eau',
      oxygen: 'oxygène',
      'feed given': 'aliment donné',
      dead: 'morts',
      'female weight': 'poids de la femelle',
      hormone: 'hormone',
      'weight of eggs': 'poids des œufs',
      eggs: 'œufs',
      'good eggs seen': 'bons œufs vus',
      'eggs looked at': 'œufs regardés',
      'fry counted': 'alevins comptés',
      'salt bath': 'bain de sel',
      'formalin bath': 'bain de formol',
      'weight of a fish': 'poids d’un poisson',
      'handed over': 'livré',
      injected: 'injecté',
      stripped: 'strippé',
      'first hatch seen': 'première éclosion vue',
      'first food': 'premier aliment',
      'water changed': 'eau changée',
      graded: 'trié',
      'vat cleaned': 'bac nettoyé',
      buffer: 'tampon',
    },
    products: CHOICE_WORDS.fr,
  },
};

/** Apostrophes of either kind, one space, small letters. */
const plain = (text: string): string =>
  text.trim().toLowerCase().replaceAll('’', "'").replace(/\s+/g, ' ').normalize('NFC');
const ENGLISH = new Map(
  Object.values(LOG_LANGUAGES).flatMap(({ words }) =>
    Object.entries(words).map(([english, own]) => [plain(own), english] as const),
  ),
);
/** "buffer 7": its first word is one of ours. */
const FIRST = /^(\p{L}+)( .+)$/u;

/** A line in the words of its log; what somebody typed stays. */
export function lineIn({ words, products }: LogWords, line: LogLine): LogLine {
  const [, word = '', rest = ''] = FIRST.exec(line.unit) ?? [];
  const unit = words[word];
  return {
    ...line,
    what: words[line.what] ?? line.what,
    product: products[line.product] ?? line.product,
    unit: unit === undefined ? line.unit : `${unit}${rest}`,
  };
}

/** A text of a line as the engine knows it, whatever language it was written in. */
export function englishIn(key: keyof LogLine, text: string): string {
  if (key === 'what') return ENGLISH.get(plain(text)) ?? text;
  if (key === 'product') return englishOption(text) ?? text;
  const [, word = '', rest = ''] = key === 'unit' ? (FIRST.exec(text) ?? []) : [];
  const unit = ENGLISH.get(plain(word));
  return unit === undefined ? text : `${unit}${rest}`;
}

/** Headings of a column in the other languages: small letters. */
export const otherHeadings = (key: keyof LogLine): readonly string[] =>
  Object.values(LOG_LANGUAGES).flatMap(({ headings, also }) => [
    headings[key].toLowerCase(),
    ...(also[key] ?? []),
  ]);
