/** The page's own elements, by id. They are in index.html: a missing one is a mistake of ours. */
export function element<T extends HTMLElement>(id: string, type: new () => T): T {
  const found = document.getElementById(id);
  if (!(found instanceof type)) throw new Error(`index.html has no ${id}`);
  return found;
}

const status = (): HTMLElement => element('status', HTMLElement);

const PROBLEM_STAYS = 12_000;
let clearing: ReturnType<typeof setTimeout> | undefined;

/** One line for what just happened; a problem is shown in full, in front, for a while. */
export function tell(text: string, isProblem = false): void {
  const line = status();
  clearTimeout(clearing);
  if (isProblem)
    clearing = setTimeout(() => {
      tell('');
    }, PROBLEM_STAYS);
  line.textContent = text;
  line.title = text;
  line.classList.toggle('is-problem', isProblem);
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
