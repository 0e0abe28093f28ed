import type { OrderBook } from '../../shared/season';
import {
  compareSeasons,
  orderBookWorkbook,
  planSeasonBook,
  readSeason,
  seasonSheetNames,
  seasonsIn,
} from '../../shared/season';
import { readOrderBook } from '../../shared/season/orderBook';
import { FRY_COUNTS, ORDERS, PAIRS } from '../../shared/books/season/columns';
import { FIRST, TITLES } from '../../shared/books/season/context';
import { calculate } from '../../shared/catalogue/calculation';
import type { WorkbookModel } from '../../shared/sheet/workbook/model';
import { BOOK, bookOf, gridOf } from './support';

const DRAWN = { draws: 200 };

const sheetsOf = (model: WorkbookModel) =>
  model.sheets.filter(({ name }) => seasonSheetNames('').includes(name)).map(gridOf);
type Typed = readonly [sheet: string, address: string, value: number | string];
const typed = (model: WorkbookModel, entries: readonly Typed[]): WorkbookModel =>
  calculate({
    ...model,
    sheets: model.sheets.map((s) => ({
      ...s,
      cells: {
        ...s.cells,
        ...Object.fromEntries(
          entries
            .filter(([sheet]) => sheet === s.name)
            .map(([, address, value]) => [address, { ...s.cells[address], value }]),
        ),
      },
    })),
  }).model;

const read = (model: WorkbookModel, today: number) => {
  const reading = readSeason(sheetsOf(model), '', today);
  if (reading.kind !== 'read') throw new Error(reading.faults.join(' '));
  return reading;
};
const bookFrom = (input: unknown): OrderBook => {
  const checked = readOrderBook(input);
  if ('faults' in checked)
    throw new Error(checked.faults.map(({ field, message }) => `${field}: ${message}`).join(' '));
  return checked.book;
};

describe('what was written is read back', () => {
  test.each([
    ['as it is', {}],
    [
      'with everything said',
      {
        orders: [
          {
            name: 'A',
            product: 'fry',
            number: 20_000,
            grams: 0.05,
            due: '2027-04-01',
            price: 0.08,
            forBreeding: true,
          },
          { name: 'B & Co', product: 'fingerlings', number: 12_345, due: '2027-05-09' },
        ],
        vats: [
          { name: 'North', litres: 850, holds: ['eggs', 'fry'] },
          { name: 'South', litres: 1200, holds: ['nursing', 'fry'] },
          { name: '3', litres: 400 },
        ],
        females: BOOK.females.map((f, i) => ({ ...f, ...(i % 2 === 0 ? { lastUsed: '2026-12-01' } : {}) })),
        staff: {
          stripFrom: 5.5,
          stripTo: 24,
          injectFrom: '16:30',
          injectTo: 24,
          weekdays: [1, 3, 5, 7],
          daysOff: ['2027-03-01', '2027-12-25'],
          femalesPerDay: 4,
        },
        eggShares: [0.05, 0.06, null, 0.1, 0.12, 0.14, 0.14, 0.12, 0.1, 0.08, 0.06, 0.05],
        temperatures: [null, 26, 27, 27.5, 28, 27.5, 27, 27, 27, 26.5, 26, null],
        preparation: 'ready-made solution',
        restDays: 70,
        malesSurvive: true,
        cleaningDays: 3,
        holdDays: 2,
        leadDays: { hormone: 10, cysts: 5, feed: 3 },
        spare: 0.15,
        lost: 0.05,
        leastParents: 40,
        water: { ph: 5.9, phWanted: 6.8, alkalinity: 0.5, material: 'baking soda' },
        seed: 77,
        assumptions: { hatch: 0.45, latencyOffset: 1.25, fryGrowth: 15 },
        spreads: { hatch: { runs: 0.11, season: 0.04 }, eggs: { females: 0.25, runs: 0.1, season: 0.3 } },
      },
    ],
  ])('%s', (_title, changes) => {
    const book = bookOf(changes);
    const { input, said } = read(orderBookWorkbook(book, planSeasonBook(book, DRAWN)), book.plannedOn);
    const again = bookFrom(input);
    const plain = (b: OrderBook): unknown =>
      JSON.parse(JSON.stringify({ ...b, vats: b.vats.map((v) => ({ ...v, holds: [...v.holds].sort() })) }));
    expect(plain(again)).toEqual(plain(book));
    expect(said).toEqual([]);
  });

  test('and planned again on the same day nothing changes', () => {
    const book = bookOf();
    const { input, before } = read(orderBookWorkbook(book, planSeasonBook(book, DRAWN)), book.plannedOn);
    expect(compareSeasons(before, planSeasonBook(bookFrom(input), DRAWN), book.plannedOn)).toEqual([]);
  });
});

describe('some weeks later', () => {
  const book = bookOf();
  const plan = planSeasonBook(book, DRAWN);
  const model = orderBookWorkbook(book, plan);
  const [first, second] = plan.runs;
  if (!first || !second) throw new Error('two runs wanted');
  const counted = (key: keyof typeof FRY_COUNTS.letters, value: number): Typed => [
    TITLES.fryCounts,
    `${FRY_COUNTS.letters[key]}${FIRST}`,
    value,
  ];

  test(
    'a run in the vats counts with the fish its counts leave, keeps its vats, and its ' + 'parents rest',
    () => {
      const today = Math.floor(first.stripAt) + 20;
      const { input, said, before } = read(typed(model, [counted('weaned', 30_000)]), today);
      const now = bookFrom(input);
      const share = 0.76 * 0.95;
      expect(now.underway.reduce((sum, run) => sum + run.fish, 0)).toBe(Math.floor(30_000 * share));
      expect(
        now.females
          .filter(({ lastUsed }) => lastUsed === Math.floor(first.stripAt))
          .map(({ tag }) => tag)
          .sort(),
      ).toEqual(first.females.map(({ tag }) => tag).sort());
      const after = planSeasonBook(now, DRAWN);
      const taken = new Set(first.vats.at(-1)?.names);
      for (const stay of after.occupancy)
        if (taken.has(stay.vat)) expect(stay.from).toBeGreaterThanOrEqual(first.due + book.cleaningDays);
      for (const run of after.runs)
        for (const { tag } of run.females)
          if (first.females.some((f) => f.tag === tag))
            expect(run.stripAt - first.stripAt).toBeGreaterThan(89);
      expect(said[0]).toBe(
        `Run 1 (Lake farms) is in the vats: kept as it is, with ${Math.round(30_000 * share).toLocaleString('en')} fish expected.`,
      );
      const short = 60_000 - Math.floor(30_000 * share);
      expect(compareSeasons(before, after, today).map(({ message }) => message)).toContain(
        `Lake farms: ${Math.floor(30_000 * share).toLocaleString('en')} fish instead of 60,000, ${short.toLocaleString('en')} short.`,
      );
    },
  );

  test('a run that is lost leaves its vats; its parents rest all the same', () => {
    const { input, said } = read(typed(model, [counted('handed', 0)]), Math.floor(first.stripAt) + 20);
    const now = bookFrom(input);
    expect(now.underway).toEqual([]);
    expect(said).toContain('Run 1 (Lake farms) is taken as lost: nothing of it is left.');
    expect(now.females.filter(({ lastUsed }) => lastUsed === Math.floor(first.stripAt)).length).toBe(
      first.females.length,
    );
  });

  test('a run whose goods are ordered stands; the ones after it may move', () => {
    const today = Math.floor(second.injectAt) - 10;
    const { input, said, before } = read(model, today);
    expect(said.at(-1)).toContain('is too near to move, its goods are ordered');
    const after = planSeasonBook(bookFrom(input), DRAWN);
    expect(after.runs).toEqual([]);
    expect(after.orders.map(({ expected }) => Math.round(expected))).toEqual(
      first.due > today ? [60_000, 40_000] : [40_000],
    );
    expect(
      compareSeasons(before, after, today).filter(({ kind }) => kind === 'run dropped' || kind === 'moved'),
    ).toEqual([]);
  });

  test('stripped at another hour than planned: the day written down counts', () => {
    const day = Math.floor(first.stripAt) - 1;
    const { input } = read(
      typed(model, [[TITLES.pairs, `${PAIRS.letters.stripped}${FIRST}`, day + 0.4]]),
      day + 5,
    );
    expect(bookFrom(input).underway[0]?.strippedOn).toBe(day);
  });

  test('an order whose day is past is left out and said; a new line is planned', () => {
    const row = FIRST + 2;
    const c = ORDERS.letters;
    const { input, said } = read(
      typed(model, [
        [TITLES.orders, `${c.order}${row}`, 'Late caller'],
        [TITLES.orders, `${c.product}${row}`, 'fry'],
        [TITLES.orders, `${c.number}${row}`, 8000],
        [TITLES.orders, `${c.due}${row}`, second.due + 20],
      ]),
      first.due + 1,
    );
    const after = planSeasonBook(bookFrom(input), DRAWN);
    expect(said).toContain(
      'Lake farms: its day is past, so it is left out. If it is still owed, give it a new day on Orders.',
    );
    expect(after.orders.map(({ order }) => order.name)).toEqual(['Pond club', 'Late caller']);
    expect(after.runs.at(-1)?.order).toBe('Late caller');
  });
});

describe('what is not as it was written', () => {
  const book = bookOf();
  const sheets = sheetsOf(orderBookWorkbook(book, planSeasonBook(book, DRAWN)));

  test('a sheet that is gone, headings that are gone: sentences', () => {
    expect(
      readSeason(
        sheets.filter(({ name }) => name !== 'Runs'),
        '',
        46_500,
      ),
    ).toEqual({
      kind: 'unreadable',
      faults: ['There is no sheet “Runs” in this workbook. A season needs it to be planned again.'],
    });
    const bare = sheets.map((s) => (s.name === 'Orders' ? { ...s, values: [] } : s));
    expect(readSeason(bare, '', 46_500)).toMatchObject({
      kind: 'unreadable',
      faults: [expect.stringContaining('The headings of “Orders” are not where they were written')],
    });
  });

  test('rows put in above, columns moved: found all the same', () => {
    const moved = sheets.map(({ name, values }) => ({
      name,
      top: 0,
      left: 0,
      values: [[], ['A note'], ...values.map((row) => [...row.slice(0, 1), null, ...row.slice(1)])],
    }));
    expect(readSeason(moved, '', book.plannedOn)).toEqual(readSeason(sheets, '', book.plannedOn));
  });

  test('words where numbers belong reach the check, which says so', () => {
    const words = sheets.map((s) =>
      s.name === 'Orders'
        ? { ...s, values: s.values.map((row) => row.map((cell) => (cell === 60_000 ? 'sixty' : cell))) }
        : s,
    );
    const reading = readSeason(words, '', book.plannedOn);
    const checked = readOrderBook(reading.kind === 'read' ? reading.input : {});
    expect('faults' in checked && checked.faults.map(({ message }) => message)).toEqual([
      'Fish ordered: expected a whole number from 1 to 5,000,000 fish, got "sixty".',
    ]);
  });

  test('seasons of a workbook by what stands behind their names', () => {
    expect(seasonsIn(['Sheet1', ...seasonSheetNames(''), ...seasonSheetNames(' 2'), 'Setup 3'])).toEqual([
      '',
      ' 2',
    ]);
    expect(seasonsIn(['Orders', 'Runs'])).toEqual([]);
  });
});
