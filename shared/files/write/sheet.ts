import { addressOf } from '../../sheet/formula/address';
import type { SheetModel, ValidationModel } from '../../sheet/workbook/model';
import { toFile } from '../formulas';
import { escapeXml } from '../text';
import type { CellWriting } from './cells';
import { rowsXml } from './cells';

const NAMESPACES =
  'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" ' +
  'xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"';
const LONGEST_PROMPT = 255;
/** Numbers the file format has for paper sizes. */
const PAPER = { A4: 9, A5: 11 } as const;

/** Relationship ids of the parts a sheet points at. */
export interface SheetLinks {
  readonly drawing?: string;
  readonly notes?: string;
  readonly tables: readonly string[];
}

function viewXml({ freeze, hasGridlines }: SheetModel, isFirst: boolean): string {
  const { rows = 0, columns = 0 } = freeze ?? {};
  const attributes = `${hasGridlines === false ? ' showGridLines="0"' : ''}${isFirst ? ' tabSelected="1"' : ''} workbookViewId="0"`;
  if (rows === 0 && columns === 0) return `<sheetViews><sheetView${attributes}/></sheetViews>`;
  const pane = rows > 0 && columns > 0 ? 'bottomRight' : rows > 0 ? 'bottomLeft' : 'topRight';
  const split = `${columns > 0 ? ` xSplit="${columns}"` : ''}${rows > 0 ? ` ySplit="${rows}"` : ''}`;
  return `<sheetViews><sheetView${attributes}><pane${split} topLeftCell="${addressOf(rows, columns)}" activePane="${pane}" state="frozen"/><selection pane="${pane}"/></sheetView></sheetViews>`;
}

const colsXml = (widths: readonly number[]): string =>
  widths.length > 0
    ? `<cols>${widths.map((width, i) => `<col min="${i + 1}" max="${i + 1}" width="${width}" customWidth="1"/>`).join('')}</cols>`
    : '';

const conditionalsXml = (sheet: SheetModel, context: CellWriting): string =>
  (sheet.conditionals ?? [])
    .map(
      ({ range, formula, style }, i) =>
        `<conditionalFormatting sqref="${range}"><cfRule type="expression" dxfId="${context.styles.ofRule(style)}" priority="${i + 1}"><formula>${escapeXml(toFile(formula))}</formula></cfRule></conditionalFormatting>`,
    )
    .join('');

function ruleXml(rule: ValidationModel): string {
  const message = escapeXml(rule.message.slice(0, LONGEST_PROMPT));
  const shared = `allowBlank="1" showInputMessage="1" showErrorMessage="1" sqref="${rule.range}"${message ? ` prompt="${message}"` : ''}`;
  if (rule.kind === 'list') {
    const items = rule.items.join(',');
    return `<dataValidation type="list" ${shared} error="${escapeXml(`Pick one of: ${rule.items.join(', ')}.`.slice(0, LONGEST_PROMPT))}"><formula1>"${escapeXml(items.replaceAll('"', '""'))}"</formula1></dataValidation>`;
  }
  const error =
    rule.kind === 'date'
      ? 'Type a date.'
      : `Type a ${rule.kind === 'whole' ? 'whole number' : 'number'} from ${rule.min} to ${rule.max}.`;
  return `<dataValidation type="${rule.kind}" operator="between" ${shared} error="${escapeXml(error)}"><formula1>${rule.min}</formula1><formula2>${rule.max}</formula2></dataValidation>`;
}
const validationsXml = ({ validations = [] }: SheetModel): string =>
  validations.length > 0
    ? `<dataValidations count="${validations.length}">${validations.map(ruleXml).join('')}</dataValidations>`
    : '';

/** & starts a code in headers and footers. */
const footerText = (text: string): string => text.replaceAll('&', '&&');
const printXml = ({ print, name }: SheetModel): string => {
  const footer = `&L&8${footerText(print?.footer ?? '')}&C&8${footerText(name)}&R&8Page &P of &N`;
  return (
    '<printOptions horizontalCentered="1"/><pageMargins left="0.4" right="0.4" top="0.5" ' +
    'bottom="0.6" header="0.3" footer="0.3"/>' +
    `<pageSetup paperSize="${PAPER[print?.paper ?? 'A4']}"${print?.landscape ? ' orientation="landscape"' : ' orientation="portrait"'} fitToWidth="1" fitToHeight="${print?.onePage ? 1 : 0}"/>` +
    `<headerFooter><oddFooter>${escapeXml(footer)}</oddFooter></headerFooter>`
  );
};

const breaksXml = ({ print }: SheetModel): string => {
  const rows = print?.breaksAbove ?? [];
  return rows.length > 0
    ? `<rowBreaks count="${rows.length}" manualBreakCount="${rows.length}">${rows.map((row) => `<brk id="${row - 1}" max="16383" man="1"/>`).join('')}</rowBreaks>`
    : '';
};

/** A worksheet part. The order of its elements is fixed by the standard. */
export function sheetXml(
  sheet: SheetModel,
  isFirst: boolean,
  context: CellWriting,
  links: SheetLinks,
): string {
  const rows = rowsXml(sheet.cells, sheet.heights ?? {}, context);
  const merges = sheet.merges ?? [];
  return [
    `<worksheet ${NAMESPACES}><sheetPr>${sheet.tab ? `<tabColor rgb="FF${sheet.tab}"/>` : ''}<pageSetUpPr fitToPage="1"/></sheetPr>`,
    `<dimension ref="${rows.dimension}"/>`,
    viewXml(sheet, isFirst),
    '<sheetFormatPr defaultRowHeight="16" customHeight="1"/>',
    colsXml(sheet.widths),
    `<sheetData>${rows.xml}</sheetData>`,
    sheet.isProtected
      ? '<sheetProtection sheet="1" objects="1" scenarios="1" formatCells="0" ' +
        'formatColumns="0" formatRows="0"/>'
      : '',
    merges.length > 0
      ? `<mergeCells count="${merges.length}">${merges.map((range) => `<mergeCell ref="${range}"/>`).join('')}</mergeCells>`
      : '',
    conditionalsXml(sheet, context),
    validationsXml(sheet),
    printXml(sheet),
    breaksXml(sheet),
    links.drawing ? `<drawing r:id="${links.drawing}"/>` : '',
    links.notes ? `<legacyDrawing r:id="${links.notes}"/>` : '',
    links.tables.length > 0
      ? `<tableParts count="${links.tables.length}">${links.tables.map((id) => `<tablePart r:id="${id}"/>`).join('')}</tableParts>`
      : '',
    '</worksheet>',
  ].join('');
}
