import { findFunction } from '../../../shared/catalogue';
import { calculate } from '../../../shared/catalogue/calculation';
import type { Cell } from '../../../shared/base/values';
import type { LiveCell } from '../../../shared/sheet/live/book';
import { LiveBook } from '../../../shared/sheet/live/book';
import { parseAddress } from '../../../shared/sheet/formula/address';
import type { CellModel, WorkbookModel } from '../../../shared/sheet/workbook/model';

/**
 * The calculation that is kept up to date against calculating the whole workbook anew, which has no memory of
 * what was there before.
 */
export type Content = string | number | boolean;

export const liveCell = (address: string, content: Content): LiveCell => {
  const place = parseAddress(address) ?? { row: 0, column: 0 };
  return typeof content === 'string' && content.startsWith('=')
    ? { ...place, value: null, formula: content }
    : { ...place, value: content };
};

export class Desk {
  readonly live = new LiveBook(findFunction);
  readonly sheets = new Map<string, Map<string, Content>>();
  names: { name: string; refersTo: string }[] = [];

  constructor(...names: readonly string[]) {
    for (const name of names) this.sheets.set(name, new Map());
    this.live.setSheets(names.map((name) => ({ id: name, name })));
  }
  put(sheet: string, address: string, content: Content | null): this {
    const cells = this.sheets.get(sheet);
    const place = parseAddress(address) ?? { row: 0, column: 0 };
    if (content === null) cells?.delete(address);
    else cells?.set(address, content);
    this.live.set(sheet, [content === null ? { ...place, value: null } : liveCell(address, content)]);
    return this;
  }
  at(sheet: string, address: string): Cell {
    const { row, column } = parseAddress(address) ?? { row: 0, column: 0 };
    return this.live.value(sheet, row, column);
  }
  model(): WorkbookModel {
    return {
      title: '',
      names: this.names,
      sheets: [...this.sheets].map(([name, cells]) => ({
        name,
        widths: [],
        cells: Object.fromEntries(
          [...cells].map(([address, content]): [string, CellModel] => [
            address,
            typeof content === 'string' && content.startsWith('=')
              ? { formula: content }
              : { value: content },
          ]),
        ),
      })),
    };
  }
  /** Values of all formula cells, as the whole calculation gives them and as they are kept. */
  differences(): string[] {
    const found: string[] = [];
    for (const sheet of calculate(this.model()).model.sheets)
      for (const [address, { formula, value = null }] of Object.entries(sheet.cells)) {
        const kept = this.at(sheet.name, address);
        if (formula !== undefined && JSON.stringify(kept) !== JSON.stringify(value))
          found.push(
            `${sheet.name}!${address} ${formula}: ${JSON.stringify(kept)}, whole ${JSON.stringify(value)}`,
          );
      }
    return found;
  }
}
