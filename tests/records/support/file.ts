import { strToU8, zipSync } from 'fflate';
import { addressOf } from '../../../shared/sheet/formula/address';
import type { Cell } from '../../../shared/base/values';
import { isError } from '../../../shared/base/values';

/**
 * A cell of a made-up record book: a value, or a value with the formula behind it; dates are marked so that
 * the file formats them.
 */
export type Made = Cell | { readonly value: Cell; readonly formula?: string; readonly isDate?: boolean };
export interface MadeSheet {
  readonly name: string;
  readonly cells: readonly (readonly Made[])[];
  readonly merges?: readonly string[];
}

const xml = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
const isMade = (made: Made): made is Exclude<Made, Cell> =>
  typeof made === 'object' && made !== null && 'value' in made;
export const partsOf = (made: Made): { value: Cell; formula: string | undefined; isDate: boolean } =>
  isMade(made)
    ? { value: made.value, formula: made.formula, isDate: made.isDate ?? false }
    : { value: made, formula: undefined, isDate: false };

/** Writes record books as .xlsx bytes by hand, so that the reader under test is not fed by its own writer. */
export function madeXlsx(sheets: readonly MadeSheet[], level: 0 | 1 | 6 = 1): Uint8Array {
  const texts = new Map<string, number>();
  const shared = (text: string): number => {
    let at = texts.get(text);
    if (at === undefined) texts.set(text, (at = texts.size));
    return at;
  };
  const cell = (made: Made, row: number, column: number): string => {
    const { value, formula, isDate } = partsOf(made);
    if (value === null && formula === undefined) return '';
    const f = formula === undefined ? '' : `<f>${xml(formula.replace(/^=/, ''))}</f>`;
    const open = `<c r="${addressOf(row, column)}"${isDate ? ' s="1"' : ''}`;
    if (typeof value === 'number') return `${open}>${f}<v>${value}</v></c>`;
    if (typeof value === 'boolean') return `${open} t="b">${f}<v>${value ? 1 : 0}</v></c>`;
    if (isError(value)) return `${open} t="e">${f}<v>${value.error}</v></c>`;
    if (value === null) return `${open}>${f}</c>`;
    return f ? `${open} t="str">${f}<v>${xml(value)}</v></c>` : `${open} t="s"><v>${shared(value)}</v></c>`;
  };
  const sheetXml = ({ cells, merges = [] }: MadeSheet): string => {
    const rows = cells
      .map((line, r) => {
        const inner = line.map((made, c) => cell(made, r, c)).join('');
        return inner ? `<row r="${r + 1}">${inner}</row>` : '';
      })
      .join('');
    return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?><worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>${rows}</sheetData>${merges.length > 0 ? `<mergeCells count="${merges.length}">${merges.map((ref) => `<mergeCell ref="${ref}"/>`).join('')}</mergeCells>` : ''}</worksheet>`;
  };
  const parts = sheets.map(sheetXml);
  const R = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
  const files: Record<string, string> = {
    '[Content_Types].xml': `<?xml version="1.0"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/></Types>`,
    '_rels/.rels': `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${R}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    'xl/workbook.xml': `<workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="${R}"><sheets>${sheets.map(({ name }, i) => `<sheet name="${xml(name)}" sheetId="${i + 1}" r:id="rId${i + 1}"/>`).join('')}</sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${sheets.map((_, i) => `<Relationship Id="rId${i + 1}" Type="${R}/worksheet" Target="worksheets/sheet${i + 1}.xml"/>`).join('')}<Relationship Id="rIdS" Type="${R}/styles" Target="styles.xml"/><Relationship Id="rIdT" Type="${R}/sharedStrings" Target="sharedStrings.xml"/></Relationships>`,
    'xl/styles.xml':
      '<styleSheet ' +
      'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><fonts ' +
      'count="1"><font><sz val="11"/></font></fonts><fills ' +
      'count="1"><fill/></fills><borders count="1"><border/></borders><cellXfs ' +
      'count="2"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/><xf numFmtId="22" ' +
      'fontId="0" fillId="0" borderId="0"/></cellXfs></styleSheet>',
  };
  parts.forEach((part, i) => {
    files[`xl/worksheets/sheet${i + 1}.xml`] = part;
  });
  files['xl/sharedStrings.xml'] =
    `<sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">${[...texts.keys()].map((text) => `<si><t xml:space="preserve">${xml(text)}</t></si>`).join('')}</sst>`;
  return zipSync(Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)])), {
    level,
  });
}
