import type { Near } from '../base/near';
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
];
