import type { StateChange, Command, Doors, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { PaneState } from '../../../pane/keeping/state';
import { isFree } from '../../../pane/keeping/state';
import { learner, ratesOf } from '../../check/commands/check';
import { withForm } from './season';
import { engine } from './writeBook';

/**
 * The hatchery's own rates, learned in Check and written as a sheet, become figures of the season and spreads
 * of its odds.
 */

const NO_SHEET =
  'There is no sheet of rates in this workbook. Check learns them from your records ' +
  'and writes one: Check, then “Write our own rates as a sheet”.';
const NOTHING_OWN =
  'No run of yours speaks of a figure the season uses: the sheet of rates holds the published ones only.';
const say =
  (tone: 'good' | 'warning', text: string): StateChange =>
  (now) => ({ ...now, notice: { tone, text } });

async function rates({ workbook }: Doors, preparation: string): Promise<StateChange> {
  const cells = await workbook.readRates();
  if (!cells) return say('warning', NO_SHEET);
  const [{ femaleSpreadOf, figuresFrom, ratesFromCells }, { ownFigures }] = await Promise.all([
    learner(),
    engine(),
  ]);
  const { rates: read, leftOut } = ratesFromCells(await ratesOf(cells));
  const { assumptions, spreads, eggShares } = ownFigures(
    (month) => figuresFrom(read, month === undefined ? { preparation } : { preparation, month }),
    femaleSpreadOf(read),
  );
  const count = Object.keys(assumptions).length;
  if (count === 0) return say('warning', [NOTHING_OWN, ...leftOut].join(' '));
  const text = [
    `${count} ${count === 1 ? 'figure' : 'figures'} of the season, and how much they vary, are now your own, from the sheet ${cells.name}. Work the plan out to see what it changes.`,
    ...leftOut,
  ].join(' ');
  return (now) => ({
    ...withForm(now, {
      kept: { ...now.season.form.kept, assumptions, spreads, ...(eggShares ? { eggShares } : {}) },
    }),
    notice: { tone: leftOut.length > 0 ? 'warning' : 'good', text },
    focus: 'season-kept',
  });
}

/** Quick: one sheet of some forty rows is read. */
export const useOwnRates: Command = {
  name: 'useOwnRates',
  label: 'Use our own rates',
  perform: (state): PaneState | Working => {
    if (!isFree(state)) return state;
    const preparation = state.season.form.texts.preparation ?? '';
    return working({ ...state, notice: undefined }, (doors) => rates(doors, preparation));
  },
};
