import { CLIENTS, codeOf, desk } from './support/clients';

type Context = Excel.RequestContext;

describe.each(CLIENTS)('settings of the workbook, $name', (client) => {
  test('kept, read back, replaced and taken away; a protected sheet does not matter', async () => {
    const { api } = desk(client);
    await api.run(async (context) => {
      context.workbook.worksheets.getItem('Sheet1').protection.protect({});
      const { settings } = context.workbook;
      const none = settings.getItemOrNullObject('words');
      await context.sync();
      expect(none.isNullObject).toBe(true);
      settings.add('words', '{"eggs":"Ova"}');
      settings.add('list', [1, 'two']);
      await context.sync();
      settings.add('words', '{}');
      await context.sync();
    });
    await api.run(async (context) => {
      const { settings } = context.workbook;
      const words = settings.getItemOrNullObject('words').load('key, value');
      const list = settings.getItem('list').load('value');
      const count = settings.getCount();
      settings.load('items/key');
      await context.sync();
      expect([
        words.key,
        words.value,
        list.value,
        count.value,
        settings.items.map(({ key }) => key).sort(),
      ]).toEqual(['words', '{}', [1, 'two'], 2, ['list', 'words']]);
      words.value = 'other';
      list.delete();
      await context.sync();
      const again = settings.getItem('words').load('value');
      const gone = settings.getItemOrNullObject('list');
      await context.sync();
      expect([again.value, gone.isNullObject]).toEqual(['other', true]);
    });
  });

  test.each([
    [
      'a blank key',
      (c: Context) => {
        c.workbook.settings.add('', 'x');
      },
      'InvalidArgument',
    ],
    [
      'a key nobody set',
      (c: Context) => {
        c.workbook.settings.getItem('nothing').delete();
      },
      'ItemNotFound',
    ],
  ] as const)('%s is refused', async (_what, work, code) => {
    expect(
      await codeOf(
        desk(client).api.run(async (context) => {
          work(context);
          await context.sync();
        }),
      ),
    ).toBe(code);
  });
});
