import { runNow } from '../base/steps';
import type { Cell } from '../base/values';
import type { AuditReport } from './findings/run';
import { auditSheets } from './findings/run';
import { sheetFromRange } from './read';

/** A small sheet and what the check says of it, for numbers with a case on both sides; no bundle holds this file. */
export type Line = readonly Cell[];
type Finding = AuditReport['groups'][number]['findings'][number];

export const check = (values: readonly Line[]): AuditReport =>
  runNow(
    auditSheets(
      [sheetFromRange({ name: 'A', top: 0, left: 0, values: values.map((line) => [...line]) }, () => false)],
      { today: 47_000 },
    ),
  );
export const findingsOf = (values: readonly Line[]): readonly Finding[] =>
  check(values).groups.flatMap(({ findings }) => findings);
