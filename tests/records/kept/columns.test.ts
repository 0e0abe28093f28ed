import { expectKept } from '../../support/kept';
import type { MadeBook } from '../support/foreign';
import { KINDS, LANGUAGES, madeTable } from '../support/foreign';
import { audit, sheetOf } from '../support/grid';
import { columnsOf, findingsOf } from '../support/said';

const TODAY = 47_200;

/** Ten times the last number of a row beyond the middle: relations between columns and lines speak of it. */
function slip(cells: MadeBook['cells']): MadeBook['cells'] {
  const at = Math.floor(cells.length * 0.6);
  const column = cells[at]?.findLastIndex((cell) => typeof cell === 'number') ?? -1;
  return cells.map((row, r) =>
    r !== at ? row : row.map((cell, c) => (c === column && typeof cell === 'number' ? 10 * cell : cell)),
  );
}

/** That these are read as what they are made as is held in tests/records/foreign. */
test('columns of tables in other languages, and all that is said of them', () => {
  expectKept(
    'foreign-columns',
    LANGUAGES.flatMap((language, l) =>
      KINDS.map((kind, k) => {
        const { cells, formats } = madeTable(language, kind, 500 + 10 * l + k);
        const [report, slipped] = [cells, slip(cells)].map((some) =>
          audit([sheetOf('Sheet1', some, formats)], { today: TODAY }),
        );
        if (!report || !slipped) throw new Error('no report');
        return {
          language: language.name,
          kind,
          columns: columnsOf(report),
          findings: findingsOf(report),
          slipped: findingsOf(slipped),
        };
      }),
    ),
  );
});
