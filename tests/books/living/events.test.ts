import { LivingPages, asOf, changesOf, livingBook } from '../../../shared/books/living';
import type { BookChange, BookRead } from '../../../shared/books/living';
import type { Table } from '../../../shared/books/living/table';
import { calculate } from '../../../shared/catalogue/calculation';
import { assumed } from '../../../shared/families/assumptions';
import { planBatches } from '../../../shared/season/batches';
import type { OrderBook } from '../../../shared/season/book/orderBook';
import type { OrderPlan, SeasonPlan } from '../../../shared/season/types';
import type { CellModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { bookOf, checked } from '../../season/support/support';
import { readBack } from './support';

/**
 * What happens to a hatchery between two plannings, each through the book as a person meets it: it is typed into
 * the cells, the book is read, planned again, and written again. The ledger of fish is kept here, on paper.
 */
const QUICK = {
  draws: 300,
  explains: false,
  effort: { looks: 15_000, mostTries: 15, seed: 3, sequences: 1 },
} as const;
const EARLY = { name: 'Fry man', product: 'fry', number: 4000, due: '2027-02-20', price: 0.05 };
const base = bookOf({
  orders: [
    EARLY,
    { name: 'Lake farms', product: 'fingerlings', number: 8000, due: '2027-03-10', price: 0.12 },
    { name: 'Pond club', product: 'fingerlings', number: 6000, due: '2027-05-10', price: 0.12 },
  ],
});
const first = planBatches(base, QUICK);
/** Fry of one batch are in their vats, those of the other are nursed already; one batch is only planned. */
const TODAY = 46_436;
const FED = first.batches.find(({ name }) => name === 'B1')?.feedFrom ?? NaN;

type Cells = Readonly<Record<string, NonNullable<CellModel['value']>>>;
type Typing = (pages: LivingPages) => Readonly<Record<string, Cells>>;
const typeInto = (model: WorkbookModel, sheets: Readonly<Record<string, Cells>>): WorkbookModel => ({
  ...model,
  sheets: model.sheets.map((sheet) => {
    const cells = { ...sheet.cells };
    for (const [address, value] of Object.entries(sheets[sheet.name] ?? {}))
      cells[address] = { ...cells[address], value };
    return { ...sheet, cells };
  }),
});
/** Cells of one line of a table, by its headings' keys. */
const line = <K extends string>(
  table: Table<K>,
  i: number,
  values: Readonly<Partial<Record<K, string | number>>>,
): Cells =>
  Object.fromEntries(
    Object.entries(values).map(([key, value]) => [
      `${table.letters[key as K]}${table.first + i}`,
      value as string | number,
    ]),
  );
const onSheet = <K extends string>(table: Table<K>, ...lines: readonly Cells[]) => ({
  [table.title]: Object.assign({}, ...lines) as Cells,
});

interface Replanned {
  readonly book: OrderBook;
  readonly before: BookRead;
  readonly after: SeasonPlan;
  readonly changes: readonly BookChange[];
  readonly model: WorkbookModel;
}
function replan(model: WorkbookModel, today: number): Replanned {
  const before = readBack(model);
  const book = checked(asOf(before, today));
  const after = planBatches(book, QUICK);
  return {
    book,
    before,
    after,
    changes: changesOf(before.plan, after),
    model: livingBook(book, after, before.typed),
  };
}

/** What was written down until today: a count of each batch, deaths, a sale, a tick. Later lines are free. */
const LOG = [
  { at: FED + 0.4, batch: 'B1', what: 'counted', number: 30_000, stage: 'feeding', by: 'Ama' },
  { at: TODAY - 8.4, batch: 'B1', what: 'counted', number: 21_000, stage: 'fish' },
  { at: TODAY - 5.4, batch: 'B1', what: 'died', number: 150 },
  { at: TODAY - 3.6, batch: 'B1', what: 'sold', number: 500, order: 'Fry man', paid: 25, note: 'early' },
  { at: TODAY - 9.5, batch: 'B2', what: 'counted', number: 15_000, stage: 'feeding' },
  { at: TODAY - 2.5, batch: 'B2', what: 'died', number: 90 },
] as const;
const lived: Typing = ({ tables }) => ({
  ...onSheet(tables.log, ...LOG.map((entry, i) => line(tables.log, i, entry))),
  ...onSheet(tables.calendar, line(tables.calendar, 0, { done: 'done', by: 'Kofi' })),
  ...onSheet(tables.booked, line(tables.booked, 0, { date: TODAY - 20, amount: -55, what: 'cysts' })),
});
/** The book as it stands this morning: planned again today, nothing out of the ordinary. */
const calm = replan(typeInto(livingBook(base, first), lived(new LivingPages(base, first))), TODAY);
const calmPages = new LivingPages(calm.book, calm.after, calm.before.typed);
const happens = (typing: Typing, today = TODAY): Replanned =>
  replan(typeInto(calm.model, typing(calmPages)), today);
type Entry = Parameters<typeof line<keyof typeof calmPages.tables.log.letters>>[2];
const logged = (...entries: readonly Entry[]) =>
  onSheet(
    calmPages.tables.log,
    ...entries.map((entry, i) => line(calmPages.tables.log, LOG.length + i, entry)),
  );

const orderOf = ({ orders }: { readonly orders: readonly OrderPlan[] }, name: string): OrderPlan => {
  const found = orders.find(({ order }) => order.name === name);
  if (!found) throw new Error(`no order ${name}`);
  return found;
};
const lineOf = (list: readonly { readonly [key: string]: unknown }[], key: string, name: string): number =>
  list.findIndex((item) => item[key] === name);

/** Share of fish alive from one day to a later one, at an even rate a stage, as the figures say. */
const livesOn = ({ assumptions }: OrderBook, fed: number, from: number, to: number): number => {
  const a = assumed(assumptions);
  const alive = (at: number): number => {
    const days = Math.max(0, at - fed);
    const fry = Math.min(days, a.rearingDays);
    // The first day of food kills like 4.6 later ones, the next three like 2.6 each.
    const dying = (d: number): number =>
      d <= 1 ? 4.6 * d : d <= 4 ? 4.6 + 2.6 * (d - 1) : 4.6 + 7.8 + (d - 4);
    return (
      a.frySurvival ** (dying(fry) / dying(a.rearingDays)) *
      a.nurserySurvival ** ((days - fry) / a.nurseryDays)
    );
  };
  return alive(to) / alive(from);
};
/** The ledger: fish of the last count, less those that left, each a fish of its hour. */
function thereBy({ book }: Replanned, name: string, today: number): number {
  const batch = book.batches.find((b) => b.name === name);
  const count = batch?.counts.filter(({ at }) => at < today + 1).at(-1);
  if (!batch || !count) throw new Error(`${name} was never counted`);
  const { feedFrom } = batch.clock;
  return batch.events
    .filter(({ at }) => at > count.at)
    .reduce(
      (there, { at, number }) => there - number * livesOn(book, feedFrom, at, today),
      count.number * livesOn(book, feedFrom, count.at, today),
    );
}

/** What a calculated book shows: cells of its tables by heading, and fish, feed and cysts by batch from a day on. */
class Shown {
  private readonly cells: ReadonlyMap<string, Readonly<Record<string, CellModel>>>;
  constructor(
    model: WorkbookModel,
    private readonly pages: LivingPages,
  ) {
    this.cells = new Map(calculate(model).model.sheets.map(({ name, cells }) => [name, cells]));
  }
  cell<K extends string>(table: Table<K>, key: K, i: number): number {
    return Number(this.cells.get(table.title)?.[`${table.letters[key]}${table.first + i}`]?.value);
  }
  eaten(batch: string, key: 'fishNow' | 'dry' | 'cysts', from: number): number {
    const { days } = this.pages.tables;
    return this.pages.rows.days.reduce(
      (sum, day, i) =>
        day.batch === batch && this.cell(days, 'date', i) >= from ? sum + this.cell(days, key, i) : sum,
      0,
    );
  }
  order(name: string): number {
    const key = [...this.pages.buyers].find(([, buyer]) => buyer === name)?.[0] ?? name;
    return this.cell(
      this.pages.tables.orders,
      'expected',
      this.pages.book.orders.findIndex((order) => order.name === key),
    );
  }
  batch(name: string, key: 'promised' | 'extra'): number {
    return this.cell(
      this.pages.tables.batches,
      key,
      this.pages.rows.batches.findIndex((batch) => batch.name === name),
    );
  }
}
const shownOf = ({ model, book, after, before }: Replanned): Shown =>
  new Shown(model, new LivingPages(book, after, before.typed));

/** The book that is written goes by the fish that are there, as the plan does: what they eat, who gets them. */
function agrees(now: Replanned): void {
  const shown = shownOf(now);
  const { plannedOn } = now.book;
  for (const { name, promised, extra } of now.after.batches) {
    expect([name, shown.batch(name, 'promised')]).toEqual([name, expect.closeTo(promised, -0.5)]);
    expect([name, 'extra', shown.batch(name, 'extra')]).toEqual([name, 'extra', expect.closeTo(extra, -0.8)]);
    const rows = now.after.feeding.filter(({ batch, date }) => batch === name && date >= plannedOn);
    for (const [key, of] of [
      ['fishNow', 'fish'],
      ['dry', 'dry'],
      ['cysts', 'cysts'],
    ] as const) {
      const planned = rows.reduce((sum, row) => sum + row[of], 0);
      expect([name, key, shown.eaten(name, key, plannedOn)]).toEqual([name, key, expect.closeTo(planned, 0)]);
    }
  }
  for (const { order, delivered } of now.after.orders) {
    if (order.cancelled) continue;
    const fish = now.after.allocations
      .filter((share) => share.order === order.name)
      .reduce((sum, share) => sum + share.fish, delivered);
    expect([order.name, shown.order(order.name)]).toEqual([order.name, expect.closeTo(fish, -0.5)]);
  }
}

/** What holds after every event: nothing typed is lost, fish close, what stands stays, changes are sentences. */
function holds(now: Replanned): void {
  agrees(now);
  const again = readBack(now.model);
  const standing = new Set<unknown>(now.book.batches.map(({ name }) => name));
  const ofStanding = ({ typed }: BookRead): BookRead['typed'] => ({
    ...typed,
    pairs: typed.pairs.filter(({ batch }) => standing.has(batch)),
  });
  expect(ofStanding(again)).toEqual(ofStanding(now.before));
  expect(again.input).toEqual({ ...now.before.input, plannedOn: again.input.plannedOn });
  for (const batch of now.book.batches) {
    const was = calm.after.batches.find(({ name }) => name === batch.name);
    const is = now.after.batches.find(({ name }) => name === batch.name);
    expect([is?.pairs, is?.stripAt, is?.counts, is?.events]).toEqual([
      was?.pairs,
      was?.stripAt,
      batch.counts,
      batch.events,
    ]);
    if (batch.state !== 'growing') continue;
    const { plannedOn } = now.book;
    const staysNow = ({ stays }: Pick<SeasonPlan, 'stays'>): string[] =>
      stays
        .filter((s) => s.batch === batch.name && s.from <= plannedOn && s.to > plannedOn)
        .map(({ vat, stage }) => `${vat} ${stage}`);
    expect(staysNow(now.after)).toEqual(staysNow(calm.after));
    const there = Math.max(0, thereBy(now, batch.name, plannedOn));
    expect([batch.name, is?.alive]).toEqual([batch.name, expect.closeTo(there, 0)]);
    const leaving = now.after.allocations
      .filter((share) => share.batch === batch.name)
      .reduce((sum, { fish }) => sum + fish, 0);
    expect(leaving).toBeLessThanOrEqual(there + 1);
  }
  for (const { message } of now.changes) expect(message).toMatch(/^[A-Z].*\.$/);
  const moved = now.after.orders.filter(({ order, verdict }) =>
    now.before.plan.orders.some((was) => was.order.name === order.name && was.verdict !== verdict),
  );
  for (const { order } of moved)
    expect(now.changes.some(({ kind, about }) => kind === 'order' && about === order.name)).toBe(true);
}

test('an ordinary morning: counts, deaths, a sale and a tick come through', () => {
  holds(calm);
  expect(calm.before.typed.log).toHaveLength(LOG.length);
  expect(calm.book.batches.map(({ name, state }) => [name, state])).toEqual([
    ['B1', 'growing'],
    ['B2', 'growing'],
  ]);
  expect(orderOf(calm.after, 'Fry man').delivered).toBe(500);
});

test('a late order is planned beside the others', () => {
  const now = happens(({ tables }) =>
    onSheet(
      tables.orders,
      line(tables.orders, 3, { buyer: 'New lodge', product: 'fingerlings', number: 3000, due: 46_540 }),
    ),
  );
  holds(now);
  const order = orderOf(now.after, 'New lodge');
  expect(order.batches.length).toBeGreaterThan(0);
  expect(order.promise).toBeGreaterThan(0);
  expect(now.changes.find(({ about }) => about === 'New lodge')?.message).toContain('before: not planned');
});

test('an order sooner than anything new can be ready is told so, or served from what stands', () => {
  const now = happens(({ tables }) =>
    onSheet(
      tables.orders,
      line(tables.orders, 3, { buyer: 'In a hurry', product: 'fingerlings', number: 20_000, due: 46_446 }),
    ),
  );
  holds(now);
  const order = orderOf(now.after, 'In a hurry');
  expect(order.verdict).toBe('cannot');
  expect(order.batches).toEqual([]);
  expect(now.after.findings.some(({ message }) => message.startsWith('In a hurry: there is no day'))).toBe(
    true,
  );
  // Nobody else pays for it.
  for (const name of ['Lake farms', 'Pond club'])
    expect(orderOf(now.after, name).promise).toBeGreaterThanOrEqual(0.95 * orderOf(calm.after, name).promise);
});

test('a cancelled order frees its fish; its line stays', () => {
  const at = lineOf(calm.book.orders, 'name', 'Lake farms');
  const now = happens(({ tables }) => onSheet(tables.orders, line(tables.orders, at, { cancelled: 'yes' })));
  holds(now);
  expect(now.after.allocations.filter(({ order }) => order === 'Lake farms')).toEqual([]);
  expect(orderOf(now.after, 'Lake farms').order.cancelled).toBe(true);
  expect(now.changes.find(({ about }) => about === 'Lake farms')?.kind).toBe('order');
  const extra = (plan: SeasonPlan): number => plan.batches.find(({ name }) => name === 'B1')?.extra ?? NaN;
  expect(extra(now.after)).toBeGreaterThan(extra(calm.after));
});

test('vats out of use: nothing new goes in, what stands in one stays', () => {
  const held = calm.after.stays.find(({ batch, to }) => batch === 'B1' && to > TODAY)?.vat;
  const planned = calm.after.stays.filter(({ from }) => from > TODAY).map(({ vat }) => vat);
  const out = [...new Set([held, ...planned])];
  const now = happens(({ tables }) =>
    onSheet(
      tables.vats,
      ...calm.book.vats.map(({ name }, i) =>
        out.includes(name)
          ? line(tables.vats, i, { outFrom: TODAY + 1, outUntil: TODAY + 200 })
          : ({} as Cells),
      ),
    ),
  );
  holds(now);
  const into = now.after.stays.filter(({ vat, batch, from }) => {
    const isNew = !now.book.batches.some(({ name }) => name === batch);
    return isNew && out.includes(vat) && from > TODAY;
  });
  expect(into).toEqual([]);
  expect(orderOf(now.after, 'Pond club').batches.length).toBeGreaterThan(0);
});

test('no vat to be had: the order that needed one cannot be met', () => {
  const now = happens(({ tables }) =>
    onSheet(
      tables.vats,
      ...calm.book.vats.map((_, i) => line(tables.vats, i, { outFrom: TODAY + 1, outUntil: TODAY + 200 })),
    ),
  );
  holds(now);
  expect(orderOf(now.after, 'Pond club').verdict).toBe('cannot');
});

test('a dead female is stripped no more', () => {
  const planned = calm.after.batches.filter(({ state }) => state === 'planned');
  const [dead] = planned.flatMap(({ pairs }) => pairs.map(({ female }) => female));
  const at = lineOf(calm.book.females, 'tag', dead ?? '');
  const now = happens(({ tables }) => onSheet(tables.females, line(tables.females, at, { goneOn: TODAY })));
  holds(now);
  expect(dead).toBeDefined();
  const used = now.after.batches
    .filter(({ state }) => state === 'planned')
    .flatMap(({ pairs }) => pairs.map(({ female }) => female));
  expect(used.length).toBeGreaterThan(0);
  expect(used).not.toContain(dead);
});

test('a count half of what was expected', () => {
  const there = thereBy(calm, 'B1', TODAY);
  const now = happens(() =>
    logged({ at: TODAY + 0.3, batch: 'B1', what: 'counted', number: Math.round(there / 2), stage: 'fish' }),
  );
  holds(now);
  const [was, is] = [orderOf(calm.after, 'Lake farms'), orderOf(now.after, 'Lake farms')];
  expect(is.expected).toBeLessThanOrEqual(was.expected);
  expect(is.certainty).toBeLessThanOrEqual(was.certainty);
});

test('a power cut: most larvae of one vat are dead', () => {
  const gone = Math.round(0.9 * thereBy(calm, 'B2', TODAY));
  const now = happens(() =>
    logged({ at: TODAY + 0.2, batch: 'B2', what: 'lost', number: gone, note: 'no power from 2 to 5' }),
  );
  holds(now);
  const order = orderOf(now.after, 'Fry man');
  expect(order.certainty).toBeLessThan(orderOf(calm.after, 'Fry man').certainty);
  expect(['unlikely', 'cannot', 'a coin toss']).toContain(order.verdict);
});

/** Typed this evening, before anything is planned again. */
const tonight = (entry: Entry): Shown => new Shown(typeInto(calm.model, logged(entry)), calmPages);

test('a loss that is logged is seen at once in the book, before planning again', () => {
  const there = thereBy(calm, 'B2', TODAY);
  const [before, after] = [
    shownOf(calm),
    tonight({ at: TODAY + 0.2, batch: 'B2', what: 'lost', number: 0.75 * there }),
  ];
  for (const key of ['fishNow', 'dry'] as const)
    expect(after.eaten('B2', key, TODAY) / before.eaten('B2', key, TODAY)).toBeCloseTo(0.25, 6);
  expect(after.order('Fry man')).toBeLessThan(before.order('Fry man'));
  expect(after.order('Lake farms')).toBe(before.order('Lake farms'));
});

test('fish sold to their order are owed no more and are nobody else’s; sold without order they are of those left over', () => {
  const before = shownOf(calm);
  const [order = ''] = [...calmPages.buyers].find(([, buyer]) => buyer === 'Fry man') ?? [];
  const ordered = tonight({ at: TODAY + 0.1, batch: 'B2', what: 'sold', number: 900, order });
  expect(ordered.batch('B2', 'promised')).toBeCloseTo(before.batch('B2', 'promised') - 900, 4);
  expect(ordered.batch('B2', 'extra')).toBeCloseTo(before.batch('B2', 'extra'), 4);
  expect(ordered.order('Fry man')).toBeCloseTo(before.order('Fry man'), 4);
  const free = tonight({ at: TODAY + 0.1, batch: 'B2', what: 'sold', number: 900 });
  expect(free.batch('B2', 'promised')).toBeCloseTo(before.batch('B2', 'promised'), 4);
  expect(free.batch('B2', 'extra')).toBeCloseTo(before.batch('B2', 'extra') - 900, 4);
});

test('a book written again from what was read of it, as one press brings back, has the same fish', () => {
  const { workings, fry } = calmPages.tables;
  const known = (model: WorkbookModel): unknown[] => {
    const cells = calculate(model).model.sheets.find(({ name }) => name === workings.title)?.cells ?? {};
    return (['standing', 'countedThen', 'lostSince', 'still'] as const).flatMap((key) =>
      calmPages.rows.batches.map((_, i) => cells[`${workings.letters[key]}${workings.first + i}`]?.value),
    );
  };
  const typings: readonly Typing[] = [
    () => ({}),
    () => logged({ at: TODAY + 0.2, batch: 'B2', what: 'lost', number: 6000 }),
    () => onSheet(fry, line(fry, 0, { weaned: 9000 })),
  ];
  for (const typing of typings) {
    const typed = calculate(typeInto(calm.model, typing(calmPages))).model;
    const read = readBack(typed);
    const back = livingBook(checked(asOf(read, TODAY)), read.plan, read.typed);
    expect(known(back)).toEqual(known(typed));
  }
});

test('a count typed on Counts after the planning speaks for itself', () => {
  const { fry } = calmPages.tables;
  const at = calmPages.rows.batches.findIndex(({ name }) => name === 'B1');
  const counted = new Shown(typeInto(calm.model, onSheet(fry, line(fry, at, { weaned: 9000 }))), calmPages);
  const a = assumed(calm.book.assumptions);
  const [share] = calm.after.allocations.filter(({ batch }) => batch === 'B1');
  const { feedFrom = NaN, weanedAt = NaN } = calm.after.batches[at] ?? {};
  const nursed = (share?.ageDays ?? NaN) - (Math.floor(weanedAt) - feedFrom);
  expect(nursed).toBeGreaterThan(0);
  const grown = 9000 * a.nurserySurvival ** (nursed / a.nurseryDays) * a.gradingShare * a.arriving;
  expect(counted.batch('B1', 'promised') + counted.batch('B1', 'extra')).toBeCloseTo(grown, 4);
});

test('all of it in one morning, and the morning after', () => {
  const now = happens(({ tables }) => ({
    ...onSheet(
      tables.orders,
      line(tables.orders, 2, { cancelled: 'yes' }),
      line(tables.orders, 3, { buyer: 'New lodge', product: 'fingerlings', number: 3000, due: 46_540 }),
    ),
    ...onSheet(tables.vats, line(tables.vats, 4, { outFrom: TODAY + 1 })),
    ...onSheet(tables.females, line(tables.females, 0, { goneOn: TODAY })),
    ...logged({ at: TODAY + 0.2, batch: 'B2', what: 'lost', number: 6000 }),
  }));
  holds(now);
  const next = replan(now.model, TODAY + 1);
  holds(next);
  expect(next.before.typed.log).toHaveLength(LOG.length + 1);
});

describe('what was typed for a planned batch never passes to another', () => {
  const is = calm.after.batches.find(({ state }) => state === 'planned');
  const own = is?.name ?? '';
  const tick = calmPages.rows.tasks.findIndex(({ batch }) => batch === own);
  // A tick and a remark beside a female, and a line of the log: all for the batch that may still move.
  const typing: Typing = ({ tables }) => ({
    ...onSheet(tables.calendar, line(tables.calendar, tick, { done: 'done', by: 'Esi' })),
    ...onSheet(
      tables.pairs,
      line(
        tables.pairs,
        calmPages.rows.pairs.findIndex(({ batch }) => batch === own),
        { remark: 'limps' },
      ),
    ),
    ...logged({ at: TODAY + 0.1, batch: own, what: 'died', number: 7, by: 'Esi' }),
  });
  const ticksOf = ({ typed }: BookRead): unknown[] =>
    typed.calendar.filter(({ by }) => by === 'Esi').map(({ batch }) => batch);
  const notes = ({ typed }: BookRead): string => typed.log.map(({ note }) => String(note ?? '')).join('; ');
  const nights = (plan: SeasonPlan): string[] =>
    plan.batches
      .filter(({ state }) => state === 'planned')
      .map(({ name, stripAt }) => `${name} ${Math.floor(stripAt)}`);

  test('planned again for its night, it keeps its name and what was typed', () => {
    const now = happens(typing);
    expect(nights(now.after)).toEqual(nights(calm.after));
    expect(ticksOf(readBack(now.model))).toEqual([own]);
  });

  test('planned for another night it is another batch; its name is not given again, now or at the next planning', () => {
    const at = lineOf(calm.book.orders, 'name', 'Pond club');
    const later: Typing = (pages) => ({
      ...typing(pages),
      ...onSheet(pages.tables.orders, line(pages.tables.orders, at, { due: 46_560 })),
    });
    const once = happens(later);
    const twice = replan(once.model, TODAY + 1);
    const orders = new LivingPages(twice.book, twice.after).tables.orders;
    const more = onSheet(
      orders,
      line(orders, 3, { buyer: 'New lodge', product: 'fingerlings', number: 3000, due: 46_600 }),
    );
    const thrice = replan(typeInto(twice.model, more), TODAY + 2);
    expect(thrice.after.batches.filter(({ state }) => state === 'planned').length).toBeGreaterThan(1);
    for (const { after, model } of [once, twice, thrice]) {
      expect(nights(after).length).toBeGreaterThan(0);
      expect(after.batches.map(({ name }) => name)).not.toContain(own);
      const again = readBack(model);
      expect(ticksOf(again)).toEqual([]);
      expect(notes(again)).toContain(`Kept of ${own}, Calendar`);
      expect(notes(again)).toMatch(new RegExp(`Kept of ${own}, Batches: .*limps`));
      expect(again.typed.log.filter(({ batch }) => batch === own)).toMatchObject([{ number: 7, by: 'Esi' }]);
      expect(again.plan.batches.flatMap(({ events }) => events).some(({ number }) => number === 7)).toBe(
        false,
      );
    }
    // Names stay from planning to planning.
    expect(nights(twice.after)).toEqual(nights(once.after));
  });
});
