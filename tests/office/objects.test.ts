import type { ChartState } from '../../src/officeStandIn/book';
import { CLIENTS, codeOf, desk } from './support/clients';

const SHEET = '{sheet1}';
type Context = Excel.RequestContext;
const first = (context: Context): Excel.Worksheet => context.workbook.worksheets.getItem('Sheet1');

describe.each(CLIENTS)('sheets, $name', (client) => {
  const attempt = (work: (context: Context) => void): Promise<string> =>
    codeOf(
      desk(client).api.run(async (context) => {
        work(context);
        await context.sync();
      }),
    );

  test.each([
    [
      'a taken name, letter case aside',
      (c: Context) => {
        c.workbook.worksheets.add('SHEET1');
      },
      'ItemAlreadyExists',
    ],
    [
      'a name too long',
      (c: Context) => {
        c.workbook.worksheets.add('x'.repeat(32));
      },
      'InvalidArgument',
    ],
    [
      'a name with a slash',
      (c: Context) => {
        c.workbook.worksheets.add('a/b');
      },
      'InvalidArgument',
    ],
    [
      'a blank name',
      (c: Context) => {
        c.workbook.worksheets.add(' ');
      },
      'InvalidArgument',
    ],
    [
      'renaming to a taken name',
      (c: Context) => {
        c.workbook.worksheets.add('Plan').name = 'sheet1';
      },
      'ItemAlreadyExists',
    ],
    [
      'deleting the last visible sheet',
      (c: Context) => {
        first(c).delete();
      },
      'InvalidOperation',
    ],
    [
      'hiding the last visible sheet',
      (c: Context) => {
        first(c).visibility = 'Hidden';
      },
      'InvalidOperation',
    ],
    [
      'activating a hidden sheet',
      (c: Context) => {
        const s = c.workbook.worksheets.add('P');
        s.visibility = 'Hidden';
        s.activate();
      },
      'InvalidOperation',
    ],
  ] as const)('%s is refused', async (_what, work, code) => {
    expect(await attempt(work)).toBe(code);
  });

  test('adding, moving, hiding, colouring, deleting', async () => {
    const { api } = desk(client);
    await api.run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.add();
      const plan = worksheets.add('Plan');
      plan.tabColor = '#0B6E75';
      plan.showGridlines = false;
      plan.position = 0;
      plan.load('tabColor, showGridlines, visibility');
      worksheets.load('items/name');
      await context.sync();
      expect(worksheets.items.map((s) => s.name)).toEqual(['Plan', 'Sheet1', 'Sheet2']);
      expect([plan.tabColor, plan.showGridlines, plan.visibility]).toEqual(['#0B6E75', false, 'Visible']);
      plan.activate();
      const active = worksheets.getActiveWorksheet().load('name');
      await context.sync();
      expect(active.name).toBe('Plan');
      plan.delete();
      const gone = worksheets.getItemOrNullObject('Plan');
      await context.sync();
      expect(gone.isNullObject).toBe(true);
    });
  });

  test('frozen panes and page layout', async () => {
    const { api, book } = desk(client);
    await api.run(async (context) => {
      const sheet = first(context);
      sheet.freezePanes.freezeAt(sheet.getRange('A1:B3'));
      sheet.pageLayout.orientation = 'Landscape';
      sheet.pageLayout.zoom = { horizontalFitToPages: 1 };
      sheet.pageLayout.setPrintTitleRows('$1:$2');
      const frozen = sheet.freezePanes.getLocationOrNullObject().load('address');
      const page = sheet.pageLayout.load('orientation, zoom');
      await context.sync();
      expect([frozen.address, page.orientation, page.zoom.horizontalFitToPages]).toEqual([
        'Sheet1!A1:B3',
        'Landscape',
        1,
      ]);
      sheet.freezePanes.unfreeze();
      sheet.freezePanes.freezeRows(1);
      await context.sync();
    });
    expect([book.freeze(SHEET), book.page(SHEET)]).toEqual([
      { rows: 1, columns: 0 },
      { landscape: true, fitWidth: 1, titleRows: [0, 1] },
    ]);
  });
});

describe.each(CLIENTS)('protection, $name', (client) => {
  test('locked cells refuse, unlocked ones take, nothing is half written', async () => {
    const { api, book } = desk(client);
    await api.run(async (context) => {
      const sheet = first(context);
      sheet.getRange('A1:A2').values = [['input'], ['formula']];
      sheet.getRange('A1').format.protection.locked = false;
      sheet.protection.protect({ allowFormatColumns: true });
      sheet.protection.load('protected, options');
      await context.sync();
      expect([sheet.protection.protected, sheet.protection.options.allowFormatColumns]).toEqual([true, true]);
    });
    const write = (address: string, values: unknown[][]): Promise<string> =>
      codeOf(
        api.run(async (context) => {
          first(context).getRange(address).values = values;
          await context.sync();
        }),
      );
    expect(await write('A1', [['new']])).toBe('no error');
    expect(await write('A2', [['new']])).toBe('AccessDenied');
    expect(await write('A1:A2', [['newer'], ['newer']])).toBe('AccessDenied');
    expect(book.read(SHEET, { row: 0, column: 0, rows: 2, columns: 1 }, 'values')).toEqual([
      ['new'],
      ['formula'],
    ]);
  });

  test.each([
    [
      'a format',
      (s: Excel.Worksheet) => {
        s.getRange('A1').format.font.bold = true;
      },
    ],
    [
      'a number format',
      (s: Excel.Worksheet) => {
        s.getRange('A1').numberFormat = [['0.0']];
      },
    ],
    [
      'a table',
      (s: Excel.Worksheet) => {
        s.tables.add('A1:B3', true);
      },
    ],
    [
      'a chart',
      (s: Excel.Worksheet) => {
        s.charts.add('Line', s.getRange('A1:B3'));
      },
    ],
    [
      'a validation',
      (s: Excel.Worksheet) => {
        s.getRange('A1').dataValidation.rule = { custom: { formula: '=TRUE' } };
      },
    ],
    [
      'a conditional format',
      (s: Excel.Worksheet) => {
        s.getRange('A1').conditionalFormats.add('Custom');
      },
    ],
    [
      'merging',
      (s: Excel.Worksheet) => {
        s.getRange('A1:B1').merge();
      },
    ],
    [
      'clearing',
      (s: Excel.Worksheet) => {
        s.getRange('A1').clear();
      },
    ],
  ] as const)('%s is refused', async (_what, work) => {
    const { api } = desk(client);
    expect(
      await codeOf(
        api.run(async (context) => {
          const sheet = first(context);
          sheet.protection.protect();
          work(sheet);
          await context.sync();
        }),
      ),
    ).toBe('AccessDenied');
  });

  test('a password is needed where one was set; protecting twice is refused', async () => {
    const { api } = desk(client);
    const run = (work: (sheet: Excel.Worksheet) => void): Promise<string> =>
      codeOf(
        api.run(async (context) => {
          work(first(context));
          await context.sync();
        }),
      );
    expect(
      await run((s) => {
        s.protection.protect({}, 'secret');
      }),
    ).toBe('no error');
    expect(
      await run((s) => {
        s.protection.protect();
      }),
    ).toBe('InvalidOperation');
    expect(
      await run((s) => {
        s.protection.unprotect('wrong');
      }),
    ).toBe('AccessDenied');
    expect(
      await run((s) => {
        s.protection.unprotect('secret');
      }),
    ).toBe('no error');
  });
});

describe.each(CLIENTS)('names and tables, $name', (client) => {
  test('names of the workbook and of a sheet', async () => {
    const { api } = desk(client);
    await api.run(async (context) => {
      const sheet = context.workbook.worksheets.add("Tom's run");
      context.workbook.names.add('fry_wanted', sheet.getRange('B2'), 'how many');
      sheet.names.add('local_rate', '=0.8');
      const name = context.workbook.names.getItem('FRY_WANTED').load('name, formula, comment, scope');
      const range = context.workbook.names.getItem('fry_wanted').getRange().load('address');
      const byName = sheet.getRange('fry_wanted').load('address');
      context.workbook.names.load('items/name');
      sheet.names.load('name');
      await context.sync();
      expect([name.name, name.formula, name.comment, name.scope]).toEqual([
        'fry_wanted',
        "='Tom''s run'!$B$2",
        'how many',
        'Workbook',
      ]);
      expect([range.address, byName.address]).toEqual(["'Tom''s run'!B2", "'Tom''s run'!B2"]);
      expect([context.workbook.names.items.length, sheet.names.items.map((n) => n.name)]).toEqual([
        1,
        ['local_rate'],
      ]);
      name.delete();
      const gone = context.workbook.names.getItemOrNullObject('fry_wanted');
      await context.sync();
      expect(gone.isNullObject).toBe(true);
    });
  });

  test.each([
    ['A1', 'InvalidArgument'],
    ['R1C1', 'InvalidArgument'],
    ['two words', 'InvalidArgument'],
    ['Taken', 'ItemAlreadyExists'],
  ])('the name %s is refused', async (text, code) => {
    const { api } = desk(client);
    expect(
      await codeOf(
        api.run(async (context) => {
          context.workbook.names.add('taken', '=1');
          context.workbook.names.add(text, '=1');
          await context.sync();
        }),
      ),
    ).toBe(code);
  });

  test('a table: headings mended, name, style, totals, parts', async () => {
    const { api } = desk(client);
    await api.run(async (context) => {
      const sheet = first(context);
      sheet.getRange('B2:D3').values = [
        ['Day', '', 'Day'],
        [1, 2, 3],
      ];
      const table = sheet.tables.add('B2:D3', true);
      table.name = 'Runs';
      table.style = 'TableStyleLight1';
      table.showTotals = true;
      table.load('name, style, showTotals, worksheet/name');
      const all = table.getRange().load('address, values, formulas');
      const body = table.getDataBodyRange().load('address');
      context.workbook.tables.load('items/name');
      await context.sync();
      expect([table.name, table.style, table.showTotals, table.worksheet.name]).toEqual([
        'Runs',
        'TableStyleLight1',
        true,
        'Sheet1',
      ]);
      expect([all.address, body.address]).toEqual(['Sheet1!B2:D4', 'Sheet1!B3:D3']);
      expect([all.values[0], all.formulas[2]]).toEqual([
        ['Day', 'Column2', 'Day2'],
        ['Total', '', '=SUBTOTAL(109,[Day2])'],
      ]);
      expect(context.workbook.tables.items.map((t) => t.name)).toEqual(['Runs']);
    });
  });

  test('a table over a table, or under a taken name, is refused', async () => {
    const { api } = desk(client);
    const run = (work: (context: Context) => void): Promise<string> =>
      codeOf(
        api.run(async (context) => {
          work(context);
          await context.sync();
        }),
      );
    expect(
      await run((c) => {
        first(c).tables.add('A1:B3', true).name = 'Runs';
      }),
    ).toBe('no error');
    expect(
      await run((c) => {
        first(c).tables.add('B2:C4', true);
      }),
    ).toBe('InvalidArgument');
    expect(
      await run((c) => {
        first(c).tables.add('E1:F3', true).name = 'runs';
      }),
    ).toBe('ItemAlreadyExists');
  });
});

describe.each(CLIENTS)('rules, $name', (client) => {
  test('validations of each kind go in and come back', async () => {
    const { api, book } = desk(client);
    await api.run(async (context) => {
      const sheet = first(context);
      const cell = sheet.getRange('A1');
      cell.dataValidation.rule = { decimal: { formula1: 0, formula2: 40, operator: 'Between' } };
      cell.dataValidation.ignoreBlanks = false;
      cell.dataValidation.errorAlert = {
        title: 'Temperature',
        message: '0 to 40',
        showAlert: true,
        style: 'Stop',
      };
      cell.dataValidation.prompt = { title: 'Temperature', message: 'in degrees', showPrompt: true };
      sheet.getRange('A2').dataValidation.rule = {
        list: { inCellDropDown: true, source: sheet.getRange('C1:C3') },
      };
      sheet.getRange('A3').dataValidation.rule = { list: { inCellDropDown: true, source: 'a,b' } };
      const back = cell.dataValidation.load('rule, type, errorAlert, ignoreBlanks');
      const list = sheet.getRange('A2').dataValidation.load('rule, type');
      await context.sync();
      expect([back.type, back.rule, back.ignoreBlanks, back.errorAlert.message]).toEqual([
        'Decimal',
        { decimal: { formula1: 0, formula2: 40, operator: 'Between' } },
        false,
        '0 to 40',
      ]);
      expect([list.type, list.rule.list?.source]).toEqual(['List', '=Sheet1!$C$1:$C$3']);
    });
    expect(book.validation(SHEET, { row: 2, column: 0, rows: 1, columns: 1 })).toMatchObject({
      rule: { kind: 'list', source: 'a,b' },
    });
  });

  test.each([
    ['no kind', {}],
    ['two kinds', { custom: { formula: '=1' }, list: { inCellDropDown: true, source: 'a' } }],
    ['an unknown operator', { decimal: { formula1: 0, operator: 'Around' } }],
    ['an empty list', { list: { inCellDropDown: true, source: '' } }],
  ])('a validation with %s is refused', async (_what, rule) => {
    const { api } = desk(client);
    expect(
      await codeOf(
        api.run(async (context) => {
          first(context).getRange('A1').dataValidation.rule = rule as Excel.DataValidationRule;
          await context.sync();
        }),
      ),
    ).toBe('InvalidArgument');
  });

  test('a conditional format by formula; custom functions are refused in it', async () => {
    const { api, book } = desk(client);
    await api.run(async (context) => {
      const range = first(context).getRange('A1:A9');
      const { custom } = range.conditionalFormats.add('Custom');
      custom.rule.formula = '=A1>5';
      custom.format.fill.color = '#FFCC00';
      custom.format.font.color = '#000000';
      const count = range.conditionalFormats.getCount();
      await context.sync();
      expect(count.value).toBe(1);
    });
    expect(book.conditionals(SHEET)).toMatchObject([
      { area: { rows: 9 }, formula: '=A1>5', fill: '#FFCC00', color: '#000000' },
    ]);
    expect(
      await codeOf(
        api.run(async (context) => {
          first(context).getRange('A1').conditionalFormats.add('Custom').custom.rule.formula =
            '=SPAWN.AMMONIA.SHARE(A1,25)>0.1';
          await context.sync();
        }),
      ),
    ).toBe('InvalidArgument');
  });
});

describe.each(CLIENTS)('charts, $name', (client) => {
  const filled = (context: Context): Excel.Range => {
    const range = first(context).getRange('A1:C3');
    range.values = [
      ['', 'Stay', 'Vats'],
      ['Run 1', 3, 5],
      ['Run 2', 4, 6],
    ];
    return range;
  };

  test('series follow the source range', async () => {
    const { api, book } = desk(client);
    await api.run(async (context) => {
      const chart = first(context).charts.add('BarStacked', filled(context), 'Columns');
      const series = chart.series.load('items/name');
      await context.sync();
      expect(series.items.map((s) => s.name)).toEqual(['Stay', 'Vats']);
    });
    expect((book.charts(SHEET) as ChartState[])[0]?.series[0]).toEqual({
      name: 'Stay',
      values: 'Sheet1!B2:B3',
      categories: 'Sheet1!A2:A3',
    });
  });

  test('an occupancy chart as the plan draws it', async () => {
    const { api, book } = desk(client);
    await api.run(async (context) => {
      const range = filled(context);
      const chart = first(context).charts.add('BarStacked', range, 'Columns');
      chart.name = 'Occupancy';
      chart.title.text = 'Vats in use';
      chart.legend.visible = false;
      chart.axes.categoryAxis.reversePlotOrder = true;
      chart.axes.valueAxis.numberFormat = 'd mmm';
      chart.axes.valueAxis.minimum = 40000;
      chart.axes.valueAxis.title.text = 'Date';
      chart.series.getItemAt(0).format.fill.clear();
      chart.series.getItemAt(1).format.fill.setSolidColor('#0B6E75');
      chart.setPosition('E2', 'L18');
      const extra = chart.series.add('Third');
      extra.setValues(first(context).getRange('C2:C3'));
      extra.setXAxisValues(first(context).getRange('A2:A3'));
      await context.sync();
    });
    expect(book.charts(SHEET)).toEqual([
      {
        id: 'chart1',
        name: 'Occupancy',
        type: 'BarStacked',
        title: 'Vats in use',
        legend: { visible: false, position: 'Bottom' },
        category: { reversed: true },
        value: { reversed: false, format: 'd mmm', min: 40000, title: 'Date' },
        place: { row: 1, column: 4, rows: 17, columns: 8 },
        series: [
          { name: 'Stay', values: 'Sheet1!B2:B3', categories: 'Sheet1!A2:A3', fill: 'none' },
          { name: 'Vats', values: 'Sheet1!C2:C3', categories: 'Sheet1!A2:A3', fill: '#0B6E75' },
          { name: 'Third', values: 'Sheet1!C2:C3', categories: 'Sheet1!A2:A3' },
        ],
      },
    ]);
  });

  test('series are deleted from the end; one that is not there is ItemNotFound', async () => {
    const { api, book } = desk(client);
    await api.run(async (context) => {
      const chart = first(context).charts.add('Line', filled(context), 'Columns');
      chart.series.load('count');
      await context.sync();
      for (let i = chart.series.count - 1; i >= 0; i--) chart.series.getItemAt(i).delete();
      await context.sync();
    });
    expect((book.charts(SHEET) as ChartState[])[0]?.series).toEqual([]);
    expect(
      await codeOf(
        api.run(async (context) => {
          first(context).charts.getItemOrNullObject('Chart 1').series.getItemAt(3).load('name');
          await context.sync();
        }),
      ),
    ).toBe('ItemNotFound');
  });
});

describe.each(CLIENTS)('the application, $name', (client) => {
  test('calculate runs', async () => {
    const { api, book } = desk(client);
    await api.run(async (context) => {
      context.workbook.application.calculate('Full');
      await context.sync();
    });
    expect(book.calculations()).toBe(1);
  });

  test('a new workbook is handed to the host', async () => {
    const { api, opened } = desk(client);
    await api.createWorkbook('UEsDBA==');
    expect(opened).toEqual(['UEsDBA==']);
  });
});
