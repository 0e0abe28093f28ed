import { unescapeXml } from '../text';

/** A start tag. Names are without their namespace prefix: files spell the same element c, x:c or ns0:c. */
export class Tag {
  private parsed: Map<string, string> | undefined;
  constructor(readonly name: string, private readonly raw: string) {}

  /** Value of an attribute by its name without prefix. */
  get(name: string): string | undefined {
    if (!this.parsed) {
      this.parsed = new Map();
      for (const [, key = '', double, single] of this.raw.matchAll(/([^\s=]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g))
        this.parsed.set(key.slice(key.indexOf(':') + 1), unescapeXml(double ?? single ?? ''));
    }
    return this.parsed.get(name);
  }
  number(name: string): number | undefined {
    const text = this.get(name);
    const value = text === undefined ? NaN : Number(text);
    return Number.isFinite(value) ? value : undefined;
  }
  flag(name: string): boolean { const text = this.get(name); return text === '1' || text === 'true'; }
}

export interface Visitor {
  readonly open?: (tag: Tag, isEmpty: boolean) => void;
  readonly close?: (name: string) => void;
  readonly text?: (text: string) => void;
}

export class BadXml extends Error {}

const localName = (raw: string): string => raw.slice(raw.indexOf(':') + 1);

const hasOpenQuote = (text: string): boolean => {
  let quote = '';
  for (const c of text) {
    if (quote) { if (c === quote) quote = ''; } else if (c === '"' || c === "'") quote = c;
  }
  return quote !== '';
};

/** End of a tag: the first > outside quotation marks. */
function tagEnd(xml: string, from: number): number {
  for (let at = xml.indexOf('>', from); at >= 0; at = xml.indexOf('>', at + 1)) if (!hasOpenQuote(xml.slice(from, at))) return at;
  throw new BadXml('a tag is not closed');
}

/** Where something that is neither tag nor text ends, and the text it holds. */
function special(xml: string, at: number): { readonly end: number; readonly text: string } | undefined {
  if (xml.startsWith('<!--', at)) return { end: indexAfter(xml, '-->', at), text: '' };
  if (xml.startsWith('<![CDATA[', at)) { const end = indexAfter(xml, ']]>', at); return { end, text: xml.slice(at + 9, end - 3) }; }
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

/** Tells the visitor; answers how much deeper the next tag lies. */
function visitTag(inner: string, visitor: Visitor): number {
  if (inner.startsWith('/')) { visitor.close?.(localName(inner.slice(1).trim())); return -1; }
  const isEmpty = inner.endsWith('/');
  const body = isEmpty ? inner.slice(0, -1) : inner;
  const space = body.search(/\s/);
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
  scan(xml, { open: (tag) => { if (names.includes(tag.name)) found.push(tag); } });
  return found;
}
