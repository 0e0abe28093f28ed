import { strToU8 } from 'fflate';
import { readXlsx, writeXlsx } from '../../../shared/files';
import { verify } from '../../../shared/catalogue/sharing';
import { HostProblem } from '../../../taskpane/host/port';
import { simpleBook } from '../../files/share/support/parts';
import { fakeWorld } from '../support/fakePort';
import { openPage } from '../support/page';
import { seasonModel } from '../support/seasonModel';
import {
  allText,
  BUYERS,
  chooseFile,
  look,
  made,
  seasonFile,
  sheet,
  STUCK,
  tick,
  tickOf,
  withFile,
} from '../support/shareWorld';

describe('looking first', () => {
  test('says how many formulas in which sheets, and changes nothing', async () => {
    const bytes = seasonFile();
    const before = bytes.slice();
    const page = await look(withFile(bytes));
    expect(page.one('#share-found .banner.good').textContent).toMatch(
      /\d+ formulas of Spawnbook on \d+ sheets? would hold their values/,
    );
    expect(page.all('#share-found .fact').map((row) => row.textContent)).toContain('Buyersnone of ours');
    expect(bytes).toEqual(before);
    expect([page.world.written, page.world.saved, page.world.mended]).toEqual([[], [], []]);
    expect(document.activeElement?.id).toBe('share-found');
  });

  test(
    'names the cells that hold no finished value, leads there, and keeps the copy back ' +
      'until somebody insists',
    async () => {
      const page = await look(withFile(STUCK()));
      expect(page.one('#share-found .banner.bad').textContent).toContain('1 formula holds no finished value');
      // Log!A1 shows #NAME?, as another program left it: it is worked out again and is no trouble.
      expect(page.all('.trouble').map((one) => one.textContent)).toEqual([
        expect.stringMatching(/Log!B1.*[Nn]ever calculated/),
      ]);
      await page.press('Go to Log!B1');
      expect(page.world.visited).toEqual(['Log!B1']);
      await page.press('Make the copy');
      expect(page.world.saved).toEqual([]);
      tick(page, 'Make the copy although');
      await page.press('Make the copy');
      expect(made(page).name).toBe('Season 2027 to share.xlsx');
      expect(page.one('#share-report').textContent).toMatch(
        /Log!B1: never calculated.*1 cell was worked out again.*Log!A1/,
      );
    },
  );

  test('a host that keeps its file to itself says so, and a saved file does instead', async () => {
    const page = await look(fakeWorld());
    expect(page.one('.banner.warning').textContent).toContain('This host keeps its file to itself.');
    expect(document.activeElement?.id).toBe('share-file');
    await chooseFile(page, '#share-file-field', 'plan.xlsx', seasonFile());
    expect(page.one('#share-found').textContent).toContain('The file: plan.xlsx');
    expect(page.all('.banner.warning')).toEqual([]);
  });

  test('without any workbook a saved file can be shared', async () => {
    const page = openPage('absent');
    await page.go('share');
    expect(page.all('#share-look')).toEqual([]);
    await chooseFile(page, '#share-file-field', 'plan.xlsx', seasonFile());
    await page.press('Make the copy');
    expect(made(page).name).toBe('plan to share.xlsx');
  });

  test.each([
    ['no workbook', strToU8('hatch log'), /not an Excel workbook/],
    ['an empty file', new Uint8Array(), /empty/],
    ['a cut file', seasonFile().slice(0, 900), /cut short|damaged/],
  ])('%s is refused with a sentence and no further step', async (_, bytes, sentence) => {
    const page = await look(withFile(bytes));
    expect(page.one('#share-found .banner.bad').textContent).toMatch(sentence);
    expect(page.all('#share-make')).toEqual([]);
  });

  test('a workbook without a formula of ours may still leave things out', async () => {
    const page = await look(withFile(writeXlsx({ title: 'Buyers', names: [], sheets: [BUYERS] })));
    expect(page.one('#share-found').textContent).toContain('it can be shared as it is');
    tick(page, 'Take out personal data');
    expect(page.text()).toContain('Nothing would change');
    await page.press('Make the copy');
    expect(page.one('footer [role=status]').textContent).toContain('No copy was made.');
    expect(page.world.saved).toEqual([]);
  });

  test(
    'a column to be emptied is followed when the workbook changed meanwhile, and never ' + 'silently kept',
    async () => {
      const world = withFile(writeXlsx({ title: 'Buyers', names: [], sheets: [BUYERS] }));
      const page = await look(world);
      tick(page, 'B Telephone (2 cells)');
      const moved = Object.fromEntries(
        Object.entries(BUYERS.cells).map(([address, cell]) => [
          address
            .replace(/^B(\d+)$/, (_, row: string) => `D${Number(row) + 2}`)
            .replace(/^([AC])(\d+)$/, (_, letter: string, row: string) => `${letter}${Number(row) + 2}`),
          cell,
        ]),
      );
      const beside = {
        D5: { value: 'Telephone' },
        B5: { value: 'Town' },
        B6: { value: 'Ford' },
        B7: { value: 'Mill' },
      };
      world.file = {
        kind: 'read',
        name: 'Season 2027.xlsx',
        bytes: writeXlsx({
          title: 'Buyers',
          names: [],
          sheets: [{ ...BUYERS, cells: { ...moved, ...beside } }],
        }),
      };
      await page.press('Look again');
      expect(tickOf(page, 'D Telephone').checked).toBe(true);
      expect(tickOf(page, 'B Town').checked).toBe(false);
      world.file = {
        kind: 'read',
        name: 'Season 2027.xlsx',
        bytes: writeXlsx({
          title: 'Buyers',
          names: [],
          sheets: [{ ...BUYERS, cells: { ...moved, ...beside, D5: { value: 'Phone' } } }],
        }),
      };
      await page.press('Look again');
      expect(tickOf(page, 'D Phone').checked).toBe(true);
      await page.press('Make the copy');
      expect(allText(made(page).bytes)).not.toContain('0555');
    },
  );

  test('a failure of the host is a sentence and loses no choice', async () => {
    const page = await look(withFile(seasonFile()));
    tick(page, 'Buyers');
    page.world.failure = new HostProblem('A cell is being edited.');
    await page.press('Look again');
    expect(page.one('footer [role=status]').textContent).toContain('A cell is being edited.');
    expect(tickOf(page, 'Buyers').checked).toBe(false);
  });
});

describe('the copy', () => {
  test('holds the same values, no formula of ours, and is delivered with its report', async () => {
    const bytes = seasonFile();
    const page = await look(withFile(bytes));
    await page.press('Make the copy');
    const [before, after] = [readXlsx(bytes), readXlsx(made(page).bytes)];
    if (!('model' in before) || !('model' in after)) throw new Error('unreadable');
    for (const { name, cells } of before.model.sheets) {
      const now = after.model.sheets.find((one) => one.name === name)?.cells ?? {};
      for (const [address, cell] of Object.entries(cells))
        expect([name, address, now[address]?.value]).toEqual([name, address, cell.value]);
    }
    expect(
      after.model.sheets
        .flatMap(({ cells }) => Object.values(cells))
        .filter(({ formula }) => formula?.includes('SPAWN')),
    ).toEqual([]);
    const report = page.one('#share-report').textContent ?? '';
    expect(report).toMatch(/Formulas of Spawnbook that became values\d+/);
    expect(report).toContain('Where numbers come from');
    expect(document.activeElement?.id).toBe('share-report');
    const checked = verify(made(page).bytes, page.one('.digest').textContent?.replace(/\s/g, ''));
    expect(checked.kind === 'checked' && checked.matches).toBe(true);
    expect(checked.kind === 'checked' && [checked.workbook, checked.date]).toEqual([
      'Season 2027',
      '1 March 2027',
    ]);
  });

  test('a column chosen by its heading is empty, and its words are nowhere in the file', async () => {
    const page = await look(withFile(seasonFile()));
    tick(page, 'B Telephone (2 cells)');
    await page.press('Make the copy');
    const text = allText(made(page).bytes);
    expect(text).toContain('Mill Pond Farm');
    expect(text).toContain('Telephone');
    for (const secret of ['0555 0142', '0555 0177', '05550142']) expect(text).not.toContain(secret);
  });

  test('cells can be typed; what cannot be read is told beside the field', async () => {
    const page = await look(withFile(seasonFile()));
    await page.type('#share-cells', 'Buyer!C');
    await page.press('Add');
    expect(page.one('#share-cells-fault').textContent).toContain('There is no sheet “Buyer”');
    expect(document.activeElement?.id).toBe('share-cells');
    await page.type('#share-cells', 'C4');
    await page.press('Add');
    expect(page.one('#share-cells-fault').textContent).toContain('Say on which sheet');
    await page.type('#share-cells', 'buyers!a4:a5');
    page.key('Enter');
    expect(tickOf(page, 'Buyers!A4:A5').checked).toBe(true);
    await page.press('Make the copy');
    expect(allText(made(page).bytes)).not.toContain('Mill Pond Farm');
  });

  test('a sheet left out is gone; all of them cannot be', async () => {
    const page = await look(withFile(seasonFile()));
    tick(page, 'Buyers');
    expect(page.text()).toContain('1 sheet: Buyers');
    await page.press('Make the copy');
    const text = allText(made(page).bytes);
    expect(text).not.toContain('Reed Bank');
    tick(page, 'Figures');
    tick(page, 'Vats');
    await page.press('Make the copy');
    expect(page.one('#share-report').textContent).toMatch(
      /\d+ names that stood for something left out: \w+, \w+, \w+, \w+ and \d+ more/,
    );
    tick(page, 'Figures');
    tick(page, 'Vats');
    for (const { name } of seasonModel().sheets) tick(page, name);
    await page.press('Make the copy');
    expect(page.one('footer [role=status]').textContent).toContain('Keep at least one');
    expect(page.world.saved).toHaveLength(2);
  });

  test('simple formulas live on when wished', async () => {
    const bytes = simpleBook({
      sheets: {
        Log: sheet(
          '<row r="1"><c r="A1"><v>1.5</v></c><c ' +
            'r="B1"><f>_xldudf_SPAWN_HORMONE_VOLUME(A1,0.5)</f><v>0.75</v></c></row>',
        ),
      },
    });
    const page = await look(withFile(bytes));
    tick(page, 'Keep simple formulas alive');
    await page.press('Make the copy');
    expect(page.one('#share-report').textContent).toContain('that became ordinary formulas1');
    const after = readXlsx(made(page).bytes);
    expect('model' in after && after.model.sheets[0]?.cells.B1?.formula).toMatch(/^=[^S]*A1/);
  });

  test('a delivery that fails leaves the copy to be saved again', async () => {
    const page = await look(withFile(seasonFile()));
    page.world.failure = new HostProblem('No window could be opened.');
    await page.press('Make the copy');
    expect(page.one('footer [role=status]').textContent).toContain('No window could be opened.');
    expect(page.one('#share-report .banner.bad').textContent).toContain('not saved yet');
    await page.press('Save the copy again');
    expect(made(page).bytes.length).toBeGreaterThan(1000);
    expect(page.one('#share-report .banner.good').textContent).toContain('is saved.');
  });

  test('stopping makes nothing and changes nothing', async () => {
    const page = await look(withFile(seasonFile()));
    const clock = jest.spyOn(performance, 'now');
    let now = 0;
    // Every step seems long, so that the work pauses after each.
    clock.mockImplementation(() => (now += 100));
    const working = page.press('Make the copy');
    await new Promise((go) => {
      setTimeout(go, 20);
    });
    expect(page.one('progress')).toBeDefined();
    page.one('#task-stop').click();
    expect(page.one('.progress').textContent).toContain('Stopping…');
    await working;
    clock.mockRestore();
    expect(page.one('footer [role=status]').textContent).toContain('Stopped. Nothing was made');
    expect(page.world.saved).toEqual([]);
    expect(page.all('#share-report, progress')).toEqual([]);
    expect(document.activeElement?.id).toBe('share-make');
  });

  test('another choice takes the report of the copy before it away', async () => {
    const page = await look(withFile(seasonFile()));
    await page.press('Make the copy');
    tick(page, 'Buyers');
    expect(page.all('#share-report')).toEqual([]);
  });
});

test('every control has a name, and no two share an id', async () => {
  const page = await look(withFile(seasonFile()));
  await page.press('Make the copy');
  for (const button of page.all('button'))
    expect(button.getAttribute('aria-label') ?? button.textContent).not.toBe('');
  for (const field of page.all('input, select')) expect(page.all(`label[for="${field.id}"]`)).toHaveLength(1);
  const ids = page.all('[id]').map((element) => element.id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(page.all('[style], script, [onclick]')).toEqual([]);
});
