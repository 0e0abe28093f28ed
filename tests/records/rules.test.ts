import { RULES } from '../../shared/records/rules';
import { checkRules } from '../../shared/records/rules/check';
import type { RecordExample, SheetExample, RuleVerdict } from '../../shared/records/rules/rule';
import { saidOf } from '../../shared/records/rules/said';
import { audit, sheetOf } from './support/grid';

/** Examples about the future are checked on this day. */
const TODAY = 50_000;

test('every rule is complete and no two share a name', () => {
  expect(checkRules(RULES)).toEqual([]);
  expect(RULES.length).toBeGreaterThanOrEqual(40);
});

const isRecord = (example: RecordExample | SheetExample): example is RecordExample => 'record' in example;
const listOf = (verdicts: RuleVerdict | readonly RuleVerdict[] | undefined): readonly RuleVerdict[] =>
  verdicts === undefined
    ? []
    : Array.isArray(verdicts)
      ? (verdicts as readonly RuleVerdict[])
      : [verdicts as RuleVerdict];

describe.each(RULES.map((rule) => [rule.id, rule] as const))('%s', (_id, rule) => {
  test.each(rule.examples.map((example) => [example.because, example] as const))(
    '%s',
    (_because, example) => {
      const sentences = isRecord(example)
        ? rule.scope === 'row'
          ? listOf(rule.check(saidOf(example.record), {})).map(({ sentence }) => sentence)
          : []
        : audit(
            Object.entries(example.sheets).map(([name, cells]) => sheetOf(name, cells)),
            { rules: [rule], today: TODAY },
          ).groups.flatMap(({ findings }) => findings.map(({ sentence }) => sentence));
      if (example.says === undefined) expect(sentences).toEqual([]);
      else expect(sentences.join('\n')).toContain(example.says);
      for (const sentence of sentences) expect(sentence).toMatch(/[.?!]$/);
      for (const sentence of sentences) expect(sentence).not.toMatch(/NaN|undefined|Infinity/);
    },
  );
});
