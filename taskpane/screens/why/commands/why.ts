import type { Cell, Grid } from '../../../../shared/base/values';
import type { Command, Doors, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import { HostProblem } from '../../../host/port';
import type { CellLook } from '../../../host/port';
import type { PaneState } from '../../../pane/keeping/state';
import { hasWorkbook } from '../../../pane/keeping/state';
import { addressOf, parseArea, quoteSheet, splitReference } from '../../../../shared/sheet/formula/address';
import { wordsFor } from '../../../words/words';
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
    const isInserting = state.why.part === 'find' && state.functions.open !== undefined;
    if (!hasWorkbook(state) || state.task || state.screen !== 'why') return state;
    if (state.why.part !== 'cell' && !isInserting) return state;
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

/** The colour of cells a formula reads; the note says by which, for whoever does not see it. */
const READ_FILL = '#CFE5F2';
/** A whole column is read too, and would be no help in colour. */
const MOST_MARKED = 400;

/** Single cells of a reference, on the sheet it means. */
function cellsOf(
  reference: string,
  on: string,
): readonly { readonly sheet: string; readonly address: string }[] {
  const { sheet = on, area } = splitReference(placed(reference, on));
  const block = parseArea(area.replaceAll('$', ''));
  if (!block) return [];
  const cells: { sheet: string; address: string }[] = [];
  for (let row = block.top; row <= block.bottom && cells.length <= MOST_MARKED; row++)
    for (let column = block.left; column <= block.right && cells.length <= MOST_MARKED; column++)
      cells.push({ sheet, address: addressOf(row, column) });
  return cells;
}

/** Colours the cells the selected formula reads. */
export const markCells: Command = {
  name: 'markCells',
  label: 'Mark its cells',
  perform: (state): PaneState | Working => {
    const { cell, marked } = state.why;
    if (!cell || state.task || marked.length > 0) return state;
    const cells = referencesOf(cell.formula)
      .flatMap((reference) => cellsOf(reference, cell.sheet))
      .slice(0, MOST_MARKED);
    if (cells.length === 0) return state;
    const note = wordsFor(state).why.readBy(`${quoteSheet(cell.sheet)}!${cell.address}`);
    return working(state, async ({ workbook }) => {
      const report = await workbook.mark(
        cells.map((one) => ({ ...one, fill: READ_FILL, note })),
        () => undefined,
      );
      return (now) => ({
        ...inWhy(now, { marked: report.marked }),
        ...(report.left.length > 0
          ? { notice: { tone: 'warning' as const, text: report.left.join(' ') } }
          : {}),
      });
    });
  },
};

export const unmarkCells: Command = {
  name: 'unmarkCells',
  label: 'Take the marks away',
  perform: (state): PaneState | Working => {
    const { marked } = state.why;
    if (marked.length === 0 || state.task) return state;
    return working(state, async ({ workbook }) => {
      const { stuck } = await workbook.unmark(marked, () => undefined);
      return (now) => inWhy(now, { marked: stuck });
    });
  },
};
