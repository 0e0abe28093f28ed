import type { Package } from '../../package/package';
import { relationsPart } from '../../package/package';
import type { Edit } from '../../package/splice';
import { put } from '../../package/splice';
import { prune } from './rules';
import type { Telltales } from './telltales';
import type { Attribute, Element } from '../../package/xml';
import { all, attribute, attributesOf, descendants, textOf } from '../../package/xml';

/** Takes blanked values out of every other part: notes, charts, text boxes, caches, filters, properties. */

/** Elements that go as a whole when a text in them tells: half of them would be damage. */
const WHOLE = new Set([
  'cfRule',
  'dataValidation',
  'hyperlink',
  'filterColumn',
  'scenario',
  'pt',
  'customProp',
]);
/** Attributes that hold words; all others hold addresses, sizes and switches, and must stay whole. */
const WORDY = new Set([
  'name',
  'title',
  'descr',
  'prompt',
  'promptTitle',
  'error',
  'errorTitle',
  'tooltip',
  'display',
  'location',
  'caption',
  'totalsRowLabel',
  'displayName',
  'userName',
  'user',
  'comment',
  'description',
  'help',
  'statusBar',
  'refreshedBy',
  'author',
  'altText',
  'alt',
  'string',
  'v',
  'u',
  'Label',
  'sourceName',
  'command',
  'connection',
]);
/** Values in filters and scenarios. */
const VALUED = new Set(['filter', 'customFilter', 'inputCells', 'dateGroupItem']);
/** Places and sizes, not words. */
const PLACES = new Set(['sqref', 'row', 'col', 'rowOff', 'colOff', 'Row', 'Column', 'Anchor', 'sheetData']);
const FORMULAS = new Set([
  'f',
  'formula',
  'formula1',
  'formula2',
  'calculatedColumnFormula',
  'totalsRowFormula',
]);

function isTold(bytes: Uint8Array, element: Element, telltales: Telltales): boolean {
  if (element.children.length > 0 || element.closeStart <= element.openEnd || PLACES.has(element.name))
    return false;
  const text = textOf(bytes, element);
  return FORMULAS.has(element.name) ? telltales.inFormula(text) : telltales.in(text);
}

const toldAttributes = (bytes: Uint8Array, element: Element, telltales: Telltales): Attribute[] =>
  attributesOf(bytes, element).filter((one) => {
    // A table's column is called what its heading says; neither can be emptied.
    if (element.name === 'tableColumn' && one.name === 'name') return false;
    return (
      (WORDY.has(one.name) || (one.name === 'val' && VALUED.has(element.name))) && telltales.in(one.value)
    );
  });

function wholeAround(element: Element): Element | undefined {
  for (let up: Element | undefined = element; up; up = up.parent) if (WHOLE.has(up.name)) return up;
  return undefined;
}

export function sweepTree(bytes: Uint8Array, root: Element, telltales: Telltales): Edit[] {
  if (telltales.size === 0) return [];
  const gone = new Set<Element>();
  const edits: Edit[] = [];
  for (const element of [root, ...descendants(root)]) {
    const text = isTold(bytes, element, telltales);
    const told = toldAttributes(bytes, element, telltales);
    if (!text && told.length === 0) continue;
    const whole = wholeAround(element);
    if (whole) gone.add(whole);
    else {
      if (text) edits.push(put(element.openEnd, element.closeStart, ''));
      for (const one of told) edits.push(put(one.valueStart, one.valueEnd, ''));
    }
  }
  return [...edits, ...prune(bytes, gone), ...sweepRuns(bytes, root, telltales)];
}

/** A name may be cut into runs of different looks: paragraphs and rich texts are also read as a whole. */
function sweepRuns(bytes: Uint8Array, root: Element, telltales: Telltales): Edit[] {
  return all(root, 'p', 'text', 'si', 'is').flatMap((holder) => {
    const runs = all(holder, 't');
    return runs.length > 1 && telltales.in(runs.map((run) => textOf(bytes, run)).join(''))
      ? runs.map((run) => put(run.openEnd, run.closeStart, ''))
      : [];
  });
}

const SKIPPED =
  /(^|\/)(styles|theme\d*|sharedStrings|workbook|metadata)\.xml$|^\[Content_Types\]\.xml$|\.rels$|worksheets\/[^/]+\.xml$/i;

/** Sweeps the parts that hang in the file; says in which ones it found something. */
export function sweepParts(
  pack: Package,
  telltales: Telltales,
): { readonly swept: string[]; readonly stuck: string[] } {
  const swept: string[] = [];
  const stuck: string[] = [];
  if (telltales.size === 0) return { swept, stuck };
  for (const part of pack.names.filter((name) => !SKIPPED.test(name))) {
    const found = readable(pack, part);
    if (!found) continue;
    if (
      all(found.root, 'tableColumn').some((one) =>
        telltales.in(attribute(found.bytes, one, 'name')?.value ?? ''),
      )
    )
      stuck.push(part);
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
    const edits = pack
      .relations(source)
      .filter((one) => one.isExternal && telltales.in(one.target))
      .map((one) => attribute(bytes, one.element, 'Target'))
      .filter((one) => one !== undefined)
      .map((one) => put(one.valueStart, one.valueEnd, '#'));
    pack.edit(part, edits);
    if (edits.length > 0) swept.push(part);
  }
}
