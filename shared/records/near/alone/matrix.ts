import type { Near } from '../../../base/near';
import type { Cell } from '../../../base/values';
import { repeatedColumns } from '../../meaning/matrix';
import { edge } from '../check';
import { contentIn } from './fit';

/** What columns that say the same of different tanks or days hold changes at numbers somebody chose. */
const holds = (
  headers: readonly string[],
  cells: (column: number, i: number) => Cell,
  title = '',
  lines = 9,
): string => {
  const { columns, field } = repeatedColumns(
    headers.map((header, c) => ({
      header,
      parent: '',
      content: contentIn(Array.from({ length: lines }, (_, i) => cells(c, i))),
    })),
    [title],
  );
  return columns.size === 0 ? 'no matrix' : (field ?? 'open');
};
const count = (column: number, i: number): number => 240 + 7 * ((i * 5 + column) % 9);
const numbered = (words: string): readonly string[] => [1, 2, 3].map((n) => `${words} ${n}`);
const under = (title: string): string => holds(numbered('T'), count, title);
const named = (words: string): string => holds(numbered(words), count);

export const NEAR: readonly Near[] = [
  edge(
    'Letters of a heading of many',
    24,
    named,
    ['Quolt ferk nimm wrent', 'Quolt ferk nimm wrent ul'],
    ['open', 'no matrix'],
  ),
  edge(
    'Share of numbers in a column of many',
    0.5,
    (numbers: number) =>
      holds(numbered('T'), (c, i) => (i < numbers ? count(c, i) : `Ferk ${i}`), 'Dead', 21),
    [10, 11],
    ['no matrix', 'dead'],
  ),
  edge('Letters of words that many headings share', 4, named, ['Fry', 'Eggs'], ['open', 'eggs']),
  edge('Worth of words that only name a tank', 0.5, named, ['Number of', 'Number'], ['stocked', 'open']),
  edge(
    'Fish that grow fewer with age',
    50,
    (least: number) => holds(numbered('Day'), (c, i) => least + 20 * (2 - c) + (i % 3)),
    [47, 51],
    ['open', 'fish'],
  ),
  edge(
    'Worth of a title that says what many columns hold',
    0.8,
    under,
    ['Pond rate', 'Tank temperature'],
    ['open', 'temperature'],
  ),
];
