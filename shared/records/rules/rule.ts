import type { FieldName, NumericField, RecordText } from '../fields';
import type { SheetCells } from '../read/sheetCells';
import type { RecordTable, Spot } from '../table';
import type { Cell } from '../../base/values';
import type { Slip } from './explain';
import type { ColumnRelation } from './figures/relations';

/**
 * impossible – cannot be right as it stands
 * unlikely   – can be right, but something else is more probable
 * look       – a habit worth knowing about; no single cell need be wrong
 */
export type Severity = 'impossible' | 'unlikely' | 'look';

/** One record as a rule sees it: NaN and '' where it does not say. */
export interface RuleFinding {
  readonly num: (field: NumericField) => number;
  readonly text: (field: RecordText) => string;
  /** Middle of the farm's own values of this field; NaN when there are too few. */
  readonly middle: (field: NumericField) => number;
  /** Fields of numbers the record's table has. */
  readonly given: readonly NumericField[];
  /** Relations among them. */
  readonly relations: readonly ColumnRelation[];
  /** Kept by assess(): several rules read the same judgement of one record. */
  assessment?: readonly Broken[] | undefined;
}

/** A relation that does not hold, with the slip that would explain it. */
export interface Broken {
  readonly relation: ColumnRelation;
  readonly expected: number;
  readonly slip: Slip | undefined;
}

export interface RuleVerdict {
  /** The cell to look at first. */
  readonly field: FieldName;
  /** Other cells the judgement rests on. */
  readonly with?: readonly FieldName[];
  readonly sentence: string;
  readonly seen: string;
  readonly expected: string;
  /** Only ever shown, never written. */
  readonly proposal?: string;
  readonly severity?: Severity;
}

interface About {
  /** SUBJECT.FAULT in capitals; never changes once released. */
  readonly id: string;
  readonly title: string;
  readonly checks: string;
  readonly why: string;
  /** Keys of shared/sources.ts; PRACTICE for common practice. */
  readonly sources: readonly string[];
  readonly severity: Severity;
}

/**
 * Sheets of an example: rows of cells; a text that starts with = is a formula whose value is the 0 beside it
 * or given as [value, formula].
 */
export type ExampleCell = Cell | readonly [Cell, string];
export interface SheetExample {
  readonly sheets: Readonly<Record<string, readonly (readonly ExampleCell[])[]>>;
  readonly says?: string;
  readonly because: string;
}
export type Record1 = { readonly [N in NumericField]?: number } & { readonly [N in RecordText]?: string };
/** `says` is part of the sentence; without it the rule must keep silent. */
export interface RecordExample {
  readonly record: Record1;
  readonly says?: string;
  readonly because: string;
}

/** Judges one record at a time. */
export interface RowRule extends About {
  readonly scope: 'row';
  /** Any one of these sets of fields is enough. */
  readonly needs: readonly (readonly FieldName[])[];
  readonly check: (
    said: RuleFinding,
    options: AuditOptions,
  ) => RuleVerdict | readonly RuleVerdict[] | undefined;
  /** Asked once a table: false where no record can break the rule, which saves going through them. */
  readonly mayFire?: (numbers: RecordTable['numbers']) => boolean;
  readonly examples: readonly RecordExample[];
}

export interface TableVerdict extends Omit<RuleVerdict, 'field' | 'with'> {
  /** A record with its field, or any cell. */
  readonly record?: number;
  readonly field?: FieldName;
  readonly spot?: Spot;
  readonly related?: readonly Spot[];
  /** Cells that could be the wrong one nearly as well. */
  readonly or?: readonly Spot[];
}

/** Judges the records of one table together. */
export interface TableRule extends About {
  readonly scope: 'table';
  readonly needs: readonly (readonly FieldName[])[];
  readonly check: (table: RecordTable, options: AuditOptions) => readonly TableVerdict[] | string;
  readonly examples: readonly SheetExample[];
}

/**
 * Judges all tables, or the cells of all sheets. A text instead of verdicts says why nothing could be
 * checked.
 */
export interface BookRule extends About {
  readonly scope: 'book';
  readonly needs: readonly (readonly FieldName[])[];
  readonly check: (
    tables: readonly RecordTable[],
    sheets: readonly SheetCells[],
    options: AuditOptions,
  ) => readonly TableVerdict[] | string;
  readonly examples: readonly SheetExample[];
}

export type Rule = RowRule | TableRule | BookRule;

/** Hours by which the farm strips later than the tables say; negative when earlier. */
export interface LatencyOffsets {
  readonly whole: number;
  /** By preparation, as the tables name it. */
  readonly by: Readonly<Record<string, number>>;
}

export interface AuditOptions {
  /** Serial of the day of the check; without it nothing is called a date in the future. */
  readonly today?: number;
  /** Vats the farm has; a record may say it too. */
  readonly vatsOwned?: number;
  readonly latencyOffsets?: LatencyOffsets;
}
