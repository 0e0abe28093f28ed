/**
 * A file that cannot be worked on: the sentence says what is wrong and what to do. Thrown inside this folder,
 * never out of it.
 */
export class Refusal extends Error {
  constructor(readonly sentence: string) {
    super(sentence);
    this.name = 'Refusal';
  }
}

const AGAIN = 'Open it in Excel, choose Save As and Excel Workbook (.xlsx), and share that file.';

export const REFUSED = {
  empty: 'The file is empty.',
  notZip: 'This is not an Excel workbook (.xlsx). Choose a workbook saved as .xlsx.',
  password:
    'The workbook is protected with a password to open it. Remove the password (File, ' +
    'Info, Protect Workbook, Encrypt), save, and try again.',
  oldFormat: `This is a workbook in the old .xls format. ${AGAIN}`,
  binary: `This is a binary workbook (.xlsb). ${AGAIN}`,
  macros: `The workbook holds macros. Macros are not passed on, because every reader would be asked to trust them. ${AGAIN}`,
  zip64: `The file is packed in the format for very large files (zip64), which is not read here. ${AGAIN}`,
  packing: `A part of the file is packed in a way that workbooks do not use. ${AGAIN}`,
  doctype:
    'A part of the file holds a document type declaration. Workbooks never do; such a ' +
    'file may be an attack and is not opened.',
  tooLarge: (megabytes: number): string =>
    `Unpacked, the file would be larger than ${megabytes} MB. Split the workbook, or remove what the reader does not need.`,
  bomb:
    'A part of the file unpacks to far more than a workbook could hold. Such a file may ' +
    'be an attack and is not opened.',
  cutShort: 'The file is cut short: its end is missing. Copy or download it again.',
  damaged: (what: string): string =>
    `The file is damaged (${what}). Copy or download it again, or open and save it in Excel, which may repair it.`,
  encoding: (part: string): string => `The part ${part} is not written in UTF-8. ${AGAIN}`,
  noWorkbook: 'The file is a zip archive but not an Excel workbook.',
} as const;
