import type { Keeper } from '../../keeping/keeper';
import { ask, element, tell } from '../frame/elements';
import type { Session } from './session';

/** Workbooks the browser keeps: going on with one, earlier versions, taking one out. */

const TIME = new Intl.DateTimeFormat('en', {
  day: 'numeric',
  month: 'short',
  hour: '2-digit',
  minute: '2-digit',
  hourCycle: 'h23',
});
export const timeText = (at: number): string => TIME.format(new Date(at));

const OTHER_TAB =
  'This workbook is open in another tab. Here you go on with a copy; neither writes over the other.';

/** Goes on with a kept workbook; false when it is not there any more. */
export async function goOnWith(session: Session, keeper: Keeper, id: string): Promise<boolean> {
  const found = await keeper.take(id);
  if (!found) return false;
  await session.showKept(found.whole);
  if (found.isCopy) {
    keeper.touch();
    tell(OTHER_TAB, true);
  }
  return true;
}

const button = (text: string, label: string, act: () => unknown): HTMLButtonElement => {
  const made = Object.assign(document.createElement('button'), { type: 'button', textContent: text });
  if (label !== '') made.setAttribute('aria-label', label);
  made.addEventListener('click', () => void act());
  return made;
};

const line = (...parts: (string | Node)[]): HTMLElement => {
  const made = document.createElement('p');
  made.className = 'kept';
  made.append(...parts);
  return made;
};

export function wireBooks(session: Session, keeper: Keeper): void {
  const dialog = element('books-dialog', HTMLDialogElement);
  const fill = async (): Promise<void> => {
    const books = await keeper.list();
    element('books-list', HTMLElement).replaceChildren(
      ...(books.length === 0 ? [line('None yet. A workbook is kept as soon as something is typed.')] : []),
      ...books.map(({ id, title, at }) => {
        const isOpen = id === keeper.currentId;
        return line(
          `${title}, ${timeText(at)}${isOpen ? ' (open)' : ''} `,
          ...(isOpen
            ? []
            : [
                button('Open', `Open ${title}`, async () => {
                  dialog.close();
                  await keeper.flush();
                  if (!(await goOnWith(session, keeper, id)))
                    tell('That workbook is not there any more.', true);
                }),
                button('Remove', `Remove ${title}`, async () => {
                  const yes = await ask({
                    title: `Remove ${title}?`,
                    lines: [
                      'It is taken out of this browser and cannot be brought back. Files you saved stay.',
                    ],
                    yes: 'Remove',
                  });
                  if (yes) await keeper.forget(id);
                  await fill();
                }),
              ]),
        );
      }),
    );
    const versions = await keeper.versions();
    element('versions-list', HTMLElement).replaceChildren(
      ...(versions.length === 0 ? [line('No earlier version yet.')] : []),
      ...versions.map((version) =>
        line(
          `${timeText(version.at)} `,
          button('Go back to this', `Go back to the version of ${timeText(version.at)}`, async () => {
            dialog.close();
            const whole = await keeper.takeVersion(version);
            await session.showKept(whole);
            keeper.touch();
            tell(
              `The workbook is as it was on ${timeText(version.at)}; what it was just now is a version too.`,
            );
          }),
        ),
      ),
    );
  };
  element('books', HTMLButtonElement).addEventListener('click', () => {
    void keeper.flush().then(async () => {
      await fill();
      dialog.showModal();
    });
  });
}
