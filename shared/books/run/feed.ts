import { styled } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import type { FeedRow } from '../../run/compute';
import type { Book } from './context';
import { WHOLE } from './context';

const HEAD = 4;
const FIRST = HEAD + 1;
/** More days than this and the weeks and pictures go to a page of their own. */
const MOST_ON_A_PAGE = 16;
const NOTHING = '#,##0.0;-#,##0.0;"–"';

type Sheet = ReturnType<Book['sheet']>;

/** Live food and dry feed day by day, the totals to buy week by week, and two pictures. */
export function feedSheet(book: Book): SheetModel {
  const { plan } = book;
  const rows = plan.feed;
  const last = HEAD + rows.length;
  const sheet = book.sheet('Feed', {
    widths: [2, 7, 15, 12, 13, 11, 9, 11, 13, 10, 12, 11],
    tab: 'C8742A',
    freeze: { rows: HEAD, columns: 3 },
    print: {
      landscape: true,
      titleRows: [HEAD, HEAD],
      ...(rows.length > MOST_ON_A_PAGE ? { breaksAbove: [last + 3] } : { onePage: true }),
    },
  });
  sheet.put('B1', 'Live food and feed by day', 'title').height(1, 26);
  sheet.put(
    'B2',
    'Weigh and count every week: type the count on Chain and your own growth on ' +
      'Assumptions. Cysts are set to hatch the day before.',
    'subtitle',
  );
  sheet
    .row(
      `B${HEAD}`,
      [
        'Day',
        'Date',
        'Food',
        'Fish expected',
        'Mean weight, g',
        'Live part',
        'Nauplii a larva',
        'Cysts, g',
        'Dry, of body weight',
        'Dry feed, g',
        'Dry, g a meal',
      ],
      'heading',
    )
    .height(HEAD, 44);
  rows.forEach((row, i) => dayRow(book, sheet, row, FIRST + i));
  spills(book, sheet, rows);
  const total = last + 1;
  sheet.row(`B${total}`, ['Total', '', '', '', '', '', ''], 'heading');
  sheet
    .put(`I${total}`, styled(`=SUM(I${FIRST}:I${last})`, 'result', { format: WHOLE }))
    .put(`J${total}`, 'g', 'unit');
  sheet
    .put(`K${total}`, styled(`=SUM(K${FIRST}:K${last})/1000`, 'result', { format: '#,##0.00' }))
    .put(`L${total}`, 'kg', 'unit');
  book.define('cystsFirst', sheet.ref(`I${FIRST}`));
  book.define('cystsTotal', sheet.ref(`I${total}`));
  book.define('feedTotal', sheet.ref(`K${total}`));
  const below = weeks(sheet, rows.length, last, total + 2);
  charts(sheet, last, below + 1);
  return sheet.build();
}

function dayRow({ fx }: Book, sheet: Sheet, row: FeedRow, at: number): void {
  const isNursing = row.stage === 'nursing';
  const fish = isNursing
    ? '={fishWeaned}*{nurserySurvival}^((B{row}-{rearingDays})/{nurseryDays})'
    : '={larvaeFeeding}*{frySurvival}^(B{row}/{rearingDays})';
  const weight = isNursing
    ? '={startWeight}*EXP(({fryGrowth}*{rearingDays}+{nurseryGrowth}*(B{row}-{rearingDays}))/100)'
    : '={startWeight}*EXP({fryGrowth}*B{row}/100)';
  const own = (formula: string): string => fx(formula.replaceAll('{row}', String(at)));
  sheet.row(`B${at}`, [
    styled(row.index, 'cell'),
    styled(own('={feedFrom}+B{row}'), 'cell', { format: 'ddd d mmm yy' }),
    styled(row.stage, 'text'),
    styled(own(fish), 'cell', { format: WHOLE }),
    styled(own(weight), 'cell', { format: '0.000' }),
    styled(row.live, 'cell', { format: '0%' }),
    styled(own('={naupliiPerLarva}*G{row}'), 'cell', { format: WHOLE }),
    styled(0, 'result', { format: NOTHING }),
    styled(own(`={${isNursing ? 'nurseryRation' : 'fryRation'}}*(1-G{row})`), 'cell', { format: '0.0%' }),
    styled(0, 'result', { format: NOTHING }),
    styled(own('=K{row}/{meals}'), 'cell', { format: NOTHING }),
  ]);
}

/** One call answers a whole column: a call per day would make the sheet slow in Excel. */
function spills(book: Book, sheet: Sheet, rows: readonly FeedRow[]): void {
  const live = rows.filter((row) => row.live > 0).length;
  const firstDry = rows.findIndex((row) => row.live < 1);
  const place = (column: string, from: number, count: number, formula: string): void => {
    if (count < 1) return;
    for (let i = 0; i < count; i++)
      sheet.put(`${column}${from + i}`, styled({}, 'result', { format: NOTHING }));
    sheet.put(
      `${column}${from}`,
      styled(book.fx(formula), 'result', {
        format: NOTHING,
        ...(count > 1 ? { spill: [count, 1] as const } : {}),
      }),
    );
  };
  place(
    'I',
    FIRST,
    live,
    `=SPAWN.CYSTS.NEEDED(E${FIRST}:E${HEAD + live},H${FIRST}:H${HEAD + live},{naupliiPerGram},{naupliiHarvest})`,
  );
  const dry = FIRST + firstDry;
  const last = HEAD + rows.length;
  if (firstDry >= 0)
    place(
      'K',
      dry,
      rows.length - firstDry,
      `=SPAWN.FEED.DAILY(E${dry}:E${last},F${dry}:F${last},J${dry}:J${last})`,
    );
}

function weeks(sheet: Sheet, days: number, last: number, from: number): number {
  const count = Math.ceil(days / 7);
  sheet.put(`B${from}`, 'By week', 'section');
  for (const column of 'CDEFGHIJKL') sheet.put(`${column}${from}`, '', 'section');
  sheet.row(`B${from + 1}`, ['Week', 'From', 'Cysts, g', 'Dry feed, kg'], 'heading');
  for (let week = 0; week < count; week++) {
    const row = from + 2 + week;
    const sum = (column: string): string =>
      `SUMIFS(${column}$${FIRST}:${column}$${last},$B$${FIRST}:$B$${last},">="&${7 * week},$B$${FIRST}:$B$${last},"<"&${7 * (week + 1)})`;
    sheet.row(`B${row}`, [
      styled(week + 1, 'cell'),
      styled(`=C${FIRST + 7 * week}`, 'cell', { format: 'd mmm yyyy' }),
      styled(`=${sum('I')}`, 'cell', { format: NOTHING }),
      styled(`=${sum('K')}/1000`, 'cell', { format: '#,##0.00' }),
    ]);
  }
  return from + 2 + count;
}

function charts(sheet: Sheet, last: number, from: number): void {
  const column = (letter: string): string => sheet.ref(`${letter}${FIRST}:${letter}${last}`);
  sheet.chart({
    kind: 'line',
    title: 'Fish expected',
    categories: column('C'),
    categoryFormat: 'd mmm',
    series: [{ name: 'fish', values: column('E') }],
    yTitle: 'number',
    valueFormat: WHOLE,
    from: `B${from}`,
    to: `F${from + 15}`,
  });
  sheet.chart({
    kind: 'line',
    title: 'Food a day',
    categories: column('C'),
    categoryFormat: 'd mmm',
    series: [
      { name: 'cysts, g', values: column('I') },
      { name: 'dry feed, g', values: column('K') },
    ],
    yTitle: 'g a day',
    valueFormat: WHOLE,
    from: `G${from}`,
    to: `L${from + 15}`,
  });
}
