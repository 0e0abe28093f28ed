import type { Command, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { CheckState } from '../state/share';
import { isDigest, plainDigest } from '../state/share';
import { inSlices, LOOKING } from '../../../pane/slices';
import type { PaneState } from '../../../pane/keeping/state';
import type { Chosen } from './share';
import { begun, freezer, inShare, readChosen, stoppedAt } from './share';

/** Does a copy still hold the numbers it was made with? */

const inCheck = (state: PaneState, check: Partial<CheckState>): PaneState =>
  inShare(state, { check: { ...state.share.check, result: undefined, fault: undefined, ...check } });

export const chooseCopy: Command<Chosen> = {
  name: 'chooseCopy',
  label: 'Choose a copy',
  perform: (state, chosen): PaneState | Working => {
    if (state.task) return state;
    return working(
      { ...inCheck(state, { file: undefined }), task: { label: 'Reading the file', done: 0, total: 100 } },
      async () => {
        const bytes = await readChosen(chosen);
        return (now) => inCheck(now, { file: { name: chosen.name, bytes } });
      },
    );
  },
};

export const typeDigest: Command<string> = {
  name: 'typeDigest',
  label: 'Type the digest',
  perform: (state, digest) => inCheck(state, { digest }),
};

export const checkCopy: Command = {
  name: 'checkCopy',
  label: 'Check this copy',
  perform: (state): PaneState | Working => {
    const { file, digest } = state.share.check;
    if (state.task) return state;
    if (!file)
      return {
        ...inCheck(state, { fault: 'First choose the copy, a file that ends in .xlsx.' }),
        focus: 'share-check-file',
      };
    const expected = plainDigest(digest);
    if (expected !== '' && !isDigest(expected))
      return {
        ...inCheck(state, {
          fault: `A digest has 64 characters, digits and the letters a to f; this one has ${expected.length}${/[^0-9a-f]/.test(expected) ? ' and others among them' : ''}. Empty the field to check without it.`,
        }),
        focus: 'share-digest',
      };
    return working(begun(inCheck(state, {}), 'Checking the copy'), async (_, tell, isStopped) => {
      const { verifySteps } = await freezer();
      const result = await inSlices(
        verifySteps(file.bytes, expected === '' ? undefined : expected),
        LOOKING,
        tell,
        isStopped,
      );
      return result
        ? (now) => ({ ...inCheck(now, { result }), focus: 'share-checked' })
        : stoppedAt('share-check');
    });
  },
};
