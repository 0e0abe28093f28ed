import { styled } from '../../../sheet/workbook/build';
import type { SheetModel } from '../../../sheet/workbook/model';
import type { LivingPages } from '../context';
import { HEAD } from '../layout';

interface Check {
  readonly what: string;
  /** What it compares; a check of single lines counts those that break it. */
  readonly left: string;
  readonly right: string;
  readonly format?: string;
}
const MONEY = '#,##0.00';
const AMOUNT = '#,##0.000';

/** Everything in the book that must hold, each with its two sides. */
function checksOf(pages: LivingPages): readonly Check[] {
  const { tables: t } = pages;
  const { days, shares, orders, stays, cash, log, workings: w, promises } = t;
  const none = (what: string, count: string): Check => ({
    what,
    left: `=${count}`,
    right: '=0',
    format: '0',
  });
  const here = '">0"';
  const bad = (range: string, test: string): string => `SUMPRODUCT((${range}${test})*1)`;
  return [
    {
      what: 'Money at the end is money at hand and profit',
      left: '={cashEnd}',
      right: '={atHand}+{profit}',
      format: MONEY,
    },
    {
      what: 'Every sale to come stands in the weeks',
      left: `=SUM(${cash.range('sales')})`,
      right: `=SUM(${shares.range('money')})`,
      format: MONEY,
    },
    {
      what: 'Every payment written down stands in the weeks',
      left: `=SUM(${cash.range('booked')})`,
      right: '={received}',
      format: MONEY,
    },
    {
      what: 'Dry feed by batch is dry feed bought, kg',
      left: `=SUMIFS(${days.range('dry')},${days.range('dryWeek')},${here})/1000`,
      right: '={bought_feed}',
      format: AMOUNT,
    },
    {
      what: 'Cysts by batch are cysts bought, kg',
      left: `=SUMIFS(${days.range('cysts')},${days.range('cystsWeek')},${here})/1000`,
      right: '={bought_cysts}',
      format: AMOUNT,
    },
    {
      what: 'Dry feed by day is dry feed by batch, kg',
      left: '={feedByDay}/1000',
      right: `=SUM(${days.range('dry')})/1000`,
      format: AMOUNT,
    },
    none(
      'Fish ready after they are due',
      `SUMPRODUCT((${shares.range('latestStrip')}>${shares.range('on')})*(${shares.range('handOver')}>0))`,
    ),
    none(
      'Fish that wait longer than they may',
      `SUMPRODUCT((${shares.range('on')}-${shares.range('latestStrip')}>{holdDays}+1)*(${shares.range('handOver')}>0))`,
    ),
    none('Orders whose fish would be too light', bad(promises.range('changed'), '="too light, plan again"')),
    none(
      'Orders that ask for planning again',
      // What was not calculated has no verdict: the sum of days is an error then, and so is this. Orders that
      // came later are those with a number less those with a line here: Gnumeric counts no list of keys.
      `0*SUM(${promises.range('ready')})+SUMPRODUCT((${promises.range('changed')}<>"")*1)+MAX(0,SUMPRODUCT((${orders.range('number')}<>"")*1)-SUMPRODUCT((${promises.range('line')}>0)*1))`,
    ),
    none('Vats taken twice, or not clean in between', bad(stays.range('verdict'), '="CLASH below"')),
    none('Vats with too many fish', bad(stays.range('verdict'), '="too many"')),
    none('Females stripped again before they have rested', restBroken(pages)),
    // A difference first: the local sheet's engine looks a list that SUMIFS made up among other cells.
    none(
      'Batches that give more fish than they have',
      `SUMPRODUCT((SUMIFS(${shares.range('part')},${shares.range('batch')},${w.range('batch')})-1.0001>0)*1)`,
    ),
    none(
      'Orders to which more was handed over than ordered',
      `SUMPRODUCT(ISNUMBER(${orders.range('delivered')})*(${orders.range('delivered')}>${orders.range('number')}))`,
    ),
    none(
      'Lines of the log whose batch is not in the book',
      `SUMPRODUCT((${log.range('batch')}<>"")*(COUNTIFS(${w.range('batch')},${log.range('batch')})-0.5<0))`,
    ),
    none(
      'Lines of the log whose order is not a key on Orders',
      `SUMPRODUCT((${log.range('order')}<>"")*(COUNTIFS(${orders.range('order')},${log.range('order')})-0.5<0))`,
    ),
  ];
}

/** Lines of a female whose batch comes sooner after another of hers than she rests. */
const restBroken = ({ tables: { pairs } }: LivingPages): string => {
  const [female, strip] = [pairs.range('female'), pairs.range('strip')];
  return `SUMPRODUCT((${female}<>"")*COUNTIFS(${female},${female},${strip},"<"&INT(${strip}),${strip},">="&(INT(${strip})-{restDays}+1)))`;
};

/** What must hold in the book, with one light for the first sheet. */
export function checksSheet(pages: LivingPages): SheetModel {
  const checks = checksOf(pages);
  const sheet = pages.sheet(
    'checks',
    'Checks',
    'What must hold in this book, worked out afresh with every change. A line that does not hold says where to look.',
    { widths: [2, 52, 18, 18, 18, 22], tab: '6B5B95', print: { landscape: false, onePage: true } },
  );
  sheet
    .row(`B${HEAD}`, ['What must hold', 'One side', 'The other', 'Difference', 'It'], 'heading')
    .height(HEAD, 20);
  checks.forEach(({ what, left, right, format = '0' }, i) => {
    const row = HEAD + 1 + i;
    sheet.row(`B${row}`, [
      styled(what, 'text'),
      styled(pages.fx(left), 'cell', { format }),
      styled(pages.fx(right), 'cell', { format }),
      styled(`=C${row}-D${row}`, 'cell', { format }),
      styled(
        `=IF(ISERROR(E${row}),"? not calculated here",IF(ABS(E${row})<=0.000001*MAX(1,ABS(C${row})),"● holds","× does not hold"))`,
        'text',
      ),
    ]);
  });
  const [first, last] = [HEAD + 1, HEAD + checks.length];
  sheet
    .put(`B${last + 2}`, 'Lines that do not hold', 'label')
    .put(`C${last + 2}`, styled(`=COUNTIFS(F${first}:F${last},"× does not hold")`, 'result', { format: '0' }))
    .put(`B${last + 3}`, 'Lines that could not be worked out', 'label')
    .put(
      `C${last + 3}`,
      styled(`=COUNTIFS(F${first}:F${last},"? not calculated here")`, 'result', { format: '0' }),
    );
  pages.define('broken', sheet.ref(`C${last + 2}`));
  pages.define('unknown', sheet.ref(`C${last + 3}`));
  sheet
    .when({ range: `F${first}:F${last}`, formula: `=$F${first}="● holds"`, style: 'good' })
    .when({ range: `F${first}:F${last}`, formula: `=$F${first}="× does not hold"`, style: 'bad' })
    .when({ range: `F${first}:F${last}`, formula: `=$F${first}="? not calculated here"`, style: 'warning' });
  return sheet.build();
}
