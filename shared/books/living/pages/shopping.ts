import { styled } from '../../../sheet/workbook/build';
import type { SheetBuilder } from '../../../sheet/workbook/build';
import type { LivingPages } from '../context';

/** The last line of weeks holds everything later: nothing falls off the end. */
export const LATER = 1_000_000;
/** What falls before the end of a line's week and is in no line above: rows alike, and the whole is kept. */
export const untilWeek = (sum: (until: string) => string, until: string, above: string): string =>
  `=${sum(`"<"&${until}`)}-SUM(${above})`;

/** What to order in which week, so that it is there when it is used. */
export function shoppingTable(pages: LivingPages, sheet: SheetBuilder): void {
  const { shopping: s, workings: w, days } = pages.tables;
  sheet.put(
    `B${s.head - 1}`,
    'Shopping: what to order in which week. Goods of batches under way that were due before count as ordered',
    'section',
  );
  s.headings(sheet);
  for (let i = 0; i < s.lines; i++) {
    const row = s.first + i;
    const here = (key: keyof typeof s.letters): string => s.here(key, row);
    const above = (key: keyof typeof s.letters): string =>
      `${s.letters[key]}$${s.head}:${s.letters[key]}${row - 1}`;
    const sum =
      (table: string, by: string, factor = '') =>
      (until: string): string =>
        `SUMIFS(${table},${by},${until},${by},">0")${factor}`;
    const goods = (key: 'hormone' | 'cysts' | 'feed', table: string, by: string, factor = ''): string =>
      untilWeek(sum(table, by, factor), here('until'), above(key));
    s.line(sheet, row, {
      week: i === 0 ? pages.weeks.from : `=${s.here('until', row - 1)}`,
      until: i === s.lines - 1 ? LATER : `=${here('week')}+7`,
      hormone: goods('hormone', w.range('hormone'), w.range('hormoneWeek')),
      cysts: goods('cysts', days.range('cysts'), days.range('cystsWeek'), '/1000'),
      feed: goods('feed', days.range('dry'), days.range('dryWeek'), '/1000'),
      cost: pages.fx(
        `=${here('hormone')}*{hormonePerMillilitre}+${here('cysts')}*{cystsPerKilogram}+${here('feed')}*{feedPerKilogram}`,
      ),
    });
  }
  const total = (key: keyof typeof s.letters, format: string) =>
    styled(`=SUM(${s.own(key)})`, 'result', { format });
  sheet.row(`B${s.last + 1}`, [
    styled('In all', 'heading'),
    styled('', 'heading'),
    total('hormone', '#,##0.00'),
    total('cysts', '#,##0.000'),
    total('feed', '#,##0.00'),
    total('cost', '#,##0.00'),
  ]);
  for (const key of ['hormone', 'cysts', 'feed', 'cost'] as const)
    pages.define(`bought_${key}`, sheet.ref(`${s.letters[key]}${s.last + 1}`));
  sheet
    .validate({
      range: s.own('done'),
      kind: 'list',
      items: ['ordered', 'here'],
      message: 'Pick what became of it.',
    })
    .when({
      range: s.own('week', 'done'),
      formula: `=${s.here('done', s.first)}="here"`,
      style: 'quiet',
    })
    .when({
      range: s.own('week'),
      formula: pages.fx(
        `=AND(${s.here('cost', s.first)}+${s.here('cysts', s.first)}+${s.here('hormone', s.first)}+${s.here('feed', s.first)}>0,${s.here('done', s.first)}="",${s.here('week', s.first)}<={today})`,
      ),
      style: 'warning',
    });
}
