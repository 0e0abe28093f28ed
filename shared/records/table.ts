// Long: the reading of one table from top to bottom, in its order.
import { columnLetters } from '../sheet/formula/address';
import type { FieldName, NumericField, RecordText } from './fields';
import { fieldSpec, isTextField } from './fields';
import type { CellRun, ColumnContent } from './columns/cells/content';
import { runOf } from './columns/cells/content';
import type { FormCell, FormRecord } from './shape/forms';
import { layForms } from './shape/forms';
import type { LaidTable, SkippedArea } from './shape/tables';
import { layTables } from './shape/tables';
import type { Link } from './meaning/links';
import type { Correction, MappedColumn } from './columns/mapping';
import type { Recognised } from './columns/recognise';
import { recognise } from './columns/recognise';
import type { ReadNumbers } from './columns/cells/values';
import { readNumbers, readTexts } from './columns/cells/values';
import { readDate, YEAR_UNSAID } from './columns/cells/dates';
import { joinClocks } from './columns/clocks';
import type { SheetCells } from './read/sheetCells';
import { cellName, valueAt } from './read/sheetCells';
import type { RecordPlace } from './schema';
import type { Cell } from '../base/values';
import { dayParts } from '../units/dates';
import { UNSAID } from './rules/farming/water';
import { conceptsOf } from './words/lexicon';

/** Where a record's cell of a column stands. */
export interface Spot {
  readonly sheet: SheetCells;
  readonly position: number;
  readonly column: number;
}

/** A column as it stands, before its meaning: rules that need none read it. */
export interface ReadColumn {
  readonly header: string;
  readonly plain: Float64Array;
  /** Dates, clock times or both, where most cells are; shares of a day where only the clock is said. */
  readonly moments: ReadNumbers | undefined;
  readonly content: ColumnContent;
  readonly run: CellRun;
  readonly spot: (record: number) => Spot | undefined;
}

/** Records that say the same things in the same columns: the rows of a table, or all forms of a book. */
export interface RecordTable {
  readonly title: string;
  readonly layout: 'rows' | 'forms';
  readonly length: number;
  readonly mapping: readonly MappedColumn[];
  readonly numbers: Readonly<Partial<Record<NumericField, Float64Array>>>;
  readonly texts: Readonly<Partial<Record<RecordText, readonly string[]>>>;
  readonly read: Readonly<Partial<Record<NumericField, ReadNumbers>>>;
  /** Cell of a field in a record; undefined where the record has no such cell. */
  readonly spot: (record: number, field: FieldName) => Spot | undefined;
  /** Any cell of the record, for findings about the whole record. */
  readonly home: (record: number) => Spot;
  /** Every column, known or not, with its numbers as typed; beside `mapping`. */
  readonly columns: readonly ReadColumn[];
  /** What the columns have to do with each other, found by trying. */
  readonly links: readonly Link[];
  /** For tables only: the sheet, its columns and the rows of the records. */
  readonly rows: LaidTable | undefined;
  readonly skipped: readonly (SkippedArea & { readonly sheet: SheetCells })[];
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

/** Dates and hours of a column of which most cells hold one, whatever it means. */
function momentsOf(
  run: CellRun,
  content: ColumnContent,
  { decimal, order, field }: MappedColumn,
  year: number,
): ReadNumbers | undefined {
  const usable = content.filled - content.errors;
  const isMoment = field !== undefined && fieldSpec(field).kind === 'moment';
  const share = (content.dates + content.clocks + (isMoment ? content.digitClocks : 0)) / Math.max(1, usable);
  if (usable < 2 || (!isMoment && share < 0.6)) return undefined;
  return readNumbers(run, { field: isMoment ? field : 'clock', unit: undefined, decimal, order, year });
}

const columnsRead = (
  { mapping, plain, contents }: Recognised,
  runs: readonly CellRun[],
  year: number,
  spotAt: (column: number) => (record: number) => Spot | undefined,
): ReadColumn[] =>
  mapping.flatMap((mapped, i) => {
    const [run, content, numbers] = [runs[i], contents[i], plain[i]];
    return run && content && numbers
      ? [
          {
            header: mapped.header,
            plain: numbers,
            content,
            run,
            moments: momentsOf(run, content, mapped, year),
            spot: spotAt(i),
          },
        ]
      : [];
  });

type Values = Pick<RecordTable, 'numbers' | 'texts' | 'read'>;

function valuesOf(mapping: readonly MappedColumn[], runs: readonly CellRun[], year: number): Values {
  const numbers: Partial<Record<NumericField, Float64Array>> = {};
  const read: Partial<Record<NumericField, ReadNumbers>> = {};
  const texts: Partial<Record<RecordText, readonly string[]>> = {};
  for (const [i, { field, unit, decimal, order, times, isRepeated }] of mapping.entries()) {
    const run = runs[i];
    if (!field || !run || isRepeated) continue;
    if (isTextField(field)) texts[field] = readTexts(run);
    else {
      const got = readNumbers(run, { field, unit, decimal, order, times, year });
      read[field] = got;
      // Milligrams and units of a hormone cannot be judged as millilitres; ratios of the farm judge them.
      if (!(IN_MILLILITRES.has(field) && unit !== undefined && !unit.startsWith('mL')))
        numbers[field] = got.values;
    }
  }
  joinClocks(numbers, read);
  nameMaterial(mapping, runs, texts);
  return { numbers, texts, read };
}

const IN_MILLILITRES: ReadonlySet<string> = new Set([
  'hormoneDose',
  'hormoneVolume',
  'doseFirst',
  'doseSecond',
  'rateFirst',
  'rateSecond',
]);
const MATERIALS = new Map([
  ['baking_soda', 'baking soda'],
  ['soda_ash', 'soda ash'],
  ['agricultural_lime', 'agricultural lime'],
  ['hydrated_lime', 'hydrated lime'],
  ['quicklime', 'quicklime'],
]);
function materialIn(text: string): string | undefined {
  const named = [...conceptsOf(text)].filter(([concept, score]) => MATERIALS.has(concept) && score > 0.45);
  const [best] = named.sort((a, b) => b[1] - a[1]);
  return best && MATERIALS.get(best[0]);
}
/** Products under the names the rules of water know; where no column names one, the heading of the dose may. */
function nameMaterial(
  mapping: readonly MappedColumn[],
  runs: readonly CellRun[],
  texts: Partial<Record<RecordText, readonly string[]>>,
): void {
  if (texts.material) {
    texts.material = texts.material.map((text) => (text === '' ? text : (materialIn(text) ?? text)));
    return;
  }
  const i = mapping.findIndex(({ field }) => field === 'materialDose');
  const { header = '', parent = '' } = mapping[i] ?? {};
  if (i < 0) return;
  const named = materialIn(`${parent} ${header}`) ?? (/soda|dose|product/i.test(header) ? undefined : UNSAID);
  if (named) texts.material = Array.from({ length: runs[0]?.length ?? 0 }, () => named);
}

function tableOfRows(laid: LaidTable, corrections: readonly Correction[], year: number): RecordTable {
  const { sheet, body, columns } = laid;
  const runs = columns.map(({ column }) => runOf(sheet, column, body));
  const unread = columns.map(({ column, header, parent }, i) => ({
    name: columnLetters(column),
    header,
    parent,
    run: runs[i] ?? runOf(sheet, column, body),
  }));
  const read = recognise(sheet.name, unread, corrections, laid.titles);
  const { mapping, links } = read;
  const columnOfField = new Map(
    mapping.flatMap(({ field, isRepeated }, i) =>
      field && !isRepeated ? [[field, columns[i]?.column ?? 0] as const] : [],
    ),
  );
  const first = columns[0]?.column ?? 0;
  return {
    title: sheet.name,
    layout: 'rows',
    length: body.length,
    mapping,
    rows: laid,
    links,
    columns: columnsRead(read, runs, year, (i) => (record) => ({
      sheet,
      position: body[record] ?? 0,
      column: columns[i]?.column ?? 0,
    })),
    ...valuesOf(mapping, runs, year),
    spot: (record, field) => {
      const column = columnOfField.get(field);
      return column === undefined ? undefined : { sheet, position: body[record] ?? 0, column };
    },
    home: (record) => ({ sheet, position: body[record] ?? 0, column: first }),
    skipped: laid.skipped.map((one) => ({ ...one, sheet })),
  };
}

function tableOfForms(
  forms: readonly FormRecord[],
  corrections: readonly Correction[],
  year: number,
): RecordTable {
  const labels = new Map<string, FormCell>();
  // Words that differ from form to form are the name of the form, not a part of it.
  const named = new Set<string>();
  for (const { cells } of forms)
    for (const cell of cells) {
      const known = labels.get(cell.key);
      if (!known) labels.set(cell.key, cell);
      else if (known.parent !== cell.parent) named.add(cell.key);
    }
  const keys = [...labels.keys()];
  const found = forms.map(({ cells }) => new Map(cells.map((cell) => [cell.key, cell])));
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
    numberAt: (i) => {
      const spot = spotOf(i, key);
      return spot ? (spot.sheet.columns[spot.column]?.numberAt(spot.position) ?? NaN) : NaN;
    },
    isDate: (i) => {
      const spot = spotOf(i, key);
      return spot?.sheet.columns[spot.column]?.isDateAt(spot.position) ?? false;
    },
  }));
  const read = recognise(
    forms[0]?.sheet.name ?? '',
    keys.map((key, i) => ({
      name: labels.get(key)?.label ?? key,
      header: labels.get(key)?.label ?? key,
      parent: named.has(key) ? '' : (labels.get(key)?.parent ?? ''),
      run: runs[i] as CellRun,
    })),
    corrections,
  );
  const { mapping, links } = read;
  const keyOfField = new Map(
    mapping.flatMap(({ field }, i) => (field ? [[field, keys[i] ?? ''] as const] : [])),
  );
  return {
    title: [...new Set(forms.map(({ sheet }) => sheet.name))].slice(0, 3).join(', '),
    layout: 'forms',
    length: forms.length,
    mapping,
    rows: undefined,
    links,
    columns: columnsRead(read, runs, year, (i) => (record) => spotOf(record, keys[i] ?? '')),
    ...valuesOf(mapping, runs, year),
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
const FIRST_DAY = 30_000;
/** The day a cell says with its year; undefined where it says none. */
function daySaid(value: Cell | undefined, isDate: boolean): number | undefined {
  if (typeof value === 'number') return isDate && value > FIRST_DAY ? value : undefined;
  return typeof value === 'string' && /\b(?:19|20)\d\d\b/.test(value) && value.length < 30
    ? readDate(value, 'day first')
    : undefined;
}
/** The year most dates of a book fall in, for dates written without one. */
function yearOf(sheets: readonly SheetCells[]): number {
  const counts = new Map<number, number>();
  for (const { columns } of sheets)
    for (const column of columns) {
      if (!column) continue;
      const step = Math.max(1, Math.floor(column.length / 60));
      for (let i = 0; i < column.length; i += step) {
        const serial = daySaid(column.cellAt(i), column.isDateAt(i));
        if (serial === undefined) continue;
        const { year } = dayParts(serial);
        counts.set(year, (counts.get(year) ?? 0) + 1);
      }
    }
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? YEAR_UNSAID;
}

const LEAST_FORM_LABELS = 3;
/** Forms that share labels are records of one kind; others are kinds of their own. */
function kindsOfForms(forms: readonly FormRecord[]): FormRecord[][] {
  const kinds: { readonly keys: Set<string>; readonly forms: FormRecord[] }[] = [];
  for (const form of forms) {
    const keys = form.cells.map(({ key }) => key);
    const home = kinds.find(
      (kind) =>
        keys.filter((key) => kind.keys.has(key)).length >= 0.5 * Math.min(keys.length, kind.keys.size),
    );
    if (home) {
      home.forms.push(form);
      for (const key of keys) home.keys.add(key);
    } else kinds.push({ keys: new Set(keys), forms: [form] });
  }
  return kinds.filter(({ keys }) => keys.size >= LEAST_FORM_LABELS).map((kind) => kind.forms);
}

/** Is a cell inside a table? */
function placesOf(laid: readonly LaidTable[]): (position: number, column: number) => boolean {
  const areas = new Map<number, (readonly [from: number, to: number])[]>();
  for (const { columns, firstHeader, body } of laid)
    for (const { column } of columns)
      areas.set(column, [...(areas.get(column) ?? []), [firstHeader, body.at(-1) ?? 0]]);
  return (position, column) =>
    areas.get(column)?.some(([from, to]) => position >= from && position <= to) ?? false;
}

/** Every table and form of a book, with its columns understood as far as they can be. */
export function recordTables(
  sheets: readonly SheetCells[],
  corrections: readonly Correction[] = [],
): RecordTable[] {
  const tables: RecordTable[] = [];
  const forms: FormRecord[] = [];
  const year = yearOf(sheets);
  for (const sheet of sheets) {
    const laid = layTables(sheet);
    tables.push(...laid.map((one) => tableOfRows(one, corrections, year)));
    forms.push(...layForms(sheet, placesOf(laid)));
  }
  for (const kind of kindsOfForms(forms)) tables.push(tableOfForms(kind, corrections, year));
  return tables;
}

export const fieldNoun = (field: FieldName): string => fieldSpec(field).noun;
