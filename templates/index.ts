import type { CellModel, WorkbookModel } from '../shared/sheet/workbook/model';
import { lintWorkbook } from '../shared/catalogue/calculation';
import { writeXlsx } from '../shared/files';
import { dosingTemplate } from './dosing.template';
import { seasonPlanTemplate } from './season-plan.template';
import type { TemplateLanguage } from './languages';
import { TEMPLATE_LANGUAGES } from './languages';
import { BACKYARD, COMMERCIAL, seasonTemplate } from './season.template';

type Make = (language?: TemplateLanguage) => WorkbookModel;
const MAKERS: Readonly<Record<string, Make>> = {
  'season-plan': seasonPlanTemplate,
  'season-backyard': (language) => seasonTemplate(BACKYARD, language),
  'season-commercial': (language) => seasonTemplate(COMMERCIAL, language),
  dosing: dosingTemplate,
};
/** The same in each other language, with its code behind the name: season-plan-fr.xlsx. */
const OTHERS = TEMPLATE_LANGUAGES.flatMap((language) =>
  Object.entries(MAKERS).map(
    ([name, make]) => [`${name}-${language.words.code}.xlsx`, () => make(language)] as const,
  ),
);
/** File name → what is in it. */
export const TEMPLATES: Readonly<Record<string, () => WorkbookModel>> = Object.fromEntries(
  Object.entries(MAKERS).map(([name, make]) => [`${name}.xlsx`, () => make()] as const),
);
/** Templates in other languages than English. */
export const TRANSLATED: typeof TEMPLATES = Object.fromEntries(OTHERS);

/**
 * A spreadsheet shows 15 digits; the two beyond depend on the machine's exp and pow, and would make the bytes
 * differ.
 */
const SHOWN_DIGITS = 15;
const steady = (cell: CellModel): CellModel =>
  typeof cell.value === 'number' ? { ...cell, value: Number(cell.value.toPrecision(SHOWN_DIGITS)) } : cell;
const steadied = (model: WorkbookModel): WorkbookModel => ({
  ...model,
  sheets: model.sheets.map((sheet) => ({
    ...sheet,
    cells: Object.fromEntries(Object.entries(sheet.cells).map(([address, cell]) => [address, steady(cell)])),
  })),
});

/** Bytes of a template; the same on every machine. */
export function buildTemplate(model: WorkbookModel): Uint8Array {
  const faults = lintWorkbook(model);
  if (faults.length > 0) throw new Error(`The template does not hold together:\n${faults.join('\n')}`);
  return writeXlsx(steadied(model));
}
