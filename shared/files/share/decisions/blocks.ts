import type { Area } from '../../../sheet/formula/address';
import { areaText, parseArea } from '../../../sheet/formula/address';
import type { OwnCall } from '../references/calls';
import { ownCalls, typedForm } from '../references/calls';
import { lex, moveReference, relativeForm } from '../references/lex';
import type { FormulaCell } from './scan';

/** Cells whose formulas say the same relative to their own place: one line of the page. */
export interface Block {
  readonly sheet: string;
  readonly sheetIndex: number;
  readonly areas: readonly Area[];
  readonly count: number;
  readonly typed: string;
  readonly calls: readonly OwnCall[];
  /** Is the whole formula one call of ours? */
  readonly isPureCall: boolean;
  /** Addresses the formula reads, over all its cells. */
  readonly inputs: string;
  /** Formula of built-in functions that stands there now; undefined when it is a value. */
  readonly native: string | undefined;
}

export interface BlockCell {
  readonly cell: FormulaCell;
  readonly native: string | undefined;
}

const MAX_AREAS = 200;

export function blocksOf(sheet: string, sheetIndex: number, cells: readonly BlockCell[]): Block[] {
  const groups = new Map<string, BlockCell[]>();
  for (const one of cells) {
    const { span, text, pieces, area } = one.cell;
    const key = `${one.native === undefined ? 'v' : 'n'}${area.bottom - area.top}x${area.right - area.left}|${relativeForm(text, pieces, span.row, span.column)}`;
    const group = groups.get(key);
    if (group) group.push(one);
    else groups.set(key, [one]);
  }
  return [...groups.values()].flatMap((group) => {
    const rectangles = mergedAreas(group.map(({ cell }) => cell.area));
    const parts: Area[][] = [];
    for (let i = 0; i < rectangles.length; i += MAX_AREAS) parts.push(rectangles.slice(i, i + MAX_AREAS));
    return parts.map((areas) => block(sheet, sheetIndex, group, areas));
  });
}

function block(
  sheet: string,
  sheetIndex: number,
  group: readonly BlockCell[],
  areas: readonly Area[],
): Block {
  const [top] = areas;
  const first =
    group.find(({ cell }) => cell.span.row === top?.top && cell.span.column === top.left) ?? group[0];
  const text = first?.cell.text ?? '';
  const calls = ownCalls(text);
  const [only, another] = calls;
  return {
    sheet,
    sheetIndex,
    areas,
    count: areas.reduce((sum, a) => sum + (a.bottom - a.top + 1) * (a.right - a.left + 1), 0),
    typed: typedForm(text),
    calls,
    isPureCall: only?.piece.from === 0 && !another && wraps(text, only.piece.end),
    inputs: inputsOf(text, first?.cell, areas),
    native: first?.native === undefined ? undefined : typedForm(first.native),
  };
}

/** Does the bracket that opens at `from` close at the very end? */
function wraps(text: string, from: number): boolean {
  let depth = 0;
  const hidden = new Set(
    lex(text)
      .filter((piece) => piece.kind === 'string')
      .flatMap((piece) => Array.from({ length: piece.end - piece.at }, (_, i) => piece.at + i)),
  );
  for (let i = from; i < text.length; i++) {
    if (hidden.has(i)) continue;
    if (text[i] === '(') depth++;
    if (text[i] === ')' && --depth === 0) return i === text.length - 1;
  }
  return false;
}

/** Single cells become runs down a column, equal runs side by side become rectangles. */
export function mergedAreas(areas: readonly Area[]): Area[] {
  const runs: { top: number; left: number; bottom: number; right: number }[] = [];
  const open = new Map<string, { top: number; left: number; bottom: number; right: number }>();
  for (const area of areas.toSorted((a, b) => a.top - b.top || a.left - b.left)) {
    const key = `${area.left}:${area.right}`;
    const above = open.get(key);
    if (above && above.bottom === area.top - 1) above.bottom = area.bottom;
    else {
      const run = { ...area };
      runs.push(run);
      open.set(key, run);
    }
  }
  const out: { top: number; left: number; bottom: number; right: number }[] = [];
  for (const run of runs.toSorted((a, b) => a.top - b.top || a.bottom - b.bottom || a.left - b.left)) {
    const last = out.at(-1);
    if (last && last.top === run.top && last.bottom === run.bottom && last.right === run.left - 1)
      last.right = run.right;
    else out.push(run);
  }
  return out.toSorted((a, b) => a.left - b.left || a.top - b.top);
}

const SHOWN_INPUTS = 40;

function inputsOf(text: string, first: FormulaCell | undefined, areas: readonly Area[]): string {
  if (!first) return '';
  const found = new Set<string>();
  for (const piece of lex(text)) {
    const word = text.slice(piece.at, piece.end);
    const prefix = text.slice(piece.from, piece.at);
    if (piece.kind === 'table') found.add(typedForm(text.slice(piece.from, piece.end)).slice(1));
    if (piece.kind === 'name' && !/^(?:_xlpm\.|_xldudf_)/i.test(word)) found.add(prefix + word);
    if (piece.kind !== 'cell' && piece.kind !== 'area') continue;
    for (const area of areas) found.add(prefix + covered(word, first, area));
  }
  const list = [...found];
  return list.length > SHOWN_INPUTS
    ? `${list.slice(0, SHOWN_INPUTS).join(', ')} and ${list.length - SHOWN_INPUTS} more`
    : list.join(', ');
}

/** What a reference of the first cell becomes over all cells of an area. */
function covered(reference: string, { span, kind, area: own }: FormulaCell, area: Area): string {
  // An array formula reads the same cells wherever its answers stand.
  const fixed = kind === 'array' && (own.bottom > own.top || own.right > own.left);
  const at = (row: number, column: number): Area | undefined =>
    parseArea(moveReference(reference, fixed ? 0 : row - span.row, fixed ? 0 : column - span.column));
  const [from, to] = [at(area.top, area.left), at(area.bottom, area.right)];
  if (!from || !to) return reference;
  return areaText({
    top: Math.min(from.top, to.top),
    left: Math.min(from.left, to.left),
    bottom: Math.max(from.bottom, to.bottom),
    right: Math.max(from.right, to.right),
  });
}
