import { toProblem } from './excelErrors';
import type { FilePort } from './port';

const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** In pieces: one call with a million arguments would overflow the stack. */
const PIECE = 0x8000;
export const base64Of = (bytes: Uint8Array): string => {
  let text = '';
  for (let at = 0; at < bytes.length; at += PIECE) text += String.fromCharCode(...bytes.subarray(at, at + PIECE));
  return btoa(text);
};

/** Excel on a Mac lets a pane download nothing, so Excel itself opens the file and the user saves it there. */
export const excelFiles: FilePort = {
  async saveWorkbook(fileName, bytes) {
    try {
      await Excel.createWorkbook(base64Of(bytes));
    } catch (error) {
      throw toProblem(error);
    }
    return `The plan is open in a new window. Save it there, for example as ${fileName}.`;
  },
};

export const browserFiles: FilePort = {
  saveWorkbook(fileName, bytes) {
    const url = URL.createObjectURL(new Blob([bytes.slice()], { type: XLSX }));
    const link = document.createElement('a');
    link.href = url;
    link.download = fileName;
    link.click();
    // The browser has taken the bytes when the click returns; a moment later the address can go.
    setTimeout(() => { URL.revokeObjectURL(url); }, 10_000);
    return Promise.resolve(`${fileName} is in your downloads.`);
  },
};
