import type { NumericField, RecordText } from '../fields';
import { NUMERIC_FIELDS } from '../fields';
import type { Broken, RuleFinding } from '../rules/rule';
import { held } from '../rules/figures/relations';
import { relationsAmong } from '../rules/said';
import { robust } from '../rules/figures/statistics';
import type { RecordTable } from '../table';

const LEAST_FOR_MIDDLE = 8;
const HABIT_SAMPLE = 300;

/** One record of a table at a time; the same object for all of them. */
export class RowView implements RuleFinding {
  assessment: readonly Broken[] | undefined = undefined;
  readonly given: readonly NumericField[];
  readonly relations: RuleFinding['relations'];
  private record = 0;
  private readonly lists: Readonly<Partial<Record<NumericField, Float64Array>>>;
  private readonly words: RecordTable['texts'];
  private readonly middles = new Map<NumericField, number>();

  constructor(table: RecordTable) {
    this.lists = table.numbers;
    this.words = table.texts;
    this.given = NUMERIC_FIELDS.filter((name) => table.numbers[name] !== undefined);
    this.relations = this.ofThisFarm(relationsAmong(this.given), table.length);
  }

  /**
   * A share can be of the stage before or of all eggs: which, is the farm's own habit. Of such alternatives
   * only the one that holds in most records is judged, and none where no one does.
   */
  private ofThisFarm(relations: RuleFinding['relations'], records: number): RuleFinding['relations'] {
    const step = Math.max(1, Math.floor(records / HABIT_SAMPLE));
    const holding = relations.map((one) => {
      let [judged, holds] = [0, 0];
      if (one.either !== undefined)
        for (this.record = 0; this.record < records; this.record += step) {
          const now = held(one, this.num);
          if (now) judged++;
          if (now?.holds) holds++;
        }
      return { one, judged, holds };
    });
    this.record = 0;
    return holding
      .filter(({ one, judged, holds }) => {
        if (one.either === undefined || judged < LEAST_FOR_MIDDLE) return true;
        return (
          holds >= judged / 2 &&
          holding.every((other) => other.one.either !== one.either || other.holds <= holds)
        );
      })
      .map(({ one }) => one);
  }

  go(record: number): void {
    this.record = record;
    // Not deleted: an object that lost a field is read many times slower.
    this.assessment = undefined;
  }

  readonly num = (field: NumericField): number => this.lists[field]?.[this.record] ?? NaN;
  readonly text = (field: RecordText): string => this.words[field]?.[this.record] ?? '';
  readonly middle = (field: NumericField): number => {
    let middle = this.middles.get(field);
    if (middle === undefined) {
      const own = robust(this.lists[field] ?? []);
      this.middles.set(field, (middle = own.n < LEAST_FOR_MIDDLE ? NaN : own.middle));
    }
    return middle;
  };
}

/** Fields of which a table has at least one value. */
export const filledFields = (table: RecordTable): ReadonlySet<string> =>
  new Set([
    ...NUMERIC_FIELDS.filter((name) => table.numbers[name]?.some((x) => !Number.isNaN(x))),
    ...Object.entries(table.texts)
      .filter(([, list]) => list?.some((text) => text !== ''))
      .map(([name]) => name),
  ]);
