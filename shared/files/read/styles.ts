// Long: one table of formats and what each means.
import type { CellModel, CellStyle, StyleName } from '../../sheet/workbook/model';
import { FONT_SIZE, STYLES } from '../../sheet/workbook/styles';
import { scanXml } from '../package/events';

/**
 * The looks of a file by style number, turned into ours: a style by name where one fits exactly, else the
 * look spelled out.
 */
export interface FileStyle {
  readonly format: string | undefined;
  readonly isDate: boolean;
  readonly look: Pick<CellModel, 'style' | 'look'>;
}
export interface FileStyles {
  readonly cells: readonly FileStyle[];
  readonly rules: readonly (StyleName | undefined)[];
}

/** Formats every spreadsheet knows by number (ISO/IEC 29500-1, 18.8.30). */
const BUILT_IN: Readonly<Record<number, string>> = {
  1: '0',
  2: '0.00',
  3: '#,##0',
  4: '#,##0.00',
  9: '0%',
  10: '0.00%',
  11: '0.00E+00',
  12: '# ?/?',
  13: '# ??/??',
  14: 'd/m/yyyy',
  15: 'd-mmm-yy',
  16: 'd-mmm',
  17: 'mmm-yy',
  18: 'h:mm AM/PM',
  19: 'h:mm:ss AM/PM',
  20: 'h:mm',
  21: 'h:mm:ss',
  22: 'd/m/yyyy h:mm',
  37: '#,##0 ;(#,##0)',
  38: '#,##0 ;[Red](#,##0)',
  39: '#,##0.00;(#,##0.00)',
  40: '#,##0.00;[Red](#,##0.00)',
  45: 'mm:ss',
  46: '[h]:mm:ss',
  47: 'mmss.0',
  48: '##0.0E+0',
  49: '@',
};

/**
 * A format shows a date or a time when day, month, year, hour or second letters stand outside quotes and
 * colour words.
 */
export const isDateFormat = (format: string): boolean =>
  /[dmyhs]/i.test(
    (format.split(';')[0] ?? '')
      .replace(/"[^"]*"|\\.|_.|\*./g, '')
      .replace(/\[(?!h+\]|m+\]|s+\])[^\]]*\]/gi, '')
      .replace(/general/gi, ''),
  );

interface Font {
  isBold: boolean;
  isItalic: boolean;
  size: number;
  ink: string;
}
interface Draft {
  numFmt: number;
  font: number;
  fill: number;
  border: number;
  align?: string | undefined;
  indent?: number | undefined;
  wraps: boolean;
  isOpen: boolean;
}
interface Border {
  style: 'thin' | 'medium' | 'bottom' | undefined;
  color: string;
}

/** Six hex digits; undefined for colours that only a theme knows. */
const colorOf = (rgb: string | undefined): string | undefined =>
  rgb && /^[0-9A-Fa-f]{6,8}$/.test(rgb) ? rgb.slice(-6).toUpperCase() : undefined;

const SIDES = ['left', 'right', 'top', 'bottom', 'start', 'end'];

class Reader {
  readonly formats = new Map<number, string>();
  readonly fonts: Font[] = [];
  readonly fills: (string | undefined)[] = [];
  readonly borders: Border[] = [];
  readonly cells: FileStyle[] = [];
  readonly rules: { font: Font; fill: string | undefined }[] = [];
  private section = '';
  private side = '';
  private lines = new Map<string, string>();
  private draft: Draft | undefined;

  open(name: string, get: (key: string) => string | undefined): void {
    if (
      ['fonts', 'fills', 'borders', 'cellXfs', 'cellStyleXfs', 'dxfs', 'numFmts', 'cellStyles'].includes(name)
    )
      this.section = name;
    const number = (key: string): number => Number(get(key) ?? 0);
    if (name === 'numFmt' && this.section === 'numFmts')
      this.formats.set(number('numFmtId'), get('formatCode') ?? '');
    if (name === 'dxf')
      this.rules.push({
        font: { isBold: false, isItalic: false, size: FONT_SIZE, ink: '' },
        fill: undefined,
      });
    // A rule may hold a border beside its font: the colour inside a side is not the ink.
    if (SIDES.includes(name)) this.side = name;
    if (this.section === 'fonts' || this.section === 'dxfs') this.fontPart(name, get);
    if (this.section === 'fills' || this.section === 'dxfs') this.fillPart(name, get);
    if (this.section === 'borders') this.borderPart(name, get);
    if (this.section === 'cellXfs') this.cellPart(name, get, number);
  }

  private fontPart(name: string, get: (key: string) => string | undefined): void {
    if (name === 'font' && this.section === 'fonts')
      this.fonts.push({ isBold: false, isItalic: false, size: FONT_SIZE, ink: '000000' });
    const font = this.section === 'fonts' ? this.fonts.at(-1) : this.rules.at(-1)?.font;
    if (font) this.fontDetail(font, name, get);
  }

  private fontDetail(font: Font, name: string, get: (key: string) => string | undefined): void {
    const isOn = !['0', 'false'].includes(get('val') ?? '1');
    if (name === 'b') font.isBold = isOn;
    else if (name === 'i') font.isItalic = isOn;
    else if (name === 'sz') font.size = Number(get('val') ?? FONT_SIZE);
    else if (name === 'color' && this.side === '') font.ink = colorOf(get('rgb')) ?? font.ink;
  }

  private fillPart(name: string, get: (key: string) => string | undefined): void {
    if (name === 'fill' && this.section === 'fills') this.fills.push(undefined);
    const isRule = this.section === 'dxfs';
    const color = colorOf(get('rgb'));
    const rule = this.rules.at(-1);
    if (name === (isRule ? 'bgColor' : 'fgColor')) {
      if (isRule && rule) rule.fill = color;
      else this.fills[this.fills.length - 1] = color;
    }
  }

  private borderPart(name: string, get: (key: string) => string | undefined): void {
    if (name === 'border') {
      this.lines = new Map();
      this.borders.push({ style: undefined, color: '808080' });
    } else if (SIDES.includes(name)) {
      if (get('style') && get('style') !== 'none') this.lines.set(name, get('style') ?? '');
    } else if (name === 'color') {
      const border = this.borders.at(-1);
      const color = colorOf(get('rgb'));
      if (border && color) border.color = color;
    }
  }

  private cellPart(
    name: string,
    get: (key: string) => string | undefined,
    number: (key: string) => number,
  ): void {
    if (name === 'xf')
      this.draft = {
        numFmt: number('numFmtId'),
        font: number('fontId'),
        fill: number('fillId'),
        border: number('borderId'),
        wraps: false,
        isOpen: false,
      };
    else if (name === 'alignment' && this.draft)
      Object.assign(this.draft, {
        align: get('horizontal'),
        indent: Number(get('indent') ?? 0),
        wraps: get('wrapText') === '1' || get('wrapText') === 'true',
      });
    else if (name === 'protection' && this.draft)
      this.draft.isOpen = get('locked') === '0' || get('locked') === 'false';
  }

  close(name: string): void {
    if (SIDES.includes(name)) this.side = '';
    const border = this.borders.at(-1);
    if (name === 'border' && border && this.section === 'borders') {
      const around =
        this.lines.size >= 4
          ? this.lines.get('bottom') === 'medium' || this.lines.get('bottom') === 'thick'
            ? 'medium'
            : 'thin'
          : undefined;
      border.style = around ?? (this.lines.has('bottom') ? 'bottom' : undefined);
    }
    if (name === 'xf' && this.draft) {
      this.cells.push(this.finish(this.draft));
      this.draft = undefined;
    }
  }

  private finish(draft: Draft): FileStyle {
    const format = this.formats.get(draft.numFmt) ?? BUILT_IN[draft.numFmt];
    const border = this.borders[draft.border];
    const look: CellStyle = {
      ...fontLook(this.fonts[draft.font]),
      ...given('fill', this.fills[draft.fill]),
      ...(border?.style ? { border: border.style, borderColor: border.color } : {}),
      ...given(
        'align',
        ALIGNMENTS.find((a) => a === draft.align),
      ),
      ...given('indent', draft.indent || undefined),
      ...given('wraps', draft.wraps || undefined),
      ...given('isOpen', draft.isOpen || undefined),
    };
    return {
      format: format === 'General' ? undefined : format,
      isDate: format !== undefined && isDateFormat(format),
      look: asStyle(look),
    };
  }
}

const ALIGNMENTS = ['left', 'center', 'right'] as const;
const given = <K extends string, T>(key: K, value: T | undefined): { readonly [P in K]?: T } =>
  value === undefined ? {} : ({ [key]: value } as { [P in K]: T });
const fontLook = (font: Font | undefined): CellStyle =>
  font
    ? {
        ink: font.ink,
        ...given('isBold', font.isBold || undefined),
        ...given('isItalic', font.isItalic || undefined),
        ...given('size', font.size === FONT_SIZE ? undefined : font.size),
      }
    : { ink: '000000' };

const signature = (look: CellStyle): string =>
  JSON.stringify(Object.entries(look).sort(([a], [b]) => (a < b ? -1 : 1)));
const styleBySignature = new Map(
  (Object.keys(STYLES) as StyleName[]).map((name) => [signature(STYLES[name]), name]),
);
/** Black on nothing in any size of a plain font is no look at all. */
const isPlain = (look: CellStyle): boolean =>
  Object.keys(look).every((key) => key === 'ink' || key === 'size') &&
  look.ink === '000000' &&
  (look.size === undefined || look.size === 11);

function asStyle(look: CellStyle): Pick<CellModel, 'style' | 'look'> {
  if (isPlain(look)) return {};
  const style = styleBySignature.get(signature(look));
  return style ? { style } : { look };
}

/** Several styles can give a rule the same look: the ones rules are made for come first. */
const RULE_STYLES: readonly StyleName[] = [
  'good',
  'warning',
  'bad',
  'quiet',
  ...(Object.keys(STYLES) as StyleName[]),
];

/**
 * The judgement a rule's look stands for: ours by colour, another program's by the nearest of red, amber and
 * green.
 */
function ruleStyle({ font, fill }: Reader['rules'][number]): StyleName | undefined {
  const exact = RULE_STYLES.find(
    (name) =>
      STYLES[name].ink === font.ink &&
      STYLES[name].fill === fill &&
      (STYLES[name].isBold ?? false) === font.isBold,
  );
  if (exact) return exact;
  const color = fill ?? font.ink;
  if (!/^[0-9A-F]{6}$/.test(color)) return undefined;
  const [red = 0, green = 0, blue = 0] = [0, 2, 4].map((at) => parseInt(color.slice(at, at + 2), 16));
  if (red > green + 15 && green > blue + 40) return 'warning';
  if (red > green + 15) return 'bad';
  return green > red ? 'good' : 'warning';
}

export function readStyles(bytes: Uint8Array | undefined): FileStyles {
  const reader = new Reader();
  if (bytes !== undefined)
    scanXml(bytes, 'styles.xml', {
      open: (tag) => {
        reader.open(tag.name, (key) => tag.get(key));
      },
      close: (name) => {
        reader.close(name);
      },
    });
  return { cells: reader.cells, rules: reader.rules.map(ruleStyle) };
}
