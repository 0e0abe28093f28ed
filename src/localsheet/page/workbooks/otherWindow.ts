import { download } from '../frame/toolbar';

/**
 * A workbook the pane makes opens in a window of its own, as in Excel. The bytes wait in the window that made
 * them.
 */
const waiting = new Map<string, Uint8Array>();
const PARAMETER = 'from';

declare global {
  interface Window {
    spawnbookHandOver?: (key: string) => Uint8Array | undefined;
  }
}

const bytesOf = (base64: string): Uint8Array =>
  Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));

export function openElsewhere(base64: string): void {
  const bytes = bytesOf(base64);
  const key = crypto.randomUUID();
  waiting.set(key, bytes);
  window.spawnbookHandOver = (wanted) => {
    const found = waiting.get(wanted);
    waiting.delete(wanted);
    return found;
  };
  // Browsers may refuse a window; the file is then saved instead.
  if (!window.open(`./?${PARAMETER}=${key}`, '_blank')) {
    waiting.delete(key);
    download(bytes, 'Workbook.xlsx');
  }
}

/** The workbook another window holds ready for this one. */
export function handedOver(): Promise<Uint8Array | undefined> {
  const key = new URLSearchParams(location.search).get(PARAMETER);
  if (key === null) return Promise.resolve(undefined);
  history.replaceState(null, '', location.pathname);
  const maker = window.opener as Window | null;
  try {
    return Promise.resolve(maker?.spawnbookHandOver?.(key));
  } catch {
    return Promise.resolve(undefined);
  }
}
