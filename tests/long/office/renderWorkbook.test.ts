import type { FailureCode } from '../../../src/officeStandIn/failure';
import { fail } from '../../../src/officeStandIn/failure';
import type { StandInBook } from '../../../src/officeStandIn';
import { createExecutor, createOffice, installOffice } from '../../../src/officeStandIn';
import type { MemoryBook } from '../../../src/officeStandIn/memoryBook';
import { createMemoryBook } from '../../../src/officeStandIn/memoryBook';
import { parseArea } from '../../../shared/sheet/formula/address';
import type { SheetModel } from '../../../shared/sheet/workbook/model';
import { HostProblem } from '../../../taskpane/host/port';
import type { Progress, WriteOutcome } from '../../../taskpane/host/port';
import { writeWorkbook } from '../../../taskpane/host/writing/renderWorkbook';
import { seasonModel } from '../../taskpane/support/seasonModel';
import { calculating } from '../../office/calculating';

const model = seasonModel();
const quiet = (): void => undefined;

const READS = new Set([
  'sheets',
  'settle',
  'activeSheet',
  'selection',
  'read',
  'usedArea',
  'spillArea',
  'spillParent',
  'format',
  'border',
  'merges',
  'tables',
  'names',
  'validation',
  'conditionals',
  'charts',
  'freeze',
  'protection',
  'page',
  'note',
  'group',
  'undoSteps',
  'calculations',
  'calculate',
]);

interface Faults {
  changes: number;
  failAt: number;
  code: string;
}

/** Lets the n-th change fail, as a spreadsheet program may at any moment. */
function faulty(book: MemoryBook, faults: Faults): MemoryBook {
  return new Proxy(book, {
    get(target, name, receiver) {
      const member: unknown = Reflect.get(target, name, receiver);
      if (typeof member !== 'function' || READS.has(String(name))) return member;
      return (...args: unknown[]): unknown => {
        faults.changes += 1;
        if (faults.changes === faults.failAt) fail(faults.code as FailureCode, 'injected');
        return Reflect.apply(member, target, args);
      };
    },
  });
}

function open(failAt = 0, code = 'GeneralException'): { readonly book: MemoryBook; readonly faults: Faults } {
  const faults: Faults = { changes: 0, failAt, code };
  const book = createMemoryBook();
  installOffice(createOffice({ executor: createExecutor(faulty(book, faults)) }));
  return { book, faults };
}

/** Everything a user could see in a book, to compare before and after. */
async function snapshot(book: StandInBook): Promise<unknown> {
  const sheets = await book.sheets();
  return {
    sheets: await Promise.all(
      sheets.map(async (sheet) => {
        const area = await book.usedArea(sheet.id, false);
        return { name: sheet.name, cells: area && (await book.read(sheet.id, area, 'formulas')), area };
      }),
    ),
    names: await book.names(),
    tables: await book.tables(),
  };
}

const idOf = async (book: StandInBook, name: string): Promise<string> => {
  const sheet = (await book.sheets()).find((one) => one.name === name);
  if (!sheet) throw new Error(`no sheet ${name}`);
  return sheet.id;
};

const spilledIn = (sheet: SheetModel): Set<string> => {
  const places = new Set<string>();
  for (const [address, { spill }] of Object.entries(sheet.cells)) {
    const area = parseArea(address);
    if (!spill || !area) continue;
    for (let r = 0; r < spill[0]; r++)
      for (let c = 0; c < spill[1]; c++) if (r + c > 0) places.add(`${area.top + r}:${area.left + c}`);
  }
  return places;
};

describe('a plan written into an empty workbook', () => {
  let book: MemoryBook;
  let outcome: WriteOutcome;
  const told: Progress[] = [];
  beforeAll(async () => {
    ({ book } = open());
    outcome = await writeWorkbook(model, '', (progress) => told.push(progress));
  });

  test('adds exactly the sheets of the model, after what is there', async () => {
    // What is told is what the reader sees.
    const seen = model.sheets.filter(({ isHidden }) => isHidden !== true).map(({ name }) => name);
    expect(seen.length).toBeLessThan(model.sheets.length);
    expect(outcome).toEqual({ kind: 'written', sheets: seen });
    expect((await book.sheets()).map((sheet) => sheet.name)).toEqual([
      'Sheet1',
      ...model.sheets.map((sheet) => sheet.name),
    ]);
    expect(await book.activeSheet()).toBe(await idOf(book, model.sheets[0]?.name ?? ''));
  });

  test(
    'every cell arrives: values as they are, formulas as formulas, spilled cells left to ' + 'their formula',
    async () => {
      for (const sheet of model.sheets) {
        const id = await idOf(book, sheet.name);
        const spilled = spilledIn(sheet);
        for (const [address, cell] of Object.entries(sheet.cells)) {
          const area = parseArea(address);
          if (!area || (cell.formula === undefined && cell.value === undefined)) continue;
          const [[got = null] = []] = await book.read(
            id,
            { row: area.top, column: area.left, rows: 1, columns: 1 },
            'formulas',
          );
          const wanted =
            cell.formula ??
            (spilled.has(`${area.top}:${area.left}`) ? null : cell.value === '' ? null : cell.value);
          expect([sheet.name, address, got]).toEqual([sheet.name, address, wanted]);
        }
      }
    },
  );

  test('names, tables, charts, rules, frozen panes, print set-up and protection are there', async () => {
    expect((await book.names()).map((name) => name.name).sort()).toEqual(
      model.names.map((name) => name.name).sort(),
    );
    for (const sheet of model.sheets) {
      const id = await idOf(book, sheet.name);
      expect((await book.tables()).filter((table) => table.sheet === id).map((table) => table.name)).toEqual(
        (sheet.tables ?? []).map((table) => table.name),
      );
      expect(
        (await book.charts(id)).map((chart) => [chart.title, chart.series.map((series) => series.name)]),
      ).toEqual(
        (sheet.charts ?? []).map((chart) => [chart.title, chart.series.map((series) => series.name)]),
      );
      expect((await book.conditionals(id)).length).toBe((sheet.conditionals ?? []).length);
      expect(await book.freeze(id)).toEqual({ rows: 0, columns: 0, ...sheet.freeze });
      expect((await book.page(id)).landscape).toBe(sheet.print?.landscape ?? false);
      expect((await book.protection(id)).isOn).toBe(sheet.isProtected ?? false);
    }
  });

  test('inputs stay open on a protected sheet, formulas are locked', async () => {
    for (const sheet of model.sheets.filter((one) => one.isProtected)) {
      const id = await idOf(book, sheet.name);
      for (const [address, cell] of Object.entries(sheet.cells)) {
        const area = parseArea(address);
        if (!area || !cell.style) continue;
        const { locked } = await book.format(id, { row: area.top, column: area.left, rows: 1, columns: 1 });
        if (cell.style === 'input' || cell.style === 'blank')
          expect([address, locked]).toEqual([address, false]);
        else if (cell.formula) expect([address, locked]).toEqual([address, true]);
      }
    }
  });

  test('tells how far it is, in order and never past the end', () => {
    expect(told.length).toBeGreaterThan(4);
    expect(told.map((one) => one.done)).toEqual([...told.map((one) => one.done)].sort((a, b) => a - b));
    expect(told.every((one) => one.done < one.total && one.label !== '')).toBe(true);
  });
});

test('calculated where it was written, every cell shows what the model says', async () => {
  const book = createMemoryBook(calculating);
  installOffice(createOffice({ executor: createExecutor(book) }));
  await writeWorkbook(model, '', quiet);
  let compared = 0;
  for (const sheet of model.sheets) {
    const id = await idOf(book, sheet.name);
    for (const [address, { value = '' }] of Object.entries(sheet.cells)) {
      const area = parseArea(address);
      if (!area) continue;
      const [[got] = []] = await book.read(
        id,
        { row: area.top, column: area.left, rows: 1, columns: 1 },
        'values',
      );
      if (typeof value === 'number')
        expect([sheet.name, address, got]).toEqual([sheet.name, address, expect.closeTo(value, 8)]);
      else expect([sheet.name, address, got ?? '']).toEqual([sheet.name, address, value]);
      compared += 1;
    }
  }
  expect(compared).toBeGreaterThan(500);
});

describe('nothing is overwritten', () => {
  test('a taken sheet name changes nothing and offers a free suffix', async () => {
    const { book, faults } = open();
    await book.addSheet(model.sheets[0]?.name.toUpperCase() ?? '');
    const before = await snapshot(book);
    const outcome = await writeWorkbook(model, '', quiet);
    expect(outcome).toMatchObject({ kind: 'taken', sheets: [model.sheets[0]?.name], free: ' 2' });
    expect(await snapshot(book)).toEqual(before);
    expect(faults.changes).toBe(0);
  });

  test('a taken name of cells is a question too', async () => {
    const { book } = open();
    await book.putName({ name: model.names[0]?.name ?? '', formula: '=Sheet1!$A$1', comment: 'mine' });
    const outcome = await writeWorkbook(model, '', quiet);
    expect(outcome).toMatchObject({ kind: 'taken', sheets: [], names: [model.names[0]?.name] });
    expect(await book.names()).toMatchObject([{ comment: 'mine' }]);
  });

  test(
    'a second plan beside the first gets its own sheets and names, and its formulas use ' + 'them',
    async () => {
      const { book } = open();
      await writeWorkbook(model, '', quiet);
      const first = (await snapshot(book)) as { sheets: unknown[] };
      const taken = await writeWorkbook(model, '', quiet);
      expect(taken).toMatchObject({ kind: 'taken', free: ' 2' });
      const outcome = await writeWorkbook(model, ' 2', quiet);
      expect(outcome.kind).toBe('written');
      const both = (await snapshot(book)) as { sheets: { name: string; cells: unknown[][] }[] };
      expect(both.sheets.slice(0, first.sheets.length)).toEqual(first.sheets);
      expect(both.sheets).toHaveLength(first.sheets.length + model.sheets.length);
      const formulas = both.sheets
        .slice(first.sheets.length)
        .flatMap((sheet) => sheet.cells.flat())
        .filter((cell) => typeof cell === 'string' && cell.startsWith('='));
      expect(formulas.length).toBeGreaterThan(20);
      const names = model.names.map((name) => name.name);
      const leaks = formulas.filter((formula) =>
        names.some((name) =>
          new RegExp(`(?<![\\w.])${name}(?![\\w.(])`).test(String(formula).replace(/"[^"]*"/g, '')),
        ),
      );
      expect(leaks).toEqual([]);
    },
  );
});

describe('all or nothing', () => {
  test('a failure at any single change leaves the workbook exactly as it was', async () => {
    const { faults } = open();
    await writeWorkbook(model, '', quiet);
    const changes = faults.changes;
    expect(changes).toBeGreaterThan(100);
    // Every change near the start, where the stages differ, then an even spread over the rest.
    const steps = new Set([
      ...Array.from({ length: 40 }, (_, i) => i + 1),
      ...Array.from({ length: 40 }, (_, i) => Math.ceil(((i + 1) / 40) * changes)),
    ]);
    for (const step of steps) {
      const { book, faults: each } = open();
      await book.write('{sheet1}', { row: 0, column: 0, rows: 1, columns: 2 }, [
        [{ value: 'my notes' }, { formula: '=1+1' }],
      ]);
      await book.putName({ name: 'mine', formula: '=Sheet1!$A$1', comment: '' });
      const before = await snapshot(book);
      each.failAt = step;
      const problem = await writeWorkbook(model, '', quiet).then(
        () => undefined,
        (error: unknown) => error,
      );
      expect([step, problem]).toEqual([step, expect.any(HostProblem)]);
      expect((problem as HostProblem).message).toMatch(
        /^(Nothing was written|The workbook takes no new sheets)/,
      );
      expect([step, await snapshot(book)]).toEqual([step, before]);
      expect([step, await book.activeSheet()]).toEqual([step, '{sheet1}']);
    }
  });

  test('a workbook that takes no new sheets gets a sentence about its protection', async () => {
    const { book } = open(1, 'AccessDenied');
    const before = await snapshot(book);
    await expect(writeWorkbook(model, '', quiet)).rejects.toThrow(/Protect Workbook/);
    expect(await snapshot(book)).toEqual(before);
  });

  test('a cell being edited gets a sentence that says so', async () => {
    open(30, 'InvalidOperationInCellEditMode');
    await expect(writeWorkbook(model, '', quiet)).rejects.toThrow(/being edited/);
  });

  test('a protected sheet of the user does not stand in the way', async () => {
    const { book } = open();
    await book.setProtection('{sheet1}', { isOn: true, options: {} });
    const outcome = await writeWorkbook(model, '', quiet);
    expect(outcome.kind).toBe('written');
  });

  test('if clearing up fails too, the sentence names the sheets that stay', async () => {
    const { book, faults } = open();
    const deleting = jest
      .spyOn(book, 'deleteSheet')
      .mockImplementation(() => fail('AccessDenied', 'injected'));
    faults.failAt = 30;
    await expect(writeWorkbook(model, '', quiet)).rejects.toThrow(/delete them by hand/);
    deleting.mockRestore();
  });
});
