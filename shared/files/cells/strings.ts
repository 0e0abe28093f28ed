import type { PackageBook } from '../package/book';
import { inlineText } from './stored';
import type { Package } from '../package/package';
import { bytesOf, Markup } from '../package/xml';

/** The shared texts of a workbook: each cell of type s holds a number that counts into them. */
export class SharedStrings {
  /** From after <si> to its closing tag. */
  readonly spans: { readonly from: number; readonly to: number }[] = [];
  private readonly texts: (string | undefined)[] = [];

  constructor(readonly bytes: Uint8Array = bytesOf('')) {
    const markup = new Markup(bytes);
    let from = -1;
    while (markup.next()) {
      if (!markup.isNamed('si')) continue;
      if (markup.isEmpty) this.spans.push({ from: markup.at, to: markup.at });
      else if (!markup.isClosing) from = markup.at;
      else if (from >= 0) {
        this.spans.push({ from, to: markup.start });
        from = -1;
      }
    }
  }

  /** As stored: _x000D_ and its like are not yet turned into what they stand for. */
  text(index: number): string {
    const span = this.spans[index];
    return (this.texts[index] ??= span ? inlineText(this.bytes, span.from, span.to) : '');
  }
  has(index: number): boolean {
    return this.spans[index] !== undefined;
  }
}

export const sharedStrings = ({
  pack,
  book,
}: {
  readonly pack: Package;
  readonly book: PackageBook;
}): SharedStrings => {
  const part = pack.related(book.part, 'sharedStrings')?.target;
  return new SharedStrings(part === undefined ? undefined : pack.read(part));
};
