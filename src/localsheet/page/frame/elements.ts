import { isNarrow } from './narrow';

/** The page's own elements, by id. They are in index.html: a missing one is a mistake of ours. */
export function element<T extends HTMLElement>(id: string, type: new () => T): T {
  const found = document.getElementById(id);
  if (!(found instanceof type)) throw new Error(`index.html has no ${id}`);
  return found;
}

const status = (): HTMLElement => element('status', HTMLElement);

const PROBLEM_STAYS = 12_000;
let clearing: ReturnType<typeof setTimeout> | undefined;

/**
 * One line for what just happened; a problem is shown in full, in front, for a while. On a narrow screen every line
 * stands in front, because the bar has no room for it.
 */
export function tell(text: string, isProblem = false): void {
  const line = status();
  clearTimeout(clearing);
  line.classList.remove('is-offer');
  if (text !== '' && (isProblem || isNarrow()))
    clearing = setTimeout(() => {
      tell('');
    }, PROBLEM_STAYS);
  line.textContent = text;
  line.title = text;
  line.classList.toggle('is-problem', isProblem);
}

const offers: (() => void)[] = [];

/** A line with something to press, in front until it is pressed or put away; the next one waits for that. */
export function offer(text: string, press: string, act: () => unknown): void {
  const line = status();
  if (line.classList.contains('is-offer')) {
    offers.push(() => {
      offer(text, press, act);
    });
    return;
  }
  tell('');
  const button = (label: string, does: () => unknown): HTMLButtonElement => {
    const made = Object.assign(document.createElement('button'), { type: 'button', textContent: label });
    made.addEventListener('click', () => {
      tell('');
      does();
      offers.shift()?.();
    });
    return made;
  };
  const away = button('×', () => undefined);
  away.setAttribute('aria-label', 'Put this line away');
  line.classList.add('is-offer');
  line.replaceChildren(`${text} `, button(press, act), ' ', away);
}

interface Question {
  readonly title: string;
  readonly lines: readonly string[];
  readonly yes: string;
  readonly no?: string;
}

/** Asks with a dialog of the page; false when it is cancelled or closed with Escape. */
export function ask({ title, lines, yes, no = 'Cancel' }: Question): Promise<boolean> {
  const dialog = element('dialog', HTMLDialogElement);
  element('dialog-title', HTMLElement).textContent = title;
  const [first = '', ...rest] = lines;
  const intro = document.createElement('p');
  intro.textContent = first;
  const list = document.createElement('ul');
  list.append(...rest.map((text) => Object.assign(document.createElement('li'), { textContent: text })));
  element('dialog-body', HTMLElement).replaceChildren(intro, ...(rest.length > 0 ? [list] : []));
  element('dialog-yes', HTMLButtonElement).textContent = yes;
  element('dialog-no', HTMLButtonElement).textContent = no;
  dialog.returnValue = 'no';
  return new Promise((resolve) => {
    dialog.addEventListener(
      'close',
      () => {
        resolve(dialog.returnValue === 'yes');
      },
      { once: true },
    );
    dialog.showModal();
  });
}
