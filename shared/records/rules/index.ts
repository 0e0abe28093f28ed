import { consistencyRules } from './consistency';
import { copiedRules } from './copied';
import { dateBookRules, dateRowRules, dateTableRules } from './dates';
import { formulaBookRules, formulaTableRules } from './formulas';
import { heapingRules } from './heaping';
import { historyRules } from './history';
import { rangeRules } from './ranges';
import { rearingRules } from './rearing';
import type { Rule } from './rule';
import { slipRules } from './slips';
import { stageRules } from './stages';
import { textRules } from './texts';
import { timingRules } from './timing';
import { vatRules } from './vats';
import { waterRules } from './water';
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
