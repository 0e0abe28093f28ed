import { consistencyRules } from '../rules/figures/consistency';
import { dateRowRules } from '../rules/figures/dates';
import { rangeRules } from '../rules/farming/ranges';
import { rearingRules } from '../rules/farming/rearing';
import type { Record1, RowRule, RuleVerdict } from '../rules/rule';
import { saidOf } from '../rules/said';
import { slipRules } from '../rules/figures/slips';
import { stageRules } from '../rules/farming/stages';
import { timingRules } from '../rules/farming/timing';
import { waterRules } from '../rules/farming/water';
import { nounOf } from '../rules/show';
import { value } from '../../functions/define';
import { text } from '../../units/quantities';

/** The rules of the records check, asked about one row of a sheet: the same words as the check itself. */
const RULES: readonly RowRule[] = [
  ...slipRules,
  ...stageRules,
  ...consistencyRules,
  ...rangeRules,
  ...timingRules,
  ...waterRules,
  ...rearingRules,
  ...dateRowRules,
];

export const OK = 'ok';
const RANK = { impossible: 0, unlikely: 1, look: 2 } as const;

const listOf = (found: RuleVerdict | readonly RuleVerdict[] | undefined): readonly RuleVerdict[] =>
  found === undefined
    ? []
    : Array.isArray(found)
      ? (found as readonly RuleVerdict[])
      : [found as RuleVerdict];

/** Leaves out what was not said, so that rules see only what is there. */
const given = (record: Record1): Record1 =>
  Object.fromEntries(
    Object.entries(record).filter(([, said]) => said !== undefined && said !== '' && !Number.isNaN(said)),
  );

/** Rules that any value alone can be put to: with them only, nothing was really checked. */
const MINOR = /^(?:COUNT\.SENSE|VALUE\.RANGE|SLIP\.)/;
const isReady = (rule: RowRule, names: ReadonlySet<string>): boolean =>
  rule.needs.some((set) => set.every((name) => names.has(name)));

/**
 * "ok", or the sentences of everything found, worst first; "not checked" with what is missing when too little
 * was given.
 */
export function verdictOf(
  ids: readonly string[],
  said: Readonly<Record<string, number | string | undefined>>,
): string {
  const record = given(said as Record1);
  const names = new Set(Object.keys(record));
  const rules = RULES.filter(({ id }) => ids.includes(id));
  const ready = rules.filter((rule) => isReady(rule, names));
  const view = saidOf(record);
  const found = ready.flatMap((rule) =>
    listOf(rule.check(view, {})).map((verdict) => ({
      verdict,
      rank: RANK[verdict.severity ?? rule.severity],
    })),
  );
  const main = rules.filter(({ id }) => !MINOR.test(id));
  if (found.length === 0 && !(main.length === 0 ? ready : main).some((rule) => ready.includes(rule))) {
    const [need = []] = (main.length === 0 ? rules : main)
      .flatMap(({ needs }) => needs)
      .map((set) => set.filter((name) => !names.has(name)))
      .sort((a, b) => a.length - b.length);
    return `not checked: needs the ${need.map(nounOf).join(', ')}`;
  }
  return found.length === 0
    ? OK
    : [...new Set(found.sort((a, b) => a.rank - b.rank).map(({ verdict }) => verdict.sentence))].join(' ');
}

export const verdict = value(
  text,
  '"ok", what is wrong in a sentence, or "not checked" with what is missing.',
);
export const HELP =
  'Gives the same verdict as the records check in the pane. Nothing is corrected: the ' +
  'sentence says what was seen and what would fit. Leave cells blank that you do not ' +
  'keep.';
