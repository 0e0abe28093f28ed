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

const AGAIN = 'Open it in Excel, choose Save As and Excel Workbook (.xlsx), and use that file.';

export const REFUSED = {
  empty: 'The file is empty.',
  notZip: 'This is not an Excel workbook (.xlsx). Choose a workbook saved as .xlsx.',
  pdf: 'This is a PDF, not a workbook. Ask for the .xlsx file it was made from.',
  webPage: 'This is a web page or XML file, whatever its name says. Open it in Excel and save it as .xlsx.',
  textTable:
    'This looks like a text (CSV) file, not an Excel workbook. Open it in the spreadsheet and save it as .xlsx.',
  openDocument: 'This is an OpenDocument file. Open it in LibreOffice and save it as .xlsx (Excel 2007-365).',
  word: 'This is a Word document, not a workbook.',
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
  cutShort:
    'The file is damaged: it was cut short while copying, its end is missing. Copy or download it again.',
  damaged: (what: string): string =>
    `The file is damaged (${what}). Copy or download it again, or open and save it in Excel, which may repair it.`,
  encoding: (part: string): string => `The part ${part} is not written in UTF-8. ${AGAIN}`,
  noWorkbook: 'This zip file holds no workbook: it is not an Excel workbook. Pick the .xlsx file itself.',
  noSheet: 'The file holds no sheet with cells.',
  formulas: `The formulas of a sheet, written out, are longer than any workbook needs. ${AGAIN}`,
  sharedPart:
    'Two sheets of the file are one and the same part; no spreadsheet program writes that, so it is not opened.',
} as const;
