import type { SheetCells } from '../read/sheetCells';
import { valueAt } from '../read/sheetCells';
import type { FieldName } from '../fields';
import { strongField } from './layout';
import { unitOfWord } from './units';

/** A value of a form: where it stands, and the label beside it. */
export interface FormCell {
  readonly label: string;
  readonly position: number;
  readonly column: number;
}
/** One run written as labels with values beside them. */
export interface FormRecord {
  readonly sheet: SheetCells;
  readonly cells: readonly FormCell[];
}

interface Label {
  readonly position: number;
  readonly column: number;
  readonly text: string;
  readonly field: FieldName;
}

const LEAST_LABELS = 3;
const LEAST_SCORE = 0.75;

const isFilled = (sheet: SheetCells, position: number, column: number): boolean => {
  const cell = valueAt(sheet, position, column);
  return cell !== null && cell !== '';
};

function labelsOf(sheet: SheetCells, taken: (position: number, column: number) => boolean): Label[] {
  const labels: Label[] = [];
  for (let column = 0; column < sheet.columns.length; column++) {
    for (let position = 0; position < (sheet.columns[column]?.values.length ?? 0); position++) {
      const cell = valueAt(sheet, position, column);
      if (typeof cell !== 'string' || taken(position, column)) continue;
      const text = cell.replace(/[:=\s]+$/, '');
      const field = strongField(text, LEAST_SCORE);
      if (field) labels.push({ position, column, text, field });
    }
  }
  return labels;
}

/** Columns to the right of the labels that hold values, and the one that holds units. */
function valueColumns(
  sheet: SheetCells,
  labels: readonly Label[],
  to: number,
): { readonly values: readonly number[]; readonly units: number | undefined } {
  const [first] = labels;
  if (!first) return { values: [], units: undefined };
  const filled = new Map<number, number>();
  let units: number | undefined;
  for (let column = first.column + 1; column < Math.min(to, sheet.columns.length); column++) {
    const cells = labels
      .map(({ position }) => valueAt(sheet, position, column))
      .filter((cell) => cell !== null && cell !== '');
    const named = cells.filter(
      (cell) => typeof cell === 'string' && unitOfWord(cell.replace(/[()]/g, '')) !== undefined,
    ).length;
    if (named >= 2 && named >= cells.length * 0.6) units ??= column;
    else if (cells.length > 0) filled.set(column, cells.length);
  }
  const most = Math.max(0, ...filled.values());
  return {
    values: [...filled].filter(([, n]) => n >= Math.max(2, most * 0.4)).map(([column]) => column),
    units,
  };
}

/** Labels of one column, cut where the first of them comes again: forms below each other. */
function stacks(labels: readonly Label[]): Label[][] {
  const list: Label[][] = [];
  let seen = new Set<FieldName>();
  for (const label of labels) {
    if (list.length === 0 || seen.has(label.field)) {
      list.push([]);
      seen = new Set();
    }
    list.at(-1)?.push(label);
    seen.add(label.field);
  }
  return list;
}

/** Runs kept as forms: labels in a column, values beside them, one or several runs next to each other. */
export function layForms(
  sheet: SheetCells,
  taken: (position: number, column: number) => boolean,
): FormRecord[] {
  const byColumn = new Map<number, Label[]>();
  for (const label of labelsOf(sheet, taken))
    byColumn.set(label.column, [...(byColumn.get(label.column) ?? []), label]);
  const columns = [...byColumn]
    .filter(([, labels]) => new Set(labels.map(({ field }) => field)).size >= LEAST_LABELS)
    .map(([column]) => column)
    .sort((a, b) => a - b);
  return columns.flatMap((column, i) =>
    stacks(byColumn.get(column) ?? []).flatMap((labels) => {
      const { values, units } = valueColumns(sheet, labels, columns[i + 1] ?? Infinity);
      return values.flatMap((at) => {
        const cells = labels
          .filter(({ position }) => isFilled(sheet, position, at))
          .map(({ text, position }) => {
            const unit = units === undefined ? null : valueAt(sheet, position, units);
            return {
              label:
                typeof unit === 'string' && unit !== '' ? `${text} (${unit.replace(/[()]/g, '')})` : text,
              position,
              column: at,
            };
          });
        return cells.length >= 2 ? [{ sheet, cells }] : [];
      });
    }),
  );
}
