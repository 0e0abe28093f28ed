import type { Book } from '../../package/book';
import type { Package } from '../../package/package';
import { hasPath } from '../leaveOut/personal';
import { all, attribute, textOf } from '../../package/xml';

/** What is still in the copy and may tell a reader more than the cells do. */

const PARTS: readonly (readonly [RegExp, (count: number) => string])[] = [
  [
    /(^|\/)media\/[^/]+$/i,
    (n) =>
      `${n} picture${n === 1 ? '' : 's'}: look whether they show people, and remember that photographs may hold the place and time.`,
  ],
  [
    /(^|\/)docMetadata\/LabelInfo\.xml$/i,
    () => 'A sensitivity label: it names the organisation that set it.',
  ],
  [
    /(^|\/)externalLinks\/[^/]+\.xml$/i,
    (n) => `${n} link${n === 1 ? '' : 's'} to other workbooks, with their paths and last values.`,
  ],
  [/(^|\/)connections\.xml$/i, () => 'Connections to data outside the workbook.'],
  [/(^|\/)queryTables\/[^/]+\.xml$/i, () => 'Queries to data outside the workbook.'],
  [/(^|\/)customXml\/item\d+\.xml$/i, () => 'Data that other programs keep in the file (custom XML).'],
  [/(^|\/)embeddings\//i, (n) => `${n} embedded document${n === 1 ? '' : 's'}, which may hold anything.`],
  [/(^|\/)model\/item\.data$/i, () => 'A data model, which holds its own copy of its tables.'],
  [/(^|\/)ink\/|(^|\/)activeX\//i, () => 'Ink or form controls.'],
];

export function whatIsLeft(pack: Package, book: Book, isPersonalOut: boolean): string[] {
  const names = pack.names.filter((name) => !/(^|\/)_rels\//.test(name));
  const left = PARTS.flatMap(([pattern, say]) => {
    const count = names.filter((name) => pattern.test(name)).length;
    return count > 0 ? [say(count)] : [];
  });
  const custom = names.find((name) => /docProps\/custom\.xml$/i.test(name));
  const labels = custom === undefined ? undefined : pack.tree(custom);
  if (
    labels &&
    all(labels.root, 'property').some((one) =>
      attribute(labels.bytes, one, 'name')?.value.startsWith('MSIP_Label_'),
    )
  )
    left.push('A sensitivity label in the properties: it names the organisation that set it.');
  if (
    book.sheets.some(
      (sheet) =>
        /hidden/i.test(attribute(book.bytes, sheet.element, 'state')?.value ?? '') && pack.has(sheet.part),
    )
  )
    left.push('Hidden sheets: anybody can show them.');
  if (!isPersonalOut) left.push(...personalLeft(pack, book));
  return left;
}

function personalLeft(pack: Package, book: Book): string[] {
  const core = pack.relations('').find((one) => /core-?properties/i.test(one.type));
  const found = core && pack.tree(core.target);
  const left: string[] = [];
  if (found && all(found.root, 'creator', 'lastModifiedBy').some((one) => textOf(found.bytes, one) !== ''))
    left.push('The names of the author and the last editor.');
  if (pack.names.some((name) => /comments\d*\.xml$|persons\/[^/]+\.xml$/i.test(name)))
    left.push('Notes or comments, with the names of those who wrote them.');
  if (hasPath(book)) left.push('The folder the workbook lay in, or who reserved it.');
  if (pack.names.some((name) => /printerSettings/i.test(name)))
    left.push('The settings of the printer, which name it.');
  return left;
}
