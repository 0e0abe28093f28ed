import type { FieldName } from '../../fields';
import type { Candidate, Looked } from './looked';
import { LEAST_SCORE } from './looked';

/** A column of dates under words nobody knows is still the date of the record, if no other column is. */
export function byContent(looked: readonly Looked[], given: Map<Looked, Candidate>): void {
  if ([...given.values()].some(({ field }) => field === 'date')) return;
  const dated = looked.find(
    (one) => !given.has(one) && one.content.filled >= 2 && one.content.dates >= 0.8 * one.content.filled,
  );
  if (dated && ![...given.values()].some(({ field }) => field === 'injectedOn'))
    given.set(dated, {
      field: 'date',
      score: LEAST_SCORE,
      words: 0,
      because: 'nearly every cell holds a date',
    });
}

/** What a column of words is in a table of its kind, where nothing else there says it and its heading is not known. */
const WORDS_OF: readonly (readonly [FieldName, readonly FieldName[], number])[] = [
  ['customer', ['amount', 'paid', 'due', 'priceEach', 'unitPrice', 'receipt'], 2],
  ['description', ['income', 'expense', 'balance'], 2],
  ['material', ['treatRate', 'treatAmount', 'minutes'], 2],
];
export function byPlace(looked: readonly Looked[], given: Map<Looked, Candidate>): void {
  const held = new Set([...given.values()].map(({ field }) => field));
  const unread = looked.filter(
    (one) => !given.has(one) && one.content.filled >= 3 && one.content.words >= 0.8 * one.content.filled,
  );
  const [only] = unread;
  if (unread.length !== 1 || !only || only.candidates.length === 0) return;
  for (const [field, company, least] of WORDS_OF)
    if (!held.has(field) && company.filter((one) => held.has(one)).length >= least) {
      given.set(only, { field, score: LEAST_SCORE, words: 0, because: 'of what stands beside it' });
      return;
    }
}
