import type { Cell } from '../../../shared/base/values';
import { formatReference } from '../address';
import type { StandInArea, ChartSeriesState } from '../book';
import type { Env } from '../node';
import { settled } from '../node';
import type { FoundPlace } from './find';
import { sheetById } from './find';

const isText = (cell: Cell | undefined): boolean => typeof cell === 'string' && cell !== '';
const isBlank = (cell: Cell | undefined): boolean => cell === null || cell === undefined || cell === '';

/**
 * Headings when the first line holds text over numbers; labels when the first line across does, or the corner
 * is blank.
 */
interface Layout {
  readonly hasHeadings: boolean;
  readonly hasLabels: boolean;
}
function layoutOf(values: readonly (readonly Cell[])[]): Layout {
  const [top = []] = values;
  const corner = top[0];
  const firstColumn = values.slice(1).map((line) => line[0]);
  const hasHeadings =
    values.length > 1 &&
    (isBlank(corner) || top.slice(1).some(isText) || (top.length === 1 && isText(corner)));
  const hasLabels = top.length > 1 && (isBlank(corner) || firstColumn.some(isText));
  return { hasHeadings, hasLabels };
}

/**
 * The series Excel makes of a source range: one per column when there are more rows than columns, else one
 * per row.
 */
export async function seriesFrom(
  env: Env,
  { sheet, area }: FoundPlace,
  seriesBy: unknown,
): Promise<ChartSeriesState[]> {
  const { name } = await sheetById(env.book, sheet);
  const values = await (await settled(env)).read(sheet, area, 'values');
  const byColumns = seriesBy === 'Columns' || (seriesBy !== 'Rows' && area.rows >= area.columns);
  const { hasHeadings, hasLabels } = layoutOf(values);
  const skipRows = hasHeadings ? 1 : 0;
  const skipColumns = hasLabels ? 1 : 0;
  const reference = (cut: Partial<StandInArea>): string => formatReference(name, { ...area, ...cut });
  const body = {
    row: area.row + skipRows,
    rows: area.rows - skipRows,
    column: area.column + skipColumns,
    columns: area.columns - skipColumns,
  };
  const lines = byColumns ? body.columns : body.rows;
  return Array.from({ length: lines }, (_, i) => {
    const heading = byColumns ? values[0]?.[skipColumns + i] : values[skipRows + i]?.[0];
    const isNamed = byColumns ? hasHeadings : hasLabels;
    const rest = byColumns
      ? { ...body, column: body.column + i, columns: 1 }
      : { ...body, row: body.row + i, rows: 1 };
    const labels = byColumns
      ? { ...body, column: area.column, columns: 1 }
      : { ...body, row: area.row, rows: 1 };
    return {
      name: isNamed && !isBlank(heading) ? String(heading) : `Series${i + 1}`,
      values: reference(rest),
      categories: (byColumns ? hasLabels : hasHeadings) ? reference(labels) : '',
    };
  });
}
