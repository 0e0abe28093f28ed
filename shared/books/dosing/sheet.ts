import { CAUTIONS } from '../../functions/cautions';
import { isError } from '../../base/values';
import { SheetBuilder, styled } from '../../sheet/workbook/build';
import { calculate } from '../../catalogue/calculation';
import type { CellModel, WorkbookModel } from '../../sheet/workbook/model';
import { answerLines } from './answer';
import type { DosingReading, Vat } from '../../dosing/ask';
import { askNext } from '../../dosing/ask';
import { drawing } from './drawing';
import type { DosingField } from '../../dosing/fields';
import { DOSING_FIELDS, paramOf } from '../../dosing/fields';
import {
  ALKALINITY,
  AMMONIA,
  CARE,
  DOSES,
  DRAWING,
  FIRST_INPUT,
  FIRST_READING,
  IS_BEGUN,
  IS_FISH_IN,
  LAST_PH,
  LAST_READING,
  LEVELS,
  PLAN,
  PLAN_ROWS,
  READINGS,
  fx,
} from './layout';

/**
 * The dosing sheet: answers and readings are typed, one formula gives the next part-dose and how it is likely
 * to go on. The same functions as in the pane, so the same numbers.
 */
const SHEET = 'Dosing';
const PAGE_WIDTH = 130;
const POINTS_PER_LINE = 13.5;

const section = (sheet: SheetBuilder, row: number, columns: string, title: string): void => {
  [...columns].forEach((column, i) => {
    sheet.put(`${column}${row}`, i === 0 ? title : '', 'section');
  });
};

const inputCell = (field: DosingField, vat: Vat): CellModel => {
  const value = vat[field.key];
  return {
    style: 'input',
    ...(value === null || typeof value === 'object' ? {} : { value }),
    ...(field.format === undefined ? {} : { format: field.format }),
  };
};

function validateInput(sheet: SheetBuilder, field: DosingField, range: string): void {
  const param = paramOf(field.fills);
  if (field.choices)
    sheet.validate({
      range,
      kind: 'list',
      items: field.choices.map(([value]) => value),
      message: field.hint,
    });
  else if (param?.kind === 'number')
    sheet.validate({
      range,
      kind: 'decimal',
      min: param.min ?? param.above ?? 0,
      max: param.max ?? 1e7,
      message: field.hint,
    });
}

function inputs(sheet: SheetBuilder, vat: Vat): void {
  section(sheet, FIRST_INPUT - 1, 'BCDE', 'The vat and the product');
  DOSING_FIELDS.forEach((field, i) => {
    const row = FIRST_INPUT + i;
    sheet
      .merge(`B${row}:C${row}`, field.label, 'label')
      .put(`D${row}`, inputCell(field, vat))
      .put(`E${row}`, field.unit === '%' ? '' : field.unit, 'unit');
    validateInput(sheet, field, `D${row}`);
  });
  sheet
    .merge(`B${ALKALINITY}:C${ALKALINITY}`, 'Alkalinity for the formulas', 'label')
    .put(`E${ALKALINITY}`, 'meq/L', 'unit')
    .put(
      `D${ALKALINITY}`,
      fx('=IF(ISNUMBER({alkalinity}),SPAWN.ALKALINITY.CONVERT({alkalinity},{kit}),"")'),
      'cell',
      { format: '0.00' },
    );
}

function readingsTable(sheet: SheetBuilder, readings: readonly DosingReading[]): void {
  section(sheet, FIRST_READING - 2, 'GHI', 'Readings');
  sheet.row(`G${FIRST_READING - 1}`, ['Reading', 'Grams so far', 'pH read'], 'heading');
  for (let i = 0; i < READINGS; i++) {
    const row = FIRST_READING + i;
    const reading = readings[i];
    sheet
      .put(`G${row}`, i + 1, 'cell')
      .put(`H${row}`, { ...(reading ? { value: reading.grams } : {}), style: 'input', format: '0.0' })
      .put(`I${row}`, { ...(reading ? { value: reading.ph } : {}), style: 'input', format: '0.00' });
  }
  sheet.validate({
    range: `H${FIRST_READING}:H${LAST_READING}`,
    kind: 'decimal',
    min: 0,
    max: 1e7,
    message: 'All the product that has gone in since the start. The first row is 0.',
  });
  sheet.validate({
    range: `I${FIRST_READING}:I${LAST_READING}`,
    kind: 'decimal',
    min: 0,
    max: 14,
    message: 'Once mixed, the meter at rest.',
  });
  sheet.merge(
    `G${LAST_READING + 1}:I${LAST_READING + 4}`,
    'First row: 0 g and the pH before any product. Then running totals, not the last part alone.',
    'quiet',
  );
}

const CALL = fx(
  `SPAWN.BUFFER.NEXT({volume},${DOSES},${LEVELS},{target},{spoon},{temperature},{material},{purity},{origin},$D$${ALKALINITY},,{meter},{bottom},{top},,${IS_FISH_IN},FALSE)`,
);
const COLUMNS = 14;

function plan(sheet: SheetBuilder, vat: Vat, readings: readonly DosingReading[]): void {
  section(sheet, PLAN - 2, 'BCDEFGHIJKLMNO', 'The next part-dose, and how it is likely to go on');
  sheet
    .row(
      `B${PLAN - 1}`,
      [
        'Step',
        'What to do',
        'Dose, g',
        'Spoons',
        'Total by then, g',
        'pH at least',
        'pH likely',
        'pH at most',
        'Remark',
        'Action',
        'Aired at least',
        'Aired likely',
        'Aired at most',
        'Chance of ending well',
      ],
      'heading',
    )
    .height(PLAN - 1, 30);
  for (let row = PLAN; row < PLAN + PLAN_ROWS; row++) {
    sheet.row(
      `B${row}`,
      ['0', '', '0.0', '0.0', '0.0', '0.00', '0.00', '0.00', '', '', '0.0', '0.0', '0.0', '0%'].map(
        (format) => (format === '' ? styled({}, 'text') : styled({}, 'cell', { format })),
      ),
    );
    sheet.height(row, row === PLAN ? 90 : 30);
  }
  const rows = readings.length > 0 ? askNext(vat, readings) : [];
  const spill = !isError(rows) && rows.length > 0 ? { spill: [rows.length, COLUMNS] as const } : {};
  sheet.put(`B${PLAN}`, { formula: `=IF(${IS_BEGUN},${CALL},"")`, style: 'cell', format: '0', ...spill });
}

function ammonia(sheet: SheetBuilder, vat: Vat, readings: readonly DosingReading[]): void {
  section(sheet, AMMONIA - 2, 'BCDEFGHIJ', 'Ammonia, when fish are in the vat');
  sheet
    .row(
      `D${AMMONIA - 1}`,
      ['Toxic now, mg/L N', 'Toxic at the pH wanted', 'Times as much', 'Highest safe pH', 'Verdict'],
      'heading',
    )
    .height(AMMONIA - 1, 42);
  sheet.row(
    `D${AMMONIA}`,
    ['0.0000', '0.0000', '0.0', '0.0', ''].map((format) =>
      format === '' ? styled({}, 'unit') : styled({}, 'cell', { format }),
    ),
  );
  const isAsked = fx(`AND(${IS_BEGUN},${IS_FISH_IN},ISNUMBER({ammonia}))`);
  const asked = vat.stocked === 'yes' && typeof vat.ammonia === 'number' && readings.length > 0;
  sheet.put(`D${AMMONIA}`, {
    formula: fx(`=IF(${isAsked},SPAWN.AMMONIA.RISE({ammonia},${LAST_PH},{target},{temperature}),"")`),
    style: 'cell',
    format: '0.0000',
    ...(asked ? { spill: [1, 5] as const } : {}),
  });
}

function care(sheet: SheetBuilder): void {
  ['SODA_ASH', 'LIME', 'AMMONIA']
    .map((key) => CAUTIONS[key] ?? '')
    .forEach((text, i) => {
      sheet
        .merge(`B${CARE + i}:J${CARE + i}`, `Take care: ${text}`, 'warning')
        .height(CARE + i, Math.ceil(text.length / PAGE_WIDTH) * POINTS_PER_LINE + 6);
    });
}

/** A workbook of one sheet for one vat. Answers that are null stay empty, to be typed. */
export function dosingWorkbook(vat: Vat, readings: readonly DosingReading[]): WorkbookModel {
  const sheet = new SheetBuilder(SHEET, {
    widths: [2, 6, 34, 11, 9, 9, 10, 12, 10, 40, 11, 9, 9, 9, 9],
    tab: '2F7480',
    isProtected: true,
    hasGridlines: false,
    print: { breaksAbove: [DRAWING - 2], footer: 'Dosing at the vat' },
  });
  sheet.put('B1', 'Dosing at the vat', 'title').height(1, 26);
  sheet.put(
    'B2',
    'Yellow cells are yours. Give the dose, wait, write down the grams so far and the ' +
      'pH; the answer follows every reading.',
    'subtitle',
  );
  answerLines(sheet);
  inputs(sheet, vat);
  readingsTable(sheet, readings.slice(0, READINGS));
  plan(sheet, vat, readings.slice(0, READINGS));
  ammonia(sheet, vat, readings.slice(0, READINGS));
  care(sheet);
  drawing(sheet, readings);
  return calculate({ title: 'Dosing at the vat', sheets: [sheet.build()], names: [] }).model;
}
