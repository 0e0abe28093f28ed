import { styled } from '../../../sheet/workbook/build';
import type { SheetModel } from '../../../sheet/workbook/model';
import { DAY, WHOLE } from '../columns';
import type { LivingPages } from '../context';
import { HEAD, SPARE } from '../layout';
import { LATER, untilWeek } from './shopping';
import { Table, col } from '../table';

const AMOUNT = '#,##0.0;-#,##0.0;"–"';
const FEED = {
  date: col('Date', 16, 'cell', DAY),
  until: col('before', 14, 'cell', '[>=900000]"later";d mmm yy'),
  fish: col('Fish fed', 12, 'cell', WHOLE),
  set: col('Cysts to set for tomorrow, g', 13, 'result', AMOUNT),
  dry: col('Dry feed, g', 13, 'result', AMOUNT),
  meal: col('Dry feed a meal, g', 12, 'cell', AMOUNT),
} as const;

/** Live food and dry feed of all batches together, day by day; the last line holds everything later. */
export function feedSheet(pages: LivingPages): SheetModel {
  const { days } = pages.tables;
  const dates = pages.rows.batches.flatMap((b) => [b.feedFrom, b.leavesOn]);
  const first = dates.length > 0 ? Math.min(...dates) - 1 - SPARE.days : pages.plan.plannedOn;
  const last = dates.length > 0 ? Math.max(...dates) + SPARE.days : first;
  const table = new Table('Feed by day', FEED, HEAD, last - first + 1);
  const sheet = pages.sheet(
    'feed',
    'Live food and feed by day',
    'Cysts are set to hatch the day before they are fed: the amount stands on the day to set them.',
    { widths: [2, ...table.widths], tab: 'C8742A', freeze: { rows: HEAD, columns: 2 } },
  );
  table.headings(sheet);
  for (let i = 0; i < table.lines; i++) {
    const row = table.first + i;
    const here = (key: keyof typeof FEED): string => table.here(key, row);
    const above = (key: keyof typeof FEED): string =>
      `${table.letters[key]}$${HEAD}:${table.letters[key]}${row - 1}`;
    table.line(sheet, row, {
      date: i === 0 ? first : `=${table.here('until', row - 1)}`,
      until: i === table.lines - 1 ? LATER : `=${here('date')}+1`,
      fish: `=SUMIFS(${days.range('fishNow')},${days.range('date')},${here('date')})`,
      set: `=SUMIFS(${days.range('cysts')},${days.range('date')},${here('until')})`,
      dry: untilWeek(
        (until) => `SUMIFS(${days.range('dry')},${days.range('date')},${until})`,
        here('until'),
        above('dry'),
      ),
      meal: pages.fx(`=${here('dry')}/{meals}`),
    });
  }
  sheet.row(`B${table.last + 1}`, [
    styled('In all', 'heading'),
    styled('', 'heading'),
    styled('', 'heading'),
    styled('', 'heading'),
    styled(`=SUM(${table.own('dry')})`, 'result', { format: AMOUNT }),
  ]);
  pages.define('feedByDay', sheet.ref(`${table.letters.dry}${table.last + 1}`));
  return sheet.build();
}
