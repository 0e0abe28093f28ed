// Long: one feature of the embedded engine's book after the other.
import type { IBorderData, IStyleData, Nullable } from '@univerjs/core';
import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  STYLE_KEYS,
  VerticalAlign,
  WrapStrategy,
} from '@univerjs/core';
import {
  SetWorksheetColWidthMutation,
  SetWorksheetColWidthMutationFactory,
  SetWorksheetRowHeightMutation,
  SetWorksheetRowHeightMutationFactory,
  SetWorksheetRowIsAutoHeightMutation,
  SetWorksheetRowIsAutoHeightMutationFactory,
} from '@univerjs/sheets';
import type {
  StandInArea,
  StandInBook,
  BorderState,
  Edge,
  FormatPatch,
  FormatState,
  HorizontalAlignment,
  LineStyle,
  MixedFormat,
  VerticalAlignment,
} from '../../../officeStandIn/book';
import type { Context } from './context';
import { toArea, toRange } from './context';

/** How cells look: fonts, fills, alignment, borders, sizes, merges. */
export type FormatPart = Pick<
  StandInBook,
  'format' | 'setFormat' | 'border' | 'setBorder' | 'autofitColumns' | 'merges' | 'merge' | 'unmerge'
>;

/** A style of the engine with our mark for cells that stay open in a protected sheet. */
export type Style = IStyleData & { isOpen?: 1 | null };
/** What is no key of a look the engine drops with the first change of the cell: ours is one too. */
const OPEN_KEY = 'isOpen' satisfies keyof Style;
if (!(STYLE_KEYS as readonly string[]).includes(OPEN_KEY)) (STYLE_KEYS as unknown as string[]).push(OPEN_KEY);

const PIXELS_PER_POINT = 4 / 3;
const HORIZONTAL: Partial<Record<HorizontalAlignment, HorizontalAlign>> = {
  General: HorizontalAlign.UNSPECIFIED,
  Left: HorizontalAlign.LEFT,
  Center: HorizontalAlign.CENTER,
  Right: HorizontalAlign.RIGHT,
  Justify: HorizontalAlign.JUSTIFIED,
  Distributed: HorizontalAlign.DISTRIBUTED,
};
const VERTICAL: Partial<Record<VerticalAlignment, VerticalAlign>> = {
  Top: VerticalAlign.TOP,
  Center: VerticalAlign.MIDDLE,
  Bottom: VerticalAlign.BOTTOM,
};
const LINES: Record<LineStyle, BorderStyleTypes> = {
  None: BorderStyleTypes.NONE,
  Continuous: BorderStyleTypes.THIN,
  Dash: BorderStyleTypes.DASHED,
  DashDot: BorderStyleTypes.DASH_DOT,
  DashDotDot: BorderStyleTypes.DASH_DOT_DOT,
  Dot: BorderStyleTypes.DOTTED,
  Double: BorderStyleTypes.DOUBLE,
  SlantDashDot: BorderStyleTypes.SLANT_DASH_DOT,
};
const keyOf = <K extends string, V>(
  map: Partial<Record<K, V>>,
  value: V | null | undefined,
  otherwise: K,
): K => (Object.entries(map) as [K, V][]).find(([, v]) => v === value)?.[0] ?? otherwise;

/** rgb(…) and #rgb as #RRGGBB. */
export function hex(color: Nullable<string>): string {
  if (!color) return '';
  const [, r, g, b] = /^rgba?\((\d+),\s*(\d+),\s*(\d+)/.exec(color) ?? [];
  if (r && g && b)
    return `#${[r, g, b].map((n) => Number(n).toString(16).padStart(2, '0')).join('')}`.toUpperCase();
  const short = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/i.exec(color);
  return (
    short
      ? `#${short
          .slice(1)
          .map((d) => d + d)
          .join('')}`
      : color
  ).toUpperCase();
}

export const lookOf = (style: Style): Omit<FormatState, 'columnWidth' | 'rowHeight'> => ({
  fill: hex(style.bg?.rgb),
  bold: style.bl === BooleanNumber.TRUE,
  italic: style.it === BooleanNumber.TRUE,
  color: hex(style.cl?.rgb) || '#000000',
  size: style.fs ?? 11,
  font: style.ff ?? 'Arial',
  horizontal: keyOf(HORIZONTAL, style.ht, 'General'),
  vertical: keyOf(VERTICAL, style.vt, 'Bottom'),
  wrap: style.tb === WrapStrategy.WRAP,
  locked: style.isOpen !== 1,
});

const paint = (rgb: string): { rgb: string } | null => (rgb === '' ? null : { rgb });

const flag = (on: boolean): BooleanNumber => (on ? BooleanNumber.TRUE : BooleanNumber.FALSE);

type Look = Omit<FormatPatch, 'columnWidth' | 'rowHeight'>;
/** One property of a look → the engine's; null takes a property away. */
const SETTERS: { readonly [K in keyof Look]-?: (value: NonNullable<Look[K]>) => Style } = {
  fill: (value) => ({ bg: paint(value) }),
  color: (value) => ({ cl: paint(value) }),
  bold: (value) => ({ bl: flag(value) }),
  italic: (value) => ({ it: flag(value) }),
  size: (value) => ({ fs: value }),
  font: (value) => ({ ff: value }),
  horizontal: (value) => ({ ht: HORIZONTAL[value] ?? HorizontalAlign.CENTER }),
  vertical: (value) => ({ vt: VERTICAL[value] ?? VerticalAlign.TOP }),
  wrap: (value) => ({ tb: value ? WrapStrategy.WRAP : WrapStrategy.OVERFLOW }),
  locked: (value) => ({ isOpen: value ? null : 1 }),
};

/** A property that is not in the patch stays as it is. */
export function styleOf(patch: Look): Style {
  const set = <K extends keyof Look>(key: K, value: Look[K]): Style =>
    value === undefined ? {} : (SETTERS[key] as (given: NonNullable<Look[K]>) => Style)(value);
  return Object.assign(
    {},
    ...(Object.keys(patch) as (keyof Look)[]).map((key) => set(key, patch[key])),
  ) as Style;
}

const SIDES: Record<
  Edge,
  { side: keyof IBorderData; on: (a: StandInArea, row: number, column: number) => boolean }
> = {
  EdgeTop: { side: 't', on: (a, r) => r === a.row },
  EdgeBottom: { side: 'b', on: (a, r) => r === a.row + a.rows - 1 },
  EdgeLeft: { side: 'l', on: (a, _r, c) => c === a.column },
  EdgeRight: { side: 'r', on: (a, _r, c) => c === a.column + a.columns - 1 },
  InsideHorizontal: { side: 'b', on: (a, r) => r < a.row + a.rows - 1 },
  InsideVertical: { side: 'r', on: (a, _r, c) => c < a.column + a.columns - 1 },
};

export const lineOf = (border: IBorderData[keyof IBorderData]): BorderState => {
  if (!border || border.s === BorderStyleTypes.NONE) return { style: 'None', color: '#000000' };
  return { style: keyOf(LINES, border.s, 'Continuous'), color: hex(border.cl?.rgb) || '#000000' };
};

/** Reading a look over a very large area stops here: what is beyond is as good as always the same. */
const LOOKED_AT = 20_000;

export function formatPart(context: Context): FormatPart {
  const stateAt = (sheet: string, row: number, column: number): FormatState => {
    const own = context.sheet(sheet);
    return {
      ...lookOf(own.getComposedCellStyle(row, column) as Style),
      columnWidth: own.getColumnWidth(column) / PIXELS_PER_POINT,
      rowHeight: own.getRowHeight(row) / PIXELS_PER_POINT,
    };
  };
  const eachCell = function* (sheet: string, area: StandInArea): Generator<readonly [number, number]> {
    const { row, column, rows, columns } = context.clip(sheet, area);
    let seen = 0;
    for (let r = row; r < row + rows; r++)
      for (let c = column; c < column + columns; c++) {
        if (seen++ > LOOKED_AT) return;
        yield [r, c];
      }
  };
  return {
    format(sheet, area) {
      const mixed: { -readonly [K in keyof MixedFormat]: MixedFormat[K] } = stateAt(
        sheet,
        area.row,
        area.column,
      );
      for (const [r, c] of eachCell(sheet, area)) {
        const here = stateAt(sheet, r, c);
        for (const key of Object.keys(here) as (keyof FormatState)[])
          if (mixed[key] !== here[key]) (mixed as Record<string, unknown>)[key] = null;
      }
      return mixed;
    },
    setFormat(sheet, area, patch) {
      const { columnWidth, rowHeight, ...look } = patch;
      context.ensure(sheet, area);
      const ranges = [toRange(context.clip(sheet, area))];
      const at = { unitId: context.unitId, subUnitId: sheet, ranges };
      const own = context.sheet(sheet);
      if (columnWidth !== undefined) {
        const change = { ...at, colWidth: Math.round(columnWidth * PIXELS_PER_POINT) };
        context.mutate(
          SetWorksheetColWidthMutation.id,
          change,
          SetWorksheetColWidthMutationFactory(change, own),
        );
      }
      if (rowHeight !== undefined) {
        const fixed = { ...at, autoHeightInfo: BooleanNumber.FALSE };
        const change = { ...at, rowHeight: Math.round(rowHeight * PIXELS_PER_POINT) };
        context.mutate(
          SetWorksheetRowIsAutoHeightMutation.id,
          fixed,
          SetWorksheetRowIsAutoHeightMutationFactory(fixed, own),
        );
        context.mutate(
          SetWorksheetRowHeightMutation.id,
          change,
          SetWorksheetRowHeightMutationFactory(change, own),
        );
      }
      const style = styleOf(look);
      if (Object.keys(style).length > 0) context.changeAll(sheet, area, () => ({ s: { ...style } }));
    },
    border(sheet, area, edge) {
      const { side, on } = SIDES[edge];
      for (const [r, c] of eachCell(sheet, area))
        if (on(area, r, c)) return lineOf(context.sheet(sheet).getComposedCellStyle(r, c).bd?.[side]);
      return lineOf(undefined);
    },
    setBorder(sheet, area, edge, { style, color }) {
      const { side, on } = SIDES[edge];
      const line = style === 'None' ? null : { s: LINES[style], cl: { rgb: color || '#000000' } };
      context.changeAll(sheet, area, (r, c) =>
        on(area, r, c) ? { s: { bd: { [side]: line } } } : undefined,
      );
    },
    autofitColumns(sheet, area) {
      fitColumns(context, sheet, context.clip(sheet, area));
    },
    merges: (sheet) => context.sheet(sheet).getMergeData().map(toArea),
    merge(sheet, area) {
      context.ensure(sheet, area);
      context.range(sheet, area).merge({ isForceMerge: true });
    },
    unmerge(sheet, area) {
      context.range(sheet, area).breakApart();
    },
  };
}

const LETTER = 7.2;
const NARROWEST = 48;
const WIDEST = 420;

/** By counting letters: the engine measures only what is drawn, and the sheet may not be on screen. */
function fitColumns(context: Context, sheet: string, { row, column, rows, columns }: StandInArea): void {
  for (let c = column; c < column + columns; c++) {
    let longest = 0;
    for (let r = row; r < row + rows; r++) {
      const shown = context.facade(sheet).getRange(r, c).getDisplayValue();
      longest = Math.max(longest, ...shown.split('\n').map((line) => line.length));
    }
    if (longest > 0)
      context
        .facade(sheet)
        .setColumnWidth(c, Math.round(Math.min(WIDEST, Math.max(NARROWEST, longest * LETTER + 14))));
  }
}
