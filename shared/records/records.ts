import type { AuditReport } from './findings/run';
import type { NumericField, RecordText } from './fields';
import { isTextField } from './fields';
import type { RecordPlace, RunRecord, RunValues } from './schema';
import type { Correction } from './columns/mapping';
import { hatchBaseOf } from './shareBase';
import type { RecordTable } from './table';
import { placeOf } from './table';

const rowOf = ({ cell }: RecordPlace): number => Number(cell.replace(/\D/g, ''));
const recordKey = (place: RecordPlace): string => `${place.sheet}!${rowOf(place)}`;

function valuesOf(table: RecordTable, record: number): RunValues {
  const values: Record<string, unknown> = {};
  for (const { field } of table.mapping) {
    const spot = field && table.spot(record, field);
    if (!field || !spot) continue;
    const value = isTextField(field)
      ? table.texts[field satisfies RecordText]?.[record]
      : table.numbers[field satisfies NumericField]?.[record];
    if (value === undefined || value === '' || Number.isNaN(value)) continue;
    values[field] = { value, ...placeOf(spot) };
  }
  return values as RunValues;
}

/**
 * Every record of the book with what was found on it, for learning from the ones that stand. `said`: what the
 * user told of the columns.
 */
export function runRecords({ tables, groups }: AuditReport, said: readonly Correction[] = []): RunRecord[] {
  const faults = new Map<string, Set<string>>();
  for (const { findings } of groups)
    for (const { rule, severity, place } of findings) {
      if (severity === 'look') continue;
      const key = recordKey(place);
      faults.set(key, (faults.get(key) ?? new Set()).add(rule));
      // A form spreads over many rows: its cells are looked up one by one.
      faults.set(
        `${place.sheet}!${place.cell}`,
        (faults.get(`${place.sheet}!${place.cell}`) ?? new Set()).add(rule),
      );
    }
  return tables.flatMap((table) => {
    const hatchBase = hatchBaseOf(table, said);
    return Array.from({ length: table.length }, (_, record): RunRecord => {
      const values = valuesOf(table, record);
      const home = placeOf(table.home(record));
      const found =
        table.layout === 'rows'
          ? [...(faults.get(recordKey(home)) ?? [])]
          : [
              ...new Set(
                Object.values(values).flatMap((one) => [...(faults.get(`${one.sheet}!${one.cell}`) ?? [])]),
              ),
            ];
      const base = hatchBase && values.hatchShare ? { hatchBase } : {};
      return { sheet: home.sheet, row: rowOf(home), values, findings: found, ...base };
    });
  });
}
