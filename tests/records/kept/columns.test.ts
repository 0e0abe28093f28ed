import { expectKept } from '../../support/kept';
import { KINDS, LANGUAGES, madeTable } from '../support/foreign';
import { audit, sheetOf } from '../support/grid';
import { columnsOf, findingsOf } from '../support/said';

const TODAY = 47_200;

/** That these are read as what they are made as is held in tests/records/foreign. */
test('columns of tables in other languages, and all that is said of them', () => {
  expectKept(
    'foreign-columns',
    LANGUAGES.flatMap((language, l) =>
      KINDS.map((kind, k) => {
        const { cells, formats } = madeTable(language, kind, 500 + 10 * l + k);
        const report = audit([sheetOf('Sheet1', cells, formats)], { today: TODAY });
        return { language: language.name, kind, columns: columnsOf(report), findings: findingsOf(report) };
      }),
    ),
  );
});
