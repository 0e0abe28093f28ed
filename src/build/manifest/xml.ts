/**
 * A small strict reader for the XML we write ourselves: elements, attributes, text; no entities beyond the
 * five, no DTD.
 */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly XmlElement[];
  readonly text: string;
}
interface Open {
  name: string;
  attributes: Record<string, string>;
  children: XmlElement[];
  text: string;
}

const ENTITIES: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', apos: "'" };
const decode = (text: string): string =>
  text.replace(/&(\w+);/g, (all, name: string) => ENTITIES[name] ?? all);

function attributesOf(text: string, tag: string): Record<string, string> {
  const found: Record<string, string> = {};
  let rest = text.trim();
  while (rest !== '') {
    const match = /^([\w:.-]+)\s*=\s*(?:"([^"<]*)"|'([^'<]*)')\s*/.exec(rest);
    if (!match?.[1]) throw new Error(`<${tag}> has an attribute that cannot be read: ${rest.slice(0, 30)}`);
    if (match[1] in found) throw new Error(`<${tag}> has ${match[1]} twice`);
    found[match[1]] = decode(match[2] ?? match[3] ?? '');
    rest = rest.slice(match[0].length);
  }
  return found;
}

/** Comments and processing instructions go; a comment with -- inside is not XML. */
function bare(source: string): string {
  return source.replace(/<!--([\s\S]*?)-->|<\?[\s\S]*?\?>/g, (_all, comment: string | undefined) => {
    if (comment?.includes('--')) throw new Error('a comment holds two hyphens in a row');
    return '';
  });
}

const LOST: Open = { name: '', attributes: {}, children: [], text: '' };
class Reader {
  private readonly stack: Open[] = [{ name: '', attributes: {}, children: [], text: '' }];
  private get top(): Open {
    return this.stack[this.stack.length - 1] ?? LOST;
  }

  text(token: string): void {
    this.top.text += decode(token);
  }

  close(name: string): void {
    const closed = this.stack.pop();
    if (!closed || closed.name !== name || this.stack.length === 0)
      throw new Error(`</${name}> closes ${closed?.name ? `<${closed.name}>` : 'nothing'}`);
    this.top.children.push({ ...closed, text: closed.text.trim() });
  }

  open(token: string): void {
    const [, name = '', rest = '', slash = ''] = /^<([\w:.-]+)([\s\S]*?)(\/?)>$/.exec(token) ?? [];
    if (name === '') throw new Error(`cannot read ${token.slice(0, 30)}`);
    const element: Open = { name, attributes: attributesOf(rest, name), children: [], text: '' };
    (slash ? this.top.children : this.stack).push(element);
  }

  end(): XmlElement {
    const [root, ...more] = this.top.children;
    if (this.stack.length > 1) throw new Error(`<${this.top.name}> is never closed`);
    if (!root || more.length > 0) throw new Error('there must be one outermost element');
    return root;
  }
}

export function parseXml(source: string): XmlElement {
  const reader = new Reader();
  for (const [token] of bare(source).matchAll(/<[^>]*>|[^<]+/g)) {
    if (token.startsWith('</')) reader.close(token.slice(2, -1).trim());
    else if (token.startsWith('<')) reader.open(token);
    else reader.text(token);
  }
  return reader.end();
}

/** The element and everything inside it. */
export function* everyElement(element: XmlElement): Generator<XmlElement> {
  yield element;
  for (const child of element.children) yield* everyElement(child);
}
export const child = (element: XmlElement | undefined, name: string): XmlElement | undefined =>
  element?.children.find((c) => c.name === name);
/** Follows names downwards, first match each. */
export const descend = (
  element: XmlElement | undefined,
  ...names: readonly string[]
): XmlElement | undefined => names.reduce(child, element);
