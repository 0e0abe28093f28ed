import { absoluteArea } from '../../../sheet/formula/address';
import type { SheetBuilder } from '../../../sheet/workbook/build';
import { styled } from '../../../sheet/workbook/build';
import type { SheetModel } from '../../../sheet/workbook/model';
import { MONEY, WHOLE } from '../columns';
import type { LivingPages } from '../context';
import { HEAD } from '../layout';
import { LATER, shoppingTable, untilWeek } from './shopping';

const FIRST = HEAD + 1;
/** Lines of the ledger that print, for writing by hand. */
const PRINTED_LINES = 8;

/** Labels of the odds of money, by which they are read back. */
export const ODDS = {
  gain: 'Seasons with a profit',
  solvent: 'Seasons in which money never runs out',
} as const;

/** What drawn seasons leave over: the plan’s own figure above is that of its fish all coming through. */
export const PROFITS = [
  ['Profit of a poor season', 'p10'],
  ['Profit of a middling season', 'p50'],
  ['Profit of a good season', 'p90'],
] as const;

/** Cells other sheets read, by name. Native sums: the costs hang on two rounds of SPAWN answers already. */
function results(pages: LivingPages, sheet: SheetBuilder): void {
  const { fx, tables: t } = pages;
  const { odds } = pages.plan;
  sheet.row(`B${HEAD}`, ['The season', ''], 'heading').row(`E${HEAD}`, ['To come', '', ''], 'heading');
  const lines: readonly (readonly [string, string, string, string])[] = [
    [
      'received',
      'Paid and received so far',
      `=SUM(${t.booked.own('amount')})+SUM(${t.log.range('paid')})`,
      MONEY,
    ],
    ['toCome', 'Sales to come', `=SUM(${t.shares.range('money')})`, MONEY],
    ['cost', 'Costs to come', `=SUM(G${FIRST}:G${FIRST + 6})`, MONEY],
    ['profit', 'Profit, if all fish come', '={received}+{toCome}-{cost}', MONEY],
    ['sales', 'Sales in all', `={toCome}+SUM(${t.log.range('paid')})`, MONEY],
    [
      'sold',
      'Fish sold and to sell',
      `=SUM(${t.shares.range('handOver')})+SUMIFS(${t.log.range('number')},${t.log.range('what')},"sold")`,
      WHOLE,
    ],
    ['perFish', 'Cost of a fish', '=IF({sold}>0,({sales}-{profit})/{sold},"")', '#,##0.0000'],
    ['least', 'Least money left in any week', `=MIN({atHand},${t.cash.own('left')})`, MONEY],
    ['lastDue', 'Last sale', `=MAX(${t.orders.range('due')})`, 'd mmm yy'],
    ['rentPaid', 'Lines that paid this month’s rent', rentPaid(pages), '0'],
  ];
  lines.forEach(([key, label, formula, format], i) => {
    sheet
      .put(`B${FIRST + i}`, label, 'label')
      .put(`C${FIRST + i}`, styled(fx(formula), 'result', { format }));
    pages.define(key, sheet.ref(`C${FIRST + i}`));
  });
  const costs: readonly (readonly [string, string])[] = [
    ['Hormone', '={bought_hormone}*{hormonePerMillilitre}'],
    ['Cysts', '={bought_cysts}*{cystsPerKilogram}'],
    ['Dry feed', '={bought_feed}*{feedPerKilogram}'],
    ['Batches: wages, males used up', `=SUM(${t.cash.own('runs')})`],
    ['Water and power of vats', `=SUM(${t.cash.own('vats')})`],
    ['Rent, wages and wear', `=SUM(${t.cash.own('rent')})`],
  ];
  costs.forEach(([label, formula], i) => {
    sheet
      .merge(`E${FIRST + i}:F${FIRST + i}`, label, 'label')
      .put(`G${FIRST + i}`, styled(fx(formula), 'cell', { format: MONEY }));
  });
  const { profit } = odds ?? {};
  if (profit)
    PROFITS.forEach(([label, of], i) =>
      sheet
        .merge(`E${FIRST + 9 + i}:F${FIRST + 9 + i}`, label, 'label')
        .put(`G${FIRST + 9 + i}`, styled(profit[of], 'cell', { format: MONEY })),
    );
  if (odds)
    sheet
      .merge(`E${FIRST + 7}:F${FIRST + 7}`, ODDS.gain, 'label')
      .put(`G${FIRST + 7}`, styled(odds.gain, 'cell', { format: '0%' }))
      .merge(`E${FIRST + 8}:F${FIRST + 8}`, ODDS.solvent, 'label')
      .put(`G${FIRST + 8}`, styled(odds.solvent, 'cell', { format: '0%' }))
      // Its words take two lines.
      .height(FIRST + 8, 28);
}

/** First days of months, and the day of planning, that lie before a day: rent is paid on them. */
const rentDaysBefore = (until: string): string => {
  const month = (day: string): string => `(YEAR(${day})*12+MONTH(${day}))`;
  const last = `MIN(${until}-1,{lastDue})`;
  return `IF(${last}>={plannedOn},IF({rentPaid}>0,0,1)+${month(last)}-${month('{plannedOn}')},0)`;
};

/** Lines of the money that came and went which pay the rent of the month of planning. */
function rentPaid({ tables: { booked } }: LivingPages): string {
  const [what, date] = [booked.own('what'), booked.own('date')];
  // A French book has its own word here, and the one beyond it.
  const isRent = `(${what}>="rent")*(${what}<"renu")`;
  const next = 'DATE(YEAR({plannedOn}),MONTH({plannedOn})+1,1)';
  return `=SUMPRODUCT(${isRent}*ISNUMBER(${date})*(${date}>={plannedOn}-DAY({plannedOn})+1)*(${date}<${next}))`;
}

function cashTable(pages: LivingPages, sheet: SheetBuilder): void {
  const { fx, tables: t } = pages;
  const { cash } = t;
  sheet.put(`B${cash.head - 1}`, 'Money left, week by week', 'section');
  cash.headings(sheet, 30);
  for (let i = 0; i < cash.lines; i++) {
    const row = cash.first + i;
    const here = (key: keyof typeof cash.letters): string => cash.here(key, row);
    const above = (key: keyof typeof cash.letters): string =>
      `${cash.letters[key]}$${cash.head}:${cash.letters[key]}${row - 1}`;
    const flow = (key: keyof typeof cash.letters, sum: (until: string) => string): string =>
      fx(untilWeek(sum, here('until'), above(key)));
    // Planned, or injected and not yet stripped.
    const ahead = (sum: string, until: string): string =>
      ['"planned"', `"fixed",${t.workings.range('strip')},">="&{plannedOn}`]
        .map((state) => `${sum}${t.workings.range('strip')},${until},${t.workings.range('isLost')},${state})`)
        .join('+');
    // Of a stay under way only the days from the planning on are still to be paid.
    const within = (until: string): string =>
      `${t.stays.range('to')},${until},${t.stays.range('to')},">="&{plannedOn}`;
    const begun = (sign: '<' | '>='): string => `,${t.stays.range('from')},"${sign}"&{plannedOn}`;
    const vatDays = (until: string): string =>
      `SUMIFS(${t.stays.range('to')},${within(until)})-SUMIFS(${t.stays.range('from')},${within(until)}${begun('>=')})-{plannedOn}*COUNTIFS(${within(until)}${begun('<')})`;
    const batches = (until: string): string =>
      `({perRun}*(${ahead('COUNTIFS(', until)})+IF({malesSurvive}="yes",0,{male}*(${ahead(`SUMIFS(${t.workings.range('males')},`, until)})))`;
    cash.line(sheet, row, {
      week: i === 0 ? pages.weeks.from : `=${cash.here('until', row - 1)}`,
      until: i === cash.lines - 1 ? LATER : `=${here('week')}+7`,
      booked: flow(
        'booked',
        (until) =>
          `(SUMIFS(${absoluteArea(t.booked.own('amount'))},${absoluteArea(t.booked.own('date'))},${until})+SUMIFS(${t.log.range('paid')},${t.log.range('at')},${until}))`,
      ),
      sales: flow('sales', (until) => `SUMIFS(${t.shares.range('money')},${t.shares.range('on')},${until})`),
      goods: `=${t.shopping.there('cost', t.shopping.first + i)}`,
      runs: flow('runs', batches),
      vats: flow('vats', (until) => `{perVatDay}*(${vatDays(until)})`),
      rent: fx(`={perMonth}*${rentDaysBefore(here('until'))}-SUM(${above('rent')})`),
      left: fx(
        `={atHand}+SUM(${cash.letters.booked}$${cash.first}:${cash.letters.sales}${row})-SUM(${cash.letters.goods}$${cash.first}:${cash.letters.rent}${row})`,
      ),
    });
  }
  sheet.when({ range: cash.own('left'), formula: `=${cash.here('left', cash.first)}<0`, style: 'bad' });
  pages.define('cashLeft', sheet.ref(cash.own('left')));
  pages.define('cashWeeks', sheet.ref(cash.own('week')));
  pages.define('cashEnd', sheet.ref(`${cash.letters.left}${cash.last}`));
  if (cash.lines > 1)
    sheet.chart({
      kind: 'line',
      title: 'Money left by week',
      categories: sheet.ref(cash.own('week')),
      categoryFormat: 'd mmm',
      valueFormat: WHOLE,
      yTitle: 'money',
      series: [{ name: 'left', values: sheet.ref(cash.own('left')) }],
      from: `L${HEAD}`,
      to: `S${HEAD + 16}`,
    });
}

const RENT_RULE =
  'Paid and received, as it happens. A line that begins with “rent” pays the rent of its month';

/** Money as it really came and went; planning again keeps every line. */
function bookedTable(pages: LivingPages, sheet: SheetBuilder): void {
  const { booked } = pages.tables;
  sheet.put(`B${booked.head - 1}`, RENT_RULE, 'section');
  booked.headings(sheet);
  for (let i = 0; i < booked.lines; i++) {
    const entry = pages.book.booked[i];
    booked.line(
      sheet,
      booked.first + i,
      entry
        ? {
            date: entry.date,
            amount: entry.amount,
            what: entry.what,
            ...(entry.batch === undefined ? {} : { batch: entry.batch }),
            ...(entry.order === undefined ? {} : { order: entry.order }),
          }
        : {},
    );
  }
  sheet.validateDays(booked.own('date'), 'Day of the money.').validate({
    range: booked.own('amount'),
    kind: 'decimal',
    min: -1e12,
    max: 1e12,
    message: 'What was paid is below 0, what was received above. Money for fish goes into the log on Counts.',
  });
}

/** What has come and gone, what is to come, and the money left week by week. */
export function moneySheet(pages: LivingPages): SheetModel {
  const { cash, booked } = pages.tables;
  const sheet = pages.sheet(
    'money',
    'Shopping and money',
    'To come: from orders, batches, feed and prices (Setup). What really came and went stands below. Any one currency.',
    {
      widths: [2, ...cash.widths, 2],
      tab: '0B4F2A',
      print: {
        landscape: false,
        // A season of half a year and less stands on one page.
        onePage: pages.weeks.count <= 30,
        area: `A1:${cash.right}${booked.first + PRINTED_LINES}`,
      },
    },
  );
  results(pages, sheet);
  shoppingTable(pages, sheet);
  cashTable(pages, sheet);
  bookedTable(pages, sheet);
  return sheet.build();
}
