import type { DosingLanguage } from '../shared/books/dosing/sheet';
import { fr } from '../shared/books/words/fr';
import { frDosing } from '../shared/books/words/frDosing';

/** Languages of the templates: the words of the book and of the dosing sheet, and invented names. */
export interface TemplateLanguage extends DosingLanguage {
  /** English name, or its beginning before a number or a letter → its own. */
  readonly names: Readonly<Record<string, string>>;
}

const FRENCH_NAMES = {
  'Willow Ford Hatchery': 'Écloserie du Gué',
  'Lower Weir ponds': 'Étangs du Bas',
  'Mango Court Hatchery': 'Écloserie du Manguier',
  Neighbours: 'Voisins',
  'School pond': 'Étang de l’école',
  'Market cages': 'Cages du marché',
  'Long Weir Hatchery': 'Écloserie de la Digue',
  'Hill ponds': 'Étangs de la colline',
  'Weir farm': 'Ferme de la digue',
  'Clay pits': 'Carrière d’argile',
  'Island cages': 'Cages de l’île',
  'Canal co-op': 'Coopérative du canal',
  'Upper dam': 'Barrage du haut',
  'Brick works': 'Briqueterie',
  'Palm estate': 'Palmeraie',
  Vat: 'Bac',
  Trough: 'Auge',
  Round: 'Rond',
  line: 'souche',
  old: 'vieille',
  river: 'rivière',
  bought: 'achetée',
} as const;

export const TEMPLATE_LANGUAGES: readonly TemplateLanguage[] = [
  { words: fr, dosing: frDosing, names: FRENCH_NAMES },
];

const named = (names: TemplateLanguage['names'], text: string): string => {
  const [, stem = text, rest = ''] = /^(.*?)( (?:\d+|[A-D]))?$/.exec(text) ?? [];
  return `${names[stem] ?? stem}${rest}`;
};
/** An order book with its invented names in a language; words that are options stay. */
export function withNames<T>(value: T, names: TemplateLanguage['names']): T {
  if (typeof value === 'string') return named(names, value) as T;
  if (Array.isArray(value)) return value.map((one: unknown) => withNames(one, names)) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, one]) => [key, withNames(one as unknown, names)]),
  ) as T;
}
