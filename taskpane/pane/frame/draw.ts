import type { ComponentChildren, VNode as PreactNode } from 'preact';
import { Fragment, h as element, render } from 'preact';
import { canSay, say, unbroken } from '../phrases';
import { fieldShown } from '../values/show';

/**
 * Views describe elements as data and Preact keeps the page in that shape, so that focus, caret and scroll
 * position survive a redraw. Attributes go by their names in HTML; handlers stand together under `on`.
 */
export type Handler = (event: Event) => void;
export type DrawnAttribute = string | number | boolean | undefined;

export interface Props {
  /** Keeps an element's identity when its neighbours come and go. */
  readonly key?: string;
  readonly on?: Readonly<Record<string, Handler>>;
  readonly [attribute: string]: DrawnAttribute | Readonly<Record<string, Handler>>;
}

export type VNode = PreactNode;
export type Child = VNode | string | number | false | undefined | null | readonly Child[];

const FIELDS = ['input', 'select', 'textarea'];
/** Attributes that are read out or shown. */
const SAID = ['aria-label', 'placeholder', 'title', 'label'];

const readOut = (name: string, value: unknown): unknown =>
  typeof value === 'string' && SAID.includes(name) ? say(value) : value;

/** What stands in a field from the start, or was typed by the pane itself. */
const inField = (value: unknown): unknown => (typeof value === 'string' ? fieldShown(value) : (value ?? ''));

/** As Preact wants it: `onclick`, nothing for what is off, and a field without a value is empty. */
function attributes(tag: string, { on, ...given }: Props): Record<string, unknown> {
  const out: Record<string, unknown> = {};
  for (const [name, value] of Object.entries(given)) {
    if (name === 'spellcheck') out[name] = value !== 'false' && value !== false;
    else if (name === 'checked') out[name] = value === true;
    else if (name === 'value' && FIELDS.includes(tag))
      out[name] = tag === 'input' ? inField(value) : (value ?? '');
    else if (value !== undefined && (value !== false || name === 'open')) out[name] = readOut(name, value);
  }
  for (const [type, handler] of Object.entries(on ?? {})) out[`on${type}`] = handler;
  return out;
}

const said = (child: Child): Child =>
  typeof child === 'string'
    ? unbroken(say(child))
    : Array.isArray(child)
      ? (child as readonly Child[]).map(said)
      : child;

export const h = (tag: string, props: Props = {}, ...children: Child[]): VNode =>
  element(
    tag,
    attributes(tag, props),
    ...((props.lang === 'en' ? children : children.map(said)) as ComponentChildren[]),
  ) as VNode;

const isSaid = (child: Child): boolean =>
  typeof child === 'string'
    ? canSay(child)
    : !Array.isArray(child) || (child as readonly Child[]).every((one) => isSaid(one));
/** What the language of the pane has no words for stays English and says so, for whoever listens to it. */
export const english = (tag: string, props: Props, ...children: Child[]): VNode =>
  isSaid(children) ? h(tag, props, ...children) : h(tag, { ...props, lang: 'en' }, ...children);

/** Brings the children of `parent` into the shape of `children`. */
export function patch(parent: Element, children: readonly Child[]): void {
  render(element(Fragment, null, ...(children as ComponentChildren[])), parent);
}
