import type { Area, Place } from '../../../sheet/formula/address';
import { parseArea } from '../../../sheet/formula/address';
import type { Book } from '../book';
import type { Piece } from './lex';
import { lex } from './lex';
import type { NameTable } from './names';
import { prefixSheet } from './names';
import type { TableInfo } from './tables';
import { tableArea } from './tables';

export interface Reference {
  readonly sheet: number;
  readonly area: Area;
}

export interface References {
  readonly found: readonly Reference[];
  /** Something could not be told: a 3-D reference, INDIRECT, a table spelled in a rare way. */
  readonly isUnsure: boolean;
}

const MAX_DEPTH = 8;

/** Which cells a formula reads, through names and tables too. */
export class ReferenceFinder {
  constructor(
    private readonly book: Pick<Book, 'sheets'>,
    private readonly names: NameTable,
    private readonly tables: readonly TableInfo[],
  ) {}

  of(
    text: string,
    pieces: readonly Piece[],
    sheet: number | undefined,
    place: Place | undefined,
    depth = 0,
  ): References {
    const read = pieces.map((piece) => this.piece(text, piece, sheet, place, depth));
    return {
      found: read.flatMap((one) => one.found),
      isUnsure: /\b(?:INDIRECT|OFFSET)\(/i.test(text) || read.some((one) => one.isUnsure),
    };
  }

  private piece(
    text: string,
    piece: Piece,
    sheet: number | undefined,
    place: Place | undefined,
    depth: number,
  ): References {
    if (piece.kind === 'cell' || piece.kind === 'area') {
      const area = parseArea(text.slice(piece.at, piece.end));
      return {
        found: area
          ? this.sheetsOf(text.slice(piece.from, piece.at), sheet).map((one) => ({ sheet: one, area }))
          : [],
        isUnsure: false,
      };
    }
    if (piece.kind === 'table') {
      const one = tableArea(
        this.tables,
        this.fullTable(text.slice(piece.from, piece.end), sheet, place),
        place?.row ?? 0,
      );
      return { found: one ? [one] : [], isUnsure: !one };
    }
    const name =
      (piece.kind === 'name' || piece.kind === 'call') && depth < MAX_DEPTH
        ? this.names.find(text, piece, sheet)
        : undefined;
    return name
      ? this.of(name.text, lex(name.text), name.scope ?? sheet, place, depth + 1)
      : { found: [], isUnsure: false };
  }

  /** [@Column] inside a table means that table. */
  private fullTable(text: string, sheet: number | undefined, place: Place | undefined): string {
    if (!text.startsWith('[') || !place) return text;
    const table = this.tables.find(
      (one) =>
        one.sheet === sheet &&
        place.row >= one.area.top &&
        place.row <= one.area.bottom &&
        place.column >= one.area.left &&
        place.column <= one.area.right,
    );
    return table ? table.name + text : text;
  }

  /** One sheet, or the run of sheets of a 3-D reference; none when the prefix names another file. */
  private sheetsOf(prefix: string, own: number | undefined): number[] {
    if (prefix === '') return own === undefined ? [] : [own];
    const name = prefixSheet(prefix).toLowerCase();
    const index = (one: string): number =>
      this.book.sheets.findIndex((sheet) => sheet.name.toLowerCase() === one);
    const single = index(name);
    if (single >= 0) return [single];
    const [from = '', to = ''] = name.split(':');
    const [a, b] = [index(from), index(to)];
    return a >= 0 && b >= a ? Array.from({ length: b - a + 1 }, (_, i) => a + i) : [];
  }
}

export const overlaps = (a: Area, b: Area): boolean =>
  a.top <= b.bottom && b.top <= a.bottom && a.left <= b.right && b.left <= a.right;
