// Long: one sheet, block by block.
import { CAUTIONS } from '../../functions/cautions';
import { isError } from '../../base/values';
import { SheetBuilder, styled } from '../../sheet/workbook/build';
import { calculate } from '../../catalogue/calculation';
import type { CellModel, WorkbookModel } from '../../sheet/workbook/model';
import { answerLines } from './answer';
import type { DosingReading, Vat } from '../../dosing/ask';
import type { LogColumn, LogLine } from '../../dosing/log';
import { LOG_COLUMNS } from '../../dosing/log';
import { askNext } from '../../dosing/ask';
import { inLanguage } from '../words/inLanguage';
import type { BookWords } from '../words/words';
import { drawing } from './drawing';
import type { DosingWords, OwnPlaces } from './ownWords';
import { HAPPENED, ownWords, withOwnAnswers } from './ownWords';
import type { DosingField } from '../../dosing/fields';
import { DOSING_FIELDS, paramOf } from '../../dosing/fields';
import {
  AGAIN,
  ALKALINITY,
  AMMONIA,
  CARE,
  DOSES,
  DRAWING,
  EVENTS,
  FIRST_INPUT,
  FIRST_READING,
  IS_BEGUN,
  IS_FISH_IN,
  IS_LIME,
  LAST_PH,
  LAST_READING,
  LEVELS,
  LOG_AT,
  MOMENTS,
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

const logCell = (line: DosingReading | undefined, key: keyof LogLine, format: string): CellModel => {
  const value = line?.[key] ?? null;
  return { style: 'input', format, ...(value === null || value === '' ? {} : { value }) };
};

/** The same lines as the log of the vats, under the same headings: what is typed here can be read back. */
function readingsTable(sheet: SheetBuilder, readings: readonly DosingReading[]): void {
  section(sheet, FIRST_READING - 2, Object.values(LOG_AT).join(''), 'The log of this vat');
  const columns = LOG_COLUMNS.filter(({ key }) => key in LOG_AT) as readonly (LogColumn & { key: LogKey })[];
  for (const { key, heading } of columns) sheet.put(`${LOG_AT[key]}${FIRST_READING - 1}`, heading, 'heading');
  for (let i = 0; i < READINGS; i++)
    for (const { key, format } of columns)
      sheet.put(`${LOG_AT[key]}${FIRST_READING + i}`, logCell(readings[i], key, format));
  sheet.validate({
    range: EVENTS,
    kind: 'list',
    items: HAPPENED,
    message: 'What happened before this reading.',
  });
  sheet.validate({
    range: DOSES,
    kind: 'decimal',
    min: 0,
    max: 1e7,
    message: 'The grams given before this reading, as the spoon really held them. Empty: none.',
  });
  for (const range of [LEVELS, AGAIN])
    sheet.validate({ range, kind: 'decimal', min: 3, max: 11, message: 'Once mixed, the meter at rest.' });
  sheet.merge(
    `G${LAST_READING + 1}:O${LAST_READING + 2}`,
    'One row a reading: first the pH before any product. Beside a later reading stand the grams given before it, ' +
      'and what happened: aired, jar (a shaken jar of the water), night, change, refill, rain.',
    'quiet',
  );
}
type LogKey = keyof typeof LOG_AT;

const callFor = (own: OwnPlaces | undefined): string => {
  const option = own?.option ?? ((cell: string): string => cell);
  return fx(
    `SPAWN.BUFFER.NEXT({volume},${DOSES},${LEVELS},{target},{spoon},{temperature},{material},{purity},${option('{origin}')},$D$${ALKALINITY},,${option('{meter}')},{bottom},{top},,${IS_FISH_IN},FALSE,${own?.events ?? EVENTS},${AGAIN},${MOMENTS},"given before")`,
  );
};
const COLUMNS = 14;

function plan(
  sheet: SheetBuilder,
  vat: Vat,
  readings: readonly DosingReading[],
  own: OwnPlaces | undefined,
): void {
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
  sheet.put(`B${PLAN}`, {
    formula: `=IF(${IS_BEGUN},${callFor(own)},"")`,
    style: 'cell',
    format: '0',
    ...spill,
  });
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

/** A formula holds texts of up to 255 letters: longer ones stand in parts. */
const PART = 250;
const literal = (text: string): string =>
  Array.from(
    { length: Math.ceil(text.length / PART) },
    (_, i) => `"${text.slice(i * PART, (i + 1) * PART).replaceAll('"', '""')}"`,
  ).join('&');

/** The cautions of the product chosen, and of fish where fish are in: no others. */
const CARED: readonly (readonly [key: string, when: string])[] = [
  ['SODA_ASH', fx('OR({material}="soda ash",{material}="soda ash monohydrate",{material}="washing soda")')],
  ['LIME', IS_LIME],
  ['AMMONIA', IS_FISH_IN],
];
function care(sheet: SheetBuilder): void {
  CARED.forEach(([key, when], i) => {
    const text = `Take care: ${CAUTIONS[key] ?? ''}`;
    const row = CARE + i;
    sheet
      .merge(`B${row}:J${row}`, `=IF(${when},${literal(text)},"")`, 'quiet')
      .when({ range: `B${row}:J${row}`, formula: `=$B$${row}<>""`, style: 'warning' })
      .height(row, Math.ceil(text.length / PAGE_WIDTH) * POINTS_PER_LINE + 6);
  });
}

/** Words of the books, and those of the function's answers. */
export interface DosingLanguage {
  readonly words: BookWords;
  readonly dosing: DosingWords;
}

/** A workbook of one sheet for one vat. Answers that are null stay empty, to be typed. */
export function dosingWorkbook(
  vat: Vat,
  readings: readonly DosingReading[],
  language?: DosingLanguage,
): WorkbookModel {
  const sheet = new SheetBuilder(SHEET, {
    widths: [2, 6, 34, 11, 9, 9, 17, 9, 10, 26, 10, 10, 10, 10, 22],
    tab: '2F7480',
    isProtected: true,
    hasGridlines: false,
    print: { breaksAbove: [DRAWING - 2], footer: 'Dosing at the vat' },
  });
  sheet.put('B1', 'Dosing at the vat', 'title').height(1, 26);
  sheet.put(
    'B2',
    'Yellow cells are yours. Give the dose, wait, read, and write one row: the grams given and the pH read; ' +
      'the answer follows every row.',
    'subtitle',
  );
  answerLines(sheet);
  inputs(sheet, vat);
  readingsTable(sheet, readings.slice(0, READINGS));
  const own = language && ownWords(sheet, language.dosing);
  plan(sheet, vat, readings.slice(0, READINGS), own);
  ammonia(sheet, vat, readings.slice(0, READINGS));
  care(sheet);
  drawing(sheet, readings);
  const model: WorkbookModel = { title: 'Dosing at the vat', sheets: [sheet.build()], names: [] };
  return calculate(own ? translated(model, language, own) : model).model;
}

/** Headings of the plan under which the function's own sentences stand, and the lines of the answer. */
const IN_ENGLISH = [`C${PLAN - 1}`, `J${PLAN - 1}`, `K${PLAN - 1}`];
const ANSWERS = ['B5', 'B6', 'B10', 'B11'];

function translated(model: WorkbookModel, { words, dosing }: DosingLanguage, own: OwnPlaces): WorkbookModel {
  const said = inLanguage(
    { ...model, sheets: model.sheets.map((sheet) => withOwnAnswers(sheet, own, ANSWERS)) },
    words,
    (_sheet, address) => own.isKept(address),
  );
  return {
    ...said,
    sheets: said.sheets.map((sheet) => ({
      ...sheet,
      cells: {
        ...sheet.cells,
        ...Object.fromEntries(
          IN_ENGLISH.map((address) => {
            const cell = sheet.cells[address];
            return [address, { ...cell, value: `${String(cell?.value)} ${dosing.inEnglish}` }];
          }),
        ),
      },
    })),
  };
}
