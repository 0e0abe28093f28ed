import { unescapeXml } from '../text';

const [SPACE, DOUBLE_QUOTE, SINGLE_QUOTE, COLON] = [0x20, 0x22, 0x27, 0x3a];

/** A start tag. Names are without their namespace prefix: files spell the same element c, x:c or ns0:c. */
export class Tag {
  private parsed: Map<string, string> | undefined;
  constructor(
    readonly name: string,
    private readonly raw: string,
  ) {}

  /** Value of an attribute by its name without prefix. */
  get(name: string): string | undefined {
    const { raw } = this;
    // Almost every file writes name="value": found without taking the whole tag apart.
    if (!raw.includes("'") && !raw.includes(' =') && !raw.includes('= ')) {
      const mark = `${name}="`;
      for (let at = raw.indexOf(mark); at > 0; at = raw.indexOf(mark, at + 1)) {
        const before = raw.charCodeAt(at - 1);
        const start = at + mark.length;
        if (before <= SPACE || before === COLON)
          return unescapeXml(raw.slice(start, raw.indexOf('"', start)));
      }
      return undefined;
    }
    return this.all().get(name);
  }
  private all(): Map<string, string> {
    if (!this.parsed) {
      this.parsed = new Map();
      for (const [, key = '', double, single] of this.raw.matchAll(
        /([^\s=]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g,
      ))
        this.parsed.set(key.slice(key.indexOf(':') + 1), unescapeXml(double ?? single ?? ''));
    }
    return this.parsed;
  }
  number(name: string): number | undefined {
    const text = this.get(name);
    const value = text === undefined ? NaN : Number(text);
    return Number.isFinite(value) ? value : undefined;
  }
  flag(name: string): boolean {
    const text = this.get(name);
    return text === '1' || text === 'true';
  }
}

export interface Visitor {
  readonly open?: (tag: Tag, isEmpty: boolean) => void;
  readonly close?: (name: string) => void;
  readonly text?: (text: string) => void;
}

export class BadXml extends Error {}

const localName = (raw: string): string => raw.slice(raw.indexOf(':') + 1);

/** Whether a > at `end` would stand inside an attribute's quotation marks. */
function isQuoted(xml: string, from: number, end: number): boolean {
  let quote = 0;
  for (let at = from; at < end; at++) {
    const code = xml.charCodeAt(at);
    if (quote) {
      if (code === quote) quote = 0;
    } else if (code === DOUBLE_QUOTE || code === SINGLE_QUOTE) quote = code;
  }
  return quote !== 0;
}

/** End of a tag: the first > outside quotation marks. */
function tagEnd(xml: string, from: number): number {
  for (let at = xml.indexOf('>', from); at >= 0; at = xml.indexOf('>', at + 1))
    if (!isQuoted(xml, from, at)) return at;
  throw new BadXml('a tag is not closed');
}

/** Where something that is neither tag nor text ends, and the text it holds. */
function special(xml: string, at: number): { readonly end: number; readonly text: string } | undefined {
  if (xml.startsWith('<!--', at)) return { end: indexAfter(xml, '-->', at), text: '' };
  if (xml.startsWith('<![CDATA[', at)) {
    const end = indexAfter(xml, ']]>', at);
    return { end, text: xml.slice(at + 9, end - 3) };
  }
  if (xml.startsWith('<?', at)) return { end: indexAfter(xml, '?>', at), text: '' };
  // A document type can make a small file explode; no spreadsheet program writes one.
  if (xml.startsWith('<!', at)) throw new BadXml('it declares a document type');
  return undefined;
}
const indexAfter = (xml: string, mark: string, from: number): number => {
  const at = xml.indexOf(mark, from);
  if (at < 0) throw new BadXml(`${mark} is missing`);
  return at + mark.length;
};

const spaceIn = (text: string): number => {
  for (let at = 0; at < text.length; at++) if (text.charCodeAt(at) <= SPACE) return at;
  return -1;
};

/** Tells the visitor; answers how much deeper the next tag lies. */
function visitTag(inner: string, visitor: Visitor): number {
  if (inner.startsWith('/')) {
    visitor.close?.(localName(inner.slice(1).trim()));
    return -1;
  }
  const isEmpty = inner.endsWith('/');
  const body = isEmpty ? inner.slice(0, -1) : inner;
  const space = spaceIn(body);
  const name = localName(space < 0 ? body : body.slice(0, space));
  visitor.open?.(new Tag(name, space < 0 ? '' : body.slice(space)), isEmpty);
  if (isEmpty) visitor.close?.(name);
  return isEmpty ? 0 : 1;
}

/** Walks XML from front to back. */
export function scan(xml: string, visitor: Visitor): void {
  let depth = 0;
  for (let at = 0; at < xml.length;) {
    const start = xml.indexOf('<', at);
    if (start < 0) break;
    if (start > at && visitor.text) visitor.text(unescapeXml(xml.slice(at, start)));
    const other = special(xml, start);
    if (other?.text) visitor.text?.(other.text);
    const end = other?.end ?? tagEnd(xml, start) + 1;
    if (!other) depth += visitTag(xml.slice(start + 1, end - 1), visitor);
    at = end;
  }
  if (depth !== 0) throw new BadXml('it ends in the middle');
}

/** All tags of those names, as many parts need no more. */
export function tagsNamed(xml: string, ...names: readonly string[]): readonly Tag[] {
  const found: Tag[] = [];
  scan(xml, {
    open: (tag) => {
      if (names.includes(tag.name)) found.push(tag);
    },
  });
  return found;
}
