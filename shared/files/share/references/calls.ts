import { CATALOGUE } from '../../../catalogue';
import type { SheetFunction } from '../../../functions/define';
import { PREFIX } from '../../../functions/define';
import type { Piece } from './lex';
import { lex, replacePieces } from './lex';

/** Which identifiers of a formula are calls of ours, in every spelling a file can hold. */

const MARKS = String.raw`(?:@|_xlfn\.|_xlws\.|_xludf\.|_xll\.|_xlpm\.)*`;
const STORED = new RegExp(`^${MARKS}_xldudf_${PREFIX}_([A-Z0-9_.]+)$`, 'i');
const TYPED = new RegExp(`^${MARKS}${PREFIX}\\.([A-Z0-9_.]+)$`, 'i');

const stored = (id: string): string => id.replaceAll('.', '_').toUpperCase();
const byStoredId = new Map<string, SheetFunction>(CATALOGUE.map((fn) => [stored(fn.id), fn]));

export interface OwnCall {
  readonly piece: Piece;
  /** As typed: SPAWN.BUFFER.DOSE. Of a function this version does not know, underscores stand for dots. */
  readonly name: string;
  readonly fn: SheetFunction | undefined;
}

function ownCall(text: string, piece: Piece): OwnCall | undefined {
  if (piece.kind !== 'call' && piece.kind !== 'name') return undefined;
  const word = text.slice(piece.at, piece.end);
  if (word.length <= PREFIX.length) return undefined;
  const inFile = STORED.exec(word);
  const id = (inFile ?? TYPED.exec(word))?.[1];
  if (id === undefined) return undefined;
  const fn = byStoredId.get(stored(id));
  // SPAWN.X without a bracket is a name somebody gave to a cell, unless a function is called that.
  if (!inFile && piece.kind === 'name' && !fn) return undefined;
  return { piece, fn, name: fn?.name ?? `${PREFIX}.${id.replaceAll('_', '.').toUpperCase()}` };
}

export const ownCalls = (text: string, pieces: readonly Piece[] = lex(text)): OwnCall[] =>
  pieces.map((piece) => ownCall(text, piece)).filter((call) => call !== undefined);

const FILE_MARK = /^(?:_xlfn\.|_xlws\.|_xlpm\.)+/i;

/**
 * The formula as somebody would type it: our names with dots, no marks of the file format, E4# for the
 * spilled range.
 */
export function typedForm(text: string): string {
  const pieces = lex(text);
  const own = new Map(ownCalls(text, pieces).map((call) => [call.piece, call.name]));
  const plain = replacePieces(text, pieces, (piece) => {
    const ours = own.get(piece);
    if (ours !== undefined) return ours;
    if (piece.kind === 'table')
      return text
        .slice(piece.from, piece.end)
        .replace(/\[\[#This Row\],\[((?:[^\][']|'.)*)\]\]/gi, '[@[$1]]')
        .replace(/\[@\[([\p{L}\p{N}_]+)\]\]/gu, '[@$1]');
    if (piece.kind !== 'call' && piece.kind !== 'name') return undefined;
    const word = text.slice(piece.at, piece.end);
    return FILE_MARK.test(word) ? text.slice(piece.from, piece.at) + word.replace(FILE_MARK, '') : undefined;
  });
  return `=${plain.replace(/\bANCHORARRAY\(([^()"]+)\)/gi, '$1#').replace(/\bSINGLE\(([^()"]+)\)/gi, '@$1')}`;
}

/**
 * Puts our calls back into the spelling Excel ties to the add-in: no foreign book in front, upper case,
 * underscores.
 */
export function repairedForm(text: string): string | undefined {
  const pieces = lex(text);
  const own = new Map(ownCalls(text, pieces).map((call) => [call.piece, `_xldudf_${stored(call.name)}`]));
  const repaired = replacePieces(text, pieces, (piece) => own.get(piece));
  return repaired === text ? undefined : repaired;
}

/**
 * The top-level arguments of the call whose opening bracket is the first one after `from`, and where it
 * closes.
 */
export function argumentsAfter(
  text: string,
  from: number,
): { readonly args: readonly string[]; readonly end: number } | undefined {
  const open = text.indexOf('(', from);
  if (open < 0) return undefined;
  // Brackets and commas inside texts, sheet names and table references do not count.
  const hidden = lex(text).filter((piece) => piece.kind !== 'call' || piece.from !== piece.at);
  const plain = hidden.reduce((out, { from: a, at, kind, end }) => {
    const b = kind === 'call' ? at : end;
    return out.slice(0, a) + ' '.repeat(b - a) + out.slice(b);
  }, text);
  const args: string[] = [];
  let depth = 0;
  let start = open + 1;
  for (let i = open; i < plain.length; i++) {
    const letter = plain[i] ?? '';
    if ('({'.includes(letter)) depth++;
    else if (')}'.includes(letter)) depth--;
    if (depth > 0 && !(letter === ',' && depth === 1)) continue;
    args.push(text.slice(start, i));
    start = i + 1;
    if (depth === 0) return { args: args.length === 1 && args[0]?.trim() === '' ? [] : args, end: i + 1 };
  }
  return undefined;
}
