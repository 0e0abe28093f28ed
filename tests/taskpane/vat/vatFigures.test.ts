import type { BookDay, DayBatch, DayOrder, DayStay } from '../../../shared/books/living/reading/day';
import type { PaneState } from '../../../taskpane/pane/keeping/state';
import { markEntries, orderNamed, withEntries } from '../../../taskpane/screens/vat/state/entries';
import { fishHere, growthOf, plannedAt } from '../../../taskpane/screens/vat/state/growth';
import { ageOf, standingIn, vatsOfBatch } from '../../../taskpane/screens/vat/state/standing';
import { dayOf, isShort } from '../../../taskpane/screens/today/state/today';
import type { TaskOfDay } from '../../../taskpane/screens/today/state/today';
import { momentsOf } from '../../../taskpane/screens/season/state/preview';
import type { SeasonPlan } from '../../../shared/season/types';

/** What the vat's screen and Today take from the book: each side of every limit. */
const DAY = 46_500;
const near = (value: number) => expect.closeTo(value, 9);
const stay = (
  vat: string,
  batch: string,
  from: number,
  to: number,
  more: Partial<DayStay> = {},
): DayStay => ({
  vat,
  batch,
  stage: 'fry',
  from: DAY + from,
  to: DAY + to,
  fish: 1000,
  now: undefined,
  ...more,
});
const batch = (name: string, more: Partial<DayBatch> = {}): DayBatch => ({
  name,
  state: 'planned',
  inject: DAY - 1,
  strip: DAY,
  hatch: DAY + 1.2,
  feed: DAY + 4,
  leaves: DAY + 30,
  weighed: undefined,
  ...more,
});
const book = (more: Partial<BookDay> = {}): BookDay =>
  ({
    suffix: '',
    vats: ['Vat 1', 'Vat 2'],
    stays: [stay('Vat 1', 'B1', 0, 10), stay('Vat 1', 'B2', 20, 30)],
    batches: [batch('B1'), batch('B2')],
    orders: [],
    log: [],
    growth: { start: 0.002, rearing: 20, nursing: 8, rearingDays: 12 },
    tasks: [],
    females: [],
    broken: 0,
    ...more,
  }) as BookDay;
const paneAt = (
  now: number,
  of: BookDay = book(),
  more: { lines?: object[]; tasks?: object[] } = {},
): PaneState =>
  ({
    now: DAY + now,
    today: { book: of, tasks: more.tasks ?? [] },
    vat: { vat: 'Vat 1', lines: more.lines ?? [] },
  }) as unknown as PaneState;

test.each([
  [-0.51, undefined],
  [-0.5, 'B1'],
  [9, 'B1'],
  [12.99, 'B1'],
  [13, undefined],
  [19.4, undefined],
  [19.6, 'B2'],
])('on day %f the vat holds %s: half a day before its hour, three days after', (now, name) => {
  expect(standingIn(book(), 'Vat 1', DAY + now)?.batch).toBe(name);
});
test('of two that may be in, the one whose hour has come, then the later one', () => {
  const both = book({ stays: [stay('Vat 1', 'B1', 0, 10), stay('Vat 1', 'B2', 10.3, 20)] });
  expect(standingIn(both, 'Vat 1', DAY + 10.1)?.batch).toBe('B1');
  expect(standingIn(both, 'Vat 1', DAY + 10.3)?.batch).toBe('B2');
});
test('vats of a batch: by the plan, else those it may be in', () => {
  const two = book({
    stays: [stay('Vat 1', 'B1', 0, 10), stay('Vat 2', 'B1', 5, 10), stay('Vat 2', 'B1', 10, 20)],
  });
  expect(vatsOfBatch(two, 'B1', DAY + 4.9)).toEqual(['Vat 1']);
  expect(vatsOfBatch(two, 'B1', DAY + 5)).toEqual(['Vat 1', 'Vat 2']);
  expect(vatsOfBatch(two, 'B1', DAY + 10)).toEqual(['Vat 2']);
  expect(vatsOfBatch(two, 'B1', DAY - 0.4)).toEqual(['Vat 1']);
});
test('whole days after the hatch', () => {
  expect([1.1, 1.2, 2.19, 2.21].map((at) => ageOf(batch('B1'), DAY + at))).toEqual([undefined, 0, 0, 1]);
});

test('weights as planned, from the first full day of food', () => {
  const at = (days: number, feed = DAY + 4) =>
    plannedAt(book({ batches: [batch('B1', { feed })] }), 'B1', DAY + days);
  expect(at(3.9)).toBeUndefined();
  expect([at(4), at(5.5), at(16), at(18.2)]).toEqual([
    near(0.002),
    near(0.002 * Math.exp(0.2)),
    near(0.002 * Math.exp(2.4)),
    near(0.002 * Math.exp(2.4 + 0.16)),
  ]);
  expect([at(4, DAY + 4.49), at(4, DAY + 4.5)]).toEqual([near(0.002), undefined]);
});
test.each([
  // Hatched on 1.2: whole days since, and the day of the first full day of food, 1 to 12.
  [1.1, 4, undefined],
  [1.3, 4, [0, 2]],
  [3.9, 4, [1, 2]],
  [4.1, 4, [2, 2]],
  [4.1, 1.4, [2, 1]],
  [4.1, 13.2, [2, 11]],
  [4.1, 14.2, [2, 12]],
  [4.1, 19, [2, 12]],
] as const)('fish on day %f, food on %f: age and food %j', (now, feed, wanted) => {
  const fish = fishHere(paneAt(now, book({ batches: [batch('B1', { feed: DAY + feed })] })));
  expect(fish && [fish.age, fish.food, fish.alive]).toEqual(wanted && [...wanted, 1000]);
});
test('fish of today by the book come before those planned; no hour of food counts as the first day', () => {
  const now = { fish: 900, feed: undefined };
  const of = book({
    stays: [stay('Vat 1', 'B1', 0, 10, { now })],
    batches: [batch('B1', { feed: undefined })],
  });
  expect(fishHere(paneAt(4, of))).toEqual({ alive: 900, age: 2, food: 1 });
});
test('growth is drawn to the day they leave, at most sixty days, with what was weighed', () => {
  const drawn = (leaves: number | undefined, more: Partial<DayBatch> = {}, lines: object[] = []) =>
    growthOf(paneAt(9, book({ batches: [batch('B1', { leaves, ...more })] }), { lines }), 'B1');
  expect(drawn(DAY + 30).planned).toHaveLength(27);
  expect(drawn(DAY + 64).planned).toHaveLength(61);
  expect(drawn(DAY + 90).planned).toHaveLength(61);
  expect(drawn(DAY + 4).planned).toHaveLength(2);
  expect(drawn(undefined).planned).toHaveLength(13);
  expect(drawn(DAY + 30).planned[1]).toEqual({ at: DAY + 5, grams: near(0.002 * Math.exp(0.2)) });
  const line = { what: 'fishWeight', value: 0.01, at: DAY + 7.4, vat: 'Vat 1' };
  const weighed = { at: DAY + 6, grams: 0.008 };
  expect(drawn(DAY + 30, { weighed }, [line]).weighed).toEqual([weighed, { at: DAY + 7, grams: 0.01 }]);
  expect(drawn(DAY + 30, { weighed: { ...weighed, at: DAY + 7.9 } }, [line]).weighed).toEqual([
    { at: DAY + 7, grams: 0.01 },
  ]);
});

describe('what the book takes of a card', () => {
  const task = (at: number, kind = 'hatch', more: object = {}) => ({
    key: `${kind}${at}`,
    task: kind,
    batch: 'B1',
    at: DAY + at,
    isDone: false,
    sheet: 'Tasks',
    tick: `A${Math.round(10 * at)}`,
    ...more,
  });
  const ticked = (now: number, tasks: object[], lines: object[] = []) =>
    (markEntries(paneAt(now, book(), { tasks, lines }), 'hatching').entries ?? []).map(
      (entry) => (entry as { address?: string }).address,
    );
  test('the open task nearest to now, within three days', () => {
    expect(ticked(5, [task(2.01)])).toEqual(['A20']);
    expect(ticked(5, [task(2)])).toEqual([]);
    expect(ticked(5, [task(7.99)])).toEqual(['A80']);
    expect(ticked(5, [task(8)])).toEqual([]);
    expect(ticked(5, [task(3), task(6), task(7)])).toEqual(['A60']);
    expect(ticked(5, [task(6, 'hatch', { isDone: true }), task(7)])).toEqual(['A70']);
    expect(ticked(5, [task(6, 'hatch', { batch: 'B2' })])).toEqual([]);
    expect(ticked(5, [task(6), task(7)], [{ task: 'hatch6' }])).toEqual(['A70']);
  });
  const counted = (now: number, of: BookDay = book(), lines: object[] = []) =>
    withEntries(
      paneAt(now, of, { lines }),
      [{ what: 'fry', value: 400, unit: '' }] as never,
      {},
      () => '',
    )[0];
  const stageAt = (now: number) =>
    (counted(now)?.entries?.[0] as { fact?: { stage?: string } } | undefined)?.fact?.stage;
  test('what is counted: larvae until half a day before food, larvae at food until a day and a half after', () => {
    expect([3.49, 3.5, 5.49, 5.5].map(stageAt)).toEqual(['larvae', 'feeding', 'feeding', 'fish']);
  });
  test('eggs are no count of larvae until a quarter of a day before the hatch', () => {
    const eggs = book({ stays: [stay('Vat 1', 'B1', 0, 10, { stage: 'eggs' })] });
    expect(counted(0.94, eggs)?.entries).toBeUndefined();
    expect(counted(0.96, eggs)?.entries).toHaveLength(2);
  });
  test('two vats: counted the same day they are one count', () => {
    const two = book({ stays: [stay('Vat 1', 'B1', 0, 10), stay('Vat 2', 'B1', 0, 10)] });
    const other = (at: number) => [{ vat: 'Vat 2', what: 'fry', value: 300, at: DAY + at }];
    expect(counted(6.5, two)).toMatchObject({ isLogged: true });
    expect(counted(6.5, two)?.entries).toBeUndefined();
    expect(counted(6.5, two, other(5.9))?.entries).toBeUndefined();
    expect(counted(6.5, two, other(6.1))?.entries?.[0]).toMatchObject({
      fact: { number: 700, note: 'Vat 2, Vat 1' },
    });
  });
  test('eggs are of the batch stripped within two days, or within half a day to come', () => {
    const empty = (now: number) =>
      withEntries(
        paneAt(now, book({ stays: [], batches: [batch('B1'), batch('B2', { strip: DAY + 20 })] })),
        [{ what: 'dead', value: 3, unit: '' }] as never,
        {},
        () => '',
      )[0]?.entries;
    expect([-0.51, -0.49, 1.99, 2.01].map((now) => empty(now) !== undefined)).toEqual([
      false,
      true,
      true,
      false,
    ]);
  });
  const order = (key: string, name: string, more: Partial<DayOrder> = {}): DayOrder =>
    ({
      key,
      name,
      number: 100,
      delivered: 0,
      due: DAY + 9,
      isCancelled: false,
      expected: 100,
      planned: 100,
      ...more,
    }) as DayOrder;
  test('of one buyer’s orders the one still open that is due first', () => {
    const of = (...orders: DayOrder[]) => orderNamed(book({ orders }), ' lower weir ');
    const [a, b] = [order('O1', 'Lower Weir'), order('O2', 'Lower Weir', { due: DAY + 5 })];
    expect(of(a, b)).toBe('O2');
    expect(of(a, { ...b, delivered: 100 })).toBe('O1');
    expect(of(a, { ...b, delivered: 99 })).toBe('O2');
    expect(of(a, { ...b, isCancelled: true })).toBe('O1');
    expect(orderNamed(book({ orders: [a, b] }), 'Lower Weir', 'O1')).toBe('O1');
    expect(orderNamed(book({ orders: [a, order('O3', 'Lower Mill')] }), 'Lower')).toBeUndefined();
    expect(orderNamed(book({ orders: [a] }), 'low')).toBe('O1');
    expect(orderNamed(book({ orders: [a] }), ' ')).toBeUndefined();
  });
  test('an order is short below 97 of 100 fish planned, or ordered where fewer were', () => {
    const short = (more: Partial<DayOrder>) => isShort(DAY + 0.5)(order('O', 'A', more));
    expect([short({ expected: 97 }), short({ expected: 96.9 })]).toEqual([false, true]);
    expect([short({ planned: 200, expected: 97 }), short({ planned: 50, expected: 49 })]).toEqual([
      false,
      false,
    ]);
    expect([short({ expected: 50, delivered: 100 }), short({ expected: 50, delivered: 99 })]).toEqual([
      false,
      true,
    ]);
    expect([short({ expected: 50, due: DAY }), short({ expected: 50, due: DAY - 1 })]).toEqual([true, false]);
    expect(short({ expected: 50, isCancelled: true })).toBe(false);
  });
});

test('Today: overdue since a week, today, tomorrow', () => {
  const tasks = [-6.9, -7, -7.1, 0.4, 0.5, 0.6, 0.99, 1, 1.99, 2, 9].map(
    (at) => ({ key: `${at}`, at: DAY + at, isDone: false }) as TaskOfDay,
  );
  const day = dayOf(tasks, new Set(['0.99']), DAY + 0.5);
  const keys = (list: readonly TaskOfDay[]) => list.map(({ key }) => key);
  expect(keys(day.overdue)).toEqual(['0.4', '-6.9']);
  expect(keys(day.today)).toEqual(['0.5', '0.6']);
  expect(keys(day.tomorrow)).toEqual(['1', '1.99']);
  expect(day.next?.key).toBe('0.5');
});

test.each([
  [21.9, false],
  [22, true],
  [0, true],
  [5.9, true],
  [6, false],
])('work at %f h is work by night: %s', (hour, night) => {
  const at = DAY + hour / 24;
  const plan = {
    plannedOn: DAY,
    stays: [],
    allocations: [],
    batches: [
      {
        name: 'B1',
        state: 'planned',
        pairs: [],
        males: [],
        hormone: 1,
        eggs: 1,
        larvae: 1,
        weaned: 1,
        injectAt: at,
        stripAt: NaN,
        hatchAt: NaN,
        firstFeedAt: NaN,
        weanedAt: NaN,
      },
    ],
  } as unknown as SeasonPlan;
  expect(momentsOf(plan, 'mL').map(({ isNight }) => isNight)).toEqual([night]);
});
