import type { Area, CellPlace } from '../../../sheet/formula/address';
import { parseArea } from '../../../sheet/formula/address';
import type { NameInfo } from '../../package/book';
import type { FormulaPiece } from './lex';
import { moveReference } from './lex';
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
  /** Something could not be told: INDIRECT, OFFSET, a corner that is worked out, a table spelled in a rare way. */
  readonly isUnsure: boolean;
}

const UNTOLD = /^(?:_xlfn\.|_xlws\.)*(?:INDIRECT|OFFSET|EVALUATE|CALL|REGISTER\.ID)$/i;
/** References that names may lead to before their reach counts as untold. */
const MOST_OF_NAMES = 5_000;

/** A reference as a name holds it; relative ones move with the cell that uses the name. */
interface Held {
  readonly sheets: readonly number[];
  /** -1 in `sheets` stands for the sheet that asks. */
  readonly text: string;
  readonly area: Area;
  readonly isRelative: boolean;
}
interface Reach {
  readonly held: readonly Held[];
  readonly isUnsure: boolean;
}

/** Which cells a formula reads, through names and tables too. */
export class ReferenceFinder {
  private readonly direct = new Map<NameInfo, Reach>();
  private readonly reaches = new Map<NameInfo, Reach>();

  constructor(
    private readonly names: NameTable,
    private readonly tables: readonly TableInfo[],
  ) {}

  of(
    text: string,
    pieces: readonly FormulaPiece[],
    sheet: number | undefined,
    place: CellPlace | undefined,
  ): References {
    const found: Reference[] = [];
    let isUnsure = hasOpenCorner(text, pieces);
    for (const piece of pieces) {
      const read = this.piece(text, piece, sheet, place);
      found.push(...read.found);
      isUnsure ||= read.isUnsure;
    }
    return { found, isUnsure };
  }

  /** What one piece of a formula reads. */
  piece(
    text: string,
    piece: FormulaPiece,
    sheet: number | undefined,
    place: CellPlace | undefined,
  ): References {
    if (piece.kind === 'cell' || piece.kind === 'area') {
      const area = parseArea(text.slice(piece.at, piece.end));
      const sheets = this.sheetsOf(text.slice(piece.from, piece.at), sheet);
      return { found: area ? sheets.map((one) => ({ sheet: one, area })) : [], isUnsure: false };
    }
    if (piece.kind === 'table') {
      const word = this.fullTable(text.slice(piece.from, piece.end), sheet, place);
      const one = tableArea(this.tables, word, place?.row ?? 0);
      return { found: one ? [one] : [], isUnsure: !one };
    }
    return piece.kind === 'name' || piece.kind === 'call' ? this.word(text, piece, sheet, place) : NOTHING;
  }

  private word(
    text: string,
    piece: FormulaPiece,
    sheet: number | undefined,
    place: CellPlace | undefined,
  ): References {
    const table = piece.kind === 'name' ? this.wholeTable(text.slice(piece.at, piece.end)) : undefined;
    if (table) return { found: [table], isUnsure: false };
    const name = this.names.find(text, piece, sheet);
    if (name) return this.through(name, sheet, place);
    return piece.kind === 'call' && UNTOLD.test(text.slice(piece.at, piece.end)) ? UNSURE : NOTHING;
  }

  private through(name: NameInfo, sheet: number | undefined, place: CellPlace | undefined): References {
    const { held, isUnsure } = this.reachOf(name);
    const found = held.flatMap(({ sheets, text, area, isRelative }) => {
      const moved = isRelative && place ? parseArea(moveReference(text, place.row, place.column)) : area;
      return moved
        ? sheets
            .map((one) => (one < 0 ? sheet : one))
            .filter((one) => one !== undefined)
            .map((one) => ({ sheet: one, area: moved }))
        : [];
    });
    return { found, isUnsure };
  }

  /** Everything a name leads to, through other names; each name is looked at once, so circles are fine. */
  private reachOf(name: NameInfo): Reach {
    const known = this.reaches.get(name);
    if (known) return known;
    const seen = new Set<NameInfo>([name]);
    const waiting = [name];
    const held: Held[] = [];
    let isUnsure = false;
    for (let one = waiting.pop(); one && held.length <= MOST_OF_NAMES; one = waiting.pop()) {
      const own = this.directOf(one);
      held.push(...own.held.slice(0, MOST_OF_NAMES + 1));
      isUnsure ||= own.isUnsure;
      for (const next of this.names.usedBy(one))
        if (!seen.has(next)) {
          seen.add(next);
          waiting.push(next);
        }
    }
    const reach = held.length > MOST_OF_NAMES ? { held: [], isUnsure: true } : { held, isUnsure };
    this.reaches.set(name, reach);
    return reach;
  }

  private directOf(name: NameInfo): Reach {
    const known = this.direct.get(name);
    if (known) return known;
    const { text, scope } = name;
    const pieces = this.names.pieces.get(name) ?? [];
    let isUnsure = hasOpenCorner(text, pieces);
    const held = new Map<string, Held>();
    for (const piece of pieces) {
      if (piece.kind === 'cell' || piece.kind === 'area') {
        const word = text.slice(piece.at, piece.end);
        const area = parseArea(word);
        const sheets = this.sheetsOf(text.slice(piece.from, piece.at), scope ?? -1);
        if (area)
          held.set(text.slice(piece.from, piece.end), {
            sheets,
            text: word,
            area,
            isRelative: isRelative(word),
          });
      } else if (piece.kind === 'table' || piece.kind === 'call' || piece.kind === 'name') {
        if (this.names.find(text, piece, scope)) continue;
        const read = this.piece(text, piece, scope, undefined);
        isUnsure ||= read.isUnsure;
        for (const { sheet, area } of read.found)
          held.set(`${piece.at}`, { sheets: [sheet], text: '', area, isRelative: false });
      }
    }
    const reach = { held: [...held.values()], isUnsure };
    this.direct.set(name, reach);
    return reach;
  }

  /** Table alone means its data. */
  private wholeTable(word: string): Reference | undefined {
    const table = this.tables.find((one) => one.name.toLowerCase() === word.toLowerCase());
    return table && { sheet: table.sheet, area: { ...table.area, top: table.top, bottom: table.bottom } };
  }

  /** [@Column] inside a table means that table. */
  private fullTable(text: string, sheet: number | undefined, place: CellPlace | undefined): string {
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
    const name = prefixSheet(prefix.replace(/^('?)\[0\]/, '$1'));
    const single = this.names.sheetNamed(name);
    if (single !== undefined) return [single];
    const [from = '', to = ''] = name.split(':');
    const [a, b] = [this.names.sheetNamed(from), this.names.sheetNamed(to)];
    return a !== undefined && b !== undefined && b >= a
      ? Array.from({ length: b - a + 1 }, (_, i) => a + i)
      : [];
  }
}

const NOTHING: References = { found: [], isUnsure: false };
const UNSURE: References = { found: [], isUnsure: true };

const isRelative = (word: string): boolean =>
  word.split(':').some((corner) => !/^\$[A-Za-z]+\$\d+$|^\$[A-Za-z]+$|^\$\d+$/.test(corner));

/** A colon between two pieces joins corners of which one is worked out: A1:INDEX(…). */
export function hasOpenCorner(text: string, pieces: readonly FormulaPiece[]): boolean {
  let at = 0;
  for (const piece of pieces) {
    if (text.slice(at, piece.from).includes(':')) return true;
    at = piece.end;
  }
  return text.includes(':', at);
}
