import { writeXlsx } from '../../shared/files';
import type { CellModel } from '../../shared/sheet/workbook/model';
import { bookOf, partsOf } from './support/support';

test.each<readonly [Readonly<Record<string, CellModel>>, string]>([
  [{}, 'A1'],
  [{ A1: { value: 1 } }, 'A1:A1'],
  [{ A3: { value: 1 } }, 'A1:A3'],
  [{ C1: { value: 1 }, B4: { value: 2 } }, 'A1:C4'],
])('the cells in use are told: %j', (cells, wanted) => {
  expect(partsOf(writeXlsx(bookOf(cells)))['xl/worksheets/sheet1.xml']).toContain(
    `<dimension ref="${wanted}"/>`,
  );
});
