import { serialOfLocalDay } from '../../../../shared/units/dates';
import type { Keeper } from '../../keeping/keeper';
import type { UniverBook } from '../../univer/book';
import type { Session } from '../workbooks/session';
import type { ExampleId } from '../../files/exampleList';
import { blank, EXAMPLES, titleFor } from '../../files/exampleList';
import { ask, element, tell } from './elements';
import type { OnDisk } from '../workbooks/onDisk';
import { canPick, isChangedSince, pickFile, writeBack } from '../workbooks/onDisk';

/** New, Open, Save, Send and the examples. */

const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';
/** Larger files would take the browser's memory for minutes. */
const LARGEST = 40_000_000;

/** The only clock of the page: days since 30 December 1899, local date. */
export const today = (): number => serialOfLocalDay(new Date());

const sentenceOf = (fault: unknown): string => (fault instanceof Error ? fault.message : String(fault));

export function download(bytes: Uint8Array, fileName: string): void {
  const url = URL.createObjectURL(new Blob([bytes.slice()], { type: XLSX }));
  const link = Object.assign(document.createElement('a'), { href: url, download: fileName });
  link.click();
  setTimeout(() => {
    URL.revokeObjectURL(url);
  }, 10_000);
}

export const fileName = (title: string): string =>
  `${
    title
      .replace(/[\\/:*?"<>|]+/g, ' ')
      .replace(/\s+/g, ' ')
      .trim() || 'Workbook'
  }.xlsx`;

/** On a narrow screen the buttons stand in a list behind one. */
function wireMenu(): void {
  const menu = element('menu', HTMLButtonElement);
  const tools = element('tools', HTMLElement);
  const set = (isOpen: boolean): void => {
    tools.classList.toggle('is-open', isOpen);
    menu.setAttribute('aria-expanded', String(isOpen));
  };
  menu.addEventListener('click', () => {
    set(!tools.classList.contains('is-open'));
  });
  tools.addEventListener('click', ({ target }) => {
    if (target instanceof HTMLButtonElement) set(false);
  });
  tools.addEventListener('change', () => {
    set(false);
  });
}

const canSend = (): boolean =>
  'canShare' in navigator &&
  navigator.canShare({ files: [new File([new Uint8Array(1)], 'a.xlsx', { type: XLSX })] });

export function wireToolbar(open: UniverBook, session: Session, keeper: Keeper): void {
  wireMenu();
  const file = element('file', HTMLInputElement);
  const examples = element('examples', HTMLSelectElement);
  const buttons = ['new', 'open', 'save'].map((id) => element(id, HTMLButtonElement));

  const busy = async (saying: string, work: () => Promise<string>): Promise<void> => {
    for (const control of [...buttons, examples]) control.disabled = true;
    tell(saying);
    try {
      tell(await work());
    } catch (fault) {
      tell(sentenceOf(fault), true);
    }
    for (const control of [...buttons, examples]) control.disabled = false;
  };
  /** What was typed is kept under Workbooks; only where the browser refuses that, the page asks. */
  const mayReplace = async (): Promise<boolean> => {
    await keeper.flush();
    return (
      !session.hasUnsaved ||
      keeper.isSafe ||
      ask({
        title: 'Leave this workbook?',
        lines: ['What you typed since the last save is lost when another workbook takes its place.'],
        yes: 'Leave it',
        no: 'Stay',
      })
    );
  };

  // The file the workbook came from, while saving may go back into it.
  let home: OnDisk | undefined;
  session.onShown(() => {
    home = undefined;
  });

  const openFile = async (chosen: File, handle?: FileSystemFileHandle): Promise<string> => {
    if (chosen.size > LARGEST)
      throw new Error(
        `${chosen.name} is larger than ${LARGEST / 1_000_000} MB; the browser cannot show it. Open it in Excel.`,
      );
    const bytes = new Uint8Array(await chosen.arrayBuffer());
    const lost = await session.read(bytes, chosen.name);
    await keeper.isNew();
    keeper.touch();
    // A file that holds more than is shown here is never written over.
    if (handle && lost.length === 0) home = { handle, modified: chosen.lastModified };
    if (lost.length > 0)
      await ask({
        title: `${chosen.name} is open, with less than the file holds`,
        lines: [
          'The file itself is untouched. Not shown here, and missing from a copy saved from here:',
          ...lost,
        ],
        yes: 'Understood',
        no: 'Close',
      });
    return `${chosen.name} is open.`;
  };
  /** The sentence that says so; undefined when the copy has to go to the downloads. */
  const saveBack = async (bytes: Uint8Array): Promise<string | undefined> => {
    if (!home) return undefined;
    const { name } = home.handle;
    const goOn =
      !(await isChangedSince(home)) ||
      (await ask({
        title: `${name} was changed elsewhere`,
        lines: ['Another program has written to the file since it was opened here.'],
        yes: 'Write over it',
        no: 'Save a copy',
      }));
    const saved = goOn ? await writeBack(home, bytes) : undefined;
    if (!saved) return undefined;
    home = saved;
    session.saved();
    return `${name} is saved.`;
  };
  const save = async (): Promise<string> => {
    const { bytes, lost } = await session.save();
    const back = lost.length === 0 ? await saveBack(bytes).catch(() => undefined) : undefined;
    if (back !== undefined) return back;
    const goOn =
      lost.length === 0 ||
      (await ask({
        title: 'Some things cannot be saved',
        lines: ['The file will hold everything except:', ...lost],
        yes: 'Save all the same',
      }));
    if (!goOn) return 'Not saved.';
    download(bytes, fileName(session.title));
    session.saved();
    return `${fileName(session.title)} is in your downloads.`;
  };
  const send = async (): Promise<string> => {
    const { bytes } = await session.save();
    const sent = new File([bytes.slice()], fileName(session.title), { type: XLSX });
    await navigator.share({ files: [sent], title: session.title }).catch((fault: unknown) => {
      // Closing the list of programs is no fault.
      if (!(fault instanceof DOMException && fault.name === 'AbortError')) throw fault;
    });
    return '';
  };
  const print = async (): Promise<string> => {
    const { printSheet } = await import('../workbooks/print');
    await printSheet(open, await open.book.activeSheet());
    return '';
  };
  element('print', HTMLButtonElement).addEventListener('click', () => {
    void busy('The sheet is being laid out for paper…', print);
  });
  const share = element('share', HTMLButtonElement);
  // Only a try with such a file tells whether this browser can hand one on.
  share.hidden = !canSend();
  share.addEventListener('click', () => {
    void busy('Being made ready to send…', send);
  });
  const show = (id: ExampleId, title: string) =>
    busy(`${title}: being laid out…`, async () => {
      const { buildExample } = await import('../../files/examples');
      await session.show(buildExample(id, today(), navigator.language));
      await keeper.isNew();
      return '';
    });

  element('new', HTMLButtonElement).addEventListener('click', () => {
    void mayReplace().then((yes) =>
      yes
        ? busy('', async () => {
            await session.show(blank());
            await keeper.isNew();
            return '';
          })
        : undefined,
    );
  });
  element('open', HTMLButtonElement).addEventListener('click', () => {
    void mayReplace().then(async (yes) => {
      if (!yes) return;
      if (!canPick()) {
        file.click();
        return;
      }
      const handle = await pickFile();
      if (handle)
        await busy(`${handle.name} is being read…`, async () => openFile(await handle.getFile(), handle));
    });
  });
  element('save', HTMLButtonElement).addEventListener('click', () => {
    void busy('Saving…', save);
  });
  file.addEventListener('change', () => {
    const [chosen] = file.files ?? [];
    if (chosen)
      void busy(`${chosen.name} is being read…`, () => openFile(chosen)).then(() => {
        file.value = '';
      });
  });
  examples.append(
    ...EXAMPLES.map((example) => new Option(titleFor(example, navigator.language), example.id)),
  );
  examples.addEventListener('change', () => {
    const chosen = EXAMPLES.find(({ id }) => id === examples.value);
    examples.value = '';
    if (chosen)
      void mayReplace().then((yes) =>
        yes ? show(chosen.id, titleFor(chosen, navigator.language)) : undefined,
      );
  });
  window.addEventListener('beforeunload', (event) => {
    void keeper.flush();
    if (session.hasUnsaved && !keeper.isSafe) event.preventDefault();
  });
}
