import { SheetBuilder, styled } from '../../sheet/workbook/build';
import type { CellModel, ChartModel, WorkbookModel } from '../../sheet/workbook/model';
import type { SheetOptions } from './ratesSheet';
import type { Trends, TrendView } from '../../learn/trends';
import { LEAST_RUNS } from '../../families/learning/kernels/controlChart';

const SHARE = '0.0%';
const HEAD = 5;
/** Room for the charts beside the tables: rows a chart covers. */
const CHART_ROWS = 17;
const CHARTS_A_PAGE = 3;
const WIDTHS = [2, 20, 9, 9, 9, 10, 10, 10, 24, 3, 22, 8, 10, 10, 10, 10, 3, 11, 11, 11, 11, 11, 11, 11];

/** Chart sheets grow without end; the latest runs are the ones to look at. */
const MOST_POINTS = 400;

/** Names come from records: one that begins with = is no formula. */
const asText = (value: string): CellModel => ({ value });

export const trendVerdict = (trends: Trends): string => {
  const { chart, points } = trends;
  if (!chart.hasLimits)
    return `${points.length} runs: too few for limits, which need ${LEAST_RUNS} (20 is better).`;
  const odd = chart.points.filter(({ signal }) => signal).length;
  const wider =
    chart.sigmaZ > 1.5
      ? ` Runs differ ${chart.sigmaZ.toPrecision(2)} times more than chance of the counting alone would make them, as living things do; the limits allow for it.`
      : '';
  const few = points.length < 20 ? ' Provisional: fewer than 20 runs.' : '';
  return (
    (odd === 0
      ? 'No run stands out from the usual spread.'
      : `${odd} of ${points.length} runs stand out: look for what was different.`) +
    wider +
    few
  );
};

function overTime(sheet: SheetBuilder, trends: Trends): ChartModel | undefined {
  const { points, chart } = trends;
  const from = Math.max(0, points.length - MOST_POINTS);
  sheet
    .row(
      `B${HEAD}`,
      ['Run', 'Counted', 'Of', 'Share', 'Centre', 'Lower limit', 'Upper limit', 'Signal'],
      'heading',
    )
    .height(HEAD, 30);
  const limit = (x: number | undefined) =>
    x === undefined || Number.isNaN(x) ? styled('', 'cell') : styled(x, 'cell', { format: SHARE });
  points.slice(from).forEach((point, i) => {
    const at = chart.points[from + i];
    sheet.row(`B${HEAD + 1 + i}`, [
      styled(asText(point.name), 'text'),
      styled(point.k, 'cell', { format: '#,##0' }),
      styled(point.n, 'cell', { format: '#,##0' }),
      styled(at?.share ?? '', 'cell', { format: SHARE }),
      limit(chart.centre),
      limit(at?.low),
      limit(at?.high),
      styled(at?.signal ?? '', at?.signal ? 'warning' : 'text'),
    ]);
  });
  const last = HEAD + points.length - from;
  if (points.length === 0) return undefined;
  const ref = (column: string): string => sheet.ref(`${column}${HEAD + 1}:${column}${last}`);
  const limits = chart.hasLimits
    ? [
        { name: 'Lower limit', values: ref('G'), color: 'C8742A' },
        { name: 'Upper limit', values: ref('H'), color: 'C8742A' },
      ]
    : [];
  return {
    kind: 'line',
    title: `${trends.label}, run by run`,
    categories: ref('B'),
    series: [
      { name: 'Share', values: ref('E') },
      { name: 'Centre', values: ref('F'), color: '7FA6A9' },
      ...limits,
    ],
    valueFormat: '0%',
    valueRange: [0, 1],
    from: `R${HEAD}`,
    to: `X${HEAD + CHART_ROWS}`,
  };
}

/** One table of groups from a row on; gives the row below it and its chart. */
function groupTable(
  sheet: SheetBuilder,
  view: TrendView,
  label: string,
  row: number,
  chartRow: number,
): { readonly next: number; readonly chart: ChartModel | undefined } {
  sheet.put(`K${row}`, `${label}, ${view.title}`, 'section');
  if (view.groups.length === 0) {
    sheet.put(`K${row + 1}`, `No record says it.`, 'quiet');
    return { next: row + 3, chart: undefined };
  }
  sheet.row(
    `K${row + 1}`,
    [
      view.by === 'temperature'
        ? 'Water'
        : view.by === 'month'
          ? 'Month'
          : view.by === 'female'
            ? 'Female'
            : 'Male',
      'Runs',
      'Share',
      'Expected',
      'Low',
      'High',
    ],
    'heading',
  );
  view.groups.forEach((g, i) =>
    sheet.row(`K${row + 2 + i}`, [
      styled(asText(g.name), 'text'),
      styled(g.runs, 'cell', { format: '0' }),
      ...[g.share, g.expected, g.low, g.high].map((x) => styled(x, 'cell', { format: SHARE })),
    ]),
  );
  const last = row + 1 + view.groups.length;
  const ref = (column: string): string => sheet.ref(`${column}${row + 2}:${column}${last}`);
  if (view.without > 0)
    sheet.put(
      `K${last + 1}`,
      `${view.without} more ${view.without === 1 ? 'run does' : 'runs do'} not say it.`,
      'quiet',
    );
  return {
    next: last + 3,
    chart: {
      kind: 'column',
      title: `${label}, ${view.title}`,
      categories: ref('K'),
      series: [
        { name: 'Counted', values: ref('M'), color: '7FA6A9' },
        { name: 'Expected', values: ref('N'), color: '12454F' },
      ],
      valueFormat: '0%',
      valueRange: [0, 1],
      from: `R${chartRow}`,
      to: `X${chartRow + CHART_ROWS}`,
    },
  };
}

/** Tables and charts of the trends; the pane draws the same charts from the same cells. */
export function trendsWorkbook(
  trends: Trends,
  { sheet: title = 'Trends', hatchery = 'My hatchery' }: SheetOptions = {},
): WorkbookModel {
  const sheet = new SheetBuilder(title, {
    widths: WIDTHS,
    tab: 'C8742A',
    freeze: { rows: HEAD, columns: 0 },
    hasGridlines: false,
    print: {
      landscape: true,
      titleRows: [HEAD, HEAD],
      footer: `${hatchery} · trends`,
      breaksAbove: [HEAD + CHARTS_A_PAGE * (CHART_ROWS + 2)],
    },
  });
  sheet.put('B1', `${trends.label}: what moves it`, 'title').height(1, 26);
  sheet.put('B2', trendVerdict(trends), 'subtitle');
  sheet
    .merge(
      'B3:P3',
      'Expected: the mean of further runs with that female, water or month, low and high ' +
        'its interval; it leans on the farm while there are few runs. A difference is not ' +
        'yet a cause: the best female may have had the best month.',
      'quiet',
    )
    .height(3, 30);
  const charts = [overTime(sheet, trends)];
  let row = HEAD;
  for (const view of trends.views) {
    const done = groupTable(sheet, view, trends.label, row, HEAD + (CHART_ROWS + 2) * charts.length);
    charts.push(done.chart);
    row = done.next;
  }
  for (const chart of charts) if (chart) sheet.chart(chart);
  return { title: `${hatchery}: trends`, sheets: [sheet.build()], names: [] };
}
