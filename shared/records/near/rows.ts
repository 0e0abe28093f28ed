import type { Near } from '../../base/near';
import type { NumericField, RecordText } from '../fields';
import { RULES } from '../rules';
import type { RuleVerdict } from '../rules/rule';
import { heapOf, isHeaped } from '../rules/figures/heaping';

/** What is said of one record changes at numbers somebody chose; no bundle holds this file. */
type Plain = Readonly<Partial<Record<NumericField, number>>>;
/** What a rule of one record says of it. */
export function saidOf(
  id: string,
  plain: Plain,
  texts: Readonly<Partial<Record<RecordText, string>>> = {},
): readonly RuleVerdict[] {
  const rule = RULES.find((one) => one.id === id);
  if (rule?.scope !== 'row') throw new Error(`${id} is no rule of one record`);
  const found: RuleVerdict | readonly RuleVerdict[] | undefined = rule.check(
    {
      num: (field) => plain[field] ?? NaN,
      text: (field) => texts[field] ?? '',
      middle: () => NaN,
      given: Object.keys(plain) as NumericField[],
      relations: [],
    },
    {},
  );
  return found === undefined ? [] : 'field' in found ? [found] : found;
}
const said = (...asked: Parameters<typeof saidOf>): number => saidOf(...asked).length;
const dose = (rate: number, preparation = ''): number =>
  said('DOSE.PERKG', { hormoneVolume: 2 * rate, femaleWeight: 2 }, { preparation });
const ration = (share: number, weight: number): number =>
  said('FEED.RATION', { fish: 1000, weight, feed: share * 1000 * weight });
/** Growth of so many % a day over ten days. */
const growth = (percent: number, startWeight: number): number =>
  said('GROWTH.RANGE', { startWeight, endWeight: startWeight * Math.exp(percent / 10), days: 10 });
/** Counts of which so many end in 00. */
const heaped = (round: number, odd: number, from = 1000): boolean =>
  isHeaped(
    heapOf([
      ...Array.from({ length: round }, (_, i) => from + 100 * i),
      ...Array.from({ length: odd }, (_, i) => 1011 + 101 * i),
    ]),
  );

const pair = (
  number: string,
  value: number,
  below: () => unknown,
  above: () => unknown,
  answers: Near['answers'],
): Near => ({ number, value, below, above, answers });

export const NEAR: readonly Near[] = [
  pair(
    'Fewest eggs in a gram',
    400,
    () => said('EGGS.PERGRAM', { eggsPerGram: 399 }),
    () => said('EGGS.PERGRAM', { eggsPerGram: 401 }),
    [1, 0],
  ),
  pair(
    'Most eggs in a gram',
    1250,
    () => said('EGGS.PERGRAM', { eggsPerGram: 1249 }),
    () => said('EGGS.PERGRAM', { eggsPerGram: 1251 }),
    [0, 1],
  ),
  pair(
    'Share of her weight a female gives as eggs at most',
    0.3,
    () => said('EGGS.YIELD', { eggWeight: 599, femaleWeight: 2 }),
    () => said('EGGS.YIELD', { eggWeight: 601, femaleWeight: 2 }),
    [0, 1],
  ),
  pair(
    'Least millilitres of any hormone a kilogram',
    0.05,
    () => dose(0.049),
    () => dose(0.051),
    [1, 0],
  ),
  pair(
    'Most millilitres of any hormone a kilogram',
    4,
    () => dose(3.9),
    () => dose(4.1),
    [0, 1],
  ),
  pair(
    'Least millilitres of a ready-made solution a kilogram',
    0.2,
    () => dose(0.19, 'ready-made solution'),
    () => dose(0.21, 'ready-made solution'),
    [1, 0],
  ),
  pair(
    'Most millilitres of a ready-made solution a kilogram',
    1,
    () => dose(0.99, 'ready-made solution'),
    () => dose(1.01, 'ready-made solution'),
    [0, 1],
  ),
  pair(
    'Least feed conversion',
    0.45,
    () => said('FCR.RANGE', { conversion: 0.44 }),
    () => said('FCR.RANGE', { conversion: 0.46 }),
    [1, 0],
  ),
  pair(
    'Most feed conversion',
    6,
    () => said('FCR.RANGE', { conversion: 5.9 }),
    () => said('FCR.RANGE', { conversion: 6.1 }),
    [0, 1],
  ),
  pair(
    'Least feed of a day, share of body weight',
    0.001,
    () => ration(0.00095, 20),
    () => ration(0.00105, 20),
    [1, 0],
  ),
  pair(
    'Most feed of a day, larvae below 0.1 g',
    2,
    () => ration(1.9, 0.05),
    () => ration(2.1, 0.05),
    [0, 1],
  ),
  pair(
    'Most feed of a day, fry below 1 g',
    1,
    () => ration(0.95, 0.5),
    () => ration(1.05, 0.5),
    [0, 1],
  ),
  pair(
    'Most feed of a day, fish below 10 g',
    0.4,
    () => ration(0.39, 5),
    () => ration(0.41, 5),
    [0, 1],
  ),
  pair(
    'Most feed of a day, larger fish',
    0.2,
    () => ration(0.19, 50),
    () => ration(0.21, 50),
    [0, 1],
  ),
  pair(
    'Fastest growth a day from below 0.1 g',
    75,
    () => growth(74, 0.01),
    () => growth(76, 0.01),
    [0, 1],
  ),
  pair(
    'Fastest growth a day from below 1 g',
    30,
    () => growth(29, 0.5),
    () => growth(31, 0.5),
    [0, 1],
  ),
  pair(
    'Fastest growth a day from below 10 g',
    15,
    () => growth(14.5, 5),
    () => growth(15.5, 5),
    [0, 1],
  ),
  pair(
    'Fastest growth a day from 10 g',
    8,
    () => growth(7.8, 50),
    () => growth(8.2, 50),
    [0, 1],
  ),
  pair(
    'Share of their weight fish may seem to lose between two samples',
    0.8,
    () => said('GROWTH.RANGE', { startWeight: 10, endWeight: 7.9, days: 10 }),
    () => said('GROWTH.RANGE', { startWeight: 10, endWeight: 8.1, days: 10 }),
    [1, 0],
  ),
  pair(
    'Least reading of water in °F',
    55,
    () => said('SLIP.FAHRENHEIT', { temperature: 54.9 }),
    () => said('SLIP.FAHRENHEIT', { temperature: 55.1 }),
    [0, 1],
  ),
  pair(
    'Highest reading of water in °F',
    105,
    () => said('SLIP.FAHRENHEIT', { temperature: 104.9 }),
    () => said('SLIP.FAHRENHEIT', { temperature: 105.1 }),
    [1, 0],
  ),
  pair(
    'First day of a record book',
    32_874,
    () => said('DATE.CENTURY', { date: 32_873 }),
    () => said('DATE.CENTURY', { date: 32_875 }),
    [1, 0],
  ),
  pair(
    'Day a record book ends before',
    73_051,
    () => said('DATE.CENTURY', { date: 73_050 }),
    () => said('DATE.CENTURY', { date: 73_052 }),
    [0, 1],
  ),
  pair(
    'Share of counts in 00 from which on they are rounded',
    0.5,
    () => heaped(9, 11),
    () => heaped(10, 10),
    [false, true],
  ),
  pair(
    'Counts of which roundness is judged',
    10,
    () => heaped(6, 3),
    () => heaped(6, 4),
    [false, true],
  ),
  pair(
    'Counts from which on two noughts say something',
    1000,
    () => isHeaped(heapOf(new Array<number>(12).fill(900))),
    () => isHeaped(heapOf(new Array<number>(12).fill(1000))),
    [false, true],
  ),
];
