import type { OrderBook } from '../../../season/book/orderBook';
import type { SheetModel } from '../../../sheet/workbook/model';
import type { LivingPages } from '../context';
import { HEAD } from '../layout';

type Fish = OrderBook['males'][number];
/** What was typed of a fish; open lines hold nothing. */
const typed = (fish: Fish | undefined) => ({
  family: fish?.family ?? {},
  lastUsed: fish?.lastUsed ?? {},
  goneOn: fish?.goneOn ?? {},
});

/** The fish there are, their families, when they were last used, how often the plan uses them. */
export function broodSheet(pages: LivingPages): SheetModel {
  const { females, males, pairs } = pages.tables;
  const { book } = pages;
  const sheet = pages.sheet(
    'brood',
    'Brood fish',
    'One line a fish; open lines are for new ones. Fish of one family are brothers and sisters and are never paired.',
    { widths: [2, ...females.widths], tab: 'C8742A', freeze: { rows: HEAD, columns: 2 } },
  );
  females.headings(sheet);
  for (let i = 0; i < females.lines; i++) {
    const [row, fish] = [females.first + i, book.females[i]];
    const tag = females.here('female', row);
    females.line(sheet, row, {
      female: fish?.tag ?? {},
      kilograms: fish?.kilograms ?? {},
      ...typed(fish),
      batches: `=IF(${tag}="",0,COUNTIFS(${pairs.range('female')},${tag}))`,
    });
  }
  sheet.put(`B${males.head - 1}`, 'Males', 'section');
  males.headings(sheet);
  for (let i = 0; i < males.lines; i++) {
    const [row, fish] = [males.first + i, book.males[i]];
    const tag = males.here('male', row);
    males.line(sheet, row, {
      male: fish?.tag ?? {},
      ...typed(fish),
      batches: `=IF(${tag}="",0,COUNTIFS(${pairs.range('male')},${tag}))`,
    });
  }
  for (const table of [females, males] as const)
    sheet.validateDays((table as typeof females).own('lastUsed', 'goneOn'), 'A day; empty if never.');
  sheet.validate({
    range: females.own('kilograms'),
    kind: 'decimal',
    min: 0.1,
    max: 15,
    message: 'Weight of this female in kg.',
  });
  return sheet.build();
}
