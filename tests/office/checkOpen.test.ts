import { createExecutor, createOffice, installOffice } from '../../src/officeStandIn';
import { createMemoryBook } from '../../src/officeStandIn/memoryBook';
import type { Cell } from '../../shared/base/values';
import { readCells } from '../../taskpane/host/reading/records';
import { bookOf, checkOpenSheet } from '../bench/auditOpen';
import { CLIENTS } from './support/clients';

/** Reading a long book in several trips, stopping it, and places that hold nothing or far too much. */

/** Eleven columns of which the last is worked out; 7,000 rows take two trips. */
const ROWS = 7000;
const values: Cell[][] = [
  ['Date', 'Female', 'Eggs', 'Hatched', 'a', 'b', 'c', 'd', 'e', 'f', 'Twice'],
  ...Array.from({ length: ROWS }, (_, i): Cell[] => [
    40_000 + i,
    `F${i % 7}`,
    80_000 + ((i * 7919) % 997),
    40_000 + ((i * 104_729) % 991),
    1,
    2,
    3,
    4,
    5,
    6,
    2 * i,
  ]),
];
const formulas = values.map((row, i) => row.map((value, c) => (i > 0 && c === 10 ? `=2*${i - 1}` : value)));
const formats = values.map((row, i) => row.map((_, c) => (i > 0 && c === 0 ? 'yyyy-mm-dd' : 'General')));

describe.each(CLIENTS)('$name', (client) => {
  const connect = (): { steps: () => number } => {
    const memory = createMemoryBook();
    const executor = createExecutor({ ...bookOf({ values, formulas, formats }), group: memory.group });
    installOffice(createOffice({ executor }));
    Object.assign(globalThis, { Excel: client.connect(executor) });
    return { steps: memory.undoSteps };
  };

  test('all rows arrive in order, formulas and formats where they are', async () => {
    const { steps } = connect();
    const told: number[] = [];
    const reading = await readCells(
      'sheet',
      ({ done }) => {
        told.push(done);
      },
      () => false,
    );
    const kept = values.map((_, i) =>
      i === 0 ? [] : [...Array.from({ length: 10 }, () => undefined), `=2*${i - 1}`],
    );
    expect(reading?.sheets).toEqual([{ name: 'Sheet1', top: 0, left: 0, values, formats, formulas: kept }]);
    expect(told).toEqual([0, 25]);
    expect(steps()).toBe(0);
  }, 60_000);

  test.each([[1], [2], [4]])(
    'stopped at report %i: no answer, nothing changed, and the next check is whole',
    async (at) => {
      const { steps } = connect();
      // A report is due every tenth of a second; on a clock that runs, how many there are depends on the machine.
      let now = 0;
      const clock = jest.spyOn(performance, 'now').mockImplementation(() => (now += 200));
      let reports = 0;
      expect(
        await checkOpenSheet(
          () => {
            reports++;
          },
          () => reports >= at,
        ),
      ).toBeUndefined();
      clock.mockRestore();
      expect(steps()).toBe(0);
      expect(
        (
          await checkOpenSheet(
            () => undefined,
            () => false,
          )
        )?.records,
      ).toBe(ROWS);
    },
    60_000,
  );
});

describe.each(CLIENTS)('unusual places, $name', (client) => {
  const open = async (fill: (sheet: Excel.Worksheet) => void): Promise<void> => {
    const executor = createExecutor(createMemoryBook());
    installOffice(createOffice({ executor }));
    Object.assign(globalThis, { Excel: client.connect(executor) });
    await Excel.run(async (context) => {
      fill(context.workbook.worksheets.getActiveWorksheet());
      await context.sync();
    });
  };
  const quiet = (): void => undefined;
  const goOn = (): boolean => false;

  test('an empty sheet, and an empty selection, hold nothing', async () => {
    await open(() => undefined);
    for (const wanted of ['sheet', 'selection', 'book'] as const)
      expect((await readCells(wanted, quiet, goOn))?.sheets).toEqual([]);
  });

  test(
    '1,048,576 rows in use by a stray cell are read when they are narrow, refused with a ' +
      'sentence when they are wide',
    async () => {
      await open((sheet) => {
        sheet.getRange('A1:B2').values = [
          ['Date', 'Eggs'],
          [46_000, 80_000],
        ];
        sheet.getRange('A1048576').values = [['x']];
      });
      await expect(readCells('sheet', quiet, () => true)).resolves.toBeUndefined();
      await open((sheet) => {
        sheet.getRange('A1').values = [['Date']];
        sheet.getRange('XFD1048576').values = [['x']];
      });
      await expect(readCells('sheet', quiet, goOn)).rejects.toThrow(
        /^The cells in use span 17.179.869.184 places; the check reads up to 4.000.000\. Select only the rows that hold records\.$/,
      );
    },
  );

  test('a protected sheet is read; a sheet that is gone is a sentence', async () => {
    await open((sheet) => {
      sheet.getRange('A1:B2').values = [
        ['Date', 'Eggs'],
        [46_000, 80_000],
      ];
      sheet.protection.protect({});
    });
    expect((await readCells('sheet', quiet, goOn))?.sheets[0]?.values).toEqual([
      ['Date', 'Eggs'],
      [46_000, 80_000],
    ]);
    await expect(readCells({ sheet: 'Gone' }, quiet, goOn)).rejects.toThrow(
      'There is no sheet called “Gone” any more. Choose again what to check.',
    );
  });
});
