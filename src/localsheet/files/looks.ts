import type { IBorderStyleData } from '@univerjs/core';
import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  VerticalAlign,
  WrapStrategy,
} from '@univerjs/core';
import type { CellStyle, StyleName } from '../../../shared/sheet/workbook/model';
import { FONT_SIZE, STYLES } from '../../../shared/sheet/workbook/styles';
import type { Style } from '../univer/book/formats';
import { hex } from '../univer/book/formats';

/** Looks of the workbook model ⇄ styles of the engine. */

/**
 * Found on every machine; the file format's own default font often is not, and a canvas falls back to an ugly
 * one.
 */
export const SCREEN_FONT = 'Arial';

/** One step of setting off, in pixels. */
const INDENT = 9;

const ALIGN = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
} as const;
const line = (s: BorderStyleTypes, color: string): IBorderStyleData => ({ s, cl: { rgb: `#${color}` } });
const LINE_COLOR = 'B9C4C7';

function bordersOf({ border, borderColor = LINE_COLOR }: CellStyle): Style['bd'] {
  if (border === undefined) return undefined;
  const one = line(border === 'medium' ? BorderStyleTypes.MEDIUM : BorderStyleTypes.THIN, borderColor);
  return border === 'bottom' ? { b: one } : { t: one, r: one, b: one, l: one };
}

export function engineStyle(look: CellStyle, format: string | undefined): Style {
  const bd = bordersOf(look);
  return {
    ff: SCREEN_FONT,
    fs: look.size ?? FONT_SIZE,
    vt: VerticalAlign.MIDDLE,
    cl: { rgb: `#${look.ink}` },
    ...(look.fill ? { bg: { rgb: `#${look.fill}` } } : {}),
    ...(look.isBold ? { bl: BooleanNumber.TRUE } : {}),
    ...(look.isItalic ? { it: BooleanNumber.TRUE } : {}),
    ...(look.align ? { ht: ALIGN[look.align] } : {}),
    ...(look.indent ? { pd: { [look.align === 'right' ? 'r' : 'l']: look.indent * INDENT } } : {}),
    ...(look.wraps ? { tb: WrapStrategy.WRAP } : {}),
    ...(look.isOpen ? { isOpen: 1 as const } : {}),
    ...(bd ? { bd } : {}),
    ...(format && format !== 'General' ? { n: { pattern: format } } : {}),
  };
}

const plain = (color: string): string => color.replace('#', '');
const DEFAULT_INK = '000000';

function borderOf(style: Style): Pick<CellStyle, 'border' | 'borderColor'> {
  const { t, r, b, l } = style.bd ?? {};
  const one = b ?? t ?? l ?? r;
  if (!one || one.s === BorderStyleTypes.NONE) return {};
  const borderColor = plain(hex(one.cl?.rgb)) || LINE_COLOR;
  const isBox = [t, r, b, l].every(
    (side) => side !== null && side !== undefined && side.s !== BorderStyleTypes.NONE,
  );
  if (!isBox) return b ? { border: 'bottom', borderColor } : {};
  return {
    border: one.s === BorderStyleTypes.MEDIUM || one.s === BorderStyleTypes.THICK ? 'medium' : 'thin',
    borderColor,
  };
}

const alignOf = (style: Style): Pick<CellStyle, 'align'> => {
  const align = (Object.keys(ALIGN) as (keyof typeof ALIGN)[]).find((key) => ALIGN[key] === style.ht);
  return align ? { align } : {};
};

const indentOf = ({ pd }: Style): Pick<CellStyle, 'indent'> => {
  const steps = Math.round(Math.max(pd?.l ?? 0, pd?.r ?? 0) / INDENT);
  return steps > 0 ? { indent: steps } : {};
};

/** The look of a cell; undefined when it has none of its own. */
export function lookOf(style: Style | undefined): CellStyle | undefined {
  if (!style) return undefined;
  const look: CellStyle = {
    ink: plain(hex(style.cl?.rgb)) || DEFAULT_INK,
    ...(style.bg?.rgb ? { fill: plain(hex(style.bg.rgb)) } : {}),
    ...(style.bl === BooleanNumber.TRUE ? { isBold: true } : {}),
    ...(style.it === BooleanNumber.TRUE ? { isItalic: true } : {}),
    ...(style.fs && style.fs !== FONT_SIZE ? { size: style.fs } : {}),
    ...borderOf(style),
    ...alignOf(style),
    ...indentOf(style),
    ...(style.tb === WrapStrategy.WRAP ? { wraps: true } : {}),
    ...(style.isOpen === 1 ? { isOpen: true } : {}),
  };
  return Object.keys(look).length === 1 && look.ink === DEFAULT_INK ? undefined : look;
}

const keyOf = (look: CellStyle): string =>
  JSON.stringify(Object.entries(look).sort(([a], [b]) => (a < b ? -1 : 1)));
const NAMES = new Map(
  (Object.entries(STYLES) as [StyleName, CellStyle][]).map(([name, look]) => {
    const seen = lookOf(engineStyle(look, undefined));
    return [keyOf(seen ?? look), name] as const;
  }),
);

/** The named style when the look is exactly one of ours, otherwise the look itself. */
export const namedLook = (look: CellStyle | undefined): { style?: StyleName; look?: CellStyle } => {
  if (!look) return {};
  const style = NAMES.get(keyOf(look));
  return style ? { style } : { look };
};
