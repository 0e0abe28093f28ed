import type { Near } from '../base/near';
import { isMomentCell } from './dates';
import * as quantities from './quantities';
import type { Quantity } from './quantities';
import { readTypedDay, readTypedHour } from './typedTime';

/** What a typed day, hour or number is read as, and the slip that is told behind a number out of bounds. */

const hour = (typed: string): unknown => {
  const read = readTypedHour(typed);
  return read.kind === 'time' ? read.understood : read.kind;
};
const day = (typed: string): unknown => {
  const read = readTypedDay(typed);
  return read.kind === 'time' ? read.understood : read.kind;
};
const slip = ({ slip: told }: Quantity, value: number): string | undefined => told?.(value);

export const NEAR: readonly Near[] = [
  {
    number: 'Hours of a day',
    value: 24,
    below: () => hour('23 h'),
    above: () => hour('25 h'),
    answers: ['23:00', 'none'],
  },
  {
    number: 'Hours before or after noon',
    value: 12,
    below: () => hour('12 pm'),
    above: () => hour('13 pm'),
    answers: ['12:00', 'none'],
  },
  {
    number: 'Minutes of an hour, written without a mark',
    value: 60,
    below: () => hour('2258'),
    above: () => hour('2262'),
    answers: ['22:58', 'none'],
  },
  {
    number: 'Minutes of an hour, behind a mark',
    value: 60,
    below: () => hour('22:58'),
    above: () => hour('22:62'),
    answers: ['22:58', 'none'],
  },
  {
    number: 'Century of a year of two digits',
    value: 2000,
    below: () => day('31/3/27'),
    above: () => day('31/3/99'),
    answers: ['Wed 31 Mar 2027', 'Tue 31 Mar 2099'],
  },
  {
    number: 'First number that is read as a day, 1 January 2000',
    value: 36_526,
    below: () => day('36525'),
    above: () => day('36526'),
    answers: ['none', 'Sat 1 Jan 2000'],
  },
  {
    number: 'Last number that is read as a day, 31 December 2099',
    value: 73_050,
    below: () => day('73050'),
    above: () => day('73051'),
    answers: ['Thu 31 Dec 2099', 'none'],
  },
  {
    number: 'Moment before which a cell is no moment',
    value: 36_526,
    below: () => isMomentCell(36_525.5),
    above: () => isMomentCell(36_526.5),
    answers: [false, true],
  },
  {
    number: 'Moment from which on a cell is no moment',
    value: 73_051,
    below: () => isMomentCell(73_050.5),
    above: () => isMomentCell(73_051.5),
    answers: [true, false],
  },
  {
    number: '°C above which water is in °F',
    value: 45,
    below: () => slip(quantities.celsius, 43),
    above: () => slip(quantities.celsius, 47),
    answers: [undefined, 'That looks like °F: 47 °F is 8.3 °C.'],
  },
  {
    number: '°F of no water any more',
    value: 115,
    below: () => slip(quantities.celsius, 110),
    above: () => slip(quantities.celsius, 120),
    answers: ['That looks like °F: 110 °F is 43.3 °C.', undefined],
  },
  {
    number: 'Per cent at the most',
    value: 100,
    below: () => slip(quantities.share, 95),
    above: () => slip(quantities.share, 105),
    answers: ['Excel stores 95 % as 0.95: type 95% or 0.95.', undefined],
  },
  {
    number: 'Litres above which they are millilitres',
    value: 1e6,
    below: () => slip(quantities.litre, 950_000),
    above: () => slip(quantities.litre, 1_050_000),
    answers: [undefined, 'That looks like millilitres.'],
  },
  {
    number: 'Centimetres below which they are metres',
    value: 10,
    below: () => slip(quantities.centimetre, 9.5),
    above: () => slip(quantities.centimetre, 10.5),
    answers: ['That looks like metres: 9.5 m is 950 cm.', undefined],
  },
  {
    number: 'Kilograms of a fish above which they are grams',
    value: 30,
    below: () => slip(quantities.kilogram, 29),
    above: () => slip(quantities.kilogram, 31),
    answers: [undefined, 'That looks like grams: 31 g is 0.031 kg.'],
  },
  {
    number: 'Sperm in a millilitre below which it is thousands of millions',
    value: 1000,
    below: () => slip(quantities.spermPerMillilitre, 950),
    above: () => slip(quantities.spermPerMillilitre, 1050),
    answers: ['That looks like thousands of millions: 950 thousand million per mL is 950E9.', undefined],
  },
  {
    number: 'Grams of a fish below which they are kilograms',
    value: 0.0005,
    below: () => slip(quantities.fishGram, 0.00048),
    above: () => slip(quantities.fishGram, 0.00052),
    answers: [
      'A fish of 0.00048 g is lighter than a new larva. That looks like kilograms: 0.00048 kg is 0.48 g.',
      undefined,
    ],
  },
  {
    number: 'Grams of a fish above which they are milligrams',
    value: 30_000,
    below: () => slip(quantities.fishGram, 29_000),
    above: () => slip(quantities.fishGram, 31_000),
    answers: [undefined, 'That looks like milligrams.'],
  },
  {
    number: 'Lowest pH a vat of water stands at',
    value: 3,
    below: () => slip(quantities.pH, 2.5) !== undefined,
    above: () => slip(quantities.pH, 3.5) !== undefined,
    answers: [true, false],
  },
  {
    number: 'Highest pH a vat of water stands at',
    value: 11,
    below: () => slip(quantities.pH, 10.5) !== undefined,
    above: () => slip(quantities.pH, 11.5) !== undefined,
    answers: [false, true],
  },
  {
    number: 'meq/L of alkalinity above which it is mg/L',
    value: 20,
    below: () => slip(quantities.meqPerLitre, 19),
    above: () => slip(quantities.meqPerLitre, 21),
    answers: [undefined, 'That looks like mg/L CaCO3: 21 mg/L is 0.4 meq/L.'],
  },
];
