import type { Cell } from '../../../shared/base/values';
import { isError } from '../../../shared/base/values';
import { overlaps, parseArea } from '../address';
import type { StandInArea, CellInput, TablePatch, TableState } from '../book';
import { fail } from '../failure';
import { asFlag, asText } from '../input';
import type { Env, ObjectNode } from '../node';
import { placeArgument, placeAnywhere } from './find';
import { guardChange } from './guard';
import { rangeNode } from './range';
import { worksheetNode } from './worksheet';

const same = (a: string, b: unknown): boolean => typeof b === 'string' && a.toLowerCase() === b.toLowerCase();

async function byId(env: Env, id: string): Promise<TableState> {
  return (await env.book.tables()).find((t) => t.id === id) ?? fail('ItemNotFound', 'The table is gone.');
}

const isLegal = (name: string): boolean =>
  /^[A-Za-z_\\\p{L}][\w.\p{L}]{0,254}$/u.test(name) && !parseArea(name);

async function rename(env: Env, id: string, given: unknown): Promise<void> {
  const name = asText(given, 'name');
  if (!isLegal(name)) fail('InvalidArgument', `${name} cannot be a table's name.`);
  const isTaken =
    (await env.book.tables()).some((t) => t.id !== id && same(t.name, name)) ||
    (await env.book.names()).some((n) => same(n.name, name));
  if (isTaken) fail('ItemAlreadyExists', `The name ${name} exists already.`);
  await env.book.changeTable(id, { name });
}

/** Headings are texts, filled and different from each other; Excel changes the cells to make them so. */
export function headingsFor(row: readonly Cell[]): string[] {
  const taken = new Set<string>();
  return row.map((cell, i) => {
    const wanted = cell === null || cell === '' || isError(cell) ? `Column${i + 1}` : String(cell);
    let heading = wanted;
    for (let n = 2; taken.has(heading.toLowerCase()); n++) heading = `${wanted}${n}`;
    taken.add(heading.toLowerCase());
    return heading;
  });
}

async function showTotals(env: Env, id: string, isShown: boolean): Promise<void> {
  const table = await byId(env, id);
  if (table.showTotals === isShown) return;
  await env.book.changeTable(id, { showTotals: isShown });
  if (!isShown) return;
  const { area } = await byId(env, id);
  const [headings = []] = await env.book.read(table.sheet, { ...area, rows: 1 }, 'values');
  const last = headingsFor(headings).at(-1) ?? '';
  const cells: CellInput[] = Array.from({ length: area.columns }, (_, i) => {
    if (i === area.columns - 1 && i > 0) return { formula: `=SUBTOTAL(109,[${last}])` };
    return i === 0 ? { value: 'Total' } : undefined;
  });
  await env.book.write(table.sheet, { ...area, row: area.row + area.rows - 1, rows: 1 }, [cells]);
}

function tableNode(env: Env, id: string): ObjectNode {
  const current = (): Promise<TableState> => byId(env, id);
  const change = async (patch: TablePatch): Promise<void> => {
    await guardChange(env.book, (await current()).sheet, 'structure');
    await env.book.changeTable(id, patch);
  };
  const part = async (cut: (table: TableState) => StandInArea): Promise<ObjectNode> => {
    const table = await current();
    return rangeNode(env, table.sheet, cut(table));
  };
  return {
    type: 'Table',
    identity: () => ({ Id: id }),
    scalars: {
      Id: () => id,
      Name: async () => (await current()).name,
      Style: async () => (await current()).style,
      ShowTotals: async () => (await current()).showTotals,
    },
    setters: {
      Name: (given) => rename(env, id, given),
      Style: (given) => change({ style: asText(given, 'style') }),
      ShowTotals: async (given) => {
        await guardChange(env.book, (await current()).sheet, 'structure');
        await showTotals(env, id, asFlag(given, 'showTotals'));
      },
    },
    links: { Worksheet: async () => worksheetNode(env, (await current()).sheet) },
    methods: {
      GetRange: () => part((t) => t.area),
      GetHeaderRowRange: () => part((t) => ({ ...t.area, rows: 1 })),
      GetDataBodyRange: () =>
        part((t) => ({ ...t.area, row: t.area.row + 1, rows: t.area.rows - 1 - (t.showTotals ? 1 : 0) })),
      Delete: async () => {
        const { sheet, area } = await current();
        await guardChange(env.book, sheet, 'structure');
        await env.book.deleteTable(id);
        await env.book.clear(sheet, area, 'All');
      },
    },
  };
}

async function addTable(
  env: Env,
  sheet: string,
  area: StandInArea,
  hasHeaders: boolean,
): Promise<ObjectNode> {
  if (!hasHeaders)
    return fail('NotImplemented', 'The local sheet makes tables from ranges that have their headings.');
  if (area.rows < 2) return fail('InvalidArgument', 'A table needs its headings and at least one row.');
  await guardChange(env.book, sheet, 'structure');
  const tables = await env.book.tables();
  const other = tables.find((t) => t.sheet === sheet && overlaps(t.area, area));
  if (other) return fail('InvalidArgument', `The range overlaps the table ${other.name}.`);
  const [first = []] = await env.book.read(sheet, { ...area, rows: 1 }, 'values');
  await env.book.write(sheet, { ...area, rows: 1 }, [
    headingsFor(first).map((heading, i) => (first[i] === heading ? undefined : { value: heading })),
  ]);
  let n = tables.length + 1;
  while (tables.some((t) => same(t.name, `Table${n}`))) n += 1;
  return tableNode(env, await env.book.addTable(sheet, area, `Table${n}`));
}

/** Tables of the workbook, or of one sheet. */
export function tablesNode(env: Env, sheet?: string): ObjectNode {
  const mine = async (): Promise<readonly TableState[]> =>
    (await env.book.tables()).filter((t) => sheet === undefined || t.sheet === sheet);
  const find = async (key: unknown): Promise<ObjectNode | null> => {
    const table = (await mine()).find((t) => t.id === key || same(t.name, key));
    return table ? tableNode(env, table.id) : null;
  };
  const item = async (key: unknown): Promise<ObjectNode> =>
    (await find(key)) ?? fail('ItemNotFound', `There is no table ${String(key)}.`);
  return {
    type: 'TableCollection',
    scalars: {},
    item,
    items: async () => (await mine()).map((t) => tableNode(env, t.id)),
    methods: {
      GetItem: item,
      GetItemOrNullObject: find,
      GetCount: async () => (await mine()).length,
      Add: async (address, hasHeaders) => {
        const place =
          sheet === undefined
            ? await placeAnywhere(env.book, address)
            : await placeArgument(env.book, sheet, address);
        return addTable(env, place.sheet, place.area, asFlag(hasHeaders, 'hasHeaders'));
      },
    },
  };
}
