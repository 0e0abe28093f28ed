import type { ISheetDataValidationRule, IWorkbookData } from '@univerjs/core';
import { generateRandomId } from '@univerjs/core';
import { SCOPE_WORKBOOK_VALUE_DEFINED_NAME } from '@univerjs/sheets';
import { parseAddress, splitReference } from '../../../shared/sheet/formula/address';
import type { SheetModel, TableModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { STYLES } from '../../../shared/sheet/workbook/styles';
import { areaOf } from '../areas';
import { toRange } from '../univer/book/context';
import { colouringRule, noteOf, refersTo, ruleOf } from '../univer/book/features';
import type { TableExtra } from '../univer/book/tables';
import { TABLE_THEME } from '../univer/book/tables';
import { validationState } from './features';
import { given } from './optional';

/**
 * Names, tables, rules and notes as the engine keeps them inside a snapshot. It takes them over as they are;
 * given one by one, each name would read every formula of the book again.
 */
type Resources = NonNullable<IWorkbookData['resources']>;

const names = (model: WorkbookModel, unitId: string): object =>
  Object.fromEntries(
    model.names
      .filter((name) => splitReference(name.refersTo.replace(/^=/, '')).area !== '')
      .map(({ name, refersTo: text, comment }) => {
        const id = generateRandomId(10);
        return [
          id,
          {
            id,
            unitId,
            name,
            formulaOrRefString: refersTo(text.startsWith('=') ? text : `=${text}`),
            comment: comment ?? '',
            localSheetId: SCOPE_WORKBOOK_VALUE_DEFINED_NAME,
          },
        ];
      }),
  );

const rules = (sheet: SheetModel): ISheetDataValidationRule[] =>
  (sheet.validations ?? []).flatMap((rule) => {
    const area = areaOf(rule.range);
    return area ? [{ ...ruleOf(validationState(rule), generateRandomId(8)), ranges: [toRange(area)] }] : [];
  });

const colours = (sheet: SheetModel, id: string): object[] =>
  (sheet.conditionals ?? []).flatMap((rule, i) => {
    const area = areaOf(rule.range);
    const { fill, ink } = STYLES[rule.style];
    return area
      ? [
          colouringRule({
            id: `rule${i + 1}-${id}`,
            area,
            formula: rule.formula,
            color: `#${ink}`,
            ...given('fill', fill && `#${fill}`),
          }),
        ]
      : [];
  });

function tableOf(table: TableModel, extras: Map<string, TableExtra>): object[] {
  const area = areaOf(table.range);
  if (!area) return [];
  const id = generateRandomId(8);
  extras.set(id, { style: 'TableStyleMedium2', showTotals: table.hasTotals === true });
  return [
    {
      id,
      name: table.name,
      // The range counts the totals row; the engine knows none.
      range: toRange(table.hasTotals ? { ...area, rows: area.rows - 1 } : area),
      meta: {},
      options: { showHeader: true, tableStyleId: TABLE_THEME },
      filters: { tableColumnFilterList: [] },
      // None here: the engine reads the headings off the cells.
      columns: [],
    },
  ];
}

function notes(sheet: SheetModel): Record<number, Record<number, object>> {
  const answer: Record<number, Record<number, object>> = {};
  for (const [address, { note }] of Object.entries(sheet.cells)) {
    const place = note ? parseAddress(address) : undefined;
    if (place && note) (answer[place.row] ??= {})[place.column] = noteOf(place.row, place.column, note);
  }
  return answer;
}

/** `sheetIds` in the order of the model's sheets; what tables need beside the engine goes into `extras`. */
export function resourcesOf(
  model: WorkbookModel,
  unitId: string,
  sheetIds: readonly string[],
  extras: Map<string, TableExtra>,
): Resources {
  const each = <T>(one: (sheet: SheetModel, id: string) => T): Record<string, T> =>
    Object.fromEntries(model.sheets.map((sheet, i) => [sheetIds[i] ?? '', one(sheet, sheetIds[i] ?? '')]));
  const parts: Readonly<Record<string, object>> = {
    SHEET_DEFINED_NAME_PLUGIN: names(model, unitId),
    SHEET_DATA_VALIDATION_PLUGIN: each(rules),
    SHEET_CONDITIONAL_FORMATTING_PLUGIN: each(colours),
    SHEET_TABLE_PLUGIN: each((sheet) => ({
      tables: (sheet.tables ?? []).flatMap((table) => tableOf(table, extras)),
    })),
    SHEET_NOTE_PLUGIN: each(notes),
  };
  return Object.entries(parts).map(([name, data]) => ({ name, data: JSON.stringify(data) }));
}
