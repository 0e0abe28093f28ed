// Long: the reading of one table from top to bottom, in its order.
import type { FieldName } from '../fields';
import type { Correction } from '../columns/mapping';
import type { SheetCells } from '../read/sheetCells';
import { RULES } from '../rules';
import type {
  AuditOptions,
  BookRule,
  RowRule,
  Rule,
  TableRule,
  TableVerdict,
  RuleVerdict,
} from '../rules/rule';
import { nounOf } from '../rules/show';
import type { RecordTable, Spot } from '../table';
import { cellOf, placeOf, recordTables } from '../table';
import { formulaAt } from '../read/sheetCells';
import type { Finding, FindingGroup, NotChecked } from './finding';
import { bySeverity, withoutEchoes } from './finding';
import { filledFields, RowView } from './rowView';

export interface AuditReport {
  readonly tables: readonly RecordTable[];
  readonly groups: readonly FindingGroup[];
  readonly notChecked: readonly NotChecked[];
  readonly records: number;
  readonly found: number;
}

export interface AuditAsk extends AuditOptions {
  readonly corrections?: readonly Correction[];
  readonly rules?: readonly Rule[];
}

/** Findings kept of one rule in one table; beyond, they are only counted. */
const MOST_KEPT = 500;
const RECORDS_PER_STEP = 2000;

const ABOUT_FORMULAS =
  /^(?:CELL\.ERROR|FORMULA\.|WHOLE\.TOTAL|WHOLE\.SHEETS|UNIT\.HEADER|ROW\.REPEATED|COLUMN\.COPIED|TEXT\.)/;
const isComputed = ({ sheet, position, column }: Spot): boolean =>
  formulaAt(sheet, position, column) !== undefined;

class Collector {
  readonly findings: Finding[] = [];
  /** Those between cells that no formula works out. */
  readonly byHand = new Set<Finding>();
  more = 0;
  constructor(
    readonly rule: Rule,
    readonly where: string,
    readonly table: RecordTable | undefined,
  ) {}

  add(
    place: Spot,
    related: readonly Spot[],
    verdict: Omit<RuleVerdict, 'field' | 'with'>,
    or: readonly Spot[] = [],
  ): void {
    const typed = this.typedCell(place, related);
    if (!typed) return;
    if (this.findings.length >= MOST_KEPT) {
      this.more++;
      return;
    }
    const { sentence, seen, expected, proposal, severity } = verdict;
    const finding: Finding = {
      rule: this.rule.id,
      severity: severity ?? this.rule.severity,
      place: placeOf(typed),
      related: related.map(placeOf),
      ...(or.length > 0 ? { or: or.map(placeOf) } : {}),
      sentence,
      seen,
      expected,
      proposal,
    };
    this.findings.push(finding);
    if (![place, ...related].some(isComputed)) this.byHand.add(finding);
  }

  /**
   * A number that a formula works out is no slip of the hand: what it reads is to blame, and where nothing it
   * reads was typed, nothing is said.
   */
  private typedCell(place: Spot, related: readonly Spot[]): Spot | undefined {
    if (ABOUT_FORMULAS.test(this.rule.id) || !isComputed(place)) return place;
    return related.find((one) => !isComputed(one) && cellOf(one) !== null && cellOf(one) !== '');
  }

  addAll(verdicts: readonly TableVerdict[], table: RecordTable | undefined): void {
    for (const verdict of verdicts) {
      const own =
        verdict.record !== undefined && table
          ? ((verdict.field && table.spot(verdict.record, verdict.field)) ?? table.home(verdict.record))
          : undefined;
      const spot = verdict.spot ?? own;
      if (spot) this.add(spot, verdict.related ?? [], verdict, verdict.or);
    }
  }
}

type Needs = readonly (readonly FieldName[])[];
const isMet = (needs: Needs, fields: ReadonlySet<string>): boolean =>
  needs.some((set) => set.every((name) => fields.has(name)));

/** "needs eggs per gram, beside egg weight": the set that is nearest to being met. */
function missingText(needs: Needs, tables: readonly ReadonlySet<string>[]): string {
  let best: { missing: readonly FieldName[]; had: readonly FieldName[] } | undefined;
  for (const set of needs)
    for (const fields of tables.length > 0 ? tables : [new Set<string>()]) {
      const missing = set.filter((name) => !fields.has(name));
      if (!best || missing.length < best.missing.length)
        best = { missing, had: set.filter((name) => fields.has(name)) };
    }
  const list = (names: readonly FieldName[]): string => names.map(nounOf).join(', ');
  return best && best.missing.length > 0
    ? `no table says the ${list(best.missing)}${best.had.length > 0 ? ` beside the ${list(best.had)}` : ''}`
    : 'there was nothing to check';
}

function* runRows(
  table: RecordTable,
  rules: readonly RowRule[],
  options: AuditOptions,
  into: (rule: Rule) => Collector,
): Generator<number, void> {
  const view = new RowView(table);
  const checks = rules
    .map((rule) => ({ rule, collector: into(rule) }))
    .filter(({ rule }) => rule.mayFire?.(table.numbers) ?? true);
  for (let record = 0; record < table.length; record++) {
    view.go(record);
    for (const { rule, collector } of checks) {
      const verdicts = rule.check(view, options);
      if (!verdicts) continue;
      for (const verdict of Array.isArray(verdicts)
        ? (verdicts as readonly RuleVerdict[])
        : [verdicts as RuleVerdict]) {
        const spot = table.spot(record, verdict.field) ?? table.home(record);
        collector.add(
          spot,
          (verdict.with ?? []).flatMap((name) => table.spot(record, name) ?? []),
          verdict,
        );
      }
    }
    if (record % RECORDS_PER_STEP === RECORDS_PER_STEP - 1) yield record / table.length;
  }
}

class Run {
  readonly collectors: Collector[] = [];
  private readonly reasons = new Map<string, string>();
  private readonly done = new Set<string>();
  readonly fields: readonly ReadonlySet<string>[];

  constructor(
    private readonly tables: readonly RecordTable[],
    private readonly sheets: readonly SheetCells[],
    private readonly options: AuditOptions,
  ) {
    this.fields = tables.map(filledFields);
  }

  private collector(rule: Rule, where: string, table: RecordTable | undefined): Collector {
    const one = new Collector(rule, where, table);
    this.collectors.push(one);
    this.done.add(rule.id);
    return one;
  }

  *rows(rules: readonly RowRule[]): Generator<number, void> {
    const total = this.tables.reduce((sum, table) => sum + table.length, 1);
    let before = 0;
    for (const [i, table] of this.tables.entries()) {
      const active = rules.filter((rule) => isMet(rule.needs, this.fields[i] ?? new Set()));
      for (const share of runRows(table, active, this.options, (rule) =>
        this.collector(rule, table.title, table),
      ))
        yield (before + share * table.length) / total;
      before += table.length;
    }
  }

  table(rule: TableRule): void {
    for (const [i, table] of this.tables.entries()) {
      if (!isMet(rule.needs, this.fields[i] ?? new Set())) continue;
      this.take(rule, table.title, rule.check(table, this.options), table);
    }
  }

  book(rule: BookRule): void {
    if (isMet(rule.needs, new Set()) || this.fields.some((fields) => isMet(rule.needs, fields)))
      this.take(rule, 'the whole book', rule.check(this.tables, this.sheets, this.options), undefined);
  }

  private take(
    rule: Rule,
    where: string,
    answer: readonly TableVerdict[] | string,
    table: RecordTable | undefined,
  ): void {
    if (typeof answer === 'string') this.reasons.set(rule.id, answer);
    else this.collector(rule, where, table).addAll(answer, table);
  }

  notChecked(rules: readonly Rule[]): NotChecked[] {
    return rules
      .filter(({ id }) => !this.done.has(id))
      .map((rule) => ({
        rule: rule.id,
        title: rule.title,
        because: this.reasons.get(rule.id) ?? missingText(rule.needs, this.fields),
      }));
  }
}

/** Share of the lines of a table from which on a rule says more about the reading than about the lines. */
const MOSTLY = 0.3;
const LEAST_TO_DOUBT = 3;

/**
 * A reading under which most lines of a column would be wrong is itself the finding: one question in place of
 * many accusations.
 */
function doubted({ rule, where, findings, more, table }: Collector): readonly Finding[] {
  if (!table || rule.id.startsWith('WHOLE.') || UNDOUBTED.has(rule.id)) return findings;
  const accusing = findings.filter(({ severity }) => severity !== 'look');
  const lines = Math.max(1, table.length);
  if (accusing.length + more < Math.max(LEAST_TO_DOUBT, MOSTLY * lines)) return findings;
  const [first] = accusing;
  if (!first) return findings;
  return [
    {
      ...first,
      severity: 'look',
      or: [],
      sentence: `${accusing.length + more} of ${lines} lines of ${where} would be wrong by this rule, so a column is probably read wrongly or the farm does otherwise. The first: ${first.sentence} Is the column read right?`,
      proposal: undefined,
    },
    ...findings.filter(({ severity }) => severity === 'look'),
  ];
}
/** Rules about the cells themselves: however many there are, each is one. */
const UNDOUBTED: ReadonlySet<string> = new Set([
  'CELL.ERROR',
  'FORMULA.LINK',
  'COLUMN.COPIED',
  'ROW.REPEATED',
  'UNIT.HEADER',
  'COUNT.HEAPED',
]);

const ON_ANY_SHEET = /^(?:CELL\.ERROR|FORMULA\.LINK)$/;
const ORDER_OF_EVENTS = /^DATE\.ORDER$/;
const LEAST_COMPUTED = 0.5;
const OWN_CALL = /SPAWN[._]/i;
/** A sheet that Spawnbook wrote, or one that mostly works things out with its functions. */
function isWorkedOut({ isWorkedOut: said, columns }: SheetCells): boolean {
  if (said) return true;
  const isOwn = (formula: string | undefined): boolean => formula !== undefined && OWN_CALL.test(formula);
  if (!columns.some((column) => column?.formulas.some(isOwn))) return false;
  let [numbers, computed] = [0, 0];
  for (const column of columns)
    for (let i = 0; i < (column?.length ?? 0); i++)
      if (!Number.isNaN(column?.numberAt(i))) {
        numbers++;
        if (column?.formulas[i] !== undefined) computed++;
      }
  return computed >= LEAST_COMPUTED * numbers;
}

/** Strongest first, and within that in the order of the rules. */
function groupsOf(
  collectors: readonly Collector[],
  isDoubting: boolean,
  workedOut: ReadonlySet<string>,
): FindingGroup[] {
  const judged = collectors.map((one) => ({
    one,
    findings: (isDoubting ? doubted(one) : one.findings).filter(
      (finding) =>
        ON_ANY_SHEET.test(finding.rule) ||
        !workedOut.has(finding.place.sheet) ||
        // Hours that were all typed and run backwards are a slip on a sheet of ours too.
        (ORDER_OF_EVENTS.test(finding.rule) && one.byHand.has(finding)),
    ),
  }));
  const kept = new Set(withoutEchoes(judged.flatMap(({ findings }) => findings)));
  return judged
    .flatMap(({ one: { rule, where, more }, findings }): FindingGroup[] => {
      const left = findings.filter((finding) => kept.has(finding)).sort(bySeverity);
      const [first] = left;
      return first ? [{ rule, where, severity: first.severity, findings: left, more }] : [];
    })
    .sort(bySeverity);
}

/**
 * Checks sheets as they are, yielding the share done; stop asking for more and it is cancelled. Nothing is
 * ever changed.
 */
export function* auditSheets(
  sheets: readonly SheetCells[],
  ask: AuditAsk = {},
): Generator<number, AuditReport> {
  const rules = ask.rules ?? RULES;
  const tables = recordTables(sheets, ask.corrections);
  yield 0.3;
  const run = new Run(tables, sheets, ask);
  for (const share of run.rows(rules.filter((rule) => rule.scope === 'row'))) yield 0.3 + 0.4 * share;
  const others = rules.filter((rule) => rule.scope !== 'row');
  for (const [i, rule] of others.entries()) {
    if (rule.scope === 'table') run.table(rule);
    else run.book(rule);
    yield 0.7 + (0.3 * (i + 1)) / others.length;
  }
  const workedOut = new Set(sheets.filter(isWorkedOut).map(({ name }) => name));
  const groups = groupsOf(run.collectors, ask.rules === undefined, workedOut);
  return {
    tables,
    groups,
    notChecked: run.notChecked(rules),
    records: tables.reduce((sum, table) => sum + table.length, 0),
    found: groups.reduce((sum, { findings, more }) => sum + findings.length + more, 0),
  };
}
