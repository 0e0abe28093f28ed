import { dosingWorkbook } from '../../../shared/books/dosing/sheet';
import { fr } from '../../../shared/books/words/fr';
import { frDosing } from '../../../shared/books/words/frDosing';
import { lintWorkbook } from '../../../shared/catalogue/calculation';
import { readLog } from '../../../shared/dosing/log';
import type { DosingReading, Vat } from '../../../shared/dosing/ask';
import type { Cell } from '../../../shared/base/values';
import type { SheetModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { gridOf } from '../../season/support/support';
import { ENGLISH, englishIn } from './texts';

/** The dosing sheet in French: the same figures for the same vat, its answer in French, its log read back. */

const VAT: Vat = {
  volume: 1200,
  material: 'soda ash',
  purity: 0.98,
  spoon: 5,
  temperature: 26,
  target: 7,
  stocked: 'no',
  ammonia: null,
  alkalinity: 2,
  kit: '°d',
  bottom: 6.5,
  top: 7.5,
  origin: 'aerated',
  meter: 'good',
};
const series = (...rows: readonly (readonly [number, number, string?, number?])[]): DosingReading[] =>
  rows.map(([grams, ph, what = 'reading', again], i) => ({
    at: 46_000 + i / 24,
    vat: '1',
    what,
    grams: grams || null,
    ph,
    again: again ?? null,
    who: 'Ama',
  }));
const CASES: readonly (readonly [string, Partial<Vat>, DosingReading[]])[] = [
  ['empty', { volume: null, temperature: null, stocked: null }, []],
  ['air first', { origin: 'unknown', alkalinity: null }, series([0, 5.2])],
  ['a well', { origin: 'well', alkalinity: null, meter: 'cheap' }, series([0, 5.4], [0, 5.8, 'aired'])],
  ['a dose', {}, series([0, 5.5], [0, 5.52], [0, 5.5])],
  [
    'peat',
    { origin: 'peat', meter: 'strips', alkalinity: null },
    series([0, 4.5], [0, 4.6, 'aired'], [3, 4.7], [3, 4.75]),
  ],
  ['in the window', {}, series([0, 7])],
  ['above it', {}, series([0, 7.9])],
  ['far above it', {}, series([0, 8.6])],
  ['two that differ', {}, series([0, 5.5, 'reading', 6.4])],
  ['a reading too high', {}, series([0, 5.5], [0, 5.5, 'aired'], [1, 7.9])],
  ['a reading too low', {}, series([0, 5.5], [0, 5.5, 'aired'], [30, 5.5])],
  [
    'water that changed',
    {},
    series([0, 5.5], [0, 5.5, 'aired'], [4, 5.9], [0, 5.6, 'change'], [0, 5.7, 'night'], [0, 5.6, 'rain']),
  ],
  ['fish in', { stocked: 'yes', ammonia: 0.3 }, series([0, 5.5], [0, 5.52, 'jar'])],
  ['fish and ammonia', { stocked: 'yes', ammonia: 60 }, series([0, 5.5], [0, 5.52], [0, 5.5])],
  ['lime and fish', { stocked: 'yes', ammonia: 0, material: 'quicklime' }, series([0, 5.5], [0, 5.5])],
];
const both = (vat: Partial<Vat>, readings: DosingReading[]) => ({
  en: dosingWorkbook({ ...VAT, ...vat }, readings),
  own: dosingWorkbook({ ...VAT, ...vat }, readings, { words: fr, dosing: frDosing }),
});
const sheetOf = ({ sheets }: WorkbookModel): SheetModel => {
  const [sheet] = sheets;
  if (!sheet) throw new Error('no sheet');
  return sheet;
};
/** The plan's own sentences, its actions, the verdict, and the English side of the table below. */
const isOfFunction = (address: string): boolean => {
  const [, column = '', row = ''] = /^([A-Z]+)(\d+)$/.exec(address) ?? [];
  const at = Number(row);
  return (at >= 32 && at <= 40 && 'CJK'.includes(column)) || address === 'H44' || (at > 70 && column === 'J');
};

test.each(CASES)('%s: the same figures, the answer in French', (_name, vat, readings) => {
  const { en, own } = both(vat, readings);
  expect(lintWorkbook(own)).toEqual([]);
  const [english, french] = [sheetOf(en), sheetOf(own)];
  const numbers = ({ cells }: SheetModel): [string, Cell][] =>
    Object.keys(english.cells).flatMap((address) => {
      const value = cells[address]?.value;
      return typeof value === 'string' ? [] : [[address, value ?? null]];
    });
  expect(numbers(french)).toEqual(numbers(english));
  const shown = Object.entries(french.cells).filter(
    ([address, { value }]) => typeof value === 'string' && !isOfFunction(address),
  );
  const left = shown.filter(([, { value }]) => ENGLISH.test(String(value)));
  expect(left.map(([address, { value }]) => `${address}: ${String(value)}`)).toEqual([]);
  // Grams in the answer read alike: a number format is no word to be said.
  const grams = ({ cells }: SheetModel): string[] => String(cells.B7?.value).match(/[\d.,]+ g/g) ?? [];
  expect(grams(french)).toEqual(grams(english));
  const large = ({ cells }: SheetModel): string[] => String(cells.B5?.value).match(/[\d.,]+/g) ?? [];
  expect(large(french)).toEqual(large(english));
  // A line of the answer stands where the English sheet has one.
  for (let row = 5; row <= 11; row++)
    expect([row, french.cells[`B${row}`]?.value !== '']).toEqual([
      row,
      english.cells[`B${row}`]?.value !== '',
    ]);
});

test('no English label is left, and every event is read back as what it was', () => {
  const events = ['reading', 'aired', 'jar', 'night', 'change', 'refill', 'rain'];
  const readings = events
    .map((what, i) => series([0, 5.5 + i / 100, what])[0])
    .filter((one) => one !== undefined);
  const { en, own } = both({}, readings);
  const without = (model: WorkbookModel): WorkbookModel => ({
    ...model,
    sheets: model.sheets.map((sheet) => ({
      ...sheet,
      cells: Object.fromEntries(
        Object.entries(sheet.cells).filter(
          ([address]) => !isOfFunction(address) && Number(address.replace(/\D/g, '')) < 70,
        ),
      ),
    })),
  });
  const names = new Set(['Ama', '1']);
  const left = englishIn(without(own), without(en), fr, names).filter(
    (text) => !/^[a-z ]+$/.test(text) || ENGLISH.test(text),
  );
  expect(left).toEqual([]);
  const grid = gridOf(sheetOf(own)).values.map((row) => row.slice(6, 15));
  const { lines, faults } = readLog(grid.slice(12, 27));
  expect(faults).toEqual([]);
  expect(lines.map(({ what }) => what)).toEqual(events);
});
