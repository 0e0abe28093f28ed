import type { Package } from './package';
import { REFUSED, Refusal } from './refusal';
import type { Element } from './xml';
import { all, attribute, child, textOf } from './xml';

/** What workbook.xml says: the one way every reader of a file finds its sheets, names and texts. */

export interface SheetInfo {
  /** Place in the row of tabs; names that belong to one sheet use it. */
  readonly index: number;
  readonly name: string;
  readonly part: string;
  readonly isWorksheet: boolean;
  readonly isHidden: boolean;
  readonly element: Element;
}
export interface NameInfo {
  readonly name: string;
  /** Index of its sheet; undefined when the whole workbook knows it. */
  readonly scope: number | undefined;
  readonly text: string;
  readonly comment: string | undefined;
  readonly isHidden: boolean;
  readonly element: Element;
}
export interface PackageBook {
  readonly part: string;
  readonly bytes: Uint8Array;
  readonly root: Element;
  readonly sheets: readonly SheetInfo[];
  readonly names: readonly NameInfo[];
  readonly is1904: boolean;
}

const isTrue = (text: string | undefined): boolean => text === '1' || text === 'true';

export function readBook(pack: Package): PackageBook {
  const part = workbookPart(pack);
  const found = pack.tree(part);
  if (found?.root.name !== 'workbook') throw new Refusal(REFUSED.noWorkbook);
  const { bytes, root } = found;
  const relations = new Map(pack.relations(part).map((relation) => [relation.id, relation]));
  const text = (element: Element, name: string): string | undefined => attribute(bytes, element, name)?.value;
  const sheets = all(child(root, 'sheets'), 'sheet').map((element, index) => {
    const relation = relations.get(attribute(bytes, element, 'id')?.value ?? '');
    return {
      index,
      name: text(element, 'name') ?? `Sheet${index + 1}`,
      part: relation?.target ?? '',
      isWorksheet: relation?.type === 'worksheet',
      isHidden: (text(element, 'state') ?? 'visible') !== 'visible',
      element,
    };
  });
  refuseSheets(pack, sheets);
  const names = all(child(root, 'definedNames'), 'definedName').map((element) => {
    const scope = text(element, 'localSheetId');
    return {
      name: text(element, 'name') ?? '',
      scope: scope === undefined ? undefined : Number(scope),
      text: textOf(bytes, element),
      comment: text(element, 'comment'),
      isHidden: isTrue(text(element, 'hidden')),
      element,
    };
  });
  const properties = child(root, 'workbookPr');
  return { part, bytes, root, sheets, names, is1904: isTrue(properties && text(properties, 'date1904')) };
}

function workbookPart(pack: Package): string {
  if (pack.isOpenDocument) throw new Refusal(REFUSED.openDocument);
  const part = pack.related('', 'officeDocument')?.target;
  if (pack.names.some((name) => /^word\//i.test(name))) throw new Refusal(REFUSED.word);
  if (
    pack.names.some((name) => /(^|\/)workbook\.bin$/i.test(name)) ||
    (part !== undefined && /\.bin$|sheet\.binary/i.test(part + pack.contentType(part)))
  )
    throw new Refusal(REFUSED.binary);
  if (part === undefined) throw new Refusal(REFUSED.noWorkbook);
  return part;
}

function refuseSheets(pack: Package, sheets: readonly SheetInfo[]): void {
  if (sheets.length === 0) throw new Refusal(REFUSED.damaged('it has no sheets'));
  const parts = new Set<string>();
  for (const sheet of sheets) {
    if (!sheet.isWorksheet) continue;
    if (!pack.read(sheet.part))
      throw new Refusal(REFUSED.damaged(`the sheet "${sheet.name}" is missing from the file`));
    // A small file can name one part a thousand times, to be read a thousand times.
    if (parts.has(sheet.part.toLowerCase())) throw new Refusal(REFUSED.sharedPart);
    parts.add(sheet.part.toLowerCase());
  }
}

export function holdsMacros(pack: Package, book: PackageBook): boolean {
  return (
    /macroEnabled/i.test(pack.contentType(book.part)) ||
    pack
      .relations(book.part)
      .some((relation) => /^(vbaProject|xlMacrosheet|xlIntlMacrosheet)$/i.test(relation.type)) ||
    pack.names.some((name) => /(^|\/)vbaProject\.bin$/i.test(name))
  );
}
