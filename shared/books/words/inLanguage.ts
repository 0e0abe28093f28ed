import { parseAddress, parseArea } from '../../sheet/formula/address';
import type {
  CellModel,
  ChartModel,
  SheetModel,
  ValidationModel,
  WorkbookModel,
} from '../../sheet/workbook/model';
import { WEEKDAY_WORDS } from '../../units/dates';
import { formulaIn } from './formulas';
import { grownHeights, grownWidths } from './heights';
import type { BookWords } from './words';
import { ownSheetName, sayIn } from './words';

/** Texts that somebody typed are left as they are: where they stand. */
export type IsTyped = (sheet: string, address: string, text: string) => boolean;

const DAYS = /d|mmm/;
/** Words of a number format, and the language its days have. */
function formatIn(words: BookWords, format: string): string {
  return format
    .split(';')
    .map((part) => {
      const said = part.replace(/"([^"]*)"/g, (_, text: string) => `"${sayIn(words, text)}"`);
      const plain = part.replace(/"[^"]*"|\[[^\]]*\]/g, '');
      if (!/mmm|ddd/.test(plain) || !DAYS.test(plain)) return said;
      const condition = /^(?:\[[^\]]*\])*/.exec(said)?.[0] ?? '';
      return `${condition}${words.formatTag}${said.slice(condition.length)}`;
    })
    .join(';');
}

/** Whether an address lies in a list to pick from: its words are ours. */
function pickedFrom({ validations = [] }: SheetModel): (address: string) => boolean {
  const areas = validations.flatMap(({ kind, range }) => (kind === 'list' ? (parseArea(range) ?? []) : []));
  return (address) => {
    const place = parseAddress(address);
    return (
      place !== undefined &&
      areas.some(
        ({ top, bottom, left, right }) =>
          place.row >= top && place.row <= bottom && place.column >= left && place.column <= right,
      )
    );
  };
}

const validationIn = (words: BookWords, one: ValidationModel): ValidationModel => ({
  ...one,
  message: sayIn(words, one.message),
  ...(one.kind === 'list' ? { items: one.items.map((item) => sayIn(words, item)) } : {}),
});

function chartIn(words: BookWords, chart: ChartModel): ChartModel {
  const { xTitle, yTitle, valueFormat, categoryFormat } = chart;
  return {
    ...chart,
    title: sayIn(words, chart.title),
    categories: formulaIn(words, chart.categories),
    series: chart.series.map((series) => ({
      ...series,
      name: sayIn(words, series.name),
      values: formulaIn(words, series.values),
    })),
    ...(xTitle === undefined ? {} : { xTitle: sayIn(words, xTitle) }),
    ...(yTitle === undefined ? {} : { yTitle: sayIn(words, yTitle) }),
    ...(valueFormat === undefined ? {} : { valueFormat: formatIn(words, valueFormat) }),
    ...(categoryFormat === undefined ? {} : { categoryFormat: formatIn(words, categoryFormat) }),
  };
}

/** Days of the week in a row may be typed; they are read back word by word. */
const isWeekdays = ({ value }: CellModel): boolean =>
  typeof value === 'string' &&
  value.split(', ').every((word) => (WEEKDAY_WORDS as readonly string[]).includes(word));
const isOpen = ({ style }: CellModel): boolean => style === 'input' || style === 'blank';

class SheetIn {
  private readonly formats = new Map<string, string>();
  private readonly isPicked: (address: string) => boolean;

  constructor(
    private readonly words: BookWords,
    private readonly sheet: SheetModel,
    private readonly isTyped: IsTyped,
  ) {
    this.isPicked = pickedFrom(sheet);
  }

  private format(format: string): string {
    let own = this.formats.get(format);
    if (own === undefined) this.formats.set(format, (own = formatIn(this.words, format)));
    return own;
  }

  private isOurs(address: string, cell: CellModel): boolean {
    if (cell.style === undefined || this.isTyped(this.sheet.name, address, String(cell.value))) return false;
    return !isOpen(cell) || this.isPicked(address) || isWeekdays(cell);
  }

  private cell(address: string, cell: CellModel): CellModel {
    const { value, formula, format, note } = cell;
    const isText = typeof value === 'string' && formula === undefined && this.isOurs(address, cell);
    if (!isText && formula === undefined && format === undefined && note === undefined) return cell;
    return {
      ...cell,
      ...(isText ? { value: sayIn(this.words, value) } : {}),
      ...(formula === undefined ? {} : { formula: formulaIn(this.words, formula) }),
      ...(format === undefined ? {} : { format: this.format(format) }),
      ...(note === undefined ? {} : { note: sayIn(this.words, note) }),
    };
  }

  build(): SheetModel {
    const { words, sheet } = this;
    const cells: Record<string, CellModel> = {};
    for (const address in sheet.cells) {
      const cell = sheet.cells[address];
      if (cell) cells[address] = this.cell(address, cell);
    }
    const own: SheetModel = {
      ...sheet,
      name: ownSheetName(words, sheet.name),
      widths: grownWidths(sheet),
      cells,
      ...(sheet.validations && { validations: sheet.validations.map((one) => validationIn(words, one)) }),
      ...(sheet.conditionals && {
        conditionals: sheet.conditionals.map((one) => ({ ...one, formula: formulaIn(words, one.formula) })),
      }),
      ...(sheet.charts && { charts: sheet.charts.map((chart) => chartIn(words, chart)) }),
      ...(sheet.print?.footer === undefined
        ? {}
        : { print: { ...sheet.print, footer: sayIn(words, sheet.print.footer) } }),
    };
    const heights = grownHeights(sheet, own);
    return heights ? { ...own, heights } : own;
  }
}

/**
 * A workbook of ours in another language: its sheets, its words, the texts its formulas answer. Values of formulas
 * are those of before; calculate it afterwards.
 */
export const inLanguage = (
  model: WorkbookModel,
  words: BookWords,
  isTyped: IsTyped = () => false,
): WorkbookModel => ({
  ...model,
  title: sayIn(words, model.title),
  sheets: model.sheets.map((sheet) => new SheetIn(words, sheet, isTyped).build()),
  names: model.names.map((name) => ({
    ...name,
    refersTo: formulaIn(words, name.refersTo),
    ...(name.comment === undefined ? {} : { comment: sayIn(words, name.comment) }),
  })),
});
