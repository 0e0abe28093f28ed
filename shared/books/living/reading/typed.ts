import type { Cell } from '../../../base/values';
import type { CellModel, SheetModel } from '../../../sheet/workbook/model';
import { CALENDAR, EGG_COUNTS, FRY_COUNTS, PAIRS, SHOPPING } from '../columns';
import { dayText, timeText } from '../../../units/dates';
import type { LivingPages } from '../context';
import { tickOf, titleOfTask } from '../layout';
import type { Table } from '../table';

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
      nameOf: tickOf,
      names: rows.tasks.map((l) => tickOf({ ...l, task: titleOfTask(l.task) })),
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

export const textOf = (value: unknown): string =>
  typeof value === 'number' && value > A_DAY
    ? `${dayText(value)}${Number.isInteger(value) ? '' : ` ${timeText(value)}`}`
    : String(value ?? '');
/** Numbers above this are moments, not weights or counts of a sample. */
const A_DAY = 36_526;
/** Longest remark of a line of the log; what is longer goes on in the next. */
const REMARK = 400;

/** What was filled in of a line, with the heading it stood under; what the plan filled in itself is its own. */
const filledIn = ({ table, keys }: Carried, line: TypedLine): string =>
  keys
    .filter((key) => table.columns[key]?.style === 'blank' && !isEmpty(line[key]))
    .map((key) => `${table.columns[key]?.title ?? key} ${textOf(line[key])}`)
    .join(', ');

/**
 * What was typed for a line that the new plan has no more (a batch planned for another night, an order handed
 * over): remarks for the log, one for each batch and order.
 */
export function withoutPlace(pages: LivingPages, typed: TypedActuals): TypedLine[] {
  const notes: string[] = [];
  const add = (about: string, text: string): void => {
    const i = notes.findLastIndex((note) => note.startsWith(about));
    const longer = `${notes[i] ?? ''}; ${text}`;
    if (i < 0 || longer.length > REMARK) notes.push(`${about}${text}`);
    else notes[i] = longer;
  };
  for (const carried of carriedOf(pages, typed)) {
    const names = new Set(carried.names);
    for (const line of carried.lines) {
      const filled = names.has(carried.nameOf(line)) ? '' : filledIn(carried, line);
      if (filled === '') continue;
      const about = [line.batch, line.order].filter((part) => !isEmpty(part)).map(textOf);
      const what = [line.task, line.female, line.male, line.week]
        .filter((part) => !isEmpty(part))
        .map(textOf);
      add(`Kept of ${[...about, carried.table.title].join(', ')}: `, `${what.join(' × ')} (${filled})`);
    }
  }
  return notes.map((note) => ({ note }));
}

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
