import type {
  FreezeReport,
  Inspection,
  SheetChoice,
  Verification,
} from '../../../../shared/catalogue/sharing';

/** A workbook on its way to somebody else. */
export interface ShareState {
  /** Why the open workbook cannot be had; a saved file can be chosen instead. */
  readonly closed: string | undefined;
  readonly look: Look | undefined;
  readonly choices: Choices;
  readonly made: CopyMade | undefined;
  readonly check: CheckState;
}

/** One reading of the workbook. The bytes are those the copy is made from. */
export interface Look {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** Cells named in it can be gone to. */
  readonly isOpen: boolean;
  readonly inspection: Inspection;
  readonly sheets: readonly SheetChoice[];
}

export interface Choices {
  /** As the page and the file shall be called. */
  readonly name: string;
  readonly leftOut: ReadonlySet<string>;
  /** Cells to empty, as the engine takes them. */
  readonly blank: ReadonlySet<string>;
  /** A column or range being typed. */
  readonly typed: string;
  readonly typedFault: string | undefined;
  readonly personal: boolean;
  readonly keepResults: boolean;
  readonly keepAlive: boolean;
  /** Go on although cells hold no finished value. */
  readonly accept: boolean;
}

export interface CopyMade {
  readonly fileName: string;
  readonly bytes: Uint8Array;
  readonly report: FreezeReport;
  /** What became of the file, as the host said it; undefined while nobody has it yet. */
  readonly delivered: string | undefined;
}

export interface CheckState {
  readonly file: { readonly name: string; readonly bytes: Uint8Array } | undefined;
  readonly digest: string;
  readonly fault: string | undefined;
  readonly result: Verification | undefined;
}

export const initialChoices: Choices = {
  name: '',
  leftOut: new Set(),
  blank: new Set(),
  typed: '',
  typedFault: undefined,
  personal: true,
  keepResults: false,
  keepAlive: false,
  accept: false,
};
export const initialShare: ShareState = {
  closed: undefined,
  look: undefined,
  choices: initialChoices,
  made: undefined,
  check: { file: undefined, digest: '', fault: undefined, result: undefined },
};

/** Without folder and ending. */
export const plainName = (fileName: string): string =>
  fileName
    .replace(/^.*[\\/]/, '')
    .replace(/\.(xlsx|xlsm|xltx)$/i, '')
    .trim();

/** Nothing a file name may not hold on any system. */
export const copyFileName = (name: string): string =>
  `${
    name
      .replace(/[\\/:*?"<>|\u0000-\u001f]+/g, ' ')
      .replace(/\s+/g, ' ')
      .trim()
      .replace(/[. ]+$/, '') || 'Workbook'
  } to share.xlsx`;

/** 64 letters and digits, however they were written down. */
export const plainDigest = (typed: string): string => typed.replace(/[\s-]+/g, '').toLowerCase();
export const isDigest = (text: string): boolean => /^[0-9a-f]{64}$/.test(text);
export const digestText = (digest: string): string => digest.replace(/(.{8})(?=.)/g, '$1 ');

/** Does anything go besides the formulas? */
export const leavesOut = ({ leftOut, blank, personal }: Choices): boolean =>
  leftOut.size > 0 || blank.size > 0 || personal;
