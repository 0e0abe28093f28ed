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
 * its neighbours.
 */
const WEAKER: readonly (readonly [RegExp, RegExp])[] = [
  [/^WHOLE\.(?!TOTAL)/, /^(?!WHOLE|HISTORY|SLIP\.HISTORY|TEXT|FORMULA\.DIFFERS)/],
  [/^HISTORY\.FAR$/, /./],
  [/^SLIP\.HISTORY$/, /^WHOLE/],
  [/^HISTORY\.FAR$/, /./],
  [/^SLIP\.HISTORY$/, /^(?!HISTORY|VALUE|EGGS\.PERGRAM)/],
  [
    /^(?:VALUE|SHARE\.RANGE|TEMPERATURE|EGGS\.PERGRAM|EGGS\.YIELD$|DOSE\.PERKG|FEED\.RATION|FCR\.RANGE|GROWTH\.RANGE)/,
    /^SLIP\./,
  ],
];

const isWeaker = (rule: string, other: string): boolean =>
  rule !== other && WEAKER.some(([weak, strong]) => weak.test(rule) && strong.test(other));

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
  return findings.filter(
    ({ place, rule }) => ![...(at.get(placeKey(place)) ?? [])].some((other) => isWeaker(rule, other)),
  );
}
