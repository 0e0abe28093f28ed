import type { Near } from '../../base/near';
import { conceptsOf, monthOf } from '../words/lexicon';
import { edge } from './check';

/** What a heading is taken for changes at numbers somebody chose. */
const meant = (heading: string): string =>
  [...conceptsOf(heading)].sort(([, a], [, b]) => b - a).map(([concept]) => concept)[0] ?? '';

/** May a heading name a thing, however little it says so? */
const mayName = ([heading, concept]: readonly [heading: string, concept: string]): boolean =>
  conceptsOf(heading).has(concept);

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
  edge('Worth of a word that only joins others', 0.4, meant, ['yang', 'the'], ['', 'substrate']),
  edge('Part of a word that its short form keeps', 0.4, meant, ['dro', 'hyp'], ['', 'hormone_name']),
  edge(
    'Least score of a thing that a heading may name',
    0.3,
    mayName,
    [
      ['weighings how', 'price'],
      ['date logistics', 'first_feeding'],
    ],
    [false, true],
  ),
  edge(
    'Least chance of a thing that words together may name',
    0.25,
    mayName,
    [
      ['boy one', 'hormone_dose_per_kg'],
      ['dilution fish', 'food_per_fish'],
    ],
    [false, true],
  ),
];
