import { styled } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import type { ResultKey } from '../../run/results';
import { vatStagesOf } from '../../run/steps';
import type { Book } from './context';
import { DAY, MOMENT, WHOLE } from './context';

type Line = readonly [label: string, key: ResultKey, formula: string, format: string, how: string];

const rearing = (book: Book): string =>
  book.plan.form.product === 'fingerlings' ? '{rearingDays}-{nurseryDays}' : '{rearingDays}';
const clock = (book: Book): readonly Line[] => [
  [
    'Injection to strip',
    'latencyHours',
    '=SPAWN.LATENCY.HOURS({temperature},{preparation})+{latencyOffset}',
    '0.0 "h"',
    'Table of the preparation at this temperature, and your own correction',
  ],
  [
    'Fertilising to first hatch',
    'incubationHours',
    '=SPAWN.INCUBATION.HOURS({temperature})',
    '0.0 "h"',
    'At this temperature',
  ],
  [
    'Hatch to first feed',
    'yolkDays',
    '=SPAWN.FEEDING.START({wantedOn},{temperature})-{wantedOn}',
    '0.00 "days"',
    'At this temperature',
  ],
  [
    'Strip',
    'stripAt',
    `=INT({wantedOn}-${rearing(book)}+719/1440-{yolkDays}-{incubationHours}/24-{stripHour})+{stripHour}`,
    MOMENT,
    'The last time at your hour that leaves the fish enough days',
  ],
  ['Inject', 'injectAt', '={stripAt}-{latencyHours}/24', MOMENT, 'The waiting time before the strip'],
  ['First larvae hatch', 'hatchAt', '={stripAt}+{incubationHours}/24', MOMENT, ''],
  ['First feed', 'firstFeedAt', '={hatchAt}+{yolkDays}', MOMENT, 'Some yolk is still left'],
  ['First full day of feeding', 'feedFrom', '=INT({firstFeedAt}+0.5)', DAY, ''],
  ['Fry weaned', 'weanedAt', '={feedFrom}+{rearingDays}+8/24', MOMENT, ''],
  [
    'Ready',
    'readyAt',
    `={feedFrom}+${rearing(book).replace('-', '+')}`,
    DAY,
    'Not later than the day they are wanted',
  ],
  ['Vats filled, air on', 'beginOn', '=INT({stripAt})-{preparingDays}', DAY, ''],
];

function clockRows(book: Book, sheet: ReturnType<Book['sheet']>): number {
  const { fx } = book;
  sheet.row('B4', ['The clock', 'When', 'How it is found', '', '', '', ''], 'heading');
  clock(book).forEach(([label, key, formula, format, how], i) => {
    sheet
      .put(`B${5 + i}`, label, 'label')
      .put(`C${5 + i}`, styled(fx(formula), 'result', { format }))
      .put(`D${5 + i}`, how, 'unit');
    book.define(key, sheet.ref(`C${5 + i}`));
  });
  const row = 5 + clock(book).length + 1;
  sheet
    .row(`B${row}`, ['Windows', 'First check, first hatch', 'Best', 'Too late, last hatch'], 'heading')
    .height(row, 30);
  sheet.put(`B${row + 1}`, 'Strip', 'label').put(
    `C${row + 1}`,
    styled(fx('=SPAWN.STRIP.WINDOW({injectAt},{temperature},{preparation},{latencyOffset})'), 'cell', {
      spill: [1, 3],
      format: 'ddd d mmm hh:mm',
    }),
  );
  sheet.put(`B${row + 2}`, 'Hatch', 'label').put(
    `C${row + 2}`,
    styled(fx('=SPAWN.HATCH.WINDOW({stripAt},{temperature})'), 'cell', {
      spill: [1, 2],
      format: 'ddd d mmm hh:mm',
    }),
  );
  for (const address of [`D${row + 1}`, `E${row + 1}`, `D${row + 2}`])
    sheet.put(address, styled({}, 'cell', { format: 'ddd d mmm hh:mm' }));
  sheet.put(`E${row + 2}`, '', 'cell');
  book.define('checkAt', sheet.ref(`C${row + 1}`));
  book.define('lateAt', sheet.ref(`E${row + 1}`));
  book.define('hatchEndAt', sheet.ref(`D${row + 2}`));
  return row + 4;
}

/** When each stage begins and ends, how many vats it fills, and whether there are enough. */
export function stagesSheet(book: Book, fishAt: readonly string[]): SheetModel {
  const { fx, plan } = book;
  const sheet = book.sheet('Stages', {
    widths: [2, 30, 23, 19, 19, 14, 11, 11],
    tab: '7FA6A9',
    print: { landscape: true, onePage: true },
  });
  sheet.put('B1', 'Stages: the clock and the vats', 'title').height(1, 26);
  sheet.put(
    'B2',
    'Change the temperature on Start and every time here moves. Water that is cooler at night takes longer.',
    'subtitle',
  );
  const head = clockRows(book, sheet);
  sheet.row(`B${head}`, ['Vats', 'From', 'To', 'Fish at the start', 'In a litre', 'Vats', 'Days'], 'heading');
  const stages = vatStagesOf(plan.form.product);
  const first = head + 1;
  stages.forEach((stage, i) => {
    const row = first + i;
    sheet.row(`B${row}`, [
      styled(stage.label, 'label'),
      styled(fx(`={${stage.from}}`), 'cell', { format: 'ddd d mmm hh:mm' }),
      styled(fx(`={${stage.to}}`), 'cell', { format: 'ddd d mmm hh:mm' }),
      styled(`=${fishAt[stage.step] ?? ''}`, 'cell', { format: WHOLE }),
      styled(fx(`={${stage.density}}`), 'cell', { format: WHOLE }),
      styled(fx(`=ROUNDUP(E${row}/(F${row}*{vatLitres}),0)`), 'result', { format: WHOLE }),
      styled(`=D${row}-C${row}`, 'cell', { format: '0.0' }),
    ]);
    sheet.when({ range: `G${row}`, formula: fx(`=$G${row}>{vats}`), style: 'bad' });
    book.define(stage.result, sheet.ref(`G${row}`));
  });
  const last = first + stages.length - 1;
  const allowed = stages.map((stage, i) => {
    const after = plan.steps
      .slice(stage.step)
      .map(({ survival }) => `{${survival}}`)
      .join('*');
    return `{vats}*{vatLitres}*F${first + i}*${after}`;
  });
  sheet
    .put(`B${last + 1}`, 'Most fish, most vats at once', 'label')
    .put(`G${last + 1}`, styled(`=MAX(G${first}:G${last})`, 'result', { format: WHOLE }))
    .put(`E${last + 1}`, styled(fx(`=INT(MIN(${allowed.join(',')})+0.000001)`), 'result', { format: WHOLE }));
  book.define('vatsNeeded', sheet.ref(`G${last + 1}`));
  book.define('mostByVats', sheet.ref(`E${last + 1}`));
  sheet.chart({
    kind: 'occupancy',
    title: 'Stages over the days',
    categories: sheet.ref(`B${first}:B${last}`),
    series: [
      { name: 'from', values: sheet.ref(`C${first}:C${last}`), isHidden: true },
      { name: 'days in the vats', values: sheet.ref(`H${first}:H${last}`) },
    ],
    valueFormat: 'd mmm',
    from: `B${last + 3}`,
    to: `H${last + 15}`,
    ...(typeof plan.results.stripAt === 'number' && typeof plan.results.readyAt === 'number'
      ? { valueRange: [Math.floor(plan.results.stripAt) - 1, Math.ceil(plan.results.readyAt) + 1] as const }
      : {}),
  });
  return sheet.build();
}
