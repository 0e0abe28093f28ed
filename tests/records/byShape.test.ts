/**
 * Tables under headings no list holds: what the columns have to do with each other, the order they stand in and the
 * general words in a heading say what they mean. Every table is made, so every meaning is known.
 */
import type { AuditReport } from '../../shared/records';
import { evidenceOf } from '../../shared/records/meaning/fit';
import type { ExampleCell } from '../../shared/records/rules/rule';
import { auditGrid } from './support/grid';

type Row = readonly ExampleCell[];
const DAYS = Array.from({ length: 12 }, (_, i) => `2025-04-${String(10 + i).padStart(2, '0')}`);
const fields = ({ tables: [table] }: AuditReport): (string | undefined)[] =>
  table?.mapping.map(({ field }) => field) ?? [];
const accusing = ({ groups }: AuditReport): string[] =>
  groups
    .flatMap(({ findings }) => findings)
    .filter(({ severity }) => severity !== 'look')
    .map(({ place }) => place.cell);

function stock(): Row[] {
  let open = 9000;
  return DAYS.map((day, i): Row => {
    const [dead, sold] = [11 + ((i * 7) % 23), i % 3 === 2 ? 400 + 50 * i : 0];
    const close = open - dead - sold;
    const row = [day, open, dead, sold, close];
    open = close;
    return row;
  });
}
test('what a line ends with, the next begins with: a stock, whatever the words', () => {
  const read = auditGrid([['Zrabe', 'Quolt', 'Dead', 'Sold', 'Nimm'], ...stock()]);
  expect(fields(read)).toEqual(['date', 'opening', 'dead', 'sold', 'closing']);
  const spoilt = stock().map((row, i) => (i === 6 ? [...row.slice(0, 4), Number(row[4]) + 700] : row));
  expect(accusing(auditGrid([['Zrabe', 'Quolt', 'Dead', 'Sold', 'Nimm'], ...spoilt]))).toContain('E8');
});

test('pieces times a price less what was paid: a sale, and names beside it are buyers', () => {
  const rows = DAYS.map((day, i): Row => {
    const [n, price] = [250 + 50 * ((i * 5) % 11), i % 4 === 0 ? 12 : 15];
    const paid = i % 3 ? n * price : 1000;
    return [day, `Buyer ${'ABCDEFGHIJKL'[i] ?? ''}`, n, price, n * price, paid, n * price - paid];
  });
  expect(fields(auditGrid([['Zrabe', 'Quolt', 'Nimm', 'Ferk', 'Odd', 'Ulm', 'Wrent'], ...rows]))).toEqual([
    'date',
    'customer',
    'sold',
    'priceEach',
    'amount',
    'paid',
    'due',
  ]);
});

test('money that goes on from line to line: in, out and what is in the box', () => {
  let left = 40_000;
  const rows = DAYS.map((day, i): Row => {
    const [got, spent] = i % 3 === 1 ? [5000 + 350 * i, 0] : [0, 700 + 110 * i];
    left += got - spent;
    return [day, ['salt', 'feed', 'fuel'][i % 3] ?? '', got || null, spent || null, left];
  });
  const read = fields(auditGrid([['Zrabe', 'Quolt', 'Nimm', 'Ferk', 'Odd'], ...rows]));
  expect(read).toEqual(['date', 'description', 'income', 'expense', 'balance']);
});

test('of two pH the first is before, of two clocks half a day apart the second is the strip', () => {
  const water = DAYS.map((day, i): Row => [day, 5.8 + 0.1 * (i % 5), 30 + i, 600, 6.9 + 0.1 * (i % 3)]);
  expect(fields(auditGrid([['Date', 'pH zrabe', 'Soda (g)', 'Water (L)', 'pH quolt'], ...water]))).toEqual([
    'date',
    'ph',
    'materialDose',
    'volume',
    'phAfter',
  ]);
  const spawn = DAYS.map((day, i): Row => [
    day,
    1 + i / 10,
    0.5 + i / 20,
    `21:${10 + i}`,
    `08:${20 + 3 * i}`,
    120 + 9 * i,
  ]);
  expect(
    fields(
      auditGrid([['Date', 'Female (kg)', 'Hormone (ml)', 'Zrabe', 'Quolt', 'Egg weight (g)'], ...spawn]),
    ).slice(3, 5),
  ).toEqual(['injected', 'stripped']);
});

test('forms two abreast and below each other, under labels nobody knows', () => {
  const form = (i: number): Row[] => [
    ['Zrabe', `2025-04-${10 + i}`],
    ['Female (kg)', 1.1 + i / 10],
    ['Quolt', `F${i + 3}`],
    ['Nimm', 'pituitary'],
  ];
  const sheet = Array.from({ length: 5 }, (_, pair) => {
    const [a, b] = [form(2 * pair), form(2 * pair + 1)];
    return [...a.map((line, k): Row => [...line, null, ...(b[k] ?? [])]), [null]];
  }).flat();
  const [table] = auditGrid(sheet).tables;
  expect([table?.layout, table?.length]).toEqual(['forms', 10]);
});

test('a sum below is known by its shape, and checked', () => {
  const lines = stock().map(([day, , dead, sold]): Row => [day ?? null, dead ?? null, Number(sold) + 5]);
  const sum = (c: number): number => lines.reduce((all, row) => all + Number(row[c]), 0);
  const head: Row = ['Date', 'Dead', 'Sold'];
  expect(accusing(auditGrid([head, ...lines, ['Zrabe', sum(1), sum(2)]]))).toEqual([]);
  expect(accusing(auditGrid([head, ...lines, ['Zrabe', sum(1) + 300, sum(2)]]))).toEqual(['B14']);
});

test('kilograms in some cells and grams in others are one weight', () => {
  const kg = [1.35, 1.8, 0.95, 2.1, 1.6, 1.15];
  const rows = kg.map((x, i): Row => [
    i + 1,
    DAYS[i] ?? '',
    i % 2 ? `${1000 * x} g` : `${x} kg`,
    110 + 13 * i,
  ]);
  const read = auditGrid([['Run', 'Date', 'Female weight', 'Egg weight (g)'], ...rows]);
  expect(accusing(read)).toEqual([]);
  kg.forEach((x, i) => expect(read.tables[0]?.numbers.femaleWeight?.[i]).toBeCloseTo(x, 6));
});

test.each([
  ['Poids d’un poisson', 'weight'],
  ['Berat seluruh ikan', 'biomass'],
  ['Dinero que salió', 'expense'],
  ['Pesa iliyoingia', 'income'],
  ['Reste en caisse', 'balance'],
  ['Água no tanque', 'volume'],
  ['Saizi ndogo', 'gradeSmall'],
  ['Taille moyenne', 'gradeMiddle'],
] as const)('%s: made of general words', (heading, field) => {
  expect(evidenceOf(heading, '').words.get(field) ?? 0).toBeGreaterThanOrEqual(0.5);
});

test('two clocks keep their meaning when two lines of twelve are twelve hours off', () => {
  const spawn = DAYS.map((day, i): Row => [
    day,
    1 + i / 10,
    0.5 + i / 20,
    `21:${10 + i}`,
    i === 3 || i === 8 ? `20:${20 + 3 * i}` : `08:${20 + 3 * i}`,
    120 + 9 * i,
  ]);
  const head = ['Date', 'Female (kg)', 'Hormone (ml)', 'Zrabe', 'Quolt', 'Egg weight (g)'];
  expect(fields(auditGrid([head, ...spawn])).slice(3, 5)).toEqual(['injected', 'stripped']);
});

test('of two columns of dates neither is taken for the date of the line because it is a date', () => {
  const rows = DAYS.slice(0, 6).map((day, i): Row => [
    day,
    `2025-05-${10 + i}`,
    5000 + 130 * i,
    4100 + 90 * i,
  ]);
  expect(fields(auditGrid([['Stocking date', 'Harvest date', 'Stocked', 'Alive'], ...rows]))).toEqual([
    'stockedAt',
    'emptiedAt',
    'stocked',
    'alive',
  ]);
});

test('money that is carried over is no stock of fish', () => {
  let open = 40_000;
  const rows = DAYS.map((day, i): Row => {
    const [got, spent] = [1500 + 230 * ((i * 5) % 7), 900 + 110 * ((i * 3) % 8)];
    const row: Row = [day, open, got, spent, open + got - spent];
    open += got - spent;
    return row;
  });
  const read = fields(
    auditGrid([['Date', 'Cash brought', 'Money received', 'Money spent', 'Cash balance'], ...rows]),
  );
  expect(read.filter((field) => ['opening', 'closing', 'dead', 'stocked'].includes(field ?? ''))).toEqual([]);
});

test('a sum that one day makes nearly alone is a sum still; a number below the highest is a line', () => {
  const dead = [12, 500, 20, 9, 15, 11];
  const lines = dead.map((n, i): Row => [DAYS[i] ?? '', n, 40 + i]);
  const [sum, sold] = [dead.reduce((all, n) => all + n, 0), 255];
  const skipped = (last: Row): number =>
    auditGrid([['Date', 'Dead', 'Sold'], ...lines, last]).tables[0]?.skipped.length ?? NaN;
  expect(skipped(['Zrabe', sum, sold])).toBe(1);
  expect(skipped(['Zrabe', 480, sold])).toBe(0);
});
