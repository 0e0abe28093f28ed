/**
 * Names and roles for the engine's own controls, which it draws as pictures: screen readers say what a button
 * does. Added to what is drawn, again whenever the engine draws.
 */
const NAMES: Readonly<Record<string, string>> = {
  'univer.command.undo': 'Undo',
  'univer.command.redo': 'Redo',
  'sheet.command.set-once-format-painter': 'Copy the look of the cells',
  'sheet.command.clear-selection-format': 'Clear the look of the cells',
  'sheet.command.set-range-font-family': 'Font',
  'sheet.command.set-range-fontsize': 'Size of letters',
  'sheet.command.set-range-font-increase': 'Larger letters',
  'sheet.command.set-range-font-decrease': 'Smaller letters',
  'sheet.command.set-range-bold': 'Bold',
  'sheet.command.set-range-italic': 'Italic',
  'sheet.command.set-range-underline': 'Underline',
  'sheet.command.set-range-stroke': 'Strike through',
  'sheet.command.set-range-text-color': 'Colour of letters',
  'sheet.command.set-background-color': 'Colour of cells',
  'sheet.command.set-border-basic': 'Borders',
  'sheet.command.set-horizontal-text-align': 'Left, middle or right',
  'sheet.command.set-vertical-text-align': 'Top, middle or bottom',
  'sheet.command.set-text-wrap': 'Long text in a cell',
  'sheet.command.set-text-rotation': 'Turned text',
  'sheet.command.add-worksheet-merge': 'Merge cells',
};
const PARTS: Readonly<Record<string, string>> = {
  'sheet-bar-append-button': 'Sheets: add or list',
  button: 'Zoom: smaller or larger',
};
const INPUTS = ['Font', 'Size of letters', 'Cell or name'];
const ROLES = new Set(['track', 'handle']);

/** sheet.command.set-text-wrap → Set text wrap. */
const spelled = (command: string): string => {
  const words = (command.split('.').at(-1) ?? '').replaceAll('-', ' ').trim();
  return words.charAt(0).toUpperCase() + words.slice(1);
};

function nameOf(control: HTMLElement): string {
  const command = control.closest<HTMLElement>('[data-u-command]')?.dataset.uCommand;
  if (command !== undefined) return NAMES[command] ?? spelled(command);
  const part = control.dataset.uComp;
  return (part !== undefined ? PARTS[part] : undefined) ?? 'More choices';
}

/** What an anchor shows here is not read out: it only holds a list in its place. */
const hasName = (control: HTMLElement): boolean =>
  control.hasAttribute('aria-label') || (control.tagName !== 'A' && control.textContent.trim() !== '');

function nameAll(root: HTMLElement): void {
  for (const odd of root.querySelectorAll<HTMLElement>('[role="track"], [role="handle"]'))
    if (ROLES.has(odd.getAttribute('role') ?? '')) odd.removeAttribute('role');
  for (const control of root.querySelectorAll<HTMLElement>('button, a, [aria-haspopup]')) {
    // The engine's lists hang on plain boxes; expanded and collapsed mean something on a button only.
    const isBox = control.tagName !== 'BUTTON';
    const holdsOthers = control.querySelector('button, input, a') !== null;
    if (isBox && holdsOthers) {
      control.setAttribute('role', 'group');
      control.removeAttribute('aria-expanded');
    } else if (isBox && !control.hasAttribute('role')) control.setAttribute('role', 'button');
    if (!hasName(control)) control.setAttribute('aria-label', nameOf(control));
  }
  for (const [i, input] of [...root.querySelectorAll<HTMLInputElement>('input:not([aria-label])')].entries())
    input.setAttribute('aria-label', INPUTS[i] ?? 'Value');
}

const SOON = 200;
export function nameControls(root: HTMLElement): void {
  let soon: ReturnType<typeof setTimeout> | undefined;
  nameAll(root);
  new MutationObserver(() => {
    clearTimeout(soon);
    soon = setTimeout(() => {
      nameAll(root);
    }, SOON);
  }).observe(root, { childList: true, subtree: true });
}
