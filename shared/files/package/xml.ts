// Long: one walker over bytes; its state is shared by every step.
import { strFromU8, strToU8 } from 'fflate';
import { unescapeXml } from '../text';
import { REFUSED, Refusal } from './refusal';

/**
 * XML as bytes: elements know where they stand, so that an edit replaces exactly what it means to and nothing
 * else moves.
 */

export interface Element {
  /** Without namespace prefix. */
  readonly name: string;
  /** With its colon, '' when there is none. */
  readonly prefix: string;
  readonly start: number;
  /** After the > of the opening tag. */
  readonly openEnd: number;
  closeStart: number;
  end: number;
  readonly parent: Element | undefined;
  readonly children: Element[];
}

export interface Attribute {
  /** As written, prefix included. */
  readonly name: string;
  readonly value: string;
  /** From the blank before it to after its closing quote. */
  readonly start: number;
  readonly end: number;
  readonly valueStart: number;
  readonly valueEnd: number;
}

export const LT = 0x3c;
export const GT = 0x3e;
const SLASH = 0x2f;
const BANG = 0x21;
const QUERY = 0x3f;
const COLON = 0x3a;
const EQUALS = 0x3d;
const MAX_DEPTH = 120;

export const isBlankByte = (byte: number | undefined): boolean =>
  byte === 0x20 || byte === 0x0a || byte === 0x0d || byte === 0x09;

export function rawText(bytes: Uint8Array, from: number, to: number): string {
  const part = bytes.subarray(from, to);
  for (let i = from; i < to; i++) if ((bytes[i] ?? 0) > 127) return strFromU8(part);
  return strFromU8(part, true);
}
export const bytesOf = (text: string): Uint8Array => strToU8(text);

/** Character data between two places: comments dropped, CDATA taken as it is, entities resolved. */
export const textBetween = (bytes: Uint8Array, from: number, to: number): string =>
  plainText(rawText(bytes, from, to));

export function plainText(raw: string): string {
  if (!raw.includes('<')) return unescapeXml(raw);
  return raw
    .split(/(<!\[CDATA\[[^]*?\]\]>|<!--[^]*?-->)/)
    .map((piece) =>
      piece.startsWith('<![CDATA[')
        ? piece.slice(9, -3)
        : piece.startsWith('<!--')
          ? ''
          : unescapeXml(piece.replace(/<[^>]*>/g, '')),
    )
    .join('');
}

export const textOf = (bytes: Uint8Array, element: Element): string =>
  textBetween(bytes, element.openEnd, element.closeStart);

export function find(bytes: Uint8Array, what: string, from: number): number {
  const first = what.charCodeAt(0);
  for (let at = bytes.indexOf(first, from); at >= 0; at = bytes.indexOf(first, at + 1)) {
    let i = 1;
    while (i < what.length && bytes[at + i] === what.charCodeAt(i)) i++;
    if (i === what.length) return at;
  }
  return -1;
}

const broken = (what: string): Refusal => new Refusal(REFUSED.damaged(what));

/** After the markup that starts with <! or <? at `at`. */
export function skipSpecial(bytes: Uint8Array, at: number): number {
  const close =
    bytes[at + 1] === QUERY
      ? '?>'
      : bytes[at + 2] === 0x2d
        ? '-->'
        : bytes[at + 2] === 0x5b
          ? ']]>'
          : undefined;
  if (close === undefined) throw new Refusal(REFUSED.doctype);
  const end = find(bytes, close, at + 2);
  if (end < 0) throw broken('a comment does not end');
  return end + close.length;
}

/** Index of the > that ends the tag; a > inside quotes does not count. */
export function tagEnd(bytes: Uint8Array, at: number): number {
  for (let i = at; i < bytes.length; i++) {
    const byte = bytes[i];
    if (byte === GT) return i;
    if (byte === 0x22 || byte === 0x27) {
      i = bytes.indexOf(byte, i + 1);
      if (i < 0) break;
    } else if (byte === LT && i > at) break;
  }
  throw broken('a tag does not end');
}

export function nameEnd(bytes: Uint8Array, from: number): number {
  let i = from;
  while (i < bytes.length && bytes[i] !== GT && bytes[i] !== SLASH && !isBlankByte(bytes[i])) i++;
  return i;
}

/**
 * The tags of a part, one after another; comments, declarations and CDATA are passed over. Every reader of XML
 * walks with this, the cells of a sheet apart (see cells/cells.ts).
 */
export class Markup {
  /** Where the next search starts; after the tag at hand. */
  at = 0;
  /** The < of the tag at hand. */
  start = -1;
  /** Its name, with and without prefix. */
  prefixStart = -1;
  nameStart = -1;
  nameStop = -1;
  /** Its >. */
  gt = -1;
  isClosing = false;
  isEmpty = false;
  constructor(readonly bytes: Uint8Array) {}

  /** Goes to the next tag; FALSE at the end of the part. */
  next(): boolean {
    const { bytes } = this;
    for (;;) {
      const lt = bytes.indexOf(LT, this.at);
      if (lt < 0) return false;
      const second = bytes[lt + 1];
      if (second === BANG || second === QUERY) {
        this.at = skipSpecial(bytes, lt);
        continue;
      }
      this.start = lt;
      this.isClosing = second === SLASH;
      this.prefixStart = this.isClosing ? lt + 2 : lt + 1;
      this.nameStop = nameEnd(bytes, this.prefixStart);
      this.nameStart = localStart(bytes, this.prefixStart, this.nameStop);
      this.gt = tagEnd(bytes, this.nameStop);
      this.isEmpty = !this.isClosing && bytes[this.gt - 1] === SLASH;
      this.at = this.gt + 1;
      return true;
    }
  }

  /** Name without its prefix. */
  get name(): string {
    return rawText(this.bytes, this.nameStart, this.nameStop);
  }
  isNamed(word: string): boolean {
    if (this.nameStop - this.nameStart !== word.length) return false;
    for (let i = 0; i < word.length; i++)
      if (this.bytes[this.nameStart + i] !== word.charCodeAt(i)) return false;
    return true;
  }
}

function localStart(bytes: Uint8Array, from: number, stop: number): number {
  for (let i = from; i < stop; i++) if (bytes[i] === COLON) return i + 1;
  return from;
}

/** Builds the tree of one part. `stopAt` names an element whose content the caller reads itself. */
export class TreeReader {
  private open: Element | undefined;
  private root: Element | undefined;
  private depth = 0;
  private readonly markup: Markup;
  constructor(
    private readonly bytes: Uint8Array,
    private readonly stopAt?: string,
  ) {
    this.markup = new Markup(bytes);
  }

  /** Reads to the end, or until just after the opening tag of `stopAt`, which it returns. */
  run(): Element | undefined {
    const { markup } = this;
    while (markup.next()) {
      if (markup.isClosing) this.close();
      else {
        const opened = this.element();
        if (opened.name === this.stopAt && opened.closeStart < 0) return opened;
      }
    }
    return undefined;
  }

  /** Goes on from here, after the caller has read the content itself. */
  seek(at: number): void {
    this.markup.at = at;
  }

  whole(): Element {
    if (!this.root || this.open) throw broken('an element does not end');
    return this.root;
  }

  private element(): Element {
    const { bytes, markup } = this;
    const end = markup.gt + 1;
    const element: Element = {
      name: markup.name,
      prefix: rawText(bytes, markup.prefixStart, markup.nameStart),
      start: markup.start,
      openEnd: end,
      closeStart: markup.isEmpty ? end : -1,
      end: markup.isEmpty ? end : -1,
      parent: this.open,
      children: [],
    };
    if (this.open) this.open.children.push(element);
    else if (this.root) throw broken('a part has two roots');
    else this.root = element;
    if (!markup.isEmpty) {
      this.open = element;
      if (++this.depth > MAX_DEPTH) throw broken('elements are nested too deeply');
    }
    return element;
  }

  private close(): void {
    const { bytes, open, markup } = this;
    if (!open || rawText(bytes, markup.prefixStart, markup.nameStop) !== open.prefix + open.name)
      throw broken('elements overlap');
    open.closeStart = markup.start;
    open.end = markup.gt + 1;
    this.open = open.parent;
    this.depth--;
  }
}

export function parseXml(bytes: Uint8Array, part: string): Element {
  checkEncoding(bytes, part);
  const reader = new TreeReader(bytes);
  reader.run();
  return reader.whole();
}

export function checkEncoding(bytes: Uint8Array, part: string): void {
  const [a, b] = bytes;
  if ((a === 0xff && b === 0xfe) || (a === 0xfe && b === 0xff) || a === 0 || b === 0)
    throw new Refusal(REFUSED.encoding(part));
  const encoding = /^(?:\u00ef\u00bb\u00bf)?<\?xml[^>]*?encoding\s*=\s*["']([^"']+)["']/.exec(
    strFromU8(bytes.subarray(0, 200), true),
  )?.[1];
  if (encoding !== undefined && !/^(utf-?8|us-ascii)$/i.test(encoding))
    throw new Refusal(REFUSED.encoding(part));
}

const skipBlanks = (bytes: Uint8Array, from: number, to: number): number => {
  let i = from;
  while (i < to && isBlankByte(bytes[i])) i++;
  return i;
};

function attributeAt(bytes: Uint8Array, start: number, to: number): Attribute | undefined {
  const name = skipBlanks(bytes, start, to);
  let stop = name;
  while (
    stop < to &&
    bytes[stop] !== EQUALS &&
    !isBlankByte(bytes[stop]) &&
    bytes[stop] !== SLASH &&
    bytes[stop] !== GT
  )
    stop++;
  const equals = skipBlanks(bytes, stop, to);
  if (bytes[equals] !== EQUALS || stop === name) return undefined;
  const open = skipBlanks(bytes, equals + 1, to);
  const quote = bytes[open];
  if (quote !== 0x22 && quote !== 0x27) return undefined;
  const close = bytes.indexOf(quote, open + 1);
  if (close < 0 || close >= to) return undefined;
  return {
    name: rawText(bytes, name, stop),
    value: unescapeXml(rawText(bytes, open + 1, close)),
    start,
    end: close + 1,
    valueStart: open + 1,
    valueEnd: close,
  };
}

export function attributes(bytes: Uint8Array, from: number, to: number): Attribute[] {
  const found: Attribute[] = [];
  for (let one = attributeAt(bytes, from, to); one; one = attributeAt(bytes, one.end, to)) found.push(one);
  return found;
}

export const attributesOf = (bytes: Uint8Array, element: Element): Attribute[] =>
  attributes(bytes, nameEnd(bytes, element.start + 1), element.openEnd - 1);

/** By local name: r:id is found as id when no plain id comes first. */
export const attribute = (bytes: Uint8Array, element: Element, name: string): Attribute | undefined => {
  const all = attributesOf(bytes, element);
  return all.find((one) => one.name === name) ?? all.find((one) => one.name.endsWith(`:${name}`));
};

export const child = (element: Element | undefined, name: string): Element | undefined =>
  element?.children.find((one) => one.name === name);

/** Every element below, in document order. */
export function* descendants(element: Element): Generator<Element> {
  const waiting = element.children.toReversed();
  for (let one = waiting.pop(); one; one = waiting.pop()) {
    yield one;
    for (let i = one.children.length - 1; i >= 0; i--) waiting.push(one.children[i] as Element);
  }
}
export function all(element: Element | undefined, ...names: readonly string[]): Element[] {
  const found: Element[] = [];
  if (element) for (const one of descendants(element)) if (names.includes(one.name)) found.push(one);
  return found;
}
