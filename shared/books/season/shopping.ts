import { mondayOf } from '../../units/dates';
import { styled } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import { FEED_RUNS, FISH, SHOPPING } from './columns';
import type { Pages } from './context';
import { FIRST, HEAD, MONEY, lastRow } from './context';
import { feedLines } from './feed';

const C = SHOPPING.letters;
/**
 * Weeks from the day of planning to the last sale: all that can be ordered or paid falls into one of them.
 */
export const weeksOf = ({ book }: Pages): number =>
  (mondayOf(Math.max(...book.orders.map(({ due }) => due))) - mondayOf(book.plannedOn)) / 7 + 1;

/** What to order in which week so that it is there in time; follows the runs and the feed. */
export function shoppingSheet(pages: Pages): SheetModel {
  const { book, plan, fx } = pages;
  const [weeks, runs, feed] = [weeksOf(pages), plan.runs.length, feedLines(pages).length];
  const sheet = pages.sheet(
    'shopping',
    'Shopping by week',
    'Order in the week given: delivery times from Setup are counted in, so each thing is ' +
      'there when it is used.',
    {
      widths: [2, ...SHOPPING.widths],
      tab: '6B5B95',
      freeze: { rows: HEAD, columns: 2 },
      print: { titleRows: [HEAD, HEAD] },
    },
  );
  SHOPPING.headings(sheet);
  for (let i = 0; i < weeks; i++) {
    const row = FIRST + i;
    const week = `${C.week}${row}`;
    const sum = (table: string, by: string): string => `SUMIFS(${table},${by},${week})`;
    SHOPPING.row(sheet, row, {
      week: i === 0 ? fx('=INT({plannedOn})-MOD(INT({plannedOn})-2,7)') : `=${C.week}${row - 1}+7`,
      hormone: runs > 0 ? `=${sum(FISH.range('hormone', runs), FISH.range('hormoneWeek', runs))}` : 0,
      cysts:
        feed > 0 ? `=${sum(FEED_RUNS.range('cysts', feed), FEED_RUNS.range('cystsWeek', feed))}/1000` : 0,
      feed: feed > 0 ? `=${sum(FEED_RUNS.range('dry', feed), FEED_RUNS.range('dryWeek', feed))}/1000` : 0,
      cost: fx(
        `=${C.hormone}${row}*{hormonePerMillilitre}+${C.cysts}${row}*{cystsPerKilogram}+${C.feed}${row}*{feedPerKilogram}`,
      ),
    });
  }
  const last = lastRow(weeks);
  const total = (key: 'hormone' | 'cysts' | 'feed' | 'cost', format: string) =>
    styled(`=SUM(${SHOPPING.own(key, weeks)})`, 'result', { format });
  sheet.row(`B${last + 1}`, [
    styled('In all', 'heading'),
    total('hormone', '#,##0.00'),
    total('cysts', '#,##0.000'),
    total('feed', '#,##0.00'),
    total('cost', MONEY),
  ]);
  for (const key of ['hormone', 'cysts', 'feed', 'cost'] as const)
    pages.define(`bought_${key}`, sheet.ref(`${C[key]}${last + 1}`));
  sheet.validate({
    range: SHOPPING.own('done', weeks),
    kind: 'list',
    items: ['ordered', 'here'],
    message: 'Pick what became of it.',
  });
  sheet.when({
    range: `${C.week}${FIRST}:${C.done}${last}`,
    formula: `=$${C.done}${FIRST}="here"`,
    style: 'quiet',
  });
  sheet.when({
    range: `${C.week}${FIRST}:${C.week}${last}`,
    formula: `=AND($${C.hormone}${FIRST}+$${C.cysts}${FIRST}+$${C.feed}${FIRST}>0,$${C.done}${FIRST}="")`,
    style: 'warning',
  });
  if (book.orders.length > 0 && weeks > 1)
    sheet.chart({
      kind: 'column',
      title: 'Spent on goods by week',
      categories: sheet.ref(SHOPPING.own('week', weeks)),
      categoryFormat: 'd mmm',
      valueFormat: '#,##0',
      yTitle: 'money',
      series: [{ name: 'cost', values: sheet.ref(SHOPPING.own('cost', weeks)) }],
      from: `I${FIRST}`,
      to: `O${FIRST + 16}`,
    });
  return sheet.build();
}
