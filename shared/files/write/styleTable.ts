import { FONT, FONT_SIZE, STYLES } from '../../sheet/workbook/styles';
import type { CellModel, CellStyle, StyleName } from '../../sheet/workbook/model';
import { escapeXml } from '../text';

/** Number formats every spreadsheet knows by number. */
const BUILT_IN: Readonly<Record<string, number>> = {
  General: 0,
  '0': 1,
  '0.00': 2,
  '#,##0': 3,
  '#,##0.00': 4,
  '0%': 9,
  '0.00%': 10,
  '@': 49,
};
const FIRST_OWN_FORMAT = 164;

/** A list without repeats; what is already there keeps its number. */
class Pool {
  private readonly numbers = new Map<string, number>();
  constructor(...first: readonly string[]) {
    first.forEach((item) => this.add(item));
  }
  add(item: string): number {
    const known = this.numbers.get(item);
    if (known !== undefined) return known;
    this.numbers.set(item, this.numbers.size);
    return this.numbers.size - 1;
  }
  get items(): readonly string[] {
    return [...this.numbers.keys()];
  }
}

const rgb = (color: string): string => `rgb="FF${color}"`;
const PLAIN: CellStyle = { ink: '000000' };

const fontXml = ({ ink, isBold, isItalic, size }: CellStyle): string =>
  `<font>${isBold ? '<b/>' : ''}${isItalic ? '<i/>' : ''}<sz val="${size ?? FONT_SIZE}"/><color ${rgb(ink)}/><name val="${FONT}"/><family val="2"/></font>`;
const fillXml = (fill: string): string =>
  `<fill><patternFill patternType="solid"><fgColor ${rgb(fill)}/><bgColor indexed="64"/></patternFill></fill>`;

const side = (name: string, line: string | undefined, color: string): string =>
  line ? `<${name} style="${line}"><color ${rgb(color)}/></${name}>` : `<${name}/>`;
const borderXml = ({ border, borderColor = '808080' }: CellStyle): string => {
  const around = border === 'thin' || border === 'medium' ? border : undefined;
  const below = border === 'bottom' ? 'thin' : around;
  return `<border>${side('left', around, borderColor)}${side('right', around, borderColor)}${side('top', around, borderColor)}${side('bottom', below, borderColor)}<diagonal/></border>`;
};

const alignmentXml = ({ align, wraps, indent }: CellStyle): string =>
  `<alignment${align ? ` horizontal="${align}"` : ''} vertical="center"${wraps ? ' wrapText="1"' : ''}${indent ? ` indent="${indent}"` : ''}/>`;

const lookOf = (cell: Pick<CellModel, 'style' | 'look'>): CellStyle | undefined =>
  cell.look ?? (cell.style ? STYLES[cell.style] : undefined);

/** Collects the looks and number formats in use and writes the styles part. */
export class StyleTable {
  private readonly fonts = new Pool(fontXml(PLAIN));
  private readonly fills = new Pool(
    '<fill><patternFill patternType="none"/></fill>',
    '<fill><patternFill patternType="gray125"/></fill>',
  );
  private readonly borders = new Pool('<border><left/><right/><top/><bottom/><diagonal/></border>');
  private readonly formats = new Pool();
  private readonly cells = new Pool('<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>');
  private readonly rules = new Pool();

  /** Style number of a cell, undefined when it looks plain. */
  of(cell: Pick<CellModel, 'style' | 'look' | 'format'>): number | undefined {
    const look = lookOf(cell);
    if (!look && (cell.format === undefined || cell.format === 'General')) return undefined;
    const number = this.formatNumber(cell.format);
    if (!look)
      return this.cells.add(
        `<xf numFmtId="${number}" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/>`,
      );
    return this.cells.add(
      `<xf ${this.lookAttributes(look, number)}>${alignmentXml(look)}${look.isOpen ? '<protection locked="0"/>' : ''}</xf>`,
    );
  }

  private lookAttributes(look: CellStyle, number: number): string {
    const { fonts, fills, borders } = this;
    const fill = look.fill ? fills.add(fillXml(look.fill)) : 0;
    const border = look.border ? borders.add(borderXml(look)) : 0;
    const applied = [
      number ? 'NumberFormat' : '',
      'Font',
      fill ? 'Fill' : '',
      border ? 'Border' : '',
      'Alignment',
      look.isOpen ? 'Protection' : '',
    ];
    return `numFmtId="${number}" fontId="${fonts.add(fontXml(look))}" fillId="${fill}" borderId="${border}" xfId="0"${applied
      .filter(Boolean)
      .map((name) => ` apply${name}="1"`)
      .join('')}`;
  }

  /** Number of the look a conditional format gives. */
  ofRule(name: StyleName): number {
    const { ink, fill, isBold, isItalic, border, borderColor = '808080' } = STYLES[name];
    const weight = `${isBold ? '<b/>' : ''}${isItalic ? '<i/>' : ''}`;
    const line =
      border && border !== 'bottom'
        ? `<border>${['left', 'right', 'top', 'bottom'].map((edge) => side(edge, 'thin', borderColor)).join('')}</border>`
        : '';
    const ground = fill
      ? `<fill><patternFill patternType="solid"><fgColor ${rgb(fill)}/><bgColor ${rgb(fill)}/></patternFill></fill>`
      : '';
    return this.rules.add(`<dxf><font>${weight}<color ${rgb(ink)}/></font>${ground}${line}</dxf>`);
  }

  private formatNumber(format: string | undefined): number {
    if (format === undefined) return 0;
    return BUILT_IN[format] ?? FIRST_OWN_FORMAT + this.formats.add(format);
  }

  xml(): string {
    const list = (tag: string, items: readonly string[]): string =>
      items.length > 0 ? `<${tag} count="${items.length}">${items.join('')}</${tag}>` : '';
    return (
      '<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">' +
      list(
        'numFmts',
        this.formats.items.map(
          (format, i) => `<numFmt numFmtId="${FIRST_OWN_FORMAT + i}" formatCode="${escapeXml(format)}"/>`,
        ),
      ) +
      list('fonts', this.fonts.items) +
      list('fills', this.fills.items) +
      list('borders', this.borders.items) +
      '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
      list('cellXfs', this.cells.items) +
      '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles>' +
      `<dxfs count="${this.rules.items.length}">${this.rules.items.join('')}</dxfs>` +
      ('<tableStyles count="0" defaultTableStyle="TableStyleMedium2" ' +
        'defaultPivotStyle="PivotStyleLight16"/></styleSheet>')
    );
  }
}
