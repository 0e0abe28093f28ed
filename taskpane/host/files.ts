import { toProblem } from './excelErrors';
import type { FilePort } from './port';
import { HostProblem } from './port';

const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** In pieces: one call with a million arguments would overflow the stack. */
const PIECE = 0x8000;
export const base64Of = (bytes: Uint8Array): string => {
  let text = '';
  for (let at = 0; at < bytes.length; at += PIECE)
    text += String.fromCharCode(...bytes.subarray(at, at + PIECE));
  return btoa(text);
};

const openInWindow = async (fileName: string, bytes: Uint8Array): Promise<string> => {
  try {
    await Excel.createWorkbook(base64Of(bytes));
  } catch (error) {
    throw toProblem(error);
  }
  return `It is open in a new window, which may lie behind this one. Save it there, for example as ${fileName}.`;
};

const download = (fileName: string, bytes: Uint8Array): Promise<string> => {
  const url = URL.createObjectURL(new Blob([bytes.slice()], { type: XLSX }));
  const link = document.createElement('a');
  link.href = url;
  link.download = fileName;
  link.click();
  // The browser has taken the bytes when the click returns; a moment later the address can go.
  setTimeout(() => {
    URL.revokeObjectURL(url);
  }, 10_000);
  return Promise.resolve(`${fileName} is in your downloads.`);
};

export const browserFiles: FilePort = { saveWorkbook: download, saveCopy: download };

type Platform = 'PC' | 'Mac' | 'OfficeOnline' | undefined;
const platform = (): Platform => {
  const office: unknown = Reflect.get(globalThis, 'Office');
  const found: unknown =
    typeof office === 'object' && office !== null
      ? (office as { context?: { platform?: unknown } }).context?.platform
      : undefined;
  return found === 'PC' || found === 'Mac' || found === 'OfficeOnline' ? found : undefined;
};

/**
 * Excel on a Mac lets a pane download nothing, so Excel itself opens the file and the user saves it there. On
 * the web a download is the surer way and keeps every byte; on Windows it is what is left when no window
 * opens.
 */
export const excelFiles: FilePort = {
  saveWorkbook: openInWindow,
  async saveCopy(fileName, bytes) {
    const where = platform();
    if (where === 'OfficeOnline') return download(fileName, bytes);
    try {
      return await openInWindow(fileName, bytes);
    } catch (error) {
      if (where !== 'Mac') return download(fileName, bytes);
      throw error;
    }
  },
};

/** A file somebody chose, as its bytes. */
export const bytesOfFile = (file: Blob): Promise<Uint8Array> =>
  new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.addEventListener('load', () => {
      resolve(new Uint8Array(reader.result as ArrayBuffer));
    });
    reader.addEventListener('error', () => {
      reject(
        new HostProblem(
          'The file cannot be read. It may have been moved, or be open in a program that locks it.',
        ),
      );
    });
    reader.readAsArrayBuffer(file);
  });
