// Long: one pass over a workbook; the steps share its state.
import type { PackageBook } from '../../package/book';
import type { Package } from '../../package/package';
import { relationsPart } from '../../package/package';
import type { Edit } from '../../package/splice';
import { cut, put } from '../../package/splice';
import type { Attribute, Element } from '../../package/xml';
import { all, attribute, attributesOf, bytesOf, find, rawText, textOf } from '../../package/xml';
import { escapeXml } from '../../text';
import type { SheetScan } from '../decisions/scan';
import { removeRevisions } from './around';
import { removePeople } from './people';
import { prune } from './rules';

/**
 * Who made the file, where it lay, what printed it: found by what relations say of a part, never by its name.
 * Each function says what it took out.
 */

const empty = (bytes: Uint8Array, elements: readonly Element[]): Edit[] =>
  elements.filter((one) => textOf(bytes, one) !== '').map((one) => put(one.openEnd, one.closeStart, ''));

const byType = (pack: Package, source: string, ...types: readonly string[]): string | undefined =>
  pack.relations(source).find((one) => !one.isExternal && types.includes(one.type) && pack.has(one.target))
    ?.target;

const CORE = ['core-properties', 'coreProperties'];
const EXTENDED = ['extended-properties', 'extendedProperties'];
const CUSTOM = ['custom-properties', 'customProperties'];
const CORE_WORDS = [
  'creator',
  'lastModifiedBy',
  'title',
  'description',
  'keywords',
  'category',
  'contentStatus',
  'subject',
  'identifier',
];

function properties(pack: Package): string[] {
  const said: string[] = [];
  const blank = (part: string | undefined, names: readonly string[], what: string): void => {
    const found = part === undefined ? undefined : pack.tree(part);
    if (!found || part === undefined) return;
    const edits = empty(found.bytes, all(found.root, ...names));
    pack.edit(part, edits);
    if (edits.length > 0) said.push(what);
  };
  blank(byType(pack, '', ...CORE), CORE_WORDS, 'Author, last editor, title and remarks in the properties.');
  blank(
    byType(pack, '', ...EXTENDED),
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
  const part = byType(pack, '', ...CUSTOM);
  const found = part === undefined ? undefined : pack.tree(part);
  if (part === undefined || !found) return [];
  const list = all(found.root, 'property');
  const own = list.filter((one) => !attribute(found.bytes, one, 'name')?.value.startsWith('MSIP_Label_'));
  if (own.length === 0) return [];
  if (own.length === list.length) pack.remove(part);
  else pack.edit(part, own.map(cut));
  return [`${own.length} properties somebody had added.`];
}

function workbookPart(pack: Package, book: PackageBook, edits: Edit[]): string[] {
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
  const views = viewNames(book);
  for (const [i, name] of views.entries()) edits.push(put(name.valueStart, name.valueEnd, `View ${i + 1}`));
  if (views.length > 0) said.push('Names of people in the names of views.');
  if (removeRevisions(pack, book.part) > 0)
    said.push('The record of changes with the names of those who made them.');
  return said;
}

/** Excel calls the views of a shared workbook after the people who use them. */
export const viewNames = (book: PackageBook): Attribute[] =>
  all(book.root, 'customWorkbookView')
    .map((one) => attribute(book.bytes, one, 'name'))
    .filter((name) => name !== undefined)
    .filter((name) => !/^View \d+$/.test(name.value));

const PRIVATE_LINK = /^(?:mailto|tel|sip|file|skype|callto):|^\\\\|^[A-Za-z]:[\\/]|^\/\/[^/]|^file%3a/i;
const BOOK_LINKS = /^externalLink/;

/** Links to people and to folders of somebody's computer. */
function links(pack: Package): string[] {
  let count = 0;
  for (const part of ['', ...pack.reached().map((one) => one.part)]) {
    const bytes = pack.read(relationsPart(part));
    if (!bytes) continue;
    const edits = pack
      .relations(part)
      .filter(({ isExternal, target }) => isExternal && PRIVATE_LINK.test(target))
      .flatMap(({ element, type, target }) => {
        const found = attribute(bytes, element, 'Target');
        // Another workbook is found by its name alone, beside the copy.
        const instead = BOOK_LINKS.test(type) ? encodeURI(target.replace(/^.*[\\/]/, '')) || '#' : '#';
        return found ? [put(found.valueStart, found.valueEnd, escapeXml(instead))] : [];
      });
    pack.edit(relationsPart(part), edits);
    count += edits.length;
  }
  return count > 0 ? ['Links to people (mail, telephone) and to folders of a computer.'] : [];
}
export const hasPrivateLinks = (pack: Package): boolean =>
  ['', ...pack.reached().map((one) => one.part)].some((part) =>
    pack.relations(part).some(({ isExternal, target }) => isExternal && PRIVATE_LINK.test(target)),
  );

function pivots(pack: Package): string[] {
  let count = 0;
  for (const part of pack.partsOfType('pivotCacheDefinition')) {
    const found = pack.tree(part);
    const user = found && attribute(found.bytes, found.root, 'refreshedBy');
    if (!user) continue;
    pack.edit(part, [cut(user)]);
    count++;
  }
  return count > 0 ? ['The names of those who refreshed pivot tables.'] : [];
}

/** Words that describe a picture, and the name of the file it came from. */
function pictures(pack: Package): string[] {
  let count = 0;
  for (const part of pack.partsOfType('drawing', 'chartUserShapes')) {
    const found = pack.tree(part);
    if (!found) continue;
    const edits = all(found.root, 'pic')
      .flatMap((picture) => all(picture, 'cNvPr'))
      .flatMap((one) => attributesOf(found.bytes, one))
      .filter((one) => ['descr', 'title'].includes(one.name) && one.value !== '')
      .map((one) => put(one.valueStart, one.valueEnd, ''));
    pack.edit(part, edits);
    count += edits.length;
  }
  for (const part of pack.partsOfType('vmlDrawing')) {
    const bytes = pack.read(part);
    if (!bytes) continue;
    const text = rawText(bytes, 0, bytes.length);
    const plain = text.replace(/\s(?:o:title|alt)=(?:"[^"]*"|'[^']*')/g, '');
    if (plain === text) continue;
    pack.write(part, bytesOf(plain));
    count++;
  }
  return count > 0 ? ['Descriptions of pictures.'] : [];
}

/** What programs or people wrote between the lines of the file itself. */
function remarks(pack: Package): string[] {
  let count = 0;
  for (const part of pack.names.filter((name) => /\.(?:xml|rels)$/i.test(name))) {
    const bytes = pack.read(part);
    if (!bytes || find(bytes, '<!--', 0) < 0) continue;
    const edits: Edit[] = [];
    for (let at = find(bytes, '<!', 0); at >= 0;) {
      const isRemark = bytes[at + 2] === 0x2d;
      const close = isRemark ? '-->' : ']]>';
      const end = find(bytes, close, at + 4);
      if (end < 0) break;
      if (isRemark) edits.push(put(at, end + close.length, ''));
      at = find(bytes, '<!', end);
    }
    pack.edit(part, edits);
    count += edits.length;
  }
  return count > 0 ? ['Remarks written between the lines of the file.'] : [];
}

const PRINTER = 'printerSettings';
const HEADERS = ['oddHeader', 'oddFooter', 'evenHeader', 'evenFooter', 'firstHeader', 'firstFooter'];

/** Fields and looks stay, words go: &L&8Kaja Lund&RPage &P of &N → &L&8&RPage &P of &N. */
export function wordless(text: string): string {
  return text.replace(
    /(&(?:"[^"]*"|K[0-9A-Fa-f]{6}|K\d{2}[+-]\d{3}|\d{1,3}|[A-Z&]))|(Page |Page(?=&)| of |[ \n/|–-])|[^&]/g,
    (_, code: string | undefined, kept: string | undefined) => (code === '&&' ? '' : (code ?? kept ?? '')),
  );
}

function headerEdits(bytes: Uint8Array, root: Element): Edit[] {
  return all(root, ...HEADERS).flatMap((one) => {
    const text = textOf(bytes, one);
    const left = wordless(text);
    return left === text ? [] : [put(one.openEnd, one.closeStart, escapeXml(left))];
  });
}

/** What names people inside the sheet part itself. */
export function personalInSheet(pack: Package, { info, bytes, root }: SheetScan): Edit[] {
  const relations = pack.relations(info.part);
  const ids = (test: (type: string, target: string) => boolean): Set<string> =>
    new Set(relations.filter(({ type, target }) => test(type, target)).map(({ id }) => id));
  const printers = ids((type) => type === PRINTER);
  const away = ids((type, target) => type === 'hyperlink' && PRIVATE_LINK.test(target));
  const settings = all(root, 'pageSetup').map((one) =>
    attributesOf(bytes, one).find((each) => each.name.endsWith(':id') && printers.has(each.value)),
  );
  const scenarios = all(root, 'scenario').flatMap((one) => [
    attribute(bytes, one, 'user'),
    attribute(bytes, one, 'comment'),
  ]);
  const links = all(root, 'hyperlink').filter((one) => away.has(attribute(bytes, one, 'id')?.value ?? ''));
  pack.edit(
    relationsPart(info.part),
    relations.filter(({ id }) => away.has(id)).map(({ element }) => cut(element)),
  );
  return [
    ...[...settings, ...scenarios].filter((one) => one !== undefined).map(cut),
    ...prune(bytes, new Set(links)),
    ...headerEdits(bytes, root),
  ];
}
export const hasHeaderWords = (bytes: Uint8Array, root: Element): boolean =>
  headerEdits(bytes, root).length > 0;

/** Printers, and headers of sheets that hold no cells. */
function printers(pack: Package, book: PackageBook): string[] {
  let count = 0;
  const worksheets = new Set(book.sheets.filter((one) => one.isWorksheet).map((one) => one.part));
  for (const { part } of pack.reached()) {
    const found = pack.relations(part).filter((one) => one.type === PRINTER && pack.has(one.target));
    for (const { target } of found) pack.remove(target);
    count += found.length;
    if (worksheets.has(part)) continue;
    const tree =
      found.length > 0 || book.sheets.some((one) => one.part === part) ? pack.tree(part) : undefined;
    if (!tree) continue;
    const ids = new Set(found.map(({ id }) => id));
    const settings = all(tree.root, 'pageSetup').flatMap((one) =>
      attributesOf(tree.bytes, one).filter((each) => each.name.endsWith(':id') && ids.has(each.value)),
    );
    pack.edit(part, [...settings.map(cut), ...headerEdits(tree.bytes, tree.root)]);
  }
  return count > 0 ? ['The settings of the printer, which name it.'] : [];
}

/** Parts that nothing leads to: programs leave them, and nobody sees what they hold. */
function stray(pack: Package): void {
  const reached = new Set(pack.reached().map(({ part }) => part.toLowerCase()));
  for (const name of pack.names)
    if (!/(^|\/)_rels\/|^\[Content_Types\]\.xml$/i.test(name) && !reached.has(name.toLowerCase()))
      pack.remove(name);
}

export function removePersonal(pack: Package, book: PackageBook, edits: Edit[]): string[] {
  const said = [
    ...properties(pack),
    ...workbookPart(pack, book, edits),
    ...removePeople(pack),
    ...links(pack),
    ...pivots(pack),
    ...pictures(pack),
    ...printers(pack, book),
  ];
  stray(pack);
  return [...said, ...remarks(pack)];
}
