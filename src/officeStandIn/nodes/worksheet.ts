import { WHOLE_SHEET } from '../address';
import type { SheetPatch, SheetState } from '../book';
import { fail } from '../failure';
import { asFlag, asOneOf, asWhole, checkColor, checkSheetName } from '../input';
import type { Env, ObjectNode } from '../node';
import { settled } from '../node';
import { chartsNode } from './chart';
import { findSheet, locate, sheetById } from './find';
import { namesNode } from './name';
import { notesNode } from './note';
import { freezeNode, pageNode, protectionNode } from './page';
import { rangeNode } from './range';
import { tablesNode } from './table';

const rename = async (env: Env, id: string, given: unknown): Promise<void> => {
  const name = checkSheetName(given);
  const other = await findSheet(env.book, name);
  if (other && other.id !== id) fail('ItemAlreadyExists', `A sheet named ${name} exists already.`);
  await env.book.changeSheet(id, { name });
};

const visibleSheets = async (env: Env): Promise<readonly SheetState[]> =>
  (await env.book.sheets()).filter((s) => s.visibility === 'Visible');
const isLastVisible = async (env: Env, id: string): Promise<boolean> => {
  const visible = await visibleSheets(env);
  return visible.length === 1 && visible[0]?.id === id;
};

const methodsOf = (env: Env, id: string): NonNullable<ObjectNode['methods']> => ({
  Activate: async () => {
    if ((await sheetById(env.book, id)).visibility !== 'Visible')
      fail('InvalidOperation', 'A hidden sheet cannot be activated.');
    await env.book.activate(id);
  },
  Delete: async () => {
    if ((await sheetById(env.book, id)).visibility === 'VeryHidden')
      fail('InvalidOperation', 'Show the sheet before deleting it.');
    if (await isLastVisible(env, id))
      fail('InvalidOperation', 'A workbook keeps at least one visible sheet.');
    await env.book.deleteSheet(id);
  },
  GetRange: async (address) => {
    const place = await locate(env.book, id, address);
    return rangeNode(env, place.sheet, place.area);
  },
  GetCell: (row, column) =>
    rangeNode(env, id, { row: asWhole(row, 'row'), column: asWhole(column, 'column'), rows: 1, columns: 1 }),
  GetRangeByIndexes: (row, column, rows, columns) =>
    rangeNode(env, id, {
      row: asWhole(row, 'startRow'),
      column: asWhole(column, 'startColumn'),
      rows: asWhole(rows, 'rowCount'),
      columns: asWhole(columns, 'columnCount'),
    }),
  GetUsedRange: async (valuesOnly) =>
    rangeNode(
      env,
      id,
      (await (await settled(env)).usedArea(id, valuesOnly === true)) ?? {
        ...WHOLE_SHEET,
        rows: 1,
        columns: 1,
      },
    ),
  GetUsedRangeOrNullObject: async (valuesOnly) => {
    const used = await (await settled(env)).usedArea(id, valuesOnly === true);
    return used ? rangeNode(env, id, used) : null;
  },
});

export function worksheetNode(env: Env, id: string): ObjectNode {
  const current = (): Promise<SheetState> => sheetById(env.book, id);
  const change = async (patch: SheetPatch): Promise<void> => {
    await env.book.changeSheet(id, patch);
  };
  const showGridlines = (given: unknown): Promise<void> =>
    change({ showGridlines: asFlag(given, 'showGridlines') });
  return {
    type: 'Worksheet',
    identity: () => ({ Id: id }),
    scalars: {
      Id: () => id,
      Name: async () => (await current()).name,
      Position: async () => (await env.book.sheets()).findIndex((s) => s.id === id),
      Visibility: async () => (await current()).visibility,
      TabColor: async () => (await current()).tabColor,
      ShowGridlines: async () => (await current()).showGridlines,
    },
    setters: {
      Name: (given) => rename(env, id, given),
      Position: (given) => change({ position: asWhole(given, 'position') }),
      Visibility: async (given) => {
        const visibility = asOneOf(given, ['Visible', 'Hidden', 'VeryHidden'], 'visibility');
        if (visibility !== 'Visible' && (await isLastVisible(env, id)))
          fail('InvalidOperation', 'A workbook keeps at least one visible sheet.');
        await change({ visibility });
      },
      TabColor: (given) => change({ tabColor: checkColor(given) }),
      ShowGridlines: showGridlines,
      // Some versions of the client library send this name instead.
      Gridlines: showGridlines,
    },
    links: {
      Tables: () => tablesNode(env, id),
      Charts: () => chartsNode(env, id),
      Names: () => namesNode(env, id),
      Notes: () => notesNode(env, id),
      FreezePanes: () => freezeNode(env, id),
      Protection: () => protectionNode(env, id),
      PageLayout: () => pageNode(env, id),
    },
    methods: methodsOf(env, id),
  };
}

const freeName = (sheets: readonly SheetState[]): string => {
  const taken = new Set(sheets.map((s) => s.name.toLowerCase()));
  let n = sheets.length + 1;
  while (taken.has(`sheet${n}`)) n += 1;
  return `Sheet${n}`;
};

export function worksheetsNode(env: Env): ObjectNode {
  const find = async (key: unknown): Promise<ObjectNode | null> => {
    const sheet = await findSheet(env.book, key);
    return sheet ? worksheetNode(env, sheet.id) : null;
  };
  const item = async (key: unknown): Promise<ObjectNode> =>
    (await find(key)) ?? fail('ItemNotFound', `There is no sheet ${String(key)}.`);
  return {
    type: 'WorksheetCollection',
    scalars: {},
    item,
    items: async () => (await env.book.sheets()).map((s) => worksheetNode(env, s.id)),
    methods: {
      GetItem: item,
      GetItemOrNullObject: find,
      GetActiveWorksheet: async () => worksheetNode(env, await env.book.activeSheet()),
      GetCount: async (visibleOnly) =>
        (visibleOnly === true ? await visibleSheets(env) : await env.book.sheets()).length,
      GetFirst: async () => worksheetNode(env, (await env.book.sheets())[0]?.id ?? ''),
      Add: async (given) => {
        const sheets = await env.book.sheets();
        const name = given === null || given === undefined ? freeName(sheets) : checkSheetName(given);
        if (await findSheet(env.book, name))
          fail('ItemAlreadyExists', `A sheet named ${name} exists already.`);
        return worksheetNode(env, await env.book.addSheet(name));
      },
    },
  };
}
