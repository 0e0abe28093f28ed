import { EMPTY_WORDS, WORDS } from './words';

/** Words of a question as the finder compares them: folded, stemmed, each by the name of its thing. */

export const fold = (text: string): string =>
  text
    .toLowerCase()
    .replace(/œ/g, 'oe')
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/[’`]/g, "'");

/** Endings of English, French, Portuguese and Spanish that make no other thing of a word. */
const ENDINGS = /(?:ations?|ings?|ed|es|s|er|ent|ir|ar)$/;
const LEAST = 3;
export const stem = (word: string): string => {
  const short = word.replace(ENDINGS, '');
  return short.length >= LEAST ? short : word;
};

const thingOf = new Map<string, string>();
for (const [thing, words] of Object.entries(WORDS))
  for (const word of [thing, ...words.split(' ')]) {
    const folded = fold(word);
    if (!thingOf.has(folded)) thingOf.set(folded, thing);
    if (!thingOf.has(stem(folded))) thingOf.set(stem(folded), thing);
  }

/** Numbers and their units say nothing of which function it is. */
const NUMBER = /^\d[\d.,]*(?:l|kg|g|mg|ml|k|c|m3|ppm|h)?$/;

/** Words of a text, one by one. */
export const wordsIn = (text: string): readonly string[] =>
  fold(text)
    .split(/[^\p{L}\p{N}']+/u)
    .flatMap((word) => (/^[ldnjsqm]'/.test(word) ? [word.slice(2)] : [word]))
    .filter((word) => word !== '' && !NUMBER.test(word));

/** The name of the thing a word means, or its stem; nothing for a word that says nothing. */
export function termOf(word: string): string | undefined {
  const folded = fold(word);
  if (EMPTY_WORDS.has(folded)) return undefined;
  return thingOf.get(folded) ?? thingOf.get(stem(folded)) ?? stem(folded);
}
