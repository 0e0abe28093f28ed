import type {
  AuditReport,
  Correction,
  FieldName,
  ReadingShare,
  ShareQuestion,
  SheetCells,
} from '../../../../shared/records';
import type { FarmRates, TrendRate, Trends } from '../../../../shared/learn';
import type { CellsWanted, Marked } from '../../../host/port';
import type { Grouping } from './trend';

/** Records under check. */
export interface CheckRecordsState {
  readonly given: CheckGivens | undefined;
  /** Why what was chosen could not be checked. */
  readonly fault: string | undefined;
  readonly result: Checked | undefined;
  /** What the user said about columns of the open workbook. */
  readonly corrections: readonly Correction[];
  /** The workbook remembers exactly that. */
  readonly isKept: boolean;
  /** The same for a file, which is only read: nothing of it is remembered. */
  readonly ofFile: readonly Correction[];
  /** Said since the last check. */
  readonly isChanged: boolean;
  /** Cells marked, with the colour they had. */
  readonly marks: readonly Marked[];
  /** What the records teach, once asked for. */
  readonly learned: Learned | undefined;
  readonly trend: TrendShown;
  /** What a question about a name is about. */
  readonly writing: Writing;
}

export interface Learned {
  readonly rates: FarmRates;
  readonly trends: Readonly<Record<TrendRate, Trends>>;
  readonly verdicts: Readonly<Record<TrendRate, string>>;
  readonly accepted: number;
  readonly records: number;
  /** Shares of hatched eggs whose base only the user can say. */
  readonly questions: readonly ShareQuestion[];
}
export interface TrendShown {
  readonly rate: TrendRate;
  readonly by: Grouping;
  /** The point read out, by its place. */
  readonly point: number | undefined;
}
export const initialTrend: TrendShown = { rate: 'hatch', by: 'run', point: undefined };

export type Writing = 'findings' | 'rates' | 'trends';

export interface CheckGivens {
  /** As the screen names it. */
  readonly name: string;
  readonly sheets: readonly SheetCells[];
  readonly notes: readonly string[];
  /** Cells named in it can be gone to, and are read again; undefined for a file. */
  readonly again: CellsWanted | undefined;
}

export interface Checked {
  readonly report: AuditReport;
  /** What the rules rest on, by rule. */
  readonly restsOn: ReadonlyMap<string, string>;
  /** Sheets in which no records were recognised. */
  readonly unread: readonly string[];
  /** What was read of it and what not, and what is worth asking. */
  readonly reading: ReadingShare;
  /** "9 of 14 columns were not read."; empty where all were. */
  readonly notRead: string;
  readonly units: Readonly<Partial<Record<FieldName, readonly string[]>>>;
  /** What the own rates of the workbook changed in the check, as a sentence. */
  readonly ownRates: string | undefined;
}

export const initialCheck: CheckRecordsState = {
  given: undefined,
  fault: undefined,
  result: undefined,
  corrections: [],
  isKept: true,
  ofFile: [],
  isChanged: false,
  marks: [],
  learned: undefined,
  trend: initialTrend,
  writing: 'findings',
};

export type Meaning = FieldName | 'ignore';

/** Fewer records say nothing of a farm. */
export const LEAST_FOR_RATES = 3;
export const LEAST_FOR_TRENDS = 8;

const isFile = ({ given }: CheckRecordsState): boolean => given !== undefined && given.again === undefined;
/** What the user said about the columns on the screen. */
export const saidOf = (check: CheckRecordsState): readonly Correction[] =>
  isFile(check) ? check.ofFile : check.corrections;
export const withSaid = (check: CheckRecordsState, said: readonly Correction[]): CheckRecordsState => ({
  ...check,
  isChanged: true,
  ...(isFile(check) ? { ofFile: said } : { corrections: said, isKept: false }),
});

/** One column's meaning replaces what was said of it before. */
export function corrected(corrections: readonly Correction[], said: Correction): readonly Correction[] {
  const key = ({ sheet, header }: Correction): string => `${sheet ?? ''}\n${header}`;
  return [...corrections.filter((one) => key(one) !== key(said)), said];
}

/** A number between 0 and 1 is no word a person uses. */
export const sureness = (confidence: number): string =>
  confidence >= 0.9 ? 'Sure' : confidence >= 0.7 ? 'Likely' : confidence >= 0.5 ? 'Perhaps' : 'A guess';
