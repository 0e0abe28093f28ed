import { CATALOGUE } from '../../shared/catalogue';
import { CustomFunctionError, createOffice, installOffice } from '../../src/officeStandIn/client/office';
import { createExecutor } from '../../src/officeStandIn/executor';
import { createMemoryBook } from '../../src/officeStandIn/memoryBook';
import { createLastErrors } from '../../src/shell/lastErrors';
import type { Host } from '../../src/shell/register';
import { registerAll } from '../../src/shell/register';

const set = (fileBytes?: () => Promise<Uint8Array>) =>
  createOffice({ executor: createExecutor(createMemoryBook()), ...(fileBytes ? { fileBytes } : {}) });

test('Office.onReady answers as a page inside Excel expects', async () => {
  const { Office } = set();
  let told: unknown;
  await expect(
    Office.onReady((info) => {
      told = info;
    }),
  ).resolves.toEqual({ host: 'Excel', platform: 'OfficeOnline' });
  expect(told).toEqual({ host: 'Excel', platform: 'OfficeOnline' });
});

test.each([
  ['ExcelApi', '1.1', true],
  ['ExcelApi', '1.14', true],
  ['ExcelApi', '1.18', true],
  ['ExcelApi', '1.19', false],
  ['ExcelApi', '2.0', false],
  ['ExcelApi', undefined, true],
  ['CustomFunctionsRuntime', '1.3', true],
  ['CustomFunctionsRuntime', '1.4', false],
  ['SharedRuntime', '1.1', true],
  ['PowerPointApi', '1.1', false],
])('requirement set %s %s: %s', (name, version, isThere) => {
  expect(set().Office.context.requirements.isSetSupported(name, version)).toBe(isThere);
});

test("the functions register with it and its errors are the host's own", () => {
  const { CustomFunctions, registry } = set();
  registerAll(CATALOGUE, CustomFunctions as unknown as Host, createLastErrors());
  const share = registry.get('AMMONIA.SHARE');
  expect(share?.([[8]], [[25]], { address: 'S!A1' })).toEqual([[expect.closeTo(0.0537, 3)]]);
  expect(() => share?.([['x']], [[25]], {})).toThrow(CustomFunctionError);
});

test('a map of functions registers as well, letter case aside', () => {
  const { CustomFunctions, registry } = set();
  CustomFunctions.associate({ 'a.b': () => 1, C: () => 2 });
  expect([...registry.keys()]).toEqual(['A.B', 'C']);
});

test('the document comes as a file in slices', async () => {
  const bytes = Uint8Array.from({ length: 10 }, (_, i) => i);
  const { Office } = set(() => Promise.resolve(bytes));
  interface Result {
    readonly status: string;
    readonly value?: unknown;
  }
  interface File {
    readonly size: number;
    readonly sliceCount: number;
    getSliceAsync(i: number, done: (r: Result) => void): void;
  }
  const result = await new Promise<Result>((done) => {
    Office.context.document.getFileAsync('compressed', { sliceSize: 4 }, done);
  });
  const file = result.value as File;
  const slices = await Promise.all(
    [0, 1, 2].map(
      (i) =>
        new Promise<unknown>((done) => {
          file.getSliceAsync(i, (r) => {
            done((r.value as { data: number[] }).data);
          });
        }),
    ),
  );
  expect([result.status, file.size, file.sliceCount, slices]).toEqual([
    'succeeded',
    10,
    3,
    [
      [0, 1, 2, 3],
      [4, 5, 6, 7],
      [8, 9],
    ],
  ]);
});

test.each([
  ['a host without files', undefined],
  ['a host that fails', () => Promise.reject(new Error('no'))],
])('%s says so', async (_what, bytes) => {
  const { Office } = set(bytes);
  const status = await new Promise((done) => {
    Office.context.document.getFileAsync('compressed', (result) => {
      done(result.status);
    });
  });
  expect(status).toBe('failed');
});

test('the globals land where pages look for them', () => {
  const page: Record<string, unknown> = {};
  installOffice(set(), page);
  expect(Object.keys(page)).toEqual(['Office', 'Excel', 'OfficeExtension', 'CustomFunctions']);
});

test('notes on cells', async () => {
  const book = createMemoryBook();
  const { Excel: api } = createOffice({ executor: createExecutor(book) });
  const excel = api as unknown as typeof Excel;
  await excel.run(async (context) => {
    const { notes } = context.workbook.worksheets.getItem('Sheet1');
    notes.add('B2', 'measured at noon');
    await context.sync();
  });
  expect(book.note('{sheet1}', 1, 1)).toBe('measured at noon');
});
