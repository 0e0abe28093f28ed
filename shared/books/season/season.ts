import { CAUTIONS } from '../../functions/cautions';
import type { SheetBuilder } from '../../sheet/workbook/build';
import { heightFor, styled } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import { ORDERS } from './columns';
import type { Pages } from './context';
import { DAY, FIRST, HEAD, MONEY, TITLES, WHOLE, seasonName } from './context';

const LAST = 'H';
const WIDTH = 132;
/** More orders than this and the page points to Orders. */
const MOST_ORDERS = 12;

function boxes(pages: Pages, sheet: SheetBuilder): void {
  const orders = pages.plan.orders.length;
  const list: readonly (readonly [string, string, string])[] = [
    ['FISH ORDERED', `=SUM(${ORDERS.range('number', orders)})`, WHOLE],
    ['FISH PLANNED', `=SUM(${ORDERS.range('planned', orders)})`, WHOLE],
    ['ORDERS MET', `=COUNTIFS(${ORDERS.range('short', orders)},0)&" of ${orders}"`, '@'],
    ['RUNS', `=${pages.plan.runs.length}`, WHOLE],
    ['SALES', '={sales}', MONEY],
    ['PROFIT', '={profit}', MONEY],
    ['LEAST MONEY LEFT', '={least}', MONEY],
  ];
  list.forEach(([label, formula, format], i) => {
    const letter = 'BCDEFGH'.charAt(i);
    sheet
      .put(`${letter}${HEAD}`, label, 'heading')
      .put(`${letter}${FIRST}`, styled(pages.fx(formula), 'big', { format }));
  });
  sheet.height(HEAD, 30).height(FIRST, 28);
}

function ordersBlock({ plan }: Pages, sheet: SheetBuilder, from: number): number {
  sheet
    .row(
      `B${from}`,
      ['Order', 'Due', 'Fish ordered', 'Planned', 'Verdict', 'Met in', 'Half of seasons bring at least'],
      'heading',
    )
    .height(from, 30);
  const shown = plan.orders.slice(0, MOST_ORDERS);
  shown.forEach((_, i) => {
    const row = from + 1 + i;
    const of = (key: keyof typeof ORDERS.letters): string => `=${ORDERS.cell(key, FIRST + i)}`;
    sheet.row(`B${row}`, [
      styled(of('order'), 'label'),
      styled(of('due'), 'cell', { format: DAY }),
      styled(of('number'), 'cell', { format: WHOLE }),
      styled(of('planned'), 'cell', { format: WHOLE }),
      styled(of('verdict'), 'text'),
      styled(of('certainty'), 'cell', { format: '0%' }),
      styled(of('p50'), 'cell', { format: WHOLE }),
    ]);
  });
  const last = from + shown.length;
  sheet
    .when({ range: `F${from + 1}:F${last}`, formula: `=$F${from + 1}="can be met"`, style: 'good' })
    .when({ range: `F${from + 1}:F${last}`, formula: `=$F${from + 1}="SHORT"`, style: 'bad' });
  if (plan.orders.length > MOST_ORDERS)
    sheet.merge(
      `B${last + 1}:${LAST}${last + 1}`,
      `and ${plan.orders.length - MOST_ORDERS} more on ${TITLES.orders}`,
      'quiet',
    );
  return last + 2;
}

/**
 * The season on one page, for whoever put money in: what is promised, how surely, what is earned, what stands
 * in the way.
 */
export function seasonSheet(pages: Pages, cash: readonly [weeks: string, left: string]): SheetModel {
  const { plan } = pages;
  const sheet = pages.sheet(
    'season',
    pages.fx('={hatchery}&": the season"'),
    'Orders, money and odds at a glance; the other sheets say how. Odds are those of the day of planning.',
    { widths: [2, 26, 18, 18, 18, 18, 18, 20], tab: '12454F', print: { onePage: true } },
  );
  boxes(pages, sheet);
  let row = ordersBlock(pages, sheet, HEAD + 3);
  const orders = plan.orders.length;
  sheet.chart({
    kind: 'column',
    title: 'Ordered, planned, and what half of seasons bring',
    categories: ORDERS.range('order', orders),
    valueFormat: WHOLE,
    yTitle: 'fish',
    series: (['number', 'planned', 'p50'] as const).map((key) => ({
      name: { number: 'ordered', planned: 'planned', p50: 'half of seasons' }[key],
      values: ORDERS.range(key, orders),
    })),
    from: `B${row}`,
    to: `D${row + 15}`,
  });
  sheet.chart({
    kind: 'line',
    title: 'Money left by week',
    categories: cash[0],
    categoryFormat: 'd mmm',
    valueFormat: WHOLE,
    yTitle: 'money',
    series: [{ name: 'left', values: cash[1] }],
    from: `E${row}`,
    to: `H${row + 15}`,
  });
  row += 17;
  const block = (title: string, lines: readonly (readonly [string, 'bad' | 'quiet' | 'warning'])[]): void => {
    for (const letter of 'BCDEFGH') sheet.put(`${letter}${row}`, letter === 'B' ? title : '', 'section');
    row++;
    for (const [text, style] of lines) {
      sheet
        .merge(`B${row}:${LAST}${row}`, text, style)
        .height(row, heightFor([text, style === 'quiet' ? WIDTH : WIDTH - 16]));
      row++;
    }
    row++;
  };
  block(
    'Said on the day of planning',
    plan.findings.length > 0
      ? plan.findings.map(({ message, kind }) => [message, kind === 'cannot' ? 'bad' : 'quiet'] as const)
      : [['Every order can be met.', 'quiet']],
  );
  block('Take care', [[CAUTIONS['HORMONE'] ?? '', 'warning']]);
  return sheet.build();
}

export const cashOf = (pages: Pages): readonly [string, string] => {
  const refersTo = (key: string): string =>
    pages.names.find(({ name }) => name === seasonName(key))?.refersTo ?? '';
  return [refersTo('cashWeeks'), refersTo('cashLeft')];
};
