import { createExecutor, createOffice, installOffice } from '../../src/officeStandIn';
import type { StandInBook } from '../../src/officeStandIn';
import { createMemoryBook } from '../../src/officeStandIn/memoryBook';
import { summaryOf } from '../../shared/books/summary';
import { parseArea } from '../../shared/sheet/formula/address';
import { writeWorkbook } from '../../taskpane/host/writing/renderWorkbook';
import { modelOf } from '../run/support';

/**
 * The summary written into the workbook that holds the plan: names of the plan that are there already are
 * used, none is added.
 */

const quiet = (): void => undefined;
const names = async (book: StandInBook): Promise<string[]> => (await book.sheets()).map(({ name }) => name);

test('it lands beside the plan, keeps every formula, and asks when its name is taken', async () => {
  const book = createMemoryBook();
  installOffice(createOffice({ executor: createExecutor(book) }));
  const plan = modelOf({ product: 'fry' });
  await writeWorkbook(plan, '', quiet);
  const before = { sheets: await names(book), names: await book.names() };
  const summary = summaryOf(plan);
  if ('fault' in summary) throw new Error(summary.fault);
  expect(await writeWorkbook(summary.model, '', quiet)).toEqual({ kind: 'written', sheets: ['Summary'] });
  expect(await names(book)).toEqual([...before.sheets, 'Summary']);
  expect(await book.names()).toEqual(before.names);
  const sheet = (await book.sheets()).find(({ name }) => name === 'Summary');
  if (!sheet) throw new Error('no summary');
  for (const [address, { formula }] of Object.entries(summary.model.sheets[0]?.cells ?? {})) {
    const area = formula === undefined ? undefined : parseArea(address);
    if (!area) continue;
    const [[written] = []] = await book.read(
      sheet.id,
      { row: area.top, column: area.left, rows: 1, columns: 1 },
      'formulas',
    );
    expect([address, written]).toEqual([address, formula]);
  }
  expect(await book.charts(sheet.id)).toHaveLength(1);
  expect(await writeWorkbook(summary.model, '', quiet)).toEqual({
    kind: 'taken',
    sheets: ['Summary'],
    names: [],
    free: ' 2',
  });
  expect(await writeWorkbook(summary.model, ' 2', quiet)).toEqual({ kind: 'written', sheets: ['Summary 2'] });
});
