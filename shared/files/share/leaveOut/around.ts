import type { Area } from '../../../sheet/formula/address';
import { parseAddress, parseArea } from '../../../sheet/formula/address';
import type { Package } from '../../package/package';
import type { Edit } from '../../package/splice';
import { cut, put } from '../../package/splice';
import type { Element } from '../../package/xml';
import { all, attribute, attributesOf, child, textOf } from '../../package/xml';
import type { Flow } from './flow';
import { prune } from './rules';

/** What hangs on emptied cells without being in them: filters, scenarios, notes, linked shapes and controls. */

/** The column a filter's choices belong to. */
function filterArea(bytes: Uint8Array, column: Element): Area | undefined {
  const filter = column.parent;
  const area = parseArea((filter && attribute(bytes, filter, 'ref')?.value) ?? '');
  if (!area) return undefined;
  const left = area.left + Number(attribute(bytes, column, 'colId')?.value ?? 0);
  return { ...area, left, right: left };
}

/** Choices of filters, orders of sorting and scenarios that hold values of emptied cells. */
export function tellingElements(
  bytes: Uint8Array,
  root: Element,
  sheet: number,
  flow: Flow,
): ReadonlySet<Element> {
  const touches = (area: Area | undefined): boolean => area !== undefined && flow.touches({ sheet, area });
  const refOf = (element: Element, name: string): Area | undefined =>
    parseArea(attribute(bytes, element, name)?.value ?? '');
  return new Set([
    ...all(root, 'filterColumn').filter((one) => touches(filterArea(bytes, one))),
    ...all(root, 'sortState').filter(
      (one) =>
        all(one, 'sortCondition').some((each) => attribute(bytes, each, 'customList')) &&
        touches(refOf(one, 'ref')),
    ),
    ...all(root, 'scenario').filter((one) =>
      all(one, 'inputCells').some((each) => touches(refOf(each, 'r'))),
    ),
    ...all(root, 'hyperlink').filter((one) => touches(refOf(one, 'ref'))),
  ]);
}

/** Tables: choices of filters, and labels of totals that stood in emptied cells. */
export function editTables(
  pack: Package,
  tables: readonly { part: string; sheet: number }[],
  flow: Flow,
): void {
  for (const { part, sheet } of tables) {
    const found = pack.tree(part);
    if (!found) continue;
    const { bytes, root } = found;
    const area = parseArea(attribute(bytes, root, 'ref')?.value ?? '');
    const totals = Number(attribute(bytes, root, 'totalsRowCount')?.value ?? 0) > 0;
    const columns = area && totals ? all(child(root, 'tableColumns'), 'tableColumn') : [];
    const labels = columns.flatMap((column, i) => {
      const place = { row: area?.bottom ?? 0, column: (area?.left ?? 0) + i };
      return flow.isBlank(sheet, place)
        ? attributesOf(bytes, column).filter((one) => /^totalsRow(?:Label|Function)$/.test(one.name))
        : [];
    });
    pack.edit(part, [...labels.map(cut), ...prune(bytes, tellingElements(bytes, root, sheet, flow))]);
  }
}

/** Notes and threads on emptied cells lose their words. */
export function editNotes(pack: Package, part: string, sheet: number, flow: Flow): number {
  let count = 0;
  for (const { type, target } of pack.relations(part)) {
    if (!/^(?:comments|threadedComments?)$/i.test(type)) continue;
    const found = pack.tree(target);
    if (!found) continue;
    const notes = all(found.root, 'comment', 'threadedComment').filter((one) => {
      const place = parseAddress(attribute(found.bytes, one, 'ref')?.value ?? '');
      return place && flow.isBlank(sheet, place);
    });
    const texts = notes.flatMap((one) =>
      all(one, 't', 'text').filter((each) => each.children.length === 0 && textOf(found.bytes, each) !== ''),
    );
    pack.edit(
      target,
      texts.map((one) => put(one.openEnd, one.closeStart, '')),
    );
    count += texts.length;
  }
  return count;
}

type Reads = (formula: string) => boolean;

/** Shapes that show a cell, pictures of ranges: they keep what they last showed. */
function shapeEdits(bytes: Uint8Array, root: Element, reads: Reads): Edit[] {
  const gone = new Set<Element>();
  const edits: Edit[] = [];
  for (const shape of all(root, 'sp', 'cxnSp')) {
    const link = attribute(bytes, shape, 'textlink');
    if (!link?.value || !reads(link.value)) continue;
    edits.push(put(link.valueStart, link.valueEnd, ''));
    for (const text of all(shape, 't')) edits.push(put(text.openEnd, text.closeStart, ''));
  }
  for (const camera of all(root, 'cameraTool'))
    if (reads(attribute(bytes, camera, 'cellRange')?.value ?? '')) {
      let holder: Element = camera;
      while (holder.parent && holder.parent !== root) holder = holder.parent;
      gone.add(holder);
    }
  return [...edits, ...[...gone].map(cut)];
}

/** The state of a form control linked to an emptied cell. */
function controlEdits(bytes: Uint8Array, root: Element, reads: Reads): Edit[] {
  const links = ['fmlaLink', 'fmlaRange', 'fmlaTxbx'].map(
    (name) => attribute(bytes, root, name)?.value ?? '',
  );
  if (!links.some((link) => link !== '' && reads(link))) return [];
  return attributesOf(bytes, root)
    .filter((one) => ['val', 'sel', 'text'].includes(one.name))
    .map(cut);
}

export function editShapes(pack: Package, reads: Reads): number {
  let count = 0;
  for (const { part, types } of pack.reached()) {
    const isDrawing = types.has('drawing') || types.has('chartUserShapes');
    if (!isDrawing && !types.has('ctrlProp')) continue;
    const found = pack.tree(part);
    if (!found) continue;
    const edits = (isDrawing ? shapeEdits : controlEdits)(found.bytes, found.root, reads);
    pack.edit(part, edits);
    if (edits.length > 0) count++;
  }
  return count;
}

/** Number formats of emptied cells that spell out a value that was left out. */
export function editFormats(pack: Package, part: string, styles: ReadonlySet<string>, flow: Flow): number {
  const found = pack.tree(part);
  if (!found) return 0;
  const { bytes, root } = found;
  const looks = all(child(root, 'cellXfs'), 'xf');
  const numbers = new Set(
    [...styles].map((style) => {
      const look = looks[Number(style)];
      return look ? attribute(bytes, look, 'numFmtId')?.value : undefined;
    }),
  );
  const edits = all(child(root, 'numFmts'), 'numFmt')
    .filter((one) => numbers.has(attribute(bytes, one, 'numFmtId')?.value))
    .map((one) => attribute(bytes, one, 'formatCode'))
    .filter((code) => code !== undefined && flow.values.in(code.value))
    .flatMap((code) => (code ? [put(code.valueStart, code.valueEnd, 'General')] : []));
  pack.edit(part, edits);
  return edits.length;
}

/** The log of changes to a shared workbook holds old values and who changed them. */
export function removeRevisions(pack: Package, bookPart: string): number {
  let count = 0;
  for (const relation of pack.relations(bookPart)) {
    if (!/^(?:revisionHeaders|usernames)$/i.test(relation.type)) continue;
    for (const inner of pack.relations(relation.target)) pack.remove(inner.target);
    pack.remove(relation.target);
    count++;
  }
  return count;
}
