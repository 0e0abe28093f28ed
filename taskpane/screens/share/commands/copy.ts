import { formatNumber } from '../../../../shared/sheet/formula/textFormat';
import type { FreezeOptions, FreezeResult } from '../../../../shared/catalogue/sharing';
import { dateOf } from '../../../../shared/units/dates';
import { say } from '../../../pane/phrases';
import type { Language } from '../../../words/words';
import { languageOf } from '../../../words/words';
import type { StateChange, Command, Doors, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import { HostProblem } from '../../../host/port';
import type { Choices, Look, CopyMade } from '../state/share';
import { copyFileName } from '../state/share';
import { inSlices, MAKING } from '../../../pane/slices';
import type { PaneState } from '../../../pane/keeping/state';
import { begun, freezer, inShare, stoppedAt } from './share';

/** Making the copy, and handing it out. */

export function optionsOf({
  choices,
  look,
  today,
  language = 'en',
}: {
  readonly choices: Choices;
  readonly look: Look;
  readonly today: number;
  readonly language?: Language;
}): FreezeOptions {
  const kept = look.sheets.map(({ name }) => name).filter((name) => !choices.leftOut.has(name));
  return {
    workbook: choices.name.trim() || look.name,
    date:
      language === 'en'
        ? formatNumber(today, 'd mmmm yyyy')
        : new Intl.DateTimeFormat(language, { dateStyle: 'long', timeZone: 'UTC' }).format(dateOf(today)),
    ...(language === 'en' ? {} : { language, say }),
    personal: choices.personal,
    keepResults: choices.keepResults,
    keepAlive: choices.keepAlive,
    acceptProblems: choices.accept,
    // Cells on a sheet that is left out go with it.
    blank: [...choices.blank].filter(
      (wish) =>
        !look.sheets.some(
          ({ name, columns }) => choices.leftOut.has(name) && columns.some(({ cells }) => cells === wish),
        ),
    ),
    ...(choices.leftOut.size > 0 ? { sheets: kept } : {}),
  };
}

const told =
  (tone: 'good' | 'warning' | 'bad', text: string): StateChange =>
  (now) => ({ ...now, notice: { tone, text } });

/** A copy that was made stays, whatever becomes of its delivery. */
async function deliver({ files }: Doors, made: CopyMade): Promise<StateChange> {
  try {
    const text = await files.saveCopy(made.fileName, made.bytes);
    return (now) => ({
      ...now,
      share: { ...now.share, made: { ...made, delivered: text } },
      notice: { tone: 'good', text: `The copy is made. ${text}` },
    });
  } catch (error) {
    const reason =
      error instanceof HostProblem ? error.message : 'No window and no download could be opened.';
    return (now) => ({
      ...now,
      share: { ...now.share, made },
      notice: {
        tone: 'bad',
        text: `The copy is made but did not reach you: ${reason} Try “Save the copy again”.`,
      },
    });
  }
}

async function handOver(result: FreezeResult, doors: Doors, choices: Choices): Promise<StateChange> {
  if (result.kind === 'refused') return told('bad', result.sentence);
  if (result.kind === 'unchanged') return told('good', `${result.sentence} No copy was made.`);
  const made: CopyMade = {
    fileName: copyFileName(choices.name),
    bytes: result.bytes,
    report: result.report,
    delivered: undefined,
  };
  const delivered = await deliver(doors, made);
  return (now) => ({ ...delivered(now), focus: 'share-report' });
}

export const makeCopy: Command = {
  name: 'makeCopy',
  label: 'Make the copy',
  perform: (state): PaneState | Working => {
    const { look, choices } = state.share;
    const language = languageOf(state);
    if (state.task || !look || look.inspection.refused !== undefined) return state;
    if (look.sheets.every(({ name }) => choices.leftOut.has(name)))
      return {
        ...state,
        notice: { tone: 'warning', text: 'Every sheet is left out. Keep at least one in the copy.' },
      };
    return working(
      begun(inShare(state, { made: undefined }), 'Making the copy'),
      async (doors, tell, isStopped) => {
        const { freezeSteps } = await freezer();
        const options = { choices, look, today: doors.today(), language };
        const result = await inSlices(freezeSteps(look.bytes, optionsOf(options)), MAKING, tell, isStopped);
        return result ? handOver(result, doors, choices) : stoppedAt('share-make');
      },
    );
  },
};

export const saveAgain: Command = {
  name: 'saveAgain',
  label: 'Save the copy again',
  perform: (state): PaneState | Working => {
    const { made } = state.share;
    return state.task || !made ? state : working(inShare(state, {}), (doors) => deliver(doors, made));
  },
};
