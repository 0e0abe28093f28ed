import { append } from '../../append';
import type { PackageBook, NameInfo } from '../../package/book';
import type { IsDefined } from './calls';
import { ownCalls } from './calls';
import type { FormulaPiece } from './lex';
import { lex } from './lex';

/**
 * Names of the workbook, and which of them end in a call of ours, directly, through LAMBDA or through other
 * names.
 */
export class NameTable {
  private readonly byKey = new Map<string, NameInfo>();
  private readonly sheetByName = new Map<string, number>();
  private readonly tainted = new Set<NameInfo>();
  /** The pieces of every name, read once. */
  readonly pieces: ReadonlyMap<NameInfo, readonly FormulaPiece[]>;

  constructor(book: Pick<PackageBook, 'names' | 'sheets'>) {
    for (const name of book.names) this.byKey.set(key(name.name, name.scope), name);
    for (const sheet of book.sheets) {
      const word = sheet.name.toLowerCase();
      if (!this.sheetByName.has(word)) this.sheetByName.set(word, sheet.index);
    }
    this.pieces = new Map(book.names.map((name) => [name, lex(name.text)]));
    this.taint(book.names);
  }

  /** A name that uses a tainted name is tainted: followed from user to user, each name once. */
  private taint(names: readonly NameInfo[]): void {
    const users = new Map<NameInfo, NameInfo[]>();
    const waiting: NameInfo[] = [];
    for (const name of names) {
      const pieces = this.pieces.get(name) ?? [];
      if (ownCalls(name.text, pieces, this.isDefinedFor(name.text, name.scope)).length > 0)
        waiting.push(name);
      for (const used of this.usedBy(name)) {
        const list = users.get(used);
        if (list) list.push(name);
        else users.set(used, [name]);
      }
    }
    for (let name = waiting.pop(); name; name = waiting.pop()) {
      if (this.tainted.has(name)) continue;
      this.tainted.add(name);
      append(waiting, users.get(name) ?? []);
    }
  }

  /** The names a name is made of. */
  usedBy(name: NameInfo): NameInfo[] {
    return (this.pieces.get(name) ?? []).flatMap((piece) =>
      piece.kind === 'name' || piece.kind === 'call' ? (this.find(name.text, piece, name.scope) ?? []) : [],
    );
  }

  isDefinedFor(text: string, scope: number | undefined): IsDefined {
    return (piece) => this.find(text, piece, scope) !== undefined;
  }
  sheetNamed(word: string): number | undefined {
    return this.sheetByName.get(word.toLowerCase());
  }

  get hasTainted(): boolean {
    return this.tainted.size > 0;
  }
  isTainted(name: NameInfo): boolean {
    return this.tainted.has(name);
  }

  /** The name that a piece of a formula on sheet `scope` means. */
  find(text: string, piece: FormulaPiece, scope: number | undefined): NameInfo | undefined {
    const word = text.slice(piece.at, piece.end).replace(/^(?:_xlfn\.|_xlpm\.)+/i, '');
    if (piece.from === piece.at)
      return this.byKey.get(key(word, scope)) ?? this.byKey.get(key(word, undefined));
    const sheet = this.sheetNamed(prefixSheet(text.slice(piece.from, piece.at)));
    return this.byKey.get(key(word, sheet)) ?? this.byKey.get(key(word, undefined));
  }

  /** Does the formula use a tainted name? */
  uses(text: string, pieces: readonly FormulaPiece[], scope: number | undefined): boolean {
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
