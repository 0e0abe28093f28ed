import type { Executor } from '../executor';
import { RequestContext } from './context';
import type { Registry } from './customFunctions';
import { customFunctions } from './customFunctions';
import { ENUMS } from './enums';
import { OfficeError } from './errors';
import { ClientObject } from './object';

export { CustomFunctionError } from './customFunctions';
export type { Registry } from './customFunctions';

/** The globals a page of an add-in expects: Office, Excel, OfficeExtension, CustomFunctions. */

/** Requirement sets answered as present: what the schema covers. Notes are of ExcelApi 1.18. */
const SETS: Readonly<Record<string, string>> = {
  ExcelApi: '1.18',
  CustomFunctionsRuntime: '1.3',
  SharedRuntime: '1.1',
};
const SLICE = 4_194_304;

export interface OfficeOptions {
  readonly executor: Executor;
  /** The open workbook as .xlsx bytes, for getFileAsync. */
  readonly fileBytes?: () => Promise<Uint8Array>;
  /** Its name, with the ending. */
  readonly fileName?: () => string;
  /** Language of the program, as a tag: en-US. */
  readonly language?: string;
}

type Batch = (context: RequestContext) => unknown;
const contextOf = (executor: Executor, given: unknown): RequestContext => {
  if (given instanceof RequestContext) return given;
  if (given instanceof ClientObject) return given.context;
  if (Array.isArray(given) && given[0] instanceof ClientObject) return given[0].context;
  return new RequestContext(executor);
};

async function run(executor: Executor, given: unknown, batch: unknown): Promise<unknown> {
  if (typeof batch !== 'function') throw new OfficeError('InvalidArgument', 'Excel.run takes a function.');
  const context = contextOf(executor, given);
  context.isTracking = true;
  try {
    const promise = (batch as Batch)(context);
    if (typeof (promise as { then?: unknown } | undefined)?.then !== 'function')
      throw new OfficeError(
        'RunMustReturnPromise',
        'The function given to Excel.run must answer with a promise.',
      );
    const result = await promise;
    await context.sync();
    return result;
  } finally {
    await context.finish();
  }
}

function excel(executor: Executor) {
  return {
    ...ENUMS,
    RequestContext: class extends RequestContext {
      constructor() {
        super(executor);
      }
    },
    run: (first: unknown, second?: unknown): Promise<unknown> =>
      run(executor, second === undefined ? undefined : first, second ?? first),
    createWorkbook: (base64?: string): Promise<unknown> =>
      run(executor, undefined, (context: RequestContext) => {
        const application = context.application as { createWorkbook(file?: string): { open(): void } };
        application.createWorkbook(base64).open();
        return Promise.resolve();
      }),
  };
}

interface AsyncResult {
  readonly status: 'succeeded' | 'failed';
  readonly value?: unknown;
  readonly error?: unknown;
}
type Callback = (result: AsyncResult) => void;

/** The document as a file, in slices. */
function documentFile(fileBytes: OfficeOptions['fileBytes']) {
  return (type: string, options: { sliceSize?: number } | Callback, after?: Callback): void => {
    const done = typeof options === 'function' ? options : after;
    const slice = (typeof options === 'object' ? options.sliceSize : undefined) ?? SLICE;
    if (type !== 'compressed' || !fileBytes)
      return done?.({ status: 'failed', error: { code: 5001, message: 'This host gives no such file.' } });
    void fileBytes().then(
      (bytes) => {
        const sliceCount = Math.max(1, Math.ceil(bytes.length / slice));
        const file = {
          size: bytes.length,
          sliceCount,
          getSliceAsync: (index: number, ready: Callback) => {
            const data = Array.from(bytes.subarray(index * slice, (index + 1) * slice));
            ready({ status: 'succeeded', value: { index, size: data.length, data } });
          },
          closeAsync: (ready?: Callback) => ready?.({ status: 'succeeded' }),
        };
        done?.({ status: 'succeeded', value: file });
      },
      (error: unknown) =>
        done?.({
          status: 'failed',
          error: { code: 5001, message: error instanceof Error ? error.message : String(error) },
        }),
    );
  };
}

function office({ fileBytes, fileName, language = 'en-US' }: OfficeOptions) {
  const info = { host: 'Excel', platform: 'OfficeOnline' } as const;
  const isSetSupported = (name: string, version = '1.1'): boolean => {
    const [major = 0, minor = 0] = String(version).split('.').map(Number);
    const [has = 0, hasMinor = 0] = (SETS[name] ?? '0.0').split('.').map(Number);
    return has > major || (has === major && hasMinor >= minor && has > 0);
  };
  return {
    HostType: { Excel: 'Excel' },
    PlatformType: { PC: 'PC', Mac: 'Mac', OfficeOnline: 'OfficeOnline' },
    FileType: { Compressed: 'compressed' },
    AsyncResultStatus: { Succeeded: 'succeeded', Failed: 'failed' },
    context: {
      ...info,
      displayLanguage: language,
      contentLanguage: 'en-US',
      diagnostics: { ...info, version: '0.0.0.0' },
      requirements: { isSetSupported },
      document: {
        getFileAsync: documentFile(fileBytes),
        get url() {
          return fileName?.() ?? '';
        },
      },
    },
    onReady: async (callback?: (given: typeof info) => unknown): Promise<typeof info> => {
      await callback?.(info);
      return info;
    },
    actions: { associate: (): void => undefined },
    addin: {
      showAsTaskpane: (): Promise<void> => Promise.resolve(),
      hide: (): Promise<void> => Promise.resolve(),
    },
  };
}

export interface OfficeGlobals {
  readonly Office: ReturnType<typeof office>;
  readonly Excel: ReturnType<typeof excel>;
  readonly OfficeExtension: {
    readonly Error: typeof OfficeError;
    readonly config: { extendedErrorLogging: boolean };
  };
  readonly CustomFunctions: ReturnType<typeof customFunctions>;
  readonly registry: Registry;
}

export function createOffice(options: OfficeOptions): OfficeGlobals {
  const registry: Registry = new Map();
  return {
    Office: office(options),
    Excel: excel(options.executor),
    OfficeExtension: { Error: OfficeError, config: { extendedErrorLogging: false } },
    CustomFunctions: customFunctions(registry),
    registry,
  };
}

/** Puts the globals where pages look for them. */
export function installOffice(globals: OfficeGlobals, target: object = globalThis): void {
  const { Office, Excel, OfficeExtension, CustomFunctions } = globals;
  Object.assign(target, { Office, Excel, OfficeExtension, CustomFunctions });
}
