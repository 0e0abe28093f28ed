import { consistencyRules } from './figures/consistency';
import { copiedRules } from './figures/copied';
import { dateBookRules, dateRowRules, dateTableRules } from './figures/dates';
import { formulaBookRules, formulaTableRules } from './figures/formulas';
import { heapingRules } from './figures/heaping';
import { historyRules } from './farming/history';
import { rangeRules } from './farming/ranges';
import { rearingRules } from './farming/rearing';
import type { Rule } from './rule';
import { slipRules } from './figures/slips';
import { stageRules } from './farming/stages';
import { textRules } from './figures/texts';
import { timingRules } from './farming/timing';
import { vatRules } from './farming/vats';
import { waterRules } from './farming/water';
import { wholeRules } from './whole';
import { sheetRules } from './whole/bySheets';

/** Every rule, in the order findings are shown. */
export const RULES: readonly Rule[] = [
  ...slipRules,
  ...stageRules,
  ...consistencyRules,
  ...rangeRules,
  ...timingRules,
  ...waterRules,
  ...rearingRules,
  ...dateRowRules,
  ...dateTableRules,
  ...copiedRules,
  ...heapingRules,
  ...historyRules,
  ...formulaTableRules,
  ...textRules,
  ...dateBookRules,
  ...vatRules,
  ...formulaBookRules,
  ...wholeRules,
  ...sheetRules,
];

const byId = new Map(RULES.map((rule) => [rule.id, rule]));
export const findRule = (id: string): Rule | undefined => byId.get(id);
