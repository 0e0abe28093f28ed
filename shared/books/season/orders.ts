import type { Content } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import type { PlannedOrder } from '../../season/result';
import { FISH, ORDERS } from './columns';
import type { Pages } from './context';
import { FIRST, HEAD, lastRow } from './context';

/** Lines left open for orders that come in later. */
const SPARE_ORDERS = 6;

const odd = (n: number | undefined): Content => (n === undefined ? '' : Number.isFinite(n) ? n : 'none');
const maybe = (n: number | undefined): Content => n ?? {};

function contents(
  { plan, book }: Pages,
  { order, females, odds, femalesForNinety }: PlannedOrder,
  row: number,
) {
  const c = ORDERS.letters;
  const underway = book.underway.reduce((sum, run) => sum + (run.order === order.name ? run.fish : 0), 0);
  const runs = `SUMIFS(${FISH.range('fish', plan.runs.length)},${FISH.range('order', plan.runs.length)},${c.order}${row})`;
  return {
    order: order.name,
    product: order.product,
    number: order.number,
    grams: maybe(order.grams),
    due: order.due,
    price: maybe(order.price),
    breeding: order.forBreeding ? 'yes' : '',
    planned: `=${runs}+${c.underway}${row}`,
    underway,
    short: `=MAX(0,${c.number}${row}-ROUND(${c.planned}${row},0))`,
    verdict: `=IF(${c.short}${row}=0,"can be met","SHORT")`,
    females,
    p10: odd(odds?.p10),
    p50: odd(odds?.p50),
    p90: odd(odds?.p90),
    certainty: odd(odds?.certainty),
    ninety: odd(femalesForNinety),
    sales: `=MIN(${c.number}${row},${c.planned}${row})*${c.price}${row}`,
  };
}

/** What is promised, what the runs bring, how surely. */
export function ordersSheet(pages: Pages): SheetModel {
  const { orders } = pages.plan;
  const c = ORDERS.letters;
  const sheet = pages.sheet(
    'orders',
    'Orders',
    'Numbers, dates and prices move the sheets at once. New orders go into the open ' +
      'lines: Plan again in the pane plans them. Odds are those of the day of planning.',
    {
      widths: [2, ...ORDERS.widths],
      tab: '12454F',
      freeze: { rows: HEAD, columns: 2 },
      print: { titleRows: [HEAD, HEAD] },
    },
  );
  ORDERS.headings(sheet, 44);
  orders.forEach((order, i) => {
    ORDERS.row(sheet, FIRST + i, contents(pages, order, FIRST + i));
  });
  for (let i = 0; i < SPARE_ORDERS; i++) ORDERS.row(sheet, FIRST + orders.length + i, {});
  const last = lastRow(orders.length);
  const open = last + SPARE_ORDERS;
  sheet.table({ name: 'season_orders', range: `${ORDERS.first}${HEAD}:${ORDERS.last}${open}` });
  sheet
    .when({
      range: `${c.verdict}${FIRST}:${c.verdict}${last}`,
      formula: `=$${c.short}${FIRST}=0`,
      style: 'good',
    })
    .when({
      range: `${c.verdict}${FIRST}:${c.verdict}${last}`,
      formula: `=$${c.short}${FIRST}>0`,
      style: 'bad',
    });
  const down = (letter: string): string => `${letter}${FIRST}:${letter}${open}`;
  sheet.validate({
    range: down(c.product),
    kind: 'list',
    items: ['fry', 'fingerlings'],
    message: 'Fry leave after weaning, fingerlings after nursing.',
  });
  sheet.validate({
    range: down(c.number),
    kind: 'whole',
    min: 1,
    max: 5_000_000,
    message: 'Fish ordered, a whole number.',
  });
  sheet.validate({
    range: down(c.grams),
    kind: 'decimal',
    min: 0.005,
    max: 100,
    message: 'Mean weight wanted in grams; empty: what the usual days give.',
  });
  sheet.validate({
    range: down(c.due),
    kind: 'date',
    min: 36526,
    max: 73050,
    message: 'Day the fish are fetched.',
  });
  sheet.validate({ range: down(c.price), kind: 'decimal', min: 0, max: 1e9, message: 'Price of one fish.' });
  sheet.validate({
    range: down(c.breeding),
    kind: 'list',
    items: ['yes', 'no'],
    message: 'Fish that become brood fish need many parents.',
  });
  const chart = open + 2;
  sheet.chart({
    kind: 'column',
    title: 'Ordered and planned',
    categories: sheet.ref(ORDERS.own('order', orders.length)),
    valueFormat: '#,##0',
    yTitle: 'fish',
    series: [
      { name: 'ordered', values: sheet.ref(ORDERS.own('number', orders.length)) },
      { name: 'planned', values: sheet.ref(ORDERS.own('planned', orders.length)) },
    ],
    from: `B${chart}`,
    to: `H${chart + 16}`,
  });
  sheet.chart({
    kind: 'column',
    title: 'What seasons may bring',
    categories: sheet.ref(ORDERS.own('order', orders.length)),
    valueFormat: '#,##0',
    yTitle: 'fish',
    series: (['p10', 'p50', 'p90'] as const).map((key) => ({
      name: ORDERS.titleOf(key).toLowerCase(),
      values: sheet.ref(ORDERS.own(key, orders.length)),
    })),
    from: `I${chart}`,
    to: `Q${chart + 16}`,
  });
  return sheet.build();
}
