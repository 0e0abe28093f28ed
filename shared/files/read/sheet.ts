import { addressOf, parseArea } from '../../sheet/formula/address';
import type { CellModel } from '../../sheet/workbook/model';
import { Cells } from '../cells/cells';
import type { CellSpan } from '../cells/cells';
import type { FormulaBudget, StoredFormula } from '../cells/reader';
import { CellReader } from '../cells/reader';
import type { SharedStrings } from '../cells/strings';
import { fromFile } from '../formulas';
import type { Tag } from '../package/events';
import { scanXml } from '../package/events';
import type { RulesReader } from './rules';
import type { FileStyles } from './styles';

/** What a worksheet part holds besides its relations. */
export interface SheetParts {
  readonly cells: Record<string, CellModel>;
  readonly widths: number[];
  readonly heights: Record<number, number>;
  readonly merges: string[];
  freeze?: { rows: number; columns: number };
  tab?: string;
  footer?: string;
  isProtected?: boolean;
  hasGridlines?: boolean;
  isLandscape?: boolean;
  isOnePage?: boolean;
  readonly breaks: number[];
  readonly lost: Set<string>;
}

export interface SheetContext {
  readonly strings: SharedStrings;
  readonly styles: FileStyles;
  readonly dateStyles: readonly boolean[];
  readonly is1904: boolean;
  readonly budget: FormulaBudget;
}

const WIDEST_LISTED = 200;
const MOST_ROWS = 1_048_576;
const MOST_COLUMNS = 16_384;

/** What is around the cells, by element name. */
const AROUND = new Map<string, (tag: Tag, parts: SheetParts) => void>([
  ['col', widthOf],
  [
    'mergeCell',
    (tag, parts) => {
      const ref = tag.get('ref') ?? '';
      if (parseArea(ref)) parts.merges.push(ref);
    },
  ],
  [
    'pane',
    (tag, parts) => {
      if (!tag.get('state')?.startsWith('frozen')) return;
      const lines = (name: string, most: number): number =>
        Math.min(most, Math.max(0, Math.trunc(tag.number(name) ?? 0)));
      parts.freeze = { rows: lines('ySplit', MOST_ROWS - 1), columns: lines('xSplit', MOST_COLUMNS - 1) };
    },
  ],
  [
    'sheetView',
    (tag, parts) => {
      const shows = tag.get('showGridLines');
      if (shows === '0' || shows === 'false') parts.hasGridlines = false;
    },
  ],
  [
    'tabColor',
    (tag, parts) => {
      const color = tag.get('rgb')?.slice(-6);
      if (color && /^[0-9A-Fa-f]{6}$/.test(color)) parts.tab = color;
    },
  ],
  [
    'sheetProtection',
    (tag, parts) => {
      if (tag.flag('sheet')) parts.isProtected = true;
      if (tag.get('hashValue') ?? tag.get('password')) parts.lost.add('The password of a protected sheet');
    },
  ],
  [
    'pageSetup',
    (tag, parts) => {
      if (tag.get('orientation') === 'landscape') parts.isLandscape = true;
      if (tag.get('fitToHeight') === '1') parts.isOnePage = true;
    },
  ],
  [
    'brk',
    (tag, parts) => {
      const id = tag.number('id') ?? 0;
      if (id >= 0 && id < MOST_ROWS) parts.breaks.push(Math.trunc(id) + 1);
    },
  ],
  ...(
    [
      ['hyperlink', 'Links'],
      ['picture', 'Background pictures'],
      ['oleObject', 'Embedded objects'],
      ['sparklineGroup', 'Sparklines'],
      ['autoFilter', 'Filters'],
      ['pivotTableDefinition', 'Pivot tables'],
    ] as const
  ).map(([name, what]): [string, (tag: Tag, parts: SheetParts) => void] => [
    name,
    (_, parts) => {
      parts.lost.add(what);
    },
  ]),
]);

function widthOf(tag: Tag, { widths }: SheetParts): void {
  const [min = 1, max = min, width] = [tag.number('min'), tag.number('max'), tag.number('width')];
  if (width === undefined || width < 0 || min < 1 || max > WIDEST_LISTED) return;
  for (let column = Math.trunc(min); column <= max; column++) widths[column - 1] = width;
}

const footerOf = (text: string): string | undefined =>
  /&L(?:&8)?((?:(?!&[CR]).)*)/.exec(text)?.[1]?.replaceAll('&&', '&') || undefined;

class SheetReader {
  readonly parts: SheetParts = {
    cells: {},
    widths: [],
    heights: {},
    merges: [],
    breaks: [],
    lost: new Set(),
  };
  private footer: string | undefined;
  private readonly reader: CellReader;

  constructor(
    private readonly bytes: Uint8Array,
    private readonly context: SheetContext,
  ) {
    this.reader = new CellReader(bytes, context, context.budget);
  }

  read(part: string, rules: RulesReader): void {
    scanXml(this.bytes, part, {
      aside: { name: 'sheetData', read: (from) => this.readCells(from) },
      open: (tag) => {
        AROUND.get(tag.name)?.(tag, this.parts);
        if (tag.name === 'oddFooter') this.footer = '';
        rules.open(tag);
      },
      text: (text) => {
        if (this.footer !== undefined) this.footer += text;
        rules.text(text);
      },
      close: (name) => {
        rules.close(name);
        if (name !== 'oddFooter' || this.footer === undefined) return;
        const footer = footerOf(this.footer);
        if (footer) this.parts.footer = footer;
        this.footer = undefined;
      },
    });
    if (this.reader.hasWhatIf) this.parts.lost.add('What-if data tables (their values are kept)');
    if (this.context.budget.isUsedUp)
      this.parts.lost.add('Formulas beyond what a workbook can hold (their values are kept)');
  }

  private readCells(from: number): number {
    const cells = new Cells(this.bytes, from);
    while (cells.next()) this.keep(cells.cell);
    for (const [row, height] of cells.heights) this.parts.heights[row + 1] = height;
    return cells.closeAt;
  }

  private keep(cell: CellSpan): void {
    const { reader } = this;
    const style = this.context.styles.cells[reader.style(cell)];
    const value = reader.value(cell);
    const formula = modelFormula(reader.formula(cell));
    const look = style?.look ?? {};
    const format = style?.format;
    if (value === null && formula === undefined && !look.style && !look.look && format === undefined) return;
    this.parts.cells[addressOf(cell.row, cell.column)] = {
      ...(value === null ? {} : { value }),
      ...formula,
      ...look,
      ...(format === undefined ? {} : { format }),
    };
  }
}

function modelFormula(
  stored: StoredFormula | undefined,
): { formula: string; spill?: readonly [number, number] } | undefined {
  if (!stored) return undefined;
  const { text, area } = stored;
  const size = area ? ([area.bottom - area.top + 1, area.right - area.left + 1] as const) : undefined;
  return { formula: fromFile(text), ...(size && size[0] * size[1] > 1 ? { spill: size } : {}) };
}

export function readSheetParts(
  bytes: Uint8Array,
  part: string,
  context: SheetContext,
  rules: RulesReader,
): SheetParts {
  const reader = new SheetReader(bytes, context);
  reader.read(part, rules);
  return reader.parts;
}
