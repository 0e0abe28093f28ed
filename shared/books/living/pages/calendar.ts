import { heightFor } from '../../../sheet/workbook/build';
import type { SheetModel } from '../../../sheet/workbook/model';
import { isoDateOfSerial } from '../../../units/dates';
import { TASKS } from '../../../run/lines';
import type { RunTask } from '../../../run/lines';
import type { LivingPages } from '../context';
import { HEAD } from '../layout';

/** Days of the calendar that print, from the first task on; planning again moves them on. */
const PRINTED = 28;

/** What to do on which day at which hour, in order; ticked off here or in the pane. */
export function calendarSheet(pages: LivingPages): SheetModel {
  const { calendar, tasks, orders } = pages.tables;
  const { plan, rows } = pages;
  const until = Math.max(plan.plannedOn, rows.tasks[0]?.when ?? 0) + PRINTED;
  const printed = rows.tasks.findLastIndex(({ when }) => when < until);
  const past = rows.tasks.findIndex(({ when }) => when >= plan.plannedOn - 1);
  const sheet = pages.sheet(
    'calendar',
    'Calendar',
    `In the order of the plan of ${isoDateOfSerial(plan.plannedOn)}; the hours follow the water and the strip on Batches. Four weeks print, from yesterday or the first task on.`,
    {
      widths: [2, ...calendar.widths],
      tab: 'C8742A',
      freeze: { rows: HEAD, columns: 0 },
      print: {
        landscape: false,
        titleRows: [HEAD, HEAD],
        // What is past stays on the screen; the page begins yesterday.
        area: `A${past > 0 ? calendar.first + past : 1}:${calendar.right}${Math.max(calendar.first + Math.max(0, past), calendar.first + printed)}`,
      },
    },
  );
  calendar.headings(sheet, 20);
  rows.tasks.forEach(({ what, task, order }, i) => {
    const row = calendar.first + i;
    const of = (key: keyof typeof tasks.letters): string => tasks.there(key, tasks.first + i);
    const { unit = '' } = TASKS[task] as RunTask;
    calendar.line(sheet, row, {
      date: `=INT(${of('when')}+0.5/1440)`,
      hour: `=ROUND(MOD(${of('when')},1)*1440,0)/1440`,
      batch: `=${of('batch')}`,
      what,
      ...(order === ''
        ? {}
        : {
            buyer: `=IF(COUNTIFS(${orders.range('order')},${of('order')})=0,"",${orders.find('buyer', 'order', of('order'))}&"")`,
          }),
      // Whole fish and eggs; small amounts to what a scale shows.
      amount: `=IF(ISNUMBER(${of('amount')}),ROUND(${of('amount')},IF(${of('amount')}>=100,0,2)),"")`,
      unit,
    });
    sheet.height(row, heightFor([what, 62]));
  });
  if (rows.tasks.length === 0) return sheet.put(`C${calendar.first}`, 'No batch, no work.', 'quiet').build();
  const first = calendar.first;
  sheet
    .validate({
      range: calendar.own('done'),
      kind: 'list',
      items: ['done', 'left out'],
      message: 'Pick what became of it.',
    })
    .when({
      range: calendar.own('done', 'by'),
      formula: `=${calendar.here('done', first)}<>""`,
      style: 'quiet',
    })
    .when({
      range: calendar.own('done', 'by'),
      formula: pages.fx(`=${calendar.here('date', first)}={today}`),
      style: 'good',
    });
  return sheet.build();
}
