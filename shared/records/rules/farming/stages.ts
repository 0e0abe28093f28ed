import type { FieldName, NumericField } from '../../fields';
import { FIELDS, NUMERIC_FIELDS } from '../../fields';
import type { RecordTable } from '../../table';
import type { RowRule, RuleFinding, RuleVerdict } from '../rule';
import { capitalNoun, nounOf, shown } from '../show';
import { isBeyond } from '../figures/statistics';

/** Counts that can only fall, in the order of the run. */
const CHAIN = [
  'eggs',
  'fertilised',
  'hatched',
  'fry',
  'fingerlings',
] as const satisfies readonly NumericField[];
const PAIRS: readonly (readonly [NumericField, NumericField])[] = [
  ['stocked', 'alive'],
  ['stocked', 'dead'],
  ['sampleSize', 'sampleGood'],
  ['stocked', 'fingerlings'],
];
/** Counts by weight are sure to a few percent: growth within that is no fault. */
const SLACK = 1.02;

const grown = (said: RuleFinding, before: NumericField, after: NumericField): RuleVerdict | undefined => {
  const [first, second] = [said.num(before), said.num(after)];
  if (!(second > first * (before === 'sampleSize' ? 1 : SLACK))) return undefined;
  return {
    field: after,
    with: [before],
    seen: shown(after, second),
    expected: `at most ${shown(before, first)}`,
    sentence: `${capitalNoun(after)} is above the ${nounOf(before)} it came from: ${shown(after, second)} of ${shown(before, first)}.`,
  };
};

function stageVerdicts(said: RuleFinding): RuleVerdict[] {
  const found: RuleVerdict[] = [];
  let before: NumericField | undefined;
  for (const name of CHAIN) {
    if (Number.isNaN(said.num(name))) continue;
    const fault = before && grown(said, before, name);
    if (fault) found.push(fault);
    before = name;
  }
  for (const [first, second] of PAIRS) {
    const fault = grown(said, first, second);
    if (fault) found.push(fault);
  }
  const [stocked, alive, dead] = [said.num('stocked'), said.num('alive'), said.num('dead')];
  if (alive <= stocked && dead <= stocked && alive + dead > stocked * SLACK)
    found.push({
      field: 'alive',
      with: ['stocked', 'dead'],
      seen: shown('alive', alive),
      expected: `at most ${shown('alive', stocked - dead)}`,
      sentence: `Alive and dead together are more than were stocked: ${shown('alive', alive)} + ${shown('dead', dead)} of ${shown('stocked', stocked)}.`,
    });
  return found;
}

const pairsOf = (list: readonly FieldName[]): FieldName[][] =>
  list.flatMap((a, i) => list.slice(i + 1).map((b) => [a, b]));

const COUNTS = new Set(NUMERIC_FIELDS.filter((name) => 'isCount' in FIELDS[name] && name !== 'sampleSize'));
const NEVER_NEGATIVE = new Set(
  NUMERIC_FIELDS.filter(
    (name) =>
      FIELDS[name].kind === 'number' &&
      !['temperature', 'incubationTemperature', 'growthRate', 'alkalinity', 'conversion'].includes(name),
  ),
);

/** Numbers worked out from weights carry decimals; only small counts are counted one by one. */
const NONE = new Float64Array(0);
const isFraction = (value: number): boolean => value > 0 && value < 100 && !Number.isInteger(value);
const mayBeNoCount = (numbers: RecordTable['numbers']): boolean =>
  NUMERIC_FIELDS.some(
    (field) =>
      (NEVER_NEGATIVE.has(field) && isBeyond(numbers[field] ?? NONE, 0, Infinity)) ||
      (COUNTS.has(field) && numbers[field]?.some(isFraction)),
  );

const countVerdicts = (said: RuleFinding): RuleVerdict[] => {
  const found: RuleVerdict[] = [];
  for (const field of said.given) {
    const value = said.num(field);
    if (value < 0 && NEVER_NEGATIVE.has(field))
      found.push({
        field,
        seen: shown(field, value),
        expected: '0 or more',
        sentence: `${capitalNoun(field)} is negative: ${shown(field, value)}.`,
      });
    if (isFraction(value) && COUNTS.has(field))
      found.push({
        field,
        seen: String(value),
        expected: 'a whole number',
        severity: 'unlikely',
        sentence: `${capitalNoun(field)} is a fraction: ${value}. A count is whole.`,
      });
  }
  return found;
};

export const stageRules: readonly RowRule[] = [
  {
    id: 'STAGE.GROWS',
    scope: 'row',
    severity: 'impossible',
    title: 'A count grows along the stages',
    needs: [...pairsOf(CHAIN), ...PAIRS.map((pair) => [...pair])],
    check: stageVerdicts,
    checks:
      'Eggs, fertilised, hatched, fry, fingerlings and stocked, alive: none may be above ' +
      'the one before (2 % are left for counting by weight).',
    why:
      'Eggs do not multiply: a later stage that counts more means one of the two was ' +
      'counted or typed wrong.',
    sources: ['DEFINITION'],
    examples: [
      {
        record: { eggs: 40_000, hatched: 46_000 },
        says: 'above the number of eggs',
        because: 'More larvae than eggs.',
      },
      { record: { eggs: 40_000, fertilised: 34_000, hatched: 21_000 }, because: 'Falls at every stage.' },
      {
        record: { sampleSize: 100, sampleGood: 104 },
        says: '104 of 100',
        because: 'More good eggs than looked at.',
      },
      {
        record: { sampleSize: 100, sampleGood: 101 },
        says: '101 of 100',
        because: 'A sample is counted egg by egg: nothing is left for weighing.',
      },
      { record: { sampleSize: 100, sampleGood: 100 }, because: 'All of the sample are good.' },
      { record: { eggs: 100_000, hatched: 102_000 }, because: 'Just the 2 % that weighing may hide.' },
      {
        record: { stocked: 5000, alive: 3000, dead: 2500 },
        says: 'more than were stocked',
        because: '5,500 of 5,000.',
      },
    ],
  },
  {
    id: 'COUNT.SENSE',
    scope: 'row',
    severity: 'impossible',
    title: 'Negative, or a fraction of a fish',
    needs: [...NEVER_NEGATIVE].map((name) => [name]),
    check: countVerdicts,
    mayFire: mayBeNoCount,
    checks: 'Weights, volumes and counts below zero, and small counts that are not whole.',
    why: 'A minus slips in with a dash, a fraction comes from a formula where a count was wanted.',
    sources: ['DEFINITION'],
    examples: [
      { record: { dead: -12 }, says: 'negative', because: 'Nothing dies backwards.' },
      { record: { sampleGood: 71.5 }, says: 'fraction', because: 'Eggs in a sample are whole.' },
      { record: { eggs: 105_341.6, dead: 12 }, because: 'Eggs worked out from weight may carry decimals.' },
    ],
  },
];
