import type { BookFault } from '../../../../shared/season/book/orderBook';
import type { Command, Doors, StateChange, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { CellMark, Marked } from '../../../host/port';
import type { PaneState } from '../../../pane/keeping/state';
import { isFree } from '../../../pane/keeping/state';
import { bookFaults } from '../state/faults';
import { sameOrders } from '../state/sameOrders';
import { readTables, TABLES_SHEET, tablesSheet } from '../state/tables';
import { inSeason, withForm } from './season';

/** Orders, vats and fish on a sheet of their own: made in one press, read in another. */

const quiet = (): void => undefined;

export const makeTables: Command = {
  name: 'makeTables',
  label: 'As tables on a sheet',
  perform: (state): PaneState | Working => {
    if (!isFree(state)) return state;
    const begun: PaneState = {
      ...state,
      notice: undefined,
      question: undefined,
      task: { label: 'Making the sheet', done: 0, total: 1 },
    };
    return working(begun, async ({ workbook }, tell): Promise<StateChange> => {
      const there = (await workbook.listSheets()).includes(TABLES_SHEET);
      if (!there)
        await workbook.writeWorkbook(
          { title: TABLES_SHEET, names: [], sheets: [tablesSheet(state.season.form)] },
          '',
          tell,
        );
      await workbook.goTo(TABLES_SHEET, 'B5');
      const text = there
        ? `The sheet “${TABLES_SHEET}” is there already and stays as it is: type on it, then read the tables.`
        : `The sheet “${TABLES_SHEET}” is made: type or paste on it, then read the tables.`;
      return (now) => ({ ...now, notice: { tone: 'good', text }, focus: 'season-read-tables' });
    });
  },
};

const FAULT_FILL = '#F6C6BE';
/** Each wrong cell once, with the first sentence that is said of it. */
function marksOf(
  faults: readonly BookFault[],
  cellOf: (fault: BookFault) => string | undefined,
): readonly CellMark[] {
  const marks = new Map<string, CellMark>();
  for (const fault of faults) {
    const address = cellOf(fault);
    if (address !== undefined && !marks.has(address))
      marks.set(address, {
        sheet: TABLES_SHEET,
        address,
        fill: FAULT_FILL,
        note: `Spawnbook: ${fault.message}`,
      });
  }
  return [...marks.values()];
}

const countsText = (counts: Readonly<Record<string, number>>): string =>
  Object.entries(counts)
    .map(([what, n]) => `${n} ${n === 1 ? what.replace(/s$/, '') : what}`)
    .join(', ');

async function read({ workbook }: Doors, state: PaneState, before: readonly Marked[]): Promise<StateChange> {
  const say =
    (text: string): StateChange =>
    (now) => ({ ...now, notice: { tone: 'warning', text } });
  if (!(await workbook.listSheets()).includes(TABLES_SHEET))
    return say(`There is no sheet “${TABLES_SHEET}” in this workbook. One press makes it.`);
  const grid = (await workbook.readCells({ sheet: TABLES_SHEET }, quiet, () => false))?.sheets[0];
  const found = grid && readTables(grid, state.season.form);
  if (!found)
    return say(`The headings of “${TABLES_SHEET}” are gone. Bring them back, or make the sheet anew.`);
  // Marks of the last reading go first, or their colour would be taken for the person's own.
  const stuck = before.length > 0 ? (await workbook.unmark(before, quiet)).stuck : [];
  const marks = marksOf(bookFaults(found.form), found.cellOf);
  const { marked } = marks.length > 0 ? await workbook.mark(marks, quiet) : { marked: [] };
  if (marks[0]) await workbook.goTo(TABLES_SHEET, marks[0].address);
  return (now) => {
    const next = withForm(
      inSeason(now, { marks: [...stuck, ...marked], page: 0, isAsked: true }),
      found.form,
    );
    const counted = `Read: ${countsText(found.counts)}.`;
    const [first] = marks;
    const same = sameOrders(found.form).size;
    const twice =
      same === 0
        ? ''
        : ` ${same === 1 ? 'One order says' : `${same} orders say`} the same as another: look whether ${same === 1 ? 'it was' : 'they were'} typed twice.`;
    return {
      ...next,
      notice: first
        ? {
            tone: 'warning',
            text: `${counted} ${marks.length === 1 ? 'One cell' : `${marks.length} cells`} cannot be used and ${marks.length === 1 ? 'is' : 'are'} marked. ${first.address}: ${first.note.replace('Spawnbook: ', '')}`,
          }
        : { tone: 'good', text: `${counted}${twice} Now work the plan out.` },
      focus: first ? 'season-read-tables' : 'season-plan',
    };
  };
}

export const readTablesIn: Command = {
  name: 'readTablesIn',
  label: 'Read the tables',
  perform: (state): PaneState | Working =>
    isFree(state)
      ? working({ ...state, notice: undefined, question: undefined }, (doors) =>
          read(doors, state, state.season.marks),
        )
      : state,
};
