import { styled } from '../../workbook/build';
import type { SheetBuilder } from '../../workbook/build';
import type { SheetModel } from '../../workbook/model';
import { DAY, HEAD, MONEY, WHOLE, lastRow, sheetOf } from './context';
import type { Season } from './context';
import { ORDER_COLUMNS } from './orders';

/** Cells other sheets read. */
export const MONEY_CELLS = { sales: 'C5', cost: 'C6', profit: 'C7', perFish: 'C10', least: 'C12' } as const;

function results(sheet: SheetBuilder, { plan }: Season): void {
  const last = lastRow(plan.orders.length);
  const column = (letter: string): string => `Orders!$${letter}$${HEAD + 1}:$${letter}$${last}`;
  const { costs } = plan.money;
  const costLast = HEAD + Math.max(1, costs.length);
  sheet.row(`B${HEAD}`, ['The season', ''], 'heading').row(`E${HEAD}`, ['Costs', ''], 'heading');
  const lines: readonly (readonly [string, string, string])[] = [
    ['Sales', `=SUM(${column(ORDER_COLUMNS.sales)})`, MONEY], ['Costs', `=SUM(F${HEAD + 1}:F${costLast})`, MONEY], ['Profit', '=C5-C6', MONEY],
    ['Profit of sales', '=IF(C5>0,SPAWN.MARGIN.SHARE(C5,C6),"")', '0.0%'], ['Fish sold', `=SUMPRODUCT((${column(ORDER_COLUMNS.planned)}<${column(ORDER_COLUMNS.number)})*${column(ORDER_COLUMNS.planned)}+(${column(ORDER_COLUMNS.planned)}>=${column(ORDER_COLUMNS.number)})*${column(ORDER_COLUMNS.number)})`, WHOLE],
    ['Cost of a fish: break-even price', '=IF(C9>0,SPAWN.COST.PERFISH(C6,C9),"")', '#,##0.0000'], ['Mean price of a fish', '=IF(C9>0,C5/C9,"")', '#,##0.0000'],
  ];
  lines.forEach(([label, formula, format], i) => sheet.put(`B${HEAD + 1 + i}`, label, 'label').put(`C${HEAD + 1 + i}`, styled(formula, 'result', { format })));
  if (costs.length === 0) sheet.put(`E${HEAD + 1}`, 'none written down', 'label').put(`F${HEAD + 1}`, styled(0, 'cell', { format: MONEY }));
  costs.forEach(({ what, amount }, i) => sheet.put(`E${HEAD + 1 + i}`, what, 'label').put(`F${HEAD + 1 + i}`, styled(amount, 'cell', { format: MONEY })));
}

function cashTable(sheet: SheetBuilder, { book, plan }: Season, head: number): number {
  const last = head + Math.max(1, plan.cash.length);
  const orders = lastRow(plan.orders.length);
  const column = (letter: string): string => `Orders!$${letter}$${HEAD + 1}:$${letter}$${orders}`;
  sheet.row(`B${head}`, ['Week from', 'In', 'Out', 'Left'], 'heading');
  plan.cash.forEach(({ begins, moneyOut }, i) => {
    const r = head + 1 + i;
    sheet.row(`B${r}`, [
      styled(begins, 'cell', { format: DAY }), styled(`=SUMIFS(${column(ORDER_COLUMNS.sales)},${column(ORDER_COLUMNS.due)},">="&B${r},${column(ORDER_COLUMNS.due)},"<"&B${r}+7)`, 'cell', { format: MONEY }),
      styled(moneyOut, 'cell', { format: MONEY }), styled(i === 0 ? `=${book.prices.atHand}+C${r}-D${r}` : `=E${r - 1}+C${r}-D${r}`, 'result', { format: MONEY }),
    ]);
  });
  sheet.when({ range: `E${head + 1}:E${last}`, formula: `=$E${head + 1}<0`, style: 'bad' });
  sheet.put('B12', 'Least money left in any week', 'label').put('C12', styled(plan.cash.length > 0 ? `=MIN(${book.prices.atHand},E${head + 1}:E${last})` : book.prices.atHand, 'result', { format: MONEY }));
  if (plan.cash.length > 1) sheet.chart({
    kind: 'line', title: 'Money left by week', categories: sheet.ref(`B${head + 1}:B${last}`), categoryFormat: 'd mmm', valueFormat: WHOLE, yTitle: 'money',
    series: [{ name: 'left', values: sheet.ref(`E${head + 1}:E${last}`) }], from: `H${head}`, to: `N${head + 16}`,
  });
  return last;
}

function swings(sheet: SheetBuilder, { plan }: Season, head: number): void {
  sheet.row(`B${head}`, ['What the profit hangs on', 'At its poor end', 'At its good end', 'Swing'], 'heading');
  plan.money.swings.forEach(({ name, atLow, atHigh, swing }, i) => {
    sheet.row(`B${head + 1 + i}`, [styled(name, 'label'), styled(atLow, 'cell', { format: WHOLE }), styled(atHigh, 'cell', { format: WHOLE }), styled(swing, 'result', { format: WHOLE })]);
  });
  const last = head + Math.max(1, plan.money.swings.length);
  sheet.put(`B${last + 1}`, 'One figure at a time, as planned; ends as published or usual, prices a fifth each way. Fish beyond an order find no buyer.', 'quiet').height(last + 1, 44);
  sheet.chart({
    kind: 'column', title: 'What the profit hangs on', categories: sheet.ref(`B${head + 1}:B${last}`), valueFormat: WHOLE, yTitle: 'profit',
    series: [{ name: 'at its poor end', values: sheet.ref(`C${head + 1}:C${last}`) }, { name: 'at its good end', values: sheet.ref(`D${head + 1}:D${last}`) }], from: `H${head}`, to: `N${head + 16}`,
  });
}

/** Sales, costs, cash by week, and what the profit hangs on. */
export function moneySheet(season: Season): SheetModel {
  const sheet = sheetOf(season, 'Money', 'Money', 'Sales follow Orders; costs are those of the runs as planned. Any one currency.', { widths: [2, 34, 16, 16, 30, 16, 2, 12, 12, 12, 12, 12, 12, 12], tab: '0B4F2A' });
  results(sheet, season);
  const head = HEAD + Math.max(9, season.plan.money.costs.length) + 3;
  const last = cashTable(sheet, season, head);
  swings(sheet, season, Math.max(last, head + 17) + 2);
  return sheet.build();
}
