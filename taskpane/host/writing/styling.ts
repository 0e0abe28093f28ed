import { FONT, FONT_SIZE, STYLES } from '../../../shared/sheet/workbook/styles';
import type { CellStyle } from '../../../shared/sheet/workbook/styles';
import type {
  CellModel,
  ConditionalModel,
  SheetModel,
  StyleName,
  ValidationModel,
} from '../../../shared/sheet/workbook/model';
import { addressOf, areaText, parseArea, rectangles } from '../reading/cells';

/** The looks of a sheet model, queued on the worksheet; nothing is sent from here. */

/**
 * A column of n characters, in points: 7 px a character and 5 px around them, a pixel being three quarters of
 * a point.
 */
export const columnPoints = (characters: number): number =>
  Math.round((characters * 7 + 5) * 0.75 * 100) / 100;

const EDGES: Readonly<Record<NonNullable<CellStyle['border']>, readonly Excel.BorderIndex[]>> = {
  thin: [
    'EdgeTop',
    'EdgeBottom',
    'EdgeLeft',
    'EdgeRight',
    'InsideHorizontal',
    'InsideVertical',
  ] as Excel.BorderIndex[],
  medium: [
    'EdgeTop',
    'EdgeBottom',
    'EdgeLeft',
    'EdgeRight',
    'InsideHorizontal',
    'InsideVertical',
  ] as Excel.BorderIndex[],
  bottom: ['EdgeBottom', 'InsideHorizontal'] as Excel.BorderIndex[],
};

/** Inside edges exist only where the block has more than one row or column. */
const edgesFor = (
  border: NonNullable<CellStyle['border']>,
  rows: number,
  columns: number,
): readonly Excel.BorderIndex[] =>
  EDGES[border].filter(
    (edge) => (edge !== 'InsideHorizontal' || rows > 1) && (edge !== 'InsideVertical' || columns > 1),
  );

function draw(range: Excel.Range, style: CellStyle, rows: number, columns: number): void {
  const { format } = range;
  format.font.name = FONT;
  format.font.size = style.size ?? FONT_SIZE;
  format.font.color = `#${style.ink}`;
  if (style.isBold) format.font.bold = true;
  if (style.isItalic) format.font.italic = true;
  if (style.fill) format.fill.color = `#${style.fill}`;
  if (style.wraps) format.wrapText = true;
  if (style.align)
    format.horizontalAlignment =
      style.align === 'left' ? 'Left' : style.align === 'right' ? 'Right' : 'Center';
  format.verticalAlignment = 'Center';
  if (style.isOpen) format.protection.locked = false;
  if (!style.border) return;
  for (const edge of edgesFor(style.border, rows, columns)) {
    const line = format.borders.getItem(edge);
    line.style = 'Continuous';
    line.color = `#${style.borderColor ?? style.ink}`;
  }
}

const cellsByStyle = (cells: Readonly<Record<string, CellModel>>): Map<StyleName, string[]> => {
  const groups = new Map<StyleName, string[]>();
  for (const [address, { style }] of Object.entries(cells)) {
    if (!style) continue;
    const group = groups.get(style);
    if (group) group.push(address);
    else groups.set(style, [address]);
  }
  return groups;
};

export function styleCells(worksheet: Excel.Worksheet, sheet: SheetModel): void {
  for (const [style, addresses] of cellsByStyle(sheet.cells))
    for (const area of rectangles(addresses))
      draw(
        worksheet.getRange(areaText(area)),
        STYLES[style],
        area.bottom - area.top + 1,
        area.right - area.left + 1,
      );
}

function freeze(worksheet: Excel.Worksheet, sheet: SheetModel): void {
  const { freezePanes } = worksheet;
  const { rows = 0, columns = 0 } = sheet.freeze ?? {};
  if (rows > 0 && columns > 0)
    freezePanes.freezeAt(worksheet.getCell(0, 0).getResizedRange(rows - 1, columns - 1));
  else if (rows > 0) freezePanes.freezeRows(rows);
  else if (columns > 0) freezePanes.freezeColumns(columns);
}

function setPage({ pageLayout }: Excel.Worksheet, { print }: SheetModel): void {
  if (!print) return;
  pageLayout.orientation = print.landscape ? 'Landscape' : 'Portrait';
  pageLayout.zoom = print.onePage
    ? { horizontalFitToPages: 1, verticalFitToPages: 1 }
    : { horizontalFitToPages: 1 };
  if (print.area) pageLayout.setPrintArea(print.area);
  if (print.titleRows) pageLayout.setPrintTitleRows(`$${print.titleRows[0]}:$${print.titleRows[1]}`);
}

export function layOut(worksheet: Excel.Worksheet, sheet: SheetModel): void {
  sheet.widths.forEach((width, column) => {
    worksheet.getCell(0, column).format.columnWidth = columnPoints(width);
  });
  for (const [row, points] of Object.entries(sheet.heights ?? {}))
    worksheet.getCell(Number(row) - 1, 0).format.rowHeight = points;
  for (const merge of sheet.merges ?? []) worksheet.getRange(merge).merge(false);
  freeze(worksheet, sheet);
  if (sheet.hasGridlines === false) worksheet.showGridlines = false;
  setPage(worksheet, sheet);
}

const ruleOf = (validation: ValidationModel): Excel.DataValidationRule => {
  if (validation.kind === 'list')
    return { list: { inCellDropDown: true, source: validation.items.join(',') } };
  const { min, max } = validation;
  if (validation.kind === 'whole')
    return { wholeNumber: { formula1: min, formula2: max, operator: 'Between' } };
  if (validation.kind === 'decimal')
    return { decimal: { formula1: min, formula2: max, operator: 'Between' } };
  // Dates as formulas: a bare number would be read as text in some languages.
  return { date: { formula1: `=${min}`, formula2: `=${max}`, operator: 'Between' } };
};

/** Excel cuts longer texts off with an error. */
const MESSAGE_MAX = 255;

const placesIn = (range: string): string[] => {
  const area = parseArea(range);
  if (!area) return [];
  return Array.from({ length: area.bottom - area.top + 1 }, (_, row) =>
    Array.from({ length: area.right - area.left + 1 }, (_c, column) =>
      addressOf(area.top + row, area.left + column),
    ),
  ).flat();
};

export function guardInputs(worksheet: Excel.Worksheet, sheet: SheetModel): void {
  for (const validation of sheet.validations ?? []) {
    const { dataValidation } = worksheet.getRange(validation.range);
    dataValidation.rule = ruleOf(validation);
    dataValidation.ignoreBlanks = true;
    dataValidation.errorAlert = {
      showAlert: true,
      style: 'Stop',
      title: 'Please check',
      message: validation.message.slice(0, MESSAGE_MAX),
    };
  }
  const guarded = new Set((sheet.validations ?? []).flatMap(({ range }) => placesIn(range)));
  for (const [address, { note }] of Object.entries(sheet.cells)) {
    if (!note) continue;
    const { dataValidation } = worksheet.getRange(address);
    // A note shows when the cell is chosen. Excel keeps it with a rule only; this one allows everything.
    if (!guarded.has(address)) dataValidation.rule = { custom: { formula: '=TRUE' } };
    dataValidation.prompt = { showPrompt: true, title: '', message: note.slice(0, MESSAGE_MAX) };
  }
}

export function colourByRule(worksheet: Excel.Worksheet, rule: ConditionalModel): void {
  const { custom } = worksheet.getRange(rule.range).conditionalFormats.add('Custom');
  const style = STYLES[rule.style];
  custom.rule.formula = rule.formula.startsWith('=') ? rule.formula : `=${rule.formula}`;
  custom.format.font.color = `#${style.ink}`;
  if (style.fill) custom.format.fill.color = `#${style.fill}`;
}
