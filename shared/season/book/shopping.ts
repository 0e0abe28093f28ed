import { styled } from '../../workbook/build';
import type { SheetModel } from '../../workbook/model';
import { DAY, HEAD, MONEY, lastRow, sheetOf } from './context';
import type { Season } from './context';

/** What to order in which week, so that it is there in time. */
export function shoppingSheet(season: Season): SheetModel {
  const { purchases } = season.plan;
  const sheet = sheetOf(season, 'Shopping', 'Shopping by week', 'Order in the week given; delivery times are counted in. Amounts are for the runs as planned.', {
    widths: [2, 10, 15, 14, 11, 7, 13, 15], tab: '6B5B95', freeze: { rows: HEAD, columns: 0 }, print: { titleRows: [HEAD, HEAD] },
  });
  sheet.row(`B${HEAD}`, ['Done', 'Week from', 'What', 'Amount', '', 'Cost', 'First used'], 'heading');
  purchases.forEach(({ week, item, amount, unit, cost, usedFrom }, i) => {
    sheet.row(`B${HEAD + 1 + i}`, [
      styled({}, 'blank'), styled(week, 'cell', { format: DAY }), styled(item, 'label'), styled(amount, 'result', { format: '#,##0.000' }), styled(unit, 'unit'),
      styled(cost, 'cell', { format: MONEY }), styled(usedFrom, 'cell', { format: DAY }),
    ]);
  });
  const last = lastRow(purchases.length);
  sheet.validate({ range: `B${HEAD + 1}:B${last}`, kind: 'list', items: ['ordered', 'here'], message: 'Pick what became of it.' });
  sheet.when({ range: `B${HEAD + 1}:H${last}`, formula: `=$B${HEAD + 1}="here"`, style: 'quiet' });
  const totals = [...new Set(purchases.map(({ item }) => item))];
  sheet.put(`D${last + 2}`, 'In all', 'section').put(`E${last + 2}`, '', 'section').put(`F${last + 2}`, '', 'section').put(`G${last + 2}`, '', 'section');
  totals.forEach((item, i) => {
    const r = last + 3 + i;
    const sum = (column: string): string => `=SUMIFS(${column}$${HEAD + 1}:${column}$${last},$D$${HEAD + 1}:$D$${last},$D${r})`;
    sheet.row(`D${r}`, [
      styled(item, 'label'), styled(sum('E'), 'result', { format: '#,##0.000' }), styled(purchases.find((p) => p.item === item)?.unit ?? '', 'unit'), styled(sum('G'), 'result', { format: MONEY }),
    ]);
  });
  return sheet.build();
}
