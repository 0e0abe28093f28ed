// Long: the sheet of tables and its reader, side by side.
import type { Cell } from '../../../../shared/base/values';
import { isError } from '../../../../shared/base/values';
import { PRODUCTS } from '../../../../shared/run/fields';
import type { BookFault } from '../../../../shared/season/book/orderBook';
import { addressOf } from '../../../../shared/sheet/formula/address';
import { SheetBuilder, styled } from '../../../../shared/sheet/workbook/build';
import type { SheetModel, ValidationModel } from '../../../../shared/sheet/workbook/model';
import { FIRST_DAY, LAST_DAY, isoDateOfSerial, serialOfIsoDate } from '../../../../shared/units/dates';
import type { OrderRow, SeasonForm } from './form';
import type { ListKey } from './lists';
import { GONE, OUT, linesText, readLines } from './lists';

/**
 * Orders, vats and fish as tables on one sheet, side by side: typed there, or pasted from another book, with
 * lists to choose from, and read back by their headings.
 */

export const TABLES_SHEET = 'To plan';
/** Headings stand in this row; lines below it. */
const HEAD = 4;
const LINES = 60;

interface TableColumn {
  readonly key: string;
  readonly title: string;
  readonly width: number;
  readonly format?: string;
  readonly kind?: 'date' | 'number';
  readonly items?: readonly string[];
}
const DATE = { format: 'd mmm yyyy', kind: 'date', width: 12 } as const;
const HOLDS = ['all', 'eggs', 'fry', 'nursing', 'eggs fry', 'fry nursing'] as const;

const COLUMNS = {
  orders: [
    { key: 'name', title: 'Order', width: 22 },
    { key: 'product', title: 'Product', width: 11, items: PRODUCTS },
    { key: 'number', title: 'Fish', width: 9, format: '#,##0', kind: 'number' },
    { key: 'due', title: 'Due', ...DATE },
    { key: 'grams', title: 'Weight of a fish, g', width: 10, format: '0.00', kind: 'number' },
    { key: 'price', title: 'Price of a fish', width: 9, format: '#,##0.00##', kind: 'number' },
    { key: 'forBreeding', title: 'For breeding', width: 9, items: ['yes', 'no'] },
    { key: 'cancelled', title: 'Cancelled', width: 9, items: ['yes', 'no'] },
  ],
  vats: [
    { key: 'name', title: 'Vat', width: 14 },
    { key: 'litres', title: 'Water, L', width: 9, format: '#,##0', kind: 'number' },
    { key: 'holds', title: 'Holds', width: 11, items: HOLDS },
    { key: 'outFrom', title: 'Out of use from', ...DATE },
    { key: 'outUntil', title: 'until', ...DATE },
  ],
  females: [
    { key: 'tag', title: 'Female', width: 10 },
    { key: 'kilograms', title: 'Weight, kg', width: 9, format: '0.00', kind: 'number' },
    { key: 'family', title: 'Family', width: 11 },
    { key: 'lastUsed', title: 'Last stripped', ...DATE },
    { key: 'goneOn', title: 'Gone on', ...DATE },
  ],
  males: [
    { key: 'tag', title: 'Male', width: 10 },
    { key: 'family', title: 'Family', width: 11 },
    { key: 'lastUsed', title: 'Milt taken', ...DATE },
    { key: 'goneOn', title: 'Gone on', ...DATE },
  ],
} as const satisfies Readonly<Record<string, readonly TableColumn[]>>;
export type TableKey = keyof typeof COLUMNS;
const TABLES = Object.keys(COLUMNS) as TableKey[];
const columnsOf = (table: TableKey): readonly TableColumn[] => COLUMNS[table];

/** A text of the form as a cell: numbers and days as what they are, anything else as it was typed. */
const cellOf = (text: unknown): string | number => {
  const typed = typeof text === 'number' || typeof text === 'string' ? String(text).trim() : '';
  if (typed === '') return '';
  const day = serialOfIsoDate(typed);
  if (day !== undefined) return day;
  const number = Number(typed);
  return Number.isFinite(number) ? number : typed;
};

type Line = Readonly<Record<string, string | number>>;
const listLines = (form: SeasonForm, list: ListKey): readonly Line[] =>
  readLines(list, form.lists[list]).map(({ entry }) => {
    const { holds, ...rest } = entry;
    return {
      ...Object.fromEntries(Object.entries(rest).map(([key, value]) => [key, cellOf(value)])),
      ...(Array.isArray(holds) ? { holds: holds.join(' ') } : {}),
    };
  });
function linesOf(form: SeasonForm): Readonly<Record<TableKey, readonly Line[]>> {
  return {
    orders: form.orders
      .filter(({ texts }) => texts.name.trim() !== '' || texts.number.trim() !== '')
      .map(({ texts, forBreeding, cancelled }) => ({
        ...Object.fromEntries(Object.entries(texts).map(([key, text]) => [key, cellOf(text)])),
        forBreeding: forBreeding ? 'yes' : '',
        cancelled: cancelled ? 'yes' : '',
      })),
    vats: listLines(form, 'vats'),
    females: listLines(form, 'females'),
    males: listLines(form, 'males'),
  };
}

const validationOf = ({ items, kind, title }: TableColumn, range: string): ValidationModel | undefined =>
  items
    ? { range, kind: 'list', items, message: `${title}: ${items.join(', ')}.` }
    : kind === 'date'
      ? { range, kind: 'date', min: FIRST_DAY, max: LAST_DAY, message: `${title}: a date.` }
      : kind === 'number'
        ? { range, kind: 'decimal', min: 0, max: 1e9, message: `${title}: a number, 0 or more.` }
        : undefined;

/** The sheet with what the form holds now, ready to be typed on. */
export function tablesSheet(form: SeasonForm): SheetModel {
  const widths: number[] = [2];
  for (const table of TABLES) widths.push(...columnsOf(table).map(({ width }) => width), 3);
  const sheet = new SheetBuilder(TABLES_SHEET, {
    widths,
    freeze: { rows: HEAD, columns: 0 },
    tab: '2F6F73',
  } as ConstructorParameters<typeof SheetBuilder>[1]);
  sheet.put('B1', 'Orders, vats and brood fish', 'title');
  sheet.put(
    'B2',
    'Type or paste below the headings; then press “Read the tables” in the pane, Plan, A whole season.',
    'text',
  );
  const lines = linesOf(form);
  let left = 1;
  for (const table of TABLES) {
    const own = lines[table];
    const last = HEAD + Math.max(LINES, own.length + 20);
    columnsOf(table).forEach((column, i) => {
      const at = left + i;
      sheet.put(addressOf(HEAD - 1, at), column.title, 'heading');
      for (let row = HEAD; row < last; row++)
        sheet.put(
          addressOf(row, at),
          styled(
            own[row - HEAD]?.[column.key] ?? '',
            'input',
            column.format ? { format: column.format } : {},
          ),
        );
      const check = validationOf(column, `${addressOf(HEAD, at)}:${addressOf(last - 1, at)}`);
      if (check) sheet.validate(check);
    });
    left += columnsOf(table).length + 1;
  }
  return sheet.build();
}

/** Cells as a host hands them over; top and left are the place of the first, from 0. */
export interface TablesGrid {
  readonly top: number;
  readonly left: number;
  readonly values: readonly (readonly Cell[])[];
}
export interface ReadTables {
  readonly form: SeasonForm;
  /** Where a fault of the order book stands: orders.2.number is a cell. */
  readonly cellOf: (fault: BookFault) => string | undefined;
  readonly counts: Readonly<Record<TableKey, number>>;
}

const textIn = (cell: Cell | undefined): string =>
  cell === null || cell === undefined ? '' : isError(cell) ? cell.error : String(cell).trim();
/** A semicolon would begin another column of the form's own lines. */
const plain = (cell: Cell | undefined): string => textIn(cell).replaceAll(';', ',');
const dayIn = (cell: Cell | undefined): string =>
  typeof cell === 'number' && cell >= 1 ? isoDateOfSerial(Math.floor(cell)) : plain(cell);

interface FoundLine {
  readonly row: number;
  readonly at: (key: string) => Cell | undefined;
}
interface FoundTable {
  readonly lines: readonly FoundLine[];
  readonly columnOf: (key: string) => number | undefined;
}

/** A table by its first heading, up to the next one's. */
function tableIn({ values }: TablesGrid, heads: readonly Cell[], head: number, table: TableKey): FoundTable {
  const first = (of: TableKey): number => heads.findIndex((cell) => textIn(cell) === columnsOf(of)[0]?.title);
  const from = first(table);
  const to = Math.min(heads.length, ...TABLES.map(first).filter((column) => column > from));
  const places = new Map(
    columnsOf(table).flatMap(({ key, title }): [string, number][] => {
      const at = heads.findIndex((cell, i) => i >= from && i < to && textIn(cell) === title);
      return at < 0 ? [] : [[key, at]];
    }),
  );
  const lines = values.slice(head + 1).flatMap((cells, i): FoundLine[] => {
    const at = (key: string): Cell | undefined => cells[places.get(key) ?? -1];
    return [...places.keys()].some((key) => textIn(at(key)) !== '') ? [{ row: head + 1 + i, at }] : [];
  });
  return { lines, columnOf: (key) => places.get(key) ?? places.get(columnsOf(table)[0]?.key ?? '') };
}

const orderOf = ({ at }: FoundLine, id: number): OrderRow => ({
  id,
  texts: {
    name: textIn(at('name')),
    product: textIn(at('product')).toLowerCase() || 'fry',
    number: textIn(at('number')),
    due: dayIn(at('due')),
    grams: textIn(at('grams')),
    price: textIn(at('price')),
  },
  forBreeding: /^(yes|y|oui|true)$/i.test(textIn(at('forBreeding'))),
  cancelled: /^(yes|y|oui|true)$/i.test(textIn(at('cancelled'))),
});
/**
 * An order keeps the key it had: of a buyer's orders the one that says the same takes it first, then the one of
 * the same day, then the next of the buyer's.
 */
function withKeys(rows: readonly OrderRow[], { orders }: SeasonForm): readonly OrderRow[] {
  const taken = new Set<string>();
  const keys = new Map<number, string>();
  const buyer = ({ texts }: OrderRow): string => texts.name.trim().toLowerCase();
  const day = (row: OrderRow): string => [buyer(row), row.texts.product, row.texts.due.trim()].join('|');
  const whole = (row: OrderRow): string => `${day(row)}|${row.texts.number.trim()}`;
  for (const alike of [whole, day, buyer]) {
    const free = new Map<string, string[]>();
    for (const old of orders)
      if (old.key !== undefined && !taken.has(old.key))
        free.set(alike(old), [...(free.get(alike(old)) ?? []), old.key]);
    for (const row of rows) {
      const key = keys.has(row.id) ? undefined : free.get(alike(row))?.shift();
      if (key === undefined) continue;
      keys.set(row.id, key);
      taken.add(key);
    }
  }
  return rows.map((row) => {
    const key = keys.get(row.id);
    return key === undefined ? row : { ...row, key };
  });
}
const vatRow = ({ at }: FoundLine): (string | undefined)[] => {
  const [from, until] = [dayIn(at('outFrom')), dayIn(at('outUntil'))];
  const holds = plain(at('holds'));
  return [
    plain(at('name')),
    plain(at('litres')),
    /^(all)?$/i.test(holds) ? undefined : holds,
    from || until ? [OUT, from, until && `to ${until}`].filter(Boolean).join(' ') : undefined,
  ];
};
const fishRow = ({ at }: FoundLine, hasWeight: boolean): (string | undefined)[] => {
  const gone = dayIn(at('goneOn'));
  return [
    plain(at('tag')),
    ...(hasWeight ? [plain(at('kilograms'))] : []),
    plain(at('family')),
    dayIn(at('lastUsed')),
    gone === '' ? undefined : `${GONE} ${gone}`,
  ];
};

/** The form with what stands in the tables now; undefined when their headings are gone. */
export function readTables(grid: TablesGrid, form: SeasonForm): ReadTables | undefined {
  const titles = TABLES.map((table) => columnsOf(table)[0]?.title ?? '');
  const head = grid.values.findIndex((row) => titles.every((title) => row.map(textIn).includes(title)));
  const heads = grid.values[head];
  if (!heads) return undefined;
  const found = Object.fromEntries(
    TABLES.map((table) => [table, tableIn(grid, heads, head, table)]),
  ) as unknown as Readonly<Record<TableKey, FoundTable>>;
  return {
    form: {
      ...form,
      orders: withKeys(
        found.orders.lines.map((line, i) => orderOf(line, i + 1)),
        form,
      ),
      lists: {
        vats: linesText(found.vats.lines.map(vatRow)),
        females: linesText(found.females.lines.map((line) => fishRow(line, true))),
        males: linesText(found.males.lines.map((line) => fishRow(line, false))),
      },
    },
    cellOf: ({ field }) => {
      const [table = '', line = '', key = ''] = field.split('.');
      if (!(table in found) || line === '') return undefined;
      const { lines, columnOf } = found[table as TableKey];
      const [row, column] = [lines[Number(line)]?.row, columnOf(key)];
      return row === undefined || column === undefined
        ? undefined
        : addressOf(grid.top + row, grid.left + column);
    },
    counts: Object.fromEntries(TABLES.map((table) => [table, found[table].lines.length])) as Record<
      TableKey,
      number
    >,
  };
}
