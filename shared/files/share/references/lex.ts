import { columnLetters, columnNumber, MAX_COLUMNS, MAX_ROWS } from '../../../sheet/formula/address';

/**
 * The pieces of a formula that freezing cares about, in file spelling: references, calls, names, sheet
 * prefixes. Operators, numbers and brackets are what lies between. Written by hand because a workbook may
 * hold fifty thousand formulas.
 */
export type PieceKind = 'cell' | 'area' | 'table' | 'call' | 'name' | 'string' | 'literal';

export interface FormulaPiece {
  readonly kind: PieceKind;
  /** Start of the sheet or file prefix, or of the piece itself. */
  readonly from: number;
  /** Start without prefix. */
  readonly at: number;
  readonly end: number;
}

const CELL = /^(\$?)([A-Za-z]{1,3})(\$?)([1-9]\d{0,6})$/;
const COLUMN = /^\$?[A-Za-z]{1,3}$/;
const ROW = /^\$?[1-9]\d{0,6}$/;
const ERROR =
  /#(?:VALUE!|N\/A|NUM!|DIV\/0!|REF!|NAME\?|NULL!|SPILL!|CALC!|BUSY!|GETTING_DATA|FIELD!|BLOCKED!|CONNECT!|UNKNOWN!)/iy;
const NUMBER = /(?:\d+\.?\d*|\.\d+)(?:[Ee][+-]?\d+)?/y;
const SHEETS = /[\p{L}\p{N}_.\\]+(?::[\p{L}\p{N}_.\\]+)?!/uy;

const isWordCode = (code: number): boolean =>
  (code >= 97 && code <= 122) ||
  (code >= 65 && code <= 90) ||
  (code >= 48 && code <= 57) ||
  code === 95 ||
  code === 46 ||
  code === 36 ||
  code === 92 ||
  code === 63 ||
  code > 127;
const isDigit = (code: number): boolean => code >= 48 && code <= 57;

function endOfQuoted(text: string, at: number, quote: number): number {
  for (let i = at + 1; i < text.length; i++) {
    if (text.charCodeAt(i) !== quote) continue;
    if (text.charCodeAt(i + 1) !== quote) return i + 1;
    i++;
  }
  return text.length;
}

/** After the ] that closes the [ at `at`; ' escapes inside. */
function endOfBrackets(text: string, at: number): number {
  let depth = 0;
  for (let i = at; i < text.length; i++) {
    const letter = text[i];
    if (letter === "'") i++;
    else if (letter === '[') depth++;
    else if (letter === ']' && --depth === 0) return i + 1;
  }
  return text.length;
}

function endOfWord(text: string, at: number): number {
  let i = at;
  while (i < text.length && isWordCode(text.charCodeAt(i))) i++;
  return i;
}

const matchAt = (pattern: RegExp, text: string, at: number): number => {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : -1;
};

/** `rest` of an area after its first corner: :B9, :$C, :12. Returns the end, or -1. */
function secondCorner(text: string, first: string, end: number): number {
  if (text[end] !== ':') return -1;
  const stop = endOfWord(text, end + 1);
  const second = text.slice(end + 1, stop);
  if (text[stop] === '(' || text[stop] === '!') return -1;
  return [CELL, COLUMN, ROW].some((kind) => kind.test(first) && kind.test(second)) ? stop : -1;
}

function wordPiece(text: string, from: number, at: number): FormulaPiece {
  const end = endOfWord(text, at);
  if (text[end] === '[') return { kind: 'table', from, at, end: endOfBrackets(text, end) };
  let next = end;
  while (text[next] === ' ') next++;
  if (text[next] === '(' && end > at) return { kind: 'call', from, at, end };
  const word = text.slice(at, end);
  const corner = secondCorner(text, word, end);
  if (corner >= 0) return { kind: 'area', from, at, end: corner };
  if (CELL.test(word)) return { kind: 'cell', from, at, end };
  return { kind: /^(TRUE|FALSE)$/i.test(word) ? 'literal' : 'name', from, at, end };
}

/** A piece that starts with a bracket: [2]!x, [1]Sheet!A1, or [@Column] inside a table. */
function bracketPiece(text: string, at: number): FormulaPiece {
  const close = endOfBrackets(text, at);
  const prefix = text[close] === '!' ? close + 1 : matchAt(SHEETS, text, close);
  return prefix > 0 ? wordPiece(text, at, prefix) : { kind: 'table', from: at, at, end: close };
}

/** `lastBang`: no sheet is named after the last exclamation mark. */
function pieceAt(text: string, at: number, lastBang: number): FormulaPiece | undefined {
  const code = text.charCodeAt(at);
  if (code === 34) return { kind: 'string', from: at, at, end: endOfQuoted(text, at, 34) };
  if (code === 39) {
    const close = endOfQuoted(text, at, 39);
    return text[close] === '!'
      ? wordPiece(text, at, close + 1)
      : { kind: 'string', from: at, at, end: close };
  }
  if (code === 91) return bracketPiece(text, at);
  if (code === 35) {
    const end = matchAt(ERROR, text, at);
    return end < 0 ? undefined : { kind: 'literal', from: at, at, end };
  }
  if (!isWordCode(code)) return undefined;
  const sheet = at < lastBang ? matchAt(SHEETS, text, at) : -1;
  if (sheet >= 0) return wordPiece(text, at, sheet);
  if (isDigit(code) || (code === 46 && isDigit(text.charCodeAt(at + 1)))) {
    const row = secondCorner(text, text.slice(at, endOfWord(text, at)), endOfWord(text, at));
    if (row >= 0) return { kind: 'area', from: at, at, end: row };
    return { kind: 'literal', from: at, at, end: Math.max(at + 1, matchAt(NUMBER, text, at)) };
  }
  return wordPiece(text, at, at);
}

export function lex(text: string): FormulaPiece[] {
  const pieces: FormulaPiece[] = [];
  const lastBang = text.lastIndexOf('!');
  for (let at = 0; at < text.length;) {
    const piece = pieceAt(text, at, lastBang);
    if (piece && piece.end > at) {
      pieces.push(piece);
      at = piece.end;
    } else at++;
  }
  return pieces;
}

/** Puts other text in place of some pieces. */
export function replacePieces(
  text: string,
  pieces: readonly FormulaPiece[],
  replace: (piece: FormulaPiece) => string | undefined,
): string {
  let out = '';
  let at = 0;
  for (const piece of pieces) {
    const instead = replace(piece);
    if (instead === undefined) continue;
    out += text.slice(at, piece.from) + instead;
    at = piece.end;
  }
  return out + text.slice(at);
}

const wrap = (n: number, size: number): number => ((n % size) + size) % size;

/**
 * One corner moved as filling does: relative parts move, and run around the edge of the sheet as they do in
 * Excel.
 */
function moveCorner(corner: string, rows: number, columns: number): string {
  const [, columnLock = '', letters = '', rowLock = '', digits = ''] =
    /^(\$?)([A-Za-z]*)(\$?)(\d*)$/.exec(corner) ?? [];
  const isRowOnly = letters === '';
  const lock = isRowOnly ? columnLock : rowLock;
  const column =
    letters && (columnLock ? letters : columnLetters(wrap(columnNumber(letters) + columns, MAX_COLUMNS)));
  const row = digits && (lock ? digits : String(wrap(Number(digits) - 1 + rows, MAX_ROWS) + 1));
  return isRowOnly ? columnLock + row : columnLock + column + rowLock + row;
}

export const moveReference = (reference: string, rows: number, columns: number): string =>
  reference
    .split(':')
    .map((corner) => moveCorner(corner, rows, columns))
    .join(':');

/** The formula as it would read after filling it `rows` down and `columns` to the right. */
export const shiftFormula = (
  text: string,
  pieces: readonly FormulaPiece[],
  rows: number,
  columns: number,
): string =>
  rows === 0 && columns === 0
    ? text
    : replacePieces(text, pieces, (piece) =>
        piece.kind === 'cell' || piece.kind === 'area'
          ? text.slice(piece.from, piece.at) + moveReference(text.slice(piece.at, piece.end), rows, columns)
          : undefined,
      );

/** Equal for formulas that say the same relative to their own cell. */
export function relativeForm(
  text: string,
  pieces: readonly FormulaPiece[],
  row: number,
  column: number,
): string {
  let out = '';
  let at = 0;
  for (const { kind, at: start, end } of pieces) {
    if (kind !== 'cell' && kind !== 'area') continue;
    out += text.slice(at, start);
    for (const corner of text.slice(start, end).split(':')) out += relativeCorner(corner, row, column);
    at = end;
  }
  return out + text.slice(at);
}

function relativeCorner(corner: string, row: number, column: number): string {
  const [, columnLock = '', letters = '', rowLock = '', digits = ''] =
    /^(\$?)([A-Za-z]*)(\$?)(\d*)$/.exec(corner) ?? [];
  const lock = letters ? rowLock : columnLock;
  const r = digits && (lock ? `R${digits}` : `R[${Number(digits) - 1 - row}]`);
  const c = letters && (columnLock ? `C${letters.toUpperCase()}` : `C[${columnNumber(letters) - column}]`);
  return `${r}${c};`;
}
