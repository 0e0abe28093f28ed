import type { SheetBuilder } from '../../sheet/workbook/build';
import { heightFor, styled } from '../../sheet/workbook/build';
import type { CellModel, SheetModel } from '../../sheet/workbook/model';
import type { FormNumber, PlanField } from '../../run/fields';
import { planFieldList } from '../../run/fields';
import type { ResultKey } from '../../run/results';
import type { Book } from './context';
import { DAY, MOMENT, WHOLE } from './context';

const FIRST_ROW = 9;
const SHORT_MOMENT = 'ddd d mmm  hh:mm';
type Line = readonly [label: string, key: ResultKey, unit: string, format: string];

const NEEDS: readonly Line[] = [
  ['Females to inject', 'femalesNeeded', 'females', WHOLE],
  ['Males', 'malesNeeded', 'males', WHOLE],
  ['Eggs to fertilise', 'eggsNeeded', 'eggs', WHOLE],
  ['Hormone for a female of mean weight', 'hormoneEach', 'mL', '0.00'],
  ['Waiting time, injection to strip', 'latencyHours', 'h', '0.0'],
  ['Strip window opens', 'checkAt', '', MOMENT],
  ['Strip window closes', 'lateAt', '', MOMENT],
  ['Vats filled, air on', 'beginOn', '', DAY],
  ['Vats at the fullest', 'vatsNeeded', 'vats', WHOLE],
];
const BUY: readonly Line[] = [
  ['Hormone liquid', 'hormoneTotal', 'mL', '0.0'],
  ['What raises the pH, all vats', 'totalDose', 'g', WHOLE],
  ['Brine shrimp cysts', 'cystsTotal', 'g', WHOLE],
  ['Dry feed', 'feedTotal', 'kg', '#,##0.0'],
];

/** The value a field shows: hours are clock times, a field left empty stays empty. */
const shownInput = (book: Book, field: PlanField): CellModel => {
  const raw = book.plan.form[field.key as keyof typeof book.plan.form];
  const value =
    typeof raw === 'string'
      ? raw
      : typeof raw === 'number'
        ? field.kind === 'hour'
          ? raw / 24
          : raw
        : undefined;
  const format = field.kind === 'text' || field.kind === 'choice' ? {} : { format: field.format };
  return {
    ...(value === undefined ? {} : { value }),
    ...format,
    style: field.key === 'product' ? 'result' : 'input',
  };
};

function validateInput(sheet: SheetBuilder, field: PlanField, range: string): void {
  if (field.kind === 'text' || field.key === 'product') return;
  if (field.kind === 'choice') {
    sheet.validate({ range, kind: 'list', items: field.choices, message: field.hint });
    return;
  }
  const { kind, min, max }: FormNumber = field;
  const rule = { range, message: field.hint } as const;
  if (kind === 'hour') sheet.validate({ ...rule, kind: 'decimal', min: 0, max: max / 24 });
  else sheet.validate({ ...rule, kind: kind === 'number' ? 'decimal' : kind, min, max });
}

function inputs(book: Book, sheet: SheetBuilder): void {
  sheet.put('B8', 'Type here', 'section').put('C8', '', 'section').put('D8', '', 'section');
  planFieldList.forEach((field, i) => {
    const row = FIRST_ROW + i;
    const unit =
      field.key === 'product' ? 'fixed' : field.kind === 'number' || field.kind === 'whole' ? field.unit : '';
    sheet
      .put(`B${row}`, field.label, 'label')
      .put(`C${row}`, shownInput(book, field))
      .put(`D${row}`, unit, 'unit');
    validateInput(sheet, field, `C${row}`);
    book.define(field.key as Parameters<Book['define']>[0], sheet.ref(`C${row}`));
  });
}

function lines(book: Book, sheet: SheetBuilder, from: number, title: string, list: readonly Line[]): void {
  sheet.put(`F${from}`, title, 'section').put(`G${from}`, '', 'section').put(`H${from}`, '', 'section');
  list.forEach(([label, key, unit, format], i) => {
    const row = from + 1 + i;
    sheet
      .put(`F${row}`, label, 'label')
      .put(`G${row}`, styled(book.fx(`={${key}}`), 'result', { format }))
      .put(`H${row}`, unit, 'unit');
  });
}

function boxes(book: Book, sheet: SheetBuilder): void {
  const box = (label: string, range: string, below: string, key: ResultKey, format = SHORT_MOMENT): void => {
    if (range.includes(':'))
      sheet
        .merge(range, label, 'heading')
        .merge(below, styled(book.fx(`={${key}}`), 'big', { format }), 'big', { format });
    else sheet.put(range, label, 'heading').put(below, styled(book.fx(`={${key}}`), 'big', { format }));
  };
  box('INJECT', 'B4', 'B5', 'injectAt');
  box('STRIP', 'C4:D4', 'C5:D5', 'stripAt');
  box('FIRST FEED', 'F4', 'F5', 'firstFeedAt');
  box('READY', 'G4:H4', 'G5:H5', 'readyAt', 'ddd d mmm');
  sheet.height(5, 26);
}

/** Each thing that can run short: needed, at hand, a verdict in words, and what it allows at most. */
function verdicts(book: Book, sheet: SheetBuilder, from: number): void {
  const { fx } = book;
  sheet.put(`B${from}`, 'Can it be met?', 'section');
  for (const column of ['C', 'D', 'F', 'G', 'H']) sheet.put(`${column}${from}`, '', 'section');
  sheet.row(
    `B${from + 1}`,
    ['What it takes', 'Needed', 'You have', undefined, 'Verdict', 'Most fish this allows', ''],
    'heading',
  );
  const rows: readonly (readonly [string, ResultKey, 'females' | 'males' | 'vats', ResultKey])[] = [
    ['Females', 'femalesNeeded', 'females', 'mostByFemales'],
    ['Males', 'malesNeeded', 'males', 'mostByMales'],
    ['Vats', 'vatsNeeded', 'vats', 'mostByVats'],
  ];
  rows.forEach(([label, needed, have, most], i) => {
    const row = from + 2 + i;
    sheet.row(`B${row}`, [
      styled(label, 'label'),
      styled(fx(`={${needed}}`), 'cell', { format: WHOLE }),
      styled(fx(`={${have}}`), 'cell', { format: WHOLE }),
      undefined,
      styled(`=IF(C${row}<=D${row},"enough","SHORT by "&(C${row}-D${row}))`, 'cell'),
      styled(fx(`={${most}}`), 'cell', { format: WHOLE }),
    ]);
    sheet
      .when({ range: `F${row}`, formula: `=$C${row}<=$D${row}`, style: 'good' })
      .when({ range: `F${row}`, formula: `=$C${row}>$D${row}`, style: 'bad' });
  });
  const time = from + 5;
  sheet.row(`B${time}`, [
    styled('Time: vats filled on, planned on', 'label'),
    styled(fx('={beginOn}'), 'cell', { format: 'd mmm yyyy' }),
    styled(fx('=IF(ISBLANK({plannedOn}),"",{plannedOn})'), 'cell', { format: 'd mmm yy' }),
    undefined,
    styled(
      `=IF(D${time}="","not checked",IF(C${time}>=D${time},"in time","TOO LATE by "&(D${time}-C${time})&" days"))`,
      'cell',
    ),
  ]);
  sheet
    .when({ range: `F${time}`, formula: `=AND(ISNUMBER($D${time}),$C${time}>=$D${time})`, style: 'good' })
    .when({ range: `F${time}`, formula: `=AND(ISNUMBER($D${time}),$C${time}<$D${time})`, style: 'bad' });
  const whole = from + 6;
  const isMet = `AND(C${from + 2}<=D${from + 2},C${from + 3}<=D${from + 3},C${from + 4}<=D${from + 4},OR(D${time}="",C${time}>=D${time}))`;
  sheet.row(`B${whole}`, [
    styled('This order', 'label'),
    styled(fx('={wanted}'), 'result', { format: WHOLE }),
    styled(fx('={product}'), 'unit'),
    undefined,
    styled(`=IF(${isMet},"can be met","CANNOT be met")`, 'result'),
    styled(fx('=MIN({mostByFemales},{mostByMales},{mostByVats})'), 'result', { format: WHOLE }),
  ]);
  book.define('mostFish', sheet.ref(`G${whole}`));
  sheet
    .when({ range: `F${whole}`, formula: `=$F${whole}="can be met"`, style: 'good' })
    .when({ range: `F${whole}`, formula: `=$F${whole}="CANNOT be met"`, style: 'bad' });
}

const SENTENCE_WIDTH = 132;
function sentences(book: Book, sheet: SheetBuilder, from: number): void {
  const { findings, form } = book.plan;
  sheet.put(
    `B${from}`,
    form.plannedOn === undefined ? 'Said when the plan was made' : 'Said on the day the plan was made',
    'section',
  );
  for (const column of ['C', 'D', 'E', 'F', 'G', 'H']) sheet.put(`${column}${from}`, '', 'section');
  findings.forEach(({ message, kind }, i) => {
    sheet
      .merge(`B${from + 1 + i}:H${from + 1 + i}`, message, kind === 'cannot' ? 'bad' : 'quiet')
      .height(from + 1 + i, heightFor([message, SENTENCE_WIDTH]));
  });
}

export function startSheet(book: Book): SheetModel {
  const sheet = book.sheet('Start', {
    widths: [2, 32, 17, 10, 2, 34, 21, 10],
    tab: '12454F',
    print: { landscape: true, onePage: true },
  });
  sheet.put('B1', book.fx('={hatchery}&": season plan"'), 'title').height(1, 26);
  sheet.put(
    'B2',
    'Cells with a thick frame on yellow are yours to change; everything else follows from them.',
    'subtitle',
  );
  boxes(book, sheet);
  inputs(book, sheet);
  lines(book, sheet, 8, 'What the run needs', NEEDS);
  lines(book, sheet, 8 + NEEDS.length + 2, 'To buy', BUY);
  const below = FIRST_ROW + planFieldList.length + 1;
  verdicts(book, sheet, below);
  sentences(book, sheet, below + 8);
  return sheet.build();
}
