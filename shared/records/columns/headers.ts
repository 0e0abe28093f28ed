import { isOneSlip } from '../words/slip';
import type { FieldName } from '../fields';
import { FIELD_NAMES } from '../fields';
import { unitForField, unitOfWord, UNITS } from './cells/units';
import { SPELLINGS, WORDS } from './words';

/** A header taken apart: its words in short form, and the unit it names. */
export interface KnownHeader {
  readonly text: string;
  readonly words: readonly string[];
  readonly unit: string | undefined;
}

export interface Guess {
  readonly field: FieldName;
  readonly score: number;
  readonly unit: string | undefined;
  readonly because: string;
}

interface Spelling {
  readonly field: FieldName;
  readonly words: readonly string[];
  readonly key: string;
  readonly unit: string | undefined;
  readonly says: string;
}

const keyOf = (words: readonly string[]): string => [...new Set(words)].sort().join(' ');

const SPELLING_LIST: readonly Spelling[] = FIELD_NAMES.flatMap((field) =>
  (SPELLINGS[field] ?? '')
    .split(',')
    .map((one) => one.trim())
    .filter(Boolean)
    .map((says) => {
      const [, bare = says, unit] = /^(.*?)\s*(?:\[(.+)\])?$/.exec(says) ?? [];
      const words = bare.split(' ').filter(Boolean);
      return { field, words, key: keyOf(words), unit, says };
    }),
);
const VOCABULARY = new Set(SPELLING_LIST.flatMap(({ words }) => words));

const SHORTEST_SLIP = 5;

const knownWords = new Map<string, readonly string[]>();
/** A word in the short form of the lists; a slip of one letter in a long word is forgiven. */
function shortForm(word: string): readonly string[] {
  let found = knownWords.get(word);
  if (!found) {
    const listed = Object.hasOwn(WORDS, word) ? WORDS[word] : undefined;
    const near =
      listed === undefined && !VOCABULARY.has(word) && word.length >= SHORTEST_SLIP
        ? [...VOCABULARY].find((known) => known.length >= SHORTEST_SLIP && isOneSlip(word, known))
        : undefined;
    const plain =
      near ?? (word.endsWith('s') && VOCABULARY.has(word.slice(0, -1)) ? word.slice(0, -1) : word);
    knownWords.set(word, (found = (listed ?? plain).split(' ').filter(Boolean)));
  }
  return found;
}

const BRACKETS = /[([{]([^)\]}]*)[)\]}]/g;

export function parseHeader(text: string): KnownHeader {
  const lower = text.toLowerCase().replace(/\s+/g, ' ').trim();
  let unit: string | undefined;
  const bare = lower.replace(BRACKETS, (_, inside: string) => {
    const named = unitOfWord(inside);
    if (named === undefined) return ` ${inside} `;
    unit = named;
    return ' ';
  });
  // "wt, kg" and "temp °F": a unit written as the last word.
  const parts = bare
    .replace(/[°º]\s*([cf])\b/g, ' deg$1 ')
    .replace(/\bno\.?\s*\/\s*g\b/g, 'number per g')
    .replace(/([\w%])\s*\/\s*(g|gram|kg|day|d)\b/g, '$1 per $2')
    .replace(/%/g, ' percent ')
    .split(/[^\p{L}\p{N}#%/]+/u)
    .filter(Boolean);
  const last = parts.at(-1);
  if (
    unit === undefined &&
    parts.length > 1 &&
    last !== undefined &&
    last !== 'percent' &&
    parts.at(-2) !== 'per' &&
    !/^(no|number|day|days|min|oc|of)$/.test(last)
  )
    unit = unitOfWord(last);
  const words = parts.flatMap(shortForm);
  if (unit === undefined && words.includes('percent') && !words.includes('per')) unit = '%';
  return { text, words, unit };
}

function scoreOf(spelling: Spelling, header: KnownHeader, key: string): number {
  const size = new Set(header.words).size;
  if (spelling.unit !== undefined && spelling.unit !== header.unit) return 0;
  const bonus = spelling.unit !== undefined ? 0.06 : 0;
  // Tank number is a name, number of tanks a count: the order of words tells them apart.
  if (spelling.key === key)
    return 0.9 + bonus + (spelling.words.join(' ') === header.words.join(' ') ? 0.03 : 0);
  const inside = spelling.words.filter((word) => header.words.includes(word)).length;
  if (inside === spelling.words.length) return Math.min(0.9, 0.45 + (0.45 * inside) / size + bonus);
  return 0;
}

/** A unit the field cannot have speaks against it, one it can have speaks for it. */
function unitFit(field: FieldName, header: KnownHeader): number {
  if (header.unit === undefined) return 0;
  const fits = unitForField(field, header.unit) !== undefined;
  if (fits) return 0.05;
  const own = UNITS[field];
  if (!own && ['mL', 'mL/kg', 'per g', 'mg/L'].includes(header.unit)) return 0;
  return header.unit === 'd' || header.unit === 'min' || header.unit === 'h' ? -0.05 : -0.35;
}

const withoutUnitWord = (header: KnownHeader): KnownHeader => {
  const words = header.words.filter(
    (word, i) => i === 0 || i < header.words.length - 1 || unitOfWord(word) === undefined,
  );
  return words.length === header.words.length ? header : { ...header, words };
};

const remembered = new Map<string, readonly Guess[]>();
const MOST_REMEMBERED = 5000;
const LONGEST_HEADER = 70;

/** What a header may mean, best first. */
export function guessHeader(text: string): readonly Guess[] {
  let guesses = remembered.get(text);
  if (guesses) return guesses;
  if (remembered.size > MOST_REMEMBERED) remembered.clear();
  guesses = text.length > LONGEST_HEADER || !/\p{L}/u.test(text) ? [] : freshGuess(text);
  remembered.set(text, guesses);
  return guesses;
}

function freshGuess(text: string): readonly Guess[] {
  const full = parseHeader(text);
  if (full.words.length === 0 || full.words.length > 9) return [];
  const best = new Map<FieldName, Guess>();
  for (const header of new Set([full, withoutUnitWord(full)])) {
    const key = keyOf(header.words);
    for (const spelling of SPELLING_LIST) {
      const raw = scoreOf(spelling, header, key);
      if (raw === 0) continue;
      const score = Math.min(1, raw + unitFit(spelling.field, header));
      if (score < 0.35 || score <= (best.get(spelling.field)?.score ?? 0)) continue;
      best.set(spelling.field, {
        field: spelling.field,
        score,
        unit: unitForField(spelling.field, header.unit),
        because: `the header "${text.trim()}" reads as "${spelling.says.replace(/\s*\[.*$/, '')}"`,
      });
    }
  }
  return [...best.values()].sort((a, b) => b.score - a.score);
}
