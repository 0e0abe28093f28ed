import type { Near } from '../../base/near';
import { runNow } from '../../base/steps';
import type { Cell } from '../../base/values';
import { isoDateOfSerial as day } from '../../units/dates';
import type { AuditReport } from '../findings/run';
import { auditSheets } from '../findings/run';
import { sheetFromRange } from '../read';
import { findRule } from '../rules';

/** A small sheet and what the check says of it, for numbers with a case on both sides; no bundle holds this folder. */
export type Line = readonly Cell[];
type Finding = AuditReport['groups'][number]['findings'][number];

/** A cell that begins with = stands for a formula whose value is 7. */
const isFormula = (cell: Cell): boolean => typeof cell === 'string' && cell.startsWith('=');
const sheet = (name: string, lines: readonly Line[]): ReturnType<typeof sheetFromRange> =>
  sheetFromRange(
    {
      name,
      top: 0,
      left: 0,
      values: lines.map((line) => line.map((cell) => (isFormula(cell) ? 7 : cell))),
      formulas: lines.map((line) => line.map((cell) => (isFormula(cell) ? cell : ''))),
    },
    () => false,
  );

export const check = (values: readonly Line[]): AuditReport =>
  runNow(auditSheets([sheet('A', values)], { today: 47_000 }));
/** The tables and forms found, with their columns read; no rule is asked. */
export const tablesOf = (...sheets: readonly (readonly Line[])[]): AuditReport['tables'] =>
  runNow(
    auditSheets(
      sheets.map((values, i) => sheet('ABCDEFGHIJKLMNOPQRSTUVWXYZ'.charAt(i), values)),
      { today: 47_000, rules: [] },
    ),
  ).tables;
export const findingsOf = (values: readonly Line[]): readonly Finding[] =>
  check(values).groups.flatMap(({ findings }) => findings);

/** What one rule alone finds in one sheet or several. */
export function found(rule: string, ...sheets: readonly (readonly Line[])[]): readonly Finding[] {
  const asked = findRule(rule);
  if (!asked) throw new Error(`no rule ${rule}`);
  return runNow(
    auditSheets(
      sheets.map((values, i) => sheet('ABCDEFGHIJKLMNOPQRSTUVWXYZ'.charAt(i), values)),
      { today: 47_000, rules: [asked] },
    ),
  ).groups.flatMap(({ findings }) => findings);
}
export const times = (rule: string, ...sheets: readonly (readonly Line[])[]): number =>
  found(rule, ...sheets).length;

/** Days after one in the middle of a year, as they are written. */
export const dayAfter = (days: number): string => day(46_000 + days);

/** One answer to two cases of one kind, just below the number and just above it. */
export const edge = <T>(
  number: string,
  value: number,
  answer: (given: T) => unknown,
  [below, above]: readonly [below: T, above: T],
  answers: Near['answers'],
): Near => ({ number, value, below: () => answer(below), above: () => answer(above), answers });
