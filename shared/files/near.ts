import type { Near } from '../base/near';
import type { StoredValue } from './cells/stored';
import { Finder } from './share/decisions/headings';
import { LeftValues } from './share/leaveOut/values';
import { placesText } from './share/places';
import { text } from './share/proof/page';

/** What a shared copy says and looks for changes at numbers somebody chose; no bundle holds this file. */
const left = (raw: string): LeftValues => {
  const values = new LeftValues();
  values.add({ type: 'str', raw });
  return values;
};
const places = (count: number): string => placesText(Array.from({ length: count }, (_, i) => `B${i + 1}`));
const longest = (length: number): number => text('x'.repeat(length)).value.raw.length;

const word = (raw: string): StoredValue => ({ type: 'str', raw });
/** Headings of one column under each other of which the later are not told. */
function untold(headings: readonly string[]): number {
  const finder = new Finder(new Map(headings.map((_, row) => [row, new Set([0])])));
  headings.forEach((heading, row) => {
    finder.add(row, 0, word(heading));
  });
  const [column] = finder.columns('A');
  return headings.length - (column?.heading.split(' / ').length ?? 0);
}
/** Columns found under so many words of which the first stands over a filled cell. */
function under(words: number): number {
  const finder = new Finder(new Map());
  for (let i = 0; i < words; i++) finder.add(0, i, word(`Word ${i}`));
  finder.add(1, 0, { type: 'n', raw: '7' });
  return finder.columns('A').length;
}

export const NEAR: readonly Near[] = [
  {
    number: 'Places that are read',
    value: 6,
    below: () => places(6),
    above: () => places(7),
    answers: ['B1; B2; B3; B4; B5; B6', 'B1; B2; B3; B4; B5; B6 and 1 more'],
  },
  {
    number: 'Signs of a cell of the page, at the most',
    value: 32_000,
    below: () => longest(31_000),
    above: () => longest(33_000),
    answers: [31000, 32002],
  },
  {
    number: 'Number from which on a cell may hold a telephone number',
    value: 10,
    below: () => left('95 000 05').inNumber(950_000.5),
    above: () => left('105 00 00').inNumber(1_050_000),
    answers: [false, true],
  },
  {
    number: 'Signs of the shortest value that is looked for in bytes',
    value: 5,
    below: () => [...left('Baba').spellings()],
    above: () => [...left('Babas').spellings()],
    answers: [[], ['babas']],
  },
  {
    number: 'Headings of one column that are told',
    value: 3,
    below: () => untold(['Tank', 'Litres', 'Deep']),
    above: () => untold(['Tank', 'Litres', 'Deep', 'Wide']),
    answers: [0, 1],
  },
  {
    number: 'Headings of which one must stand over a filled cell',
    value: 3,
    below: () => under(3),
    above: () => under(4),
    answers: [1, 0],
  },
];
