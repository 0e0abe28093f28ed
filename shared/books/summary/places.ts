import { addressOf, parseArea, quoteSheet, splitReference } from '../../sheet/formula/address';
import type { NameKey } from '../../run/results';
import { nameOf } from '../../run/results';
import type { Cell } from '../../base/values';
import type { WorkbookModel } from '../../sheet/workbook/model';

/** Where a season plan stands in a workbook: it is known by its names, whatever its sheets are called now. */

/** Every plan has it, and nothing else does. */
const MARK: NameKey = 'eggsNeeded';

/**
 * Suffixes of the names of all plans in a workbook: '' and _2 when a second plan was written beside the
 * first.
 */
export const planSuffixes = (book: WorkbookModel): string[] =>
  book.names
    .flatMap(({ name }) =>
      name === nameOf(MARK) || name.startsWith(`${nameOf(MARK)}_`) ? [name.slice(nameOf(MARK).length)] : [],
    )
    .sort((a, b) => a.localeCompare(b, 'en', { numeric: true }));

/** Headings of the cells beside an assumption. */
export const ENDS = ['Poor', 'Good', 'Where from'] as const;
const HEADINGS: ReadonlySet<string> = new Set(ENDS);

interface Place {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

export class PlanPlaces {
  private readonly places = new Map<string, Place>();

  constructor(
    private readonly book: WorkbookModel,
    readonly suffix: string,
  ) {
    for (const { name, refersTo } of book.names) {
      const { sheet, area } = splitReference(refersTo.replace(/^=/, ''));
      const found = parseArea(area.replaceAll('$', ''));
      if (sheet !== undefined && found)
        this.places.set(name.toLowerCase(), { sheet, row: found.top, column: found.left });
    }
  }

  private place(key: NameKey): Place | undefined {
    return this.places.get(nameOf(key, this.suffix).toLowerCase());
  }

  has(key: NameKey): boolean {
    return this.place(key) !== undefined;
  }

  value(key: NameKey): Cell {
    const place = this.place(key);
    return (
      (place &&
        this.book.sheets.find(({ name }) => name === place.sheet)?.cells[addressOf(place.row, place.column)]
          ?.value) ??
      null
    );
  }

  /** The cell so many columns right of the named one: the ends of an assumption, and where it comes from. */
  beside(key: NameKey, columns: number): string {
    const place = this.place(key);
    if (!place) return '';
    const [, letters = '', digits = ''] =
      /^([A-Z]+)(\d+)$/.exec(addressOf(place.row, place.column + columns)) ?? [];
    return `${quoteSheet(place.sheet)}!$${letters}$${digits}`;
  }

  textBeside(key: NameKey, columns: number): string {
    const place = this.place(key);
    return place
      ? String(
          this.book.sheets.find(({ name }) => name === place.sheet)?.cells[
            addressOf(place.row, place.column + columns)
          ]?.value ?? '',
        )
      : '';
  }

  /**
   * The words above a column of assumptions, to be sure that the cells beside are what they are taken for.
   */
  headingOf(key: NameKey, columns: number): Cell {
    const place = this.place(key);
    const cells = place && this.book.sheets.find(({ name }) => name === place.sheet)?.cells;
    if (!place || !cells) return null;
    for (let row = place.row - 1; row >= 0; row--) {
      const value = cells[addressOf(row, place.column + columns)]?.value;
      // Ends are numbers and stand below their heading; the words of the last column stand below a heading as
      // well.
      if (typeof value === 'string' && HEADINGS.has(value)) return value;
    }
    return null;
  }
}
