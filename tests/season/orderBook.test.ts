import { readOrderBook } from '../../shared/season';
import { BOOK, bookOf, faultsOf } from './support/support';

test('what is left out takes what is usual', () => {
  const book = bookOf({
    orders: [{ name: 'One', product: 'fry', number: '5000', due: '2027-04-01', price: '0,08' }],
  });
  expect(book.orders[0]).toMatchObject({ number: 5000, price: 0.08, forBreeding: false });
  expect(book.staff).toMatchObject({
    stripFrom: 6,
    stripTo: 20,
    femalesPerDay: 10,
    weekdays: [1, 2, 3, 4, 5, 6, 7],
  });
  expect(book.leadDays).toEqual({ hormone: 14, cysts: 14, feed: 7 });
  expect([book.restDays, book.cleaningDays, book.spare, book.malesSurvive]).toEqual([90, 2, 0, false]);
  expect(book.vats[0]?.holds).toEqual(['eggs', 'fry', 'nursing']);
});

test('clock times and dates may be text or numbers', () => {
  expect(bookOf({ staff: { stripFrom: '6:30', stripTo: 11 } }).staff).toMatchObject({
    stripFrom: 6.5,
    stripTo: 11,
  });
  expect(bookOf({ plannedOn: 46_397 }).plannedOn).toBe(46_397);
});

const order = BOOK.orders[0];
test.each([
  [{ orders: [] }, 'orders | Orders: the list is empty; at least 1 is needed.'],
  [
    { orders: Array.from({ length: 1001 }, (_, i) => ({ ...order, name: `o${i}` })) },
    'orders | Orders: at most 1\u202f000.',
  ],
  [
    { orders: [{ ...order, due: '2026-12-01' }] },
    'orders.0.due | Lake farms: is due on 2026-12-01, but the plan is made on ' +
      '2027-01-10. Mend the date or take the order out.',
  ],
  [
    { orders: [{ ...order, due: '31.31.2027' }] },
    'orders.0.due | Due on: expected a date from 2000-01-01 to 2099-12-31, got "31.31.2027".',
  ],
  [
    { orders: [{ ...order, number: 0 }] },
    'orders.0.number | Fish ordered: expected a whole number from 1 to 5\u202f000\u202f000 fish, got 0.',
  ],
  [
    { orders: [{ ...order, grams: 500 }] },
    'orders.0.grams | Weight of a fish: expected a number from 0.005 to 100 g, got 500. ' +
      'That is no fry or fingerling.',
  ],
  [{ vats: [] }, 'vats | Vats: the list is empty; at least 1 is needed.'],
  [
    { vats: [{ name: 'a', litres: 1000, holds: ['goldfish'] }] },
    'vats.0.holds.0 | What the vat holds: expected one of "eggs", "fry", "nursing", got "goldfish".',
  ],
  [
    { females: [{ tag: 'F', kilograms: 1200 }] },
    'females.0.kilograms | Weight of a female: expected a number from 0.1 to 15 kg, got ' +
      '1200. That looks like grams: 1200 g is 1.2 kg.',
  ],
  [
    { females: [{ tag: 'F', kilograms: 1, lastUsed: '2027-02-01' }] },
    'females.0.lastUsed | F: was last used on 2027-02-01, which is after today, 2027-01-10.',
  ],
  [
    { temperatures: [26, 27] },
    'temperatures | Water by month: expected twelve temperatures, January to December; ' +
      'leave unknown months empty.',
  ],
  [
    { temperatures: BOOK.temperatures.map(() => 80) },
    'temperatures.0 | Water of the month: expected a number from 10 to 40 °C, got 80. That looks like °F.',
  ],
  [
    { staff: { stripFrom: 20, stripTo: 6 } },
    'staff.stripTo | Stripping until: must be later than stripping from. A night shift is two books.',
  ],
  [
    { assumptions: { hatch: 59 } },
    'assumptions.hatch | Eggs that hatch: expected a number from 0.01 to 1 (80 % is 0.8), got 59.',
  ],
  [{ spare: 20 }, 'spare | Spare: expected a number from 0 to 3 share (20 % is 0.2), got 20.'],
])('%j is refused in a sentence', (changes, sentence) => {
  expect(faultsOf(changes)).toContain(sentence);
});

test.each([null, 5, 'book', [], {}])('%j is no order book and throws nothing', (input) => {
  const read = readOrderBook(input);
  expect('faults' in read && read.faults.length > 0).toBe(true);
});

test('an entry that nothing asks for is named, in words', () => {
  expect(faultsOf({ males: [{ tag: 'M1', kilograms: 1 }] })).toEqual([
    'males.0 | “kilograms”: not asked for here. Take it out, or write it under the name it has in the form of an order book.',
  ]);
});
