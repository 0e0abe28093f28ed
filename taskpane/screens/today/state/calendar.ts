import type { RangeCells } from '../../../../shared/records/read/sheetCells';
import type { Cell } from '../../../../shared/base/values';
import { isError } from '../../../../shared/base/values';
import { isMomentCell } from '../../../../shared/units/dates';
import { addressOf } from '../../../../shared/sheet/formula/address';
import type { BookDay, BookTask } from '../../../../shared/books/living/reading/day';
import { grouped } from '../../../pane/values/show';
import type { TaskOfDay } from './today';

/**
 * Tasks with their hours, out of a season's book or any sheet with a list of what to do: columns are found by
 * their headings.
 */

/** Sheets worth reading where no season stands; others are left alone, however big. */
export const PLAN_SHEETS = /^(calendar|tasks|days)\b/i;

const textOf = (cell: Cell | undefined): string =>
  cell === null || cell === undefined || isError(cell) ? '' : String(cell).trim();
const lower = (cell: Cell | undefined): string => textOf(cell).toLowerCase();

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
  ['done', 'late', 'left out'].includes(lower(cell)) || isMomentCell(cell);

/** The day of a row, with the hour of its own column where the day has none. */
function momentOf(line: readonly (Cell | undefined)[], hour: number): number | undefined {
  const day = line.find(isMomentCell);
  const clock = line[hour];
  return day !== undefined && Number.isInteger(day) && typeof clock === 'number' && clock >= 0 && clock < 1
    ? day + clock
    : day;
}

/** Three telling digits, whole numbers whole: 4,870 larvae, 0.75 mL. */
const amountText = (amount: number, unit: string): string => {
  const size = Math.abs(amount);
  const digits = size >= 100 || Number.isInteger(amount) ? 0 : size >= 10 ? 1 : 2;
  return `${grouped(amount, digits)} ${unit}`.trim();
};

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
        amount: typeof amount === 'number' ? amountText(amount, textOf(line[much + 1])) : '',
        remember: remember < 0 ? '' : textOf(line[remember]),
        sheet: sheet.name,
        row,
        tick: done < 0 ? undefined : addressOf(row - 1, sheet.left + done),
        isDone: done >= 0 && isDoneWord(line[done]),
      },
    ];
  });
}

export const tasksIn = (sheets: readonly RangeCells[]): readonly TaskOfDay[] => sheets.flatMap(ofCalendar);

/** Half of no dose is nothing to do. */
const isAsked = ({ task, amount }: BookTask): boolean =>
  !(amount === 0 && (task === 'dose1' || task === 'dose2'));

/** Tasks of a season's book; the how-manieth of its kind tells two of one batch apart. */
export function tasksOfBook({ tasks }: Pick<BookDay, 'tasks'>): readonly TaskOfDay[] {
  const seen = new Map<string, number>();
  return tasks.filter(isAsked).map((task): TaskOfDay => {
    const kind = [task.batch, task.task ?? task.what, task.order].join('|');
    const n = seen.get(kind) ?? 0;
    seen.set(kind, n + 1);
    const { amount, unit } = task;
    return {
      ...task,
      key: `${kind}|${n}`,
      amount: amount === undefined || amount === 0 ? '' : amountText(amount, unit),
      remember: '',
    };
  });
}
