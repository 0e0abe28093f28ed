import type { Near } from '../../base/near';
import { readNumber } from '../columns/cells/numbers';
import { swaps } from '../rules/explain';
import { edge } from './check';
import { saidOf } from './rows';

/** What is said of single figures, and how gravely, changes at numbers somebody chose. */
const speaks = (...asked: Parameters<typeof saidOf>): boolean => saidOf(...asked).length > 0;
const ration = (share: number, weight: number): ReturnType<typeof saidOf>[number] | undefined =>
  saidOf('FEED.RATION', { fish: 1000, weight, feed: share * 1000 * weight })[0];
const hint = (share: number): boolean => ration(share, 20)?.sentence.includes('would fit') === true;
const grows =
  (percent: number) =>
  (startWeight: number): boolean =>
    speaks('GROWTH.RANGE', { startWeight, endWeight: startWeight * Math.exp(percent / 10), days: 10 });
const eats =
  (share: number) =>
  (weight: number): boolean =>
    ration(share, weight) !== undefined;
const killed = (incubationTemperature: number): boolean =>
  speaks('TEMPERATURE.LETHAL', { incubationTemperature, hatched: 1000 });
const celsius = (fahrenheit: number): boolean =>
  speaks('SLIP.FAHRENHEIT', { temperature: ((fahrenheit - 32) * 5) / 9 });

export const NEAR: readonly Near[] = [
  {
    number: 'Letters of the longest unit behind a number in a cell',
    value: 14,
    below: () => readNumber('5 litres the vat', '.').unit,
    above: () => readNumber('5 litres the vats', '.').unit,
    answers: ['litres the vat', ''],
  },
  edge(
    'Fewest in a gram that are eggs',
    200,
    (eggsPerGram: number) => speaks('EGGS.PERGRAM', { eggsPerGram }),
    [199, 201],
    [false, true],
  ),
  edge(
    'Most in a gram that are eggs',
    2000,
    (eggsPerGram: number) => speaks('EGGS.PERGRAM', { eggsPerGram }),
    [1999, 2001],
    [true, false],
  ),
  edge(
    'Share of her weight no female gives as eggs',
    0.6,
    (eggWeight: number) => saidOf('EGGS.YIELD', { eggWeight, femaleWeight: 2 })[0]?.severity,
    [1190, 1210],
    ['unlikely', 'impossible'],
  ),
  edge('Coldest water of eggs in °C', 10, killed, [9.9, 10.1], [false, true]),
  edge('Warmest water of eggs in °C', 40, killed, [39.9, 40.1], [true, false]),
  edge('Grams of a larva, by what it eats', 0.1, eats(1.5), [0.099, 0.101], [false, true]),
  edge('Grams of a fry, by what it eats', 1, eats(0.7), [0.99, 1.01], [false, true]),
  edge('Grams of a fingerling, by what it eats', 10, eats(0.3), [9.9, 10.1], [false, true]),
  edge('Grams of a larva, by how it grows', 0.1, grows(50), [0.099, 0.101], [false, true]),
  edge('Grams of a fry, by how it grows', 1, grows(20), [0.99, 1.01], [false, true]),
  edge('Grams of a fingerling, by how it grows', 10, grows(10), [9.9, 10.1], [false, true]),
  edge('Times the least ration that grams for kilograms may give', 5, hint, [4.9, 5.1], [false, true]),
  edge('Part of the least that grams for kilograms may give', 1000, hint, [4.9, 5.1], [false, true]),
  edge('Times the most that grams for kilograms may give', 1000, hint, [199, 201], [true, false]),
  edge('Part of the most that kilograms for grams may give', 1000, hint, [0.000_19, 0.000_21], [true, false]),
  edge(
    'Part of the least that kilograms for grams may give',
    1000,
    hint,
    [0.000_000_95, 0.000_001_1],
    [false, true],
  ),
  edge(
    'Feed conversion that cannot be',
    0.2,
    (conversion: number) => saidOf('FCR.RANGE', { conversion })[0]?.severity,
    [0.19, 0.21],
    ['impossible', 'unlikely'],
  ),
  edge('Coldest °C in a column of °F', 15, celsius, [14.9, 15.1], [false, true]),
  edge('Warmest °C in a column of °F', 40, celsius, [39.9, 40.1], [true, false]),
  edge(
    'Count below which it is whole',
    100,
    (fry: number) => speaks('COUNT.SENSE', { fry }),
    [99.5, 100.5],
    [true, false],
  ),
  edge(
    'Digits of a number people swap',
    8,
    (x: number) => swaps(x).length > 0,
    [12_345_678, 123_456_789],
    [true, false],
  ),
];
