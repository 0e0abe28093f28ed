import MiniSearch from 'minisearch';
import { CATALOGUE } from '../../../shared/catalogue';
import type { SheetFunction } from '../../../shared/functions/define';
import { findFunction } from '../../../shared/catalogue';
import { INTENTS } from './intents';
import type { Intent } from './intents';
import { questions as fr } from '../questions/fr';
import { questions as pt } from '../questions/pt';
import { questions as es } from '../questions/es';
import { questions as sw } from '../questions/sw';
import { questions as ha } from '../questions/ha';
import { fold, termOf, wordsIn } from './terms';

/** Finds the function that answers a question in the words of the farm. */

const LANGUAGES = [fr, pt, es, sw, ha];

interface Entry {
  readonly id: string;
  readonly questions: string;
  readonly name: string;
  readonly summary: string;
  readonly params: string;
}

/** Every question a record answers, in every language there is. */
export const questionsOf = (fn: SheetFunction): readonly string[] => [
  ...fn.questions,
  ...LANGUAGES.flatMap((language) => language[fn.id] ?? []),
];

const entryOf = (fn: SheetFunction): Entry => ({
  id: fn.id,
  questions: questionsOf(fn).join(' . '),
  name: fn.id.replaceAll('.', ' '),
  summary: fn.summary,
  params: fn.params.map(({ name, doc }) => `${name.replace(/([A-Z])/g, ' $1')} ${doc}`).join(' '),
});
const intentEntry = ({ key, says }: Intent): Entry => ({
  id: `:${key}`,
  questions: says.join(' . '),
  name: '',
  summary: '',
  params: '',
});

/** Short words are not guessed at. */
const FUZZY_FROM = 4;
const build = (): MiniSearch<Entry> => {
  const index = new MiniSearch<Entry>({
    fields: ['questions', 'name', 'summary', 'params'],
    tokenize: (text) => [...wordsIn(text)],
    processTerm: (word) => termOf(word) ?? null,
    searchOptions: {
      boost: { questions: 3, name: 3, summary: 1.5, params: 0.3 },
      fuzzy: (term) => (term.length >= FUZZY_FROM ? 0.25 : false),
      prefix: (term) => term.length >= FUZZY_FROM,
      weights: { fuzzy: 0.3, prefix: 0.4 },
      combineWith: 'OR',
    },
  });
  index.addAll([...CATALOGUE.map(entryOf), ...INTENTS.map(intentEntry)]);
  return index;
};
let index: MiniSearch<Entry> | undefined;
/** Terms of every single question, for telling one function's question from another's. */
let asked: readonly { readonly id: string; readonly terms: ReadonlySet<string> }[] | undefined;

const termsIn = (text: string): ReadonlySet<string> =>
  new Set(wordsIn(text).flatMap((word) => termOf(word) ?? []));

const askedQuestions = () =>
  (asked ??= [
    ...CATALOGUE.flatMap((fn) => questionsOf(fn).map((text) => ({ id: fn.id, terms: termsIn(text) }))),
    ...INTENTS.flatMap(({ key, says }) => says.map((text) => ({ id: `:${key}`, terms: termsIn(text) }))),
  ]);

/** How telling a term is: one that stands in the questions of few functions weighs more (inverse frequency). */
let weights: ReadonlyMap<string, number> | undefined;
function weightOf(term: string): number {
  if (!weights) {
    const holders = new Map<string, Set<string>>();
    for (const { id, terms } of askedQuestions())
      for (const one of terms) holders.set(one, (holders.get(one) ?? new Set()).add(id));
    const all = CATALOGUE.length + INTENTS.length;
    weights = new Map([...holders].map(([one, ids]) => [one, Math.log(1 + all / ids.size)]));
  }
  return weights.get(term) ?? UNKNOWN;
}
/** A word no question holds tells little, and still makes a question less alike. */
const UNKNOWN = 2;
const heaviness = (terms: ReadonlySet<string>): number =>
  [...terms].reduce((sum, term) => sum + weightOf(term), 0);

/** How alike two sets of words are: weight of the shared ones of all (weighted Jaccard). */
function likeness(a: ReadonlySet<string>, b: ReadonlySet<string>): number {
  if (a.size === 0 || b.size === 0) return 0;
  let shared = 0;
  for (const term of a) if (b.has(term)) shared += weightOf(term);
  return shared / (heaviness(a) + heaviness(b) - shared);
}

/** Three letters at a time, with the ends of the word. */
const pieces = (word: string): ReadonlySet<string> => {
  const padded = `_${word}_`;
  return new Set(Array.from({ length: padded.length - 2 }, (_, i) => padded.slice(i, i + 3)));
};
/** Two words that share this much of their pieces (Dice) are one word written two ways. */
const SAME_WORD = 0.6;
const nearest = new Map<string, string>();
/** The term of some question that a term nobody asked with is most like; itself when none is near. */
function knownTerm(term: string): string {
  askedQuestions();
  weightOf(term);
  if (term.length < FUZZY_FROM || weights?.has(term)) return term;
  const known = nearest.get(term);
  if (known !== undefined) return known;
  const own = pieces(term);
  let [best, most] = [term, SAME_WORD];
  for (const other of weights?.keys() ?? []) {
    const its = pieces(other);
    const shared = [...own].filter((piece) => its.has(piece)).length;
    const alike = (2 * shared) / (own.size + its.size);
    if (alike > most) [best, most] = [other, alike];
  }
  nearest.set(term, best);
  return best;
}

export interface Found {
  /** Best first. */
  readonly functions: readonly SheetFunction[];
  /** The question is no question for one function. */
  readonly intent: Intent | undefined;
  /** Some words of the question met something; else the nearest are a guess. */
  readonly fits: boolean;
}

/** So much of the best likeness as a whole question adds to the score of its words. */
const QUESTION_WEIGHT = 3;
/** Below this nothing is said to fit. */
const LEAST_LIKENESS = 0.3;

/** The best likeness of each entry's questions to the words asked. */
function bestLikeness(terms: ReadonlySet<string>): ReadonlyMap<string, number> {
  const best = new Map<string, number>();
  for (const { id, terms: its } of askedQuestions()) {
    const alike = likeness(terms, its);
    if (alike > (best.get(id) ?? 0)) best.set(id, alike);
  }
  return best;
}

/** The function whose name was typed, with or without the prefix. */
const namedIn = (question: string): SheetFunction | undefined => {
  const name = fold(question).replace(/[^a-z0-9.]/g, '');
  return findFunction(name) ?? findFunction(`SPAWN.${name}`);
};

export function find(question: string, most = 5): Found {
  const terms = termsIn(question);
  if (terms.size === 0) return { functions: [], intent: undefined, fits: false };
  index ??= build();
  const byWords = index.search(question);
  const top = byWords[0]?.score ?? 1;
  const best = bestLikeness(new Set([...terms].map(knownTerm)));
  const score = new Map<string, number>();
  for (const { id, score: points } of byWords) score.set(String(id), points / top);
  for (const [id, alike] of best) score.set(id, (score.get(id) ?? 0) + QUESTION_WEIGHT * alike ** 2);
  const named = namedIn(question);
  if (named) score.set(named.id, Infinity);
  const ranked = [...score].sort((a, b) => b[1] - a[1]).map(([id]) => id);
  return {
    functions: ranked.flatMap((id) => findFunction(`SPAWN.${id}`) ?? []).slice(0, most),
    intent: INTENTS.find(({ key }) => `:${key}` === ranked[0]),
    fits: named !== undefined || Math.max(0, ...best.values()) >= LEAST_LIKENESS,
  };
}
