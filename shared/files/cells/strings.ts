import type { Book } from '../share/book';
import { inlineText } from './cells';
import type { Package } from '../package/package';
import { bytesOf, find, LT, nameEnd, tagEnd } from '../package/xml';

/** The shared texts of a workbook: each cell of type s holds a number that counts into them. */
export class SharedStrings {
  /** From after <si> to its closing tag. */
  readonly spans: { readonly from: number; readonly to: number }[] = [];
  private readonly texts: (string | undefined)[] = [];

  constructor(readonly bytes: Uint8Array = bytesOf('')) {
    for (let lt = bytes.indexOf(LT); lt >= 0;) {
      const gt = tagEnd(bytes, lt + 1);
      const stop = nameEnd(bytes, lt + 1);
      const name = String.fromCharCode(...bytes.subarray(lt + 1, Math.min(stop, lt + 40)));
      if (/^(\w+:)?si$/.test(name)) {
        const isEmpty = bytes[gt - 1] === 0x2f;
        const close = isEmpty ? gt + 1 : find(bytes, `</${name}`, gt);
        if (close < 0) return;
        this.spans.push({ from: gt + 1, to: close });
        lt = bytes.indexOf(LT, close + (isEmpty ? 0 : 1));
      } else lt = bytes.indexOf(LT, gt);
    }
  }

  text(index: number): string {
    const span = this.spans[index];
    return (this.texts[index] ??= span ? inlineText(this.bytes, span.from, span.to) : '');
  }
}

export const sharedStrings = ({
  pack,
  book,
}: {
  readonly pack: Package;
  readonly book: Book;
}): SharedStrings => {
  const part = pack.related(book.part, 'sharedStrings')?.target;
  return new SharedStrings(part === undefined ? undefined : pack.read(part));
};

/**
 * Some control characters are written _x000D_; an underscore before that spelling is itself written _x005F_.
 */
export const plainControls = (text: string): string =>
  text.includes('_x')
    ? text.replace(/_x([\dA-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(parseInt(code, 16)))
    : text;
