import type { Package } from './package/package';
import type { PackageBook } from './package/book';
import { tagsNamed } from './package/events';
import type { Element } from './package/xml';
import { all, attribute, bytesOf, parseXml, textOf } from './package/xml';
import { escapeXml } from './text';

/**
 * What the pane keeps in a workbook (forms, meanings of columns, the vat log's place) travels in the file as a
 * custom XML part, which spreadsheet programs carry along unread. Only texts under names of ours are written, and a
 * shared copy loses the part whatever else is chosen.
 */

export const SETTINGS_NAMESPACE = 'urn:spawnbook:settings';
const OWN = 'spawnbook.';
export const SETTINGS_PART = 'customXml/item1.xml';
/** More than this is no setting of ours. */
const LONGEST = 4_000_000;

/** undefined when there is nothing to keep. */
export function settingsXml(settings: Readonly<Record<string, string>> | undefined): string | undefined {
  const own = Object.entries(settings ?? {}).filter(([name]) => name.startsWith(OWN));
  if (own.length === 0) return undefined;
  const items = own.map(
    ([name, value]) => `<setting name="${escapeXml(name)}">${escapeXml(JSON.stringify(value))}</setting>`,
  );
  return `<settings xmlns="${SETTINGS_NAMESPACE}">${items.join('')}</settings>`;
}

const isOurs = (bytes: Uint8Array, part: string): boolean =>
  bytes.length <= LONGEST && tagsNamed(bytes, part, 'settings')[0]?.get('xmlns') === SETTINGS_NAMESPACE;

const ownParts = (pack: Package, book: PackageBook): string[] =>
  pack
    .relations(book.part)
    .filter(({ type, isExternal }) => type === 'customXml' && !isExternal)
    .map(({ target }) => target)
    .filter((part) => {
      const bytes = pack.read(part);
      return bytes !== undefined && isOurs(bytes, part);
    });

type Setting = readonly [name: string, value: string];
function settingsIn(bytes: Uint8Array, root: Element): Setting[] {
  return all(root, 'setting').flatMap((one): Setting[] => {
    const name = attribute(bytes, one, 'name')?.value ?? '';
    try {
      const value: unknown = JSON.parse(textOf(bytes, one));
      return name.startsWith(OWN) && typeof value === 'string' ? [[name, value]] : [];
    } catch {
      // A setting that cannot be read is one that was never made.
      return [];
    }
  });
}

export function readSettings(pack: Package, book: PackageBook): Readonly<Record<string, string>> {
  const trees = ownParts(pack, book).map((part) => pack.tree(part));
  return Object.fromEntries(trees.flatMap((tree) => (tree ? settingsIn(tree.bytes, tree.root) : [])));
}

/** The same from the text of the part, as Excel hands it out; nothing where it is not ours. */
export function settingsOfXml(xml: string): Readonly<Record<string, string>> {
  const bytes = bytesOf(xml);
  try {
    return isOurs(bytes, SETTINGS_PART)
      ? Object.fromEntries(settingsIn(bytes, parseXml(bytes, SETTINGS_PART)))
      : {};
  } catch {
    return {};
  }
}

/** Takes the part out of a copy for others: it may hold anything that was typed in the pane. */
export function removeSettings(pack: Package, book: PackageBook): string[] {
  const parts = ownParts(pack, book);
  for (const part of parts) pack.remove(part);
  return parts.length > 0 ? ['What the Spawnbook pane keeps in the workbook: its forms and choices.'] : [];
}
