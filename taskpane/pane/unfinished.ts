import type { Command, Working } from './command';
import { working } from './command';
import type { PaneState } from './state';
import { list } from './writing';

/** A writing that broke off for good is found at the next start: asked first, then taken away. */

const counted = (n: number): string => (n === 1 ? '1 sheet' : `${n} sheets`);

/** Asked once the workbook is there. */
export const lookForLeft: Command = {
  name: 'lookForLeft',
  label: 'Look for what a writing left',
  perform: (state): PaneState | Working =>
    working(state, async ({ workbook }) => {
      const left = await workbook.leftBehind().catch(() => undefined);
      if (!left) return (now) => now;
      if (left.sheets.length === 0) {
        await workbook.takeLeftAway().catch(() => undefined);
        return (now) => now;
      }
      return (now) => ({
        ...now,
        question: {
          text:
            `The writing of “${left.title}” was broken off the last time and left ${counted(left.sheets.length)}: ` +
            `${list(left.sheets)}. Take ${left.sheets.length === 1 ? 'it' : 'them'} away?`,
          answers: [
            { label: 'Take away', act: 'takeLeftAway' },
            { label: 'Leave as it is', act: 'keepLeft' },
          ],
        },
      });
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

export const keepLeft: Command = {
  name: 'keepLeft',
  label: 'Leave as it is',
  perform: (state) =>
    working(answered(state), async ({ workbook }) => {
      await workbook.keepLeft();
      return (now) => now;
    }),
};
