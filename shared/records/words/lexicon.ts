// Long: the table of words and all ways to look a heading up in it share the worth of a word.
import { MONTH_NAMES } from '../../units/dates';
import { isOneSlip } from './slip';
import { fold } from './fold';
import { WORD_TABLE } from './table';

/** A way of writing a concept. */
interface Form {
  readonly concept: string;
  readonly tokens: readonly string[];
  readonly weight: number;
}

interface Lexicon {
  readonly exact: ReadonlyMap<string, readonly string[]>;
  readonly short: ReadonlyMap<string, readonly string[]>;
  readonly forms: ReadonlyMap<string, readonly Form[]>;
  readonly worth: ReadonlyMap<string, number>;
  /** How often each word stands in the forms of a concept, and how many words its forms have. */
  readonly used: ReadonlyMap<string, ReadonlyMap<string, number>>;
  readonly sizes: ReadonlyMap<string, number>;
}

/** Words of a heading: letters and digits of any script; % and # are words of their own. */
export const tokensOf = (text: string): string[] => fold(text).match(/[\p{L}\p{N}°]+|[%#]/gu) ?? [];
const keyOf = (text: string): string => tokensOf(text).join(' ');

function push<T>(into: Map<string, T[]>, key: string, value: T): void {
  const list = into.get(key);
  if (!list) into.set(key, [value]);
  else if (!list.includes(value)) list.push(value);
}

/** Words that only join others, in the languages of the table. */
const JOINING = new Set(
  (
    'of the a an in on at by to for and with from is it as ' +
    'de du des d la le les l un une en au aux a par pour et dans ' +
    'do da dos das o os um uma em por para e com ' +
    'el los las una del al y con ' +
    'di ke dari dan untuk yang per ya wa za cha vya kwa'
  ).split(' '),
);
const WORTH_OF_JOINING = 0.4;
/** A word that stands for many things says little: its worth is the logarithm of how few it stands for. */
function worths(concepts: ReadonlyMap<string, ReadonlySet<string>>): Map<string, number> {
  const all = new Set([...concepts.values()].flatMap((set) => [...set])).size;
  return new Map(
    [...concepts].map(([token, set]) => [
      token,
      JOINING.has(token) ? WORTH_OF_JOINING : Math.log((1 + all) / set.size),
    ]),
  );
}

function build(): Lexicon {
  const exact = new Map<string, string[]>();
  const short = new Map<string, string[]>();
  const concepts = new Map<string, Set<string>>();
  const raw: { readonly concept: string; readonly tokens: readonly string[] }[] = [];
  for (const line of WORD_TABLE.split('\n')) {
    const at = line.indexOf(': ');
    if (at < 0) continue;
    const concept = line.slice(0, line.indexOf(' '));
    for (const written of line.slice(at + 2).split('; ')) {
      const isShort = written.startsWith('~');
      const key = keyOf(isShort ? written.slice(1) : written);
      if (key === '') continue;
      push(isShort || key.length <= 2 ? short : exact, key, concept);
      const tokens = key.split(' ');
      raw.push({ concept, tokens });
      for (const token of tokens) concepts.set(token, (concepts.get(token) ?? new Set()).add(concept));
    }
  }
  const worth = worths(concepts);
  const forms = new Map<string, Form[]>();
  for (const { concept, tokens } of raw) {
    const weight = tokens.reduce((sum, token) => sum + (worth.get(token) ?? 0), 0);
    const form: Form = { concept, tokens, weight };
    for (const token of new Set(tokens)) push(forms, token, form);
  }
  return { exact, short, forms, worth, ...usesOf(raw) };
}
/** Words of cells and of rows name no column. */
const NO_HEADING = /^(?:value_|month_|weekday_)|_row$/;
function usesOf(raw: readonly { readonly concept: string; readonly tokens: readonly string[] }[]): {
  used: Map<string, Map<string, number>>;
  sizes: Map<string, number>;
} {
  const used = new Map<string, Map<string, number>>();
  const sizes = new Map<string, number>();
  for (const { concept, tokens } of raw) {
    if (NO_HEADING.test(concept)) continue;
    for (const token of new Set(tokens)) {
      const of = used.get(token) ?? new Map<string, number>();
      used.set(token, of.set(concept, (of.get(concept) ?? 0) + 1));
      sizes.set(concept, (sizes.get(concept) ?? 0) + 1);
    }
  }
  return { used, sizes };
}

let built: Lexicon | undefined;
const lexicon = (): Lexicon => (built ??= build());

const SHORTEST_SLIP = 5;
const SHORTEST_SHORT = 3;
/** Words that people shorten: long enough to be worth it, known as words of headings. */
const LONG = 5;
const LEAST_KEPT = 0.4;

/** The word a short form stands for: its first letters, or its letters without some of the vowels. */
function shortened(token: string): string | undefined {
  let best: { readonly word: string; readonly kept: number } | undefined;
  for (const word of lexicon().worth.keys()) {
    if (word.length < LONG || word.length <= token.length || word[0] !== token[0]) continue;
    const isStart = word.startsWith(token);
    const kept = (token.length / word.length) * (isStart ? 1.25 : 1);
    if (kept < LEAST_KEPT || (best && kept <= best.kept)) continue;
    if (isStart || (token.length >= 4 && isSkeleton(token, word))) best = { word, kept };
  }
  return best?.word;
}
/** All consonants in order, the last letter the same: stckd for stocked. */
function isSkeleton(token: string, word: string): boolean {
  if (token.at(-1) !== word.at(-1) && !/^[^aeiou]+$/.test(token)) return false;
  let i = 0;
  let missed = 0;
  for (const letter of word)
    if (letter === token[i]) i++;
    else if (!/[aeiouy]/.test(letter)) missed++;
  return i === token.length && missed <= 1;
}

const nearest = new Map<string, string>();
/** The word of the table that a word is, or is one slip of a letter away from. */
function known(token: string): string {
  const { worth } = lexicon();
  if (worth.has(token) || token.length < SHORTEST_SHORT || /\d/.test(token)) return token;
  let near = nearest.get(token);
  if (near === undefined) {
    near = token;
    if (token.endsWith('s') && worth.has(token.slice(0, -1))) near = token.slice(0, -1);
    else if (worth.has(`${token}s`)) near = `${token}s`;
    else
      near =
        (token.length < SHORTEST_SLIP
          ? undefined
          : [...worth.keys()].find((other) => other.length >= SHORTEST_SLIP && isOneSlip(token, other))) ??
        shortened(token) ??
        token;
    if (nearest.size > 5000) nearest.clear();
    nearest.set(token, near);
  }
  return near;
}

/** A word nobody listed takes from a match what a middling word would. */
const WORTH_OF_UNKNOWN = 2.5;
const LEAST = 0.3;

function byTokens(tokens: readonly string[], into: Map<string, number>): void {
  const { forms, worth } = lexicon();
  const said = new Set(tokens.map(known));
  const worthOf = (token: string): number =>
    JOINING.has(token)
      ? WORTH_OF_JOINING
      : (worth.get(token) ?? (/^\d+$/.test(token) || token.length === 1 ? 0.5 : WORTH_OF_UNKNOWN));
  const whole = [...said].reduce((sum, token) => sum + worthOf(token), 0);
  const seen = new Set<Form>();
  for (const token of said)
    for (const form of forms.get(token) ?? []) {
      if (seen.has(form)) continue;
      seen.add(form);
      const common = form.tokens.reduce((sum, one) => sum + (said.has(one) ? worthOf(one) : 0), 0);
      const score = 0.95 * Math.sqrt((common / whole) * Math.min(1, common / form.weight));
      if (score > Math.max(LEAST, into.get(form.concept) ?? 0)) into.set(form.concept, score);
    }
}

/** Words seen once in a concept say half of what they say when they are seen often. */
const SMOOTHED = 0.5;
const LEAST_LIKELY = 0.25;
const BY_ALL_WORDS = 0.8;
/**
 * Which concept would use these words together, though none of its forms is written so: the chance of each word in the
 * forms of each concept, multiplied (naive Bayes). "Weight of one netful" is made of words of a sample's weight.
 */
function byChances(tokens: readonly string[], into: Map<string, number>): void {
  const { used, sizes, worth } = lexicon();
  const telling = new Set(tokens.filter((token) => !JOINING.has(token)));
  const said = [...new Set([...telling].map(known))].filter((token) => used.has(token));
  const all = telling.size;
  if (said.length === 0 || all < 2) return;
  const concepts = new Set(said.flatMap((token) => [...(used.get(token)?.keys() ?? [])]));
  const chances = new Map<string, number>();
  let whole = 0;
  for (const concept of concepts) {
    let chance = 1;
    const size = sizes.get(concept) ?? 1;
    for (const token of said) {
      const of = used.get(token);
      const general = (of?.size ?? 1) / sizes.size;
      chance *= ((of?.get(concept) ?? 0) + SMOOTHED * general) / (size + SMOOTHED);
    }
    chances.set(concept, chance);
    whole += chance;
  }
  const known1 = said.reduce((sum, token) => sum + (worth.get(token) ?? 0), 0);
  const unknown = WORTH_OF_UNKNOWN * (all - said.length);
  const covered = known1 / (known1 + unknown);
  for (const [concept, chance] of chances) {
    const score = BY_ALL_WORDS * Math.sqrt((chance / whole) * covered);
    if (chance / whole > LEAST_LIKELY && score > Math.max(LEAST, into.get(concept) ?? 0))
      into.set(concept, score);
  }
}

const remembered = new Map<string, ReadonlyMap<string, number>>();
const LONGEST = 90;
const MOST_TOKENS = 14;

/** The concepts a heading may name, each with how well it fits: 1 is the very words. */
export function conceptsOf(heading: string): ReadonlyMap<string, number> {
  let found = remembered.get(heading);
  if (found) return found;
  const scores = new Map<string, number>();
  const tokens = heading.length > LONGEST ? [] : tokensOf(heading);
  if (tokens.length > 0 && tokens.length <= MOST_TOKENS) {
    const key = tokens.join(' ');
    byTokens(tokens, scores);
    byChances(tokens, scores);
    for (const concept of lexicon().short.get(key) ?? []) scores.set(concept, 0.8);
    for (const concept of lexicon().exact.get(key) ?? []) scores.set(concept, 1);
  }
  if (remembered.size > 4000) remembered.clear();
  remembered.set(heading, (found = scores));
  return found;
}

/** Is the text, whole or as its first words, a form of the concept? For labels of total rows and the like. */
const begun = new Map<string, readonly string[]>();
const NUMBERED = /^[a-z]{0,3}[-_]?\d+$/i;
export function startsWith(text: string, concepts: readonly string[]): boolean {
  // Tags and numbers of lines begin no sum.
  if (NUMBERED.test(text)) return false;
  let named = begun.get(text);
  if (!named) {
    if (begun.size > 20_000) begun.clear();
    begun.set(text, (named = firstWords(text)));
  }
  return named.some((one) => concepts.includes(one));
}
/** The concepts that the longest known beginning of a text names. */
function firstWords(text: string): readonly string[] {
  const tokens = tokensOf(text);
  const { exact, short } = lexicon();
  for (let n = Math.min(4, tokens.length); n > 0; n--) {
    const key = tokens.slice(0, n).join(' ');
    const named = [...(exact.get(key) ?? []), ...(n === tokens.length ? (short.get(key) ?? []) : [])];
    if (named.length > 0) return named;
  }
  return [];
}

/** Is the whole text a form of the concept? */
export function isWord(text: string, concept: string): boolean {
  const key = keyOf(text);
  const { exact, short } = lexicon();
  return (exact.get(key) ?? []).includes(concept) || (short.get(key) ?? []).includes(concept);
}

/** Names of months and their short forms, in the order of the table. */
function monthNames(): Map<string, number> {
  const { exact, short } = lexicon();
  const named = new Map<string, number>();
  for (const i of MONTH_NAMES.keys()) {
    const concept = `month_${String(i + 1).padStart(2, '0')}`;
    for (const [form, concepts] of [...exact, ...short])
      if (concepts.includes(concept) && !/^\d/.test(form) && form.length > 2 && !named.has(form))
        named.set(form, i + 1);
  }
  return named;
}
let months: Map<string, number> | undefined;
/** 1 to 12 for the name of a month in any language of the table, whole or its first letters; else 0. */
export function monthOf(word: string): number {
  const key = keyOf(word);
  if (key === '' || /^\d/.test(key)) return 0;
  months ??= monthNames();
  const direct = months.get(key);
  if (direct !== undefined) return direct;
  if (key.length < 3) return 0;
  for (const [form, month] of months) if (form.startsWith(key)) return month;
  return 0;
}
