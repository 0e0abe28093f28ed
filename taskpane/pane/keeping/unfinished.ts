import type { Command, StateChange, Working } from '../command';
import { working } from '../command';
import type { PaneState, ShownAnswer } from './state';
import { list } from '../values/writing';

/** A writing that broke off for good is found at the next start: asked first, then taken away. */

const counted = (n: number): string => (n === 1 ? '1 sheet' : `${n} sheets`);

const LEAVE: ShownAnswer = { label: 'Leave as it is', act: 'keepLeft' };
const PUT_BACK: ShownAnswer = { label: 'Put back what stood there', act: 'putLeftBack' };
const HALF_WRITTEN = (sheets: readonly string[]): string =>
  `The season on ${list(sheets)} was being written over the last time, and that broke off: its sheets are half ` +
  'written. Put back what stood there?';

const asked =
  (text: string, answers: readonly ShownAnswer[]): StateChange =>
  (now) => ({ ...now, question: { text, answers } });

/** Asked once the workbook is there. */
export const lookForLeft: Command = {
  name: 'lookForLeft',
  label: 'Look for what a writing left',
  perform: (state): PaneState | Working =>
    working(state, async ({ workbook }) => {
      const left = await workbook.leftBehind().catch(() => undefined);
      if (!left) return (now) => now;
      if (left.over) return asked(HALF_WRITTEN(left.sheets), [PUT_BACK, LEAVE]);
      if (left.sheets.length === 0) {
        await workbook.takeLeftAway().catch(() => undefined);
        return (now) => now;
      }
      return asked(
        `The writing of “${left.title}” was broken off the last time and left ${counted(left.sheets.length)}: ` +
          `${list(left.sheets)}. Take ${left.sheets.length === 1 ? 'it' : 'them'} away?`,
        [{ label: 'Take away', act: 'takeLeftAway' }, LEAVE],
      );
    }),
};

const answered = (state: PaneState): PaneState => ({ ...state, question: undefined, notice: undefined });

export const takeLeftAway: Command = {
  name: 'takeLeftAway',
  label: 'Take away',
  perform: (state) =>
    working(answered(state), async ({ workbook }) => {
      const gone = await workbook.takeLeftAway();
      return (now) => ({
        ...now,
        notice: { tone: 'good', text: `${counted(gone.length)} of the broken-off writing taken away.` },
      });
    }),
};

export const putLeftBack: Command = {
  name: 'putLeftBack',
  label: 'Put back what stood there',
  perform: (state) =>
    working(answered(state), async (doors, tell) => {
      const left = await doors.workbook.leftBehind();
      if (!left?.over) return (now) => now;
      const { putSeasonBack } = await import('../../screens/season/commands/writeOver');
      const isBack = await putSeasonBack(doors, tell, left.over);
      return (now) => ({
        ...now,
        notice: isBack
          ? { tone: 'good', text: 'The season is back as it stood before.' }
          : {
              tone: 'bad',
              text:
                'The workbook keeps nothing of that season any more. Use a copy of the file, or the version ' +
                'history of your storage.',
            },
      });
    }),
};

export const keepLeft: Command = {
  name: 'keepLeft',
  label: 'Leave as it is',
  perform: (state) =>
    working(answered(state), async ({ workbook }) => {
      await workbook.keepLeft();
      return (now) => now;
    }),
};
