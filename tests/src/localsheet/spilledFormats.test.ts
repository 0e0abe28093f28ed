import { topOfSpill } from '../../../src/localsheet/univer/spilledFormats';

/** A table of five rows and three columns from B3 on, and one directly under it. */
const spills = {
  2: { 1: { startColumn: 1, endColumn: 3, endRow: 6 } },
  7: { 1: { startColumn: 1, endColumn: 2, endRow: 9 }, 8: { startColumn: 8, endColumn: 8, endRow: 7 } },
};

test.each([
  ['just below the first row', 3, 2, 2],
  ['the last cell', 6, 3, 2],
  ['the first row itself has its own format', 2, 2, undefined],
  ['the first row of the next table is not one of this', 7, 2, undefined],
  ['one row further it belongs to the next table', 8, 2, 7],
  ['beside the table', 6, 4, undefined],
  ['below the last table', 10, 1, undefined],
  ['left of it', 4, 0, undefined],
])('%s', (_, row, column, top) => {
  expect(topOfSpill(spills, row, column)).toBe(top);
});
