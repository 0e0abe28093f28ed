import type { Package } from './package';
import { relationsPart } from './package';
import type { Edit } from './splice';
import { put } from './splice';
import { prune } from './rules';
import type { Telltales } from './telltales';
import type { Element } from './xml';
import { all, attribute, attributesOf, descendants, textOf } from './xml';

/** Takes blanked values out of every other part: notes, charts, text boxes, caches, filters, properties. */

/** Elements that go as a whole when a text in them tells: half of them would be damage. */
const WHOLE = new Set(['cfRule', 'dataValidation', 'hyperlink', 'filterColumn', 'scenario', 'sortCondition', 'protectedRange']);

export function sweepTree(bytes: Uint8Array, root: Element, telltales: Telltales): Edit[] {
  const gone = new Set<Element>();
  const edits: Edit[] = [];
  const within = (element: Element): Element | undefined => {
    for (let up: Element | undefined = element; up; up = up.parent) if (WHOLE.has(up.name)) return up;
    return undefined;
  };
  for (const element of [root, ...descendants(root)]) {
    // The cells of a sheet are no part of its tree; they have their own edits.
    if (element.name === 'sheetData') continue;
    const isTold = element.children.length === 0 && element.closeStart > element.openEnd && telltales.in(textOf(bytes, element));
    const told = attributesOf(bytes, element).filter((one) => telltales.in(one.value));
    if (!isTold && told.length === 0) continue;
    const whole = within(element);
    if (whole) gone.add(whole);
    else {
      if (isTold) edits.push(put(element.openEnd, element.closeStart, ''));
      for (const one of told) edits.push(put(one.valueStart, one.valueEnd, ''));
    }
  }
  return [...edits, ...prune(bytes, gone), ...sweepRuns(bytes, root, telltales)];
}

/** A name may be cut into runs of different looks: paragraphs and rich texts are also read as a whole. */
function sweepRuns(bytes: Uint8Array, root: Element, telltales: Telltales): Edit[] {
  return all(root, 'p', 'text', 'si', 'is').flatMap((holder) => {
    const runs = all(holder, 't');
    return runs.length > 1 && telltales.in(runs.map((run) => textOf(bytes, run)).join('')) ? runs.map((run) => put(run.openEnd, run.closeStart, '')) : [];
  });
}

const SKIPPED = /(^|\/)(styles|theme\d*|sharedStrings|workbook|metadata)\.xml$|^\[Content_Types\]\.xml$|\.rels$|worksheets\/[^/]+\.xml$/i;

/** Sweeps the parts that hang in the file; says in which ones it found something. */
export function sweepParts(pack: Package, telltales: Telltales): { readonly swept: string[]; readonly stuck: string[] } {
  const swept: string[] = [];
  const stuck: string[] = [];
  if (telltales.size === 0) return { swept, stuck };
  for (const part of pack.names.filter((name) => !SKIPPED.test(name))) {
    const found = readable(pack, part);
    if (!found) continue;
    if (found.root.name === 'table') {
      // A table's column is called what its heading says; neither can be emptied.
      if (all(found.root, 'tableColumn').some((one) => telltales.in(attribute(found.bytes, one, 'name')?.value ?? ''))) stuck.push(part);
      continue;
    }
    const edits = sweepTree(found.bytes, found.root, telltales);
    pack.edit(part, edits);
    if (edits.length > 0) swept.push(part);
  }
  sweepTargets(pack, telltales, swept);
  return { swept, stuck };
}

/** Drawings of notes in the old format are often no proper XML; they hold no text of ours either way. */
function readable(pack: Package, part: string): ReturnType<Package['tree']> {
  try {
    return pack.tree(part);
  } catch {
    return undefined;
  }
}

/** Addresses of links: mailto:somebody@… */
function sweepTargets(pack: Package, telltales: Telltales, swept: string[]): void {
  for (const part of pack.names.filter((name) => name.endsWith('.rels'))) {
    const source = part.replace(/_rels\/([^/]*)\.rels$/, '$1');
    const bytes = pack.read(relationsPart(source));
    if (!bytes) continue;
    const edits = pack.relations(source).filter((one) => one.isExternal && telltales.in(one.target)).map((one) => attribute(bytes, one.element, 'Target'))
      .filter((one) => one !== undefined).map((one) => put(one.valueStart, one.valueEnd, '#'));
    pack.edit(part, edits);
    if (edits.length > 0) swept.push(part);
  }
}
