import type { FieldName } from '../../fields';
import type { Evidence } from '../../meaning/fit';
import type { CellRun, ColumnContent } from '../cells/content';

/** A column (or the label of a form) waiting to be understood. */
export interface Unread {
  readonly name: string;
  readonly header: string;
  readonly parent: string;
  readonly run: CellRun;
}

export interface Candidate {
  readonly field: FieldName;
  score: number;
  readonly words: number;
  because?: string;
}
export interface Looked {
  readonly unread: Unread;
  readonly content: ColumnContent;
  readonly evidence: Evidence;
  readonly candidates: Candidate[];
}

/** Below, a reading is a guess and the column is left unread. */
export const LEAST_SCORE = 1.7;
export const LEAST_WORDS = 0.38;
export const isClaim = ({ words, score }: Candidate): boolean => words >= LEAST_WORDS && score >= LEAST_SCORE;

export const scoreIn = ({ candidates }: Looked, field: FieldName): Candidate | undefined =>
  candidates.find((one) => one.field === field);
