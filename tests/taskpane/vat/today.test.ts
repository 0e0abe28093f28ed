import { tasksIn } from '../../../taskpane/screens/today/state/calendar';
import { dayOf, isShort } from '../../../taskpane/screens/today/state/today';
import { fakeWorld } from '../support/fakePort';
import { openPage } from '../support/page';
import { TODAY } from '../support/seasonModel';

/** The home: five ways to begin, or what now and what next. */

test('without a plan: five ways to begin, each leads to its place', async () => {
  const leads = [
    ['order', 'plan', '#plan-wanted'],
    ['season', 'plan', '#season-plan'],
    ['sour', 'vat', '#dose-volume'],
    ['number', 'why', '#function-search'],
    ['check', 'why', '#check-sheet'],
  ] as const;
  for (const [start, place, there] of leads) {
    const page = openPage('ready', fakeWorld(), 'today');
    await page.store.idle();
    page.one(`#start-${start}`).click();
    await page.store.idle();
    expect(page.store.state().screen).toBe(place);
    expect(page.all(there)).toHaveLength(1);
  }
});

const calendar = {
  name: 'Calendar',
  top: 0,
  left: 0,
  values: [
    ['Done', 'Date', 'Hour', 'Day', 'What to do', 'How much', '', 'Light', 'Remember'],
    ['', TODAY + 17 / 24, TODAY + 17 / 24, 0, 'Weigh', 4, 'females', '', ''],
    ['', TODAY + 23 / 24, TODAY + 23 / 24, 0, 'Inject', 0.5, 'mL each', 'night', 'Ask a vet'],
    ['done', TODAY + 20 / 24, TODAY + 20 / 24, 0, 'Dry the vats', '', '', '', ''],
    ['', TODAY + 1.4, TODAY + 1.4, 1, 'Strip', '', '', '', ''],
    ['', TODAY + 9, TODAY + 9, 9, 'Wean', '', '', '', ''],
  ],
};

test('the next hour stands large, what is late is said, what is done or far is not there', async () => {
  const world = fakeWorld();
  world.sheets = ['Calendar', 'Notes'];
  world.records = { sheets: [calendar], again: 'book' };
  // 18:00 on the wall.
  const page = openPage('ready', world, 'today');
  await page.store.idle();
  expect(page.one('.next').textContent).toContain('Inject · 0.50 mL each');
  expect(page.one('.next').textContent).toContain('23:00, in 5 h 0 min');
  expect(page.text()).toContain('Should have been done');
  expect(page.text()).toContain('Strip');
  expect(page.text()).not.toContain('Dry the vats');
  expect(page.text()).not.toContain('Wean');
});

test('a tick writes the hour of now into the book, and the next task comes up', async () => {
  const world = fakeWorld();
  world.sheets = ['Calendar'];
  world.records = { sheets: [calendar], again: 'book' };
  const page = openPage('ready', world, 'today');
  await page.store.idle();
  await page.press('Done: Inject');
  expect(world.logged.map((row) => row.filter((cell) => cell !== null))).toEqual([
    [TODAY + 18 / 24, '1', 'done', 'Inject'],
  ]);
  expect(world.words).toEqual([`Calendar!A3=${TODAY + 18 / 24}`]);
  expect(page.one('.next').textContent).toContain('Strip');
});

test('a day with its hour in a column beside it', () => {
  const [task] = tasksIn([
    {
      name: 'Calendar',
      top: 3,
      left: 1,
      values: [
        ['Done', 'Date', 'Hour', 'Batch', 'What to do', 'How much', 'Of what', 'By'],
        ['', TODAY, 0.75, 'A', 'Inject', 1.5, 'mL', ''],
      ],
    },
  ]);
  expect(task).toMatchObject({ at: TODAY + 0.75, amount: '1.50 mL', tick: 'B5' });
});

test('a task of the last seven days is late, the latest first; an older one is not asked about any more', () => {
  const task = (at: number) => ({
    key: String(at),
    at,
    what: '',
    amount: '',
    remember: '',
    sheet: '',
    row: 1,
    tick: undefined,
    isDone: false,
  });
  const now = 1000.5;
  const day = dayOf([task(993.1), task(992.9), task(999.1), task(1001.9), task(1002.1)], new Set(), now);
  expect(day.overdue.map(({ at }) => at)).toEqual([999.1, 993.1]);
  expect(day.tomorrow.map(({ at }) => at)).toEqual([1001.9]);
});

test('an order is off the plan below 97 of 100 of what was expected, and only while it is open', () => {
  const order = {
    key: 'O1',
    name: 'A',
    due: 1010,
    number: 1000,
    delivered: 0,
    expected: 970,
    promise: 900,
    planned: 1000,
    isCancelled: false,
  };
  const is = (change: Partial<typeof order>): boolean => isShort(1000)({ ...order, ...change });
  expect([is({}), is({ expected: 969 })]).toEqual([false, true]);
  expect([
    is({ expected: 1, isCancelled: true }),
    is({ expected: 1, due: 999 }),
    is({ expected: 1, due: 1000 }),
  ]).toEqual([false, false, true]);
  expect(is({ expected: 1, delivered: 1000 })).toBe(false);
});
