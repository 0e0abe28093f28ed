import MiniSearch from 'minisearch';
import { CATALOGUE } from '../../shared/catalogue';
import type { SheetFunction } from '../../shared/functions/define';
import { findFunction } from '../../shared/catalogue';
import { INTENTS } from './intents';
import type { Intent } from './intents';
import { questions as fr } from './questions/fr';
import { questions as pt } from './questions/pt';
import { questions as es } from './questions/es';
import { questions as sw } from './questions/sw';
import { questions as ha } from './questions/ha';
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

/** How alike two sets of words are: shared ones of all (Jaccard). */
function likeness(a: ReadonlySet<string>, b: ReadonlySet<string>): number {
  if (a.size === 0 || b.size === 0) return 0;
  let shared = 0;
  for (const term of a) if (b.has(term)) shared += 1;
  return shared / (a.size + b.size - shared);
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
  const best = bestLikeness(terms);
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
