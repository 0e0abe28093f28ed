import { parseArea, splitSheet, WHOLE_SHEET } from '../address';
import type { StandInArea, StandInBook, SheetState } from '../book';
import { fail } from '../failure';
import { isNode, type ObjectNode } from '../node';

export interface FoundPlace {
  readonly sheet: string;
  readonly area: StandInArea;
}
const places = new WeakMap<ObjectNode, FoundPlace>();
/** Remembers which cells a range node stands for. */
export const rememberPlace = (node: ObjectNode, place: FoundPlace): ObjectNode => {
  places.set(node, place);
  return node;
};
export const placeOf = (node: unknown): FoundPlace | undefined =>
  isNode(node) ? places.get(node) : undefined;

const same = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

export async function sheetById(book: StandInBook, id: string): Promise<SheetState> {
  return (await book.sheets()).find((s) => s.id === id) ?? fail('ItemNotFound', 'The sheet is gone.');
}
/** By name (letter case ignored) or id, as the collection's getItem takes them. */
export const findSheet = async (book: StandInBook, key: unknown): Promise<SheetState | undefined> =>
  (await book.sheets()).find((s) => typeof key === 'string' && (same(s.name, key) || s.id === key));

async function namedArea(book: StandInBook, sheet: string, text: string): Promise<FoundPlace | undefined> {
  const names = await book.names();
  const name =
    names.find((n) => same(n.name, text) && n.scope === sheet) ??
    names.find((n) => same(n.name, text) && n.scope === undefined);
  if (name) return resolveReference(book, name.formula);
  const table = (await book.tables()).find((t) => same(t.name, text));
  return table && { sheet: table.sheet, area: table.area };
}

/** A reference with its sheet, as stored in a name; undefined when it is not a plain range. */
export async function resolveReference(
  book: StandInBook,
  reference: string,
): Promise<FoundPlace | undefined> {
  const { sheet, rest } = splitSheet(reference);
  const found = sheet === undefined ? undefined : await findSheet(book, sheet);
  const area = parseArea(rest);
  return found && area ? { sheet: found.id, area } : undefined;
}

/**
 * What a caller names on a sheet: nothing (all of it), an address, an address with this sheet's name, or a
 * name.
 */
export async function locate(book: StandInBook, sheet: string, address: unknown): Promise<FoundPlace> {
  if (address === undefined || address === null || address === '') return { sheet, area: WHOLE_SHEET };
  if (typeof address !== 'string') return fail('InvalidArgument', 'An address is a text.');
  const { sheet: named, rest } = splitSheet(address);
  if (named !== undefined) {
    const found = await findSheet(book, named);
    if (found?.id !== sheet) return fail('InvalidArgument', `The address ${address} is on another sheet.`);
  }
  const area = parseArea(rest);
  if (area) return { sheet, area };
  return (
    (await namedArea(book, sheet, rest)) ??
    fail(/^[A-Za-z_][\w.]*$/.test(rest) ? 'ItemNotFound' : 'InvalidArgument', `There is no range ${address}.`)
  );
}

/** A range object or an address on the sheet. */
export async function placeArgument(book: StandInBook, sheet: string, given: unknown): Promise<FoundPlace> {
  return placeOf(given) ?? locate(book, sheet, given);
}

/** Where an address without a known sheet points: it must carry one, or belongs to the active sheet. */
export async function placeAnywhere(book: StandInBook, given: unknown): Promise<FoundPlace> {
  const place = placeOf(given);
  if (place) return place;
  if (typeof given !== 'string') return fail('InvalidArgument', 'Give a range or an address.');
  const { sheet } = splitSheet(given);
  if (sheet === undefined) return locate(book, await book.activeSheet(), given);
  return (await resolveReference(book, given)) ?? fail('InvalidArgument', `There is no range ${given}.`);
}
