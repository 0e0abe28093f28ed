import type { AuditReport } from '../../../shared/records/findings/run';
import type { Fault, Injected } from './faults';
import type { Book, Layout } from './layouts';

const columnOf = (cell: string): string => cell.replace(/\d/g, '');
const rowOf = (cell: string): string => cell.replace(/\D/g, '');

/** Is the fault reported where it is, by its rule or one of those that may rightly say it? */
export function isFound(
  report: AuditReport,
  book: Book,
  fault: Fault,
  at: Injected,
): 'named' | 'found' | 'missed' {
  const place = book.where(at.table, at.row, at.field);
  const points = (one: { readonly sheet: string; readonly cell: string }): boolean => {
    if (!place || one.sheet !== place.sheet) return at.reach === 'column' && place !== undefined;
    if (one.cell === place.cell) return true;
    // In a sheet of runs side by side a row of records is a column of the sheet.
    return at.reach === 'column'
      ? columnOf(one.cell) === columnOf(place.cell) || rowOf(one.cell) === rowOf(place.cell)
      : at.reach === 'row' &&
          (rowOf(one.cell) === rowOf(place.cell) || columnOf(one.cell) === columnOf(place.cell));
  };
  const hits = report.groups
    .flatMap(({ findings }) => findings)
    .filter(({ place: first, related }) => [first, ...related].some(points))
    .map(({ rule }) => rule);
  if (hits.includes(fault.rule)) return 'named';
  return hits.some((rule) => fault.also?.includes(rule)) ? 'found' : 'missed';
}

export const canHold = (fault: Fault, layout: Layout): boolean =>
  !(fault.needsFile && layout === 'text table') &&
  !(fault.needsRows && ['one run per sheet', 'runs across', 'text table'].includes(layout)) &&
  !(fault.rule === 'TEXT.NUMBER' && layout === 'one run per sheet');
