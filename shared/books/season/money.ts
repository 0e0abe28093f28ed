import { styled } from '../../sheet/workbook/build';
import type { SheetBuilder } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import { ASSUMPTIONS } from '../../families/assumptions';
import type { AssumptionKey } from '../../families/assumptions';
import { CASH, FISH, ORDERS, RUNS, SHOPPING, STAYS } from './columns';
import type { Pages } from './context';
import { FIRST, HEAD, MONEY, WHOLE } from './context';
import { weeksOf } from './shopping';

const C = CASH.letters;

/** Cells other sheets read, by name. Native sums: the costs hang on two rounds of SPAWN answers already. */
function results(pages: Pages, sheet: SheetBuilder): void {
  const { plan, fx } = pages;
  const [orders, runs, stays] = [plan.orders.length, plan.runs.length, plan.occupancy.length];
  const [planned, number] = [ORDERS.range('planned', orders), ORDERS.range('number', orders)];
  sheet.row(`B${HEAD}`, ['The season', ''], 'heading').row(`E${HEAD}`, ['Costs', '', ''], 'heading');
  const lines: readonly (readonly [string, string, string, string])[] = [
    ['sales', 'Sales', `=SUM(${ORDERS.range('sales', orders)})`, MONEY],
    ['cost', 'Costs', `=SUM(G${FIRST}:G${FIRST + 6})`, MONEY],
    ['profit', 'Profit', '={sales}-{cost}', MONEY],
    ['margin', 'Profit of sales', '=IF({sales}>0,{profit}/{sales},"")', '0.0%'],
    [
      'sold',
      'Fish sold',
      `=SUMPRODUCT((${planned}<${number})*${planned}+(${planned}>=${number})*${number})`,
      WHOLE,
    ],
    ['perFish', 'Cost of a fish: break-even price', '=IF({sold}>0,{cost}/{sold},"")', '#,##0.0000'],
    ['meanPrice', 'Mean price of a fish', '=IF({sold}>0,{sales}/{sold},"")', '#,##0.0000'],
    [
      'breakEven',
      'Fish to sell to break even',
      '=IF(AND({sold}>0,{sales}>{cost}-{rent}),{rent}/(({sales}-({cost}-{rent}))/{sold}),"none")',
      WHOLE,
    ],
  ];
  lines.forEach(([key, label, formula, format], i) => {
    sheet
      .put(`B${FIRST + i}`, label, 'label')
      .put(`C${FIRST + i}`, styled(fx(formula), 'result', { format }));
    pages.define(key, sheet.ref(`C${FIRST + i}`));
  });
  const days = stays > 0 ? `SUM(${STAYS.range('days', stays)})` : '0';
  const males = runs > 0 ? `IF({malesSurvive}="yes",0,SUM(${FISH.range('males', runs)}))` : '0';
  const costs: readonly (readonly [string, string])[] = [
    ['Hormone', '={bought_hormone}*{hormonePerMillilitre}'],
    ['Cysts', '={bought_cysts}*{cystsPerKilogram}'],
    ['Dry feed', '={bought_feed}*{feedPerKilogram}'],
    ['Wages and other costs of runs', `=${runs}*{perRun}`],
    ['Males used up', `=${males}*{male}`],
    ['Water and power of vats', `=${days}*{perVatDay}`],
    ['Rent, wages and wear', '={rent}'],
  ];
  costs.forEach(([label, formula], i) => {
    sheet
      .merge(`E${FIRST + i}:F${FIRST + i}`, label, 'label')
      .put(`G${FIRST + i}`, styled(fx(formula), 'cell', { format: MONEY }));
  });
  sheet.chart({
    kind: 'column',
    title: 'What the season costs',
    categories: sheet.ref(`E${FIRST}:E${FIRST + 6}`),
    valueFormat: WHOLE,
    series: [{ name: 'cost', values: sheet.ref(`G${FIRST}:G${FIRST + 6}`) }],
    from: `J${HEAD}`,
    to: `Q${HEAD + 13}`,
  });
}

/** First days of months, and the day of planning, that fall into a week: rent is paid on them. */
const rentDays = (week: string): string => {
  const month = (day: string): string => `(YEAR(${day})*12+MONTH(${day}))`;
  return `IF(AND({plannedOn}>=${week},{plannedOn}<${week}+7),1,0)+MAX(0,${month(`MIN(${week}+6,{lastDue})`)}-${month(`MAX(${week}-1,{plannedOn})`)})`;
};

function cashTable(pages: Pages, sheet: SheetBuilder, head: number): void {
  const { plan, fx } = pages;
  const [weeks, orders, runs, stays] = [
    weeksOf(pages),
    plan.orders.length,
    plan.runs.length,
    plan.occupancy.length,
  ];
  sheet
    .row(
      `B${head}`,
      (['week', 'sales', 'goods', 'runs', 'vats', 'rent', 'left'] as const).map((key) => CASH.titleOf(key)),
      'heading',
    )
    .height(head, 30);
  for (let i = 0; i < weeks; i++) {
    const row = head + 1 + i;
    const week = `${C.week}${row}`;
    const within = (by: string): string => `${by},">="&${week},${by},"<"&${week}+7`;
    const males = `IF({malesSurvive}="yes",0,{male}*SUMIFS(${FISH.range('males', runs)},${within(RUNS.range('strip', runs))}))`;
    CASH.row(sheet, row, {
      week: `=${SHOPPING.cell('week', FIRST + i)}`,
      sales: `=SUMIFS(${ORDERS.range('sales', orders)},${within(ORDERS.range('due', orders))})`,
      goods: `=${SHOPPING.cell('cost', FIRST + i)}`,
      runs: runs > 0 ? fx(`={perRun}*COUNTIFS(${within(RUNS.range('strip', runs))})+${males}`) : 0,
      vats:
        stays > 0
          ? fx(`={perVatDay}*SUMIFS(${STAYS.range('days', stays)},${within(STAYS.range('to', stays))})`)
          : 0,
      rent: fx(`={perMonth}*(${rentDays(week)})`),
      left: `=${i === 0 ? fx('{atHand}') : `${C.left}${row - 1}`}+${C.sales}${row}-SUM(${C.goods}${row}:${C.rent}${row})`,
    });
  }
  const [first, last] = [head + 1, head + weeks];
  sheet.when({ range: `${C.left}${first}:${C.left}${last}`, formula: `=$${C.left}${first}<0`, style: 'bad' });
  sheet
    .put('B13', 'Least money left in any week', 'label')
    .put('C13', styled(fx(`=MIN({atHand},${C.left}${first}:${C.left}${last})`), 'result', { format: MONEY }));
  sheet
    .put('B14', 'Rent, wages and wear in all', 'label')
    .put('C14', styled(`=SUM(${C.rent}${first}:${C.rent}${last})`, 'cell', { format: MONEY }));
  sheet
    .put('B15', 'Last sale', 'label')
    .put('C15', styled(`=MAX(${ORDERS.range('due', orders)})`, 'cell', { format: 'ddd d mmm yy' }));
  for (const [key, row] of [
    ['least', 13],
    ['rent', 14],
    ['lastDue', 15],
  ] as const)
    pages.define(key, sheet.ref(`C${row}`));
  pages.define('cashLeft', sheet.ref(`${C.left}${first}:${C.left}${last}`));
  pages.define('cashWeeks', sheet.ref(`${C.week}${first}:${C.week}${last}`));
  if (weeks > 1)
    sheet.chart({
      kind: 'line',
      title: 'Money left by week',
      categories: sheet.ref(`${C.week}${first}:${C.week}${last}`),
      categoryFormat: 'd mmm',
      valueFormat: WHOLE,
      yTitle: 'money',
      series: [{ name: 'left', values: sheet.ref(`${C.left}${first}:${C.left}${last}`) }],
      from: `J${head}`,
      to: `Q${head + 16}`,
    });
}

const CHAIN: readonly AssumptionKey[] = [
  'eggShare',
  'eggsPerGram',
  'hatch',
  'yolkSurvival',
  'frySurvival',
  'nurserySurvival',
];
const PRICE_SWING = 0.2;

/**
 * Profit when one figure moves to its poor and its good end: live, so that a farm's own figures narrow it.
 */
function swings(pages: Pages, sheet: SheetBuilder, head: number): void {
  const { plan, fx } = pages;
  const orders = plan.orders.length;
  const [planned, number, price, product] = (['planned', 'number', 'price', 'product'] as const).map((key) =>
    ORDERS.range(key, orders),
  ) as [string, string, string, string];
  const sales = (factor: string): string =>
    `SUMPRODUCT((${planned}*${factor}<${number})*${planned}*${factor}*${price}+(${planned}*${factor}>=${number})*${number}*${price})`;
  const factorOf = (key: AssumptionKey, end: 'MIN' | 'MAX'): string => {
    const f = `${end}(1,{${key}_${end === 'MIN' ? 'low' : 'high'}}/{${key}})`;
    // Only fingerlings are nursed: fry keep their number.
    return key === 'nurserySurvival' ? `(1+(${product}="fingerlings")*(${f}-1))` : f;
  };
  const feed = '({bought_cysts}*{cystsPerKilogram}+{bought_feed}*{feedPerKilogram})';
  sheet
    .row(`B${head}`, ['What the profit hangs on', 'At its poor end', 'At its good end', 'Swing'], 'heading')
    .height(head, 30);
  const lines: readonly (readonly [string, string, string])[] = [
    ...CHAIN.map(
      (key) =>
        [
          ASSUMPTIONS[key].label,
          `=${sales(factorOf(key, 'MIN'))}-{cost}`,
          `=${sales(factorOf(key, 'MAX'))}-{cost}`,
        ] as const,
    ),
    [
      'Price of fish, a fifth each way',
      `={sales}*${1 - PRICE_SWING}-{cost}`,
      `={sales}*${1 + PRICE_SWING}-{cost}`,
    ],
    [
      'Price of cysts and feed, a fifth each way',
      `={profit}-${PRICE_SWING}*${feed}`,
      `={profit}+${PRICE_SWING}*${feed}`,
    ],
  ];
  lines.forEach(([label, low, high], i) => {
    const row = head + 1 + i;
    sheet.row(`B${row}`, [
      styled(label, 'label'),
      styled(fx(low), 'cell', { format: WHOLE }),
      styled(fx(high), 'cell', { format: WHOLE }),
      styled(`=ABS(D${row}-C${row})`, 'result', { format: WHOLE }),
    ]);
  });
  const last = head + lines.length;
  sheet
    .merge(
      `B${last + 1}:H${last + 1}`,
      'One figure at a time; its ends stand on Figures. Fish beyond an order find no ' +
        'buyer, so more of them earns nothing by itself.',
      'quiet',
    )
    .height(last + 1, 30);
  sheet.chart({
    kind: 'column',
    title: 'What the profit hangs on',
    categories: sheet.ref(`B${head + 1}:B${last}`),
    valueFormat: WHOLE,
    yTitle: 'profit',
    series: [
      { name: 'at its poor end', values: sheet.ref(`C${head + 1}:C${last}`) },
      { name: 'at its good end', values: sheet.ref(`D${head + 1}:D${last}`) },
    ],
    from: `J${head}`,
    to: `Q${head + 16}`,
  });
}

/** Sales, costs, cash by week, and what the profit hangs on. */
export function moneySheet(pages: Pages): SheetModel {
  const head = HEAD + 14;
  const below = Math.max(head + weeksOf(pages), head + 17) + 2;
  const sheet = pages.sheet('money', 'Money', 'Follows orders, runs, feed and prices. Any one currency.', {
    widths: [2, 38, 16, 16, 16, 14, 16, 16, 2],
    tab: '0B4F2A',
    print: { breaksAbove: [head, below] },
  });
  results(pages, sheet);
  cashTable(pages, sheet, head);
  swings(pages, sheet, below);
  return sheet.build();
}
