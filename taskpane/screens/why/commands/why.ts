import type { Cell, Grid } from '../../../../shared/base/values';
import type { Command, Doors, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import { HostProblem } from '../../../host/port';
import type { CellLook } from '../../../host/port';
import type { PaneState } from '../../../pane/state';
import { hasWorkbook } from '../../../pane/state';
import { quoteSheet, splitReference } from '../../../../shared/sheet/formula/address';
import { referencesOf } from '../state/explain';
import type { WhyPart, WhyState } from '../state/why';

const inWhy = (state: PaneState, why: Partial<WhyState>): PaneState => ({
  ...state,
  why: { ...state.why, ...why },
});

/** A reference without a sheet means the sheet of its cell. */
export const placed = (reference: string, sheet: string): string =>
  splitReference(reference).sheet === undefined ? `${quoteSheet(sheet)}!${reference}` : reference;

const same = (a: CellLook | undefined, b: CellLook): boolean =>
  a !== undefined &&
  a.sheet === b.sheet &&
  a.address === b.address &&
  a.formula === b.formula &&
  JSON.stringify(a.value) === JSON.stringify(b.value);

/** What the references hold; one that cannot be read is left out. */
async function holdings({ workbook }: Doors, cell: CellLook): Promise<Record<string, Cell | Grid>> {
  const read = await Promise.all(
    referencesOf(cell.formula).map(async (reference): Promise<[string, Grid | undefined]> => {
      try {
        return [reference, (await workbook.readReference(placed(reference, cell.sheet))).values];
      } catch (error) {
        if (error instanceof HostProblem) return [reference, undefined];
        throw error;
      }
    }),
  );
  return Object.fromEntries(read.filter((pair): pair is [string, Grid] => pair[1] !== undefined));
}

/** Looks at the selected cell; asked again and again while the place is open. */
export const followCell: Command = {
  name: 'followCell',
  label: 'Look at the selected cell',
  perform: (state): PaneState | Working => {
    if (!hasWorkbook(state) || state.task || state.screen !== 'why' || state.why.part !== 'cell')
      return state;
    return working(state, async (doors) => {
      let cell: CellLook;
      try {
        cell = await doors.workbook.readCell();
      } catch (error) {
        // A chart is selected, or a cell is being edited: the last cell stays.
        if (error instanceof HostProblem) return (now) => now;
        throw error;
      }
      if (same(state.why.cell, cell)) return (now) => now;
      const holds = cell.formula === '' ? {} : await holdings(doors, cell);
      return (now) => inWhy(now, { cell, holds });
    });
  },
};

export const showPart: Command<WhyPart> = {
  name: 'showPart',
  label: 'Show',
  perform: (state, part): PaneState | Working => {
    const next = inWhy({ ...state, notice: undefined, question: undefined }, { part });
    return part === 'cell' ? followCell.perform(next, undefined) : next;
  },
};
