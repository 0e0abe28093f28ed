import type { FieldName } from '../fields';
import { fieldSpec } from '../fields';
import type { RecordTable } from '../table';

/** A column whose meaning is open or unsure, with what it may be: asked in the order they are worth asking. */
export interface ColumnQuestion {
  /** Undefined where it is a line of a form, which may stand on any sheet. */
  readonly sheet: string | undefined;
  readonly header: string;
  readonly parent: string;
  readonly samples: readonly string[];
  /** The reading taken now; undefined where the column was left unread. */
  readonly field: FieldName | undefined;
  readonly unit: string | undefined;
  readonly sureness: number;
  /** Likely meanings, best first. */
  readonly options: readonly FieldName[];
  readonly worth: number;
}
/** What was read of a book and what was not, for the first line of every answer. */
export interface ReadingShare {
  readonly columns: number;
  readonly read: number;
  readonly unread: readonly {
    readonly sheet: string;
    readonly header: string;
    readonly samples: readonly string[];
  }[];
  /** Enough was read that "nothing was found" means something. */
  readonly isEnough: boolean;
  readonly questions: readonly ColumnQuestion[];
}

const SURE = 0.75;
const ENOUGH = 0.7;
const OF_RECORD: ReadonlySet<FieldName> = new Set([
  'note',
  'operator',
  'origin',
  'status',
  'description',
  'category',
]);
/** Numbers are worth more than words, full columns more than thin ones, what is unsure more than what is sure. */
function worthOf(table: RecordTable, i: number): number {
  const [mapped, column] = [table.mapping[i], table.columns[i]];
  if (!mapped || !column || mapped.isCorrected || mapped.isRepeated) return 0;
  const filled = column.content.filled / Math.max(1, column.run.length);
  const kind = mapped.field
    ? fieldSpec(mapped.field).kind
    : column.content.words > column.content.numbers
      ? 'text'
      : 'number';
  return (
    filled *
    (1 - mapped.confidence) *
    (kind === 'text' ? 0.4 : 1) *
    Math.min(1, 0.4 + mapped.alternatives.length / 4)
  );
}

/** How much of the tables was understood, and what to ask first. */
export function readingShare(tables: readonly RecordTable[]): ReadingShare {
  const all = tables.flatMap((table) =>
    table.mapping.map((mapped, i) => ({
      table,
      mapped,
      worth: worthOf(table, i),
      filled: table.columns[i]?.content.filled ?? 0,
    })),
  );
  const counted = all.filter(
    ({ filled, mapped }) => filled > 0 && (mapped.field === undefined || !OF_RECORD.has(mapped.field)),
  );
  const unread = counted.filter(({ mapped }) => mapped.field === undefined);
  const questions = all
    .filter(({ worth, mapped }) => worth > 0.02 && mapped.confidence < SURE)
    .sort((a, b) => b.worth - a.worth)
    .map(({ table, mapped, worth }): ColumnQuestion => ({
      sheet: table.layout === 'rows' ? table.title : undefined,
      header: mapped.header,
      parent: mapped.parent,
      samples: mapped.samples,
      field: mapped.field,
      unit: mapped.unit,
      sureness: mapped.confidence,
      options: [...(mapped.field ? [mapped.field] : []), ...mapped.alternatives].slice(0, 5),
      worth,
    }));
  const read = counted.length - unread.length;
  return {
    columns: counted.length,
    read,
    unread: unread.map(({ table, mapped }) => ({
      sheet: table.title,
      header: mapped.header,
      samples: mapped.samples,
    })),
    isEnough: counted.length > 0 && read >= ENOUGH * counted.length,
    questions,
  };
}

/** "9 of 14 columns were not read." Empty where all were. */
export const notReadSentence = ({ columns, read }: ReadingShare): string =>
  read === columns
    ? ''
    : `${columns - read} of ${columns} columns ${columns - read === 1 ? 'was' : 'were'} not read.`;
