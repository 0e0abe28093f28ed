import type { PackageBook } from '../../package/book';
import type { Package } from '../../package/package';
import { all, attribute, textOf } from '../../package/xml';
import { namesPeople } from '../leaveOut/people';
import { hasPrivateLinks, viewNames } from '../leaveOut/personal';

/** What is still in the copy and may tell a reader more than the cells do. */

type Say = (count: number) => string;
/** By the word of the relation that leads to a part. */
const PARTS: readonly (readonly [readonly string[], Say])[] = [
  [
    ['image', 'hdphoto', 'media', 'video', 'audio'],
    (n) =>
      `${n} picture${n === 1 ? '' : 's'}: look whether they show people, and remember that photographs may hold the place and time.`,
  ],
  [
    ['classificationlabels', 'labelInfo'],
    () => 'A sensitivity label: it names the organisation that set it.',
  ],
  [
    ['externalLink'],
    (n) => `${n} link${n === 1 ? '' : 's'} to other workbooks, with their names and last values.`,
  ],
  [['connections'], () => 'Connections to data outside the workbook, with their addresses and user names.'],
  [['queryTable'], () => 'Queries to data outside the workbook.'],
  [['customXml', 'xmlMaps'], () => 'Data that other programs keep in the file (custom XML).'],
  [['package', 'oleObject'], (n) => `${n} embedded document${n === 1 ? '' : 's'}, which may hold anything.`],
  [['powerPivotData'], () => 'A data model, which holds its own copy of its tables.'],
  [['customXmlInk', 'ink', 'control', 'activeXControlBinary'], () => 'Ink or form controls.'],
];

export function whatIsLeft(pack: Package, book: PackageBook): string[] {
  const reached = pack.reached();
  const left = PARTS.flatMap(([types, say]) => {
    const count = reached.filter((one) => types.some((type) => one.types.has(type))).length;
    return count > 0 ? [say(count)] : [];
  });
  const custom = pack.relations('').find((one) => /custom-?properties/i.test(one.type))?.target;
  const labels = custom === undefined ? undefined : pack.tree(custom);
  if (
    labels &&
    all(labels.root, 'property').some((one) =>
      attribute(labels.bytes, one, 'name')?.value.startsWith('MSIP_Label_'),
    )
  )
    left.push('A sensitivity label in the properties: it names the organisation that set it.');
  if (book.sheets.some((sheet) => sheet.isHidden && pack.has(sheet.part)))
    left.push('Hidden sheets: anybody can show them.');
  return left;
}

function propertyNames(pack: Package): boolean {
  const core = pack.relations('').find((one) => /core-?properties/i.test(one.type));
  const found = core && pack.tree(core.target);
  return (
    found !== undefined &&
    all(found.root, 'creator', 'lastModifiedBy', 'title', 'subject', 'description', 'keywords').some(
      (one) => textOf(found.bytes, one) !== '',
    )
  );
}

/** What the file says of people outside its cells, a sentence each. */
export function heldOfPeople(pack: Package, book: PackageBook, hasHeaders: boolean): string[] {
  const path = all(book.root, 'absPath').length > 0;
  const reserved = all(book.root, 'fileSharing').some((one) => attribute(book.bytes, one, 'userName'));
  const has = (...types: readonly string[]): boolean => pack.partsOfType(...types).length > 0;
  const list: readonly (readonly [boolean, string])[] = [
    [propertyNames(pack), 'The names of the author and the last editor, the title and remarks.'],
    [namesPeople(pack), 'Notes or comments, with the names of those who wrote them.'],
    [path || reserved, 'The folder the workbook lay in, or who reserved it.'],
    [has('printerSettings'), 'The settings of the printer, which name it.'],
    [hasPrivateLinks(pack), 'Links to people or to folders of a computer.'],
    [viewNames(book).length > 0, 'Names of people in the names of views.'],
    [has('revisionHeaders', 'usernames'), 'The record of changes with the names of those who made them.'],
    [hasHeaders, 'Words in headers and footers of printed pages.'],
  ];
  return list.filter(([is]) => is).map(([, sentence]) => sentence);
}

export const NOBODY =
  'Outside its cells the copy says nothing of any person that Spawnbook knows to look for. What was typed into ' +
  'cells, sheet names, charts and notes was not judged.';
