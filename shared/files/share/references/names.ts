import type { Book, NameInfo } from '../book';
import { ownCalls } from './calls';
import type { Piece } from './lex';
import { lex } from './lex';

/**
 * Names of the workbook, and which of them end in a call of ours, directly, through LAMBDA or through other
 * names.
 */
export class NameTable {
  private readonly byKey = new Map<string, NameInfo>();
  private readonly tainted = new Set<NameInfo>();

  constructor(
    private readonly book: Pick<Book, 'names' | 'sheets'>,
    taints: (text: string, scope: number | undefined) => boolean = (text) => ownCalls(text).length > 0,
  ) {
    for (const name of book.names) this.byKey.set(key(name.name, name.scope), name);
    for (const name of book.names) if (taints(name.text, name.scope)) this.tainted.add(name);
    const pieces = new Map(book.names.map((name) => [name, lex(name.text)]));
    // A name that uses a tainted name is tainted; repeated until nothing changes, so chains of any length and
    // circles are fine.
    for (let grew = this.tainted.size > 0; grew;) {
      grew = false;
      for (const name of book.names) {
        if (this.tainted.has(name) || !this.uses(name.text, pieces.get(name) ?? [], name.scope)) continue;
        this.tainted.add(name);
        grew = true;
      }
    }
  }

  get hasTainted(): boolean {
    return this.tainted.size > 0;
  }
  isTainted(name: NameInfo): boolean {
    return this.tainted.has(name);
  }

  /** The name that a piece of a formula on sheet `scope` means. */
  find(text: string, piece: Piece, scope: number | undefined): NameInfo | undefined {
    const word = text.slice(piece.at, piece.end).replace(/^(?:_xlfn\.|_xlpm\.)+/i, '');
    if (piece.from === piece.at)
      return this.byKey.get(key(word, scope)) ?? this.byKey.get(key(word, undefined));
    const sheet = this.book.sheets.find(
      (one) => one.name.toLowerCase() === prefixSheet(text.slice(piece.from, piece.at)).toLowerCase(),
    );
    return this.byKey.get(key(word, sheet?.index)) ?? this.byKey.get(key(word, undefined));
  }

  /** Does the formula use a tainted name? */
  uses(text: string, pieces: readonly Piece[], scope: number | undefined): boolean {
    return (
      this.tainted.size > 0 &&
      pieces.some((piece) => {
        if (piece.kind !== 'name' && piece.kind !== 'call') return false;
        const name = this.find(text, piece, scope);
        return name !== undefined && this.tainted.has(name);
      })
    );
  }
}

const key = (name: string, scope: number | undefined): string => `${scope ?? ''}|${name.toLowerCase()}`;

/** 'My sheet'! → My sheet. */
export const prefixSheet = (prefix: string): string => {
  const bare = prefix.replace(/!$/, '');
  return bare.startsWith("'") ? bare.slice(1, -1).replaceAll("''", "'") : bare;
};
