// Long: what a formula looks like from its own row, and what its references mean there.
import { splitReference } from '../formula/address';
import type { ParsedNode } from '../formula/parse';
import { isFault, parse } from '../formula/parse';
import type { Places, Target } from './places';
import { targetOf, walk } from './places';
import type { SheetModel } from './model';

/**
 * Formulas alike down a table are one formula seen from different rows. Each is parsed once; the others are that
 * one with its relative rows moved.
 */

/** Stands around the steps of a row; no formula holds it. */
const STEP = '\u0001';
const QUOTE = 34;
const APOSTROPHE = 39;
const BRACKET = 91;
const DOLLAR = 36;
const isDigit = (code: number): boolean => code >= 48 && code <= 57;
const isLetter = (code: number): boolean => (code >= 65 && code <= 90) || (code >= 97 && code <= 122);
/** Letters, digits and the marks that may stand inside a name; anything beyond ASCII counts as a letter. */
const isOfWord = (code: number): boolean =>
  isLetter(code) ||
  isDigit(code) ||
  code === DOLLAR ||
  code === 95 ||
  code === 46 ||
  code === 92 ||
  code === 63 ||
  code > 127;

/** What a character begins: nothing, what is not looked into, a number, a word. */
const OTHER = 0;
const CLOSED = 1;
const DIGIT = 2;
const WORD = 3;
const KINDS = Uint8Array.from({ length: 128 }, (_, code) =>
  code === QUOTE || code === APOSTROPHE || code === BRACKET
    ? CLOSED
    : isDigit(code)
      ? DIGIT
      : isOfWord(code)
        ? WORD
        : OTHER,
);
const kindAt = (text: string, at: number): number => KINDS[text.charCodeAt(at)] ?? WORD;

/** 1E5 is a number, whatever it looks like. */
const isOfNumber = (code: number): boolean => isDigit(code) || code === 46 || code === 69 || code === 101;

/** Where the row of a relative cell reference begins in a word such as $B12; -1 when the word is none. */
function rowIn(text: string, from: number, to: number): number {
  let at = from;
  if (text.charCodeAt(at) === DOLLAR) at++;
  const letters = at;
  while (at < to && isLetter(text.charCodeAt(at))) at++;
  if (at === letters || at > letters + 3 || at === to || text.charCodeAt(at) === 48) return -1;
  for (let i = at; i < to; i++) if (!isDigit(text.charCodeAt(i))) return -1;
  return to - at <= 7 ? at : -1;
}

/** After what is not looked into: a text, a quoted sheet, a column in brackets, a number. */
function skip(text: string, at: number): number {
  const code = text.charCodeAt(at);
  if (code === QUOTE || code === APOSTROPHE) {
    const close = text.indexOf(text[at] ?? '', at + 1);
    return close < 0 ? text.length : close + 1;
  }
  if (code === BRACKET) {
    const close = text.indexOf(']', at);
    return close < 0 ? text.length : close + 1;
  }
  if (!isDigit(code)) return at;
  let end = at;
  while (end < text.length && isOfNumber(text.charCodeAt(end))) end++;
  return end;
}

/** The formula as seen from its row (0-based): relative rows as steps. Formulas with equal text are one formula. */
export function seenFrom(row: number, formula: string): string {
  let [seen, kept, at] = ['', 0, 0];
  const length = formula.length;
  while (at < length) {
    const kind = kindAt(formula, at);
    if (kind === OTHER) {
      at++;
      continue;
    }
    if (kind === CLOSED || kind === DIGIT) {
      at = skip(formula, at);
      continue;
    }
    let end = at + 1;
    while (end < length && kindAt(formula, end) >= DIGIT) end++;
    const next = formula[end];
    const digits = next === '(' || next === '!' || next === '[' ? -1 : rowIn(formula, at, end);
    if (digits > 0) {
      seen += `${formula.slice(kept, digits)}${STEP}${Number(formula.slice(digits, end)) - 1 - row}${STEP}`;
      kept = end;
    }
    at = end;
  }
  return seen + formula.slice(kept);
}

/** What a reference means, seen from the row of the formula it was first read in. */
export class Moved {
  constructor(
    private readonly target: Target,
    private readonly movesTop: boolean,
    private readonly movesBottom: boolean,
  ) {}
  get sheet(): SheetModel {
    return this.target.sheet;
  }
  /** The same object for every row that means the same cells. */
  by(rows: number): Target {
    if (rows === 0 || !(this.movesTop || this.movesBottom)) return this.target;
    const { sheet, area } = this.target;
    const [a, b] = [area.top + (this.movesTop ? rows : 0), area.bottom + (this.movesBottom ? rows : 0)];
    return {
      sheet,
      area: { top: Math.min(a, b), bottom: Math.max(a, b), left: area.left, right: area.right },
    };
  }
}

/** A corner such as B12 or $B12: its row moves with the formula. */
const moves = (corner: string): boolean => /^\$?[A-Za-z]{1,3}\d+$/.test(corner);
const rowOf = (corner: string): number => Number(/\d+$/.exec(corner)?.[0] ?? NaN);

function movedOf(node: ParsedNode & { kind: 'reference' | 'name' }, target: Target): Moved {
  if (node.kind === 'name' || node.text.includes('[')) return new Moved(target, false, false);
  const [from = '', to = from] = splitReference(node.text).area.split(':');
  // The corner that stands higher is the one that moves the top.
  return rowOf(from) <= rowOf(to) || Number.isNaN(rowOf(from))
    ? new Moved(target, moves(from), moves(to))
    : new Moved(target, moves(to), moves(from));
}

export interface Shape {
  readonly tree: ParsedNode | undefined;
  readonly row: number;
  /** By the text of the reference or name as it stands in the tree. */
  readonly moved: ReadonlyMap<string, Moved>;
  readonly targets: readonly Moved[];
  readonly faults: readonly string[];
  /** Holds for this formula only: a fault names what it says, a spilled answer has its own size. */
  readonly isAlone: boolean;
}

function shapeOf(formula: string, row: number, home: SheetModel, places: Places): Shape {
  const tree = parse(formula);
  if (isFault(tree))
    return {
      tree: undefined,
      row,
      moved: new Map(),
      targets: [],
      faults: [`cannot be read: ${tree.fault}`],
      isAlone: true,
    };
  const moved = new Map<string, Moved>();
  const targets: Moved[] = [];
  const faults: string[] = [];
  let isAlone = false;
  for (const node of walk(tree)) {
    const target = targetOf(node, places, home);
    if (typeof target === 'string') faults.push(target);
    else if (target && node.kind === 'spill') {
      targets.push(new Moved(target, false, false));
      isAlone = true;
    } else if (target && (node.kind === 'reference' || node.kind === 'name')) {
      const text = node.kind === 'name' ? node.name : node.text;
      const known = moved.get(text);
      const one = known ?? movedOf(node, target);
      if (!known) moved.set(text, one);
      targets.push(one);
    }
  }
  return { tree, row, moved, targets, faults, isAlone: isAlone || faults.length > 0 };
}

/** Shapes of the formulas of a workbook, each found once. */
export class Shapes {
  private readonly known = new Map<SheetModel, Map<string, Shape>>();
  constructor(private readonly places: Places) {}

  of(formula: string, row: number, home: SheetModel): Shape {
    let ofSheet = this.known.get(home);
    if (!ofSheet) this.known.set(home, (ofSheet = new Map<string, Shape>()));
    const seen = seenFrom(row, formula);
    const known = ofSheet.get(seen);
    if (known && !known.isAlone) return known;
    const shape = shapeOf(formula, row, home, this.places);
    if (!known) ofSheet.set(seen, shape);
    return shape;
  }
}
