import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { addressOf } from '../../../shared/sheet/formula/address';
import type { CellModel, SheetModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { writeXlsx } from '../../../shared/files';
import type { Session } from '../../browser/support/localSheet';
import { ask, openLocalSheet, OUT, picture, turnTo } from '../../browser/support/localSheet';

/**
 * Records with faults checked beside the sheet, as a person would do it: found, gone to, marked, set right,
 * learned from.
 */

let session: Session;
const folder = mkdtempSync(join(tmpdir(), 'spawnbook-check-'));
const FILE = join(folder, 'Runs.xlsx');

const HEADINGS = [
  'Date',
  'Female',
  'Male',
  'Preparation',
  'Temp (°C)',
  'Latency (h)',
  'Eggs',
  'Came out',
  'Remark',
];
const RUNS = 24;
const SHARES = [0.51, 0.48, 0.52, 0.49, 0.51, 0.48, 0.52, 0.5, 0.48, 0.51, 0.3, 0.5];
/** Texts that would come alive in a sheet that takes them for formulas. */
const TRAPS = ['=HYPERLINK("http://example.org","see")', '+1+1', '-2', '@SUM(1)'];
function runs(): CellModel[][] {
  const rows = Array.from({ length: RUNS }, (_, i): CellModel[] => {
    const eggs = 81_233 + 137 * i * i;
    return [
      { value: 46_000 + 9 * i, format: 'yyyy-mm-dd' },
      { value: `F${1 + (i % 5)}` },
      { value: `M${1 + (i % 2)}` },
      { value: 'ready-made solution' },
      { value: 26 + 0.1 * (i % 9) },
      { value: 11.4 + 0.2 * (i % 4) },
      { value: eggs },
      { value: Math.round((SHARES[i % SHARES.length] ?? 0.5) * eggs) },
      { value: TRAPS[i] ?? `calm ${i}` },
    ];
  });
  const put = (row: number, column: number, cell: CellModel): void => {
    (rows[row] as CellModel[])[column] = cell;
  };
  put(3, 7, { value: 191_407 });
  put(5, 4, { value: 62.5 });
  put(8, 5, { value: 48 });
  // Its colour is the user's own.
  put(5, 0, { value: 46_045, format: 'yyyy-mm-dd', style: 'good' });
  put(9, 1, { value: '=cmd()' });
  put(9, 4, { value: 2.65, style: 'warning' });
  return [HEADINGS.map((value): CellModel => ({ value, style: 'heading' })), ...rows];
}
const sheetOf = (
  name: string,
  rows: readonly (readonly CellModel[])[],
  more: Partial<SheetModel> = {},
): SheetModel => ({
  name,
  widths: HEADINGS.map(() => 13),
  cells: Object.fromEntries(rows.flatMap((row, r) => row.map((cell, c) => [addressOf(r, c), cell] as const))),
  ...more,
});
const BOOK: WorkbookModel = {
  title: 'Runs',
  names: [],
  sheets: [
    sheetOf('Runs', runs()),
    sheetOf('Locked', runs(), { isProtected: true }),
    sheetOf('Buyers', [
      [{ value: 'Buyer' }, { value: 'Fish' }],
      [{ value: 'Mill Pond' }, { value: 20_000 }],
    ]),
    sheetOf('Bare', []),
  ],
};

beforeAll(async () => {
  const bytes = writeXlsx(BOOK);
  writeFileSync(FILE, bytes);
  session = await openLocalSheet();
  await session.page.evaluate(async (all) => {
    await window.spawnbook?.openFile(Uint8Array.from(all), 'Runs.xlsx');
  }, Array.from(bytes));
  await ask(session.page, 'activate', 'Runs');
});
afterAll(async () => {
  await session.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Fills of all cells with records, as Excel's own object model says them. */
const fills = (sheet: string): Promise<string[]> =>
  session.pane.evaluate(
    async ([name, rows, columns]) =>
      Excel.run(async (context) => {
        const cells = Array.from({ length: rows as number }, (_, r) =>
          Array.from({ length: columns as number }, (_c, c) =>
            context.workbook.worksheets.getItem(name as string).getCell(r, c),
          ),
        );
        for (const cell of cells.flat()) cell.format.fill.load('color');
        await context.sync();
        return cells.flat().map((cell) => cell.format.fill.color);
      }),
    [sheet, RUNS + 1, HEADINGS.length] as const,
  );
const selected = (): Promise<string> =>
  session.pane.evaluate(() =>
    Excel.run(async (context) => {
      const range = context.workbook.getSelectedRange().load('address');
      await context.sync();
      return range.address;
    }),
  );
const values = (sheet: string) => ask(session.page, 'getValues', `'${sheet}'!A1:I${RUNS + 1}`);
const findingAt = (place: string) =>
  session.pane.getByRole('button', { name: `Go to ${place}`, exact: true });
const selectOf = (header: string) =>
  session.pane
    .locator('details .field', { has: session.pane.locator('label', { hasText: header }) })
    .locator('select')
    .last();
/** Shows a part of the pane and keeps a picture of the page. */
const look = async (selector: string, name: string): Promise<void> => {
  await session.pane.locator(selector).first().scrollIntoViewIfNeeded();
  await picture(session.page, name);
};
const checkThis = async (): Promise<void> => {
  await session.pane.click('#check-sheet');
  await session.pane.waitForSelector('#check-found');
};

test('this sheet is read, what is wrong is said, and nothing is changed', async () => {
  const { pane } = session;
  const before = await values('Runs');
  await turnTo(pane, 'check');
  await picture(session.page, 'check-start');
  await checkThis();
  expect(await pane.textContent('#check-found')).toMatch(/findings? in 24 records of 1 table/);
  expect(await findingAt('Runs!E7').count()).toBeGreaterThan(0);
  // "Came out" is in no list of words: what stands in it, beside the eggs, says what it is.
  expect(await findingAt('Runs!H5').count()).toBeGreaterThan(0);
  await picture(session.page, 'check-found');
  expect(await values('Runs')).toEqual(before);
});

test('a column is set right, checked again, and remembered', async () => {
  const { pane } = session;
  await pane.locator('summary', { hasText: 'How Runs was read' }).click();
  await selectOf('Came out').selectOption({ label: 'number hatched' });
  await pane.waitForSelector('#check-said:has-text("remembered with this workbook")');
  await look('#check-said', 'check-column');
  await pane.click('#check-again');
  await pane.waitForSelector('[aria-label="Go to Runs!H5"]');
});

test('a finding leads to its cell', async () => {
  await findingAt('Runs!H5').first().click();
  let where = await selected();
  for (let tries = 0; tries < 20 && !where.endsWith('H5'); tries++) {
    await session.page.waitForTimeout(50);
    where = await selected();
  }
  expect(where).toMatch(/Runs'?!\$?H\$?5$/);
  await picture(session.page, 'check-jump');
});

test('cells are marked, and the marks are taken away without a trace', async () => {
  const { pane } = session;
  const before = await fills('Runs');
  const was = await values('Runs');
  await pane.click('#check-mark');
  await pane.waitForSelector('.notice:has-text("marked")');
  const marked = await fills('Runs');
  expect(marked.filter((fill, i) => fill !== before[i]).length).toBeGreaterThanOrEqual(3);
  await picture(session.page, 'check-marked');
  await pane.click('#check-unmark');
  await pane.waitForSelector('.notice:has-text("taken away")');
  expect(await fills('Runs')).toEqual(before);
  expect(await values('Runs')).toEqual(was);
});

test('the findings sheet holds words, no formula, whatever the records say', async () => {
  const { page, pane } = session;
  await pane.click('#check-write');
  await pane.waitForSelector('.notice:has-text("Check findings")');
  expect(await ask(page, 'getSheetNames')).toEqual(
    expect.arrayContaining(['Check findings', 'Check reading']),
  );
  const cells = await ask(page, 'getValues', "'Check findings'!A1:J60");
  expect(cells.flat()).toContain('H5');
  for (const sheet of ['Check findings', 'Check reading']) {
    const formulas = await pane.evaluate(
      (name) =>
        Excel.run(async (context) => {
          const used = context.workbook.worksheets.getItem(name).getUsedRange(true).load('formulas,values');
          await context.sync();
          return used.formulas.flatMap((row: unknown[], r) =>
            row.filter(
              (one, c) => typeof one === 'string' && one.startsWith('=') && used.values[r]?.[c] !== one,
            ),
          );
        }),
      sheet,
    );
    expect(formulas).toEqual([]);
  }
  await ask(page, 'activate', 'Check findings');
  await picture(page, 'check-findings-sheet');
  await ask(page, 'activate', 'Runs');
});

test('what the records teach is shown, point by point with the keyboard, then written', async () => {
  const { page, pane } = session;
  await pane.click('#check-learn');
  await pane.waitForSelector('#check-learned');
  await look('#check-learned', 'check-rates');
  await look('.trend', 'check-trend');
  expect(await pane.getAttribute('.trend svg', 'aria-label')).toMatch(/^Eggs that hatch, run by run.*stand/);
  await pane.locator('.trend .point[tabindex="0"]').focus();
  await page.keyboard.press('Home');
  await page.keyboard.press('ArrowRight');
  expect(await pane.evaluate(() => document.activeElement?.id)).toBe('trend-point-1');
  expect(await pane.textContent('.trend-point')).toMatch(/eggs/);
  await pane.selectOption('#trend-by', 'female');
  await look('.trend', 'check-trend-female');
  await pane.locator('.trend .point').first().click();
  await pane.waitForSelector('.trend-point:has-text("expected")');
  await pane.click('#check-rates');
  await pane.waitForSelector('.notice:has-text("Rates")');
  await pane.click('#check-trends');
  await pane.waitForSelector('.notice:has-text("Trends")');
  expect(await ask(page, 'getSheetNames')).toEqual(expect.arrayContaining(['Rates', 'Trends']));
  expect(await ask(page, 'getCharts', 'Trends')).toHaveLength(5);
});

test('after the pane is opened anew the column is known, and strip times follow the own rates', async () => {
  const { page, pane } = session;
  await ask(page, 'activate', 'Runs');
  await pane.evaluate(() => {
    location.reload();
  });
  await pane.waitForSelector('#place-plan');
  await page.waitForTimeout(500);
  await turnTo(pane, 'check');
  await pane.waitForSelector('#check-sheet');
  await checkThis();
  expect(await pane.textContent('#check-said')).toContain('remembered with this workbook and used');
  expect(await pane.textContent('.pane')).toContain('judged with your own rates on the sheet Rates');
  expect(await findingAt('Runs!H5').count()).toBeGreaterThan(0);
  await pane.click('#check-forget');
  await pane.waitForSelector('#check-said', { state: 'detached' });
  await pane.click('#check-again');
  await pane.waitForSelector('#check-found');
  expect(await pane.locator('#check-said').count()).toBe(0);
});

test.each([['Locked', '#check-mark', 'is protected: its cells were left alone']])(
  'a protected sheet is read; marking it gives a sentence and changes nothing',
  async (sheet, button, says) => {
    const { page, pane } = session;
    await ask(page, 'activate', sheet);
    await checkThis();
    const before = await fills(sheet);
    await pane.click(button);
    await pane.waitForSelector(`.notice:has-text("${says}")`);
    expect(await fills(sheet)).toEqual(before);
    expect(await pane.locator('#check-unmark').count()).toBe(0);
    await picture(page, 'check-protected');
  },
);

test.each([['Bare', 'There is nothing in these cells']])(
  '%s: a sentence, and nothing to write',
  async (sheet, says) => {
    const { page, pane } = session;
    await ask(page, 'activate', sheet);
    await pane.click('#check-sheet');
    await pane.waitForSelector(`.banner:has-text("${says}")`);
    expect(await pane.locator('#check-write').count()).toBe(0);
  },
);

/** Presses Tab until the element with this id has the keyboard. */
async function tabTo(id: string): Promise<void> {
  const { page, pane } = session;
  for (let tries = 0; tries < 150; tries++) {
    if ((await pane.evaluate(() => document.activeElement?.id)) === id) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never reached ${id}`);
}

test('by keyboard alone: check, learn, step through the picture, write', async () => {
  const { page, pane } = session;
  await ask(page, 'activate', 'Runs');
  await pane.focus('#part-check');
  await tabTo('check-sheet');
  await page.keyboard.press('Enter');
  await pane.waitForFunction(() => document.activeElement?.id === 'check-found');
  // The questions about unsure columns come first; the whole reading stands after them.
  const isThere = () =>
    pane.evaluate(() => document.activeElement?.textContent.startsWith('How Runs was read') ?? false);
  for (let tries = 0; tries < 60 && !(await isThere()); tries++) await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  expect(await pane.locator('details[open] summary', { hasText: 'How Runs was read' }).count()).toBe(1);
  await tabTo('check-column-0-7');
  await page.keyboard.type('number hatched');
  await pane.waitForSelector('#check-said');
  await tabTo('check-again');
  await page.keyboard.press('Enter');
  await pane.waitForSelector('[aria-label="Go to Runs!H5"]');
  await tabTo('check-learn');
  await page.keyboard.press('Enter');
  await pane.waitForFunction(() => document.activeElement?.id === 'check-learned');
  const last = Number((await pane.getAttribute('.trend .point[tabindex="0"]', 'id'))?.replace(/\D/g, ''));
  await tabTo(`trend-point-${last}`);
  await page.keyboard.press('ArrowLeft');
  expect(await pane.evaluate(() => document.activeElement?.id)).toBe(`trend-point-${last - 1}`);
  await tabTo('check-write');
  await page.keyboard.press('Enter');
  await pane.waitForSelector('#question-word');
  await page.keyboard.press('Escape');
  await picture(page, 'check-keyboard');
});

test.each([
  ['light', 320],
  ['dark', 320],
  ['light', 280],
] as const)('the screen alone, %s, %i px wide, does not scroll sideways', async (scheme, width) => {
  const narrow = await session.page.context().newPage();
  await narrow.emulateMedia({ colorScheme: scheme });
  await narrow.setViewportSize({ width, height: 760 });
  await narrow.goto(session.pane.url().replace(/\?.*$/, ''));
  await turnTo(narrow, 'check');
  await narrow.setInputFiles('#check-file-field', FILE);
  await narrow.waitForSelector('#check-found');
  for (const summary of await narrow.locator('details summary').all()) await summary.click();
  await narrow
    .locator('details .field', { has: narrow.locator('label', { hasText: 'Came out' }) })
    .locator('select')
    .last()
    .selectOption({ label: 'number hatched' });
  await narrow.waitForSelector('#check-said:has-text("only read remembers nothing")');
  await narrow.click('#check-again');
  await narrow.waitForSelector('#check-found');
  await narrow.click('#check-learn');
  await narrow.waitForSelector('.trend');
  for (const by of ['run', 'female', 'temperature', 'month']) {
    await narrow.selectOption('#trend-by', by);
    expect(
      await narrow.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      ),
    ).toBe(0);
  }
  await narrow.screenshot({ path: join(OUT, `check-${width}-${scheme}.png`), fullPage: true });
  await narrow
    .locator('#check-learned')
    .screenshot({ path: join(OUT, `check-learned-${width}-${scheme}.png`) });
  await narrow.close();
});

test('nothing went wrong unseen, and nothing was asked of another machine', () => {
  expect(session.trouble).toEqual([]);
});
