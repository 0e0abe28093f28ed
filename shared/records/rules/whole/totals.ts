// Long: every way a line of totals can be meant, and the cells that fit none of them
import { formulaAt, valueAt } from '../../read/sheetCells';
import { decimalIn, readNumber } from '../../columns/cells/numbers';
import { at, near } from '../../meaning/sampled';
import { startsWith } from '../../words/lexicon';
import type { RecordTable, Spot } from '../../table';
import type { TableVerdict } from '../rule';
import { plain } from '../show';
import { isSlip } from './suspect';

interface Line {
  readonly position: number;
  readonly isAverage: boolean;
}
/** How a line of totals is meant: over which lines, added up or averaged. */
type Way = 'since' | 'all' | 'totals' | 'mean' | 'meanSince' | 'last' | 'max' | 'min';
const WAYS: readonly Way[] = ['since', 'all', 'totals', 'mean', 'meanSince', 'last', 'max', 'min'];

interface Judged {
  readonly column: number;
  readonly seen: number;
  readonly made: ReadonlyMap<Way, number>;
  readonly fits: ReadonlySet<Way>;
}

/** What cells of a column (by record) were meant to be, where another finding says it. */
export type Mended = ReadonlyMap<number, ReadonlyMap<number, number>>;
const mendedList = (list: Float64Array, mended: ReadonlyMap<number, number>): Float64Array =>
  list.map((value, record) => mended.get(record) ?? value);

const sum = (values: readonly number[]): number =>
  values.length > 0 ? values.reduce((a, b) => a + b, 0) : NaN;
const mean = (values: readonly number[]): number => sum(values) / values.length;

class Totals {
  private readonly rows;
  private readonly lines: readonly Line[];

  constructor(
    private readonly table: RecordTable,
    private readonly mended: Mended,
  ) {
    this.rows = table.rows;
    const { sheet } = table.rows ?? {};
    this.lines = (table.rows?.skipped ?? [])
      .filter(({ why }) => why === 'total')
      .map(({ position }) => ({
        position,
        isAverage:
          sheet !== undefined &&
          (table.rows?.columns ?? []).some(({ column }) => {
            const cell = valueAt(sheet, position, column);
            return typeof cell === 'string' && startsWith(cell, ['average_row']);
          }),
      }));
  }

  private numberAt(position: number, column: number): number {
    const { sheet } = this.rows ?? {};
    const cell = sheet ? valueAt(sheet, position, column) : null;
    if (typeof cell === 'number') return cell;
    if (typeof cell !== 'string' || !/\p{N}/u.test(cell)) return NaN;
    const i = this.rows?.columns.findIndex((one) => one.column === column) ?? -1;
    return readNumber(cell, decimalIn(cell) ?? this.table.mapping[i]?.decimal ?? '.').value;
  }

  /** The numbers of a column above a total line, and those of them below the total before it. */
  private numbersAbove(line: Line, from: number, list: Float64Array): { all: number[]; since: number[] } {
    const [all, since]: [number[], number[]] = [[], []];
    for (const [record, position] of (this.rows?.body ?? []).entries()) {
      const value = at(list, record);
      if (position > line.position || Number.isNaN(value)) continue;
      all.push(value);
      if (position > from) since.push(value);
    }
    return { all, since };
  }

  /** What each way would give for one column. */
  private make(line: Line, i: number, list: Float64Array): ReadonlyMap<Way, number> {
    const before = this.lines.filter(({ position }) => position < line.position);
    const from = before.filter(({ isAverage }) => !isAverage).at(-1)?.position ?? -1;
    const { all, since } = this.numbersAbove(line, from, list);
    const column = this.rows?.columns[i]?.column ?? 0;
    const totals = before
      .map(({ position }) => this.numberAt(position, column))
      .filter((x) => !Number.isNaN(x));
    return new Map<Way, number>([
      ['since', sum(since)],
      ['all', sum(all)],
      ['totals', sum(totals)],
      ['mean', mean(all)],
      ['meanSince', mean(since)],
      ['last', all.at(-1) ?? NaN],
      ['max', all.length > 0 ? Math.max(...all) : NaN],
      ['min', all.length > 0 ? Math.min(...all) : NaN],
    ]);
  }

  private judge(line: Line): Judged[] {
    return (this.rows?.columns ?? []).flatMap(({ column }, i): Judged[] => {
      const seen = this.numberAt(line.position, column);
      const content = this.table.columns[i]?.content;
      if (Number.isNaN(seen) || !content || content.numbers < 2) return [];
      const list = this.table.columns[i]?.plain ?? new Float64Array(0);
      const asTyped = this.make(line, i, list);
      const mended = this.mended.get(i);
      const made = mended ? this.make(line, i, mendedList(list, mended)) : asTyped;
      const fits = new Set(
        WAYS.filter((way) => [asTyped, made].some((one) => nearSum(seen, one.get(way) ?? NaN))),
      );
      return [{ column, seen, made, fits }];
    });
  }

  verdicts(): TableVerdict[] {
    const { rows, lines } = this;
    if (!rows || lines.length === 0) return [];
    const judged = lines.map((line) => ({ line, cells: this.judge(line) }));
    const habit = new Map<Way, number>();
    for (const { cells } of judged)
      for (const { fits } of cells) for (const way of fits) habit.set(way, (habit.get(way) ?? 0) + 1);
    return judged.flatMap(({ line, cells }) => cells.flatMap((one) => this.verdict(line, one, cells, habit)));
  }

  private verdict(
    line: Line,
    one: Judged,
    cells: readonly Judged[],
    habit: ReadonlyMap<Way, number>,
  ): TableVerdict[] {
    if (one.fits.size > 0 || !this.rows) return [];
    const ways: readonly Way[] = line.isAverage ? ['mean', 'meanSince'] : ['since', 'all', 'totals'];
    const way = this.wayOf(one, cells, habit, ways);
    if (!way) return [];
    const wanted = one.made.get(way) ?? NaN;
    const spot: Spot = { sheet: this.rows.sheet, position: line.position, column: one.column };
    const formula = formulaAt(spot.sheet, spot.position, spot.column);
    const heading = this.rows.columns.find(({ column }) => column === one.column)?.header ?? '';
    return [
      {
        spot,
        seen: plain(one.seen, 9),
        expected: plain(wanted, 9),
        ...(formula === undefined ? { proposal: plain(wanted, 9) } : {}),
        sentence:
          formula === undefined
            ? `The ${line.isAverage ? 'average' : 'total'} under "${heading}" is typed as ${plain(one.seen, 9)}; the lines give ${plain(wanted, 9)}.`
            : `The formula under "${heading}" gives ${plain(one.seen, 9)}, but the lines give ${plain(wanted, 9)}: it leaves some of them out.`,
      },
    ];
  }

  /** How this line is meant: as its other columns show, as other such lines show, or as the number nearly says. */
  private wayOf(
    one: Judged,
    cells: readonly Judged[],
    habit: ReadonlyMap<Way, number>,
    ways: readonly Way[],
  ): Way | undefined {
    const others = ways
      .map((way) => ({ way, n: cells.filter(({ fits }) => fits.has(way)).length, all: habit.get(way) ?? 0 }))
      .filter(({ way, n, all }) => !Number.isNaN(one.made.get(way)) && (n > 0 || all >= 2))
      .sort((a, b) => b.n - a.n || b.all - a.all);
    const close = (way: Way): boolean => {
      const wanted = one.made.get(way) ?? NaN;
      return isSlip(one.seen, wanted) || Math.abs(Math.log(one.seen / wanted)) < 0.5;
    };
    const [best] = others;
    if (best && close(best.way)) return best.way;
    // The only figure of its kind: trusted where it is one slip or a line away from a sum.
    return cells.length === 1
      ? ways.find((way) => isSlip(one.seen, one.made.get(way) ?? NaN) || close(way))
      : undefined;
  }
}
const nearSum = (seen: number, wanted: number): boolean => near(seen, wanted, 5e-4);

/**
 * Typed totals and sums by formula that are not what their lines give: as typed, or as the lines were meant where
 * something else is wrong with one of them.
 */
export const wrongTotals = (table: RecordTable, mended: Mended): TableVerdict[] =>
  new Totals(table, mended).verdicts();
