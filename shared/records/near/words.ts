import type { Near } from '../../base/near';
import { conceptsOf, monthOf } from '../words/lexicon';
import { edge } from './check';

/** What a heading is taken for changes at numbers somebody chose. */
const meant = (heading: string): string =>
  [...conceptsOf(heading)].sort(([, a], [, b]) => b - a).map(([concept]) => concept)[0] ?? '';

export const NEAR: readonly Near[] = [
  edge(
    'Letters of a word that may be one slip away from another',
    5,
    meant,
    ['tanc', 'larvx'],
    ['', 'larvae_count'],
  ),
  edge('Letters of the shortest short form', 3, meant, ['fe', 'mor'], ['', 'mortality_daily']),
  edge('Letters of a word that people shorten', 5, meant, ['yyy', 'buyr'], ['', 'buyer']),
  edge('Letters of a short form without its vowels', 4, meant, ['wtr', 'rcpt'], ['', 'receipt']),
  edge(
    'What words seen once in a concept say',
    0.5,
    meant,
    ['medication start when', 'unslaked price'],
    ['first_feeding', 'price'],
  ),
  edge(
    'Words that may be used together for a thing',
    2,
    meant,
    ['horas', 'wanted larval'],
    ['latency', 'ph_target'],
  ),
  edge('Letters of the shortest beginning of a month', 3, monthOf, ['de', 'jui'], [0, 6]),
];
