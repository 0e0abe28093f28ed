import { VERDICT_LOOKS } from '../../../maths/verdict';
import type { Content } from '../../../sheet/workbook/build';
import type { SheetModel } from '../../../sheet/workbook/model';
import type { BookedOrder } from '../../../season/book/orderBook';
import type { OrderPlan } from '../../../season/types';
import { colourVerdicts, verdictOfShare } from '../workings/verdicts';
import type { LivingPages } from '../context';
import { keyNumbered } from '../../../season/book/orderKeys';
import { freeNumber } from '../keyed';
import { HEAD } from '../layout';

const maybe = (n: number | undefined): Content => n ?? {};
/** Fewer fish than this part of what was expected when the odds were drawn: they no longer hold. */
export const ODDS_HOLD = 0.9; // chosen here, no source
/** A weight that falls short by less than this part is met. */
const WEIGHT_HOLDS = 0.95; // chosen here, no source
/** Conditions over cells: the lightest fish an order gets, the fish that are expected for it now. */
export const isTooLight = (lightest: string, wanted: string): string =>
  `${lightest}<${WEIGHT_HOLDS}*${wanted}`;
export const areFewer = (now: string, planned: string): string => `${now}<${ODDS_HOLD}*${planned}`;

const planOf = (pages: LivingPages, order: BookedOrder): OrderPlan | undefined =>
  pages.plan.orders.find(({ order: { name } }) => name === order.name);

/** What an order's line says: first what stands against it, then how surely it is met. */
function verdictFormula(pages: LivingPages, row: number): string {
  const { orders, promises } = pages.tables;
  const here = (key: keyof typeof orders.letters): string => orders.here(key, row);
  const changed = `IFERROR(${promises.find('changed', 'order', here('order'))},"plan again")`;
  return `=IF(${here('number')}="","",IF(${here('cancelled')}="yes","cancelled",IF(ISERROR(${here('expected')}),"not calculated here",IF(AND(${here('number')}>0,${here('delivered')}>=${here('number')}),"✓ handed over",IF(${changed}<>"",${changed},IF(ISNUMBER(${here('certainty')}),${verdictOfShare(here('certainty'))},"plan again"))))))`;
}

/** The name of the buyer; nothing where only a key was typed. */
const buyerOf = ({ buyers }: LivingPages, { name }: BookedOrder): Content => {
  const buyer = buyers.get(name);
  return buyer === undefined || buyer === name ? {} : buyer;
};

const yes = (is: boolean | undefined): Content => (is ? 'yes' : {});
/** What was typed of an order; open lines hold nothing. */
const typed = (pages: LivingPages, order: BookedOrder | undefined, spare: string) => ({
  order: order?.name ?? spare,
  buyer: order ? buyerOf(pages, order) : {},
  product: order?.product ?? {},
  number: maybe(order?.number),
  grams: maybe(order?.grams),
  due: maybe(order?.due),
  price: maybe(order?.price),
  breeding: yes(order?.forBreeding),
  cancelled: yes(order?.cancelled),
});

function contents(pages: LivingPages, order: BookedOrder | undefined, row: number, spare: string) {
  const { orders, shares, log, promises } = pages.tables;
  const here = (key: keyof typeof orders.letters): string => orders.here(key, row);
  const plan = order && planOf(pages, order);
  const heavy = `IFERROR(${promises.find('heavy', 'order', here('order'))},0)`;
  const delivered = `SUMIFS(${log.range('number')},${log.range('order')},${here('order')},${log.range('what')},"sold")`;
  return {
    ...typed(pages, order, spare),
    delivered: `=IF(${here('number')}="","",${delivered})`,
    expected: `=IF(${here('number')}="","",${here('delivered')}+SUMIFS(${shares.range('handOver')},${shares.range('order')},${here('order')}))`,
    promise: maybe(plan?.promise),
    hope: maybe(plan?.hope),
    certainty: maybe(plan?.certainty),
    verdict: verdictFormula(pages, row),
    heavy: `=IF(${here('number')}="","",IF(N(${heavy})>0,${heavy},""))`,
    sales: `=IF(OR(${here('number')}="",${here('cancelled')}="yes"),0,MIN(${here('number')},${here('expected')})*${here('price')})`,
  };
}

/** What is promised, what the batches bring, how surely. */
export function ordersSheet(pages: LivingPages): SheetModel {
  const { orders } = pages.tables;
  const sheet = pages.sheet(
    'orders',
    'Orders',
    'Numbers, dates and prices move the book at once; the verdict says when to plan again. ' +
      'New orders go into the open lines. Other sheets name an order by its key, never its buyer.',
    {
      widths: [2, ...orders.widths],
      tab: '12454F',
      freeze: { rows: HEAD, columns: 3 },
      print: { titleRows: [HEAD, HEAD] },
    },
  );
  orders.headings(sheet, 44);
  const free = freeNumber(pages.book, pages.typed) - pages.book.orders.length;
  for (let i = 0; i < orders.lines; i++)
    orders.line(
      sheet,
      orders.first + i,
      contents(pages, pages.book.orders[i], orders.first + i, keyNumbered(free + i)),
    );
  sheet.table({ name: 'season_orders', range: orders.area });
  colourVerdicts(sheet, orders.own('verdict'), orders.here('verdict', orders.first));
  const guard = (key: keyof typeof orders.letters) => orders.own(key);
  sheet
    .validate({
      range: guard('product'),
      kind: 'list',
      items: ['fry', 'fingerlings'],
      message: 'Fry leave after weaning, fingerlings after nursing.',
    })
    .validate({
      range: guard('number'),
      kind: 'whole',
      min: 1,
      max: 5_000_000,
      message: 'Fish ordered, a whole number.',
    })
    .validate({
      range: guard('grams'),
      kind: 'decimal',
      min: 0.005,
      max: 100,
      message: 'Mean weight wanted in grams; empty: what the usual days give.',
    })
    .validateDays(guard('due'), 'Day the fish are fetched.')
    .validate({ range: guard('price'), kind: 'decimal', min: 0, max: 1e9, message: 'Price of one fish.' })
    .validate({
      range: orders.own('breeding', 'cancelled'),
      kind: 'list',
      items: ['yes', 'no'],
      message: 'yes or no; empty is no.',
    });
  sheet.merge(
    `B${orders.last + 2}:R${orders.last + 2}`,
    `Odds and verdicts are those of the day of planning: ${Object.values(VERDICT_LOOKS)
      .filter(({ from }) => from > 0)
      .map(({ shape, word, from }) => `${shape} ${word} from ${Math.round(from * 100)} %`)
      .join(', ')}. Promise the first number, hope for the second.`,
    'quiet',
  );
  return sheet.build();
}

/** What each order was when it was planned; says as soon as it no longer is. */
export function promisesSheet(pages: LivingPages): SheetModel {
  const { orders, promises, shares } = pages.tables;
  const sheet = pages.sheet('promises', 'What was planned of each order', 'Workings: nothing to type.', {
    widths: [2, ...promises.widths],
    tab: '6B5B95',
    freeze: { rows: HEAD, columns: 2 },
  });
  promises.headings(sheet, 44);
  // Found by key: lines of Orders may be sorted or taken out by hand.
  pages.book.orders.forEach((order, i) => {
    const row = promises.first + i;
    const plan = planOf(pages, order);
    const here = (key: keyof typeof promises.letters): string => promises.here(key, row);
    const now = (key: keyof typeof orders.letters): string => orders.lookup(key, here('line'));
    const of = `(${shares.range('order')}=${here('order')})`;
    promises.line(sheet, row, {
      order: order.name,
      line: `=IFERROR(MATCH(${here('order')},${orders.range('order')},0),0)`,
      product: order.product,
      number: order.number,
      grams: maybe(order.grams),
      due: order.due,
      planned: maybe(plan && expectedWhenPlanned(pages, plan)),
      ready: `=SUMPRODUCT(MAX(${of}*${shares.range('latestStrip')}))`,
      heavy: `=SUMPRODUCT(MAX(${of}*${shares.range('heavyOn')}))`,
      lightest: `=SUMPRODUCT(MIN((${shares.range('order')}<>${here('order')})*1000000+${shares.range('gramsThen')}))`,
      changed:
        `=IF(${here('line')}=0,"plan again",IF(OR(${now('cancelled')}="yes",AND(${now('number')}>0,N(${now('delivered')})>=${now('number')})),"",IF(ISERROR(${here('ready')}),"not calculated here",IF(${now('due')}<{today},"its day is past",IF(AND(${here('ready')}>0,${now('due')}<${here('ready')}),"too late",IF(OR(${now('product')}<>${here('product')},${now('number')}>${here('number')},${now('due')}<>${here('due')},${now('grams')}<>${here('grams')}),"plan again",IF(AND(${now('grams')}>0,${here('ready')}>0,${isTooLight(here('lightest'), now('grams'))}),"too light, plan again",IF(${areFewer(now('expected'), here('planned'))},"fewer fish, plan again",""))))))))`.replaceAll(
          '{today}',
          pages.fx('{today}'),
        ),
    });
  });
  return sheet.build();
}

/** Fish of an order's shares, as many as are owed, and those handed over: what its line showed that day. */
function expectedWhenPlanned(pages: LivingPages, plan: OrderPlan): number {
  const fish = pages.rows.shares
    .filter(({ order }) => order === plan.order.name)
    .reduce((sum, share) => sum + (pages.share(share)?.number('fishThen') ?? 0), 0);
  return plan.delivered + Math.min(fish, Math.max(0, plan.order.number - plan.delivered));
}
