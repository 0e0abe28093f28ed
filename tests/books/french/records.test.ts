import { LOG_COLUMNS } from '../../../shared/dosing/log';
import { ratesWorkbook } from '../../../shared/books/learn/ratesSheet';
import { trendsWorkbook } from '../../../shared/books/learn/trendsSheet';
import { RECORD_LANGUAGES } from '../../../shared/books/words/records';
import { ratesInEnglish, recordSheetsIn } from '../../../shared/books/words/recordSheets';
import { CHECK_SHEETS, isCheckSheet } from '../../../shared/books/words/sheetNames';
import type { Cell } from '../../../shared/base/values';
import { threesApart } from '../../../shared/units/phrases';
import { learnRates, ratesFromCells, trendsOf } from '../../../shared/learn';
import type { AuditReport, Finding } from '../../../shared/records';
import { findingsWorkbook, sourceWords } from '../../../shared/records';
import { FIELDS } from '../../../shared/records/fields';
import { RULES } from '../../../shared/records/rules';
import type { RuleVerdict } from '../../../shared/records/rules/rule';
import { saidOf } from '../../../shared/records/rules/said';
import type { SheetModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { gridOf } from '../../season/support/support';
import faults from '../../golden/kept/faults.json';
import foreign from '../../golden/kept/foreign-columns.json';
import { sayIn } from '../../../shared/books/words/words';
import { demoFarm } from '../../learn/support/demoFarm';
import { audit, sheetOf } from '../../records/support/grid';
import { ENGLISH, englishIn } from './texts';

/** What the check of records, the rates and the trends write, in French: nothing English, the same numbers, read back. */

const fr = RECORD_LANGUAGES.fr;
if (!fr) throw new Error('no French');
const inFrench = (model: WorkbookModel): WorkbookModel => recordSheetsIn(model, 'fr');
const withThrees = (model: WorkbookModel): WorkbookModel => ({
  ...model,
  sheets: model.sheets.map((sheet) => ({
    ...sheet,
    cells: Object.fromEntries(
      Object.entries(sheet.cells).map(([address, cell]) => [
        address,
        typeof cell.value === 'string' ? { ...cell, value: threesApart(cell.value) } : cell,
      ]),
    ),
  })),
});
const left = (model: WorkbookModel, names: readonly string[] = []): string[] =>
  englishIn(inFrench(model), withThrees(model), fr, new Set(names));

/** Every rule fires on its own examples: the findings as one report. */
const TODAY = 50_000;
const listOf = (verdicts: RuleVerdict | readonly RuleVerdict[] | undefined): readonly RuleVerdict[] =>
  verdicts === undefined
    ? []
    : Array.isArray(verdicts)
      ? (verdicts as RuleVerdict[])
      : [verdicts as RuleVerdict];
const reports: AuditReport[] = [];
const groups = RULES.flatMap((rule) => {
  const found = rule.examples.flatMap(
    (example): readonly Pick<Finding, 'sentence' | 'seen' | 'expected' | 'proposal'>[] => {
      if ('record' in example)
        return rule.scope === 'row'
          ? listOf(rule.check(saidOf(example.record), {})).map((one) => ({ ...one, proposal: one.proposal }))
          : [];
      const report = audit(
        Object.entries(example.sheets).map(([name, cells]) => sheetOf(name, cells)),
        { rules: [rule], today: TODAY },
      );
      reports.push(report);
      return report.groups.flatMap(({ findings }) => findings);
    },
  );
  const findings = found.map((one): Finding => ({
    rule: rule.id,
    severity: rule.severity,
    related: [],
    sentence: one.sentence,
    seen: one.seen,
    expected: one.expected,
    proposal: one.proposal,
    place: { sheet: 'Runs', cell: 'A1' } as Finding['place'],
  }));
  return [{ rule, severity: rule.severity, where: 'Runs', findings, more: 3 }];
});
const [first] = reports;
if (!first) throw new Error('no report');
const everything: AuditReport = {
  ...first,
  groups,
  found: 200,
  records: 1200,
  tables: reports.flatMap(({ tables }) => tables),
  notChecked: reports.flatMap(({ notChecked }) => notChecked),
};
/** Texts of a cell, quoted in a sentence or standing under "Seen", formulas, errors, names of rules and of sheets. */
const isOf = (text: string): boolean =>
  /^(text )?=|^#|^[A-Z]+\.[A-Z]+$|^5 mL\/kg$|^(NaN|Runs|Batches|Nursery|Book|Sheet|Farm)$/.test(text);
const unquoted = (text: string): string => text.replace(/« [^»]* »|"[^"]*"|\(=[^)]*\)/g, '«»');
const isQuoted = (text: string): boolean =>
  isOf(text) || (unquoted(text) !== text && !ENGLISH.test(unquoted(text)));

test('what every rule says has its French', () => {
  expect(groups.flatMap(({ findings }) => findings).length).toBeGreaterThan(80);
  const model = findingsWorkbook(everything);
  const headers = new Set(everything.tables.flatMap(({ mapping }) => mapping.map(({ header }) => header)));
  const sources = [...new Set(RULES.flatMap((rule) => rule.sources))].map((key) => sourceWords([key]));
  const cited = new Set(sources.map((text) => sayIn(fr, text)));
  const isCited = (text: string): boolean => text.split('; ').every((part) => cited.has(part));
  const texts = left(model, [...headers]).filter((text) => !isQuoted(text) && !isCited(text));
  expect(texts).toEqual([]);
});

test.each([
  ['books with a fault', faults],
  ['tables in other languages', foreign],
])('what is kept of findings in %s has its French', (_, kept) => {
  const strings = (value: unknown): string[] =>
    typeof value === 'string'
      ? [value]
      : typeof value === 'object' && value !== null
        ? Object.values(value).flatMap(strings)
        : [];
  const sentences = [...new Set(strings(kept).flatMap((line) => line.split(' | ').slice(2, 3)))];
  expect(sentences.length).toBeGreaterThan(30);
  const said = sentences.map((text) => [text, sayIn(fr, threesApart(text))] as const);
  expect(
    said.filter(([text, own]) => text === own || ENGLISH.test(unquoted(own))).map(([, own]) => own),
  ).toEqual([]);
});

test('every field has a noun, in the middle of a sentence and at its beginning', () => {
  const nouns = Object.values(FIELDS).map(({ noun }) => noun);
  expect(nouns.filter((noun) => noun !== 'pH' && fr.phrases[noun] === undefined)).toEqual([]);
});

const cellsOf = (sheet: SheetModel | undefined) => ({
  name: sheet?.name ?? '',
  top: 0,
  left: 0,
  values: sheet ? (gridOf(sheet).values as Cell[][]) : [],
});
const rates = learnRates(demoFarm(20));

test('rates and trends: nothing English, the same numbers, read back as the same rates', () => {
  for (const model of [
    ratesWorkbook(rates),
    ratesWorkbook(learnRates([])),
    ratesWorkbook(learnRates(demoFarm(1))),
    trendsWorkbook(trendsOf(demoFarm(20))),
    trendsWorkbook(trendsOf(demoFarm(20), 'fertilisation')),
    trendsWorkbook(trendsOf(demoFarm(9))),
    trendsWorkbook(trendsOf([])),
  ]) {
    expect(left(model, ['ready-made solution'])).toEqual([]);
    const numbers = ({ sheets }: WorkbookModel): unknown[] =>
      sheets.flatMap(({ cells }) =>
        Object.values(cells).map(({ value }) => (typeof value === 'string' ? '' : value)),
      );
    expect(numbers(inFrench(model))).toEqual(numbers(model));
  }
  const english = ratesWorkbook(rates);
  const french = inFrench(english);
  expect(french.names.map(({ name }) => name)).toEqual(english.names.map(({ name }) => name));
  const [before, after] = [cellsOf(english.sheets[0]), ratesInEnglish(cellsOf(french.sheets[0]))];
  const read = ratesFromCells(after);
  expect(read).toEqual(ratesFromCells(before));
  expect(read.rates.length).toBeGreaterThan(10);
});

test('the check leaves out its own sheets in either language, and no other', () => {
  const own = [...Object.keys(CHECK_SHEETS.fr), ...Object.values(CHECK_SHEETS.fr)];
  expect(own.filter((name) => !isCheckSheet(name) || !isCheckSheet(`${name} 2`))).toEqual([]);
  expect(
    ['Rates of our pond', 'Ratesheet', 'Taux', ...LOG_COLUMNS.map(({ heading }) => heading)].filter(
      isCheckSheet,
    ),
  ).toEqual([]);
});

test('thousands stand apart, what is quoted from a cell stays', () => {
  expect(threesApart('812,150 of 1,234,567 and "4,500" with 1,5 and 0,1234')).toBe(
    '812\u202f150 of 1\u202f234\u202f567 and "4,500" with 1,5 and 0,1234',
  );
});
