import { columnsOf, entriesOf, settleTable } from '../../shared/units/typedLists';
import type { NumberField } from '../../shared/units/typedNumber';
import { openSentence, readTypedNumber } from '../../shared/units/typedNumber';
import { openDaySentence, readTypedDay, readTypedHour } from '../../shared/units/typedTime';
import { isoDateOfSerial, serialOfIsoDate } from '../../shared/units/dates';
import { readOrderBook } from '../../shared/season/book/orderBook';
import { BOOK } from '../season/support/support';

/** What each text means to a person: decided by hand, not by the code. */
const FISH = { unit: 'fish', min: 1, max: 5_000_000, whole: true };
const LITRES = { unit: 'L', min: 10, max: 200_000 };
const KILOGRAMS = { unit: 'kg', min: 0.1, max: 15 };
const PRICE = { min: 0, max: 1e9 };
const SHARE = { unit: 'share (80 % is 0.8)', min: 0, max: 1 };
const WATER = { unit: '°C', min: 10, max: 40 };

test.each([
  ['10,000', FISH, 10_000],
  ['10.000', FISH, 10_000],
  ['3 000', FISH, 3000],
  ['3\u00a0000', FISH, 3000],
  ['3\u202f000 fish', FISH, 3000],
  ["12'500", FISH, 12_500],
  ['1,250,000', FISH, 1_250_000],
  ['1.250.000', FISH, 1_250_000],
  ['30k', FISH, 30_000],
  ['2500 fry', FISH, 2500],
  ['20,000 L', LITRES, 20_000],
  ['20.000 litres', LITRES, 20_000],
  ['1,5 m3', LITRES, 1500],
  ['20 gal', LITRES, 75.70823568],
  ['600L', LITRES, 600],
  ['900g', KILOGRAMS, 0.9],
  ['900 g', KILOGRAMS, 0.9],
  ['1,2', KILOGRAMS, 1.2],
  ['1.2 kg', KILOGRAMS, 1.2],
  ['1½ kg', KILOGRAMS, 1.5],
  ['1⅓ kg', KILOGRAMS, 1.333333],
  ['2⅔', KILOGRAMS, 2.666667],
  ['¼', KILOGRAMS, 0.25],
  ['1¾', KILOGRAMS, 1.75],
  ['1⅛', KILOGRAMS, 1.125],
  ['⅜ kg', KILOGRAMS, 0.375],
  ['⅝', KILOGRAMS, 0.625],
  ['⅞', KILOGRAMS, 0.875],
  // Digits of one script that follow on another row of the same: a phone's outlined and narrow ones.
  ['𝟚𝟘𝟘𝟘', FISH, 2000],
  ['𝟷𝟸𝟶𝟶', FISH, 1200],
  // Only one reading is a weight a female has.
  ['1,250', KILOGRAMS, 1.25],
  ['2 lb', KILOGRAMS, 0.90718474],
  ['0,05', PRICE, 0.05],
  ['0.125', PRICE, 0.125],
  ['0,125', PRICE, 0.125],
  ['GHS 0.50', PRICE, 0.5],
  ['€ 1.200,50', PRICE, 1200.5],
  ['$1,200.50', PRICE, 1200.5],
  ['80 %', SHARE, 0.8],
  ['80%', SHARE, 0.8],
  ['0,8', SHARE, 0.8],
  ['81 F', WATER, 27.2222222222],
  ['27,5 °C', WATER, 27.5],
  ['1,00,000', FISH, 100_000],
  ['1.000,5', PRICE, 1000.5],
  ['1e5', FISH, 100_000],
  ['-3', { min: -10 }, -3],
] as const)('%s is read as meant', (text, field, value) => {
  const read = readTypedNumber(text, field);
  expect(read.kind === 'number' ? read.value : read).toBeCloseTo(value, 8);
});

test('what was understood is shown with the unit of the field', () => {
  const shown = (text: string, field: object): string => {
    const read = readTypedNumber(text, field);
    return read.kind === 'number' ? read.understood : read.kind;
  };
  expect([
    shown('20.000', LITRES),
    shown('900g', KILOGRAMS),
    shown('3 000', FISH),
    shown('80', SHARE),
  ]).toEqual(['20\u202f000 L', '0.9 kg', '3\u202f000', '80 (8\u202f000 %)']);
});

test('two readings are asked about, and the column decides where it can', () => {
  expect(readTypedNumber('1,250', PRICE)).toEqual({ kind: 'open', readings: [1250, 1.25] });
  expect(readTypedNumber('1,250', { ...PRICE, decimal: ',' })).toMatchObject({ value: 1.25 });
  expect(readTypedNumber('1,250', { ...PRICE, decimal: '.' })).toMatchObject({ value: 1250 });
  expect(openSentence('1,250', [1250, 1.25])).toBe('“1,250” can be 1\u202f250 or 1.25. Type 1250 or 1.25.');
  // What it says to type is no question again.
  const again = openSentence('12,345', [12345, 12.345]);
  expect(again).toContain('Type 12345 or 12.3450.');
  expect(readTypedNumber('12.3450')).toMatchObject({ kind: 'number', value: 12.345 });
  expect(readTypedNumber('12,3450')).toMatchObject({ kind: 'number', value: 12.345 });
  const prices = (...list: string[]): unknown[] =>
    settleTable(
      list.map((price) => ({ price })),
      ['price'],
    ).map(({ price }) => price);
  expect(prices('1,250', '0,5')).toEqual(['1.25', '0,5']);
  expect(prices('1,250', '0.5')).toEqual(['1250', '0.5']);
  expect(prices('1,250', '0.5', '0,5')).toEqual(['1,250', '0.5', '0,5']);
});

test('what a column says of a number is not taken where its field has no such number', () => {
  const weights = (limits: NumberField, ...list: string[]): unknown[] =>
    settleTable(
      list.map((weight) => ({ weight })),
      ['weight'],
      { weight: limits },
    ).map(({ weight }) => weight);
  expect(weights({ min: 1, max: 1250 }, '1,250', '0.5')).toEqual(['1250', '0.5']);
  expect(weights({ min: 1, max: 1249 }, '1,250', '0.5')).toEqual(['1,250', '0.5']);
  expect(weights({ min: 1.25, max: 15 }, '1,250', '2,5')).toEqual(['1.25', '2,5']);
  expect(weights({ min: 1.26, max: 15 }, '1,250', '2,5')).toEqual(['1,250', '2,5']);
});

test.each(['', '  '])('%j is blank', (text) => {
  expect(readTypedNumber(text, FISH).kind).toBe('blank');
});
test.each(['ten', '3 doz', '12/03', '10-12', '4 kg', '1.2.3,4,5', '--3', '6,8,9', '1 2', '1,000,5'])(
  '%s is no number of fish',
  (text) => {
    expect(readTypedNumber(text, FISH).kind).toBe('none');
  },
);

test.each([
  ['22h30', 22.5],
  ['22:30', 22.5],
  ['22.30', 22.5],
  ['2230', 22.5],
  ['10:30 pm', 22.5],
  ['10 pm', 22],
  ['12 am', 0],
  ['12 pm', 12],
  ['22 h', 22],
  ['7', 7],
  ['7.5', 7.5],
  ['06:05', 6 + 5 / 60],
  ['24:00', 24],
  ['midnight', 24],
  ['noon', 12],
])('hour %s', (text, hour) => {
  const read = readTypedHour(text);
  expect(read.kind === 'time' ? read.value : NaN).toBeCloseTo(hour, 9);
});
test.each(['25:00', '22h75', '13 pm', 'late', '24:30', '-1'])('%s is no hour', (text) => {
  expect(readTypedHour(text).kind).toBe('none');
});

const TODAY = serialOfIsoDate('2027-01-10') ?? NaN;
test.each([
  ['2027-03-31', '2027-03-31'],
  ['31/3/2027', '2027-03-31'],
  ['31.03.27', '2027-03-31'],
  ['3/31/2027', '2027-03-31'],
  ['31 March 2027', '2027-03-31'],
  ['31-Mar-27', '2027-03-31'],
  ['March 31, 2027', '2027-03-31'],
  ['31 mars 2027', '2027-03-31'],
  ['1er avril 2027', '2027-04-01'],
  ['3 de março de 2027', '2027-03-03'],
  ['5 août', '2027-08-05'],
  ['2 Jan', '2028-01-02'],
  ['10 Jan', '2027-01-10'],
  ['Sat 3 April 2027', '2027-04-03'],
  ['46112', '2026-03-31'],
  ['5/5/2027', '2027-05-05'],
])('day %s', (text, iso) => {
  const read = readTypedDay(text, { today: TODAY });
  expect(read.kind === 'time' ? isoDateOfSerial(read.value) : read.kind).toBe(iso);
});
test('a day that may be two is asked about, unless its column says', () => {
  const read = readTypedDay('3/4/2027');
  expect(read.kind).toBe('open');
  if (read.kind === 'open')
    expect(openDaySentence('3/4/2027', read.readings)).toBe(
      '“3/4/2027” can be 3 Apr or 4 Mar. Type it as 2027-04-03 or 2027-03-04.',
    );
  expect(readTypedDay('3/4/2027', { order: 'day first' })).toMatchObject({
    value: serialOfIsoDate('2027-04-03'),
  });
});
test.each(['30 Feb 2027', '31/2/2027', 'soon', '32 March 2027', '2027-13-01', '12 Blurb'])(
  '%s is no day',
  (text) => {
    expect(readTypedDay(text).kind).toBe('none');
  },
);

test.each([
  ['Tank 1 600', ['Tank 1', '600']],
  ['Tank 1 1 600', ['Tank 1', '1 600']],
  ['North 1 000 L', ['North', '1 000 L']],
  ['C 900g', ['C', '900g']],
  ['Tank 1, 20,000 L', ['Tank 1', '20,000 L']],
  ['Tank 1; 20,000 L; eggs', ['Tank 1', '20,000 L', 'eggs']],
  ['Tank 1\t1,000', ['Tank 1', '1,000']],
  ['Vat 1,600', ['Vat', '1,600']],
  ['Lonely', ['Lonely']],
  ['Vat 2', ['Vat 2']],
  ['Vat 2 80', ['Vat 2', '80']],
  ['C 1.2', ['C', '1.2']],
])('line %j', (line, columns) => {
  expect(columnsOf(line, true)).toEqual(columns);
});
test('a list of days', () => {
  expect(entriesOf('2027-03-01, 4 March 2027; 5/3/2027\n6 Mar')).toEqual([
    '2027-03-01',
    '4 March 2027',
    '5/3/2027',
    '6 Mar',
  ]);
});

test('an order book takes them all, and asks about what could be two', () => {
  const read = readOrderBook({
    ...BOOK,
    orders: [
      { name: 'A', product: 'fry', number: '10,000', due: '31 March 2027', price: '0,08' },
      { name: 'B', product: 'fry', number: '3 000', due: '15/4/2027', price: '1,250' },
    ],
    vats: [{ name: 'Tank 1', litres: '20,000 L' }],
    females: [{ tag: 'C', kilograms: '900g' }],
    staff: { stripFrom: '6h30', stripTo: '10 pm' },
  });
  if ('faults' in read) throw new Error(read.faults.map(({ message }) => message).join(' '));
  const { orders, vats, females, staff } = read.book;
  expect(orders.map(({ number, price }) => [number, price])).toEqual([
    [10_000, 0.08],
    [3000, 1.25],
  ]);
  expect([vats[0]?.litres, females[0]?.kilograms, staff.stripFrom, staff.stripTo]).toEqual([
    20_000, 0.9, 6.5, 22,
  ]);
  const asked = readOrderBook({ ...BOOK, orders: [{ ...BOOK.orders[0], price: '1,250' }] });
  expect('faults' in asked && asked.faults.map(({ message }) => message)).toEqual([
    'Price of a fish: “1,250” can be 1\u202f250 or 1.25. Type 1250 or 1.25.',
  ]);
});
