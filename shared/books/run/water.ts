import { CAUTIONS } from '../../functions/cautions';
import { heightFor, styled } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import type { ResultKey } from '../../run/results';
import type { Book } from './context';

const dose = (litres: string): string => {
  const call = (alkalinity: string): string =>
    `SPAWN.BUFFER.AIRED(${litres},{ph},{phWanted},${alkalinity},{temperature},{material})`;
  return `=IF({ph}>={phWanted},0,IF(ISBLANK({alkalinity}),${call('')},${call('{alkalinity}')}))`;
};

const HOW: readonly string[] = [
  'Calibrate the pH meter the same day. Wait until the reading stands still.',
  'Dissolve the trial dose in the bucket of vat water, air it for an hour, read the ' +
    'pH. If it lands near the pH you want, trust the dose.',
  'If the bucket ends above it, give less; if below, measure the alkalinity and type it on Start.',
  'Give the vats the first half, dissolved in a bucket first, spread over the surface, ' +
    'with the air on. No fish in the water.',
  'Read the pH the next morning. Only if it is still low give the second half.',
  'Type a new reading on Start: the dose follows it.',
];
const LOG_ROWS = 10;

/**
 * The dose for a bucket, a vat and all of them, the toxic ammonia before and after, and room to write
 * readings down.
 */
export function waterSheet(book: Book): SheetModel {
  const { fx } = book;
  const sheet = book.sheet('Water', {
    widths: [2, 38, 14, 12, 12, 12, 12, 14],
    tab: '7FA6A9',
    print: { onePage: true },
  });
  sheet.put('B1', 'Water: raising the pH', 'title').height(1, 26);
  sheet.put('B2', 'A dose from one pH reading is a first guess: the bucket decides.', 'subtitle');
  const readings: readonly (readonly [string, string, string, string])[] = [
    ['pH now', '={ph}', '0.0', ''],
    ['pH wanted', '={phWanted}', '0.0', ''],
    ['Alkalinity', '=IF(ISBLANK({alkalinity}),"not measured",{alkalinity})', '0.00', 'meq/L'],
    ['Temperature', '={temperature}', '0.0', '°C'],
    ['What raises the pH', '={material}', '@', ''],
    ['Water in one vat', '={vatLitres}', '#,##0', 'L'],
  ];
  sheet.put('B4', 'The readings', 'section').put('C4', '', 'section').put('D4', '', 'section');
  readings.forEach(([label, formula, format, unit], i) =>
    sheet
      .put(`B${5 + i}`, label, 'label')
      .put(`C${5 + i}`, styled(fx(formula), 'cell', { format }))
      .put(`D${5 + i}`, unit, 'unit'),
  );
  const answers: readonly (readonly [string, ResultKey | undefined, string, string, string])[] = [
    ['Trial bucket of 10 L', 'trialDose', dose('10'), '0.00', 'g'],
    ['One vat, whole dose', 'vatDose', dose('{vatLitres}'), '#,##0.0', 'g'],
    ['One vat, first half', undefined, '={vatDose}/2', '#,##0.0', 'g'],
    ['All vats', 'totalDose', '={vatDose}*{vatsNeeded}', '#,##0', 'g'],
    ['Toxic part of the ammonia now', 'toxicNow', '=SPAWN.AMMONIA.SHARE({ph},{temperature})', '0.00%', ''],
    [
      'Toxic part at the pH wanted',
      'toxicThen',
      '=SPAWN.AMMONIA.SHARE({phWanted},{temperature})',
      '0.00%',
      '',
    ],
  ];
  sheet.put('B12', 'The dose', 'section').put('C12', '', 'section').put('D12', '', 'section');
  answers.forEach(([label, key, formula, format, unit], i) => {
    sheet
      .put(`B${13 + i}`, label, 'label')
      .put(`C${13 + i}`, styled(fx(formula), 'result', { format }))
      .put(`D${13 + i}`, unit, 'unit');
    if (key) book.define(key, sheet.ref(`C${13 + i}`));
  });
  sheet
    .put('B19', 'Does it come out?', 'label')
    .merge(
      'C19:H19',
      fx(
        '=IF(ISNUMBER({vatDose}),IF({vatDose}=0,"No dose needed: the pH is high ' +
          'enough.","Yes. Try the bucket first."),"No dose for these readings: check pH and ' +
          'alkalinity, or leave the alkalinity empty.")',
      ),
      'quiet',
    );
  steps(sheet, 21);
  log(sheet, 30);
  return sheet.build();
}

function steps(sheet: ReturnType<Book['sheet']>, from: number): void {
  sheet.put(`B${from}`, 'How', 'section');
  for (const column of 'CDEFGH') sheet.put(`${column}${from}`, '', 'section');
  HOW.forEach((text, i) =>
    sheet
      .merge(`B${from + 1 + i}:H${from + 1 + i}`, `${i + 1}.  ${text}`, 'quiet')
      .height(from + 1 + i, heightFor([text, 105])),
  );
}

function log(sheet: ReturnType<Book['sheet']>, from: number): void {
  sheet.row(
    `B${from}`,
    ['Write down: date, hour, vat', '°C', 'pH before', 'g given', 'pH after', 'hours later', 'ammonia, mg/L'],
    'heading',
  );
  for (let row = from + 1; row <= from + LOG_ROWS; row++)
    sheet
      .row(
        `B${row}`,
        ['', '', '', '', '', '', ''].map(() => styled({}, 'blank')),
      )
      .height(row, 19);
  [CAUTIONS['SODA_ASH'], CAUTIONS['AMMONIA']].forEach((text = '', i) => {
    const row = from + LOG_ROWS + 2 + i;
    sheet.merge(`B${row}:H${row}`, `Take care: ${text}`, 'warning').height(row, heightFor([text, 88]));
  });
}
