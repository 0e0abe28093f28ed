import { CLIENTS, codeOf, desk } from './support/clients';

const A1 = { row: 0, column: 0, rows: 1, columns: 1 };

describe.each(CLIENTS)('writing cells, $name', (client) => {
  test('values, formulas and what they give', async () => {
    const { api } = desk(client);
    await api.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem('Sheet1');
      sheet.getRange('A1:C2').values = [
        [2, 'text', true],
        ['=A1*3', '=FAIL()', ''],
      ];
      const range = sheet
        .getRange('A1:C2')
        .load('values, formulas, valueTypes, text, rowCount, columnCount, rowIndex, columnIndex, cellCount');
      await context.sync();
      expect(range.values).toEqual([
        [2, 'text', true],
        [6, '#N/A', ''],
      ]);
      expect(range.formulas).toEqual([
        [2, 'text', true],
        ['=A1*3', '=FAIL()', ''],
      ]);
      expect(range.valueTypes).toEqual([
        ['Double', 'String', 'Boolean'],
        ['Double', 'Error', 'Empty'],
      ]);
      expect(range.text).toEqual([
        ['2', 'text', 'TRUE'],
        ['6', '#N/A', ''],
      ]);
      expect([range.rowCount, range.columnCount, range.rowIndex, range.columnIndex, range.cellCount]).toEqual(
        [2, 3, 0, 0, 6],
      );
    });
  });

  test('null leaves a cell, an empty text clears it', async () => {
    const { api } = desk(client);
    await api.run(async (context) => {
      const range = context.workbook.worksheets.getItem('Sheet1').getRange('A1:C1');
      range.values = [[1, 2, 3]];
      await context.sync();
      range.values = [[null, '', 9]];
      range.load('values');
      await context.sync();
      expect(range.values).toEqual([[1, '', 9]]);
    });
  });

  test('a single value fills the range', async () => {
    const { api } = desk(client);
    await api.run(async (context) => {
      const range = context.workbook.worksheets.getItem('Sheet1').getRange('A1:B2');
      range.values = 7 as unknown as number[][];
      range.numberFormat = '0.0' as unknown as string[][];
      await context.sync();
      range.load('values, numberFormat');
      await context.sync();
      expect([range.values, range.numberFormat]).toEqual([
        [
          [7, 7],
          [7, 7],
        ],
        [
          ['0.0', '0.0'],
          ['0.0', '0.0'],
        ],
      ]);
    });
  });

  test.each([
    ['too few rows', [[1, 2]]],
    [
      'too many columns',
      [
        [1, 2, 3],
        [4, 5, 6],
      ],
    ],
    ['ragged', [[1, 2], [3]]],
    ['a bare list', [1, 2]],
  ])('an array of another shape is refused whole: %s', async (_what, values) => {
    const { api, book } = desk(client);
    expect(
      await codeOf(
        api.run(async (context) => {
          context.workbook.worksheets.getItem('Sheet1').getRange('A1:B2').values = values as number[][];
          await context.sync();
        }),
      ),
    ).toBe('InvalidArgument');
    expect(book.usedArea('{sheet1}', true)).toBeUndefined();
  });

  test('texts become what Excel would make of them', async () => {
    const { api } = desk(client);
    await api.run(async (context) => {
      const range = context.workbook.worksheets.getItem('Sheet1').getRange('A1:F1');
      range.values = [['12.5', '80%', 'true', "'007", ' word ', '1.2.2026x']];
      range.load('values');
      await context.sync();
      expect(range.values).toEqual([[12.5, 0.8, true, '007', ' word ', '1.2.2026x']]);
    });
  });

  test('in cells formatted as text, texts stay texts', async () => {
    const { api } = desk(client);
    await api.run(async (context) => {
      const range = context.workbook.worksheets.getItem('Sheet1').getRange('A1:B1');
      range.numberFormat = [['@', 'General']];
      range.values = [['007', '007']];
      range.load('values');
      await context.sync();
      expect(range.values).toEqual([['007', 7]]);
    });
  });

  test.each(['=SUM(A1', '="open', '=A1)'])('a broken formula is refused: %s', async (formula) => {
    const { api } = desk(client);
    expect(
      await codeOf(
        api.run(async (context) => {
          context.workbook.worksheets.getItem('Sheet1').getRange('A1').formulas = [[formula]];
          await context.sync();
        }),
      ),
    ).toBe('InvalidArgument');
  });

  test('a formula too long is refused by its own code', async () => {
    const { api } = desk(client);
    expect(
      await codeOf(
        api.run(async (context) => {
          context.workbook.worksheets.getItem('Sheet1').getRange('A1').formulas = [
            [`=${'1+'.repeat(4200)}1`],
          ];
          await context.sync();
        }),
      ),
    ).toBe('FormulaLengthExceedsLimit');
  });

  test('a failing batch keeps what came before and drops what came after', async () => {
    const { api, book } = desk(client);
    expect(
      await codeOf(
        api.run(async (context) => {
          const { worksheets } = context.workbook;
          worksheets.getItem('Sheet1').getRange('A1').values = [[1]];
          worksheets.getItem('Nowhere').getRange('A1').values = [[1]];
          worksheets.getItem('Sheet1').getRange('A2').values = [[2]];
          await context.sync();
        }),
      ),
    ).toBe('ItemNotFound');
    expect(book.usedArea('{sheet1}', true)).toEqual(A1);
  });

  test('a spilling formula fills its neighbours and knows its range', async () => {
    const { api } = desk(client);
    await api.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem('Sheet1');
      sheet.getRange('B2').formulas = [['=SPILL(3)']];
      const anchor = sheet.getRange('B2').load('hasSpill');
      const plain = sheet.getRange('A1').load('hasSpill');
      const spill = sheet.getRange('B2').getSpillingToRangeOrNullObject().load('address, values, formulas');
      await context.sync();
      expect([anchor.hasSpill, plain.hasSpill, spill.address]).toEqual([true, false, 'Sheet1!B2:C4']);
      expect(spill.values).toEqual([
        [1, 10],
        [2, 20],
        [3, 30],
      ]);
      expect(spill.formulas).toEqual([
        ['=SPILL(3)', 10],
        [2, 20],
        [3, 30],
      ]);
    });
  });

  test('a blocked spill is #SPILL! and clears when the way is free', async () => {
    const { api } = desk(client);
    await api.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem('Sheet1');
      sheet.getRange('A3').values = [['mine']];
      sheet.getRange('A1').formulas = [['=SPILL(3)']];
      const cell = sheet.getRange('A1').load('values');
      await context.sync();
      expect(cell.values).toEqual([['#SPILL!']]);
      sheet.getRange('A3').clear('Contents');
      cell.load('values');
      await context.sync();
      expect(cell.values).toEqual([[1]]);
    });
  });

  test('one batch is one undo step, reading is none', async () => {
    const { api, book } = desk(client);
    await api.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem('Sheet1');
      sheet.getRange('A1').values = [[1]];
      sheet.getRange('A2').values = [[1]];
      await context.sync();
      const steps = book.undoSteps();
      context.workbook.worksheets.load('name');
      await context.sync();
      expect([steps, book.undoSteps()]).toEqual([1, 1]);
    });
  });

  test('many cells calculate once, when values are asked for', async () => {
    const { api, book } = desk(client);
    await api.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem('Sheet1');
      for (let row = 1; row <= 20; row++) sheet.getRange(`A${row}`).formulas = [['=1+1']];
      const range = sheet.getRange('A1:A20').load('values, text');
      await context.sync();
      expect(range.values.flat().every((v) => v === 2)).toBe(true);
      expect(book.calculations()).toBe(1);
    });
  });
});

describe.each(CLIENTS)('ranges, $name', (client) => {
  test.each([
    ['getCell', 'C3'],
    ['getRow', 'B3:D3'],
    ['getColumn', 'C2:C4'],
    ['getOffsetRange', 'C4:E6'],
    ['getResizedRange', 'B2:E6'],
    ['getAbsoluteResizedRange', 'B2'],
  ] as const)('%s', async (method, address) => {
    const { api } = desk(client);
    await api.run(async (context) => {
      const range = context.workbook.worksheets.getItem('Sheet1').getRange('B2:D4');
      const reached = {
        getCell: () => range.getCell(1, 1),
        getRow: () => range.getRow(1),
        getColumn: () => range.getColumn(1),
        getOffsetRange: () => range.getOffsetRange(2, 1),
        getResizedRange: () => range.getResizedRange(2, 1),
        getAbsoluteResizedRange: () => range.getAbsoluteResizedRange(1, 1),
      }
        [method]()
        .load('address');
      await context.sync();
      expect(reached.address).toBe(`Sheet1!${address}`);
    });
  });

  test.each([
    [-1, 0],
    [0, -2],
  ])('cells outside the sheet are refused', async (row, column) => {
    const { api } = desk(client);
    expect(
      await codeOf(
        api.run(async (context) => {
          context.workbook.worksheets
            .getItem('Sheet1')
            .getRange('A1')
            .getOffsetRange(row, column)
            .load('address');
          await context.sync();
        }),
      ),
    ).toBe('InvalidArgument');
  });

  test('sheet names with spaces and apostrophes are quoted in addresses', async () => {
    const { api } = desk(client);
    await api.run(async (context) => {
      const range = context.workbook.worksheets.add("Tom's run 2").getRange('a1:b2').load('address');
      await context.sync();
      expect(range.address).toBe("'Tom''s run 2'!A1:B2");
    });
  });

  test('the used range is what is filled; formats count unless only values are asked for', async () => {
    const { api } = desk(client);
    await api.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem('Sheet1');
      sheet.getRange('B2').values = [[1]];
      sheet.getRange('D5').format.fill.color = '#00FF00';
      const values = sheet.getUsedRangeOrNullObject(true).load('address');
      const all = sheet.getUsedRangeOrNullObject().load('address');
      await context.sync();
      expect([values.address, all.address]).toEqual(['Sheet1!B2', 'Sheet1!B2:D5']);
    });
  });

  test('whole columns answer null instead of a million values', async () => {
    const { api } = desk(client);
    await api.run(async (context) => {
      const range = context.workbook.worksheets.getItem('Sheet1').getRange('A:B').load('values, address');
      await context.sync();
      expect([range.values, range.address]).toEqual([null, 'Sheet1!A:B']);
    });
  });

  test('an address that is none is InvalidArgument, an unknown name ItemNotFound', async () => {
    const { api } = desk(client);
    const ask = (address: string): Promise<string> =>
      codeOf(
        api.run(async (context) => {
          context.workbook.worksheets.getItem('Sheet1').getRange(address).load('address');
          await context.sync();
        }),
      );
    expect([await ask('A1:'), await ask('no_such_name'), await ask('Other!A1')]).toEqual([
      'InvalidArgument',
      'ItemNotFound',
      'InvalidArgument',
    ]);
  });

  test('select moves the selection and clear empties', async () => {
    const { api, book } = desk(client);
    await api.run(async (context) => {
      const range = context.workbook.worksheets.getItem('Sheet1').getRange('C3');
      range.values = [[1]];
      range.format.font.bold = true;
      range.select();
      const chosen = context.workbook.getSelectedRange().load('address');
      await context.sync();
      expect(chosen.address).toBe('Sheet1!C3');
      range.clear();
      range.load('values, format/font/bold');
      await context.sync();
      expect([range.values, range.format.font.bold]).toEqual([[['']], false]);
    });
    expect(book.usedArea('{sheet1}', false)).toBeUndefined();
  });

  test('looks are set and read back; where they differ the answer is null', async () => {
    const { api } = desk(client);
    await api.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem('Sheet1');
      const cell = sheet.getRange('A1');
      cell.set({
        format: {
          wrapText: true,
          horizontalAlignment: 'Center',
          font: { bold: true, size: 14, color: '#112233', name: 'Arial' },
        },
      });
      cell.format.columnWidth = 90;
      cell.format.protection.locked = false;
      cell.format.borders.getItem('EdgeBottom').style = 'Continuous';
      cell.load(
        'format/wrapText, format/horizontalAlignment, format/columnWidth, format/font, ' +
          'format/protection/locked',
      );
      const edge = cell.format.borders.getItem('EdgeBottom').load('style');
      const both = sheet.getRange('A1:B1').load('format/font/bold, format/fill/color');
      await context.sync();
      const { format } = cell;
      expect([
        format.wrapText,
        format.horizontalAlignment,
        format.columnWidth,
        format.font.bold,
        format.font.size,
        format.font.color,
        format.protection.locked,
      ]).toEqual([true, 'Center', 90, true, 14, '#112233', false]);
      expect([edge.style, both.format.font.bold, both.format.fill.color]).toEqual([
        'Continuous',
        null,
        '#FFFFFF',
      ]);
    });
  });

  test('a colour that is none is refused', async () => {
    const { api } = desk(client);
    expect(
      await codeOf(
        api.run(async (context) => {
          context.workbook.worksheets.getItem('Sheet1').getRange('A1').format.fill.color = 'reddish';
          await context.sync();
        }),
      ),
    ).toBe('InvalidArgument');
  });
});
