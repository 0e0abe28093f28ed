import { FIRST_DAY, LAST_DAY } from '../../units/dates';
import { addressOf, areaText, parseAddress, parseArea, quoteSheet } from '../formula/address';
import type {
  CellModel,
  ChartModel,
  ConditionalModel,
  SheetModel,
  StyleName,
  TableModel,
  ValidationModel,
} from './model';

type Writable<T> = { -readonly [K in keyof T]: T[K] };

/** What a cell is given as: a value, a formula (text that starts with =), or the whole cell. */
export type Content = number | string | boolean | CellModel;

const asCell = (content: Content): CellModel => {
  if (typeof content === 'object') return content;
  // No text is no value: a cell that holds '' is not blank to a spreadsheet.
  if (content === '') return {};
  return typeof content === 'string' && content.startsWith('=') ? { formula: content } : { value: content };
};

export const styled = (
  content: Content,
  style: StyleName,
  more: Omit<CellModel, 'value' | 'formula' | 'style'> = {},
): CellModel => ({ ...asCell(content), style, ...more });

const absolute = (corner: string): string => corner.replace(/^([A-Z]+)(\d+)$/, '$$$1$$$2');

type Layout = Omit<
  SheetModel,
  'name' | 'cells' | 'merges' | 'tables' | 'validations' | 'conditionals' | 'charts' | 'heights'
>;

/** Collects the parts of one sheet, row by row; the sheet it builds is plain data. */
export class SheetBuilder {
  private readonly cells: Record<string, CellModel> = {};
  private readonly merges: string[] = [];
  private readonly tables: TableModel[] = [];
  private readonly validations: ValidationModel[] = [];
  private readonly conditionals: ConditionalModel[] = [];
  private readonly charts: ChartModel[] = [];
  private readonly heights: Record<number, number> = {};

  constructor(
    readonly name: string,
    private readonly layout: Layout,
  ) {}

  put(
    address: string,
    content: Content,
    style?: StyleName,
    more: Omit<CellModel, 'value' | 'formula' | 'style'> = {},
  ): this {
    const cell: Writable<CellModel> = { ...asCell(content) };
    if (style) cell.style = style;
    this.cells[address] = Object.assign(cell, more);
    return this;
  }

  /** Cells side by side from `address` on; undefined leaves a gap. */
  row(address: string, contents: readonly (Content | undefined)[], style?: StyleName): this {
    const start = parseAddress(address);
    if (!start) throw new Error(`${address} is not an address`);
    contents.forEach((content, i) => {
      if (content === undefined) return;
      const cell = asCell(content);
      this.put(addressOf(start.row, start.column + i), { ...(style ? { style } : {}), ...cell });
    });
    return this;
  }

  /** One cell over several: the text starts in the first, the rest keep the look. */
  merge(
    range: string,
    content: Content,
    style?: StyleName,
    more: Omit<CellModel, 'value' | 'formula' | 'style'> = {},
  ): this {
    const area = parseArea(range);
    if (!area) throw new Error(`${range} is not a range`);
    for (let row = area.top; row <= area.bottom; row++)
      for (let column = area.left; column <= area.right; column++)
        if (style) this.cells[addressOf(row, column)] = { style };
    this.merges.push(areaText(area));
    return this.put(addressOf(area.top, area.left), content, style, more);
  }

  table(table: TableModel): this {
    this.tables.push(table);
    return this;
  }
  validate(validation: ValidationModel): this {
    this.validations.push(validation);
    return this;
  }
  /** Cells that take a day, or a moment, of those a plan knows. */
  validateDays(range: string, message: string): this {
    return this.validate({ range, kind: 'date', min: FIRST_DAY, max: LAST_DAY, message });
  }
  when(conditional: ConditionalModel): this {
    this.conditionals.push(conditional);
    return this;
  }
  chart(chart: ChartModel): this {
    this.charts.push(chart);
    return this;
  }
  height(row: number, points: number): this {
    this.heights[row] = points;
    return this;
  }

  /** Absolute reference from any sheet: 'My sheet'!$B$2. */
  ref(range: string): string {
    return `${quoteSheet(this.name)}!${range.split(':').map(absolute).join(':')}`;
  }

  build(): SheetModel {
    const some = <T>(key: string, list: readonly T[]): Record<string, readonly T[]> =>
      list.length > 0 ? { [key]: list } : {};
    return {
      name: this.name,
      ...this.layout,
      cells: this.cells,
      ...some('merges', this.merges),
      ...some('tables', this.tables),
      ...some('validations', this.validations),
      ...some('conditionals', this.conditionals),
      ...some('charts', this.charts),
      ...(Object.keys(this.heights).length > 0 ? { heights: this.heights } : {}),
    };
  }
}

const POINTS_PER_LINE = 13.5;
/** Height of a row whose longest text wraps in a column of that many characters. */
export const heightFor = (...texts: readonly (readonly [string, number])[]): number =>
  Math.max(16, ...texts.map(([text, width]) => Math.ceil(text.length / width) * POINTS_PER_LINE + 3));
