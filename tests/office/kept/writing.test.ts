import { createExecutor, createOffice, installOffice } from '../../../src/officeStandIn';
import type { MemoryBook } from '../../../src/officeStandIn/memoryBook';
import { createMemoryBook } from '../../../src/officeStandIn/memoryBook';
import { mark, unmark } from '../../../taskpane/host/writing/marks';
import { writeWorkbook } from '../../../taskpane/host/writing/renderWorkbook';
import { rewriteWorkbook } from '../../../taskpane/host/writing/rewriteWorkbook';
import { EVERYTHING } from '../../files/support/everything';
import { expectKept } from '../../support/kept';

/** Every change asked of the open workbook while a model with one of everything is written, marked and written over. */

const heard: string[] = [];
const ASKS = /^(sheets|settle|read|selection|used|spill|names|tables|undo|calculations|active)/;
function listening(book: MemoryBook): MemoryBook {
  return new Proxy(book, {
    get(target, name, receiver) {
      const member: unknown = Reflect.get(target, name, receiver);
      if (typeof member !== 'function') return member;
      return (...args: unknown[]): unknown => {
        const given = JSON.stringify(args);
        if (!ASKS.test(String(name))) heard.push(`${String(name)} ${given}`);
        return Reflect.apply(member, target, args);
      };
    },
  });
}
const told: string[] = [];
const tell = ({ label, done, total }: { label: string; done: number; total: number }): void => {
  told.push(`${label} ${done} of ${total}`);
};
const taken = (): { heard: string[]; told: string[] } => ({ heard: heard.splice(0), told: told.splice(0) });

test('written, written beside itself, marked, and written over', async () => {
  installOffice(createOffice({ executor: createExecutor(listening(createMemoryBook())) }));
  const outcome = await writeWorkbook(EVERYTHING, '', tell);
  const written = taken();
  const again = await writeWorkbook(EVERYTHING, '', tell);
  const beside = await writeWorkbook(EVERYTHING, ' 2', tell);
  taken();
  const marks = ['A2', 'C4', 'E5'].map((address, i) => ({
    sheet: 'Numbers',
    address,
    fill: '#F6C6BE',
    note: `Spawnbook: note ${i}\nand more`,
  }));
  const marked = await mark(marks, tell);
  const unmarked = await unmark(marked.marked, tell);
  const marking = taken();
  const changed = {
    ...EVERYTHING,
    sheets: EVERYTHING.sheets.map((sheet, i) =>
      i === 0
        ? {
            ...sheet,
            widths: [4, 14, 9, 9, 30],
            cells: { ...sheet.cells, B2: { value: 25, format: '0.0' }, A9: { value: 'one more' } },
          }
        : sheet,
    ),
  };
  const over = await rewriteWorkbook(changed, EVERYTHING, '', tell);
  expectKept('host-writing', {
    outcome,
    written,
    again,
    beside,
    marked,
    unmarked,
    marking,
    over,
    rewriting: taken(),
  });
});
