import { append } from '../../append';
import type { LeftValues } from './values';
import { lex } from '../references/lex';
import type { Package } from '../../package/package';
import type { Reference, ReferenceFinder } from '../references/references';
import type { Edit } from '../../package/splice';
import { cut, put } from '../../package/splice';
import type { Element } from '../../package/xml';
import { all, child, textOf } from '../../package/xml';

/**
 * Charts remember the values they drew. What is blanked is forgotten; what came from a sheet left out, and may
 * stay, is written into the chart.
 */

export interface ChartFate {
  readonly isGone: (reference: Reference) => boolean;
  readonly isBlank: (reference: Reference) => boolean;
}

export function editCharts(pack: Package, finder: ReferenceFinder, fate: ChartFate): string[] {
  const said: string[] = [];
  for (const part of pack.partsOfType('chart', 'chartEx')) {
    const found = pack.tree(part);
    if (!found) continue;
    const { bytes, root } = found;
    const edits: Edit[] = [];
    let forgotten = 0;
    let fixed = 0;
    // Series that a filter hides keep their range in sqref.
    for (const formula of all(root, 'f', 'sqref')) {
      const text = textOf(bytes, formula);
      const { found: references } = finder.of(text, lex(text), undefined, undefined);
      const holder = formula.parent;
      if (!holder) continue;
      const isGone = references.some(fate.isGone);
      if (references.some(fate.isBlank)) {
        const points = cachedPoints(holder);
        forgotten += points.length;
        if (isGone && holder.parent?.name === 'tx') {
          edits.push(cut(holder.parent));
          continue;
        }
        append(edits, points.map(cut));
      } else if (isGone) fixed++;
      if (isGone) edits.push(...toLiteral(holder, formula));
    }
    pack.edit(part, edits);
    const name = part.replace(/^.*\//, '');
    if (forgotten > 0)
      said.push(`${name}: ${forgotten} remembered values of cells left out were taken out of the chart.`);
    if (fixed > 0)
      said.push(`${name}: series drawn from sheets left out keep their values inside the chart.`);
  }
  return said;
}

/**
 * Titles and boxes that were linked to a cell hold its words as typed text once another program saved the file. What
 * says exactly what stood in a cell left out goes with it; a longer sentence that holds it is named by the proof.
 */
export function editTyped(pack: Package, values: LeftValues): string[] {
  const said: string[] = [];
  for (const part of pack.partsOfType('chart', 'chartEx', 'drawing', 'chartUserShapes')) {
    const found = pack.tree(part);
    if (!found) continue;
    const { bytes, root } = found;
    const telling = all(root, 'p')
      .map((paragraph) => all(paragraph, 't'))
      .filter((runs) => values.isWhole(runs.map((run) => textOf(bytes, run)).join('')));
    if (telling.length === 0) continue;
    pack.edit(
      part,
      telling.flat().map((run) => put(run.openEnd, run.closeStart, '')),
    );
    said.push(
      `${part.replace(/^.*\//, '')}: ${telling.length === 1 ? 'a title or box' : `${telling.length} titles or boxes`} said what stood in a cell left out, and ${telling.length === 1 ? 'was' : 'were'} emptied.`,
    );
  }
  return said;
}

/** The values remembered beside a range: next to it, or around the extension it stands in. */
function cachedPoints(holder: Element): Element[] {
  for (
    let up: Element | undefined = holder;
    up && !/^(?:ser|plotArea|chart|data)$/.test(up.name);
    up = up.parent
  ) {
    const points = all(up, 'pt');
    if (points.length > 0) return points;
  }
  return [];
}

const LITERAL: Readonly<Record<string, readonly [cache: string, literal: string]>> = {
  numRef: ['numCache', 'numLit'],
  strRef: ['strCache', 'strLit'],
};

/** <numRef><f/><numCache>…</numCache></numRef> → <numLit>…</numLit>; a series name becomes plain text. */
function toLiteral(holder: Element, formula: Element): Edit[] {
  const [cacheName, literal] = Object.hasOwn(LITERAL, holder.name) ? (LITERAL[holder.name] ?? []) : [];
  const cache = cacheName === undefined ? undefined : child(holder, cacheName);
  if (!cache || literal === undefined) return [put(formula.openEnd, formula.closeStart, '#REF!')];
  const prefix = holder.prefix;
  if (holder.parent?.name === 'tx') {
    const words = all(cache, 'v')[0];
    if (!words) return [cut(holder.parent)];
    return [put(holder.start, words.start, ''), put(words.end, holder.end, '')];
  }
  return [
    put(holder.start, cache.openEnd, `<${prefix}${literal}>`),
    put(cache.closeStart, holder.end, `</${prefix}${literal}>`),
  ];
}
