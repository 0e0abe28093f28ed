import { isError } from '../../base/values';
import { styled } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import type { Book } from './context';
import { WHOLE } from './context';

const HEAD = 4;
const MOST_ROWS = 60;

/** One line per female: her dose from her weight, and room to write down what happened. */
export function broodSheet(book: Book): SheetModel {
  const { fx, plan } = book;
  const { femalesNeeded } = plan.results;
  const count = Math.min(
    MOST_ROWS,
    Math.max(1, plan.form.females, isError(femalesNeeded) ? 1 : femalesNeeded),
  );
  const first = HEAD + 1;
  const last = HEAD + count;
  const sheet = book.sheet('Brood', {
    widths: [2, 6, 12, 12, 11, 11, 15, 15, 12, 14],
    tab: 'C8742A',
    freeze: { rows: HEAD, columns: 0 },
    print: { landscape: true, titleRows: [HEAD, HEAD] },
  });
  sheet.put('B1', 'Brood fish: weigh, dose, strip', 'title').height(1, 26);
  sheet.put(
    'B2',
    'Type each weight over the mean; the dose follows. A hormone is a medicine: ask a ' +
      'vet, follow the leaflet and local rules.',
    'subtitle',
  );
  sheet
    .row(
      `B${HEAD}`,
      [
        'No.',
        'Tag',
        'Weight, kg',
        'Dose, mL',
        'Use',
        'Injected at',
        'Stripped at',
        'Eggs, g',
        'Alive of 100',
      ],
      'heading',
    )
    .height(HEAD, 18);
  for (let i = 0; i < count; i++) {
    const row = first + i;
    sheet
      .row(`B${row}`, [
        styled(i + 1, 'cell'),
        styled({}, 'blank'),
        styled(plan.form.femaleWeight, 'input', { format: '0.00' }),
        styled({}, 'result', { format: '0.00' }),
        styled(fx(`=IF(B${row}<={femalesNeeded},"inject","reserve")`), 'text'),
        styled({}, 'blank', { format: 'd mmm hh:mm' }),
        styled({}, 'blank', { format: 'd mmm hh:mm' }),
        styled({}, 'blank', { format: '#,##0.0' }),
        styled({}, 'blank', { format: '0' }),
      ])
      .height(row, 18);
  }
  // One cell alone may not be a spilled range: a single female gets a plain formula.
  sheet.put(
    `E${first}`,
    styled(fx(`=SPAWN.HORMONE.VOLUME(D${first}:D${last},{hormoneDose})`), 'result', {
      format: '0.00',
      ...(count > 1 ? { spill: [count, 1] as const } : {}),
    }),
  );
  const total = last + 1;
  sheet.row(`B${total}`, [
    undefined,
    styled('To inject', 'label'),
    styled(`=SUMIFS(D${first}:D${last},F${first}:F${last},"inject")`, 'result', { format: '0.00' }),
    styled(`=SUMIFS(E${first}:E${last},F${first}:F${last},"inject")`, 'result', { format: '0.00' }),
    undefined,
    undefined,
    styled('Eggs, g', 'label'),
    styled(`=SUM(I${first}:I${last})`, 'result', { format: '#,##0.0' }),
  ]);
  sheet.row(`H${total + 1}`, [
    styled('Eggs', 'label'),
    styled(fx(`=I${total}*{eggsPerGram}`), 'result', { format: WHOLE }),
  ]);
  sheet.row(`H${total + 2}`, [
    styled('Eggs wanted', 'label'),
    styled(fx('={eggsNeeded}'), 'cell', { format: WHOLE }),
  ]);
  sheet.validate({
    range: `D${first}:D${last}`,
    kind: 'decimal',
    min: 0.05,
    max: 15,
    message: 'Weight of this female in kg.',
  });
  sheet.validate({
    range: `J${first}:J${last}`,
    kind: 'whole',
    min: 0,
    max: 100,
    message: 'Living eggs of a hundred counted, twelve hours after fertilising.',
  });
  sheet.when({ range: `B${first}:J${last}`, formula: `=$F${first}="reserve"`, style: 'quiet' });
  return sheet.build();
}
