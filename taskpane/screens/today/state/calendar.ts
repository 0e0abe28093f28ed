import type { RangeCells } from '../../../../shared/records/read/sheetCells';
import type { Cell } from '../../../../shared/base/values';
import { isError } from '../../../../shared/base/values';
import { addressOf } from '../../../../shared/sheet/formula/address';
import type { TaskOfDay } from './today';

/**
 * Tasks with their hours, out of the sheets of a plan: a calendar with one row a task, or runs with one row
 * each and their hours side by side. Columns are found by their headings.
 */

/** Sheets worth reading; others are left alone, however big. */
export const PLAN_SHEETS = /^(calendar|runs|tasks|days)\b/i;

const textOf = (cell: Cell | undefined): string =>
  cell === null || cell === undefined || isError(cell) ? '' : String(cell).trim();
const lower = (cell: Cell | undefined): string => textOf(cell).toLowerCase();

/** A day between 2000 and 2100: what else stands in a column of hours is no hour. */
const isMoment = (cell: Cell | undefined): cell is number =>
  typeof cell === 'number' && cell > 36_526 && cell < 73_051;

interface Headings {
  readonly row: number;
  readonly at: (heading: string) => number;
}
function headingsOf({ values }: RangeCells, needed: readonly string[]): Headings | undefined {
  const row = values.findIndex((line) => {
    const words = line.map(lower);
    return needed.every((heading) => words.includes(heading));
  });
  if (row < 0) return undefined;
  const words = (values[row] ?? []).map(lower);
  return { row, at: (heading) => words.indexOf(heading) };
}

const isDoneWord = (cell: Cell | undefined): boolean =>
  ['done', 'late', 'left out'].includes(lower(cell)) || isMoment(cell);

/** The day of a row, with the hour of its own column where the day has none. */
function momentOf(line: readonly (Cell | undefined)[], hour: number): number | undefined {
  const day = line.find(isMoment);
  const clock = line[hour];
  return day !== undefined && Number.isInteger(day) && typeof clock === 'number' && clock >= 0 && clock < 1
    ? day + clock
    : day;
}

function ofCalendar(sheet: RangeCells): readonly TaskOfDay[] {
  const head = headingsOf(sheet, ['what to do']);
  if (!head) return [];
  const [what, done, remember, much] = ['what to do', 'done', 'remember', 'how much'].map(head.at) as [
    number,
    number,
    number,
    number,
  ];
  return sheet.values.slice(head.row + 1).flatMap((line, i): TaskOfDay[] => {
    const at = momentOf(line, head.at('hour'));
    const text = textOf(line[what]);
    if (at === undefined || text === '') return [];
    const amount = line[much];
    const row = sheet.top + head.row + 2 + i;
    return [
      {
        key: `${sheet.name}!${row}`,
        at,
        what: text,
        amount:
          typeof amount === 'number'
            ? `${String(Number(amount.toPrecision(3)))} ${textOf(line[much + 1])}`.trim()
            : '',
        remember: remember < 0 ? '' : textOf(line[remember]),
        sheet: sheet.name,
        row,
        tick: done < 0 ? undefined : addressOf(row - 1, sheet.left + done),
        isDone: done >= 0 && isDoneWord(line[done]),
      },
    ];
  });
}

/** The hours of a run, in their order, as they are called there. */
const RUN_HOURS = [
  ['inject at', 'Inject'],
  ['strip at', 'Strip'],
  ['first hatch', 'Look for the first hatch'],
  ['first feed', 'First food'],
] as const;

function ofRuns(sheet: RangeCells): readonly TaskOfDay[] {
  const head = headingsOf(sheet, ['run', 'inject at']);
  if (!head) return [];
  const [run, order, pairs] = ['run', 'order', 'females × males'].map(head.at) as [number, number, number];
  return sheet.values.slice(head.row + 1).flatMap((line, i) =>
    RUN_HOURS.flatMap(([heading, verb]): TaskOfDay[] => {
      const at = line[head.at(heading)];
      if (!isMoment(at)) return [];
      const row = sheet.top + head.row + 2 + i;
      return [
        {
          key: `${sheet.name}!${row}!${heading}`,
          at,
          what: `${verb}: run ${textOf(line[run])}, ${textOf(line[order])}`,
          amount: heading === 'inject at' ? textOf(line[pairs]) : '',
          remember: '',
          sheet: sheet.name,
          row,
          tick: undefined,
          isDone: false,
        },
      ];
    }),
  );
}

export const tasksIn = (sheets: readonly RangeCells[]): readonly TaskOfDay[] =>
  sheets.flatMap((sheet) => [...ofCalendar(sheet), ...ofRuns(sheet)]);
