import type { Edit } from '../../package/splice';
import { cut, put } from '../../package/splice';
import type { Element } from '../../package/xml';
import { all, attribute, attributesOf, child, textOf } from '../../package/xml';
import { escapeXml } from '../../text';

/**
 * What happens to a formula that has no cached value of its own: 'drop' it, or put another text in its place.
 */
export type RuleFate = 'drop' | 'keep' | { readonly text: string };
export interface DroppedRule {
  readonly kind: 'conditional format' | 'validation';
  readonly cells: string;
  readonly formula: string;
}

interface Formula {
  readonly text: string;
  readonly write: (text: string) => Edit;
}

const content = (bytes: Uint8Array, element: Element): Formula => ({
  text: textOf(bytes, element),
  write: (text) => put(element.openEnd, element.closeStart, escapeXml(text)),
});

function formulasOf(bytes: Uint8Array, rule: Element): Formula[] {
  // x14 keeps formula1 > f; the text is in f.
  const texts = all(rule, 'formula', 'formula1', 'formula2', 'f')
    .filter((one) => one.children.length === 0)
    .map((one) => content(bytes, one));
  const limits = all(rule, 'cfvo')
    .filter((one) => attribute(bytes, one, 'type')?.value === 'formula')
    .map((one) => attribute(bytes, one, 'val'))
    .filter((one) => one !== undefined)
    .map((one) => ({
      text: one.value,
      write: (text: string) => put(one.valueStart, one.valueEnd, escapeXml(text)),
    }));
  return [...texts, ...limits];
}

const cellsOf = (bytes: Uint8Array, rule: Element): string => {
  for (const place of [rule, rule.parent]) {
    if (!place) continue;
    const inner = child(place, 'sqref');
    const text = inner
      ? textOf(bytes, inner)
      : attributesOf(bytes, place).find((one) => one.name === 'sqref')?.value;
    if (text !== undefined) return text;
  }
  return '';
};

const linkOf = (bytes: Uint8Array, rule: Element): string | undefined => {
  const own = attribute(bytes, rule, 'id')?.value;
  const inner = all(rule, 'id')[0];
  return inner ? textOf(bytes, inner) : own;
};

/** Takes elements out, and containers that would be left empty with them; counts are set right. */
export function prune(bytes: Uint8Array, gone: ReadonlySet<Element>): Edit[] {
  const dropped = new Set(gone);
  const touched = new Set<Element>();
  for (const element of gone) {
    for (let up = element.parent; up && CONTAINERS.has(up.name); up = up.parent) {
      touched.add(up);
      if (up.children.some((one) => !dropped.has(one) && !isFrame(one))) break;
      dropped.add(up);
    }
  }
  const edits = [...dropped].filter((one) => !one.parent || !dropped.has(one.parent)).map(cut);
  for (const element of touched) {
    const count = dropped.has(element) ? undefined : attribute(bytes, element, 'count');
    if (count)
      edits.push(
        put(
          count.valueStart,
          count.valueEnd,
          String(element.children.filter((one) => !dropped.has(one)).length),
        ),
      );
  }
  return edits;
}
const CONTAINERS = new Set([
  'conditionalFormatting',
  'conditionalFormattings',
  'dataValidations',
  'hyperlinks',
  'tableParts',
  'sparklineGroups',
  'sparklineGroup',
  'sparklines',
  'ext',
  'extLst',
  'definedNames',
  'legacyDrawing',
  'scenarios',
]);
/** A range line or a colour inside a container does not keep it alive. */
const isFrame = (element: Element): boolean =>
  element.name === 'sqref' || (element.parent?.name === 'sparklineGroup' && element.name !== 'sparklines');

/** Conditional formats and validations, plain and x14, of one sheet. */
export function editRules(
  bytes: Uint8Array,
  root: Element,
  fate: (formula: string, cells: string) => RuleFate,
): { readonly edits: Edit[]; readonly dropped: DroppedRule[] } {
  const rules = all(root, 'cfRule', 'dataValidation');
  const gone = new Set<Element>();
  const edits: Edit[] = [];
  const dropped: DroppedRule[] = [];
  for (const rule of rules) {
    const formulas = formulasOf(bytes, rule);
    const cells = cellsOf(bytes, rule);
    const fates = formulas.map((formula) => fate(formula.text, cells));
    const first = fates.indexOf('drop');
    if (first >= 0) {
      gone.add(rule);
      dropped.push({
        kind: rule.name === 'cfRule' ? 'conditional format' : 'validation',
        cells,
        formula: formulas[first]?.text ?? '',
      });
    } else {
      for (const [i, one] of fates.entries()) {
        const write = formulas[i]?.write;
        if (typeof one === 'object' && write) edits.push(write(one.text));
      }
    }
  }
  // A bar drawn in two halves, a plain one and an x14 one tied by an id, goes as a whole.
  const links = new Set([...gone].map((rule) => linkOf(bytes, rule)).filter((id) => id !== undefined));
  for (const rule of rules) if (links.has(linkOf(bytes, rule) ?? '\u0000')) gone.add(rule);
  return { edits: [...edits, ...prune(bytes, gone)], dropped };
}
