import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { asOf, bookSheetNames, cardsWorkbook, livingBook, LivingPages } from '../../../shared/books/living';
import { dayOfBook } from '../../../shared/books/living/reading/day';
import { readXlsx } from '../../../shared/files';
import { planBatches } from '../../../shared/season';
import type { OrderBook } from '../../../shared/season/book/orderBook';
import type { CellModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { bookOf, faultsOf, gridOf, checked } from '../../season/support/support';
import { readBack } from './support';

/** Sheets know an order by its key; who it is for stands in one column of Orders. */
const QUICK = { draws: 200, explains: false, effort: { looks: 15_000, mostTries: 15, seed: 3 } } as const;
const NAMES = ['Mulberry Lodge', 'Saltmarsh', 'Widow Kettle'];
const book = bookOf({
  orders: [
    { name: NAMES[0], product: 'fry', number: 4000, due: '2027-02-25', price: 0.05 },
    { name: NAMES[1], product: 'fingerlings', number: 9000, due: '2027-03-31', price: 0.12 },
    // Nothing can be had of this one: a sentence on the first page is about it.
    { name: NAMES[2], product: 'fingerlings', number: 2_000_000, due: '2027-05-10', price: 0.12 },
  ],
});
const plan = planBatches(book, QUICK);
const model = livingBook(book, plan);
const pages = new LivingPages(book, plan);
const { orders, log } = pages.tables;

const type = (from: WorkbookModel, sheet: string, values: Readonly<Record<string, CellModel['value']>>) => ({
  ...from,
  sheets: from.sheets.map((s) => {
    if (s.name !== sheet) return s;
    const cells: Record<string, CellModel> = { ...s.cells };
    for (const [at, value] of Object.entries(values)) {
      const cell: CellModel = { ...cells[at] };
      delete (cell as { value?: unknown }).value;
      cells[at] = value === undefined ? cell : { ...cell, value };
    }
    return { ...s, cells };
  }),
});
const again = (
  from: WorkbookModel,
  today: number,
): { readonly book: OrderBook; readonly model: WorkbookModel } => {
  const was = readBack(from);
  const next = checked(asOf(was, today));
  return { book: next, model: livingBook(next, planBatches(next, QUICK), was.typed) };
};
const keysOf = ({ orders: all }: OrderBook): string[] => all.map(({ key = '', name }) => `${key} ${name}`);
/** Every place where one of some texts stands, in values and formulas. */
const places = (of: WorkbookModel, texts: readonly string[]): string[] =>
  of.sheets.flatMap((s) =>
    Object.entries(s.cells).flatMap(([at, { value, formula }]) =>
      texts.some((text) => `${typeof value === 'string' ? value : ''} ${formula ?? ''}`.includes(text))
        ? [`${s.name}!${at}${formula === undefined ? '' : ' by formula'}`]
        : [],
    ),
  );

test('the names of buyers stand in one column of Orders, and elsewhere only where a formula fetches them', () => {
  expect(keysOf(book)).toEqual(NAMES.map((name, i) => `O${i + 1} ${name}`));
  const typed = places(model, NAMES).filter((place) => !place.endsWith('by formula'));
  expect(typed).toEqual(NAMES.map((_, i) => `Orders!${orders.letters.buyer}${orders.first + i}`));
  const fetched = places(model, NAMES).filter((place) => place.endsWith('by formula'));
  expect(new Set(fetched.map((place) => place.split('!')[0]))).toEqual(new Set(['Today', 'Calendar']));
  expect(plan.findings.some(({ message }) => message.startsWith(`${NAMES[2] ?? ''}:`))).toBe(true);
  expect(places(model, ['O3: '])).toContainEqual(expect.stringMatching(/^Today!B/));
  expect(readBack(model).plan.findings.map(({ message }) => message)).toEqual(
    plan.findings.map(({ message }) => message),
  );
});

test('cards name a buyer in one column too', () => {
  const cards = cardsWorkbook(book, plan);
  const typed = places(cards, NAMES).filter((place) => !place.endsWith('by formula'));
  expect(typed.every((place) => place.startsWith('Orders!C'))).toBe(true);
  expect(typed.length).toBeGreaterThan(0);
  expect(places(cards, NAMES).some((place) => place.startsWith('Run '))).toBe(true);
});

test('a day read of the book has the name beside the key', () => {
  const day = dayOfBook(model.sheets.map(gridOf), '');
  expect(day.orders.map(({ key, name }) => `${key} ${name}`)).toEqual(keysOf(book));
  const handing = day.tasks.find(({ task, order }) => task === 'handOver' && order === 'O2');
  expect(handing?.what).toMatch(/^O2 Saltmarsh: count out/);
});

test('keys stay through two plannings; new orders get the next, a typed key is kept, none is given twice', () => {
  // A new line under the key that stands there, another with a key of one's own and no name.
  const rows = [3, 4].map((i) => orders.first + i);
  const cellsOf = (row: number, values: Partial<Record<keyof typeof orders.letters, string | number>>) =>
    Object.fromEntries(
      Object.entries(values).map(([key, value]) => [
        `${orders.letters[key as keyof typeof orders.letters]}${row}`,
        value,
      ]),
    );
  const added = type(model, 'Orders', {
    ...cellsOf(rows[0] ?? 0, { buyer: 'Late Lane', product: 'fry', number: 1000, due: 46_500 }),
    ...cellsOf(rows[1] ?? 0, { order: 'own-7', product: 'fry', number: 1000, due: 46_505 }),
  });
  const once = again(added, 46_400);
  expect(keysOf(once.book).slice(3)).toEqual(['O4 Late Lane', 'own-7 own-7']);
  // The fourth line is emptied by hand; something was sold to it before.
  const sold = type(once.model, 'Counts', {
    [`${log.letters.at}${log.first}`]: 46_400.5,
    [`${log.letters.batch}${log.first}`]: 'B1',
    [`${log.letters.what}${log.first}`]: 'sold',
    [`${log.letters.number}${log.first}`]: 10,
    [`${log.letters.order}${log.first}`]: 'O4',
  });
  const emptied = type(
    sold,
    'Orders',
    Object.fromEntries(
      ['order', 'buyer', 'product', 'number', 'due'].map((key) => [
        `${orders.letters[key as keyof typeof orders.letters]}${rows[0] ?? 0}`,
        undefined,
      ]),
    ),
  );
  const twice = again(emptied, 46_401);
  expect(keysOf(twice.book)).toEqual([...NAMES.map((name, i) => `O${i + 1} ${name}`), 'own-7 own-7']);
  const spare = new LivingPages(twice.book, planBatches(twice.book, QUICK), readBack(emptied).typed);
  const first = livingBook(twice.book, spare.plan, readBack(emptied).typed).sheets.find(
    (s) => s.name === 'Orders',
  );
  expect(first?.cells[`${orders.letters.order}${orders.first + 4}`]?.value).toBe('O5');
});

test('a sale written under the name of a buyer counts, and stands under the key when planned again', () => {
  const named = type(model, 'Counts', {
    [`${log.letters.at}${log.first}`]: 46_440.5,
    [`${log.letters.batch}${log.first}`]: 'B1',
    [`${log.letters.what}${log.first}`]: 'sold',
    [`${log.letters.number}${log.first}`]: 10,
    [`${log.letters.order}${log.first}`]: NAMES[0] ?? '',
  });
  const reading = readBack(named);
  expect(reading.plan.batches.find(({ name }) => name === 'B1')?.events[0]?.order).toBe(NAMES[0]);
  expect(reading.typed.log[0]?.order).toBe('O1');
  const next = again(named, 46_441);
  expect(places(next.model, NAMES).filter((p) => !/^(Orders|Today|Calendar)!/.test(p))).toEqual([]);
});

test('one key typed twice is asked about; a corrected name moves nothing', () => {
  const line = { product: 'fry', number: 1000, due: '2027-04-01' };
  expect(
    faultsOf({
      orders: [
        { ...line, key: 'x', name: 'A' },
        { ...line, key: 'X', name: 'B' },
      ],
    }),
  ).toEqual([
    'orders.1.key | X: is the key of rows 1 and 2 of orders. Empty the second; it then gets a key of its own.',
  ]);
  expect(
    bookOf({
      orders: [
        { ...line, name: 'A' },
        { ...line, key: 'O7', name: 'B' },
      ],
    }).orders,
  ).toMatchObject([{ key: 'O8' }, { key: 'O7' }]);
  const corrected = readBack(
    type(model, 'Orders', { [`${orders.letters.buyer}${orders.first}`]: 'Mulberry Hall' }),
  );
  expect(corrected.plan.allocations.filter(({ order }) => order === 'Mulberry Hall').length).toBe(
    plan.allocations.filter(({ order }) => order === NAMES[0]).length,
  );
});

describe('a book written before orders had keys', () => {
  // Written by an earlier edition of this project; three orders, known by their buyers alone.
  const file = readXlsx(
    new Uint8Array(readFileSync(join(__dirname, '..', '..', 'data', 'season', 'beforeKeys.xlsx'))),
  );
  if ('fault' in file) throw new Error(file.fault);
  const old = file.model;
  const cellWith = (sheet: string, text: string): string =>
    Object.entries(old.sheets.find(({ name }) => name === sheet)?.cells ?? {}).find(
      ([, { value }]) => value === text,
    )?.[0] ?? '';
  const head = cellWith('Counts', 'Date and hour');
  const row = Number(/\d+/.exec(head)?.[0]) + 1;
  const handing = cellWith(
    'Calendar',
    'Neighbours: count out by weight and hand over; write it in the log on Counts',
  );
  const lived = type(
    type(old, 'Counts', {
      [`B${row}`]: 46_464.5,
      [`C${row}`]: 'B1',
      [`D${row}`]: 'sold',
      [`E${row}`]: 500,
      [`G${row}`]: 'Neighbours',
      [`J${row}`]: 'Kept of B9, School pond, Calendar: Hand over (Done done)',
    }),
    'Calendar',
    { [`B${/\d+/.exec(handing)?.[0] ?? ''}`]: 'done' },
  );
  const reading = readBack(lived);

  test('its sheets are all there, its orders get keys, what was typed under a name is kept under the key', () => {
    expect(bookSheetNames('').every((name) => old.sheets.some((s) => s.name === name))).toBe(true);
    expect(checked(reading.input).orders.map(({ key, name }) => [key, name])).toEqual([
      ['O1', 'Neighbours'],
      ['O2', 'School pond'],
      ['O3', 'Market cages'],
    ]);
    expect(reading.plan.batches.flatMap(({ events }) => events)).toMatchObject([
      { order: 'Neighbours', number: 500 },
    ]);
    expect(reading.typed.log).toMatchObject([
      { order: 'O1', note: 'Kept of B9, O2, Calendar: Hand over (Done done)' },
    ]);
    expect(reading.typed.calendar).toMatchObject([{ task: 'Hand over', order: 'O1', done: 'done' }]);
  });

  test('its day is read as before, and planned again it names no buyer but on Orders', () => {
    const day = dayOfBook(lived.sheets.map(gridOf), '');
    expect(day.orders[0]).toMatchObject({ key: 'Neighbours', name: 'Neighbours' });
    expect(day.tasks.find(({ order }) => order === 'Neighbours')?.what).toMatch(/^Neighbours: last meal/);
    const next = again(lived, 46_465);
    expect(
      places(next.model, ['Neighbours', 'School pond', 'Market cages']).filter(
        (place) => !/^Orders!C/.test(place) && !place.endsWith('by formula'),
      ),
    ).toEqual([]);
    const kept = readBack(next.model);
    expect(kept.typed.calendar).toMatchObject([{ task: 'Hand over', order: 'O1', done: 'done' }]);
    expect(kept.typed.log).toMatchObject(reading.typed.log);
    expect(kept.plan.orders[0]?.delivered).toBe(500);
  });
});
