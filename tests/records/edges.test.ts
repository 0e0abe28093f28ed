import { contentOf } from '../../shared/records/columns/cells/content';
import { unitOfText } from '../../shared/records/columns/cells/units';
import { evidenceOf, scoreOf } from '../../shared/records/meaning/fit';
import { SheetReader } from '../../shared/records/read/sheetCells';
import { KIND, kindOfText } from '../../shared/records/shape/kinds';
import { auditGrid } from './support/grid';

/** Small turns of the reading that no whole book shows. */
describe('a unit over words', () => {
  const content = contentOf({
    length: 3,
    cellAt: (i) => ['cloudy', 'fed late', 'net torn'][i] ?? null,
    numberAt: () => NaN,
    isDate: () => false,
  });
  const evidence = evidenceOf('Note', '');
  const worth = (unit: string): number =>
    scoreOf('note', { ...evidence, unit: unitOfText(unit) }, content) - scoreOf('note', evidence, content);
  test.each([
    ['h', -0.2],
    ['pcs', -0.2],
    ['cm', -0.2],
    ['kg', -1.5],
    ['mL', -1.5],
    ['°C', -1.5],
  ])('%s', (unit, wanted) => {
    expect(unitOfText(unit)).toBeDefined();
    expect(worth(unit)).toBeCloseTo(wanted, 9);
  });
});

test('columns at the right whose only heading stands a line higher, with little below', () => {
  const lines = Array.from({ length: 8 }, (_, i) => [
    `0${i + 1}/04/2025`,
    110 + 7 * i,
    71_000 + 900 * i,
    i < 2 ? 4 : null,
    i < 2 ? 'wind' : null,
  ]);
  const { tables } = auditGrid([
    ['Date', 'Eggs', null, 'Dead', 'Remarks'],
    [null, 'weight (g)', 'number', null, null],
    ...lines,
  ]);
  expect(tables.map(({ mapping }) => mapping.map(({ header, parent }) => `${parent}>${header}`))).toEqual([
    ['>Date', 'Eggs>weight (g)', 'Eggs>number', '>Dead', '>Remarks'],
  ]);
});

test('a letter and many digits is a tag, whatever the letter is short for', () => {
  expect(['C20240131', 'C-20240131', 'k1234567', 'N5000000'].map(kindOfText)).toEqual([
    KIND.word,
    KIND.word,
    KIND.word,
    KIND.number,
  ]);
});

/** Blank places count as well: 8 million of them, and one for each line. */
test('a sheet of many blanks is read as far as there is room', () => {
  const [lines, room] = [20_100, 8_000_000];
  const reader = new SheetReader('A');
  for (let row = 0; row < lines; row++) reader.putNumber(row, 0, row, false);
  for (let column = 1; column < 400; column++) reader.putNumber(lines, column, column, false);
  const { columns, lost } = reader.build();
  const fitting = Math.floor((room - (lines + 1)) / lines) + 1;
  expect(columns.length).toBe(1 + fitting);
  expect(lost).toEqual([expect.stringContaining(`cells from about row ${lines + 1} on were not read`)]);
});
