import type { Rule, Severity } from '../rules/rule';
import type { RecordPlace } from '../schema';

export interface Finding {
  readonly rule: string;
  readonly severity: Severity;
  readonly place: RecordPlace;
  /** Other cells the judgement rests on. */
  readonly related: readonly RecordPlace[];
  /** Cells that could be the wrong one nearly as well as the place. */
  readonly or?: readonly RecordPlace[];
  readonly sentence: string;
  readonly seen: string;
  readonly expected: string;
  readonly proposal: string | undefined;
}

/** What one rule found in one table. */
export interface FindingGroup {
  readonly rule: Pick<Rule, 'id' | 'title' | 'checks' | 'why' | 'sources'>;
  readonly severity: Severity;
  readonly where: string;
  readonly findings: readonly Finding[];
  /** Findings beyond those listed. */
  readonly more: number;
}

export interface NotChecked {
  readonly rule: string;
  readonly title: string;
  readonly because: string;
}

const RANK: Readonly<Record<Severity, number>> = { impossible: 0, unlikely: 1, look: 2 };
export const bySeverity = (a: { readonly severity: Severity }, b: { readonly severity: Severity }): number =>
  RANK[a.severity] - RANK[b.severity];
export const SEVERITY_WORDS: Readonly<Record<Severity, string>> = {
  impossible: 'Cannot be right',
  unlikely: 'Unlikely',
  look: 'Worth a look',
};

export const placeKey = ({ sheet, cell }: RecordPlace): string => `${sheet}!${cell}`;

/**
 * A cell that a slip or another fault explains need not be reported again for being out of range or unlike
 * its neighbours. Strongest first: a rule is left out where one before it, still standing, says it better.
 */
const STRENGTH: readonly { readonly rules: RegExp; readonly weakerThan?: RegExp }[] = [
  { rules: /^SLIP\.(?!HISTORY)/ },
  {
    rules:
      /^(?!SLIP|WHOLE|HISTORY|VALUE|SHARE\.RANGE|TEMPERATURE|EGGS\.PERGRAM|EGGS\.YIELD$|DOSE\.PERKG|FEED\.RATION|FCR\.RANGE|GROWTH\.RANGE)/,
  },
  { rules: /^WHOLE\.TOTAL$/ },
  { rules: /^SLIP\.HISTORY$/, weakerThan: /^(?!TEXT)/ },
  { rules: /^(?!SLIP|WHOLE|HISTORY)/, weakerThan: /^SLIP\./ },
  { rules: /^WHOLE\.(?!WILD|TOTAL)/, weakerThan: /^(?!WHOLE|TEXT|FORMULA\.DIFFERS)/ },
  { rules: /^HISTORY\.FAR$/, weakerThan: /./ },
  { rules: /^WHOLE\.WILD$/, weakerThan: /^(?!WHOLE|TEXT|FORMULA\.DIFFERS)/ },
];

/** Of the rules that speak of one cell, those that no stronger one makes needless. */
function standing(rules: ReadonlySet<string>): ReadonlySet<string> {
  const kept = new Set<string>();
  const seen = new Set<string>();
  for (const { rules: named, weakerThan } of STRENGTH) {
    const mine = [...rules].filter((rule) => !seen.has(rule) && named.test(rule));
    const isSaid = weakerThan !== undefined && [...kept].some((other) => weakerThan.test(other));
    for (const rule of mine) {
      seen.add(rule);
      if (!isSaid) kept.add(rule);
    }
  }
  return kept;
}

/** Leaves out what a stronger finding at the same cell already says. */
export function withoutEchoes(findings: readonly Finding[]): Finding[] {
  const at = new Map<string, Set<string>>();
  for (const { place, rule, severity } of findings) {
    if (severity === 'look') continue;
    const key = placeKey(place);
    const rules = at.get(key);
    if (rules) rules.add(rule);
    else at.set(key, new Set([rule]));
  }
  const left = new Map([...at].map(([key, rules]) => [key, rules.size > 1 ? standing(rules) : rules]));
  return findings.filter(({ place, rule, severity }) => {
    const rules = left.get(placeKey(place));
    if (!rules) return true;
    // A look is left out where anything firmer of the same kind stands.
    return severity === 'look'
      ? !standing(new Set([...rules, rule])).size || standing(new Set([...rules, rule])).has(rule)
      : rules.has(rule);
  });
}
