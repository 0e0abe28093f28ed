import { styled } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import type { AssumptionKey } from '../../families/assumptions';
import type { ResultKey } from '../../run/results';
import type { Book } from './context';
import { WHOLE } from './context';

const FIRST = 5;
const NAMED: readonly (ResultKey | undefined)[] = [undefined, 'larvaeHatched', 'larvaeFeeding', 'fishWeaned'];

export interface ChainPlaces {
  readonly limits: (key: AssumptionKey) => { readonly low: string; readonly high: string };
}

/**
 * From the fish wanted back to the eggs, and forward again as planned, as counted, and at the poor and the
 * good end of every step.
 */
export function chainSheet(book: Book, { limits }: ChainPlaces): SheetModel {
  const { fx, plan } = book;
  const sheet = book.sheet('Chain', {
    widths: [2, 36, 13, 14, 14, 14, 15, 15],
    tab: '7FA6A9',
    freeze: { rows: 4, columns: 2 },
    print: { landscape: true, onePage: true },
  });
  sheet.put('B1', 'From the fish wanted back to the eggs', 'title').height(1, 26);
  sheet.put(
    'B2',
    'Every number is the one below divided by what comes through. Type a count when you ' +
      'have one: the rest follows it.',
    'subtitle',
  );
  sheet
    .row(
      'B4',
      [
        'Step',
        'Comes through',
        'Planned',
        'Counted',
        'Now expected',
        'If every step is poor',
        'If every step is good',
      ],
      'heading',
    )
    .height(4, 30);
  const last = FIRST + plan.steps.length;
  const through = `C${FIRST}:C${last - 1}`;
  plan.steps.forEach((step, i) => {
    const row = FIRST + i;
    const { low, high } = limits(step.survival);
    const before = row - 1;
    const previous = plan.steps[i - 1];
    const ends = previous ? limits(previous.survival) : { low, high };
    sheet.row(`B${row}`, [
      styled(step.label, 'label'),
      styled(fx(`={${step.survival}}`), 'cell', { format: '0%' }),
      styled(i === 0 ? fx(`=SPAWN.CHAIN.START({wanted},${through})`) : `=D${before}*C${before}`, 'result', {
        format: WHOLE,
      }),
      styled({}, 'blank', { format: WHOLE }),
      styled(
        i === 0
          ? `=IF(ISNUMBER(E${row}),E${row},D${row})`
          : `=IF(ISNUMBER(E${row}),E${row},F${before}*C${before})`,
        'cell',
        { format: WHOLE },
      ),
      styled(i === 0 ? `=D${row}` : `=G${before}*MIN(C${before},${ends.low})`, 'cell', { format: WHOLE }),
      styled(i === 0 ? `=D${row}` : `=H${before}*MAX(C${before},${ends.high})`, 'cell', { format: WHOLE }),
    ]);
    const key = NAMED[i];
    if (key) book.define(key, sheet.ref(`F${row}`));
  });
  book.define('eggsNeeded', sheet.ref(`D${FIRST}`));
  const ends = limits('gradingShare');
  sheet.row(`B${last}`, [
    styled(`${plan.form.product === 'fry' ? 'Fry' : 'Fingerlings'} counted out to the buyer`, 'label'),
    styled('', 'cell'),
    styled(`=D${last - 1}*C${last - 1}`, 'result', { format: WHOLE }),
    styled({}, 'blank', { format: WHOLE }),
    styled(`=IF(ISNUMBER(E${last}),E${last},F${last - 1}*C${last - 1})`, 'result', { format: WHOLE }),
    styled(`=G${last - 1}*MIN(C${last - 1},${ends.low})`, 'result', { format: WHOLE }),
    styled(`=H${last - 1}*MAX(C${last - 1},${ends.high})`, 'result', { format: WHOLE }),
  ]);
  sheet.validate({
    range: `E${FIRST}:E${last}`,
    kind: 'decimal',
    min: 0,
    max: 1e9,
    message: 'The number you counted or estimated at this step. Leave it empty until then.',
  });
  parents(book, sheet, last + 2, through);
  sheet.chart({
    kind: 'column',
    title: 'Fish at each step',
    categories: sheet.ref(`B${FIRST}:B${last}`),
    series: [
      { name: 'planned', values: sheet.ref(`D${FIRST}:D${last}`) },
      { name: 'every step poor', values: sheet.ref(`G${FIRST}:G${last}`) },
      { name: 'every step good', values: sheet.ref(`H${FIRST}:H${last}`) },
    ],
    yTitle: 'number',
    valueFormat: WHOLE,
    from: `B${last + 12}`,
    to: `H${last + 27}`,
  });
  return sheet.build();
}

function parents(book: Book, sheet: ReturnType<Book['sheet']>, from: number, through: string): void {
  const { fx } = book;
  const perFemale = '{femaleWeight}*1000*{eggShare}*{eggsPerGram}';
  const lines: readonly (readonly [string, ResultKey | undefined, string, string])[] = [
    ['Eggs from one female', undefined, `=${perFemale}`, WHOLE],
    [
      'Females to inject',
      'femalesNeeded',
      '=SPAWN.FEMALES.NEEDED({eggsNeeded},{femaleWeight},{eggShare},{eggsPerGram},{ovulating})',
      WHOLE,
    ],
    ['Males', 'malesNeeded', '=ROUNDUP({femalesNeeded}/{femalesPerMale},0)', WHOLE],
    [
      'Count as so many unrelated parents',
      'breedingNumber',
      '=4*{femalesNeeded}*{malesNeeded}/({femalesNeeded}+{malesNeeded})',
      '0.0',
    ],
    [
      'Hormone for a female of mean weight, mL',
      'hormoneEach',
      '=SPAWN.HORMONE.VOLUME({femaleWeight},{hormoneDose})',
      '0.00',
    ],
    ['Hormone in all, mL', 'hormoneTotal', '={femalesNeeded}*{hormoneEach}', '0.00'],
    [
      'Most fish your females allow',
      'mostByFemales',
      `=INT({females}*${perFemale}*{ovulating}*PRODUCT(${through})+0.000001)`,
      WHOLE,
    ],
    [
      'Most fish your males allow',
      'mostByMales',
      `=INT(INT({males}*{femalesPerMale})*${perFemale}*{ovulating}*PRODUCT(${through})+0.000001)`,
      WHOLE,
    ],
  ];
  sheet.put(`B${from}`, 'Parents', 'section').put(`C${from}`, '', 'section');
  lines.forEach(([label, key, formula, format], i) => {
    const row = from + 1 + i;
    sheet.put(`B${row}`, label, 'label').put(`C${row}`, styled(fx(formula), 'result', { format }));
    if (key) book.define(key, sheet.ref(`C${row}`));
  });
}
