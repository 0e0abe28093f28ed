import { serialOfIsoMoment } from '../../units/dates';
import { strFromU8 } from 'fflate';
import { parseArea } from '../../sheet/formula/address';
import { shifted } from '../../files/formulas';
import { revealCellText, unescapeXml } from '../../files/text';
import type { Cell, ErrorCode } from '../../base/values';
import type { SheetBuilder } from './sheetCells';

/** What the cells of a file need to be understood. */
export interface CellContext {
  readonly texts: readonly string[];
  /** By style number: does its format show a date? */
  readonly dateStyles: readonly boolean[];
  readonly is1904: boolean;
}

/** Days between the two ways of counting dates. */
const DAYS_1904 = 1462;
const CELLS_PER_STEP = 40_000;
const KNOWN_ERRORS = new Set<string>([
  '#VALUE!',
  '#N/A',
  '#NUM!',
  '#DIV/0!',
  '#REF!',
  '#NAME?',
  '#NULL!',
  '#SPILL!',
  '#CALC!',
  '#BUSY!',
]);
const [LT, GT, SLASH, COLON, EQUALS, SPACE, BANG, QUERY] = [0x3c, 0x3e, 0x2f, 0x3a, 0x3d, 0x20, 0x21, 0x3f];
const POWERS = Array.from({ length: 23 }, (_, i) => 10 ** i);

export class BadCells extends Error {}

const text = (bytes: Uint8Array, from: number, to: number): string => {
  if (to - from > 24) return strFromU8(bytes.subarray(from, to));
  let out = '';
  for (let i = from; i < to; i++) {
    const byte = bytes[i] ?? 0;
    if (byte > 127) return strFromU8(bytes.subarray(from, to));
    out += String.fromCharCode(byte);
  }
  return out;
};

const longNumber = (bytes: Uint8Array, from: number, to: number): number =>
  Number(text(bytes, from, to).trim() || NaN);

/**
 * A number as files write it. Up to 15 digits are exact as digits ÷ power of ten; anything else goes the long
 * way.
 */
function number(bytes: Uint8Array, from: number, to: number): number {
  const isNegative = bytes[from] === 0x2d;
  const start = isNegative ? from + 1 : from;
  let mantissa = 0;
  let point = -1;
  if (to - start > 16 || start >= to) return longNumber(bytes, from, to);
  for (let i = start; i < to; i++) {
    const byte = bytes[i] ?? 0;
    if (byte >= 0x30 && byte <= 0x39) mantissa = mantissa * 10 + byte - 0x30;
    else if (byte === 0x2e && point < 0) point = i;
    else return longNumber(bytes, from, to);
  }
  const value = point < 0 ? mantissa : mantissa / (POWERS[to - point - 1] ?? NaN);
  return isNegative ? -value : value;
}

interface Draft {
  type: string;
  style: number;
  formula: string | undefined;
  shared: string | undefined;
  from: number;
  to: number;
  inline: string | undefined;
}

/** Reads the cells of one worksheet part, front to back, straight from its bytes. */
export class CellScanner {
  private at = 0;
  private row = -1;
  private column = -1;
  private readonly draft: Draft = {
    type: '',
    style: 0,
    formula: undefined,
    shared: undefined,
    from: -1,
    to: -1,
    inline: undefined,
  };
  private readonly shared = new Map<
    string,
    { readonly formula: string; readonly row: number; readonly column: number }
  >();

  constructor(
    private readonly bytes: Uint8Array,
    private readonly context: CellContext,
    private readonly into: SheetBuilder,
  ) {}

  /** Yields the share of the part read so far. */
  *run(): Generator<number, void> {
    let cells = 0;
    for (let name = this.tag(); name !== ''; name = this.tag()) {
      if (name === 'row') this.readRow();
      else if (name === 'c') {
        this.readCell();
        if (++cells % CELLS_PER_STEP === 0) yield this.at / this.bytes.length;
      } else if (name === 'mergeCell') this.readMerge();
      else this.skipTag();
    }
  }

  /**
   * Goes to after the name of the next opening tag; '' at the end. Closing tags, comments and declarations
   * are passed over.
   */
  private tag(): string {
    const { bytes } = this;
    for (;;) {
      const lt = bytes.indexOf(LT, this.at);
      if (lt < 0) return '';
      const next = bytes[lt + 1];
      if (next === BANG || next === QUERY) {
        this.at = this.special(lt);
        continue;
      }
      if (next === SLASH) {
        this.at = lt + 2;
        continue;
      }
      return this.name(lt + 1);
    }
  }

  private name(from: number): string {
    const { bytes } = this;
    let start = from;
    let i = from;
    for (; i < bytes.length; i++) {
      const byte = bytes[i] ?? 0;
      if (byte === COLON) start = i + 1;
      else if (byte <= SPACE || byte === GT || byte === SLASH) break;
    }
    this.at = i;
    if (i - start === 1 && bytes[start] === 0x63) return 'c';
    return text(bytes, start, i);
  }

  private special(lt: number): number {
    const { bytes } = this;
    const isComment = bytes[lt + 1] === BANG && bytes[lt + 2] === 0x2d;
    if (bytes[lt + 1] === BANG && !isComment && bytes[lt + 2] !== 0x5b)
      throw new BadCells('it declares a document type');
    const end = bytes[lt + 1] === QUERY ? [QUERY, GT] : isComment ? [0x2d, 0x2d, GT] : [0x5d, 0x5d, GT];
    for (let at = bytes.indexOf(end[0] ?? 0, lt + 2); at >= 0; at = bytes.indexOf(end[0] ?? 0, at + 1))
      if (end.every((byte, i) => bytes[at + i] === byte)) return at + end.length;
    throw new BadCells('a comment does not end');
  }

  /**
   * Shows every attribute of the tag at hand (places of its name and value) and passes its >. TRUE when the
   * tag is empty.
   */
  private attribute(visit: (name: number, width: number, from: number, to: number) => void): boolean {
    const { bytes } = this;
    for (let i = this.at; i < bytes.length;) {
      const byte = bytes[i] ?? 0;
      if (byte === GT) {
        this.at = i + 1;
        return bytes[i - 1] === SLASH;
      }
      i = byte <= SPACE || byte === SLASH ? i + 1 : this.oneAttribute(i, visit);
    }
    throw new BadCells('a tag is not closed');
  }

  private oneAttribute(
    start: number,
    visit: (name: number, width: number, from: number, to: number) => void,
  ): number {
    const { bytes } = this;
    let name = start;
    let i = start;
    for (; bytes[i] !== EQUALS; i++) {
      if (bytes[i] === COLON) name = i + 1;
      if (i >= bytes.length || bytes[i] === GT) throw new BadCells('a tag is not closed');
    }
    const width = i - name;
    i++;
    while ((bytes[i] ?? 0) <= SPACE && i < bytes.length) i++;
    const close = bytes.indexOf(bytes[i] ?? 0, i + 1);
    if (close < 0) throw new BadCells('a tag is not closed');
    visit(name, width, i + 1, close);
    return close + 1;
  }

  private skipTag(): boolean {
    return this.attribute(() => undefined);
  }

  private readRow(): void {
    this.row++;
    this.column = -1;
    this.attribute((name, width, from, to) => {
      if (width === 1 && this.bytes[name] === 0x72) this.row = number(this.bytes, from, to) - 1;
    });
  }

  private readMerge(): void {
    this.attribute((name, width, from, to) => {
      const area =
        width === 3 && this.bytes[name] === 0x72 ? parseArea(text(this.bytes, from, to)) : undefined;
      if (area) this.into.merges.push(area);
    });
  }

  private readonly cellAttribute = (name: number, width: number, from: number, to: number): void => {
    if (width !== 1) return;
    const letter = this.bytes[name];
    if (letter === 0x72) this.readPlace(from, to);
    else if (letter === 0x73) this.draft.style = number(this.bytes, from, to);
    else if (letter === 0x74) this.draft.type = text(this.bytes, from, to);
  };

  private readPlace(from: number, to: number): void {
    let column = 0;
    let row = 0;
    for (let i = from; i < to; i++) {
      const byte = this.bytes[i] ?? 0;
      if (byte >= 0x41) column = column * 26 + (byte & 0x1f);
      else row = row * 10 + byte - 0x30;
    }
    if (!(column >= 1 && column <= 16_384 && row >= 1 && row <= 1_048_576))
      throw new BadCells('a cell has no place');
    this.column = column - 1;
    this.row = row - 1;
  }

  private readCell(): void {
    const { draft } = this;
    this.column++;
    draft.type = 'n';
    draft.style = 0;
    draft.formula = draft.shared = draft.inline = undefined;
    draft.from = -1;
    if (this.attribute(this.cellAttribute)) return;
    this.readContent();
    const value = this.value();
    const formula = this.formula();
    if (value !== null || formula !== undefined)
      this.into.put(
        Math.max(this.row, 0),
        this.column,
        value,
        this.context.dateStyles[draft.style] ?? false,
        formula,
      );
  }

  private readContent(): void {
    const { bytes, draft } = this;
    for (;;) {
      const lt = bytes.indexOf(LT, this.at);
      if (lt < 0) throw new BadCells('a cell is not closed');
      const next = bytes[lt + 1];
      if (next === BANG || next === QUERY) {
        this.at = this.special(lt);
        continue;
      }
      if (next === SLASH) {
        this.at = bytes.indexOf(GT, lt) + 1;
        if (this.closes(lt + 2, 0x63)) return;
        continue;
      }
      const name = this.name(lt + 1);
      if (name === 'f') this.readFormula();
      else if (name === 'v') {
        if (!this.skipTag()) {
          draft.from = this.at;
          draft.to = this.textEnd();
        }
      } else if (name === 'is') {
        if (!this.skipTag()) draft.inline = this.readInline();
      } else this.skipTag();
    }
  }

  private closes(from: number, letter: number): boolean {
    const end = this.at - 1;
    return this.bytes[end - 1] === letter && (end - from === 1 || this.bytes[end - 2] === COLON);
  }

  /** End of the text that starts here: the next closing tag. */
  private textEnd(): number {
    const { bytes } = this;
    let lt = bytes.indexOf(LT, this.at);
    while (lt >= 0 && bytes[lt + 1] !== SLASH) lt = bytes.indexOf(LT, this.special(lt));
    if (lt < 0) throw new BadCells('a value is not closed');
    this.at = lt;
    return lt;
  }

  private readFormula(): void {
    const { bytes, draft } = this;
    let kind = '';
    let number = '';
    const isEmpty = this.attribute((name, width, from, to) => {
      if (width === 1 && bytes[name] === 0x74) kind = text(bytes, from, to);
      else if (width === 2 && bytes[name] === 0x73) number = text(bytes, from, to);
    });
    const from = this.at;
    const body = isEmpty ? '' : plain(text(bytes, from, this.textEnd()));
    draft.formula = kind === 'dataTable' ? undefined : body;
    draft.shared = kind === 'shared' ? number : undefined;
  }

  private readInline(): string {
    const { bytes } = this;
    const from = this.at;
    for (let lt = bytes.indexOf(LT, from); lt >= 0; lt = bytes.indexOf(LT, lt + 1)) {
      this.at = bytes.indexOf(GT, lt) + 1;
      if (bytes[lt + 1] === SLASH && (bytes[this.at - 3] ?? 0) === 0x69 && bytes[this.at - 2] === 0x73)
        return inlineText(strFromU8(bytes.subarray(from, lt)));
    }
    throw new BadCells('a text is not closed');
  }

  private value(): Cell {
    const { bytes, draft, context } = this;
    if (draft.inline !== undefined) return revealCellText(draft.inline);
    if (draft.from < 0) return draft.type === 'str' && draft.formula !== undefined ? '' : null;
    if (draft.type === 's') return context.texts[number(bytes, draft.from, draft.to)] ?? null;
    if (draft.type === 'n') {
      const value = number(bytes, draft.from, draft.to);
      return Number.isFinite(value)
        ? value + (context.is1904 && context.dateStyles[draft.style] ? DAYS_1904 : 0)
        : null;
    }
    return valueOfType(draft.type, plain(text(bytes, draft.from, draft.to)));
  }

  /** Only the first cell of a shared formula holds its text; the others read it from where they stand. */
  private formula(): string | undefined {
    const { draft, row, column } = this;
    if (draft.formula === undefined) return undefined;
    if (draft.shared === undefined) return draft.formula === '' ? undefined : `=${draft.formula}`;
    if (draft.formula !== '') {
      this.shared.set(draft.shared, { formula: `=${draft.formula}`, row, column });
      return `=${draft.formula}`;
    }
    const first = this.shared.get(draft.shared);
    return first && shifted(first.formula, row - first.row, column - first.column);
  }
}

function valueOfType(type: string, raw: string): Cell {
  if (type === 'str') return revealCellText(raw);
  if (type === 'b') return raw === '1' || raw === 'true';
  if (type === 'e') return { error: (KNOWN_ERRORS.has(raw) ? raw : '#VALUE!') as ErrorCode };
  if (type === 'd') return serialOfIsoMoment(raw) ?? raw;
  return raw;
}

/** Character data: comments dropped, CDATA taken as it is, entities resolved. */
const plain = (raw: string): string =>
  raw.includes('<')
    ? raw
        .split(/(<!\[CDATA\[[^]*?\]\]>|<!--[^]*?-->)/)
        .map((piece) =>
          piece.startsWith('<![CDATA[')
            ? piece.slice(9, -3)
            : piece.startsWith('<!--')
              ? ''
              : unescapeXml(piece),
        )
        .join('')
    : unescapeXml(raw);

/** The text of <t> elements; phonetic hints are no part of it. */
const inlineText = (raw: string): string =>
  [
    ...raw
      .replace(/<(\w+:)?rPh\b[^]*?<\/(\w+:)?rPh>/g, '')
      .matchAll(/<(?:\w+:)?t(?:\s[^>]*)?>([^]*?)<\/(?:\w+:)?t>/g),
  ]
    .map((match) => plain(match[1] ?? ''))
    .join('');
