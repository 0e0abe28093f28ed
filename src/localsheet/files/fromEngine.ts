import { addressOf, quoteSheet } from '../../../shared/sheet/formula/address';
import type {
  CellModel,
  ChartModel,
  ConditionalModel,
  SheetModel,
  StyleName,
  ValidationModel,
  WorkbookModel,
  CellStyle,
} from '../../../shared/sheet/workbook/model';
import { STYLES } from '../../../shared/sheet/workbook/styles';
import { textOfArea } from '../areas';
import type { StandInArea, ConditionalState, SheetState } from '../../officeStandIn/book';
import type { UniverBook } from '../univer/book';
import type { Style } from '../univer/book/formats';
import { charactersOf, PIXELS_PER_POINT } from './toEngine';
import { chartModel, validationModel } from './features';
import { lookOf, namedLook } from './looks';
import { given } from './optional';
import { toArea } from '../univer/book/context';
import { SheetDataValidationModel } from '@univerjs/sheets-data-validation';

/** The open workbook as a model, and in sentences what the model cannot carry. */
export interface Taken {
  readonly model: WorkbookModel;
  readonly lost: readonly string[];
}

class Losses {
  private readonly found = new Map<string, string[]>();
  add(what: string, where: string): void {
    this.found.set(what, [...(this.found.get(what) ?? []), where]);
  }
  sentences(): string[] {
    return [...this.found].map(
      ([what, places]) =>
        `${what}: ${places.slice(0, 5).join(', ')}${places.length > 5 ? ` and ${places.length - 5} more` : ''}`,
    );
  }
}

function unsaid(style: Style | undefined): string[] {
  if (!style) return [];
  return [
    ...(style.ul?.s ? ['Underlining'] : []),
    ...(style.st?.s ? ['Strike-through'] : []),
    ...(style.tr?.a ? ['Turned text'] : []),
  ];
}

/** One cell, or undefined when nothing is in it. */
function cellAt(
  open: UniverBook,
  sheet: SheetState,
  row: number,
  column: number,
  losses: Losses,
): CellModel | undefined {
  const { cells, context } = open;
  const raw = cells.raw(sheet.id, row, column);
  const value = cells.value(sheet.id, row, column);
  const formula = cells.formula(sheet.id, row, column);
  const style = raw ? (context.workbook.getStyles().getStyleByCell(raw) as Style | undefined) : undefined;
  if (value === null && formula === undefined && !style) return undefined;
  const where = `${quoteSheet(sheet.name)}!${addressOf(row, column)}`;
  for (const what of unsaid(style)) losses.add(what, where);
  if (raw?.p) losses.add('Parts of a text in different looks (the text itself is kept)', where);
  const spill = formula === undefined ? undefined : cells.spillArea(sheet.id, row, column);
  return {
    ...(value === null ? {} : { value }),
    ...given('formula', formula),
    ...given('spill', spill && ([spill.rows, spill.columns] as const)),
    ...namedLook(lookOf(style)),
    ...given('format', style?.n?.pattern),
  };
}

function sheetCells(open: UniverBook, sheet: SheetState, losses: Losses): Record<string, CellModel> {
  const used = open.cells.usedArea(sheet.id, false);
  const answer: Record<string, CellModel> = {};
  if (!used) return answer;
  for (let row = used.row; row < used.row + used.rows; row++) {
    for (let column = used.column; column < used.column + used.columns; column++) {
      const cell = cellAt(open, sheet, row, column, losses);
      if (cell) answer[addressOf(row, column)] = cell;
    }
  }
  return answer;
}

/** Notes may stand on cells that hold nothing else. */
function addNotes(open: UniverBook, sheet: SheetState, cells: Record<string, CellModel>): void {
  for (const { row, col, note } of open.context.facade(sheet.id).getNotes()) {
    const address = addressOf(row, col);
    if (note) cells[address] = { ...cells[address], note };
  }
}

const colour = (text: string | undefined): string => (text ?? '').replace('#', '').toUpperCase();
const styleFor = (rule: ConditionalState): StyleName | undefined =>
  (Object.entries(STYLES) as [StyleName, CellStyle][]).find(
    ([, look]) => colour(look.ink) === colour(rule.color) && colour(look.fill) === colour(rule.fill),
  )?.[0];
const nearest = (rule: ConditionalState): StyleName => {
  const [r = 0, g = 0, b = 0] = [0, 2, 4].map((i) => parseInt(colour(rule.fill).slice(i, i + 2) || '0', 16));
  return g > r && g > b ? 'good' : r > g + 40 ? 'bad' : 'warning';
};

async function conditionals(
  open: UniverBook,
  sheet: SheetState,
  losses: Losses,
): Promise<ConditionalModel[]> {
  return (await open.book.conditionals(sheet.id)).map((rule) => {
    const exact = styleFor(rule);
    if (!exact)
      losses.add(
        'The exact colours of a colouring rule (the nearest of green, amber and red is kept)',
        `${quoteSheet(sheet.name)}!${textOfArea(rule.area)}`,
      );
    return { range: textOfArea(rule.area), formula: rule.formula, style: exact ?? nearest(rule) };
  });
}

async function validations(open: UniverBook, sheet: SheetState, losses: Losses): Promise<ValidationModel[]> {
  const rules = open.context.engine.injector
    .get(SheetDataValidationModel)
    .getRules(open.context.unitId, sheet.id);
  const answer: ValidationModel[] = [];
  for (const area of rules.flatMap((rule) => rule.ranges.map(toArea))) {
    const state = await open.book.validation(sheet.id, area);
    const model = state && validationModel(state, textOfArea(area));
    if (model) answer.push(model);
    else
      losses.add(
        'An input rule of a kind the file cannot take',
        `${quoteSheet(sheet.name)}!${textOfArea(area)}`,
      );
  }
  return answer;
}

async function charts(open: UniverBook, sheet: SheetState, losses: Losses): Promise<ChartModel[]> {
  const corners = ({ row, column, rows, columns }: StandInArea) =>
    [addressOf(row, column), addressOf(row + rows - 1, column + columns - 1)] as const;
  return (await open.book.charts(sheet.id)).flatMap((chart) => {
    const model = chartModel(chart, corners);
    if (!model) losses.add('A chart of a kind the file cannot take', chart.title ?? chart.name);
    return model ? [model] : [];
  });
}

async function sheetModel(open: UniverBook, sheet: SheetState, losses: Losses): Promise<SheetModel> {
  const { book, context } = open;
  const own = context.sheet(sheet.id);
  const cells = sheetCells(open, sheet, losses);
  addNotes(open, sheet, cells);
  const columnData = own.getConfig().columnData;
  const lastColumn = Math.max(-1, ...Object.keys(columnData).map(Number));
  const heights = Object.entries(own.getConfig().rowData).flatMap(([row, data]) =>
    data?.h && data.ia !== 1
      ? [[Number(row) + 1, Math.round((data.h / PIXELS_PER_POINT) * 100) / 100] as const]
      : [],
  );
  const { rows, columns } = await book.freeze(sheet.id);
  const tables = (await book.tables()).filter((table) => table.sheet === sheet.id);
  const page = await book.page(sheet.id);
  return {
    name: sheet.name,
    cells,
    hasGridlines: sheet.showGridlines,
    widths: Array.from({ length: lastColumn + 1 }, (_, i) => charactersOf(own.getColumnWidth(i))),
    ...(sheet.visibility === 'Visible' ? {} : { isHidden: true }),
    ...(sheet.tabColor ? { tab: sheet.tabColor.replace('#', '') } : {}),
    merges: (await book.merges(sheet.id)).map(textOfArea),
    tables: tables.map((table) => ({
      name: table.name,
      range: textOfArea(table.area),
      ...(table.showTotals ? { hasTotals: true } : {}),
    })),
    validations: await validations(open, sheet, losses),
    conditionals: await conditionals(open, sheet, losses),
    charts: await charts(open, sheet, losses),
    ...(rows > 0 || columns > 0 ? { freeze: { rows, columns } } : {}),
    ...(heights.length > 0 ? { heights: Object.fromEntries(heights) } : {}),
    print: {
      ...open.beside.of(sheet.id).print,
      landscape: page.landscape,
      ...(page.titleRows ? { titleRows: [page.titleRows[0] + 1, page.titleRows[1] + 1] as const } : {}),
    },
    ...((await book.protection(sheet.id)).isOn ? { isProtected: true } : {}),
  };
}

export async function takeModel(open: UniverBook, title: string): Promise<Taken> {
  await open.book.settle();
  const losses = new Losses();
  const sheets: SheetModel[] = [];
  for (const sheet of await open.book.sheets()) sheets.push(await sheetModel(open, sheet, losses));
  const names = (await open.book.names()).flatMap((name) => {
    if (name.scope !== undefined)
      losses.add('A name that belongs to one sheet is kept for the whole workbook', name.name);
    return [{ name: name.name, refersTo: name.formula, ...(name.comment ? { comment: name.comment } : {}) }];
  });
  const settings = Object.fromEntries(
    Object.entries(open.beside.settings).filter(
      (entry): entry is [string, string] => typeof entry[1] === 'string',
    ),
  );
  return { model: { title, sheets, names, settings }, lost: losses.sentences() };
}
