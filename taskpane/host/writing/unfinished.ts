import type { LeftBehind, Overwritten } from '../port';
import type { WorkbookModel } from '../../../shared/sheet/workbook/model';
import { withExcel } from '../excelErrors';

/**
 * What a writing has begun, kept in the workbook itself from its first step to its last: when the writing breaks
 * off for good (the program closed, the network of the web version gone), the next start finds what was left and
 * asks. It holds names only.
 */

const KEY = 'spawnbook.writing';

export interface BegunWriting {
  readonly title: string;
  /** Names of the sheets while they are built, and in the end. */
  readonly sheets: readonly string[];
  /** Ids of the sheets, once they are there. */
  readonly ids: readonly string[];
  /** Names of cells that were not there before. */
  readonly names: readonly string[];
  /** A book was being written over itself: nothing of it may be taken away, what stood there is put back. */
  readonly over?: Overwritten;
}

export const begunWriting = (
  model: WorkbookModel,
  interim: readonly string[],
  used: { readonly names: readonly string[] },
): BegunWriting => {
  const known = new Set(used.names.map((name) => name.toLowerCase()));
  return {
    title: model.title,
    sheets: [...model.sheets.map(({ name }) => name), ...interim],
    ids: [],
    names: model.names.map(({ name }) => name).filter((name) => !known.has(name.toLowerCase())),
  };
};

/** Names for sheets while they are built: one for each, none that is there already. */
export function interimNames(model: WorkbookModel, used: readonly string[]): string[] {
  const taken = new Set(used.map((name) => name.toLowerCase()));
  const names: string[] = [];
  for (let n = 1; names.length < model.sheets.length; n += 1) {
    const name = `Being written ${n}`;
    if (!taken.has(name.toLowerCase())) names.push(name);
  }
  return names;
}

/** Queues the note; it is sent with whatever comes next. */
export const noteBegun = (context: Excel.RequestContext, begun: BegunWriting): void => {
  context.workbook.settings.add(KEY, JSON.stringify(begun));
};

/** Queues taking the note away; `note` was asked for before. */
export const noteOf = (context: Excel.RequestContext): Excel.Setting =>
  context.workbook.settings.getItemOrNullObject(KEY);
export const forget = (note: Excel.Setting): void => {
  if (!note.isNullObject) note.delete();
};

const textsOf = (value: unknown): string[] =>
  Array.isArray(value) ? value.filter((one) => typeof one === 'string') : [];

const isOverwritten = (value: unknown): value is Overwritten =>
  typeof value === 'object' &&
  value !== null &&
  'suffix' in value &&
  typeof value.suffix === 'string' &&
  'strays' in value &&
  Array.isArray(value.strays);

function readNote(value: unknown): BegunWriting | undefined {
  try {
    const found: unknown = typeof value === 'string' ? JSON.parse(value) : undefined;
    if (typeof found !== 'object' || found === null) return undefined;
    const { title, sheets, ids, names, over } = found as Record<string, unknown>;
    return {
      title: typeof title === 'string' ? title : '',
      sheets: textsOf(sheets),
      ids: textsOf(ids),
      names: textsOf(names),
      ...(isOverwritten(over) ? { over } : {}),
    };
  } catch {
    return undefined;
  }
}

interface Found {
  readonly note: Excel.Setting;
  readonly begun: BegunWriting;
  readonly sheets: readonly Excel.Worksheet[];
  readonly names: readonly Excel.NamedItem[];
}

/** A sheet is known by its id; one that has got its own name, by that. An id alone may be taken by a later sheet. */
const isLeft = (sheet: Excel.Worksheet, { ids, sheets }: BegunWriting): boolean =>
  sheets.includes(sheet.name) || ids.includes(sheet.id);

async function lookFor(context: Excel.RequestContext): Promise<Found | undefined> {
  const { worksheets, names } = context.workbook;
  const note = noteOf(context);
  note.load('value');
  worksheets.load('items/id,items/name');
  names.load('items/name');
  await context.sync();
  const begun = note.isNullObject ? undefined : readNote(note.value);
  if (!begun) return undefined;
  const ours = new Set(begun.names.map((name) => name.toLowerCase()));
  return {
    note,
    begun,
    sheets: worksheets.items.filter((sheet) => isLeft(sheet, begun)),
    names: names.items.filter(({ name }) => ours.has(name.toLowerCase())),
  };
}

/** What a writing left that never ended; undefined when there is nothing. */
export const leftBehind = (): Promise<LeftBehind | undefined> =>
  withExcel(async (context) => {
    const found = await lookFor(context);
    if (!found) return undefined;
    const { title, over } = found.begun;
    return { title, sheets: found.sheets.map(({ name }) => name), ...(over ? { over } : {}) };
  });

/** Takes it away; answers the sheets that went. The note goes last: a failure here asks again next time. */
export const takeLeftAway = (): Promise<readonly string[]> =>
  withExcel(async (context) => {
    const found = await lookFor(context);
    if (!found || found.begun.over) return [];
    for (const item of found.names) item.delete();
    for (const sheet of found.sheets) sheet.delete();
    forget(found.note);
    await context.sync();
    return found.sheets.map(({ name }) => name);
  });

/** Leaves the sheets as they are and asks no more. */
export const keepLeft = (): Promise<void> =>
  withExcel(async (context) => {
    const note = noteOf(context);
    await context.sync();
    forget(note);
    await context.sync();
  });
