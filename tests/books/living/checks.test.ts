import { livingBook, LivingPages } from '../../../shared/books/living';
import { ASSUMPTIONS } from '../../../shared/families/assumptions';
import type { Cell } from '../../../shared/base/values';
import { findFunction } from '../../../shared/catalogue';
import { planBatches } from '../../../shared/season/batches';
import { addressOf, parseAddress } from '../../../shared/sheet/formula/address';
import { LiveBook } from '../../../shared/sheet/live/book';
import type { SheetModel } from '../../../shared/sheet/workbook/model';
import { bookOf } from '../../season/support/support';

/**
 * Every line of the sheet Checks: what it watches is spoilt in the cells of a written book, and it and the light
 * on the first page turn; the same change kept just inside its limit leaves it green.
 */
const REST = 60;
const book = bookOf({
  plannedOn: '2027-01-10',
  restDays: REST,
  orders: [
    { name: 'Fry man', product: 'fry', number: 4000, due: '2027-03-01', price: 0.05, grams: 0.4 },
    { name: 'Lake farms', product: 'fingerlings', number: 8000, due: '2027-05-20', price: 0.12 },
    { name: 'Pond club', product: 'fingerlings', number: 8000, due: '2027-08-10', price: 0.12 },
  ],
});
// Two females, so that each is stripped more than once.
const few = { ...book, females: book.females.slice(0, 2) };
const plan = planBatches(few, {
  draws: 200,
  explains: false,
  effort: { looks: 15_000, mostTries: 15, seed: 3 },
});
const model = livingBook(few, plan);
const { tables: t, rows } = new LivingPages(few, plan);

const live = new LiveBook(findFunction);
live.setSheets(model.sheets.map(({ name }) => ({ id: name, name })));
live.setNames(model.names);
live.setToday(few.plannedOn);
for (const { name, cells } of model.sheets)
  live.set(
    name,
    Object.entries(cells).flatMap(([at, { value = null, formula }]) => {
      const place = parseAddress(at);
      return place ? [{ ...place, value, ...(formula === undefined ? {} : { formula }) }] : [];
    }),
  );
live.calculate();

const at = (sheet: string, address: string): Cell => {
  const { row, column } = parseAddress(address) ?? { row: 0, column: 0 };
  return live.value(sheet, row, column);
};
const sheetOf = (name: string): SheetModel => {
  const sheet = model.sheets.find((one) => one.name === name);
  if (!sheet) throw new Error(name);
  return sheet;
};
type Change = readonly [sheet: string, address: string, value: Cell];
const put = (changes: readonly Change[]): void => {
  for (const [sheet, address, value] of changes) {
    const { row, column } = parseAddress(address) ?? { row: 0, column: 0 };
    live.set(sheet, [{ row, column, value }]);
  }
  live.calculate();
};
const putBack = (changes: readonly Change[]): void => {
  for (const [sheet, address] of changes) {
    const { row, column } = parseAddress(address) ?? { row: 0, column: 0 };
    const { value = null, formula } = sheetOf(sheet).cells[address] ?? {};
    live.set(sheet, [{ row, column, value, ...(formula === undefined ? {} : { formula }) }]);
  }
  live.calculate();
};
/** The cell right of a label. */
const beside = (sheet: string, label: string): string => {
  const [address = ''] = Object.entries(sheetOf(sheet).cells).find(([, { value }]) => value === label) ?? [];
  const place = parseAddress(address);
  if (!place) throw new Error(`no ${label} on ${sheet}`);
  return addressOf(place.row, place.column + 1);
};
const CHECKS = Object.entries(sheetOf('Checks').cells).flatMap(([address, { formula = '' }]) =>
  address.startsWith('F') && formula.startsWith('=IF(ISERROR(E') ? [Number(address.slice(1))] : [],
);
const titles = CHECKS.map((row) => String(at('Checks', `B${row}`)));
const said = (title: string): Cell => at('Checks', `F${CHECKS[titles.indexOf(title)] ?? 0}`);
const light = (): Cell => at('Today', 'C5');

/** A cell of a table: line `i` counted from 0, or its last line. */
const cell = <K extends string>(
  table: {
    readonly title: string;
    readonly letters: Readonly<Record<K, string>>;
    readonly first: number;
    readonly last: number;
  },
  key: K,
  i: number,
): readonly [string, string] => [table.title, `${table.letters[key]}${i < 0 ? table.last : table.first + i}`];
const numberAt = ([sheet, address]: readonly [string, string]): number => Number(at(sheet, address));

const share = (order: string): number => rows.shares.findIndex((one) => one.order === order);
const fry = share('O1');
const ready = (): number => numberAt(cell(t.shares, 'latestStrip', fry));
/** Free days between two batches in one vat, the fewest of all. */
const leastGap = (): number => {
  const gaps = rows.stays.flatMap((stay, i) => {
    const next = rows.stays[i + 1];
    if (!next || next.vat !== stay.vat || next.batch === stay.batch) return [];
    return [numberAt(cell(t.stays, 'from', i + 1)) - numberAt(cell(t.stays, 'to', i))];
  });
  return Math.min(...gaps);
};
/** Days between two nights of one female, the fewest of all. */
const leastRest = (): number => {
  const nights = rows.pairs.map(({ female }, i) => ({
    female,
    night: Math.floor(numberAt(cell(t.pairs, 'strip', i))),
  }));
  const gaps = nights.flatMap((a) =>
    nights.flatMap((b) => (a.female === b.female && a.night > b.night ? [a.night - b.night] : [])),
  );
  return Math.min(...gaps);
};
const logged = (values: Readonly<Partial<Record<keyof typeof t.log.letters, Cell>>>): Change[] =>
  Object.entries(values).map(([key, value]) => [...cell(t.log, key as keyof typeof t.log.letters, 0), value]);
const sold = (number: number, order: string, batch = rows.batches[0]?.name ?? ''): Change[] =>
  logged({ at: few.plannedOn + 0.4, batch, what: 'sold', number, order });
const over = (place: readonly [string, string], factor: number): Change[] => [
  [...place, numberAt(place) * factor],
];
const feedTable = (): readonly [string, string] => {
  // The line above the total.
  const cells = sheetOf('Feed by day').cells;
  const total = Object.entries(cells).find(([, { value }]) => value === 'In all')?.[0] ?? '';
  return ['Feed by day', `F${Number(total.slice(1)) - 1}`];
};

interface Line {
  readonly watches: string;
  /** Just inside its limit, and beyond. */
  readonly inside: () => readonly Change[];
  readonly beyond: () => readonly Change[];
}
const added = (place: readonly [string, string], by: number): Change[] => [[...place, numberAt(place) + by]];
const LINES: readonly Line[] = [
  {
    watches: 'Money at the end is money at hand and profit',
    inside: () => over(cell(t.cash, 'left', -1), 1 + 9e-7),
    beyond: () => over(cell(t.cash, 'left', -1), 1 + 1.2e-6),
  },
  {
    watches: 'Every sale to come stands in the weeks',
    inside: () => added(cell(t.cash, 'sales', -1), 1e-6),
    beyond: () => added(cell(t.cash, 'sales', -1), 0.01),
  },
  {
    // A payment without its day is in no week.
    watches: 'Every payment written down stands in the weeks',
    inside: () => [
      [...cell(t.booked, 'date', 0), few.plannedOn],
      [...cell(t.booked, 'amount', 0), -55],
    ],
    beyond: () => [[...cell(t.booked, 'amount', 0), -55]],
  },
  {
    watches: 'Dry feed by batch is dry feed bought, kg',
    inside: () => added(cell(t.shopping, 'feed', -1), 1e-7),
    beyond: () => added(cell(t.shopping, 'feed', -1), 0.001),
  },
  {
    watches: 'Cysts by batch are cysts bought, kg',
    inside: () => added(cell(t.shopping, 'cysts', -1), 1e-7),
    beyond: () => added(cell(t.shopping, 'cysts', -1), 0.001),
  },
  {
    watches: 'Dry feed by day is dry feed by batch, kg',
    inside: () => added(feedTable(), 1e-4),
    beyond: () => added(feedTable(), 1),
  },
  {
    watches: 'Fish ready after they are due',
    inside: () => [[...cell(t.orders, 'due', 0), ready()]],
    beyond: () => [[...cell(t.orders, 'due', 0), ready() - 1]],
  },
  {
    watches: 'Fish that wait longer than they may',
    inside: () => [[...cell(t.orders, 'due', 0), ready() + few.holdDays + 1]],
    beyond: () => [[...cell(t.orders, 'due', 0), ready() + few.holdDays + 2]],
  },
  {
    // The weight on the day follows the weight at first food.
    watches: 'Orders whose fish would be too light',
    inside: () => [['Figures', beside('Figures', ASSUMPTIONS.startWeight.label), startFor(0.951)]],
    beyond: () => [['Figures', beside('Figures', ASSUMPTIONS.startWeight.label), startFor(0.949)]],
  },
  {
    watches: 'Orders that ask for planning again',
    inside: () => added(cell(t.orders, 'number', 1), -1),
    beyond: () => added(cell(t.orders, 'number', 1), 1),
  },
  {
    watches: 'Vats taken twice, or not clean in between',
    inside: () => [['Setup', beside('Setup', 'Cleaning and refilling a vat'), leastGap()]],
    beyond: () => [['Setup', beside('Setup', 'Cleaning and refilling a vat'), leastGap() + 0.001]],
  },
  {
    watches: 'Vats with too many fish',
    inside: () => [['Figures', beside('Figures', ASSUMPTIONS.nurseryPerLitre.label), densest() / 1.0009]],
    beyond: () => [['Figures', beside('Figures', ASSUMPTIONS.nurseryPerLitre.label), densest() / 1.0011]],
  },
  {
    watches: 'Females stripped again before they have rested',
    inside: () => [['Setup', beside('Setup', 'Rest of a female'), leastRest()]],
    beyond: () => [['Setup', beside('Setup', 'Rest of a female'), leastRest() + 1]],
  },
  {
    watches: 'Batches that give more fish than they have',
    inside: () => [[...cell(t.shares, 'part', fry), 1.00009]],
    beyond: () => [[...cell(t.shares, 'part', fry), 1.00011]],
  },
  {
    watches: 'Orders to which more was handed over than ordered',
    inside: () => sold(4000, 'O1'),
    beyond: () => sold(4001, 'O1'),
  },
  {
    watches: 'Lines of the log whose batch is not in the book',
    inside: () => sold(10, 'O1'),
    beyond: () => sold(10, 'O1', 'B77'),
  },
  {
    watches: 'Lines of the log whose order is not a key on Orders',
    inside: () => sold(10, 'O3'),
    beyond: () => sold(10, 'O77'),
  },
];

/** The weight at first food with which the fry man's fish weigh so much of what he ordered. */
const startFor = (part: number): number =>
  (ASSUMPTIONS.startWeight.planned * part * 0.4) / numberAt(cell(t.shares, 'gramsThen', fry));
/** Promised fish in a litre of the fullest vat of those that are nursed: what stands there where no more may. */
function densest(): number {
  const little: Change[] = [['Figures', beside('Figures', ASSUMPTIONS.nurseryPerLitre.label), 1e-6]];
  put(little);
  const found = rows.stays.flatMap(({ stage }, i) =>
    stage === 'nursing' ? [numberAt(cell(t.stays, 'perLitre', i))] : [],
  );
  putBack(little);
  return Math.max(...found);
}

test('every check of the book has a line here, and all hold as written', () => {
  expect(LINES.map(({ watches }) => watches)).toEqual(titles);
  expect(titles.map(said)).toEqual(titles.map(() => '● holds'));
  expect(light()).toBe('● all hold');
});

test.each(LINES.map((line) => [line.watches, line] as const))('%s', (watches, { inside, beyond }) => {
  const near = inside();
  put(near);
  expect([watches, said(watches)]).toEqual([watches, '● holds']);
  putBack(near);
  expect(light()).toBe('● all hold');
  const far = beyond();
  put(far);
  expect([watches, said(watches)]).toEqual([watches, '× does not hold']);
  expect(light()).toMatch(/^× \d+ do not hold$/);
  putBack(far);
  expect([said(watches), light()]).toEqual(['● holds', '● all hold']);
});

test('a line that cannot be worked out is no line that holds', () => {
  const broken: Change[] = [[...cell(t.cash, 'left', -1), { error: '#NAME?' }]];
  put(broken);
  expect(said('Money at the end is money at hand and profit')).toBe('? not calculated here');
  expect(light()).toBe('? not calculated here');
  putBack(broken);
  expect(light()).toBe('● all hold');
});
