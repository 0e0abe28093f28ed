import type { NumericField } from '../fields';
import { NUMERIC_FIELDS } from '../fields';
import { fieldsOf, RELATIONS } from './figures/relations';
import type { Record1, RuleFinding } from './rule';

export const relationsAmong = (given: readonly NumericField[]): RuleFinding['relations'] =>
  RELATIONS.filter((one) => fieldsOf(one).every((name) => given.includes(name)));

/** A record of plain values, as examples and sheet functions give them. */
export function saidOf(record: Record1): RuleFinding {
  const given = NUMERIC_FIELDS.filter((name) => record[name] !== undefined);
  return {
    num: (field) => record[field] ?? NaN,
    text: (field) => record[field] ?? '',
    middle: () => NaN,
    given,
    relations: relationsAmong(given),
  };
}
