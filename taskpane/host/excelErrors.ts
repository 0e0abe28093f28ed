import { HostProblem } from './port';

/** Excel's error codes in our own words; its own messages are translated, technical and sometimes wrong. */
const SENTENCES: Readonly<Record<string, string>> = {
  InvalidOperationInCellEditMode: 'A cell is being edited. Press Enter or Esc in the sheet, then try again.',
  AccessDenied:
    'The sheet is protected. Choose Review › Unprotect Sheet, then try again; nothing was changed.',
  ItemNotFound: 'The sheet or cell is not there any more. It may have been renamed or deleted.',
  ItemAlreadyExists: 'Something of that name exists already in this workbook.',
  InvalidArgument: 'Excel did not accept a part of this. Check the formula or the reference.',
  InvalidReference: 'That reference points to nothing in this workbook.',
  InvalidSelection: 'The selection cannot be used. Select one block of cells.',
  FormulaLengthExceedsLimit: 'The formula is longer than Excel allows.',
  MergedRangeConflict: 'The cell is part of merged cells. Choose another cell or unmerge them.',
  RequestPayloadSizeLimitExceeded: 'This is more than Excel takes in one go. Try a smaller selection.',
  ResponsePayloadSizeLimitExceeded: 'This is more than Excel hands out in one go. Try a smaller selection.',
  InactiveWorkbook: 'Another workbook is in front. Click into this one and try again.',
  UnsupportedSheet: 'This kind of sheet has no cells. Go to a worksheet and try again.',
  ApiNotFound: 'This version of Excel is too old for that. Excel 2021 or Microsoft 365 is needed.',
  UnsupportedOperation: 'This version of Excel cannot do that.',
  ActivityLimitReached: 'Excel is busy. Wait a moment and try again.',
};

const GENERAL = 'Excel refused this without saying why. Close dialogs, leave cell editing and try again.';

export const codeOf = (error: unknown): string | undefined => {
  if (typeof error !== 'object' || error === null || !('code' in error)) return undefined;
  return typeof error.code === 'string' ? error.code : undefined;
};

export function toProblem(error: unknown): HostProblem {
  if (error instanceof HostProblem) return error;
  return new HostProblem(SENTENCES[codeOf(error) ?? ''] ?? GENERAL, { cause: error });
}

/** Runs one piece of work against the open workbook; whatever goes wrong comes out as a sentence. */
export async function withExcel<T>(work: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  try {
    return await Excel.run(work);
  } catch (error) {
    throw toProblem(error);
  }
}
