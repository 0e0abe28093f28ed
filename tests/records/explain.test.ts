import { RELATIONS } from '../../shared/records/rules/figures/relations';
import { assess } from '../../shared/records/rules/assess';
import { explanations } from '../../shared/records/rules/explain';
import type { RuleFinding } from '../../shared/records/rules/rule';
import { saidOf } from '../../shared/records/rules/said';

/** Which slip of the pen makes a broken line whole again. */
const YIELD = RELATIONS.find(({ rule }) => rule === 'EGGS.YIELDSHARE');
const best = (values: Readonly<Record<string, number>>) => {
  if (!YIELD) throw new Error('no such relation');
  const said = { num: (name: string) => values[name] ?? NaN, middle: () => NaN };
  return explanations(said as unknown as RuleFinding, YIELD).map(
    ({ slip }) => `${slip.field} ${Number(slip.meant.toPrecision(6))}: ${slip.says}`,
  );
};
test.each([
  [{ eggWeight: 120, femaleWeight: 1, eggYield: 0.21 }, 'eggYield 0.12: with two digits swapped'],
  [{ eggWeight: 1200, femaleWeight: 1, eggYield: 0.12 }, 'eggWeight 120: ten times too much'],
  [{ eggWeight: 130, femaleWeight: 1, eggYield: 0.31 }, 'eggYield 0.13: with two digits swapped'],
])('%j: %s', (values, told) => {
  expect(best(values)).toContain(told);
});

test('one slip that mends two relations goes before one of each, though either looks likelier by itself', () => {
  const record = { eggWeight: 1200, eggsPerGram: 700, eggs: 84_000, femaleWeight: 1, eggYield: 0.12 };
  /** What is usual of the farm: more eggs than were counted, and so fewer that were wrong. */
  const usual: Readonly<Record<string, number>> = { eggWeight: 350, eggs: 400_000 };
  const broken = assess({ ...saidOf(record), middle: (field) => usual[field] ?? NaN });
  expect(broken.map(({ relation, slip }) => [relation.rule, slip?.field, slip?.meant])).toEqual([
    ['EGGS.PRODUCT', 'eggWeight', 120],
    ['EGGS.YIELDSHARE', 'eggWeight', 120],
  ]);
});
