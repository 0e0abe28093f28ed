import { livingBook } from '../../../shared/books/living';
import { planBatches } from '../../../shared/season/batches';
import { tokenize } from '../../../shared/sheet/formula/tokenize';
import { splitReference } from '../../../shared/sheet/formula/address';
import type { CellModel, SheetModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { exampleTexts, initialPlan, readForm } from '../../../taskpane/screens/plan/state/plan';

/** 1 March 2027. */
export const TODAY = 46_447;

/** A whole book is long to write cell by cell; these sheets have one of everything a book has. */
const KEPT: ReadonlySet<string> = new Set(['Batches', 'Vats', 'Counts', 'Shopping and money', 'Figures']);

/** Sheets of the book alone: a formula that reaches beyond them keeps its value only. */
function partOf(model: WorkbookModel): WorkbookModel {
  const isKept = (reference: string): boolean => {
    const { sheet } = splitReference(reference.replaceAll('$', ''));
    return sheet === undefined || KEPT.has(sheet);
  };
  const names = model.names.filter(({ refersTo }) => isKept(refersTo));
  const known = new Set(names.map(({ name }) => name.toLowerCase()));
  const reaches = (formula: string): boolean =>
    tokenize(formula).some(
      ({ kind, text }) =>
        (kind === 'reference' && !isKept(text)) || (kind === 'name' && !known.has(text.toLowerCase())),
    );
  const cellOf = ({ formula, ...rest }: CellModel): CellModel =>
    formula === undefined || reaches(formula) ? rest : { ...rest, formula };
  const sheetOf = (sheet: SheetModel): SheetModel => ({
    ...sheet,
    cells: Object.fromEntries(Object.entries(sheet.cells).map(([at, cell]) => [at, cellOf(cell)])),
    ...(sheet.conditionals
      ? { conditionals: sheet.conditionals.filter(({ formula }) => !reaches(formula)) }
      : {}),
    ...(sheet.charts
      ? {
          charts: sheet.charts.filter(
            ({ categories, series }) => isKept(categories) && series.every(({ values }) => isKept(values)),
          ),
        }
      : {}),
  });
  return { ...model, names, sheets: model.sheets.filter(({ name }) => KEPT.has(name)).map(sheetOf) };
}

let whole: WorkbookModel | undefined;
/** The book the pane would write for its example. */
export function wholeSeasonModel(): WorkbookModel {
  if (whole) return whole;
  const { book } = readForm(exampleTexts(initialPlan(TODAY).texts));
  if (!book) throw new Error('the example cannot be read');
  return (whole = livingBook(book, planBatches(book, { draws: 200, explains: false })));
}

let made: WorkbookModel | undefined;
/** Part of the book the pane would write for its example. */
export function seasonModel(): WorkbookModel {
  return (made ??= partOf(wholeSeasonModel()));
}
