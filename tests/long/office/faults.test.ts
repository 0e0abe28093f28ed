import { createExecutor, createOffice, installOffice } from '../../../src/officeStandIn';
import type { MemoryBook } from '../../../src/officeStandIn/memoryBook';
import { createMemoryBook } from '../../../src/officeStandIn/memoryBook';
import type { WorkbookModel } from '../../../shared/sheet/workbook/model';
import { officePort } from '../../../taskpane/host/office';
import type { CellMark, LogLines } from '../../../taskpane/host/port';
import type { Breaking, FaultyHost } from '../../office/support/faultyHost';
import { BREAKS, everythingIn, faultyHost } from '../../office/support/faultyHost';

/**
 * Every sync of every writing fails once, twice and for good. Afterwards the workbook is as before, or as after a
 * full success, or the next start finds what was left, asks, and takes it away.
 */

const quiet = (): void => undefined;

const model: WorkbookModel = {
  title: 'Small book',
  names: [{ name: 'small_total', refersTo: "'Small one'!$B$4" }],
  sheets: [
    {
      name: 'Small one',
      widths: [12, 10],
      isProtected: true,
      cells: {
        A1: { value: 'Head', style: 'heading' },
        B1: { value: 'Number', style: 'heading' },
        A2: { value: 'a', style: 'text' },
        B2: { value: 2, style: 'input' },
        A3: { value: 'b', style: 'text' },
        B3: { value: 3, style: 'input' },
        B4: { formula: '=B2+B3', value: 5, style: 'result' },
      },
      tables: [{ name: 'small_table', range: 'A1:B3' }],
      conditionals: [{ range: 'B2:B3', formula: '=B2>2', style: 'warning' }],
      charts: [
        {
          kind: 'line',
          title: 'c',
          categories: "'Small one'!A2:A3",
          series: [{ name: 's', values: "'Small one'!B2:B3" }],
          from: 'D1',
          to: 'F9',
        },
      ],
    },
    { name: 'Small two', widths: [8], isHidden: true, cells: { A1: { formula: '=small_total', value: 5 } } },
  ],
};

const [one, ...others] = model.sheets;
/** The same book, planned anew: longer by a row, another number. */
const later: WorkbookModel = {
  ...model,
  sheets: [
    {
      ...one,
      name: 'Small one',
      widths: [12, 10],
      cells: { ...one?.cells, B3: { value: 30, style: 'input' }, A6: { value: 'new' } },
    },
    ...others,
  ],
};

interface Desk {
  readonly book: MemoryBook;
  readonly host: FaultyHost;
}
async function open(): Promise<Desk> {
  const book = createMemoryBook();
  const host = faultyHost(createExecutor(book));
  installOffice(createOffice({ executor: host }));
  await book.write('{sheet1}', { row: 0, column: 0, rows: 1, columns: 2 }, [
    [{ value: 'my notes' }, { formula: '=1+1' }],
  ]);
  await book.putName({ name: 'mine', formula: '=Sheet1!$A$1', comment: '' });
  return { book, host };
}

const log: LogLines = {
  sheet: 'Vat log',
  headings: ['When', 'Vat'],
  formats: ['0.0', '@'],
  widths: [60, 60],
  rows: [[46_000.5, 'Vat 1']],
};
const marks: readonly CellMark[] = ['A1', 'B1'].map((address) => ({
  sheet: 'Sheet1',
  address,
  fill: '#FFCC00',
  note: 'Spawnbook: look here',
}));

interface Deed {
  readonly name: string;
  readonly prepare?: () => Promise<unknown>;
  readonly act: () => Promise<unknown>;
  /** What the pane does when the next start finds it half written. */
  readonly putBack?: () => Promise<unknown>;
  /** Doing it again goes on where it broke off. */
  readonly goesOn?: true;
  /** The sentence that tells where to look, when even putting back fails for good. */
  readonly says?: RegExp;
  /** What a person can press afterwards, when the pane knows that something stands. */
  readonly undo?: (report: unknown) => Promise<unknown>;
}
const DEEDS: readonly Deed[] = [
  {
    name: 'a book over its own sheets',
    prepare: () => officePort.writeWorkbook(model, '', quiet),
    act: () => officePort.rewriteWorkbook(later, model, '', quiet),
    putBack: () => officePort.rewriteWorkbook(model, model, '', quiet),
  },
  { name: 'a book as new sheets', act: () => officePort.writeWorkbook(model, '', quiet) },
  {
    name: 'a formula',
    act: () =>
      officePort.insertFormula({
        formula: '=1+2',
        rows: 1,
        columns: 1,
        formats: ['0.00'],
        hasHeadings: false,
        mayReplace: true,
      }),
  },
  { name: 'the first line of the log', act: () => officePort.appendLines(log), goesOn: true },
  {
    name: 'a later line of the log',
    prepare: () => officePort.appendLines(log),
    act: () => officePort.appendLines(log),
  },
  {
    name: 'a line taken back',
    prepare: () => officePort.appendLines(log),
    act: () => officePort.removeLine(log, 2),
  },
  {
    name: 'words in two cells',
    act: () =>
      officePort.writeCells('Sheet1', [
        { address: 'A1', from: 'my notes', to: 'done' },
        { address: 'A2', from: null, to: 7 },
        { address: 'A3', from: null, to: 8 },
      ]),
    says: /Look at A1, A2, A3 of “Sheet1”/,
  },
  {
    name: 'formulas entered again',
    act: () =>
      officePort.mend(
        [{ sheet: 'Sheet1', address: 'B1', was: '=1+1', formula: '=1+1+0', showsValue: true }],
        quiet,
      ),
  },
  {
    name: 'marks',
    act: () => officePort.mark(marks, quiet),
    undo: (report) =>
      officePort.unmark((report as Awaited<ReturnType<typeof officePort.mark>>).marked, quiet),
  },
  { name: 'what columns mean', act: () => officePort.remember('{"a":1}') },
  { name: 'what the pane keeps', act: () => officePort.rememberPane('{"a":1}') },
];

const text = (what: unknown): string => JSON.stringify(what);

describe.each(DEEDS)('$name', ({ prepare, act, undo, putBack, goesOn, says }) => {
  async function after(breaking: Breaking | undefined): Promise<{
    readonly desk: Desk;
    readonly before: string;
    readonly report: unknown;
    readonly syncs: number;
  }> {
    const desk = await open();
    await prepare?.();
    const before = text(await everythingIn(desk.book));
    desk.host.breakAt(breaking);
    const report = await act().catch((error: unknown) => error);
    const syncs = desk.host.syncs();
    desk.host.breakAt(undefined);
    return { desk, before, report, syncs };
  }

  /** What a person can do then: go on, take back, or start the pane anew, which finds what was left and asks. */
  async function mended({ book }: Desk, report: unknown): Promise<string> {
    if (goesOn) await act();
    else if (undo && !(report instanceof Error)) await undo(report);
    else if (putBack && (await officePort.leftBehind())?.over) await putBack();
    else if ((await officePort.leftBehind()) === undefined) return `nobody would know: ${text(report)}`;
    else await officePort.takeLeftAway();
    return text(await everythingIn(book));
  }

  test.each([
    ['once', 1],
    ['twice in a row', 2],
    ['for good', Infinity],
  ] as const)('every sync fails %s', async (_name, times) => {
    const whole = await after(undefined);
    const success = text(await everythingIn(whole.desk.book));
    const wrong: unknown[] = [];
    for (const how of BREAKS)
      for (let first = 1; first <= whole.syncs; first++) {
        const { desk, before, report } = await after({ how, first, times });
        const now = text(await everythingIn(desk.book));
        if (now === before || now === success) continue;
        if (says && times > 2 && report instanceof Error && says.test(report.message)) continue;
        const found = await mended(desk, report);
        if (found !== (goesOn ? success : before)) wrong.push([how, first, found]);
      }
    expect(wrong).toEqual([]);
  });
});

test('what was left and is wanted stays, and is not asked about again', async () => {
  const { host } = await open();
  host.breakAt({ how: 'midway', first: 5, times: Infinity });
  await expect(officePort.writeWorkbook(model, '', quiet)).rejects.toThrow(/opened the next time/);
  host.breakAt(undefined);
  expect(await officePort.leftBehind()).toMatchObject({ title: 'Small book' });
  await officePort.keepLeft();
  expect(await officePort.leftBehind()).toBeUndefined();
  expect(await officePort.takeLeftAway()).toEqual([]);
});
