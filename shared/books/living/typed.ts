import type { Cell } from '../../base/values';
import type { CellModel, SheetModel } from '../../sheet/workbook/model';
import { CALENDAR, EGG_COUNTS, FRY_COUNTS, PAIRS, SHOPPING } from './columns';
import type { LivingPages } from './context';
import type { Table } from './table';

/** A line as it was read, by column key. */
export type TypedLine = Readonly<Record<string, Exclude<Cell, null> | undefined>>;
/** What people wrote into a book and no plan holds: carried from the old book into the new one. */
export interface TypedActuals {
  readonly pairs: readonly TypedLine[];
  readonly eggs: readonly TypedLine[];
  readonly fry: readonly TypedLine[];
  /** Ticks, each with its batch, task, order and repeat. */
  readonly calendar: readonly TypedLine[];
  readonly shopping: readonly TypedLine[];
  /** The log as it stands, line by line, understood or not. */
  readonly log: readonly TypedLine[];
}
export const NOTHING_TYPED: TypedActuals = {
  pairs: [],
  eggs: [],
  fry: [],
  calendar: [],
  shopping: [],
  log: [],
};

const isOpen = (style: string): boolean => style === 'blank' || style === 'input';
const isEmpty = (value: unknown): boolean => value === undefined || value === '';

/** Keys of the columns of a table that are filled in by hand. */
export const openKeys = <K extends string>(columns: Readonly<Record<K, { readonly style: string }>>): K[] =>
  (Object.keys(columns) as K[]).filter((key) => isOpen(columns[key].style));

interface Carried {
  readonly table: Table<string>;
  readonly lines: readonly TypedLine[];
  /** What tells which line of the new table a line of the old one is. */
  readonly nameOf: (line: TypedLine) => string;
  readonly names: readonly string[];
  readonly keys: readonly string[];
}

function carriedOf(pages: LivingPages, typed: TypedActuals): Carried[] {
  const { tables: t, rows } = pages;
  const batches = rows.batches.map(({ name }) => name);
  const byBatch = (line: TypedLine): string => String(line.batch);
  const join = (...parts: readonly unknown[]): string => parts.map((p) => String(p ?? '')).join('|');
  return [
    {
      table: t.pairs,
      lines: typed.pairs,
      nameOf: (l) => join(l.batch, l.female, l.male),
      names: rows.pairs.map((p) => join(p.batch, p.female, p.male)),
      keys: openKeys(PAIRS),
    },
    { table: t.eggs, lines: typed.eggs, nameOf: byBatch, names: batches, keys: openKeys(EGG_COUNTS) },
    { table: t.fry, lines: typed.fry, nameOf: byBatch, names: batches, keys: openKeys(FRY_COUNTS) },
    {
      table: t.calendar,
      lines: typed.calendar,
      nameOf: (l) => join(l.batch, l.task, l.order, l.later),
      names: rows.tasks.map((l) => join(l.batch, titleOf(pages, l.task), l.order, l.later)),
      keys: openKeys(CALENDAR),
    },
    {
      table: t.shopping,
      lines: typed.shopping,
      nameOf: (l) => String(l.week),
      names: Array.from({ length: t.shopping.lines }, (_, i) => String(pages.weeks.from + 7 * i)),
      keys: openKeys(SHOPPING),
    },
    {
      table: t.log,
      lines: typed.log,
      nameOf: (l) => String(typed.log.indexOf(l)),
      names: typed.log.map((_, i) => String(i)),
      keys: t.log.keys,
    },
  ] as Carried[];
}
const titleOf = ({ tables }: LivingPages, task: string): string =>
  tables.times.columns[task as keyof typeof tables.times.columns].title;

/** The sheets with what was typed put back beside what it was typed for. */
export function carryTyped(
  sheets: readonly SheetModel[],
  pages: LivingPages,
  typed: TypedActuals,
): SheetModel[] {
  const bySheet = new Map<string, Record<string, CellModel>>();
  for (const { table, lines, nameOf, names, keys } of carriedOf(pages, typed)) {
    const places = new Map(names.map((name, i) => [name, table.first + i]));
    const cells = bySheet.get(table.title) ?? {};
    bySheet.set(table.title, cells);
    for (const line of lines) {
      const row = places.get(nameOf(line));
      if (row === undefined) continue;
      for (const key of keys) {
        const value = line[key];
        if (value !== undefined && !isEmpty(value)) cells[`${table.letters[key] ?? ''}${row}`] = { value };
      }
    }
  }
  return sheets.map((sheet) => {
    const own = bySheet.get(sheet.name);
    if (!own) return sheet;
    const cells = { ...sheet.cells };
    for (const [address, { value }] of Object.entries(own))
      if (value !== undefined && cells[address]?.formula === undefined)
        cells[address] = { ...cells[address], value };
    return { ...sheet, cells };
  });
}
