import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { livingBook, LivingPages, readBook } from '../../../shared/books/living';
import { planBatches, readOrderBook } from '../../../shared/season';
import { PLAN_FIELDS, readOneOrder } from '../../../shared/season/one';
import { addressOf, parseAddress } from '../../../shared/sheet/formula/address';
import type { SheetModel } from '../../../shared/sheet/workbook/model';
import { serialOfIsoDate } from '../../../shared/units/dates';
import { formOfInput, inputOfForm } from '../../../taskpane/screens/season/state/form';
import type { SeasonForm } from '../../../taskpane/screens/season/state/form';
import { readOrderLines } from '../../../taskpane/screens/season/state/lists';
import { readTables, tablesSheet } from '../../../taskpane/screens/season/state/tables';
import { SEASON_PLAN_FORM } from '../../../templates/season-plan.template';
import { BOOK, bookOf, gridOf } from '../../season/support/support';
import { DAYS, HOURS, SPELLINGS } from '../../units/spellings';
import type { FieldName, Meaning } from '../../units/spellings';

/** One table of spellings through every reader of a season: all understand the same, or all ask. */
type Row = readonly [text: string, field: FieldName, means: Meaning];
const serial = (means: string): Meaning => serialOfIsoDate(means) ?? (means as Meaning);
const ALL: readonly Row[] = [
  ...SPELLINGS,
  ...DAYS.map(([text, means]): Row => [text, 'day', serial(means)]),
  ...HOURS.map(([text, means]): Row => [text, 'hour', means]),
];

/** Where a field stands in an order book. */
const PATHS: Readonly<Record<FieldName, readonly (string | number)[]>> = {
  fish: ['orders', 0, 'number'],
  litres: ['vats', 0, 'litres'],
  kilograms: ['females', 0, 'kilograms'],
  grams: ['orders', 0, 'grams'],
  price: ['orders', 0, 'price'],
  share: ['lost'],
  degrees: ['temperatures', 0],
  day: ['orders', 0, 'due'],
  hour: ['staff', 'stripFrom'],
};
const withAt = (tree: unknown, [key, ...rest]: readonly (string | number)[], value: unknown): unknown => {
  if (key === undefined) return value;
  if (Array.isArray(tree)) return tree.map((one: unknown, i) => (i === key ? withAt(one, rest, value) : one));
  const own = (tree ?? {}) as Readonly<Record<string, unknown>>;
  return { ...own, [key]: withAt(own[key], rest, value) };
};
const at = (tree: unknown, path: readonly (string | number)[]): unknown =>
  path.reduce<unknown>((part, key) => (part as Readonly<Record<string, unknown>>)[key], tree);

/** What an order book makes of an input at a field; the path of a fault is that of the field. */
function outcome(input: unknown, field: FieldName): Meaning {
  const path = PATHS[field];
  const read = readOrderBook(input);
  if ('book' in read) {
    const value = at(read.book, path);
    return typeof value === 'number' ? value : 'blank';
  }
  const own = read.faults.filter((fault) => fault.field === path.join('.'));
  expect([field, own.length, read.faults.length]).toEqual([field, 1, 1]);
  return / can be /.test(own[0]?.message ?? '') ? 'asked' : 'none';
}

// A book without brood fish has no batch: small, and every sheet that is typed into is there.
const small = bookOf({ females: BOOK.females.slice(0, 1), males: [] });
const smallPlan = planBatches(small, { draws: 50, explains: false });
const { tables } = new LivingPages(small, smallPlan);
const model = livingBook(small, smallPlan);
const sheetOf = (name: string): SheetModel => {
  const sheet = model.sheets.find((one) => one.name === name);
  if (!sheet) throw new Error(name);
  return sheet;
};
const beside = (sheet: string, label: string): readonly [string, string] => {
  const [address = ''] = Object.entries(sheetOf(sheet).cells).find(([, { value }]) => value === label) ?? [];
  const place = parseAddress(address);
  if (!place) throw new Error(label);
  return [sheet, addressOf(place.row, place.column + 1)];
};
const cell = <K extends string>(
  table: { readonly title: string; readonly letters: Readonly<Record<K, string>>; readonly first: number },
  key: K,
): readonly [string, string] => [table.title, `${table.letters[key]}${table.first}`];
const CELLS: Readonly<Record<FieldName, readonly [string, string]>> = {
  fish: cell(tables.orders, 'number'),
  litres: cell(tables.vats, 'litres'),
  kilograms: cell(tables.females, 'kilograms'),
  grams: cell(tables.orders, 'grams'),
  price: cell(tables.orders, 'price'),
  share: beside('Setup', 'Runs lost altogether'),
  degrees: beside('Setup', 'January'),
  day: cell(tables.orders, 'due'),
  hour: beside('Setup', 'Stripping from'),
};
const grids = new Map(model.sheets.map((sheet) => [sheet.name, gridOf(sheet)]));
const typedInto = ([name, address]: readonly [string, string], text: string) =>
  [...grids.values()].map((grid) => {
    const place = parseAddress(address);
    return grid.name === name && place
      ? {
          ...grid,
          values: grid.values.map((row, r) =>
            r === place.row ? row.map((old, c) => (c === place.column ? text : old)) : row,
          ),
        }
      : grid;
  });

// Prices of the others are left out: where there are any, they decide what is open.
const FORM = formOfInput(
  { ...BOOK, orders: BOOK.orders.map((order) => ({ ...order, price: undefined })) },
  46_397,
);
const inOrder = (form: SeasonForm, key: string, text: string): SeasonForm => ({
  ...form,
  orders: form.orders.map((row, i) => (i === 0 ? { ...row, texts: { ...row.texts, [key]: text } } : row)),
});
const inText = (form: SeasonForm, path: string, text: string): SeasonForm => ({
  ...form,
  texts: { ...form.texts, [path]: text },
});
const inList = (form: SeasonForm, list: 'vats' | 'females', first: string): SeasonForm => ({
  ...form,
  lists: { ...form.lists, [list]: [first, ...form.lists[list].split('\n').slice(1)].join('\n') },
});
const IN_FORM: Readonly<Record<FieldName, (text: string) => SeasonForm>> = {
  fish: (text) => inOrder(FORM, 'number', text),
  litres: (text) => inList(FORM, 'vats', `Vat 1; ${text}`),
  kilograms: (text) => inList(FORM, 'females', `F1; ${text}; line 0`),
  grams: (text) => inOrder(FORM, 'grams', text),
  price: (text) => inOrder(FORM, 'price', text),
  share: (text) => inText(FORM, 'lost', text),
  degrees: (text) => inText(FORM, 'temperatures.0', text),
  day: (text) => inOrder(FORM, 'due', text),
  hour: (text) => inText(FORM, 'staff.stripFrom', text),
};

const IN_TABLE: Readonly<Partial<Record<FieldName, string>>> = {
  fish: 'Fish',
  litres: 'Water, L',
  kilograms: 'Weight, kg',
  grams: 'Weight of a fish, g',
  price: 'Price of a fish',
  day: 'Due',
};
const tableGrid = gridOf(tablesSheet(FORM));
function tablesWith(heading: string, text: string): SeasonForm {
  const head = tableGrid.values.findIndex((row) => row.includes(heading));
  const column = tableGrid.values[head]?.indexOf(heading) ?? -1;
  const values = tableGrid.values.map((row, r) =>
    r === head + 1 ? row.map((old, c) => (c === column ? text : old)) : row,
  );
  const read = readTables({ ...tableGrid, values }, FORM);
  if (!read) throw new Error('no tables');
  return read.form;
}

const ONE: Readonly<Partial<Record<FieldName, keyof typeof PLAN_FIELDS>>> = {
  fish: 'wanted',
  litres: 'vatLitres',
  kilograms: 'femaleWeight',
  grams: 'grams',
  price: 'price',
  degrees: 'temperature',
  day: 'wantedOn',
  hour: 'stripHour',
};
function oneOrder(key: keyof typeof PLAN_FIELDS, text: string): Meaning {
  const read = readOneOrder({ ...SEASON_PLAN_FORM, [key]: text });
  if ('form' in read) {
    const value: unknown = read.form[key];
    return typeof value === 'number' ? value : 'blank';
  }
  const own = read.faults.find(({ field }) => field === key);
  return own === undefined ? 'blank' : / can be /.test(own.message) ? 'asked' : 'none';
}
/** A form may take less of a number than an order book does. */
const within = (key: keyof typeof PLAN_FIELDS, means: Meaning): Meaning => {
  const { min = -Infinity, max = Infinity } = PLAN_FIELDS[key] as {
    readonly min?: number;
    readonly max?: number;
  };
  return typeof means === 'number' && (means < min || means > max) ? 'none' : means;
};

type Wrong = readonly [string, FieldName, Meaning, Meaning];
/** Rows a reader takes otherwise than a person means them. */
function wrong(rows: readonly Row[], reads: (text: string, field: FieldName) => Meaning): Wrong[] {
  return rows.flatMap(([text, field, means]): Wrong[] => {
    const got = reads(text, field);
    const isSame =
      typeof means === 'number' && typeof got === 'number'
        ? Math.abs(means - got) <= 1e-9 * Math.abs(means)
        : means === got;
    return isSame ? [] : [[text, field, means, got]];
  });
}

test('the table is long enough, and every field has what is understood, what is not, and one that asks', () => {
  expect(ALL.length).toBeGreaterThanOrEqual(160);
  expect(new Set(ALL.map(([text, field]) => `${field} ${text}`)).size).toBe(ALL.length);
  expect(ALL.some(([, field, means]) => field === 'price' && means === 'asked')).toBe(true);
});

const READERS: readonly (readonly [string, readonly Row[], (text: string, field: FieldName) => Meaning])[] = [
  ['an order book as JSON', ALL, (text, field) => outcome(withAt(BOOK, PATHS[field], text), field)],
  [
    'cells of the season’s own workbook',
    ALL,
    (text, field) => {
      const read = readBook(typedInto(CELLS[field], text), '');
      if (read.kind !== 'read') throw new Error(read.faults.join(' '));
      return outcome(read.input, field);
    },
  ],
  ['the form in the pane', ALL, (text, field) => outcome(inputOfForm(IN_FORM[field](text)), field)],
  [
    'the sheet of tables',
    ALL.filter(([, field]) => field in IN_TABLE),
    (text, field) => outcome(inputOfForm(tablesWith(IN_TABLE[field] ?? '', text)), field),
  ],
  [
    'rows pasted from a sheet',
    ALL.filter(([, field]) => ['fish', 'day', 'grams', 'price'].includes(field)),
    (text, field) => {
      const columns = ['A', 'fry', '5000', '2027-04-01', '', ''];
      columns[{ fish: 2, day: 3, grams: 4, price: 5 }[field as 'fish' | 'day' | 'grams' | 'price']] = text;
      const [row] = readOrderLines(columns.join('\t'));
      const orders = FORM.orders.map((order, i) => (i === 0 && row ? { ...order, texts: row.texts } : order));
      return outcome(inputOfForm({ ...FORM, orders }), field);
    },
  ],
];
test.each(READERS)('%s', (_name, rows, reads) => {
  expect(wrong(rows, reads)).toEqual([]);
});

test('the form of one order, within its own limits', () => {
  const rows = ALL.flatMap(([text, field, means]): Row[] => {
    const key = ONE[field];
    return key === undefined ? [] : [[text, field, within(key, means)]];
  });
  expect(wrong(rows, (text, field) => oneOrder(ONE[field] ?? 'wanted', text))).toEqual([]);
});

test('numbers written into the log as text count; what cannot be read is said and does not', () => {
  const [sheet] = cell(tables.log, 'number');
  for (const [text, field, means] of SPELLINGS) {
    if (field !== 'fish') continue;
    const cells = typedInto(cell(tables.log, 'number'), text).map((grid) =>
      grid.name !== sheet
        ? grid
        : {
            ...grid,
            values: grid.values.map((row, r) =>
              r === tables.log.first - 1
                ? row.map((old, c) => (c === 3 ? 'died' : c === 1 ? 46_400.5 : old))
                : row,
            ),
          },
    );
    const read = readBook(cells, '');
    if (read.kind !== 'read') throw new Error(read.faults.join(' '));
    const got = read.typed.log[0]?.number;
    if (typeof means === 'number') expect([text, got]).toEqual([text, means]);
    else if (typeof got !== 'number')
      expect([text, read.missing]).toEqual([text, [expect.stringContaining('“Counts”, “Number”: ')]]);
    if (typeof got !== 'number') expect([text, got]).toEqual([text, text]);
  }
});

describe('in the terminal', () => {
  const folder = mkdtempSync(join(tmpdir(), 'spawnbook-spelled-'));
  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
  });
  const run = (orders: readonly object[]) => {
    const path = join(folder, 'book.json');
    writeFileSync(path, JSON.stringify({ ...BOOK, females: [], orders }));
    const { status, stdout, stderr } = spawnSync(
      process.execPath,
      ['src/build/run.mjs', 'src/cli/season.ts', path, '--json'],
      { cwd: join(__dirname, '../../..'), encoding: 'utf8', maxBuffer: 64e6 },
    );
    return { status, stdout, stderr };
  };
  const KEYS = { fish: 'number', day: 'due' } as const;
  const ordersOf = (rows: readonly Row[]): object[] =>
    rows.map(([text, field], i) => ({
      name: `Buyer ${i}`,
      product: 'fry',
      number: 500,
      due: '2027-05-01',
      [KEYS[field as keyof typeof KEYS]]: text,
    }));
  const mine = ALL.filter(([, field]) => field in KEYS);

  test('what is understood is planned with', () => {
    const rows = mine.filter(([, , means]) => typeof means === 'number');
    const { status, stdout, stderr } = run(ordersOf(rows));
    expect([status, stderr]).toEqual([0, '']);
    const { orders } = JSON.parse(stdout) as { orders: { order: Record<string, number> }[] };
    expect(
      rows.map(([text, field], i) => [text, orders[i]?.order[KEYS[field as keyof typeof KEYS]]]),
    ).toEqual(rows.map(([text, , means]) => [text, means]));
  }, 120_000);

  test('what is not gets a sentence each, and nothing is planned', () => {
    const rows = mine.filter(([, , means]) => typeof means !== 'number');
    const { status, stdout, stderr } = run(ordersOf(rows));
    expect([status, stdout]).toEqual([2, '']);
    rows.forEach(([text, field], i) => {
      expect([text, stderr.includes(`orders.${i}.${KEYS[field as keyof typeof KEYS]}`)]).toEqual([
        text,
        true,
      ]);
    });
  }, 120_000);
});
