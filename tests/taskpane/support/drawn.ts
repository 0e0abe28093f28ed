/** What a page shows and asks, a line for each element that says, holds or bars something. */
const ASKED = ['type', 'min', 'max', 'step', 'aria-disabled', 'aria-invalid', 'aria-pressed', 'aria-label'];

const ownText = (element: Element): string =>
  [...element.childNodes]
    .filter((node) => node.nodeType === 3)
    .map((node) => node.textContent ?? '')
    .join('')
    .replace(/\s+/g, ' ')
    .trim();

function lineOf(element: Element): string | undefined {
  const tag = element.tagName.toLowerCase();
  const held = ['input', 'select', 'textarea'].includes(tag) ? (element as HTMLInputElement) : undefined;
  const parts = [
    ...ASKED.flatMap((name) => {
      const value = element.getAttribute(name);
      return value === null ? [] : [`${name}=${value}`];
    }),
    ...(held === undefined ? [] : [`holds “${held.value}”${held.checked ? ' on' : ''}`]),
    ownText(element),
  ].filter((part) => part !== '');
  return parts.length === 0 ? undefined : `${tag}${element.id && `#${element.id}`} ${parts.join(' · ')}`;
}

export const drawn = (root: ParentNode = document.body): string[] =>
  [...root.querySelectorAll('*')].flatMap((element) => lineOf(element) ?? []);
