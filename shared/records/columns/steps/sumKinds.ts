import type { FieldName } from '../../fields';
import { fieldSpec } from '../../fields';
import type { Link } from '../../meaning/links';
import type { Given } from './given';
import type { Looked } from './looked';

/** What is written down in parts that a column adds up: meals of the day, deaths of morning and evening. */
const PARTED: Readonly<Partial<Record<FieldName, FieldName>>> = { feed: 'feedTotal', dead: 'deadTotal' };
const [LEAST_TRIED, LEAST_HOLDING] = [5, 0.8];
/** Words from which on a column says that it is the thing, and from which on that it is another. */
const [SAYS, SAYS_OTHER] = [0.5, 0.65];

export interface SumOfOneKind {
  readonly parts: readonly number[];
  readonly result: number;
  readonly field: FieldName;
  readonly total: FieldName;
}

const isPlainSum = ({ kind, isRunning, inputs, signs, holds, tried }: Link): boolean =>
  kind === 'sum' &&
  !isRunning &&
  inputs.length >= 2 &&
  signs.every((sign) => sign === 1) &&
  tried >= LEAST_TRIED &&
  holds >= LEAST_HOLDING * tried;

/** The parts of a sum are of one kind with it: what one of them says of itself goes for all that say nothing else. */
export function sumsOfOneKind(
  links: readonly Link[],
  looked: readonly Looked[],
  given: Given,
): SumOfOneKind[] {
  const words = (column: number, field: FieldName): number => looked[column]?.evidence.words.get(field) ?? 0;
  return links.filter(isPlainSum).flatMap(({ result, inputs }): SumOfOneKind[] => {
    for (const [field, total] of Object.entries(PARTED) as [FieldName, FieldName][]) {
      const says = (column: number): boolean => Math.max(words(column, field), words(column, total)) >= SAYS;
      const saysOther = (column: number): boolean => {
        const one = looked[column];
        const now = one && given.get(one);
        return (
          now !== undefined &&
          now.words >= SAYS_OTHER &&
          now.field !== field &&
          now.field !== total &&
          fieldSpec(now.field).kind === 'number' &&
          !says(column)
        );
      };
      const all = [result, ...inputs];
      if ((says(result) || 2 * inputs.filter(says).length >= inputs.length) && !all.some(saysOther))
        return [{ parts: inputs, result, field, total }];
    }
    return [];
  });
}
