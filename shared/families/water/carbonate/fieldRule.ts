/**
 * The rule of the farms: 1 g of soda ash in 200 L lifts pH by about 2. Common practice, no source (PRACTICE).
 * In: litres, wished rise in pH. Out: grams. Example: 200 L, 2 → 1 g.
 */
export const RULE_RISE = 2;
const RULE_LITRES_PER_GRAM = 200;
export const ruleGrams = (volume: number, rise: number): number =>
  (volume / RULE_LITRES_PER_GRAM) * (rise / RULE_RISE);

/** Within this of the target the rule is said to hold (judgement). */
const HOLDS = 0.5;

const oneVerdict = (off: number): string => {
  if (Math.abs(off) <= HOLDS) return 'holds';
  return `${off > 0 ? 'overshoots' : 'falls short'} by ${Math.abs(off).toFixed(1)} pH`;
};

export const verdictOf = (offNow: number, offAired: number): string => {
  const now = oneVerdict(offNow);
  const aired = oneVerdict(offAired);
  return now === aired
    ? `The rule ${now}, freshly mixed and aired.`
    : `Freshly mixed the rule ${now}; once aired it ${aired}.`;
};
