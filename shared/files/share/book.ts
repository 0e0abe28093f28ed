import type { Package } from '../package/package';
import { REFUSED, Refusal } from '../package/refusal';
import type { Element } from '../package/xml';
import { all, attribute, child, textOf } from '../package/xml';

export interface SheetInfo {
  /** Place in the row of tabs; names that belong to one sheet use it. */
  readonly index: number;
  readonly name: string;
  readonly part: string;
  readonly isWorksheet: boolean;
  readonly element: Element;
}
export interface NameInfo {
  readonly name: string;
  /** Index of its sheet; undefined when the whole workbook knows it. */
  readonly scope: number | undefined;
  readonly text: string;
  readonly element: Element;
}
/** What workbook.xml says. */
export interface Book {
  readonly part: string;
  readonly bytes: Uint8Array;
  readonly root: Element;
  readonly sheets: readonly SheetInfo[];
  readonly names: readonly NameInfo[];
  readonly is1904: boolean;
}

const isTrue = (text: string | undefined): boolean => text === '1' || text === 'true';

export function readBook(pack: Package): Book {
  const part = pack.related('', 'officeDocument')?.target;
  if (!part) throw new Refusal(REFUSED.noWorkbook);
  refuseKinds(pack, part);
  const found = pack.tree(part);
  if (!found || found.root.name !== 'workbook') throw new Refusal(REFUSED.noWorkbook);
  const { bytes, root } = found;
  const relations = new Map(pack.relations(part).map((relation) => [relation.id, relation]));
  const text = (element: Element, name: string): string | undefined => attribute(bytes, element, name)?.value;
  const sheets = all(child(root, 'sheets'), 'sheet').map((element, index) => {
    const relation = relations.get(attribute(bytes, element, 'id')?.value ?? '');
    return {
      index,
      name: text(element, 'name') ?? '',
      part: relation?.target ?? '',
      isWorksheet: relation?.type === 'worksheet',
      element,
    };
  });
  for (const sheet of sheets)
    if (sheet.isWorksheet && !pack.read(sheet.part))
      throw new Refusal(REFUSED.damaged(`the sheet ${sheet.name} is missing`));
  if (sheets.length === 0) throw new Refusal(REFUSED.damaged('it has no sheets'));
  const names = all(child(root, 'definedNames'), 'definedName').map((element) => {
    const scope = text(element, 'localSheetId');
    return {
      name: text(element, 'name') ?? '',
      scope: scope === undefined ? undefined : Number(scope),
      text: textOf(bytes, element),
      element,
    };
  });
  const properties = child(root, 'workbookPr');
  return { part, bytes, root, sheets, names, is1904: isTrue(properties && text(properties, 'date1904')) };
}

function refuseKinds(pack: Package, part: string): void {
  const type = pack.contentType(part);
  if (/\.bin$/i.test(part) || /sheet\.binary/i.test(type)) throw new Refusal(REFUSED.binary);
  const hasMacros =
    /macroEnabled/i.test(type) ||
    pack
      .relations(part)
      .some((relation) => /^(vbaProject|xlMacrosheet|xlIntlMacrosheet)$/i.test(relation.type)) ||
    pack.names.some((name) => /(^|\/)vbaProject\.bin$/i.test(name));
  if (hasMacros) throw new Refusal(REFUSED.macros);
}
