import type { Progress } from '../../../taskpane/host/port';
import { nameOfUrl, readFile } from '../../../taskpane/host/reading/readFile';
import {
  copyFileName,
  digestText,
  isDigest,
  plainDigest,
  plainName,
} from '../../../taskpane/screens/share/state/share';
import { excelFiles } from '../../../taskpane/host/files';
import { readWish } from '../../../taskpane/screens/share/commands/choices';

/**
 * The workbook's bytes through Office's slices, by a stand-in that behaves as documented and misbehaves on
 * demand.
 */

type Done = (answer: { status: string; value?: unknown; error?: { message: string } }) => void;
const page = globalThis as { Office?: unknown; Excel?: unknown };
interface Office {
  closed: number;
  asked: unknown[];
  office: unknown;
}

function standIn(
  bytes: readonly number[],
  size: number,
  fault: { open?: boolean; slice?: number; short?: boolean; url?: string } = {},
): Office {
  const seen: Office = { closed: 0, asked: [], office: undefined };
  const file = {
    size: bytes.length,
    sliceCount: Math.ceil(bytes.length / size),
    getSliceAsync: (index: number, done: Done) => {
      if (index === fault.slice) return done({ status: 'failed', error: { message: 'lost' } });
      const data = bytes.slice(index * size, (index + 1) * size);
      done({ status: 'succeeded', value: { index, data: fault.short ? data.slice(1) : data } });
    },
    closeAsync: () => {
      seen.closed++;
    },
  };
  seen.office = {
    context: {
      document: {
        url: fault.url ?? 'C:\\Farm\\Season plan.xlsx',
        getFileAsync: (type: string, options: unknown, done: Done) => {
          seen.asked.push([type, options]);
          done(
            fault.open
              ? { status: 'failed', error: { message: '11001' } }
              : { status: 'succeeded', value: file },
          );
        },
      },
    },
  };
  return seen;
}
afterEach(() => {
  delete page.Office;
  delete page.Excel;
});
const BYTES = Array.from({ length: 25 }, (_, i) => (i * 37) % 256);

test('slices are put together in order, progress is told, the file is closed', async () => {
  const seen = standIn(BYTES, 10);
  page.Office = seen.office;
  const steps: Progress[] = [];
  const got = await readFile((step) => {
    steps.push(step);
  });
  expect(got).toEqual({ kind: 'read', name: 'Season plan.xlsx', bytes: Uint8Array.from(BYTES) });
  expect(steps.map(({ done, total }) => [done, total])).toEqual([
    [0, 3],
    [1, 3],
    [2, 3],
  ]);
  expect([seen.closed, seen.asked]).toEqual([1, [['compressed', { sliceSize: 4_194_304 }]]]);
});

test.each([
  ['without Office', undefined],
  ['without the method', { context: { document: {} } }],
])('%s another way is offered', async (_, office) => {
  page.Office = office;
  const got = await readFile(() => undefined);
  expect(got.kind === 'closed' && got.sentence).toMatch(/choose the saved file/);
});

test('a host that refuses only when asked is closed too', async () => {
  page.Office = standIn(BYTES, 10, { open: true }).office;
  expect((await readFile(() => undefined)).kind).toBe('closed');
});

test.each([
  ['a slice that is lost', { slice: 1 }],
  ['a slice that is too short', { short: true }],
])('%s is a sentence, and the file is closed', async (_, fault) => {
  const seen = standIn(BYTES, 10, fault);
  page.Office = seen.office;
  await expect(readFile(() => undefined)).rejects.toThrow(/did not arrive whole/);
  expect(seen.closed).toBe(1);
});

test('a host that never answers counts as closed after a minute', async () => {
  jest.useFakeTimers();
  page.Office = { context: { document: { getFileAsync: () => undefined } } };
  const got = readFile(() => undefined);
  await jest.advanceTimersByTimeAsync(60_000);
  expect((await got).kind).toBe('closed');
  jest.useRealTimers();
});

test.each([
  ['https://farm.example/books/Season%20plan.xlsx?web=1', 'Season plan.xlsx'],
  ['/Users/runa/plan.xlsx', 'plan.xlsx'],
  ['', 'Workbook.xlsx'],
  [undefined, 'Workbook.xlsx'],
  ['100% sure.xlsx', '100% sure.xlsx'],
])('the name in %j', (url, name) => {
  expect(nameOfUrl(url)).toBe(name);
});

describe('where a copy goes', () => {
  const bytes = Uint8Array.of(1, 2, 3);
  const clicked: string[] = [];
  beforeEach(() => {
    clicked.length = 0;
    URL.createObjectURL = () => 'blob:copy';
    URL.revokeObjectURL = () => undefined;
    jest.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function click(
      this: HTMLAnchorElement,
    ) {
      clicked.push(this.download);
    });
    jest.useFakeTimers();
  });
  afterEach(() => {
    jest.restoreAllMocks();
    jest.useRealTimers();
  });
  const on = (platform: string, createWorkbook: (base64: string) => Promise<void>): void => {
    page.Office = { context: { platform } };
    page.Excel = { createWorkbook };
  };

  test('on the web it is a download', async () => {
    const made = jest.fn(() => Promise.resolve());
    on('OfficeOnline', made);
    expect(await excelFiles.saveCopy('a.xlsx', bytes)).toContain('downloads');
    expect([clicked, made.mock.calls]).toEqual([['a.xlsx'], []]);
  });

  test('on Windows it opens in a window, and is a download when none opens', async () => {
    const given: string[] = [];
    on('PC', async (base64) => {
      given.push(base64);
    });
    expect(await excelFiles.saveCopy('a.xlsx', bytes)).toContain('new window');
    expect(given).toEqual(['AQID']);
    on('PC', () => Promise.reject(new Error('policy')));
    expect(await excelFiles.saveCopy('a.xlsx', bytes)).toContain('downloads');
  });

  test('on a Mac a window that does not open is a sentence: a download would go nowhere', async () => {
    on('Mac', () => Promise.reject(new Error('policy')));
    await expect(excelFiles.saveCopy('a.xlsx', bytes)).rejects.toThrow(/Excel/);
    expect(clicked).toEqual([]);
  });
});

test('names and digests as people write them', () => {
  expect(copyFileName(plainName('C:\\Farm\\Season: 2027?.xlsx'))).toBe('Season 2027 to share.xlsx');
  expect(copyFileName(' . ')).toBe('Workbook to share.xlsx');
  const digest = 'a1'.repeat(32);
  expect(plainDigest(digestText(digest).toUpperCase())).toBe(digest);
  expect([isDigest(digest), isDigest(digest.slice(1))]).toEqual([true, false]);
});

test('cells as people type them', () => {
  const sheets = [
    { name: 'My buyers', isHidden: false, isWorksheet: true, columns: [] },
    { name: 'Log', isHidden: false, isWorksheet: true, columns: [] },
  ];
  expect(readWish("'my buyers'!c", sheets)).toEqual({ cells: "'My buyers'!C" });
  expect(readWish('Log!$B$2:$D$40', sheets)).toEqual({ cells: 'Log!B2:D40' });
  expect(readWish('Log!D:D', sheets)).toEqual({ cells: 'Log!D' });
  expect(readWish('Log!pH', sheets)).toEqual({ cells: 'Log!PH' });
  expect(readWish('Log!12', sheets)).toHaveProperty('fault');
  expect(readWish(' ', sheets)).toHaveProperty('fault');
  expect(readWish('C', sheets.slice(1))).toEqual({ cells: 'Log!C' });
});
