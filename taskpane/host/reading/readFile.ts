import type { FileReading, PortTell } from '../port';
import { HostProblem } from '../port';

/**
 * The open workbook as .xlsx bytes, slice by slice. Not every host gives it, and some say so only when asked.
 */

interface Answer<T> {
  readonly status: string;
  readonly value: T;
  readonly error?: { readonly message?: string };
}
type Done<T> = (answer: Answer<T>) => void;
interface Slice {
  readonly index: number;
  readonly data: ArrayLike<number>;
}
interface OpenFile {
  readonly size: number;
  readonly sliceCount: number;
  getSliceAsync(index: number, done: Done<Slice>): void;
  closeAsync(done?: Done<unknown>): void;
}
interface FileDocument {
  readonly url?: unknown;
  getFileAsync(type: string, options: { readonly sliceSize: number }, done: Done<OpenFile>): void;
}

/** The largest slice Office allows. */
const SLICE = 4_194_304;
const PATIENCE_MS = 60_000;
const CLOSED =
  'Excel did not hand the open workbook to the pane. If a cell is being edited, press ' +
  'Enter and look again; otherwise save the workbook and choose the saved file.';

const documentDoor = (): FileDocument | undefined => {
  const office: unknown = Reflect.get(globalThis, 'Office');
  const found = (office as { context?: { document?: unknown } } | undefined)?.context?.document;
  const isDoor =
    typeof found === 'object' &&
    found !== null &&
    'getFileAsync' in found &&
    typeof found.getFileAsync === 'function';
  return isDoor ? (found as FileDocument) : undefined;
};

const asked = <T>(ask: (done: Done<T>) => void): Promise<T> =>
  new Promise((resolve, reject) => {
    // Some hosts never answer.
    const timer = setTimeout(() => {
      reject(new Error('no answer'));
    }, PATIENCE_MS);
    ask((answer) => {
      clearTimeout(timer);
      if (answer.status === 'succeeded') resolve(answer.value);
      else reject(new Error(answer.error?.message ?? answer.status));
    });
  });

const unescaped = (text: string): string => {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
};

/** "Season plan.xlsx" of a path or an address. */
export function nameOfUrl(url: unknown): string {
  const last =
    typeof url === 'string'
      ? (url
          .replace(/[?#].*$/, '')
          .split(/[\\/]/)
          .at(-1) ?? '')
      : '';
  return unescaped(last).trim() || 'Workbook.xlsx';
}

async function readSlices(file: OpenFile, tell: PortTell): Promise<Uint8Array> {
  const bytes = new Uint8Array(file.size);
  let at = 0;
  for (let index = 0; index < file.sliceCount; index++) {
    tell({ label: 'Fetching the workbook', done: index, total: file.sliceCount });
    const { data } = await asked<Slice>((done) => {
      file.getSliceAsync(index, done);
    });
    if (at + data.length > bytes.length) throw new Error('more bytes than announced');
    bytes.set(data, at);
    at += data.length;
  }
  if (at !== bytes.length) throw new Error('fewer bytes than announced');
  return bytes;
}

export async function readFile(tell: PortTell): Promise<FileReading> {
  const door = documentDoor();
  if (!door) return { kind: 'closed', sentence: CLOSED };
  let file: OpenFile;
  try {
    file = await asked<OpenFile>((done) => {
      door.getFileAsync('compressed', { sliceSize: SLICE }, done);
    });
  } catch {
    return { kind: 'closed', sentence: CLOSED };
  }
  try {
    return { kind: 'read', name: nameOfUrl(door.url), bytes: await readSlices(file, tell) };
  } catch (error) {
    throw new HostProblem(
      'The workbook did not arrive whole. Try again; if it stays so, save it and choose ' +
        'the saved file below.',
      { cause: error },
    );
  } finally {
    // Excel keeps at most two files open for a pane; one left open blocks the next reading.
    file.closeAsync();
  }
}
