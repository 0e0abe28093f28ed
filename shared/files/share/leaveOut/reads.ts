import type { Area, CellPlace } from '../../../sheet/formula/address';
import { parseArea } from '../../../sheet/formula/address';
import type { Near } from '../../../base/near';
import type { FormulaPiece } from '../references/lex';
import { lex, moveReference } from '../references/lex';
import { NameTable } from '../references/names';
import type { Reference } from '../references/references';
import { hasOpenCorner, ReferenceFinder } from '../references/references';

/** How a formula reads: cell by cell, only through a sum over many, or only how many there are. */
export interface Reads {
  /** Whatever stands in one of these cells may show in the answer. */
  readonly plain: readonly Reference[];
  /** Read by sums and means alone, whole ranges at a time. */
  readonly summed: readonly Reference[];
  /** What the sums are called, for telling equal ones from different ones. */
  readonly sums: string;
  /** Only places are looked at: how many cells, which row. */
  readonly counted: readonly Reference[];
  /** INDIRECT, OFFSET and the like: what is read cannot be told. */
  readonly isUnsure: boolean;
}

/** Of a range these give one number that moves with every cell of it, and shows none of them. */
const SUMS = new Set([
  'SUM',
  'AVERAGE',
  'AVERAGEA',
  'SUMSQ',
  'DEVSQ',
  'STDEV',
  'STDEVP',
  'STDEVA',
  'STDEVPA',
  'STDEV.S',
  'STDEV.P',
  'VAR',
  'VARP',
  'VARA',
  'VARPA',
  'VAR.S',
  'VAR.P',
]);
/** These look at places, not at what stands there. */
const COUNTS = new Set([
  'COUNT',
  'COUNTA',
  'COUNTBLANK',
  'ROWS',
  'COLUMNS',
  'ROW',
  'COLUMN',
  'AREAS',
  'ISREF',
]);

interface Open {
  readonly name: string;
  /** First argument as written, for SUBTOTAL(9,…). */
  readonly from: number;
}

const SUBTOTAL_SUMS = /^\s*10?[19]\s*,/;

/** The function whose argument a piece is, when it is a whole argument by itself. */
function holderOf(text: string, piece: FormulaPiece, open: readonly Open[]): string | undefined {
  let [left, right] = [piece.from - 1, piece.end];
  while (text[left] === ' ') left--;
  while (text[right] === ' ') right++;
  const [before, after] = [text[left], text[right]];
  const top = open.at(-1);
  if (!top || (before !== '(' && before !== ',') || (after !== ')' && after !== ',')) return undefined;
  if (top.name === 'SUBTOTAL' && SUBTOTAL_SUMS.test(text.slice(top.from, top.from + 8))) return 'SUM';
  return top.name;
}

function bracketsIn(text: string, from: number, to: number, call: string, open: Open[]): void {
  let name = call;
  for (let i = from; i < to; i++) {
    const letter = text[i];
    if (letter === '(' || letter === '{') {
      open.push({ name, from: i + 1 });
      name = '';
    } else if (letter === ')' || letter === '}') open.pop();
  }
}

/** Longer formulas than any spreadsheet keeps are not taken apart: they read what they name, cell by cell. */
const LONGEST = 8_192;

export function readsOf(
  finder: ReferenceFinder,
  text: string,
  pieces: readonly FormulaPiece[],
  sheet: number,
  place: CellPlace,
): Reads {
  if (text.length > LONGEST) {
    const { found, isUnsure } = finder.of(text, pieces, sheet, place);
    return { plain: found, summed: [], sums: '', counted: [], isUnsure };
  }
  let isUnsure = hasOpenCorner(text, pieces);
  const plain: Reference[] = [];
  const summed: Reference[] = [];
  const counted: Reference[] = [];
  const sums: string[] = [];
  const open: Open[] = [];
  let at = 0;
  let call = '';
  for (const piece of pieces) {
    bracketsIn(text, at, piece.from, call, open);
    call = piece.kind === 'call' ? bareName(text.slice(piece.at, piece.end)) : '';
    at = piece.end;
    const read = finder.piece(text, piece, sheet, place);
    const { found } = read;
    isUnsure ||= read.isUnsure;
    if (found.length === 0) continue;
    const holder = piece.kind === 'call' ? undefined : holderOf(text, piece, open);
    if (holder !== undefined && COUNTS.has(holder)) counted.push(...found);
    else if (holder !== undefined && SUMS.has(holder)) {
      summed.push(...found);
      sums.push(holder);
    } else plain.push(...found);
  }
  return { plain, summed, sums: sums.sort().join(), counted, isUnsure };
}

const bareName = (word: string): string => word.replace(/^(?:@|_xlfn\.|_xlws\.)+/i, '').toUpperCase();

/** What a rule reads that holds for a whole range: its relative references walk along with the cells. */
export function ruleReads(
  finder: ReferenceFinder,
  text: string,
  pieces: readonly FormulaPiece[],
  sheet: number,
  cells: readonly Area[],
): Reference[] {
  const [first] = cells;
  const place = { row: first?.top ?? 0, column: first?.left ?? 0 };
  return pieces.flatMap((piece) => {
    const { found } = finder.piece(text, piece, sheet, place);
    if (piece.kind !== 'cell' && piece.kind !== 'area') return found;
    const word = text.slice(piece.at, piece.end);
    return found.flatMap((one) => [
      one,
      ...cells.map((area) => {
        const [a, b] = [
          parseArea(moveReference(word, area.top - place.row, area.left - place.column)),
          parseArea(moveReference(word, area.bottom - place.row, area.right - place.column)),
        ];
        return { sheet: one.sheet, area: a && b ? union(a, b) : one.area };
      }),
    ]);
  });
}

const union = (a: Area, b: Area): Area => ({
  top: Math.min(a.top, b.top),
  left: Math.min(a.left, b.left),
  bottom: Math.max(a.bottom, b.bottom),
  right: Math.max(a.right, b.right),
});

/** How many ranges a formula of that length reads as sums only. */
const summedAt = (length: number): number => {
  const text = 'SUM(A1:A9)'.padEnd(length, ' ');
  const finder = new ReferenceFinder(new NameTable({ names: [], sheets: [] }), []);
  return readsOf(finder, text, lex(text), 0, { row: 20, column: 0 }).summed.length;
};
export const NEAR: readonly Near[] = [
  {
    number: 'signs of the longest formula that is taken apart',
    value: LONGEST,
    below: () => summedAt(8192),
    above: () => summedAt(8193),
    answers: [1, 0],
  },
];
