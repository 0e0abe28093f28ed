import type { PackageBook } from '../../package/book';
import type { Package } from '../../package/package';
import { cut } from '../../package/splice';
import { all, descendants, textOf } from '../../package/xml';

/** Takes out what an edited copy must not carry. Each says what it did, in a sentence. */

/** The order of calculation names cells that hold no formula any more; Excel builds it anew. */
export function removeCalcChain(pack: Package, book: PackageBook): void {
  for (const relation of pack.relations(book.part))
    if (relation.type === 'calcChain') pack.remove(relation.target);
}

/** Panes and content add-ins that ask every reader to install something. */
export function removeAddins(pack: Package): string[] {
  const removed: string[] = [];
  const panes = pack
    .relations('')
    .filter((relation) => relation.type === 'webextensiontaskpanes' && pack.has(relation.target));
  for (const pane of panes) {
    for (const extension of pack.relations(pane.target))
      if (extension.type === 'webextension') pack.remove(extension.target);
    pack.remove(pane.target);
  }
  if (panes.length > 0)
    removed.push('The add-in that opened with the workbook, and the settings it kept in the file.');
  for (const part of pack.partsOfType('drawing')) {
    const found = pack.tree(part);
    if (!found) continue;
    const holders = found.root.children.filter((one) =>
      [...descendants(one)].some(
        (inner) => inner.name === 'webextensionref' || inner.name === 'webextension',
      ),
    );
    if (holders.length === 0) continue;
    pack.edit(part, holders.map(cut));
    for (const relation of pack.relations(part))
      if (relation.type === 'webextension') pack.remove(relation.target);
    removed.push(`${holders.length === 1 ? 'An add-in' : `${holders.length} add-ins`} drawn on a sheet.`);
  }
  return removed;
}

export function removeSignatures(pack: Package): string[] {
  const origins = pack
    .relations('')
    .filter(
      (relation) =>
        relation.type === 'origin' && /signature/i.test(relation.target) && pack.has(relation.target),
    );
  for (const origin of origins) {
    for (const signature of pack.relations(origin.target)) pack.remove(signature.target);
    pack.remove(origin.target);
  }
  return origins.length > 0
    ? ['The digital signature: it vouched for the original, not for a changed copy.']
    : [];
}

export const hasSignature = (pack: Package): boolean =>
  pack.relations('').some((relation) => relation.type === 'origin' && /signature/i.test(relation.target));

/**
 * Charts whose series are names that end in a call of ours: the picture stays, fed from what it remembers.
 */
export function chartsThrough(pack: Package, isTainted: (formula: string) => boolean): string[] {
  return pack.partsOfType('chart', 'chartEx').filter((part) => {
    const found = pack.tree(part);
    return found && all(found.root, 'f').some((one) => isTainted(textOf(found.bytes, one)));
  });
}
