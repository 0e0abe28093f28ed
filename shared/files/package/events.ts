import type { Near } from '../../base/near';
import { REFUSED, Refusal } from './refusal';
import type { Attribute } from './xml';
import { attributes, bytesOf, checkEncoding, Markup, rawText, textBetween } from './xml';

/** A part read from front to back, for parts of which only words and numbers are wanted. */

const MAX_DEPTH = 120;
const broken = (what: string): Refusal => new Refusal(REFUSED.damaged(what));

/** A start tag. Names are without their namespace prefix: files spell the same element c, x:c or ns0:c. */
export class Tag {
  private list: readonly Attribute[] | undefined;
  constructor(
    readonly name: string,
    private readonly bytes: Uint8Array,
    private readonly from: number,
    private readonly to: number,
  ) {}

  get attributes(): readonly Attribute[] {
    return (this.list ??= attributes(this.bytes, this.from, this.to));
  }
  /** Value of an attribute by its name without prefix. */
  get(name: string): string | undefined {
    const { attributes: list } = this;
    return (list.find((one) => one.name === name) ?? list.find((one) => one.name.endsWith(`:${name}`)))
      ?.value;
  }
  number(name: string): number | undefined {
    const text = this.get(name);
    const value = text === undefined || text.trim() === '' ? NaN : Number(text);
    return Number.isFinite(value) ? value : undefined;
  }
  flag(name: string): boolean {
    const text = this.get(name);
    return text === '1' || text === 'true';
  }
}

export interface Visitor {
  readonly open?: (tag: Tag) => void;
  readonly close?: (name: string) => void;
  readonly text?: (text: string) => void;
  /** An element whose content somebody else reads, from after its opening tag; gives where its closing tag stands. */
  readonly aside?: { readonly name: string; readonly read: (from: number) => number };
}

/** Walks a part; throws a Refusal for what is no XML. */
export function scanXml(bytes: Uint8Array, part: string, visitor: Visitor): void {
  checkEncoding(bytes, part);
  const markup = new Markup(bytes);
  const open: string[] = [];
  let textFrom = 0;
  while (markup.next()) {
    if (visitor.text && markup.start > textFrom && open.length > 0)
      visitor.text(textBetween(bytes, textFrom, markup.start));
    visitTag(markup, open, visitor);
    textFrom = markup.at;
  }
  if (open.length > 0) throw broken('an element does not end');
}

function visitTag(markup: Markup, open: string[], visitor: Visitor): void {
  const { bytes, name } = markup;
  const whole = rawText(bytes, markup.prefixStart, markup.nameStop);
  if (markup.isClosing && open.pop() !== whole) throw broken('elements overlap');
  if (!markup.isClosing) visitor.open?.(new Tag(name, bytes, markup.nameStop, markup.gt));
  if (markup.isClosing || markup.isEmpty) {
    visitor.close?.(name);
    return;
  }
  open.push(whole);
  if (open.length > MAX_DEPTH) throw broken('elements are nested too deeply');
  if (name === visitor.aside?.name) markup.at = visitor.aside.read(markup.at);
}

/** All tags of those names, as many parts need no more. */
export function tagsNamed(bytes: Uint8Array, part: string, ...names: readonly string[]): readonly Tag[] {
  const found: Tag[] = [];
  scanXml(bytes, part, {
    open: (tag) => {
      if (names.includes(tag.name)) found.push(tag);
    },
  });
  return found;
}

const nested = (depth: number): string => {
  try {
    scanXml(bytesOf('<a>'.repeat(depth) + '</a>'.repeat(depth)), 'part', {});
    return 'read';
  } catch (error) {
    if (error instanceof Refusal) return 'refused';
    throw error;
  }
};
export const NEAR: readonly Near[] = [
  {
    number: 'elements inside each other',
    value: MAX_DEPTH,
    below: () => nested(120),
    above: () => nested(121),
    answers: ['read', 'refused'],
  },
];
