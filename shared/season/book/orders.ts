import { styled } from '../../workbook/build';
import type { SheetModel } from '../../workbook/model';
import { DAY, HEAD, MONEY, WHOLE, lastRow, sheetOf } from './context';
import type { Season } from './context';
import { RUN_COLUMNS } from './runs';

/** Columns other sheets read. */
export const ORDER_COLUMNS = { name: 'B', number: 'D', due: 'E', price: 'F', planned: 'G', sales: 'P' } as const;

/** What is promised, what the runs bring, how surely. */
export function ordersSheet(season: Season): SheetModel {
  const { orders, runs } = season.plan;
  const sheet = sheetOf(season, 'Orders', 'Orders', 'Numbers, dates and prices are yours to change; fish planned follow the counts typed on Runs. Odds are those of the day the plan was made.', {
    widths: [2, 24, 12, 11, 13, 9, 11, 11, 16, 9, 11, 11, 11, 10, 12, 12], tab: '12454F', freeze: { rows: HEAD, columns: 2 },
  });
  sheet.row(`B${HEAD}`, ['Order', 'Product', 'Fish', 'Due', 'Price', 'Planned', 'Short', 'Verdict', 'Females', 'One season in ten below', 'Half below', 'Nine in ten below', 'Met in', 'Females for 90 %', 'Sales'], 'heading').height(HEAD, 44);
  const last = lastRow(runs.length);
  const runsRange = (column: string): string => `Runs!$${column}$${HEAD + 1}:$${column}$${last}`;
  orders.forEach(({ order, females, odds, femalesForNinety }, i) => {
    const r = HEAD + 1 + i;
    const underway = season.book.underway.reduce((sum, run) => sum + (run.order === order.name ? run.fish : 0), 0);
    const odd = (n: number | undefined, format: string) => (n === undefined ? styled('', 'cell') : Number.isFinite(n) ? styled(n, 'cell', { format }) : styled('none', 'cell'));
    sheet.row(`B${r}`, [
      styled(order.name, 'label'), styled(order.product, 'cell'), styled(order.number, 'input', { format: WHOLE }), styled(order.due, 'input', { format: DAY }),
      order.price === undefined ? styled({}, 'input', { format: MONEY }) : styled(order.price, 'input', { format: MONEY }),
      styled(`=SUMIFS(${runsRange(RUN_COLUMNS.now)},${runsRange(RUN_COLUMNS.order)},$B${r})${underway > 0 ? `+${underway}` : ''}`, 'result', { format: WHOLE }),
      styled(`=MAX(0,D${r}-ROUND(G${r},0))`, 'cell', { format: WHOLE }), styled(`=IF(H${r}=0,"can be met","SHORT")`, 'cell'), styled(females, 'cell', { format: WHOLE }),
      odd(odds?.p10, WHOLE), odd(odds?.p50, WHOLE), odd(odds?.p90, WHOLE), odd(odds?.certainty, '0%'), odd(femalesForNinety, WHOLE),
      styled(`=MIN(D${r},G${r})*F${r}`, 'result', { format: MONEY }),
    ]);
  });
  const end = lastRow(orders.length);
  sheet.when({ range: `I${HEAD + 1}:I${end}`, formula: `=$H${HEAD + 1}=0`, style: 'good' }).when({ range: `I${HEAD + 1}:I${end}`, formula: `=$H${HEAD + 1}>0`, style: 'bad' });
  sheet.validate({ range: `D${HEAD + 1}:D${end}`, kind: 'whole', min: 1, max: 5_000_000, message: 'Fish ordered, a whole number.' });
  sheet.validate({ range: `E${HEAD + 1}:E${end}`, kind: 'date', min: 36526, max: 73050, message: 'Day the fish are fetched.' });
  sheet.validate({ range: `F${HEAD + 1}:F${end}`, kind: 'decimal', min: 0, max: 1e9, message: 'Price of one fish.' });
  sheet.chart({
    kind: 'column', title: 'Ordered and planned', categories: sheet.ref(`B${HEAD + 1}:B${end}`), valueFormat: WHOLE, yTitle: 'fish',
    series: [{ name: 'ordered', values: sheet.ref(`D${HEAD + 1}:D${end}`) }, { name: 'planned', values: sheet.ref(`G${HEAD + 1}:G${end}`) }], from: `B${end + 2}`, to: `I${end + 18}`,
  });
  return sheet.build();
}
