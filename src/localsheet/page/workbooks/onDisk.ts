/**
 * A file on this machine that the page may write back to, where the browser offers that (File System Access);
 * elsewhere files come through a field and go to the downloads.
 */
export interface OnDisk {
  readonly handle: FileSystemFileHandle;
  /** When it was changed last, as far as this page knows. */
  readonly modified: number;
}

interface Picker {
  showOpenFilePicker?(options: object): Promise<readonly FileSystemFileHandle[]>;
}
interface Asks {
  queryPermission?(options: { mode: 'readwrite' }): Promise<PermissionState>;
  requestPermission?(options: { mode: 'readwrite' }): Promise<PermissionState>;
}
const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';
const OPTIONS = {
  id: 'spawnbook',
  types: [{ description: 'Workbooks', accept: { [XLSX]: ['.xlsx'] } }],
};

const isAborted = (fault: unknown): boolean => fault instanceof DOMException && fault.name === 'AbortError';

export const canPick = (): boolean => typeof (window as Picker).showOpenFilePicker === 'function';

/** undefined when the person closes the list of files. */
export async function pickFile(): Promise<FileSystemFileHandle | undefined> {
  try {
    return (await (window as Picker).showOpenFilePicker?.(OPTIONS))?.[0];
  } catch (fault) {
    if (isAborted(fault)) return undefined;
    throw fault;
  }
}

async function mayWrite(handle: FileSystemFileHandle): Promise<boolean> {
  const asks = handle as Asks;
  const mode = { mode: 'readwrite' } as const;
  if (!asks.queryPermission || !asks.requestPermission) return true;
  return (
    (await asks.queryPermission(mode)) === 'granted' || (await asks.requestPermission(mode)) === 'granted'
  );
}

/** Whether another program has changed the file since. */
export const isChangedSince = async ({ handle, modified }: OnDisk): Promise<boolean> =>
  (await handle.getFile()).lastModified !== modified;

/**
 * Writes the whole file. The browser writes beside it and puts the new one in its place at the end, so that a
 * failure leaves the old one whole. undefined when the person does not allow it.
 */
export async function writeBack({ handle }: OnDisk, bytes: Uint8Array): Promise<OnDisk | undefined> {
  if (!(await mayWrite(handle))) return undefined;
  const stream = await handle.createWritable();
  try {
    await stream.write(bytes.slice());
    await stream.close();
  } catch (fault) {
    await stream.abort().catch(() => undefined);
    throw fault;
  }
  return { handle, modified: (await handle.getFile()).lastModified };
}
