import type { BookDay } from '../../../shared/books/living/reading/day';
import { readOrderBook } from '../../../shared/season/book/orderBook';
import type { OrderRow, SeasonForm } from '../../../taskpane/screens/season/state/form';
import { bookOfForm, faultsOf, unknownMonths } from '../../../taskpane/screens/season/state/faults';
import { sameOrders } from '../../../taskpane/screens/season/state/sameOrders';
import { formOfInput, inputOfForm } from '../../../taskpane/screens/season/state/form';
import { exampleForm } from '../../../taskpane/screens/season/state/season';
import { readTables, tablesSheet } from '../../../taskpane/screens/season/state/tables';
import { orderNamed } from '../../../taskpane/screens/vat/state/entries';
import { gridOf } from '../../season/support/support';
import { openPage } from '../support/page';
import { TODAY } from '../support/seasonModel';

/** A buyer with two orders, in the form, on the sheet of tables, at the vat. */
const example = exampleForm(TODAY);
const [first] = example.orders;
if (!first) throw new Error('no order');
const withOrders = (...orders: readonly OrderRow[]): SeasonForm => ({ ...example, orders });
const like = (id: number, texts: Partial<OrderRow['texts']>): OrderRow => ({
  ...first,
  id,
  texts: { ...first.texts, ...texts },
});

test('a buyer comes twice: no fault, two orders, and the form comes back as it was typed', () => {
  const form = withOrders(first, like(2, { number: '1234' }));
  expect(faultsOf(form).size).toBe(0);
  expect(sameOrders(form).size).toBe(0);
  const book = bookOfForm(form);
  expect(book?.orders.map(({ name }) => name)).toEqual(['O1 Two Mills farm', 'O2 Two Mills farm']);
  const back = formOfInput(book, TODAY);
  expect(back.orders.map(({ texts }) => texts.name)).toEqual(['Two Mills farm', 'Two Mills farm']);
  expect(bookOfForm(back)).toEqual(book);
});

test.each([
  ['word for word', {}, true],
  ['in other letters, the number with a comma', { name: ' two mills FARM ', number: '6,000' }, true],
  ['one fish more', { number: '6001' }, false],
  ['a day later', { due: '2027-12-31' }, false],
  ['not typed whole yet', { number: '' }, false],
])('the same line twice, %s: said beside it %j: %s', (_, texts, isSame) => {
  const form = withOrders(first, like(7, texts));
  expect([...sameOrders(form)]).toEqual(isSame ? [[7, 1]] : []);
  expect(bookOfForm(form) !== undefined || ('number' in texts && texts.number === '')).toBe(true);
});

test('the pane says it beside the second, and works the plan out all the same', async () => {
  const page = openPage('ready', undefined, 'plan');
  page.one('#mode-season').click();
  await page.press('Fill in an example');
  const fill = (id: string, text: string): void => {
    const field = page.one(id) as HTMLInputElement;
    field.value = text;
    field.dispatchEvent(new Event('input', { bubbles: true }));
  };
  fill('#season-order-2-name', first.texts.name);
  await page.store.idle();
  expect(page.text()).not.toContain('says the same');
  for (const key of ['product', 'number', 'due'] as const) fill(`#season-order-2-${key}`, first.texts[key]);
  await page.store.idle();
  expect(page.one('#season-order-2-name-care').textContent).toContain(
    'Order 1 says the same. If this one was typed twice, remove it.',
  );
  expect(faultsOf(page.store.state().season.form).size).toBe(0);
});

test('read from the sheet of tables, each of a buyer’s orders keeps its own key, sorted or changed', () => {
  const form = withOrders(
    { ...like(1, {}), key: 'O4' },
    { ...like(2, { number: '1234' }), key: 'O9' },
    { ...like(3, { due: '2027-12-30' }), key: 'O2' },
  );
  const [a, b, c] = form.orders;
  if (!a || !b || !c) throw new Error('no orders');
  const sorted = tablesSheet({ ...form, orders: [c, b, a, like(4, { number: '77' })] });
  expect(readTables(gridOf(sorted), form)?.form.orders.map(({ key }) => key)).toEqual([
    'O2',
    'O9',
    'O4',
    undefined,
  ]);
  // The number of one was changed on the sheet: its day says which it is.
  const changed = tablesSheet({
    ...form,
    orders: [c, { ...b, texts: { ...b.texts, number: '99' } }, a].reverse(),
  });
  expect(readTables(gridOf(changed), form)?.form.orders.map(({ key }) => key)).toEqual(['O4', 'O9', 'O2']);
  const read = readOrderBook(inputOfForm(readTables(gridOf(sorted), form)?.form ?? form));
  expect('book' in read && read.book.orders.map(({ key }) => key)).toEqual(['O2', 'O9', 'O4', 'O10']);
});

describe('at the vat', () => {
  const order = { number: 100, delivered: 0, expected: 100, promise: 90, planned: 100, isCancelled: false };
  const day = {
    orders: [
      { ...order, key: 'O1', name: 'Hill ponds', due: 100, delivered: 100 },
      { ...order, key: 'O2', name: 'Hill ponds', due: 300 },
      { ...order, key: 'O3', name: 'Hill ponds', due: 200 },
      { ...order, key: 'O4', name: 'Hills end', due: 200 },
    ],
  } as unknown as BookDay;
  test.each([
    ['o1', undefined, 'O1'],
    ['O2 hill ponds', undefined, 'O2'],
    ['Hill ponds', undefined, 'O3'],
    ['Hill ponds', 'O2', 'O2'],
    ['Hill ponds', 'O1', 'O3'],
    ['hill p', undefined, 'O3'],
    ['Hill', undefined, undefined],
    ['nobody', 'O2', undefined],
  ])('“%s”, the task of the batch being for %s: %s', (word, task, key) => {
    expect(orderNamed(day, word, task)).toBe(key);
  });
});

test.each([
  ['2027-11-20', '2028-02-03', [10, 11, 0, 1]],
  ['2027-11-20', '2027-12-31', [10, 11]],
  ['2027-11-20', '2028-01-01', [10, 11, 0]],
  ['2027-05-01', '2029-01-01', [4, 5, 6, 7, 8, 9, 10, 11, 0, 1, 2, 3]],
  ['2027-11-20', '2027-11-20', []],
])('planned on %s for %s: months whose water must be known', (plannedOn, due, months) => {
  const blank = Object.fromEntries(Array.from({ length: 12 }, (_, i) => [`temperatures.${i}`, '']));
  const form = { ...withOrders(like(1, { due })), texts: { ...example.texts, ...blank, plannedOn } };
  expect([...unknownMonths(form)]).toEqual(months);
});
