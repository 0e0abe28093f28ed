import type { NumericField, TextField } from '../fields';
import { NUMERIC_FIELDS } from '../fields';
import type { Broken, Said } from '../rules/rule';
import { relationsAmong } from '../rules/said';
import { robust } from '../rules/statistics';
import type { RecordTable } from '../table';

const LEAST_FOR_MIDDLE = 8;

/** One record of a table at a time; the same object for all of them. */
export class RowView implements Said {
  assessment?: readonly Broken[];
  readonly given: readonly NumericField[];
  readonly relations: Said['relations'];
  private record = 0;
  private readonly lists: Readonly<Partial<Record<NumericField, Float64Array>>>;
  private readonly words: RecordTable['texts'];
  private readonly middles = new Map<NumericField, number>();

  constructor(table: RecordTable) {
    this.lists = table.numbers;
    this.words = table.texts;
    this.given = NUMERIC_FIELDS.filter((name) => table.numbers[name] !== undefined);
    this.relations = relationsAmong(this.given);
  }

  go(record: number): void {
    this.record = record;
    delete this.assessment;
  }

  readonly num = (field: NumericField): number => this.lists[field]?.[this.record] ?? NaN;
  readonly text = (field: TextField): string => this.words[field]?.[this.record] ?? '';
  readonly middle = (field: NumericField): number => {
    let middle = this.middles.get(field);
    if (middle === undefined) {
      const own = robust(this.lists[field] ?? []);
      this.middles.set(field, middle = own.n < LEAST_FOR_MIDDLE ? NaN : own.middle);
    }
    return middle;
  };
}

/** Fields of which a table has at least one value. */
export const filledFields = (table: RecordTable): ReadonlySet<string> => new Set([
  ...NUMERIC_FIELDS.filter((name) => table.numbers[name]?.some((x) => !Number.isNaN(x))),
  ...Object.entries(table.texts).filter(([, list]) => list?.some((text) => text !== '')).map(([name]) => name),
]);
