import { readFileSync } from 'node:fs';
import { createContext, runInContext } from 'node:vm';
import { createOffice } from '../../../src/officeStandIn/client/office';
import type { Executor } from '../../../src/officeStandIn/executor';
import { createExecutor } from '../../../src/officeStandIn/executor';
import type { MemoryBook } from '../../../src/officeStandIn/memoryBook';
import { createMemoryBook } from '../../../src/officeStandIn/memoryBook';
import { calculate } from './calculate';

/**
 * Two client libraries over one executor: the one Excel pages really load, and ours for the local sheet. A
 * test that passes on both says that code written against Excel behaves the same beside the local sheet.
 */
export type ExcelApi = typeof Excel;
export interface Client {
  readonly name: string;
  readonly connect: (executor: Executor) => ExcelApi;
}

const REAL = 'node_modules/@microsoft/office-js/dist/excel-web-16.00.js';

interface RealGlobals {
  readonly Excel: ExcelApi;
  readonly OfficeExtension: { readonly SessionBase: { _overrideSession?: unknown } };
}

function loadReal(): RealGlobals {
  // The library keeps polling timers; they must not keep the test run alive.
  const later = (run: () => void, delay?: number): NodeJS.Timeout => setTimeout(run, delay).unref();
  const page: Record<string, unknown> = {
    console,
    setTimeout: later,
    clearTimeout,
    navigator: { userAgent: 'test' },
    location: { href: 'https://localhost/' },
    document: {},
  };
  page.window = page;
  page.self = page;
  runInContext(readFileSync(REAL, 'utf8'), createContext(page), { filename: REAL });
  return page as unknown as RealGlobals;
}
let real: RealGlobals | undefined;

interface Message {
  readonly Body: Parameters<Executor['execute']>[0];
}
const sessionOver = (executor: Executor): unknown => ({
  _resolveRequestUrlAndHeaderInfo: () => Promise.resolve({ url: '', headers: {} }),
  _createRequestExecutorOrNull: () => ({
    executeAsync: async (_data: unknown, _flags: unknown, message: Message) => {
      // What crosses is JSON, in both directions.
      const Body: unknown = JSON.parse(
        JSON.stringify(await executor.execute(JSON.parse(JSON.stringify(message.Body)) as Message['Body'])),
      );
      return { HttpStatusCode: 200, ErrorCode: null, ErrorMessage: null, Headers: {}, Body };
    },
  }),
});

export const CLIENTS: readonly Client[] = [
  {
    name: 'the Excel client library',
    connect: (executor) => {
      real ??= loadReal();
      real.OfficeExtension.SessionBase._overrideSession = sessionOver(executor);
      return real.Excel;
    },
  },
  {
    name: "the local sheet's client",
    connect: (executor) => createOffice({ executor }).Excel as unknown as ExcelApi,
  },
];

export interface Desk {
  readonly api: ExcelApi;
  readonly book: MemoryBook;
  readonly opened: string[];
}
/** A fresh book behind a client. */
export function desk(client: Client): Desk {
  const book = createMemoryBook(calculate);
  const opened: string[] = [];
  return {
    book,
    opened,
    api: client.connect(
      createExecutor(book, {
        openWorkbook: (base64) => {
          opened.push(base64);
        },
      }),
    ),
  };
}

/** The code of the error a promise rejects with. */
export async function codeOf(promise: Promise<unknown>): Promise<string> {
  try {
    await promise;
    return 'no error';
  } catch (error) {
    return String((error as { code?: unknown }).code ?? error);
  }
}
