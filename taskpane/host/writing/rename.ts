import { quoteSheet, splitReference } from '../../../shared/sheet/formula/address';
import type { Token } from '../../../shared/sheet/formula/tokenize';
import { tokenize } from '../../../shared/sheet/formula/tokenize';
import type { CellModel, SheetModel, WorkbookModel } from '../../../shared/sheet/workbook/model';

/** A second plan beside the first: every sheet, name and table gets the suffix, and every formula follows. */

const SHEET_NAME_MAX = 31;

export const sheetName = (name: string, suffix: string): string =>
  `${name.slice(0, SHEET_NAME_MAX - suffix.length)}${suffix}`;
/** Names of cells and tables allow no spaces. */
export const plainName = (name: string, suffix: string): string => `${name}${suffix.replace(/\s+/g, '_')}`;

interface Renaming {
  readonly sheets: ReadonlyMap<string, string>;
  readonly names: ReadonlyMap<string, string>;
}

const renamingOf = (model: WorkbookModel, suffix: string): Renaming => ({
  sheets: new Map(model.sheets.map(({ name }) => [name.toLowerCase(), sheetName(name, suffix)])),
  names: new Map(
    [...model.names, ...model.sheets.flatMap((sheet) => sheet.tables ?? [])].map(({ name }) => [
      name.toLowerCase(),
      plainName(name, suffix),
    ]),
  ),
});

function referenceText(text: string, { sheets, names }: Renaming): string {
  const { sheet, area } = splitReference(text);
  const bracket = area.indexOf('[');
  const table = bracket > 0 ? names.get(area.slice(0, bracket).toLowerCase()) : undefined;
  const renamedArea = table === undefined ? area : `${table}${area.slice(bracket)}`;
  if (sheet === undefined) return renamedArea;
  return `${quoteSheet(sheets.get(sheet.toLowerCase()) ?? sheet)}!${renamedArea}`;
}

const tokenText = (token: Token, renaming: Renaming): string => {
  if (token.kind === 'reference') return referenceText(token.text, renaming);
  return token.kind === 'name' ? (renaming.names.get(token.text.toLowerCase()) ?? token.text) : token.text;
};

const formulaText = (formula: string, renaming: Renaming): string => {
  const start = formula.startsWith('=') ? '=' : '';
  return `${start}${tokenize(formula)
    .map((token) => tokenText(token, renaming))
    .join('')}`;
};

const cellWith = (cell: CellModel, renaming: Renaming): CellModel =>
  cell.formula === undefined ? cell : { ...cell, formula: formulaText(cell.formula, renaming) };

function sheetWith(sheet: SheetModel, renaming: Renaming): SheetModel {
  const follow = (formula: string): string => formulaText(formula, renaming);
  return {
    ...sheet,
    name: renaming.sheets.get(sheet.name.toLowerCase()) ?? sheet.name,
    cells: Object.fromEntries(
      Object.entries(sheet.cells).map(([address, cell]) => [address, cellWith(cell, renaming)]),
    ),
    ...(sheet.tables && {
      tables: sheet.tables.map((table) => ({
        ...table,
        name: renaming.names.get(table.name.toLowerCase()) ?? table.name,
      })),
    }),
    ...(sheet.conditionals && {
      conditionals: sheet.conditionals.map((rule) => ({ ...rule, formula: follow(rule.formula) })),
    }),
    ...(sheet.charts && {
      charts: sheet.charts.map((chart) => ({
        ...chart,
        categories: follow(chart.categories),
        series: chart.series.map((series) => ({ ...series, values: follow(series.values) })),
      })),
    }),
  };
}

export function withSuffix(model: WorkbookModel, suffix: string): WorkbookModel {
  if (suffix === '') return model;
  const renaming = renamingOf(model, suffix);
  return {
    ...model,
    sheets: model.sheets.map((sheet) => sheetWith(sheet, renaming)),
    names: model.names.map((name) => ({
      ...name,
      name: plainName(name.name, suffix),
      refersTo: formulaText(name.refersTo, renaming),
    })),
  };
}

export interface InUse {
  readonly sheets: readonly string[];
  readonly names: readonly string[];
}

/** Sheets and names of the model that the workbook has already; letter case does not tell names apart. */
export function clashes(model: WorkbookModel, used: InUse): InUse {
  const sheets = new Set(used.sheets.map((name) => name.toLowerCase()));
  const names = new Set(used.names.map((name) => name.toLowerCase()));
  return {
    sheets: model.sheets.map(({ name }) => name).filter((name) => sheets.has(name.toLowerCase())),
    names: [...model.names, ...model.sheets.flatMap((sheet) => sheet.tables ?? [])]
      .map(({ name }) => name)
      .filter((name) => names.has(name.toLowerCase())),
  };
}

/** The first of " 2", " 3" … that makes everything free. */
export function freeSuffix(model: WorkbookModel, used: InUse): string {
  for (let n = 2; ; n++) {
    const found = clashes(withSuffix(model, ` ${n}`), used);
    if (found.sheets.length === 0 && found.names.length === 0) return ` ${n}`;
  }
}
