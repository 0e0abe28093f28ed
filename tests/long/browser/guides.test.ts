import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Frame, Page } from 'playwright-core';
import { isError } from '../../../shared/base/values';
import { isUnreadable, readXlsx } from '../../../shared/files';
import type { Session } from '../../browser/support/localSheet';
import { ask, openLocalSheet, typeInto } from '../../browser/support/localSheet';

/** The guides, walked step by step as a new user would: what they say to press and type is pressed and typed. */

jest.setTimeout(900_000);
const folder = mkdtempSync(join(tmpdir(), 'spawnbook-guides-'));
let session: Session;
let page: Page;
let pane: Frame;
beforeAll(async () => {
  session = await openLocalSheet({ width: 1280, height: 800 });
  ({ page, pane } = session);
  page.context().setDefaultTimeout(120_000);
});
afterAll(async () => {
  await session.close();
  rmSync(folder, { recursive: true, force: true });
});

const guide = (name: string): string => readFileSync(`taskpane/help/guides/${name}.md`, 'utf8');
/** Every label a guide sets in italics, in its order. */
const labelsOf = (name: string): string[] =>
  [
    ...guide(name)
      .replaceAll(/\*\*[^*]+\*\*/g, '')
      .matchAll(/\*([^*|\n]+)\*/g),
  ].map(([, label = '']) => label);
/** Presses what carries this label; the guide must name it. */
async function press(name: string, label: string): Promise<void> {
  expect(labelsOf(name)).toContain(label);
  await pane.getByText(label, { exact: true }).first().click();
}
const values = (area: string): Promise<unknown[][]> => ask(page, 'getValues', area);

describe('formulas', () => {
  test('the list opens at =SPAWN., the first formula gives what the guide tells', async () => {
    await page.keyboard.type('=SPAWN.');
    await page.getByText('BUFFER.DOSE').first().waitFor();
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    const [, formula = '', told = ''] =
      /`(=SPAWN\.AMMONIA\.SHARE\(8, 25\))`[^`]*?gives `([\d.]+)`/.exec(
        guide('formulas')
          .replaceAll('\n', ' ')
          .replace(/It gives/, 'gives'),
      ) ?? [];
    await typeInto(page, 'G1', formula);
    expect(Number(await ask(page, 'getValue', 'G1'))).toBeCloseTo(Number(told), 4);
  });

  test('with cells instead of numbers the answer follows, and a range answers a column', async () => {
    for (const [cell, text] of [
      ['B2', '8'],
      ['C2', '25'],
      ['B3', '7'],
      ['C3', '25'],
    ] as const)
      await typeInto(page, cell, text);
    await typeInto(page, 'G2', '=SPAWN.AMMONIA.SHARE(B2, C2)');
    await typeInto(page, 'D2', '=SPAWN.AMMONIA.SHARE(B2:B200, C2:C200)');
    const before = await values('D2:D5');
    expect(before.slice(0, 2).every(([value]) => typeof value === 'number')).toBe(true);
    expect(before.slice(2).every(([value]) => value === '' || value === null)).toBe(true);
    await typeInto(page, 'B2', '7');
    expect(await ask(page, 'getValue', 'G2')).toBe((await values('D3:D3'))[0]?.[0]);
  });

  test('a typed moment gives three moments of one morning', async () => {
    await typeInto(page, 'I2', '2027-03-04 18:00');
    await typeInto(page, 'J2', '=SPAWN.STRIP.WINDOW(I2, 27)');
    const [look, strip, last] = (await values('J2:L2'))[0] as number[];
    const hours = (moment = NaN): number => (moment - 46_450.75) * 24;
    expect(hours(look)).toBeGreaterThan(4);
    expect(hours(strip)).toBeGreaterThan(hours(look));
    expect(hours(last)).toBeGreaterThan(hours(strip));
    expect(hours(last)).toBeLessThan(24);
  });

  test('an error is told by Why?', async () => {
    await typeInto(page, 'B3', '74');
    await ask(page, 'select', 'D3');
    await press('formulas', 'Why?');
    await pane.click('#part-cell');
    await pane.getByText('expected a number').first().waitFor();
  });

  test('each question of the guide finds functions', async () => {
    const questions = [...guide('formulas').matchAll(/"([^"\n]+)"/g)]
      .map(([, one = '']) => one)
      .filter((one) => / /.test(one) && !/\d/.test(one));
    expect(questions.length).toBeGreaterThanOrEqual(3);
    await pane.click('#part-find');
    for (const question of questions) {
      await pane.fill('input[type=search]', question);
      await pane.locator('#function-list').getByText('SPAWN.').first().waitFor();
    }
  });
});

describe('a season, its copy', () => {
  test('from Today to eight sheets', async () => {
    await ask(page, 'newBook');
    await press('season', 'Today');
    await press('season', 'A season');
    await press('season', 'Fill in an example');
    await press('season', 'Work the plan out');
    await pane.waitForSelector('#season-promise');
    expect(await pane.innerText('#season-promise')).toMatch(/^Promise [\d\s,\u202f]+, hope for/);
    expect(await ask(page, 'getSheetNames')).toHaveLength(1);
    await press('season', 'Write into this workbook');
    await pane.waitForSelector('.notice:has-text("The season is written")');
    await ask(page, 'waitForCalculation');
    const told =
      /It becomes eight sheets: a first page with the work of today and tomorrow, ([^.]+)\./
        .exec(guide('season'))?.[1]
        ?.split(', ') ?? [];
    expect(told).toHaveLength(7);
    const tabs = await page.locator('[data-u-comp="slide-tab-item"], .univer-slide-tab-item').allInnerTexts();
    const shown = tabs.map((text) => text.trim()).filter((text) => text !== '' && text !== 'Sheet1');
    expect(shown).toEqual(['Today', ...told]);
    // The notice counts what is seen: three by name and five more.
    expect(await pane.innerText('.notice')).toContain('and 5 more');
  });

  test('planned again from the workbook, and taken back', async () => {
    await press('season', 'Plan');
    await press('season', 'Plan again from this workbook');
    await pane.getByText('The season was read').first().waitFor();
    await pane.click('#season-plan');
    await pane.waitForSelector('.current .order-plan, #season-changes, .change');
    await press('season', 'Write over the season');
    await pane.waitForSelector('.notice');
    await press('season', 'Take the last planning back');
    await pane.waitForSelector('.notice, [role=alert]');
  });

  test('a copy without buyers and prices holds neither, and the terminal agrees', async () => {
    const book = join(folder, 'season.xlsx');
    const copy = join(folder, 'for-the-bank.xlsx');
    const saving = page.waitForEvent('download');
    await page.getByText('Save .xlsx').click();
    await (await saving).saveAs(book);
    const saved = readXlsx(new Uint8Array(readFileSync(book)));
    if (isUnreadable(saved)) throw new Error(saved.fault);
    const rules = saved.model.sheets.find(({ name }) => name === 'Orders')?.validations ?? [];
    expect(new Set(rules.map(({ kind }) => kind))).toEqual(new Set(['list', 'whole', 'decimal', 'date']));
    await pane.click('#menu-button');
    await press('share', 'Share a copy');
    await press('share', 'Look at this workbook');
    await pane.waitForSelector('#share-found');
    const making = page.waitForEvent('download');
    await press('share', 'Make the copy');
    await (await making).saveAs(copy);
    const terminal = (...words: readonly string[]): string =>
      execFileSync(process.execPath, ['src/build/run.mjs', 'src/cli/share.ts', ...words], {
        encoding: 'utf8',
      });
    expect(terminal('--verify', copy)).toMatch(/as it was|unchanged|match/i);
    const columns = [...guide('share').matchAll(/--blank '(Orders![A-Z])'/g)].map(([, one = '']) => one);
    const bare = join(folder, 'bare.xlsx');
    terminal(book, bare, ...columns.flatMap((one) => ['--blank', one]));
    expect(terminal('--verify', bare)).toMatch(/as it was|unchanged|match/i);
  });
});

test('records: a file is checked, a finding stands with its cell', async () => {
  await ask(page, 'newBook');
  const rows = Array.from(
    { length: 24 },
    (_, i) =>
      `2026-0${1 + (i % 9)}-1${i % 10},F${1 + (i % 4)},${26 + (i % 5) / 10},${80_000 + 997 * i},${40_000 + 513 * i}`,
  );
  rows[7] = '2026-08-17,F4,26.4,80000,190000';
  const file = join(folder, 'my-book.csv');
  writeFileSync(file, ['Date,Female,Temp °C,Eggs,Hatched larvae', ...rows].join('\n'));
  await pane.click('#place-why');
  await press('records', 'Check my book');
  const choosing = page.waitForEvent('filechooser');
  await pane.getByText('A file (.xlsx, .csv)').click();
  await (await choosing).setFiles(file);
  await pane.getByText(/E9/).first().waitFor();
  // It ends with 1 when something was found.
  const { status, stdout } = spawnSync(
    process.execPath,
    ['src/build/run.mjs', 'src/cli/records.ts', file, '--json'],
    { encoding: 'utf8' },
  );
  expect([status, stdout.includes('E9')]).toEqual([1, true]);
});

test('at the vat: the first advice for sour water is air, and the reading is a line of the workbook', async () => {
  await ask(page, 'newBook');
  await press('vat', 'At the vat');
  await press('vat', 'Dose: raise the pH');
  await pane.fill('#dose-volume', '600');
  await pane.fill('#dose-temperature', '26');
  await pane.fill('#dose-spoon', '5');
  await pane.selectOption('#dose-stocked', 'no');
  await pane.selectOption('#dose-meter', 'cheap');
  await press('vat', 'Ready: read the pH');
  await pane.waitForSelector('#field-ph');
  for (const face of ['5', 'point', '1']) await pane.click(`#key-${face}`);
  await pane.click('#key-write');
  await pane.locator('#card-answer').getByText(/air/i).first().waitFor();
  const names = await ask(page, 'getSheetNames');
  expect(names.length).toBeGreaterThan(1);
  const log = await values(`'${names.at(-1) ?? ''}'!A1:P12`);
  expect(log.flat().filter((one) => !isError(one as never))).toContain(5.1);
});

test('nothing went wrong on the way', () => {
  expect(session.trouble).toEqual([]);
});
