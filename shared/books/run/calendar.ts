import { heightFor, styled } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import type { Book } from './context';
import { WHOLE } from './context';

const HEAD = 4;

/** What to do on which day at which hour, in order; printed and ticked off. */
export function calendarSheet(book: Book): SheetModel {
  const { fx, plan } = book;
  const sheet = book.sheet('Calendar', {
    widths: [2, 9, 15, 8, 7, 48, 11, 13, 9, 50],
    tab: 'C8742A',
    freeze: { rows: HEAD, columns: 0 },
    print: { landscape: true, titleRows: [HEAD, HEAD] },
  });
  sheet.put('B1', fx('={hatchery}&": what to do, by day and hour"'), 'title').height(1, 26);
  sheet.put(
    'B2',
    'Times follow the temperature on Start. "Day" counts from the day of stripping. ' +
      '"night" is between 20:00 and 6:00.',
    'subtitle',
  );
  sheet.row(
    `B${HEAD}`,
    ['Done', 'Date', 'Hour', 'Day', 'What to do', 'How much', '', 'Light', 'Remember'],
    'heading',
  );
  plan.tasks.forEach((task, i) => {
    const row = HEAD + 1 + i;
    sheet
      .row(`B${row}`, [
        styled({}, 'blank'),
        styled(fx(task.at), 'cell', { format: 'ddd d mmm yy' }),
        styled(`=C${row}`, 'result', { format: 'hh:mm' }),
        styled(fx(`=INT(C${row})-INT({stripAt})`), 'cell', { format: '+0;-0;0' }),
        styled(task.what, 'text'),
        task.amount === undefined
          ? styled('', 'cell')
          : styled(fx(task.amount), 'result', { format: task.format ?? WHOLE }),
        styled(task.unit ?? '', 'text'),
        styled(`=IF(OR(MOD(C${row},1)<6/24,MOD(C${row},1)>=20/24),"night","")`, 'text'),
        styled(task.remember, 'text'),
      ])
      .height(row, heightFor([task.what, 48], [task.remember, 50]));
  });
  const last = HEAD + plan.tasks.length;
  sheet.validate({
    range: `B${HEAD + 1}:B${last}`,
    kind: 'list',
    items: ['done', 'late', 'left out'],
    message: 'Pick what became of it.',
  });
  sheet.when({ range: `B${HEAD + 1}:J${last}`, formula: `=$B${HEAD + 1}="done"`, style: 'quiet' });
  sheet.when({ range: `B${HEAD + 1}:B${last}`, formula: `=$B${HEAD + 1}="late"`, style: 'bad' });
  sheet.when({ range: `D${HEAD + 1}:D${last}`, formula: `=$I${HEAD + 1}="night"`, style: 'warning' });
  return sheet.build();
}
