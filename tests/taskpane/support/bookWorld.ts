import { calculate } from '../../../shared/catalogue/calculation';
import { livingBook } from '../../../shared/books/living';
import { planBatches } from '../../../shared/season/batches';
import type { BookWords } from '../../../shared/books/words/words';
import type { OrderBook } from '../../../shared/season/book/orderBook';
import type { CellModel } from '../../../shared/sheet/workbook/model';
import { bookOf, gridOf } from '../../season/support/support';
import { fakeWorld } from './fakePort';
import { TODAY } from './seasonModel';

/**
 * A workbook with a season in it: cells keep what is written into them, and the book's own formulas are
 * calculated for the day before it is read again.
 */
export const demoBook = (plannedOn = TODAY): OrderBook =>
  bookOf({
    plannedOn,
    orders: [
      { name: 'Two Mills farm', product: 'fry', number: 20_000, due: plannedOn + 30, price: 0.03 },
      { name: 'School ponds', product: 'fingerlings', number: 6_000, due: plannedOn + 60, price: 0.12 },
    ],
  });

const mode = { draws: 200 } as const;

export function bookWorld(book: OrderBook = demoBook(), words?: BookWords) {
  const world = fakeWorld();
  let model = livingBook(book, planBatches(book, mode), undefined, words);
  let calculatedOn: number | undefined = book.plannedOn;
  const names = model.sheets.map(({ name }) => name);
  const settle = (): void => {
    const day = Math.floor(world.now);
    if (calculatedOn === day) return;
    ({ model } = calculate(model, day));
    calculatedOn = day;
  };
  const put = (sheet: string, cells: Readonly<Record<string, CellModel>>): void => {
    model = {
      ...model,
      sheets: model.sheets.some(({ name }) => name === sheet)
        ? model.sheets.map((one) =>
            one.name === sheet ? { ...one, cells: { ...one.cells, ...cells } } : one,
          )
        : [...model.sheets, { name: sheet, cells, widths: [] }],
    };
    calculatedOn = undefined;
  };
  const sheetOf = (name: string): Readonly<Record<string, CellModel>> =>
    model.sheets.find((one) => one.name === name)?.cells ?? {};
  world.sheets = names;
  const { workbook } = world.doors;
  Object.assign(workbook, {
    readCells: async (wanted: { sheet: string }) => {
      settle();
      return { sheets: model.sheets.filter(({ name }) => name === wanted.sheet).map(gridOf), again: wanted };
    },
    writeCells: async (sheet: string, cells: readonly { address: string; from: unknown; to: unknown }[]) => {
      if (world.failure) {
        const { failure } = world;
        world.failure = undefined;
        throw failure;
      }
      const now = sheetOf(sheet);
      if (!cells.every(({ address, from }) => (now[address]?.value ?? null) === from)) return false;
      put(
        sheet,
        Object.fromEntries(
          cells.map(({ address, to }) => {
            const look = { ...now[address], value: to };
            if (to === null) delete look.value;
            return [address, look as CellModel];
          }),
        ),
      );
      return true;
    },
  });
  const rowsOf = (name: string, heading: string): Record<string, unknown>[] => {
    settle();
    const { values } = gridOf({ name, cells: sheetOf(name), widths: [] });
    const head = values.findIndex((row) => row.includes(heading));
    const titles = values[head] ?? [];
    return values
      .slice(head + 1)
      .map((row) => Object.fromEntries(titles.map((title, i) => [String(title), row[i]])));
  };
  return Object.assign(world, { model: () => (settle(), model), sheet: sheetOf, rowsOf });
}
