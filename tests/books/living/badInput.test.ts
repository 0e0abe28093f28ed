import {
  asOf,
  bookSheetNames,
  booksIn,
  livingBook,
  LivingPages,
  readBook,
} from '../../../shared/books/living';
import * as columns from '../../../shared/books/living/columns';
import { openKeys } from '../../../shared/books/living/reading/typed';
import type { Table } from '../../../shared/books/living/table';
import { calculate } from '../../../shared/catalogue/calculation';
import { planBatches, readOrderBook } from '../../../shared/season';
import type { CellModel, SheetModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { BOOK, bookOf, faultsOf, gridOf, checked } from '../../season/support/support';
import { readBack } from './support';

/** What hands do to a written book: sheets renamed, rows sorted or taken out, headings overwritten, lists emptied. */
const QUICK = { draws: 100, explains: false, effort: { looks: 15_000, mostTries: 15, seed: 3 } } as const;
const book = bookOf({
  orders: [
    { name: 'Fry man', product: 'fry', number: 4000, due: '2027-02-25', price: 0.05 },
    { name: 'Lake farms', product: 'fingerlings', number: 8000, due: '2027-03-31', price: 0.12 },
    { name: 'Pond club', product: 'fingerlings', number: 6000, due: '2027-05-10', price: 0.12 },
  ],
});
const plan = planBatches(book, QUICK);
const model = livingBook(book, plan);
const { tables: t } = new LivingPages(book, plan);
const grids = model.sheets.map(gridOf);

const change = (
  from: WorkbookModel,
  name: string,
  of: (cells: Record<string, CellModel>) => void,
): WorkbookModel => ({
  ...from,
  sheets: from.sheets.map((sheet): SheetModel => {
    if (sheet.name !== name) return sheet;
    const cells: Record<string, CellModel> = Object.fromEntries(
      Object.entries(sheet.cells).map(([at, cell]) => [at, { ...cell }]),
    );
    of(cells);
    return { ...sheet, cells };
  }),
});
const put = (from: WorkbookModel, name: string, values: Readonly<Record<string, CellModel['value']>>) =>
  change(from, name, (cells) => {
    for (const [at, value] of Object.entries(values)) {
      const cell = { ...cells[at] };
      delete (cell as { value?: unknown }).value;
      cells[at] = value === undefined ? cell : { ...cell, value };
    }
  });
/** Lines of a table in another order: what is typed and written moves, formulas of a line stay alike. */
const sorted = <K extends string>(
  from: WorkbookModel,
  table: Table<K>,
  to: readonly number[],
): WorkbookModel =>
  change(from, table.title, (cells) => {
    const was = { ...cells };
    to.forEach((line, i) => {
      for (const key of table.keys) {
        const [here, there] = [line, i].map((n) => `${table.letters[key]}${table.first + n}`);
        if (here === undefined || there === undefined || was[there]?.formula !== undefined) continue;
        const cell: CellModel = { ...was[there] };
        const value = was[here]?.value;
        delete (cell as { value?: unknown }).value;
        cells[there] = value === undefined ? cell : { ...cell, value };
      }
    });
  });
const verdicts = (from: WorkbookModel): Record<string, unknown> => {
  const cells = from.sheets.find(({ name }) => name === 'Orders')?.cells ?? {};
  return Object.fromEntries(
    Array.from({ length: 3 }, (_, i) => {
      const at = (key: keyof typeof t.orders.letters): unknown =>
        cells[`${t.orders.letters[key]}${t.orders.first + i}`]?.value;
      return [String(at('buyer')), at('verdict')];
    }),
  );
};
const light = (from: WorkbookModel): unknown =>
  from.sheets.find(({ name }) => name === 'Today')?.cells.C5?.value;
const byName = <T extends { readonly name?: unknown; readonly tag?: unknown }>(list: unknown): T[] =>
  [...(list as T[])].sort((a, b) => String(a.name ?? a.tag).localeCompare(String(b.name ?? b.tag)));

test.each(bookSheetNames('').map((name) => [name]))(
  'the sheet %s renamed: it is named, nothing is guessed',
  (name) => {
    const renamed = grids.map((grid) => (grid.name === name ? { ...grid, name: 'mine' } : grid));
    expect(booksIn(renamed.map((grid) => grid.name))).toEqual(['']);
    expect(readBook(renamed, '')).toEqual({
      kind: 'unreadable',
      faults: [`There is no sheet “${name}” in this workbook. The book needs it to be planned again.`],
    });
  },
);

/** Every heading under which people type, on its sheet. */
const OPEN = (
  [
    ['orders', columns.ORDERS],
    ['batches', columns.BATCHES],
    ['pairs', columns.PAIRS],
    ['calendar', columns.CALENDAR],
    ['vats', columns.VATS],
    ['eggs', columns.EGG_COUNTS],
    ['fry', columns.FRY_COUNTS],
    ['log', columns.LOG],
    ['shopping', columns.SHOPPING],
    ['booked', columns.BOOKED],
    ['females', columns.FEMALES],
    ['males', columns.MALES],
  ] as const
).flatMap(([name, of]) => {
  const table = t[name] as Table<string>;
  return (openKeys(of as typeof columns.LOG) as string[])
    .filter((key) => !(name === 'orders' && key === 'buyer'))
    .map(
      (key) =>
        [table.title, table.columns[key]?.title ?? '', `${table.letters[key] ?? ''}${table.head}`] as const,
    );
});
test('a heading overwritten anywhere people type: said by name, and nothing is lost', () => {
  expect(OPEN.length).toBeGreaterThan(60);
  const silent = OPEN.flatMap(([sheet, title, address]) => {
    const [own] = put(model, sheet, { [address]: 'my own word' }).sheets.filter(({ name }) => name === sheet);
    const reading = readBook(
      grids.map((grid) => (grid.name === sheet && own ? gridOf(own) : grid)),
      '',
    );
    return reading.kind === 'unreadable' && reading.faults.some((fault) => fault.includes(`“${sheet}”`))
      ? []
      : [[sheet, title]];
  });
  expect(silent).toEqual([]);
});

test('a question of Setup overwritten is said, and takes its usual value', () => {
  const [address = ''] =
    Object.entries(model.sheets.find(({ name }) => name === 'Setup')?.cells ?? {}).find(
      ([, { value }]) => value === 'Rest of a female',
    ) ?? [];
  const reading = readBack(put(model, 'Setup', { [address]: 'REST!!' }));
  expect(reading.missing).toEqual([
    '“Setup” has no “Rest of a female” any more. The usual value is taken for it.',
  ]);
});

test('orders, vats and fish sorted by hand: the same book, the same verdicts', () => {
  let shuffled = sorted(model, t.orders, [2, 0, 1]);
  shuffled = sorted(shuffled, t.vats, [5, 4, 3, 2, 1, 0]);
  shuffled = sorted(shuffled, t.females, [8, 0, 7, 1, 6, 2, 5, 3, 4]);
  const live = calculate(shuffled, book.plannedOn).model;
  expect(verdicts(live)).toEqual(verdicts(model));
  expect(light(live)).toBe(light(model));
  const [was, is] = [readBack(model), readBack(live)];
  for (const list of ['orders', 'vats', 'females'] as const)
    expect(byName(is.input[list])).toEqual(byName(was.input[list]));
  expect(is.plan.allocations).toEqual(was.plan.allocations);
});

test('a line of Orders taken out by hand: the light turns, the others keep their verdicts', () => {
  // No other sheet points at one line of Orders: none shows an error when it goes.
  const pointing = model.sheets.flatMap((sheet) =>
    sheet.name === 'Orders'
      ? []
      : Object.entries(sheet.cells).flatMap(([at, { formula = '' }]) =>
          /(?<![A-Za-z])Orders!\$?[A-Z]+\$?\d+(?!\d*:)/.test(
            formula.replace(/Orders!\$[A-Z]+\$\d+:\$[A-Z]+\$\d+/g, ''),
          )
            ? [`${sheet.name}!${at}`]
            : [],
        ),
  );
  expect(pointing).toEqual([]);
  const [second, third] = [t.orders.first + 1, t.orders.first + 2];
  const without = change(model, 'Orders', (cells) => {
    for (const key of t.orders.keys) {
      const [here, below] = [`${t.orders.letters[key]}${second}`, `${t.orders.letters[key]}${third}`];
      if (cells[here]?.formula === undefined && cells[below]) cells[here] = { ...cells[below] };
      if (cells[below]?.formula === undefined) cells[below] = {};
    }
  });
  const live = calculate(without, book.plannedOn).model;
  expect(verdicts(live)).toMatchObject({
    'Fry man': verdicts(model)['Fry man'],
    'Pond club': verdicts(model)['Pond club'],
  });
  expect(light(live)).toMatch(/^× \d+ do not hold$/);
  const errors = live.sheets.flatMap((sheet) =>
    Object.entries(sheet.cells).flatMap(([at, { value }]) =>
      typeof value === 'object' ? [`${sheet.name}!${at}`] : [],
    ),
  );
  // What was to be handed over to it is nobody's: no cell of the book is without a value.
  expect(errors).toEqual([]);
  const again = checked(asOf(readBack(live), book.plannedOn));
  expect(again.orders.map(({ key, name }) => `${key ?? ''} ${name}`)).toEqual(['O1 Fry man', 'O3 Pond club']);
});

test('a line of Batches taken out by hand is asked back', () => {
  const { batches } = t;
  const emptied = change(model, 'Batches', (cells) => {
    for (const key of batches.keys) cells[`${batches.letters[key]}${batches.first}`] = {};
  });
  expect(readBack(emptied).missing).toEqual([
    expect.stringMatching(/^B1 has vats on “Vats” but no line on “Batches” any more\. Bring its line back/),
  ]);
});

test('no vats: a sentence, in a form and on the sheet', () => {
  expect(faultsOf({ vats: [] })).toEqual(['vats | Vats: the list is empty; at least 1 is needed.']);
  const emptied = change(model, 'Vats', (cells) => {
    for (let i = 0; i < t.vats.lines; i++)
      for (const key of openKeys(columns.VATS)) cells[`${t.vats.letters[key]}${t.vats.first + i}`] = {};
  });
  const reading = readOrderBook(readBack(emptied).input);
  expect('faults' in reading && reading.faults.map(({ message }) => message)).toEqual([
    'Vats: the list is empty; at least 1 is needed.',
  ]);
});

test('all dates past: asked about in a new book, history in a lived one', () => {
  const past = BOOK.orders.map((order) => ({ ...order, due: '2026-05-01' }));
  const faults = faultsOf({ orders: past });
  expect(faults).toHaveLength(past.length);
  for (const fault of faults) expect(fault).toContain('Mend the date or take the order out.');
  // A year later everything has gone by: nothing to plan, nothing lost, every line said.
  const lived = livingBook(
    bookOf({ orders: BOOK.orders }),
    planBatches(bookOf({ orders: BOOK.orders }), QUICK),
  );
  const later = checked(asOf(readBack(lived), 46_800));
  const next = planBatches(later, QUICK);
  expect(next.batches.every(({ state }) => state === 'over')).toBe(true);
  expect(next.orders.map(({ why }) => why)).toEqual(BOOK.orders.map(() => 'its day is past'));
  const written = livingBook(later, next, readBack(lived).typed);
  expect(Object.values(written.sheets.find(({ name }) => name === 'Orders')?.cells ?? {})).toContainEqual(
    expect.objectContaining({ value: 'its day is past' }),
  );
});

test('two seasons in one workbook are told apart, and each is read as itself', () => {
  const second = bookOf({ hatchery: 'Second Shed', orders: BOOK.orders.slice(0, 1) });
  const other = livingBook(second, planBatches(second, QUICK));
  const all = [...grids, ...other.sheets.map(gridOf).map((grid) => ({ ...grid, name: `${grid.name} 2` }))];
  expect(booksIn(all.map(({ name }) => name))).toEqual(['', ' 2']);
  const reading = (suffix: string): unknown => {
    const one = readBook(all, suffix);
    return one.kind === 'read' && [one.input.hatchery, (one.input.orders as object[]).length];
  };
  expect([reading(''), reading(' 2')]).toEqual([
    [BOOK.hatchery, 3],
    ['Second Shed', 1],
  ]);
  expect(readBook(all, ' 3')).toMatchObject({ kind: 'unreadable' });
});
