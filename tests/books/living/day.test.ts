import { livingBook, LivingPages as Pages } from '../../../shared/books/living';
import {
  dayOfBook,
  daySheetNames,
  logChanges,
  lookChanges,
  pairChanges,
} from '../../../shared/books/living/reading/day';
import { readBook } from '../../../shared/books/living/reading/read';
import { addressOf } from '../../../shared/sheet/formula/address';
import { planBatches } from '../../../shared/season/batches';
import type { Cell } from '../../../shared/base/values';
import { bookOf, gridOf } from '../../season/support/support';

/** A day read by headings agrees with the plan the book was written from, and with the reader of the book. */

const book = bookOf();
const plan = planBatches(book, { draws: 200 });
const pages = new Pages(book, plan);
const model = livingBook(book, plan);
const grids = model.sheets.map(gridOf);
const grid = (name: string) =>
  grids.find((one) => one.name === name) ?? { name, top: 0, left: 0, values: [] };
const day = dayOfBook(
  grids.filter(({ name }) => daySheetNames('').includes(name)),
  '',
);

test('every task stands with its batch, kind, hour and the cell it is ticked off in', () => {
  expect(day.tasks.map(({ batch, task, order }) => [batch, task, order])).toEqual(
    pages.rows.tasks.map(({ batch, task, order }) => [batch, task, order]),
  );
  day.tasks.forEach((task, i) => {
    expect(task.at).toBeCloseTo(pages.rows.tasks[i]?.when ?? NaN, 5);
    expect(task.tick).toBe(`${pages.tables.calendar.letters.done}${pages.tables.calendar.first + i}`);
  });
});

test('vats, stays, batches and orders are those of the plan', () => {
  expect(day.vats).toEqual(book.vats.map(({ name }) => name));
  expect(day.stays.map(({ vat, batch, stage }) => [vat, batch, stage])).toEqual(
    plan.stays.map(({ vat, batch, stage }) => [vat, batch, stage]),
  );
  expect(day.batches.map(({ name, strip }) => [name, strip])).toEqual(
    plan.batches.map(({ name, stripAt }) => [name, expect.closeTo(stripAt, 6)]),
  );
  expect(day.orders.map(({ name, number }) => [name, number])).toEqual(
    book.orders.map(({ name, number }) => [name, number]),
  );
  expect(day.broken).toBe(0);
});

const filled = (name: string, cells: readonly { address: string; to: Cell }[]) => {
  const sheet = grid(name);
  const at = new Map(cells.map(({ address, to }) => [address, to]));
  return grids.map((one) =>
    one === sheet
      ? {
          ...one,
          values: one.values.map((row, r) => row.map((cell, c) => at.get(addressOf(r, c)) ?? cell)),
        }
      : one,
  );
};

test('a fact written into the log is an event of its batch for the reader of the book', () => {
  const name = plan.batches[0]?.name ?? '';
  const at = plan.plannedOn + 0.4;
  const changes = logChanges(grid('Counts'), { at, batch: name, what: 'died', number: 12, note: 'Vat 1' });
  const reading = readBook(filled('Counts', changes ?? []), '');
  if (reading.kind !== 'read') throw new Error(reading.faults.join(' '));
  expect(reading.plan.batches[0]?.events).toEqual([
    { at, kind: 'died', number: 12, order: undefined, paid: undefined, note: 'Vat 1' },
  ]);
});

test('the next fact takes the next line, also where the host reads no further than the last filled cell', () => {
  const counts = grid('Counts');
  const { log } = pages.tables;
  const first = logChanges(counts, { what: 'died' });
  expect(first).toEqual([{ address: `${log.letters.what}${log.first}`, from: null, to: 'died' }]);
  const short = { ...counts, values: counts.values.slice(0, log.head) };
  expect(logChanges(short, { what: 'died' })).toEqual(first);
});

test('hours of the pair and eggs looked at go into the lines of their batch', () => {
  const name = plan.batches[0]?.name ?? '';
  const injected = pairChanges(grid('Batches'), name, 'injected', plan.plannedOn + 0.9);
  expect(injected).toHaveLength(plan.batches[0]?.pairs.length ?? 0);
  const look = lookChanges(grid('Counts'), name, 100, 83);
  expect(look.map(({ to }) => to)).toEqual([100, 83]);
});

test('numbers and days that stand as text are read as the book’s own reader reads them, and the same as typed', () => {
  const { orders, vats, log, fry } = pages.tables;
  const [first, second] = [orders.first, orders.first + 1];
  const put = (sheet: string, cells: Readonly<Record<string, Cell>>) =>
    filled(
      sheet,
      Object.entries(cells).map(([address, to]) => ({ address, to })),
    ).find(({ name }) => name === sheet) ?? grid(sheet);
  const sheets = [
    put('Orders', {
      [`${orders.letters.number}${first}`]: '60,000',
      [`${orders.letters.number}${second}`]: '40 000 fish',
      [`${orders.letters.due}${first}`]: '31 Mar 2027',
    }),
    put('Vats', { [`${vats.letters.litres}${vats.first}`]: '1,000 L' }),
    put('Counts', {
      [`${log.letters.at}${log.first}`]: '2027-02-20 07:30',
      [`${log.letters.batch}${log.first}`]: 'B1',
      [`${log.letters.what}${log.first}`]: 'died',
      [`${log.letters.number}${log.first}`]: '1.234',
      [`${fry.letters.weight}${fry.first}`]: '0,35 g',
      [`${fry.letters.weighed}${fry.first}`]: '2027-02-20',
    }),
  ];
  const all = grids.map((one) => sheets.find(({ name }) => name === one.name) ?? one);
  const read = dayOfBook(all, '');
  expect(read.orders.map(({ number, due }) => [number, due])).toEqual(
    book.orders.map(({ number, due }) => [number, due]),
  );
  expect(read.vats).toEqual(book.vats.map(({ name }) => name));
  expect(read.log).toMatchObject([{ at: 46_438 + 7.5 / 24, batch: 'B1', what: 'died', number: 1234 }]);
  expect(read.batches[0]?.weighed).toEqual({ at: 46_438, grams: 0.35 });
  // The book's own reader takes the same cells for the same numbers.
  const whole = readBook(all, '');
  expect(whole.kind === 'read' && whole.plan.batches[0]).toMatchObject({
    weighed: { grams: 0.35, on: 46_438 },
    events: [{ number: 1234 }],
  });
  // What cannot be told is no number of either.
  const many = dayOfBook(
    grids.map((one) =>
      one.name === 'Orders' ? put('Orders', { [`${orders.letters.number}${first}`]: 'many' }) : one,
    ),
    '',
  );
  expect(many.orders.map(({ key }) => key)).toEqual(['O2']);
});
