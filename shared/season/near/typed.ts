import type { Near } from '../../base/near';
import { ownFigures } from '../book/ownFigures';
import { faultsIn } from './small';

/** What may stand in an order book and in the form of one order. */
const order = (changes: object): object => ({
  orders: [{ name: 'Pond', product: 'fry', number: 10_000, due: 46_100, ...changes }],
});
const dueOn = (due: number): readonly string[] => faultsIn(order({ due }));
const plannedOn = (day: number): readonly string[] => faultsIn({ plannedOn: day });
const stripping = (stripTo: number): readonly string[] => faultsIn({ staff: { stripTo } });
const female = (kilograms: number): readonly string[] => faultsIn({ females: [{ tag: 'F1', kilograms }] });
const water = (t: number): readonly string[] =>
  faultsIn({ temperatures: Array.from({ length: 12 }, () => t) });

/** How much hatch varies, where runs say that the next one lies between these shares. */
const learned = (low: number, high: number): unknown =>
  ownFigures(() => ({ hatch: { value: 0.6, low, high, meanLow: 0.55, meanHigh: 0.65, runs: 9 } })).spreads
    .hatch;

export const NEAR: readonly Near[] = [
  {
    number: 'First day an order book takes, 1 January 2000',
    value: 36_526,
    below: () => plannedOn(36_525),
    above: () => plannedOn(36_526),
    answers: [['Planned on: expected a date from 2000-01-01 to 2099-12-31, got 36525.'], []],
  },
  {
    number: 'Last day an order book takes, 31 December 2099',
    value: 73_050,
    below: () => dueOn(73_050),
    above: () => dueOn(73_051),
    answers: [[], ['Due on: expected a date from 2000-01-01 to 2099-12-31, got 73051.']],
  },
  {
    number: 'Last hour of a day',
    value: 24,
    below: () => stripping(23.9),
    above: () => stripping(24.1),
    answers: [
      [],
      ['Stripping until: expected a clock time from 00:00 to 23:59 or an hour from 0 to 24, got 24.1.'],
    ],
  },
  {
    number: 'Kilograms of a female that can only be grams',
    value: 100,
    below: () => female(99),
    above: () => female(101),
    answers: [
      ['Weight of a female: expected a number from 0.1 to 15 kg, got 99.'],
      [
        'Weight of a female: expected a number from 0.1 to 15 kg, got 101. That looks like grams: 101 g is 0.101 kg.',
      ],
    ],
  },
  {
    number: '°C of water that can only be °F',
    value: 45,
    below: () => water(44)[0],
    above: () => water(46)[0],
    answers: [
      'Water of the month: expected a number from 10 to 40 °C, got 44.',
      'Water of the month: expected a number from 10 to 40 °C, got 46. That looks like °F.',
    ],
  },
  {
    number: 'Normal deviations beside the middle of an interval of 95 %',
    value: 1.959964,
    below: () => learned(0.4, 0.8),
    above: () => learned(0.3, 0.9),
    answers: [
      { runs: 0.0988, season: 0.0255 },
      { runs: 0.1509, season: 0.0255 },
    ],
  },
];
