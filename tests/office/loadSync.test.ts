import { CLIENTS, codeOf, desk } from './support/clients';

describe.each(CLIENTS)('load and sync, $name', (client) => {
  test('a property read before load and sync is refused by name', async () => {
    const { api } = desk(client);
    const code = api.run(async (context) => {
      const range = context.workbook.worksheets.getItem('Sheet1').getRange('A1');
      await context.sync();
      return range.values;
    });
    expect(await codeOf(code)).toBe('PropertyNotLoaded');
  });

  test('loading is not enough: sync must come first', async () => {
    const { api } = desk(client);
    const code = api.run((context) => {
      const range = context.workbook.worksheets.getItem('Sheet1').getRange('A1').load('values');
      return Promise.resolve(range.values);
    });
    expect(await codeOf(code)).toBe('PropertyNotLoaded');
  });

  test('only what was asked for is there', async () => {
    const { api } = desk(client);
    const code = api.run(async (context) => {
      const range = context.workbook.worksheets.getItem('Sheet1').getRange('A1').load('address');
      await context.sync();
      expect(range.address).toBe('Sheet1!A1');
      return range.values;
    });
    expect(await codeOf(code)).toBe('PropertyNotLoaded');
  });

  test('a written property reads back at once', async () => {
    const { api } = desk(client);
    await api.run(async (context) => {
      const range = context.workbook.worksheets.getItem('Sheet1').getRange('A1');
      range.values = [[5]];
      expect(range.values).toEqual([[5]]);
      await context.sync();
    });
  });

  test('nothing happens before sync; the end of a run syncs', async () => {
    const { api, book } = desk(client);
    await api.run((context) => {
      context.workbook.worksheets.getItem('Sheet1').getRange('A1').values = [[5]];
      expect(book.usedArea('{sheet1}', true)).toBeUndefined();
      return Promise.resolve();
    });
    expect(book.read('{sheet1}', { row: 0, column: 0, rows: 1, columns: 1 }, 'values')).toEqual([[5]]);
  });

  test('deeper properties load through slashes and objects', async () => {
    const { api } = desk(client);
    await api.run(async (context) => {
      const range = context.workbook.worksheets.getItem('Sheet1').getRange('B2:C3');
      range.format.fill.color = '#FF0000';
      range.load('address, worksheet/name, format/fill/color');
      const again = context.workbook.worksheets
        .getItem('Sheet1')
        .getRange('B2')
        .load({ format: { fill: { color: true } } });
      await context.sync();
      expect([range.address, range.worksheet.name, range.format.fill.color, again.format.fill.color]).toEqual(
        ['Sheet1!B2:C3', 'Sheet1', '#FF0000', '#FF0000'],
      );
    });
  });

  test('collections load their items, with "items/name" or plain names', async () => {
    const { api } = desk(client);
    await api.run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.add('Plan');
      worksheets.load('items/name');
      const again = context.workbook.worksheets.load('name');
      await context.sync();
      expect(worksheets.items.map((s) => s.name)).toEqual(['Sheet1', 'Plan']);
      expect(again.items).toHaveLength(2);
      const count = worksheets.getCount();
      await context.sync();
      expect(count.value).toBe(2);
    });
  });

  test('a result is not there before sync, nor are items before load', async () => {
    const { api } = desk(client);
    expect(
      await codeOf(api.run((context) => Promise.resolve(context.workbook.worksheets.getCount().value))),
    ).toBe('ValueNotLoaded');
    expect(
      await codeOf(api.run((context) => Promise.resolve(context.workbook.worksheets.items.length))),
    ).toBe('PropertyNotLoaded');
  });

  test('an unknown property is refused at sync', async () => {
    const { api } = desk(client);
    const code = api.run(async (context) => {
      context.workbook.worksheets.getItem('Sheet1').load('nonsense');
      await context.sync();
    });
    expect(await codeOf(code)).toBe('InvalidArgument');
  });

  test('the run must answer with a promise', async () => {
    const { api } = desk(client);
    expect(await codeOf(api.run((() => 5) as unknown as () => Promise<number>))).toBe('RunMustReturnPromise');
  });

  test('the value of the run is what its function gives', async () => {
    const { api } = desk(client);
    expect(await api.run(() => Promise.resolve('done'))).toBe('done');
  });

  test('an error in the function comes out as it is, and what was not synced is not done', async () => {
    const { api, book } = desk(client);
    const failed = api.run((context) => {
      context.workbook.worksheets.getItem('Sheet1').getRange('A1').values = [[5]];
      return Promise.reject(new Error('mine'));
    });
    await expect(failed).rejects.toThrow('mine');
    expect(book.usedArea('{sheet1}', true)).toBeUndefined();
  });
});

describe.each(CLIENTS)('finding things, $name', (client) => {
  test('a missing sheet is ItemNotFound, or a null object when asked so', async () => {
    const { api } = desk(client);
    expect(
      await codeOf(
        api.run(async (context) => {
          context.workbook.worksheets.getItem('Nowhere').load('name');
          await context.sync();
        }),
      ),
    ).toBe('ItemNotFound');
    await api.run(async (context) => {
      const sheet = context.workbook.worksheets.getItemOrNullObject('Nowhere');
      const there = context.workbook.worksheets.getItemOrNullObject('sheet1');
      await context.sync();
      expect([sheet.isNullObject, there.isNullObject]).toEqual([true, false]);
    });
  });

  test('isNullObject is unknown before sync', async () => {
    const { api } = desk(client);
    expect(
      await codeOf(
        api.run((context) =>
          Promise.resolve(context.workbook.worksheets.getItemOrNullObject('x').isNullObject),
        ),
      ),
    ).toBe('PropertyNotLoaded');
  });

  test('properties loaded on a null object are absent, not an error', async () => {
    const { api } = desk(client);
    await api.run(async (context) => {
      const sheet = context.workbook.worksheets.getItemOrNullObject('Nowhere').load('name');
      await context.sync();
      expect(sheet.isNullObject).toBe(true);
      expect(sheet.name).toBeUndefined();
    });
  });

  test('null objects for names, tables, charts, used range and spill', async () => {
    const { api } = desk(client);
    await api.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem('Sheet1');
      const objects = [
        context.workbook.names.getItemOrNullObject('x'),
        sheet.names.getItemOrNullObject('x'),
        context.workbook.tables.getItemOrNullObject('x'),
        sheet.charts.getItemOrNullObject('x'),
        sheet.getUsedRangeOrNullObject(true),
        sheet.getRange('A1').getSpillingToRangeOrNullObject(),
        sheet.freezePanes.getLocationOrNullObject(),
      ];
      await context.sync();
      expect(objects.map((o) => o.isNullObject)).toEqual([true, true, true, true, true, true, true]);
    });
  });

  test('a sheet found once stays the same sheet when it is renamed in the run', async () => {
    const { api } = desk(client);
    await api.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem('Sheet1').load('id');
      const added = context.workbook.worksheets.add('Plan');
      await context.sync();
      sheet.name = 'Renamed';
      added.name = 'Also';
      await context.sync();
      sheet.load('name');
      added.load('name, position');
      await context.sync();
      expect([sheet.name, added.name, added.position]).toEqual(['Renamed', 'Also', 1]);
    });
  });

  test('a range found once stays the same cells while the run lasts', async () => {
    const { api, book } = desk(client);
    await api.run(async (context) => {
      const chosen = context.workbook.getSelectedRange();
      await context.sync();
      book.select('{sheet1}', { row: 5, column: 5, rows: 1, columns: 1 });
      chosen.load('address');
      await context.sync();
      expect(chosen.address).toBe('Sheet1!A1');
    });
  });

  test('after its run a range is gone', async () => {
    const { api } = desk(client);
    const kept = await api.run(async (context) => {
      const range = context.workbook.worksheets.getItem('Sheet1').getRange('A1');
      await context.sync();
      return range;
    });
    expect(
      await codeOf(
        api.run(kept, async (context) => {
          kept.load('values');
          await context.sync();
        }),
      ),
    ).toBe('InvalidObjectPath');
  });
});
