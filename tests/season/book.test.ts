import { parseArea, splitReference, addressOf } from '../../shared/sheet/formula/address';
import type { OrderBook, SeasonBook } from '../../shared/season';
import { orderBookWorkbook, planSeasonBook } from '../../shared/season';
import type { Columns } from '../../shared/books/season/context';
import { FIRST, TITLES, seasonName } from '../../shared/books/season/context';
import {
  EGG_COUNTS,
  FEED_DAYS,
  FEED_RUNS,
  FISH,
  FRY_COUNTS,
  ORDERS,
  PAIRS,
  RUNS,
  STAYS,
  WATER,
} from '../../shared/books/season/columns';
import { calculate, customDepths, lintWorkbook } from '../../shared/catalogue/calculation';
import { DEEPEST } from '../../shared/sheet/workbook/lint';
import type { CellModel, WorkbookModel } from '../../shared/sheet/workbook/model';
import { number } from '../support/call';
import { BOOK, bookOf } from './support';

const DRAWN = { draws: 300 };
interface Made {
  readonly book: OrderBook;
  readonly plan: SeasonBook;
  readonly model: WorkbookModel;
}
const made = (changes: object = {}): Made => {
  const book = bookOf(changes);
  const plan = planSeasonBook(book, DRAWN);
  return { book, plan, model: orderBookWorkbook(book, plan) };
};
type Place = readonly [sheet: string, address: string];
const cellAt = (model: WorkbookModel, [sheet, address]: Place): CellModel =>
  model.sheets.find(({ name }) => name === sheet)?.cells[address] ?? {};
const placeNamed = (model: WorkbookModel, key: string): Place => {
  const { sheet = '', area: text } = splitReference(
    model.names.find(({ name }) => name === seasonName(key))?.refersTo ?? '',
  );
  const area = parseArea(text);
  if (!area) throw new Error(`no cell is named for ${key}`);
  return [sheet, addressOf(area.top, area.left)];
};
const named = (model: WorkbookModel, key: string): number =>
  Number(cellAt(model, placeNamed(model, key)).value);
const place = <K extends string>(
  columns: Columns<K>,
  title: keyof typeof TITLES,
  key: K,
  row: number,
): Place => [TITLES[title], `${columns.letters[key]}${FIRST + row}`];
const num = (model: WorkbookModel, at: Place): number => Number(cellAt(model, at).value);

/** The workbook after somebody typed. */
const typed = (
  model: WorkbookModel,
  ...entries: readonly (readonly [Place, number | string])[]
): WorkbookModel =>
  calculate({
    ...model,
    sheets: model.sheets.map((s) => ({
      ...s,
      cells: {
        ...s.cells,
        ...Object.fromEntries(
          entries
            .filter(([[sheet]]) => sheet === s.name)
            .map(([[, address], value]) => [address, { ...s.cells[address], value }]),
        ),
      },
    })),
  }).model;

describe.each([
  ['two orders', {}],
  ['one that cannot be met', { females: BOOK.females.slice(0, 2) }],
  ['no run at all', { females: [] }],
  ['no male at all', { males: [] }],
  [
    'a run under way',
    { underway: [{ order: 'Lake farms', vats: ['Vat 1'], until: '2027-03-01', fish: 7000 }] },
  ],
  [
    'fry without prices',
    { orders: [{ name: 'A', product: 'fry', number: 20_000, due: '2027-04-01' }], prices: {} },
  ],
  [
    'sour water, males that live on, a spare',
    {
      water: { ph: 5.6, alkalinity: 0.3 },
      malesSurvive: true,
      spare: 0.2,
      preparation: 'ready-made solution',
    },
  ],
  [
    'own figures and spreads',
    { assumptions: { hatch: 0.4, latencyOffset: 1.5 }, spreads: { hatch: { runs: 0.1, season: 0.05 } } },
  ],
  [
    'egg yields by month',
    {
      eggShares: [0.06, 0.07, 0.08, 0.1, 0.12, null, null, null, null, null, null, null],
      females: BOOK.females.map((f) => ({ ...f, kilograms: 2 * f.kilograms })),
    },
  ],
  ['an order of an impossible size', { orders: [BOOK.orders[0], { ...BOOK.orders[1], grams: 0.05 }] }],
])('%s', (_title, changes) => {
  const { plan, model } = made(changes);

  test('has no faults, no wrong cell and no deeper call than two', () => {
    expect(lintWorkbook(model)).toEqual([]);
    expect(calculate(model).faults).toEqual([]);
    expect(Math.max(0, ...customDepths(model).values())).toBeLessThanOrEqual(DEEPEST);
    const errors = model.sheets.flatMap((s) =>
      Object.entries(s.cells).flatMap(([address, c]) =>
        typeof c.value === 'object' ? [[s.name, address, c.formula, c.value.error]] : [],
      ),
    );
    expect(errors).toEqual([]);
  });

  test('formulas give what the plan says: orders, clock, numbers, vats, goods, money', () => {
    plan.orders.forEach(({ expected }, i) => {
      expect(num(model, place(ORDERS, 'orders', 'planned', i))).toBeCloseTo(expected, 3);
    });
    plan.runs.forEach((run, i) => {
      const got = (key: keyof typeof RUNS.letters): number => num(model, place(RUNS, 'runs', key, i));
      for (const [key, wanted] of [
        ['water', run.temperature],
        ['inject', run.injectAt],
        ['late', run.lateAt],
        ['hatch', run.hatchAt],
        ['feed', run.firstFeedAt],
        ['ready', run.readyAt],
        ['due', run.due],
      ] as const)
        expect([i, key, got(key)]).toEqual([i, key, expect.closeTo(wanted, 6)]);
      for (const [key, wanted] of [
        ['eggs', run.eggs],
        ['larvae', run.larvae],
        ['feeding', run.feeding],
        ['fry', run.weaned],
        ['fish', run.fish],
        ['hormone', run.hormone],
      ] as const)
        expect([i, key, num(model, place(FISH, 'fish', key, i)) / wanted]).toEqual([
          i,
          key,
          expect.closeTo(1, 9),
        ]);
    });
    plan.occupancy.forEach((stay, i) => {
      for (const [key, wanted] of [
        ['from', stay.from],
        ['to', stay.to],
        ['clean', stay.cleanAt],
        ['fish', stay.fish],
        ['perLitre', stay.perLitre],
      ] as const)
        expect([i, key, num(model, place(STAYS, 'stays', key, i))]).toEqual([
          i,
          key,
          expect.closeTo(wanted, 3),
        ]);
      expect(cellAt(model, place(STAYS, 'stays', 'verdict', i)).value).toBe('fits');
    });
    const bought = (item: string): number =>
      plan.purchases.reduce((sum, p) => sum + (p.item === item ? p.amount : 0), 0);
    for (const [key, item] of [
      ['bought_hormone', 'hormone'],
      ['bought_cysts', 'cysts'],
      ['bought_feed', 'dry feed'],
    ] as const)
      expect([key, named(model, key)]).toEqual([key, expect.closeTo(bought(item), 6)]);
    expect(named(model, 'profit')).toBeCloseTo(plan.money.profit, 6);
    expect(named(model, 'least')).toBeCloseTo(plan.money.leastBalance, 6);
    if (plan.money.breakEvenNumber > 0 && Number.isFinite(plan.money.breakEvenNumber))
      expect(named(model, 'breakEven')).toBeCloseTo(plan.money.breakEvenNumber, 4);
  });
});

describe('feed', () => {
  const { plan, model } = made();

  test('each run and day has the fish, weight and food of the plan, and the days add up', () => {
    const rows = Object.entries(
      model.sheets.find(({ name }) => name === TITLES.feedRuns)?.cells ?? {},
    ).filter(([a]) => a.startsWith(FEED_RUNS.letters.run)).length;
    const byRunAndDay = new Map(
      Array.from(
        { length: rows },
        (_, i) =>
          [
            `${num(model, place(FEED_RUNS, 'feedRuns', 'run', i))} ${num(model, place(FEED_RUNS, 'feedRuns', 'date', i))}`,
            i,
          ] as const,
      ),
    );
    for (const row of plan.feeding) {
      const i = byRunAndDay.get(`${row.run} ${row.date}`) ?? NaN;
      for (const key of ['fish', 'grams', 'cysts', 'dry'] as const)
        expect([row.run, row.date, key, num(model, place(FEED_RUNS, 'feedRuns', key, i))]).toEqual([
          row.run,
          row.date,
          key,
          expect.closeTo(row[key], 4),
        ]);
    }
    const dry = new Map<number, number>();
    for (const row of plan.feeding) dry.set(row.date, (dry.get(row.date) ?? 0) + row.dry);
    let days = 0;
    for (let i = 0; typeof cellAt(model, place(FEED_DAYS, 'feed', 'date', i)).value === 'number'; i++) {
      expect(num(model, place(FEED_DAYS, 'feed', 'dry', i))).toBeCloseTo(
        dry.get(num(model, place(FEED_DAYS, 'feed', 'date', i))) ?? 0,
        4,
      );
      days++;
    }
    expect(days).toBeGreaterThan(60);
  });
});

describe('the workbook is live', () => {
  const { plan, model, book } = made({ water: { ph: 5.8, alkalinity: 0.4 } });
  const run = (key: keyof typeof RUNS.letters, i = 0): Place => place(RUNS, 'runs', key, i);
  const egg = (key: keyof typeof EGG_COUNTS.letters): Place => place(EGG_COUNTS, 'eggCounts', key, 0);
  const fry = (key: keyof typeof FRY_COUNTS.letters): Place => place(FRY_COUNTS, 'fryCounts', key, 0);
  const fish = (key: keyof typeof FISH.letters): Place => place(FISH, 'fish', key, 0);

  test('a cooler month moves injection, hatch, calendar, vats and feed as the sheet functions say', () => {
    const [sheet, first] = placeNamed(model, 'water');
    const months = parseArea(first)?.top ?? 0;
    const colder = typed(
      model,
      ...[0, 1, 2].map((m) => [[sheet, addressOf(months + m, parseArea(first)?.left ?? 0)], 24] as const),
    );
    const strip = num(model, run('strip'));
    const water = num(colder, run('water'));
    expect(water).toBeLessThan(num(model, run('water')) - 1);
    expect(num(colder, run('inject'))).toBeCloseTo(
      number('INJECTION.TIME', strip, water, 'ready-made solution'),
      9,
    );
    expect(num(colder, run('hatch'))).toBeCloseTo(number('HATCH.TIME', strip, water), 9);
    expect(num(colder, run('feed'))).toBeCloseTo(
      number('FEEDING.START', number('HATCH.TIME', strip, water), water),
      9,
    );
    expect(num(colder, run('ready'))).toBeGreaterThan(num(model, run('ready')));
    const inject =
      Object.entries(model.sheets.find(({ name }) => name === TITLES.days)?.cells ?? {})
        .find(([, c]) => String(c.value).startsWith('Inject'))?.[0]
        .replace('F', 'C') ?? '';
    expect(num(colder, [TITLES.days, inject])).toBe(num(colder, run('inject')));
    expect(num(colder, place(FEED_RUNS, 'feedRuns', 'date', 0))).toBeGreaterThan(
      num(model, place(FEED_RUNS, 'feedRuns', 'date', 0)),
    );
  });

  test('water measured at one run moves that run alone', () => {
    const measured = typed(model, [run('measured'), 24.5]);
    expect(num(measured, run('hatch'))).toBeGreaterThan(num(model, run('hatch')));
    expect(num(measured, run('hatch', 1))).toBe(num(model, run('hatch', 1)));
  });

  test('a poorer hatch: fewer larvae, fish, feed and money, an order that falls short', () => {
    const poorer = typed(model, [placeNamed(model, 'hatch'), 0.3]);
    const ratio = 0.3 / 0.59;
    for (const key of ['larvae', 'feeding', 'fry', 'fish'] as const)
      expect(num(poorer, fish(key)) / num(model, fish(key))).toBeCloseTo(ratio, 9);
    expect(named(poorer, 'bought_cysts') / named(model, 'bought_cysts')).toBeCloseTo(ratio, 6);
    expect(cellAt(poorer, place(ORDERS, 'orders', 'verdict', 0)).value).toBe('SHORT');
    expect(named(poorer, 'profit')).toBeLessThan(named(model, 'profit'));
  });

  test('a count of the fish makes the order short and the sales smaller', () => {
    const fewer = typed(model, [fry('handed'), 30_000]);
    expect(num(fewer, place(ORDERS, 'orders', 'planned', 0))).toBe(30_000);
    expect(cellAt(fewer, place(ORDERS, 'orders', 'verdict', 0)).value).toBe('SHORT');
    expect(named(fewer, 'sales')).toBeCloseTo(named(model, 'sales') - 30_000 * 0.12, 6);
  });

  test('eggs from samples carry their range, and the run goes on from them', () => {
    const pairs = plan.runs[0]?.females.length ?? 0;
    const weighed = typed(
      model,
      ...Array.from({ length: pairs }, (_, i) => [place(PAIRS, 'pairs', 'grams', i), 60] as const),
      ...(
        [
          ['g1', 1],
          ['g2', 1.1],
          ['g3', 0.9],
          ['n1', 640],
          ['n2', 700],
          ['n3', 590],
        ] as const
      ).map(([key, value]) => [egg(key), value] as const),
    );
    const eggs = number('EGGS.BYWEIGHT', 60 * pairs, [[1], [1.1], [0.9]], [[640], [700], [590]]);
    expect(num(weighed, egg('eggs'))).toBeCloseTo(eggs, 6);
    expect(num(weighed, egg('eggsLow'))).toBeLessThan(eggs);
    expect(num(weighed, egg('eggsHigh'))).toBeGreaterThan(eggs);
    expect(num(weighed, fish('eggs'))).toBeCloseTo(eggs, 6);
    expect(num(weighed, fish('larvae'))).toBeCloseTo(eggs * 0.59, 6);
  });

  test('larvae from samples of the water, and alive eggs of those looked at', () => {
    const sampled = typed(
      model,
      ...(
        [
          ['litres', 900],
          ['ml1', 250],
          ['ml2', 250],
          ['ml3', 250],
          ['l1', 20],
          ['l2', 24],
          ['l3', 22],
        ] as const
      ).map(([key, value]) => [fry(key), value] as const),
      [egg('looked'), 100],
      [egg('alive'), 84],
    );
    expect(num(sampled, fish('feeding'))).toBeCloseTo((66 / 0.75) * 900, 6);
    expect(num(sampled, egg('fertilised'))).toBe(0.84);
    expect(num(sampled, egg('fertilisedLow'))).toBeLessThan(0.84);
  });

  test('a heavier female: her dose and the eggs that may be expected', () => {
    const heavier = typed(model, [place(PAIRS, 'pairs', 'kilograms', 0), 3]);
    expect(num(heavier, place(PAIRS, 'pairs', 'dose', 0))).toBeCloseTo(1.5, 9);
    expect(num(heavier, fish('hormone'))).toBeGreaterThan(num(model, fish('hormone')));
  });

  test('doses of the water are those of the sheet function, and follow a new reading', () => {
    const water = (key: keyof typeof WATER.letters): Place => place(WATER, 'water', key, 0);
    const celsius = num(model, run('water'));
    // The sample water needs air only; a softer one needs product too.
    expect(num(model, water('bucket'))).toBe(0);
    const soft = typed(model, [water('alkalinity'), 0.01]);
    expect(num(soft, water('bucket'))).toBeCloseTo(
      number('BUFFER.AIRED', 10, 5.8, 7, 0.01, celsius, 'soda ash'),
      9,
    );
    expect(num(soft, water('whole')) / num(soft, water('bucket'))).toBeCloseTo(
      num(soft, water('litres')) / 10,
      9,
    );
    const measured = typed(model, [water('alkalinity'), 0.015]);
    expect(num(measured, water('bucket'))).toBeLessThan(num(soft, water('bucket')));
  });

  test('prices, a due date put off and a new number move the money', () => {
    expect(named(typed(model, [placeNamed(model, 'perMonth'), 0]), 'profit')).toBeCloseTo(
      named(model, 'profit') +
        plan.money.costs.reduce((sum, c) => sum + (c.what.startsWith('rent') ? c.amount : 0), 0),
      6,
    );
    expect(
      num(typed(model, [place(ORDERS, 'orders', 'number', 0), 90_000]), place(ORDERS, 'orders', 'short', 0)),
    ).toBe(30_000);
    const later = typed(model, [place(ORDERS, 'orders', 'due', 1), (book.orders[1]?.due ?? 0) + 14]);
    expect(
      num(
        later,
        place(
          STAYS,
          'stays',
          'to',
          plan.occupancy.findIndex((s) => s.run === 2 && s.stage === 'nursing'),
        ),
      ),
    ).toBeCloseTo((book.orders[1]?.due ?? 0) + 14 + 8 / 24, 6);
  });

  test('runs that are moved onto each other clash in words', () => {
    const onto = typed(model, [run('strip', 1), num(model, run('strip', 0)) + 3]);
    const verdicts = plan.occupancy.map((_, i) =>
      String(cellAt(onto, place(STAYS, 'stays', 'verdict', i)).value),
    );
    expect(verdicts.some((v) => v.startsWith('CLASH with run'))).toBe(true);
  });

  test('what the profit hangs on: each line is the profit with that one figure moved', () => {
    const cells = model.sheets.find(({ name }) => name === TITLES.money)?.cells ?? {};
    const line =
      Object.entries(cells)
        .find(([, c]) => c.value === 'Eggs that hatch')?.[0]
        .slice(1) ?? '';
    const low = Number(cells[`C${line}`]?.value);
    // Costs stand as planned: only what is sold moves.
    const sold = book.orders.reduce(
      (sum, order) => sum + Math.min(order.number, (order.number * 0.284) / 0.59) * (order.price ?? 0),
      0,
    );
    expect(low).toBeCloseTo(sold - named(model, 'cost'), 4);
  });

  test('a bar of the vat chart ends where the stay ends', () => {
    expect(model.sheets.find(({ name }) => name === TITLES.vats)?.charts?.[0]?.kind).toBe('occupancy');
    const vat = plan.occupancy[0]?.vat;
    const stays = plan.occupancy.filter((s) => s.vat === vat);
    const row = FIRST + BOOK.vats.findIndex(({ name }) => name === vat);
    let end = 0;
    stays.forEach((stay, k) => {
      end +=
        num(model, [TITLES.bars, addressOf(row - 1, 2 + 2 * k)]) +
        num(model, [TITLES.bars, addressOf(row - 1, 3 + 2 * k)]);
      expect(end).toBeCloseTo(stay.to, 6);
    });
  });
});

test('inputs are open, formulas are locked, and every number that may be typed has its rule', () => {
  for (const sheet of made().model.sheets) {
    expect(sheet.isProtected).toBe(true);
    for (const [address, cell] of Object.entries(sheet.cells))
      if (cell.formula !== undefined)
        expect([sheet.name, address, cell.style]).not.toEqual([sheet.name, address, 'input']);
    const ruled = (sheet.validations ?? []).map(({ range }) => parseArea(range));
    const isRuled = (address: string): boolean => {
      const at = parseArea(address);
      return (
        at !== undefined &&
        ruled.some(
          (area) =>
            area &&
            area.top <= at.top &&
            area.bottom >= at.top &&
            area.left <= at.left &&
            area.right >= at.left,
        )
      );
    };
    const inputs = Object.entries(sheet.cells)
      .filter(([, cell]) => cell.style === 'input' && typeof cell.value === 'number')
      .map(([address]) => address);
    expect([sheet.name, inputs.filter((address) => !isRuled(address))]).toEqual([sheet.name, []]);
  }
});
