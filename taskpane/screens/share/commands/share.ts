import type { StateChange, Command, Doors, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { PortTell } from '../../../host/port';
import { HostProblem } from '../../../host/port';
import type { Choices, Look, ShareState } from '../state/share';
import { initialChoices, plainName } from '../state/share';
import { inSlices, LOOKING } from '../../../pane/slices';
import type { PaneState } from '../../../pane/keeping/state';
import { isFree } from '../../../pane/keeping/state';

/** First look: fetch the workbook, say what a copy would be. Nothing is changed. */

/** Freezing is a big part of the code and needed late: it is loaded when first asked for. */
export const freezer = () => import(/* webpackChunkName: "freeze" */ '../../../../shared/catalogue/sharing');

export const inShare = (state: PaneState, share: Partial<ShareState>): PaneState => ({
  ...state,
  share: { ...state.share, ...share },
  notice: undefined,
  question: undefined,
});
export const begun = (state: PaneState, label: string): PaneState => ({
  ...state,
  notice: undefined,
  question: undefined,
  task: { label, done: 0, total: 100, canStop: true },
});
/** The button that began the work gets the keyboard back: the one that stopped it is gone. */
export const stoppedAt =
  (focus: string): StateChange =>
  (now) => ({
    ...now,
    focus,
    notice: { tone: 'warning', text: 'Stopped. Nothing was made and nothing was changed.' },
  });

type Sheets = Look['sheets'];
/**
 * A column to be emptied is followed when rows or columns were inserted; one that is found no more stays
 * wished for as it was typed or chosen.
 */
function movedTo(wish: string, before: Sheets, now: Sheets): string {
  for (const sheet of before) {
    const column = sheet.columns.find(({ cells }) => cells === wish);
    if (!column) continue;
    const alike =
      now
        .find(({ name }) => name === sheet.name)
        ?.columns.filter(({ heading }) => heading === column.heading) ?? [];
    return (alike.find(({ letter }) => letter === column.letter) ?? alike[0])?.cells ?? wish;
  }
  return wish;
}

/** Choices that still mean something in the workbook as it is now stay. */
const choicesFor = (before: ShareState, look: Look): Choices => {
  if (before.look?.name !== look.name) return { ...initialChoices, name: plainName(look.name) };
  const sheets = new Set(look.sheets.map(({ name }) => name));
  const { choices } = before;
  return {
    ...choices,
    accept: false,
    leftOut: new Set([...choices.leftOut].filter((name) => sheets.has(name))),
    blank: new Set([...choices.blank].map((wish) => movedTo(wish, before.look?.sheets ?? [], look.sheets))),
  };
};

interface Given {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly isOpen: boolean;
}

async function lookInto(given: Given, tell: PortTell, isStopped: () => boolean): Promise<StateChange> {
  const { choiceSteps, inspectSteps } = await freezer();
  const inspection = await inSlices(inspectSteps(given.bytes), LOOKING, tell, isStopped);
  const stopped = stoppedAt(given.isOpen ? 'share-look' : 'share-file');
  if (!inspection) return stopped;
  const sheets =
    inspection.refused === undefined
      ? await inSlices(choiceSteps(given.bytes), LOOKING, tell, isStopped)
      : [];
  if (isStopped()) return stopped;
  const look: Look = { ...given, inspection, sheets: sheets ?? [] };
  return (now) => ({
    ...now,
    share: { ...now.share, look, closed: undefined, made: undefined, choices: choicesFor(now.share, look) },
    focus: 'share-found',
  });
}

/** Fetches the open workbook and looks into it. */
export async function lookAtWorkbook(
  { workbook }: Doors,
  tell: PortTell,
  isStopped: () => boolean,
): Promise<StateChange> {
  const file = await workbook.readFile((progress) => {
    tell({ ...progress, canStop: true });
  });
  if (isStopped()) return stoppedAt('share-look');
  if (file.kind === 'closed')
    return (now) => ({
      ...now,
      share: { ...now.share, closed: file.sentence, look: undefined, made: undefined },
      focus: 'share-file',
    });
  return lookInto({ name: file.name, bytes: file.bytes, isOpen: true }, tell, isStopped);
}

export const lookFirst: Command = {
  name: 'lookFirst',
  label: 'Look at this workbook',
  perform: (state): PaneState | Working =>
    isFree(state) ? working(begun(state, 'Fetching the workbook'), lookAtWorkbook) : state,
};

/** A file somebody chose: its name, and how to get at its bytes. */
export interface Chosen {
  readonly name: string;
  readonly size: number;
  readonly read: () => Promise<Uint8Array>;
}

const LARGEST_MB = 250;
export async function readChosen({ name, size, read }: Chosen): Promise<Uint8Array> {
  if (size > LARGEST_MB * 1_000_000)
    throw new HostProblem(
      `${name} is larger than ${LARGEST_MB} MB, more than the pane can hold. Split the workbook, or remove what the reader does not need.`,
    );
  return read();
}

export const lookAtFile: Command<Chosen> = {
  name: 'lookAtFile',
  label: 'Choose a saved file',
  perform: (state, chosen): PaneState | Working => {
    if (state.task) return state;
    return working(begun(state, 'Reading the file'), async (_, tell, isStopped) =>
      lookInto({ name: chosen.name, bytes: await readChosen(chosen), isOpen: false }, tell, isStopped),
    );
  },
};
