import { livingBook } from '../../../shared/books/living';
import { booksIn, readBook } from '../../../shared/books/living/reading/read';
import type { BookRead } from '../../../shared/books/living/reading/read';
import { planBatches, readOrderBook } from '../../../shared/season';
import type { WorkbookModel } from '../../../shared/sheet/workbook/model';
import { bookOf, gridOf } from '../../season/support/support';
import { readBack, typeInto } from './support';

const book = bookOf({ water: { ph: 5.7, alkalinity: 0.02 }, assumptions: { hatch: 0.5 } });
const plan = planBatches(book, { draws: 200, explains: false });
const model = livingBook(book, plan);
const again = ({ input, plan: was, typed }: BookRead): WorkbookModel => {
  const checked = readOrderBook(input);
  if ('faults' in checked) throw new Error(JSON.stringify(checked.faults));
  return livingBook(checked.book, was, typed);
};
/** Cells of a book as text, for comparing whole books. */
const cellsOf = (from: WorkbookModel): Record<string, unknown> =>
  Object.fromEntries(
    from.sheets.flatMap((s) =>
      Object.entries(s.cells).flatMap(([address, c]) =>
        c.value === undefined
          ? []
          : [
              [
                `${s.name}!${address}`,
                typeof c.value === 'number' ? Number(c.value.toPrecision(9)) : c.value,
              ] as const,
            ],
      ),
    ),
  );
test('a book is found by its sheets', () => {
  expect(booksIn(model.sheets.map(({ name }) => name))).toEqual(['']);
  expect(booksIn(['Today'])).toEqual([]);
});

test('a book read back and written again is the same book, cell by cell', () => {
  expect(cellsOf(again(readBack(model)))).toEqual(cellsOf(model));
});

test('what was typed comes back where it was: counts, ticks, the log, money', () => {
  const { log, booked } = { log: 'Counts', booked: 'Shopping and money' };
  const logRow = Object.entries(model.sheets.find(({ name }) => name === log)?.cells ?? {}).find(
    ([, c]) => c.value === 'Date and hour',
  )?.[0];
  const moneyRow = Object.entries(model.sheets.find(({ name }) => name === booked)?.cells ?? {}).find(
    ([, c]) => c.value === 'Amount',
  )?.[0];
  const [l, m] = [Number(logRow?.slice(1)) + 1, Number(moneyRow?.slice(1)) + 1];
  let typed = typeInto(model, 'Counts', {
    C5: 5.9,
    F5: 1.01,
    [`B${l}`]: 46_440.5,
    [`C${l}`]: 'B1',
    [`D${l}`]: 'died',
    [`E${l}`]: 120,
    [`I${l}`]: 'Kofi',
  });
  typed = typeInto(typed, 'Calendar', { B7: 'done', J7: 'Ama' });
  typed = typeInto(typed, 'Batches', { K12: 812 });
  typed = typeInto(typed, booked, { [`B${m}`]: 46_400, [`C${m}`]: -55, [`F${m}`]: 'cysts' });
  const reading = readBack(typed);
  expect(reading.plan.batches[0]?.events).toEqual([
    { at: 46_440.5, kind: 'died', number: 120, order: undefined, paid: undefined, note: undefined },
  ]);
  expect(reading.input.booked).toEqual([{ date: 46_400, what: 'cysts', amount: -55 }]);
  const cells = cellsOf(again(reading));
  for (const [key, value] of Object.entries({
    'Counts!C5': 5.9,
    'Counts!F5': 1.01,
    [`Counts!E${l}`]: 120,
    [`Counts!I${l}`]: 'Kofi',
    'Calendar!B7': 'done',
    'Calendar!J7': 'Ama',
    'Batches!K12': 812,
    [`${booked}!C${m}`]: -55,
  }))
    expect([key, cells[key]]).toEqual([key, value]);
});

test('what was ticked for work that a new plan has no more stands in the log, and what follows it is read', () => {
  const { typed } = readBack(model);
  const ticks = [
    {
      batch: 'B1',
      task: 'Hand over',
      order: 'A buyer who has gone away',
      later: 0,
      done: 46_440.5,
      by: 'Ama',
    },
    { batch: 'B99', task: 'Inject', later: 0, done: 'done', by: 'Kofi' },
  ];
  const log = [{ at: 46_441.5, batch: 'B1', what: 'died', number: 3 }];
  const once = readBack(livingBook(book, plan, { ...typed, calendar: ticks, log }));
  expect(once.typed.log.map(({ note }) => note)).toEqual([
    undefined,
    expect.stringContaining('Hand over (Done'),
    expect.stringContaining('Kept of B99, Calendar: Inject (Done done, By Kofi)'),
  ]);
  // A long remark alone in its line does not end the log; planned again, nothing is said twice.
  const more = {
    ...once.typed,
    log: [...once.typed.log, { at: 46_442.5, batch: 'B1', what: 'died', number: 4 }],
  };
  const twice = readBack(livingBook(book, plan, more));
  expect(twice.typed.log).toHaveLength(4);
  expect(twice.plan.batches[0]?.events.map(({ number }) => number)).toEqual([3, 4]);
});

test('work of a batch that is over is listed where it was ticked off, and only there', () => {
  const over = {
    ...plan,
    batches: plan.batches.map((b, i) => (i === 0 ? { ...b, state: 'over' as const } : b)),
  };
  const name = plan.batches[0]?.name ?? '';
  const calendar = [{ batch: name, task: 'Inject', order: '', later: 0, done: 'done', by: 'Ama' }];
  const { typed } = readBack(model);
  const again = readBack(livingBook(book, over, { ...typed, calendar }));
  expect(again.typed.calendar).toEqual([
    expect.objectContaining({ batch: name, task: 'Inject', done: 'done', by: 'Ama' }),
  ]);
  expect(again.typed.log).toEqual([]);
});

test('a sheet that is gone, or headings that are gone, are said', () => {
  const without = readBook(model.sheets.filter(({ name }) => name !== 'Orders').map(gridOf), '');
  expect(without).toMatchObject({ kind: 'unreadable', faults: [expect.stringContaining('“Orders”')] });
  const renamed = typeInto(model, 'Vats', { B4: 'x', C4: 'y', D4: 'z', E4: 'q', F4: 'r', G4: 's', H4: 't' });
  expect(readBook(renamed.sheets.map(gridOf), '')).toMatchObject({
    kind: 'unreadable',
    faults: [expect.stringContaining('“Vats”')],
  });
});

test('rows put in by hand, and orders sorted, change nothing that is read', () => {
  const shifted = model.sheets.map(gridOf).map((sheet) => ({
    ...sheet,
    values: ['Orders', 'Batches'].includes(sheet.name) ? [[], ...sheet.values] : sheet.values,
  }));
  const reading = readBook(shifted, '');
  expect(reading.kind === 'read' && reading.input.orders).toEqual(readBack(model).input.orders);
});
