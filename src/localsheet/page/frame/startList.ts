import type { Keeper } from '../../keeping/keeper';
import { goOnWith, timeText } from '../workbooks/books';
import { loadPane } from '../boot';
import { isNarrow } from './narrow';
import { element, offer, tell } from './elements';
import type { Session } from '../workbooks/session';

/** The five jobs people come with, and the parts of the pane one presses to get there. */
const JOBS = [
  { text: 'An order to fill', presses: ['place-plan'] },
  { text: 'A season', presses: ['place-plan'] },
  { text: 'My water is sour', presses: ['place-vat', 'card-dose'] },
  { text: 'One number', presses: ['place-why', 'part-find'] },
  { text: 'Check my book', presses: ['place-why', 'part-check'] },
] as const;
type Job = (typeof JOBS)[number];
/** As many as the browser keeps. */
const MOST_BOOKS = 10;
const PATIENCE = 200;

/** Parts of the pane are drawn a moment after the press that leads to them. */
async function press(inside: Document, id: string): Promise<void> {
  for (let i = 0; i < PATIENCE; i++) {
    const found = inside.getElementById(id);
    if (found) {
      found.click();
      return;
    }
    await new Promise((resolve) => {
      setTimeout(resolve, 50);
    });
  }
}

async function openJob({ presses }: Job): Promise<void> {
  await loadPane();
  showPane();
  const { contentWindow, contentDocument } = element('pane-frame', HTMLIFrameElement);
  if (!contentWindow || !contentDocument) return;
  for (const id of presses) await press(contentDocument, id);
  contentWindow.focus();
}

function showPane(): void {
  const work = element('work', HTMLElement);
  const isHidden = isNarrow() ? work.classList.contains('show-sheet') : work.classList.contains('no-pane');
  if (isHidden) element('pane-toggle', HTMLButtonElement).click();
}

const button = (text: string, act: () => unknown): HTMLButtonElement => {
  const made = Object.assign(document.createElement('button'), { type: 'button', textContent: text });
  made.addEventListener('click', () => void act());
  return made;
};
const label = (text: string): HTMLElement =>
  Object.assign(document.createElement('strong'), { textContent: text });

/** Shown above the empty first sheet until something else is opened or typed. */
export async function showStart(session: Session, keeper: Keeper): Promise<void> {
  const start = element('start', HTMLElement);
  element('start-jobs', HTMLElement).replaceChildren(
    label('Start with'),
    ...JOBS.map((job) => button(job.text, () => openJob(job))),
  );
  const books = (await keeper.list()).slice(0, MOST_BOOKS);
  const goOn = async (id: string): Promise<void> => {
    if (!(await goOnWith(session, keeper, id))) tell('That workbook is not there any more.', true);
  };
  const row = element('start-books', HTMLElement);
  row.hidden = books.length === 0;
  row.replaceChildren(
    label('Continue'),
    ...books.map(({ id, title, at }) => button(`${title}, ${timeText(at)}`, () => goOn(id))),
  );
  start.hidden = false;
  const [last] = books;
  // The list lies under the pane there: an app that was closed goes on with what was open last.
  if (last && isNarrow())
    offer(`Last time: ${last.title}, ${timeText(last.at)}.`, 'Go on with it', () => goOn(last.id));
}

export function wireStart(session: Session): void {
  const start = element('start', HTMLElement);
  const close = (): void => {
    start.hidden = true;
  };
  element('start-close', HTMLButtonElement).addEventListener('click', close);
  session.onTyped(close);
  session.onShown(close);
}
