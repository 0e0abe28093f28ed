import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strToU8, unzipSync, strFromU8, zipSync } from 'fflate';
import type { Cell } from '../../../shared/base/values';
import type { WorkbookModel } from '../../../shared/sheet/workbook/model';
import { readXlsx } from '../../../shared/files';
import { simpleBook } from '../../files/share/support/parts';
import { hasSoffice, startJudge } from '../../files/share/support/soffice';
import type { Session } from '../../browser/support/localSheet';
import { ask, openLocalSheet, OUT, picture, turnTo } from '../../browser/support/localSheet';

/**
 * A plan written, summed up, shared with a column emptied, opened elsewhere and verified, as a person would
 * do it.
 */

let session: Session;
const folder = mkdtempSync(join(tmpdir(), 'spawnbook-share-'));
const COPY = join(folder, 'Season to share.xlsx');

beforeAll(async () => {
  session = await openLocalSheet();
  await ask(session.page, 'newBook');
});
afterAll(async () => {
  await session.close();
  rmSync(folder, { recursive: true, force: true });
});

const BUYERS: readonly (readonly (string | number)[])[] = [
  ['Buyer', 'Telephone', 'Fish'],
  ['Mill Pond Farm', '0555-0142', 20_000],
  ['Reed Bank', '0555-0177', 15_000],
];
const SECRETS = ['0555-0142', '0555-0177'];
const shown: Record<string, Cell[][]> = {};
let digest = '';

const modelOf = (bytes: Uint8Array): WorkbookModel => {
  const read = readXlsx(bytes);
  if (!('model' in read)) throw new Error(read.fault);
  return read.model;
};
const copyBytes = (): Uint8Array => new Uint8Array(readFileSync(COPY));
const same = (a: unknown, b: unknown): boolean =>
  typeof a === 'number' && typeof b === 'number'
    ? Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(b))
    : (a ?? '') === (b ?? '');

/** Values of the copy that are not those the sheet showed. */
function differing(model: WorkbookModel): string[] {
  return model.sheets
    .filter(({ name }) => name in shown)
    .flatMap(({ name, cells }) =>
      Object.entries(cells).flatMap(([address, { value }]) => {
        const [, letters = '', row = ''] = /^([A-Z])(\d+)$/.exec(address) ?? [];
        const was = shown[name]?.[Number(row) - 1]?.[letters.charCodeAt(0) - 65];
        const isEmptied = name === 'Sheet1' && letters === 'B' && Number(row) > 1;
        return was === undefined || value === undefined || isEmptied || same(value, was)
          ? []
          : [`${name}!${address}: ${JSON.stringify(value)} instead of ${JSON.stringify(was)}`];
      }),
    );
}

test('a plan and a list of buyers are written, and summed up on one page', async () => {
  const { page, pane } = session;
  for (const [r, row] of BUYERS.entries())
    for (const [c, value] of row.entries())
      await ask(page, 'setValue', `${String.fromCharCode(65 + c)}${r + 1}`, value);
  await turnTo(pane, 'plan');
  await pane.getByRole('button', { name: 'Fill in an example' }).click();
  await pane.click('#plan-write');
  await pane.waitForSelector('.notice');
  await turnTo(pane, 'share');
  await picture(page, 'share-start');
  await pane.click('#share-summary');
  await pane.waitForSelector('.notice:has-text("Summary")');
  await ask(page, 'waitForCalculation');
  expect(await ask(page, 'getSheetNames')).toContain('Summary');
  expect(await ask(page, 'getValue', "'Summary'!B5")).toBe(30_000);
  expect(await ask(page, 'getCharts', 'Summary')).toHaveLength(1);
  await ask(page, 'activate', 'Summary');
  await picture(page, 'share-summary');
  await pane.click('#share-summary');
  await pane.waitForSelector('[role=alert] .question');
  await pane.locator('.question button').last().click();
  for (const name of await ask(page, 'getSheetNames'))
    shown[name] = await ask(page, 'getValues', `'${name}'!A1:L90`);
});

test('the summary follows the plan', async () => {
  const { page } = session;
  const values = shown.Figures ?? [];
  const row = values.findIndex(([, label]) => label === 'Eggs that hatch') + 1;
  const larvae = await ask(page, 'getValue', "'Summary'!D15");
  await ask(page, 'setValue', `'Figures'!C${row}`, 0.295);
  expect(Number(await ask(page, 'getValue', "'Summary'!D15")) / Number(larvae)).toBeCloseTo(0.5, 9);
  await ask(page, 'setValue', `'Figures'!C${row}`, 0.59);
  expect(await ask(page, 'getValue', "'Summary'!D15")).toBeCloseTo(Number(larvae), 6);
});

test('the copy is made by keyboard alone, and reaches the downloads', async () => {
  const { page, pane } = session;
  await pane.focus('#share-look');
  await page.keyboard.press('Enter');
  await pane.waitForSelector('#share-found');
  await picture(page, 'share-found');
  await pane.fill('#share-name', 'Season');
  await pane.focus('fieldset details:first-of-type summary');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Space');
  await picture(page, 'share-columns');
  expect(await pane.locator('fieldset details .tick:has(input:checked)').allTextContents()).toEqual([
    expect.stringContaining('Telephone'),
  ]);
  expect(await pane.locator('fieldset details[open]').count()).toBe(1);
  await pane.focus('#share-make');
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
  expect(download.suggestedFilename()).toBe('Season to share.xlsx');
  await download.saveAs(COPY);
  await pane.waitForSelector('#share-report');
  digest = ((await pane.textContent('#share-report .digest')) ?? '').replace(/\s/g, '');
  expect(digest).toMatch(/^[0-9a-f]{64}$/);
  await picture(page, 'share-report');
});

test('the original is as it was', async () => {
  for (const name of await ask(session.page, 'getSheetNames'))
    expect(await ask(session.page, 'getValues', `'${name}'!A1:L90`)).toEqual(shown[name]);
});

test('the file holds the same values, no formula of ours, and nothing of the emptied column', () => {
  const model = modelOf(copyBytes());
  expect(model.sheets.map(({ name }) => name)).toEqual([...Object.keys(shown), 'Where numbers come from']);
  expect(differing(model)).toEqual([]);
  const formulas = model.sheets.flatMap(({ cells }) =>
    Object.values(cells).flatMap(({ formula }) => formula ?? []),
  );
  expect(formulas.length).toBeGreaterThan(200);
  expect(formulas.filter((formula) => /spawn/i.test(formula))).toEqual([]);
  const parts = Object.values(unzipSync(copyBytes()))
    .map((part) => strFromU8(part))
    .join('\n');
  for (const secret of SECRETS) expect(parts).not.toContain(secret);
  expect(parts).toContain('Mill Pond Farm');
});

(hasSoffice ? test : test.skip)(
  'LibreOffice opens it, works every formula out anew, and shows the same values',
  () => {
    const judge = startJudge(true);
    try {
      const model = modelOf(judge.save(copyBytes()));
      expect(differing(model)).toEqual([]);
      const errors = model.sheets.flatMap(({ name, cells }) =>
        Object.entries(cells).flatMap(([address, { value }]) =>
          typeof value === 'object' ? [`${name}!${address}`] : [],
        ),
      );
      expect(errors).toEqual([]);
    } finally {
      judge.close();
    }
  },
);

test('the copy is verified with its digest; a changed number is found out', async () => {
  const { page, pane } = session;
  await pane.setInputFiles('#share-check-file-field', COPY);
  await pane.waitForSelector('.file-name:has-text("Season to share.xlsx")');
  await pane.fill('#share-digest', digest.toUpperCase());
  await page.keyboard.press('Enter');
  await pane.waitForSelector('#share-checked .banner.good');
  await picture(page, 'share-verified');
  const parts = unzipSync(copyBytes());
  const changed = Object.fromEntries(
    Object.entries(parts).map(([name, part]) => [
      name,
      /worksheets\/sheet1\.xml$/.test(name)
        ? strToU8(strFromU8(part).replace('<v>20000</v>', '<v>21000</v>'))
        : part,
    ]),
  );
  const file = join(folder, 'changed.xlsx');
  writeFileSync(file, zipSync(changed));
  await pane.setInputFiles('#share-check-file-field', file);
  await pane.waitForSelector('.file-name:has-text("changed.xlsx")');
  await pane.click('#share-check');
  await pane.waitForSelector('#share-checked .banner.bad');
  expect(await pane.textContent('#share-checked')).toMatch(
    /does not match its page.*Typed cells were changed.*Sheet1/s,
  );
});

test('the copy opens in the local sheet with the same values and no prompt', async () => {
  const { page } = session;
  await page.evaluate(async (all) => {
    await window.spawnbook?.openFile(Uint8Array.from(all), 'copy.xlsx');
  }, Array.from(copyBytes()));
  for (const name of ['Summary', 'Orders', 'Batches', 'Calendar']) {
    const now = await ask(page, 'getValues', `'${name}'!A1:L90`);
    const wrong = now.flatMap((row, r) =>
      row.flatMap((value, c) =>
        same(value, shown[name]?.[r]?.[c])
          ? []
          : [`${name} ${r} ${c}: ${JSON.stringify(value)} ${JSON.stringify(shown[name]?.[r]?.[c])}`],
      ),
    );
    expect(wrong).toEqual([]);
  }
});

const ROWS = 50_000;
/** A log so long that the work takes seconds. */
function longLog(): string {
  const rows = Array.from(
    { length: ROWS },
    (_, i) =>
      `<row r="${i + 1}"><c r="A${i + 1}"><v>${6 + (i % 300) / 100}</v></c><c r="B${i + 1}"><f>_xldudf_SPAWN_AMMONIA_SHARE(A${i + 1},25)</f><v>${((i * 7919) % 100_000) / 1e6}</v></c></row>`,
  ).join('');
  const file = join(folder, 'long.xlsx');
  writeFileSync(
    file,
    simpleBook({
      sheets: {
        Log: `<?xml version="1.0" encoding="UTF-8"?>\n<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>${rows}</sheetData></worksheet>`,
      },
    }),
  );
  return file;
}

test(
  'a workbook of 50,000 calls leaves the pane awake, shows how far it is, and can be ' + 'stopped',
  async () => {
    const { page, pane } = session;
    const file = longLog();
    await pane.evaluate(() => {
      const tasks: number[] = [];
      Reflect.set(window, 'longTasks', tasks);
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) tasks.push(entry.duration);
      }).observe({ type: 'longtask' });
    });
    const begun = Date.now();
    await pane.setInputFiles('#share-file-field', file);
    await pane.waitForSelector('#share-found:has-text("50000 formulas")');
    const looked = Date.now();
    // As fast as a hand never is: the work lasts about a second.
    await pane.evaluate(() => {
      new MutationObserver((_, observer) => {
        const stop = document.getElementById('task-stop');
        if (!stop) return;
        observer.disconnect();
        stop.click();
      }).observe(document.body, { childList: true, subtree: true });
    });
    await pane.click('#share-make');
    await pane.waitForSelector('.notice:has-text("Stopped. Nothing was made")');
    expect(await pane.locator('#share-report').count()).toBe(0);
    const again = Date.now();
    const [download] = await Promise.all([page.waitForEvent('download'), pane.click('#share-make')]);
    const made = Date.now();
    expect(download.suggestedFilename()).toBe('long to share.xlsx');
    const tasks = (await pane.evaluate(() => Reflect.get(window, 'longTasks') as number[])).sort(
      (a, b) => b - a,
    );
    process.stdout.write(
      `look ${looked - begun} ms, make ${made - again} ms, longest tasks ${tasks.slice(0, 5).map(Math.round).join(', ')} ms\n`,
    );
  },
);

test.each([
  ['light', 320],
  ['dark', 320],
  ['light', 280],
  ['dark', 280],
] as const)('the screen alone, %s, %i px wide, does not scroll sideways', async (scheme, width) => {
  const narrow = await session.page.context().newPage();
  await narrow.emulateMedia({ colorScheme: scheme });
  await narrow.setViewportSize({ width, height: 760 });
  await narrow.goto(session.pane.url().replace(/\?.*$/, ''));
  await narrow.waitForSelector('#place-plan');
  await turnTo(narrow, 'share');
  await narrow.setInputFiles('#share-file-field', 'templates/season-plan.xlsx');
  await narrow.waitForSelector('#share-found');
  await narrow.locator('fieldset details summary').first().click();
  await narrow.setInputFiles('#share-check-file-field', COPY);
  await narrow.waitForSelector('.file-name:has-text("Season")');
  await narrow.click('#share-check');
  await narrow.waitForSelector('#share-checked .banner');
  await Promise.all([narrow.waitForEvent('download'), narrow.click('#share-make')]);
  await narrow.waitForSelector('#share-report');
  expect(
    await narrow.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
  ).toBe(0);
  await narrow.screenshot({ path: join(OUT, `share-${width}-${scheme}.png`), fullPage: true });
  await narrow.close();
});

test('nothing went wrong unseen, and nothing was asked of another machine', () => {
  expect(session.trouble).toEqual([]);
});
