import { ownName, storedName } from '../../spelling';
import type { FormulaPiece } from './lex';
import { lex, replacePieces } from './lex';

/** Which identifiers of a formula are calls of ours, in every spelling a file can hold. */

export interface OwnCall {
  readonly piece: FormulaPiece;
  /** As typed: SPAWN.BUFFER.DOSE. */
  readonly name: string;
}

/** Does a name of the workbook stand behind the word? SPAWN.X without a bracket may be one somebody gave to a cell. */
export type IsDefined = (piece: FormulaPiece) => boolean;

function ownCall(text: string, piece: FormulaPiece, isDefined: IsDefined | undefined): OwnCall | undefined {
  if (piece.kind !== 'call' && piece.kind !== 'name') return undefined;
  const own = ownName(text.slice(piece.at, piece.end));
  if (!own || (!own.isStored && piece.kind === 'name' && isDefined?.(piece))) return undefined;
  return { piece, name: own.name };
}

export const ownCalls = (
  text: string,
  pieces: readonly FormulaPiece[] = lex(text),
  isDefined?: IsDefined,
): OwnCall[] => pieces.map((piece) => ownCall(text, piece, isDefined)).filter((call) => call !== undefined);

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
export function repairedForm(text: string, isDefined?: IsDefined): string | undefined {
  const pieces = lex(text);
  const own = new Map(ownCalls(text, pieces, isDefined).map((call) => [call.piece, storedName(call.name)]));
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
