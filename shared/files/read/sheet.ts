import type { Place } from '../../sheet/formula/address';
import { addressOf, parseAddress, parseArea } from '../../sheet/formula/address';
import type { Cell, ErrorCode } from '../../base/values';
import type { CellModel } from '../../sheet/workbook/model';
import { fromFile, shifted } from '../formulas';
import { revealCellText } from '../text';
import type { Tag } from './scan';
import { scan } from './scan';
import type { FileStyles } from './styles';
import { serialOfIsoMoment } from '../../units/dates';

/** What a worksheet part holds besides its cells, by element name, for the parts that are read afterwards. */
export interface SheetParts {
  readonly cells: Record<string, CellModel>;
  readonly widths: number[];
  readonly heights: Record<number, number>;
  readonly merges: string[];
  freeze?: { rows: number; columns: number };
  tab?: string;
  isProtected?: boolean;
  hasGridlines?: boolean;
  isLandscape?: boolean;
  isOnePage?: boolean;
  readonly breaks: number[];
  readonly lost: Set<string>;
}

export interface SheetContext {
  readonly texts: readonly string[];
  readonly styles: FileStyles;
  readonly is1904: boolean;
}

/** Days between the two ways of counting dates. */
const DAYS_1904 = 1462;
const WIDEST_LISTED = 200;

interface Draft {
  place: Place;
  type: string;
  style: number;
  value: string;
  inline: string;
  formula: { text: string; type: string; ref: string | undefined; shared: string | undefined } | undefined;
}

const KNOWN_ERRORS = new Set<string>([
  '#VALUE!',
  '#N/A',
  '#NUM!',
  '#DIV/0!',
  '#REF!',
  '#NAME?',
  '#NULL!',
  '#SPILL!',
  '#CALC!',
]);

class SheetReader {
  readonly parts: SheetParts = {
    cells: {},
    widths: [],
    heights: {},
    merges: [],
    breaks: [],
    lost: new Set(),
  };
  private draft: Draft | undefined;
  private row = -1;
  private column = -1;
  private collecting: 'v' | 'f' | 't' | undefined;
  private isPhonetic = false;
  private readonly shared = new Map<string, { readonly formula: string; readonly place: Place }>();

  constructor(private readonly context: SheetContext) {}

  open(tag: Tag): void {
    switch (tag.name) {
      case 'row':
        this.openRow(tag);
        break;
      case 'c':
        this.openCell(tag);
        break;
      case 'f':
        this.openFormula(tag);
        break;
      case 'v':
        this.collecting = 'v';
        break;
      case 't':
        if (this.draft && !this.isPhonetic) this.collecting = 't';
        break;
      case 'rPh':
        this.isPhonetic = true;
        break;
      default:
        this.openOther(tag);
    }
  }

  private openRow(tag: Tag): void {
    this.row = (tag.number('r') ?? this.row + 2) - 1;
    this.column = -1;
    const height = tag.number('ht');
    if (height !== undefined && tag.flag('customHeight')) this.parts.heights[this.row + 1] = height;
  }

  private openCell(tag: Tag): void {
    // A cell without an address follows the one before it.
    const place = parseAddress(tag.get('r') ?? '') ?? { row: Math.max(0, this.row), column: this.column + 1 };
    this.column = place.column;
    this.draft = {
      place,
      type: tag.get('t') ?? 'n',
      style: tag.number('s') ?? 0,
      value: '',
      inline: '',
      formula: undefined,
    };
  }

  private openFormula(tag: Tag): void {
    if (!this.draft) return;
    this.draft.formula = {
      text: '',
      type: tag.get('t') ?? 'normal',
      ref: tag.get('ref'),
      shared: tag.get('si'),
    };
    this.collecting = 'f';
  }

  private openOther(tag: Tag): void {
    const { parts } = this;
    const act: Readonly<Record<string, () => void>> = {
      col: () => {
        this.widthOf(tag);
      },
      mergeCell: () => {
        parts.merges.push(tag.get('ref') ?? '');
      },
      pane: () => {
        if (tag.get('state')?.startsWith('frozen'))
          parts.freeze = { rows: tag.number('ySplit') ?? 0, columns: tag.number('xSplit') ?? 0 };
      },
      sheetView: () => {
        if (tag.get('showGridLines') === '0' || tag.get('showGridLines') === 'false')
          parts.hasGridlines = false;
      },
      tabColor: () => {
        const color = tag.get('rgb')?.slice(-6);
        if (color) parts.tab = color;
      },
      sheetProtection: () => {
        if (tag.flag('sheet')) parts.isProtected = true;
        if (tag.get('hashValue') ?? tag.get('password')) parts.lost.add('The password of a protected sheet');
      },
      pageSetup: () => {
        if (tag.get('orientation') === 'landscape') parts.isLandscape = true;
        if (tag.get('fitToHeight') === '1') parts.isOnePage = true;
      },
      brk: () => {
        parts.breaks.push((tag.number('id') ?? 0) + 1);
      },
      hyperlink: () => {
        parts.lost.add('Links');
      },
      picture: () => {
        parts.lost.add('Background pictures');
      },
      oleObject: () => {
        parts.lost.add('Embedded objects');
      },
      sparklineGroup: () => {
        parts.lost.add('Sparklines');
      },
      autoFilter: () => {
        parts.lost.add('Filters');
      },
      pivotTableDefinition: () => {
        parts.lost.add('Pivot tables');
      },
    };
    act[tag.name]?.();
  }

  private widthOf(tag: Tag): void {
    const [min = 1, max = min, width] = [tag.number('min'), tag.number('max'), tag.number('width')];
    if (width === undefined || max > WIDEST_LISTED) return;
    for (let column = min; column <= max; column++) this.parts.widths[column - 1] = width;
  }

  text(text: string): void {
    const { draft } = this;
    if (!draft || !this.collecting) return;
    if (this.collecting === 'v') draft.value += text;
    else if (this.collecting === 't') draft.inline += text;
    else if (draft.formula) draft.formula.text += text;
  }

  close(name: string): void {
    if (name === 'v' || name === 'f' || name === 't') this.collecting = undefined;
    else if (name === 'rPh') this.isPhonetic = false;
    else if (name === 'c' && this.draft) {
      this.keep(this.draft);
      this.draft = undefined;
    }
  }

  private keep(draft: Draft): void {
    const style = this.context.styles.cells[draft.style];
    const value = this.valueOf(draft, style?.isDate ?? false);
    const formula = this.formulaOf(draft);
    const look = style?.look ?? {};
    const format = style?.format;
    if (value === null && formula === undefined && !look.style && !look.look && format === undefined) return;
    this.parts.cells[addressOf(draft.place.row, draft.place.column)] = {
      ...(value === null ? {} : { value }),
      ...formula,
      ...look,
      ...(format === undefined ? {} : { format }),
    };
  }

  private valueOf({ type, value, inline }: Draft, isDate: boolean): Cell {
    switch (type) {
      case 's':
        return revealCellText(this.context.texts[Number(value)] ?? '');
      case 'str':
        return revealCellText(value);
      case 'inlineStr':
        return revealCellText(inline);
      case 'b':
        return value === '1' || value === 'true';
      case 'e':
        return { error: (KNOWN_ERRORS.has(value) ? value : '#VALUE!') as ErrorCode };
      case 'd':
        return serialOfIsoMoment(value) ?? value;
      default:
        return this.numberOf(value, isDate);
    }
  }

  private numberOf(value: string, isDate: boolean): number | null {
    const number = value.trim() === '' ? NaN : Number(value);
    return Number.isFinite(number) ? number + (isDate && this.context.is1904 ? DAYS_1904 : 0) : null;
  }

  private formulaOf({
    formula,
    place,
  }: Draft): { formula: string; spill?: readonly [number, number] } | undefined {
    if (!formula) return undefined;
    if (formula.type === 'dataTable') {
      this.parts.lost.add('What-if data tables (their values are kept)');
      return undefined;
    }
    if (formula.type === 'shared' && formula.shared !== undefined)
      return this.sharedFormula(formula.text, formula.shared, place);
    if (formula.text === '') return undefined;
    const area = formula.type === 'array' && formula.ref ? parseArea(formula.ref) : undefined;
    const size = area ? ([area.bottom - area.top + 1, area.right - area.left + 1] as const) : undefined;
    return { formula: fromFile(formula.text), ...(size && size[0] * size[1] > 1 ? { spill: size } : {}) };
  }

  /** Only the first cell of a shared formula holds its text; the others read it from where they stand. */
  private sharedFormula(text: string, key: string, place: Place): { formula: string } | undefined {
    if (text !== '') {
      this.shared.set(key, { formula: fromFile(text), place });
      return { formula: fromFile(text) };
    }
    const first = this.shared.get(key);
    return first
      ? { formula: shifted(first.formula, place.row - first.place.row, place.column - first.place.column) }
      : undefined;
  }
}

export function readSheetParts(xml: string, context: SheetContext): SheetParts {
  const reader = new SheetReader(context);
  scan(xml, {
    open: (tag) => {
      reader.open(tag);
    },
    close: (name) => {
      reader.close(name);
    },
    text: (text) => {
      reader.text(text);
    },
  });
  return reader.parts;
}

/** Texts of the shared list: rich text is joined, reading aids left out. */
export function readTexts(xml: string | undefined): string[] {
  const texts: string[] = [];
  if (xml === undefined) return texts;
  let current = '';
  let isText = false;
  let isPhonetic = false;
  scan(xml, {
    open: ({ name }) => {
      if (name === 'si') current = '';
      else if (name === 'rPh') isPhonetic = true;
      else if (name === 't') isText = !isPhonetic;
    },
    text: (text) => {
      if (isText) current += text;
    },
    close: (name) => {
      if (name === 't') isText = false;
      else if (name === 'rPh') isPhonetic = false;
      else if (name === 'si') texts.push(current);
    },
  });
  return texts;
}
