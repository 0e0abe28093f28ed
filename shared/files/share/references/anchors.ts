import type { Area } from '../../../sheet/formula/address';
import { addressOf, parseAddress } from '../../../sheet/formula/address';
import type { PackageBook } from '../../package/book';
import type { FormulaPiece } from './lex';
import type { NameTable } from './names';
import { prefixSheet } from './names';

/**
 * A spilled range is written as ANCHORARRAY(E4); once E4 is a plain value that would be #REF!, so it becomes
 * the range itself.
 */

export const isSpillReference = (text: string, pieces: readonly FormulaPiece[]): boolean =>
  pieces.some((piece) => piece.kind === 'call' && isAnchorWord(text, piece));
const isAnchorWord = (text: string, piece: FormulaPiece): boolean =>
  /^(?:_xlfn\.)?ANCHORARRAY$/i.test(text.slice(piece.at, piece.end));

export class Spills {
  private readonly bySheet = new Map<number, Map<string, Area>>();
  constructor(
    private readonly book: Pick<PackageBook, 'sheets'>,
    private readonly names: NameTable,
  ) {}

  add(sheet: number, area: Area): void {
    const known = this.bySheet.get(sheet) ?? new Map<string, Area>();
    known.set(addressOf(area.top, area.left), area);
    this.bySheet.set(sheet, known);
  }
  get isEmpty(): boolean {
    return this.bySheet.size === 0;
  }

  private areaOf(prefix: string, anchor: string, sheet: number | undefined): Area | undefined {
    const place = parseAddress(anchor);
    const index = prefix
      ? this.book.sheets.find((one) => one.name.toLowerCase() === prefixSheet(prefix).toLowerCase())?.index
      : sheet;
    return place && index !== undefined
      ? this.bySheet.get(index)?.get(addressOf(place.row, place.column))
      : undefined;
  }

  /**
   * The formula with ranges in place of the spills that are values now; undefined when one of them cannot be
   * told.
   */
  rewrite(text: string, pieces: readonly FormulaPiece[], sheet: number | undefined): string | undefined {
    let out = '';
    let at = 0;
    for (const [i, piece] of pieces.entries()) {
      if (piece.kind !== 'call' || !isAnchorWord(text, piece)) continue;
      const inner = pieces[i + 1];
      const close = inner ? /^\s*\)/.exec(text.slice(inner.end)) : null;
      if (!inner || !close || !/^\s*\(\s*$/.test(text.slice(piece.end, inner.from))) return undefined;
      const range = this.range(text, inner, sheet);
      if (range === undefined) return undefined;
      if (range === '') continue;
      out += text.slice(at, piece.from) + range;
      at = inner.end + close[0].length;
    }
    return out + text.slice(at);
  }

  /** '' when the anchor is no frozen one and stays; undefined when what it means cannot be told. */
  private range(text: string, inner: FormulaPiece, sheet: number | undefined): string | undefined {
    if (inner.kind === 'name') {
      const name = this.names.find(text, inner, sheet);
      const [only, more] = (name && this.names.pieces.get(name)) ?? [];
      return name && only && !more && only.kind === 'cell' && only.end === name.text.length
        ? this.range(name.text, only, undefined)
        : undefined;
    }
    if (inner.kind !== 'cell') return undefined;
    const prefix = text.slice(inner.from, inner.at);
    const anchor = text.slice(inner.at, inner.end);
    if (!prefix && sheet === undefined) return undefined;
    const area = this.areaOf(prefix, anchor, sheet);
    return area ? prefix + spread(anchor, area) : '';
  }
}

/** $E$4 and its area → $E$4:$E$8, with the locks of the anchor. */
function spread(anchor: string, area: Area): string {
  if (area.top === area.bottom && area.left === area.right) return anchor;
  const [, columnLock = '', , rowLock = ''] = /^(\$?)([A-Za-z]+)(\$?)/.exec(anchor) ?? [];
  const [, letters = '', digits = ''] = /^([A-Z]+)(\d+)$/.exec(addressOf(area.bottom, area.right)) ?? [];
  return `${anchor}:${columnLock}${letters}${rowLock}${digits}`;
}
