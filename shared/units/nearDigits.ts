import type { Near } from '../base/near';
import { decimalIn, readNumber } from './numberText';

/** What a text is read as changes at these lengths. */
export const NEAR: readonly Near[] = [
  {
    number: 'Digits in front of a lone mark that may part thousands',
    value: 3,
    below: () => decimalIn('123,456'),
    above: () => decimalIn('1234,567'),
    answers: [undefined, ','],
  },
  {
    number: 'Letters of the longest unit behind a number in a field',
    value: 12,
    below: () => readNumber('5 litres a vat', '.').unit,
    above: () => readNumber('5 litres a vats', '.').unit,
    answers: ['litres a vat', ''],
  },
];
