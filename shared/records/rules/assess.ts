import type { Scored } from './explain';
import { explanations } from './explain';
import { broken, hasBroken } from './figures/relations';
import type { Broken, RuleFinding, RuleVerdict } from './rule';
import { capitalNoun, nounOf, shown } from './show';

const slipKey = ({ slip }: Scored): string => `${slip.field} ${slip.meant}`;

/**
 * The relations a record breaks, each with its likeliest slip. One slip that mends several goes before
 * several that mend one each.
 */
export function assess(said: RuleFinding): readonly Broken[] {
  if (said.assessment) return said.assessment;
  if (!hasBroken(said)) return (said.assessment = NONE);
  const faults = broken(said);
  if (faults.length === 0) return (said.assessment = NONE);
  const candidates = faults.map(({ relation }) => explanations(said, relation));
  const votes = new Map<string, number>();
  for (const list of candidates)
    for (const one of list) votes.set(slipKey(one), (votes.get(slipKey(one)) ?? 0) + 1);
  const worth = (one: Scored): number => one.score + 2 * ((votes.get(slipKey(one)) ?? 1) - 1);
  return (said.assessment = faults.map(({ relation, held }, i) => ({
    relation,
    expected: held.expected,
    slip: candidates[i]?.reduce<Scored | undefined>(
      (best, one) => (best && worth(best) >= worth(one) ? best : one),
      undefined,
    )?.slip,
  })));
}
const NONE: readonly Broken[] = [];

/** "The number of eggs does not follow from egg weight × eggs per gram: 105,000 expected, 150,000 seen." */
export function inconsistency({ relation, expected }: Broken, said: RuleFinding): RuleVerdict {
  const { result, inputs, how } = relation;
  const [seen, wanted] = [shown(result, said.num(result)), shown(result, expected)];
  return {
    field: result,
    with: inputs,
    seen,
    expected: wanted,
    sentence: `${capitalNoun(result)} does not follow from ${how}: ${wanted} expected, ${seen} seen.`,
  };
}

export function slipVerdict({ relation, slip }: Broken): RuleVerdict | undefined {
  if (!slip) return undefined;
  const { field, seen, meant, says } = slip;
  return {
    field,
    with: [relation.result, ...relation.inputs].filter((name) => name !== field),
    seen: shown(field, seen),
    expected: shown(field, meant),
    proposal: shown(field, meant),
    sentence: `${capitalNoun(field)} looks ${says}: ${shown(field, seen)} seen; with ${shown(field, meant)} the ${nounOf(relation.result)} follows from ${relation.how}.`,
  };
}
