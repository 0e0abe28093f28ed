import type { Area } from '../../../sheet/formula/address';
import { parseArea } from '../../../sheet/formula/address';
import type { PackageBook } from '../../package/book';
import type { Package, PartRelation } from '../../package/package';
import { Refusal } from '../../package/refusal';
import type { Edit } from '../../package/splice';
import { cut } from '../../package/splice';
import { all, attribute, child } from '../../package/xml';
import type { Opened } from '../open';
import { lex } from '../references/lex';
import type { Reference, ReferenceFinder } from '../references/references';

/**
 * A pivot table carries a copy of its source, and its cells are worked out from it. When the source may not be
 * read, the pivot goes with its copy.
 */

export interface PivotFlow {
  readonly sheet: number;
  /** The cells it fills, with those of its page fields. */
  readonly area: Area;
  /** Undefined when it cannot be told. */
  readonly source: readonly Reference[] | undefined;
}

/** The cells a cache was filled from; none for data from outside, undefined when it cannot be told. */
function sourceOf(
  { pack, book, tables }: Opened,
  finder: ReferenceFinder,
  part: string,
): readonly Reference[] | undefined {
  const found = pack.tree(part);
  const source = found && all(found.root, 'cacheSource')[0];
  if (!found || !source) return undefined;
  const { bytes } = found;
  const list = all(source, 'worksheetSource', 'rangeSet');
  if (list.length === 0) return attribute(bytes, source, 'type')?.value === 'external' ? [] : undefined;
  const references: Reference[] = [];
  for (const one of list) {
    const read = rangeOf({ book, tables }, finder, (name) => attribute(bytes, one, name)?.value ?? '');
    if (read.length === 0) return undefined;
    references.push(...read);
  }
  return references;
}

function rangeOf(
  { book, tables }: Pick<Opened, 'book' | 'tables'>,
  finder: ReferenceFinder,
  say: (name: string) => string,
): readonly Reference[] {
  const index = book.sheets.find((sheet) => sheet.name === say('sheet'))?.index;
  const area = parseArea(say('ref'));
  if (index !== undefined && area) return [{ sheet: index, area }];
  const name = say('name');
  const table = tables.find((each) => each.name.toLowerCase() === name.toLowerCase());
  return table
    ? [{ sheet: table.sheet, area: table.area }]
    : finder.of(name, lex(name), undefined, undefined).found;
}

const caches = (pack: Package, book: PackageBook): PartRelation[] =>
  pack
    .relations(book.part)
    .filter((relation) => relation.type === 'pivotCacheDefinition' && pack.has(relation.target));

export function pivotFlows(opened: Opened, finder: ReferenceFinder): PivotFlow[] {
  const { pack, book } = opened;
  const sources = new Map(
    caches(pack, book).map(({ target }) => [target.toLowerCase(), sourceOf(opened, finder, target)]),
  );
  return book.sheets
    .filter((sheet) => sheet.isWorksheet)
    .flatMap(({ index, part }) =>
      pack
        .relations(part)
        .filter(({ type }) => type === 'pivotTable')
        .flatMap(({ target }) => {
          const area = locationOf(pack, target);
          const cache = pack.related(target, 'pivotCacheDefinition')?.target.toLowerCase() ?? '';
          return area ? [{ sheet: index, area, source: sources.get(cache) }] : [];
        }),
    );
}

function locationOf(pack: Package, part: string): Area | undefined {
  const found = pack.tree(part);
  const location = found && all(found.root, 'location')[0];
  if (!found || !location) return undefined;
  const area = parseArea(attribute(found.bytes, location, 'ref')?.value ?? '');
  const pages = Number(attribute(found.bytes, location, 'rowPageCount')?.value ?? 0);
  // Page fields stand above, with an empty row between.
  return area && { ...area, top: Math.max(0, area.top - (pages > 0 ? pages + 1 : 0)) };
}

export function removePivots(
  opened: Opened,
  finder: ReferenceFinder,
  isOut: (reference: Reference) => boolean,
  bookEdits: Edit[],
): string[] {
  const { pack, book } = opened;
  const gone = caches(pack, book).filter(({ target }) => {
    const source = sourceOf(opened, finder, target);
    return !source || source.some(isOut);
  });
  if (gone.length === 0) return [];
  if (pack.relations(book.part).some(({ type }) => type === 'slicerCache' || type === 'timelineCache'))
    throw new Refusal(
      'The workbook has slicers on a pivot table that reads what shall be left out. Delete ' +
        'the slicers (or the pivot table) and try again.',
    );
  const targets = new Set(gone.map(({ target }) => target.toLowerCase()));
  for (const sheet of book.sheets)
    for (const { type, target } of pack.relations(sheet.part))
      if (
        type === 'pivotTable' &&
        pack.relations(target).some((relation) => targets.has(relation.target.toLowerCase()))
      )
        pack.remove(target);
  for (const cache of gone) {
    for (const records of pack.relations(cache.target)) pack.remove(records.target);
    pack.remove(cache.target);
  }
  const container = child(book.root, 'pivotCaches');
  const ids = new Set(gone.map((cache) => cache.id));
  const entries = all(container, 'pivotCache');
  const dropped = entries.filter((one) => ids.has(attribute(book.bytes, one, 'id')?.value ?? ''));
  if (container) bookEdits.push(...(dropped.length === entries.length ? [cut(container)] : dropped.map(cut)));
  return [
    `${gone.length === 1 ? 'A pivot table' : `${gone.length} pivot tables`} read what is left out: it went with the copy of the source inside.`,
  ];
}
