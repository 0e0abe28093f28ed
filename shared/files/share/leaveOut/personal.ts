import type { Book } from '../../package/book';
import type { Package } from '../../package/package';
import type { SheetScan } from '../decisions/scan';
import type { Edit } from '../../package/splice';
import { cut, put } from '../../package/splice';
import type { Element } from '../../package/xml';
import { all, attribute, attributesOf, child, textOf } from '../../package/xml';

/** Who made the file, where it lay, what printed it. Each function says what it took out. */

const empty = (bytes: Uint8Array, elements: readonly Element[]): Edit[] =>
  elements.filter((one) => textOf(bytes, one) !== '').map((one) => put(one.openEnd, one.closeStart, ''));

const byType = (pack: Package, source: string, ...types: readonly string[]): string | undefined =>
  pack.relations(source).find((one) => !one.isExternal && types.includes(one.type) && pack.has(one.target))
    ?.target;

function properties(pack: Package): string[] {
  const said: string[] = [];
  const blank = (part: string | undefined, names: readonly string[], what: string): void => {
    const found = part === undefined ? undefined : pack.tree(part);
    if (!found || part === undefined) return;
    const edits = empty(found.bytes, all(found.root, ...names));
    pack.edit(part, edits);
    if (edits.length > 0) said.push(what);
  };
  blank(
    byType(pack, '', 'core-properties', 'coreProperties'),
    ['creator', 'lastModifiedBy', 'description', 'keywords', 'category', 'contentStatus', 'subject'],
    'Author, last editor and remarks in the properties.',
  );
  blank(
    byType(pack, '', 'extended-properties', 'extendedProperties'),
    ['Manager', 'Company', 'HyperlinkBase'],
    'Manager, company and link base in the properties.',
  );
  said.push(...customProperties(pack));
  const picture = byType(pack, '', 'thumbnail');
  if (picture !== undefined) {
    pack.remove(picture);
    said.push('The preview picture of the workbook.');
  }
  return said;
}

/** Own properties go; a sensitivity label stays, because the company that set it wants it to stay. */
function customProperties(pack: Package): string[] {
  const part = byType(pack, '', 'custom-properties', 'customProperties');
  const found = part === undefined ? undefined : pack.tree(part);
  if (part === undefined || !found) return [];
  const list = all(found.root, 'property');
  const own = list.filter((one) => !attribute(found.bytes, one, 'name')?.value.startsWith('MSIP_Label_'));
  if (own.length === 0) return [];
  if (own.length === list.length) pack.remove(part);
  else pack.edit(part, own.map(cut));
  return [`${own.length} properties somebody had added.`];
}

function workbookPart(pack: Package, book: Book, edits: Edit[]): string[] {
  const said: string[] = [];
  const paths = all(book.root, 'absPath');
  for (const path of paths) {
    let holder = path;
    while (holder.parent && holder.parent !== book.root) holder = holder.parent;
    edits.push(cut(holder));
  }
  if (paths.length > 0) said.push('The folder the workbook lay in.');
  for (const sharing of all(book.root, 'fileSharing')) {
    const user = attribute(book.bytes, sharing, 'userName');
    if (!user) continue;
    edits.push(cut(user));
    said.push('The name of the person who reserved the workbook.');
  }
  for (const relation of pack.relations(book.part))
    if (/^(revisionHeaders|usernames)$/i.test(relation.type)) {
      for (const inner of pack.relations(relation.target)) pack.remove(inner.target);
      pack.remove(relation.target);
      said.push(
        relation.type === 'usernames'
          ? 'The list of people who worked on the shared workbook.'
          : 'The record of changes with the names of those who made them.',
      );
    }
  return said;
}

/** Notes keep their text; whose they are goes, also where Excel wrote the name in front of the text. */
function notes(pack: Package): string[] {
  const said = new Set<string>();
  for (const part of pack.names) {
    if (!/comments\d*\.xml$|threadedComments?\/[^/]+\.xml$|persons\/[^/]+\.xml$/i.test(part)) continue;
    const found = pack.tree(part);
    if (!found) continue;
    const edits =
      found.root.name === 'comments'
        ? noteEdits(found.bytes, found.root)
        : personEdits(found.bytes, found.root);
    pack.edit(part, edits);
    if (edits.length > 0) said.add('Names of the people who wrote notes and comments.');
  }
  return [...said];
}

function noteEdits(bytes: Uint8Array, root: Element): Edit[] {
  const authors = all(root, 'author');
  const names = authors
    .map((one) => textOf(bytes, one))
    .filter((name) => name !== '' && !name.startsWith('tc='));
  const edits = authors
    .filter((one) => names.includes(textOf(bytes, one)))
    .map((one) => put(one.openEnd, one.closeStart, ''));
  for (const note of all(root, 'comment')) {
    const first = all(note, 't').find((one) => textOf(bytes, one).trim() !== '');
    const raw = first ? textOf(bytes, first) : '';
    const name = names.find((one) => raw.trimStart().startsWith(`${one}:`));
    if (first && name !== undefined)
      edits.push(put(first.openEnd, first.closeStart, escapeText(raw.trimStart().slice(name.length + 1))));
  }
  return edits;
}
const escapeText = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

const PERSON: readonly (readonly [string, string])[] = [
  ['displayName', 'Author'],
  ['userId', ''],
  ['providerId', 'None'],
];

function personEdits(bytes: Uint8Array, root: Element): Edit[] {
  const persons = all(root, 'person').flatMap((one) =>
    PERSON.flatMap(([name, instead]) => {
      const found = attributesOf(bytes, one).find((each) => each.name === name);
      return found && found.value !== instead ? [put(found.valueStart, found.valueEnd, instead)] : [];
    }),
  );
  // A comment that speaks to somebody holds the name in its text.
  const spoken = all(root, 'threadedComment')
    .filter((one) => all(one, 'mention').length > 0)
    .flatMap((one) => all(one, 'text'))
    .map((one) => ({ one, text: textOf(bytes, one) }))
    .filter(({ text }) => /@(?!\s)/.test(text))
    .map(({ one, text }) =>
      put(
        one.openEnd,
        one.closeStart,
        escapeText(text.replace(/@\p{L}[\p{L}\p{N}.'-]*(?: \p{Lu}[\p{L}\p{N}.'-]*)*/gu, '@ ')),
      ),
    );
  return [...persons, ...spoken];
}

function pivots(pack: Package): string[] {
  let count = 0;
  for (const part of pack.names.filter((name) => /pivotCacheDefinition[^/]*\.xml$/i.test(name))) {
    const found = pack.tree(part);
    const user = found && attribute(found.bytes, found.root, 'refreshedBy');
    if (!user) continue;
    pack.edit(part, [cut(user)]);
    count++;
  }
  return count > 0 ? ['The names of those who refreshed pivot tables.'] : [];
}

const PRINTER = 'printerSettings';

/**
 * Links to the printer's settings, and the names of those who kept what-if scenarios, stand inside the sheet.
 */
export function personalInSheet(pack: Package, { info, bytes, root }: SheetScan): Edit[] {
  const printers = new Set(
    pack
      .relations(info.part)
      .filter((one) => one.type === PRINTER)
      .map((one) => one.id),
  );
  const links = all(root, 'pageSetup').map((one) =>
    attributesOf(bytes, one).find((each) => each.name.endsWith(':id') && printers.has(each.value)),
  );
  const users = all(root, 'scenario').map((one) => attribute(bytes, one, 'user'));
  return [...links, ...users].filter((one) => one !== undefined).map(cut);
}

function printers(pack: Package, book: Book): string[] {
  let count = 0;
  for (const sheet of book.sheets.filter((one) => one.isWorksheet && pack.has(one.part)))
    for (const relation of pack
      .relations(sheet.part)
      .filter((one) => one.type === PRINTER && pack.has(one.target))) {
      pack.remove(relation.target);
      count++;
    }
  return count > 0 ? ['The settings of the printer, which name it.'] : [];
}

export const removePersonal = (pack: Package, book: Book, edits: Edit[]): string[] => [
  ...properties(pack),
  ...workbookPart(pack, book, edits),
  ...notes(pack),
  ...pivots(pack),
  ...printers(pack, book),
];

export const hasPath = (book: Book): boolean =>
  all(book.root, 'absPath').length > 0 || child(book.root, 'fileSharing') !== undefined;
