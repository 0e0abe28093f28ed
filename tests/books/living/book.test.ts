import { addressOf, parseAddress } from '../../../shared/sheet/formula/address';
import { livingBook, LivingPages, SHEETS } from '../../../shared/books/living';
import type { Table } from '../../../shared/books/living/table';
import { calculate, customDepths, lintWorkbook } from '../../../shared/catalogue/calculation';
import { rngOf } from '../../../shared/maths/rng';
import { DAY_LINES, EVENTS_IN_ORDER, RUN_LINES, SHARE_LINES, TASKS } from '../../../shared/run/lines';
import { planBatches } from '../../../shared/season/batches';
import { DEEPEST } from '../../../shared/sheet/workbook/lint';
import type { CellModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { BOOK, bookOf } from '../../season/support/support';

import type { OrderBook } from '../../../shared/season/book/orderBook';
import type { SeasonPlan } from '../../../shared/season/types';

interface Made {
  readonly book: OrderBook;
  readonly plan: SeasonPlan;
  readonly pages: LivingPages;
  readonly model: WorkbookModel;
}
const QUICK = { draws: 200, explains: false, effort: { looks: 30_000, mostTries: 30, seed: 3 } } as const;
const made = (changes: object = {}): Made => {
  const book = bookOf(changes);
  const plan = planBatches(book, QUICK);
  return { book, plan, pages: new LivingPages(book, plan), model: livingBook(book, plan) };
};
const cells = (model: WorkbookModel, sheet: string): Readonly<Record<string, CellModel>> =>
  model.sheets.find(({ name }) => name === sheet)?.cells ?? {};
const at = <K extends string>(model: WorkbookModel, table: Table<K>, key: K, i: number) =>
  cells(model, table.title)[`${table.letters[key]}${table.first + i}`]?.value;

const CASES = [
  ['two orders', {}],
  ['one that cannot be met', { females: BOOK.females.slice(0, 2) }],
  ['no batch at all', { females: [] }],
  [
    'fry without prices',
    { orders: [{ name: 'A', product: 'fry', number: 20_000, due: '2027-04-01' }], prices: {} },
  ],
  [
    'sour water, males that live on, a spare',
    { water: { ph: 5.6, alkalinity: 0.03 }, malesSurvive: true, spare: 0.2 },
  ],
  ['own figures', { assumptions: { hatch: 0.4, latencyOffset: 1.5, preparingDays: 1 } }],
  ['an order of an impossible size', { orders: [BOOK.orders[0], { ...BOOK.orders[1], grams: 0.05 }] }],
] as const;

describe.each(CASES)('%s', (_title, changes) => {
  const { plan, pages, model } = made(changes);

  test('has no fault, no wrong cell and no deeper call than two', () => {
    expect(lintWorkbook(model)).toEqual([]);
    expect(calculate(model, plan.plannedOn).faults).toEqual([]);
    expect(Math.max(0, ...customDepths(model).values())).toBeLessThanOrEqual(DEEPEST);
    const errors = model.sheets.flatMap((s) =>
      Object.entries(s.cells).flatMap(([address, c]) =>
        typeof c.value === 'object' ? [[s.name, address, c.formula, c.value.error]] : [],
      ),
    );
    expect(errors).toEqual([]);
  });

  test('at most nine sheets are shown, and every check holds', () => {
    expect(model.sheets.filter(({ isHidden }) => !isHidden).length).toBeLessThanOrEqual(9);
    const said = Object.entries(cells(model, SHEETS.checks)).flatMap(([address, { value }]) =>
      address.startsWith('F') && typeof value === 'string' && value.startsWith('×') ? [address] : [],
    );
    // Orders that cannot be had ask for planning again; nothing else may break.
    const replan = Object.entries(cells(model, SHEETS.checks)).find(
      ([, { value }]) => value === 'Orders that ask for planning again',
    )?.[0];
    expect(said.filter((address) => address.slice(1) !== replan?.slice(1))).toEqual([]);
  });

  test('sheet and engine agree on every line of every batch, day and share', () => {
    const { tables: t, rows } = pages;
    const near = (sheet: unknown, engine: unknown, where: unknown): void => {
      if (typeof engine === 'number' && !Number.isNaN(engine))
        expect([where, sheet]).toEqual([where, expect.closeTo(engine, 6)]);
      else expect([where, sheet ?? '']).toEqual([where, engine ?? '']);
    };
    rows.batches.forEach((batch, i) => {
      for (const key of Object.keys(RUN_LINES) as (keyof typeof RUN_LINES)[])
        near(at(model, t.workings, key, i), pages.reader(batch).get(key), [batch.name, key]);
    });
    rows.shares.forEach((share, i) => {
      for (const key of Object.keys(SHARE_LINES) as (keyof typeof SHARE_LINES)[])
        near(at(model, t.shares, key, i), pages.share(share)?.get(key), [share.batch, share.order, key]);
    });
    rows.days.forEach(({ batch: name, day }, i) => {
      const batch = plan.batches.find((b) => b.name === name);
      const left = at(model, t.days, 'left', i);
      if (!batch) return;
      const lines = pages.day(batch, day, typeof left === 'number' ? left : 0);
      for (const key of Object.keys(DAY_LINES) as (keyof typeof DAY_LINES)[])
        near(at(model, t.days, key, i), lines.get(key), [name, day, key]);
    });
  });

  test('what is planned stands on the sheets: clock, fish, vats', () => {
    plan.batches.forEach((batch, i) => {
      const got = (key: 'inject' | 'late' | 'feed' | 'strip' | 'feeding') =>
        at(model, pages.tables.batches, key, i);
      expect(got('inject')).toBeCloseTo(batch.injectAt, 6);
      expect(got('late')).toBeCloseTo(batch.lateAt, 6);
      expect(got('feed')).toBeCloseTo(batch.firstFeedAt, 6);
      expect(got('strip')).toBeCloseTo(batch.stripAt, 9);
      expect(Number(got('feeding')) / batch.feeding).toBeCloseTo(1, 9);
    });
    plan.stays.forEach((stay, i) => {
      const got = (key: 'from' | 'to' | 'clean' | 'fish') => at(model, pages.tables.stays, key, i);
      expect(got('from')).toBeCloseTo(stay.from, 3);
      expect(got('to')).toBeCloseTo(stay.to, 3);
      expect(got('clean')).toBeCloseTo(stay.cleanAt, 3);
      expect(Number(got('fish')) / stay.fish).toBeCloseTo(1, 6);
    });
  });
});

/** A reference as an offset from its cell: alike formulas give the same text. */
const relative = (formula: string, address: string): string => {
  const home = parseAddress(address) ?? { row: 0, column: 0 };
  return formula.replace(
    /(?<![A-Za-z_])(\$?)([A-Z]{1,3})(\$?)(\d+)(?![\d(])/g,
    (_, c, letters, r, digits) => {
      const place = parseAddress(`${letters}${digits}`) ?? { row: 0, column: 0 };
      return `R${r ? place.row : `[${place.row - home.row}]`}C${c ? place.column : `[${place.column - home.column}]`}`;
    },
  );
};

test('the formulas of a table are alike down every column', () => {
  const { model, pages } = made();
  const different: unknown[] = [];
  for (const table of Object.values(pages.tables) as Table<string>[])
    for (const key of table.keys) {
      const formulas = new Set(
        Array.from({ length: table.lines }, (_, i) => {
          const address = `${table.letters[key] ?? ''}${table.first + i}`;
          const formula = cells(model, table.title)[address]?.formula;
          return formula === undefined ? undefined : relative(formula, address);
        }).filter((f) => f !== undefined),
      );
      if (formulas.size > 1) different.push([table.title, key, ...[...formulas].slice(0, 2)]);
    }
  expect(different).toEqual([]);
});

test('headings of a table are all different', () => {
  const { pages } = made();
  for (const table of Object.values(pages.tables) as Table<string>[]) {
    const titles = table.keys.map((key) => table.columns[key]?.title ?? '');
    expect([table.title, titles.filter((title, i) => titles.indexOf(title) !== i)]).toEqual([
      table.title,
      [],
    ]);
  }
});

describe('the order of events holds, whatever the water and the hours', () => {
  test.each(Array.from({ length: 40 }, (_, i) => i + 1))('book %i', (seed) => {
    const chance = rngOf(seed);
    const between = (low: number, high: number): number => low + (high - low) * chance.even();
    const { pages, plan } = made({
      orders: [
        {
          name: 'A',
          product: chance.even() < 0.5 ? 'fry' : 'fingerlings',
          number: 5000,
          due: 46_450 + Math.round(between(0, 300)),
        },
      ],
      temperatures: BOOK.temperatures.map(() => between(23, 30)),
      staff: { stripFrom: Math.floor(between(0, 20)), stripTo: 23.5 },
      assumptions: { preparingDays: Math.ceil(between(0, 7)), latencyOffset: between(-2, 4) },
      leadDays: { hormone: 0, cysts: 0, feed: 0 },
    });
    for (const batch of plan.batches) expect([batch.name, ...disorder(pages)]).toEqual([batch.name]);
  });
});

/** Pairs of tasks of a book with one batch that stand the wrong way round. */
function disorder(pages: LivingPages): string[] {
  const when = new Map(pages.rows.tasks.filter((t) => t.later === 0).map((t) => [t.task, t.when]));
  const time = (task: keyof typeof TASKS): number => when.get(task) ?? NaN;
  return [...EVENTS_IN_ORDER, ['weaned', 'handOver'] as const, ['fast', 'handOver'] as const].flatMap(
    (all) => {
      // Glands are made up only where the hormone is not injected as bought.
      const chain = all.filter((task) => task !== 'glands' || when.has(task));
      return chain.flatMap((after, i) => {
        const before = chain[i - 1];
        return before === undefined || time(before) <= time(after) + 1e-6 ? [] : [`${before} after ${after}`];
      });
    },
  );
}

test('work falls into working hours, biology to the half hour', () => {
  const { pages } = made();
  const biology = new Set([
    'inject',
    'look',
    'strip',
    'late',
    'hatch',
    'cysts',
    'weigh',
    'net',
    'milt',
    'white',
    'power',
    'lift',
  ]);
  for (const { task, when } of pages.rows.tasks) {
    const minutes = Math.round((when % 1) * 1440);
    expect([task, minutes % 30]).toEqual([task, 0]);
    if (!biology.has(task)) expect([task, minutes >= 420 && minutes <= 1020]).toEqual([task, true]);
  }
});

test('the order is handed over, not more', () => {
  const { pages, model } = made({ spare: 0.5 });
  const { tables: t, rows } = pages;
  const handed = rows.shares.reduce((sum, _, i) => sum + Number(at(model, t.shares, 'handOver', i)), 0);
  const wanted = BOOK.orders.reduce((sum, { number }) => sum + number, 0);
  expect(handed).toBeLessThanOrEqual(wanted + 1e-6);
  rows.tasks.forEach(({ task }, i) => {
    const line = TASKS[task];
    if (line.per === 'order' && task === 'handOver')
      expect(at(model, t.tasks, 'amount', i)).toBeLessThanOrEqual(60_000);
  });
  expect(addressOf(0, 0)).toBe('A1');
});
