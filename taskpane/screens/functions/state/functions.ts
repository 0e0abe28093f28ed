import type { Family, SheetFunction } from '../../../../shared/functions/define';
import { CATALOGUE, findFunction } from '../../../../shared/catalogue';
import type { RangeReading } from '../../../host/port';

export interface FunctionsState {
  readonly search: string;
  readonly family: Family | 'all';
  /** Name of the function whose page is open. */
  readonly open: string | undefined;
  /** What stands in each argument field, by parameter name. */
  readonly texts: Readonly<Record<string, string>>;
  /** What the references among them hold, by reference text. */
  readonly readings: Readonly<Record<string, Reading>>;
}

export type Reading =
  | { readonly kind: 'read'; readonly range: RangeReading }
  | { readonly kind: 'failed'; readonly sentence: string };

export const initialFunctions: FunctionsState = {
  search: '',
  family: 'all',
  open: undefined,
  texts: {},
  readings: {},
};

export const FAMILIES: readonly Family[] = [...new Set(CATALOGUE.map((fn) => fn.family))];

const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);

/** How well a function answers to the words typed; 0 when a word is found nowhere. */
function score(fn: SheetFunction, words: readonly string[]): number {
  const name = fn.name.toLowerCase();
  const summary = fn.summary.toLowerCase();
  const rest =
    `${fn.help} ${fn.family} ${fn.valid} ${fn.params.map((p) => `${p.name} ${p.doc}`).join(' ')}`.toLowerCase();
  let total = 0;
  for (const word of words) {
    const points = name.includes(word) ? 4 : summary.includes(word) ? 2 : rest.includes(word) ? 1 : 0;
    if (points === 0) return 0;
    total += points;
  }
  return total;
}

/** Functions of the family that hold every word typed, the best matches first. */
export function matching(state: FunctionsState): readonly SheetFunction[] {
  const words = wordsOf(state.search);
  const inFamily = CATALOGUE.filter((fn) => state.family === 'all' || fn.family === state.family);
  if (words.length === 0) return inFamily;
  return inFamily
    .map((fn) => ({ fn, points: score(fn, words) }))
    .filter(({ points }) => points > 0)
    .sort((a, b) => b.points - a.points)
    .map(({ fn }) => fn);
}

export const openFunction = (state: FunctionsState): SheetFunction | undefined =>
  state.open ? findFunction(state.open) : undefined;
