import { notReadSentence, readingShare } from './findings/reading';
import { cellName } from './read/sheetCells';
import type { CheckedFile } from './checkFile';
import type { FieldName } from './fields';
import { ROLES } from './meaning/roles';
import type { Severity } from './rules/rule';

/** A checked book in words that belong to no program. */
export interface NeutralBook {
  readonly file: string;
  readonly refused: string | false;
  /** "9 of 14 columns were not read." */
  readonly notRead?: string;
  readonly tables: readonly NeutralTable[];
  readonly findings: readonly NeutralFinding[];
}
export interface NeutralTable {
  readonly sheet: string;
  readonly row?: number;
  readonly columns: readonly NeutralColumn[];
}
export interface NeutralColumn {
  readonly col?: string;
  readonly cell?: string;
  readonly is: string | readonly string[];
  readonly unit?: string;
  /** How sure the reading is, 0 to 1. */
  readonly sureness: number;
}
export interface NeutralFinding {
  readonly sheet: string;
  /** The cell to look at, first where several could be the wrong one. */
  readonly cell: string;
  readonly cells?: readonly string[];
  readonly level: 'info' | 'warning' | 'error';
  readonly kind: string;
  readonly text: string;
}

const LEVELS: Readonly<Record<Severity, NeutralFinding['level']>> = {
  impossible: 'error',
  unlikely: 'warning',
  look: 'info',
};

const sure = (confidence: number): number => Math.round(100 * confidence) / 100;
const SECOND = ['inject2_time', 'inject2_datetime', 'inject_time'];

/** The tables, columns and findings of a checked file. */
export function neutralBook(file: string, checked: CheckedFile): NeutralBook {
  if (!('report' in checked))
    return { file, refused: 'fault' in checked ? checked.fault : 'Stopped.', tables: [], findings: [] };
  const { tables, groups } = checked.report;
  return {
    file,
    refused: false,
    notRead: notReadSentence(readingShare(tables)),
    tables: tables.flatMap((table): NeutralTable[] => {
      const known = table.mapping.filter(({ field }) => field !== undefined && field !== 'note');
      const has = (field: FieldName): boolean => known.some((one) => one.field === field);
      // Beside a first injection the other is the second.
      // A line number is also the name of the run where no other column is.
      const isOf = (field: FieldName): string | readonly string[] =>
        field === 'injected' && has('injectedFirst')
          ? SECOND
          : field === 'serial' && !has('run')
            ? ['serial', 'run_no']
            : ROLES[field].is;
      if (table.rows)
        return [
          {
            sheet: table.rows.sheet.name,
            row: (table.rows.sheet.rows[table.rows.body[0] ?? 0] ?? 0) + 1,
            columns: known.map(({ column, field, unit, confidence }) => ({
              col: column,
              is: isOf(field as FieldName),
              ...(unit ? { unit } : {}),
              sureness: sure(confidence),
            })),
          },
        ];
      return Array.from({ length: table.length }, (_, record) => ({
        sheet: table.home(record).sheet.name,
        columns: known.flatMap(({ field, unit, confidence }) => {
          const spot = table.spot(record, field as FieldName);
          return spot
            ? [
                {
                  cell: cellName(spot.sheet, spot.position, spot.column),
                  is: isOf(field as FieldName),
                  ...(unit ? { unit } : {}),
                  sureness: sure(confidence),
                },
              ]
            : [];
        }),
      }));
    }),
    findings: groups.flatMap(({ findings }) =>
      findings.map(({ place, or, severity, rule, sentence }) => ({
        sheet: place.sheet,
        cell: place.cell,
        ...(or
          ? {
              cells: [place.cell, ...or.filter(({ sheet }) => sheet === place.sheet).map(({ cell }) => cell)],
            }
          : {}),
        level: LEVELS[severity],
        kind: rule,
        text: sentence,
      })),
    ),
  };
}
