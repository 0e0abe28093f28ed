import { columnLetters } from '../sheet/formula/address';
import type { FieldName, NumericField, TextField } from './fields';
import { fieldSpec, isTextField } from './fields';
import type { CellRun } from './columns/content';
import { runOf } from './columns/content';
import type { FormRecord } from './columns/forms';
import { layForms } from './columns/forms';
import type { LaidTable, Skipped } from './columns/layout';
import { layTables } from './columns/layout';
import type { Correction, MappedColumn } from './columns/mapping';
import { headerKey } from './columns/mapping';
import { recognise } from './columns/recognise';
import type { ReadNumbers } from './columns/values';
import { readNumbers, readTexts } from './columns/values';
import { joinClocks } from './columns/clocks';
import type { SheetCells } from './read/sheetCells';
import { cellName, valueAt } from './read/sheetCells';
import type { RecordPlace } from './schema';
import type { Cell } from '../base/values';

/** Where a record's cell of a column stands. */
export interface Spot {
  readonly sheet: SheetCells;
  readonly position: number;
  readonly column: number;
}

/** Records that say the same things in the same columns: the rows of a table, or all forms of a book. */
export interface RecordTable {
  readonly title: string;
  readonly layout: 'rows' | 'forms';
  readonly length: number;
  readonly mapping: readonly MappedColumn[];
  readonly numbers: Readonly<Partial<Record<NumericField, Float64Array>>>;
  readonly texts: Readonly<Partial<Record<TextField, readonly string[]>>>;
  readonly read: Readonly<Partial<Record<NumericField, ReadNumbers>>>;
  /** Cell of a field in a record; undefined where the record has no such cell. */
  readonly spot: (record: number, field: FieldName) => Spot | undefined;
  /** Any cell of the record, for findings about the whole record. */
  readonly home: (record: number) => Spot;
  /** For tables only: the sheet, its columns and the rows of the records. */
  readonly rows: LaidTable | undefined;
  readonly skipped: readonly (Skipped & { readonly sheet: SheetCells })[];
}

export const placeOf = ({ sheet, position, column }: Spot): RecordPlace => ({
  sheet: sheet.name,
  cell: cellName(sheet, position, column),
});
export const cellOf = ({ sheet, position, column }: Spot): Cell => valueAt(sheet, position, column);
export const hasField = (table: RecordTable, field: FieldName): boolean =>
  isTextField(field) ? table.texts[field] !== undefined : table.numbers[field] !== undefined;
export const columnOf = (table: RecordTable, field: FieldName): MappedColumn | undefined =>
  table.mapping.find((one) => one.field === field);

type Values = Pick<RecordTable, 'numbers' | 'texts' | 'read'>;

function valuesOf(mapping: readonly MappedColumn[], runs: readonly CellRun[]): Values {
  const numbers: Partial<Record<NumericField, Float64Array>> = {};
  const read: Partial<Record<NumericField, ReadNumbers>> = {};
  const texts: Partial<Record<TextField, readonly string[]>> = {};
  for (const [i, { field, unit, decimal, order }] of mapping.entries()) {
    const run = runs[i];
    if (!field || !run) continue;
    if (isTextField(field)) texts[field] = readTexts(run);
    else {
      const got = readNumbers(run, { field, unit, decimal, order });
      read[field] = got;
      numbers[field] = got.values;
    }
  }
  joinClocks(numbers, read);
  return { numbers, texts, read };
}

function tableOfRows(laid: LaidTable, corrections: readonly Correction[]): RecordTable {
  const { sheet, body, columns } = laid;
  const runs = columns.map(({ column }) => runOf(sheet, column, body));
  const unread = columns.map(({ column, header, parent }, i) => ({
    name: columnLetters(column),
    header,
    parent,
    run: runs[i] ?? runOf(sheet, column, body),
  }));
  const mapping = recognise(sheet.name, unread, corrections);
  const columnOfField = new Map(
    mapping.flatMap(({ field }, i) => (field ? [[field, columns[i]?.column ?? 0] as const] : [])),
  );
  const first = columns[0]?.column ?? 0;
  return {
    title: sheet.name,
    layout: 'rows',
    length: body.length,
    mapping,
    rows: laid,
    ...valuesOf(mapping, runs),
    spot: (record, field) => {
      const column = columnOfField.get(field);
      return column === undefined ? undefined : { sheet, position: body[record] ?? 0, column };
    },
    home: (record) => ({ sheet, position: body[record] ?? 0, column: first }),
    skipped: laid.skipped.map((one) => ({ ...one, sheet })),
  };
}

function tableOfForms(forms: readonly FormRecord[], corrections: readonly Correction[]): RecordTable {
  const labels = new Map<string, string>();
  for (const { cells } of forms)
    for (const { label } of cells) if (!labels.has(headerKey(label))) labels.set(headerKey(label), label);
  const keys = [...labels.keys()];
  const found = forms.map(({ cells }) => new Map(cells.map((cell) => [headerKey(cell.label), cell])));
  const spotOf = (record: number, key: string): Spot | undefined => {
    const [form, cell] = [forms[record], found[record]?.get(key)];
    return form && cell ? { sheet: form.sheet, position: cell.position, column: cell.column } : undefined;
  };
  const runs = keys.map((key): CellRun => ({
    length: forms.length,
    cellAt: (i) => {
      const spot = spotOf(i, key);
      return spot ? cellOf(spot) : null;
    },
    isDate: (i) => {
      const spot = spotOf(i, key);
      return spot?.sheet.columns[spot.column]?.dates[spot.position] === 1;
    },
  }));
  const mapping = recognise(
    forms[0]?.sheet.name ?? '',
    keys.map((key, i) => ({
      name: labels.get(key) ?? key,
      header: labels.get(key) ?? key,
      parent: '',
      run: runs[i] as CellRun,
    })),
    corrections,
  );
  const keyOfField = new Map(
    mapping.flatMap(({ field }, i) => (field ? [[field, keys[i] ?? ''] as const] : [])),
  );
  return {
    title: [...new Set(forms.map(({ sheet }) => sheet.name))].slice(0, 3).join(', '),
    layout: 'forms',
    length: forms.length,
    mapping,
    rows: undefined,
    ...valuesOf(mapping, runs),
    spot: (record, field) => {
      const key = keyOfField.get(field);
      return key === undefined ? undefined : spotOf(record, key);
    },
    home: (record) => {
      const form = forms[record];
      const cell = form?.cells[0];
      return { sheet: form?.sheet ?? EMPTY, position: cell?.position ?? 0, column: cell?.column ?? 0 };
    },
    skipped: [],
  };
}

const EMPTY: SheetCells = { name: '', rows: [], columns: [], merges: [], lost: [] };
const isMapped = (table: RecordTable): boolean =>
  table.mapping.filter(({ field }) => field !== undefined).length >= 2;

/** Every table and form of a book, with its columns understood. */
export function recordTables(
  sheets: readonly SheetCells[],
  corrections: readonly Correction[] = [],
): RecordTable[] {
  const tables: RecordTable[] = [];
  const forms: FormRecord[] = [];
  for (const sheet of sheets) {
    const laid = layTables(sheet);
    tables.push(...laid.map((one) => tableOfRows(one, corrections)));
    const inTable = (position: number, column: number): boolean =>
      laid.some(
        ({ columns, firstHeader, body }) =>
          position >= firstHeader &&
          position <= (body.at(-1) ?? 0) &&
          columns.some((one) => one.column === column),
      );
    forms.push(...layForms(sheet, inTable));
  }
  if (forms.length > 0) tables.push(tableOfForms(forms, corrections));
  return tables.filter(isMapped);
}

export const fieldNoun = (field: FieldName): string => fieldSpec(field).noun;
