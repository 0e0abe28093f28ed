import { parseArea } from '../../../sheet/formula/address';
import type { Book } from '../../package/book';
import { lex } from '../references/lex';
import type { Package } from '../../package/package';
import type { Reference, ReferenceFinder } from '../references/references';
import { Refusal } from '../../package/refusal';
import type { Edit } from '../../package/splice';
import { cut } from '../../package/splice';
import type { TableInfo } from '../references/tables';
import type { Telltales } from './telltales';
import { all, attribute, attributesOf, child } from '../../package/xml';

/**
 * A pivot table carries a copy of its source. When that may not be read, the pivot goes and its cells stay as
 * values.
 */

export interface PivotFate {
  readonly isOut: (reference: Reference) => boolean;
  readonly telltales: Telltales;
}

export function removePivots(
  pack: Package,
  book: Book,
  tables: readonly TableInfo[],
  finder: ReferenceFinder,
  fate: PivotFate,
  bookEdits: Edit[],
): string[] {
  const container = child(book.root, 'pivotCaches');
  const caches = pack
    .relations(book.part)
    .filter((relation) => relation.type === 'pivotCacheDefinition' && pack.has(relation.target));
  const gone = caches.filter((relation) => mustGo(pack, book, tables, finder, fate, relation.target));
  if (gone.length === 0) return [];
  if (
    pack
      .relations(book.part)
      .some((relation) => relation.type === 'slicerCache' || relation.type === 'timelineCache')
  )
    throw new Refusal(
      'The workbook has slicers on a pivot table that reads what shall be left out. Delete ' +
        'the slicers (or the pivot table) and try again.',
    );
  for (const cache of gone) {
    for (const part of pack.names.filter((name) => /(^|\/)pivotTables\/[^/]+\.xml$/i.test(name)))
      if (
        pack.relations(part).some((relation) => relation.target.toLowerCase() === cache.target.toLowerCase())
      )
        pack.remove(part);
    for (const records of pack.relations(cache.target)) pack.remove(records.target);
    pack.remove(cache.target);
  }
  const ids = new Set(gone.map((cache) => cache.id));
  const entries = all(container, 'pivotCache');
  const dropped = entries.filter((one) => ids.has(attribute(book.bytes, one, 'id')?.value ?? ''));
  if (container) bookEdits.push(...(dropped.length === entries.length ? [cut(container)] : dropped.map(cut)));
  return [
    `${gone.length === 1 ? 'A pivot table' : `${gone.length} pivot tables`} read what is left out: the copy of the source inside went, the cells keep their values.`,
  ];
}

function mustGo(
  pack: Package,
  book: Book,
  tables: readonly TableInfo[],
  finder: ReferenceFinder,
  fate: PivotFate,
  part: string,
): boolean {
  const found = pack.tree(part);
  if (!found) return true;
  const { bytes, root } = found;
  const source = all(root, 'worksheetSource')[0];
  const say = (name: string): string | undefined => source && attribute(bytes, source, name)?.value;
  if (
    source &&
    !isAllowed({ sheet: say('sheet'), range: say('ref'), name: say('name') }, book, tables, finder, fate)
  )
    return true;
  return [part, ...pack.relations(part).map((relation) => relation.target)].some((one) =>
    tellsIn(pack, one, fate.telltales),
  );
}

interface Source {
  readonly sheet: string | undefined;
  readonly range: string | undefined;
  readonly name: string | undefined;
}

function isAllowed(
  { sheet, range, name }: Source,
  book: Book,
  tables: readonly TableInfo[],
  finder: ReferenceFinder,
  { isOut }: PivotFate,
): boolean {
  const index = book.sheets.find((one) => one.name === sheet)?.index;
  const area = range === undefined ? undefined : parseArea(range);
  if (index !== undefined && area) return !isOut({ sheet: index, area });
  const table = tables.find((one) => one.name.toLowerCase() === name?.toLowerCase());
  if (table) return !isOut({ sheet: table.sheet, area: table.area });
  const { found } = finder.of(name ?? '', lex(name ?? ''), undefined, undefined);
  // A source that cannot be told is not passed on.
  return found.length > 0 && !found.some(isOut);
}

function tellsIn(pack: Package, part: string, telltales: Telltales): boolean {
  const found = telltales.size === 0 ? undefined : pack.tree(part);
  return (
    found !== undefined &&
    all(found.root, 's', 'n', 'd', 'cacheField').some((one) =>
      attributesOf(found.bytes, one).some((each) => telltales.in(each.value)),
    )
  );
}
