import { RELATIONS } from '../../shared/records/rules/figures/relations';
import { explanations } from '../../shared/records/rules/explain';
import type { RuleFinding } from '../../shared/records/rules/rule';

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
