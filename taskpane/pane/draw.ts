/**
 * A small drawing helper: views describe elements as plain data, `patch` brings the page into that shape and
 * keeps what is already there, so focus, caret and scroll position survive a redraw.
 */
export type Handler = (event: Event) => void;
export type Attribute = string | number | boolean | undefined;

export interface Props {
  /** Keeps an element's identity when its neighbours come and go. */
  readonly key?: string;
  readonly on?: Readonly<Record<string, Handler>>;
  readonly [attribute: string]: Attribute | Readonly<Record<string, Handler>>;
}

export interface VNode {
  readonly tag: string;
  readonly props: Props;
  readonly children: readonly (VNode | string)[];
}

export type Child = VNode | string | number | false | undefined | null | readonly Child[];

const flat = (child: Child): (VNode | string)[] => {
  if (child === false || child === undefined || child === null || child === '') return [];
  if (typeof child === 'string' || typeof child === 'number') return [String(child)];
  return 'tag' in child ? [child] : child.flatMap(flat);
};

export const h = (tag: string, props: Props = {}, ...children: Child[]): VNode => ({
  tag,
  props,
  children: children.flatMap(flat),
});

const SVG = 'http://www.w3.org/2000/svg';
const handlersOf = new WeakMap<Element, Readonly<Record<string, Handler>>>();
const keyOf = new WeakMap<Node, string>();

/**
 * One listener per event type and element; which handler it calls is looked up, so redrawing never piles
 * listeners up.
 */
function setHandlers(element: Element, next: Readonly<Record<string, Handler>> = {}): void {
  const known = handlersOf.get(element);
  for (const type of Object.keys(next))
    if (!known || !(type in known))
      element.addEventListener(type, (event) => handlersOf.get(element)?.[type]?.(event));
  // Types once listened to stay in the map, silent, so that they are not added twice.
  const silent = Object.fromEntries(Object.keys(known ?? {}).map((type) => [type, () => undefined]));
  handlersOf.set(element, { ...silent, ...next });
}

type Field = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;
const isField = (element: Element): element is Field =>
  ['INPUT', 'SELECT', 'TEXTAREA'].includes(element.tagName);

/** What is typed lives in a property, not in the attribute of the same name. */
function setLive(element: Element, name: string, value: Attribute): boolean {
  if (name === 'checked' && element instanceof HTMLInputElement) {
    element.checked = value === true;
    return true;
  }
  if (name !== 'value' || !isField(element)) return false;
  const text = value === undefined || typeof value === 'boolean' ? '' : String(value);
  if (element.value !== text) element.value = text;
  return true;
}

function setAttribute(element: Element, name: string, value: Attribute): void {
  if (setLive(element, name, value)) return;
  if (value === undefined || value === false) element.removeAttribute(name);
  else if (element.getAttribute(name) !== String(value))
    element.setAttribute(name, value === true ? '' : String(value));
}

/** What a user folds open stays open, unless the view has a say in it. */
const isUsersOwn = (element: Element, name: string): boolean =>
  name === 'open' && element.tagName === 'DETAILS';

function setProps(element: Element, props: Props): void {
  for (const { name } of [...element.attributes])
    if (!(name in props) && !isUsersOwn(element, name)) element.removeAttribute(name);
  for (const [name, value] of Object.entries(props))
    if (name !== 'key' && name !== 'on' && typeof value !== 'object') setAttribute(element, name, value);
  setHandlers(element, props.on);
}

const create = (child: VNode | string, inSvg: boolean): Node => {
  if (typeof child === 'string') return document.createTextNode(child);
  const element =
    inSvg || child.tag === 'svg'
      ? document.createElementNS(SVG, child.tag)
      : document.createElement(child.tag);
  if (child.props.key !== undefined) keyOf.set(element, child.props.key);
  return element;
};

const fits = (node: Node, child: VNode | string): boolean =>
  typeof child === 'string'
    ? node.nodeType === Node.TEXT_NODE
    : node instanceof Element && node.localName === child.tag && keyOf.get(node) === child.props.key;

/** The node already on the page that a child continues, if any, from the place `at` on. */
const reuse = (parent: Node, at: number, child: VNode | string): Node | undefined => {
  const here = parent.childNodes[at];
  if (here && fits(here, child)) return here;
  if (typeof child === 'string' || child.props.key === undefined) return undefined;
  return [...parent.childNodes].slice(at).find((node) => fits(node, child));
};

/**
 * What an element was last drawn as: the very same description again changes nothing, however much is in it.
 */
const drawnAs = new WeakMap<Node, VNode>();

function fill(node: Node, child: VNode | string): void {
  if (typeof child === 'string') {
    if (node.nodeValue !== child) node.nodeValue = child;
    return;
  }
  if (!(node instanceof Element) || drawnAs.get(node) === child) return;
  drawnAs.set(node, child);
  patch(node, child.children);
  // After the children: a select takes its value only when the option is there.
  setProps(node, child.props);
}

/** Brings the children of `parent` into the shape of `children`. */
export function patch(parent: Element, children: readonly (VNode | string)[]): void {
  const inSvg = parent.namespaceURI === SVG;
  children.forEach((child, at) => {
    const node = reuse(parent, at, child) ?? create(child, inSvg);
    if (parent.childNodes[at] !== node) parent.insertBefore(node, parent.childNodes[at] ?? null);
    fill(node, child);
  });
  while (parent.childNodes.length > children.length) parent.lastChild?.remove();
}
